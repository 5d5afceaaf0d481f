//! Whether the shank gives the receiver what it asks.

use super::ReceiverPlan;
use crate::job::{Field, Job, Receiver};
use crate::part::{Received, SAME};
use crate::plan::{Checked, Code, Finding};
use crate::quantity::Length;
use crate::rework::{SizeLimits, WantedShank};

/// What stands between the shank and its receiver.
pub(crate) fn findings(
    job: &Job,
    checked: &Checked,
    plan: &ReceiverPlan,
    limits: SizeLimits,
    nominal: Length,
    shank: &WantedShank,
    received: &Received,
) -> Vec<Finding> {
    let mut findings = Vec::new();
    findings.extend(size_finding(plan, limits, nominal));
    findings.extend(fit_finding(job, plan));
    findings.extend(edge_finding(plan, shank));
    findings.extend(shoulder_finding(plan, shank, received));
    findings.extend(length_findings(plan, shank));
    let sleeve = plan.sleeve.as_ref();
    findings.extend(super::sleeve::findings(job, checked, shank, sleeve));
    findings
}

/// A diameter that the receiver is not made for is a stop, one outside its limits a caution.
fn size_finding(plan: &ReceiverPlan, limits: SizeLimits, nominal: Length) -> Option<Finding> {
    let asked = &plan.asked;
    let outside = |length: Length, low: Length, high: Length| {
        length.to_mm() < low.to_mm() - SAME || length.to_mm() > high.to_mm() + SAME
    };
    let range = asked.diameters;
    let not_made_for = range.filter(|range| outside(nominal, range.low, range.high));
    // Within its range, but between its sizes.
    let between = range.filter(|_| asked.limits.is_none());
    if let Some(range) = not_made_for.or(between) {
        let code = Code::ReceiverTakesOthers {
            smallest: range.low,
            largest: range.high,
        };
        return Some(Finding::at(Field::WantedDiameter, code));
    }
    let wanted = asked.limits?;
    let off = asked.off(limits)?;
    (off.above.max(off.below) > Length::ZERO).then(|| {
        let code = Code::LimitsAsked {
            lower: wanted.low,
            upper: wanted.high,
        };
        Finding::at(Field::Tolerance, code)
    })
}

/// A shank for a plain bore should go in by hand.
fn fit_finding(job: &Job, plan: &ReceiverPlan) -> Option<Finding> {
    let most = plan.fit?.high;
    let by_hand = matches!(job.wanted.receiver, Receiver::PlainBore { .. });
    (by_hand && most.to_mm() > SAME)
        .then(|| Finding::at(Field::Tolerance, Code::MayNotGoIn { most }))
}

/// Where the fillet is larger than the receiver's edge, the shoulder does not come down on it.
fn edge_finding(plan: &ReceiverPlan, shank: &WantedShank) -> Option<Finding> {
    let largest = plan.asked.largest_fillet?;
    (shank.fillet.to_mm() > largest.to_mm() + SAME)
        .then(|| Finding::at(Field::ShoulderRadius, Code::FilletMeetsEdge { largest }))
}

/// A bearing ring needs a shoulder to sit against.
fn shoulder_finding(
    plan: &ReceiverPlan,
    shank: &WantedShank,
    received: &Received,
) -> Option<Finding> {
    let least = plan.asked.least_shoulder?;
    let height = received.head.radius_at(Length::ZERO) - shank.diameter / 2.0;
    (height.to_mm() < least.to_mm() - SAME).then(|| {
        let code = Code::ShoulderTooLow { height, least };
        Finding::at(Field::WantedDiameter, code)
    })
}

/// A standard shank has a length, and its flat a place.
fn length_findings(plan: &ReceiverPlan, shank: &WantedShank) -> Vec<Finding> {
    let at = |code| Finding::at(Field::WantedLength, code);
    let standard = plan.asked.shank_length;
    // Where the place of the flat is not known, only a whole standard shank is sure to have it, its own fillet counted.
    let place = |reach| (reach, shank.length - shank.fillet);
    let whole = || standard.map(|standard| (standard, shank.length));
    let flat = plan.asked.flat;
    let needed = flat.and_then(|flat| flat.reach().map(place).or_else(whole));
    if let Some((reach, has)) = needed
        && has.to_mm() < reach.to_mm() - SAME
    {
        let least = reach + (shank.length - has);
        return vec![at(Code::FlatMissesShank { least })];
    }
    let short = standard.filter(|standard| shank.length.to_mm() < standard.to_mm() - SAME);
    let code = |standard| at(Code::ShorterThanStandard { standard });
    short.map(code).into_iter().collect()
}

//! What is believed of an infeed before this job's own cuts have shown it.

use super::advice::TakesFrom;
use super::belief::Belief;
use crate::cutting::{Pass, PassKind};
use crate::job::Job;
use crate::plan::Plan;

/// What comes off beside the share, before anything is known: backlash, rubbing and first touch take a little away.
///
/// # Source
/// From memory; the deviation covers what the simulated lathes of the tests show once the first touch is known.
const OFFSET: (f64, f64) = (-0.004, 0.006);

/// How well the dial is known to stand when the tool first touches the work, on diameter.
///
/// # Source
/// Common practice, no source: touching on by eye or paper is good to about a hundredth of a millimetre on radius.
const FIRST_TOUCH: f64 = 0.020;

/// The share where neither work nor lathe is known.
///
/// # Source
/// From memory: between a stiff lathe and one that gives way by a fifth.
const SHARE: (f64, f64) = (0.95, 0.06);

/// How far the stiffness of a class of lathes, and the force of a cut, are known: the part that springs away may be this
/// share of itself larger or smaller.
///
/// # Source
/// The classes of stiffness run over a factor of three, the specific force over one and a half: the deviation of such a
/// product, taken as even on a logarithmic scale.
const SPRING_DEVIATION: f64 = 0.5;

/// No share is known better or worse than this without cuts that show it.
///
/// # Source
/// Own choice, tried by the simulated lathes of the tests: with half of the lower one a lathe softer than its class was
/// doubted in a third of the jobs.
const SHARE_DEVIATIONS: (f64, f64) = (0.04, 0.2);

/// What is believed before the first measured cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Prior {
    /// Of a last cut.
    pub(super) belief: Belief,
    /// How much less of a roughing infeed comes off, as a share, and the deviation of that.
    pub(super) rough: (f64, f64),
    /// Where it comes from.
    pub(super) from: TakesFrom,
}

impl Prior {
    /// From the plan's stiffness and what other jobs on the lathe have shown, else a wide guess.
    pub(super) fn of(job: &Job, plan: &Plan) -> Self {
        let stiffness = Sprung::of(plan);
        let (mut share, mut from) = (SHARE, TakesFrom::Guess);
        let mut rough = (0.0, ROUGH_LEAST);
        if let Some(sprung) = stiffness {
            share = (1.0 - sprung.last, deviation(SPRING_DEVIATION * sprung.last));
            let less = sprung.last - sprung.rough;
            rough = (less, ROUGH_LEAST + SPRING_DEVIATION * less.abs());
            from = TakesFrom::Stiffness;
        }
        let touch = OFFSET.1.hypot(FIRST_TOUCH);
        let mut offset = (OFFSET.0, touch);
        if let Some(learned) = &job.shop.machine.learned.takes {
            let few = FEW / learned.cuts.value().to_pieces().max(1.0);
            let wider = |it: f64| it * (1.0 + few).sqrt();
            let known = (
                learned.share.value().to_whole(),
                deviation(wider(learned.share_deviation.value().to_whole())),
            );
            if 0.0 < known.0 && known.0 <= MOST_SHARE {
                share = if from == TakesFrom::Stiffness {
                    both(share, known)
                } else {
                    known
                };
                from = TakesFrom::Learned;
            }
            let known = (
                learned.offset.value().to_mm(),
                wider(learned.offset_deviation.value().to_mm().abs()).max(OFFSET.1),
            );
            // A lathe is no better touched on than any other time.
            if known.0.abs() <= MOST_OFFSET {
                offset = (known.0, known.1.min(touch));
            }
        }
        Self {
            belief: Belief::apart(offset, share),
            rough,
            from,
        }
    }
}

/// The share of a roughing infeed may differ from that of a last cut by this, whatever the plan says.
///
/// # Source
/// Own choice, tried as the deviations of the share: another depth on the nose, another feed.
const ROUGH_LEAST: f64 = 0.05;

/// As many cuts leave what a lathe has shown half as sure again in its variance.
///
/// # Source
/// Own choice.
const FEW: f64 = 4.0;

/// A lathe takes off no larger share than this, nor a larger offset: such a figure is not believed.
const MOST_SHARE: f64 = 1.2;
const MOST_OFFSET: f64 = 0.2;

fn deviation(it: f64) -> f64 {
    let (least, most) = SHARE_DEVIATIONS;
    it.abs().clamp(least, most)
}

/// Two independent opinions of one number, each weighed by how sure it is.
fn both((a, of_a): (f64, f64), (b, of_b): (f64, f64)) -> (f64, f64) {
    let (by_a, by_b) = (of_a.powi(-2), of_b.powi(-2));
    (
        (a * by_a + b * by_b) / (by_a + by_b),
        (by_a + by_b).powf(-0.5),
    )
}

/// The share of an infeed that springs away: in a last cut, and in a roughing pass.
struct Sprung {
    last: f64,
    rough: f64,
}

impl Sprung {
    fn of(plan: &Plan) -> Option<Self> {
        let last = plan.holding.as_ref()?.copied?.clamp(0.0, 0.9);
        let passes = &plan.stock_off.as_ref()?.passes;
        let grows = |pass: &Pass| {
            let across = pass.cut.as_ref()?.across.to_newtons();
            let depth = pass.infeed.to_mm();
            (depth > 0.0 && across > 0.0).then(|| across / depth)
        };
        let of = |kind| {
            let (mut sum, mut count) = (0.0, 0_u32);
            for each in passes
                .iter()
                .filter(|pass| pass.kind == kind)
                .filter_map(grows)
            {
                sum += each;
                count += 1;
            }
            (count > 0).then(|| sum / f64::from(count))
        };
        // ε = K/(K + k), so that k follows from the last cut, and ε of roughing from k.
        let rough = match (of(PassKind::Last), of(PassKind::Rough)) {
            (Some(of_last), Some(of_rough)) if last > 0.0 => {
                let stiffness = of_last * (1.0 - last) / last;
                of_rough / (of_rough + stiffness)
            }
            _ => last,
        };
        Some(Self { last, rough })
    }
}

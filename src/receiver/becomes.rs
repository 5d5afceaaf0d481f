//! What else the part could become: every standard straight shank that it has the metal for, in every receiver that
//! takes such a shank.
//!
//! A shank is taken as long as its standard says, or as long as the part allows where that is less and the receiver
//! still grips enough. One that would not bear the duty is left out, and a countersink that its end has no room for is
//! not wanted of it. Threaded shanks are left out: they need a thread that this program does not plan.

use serde::Serialize;

use super::ReceiverPlan;
use super::judge;
use super::take::{plain, standard_length, standard_tolerance};
use crate::cutting::usual_kerf;
use crate::job::{Field, Job, Receiver, Wanted};
use crate::order;
use crate::part::{HAIR, Pick, Profile, Received, SAME};
use crate::plan::{Checked, Finding, Level, shoulder_findings};
use crate::quantity::{Entered, Length, Unit, Volume};
use crate::rework::bears;
use crate::rework::centre::{CentreQuestion, plan_centre};
use crate::rework::cut_off::cut_off;
use crate::rework::finished::size_limits;
use crate::rework::kept::kept;
use crate::rework::metal::Metal;
use crate::rework::{CutOff, SizeLimits, WantedShank, grip};
use crate::tables::{ColletSize, Shank, ShankDetail, ShankSize, hydraulic_insertion};

/// One thing that the part could become.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Becomes {
    /// The standard shank.
    pub shank: ShankSize,
    /// All that is to be entered for it.
    pub wanted: Wanted,
    /// Whether it has the length of the standard.
    pub full_length: bool,
    /// What the receiver grips.
    pub grip: Length,
    /// What is cut and faced off the length.
    pub cut_off: Length,
    /// What is turned off.
    pub turned: Volume,
    /// Least section modulus in bending: the strength that it is ranked by.
    pub bending_modulus: Volume,
    /// The shares of strength in bending, strength in torsion and stiffness that are kept.
    pub kept: [f64; 3],
}

/// Everything that the part could become, the best first: those of full standard length before shorter ones, then
/// those that keep more strength, then those that are gripped longer.
///
/// Empty while the part as received cannot be put together, or where nothing fits.
///
/// # Example
/// ```
/// use skimwright::{job::Job, receiver::becomes};
/// // A 20 mm shank of 80 mm: among others an 18 mm shank of 48 mm for a side-lock holder.
/// let found = becomes(&Job::default());
/// assert!(found.iter().any(|one| one.shank.code() == "flat-18" && one.full_length));
/// // But there is no metal for 25 mm.
/// assert!(found.iter().all(|one| one.shank.code() != "plain-25"));
/// ```
pub fn becomes(job: &Job) -> Vec<Becomes> {
    let checked = Checked::new(job);
    let Some(received) = Received::from_job(job, &checked) else {
        return Vec::new();
    };
    let strength = |one: &Becomes| one.bending_modulus.to_mm3();
    let mut found: Vec<Becomes> = ShankSize::all()
        .filter_map(|size| Candidate::new(job, &received, size))
        .flat_map(|candidate| {
            receivers_of(candidate.size)
                .filter_map(|receiver| candidate.in_receiver(&received, receiver))
                .collect::<Vec<_>>()
        })
        .collect();
    // Stable, so that what is alike stays in the order of the tables.
    order::by(&mut found, |a, b| {
        let strength = strength(b).total_cmp(&strength(a));
        let longer = b.grip.to_mm().total_cmp(&a.grip.to_mm());
        b.full_length
            .cmp(&a.full_length)
            .then(strength)
            .then(longer)
    });
    found
}

/// The receivers that take a standard shank; none for a threaded one.
fn receivers_of(size: ShankSize) -> impl Iterator<Item = Receiver> {
    let shank = size.get();
    let plain = shank.filter(|shank| matches!(shank.detail, ShankDetail::Plain));
    let flat = shank.filter(|shank| {
        matches!(
            shank.detail,
            ShankDetail::Flat(_) | ShankDetail::InclinedFlat(_)
        )
    });
    let collets = ColletSize::all().filter_map(move |collet| {
        let bore = collet.get()?.nominal_bore_for(plain?.diameter);
        bore.map(|_| Receiver::Collet { collet })
    });
    let hydraulic = plain
        .and_then(|shank| hydraulic_insertion(shank.diameter))
        .map(|_| Receiver::Hydraulic {});
    let side_lock = flat.map(|_| Receiver::SideLock { shank: size });
    hydraulic.into_iter().chain(side_lock).chain(collets)
}

/// A standard shank made of the part, as long as can be, before it is known what it goes into.
struct Candidate {
    size: ShankSize,
    /// The job with this shank wanted.
    job: Job,
    shank: &'static Shank,
    limits: SizeLimits,
    finished: WantedShank,
    full_length: bool,
    cut: CutOff,
    turned: Volume,
    bending_modulus: Volume,
    kept: [f64; 3],
}

impl Candidate {
    /// `None` where the part has not the metal for it, the shank would have no straight part or no room for its
    /// fillet, or would not bear its duty.
    fn new(job: &Job, received: &Received, size: ShankSize) -> Option<Self> {
        let shank = size.get()?;
        let mut other = job.clone();
        other.wanted = wanted_of(job, received, shank)?;
        let limits = size_limits(&other, &Checked::new(&other)).ok()??;
        let longest = longest(received, limits, other.wanted.shoulder_radius.value());
        let full_length = longest.to_mm() >= shank.length.to_mm() - SAME;
        if !full_length {
            let like = &job.wanted.length;
            other.wanted.length = entered(down_to_rule(longest, like), like)?;
        }
        let checked = Checked::new(&other);
        let finished = WantedShank::new(
            limits.aim,
            checked.length(Field::WantedLength)?,
            checked.length(Field::ShoulderRadius)?,
            checked.length(Field::EndChamfer)?,
        );
        if has_stop(&shoulder_findings(&checked, received, &finished)) {
            return None;
        }
        let kerf = checked.or_usual(Field::Kerf, usual_kerf(other.shop.cut_off_method))?;
        let cut = cut_off(received, &checked, kerf, other.part.material.density())?;
        let kept = kept(received, &finished)?;
        let borne = bears::bears(&other, &checked, received, &finished, &kept.after);
        if has_stop(&bears::findings(&other, &checked, &borne)) {
            return None;
        }
        let has_centre = has_centre(&other, &checked, received, &finished, &cut);
        let turned = turned(received, &finished);
        if !has_centre {
            other.wanted.countersink = None;
        }
        Some(Self {
            size,
            job: other,
            shank,
            limits,
            finished,
            full_length,
            cut,
            turned,
            bending_modulus: kept.after.bending_modulus,
            kept: [kept.bending.value, kept.torsion.value, kept.stiffness.value],
        })
    }

    /// `None` where the receiver does not take it, or would not grip enough.
    fn in_receiver(&self, part: &Received, receiver: Receiver) -> Option<Becomes> {
        let mut job = self.job.clone();
        job.wanted.receiver = receiver;
        let checked = Checked::new(&job);
        let nominal = self.shank.diameter;
        let goes_into =
            ReceiverPlan::new(&job, &checked, self.limits, nominal, &self.finished, part);
        let asked = goes_into.asked;
        let grip = grip::grip(&checked, &asked, &self.cut, &self.finished).value;
        let judged = judge::findings(
            &job,
            &checked,
            &goes_into,
            self.limits,
            nominal,
            &self.finished,
            part,
        );
        let gripped = grip::findings(&checked, &asked, grip, &self.cut, &self.finished);
        if has_stop(&judged) || has_stop(&gripped) {
            return None;
        }
        Some(Becomes {
            shank: self.size,
            full_length: self.full_length,
            grip,
            cut_off: part.shank_length - self.cut.shank_finished.value,
            turned: self.turned,
            bending_modulus: self.bending_modulus,
            kept: self.kept,
            wanted: job.wanted,
        })
    }
}

/// Whether the countersink wanted can be made in this end.
fn has_centre(
    job: &Job,
    checked: &Checked,
    received: &Received,
    shank: &WantedShank,
    cut: &CutOff,
) -> bool {
    checked.length(Field::Countersink).is_some_and(|mouth| {
        let (.., findings) = plan_centre(&CentreQuestion {
            received,
            shank,
            face: cut.shank_finished.value,
            mouth,
            facing: cut.facing,
            order: job.shop.centre_order,
        });
        !has_stop(&findings)
    })
}

fn has_stop(findings: &[Finding]) -> bool {
    findings.iter().any(|finding| finding.level == Level::Stop)
}

/// What is wanted for a standard shank: its diameter, limits and length, and all else as it was, with
/// the fillet no larger than there is room for.
fn wanted_of(job: &Job, received: &Received, shank: &Shank) -> Option<Wanted> {
    let now = &job.wanted;
    let step = received.head.radius_at(Length::ZERO) - shank.diameter / 2.0;
    let fillet = now.shoulder_radius.value();
    Some(Wanted {
        roughness: now.roughness.clone(),
        diameter: standard_length(shank, shank.diameter)?,
        tolerance: standard_tolerance(shank)?,
        length: standard_length(shank, shank.length)?,
        shoulder_radius: if fillet > step {
            entered(
                down_to_rule(step.max(Length::ZERO), &now.shoulder_radius),
                &now.shoulder_radius,
            )?
        } else {
            now.shoulder_radius.clone()
        },
        end_chamfer: now.end_chamfer.clone(),
        countersink: now.countersink.clone(),
        receiver: Receiver::default(),
        receiver_depth: None,
        least_grip: None,
        duty: now.duty.clone(),
    })
}

/// The longest shank of these limits that cleans up, and that no hole breaks out of.
fn longest(received: &Received, limits: SizeLimits, fillet: Length) -> Length {
    let whole = received.shank_length;
    let needed = Profile::cylinder(Length::ZERO, whole, limits.lower / 2.0);
    let first = |stretches: Vec<(Length, Length)>| stretches.first().map_or(whole, |it| it.0);
    let cleans_up = first(needed.beyond(&received.solid));
    // What is left round a hole: the smallest permitted shank with its fillet, where there is metal for it.
    let around = WantedShank::new(limits.lower, whole, fillet, Length::ZERO).outer;
    let around = around.merge(&received.sound, Pick::Smaller);
    let holes = received.bores.iter().map(|bore| {
        let hole = bore
            .widest
            // A hole that is just as wide as the shank leaves no wall either.
            .shifted(|z| bore.off_centre + received.off_axis.at(z) + HAIR);
        first(hole.between(Length::ZERO, whole).beyond(&around))
    });
    holes.fold(cleans_up, Length::min)
}

/// A length down to the last tenth of a millimetre, or hundredth of an inch, in the unit of `like`.
fn down_to_rule(length: Length, like: &Entered<Length>) -> Length {
    let (value, steps, make): (f64, f64, fn(f64) -> Length) = if like.entry().unit().is_inch() {
        (length.to_inch(), 100.0, Length::inch)
    } else {
        (length.to_mm(), 10.0, Length::mm)
    };
    make((value * steps + SAME).floor() / steps)
}

/// A length as a plain number in the unit of `like`.
fn entered(length: Length, like: &Entered<Length>) -> Option<Entered<Length>> {
    if like.entry().unit().is_inch() {
        plain(length.to_inch(), Unit::Inch)
    } else {
        plain(length.to_mm(), Unit::Millimetre)
    }
}

/// The metal between the shank as received and the finished one, holes counted.
fn turned(received: &Received, finished: &WantedShank) -> Volume {
    let metal = |outer: &Profile| {
        let metal = Metal {
            outer,
            holes: &received.inner,
            features: &received.features,
        };
        metal.volume()
    };
    let stock = received.outer.between(Length::ZERO, finished.length);
    let left = finished.outer.merge(&stock, Pick::Smaller);
    metal(&stock) - metal(&left)
}

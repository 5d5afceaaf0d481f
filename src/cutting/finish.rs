//! How the shank is finished: the fillet at the shoulder, the chamfer, polishing, and the compound slide set over.
//!
//! Infeeds and graduations are on radius, what the slides move.

use serde::Serialize;

use super::chip::ChipKind;
use super::compound::{CHAMFER_ANGLE, chamfer_travel, compound_angle};
use super::passes::{Pass, StockOff};
use super::polishing::{PolishingVerdict, least_polishing_stock, polishing_verdict};
use super::roughness::{ridge_height, roughness_ratio};
use super::shoulder::{
    FilletMethod, FilletStep, FilletSteps, Graduations, ShoulderError, fillet_method,
};
use crate::job::{DialReads, EdgeField, Field, Job, MachineField};
use crate::plan::Checked;
use crate::quantity::{Angle, Length};
use crate::rework::WantedShank;
use crate::tables::{Confirmed, Spread, USUAL_FINE_INFEED, tool_usual, usual_lathe};
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// How the shank is finished.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct FinishPlan {
    /// How the tool makes the fillet at the shoulder; `None` where there is no shoulder or a figure is missing.
    pub fillet: Option<FilletPlan>,
    /// How the end is chamfered; `None` where it stays sharp.
    pub chamfer: Option<ChamferPlan>,
    /// Whether the polishing stock covers the ridges; `None` where nothing is polished or turned.
    pub polish: Option<PolishPlan>,
    /// The compound slide set over for fine infeed; `None` while a figure is out of bounds.
    pub fine_infeed: Option<FineInfeed>,
}

/// How the fillet at the shoulder is made.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FilletPlan {
    /// The fillet wanted.
    pub fillet: Length,
    /// The nose radius at hand.
    pub nose_radius: Length,
    /// One division along the work, and one across it on radius, that the steps count.
    pub graduations: Graduations,
    /// The way.
    pub way: FilletWay,
}

/// The way to make a fillet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum FilletWay {
    /// The nose has the fillet's radius: one pass into the corner makes it.
    OwnNose,
    /// The nose is smaller: step by step, polished after.
    Steps(FilletSteps),
    /// The nose is larger and leaves more metal in the corner than wanted.
    NoseTooLarge {
        /// The largest nose that fits.
        largest: Length,
    },
    /// So large a fillet takes more steps than anyone counts: a form tool makes it.
    FormTool,
}

/// How the end is chamfered.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ChamferPlan {
    /// Its width along the axis.
    pub width: Length,
    /// What the compound slide is set to.
    pub angle: Angle,
    /// How far it travels.
    pub travel: Length,
}

/// The polishing stock against the ridges of the last cut.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PolishPlan {
    /// Left on the diameter.
    pub stock: Length,
    /// What the ridges take of the diameter, with what cutting really leaves counted.
    pub least: Spread<Length>,
    /// The height of the ridges that the nose alone leaves.
    pub ridge: Option<Figure<Length>>,
    /// Whether it is enough.
    pub verdict: PolishingVerdict,
}

/// The compound slide set over, so that one division of it feeds the tool in by a small infeed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FineInfeed {
    /// One division of the compound slide.
    pub graduation: Length,
    /// The infeed on radius that it should give.
    pub infeed: Length,
    /// From the lathe's axis; `None` where the infeed is more than a division.
    pub angle: Option<Figure<Angle>>,
}

/// How high the ridges of a fillet turned in steps may stand: what a strip of abrasive takes off.
///
/// # Source
/// Common practice, no source.
const FILLET_RIDGES: Length = Length::mm(0.02);

impl FilletPlan {
    /// How many divisions of the cross-slide are left to the finished diameter at a step, each on radius.
    pub fn divisions(&self, step: &FilletStep) -> u32 {
        let divisions = (step.infeed_left / self.graduations.radial).round();
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a whole number within the bounds of its type"
        )]
        let divisions = divisions.clamp(0.0, f64::from(u32::MAX)) as u32;
        divisions
    }
}

impl FinishPlan {
    /// How a job's shank is finished under its passes.
    pub(crate) fn of(
        job: &Job,
        checked: &Checked,
        (shank, has_shoulder): (&WantedShank, bool),
        stock: Option<&StockOff>,
    ) -> Self {
        Self {
            fillet: has_shoulder
                .then(|| fillet(job, checked, shank.fillet))
                .flatten(),
            chamfer: chamfer(shank.chamfer),
            polish: stock.and_then(|stock| polish(job, checked, stock)),
            fine_infeed: fine_infeed(job, checked),
        }
    }
}

fn nose_radius(job: &Job, checked: &Checked) -> Option<Length> {
    checked.or_usual(
        Field::Edge(EdgeField::NoseRadius),
        tool_usual(job.shop.tool).nose_radius,
    )
}

fn compound_graduation(job: &Job, checked: &Checked) -> Option<Length> {
    checked.or_usual(
        Field::Machine(MachineField::CompoundGraduation),
        usual_lathe(job.shop.machine.rigidity).compound_graduation,
    )
}

fn fillet(job: &Job, checked: &Checked, fillet: Length) -> Option<FilletPlan> {
    let nose_radius = nose_radius(job, checked)?;
    // The compound slide stands along the work; where the cross-slide's dial was not said, it is as fine.
    let axial = compound_graduation(job, checked)?;
    let marked = checked.or_usual(Field::Machine(MachineField::Graduation), axial)?;
    let radial = match job.shop.machine.dial_reads {
        DialReads::Diameter => marked / 2.0,
        DialReads::Radius => marked,
    };
    let graduations = Graduations { axial, radial };
    let with_ridges = |ridges| fillet_method(fillet, nose_radius, graduations, ridges);
    let found = match with_ridges(FILLET_RIDGES) {
        // Every division is used then, and the ridges are as low as they can be.
        Err(ShoulderError::GraduationTooCoarse { least_cusp }) => with_ridges(least_cusp),
        other => other,
    };
    let way = match found {
        Ok(FilletMethod::OwnNose) => FilletWay::OwnNose,
        Ok(FilletMethod::Steps(steps)) => FilletWay::Steps(steps),
        Err(ShoulderError::NoseTooLarge { largest }) => FilletWay::NoseTooLarge { largest },
        Err(ShoulderError::TooManyGraduations) => FilletWay::FormTool,
        Err(ShoulderError::NotPositive | ShoulderError::GraduationTooCoarse { .. }) => return None,
    };
    Some(FilletPlan {
        fillet,
        nose_radius,
        graduations,
        way,
    })
}

fn chamfer(width: Length) -> Option<ChamferPlan> {
    (width > Length::ZERO).then(|| ChamferPlan {
        width,
        angle: CHAMFER_ANGLE,
        travel: chamfer_travel(width),
    })
}

fn polish(job: &Job, checked: &Checked, stock: &StockOff) -> Option<PolishPlan> {
    if !stock.is_polished() {
        return None;
    }
    let last = stock.last_cut()?;
    let roughness = last.cut.as_ref()?.roughness?;
    Some(PolishPlan {
        stock: stock.polishing,
        least: least_polishing_stock(roughness),
        ridge: ridge_figure(job, last, nose_radius(job, checked)?),
        verdict: polishing_verdict(stock.polishing, roughness),
    })
}

/// The ridges of the last cut: what the nose leaves, and as its range what cutting adds to that.
fn ridge_figure(job: &Job, last: &Pass, nose_radius: Length) -> Option<Figure<Length>> {
    let height = ridge_height(last.feed, nose_radius)?;
    let ratio = roughness_ratio(ChipKind::of(job.part.material), last.cutting_speed);
    Some(Figure {
        value: height,
        range: Some(crate::working::Range {
            low: height,
            high: height * ratio.high,
        }),
        working: Working {
            symbol: "R",
            formula: "r − √(r · r − f · f/4)",
            parts: &[],
            inputs: vec![
                Input::new(
                    "r",
                    Meaning::Field(Field::Edge(EdgeField::NoseRadius)),
                    Value::size(nose_radius),
                ),
                Input::new("f", Meaning::PassFeed, Value::Feed(last.feed)),
            ],
            source: Source::Published {
                title: "M. P. Groover, Fundamentals of Modern Manufacturing, surface roughness in machining",
                confirmed: Confirmed::OneSource,
            },
        },
    })
}

fn fine_infeed(job: &Job, checked: &Checked) -> Option<FineInfeed> {
    let of = Field::Machine;
    let graduation = compound_graduation(job, checked)?;
    let infeed = checked.or_usual(of(MachineField::FineInfeed), USUAL_FINE_INFEED)?;
    let angle = compound_angle(infeed, graduation).ok();
    let angle = angle.map(|value| Figure {
        value,
        range: None,
        working: Working {
            symbol: "α",
            formula: "arcsin(i/g)",
            parts: &[],
            inputs: vec![
                Input::new(
                    "i",
                    Meaning::Field(of(MachineField::FineInfeed)),
                    Value::size(infeed),
                ),
                Input::new(
                    "g",
                    Meaning::Field(of(MachineField::CompoundGraduation)),
                    Value::size(graduation),
                ),
            ],
            source: Source::Geometry,
        },
    });
    Some(FineInfeed {
        graduation,
        infeed,
        angle,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::plan;
    use crate::quantity::{Entered, Unit};

    fn mm(digits: u32, decimals: u8) -> Entered<Length> {
        Entered::plain(digits, decimals, Unit::Millimetre)
    }

    fn with(change: impl FnOnce(&mut Job)) -> FinishPlan {
        let mut job = Job::default();
        change(&mut job);
        plan(&job).finish.unwrap()
    }

    fn way(fillet: u32, nose: u32) -> FilletWay {
        let found = with(|job| {
            job.wanted.shoulder_radius = mm(fillet, 1);
            job.shop.edge.nose_radius = Some(mm(nose, 1));
        });
        found.fillet.unwrap().way
    }

    #[test]
    fn a_fillet_is_made_by_its_own_nose_by_steps_or_not_at_all() {
        assert_eq!(way(8, 8), FilletWay::OwnNose);
        let largest = Length::mm(0.4);
        assert_eq!(way(4, 8), FilletWay::NoseTooLarge { largest });
        let FilletWay::Steps(found) = way(15, 4) else {
            panic!("a smaller nose takes steps");
        };
        assert!(found.highest_cusp <= FILLET_RIDGES);
        assert_eq!(found.steps.last().unwrap().infeed_left, Length::ZERO);
        // 30 mm at 0.01 mm a division.
        assert_eq!(way(300, 4), FilletWay::FormTool);
    }

    #[test]
    fn dials_too_coarse_for_low_ridges_still_give_steps() {
        let found = with(|job| {
            job.wanted.shoulder_radius = mm(1, 0);
            job.shop.edge.nose_radius = Some(mm(4, 1));
            job.shop.machine.graduation = Some(mm(5, 1));
            job.shop.machine.compound_graduation = Some(mm(5, 1));
        });
        let FilletWay::Steps(found) = found.fillet.unwrap().way else {
            panic!("steps all the same");
        };
        assert!(FILLET_RIDGES < found.highest_cusp);
    }

    /// A dial that reads diameters moves the slide by half of it.
    #[test]
    fn the_steps_count_what_the_slide_moves() {
        for (reads, wanted) in [(DialReads::Diameter, 0.025), (DialReads::Radius, 0.05)] {
            let found = with(|job| {
                job.shop.machine.graduation = Some(mm(5, 2));
                job.shop.machine.dial_reads = reads;
            });
            let radial = found.fillet.unwrap().graduations.radial;
            assert!((radial.to_mm() - wanted).abs() < 1e-12);
        }
    }

    #[test]
    fn a_chamfer_of_one_takes_the_diagonal() {
        let chamfer = with(|job| job.wanted.end_chamfer = mm(1, 0))
            .chamfer
            .unwrap();
        assert!((chamfer.travel.to_mm() - 2.0_f64.sqrt()).abs() < 1e-12);
        assert!(
            with(|job| job.wanted.end_chamfer = mm(0, 0))
                .chamfer
                .is_none()
        );
    }

    /// A division of 0.02 that shall move 0.002: one in ten, at 5° 44′. More than a division is not to be had.
    #[test]
    fn the_compound_slide_is_set_over() {
        let set = |infeed| {
            let found = with(|job| {
                job.shop.machine.compound_graduation = Some(mm(2, 2));
                job.shop.machine.fine_infeed = Some(infeed);
            });
            found.fine_infeed.unwrap().angle
        };
        let angle = set(mm(2, 3)).unwrap();
        assert!((angle.value.to_degrees() - 5.739).abs() < 0.001);
        assert!(set(mm(21, 3)).is_none());
    }

    /// The ridge of the nose by hand, f²/(8 r) for a fine feed; no polishing, no verdict.
    #[test]
    fn polishing_is_judged_against_the_ridges() {
        let polish = with(|job| job.shop.edge.nose_radius = Some(mm(8, 1)))
            .polish
            .unwrap();
        let ridge = polish.ridge.unwrap();
        let feed = ridge
            .working
            .inputs
            .iter()
            .find_map(|input| match input.value {
                Value::Feed(feed) => Some(feed.to_mm_per_rev()),
                _ => None,
            });
        let by_hand = feed.unwrap().powi(2) / 6.4;
        assert!((ridge.value.to_mm() / by_hand - 1.0).abs() < 0.01);
        assert!(
            with(|job| job.shop.polishing_stock = mm(0, 0))
                .polish
                .is_none()
        );
    }
}

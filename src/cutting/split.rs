//! How the stock is shared out over the passes, all on diameter.

use crate::job::{Field, Job};
use crate::part::SAME;
use crate::plan::{Code, Finding};
use crate::quantity::Length;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// Roughing passes, and two equal last cuts.
pub(super) struct Split {
    pub(super) rough_count: u32,
    pub(super) rough_each: Length,
    /// Each of the two last cuts.
    pub(super) last: Length,
}

/// What the passes may take.
pub(super) struct Depths {
    /// Most infeed of a roughing pass, on radius.
    pub(super) most_infeed: Length,
    /// The finest infeed that still cuts, on radius.
    pub(super) least_infeed: Length,
    /// Each of the two last cuts, off the diameter.
    pub(super) last: Length,
}

impl Split {
    /// Two equal last cuts first; the rest in equal roughing passes no deeper than allowed.
    ///
    /// A rest too thin for the edge to cut goes to the two last cuts instead of a pass that only rubs.
    ///
    /// # Source
    /// Two equal last cuts: common practice, no source.
    pub(super) fn of(to_turn: Length, depths: &Depths) -> Self {
        let last = depths.last.min(to_turn / 2.0);
        let rough = (to_turn - last * 2.0).max(Length::ZERO);
        let thin = rough / 2.0 < depths.least_infeed && to_turn / 4.0 <= depths.most_infeed;
        if rough.to_mm() <= SAME || thin {
            return Self {
                rough_count: 0,
                rough_each: Length::ZERO,
                last: to_turn / 2.0,
            };
        }
        // A hair of roughness, left over by rounding, is no pass.
        let exact = (rough / (depths.most_infeed * 2.0) - 1e-9).ceil();
        let most = f64::from(Job::MOST_PASSES + 1);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a whole number between 1 and a small limit"
        )]
        let rough_count = exact.max(1.0).min(most) as u32;
        Self {
            rough_count,
            rough_each: rough / f64::from(rough_count),
            last,
        }
    }

    /// What there is to say of the cuts; nothing where there is nothing to turn.
    pub(super) fn findings(&self, depths: &Depths) -> Vec<Finding> {
        let mut findings = Vec::new();
        if self.last.to_mm() < depths.last.to_mm() - SAME {
            let each = self.last;
            findings.push(Finding::at(Field::LastCut, Code::LastCutsReduced { each }));
        }
        let least = depths.least_infeed;
        let mut judge = |field, off: Length| {
            let infeed = off / 2.0;
            if infeed.to_mm() < least.to_mm() - SAME {
                findings.push(Finding::at(field, Code::InfeedTooFine { infeed, least }));
            }
        };
        judge(Field::LastCut, self.last);
        if self.rough_count > 0 {
            judge(Field::RoughInfeed, self.rough_each);
        }
        if self.rough_count > Job::MOST_PASSES {
            findings.push(Finding::at(Field::RoughInfeed, Code::TooManyPasses));
        }
        findings
    }
}

/// What a roughing pass takes off, with its working.
pub(super) fn rough_each(split: &Split, to_turn: Length) -> Figure<Length> {
    Figure {
        value: split.rough_each,
        range: None,
        working: Working {
            symbol: "a",
            formula: "(w − 2 · q)/i",
            parts: &[],
            inputs: vec![
                Input::new("w", Meaning::ToTurn, Value::size(to_turn)),
                Input::new("q", Meaning::Field(Field::LastCut), Value::size(split.last)),
                Input::new("i", Meaning::PassCount, Value::Count(split.rough_count)),
            ],
            source: Source::CommonPractice,
        },
    }
}

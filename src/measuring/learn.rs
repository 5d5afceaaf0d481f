//! Learning from measured cuts what an infeed really takes off.
//!
//! Millimetres on diameter. What was dialled in and did not come off is still there for the next cut, so that a cut
//! engages its own infeed and what was left before it.

use super::advice::Takes;
use super::belief::{Belief, Expected, Row};
use super::prior::Prior;
use crate::job::CutMadeKind;
use crate::quantity::{Length, Share};

/// Scatter from cut to cut on diameter, before four cuts have shown it, and how many cuts this guess is worth.
///
/// # Source
/// From memory; tried by the simulated lathes of the tests.
const SCATTER: f64 = 0.003;
const SCATTER_WEIGHT: f64 = 6.0;

/// No lathe scatters less or more than this.
const SCATTERS: (f64, f64) = (0.0015, 0.020);

/// From so many measured cuts on, the scatter is estimated from them.
const SCATTER_FROM: usize = 4;

/// A cut further from what was expected than this many deviations is not learned from.
///
/// # Source
/// Own choice: a normal error is so far off once in 16 000 cuts.
pub(super) const OUTLIER: f64 = 4.0;

/// No more than so many of the newest cuts are learned from: older ones were at another wear of the edge.
const MOST_ROWS: usize = 40;

/// What was done to the work since it was last measured.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a fact of its own, and all combine"
)]
pub(super) struct Since {
    /// Cuts with an infeed.
    pub(super) cuts: u32,
    /// Spring passes after the last of them.
    pub(super) springs: u32,
    /// All that was dialled in.
    pub(super) infeed: f64,
    /// The infeed of the last cut, and of the one before it.
    pub(super) last: f64,
    pub(super) before: f64,
    /// Whether the last cut, and the one before it, was a roughing pass.
    pub(super) last_rough: bool,
    pub(super) before_rough: bool,
    /// Whether all of them were roughing passes.
    pub(super) all_rough: bool,
    /// Whether abrasive took something off, which nobody can reckon.
    pub(super) polished: bool,
    /// Whether something happened that leaves what came off unknown.
    pub(super) unknown: bool,
}

impl Since {
    /// Whether nothing touched the work.
    pub(super) fn is_nothing(&self) -> bool {
        self.cuts == 0 && self.springs == 0 && !self.polished
    }

    /// One more cut.
    pub(super) fn add(&mut self, kind: CutMadeKind, infeed: f64) {
        let rough = kind == CutMadeKind::Rough;
        match kind {
            CutMadeKind::Polish => self.polished = true,
            CutMadeKind::Spring => self.springs += 1,
            CutMadeKind::Rough | CutMadeKind::Last if infeed == 0.0 => self.springs += 1,
            CutMadeKind::Rough | CutMadeKind::Last => {
                self.all_rough = rough && (self.cuts == 0 || self.all_rough);
                self.cuts = self.cuts.saturating_add(1);
                (self.before, self.before_rough) = (self.last, self.last_rough);
                (self.last, self.last_rough) = (infeed, rough);
                self.infeed += infeed;
                self.springs = 0;
            }
        }
        if kind == CutMadeKind::Spring && infeed != 0.0 {
            self.infeed += infeed;
        }
        // What nobody would dial is a slip of whoever entered it.
        if !(0.0..=MOST_INFEED).contains(&infeed) {
            self.unknown = true;
        }
    }
}

/// No cut is deeper on diameter; nor does a dial go backwards in a cut.
const MOST_INFEED: f64 = 50.0;

/// What the cuts since the last reading should have taken off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Foreseen {
    pub(super) off: f64,
    /// Standard deviation; what is uncertain of the reading before is not in it.
    pub(super) deviation: f64,
}

/// What is believed so far, and what it rests on.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Learner {
    prior: Prior,
    pub(super) belief: Belief,
    rows: Vec<Kept>,
    /// Scatter from cut to cut.
    pub(super) scatter: f64,
    /// What was dialled in and has not come off.
    pub(super) left: f64,
    /// Measured cuts of the finishing kind since the last change.
    pub(super) last_cuts: u32,
}

/// A measured cut as it is kept, so that it can be weighed anew.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Kept {
    engaged: f64,
    off: f64,
    /// Variance beside the scatter.
    variance: f64,
    /// How many cuts' scatter is in it.
    cuts: f64,
    rough: bool,
}

impl Learner {
    pub(super) fn new(prior: Prior) -> Self {
        Self {
            belief: prior.belief,
            prior,
            rows: Vec::new(),
            scatter: SCATTER,
            left: 0.0,
            last_cuts: 0,
        }
    }

    /// Forgets this job's cuts: something changed.
    pub(super) fn forget(&mut self) {
        *self = Self::new(self.prior);
    }

    /// How many measured cuts the belief rests on.
    pub(super) fn cuts(&self) -> u32 {
        u32::try_from(self.rows.len()).unwrap_or(u32::MAX)
    }

    /// What a cut that engages so much takes off, and the variance of that, scatter counted.
    pub(super) fn foresee_cut(&self, engaged: f64, rough: bool) -> (f64, f64) {
        let Expected { off, variance } = self.belief.at(engaged);
        let scatter = self.scatter * self.scatter;
        if !rough {
            return (off, variance + scatter);
        }
        let (more, deviation) = self.prior.rough;
        (
            off + more * engaged,
            variance + scatter + (deviation * engaged).powi(2),
        )
    }

    /// What a cut leaves standing of what it engages, as expected.
    fn left_of(&self, engaged: f64, rough: bool) -> f64 {
        engaged - self.foresee_cut(engaged, rough).0
    }

    /// What the last of several cuts engages: its own infeed, and what the one before it left.
    fn engaged(&self, since: &Since) -> f64 {
        let before = match since.cuts {
            0 | 1 => self.left,
            _ => self.left_of(since.before, since.before_rough),
        };
        since.last + before
    }

    /// What all cuts since the last reading should have taken off; `None` where nobody can tell.
    pub(super) fn foresee(&self, since: &Since) -> Option<Foreseen> {
        if since.unknown || since.polished {
            return None;
        }
        let (mut left, mut variance) = (self.left, 0.0);
        if since.cuts > 0 {
            let engaged = self.engaged(since);
            let (off, of_off) = self.foresee_cut(engaged, since.last_rough);
            let more = f64::from(since.cuts - 1) * self.scatter * self.scatter;
            (left, variance) = (engaged - off, of_off + more);
        }
        if since.springs > 0 {
            let (least, most) = self.foresee_spring(left);
            let half = (most - least) / 2.0;
            left -= least + half;
            variance += half * half + self.scatter * self.scatter;
        }
        let off = self.left + since.infeed - left;
        let known = off.is_finite() && variance.is_finite();
        known.then(|| Foreseen {
            off,
            deviation: variance.sqrt(),
        })
    }

    /// What a spring pass takes off at least and at most, where so much stands: an edge that rubs takes nothing.
    pub(super) fn foresee_spring(&self, left: f64) -> (f64, f64) {
        (0.0, self.belief.at(left).off.max(0.0))
    }

    /// Takes in what a reading has shown: so much came off, with the variance of the two readings' own errors.
    ///
    /// What contradicts the belief is not learned from; then all is forgotten, for the dial may no longer stand where it
    /// was thought to stand. What did not come off is still reckoned with, which is the safe side; what came off too much
    /// is not taken to be missing in the next cut.
    pub(super) fn learn(&mut self, since: &Since, off: f64, own: f64) {
        let Some(foreseen) = self.foresee(since) else {
            if since.polished && !since.unknown && since.cuts == 0 {
                self.left -= off;
            } else {
                self.forget();
            }
            return;
        };
        let deviation = foreseen.deviation.hypot(own.sqrt());
        let left = self.left + since.infeed - off;
        if (off - foreseen.off).abs() > OUTLIER * deviation {
            self.forget();
            self.left = left.max(0.0);
            return;
        }
        if since.cuts > 0 && since.springs == 0 {
            let engaged = self.engaged(since);
            self.keep(since, engaged, engaged - left, own);
        }
        self.left = left;
    }

    fn keep(&mut self, since: &Since, engaged: f64, off: f64, own: f64) {
        let (more, deviation) = self.prior.rough;
        let (off, variance) = if since.last_rough {
            (off - more * engaged, own + (deviation * engaged).powi(2))
        } else {
            self.last_cuts += 1;
            (off, own)
        };
        if self.rows.len() >= MOST_ROWS {
            self.rows.remove(0);
        }
        self.rows.push(Kept {
            engaged,
            off,
            variance,
            cuts: f64::from(since.cuts),
            rough: since.last_rough,
        });
        self.belief = self.believe(self.scatter);
        if self.rows.len() >= SCATTER_FROM {
            self.scatter = self.estimate_scatter();
            self.belief = self.believe(self.scatter);
        }
    }

    /// All rows at a scatter.
    fn believe(&self, scatter: f64) -> Belief {
        let rows = self.rows.iter().map(|kept| Row {
            engaged: kept.engaged,
            off: kept.off,
            variance: kept.variance + kept.cuts * scatter * scatter,
        });
        self.prior.belief.after_all(rows)
    }

    /// The scatter that the last cuts show, with the guess counted as some cuts more.
    fn estimate_scatter(&self) -> f64 {
        let (mut sum, mut weight) = (SCATTER * SCATTER * SCATTER_WEIGHT, SCATTER_WEIGHT);
        for kept in self.rows.iter().filter(|kept| !kept.rough) {
            let surprise = kept.off - self.belief.at(kept.engaged).off;
            sum += (surprise * surprise - kept.variance).max(0.0) / kept.cuts.max(1.0);
            weight += 1.0;
        }
        let (least, most) = SCATTERS;
        (sum / weight).sqrt().clamp(least, most)
    }

    /// The belief as it is shown.
    pub(super) fn takes(&self) -> Takes {
        let belief = &self.belief;
        Takes {
            share: Share::of_whole(belief.share),
            share_deviation: Share::of_whole(belief.share_variance.sqrt()),
            offset: Length::mm(belief.offset),
            offset_deviation: Length::mm(belief.offset_variance.sqrt()),
            covariance: Length::mm(belief.covariance),
            scatter: Length::mm(self.scatter),
            left: Length::mm(self.left),
            cuts: self.cuts(),
            from: self.prior.from,
        }
    }
}

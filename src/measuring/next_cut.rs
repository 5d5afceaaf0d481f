//! The next infeed, in whole divisions of the dial. Millimetres on diameter.

use super::advice::{CutNext, Next, WhenMeasure, WhyMeasure, WhyStop};
use super::bench::Bench;
use super::budget::COVERAGE;
use super::normal::{chance_above, score_of};
use super::progress::Progress;
use super::state::State;
use super::verdict::GUARD;
use crate::cutting::{Pass, PassKind};
use crate::quantity::{Length, Share};
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// The odds of going under the lower limit that one cut may have.
///
/// # Source
/// Own choice. What is too small cannot be mended and there is one part, while what is too large can be cut or polished
/// again: so one in a hundred, and not the even odds that aiming at the middle of a narrow tolerance would often run.
/// Tried by the simulated lathes of the tests.
pub const ODDS_UNDER: f64 = 0.01;

/// Most that is polished off by hand on the diameter where no cut is safe.
///
/// # Source
/// Common practice, no source: with abrasive cloth on a file; more would spoil the shape.
const MOST_POLISHED: f64 = 0.05;

/// How much more than the polishing stock is still left to polishing. Own choice.
const POLISHING_OVER: f64 = 1.5;

/// Polishing stock that was missed by no more than this is not worth a cut, nor is so little worth polishing.
const TRIFLE: f64 = 0.001;

/// Spring passes over one setting: more of them take off nothing.
const MOST_SPRINGS: u32 = 2;

/// The share of the tolerance that what is uncertain of the warmth may take, twice counted, before the work is left to
/// cool. Own choice: a tenth, the old rule of gauge makers for what a measurement may take of a tolerance.
const WARMTH_SHARE: f64 = 0.1;

/// Work no more kelvins above the room than this will not cool much more.
const WARM: f64 = 5.0;

/// Most readings of one state that are asked for to settle what is not proven. Own choice.
const MOST_READINGS: u32 = 4;

/// What a number of divisions is expected to do.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Outcome {
    divisions: u32,
    off: f64,
    deviation: f64,
    odds_under: f64,
}

/// Chooses the next cut.
pub(super) struct Chooser<'a> {
    pub(super) bench: &'a Bench<'a>,
    pub(super) progress: &'a Progress,
}

impl Chooser<'_> {
    /// What to do next.
    pub(super) fn next(&self) -> Next {
        let progress = self.progress;
        if progress.asks {
            return Next::Answer;
        }
        let Some(state) = &progress.state else {
            return Next::Measure(WhyMeasure::First);
        };
        if progress.since.is_nothing() {
            return self.measured(state);
        }
        // Roughing goes on without a reading after each pass.
        let foreseen = progress.learner.foresee(&progress.since);
        let foreseen = foreseen.filter(|_| progress.since.all_rough && progress.since.springs == 0);
        let size = foreseen.map(|it| state.mean() - it.off);
        match size.and_then(|size| self.rough(state, size)) {
            Some(cut) => cut,
            None => Next::Measure(WhyMeasure::AfterCut),
        }
    }

    /// What to do with work that was measured since it was last cut.
    fn measured(&self, state: &State) -> Next {
        let (size, bench) = (state.mean(), self.bench);
        if let Some(next) = self.rough(state, size) {
            return next;
        }
        if let Some(next) = self.at_size(state) {
            return next;
        }
        let rest = size - bench.target();
        // What the first of the last cuts shows holds for the second only while the work is as warm.
        if self.is_too_warm(state) {
            return Next::Measure(WhyMeasure::TooWarm);
        }
        let planned = self.cuts_left(rest);
        if planned > 0
            && let Some(next) = self.last(state, rest, planned)
        {
            return next;
        }
        self.without_cut(state)
    }

    /// Whether the work is too warm for its size to be known well enough, and cooling would mend that.
    fn is_too_warm(&self, state: &State) -> bool {
        let width = self.bench.upper - self.bench.lower;
        COVERAGE * state.warmth() > WARMTH_SHARE * width && state.warmer() > WARM
    }

    /// A roughing pass, where one is due at a size.
    fn rough(&self, state: &State, size: f64) -> Option<Next> {
        let bench = self.bench;
        let (number, pass) = bench.next_pass(size)?;
        if pass.kind != PassKind::Rough || size - bench.roughed() < bench.made_for {
            return None;
        }
        let after = pass.diameter_after.to_mm().max(bench.roughed());
        let off = (size - after).min(bench.deepest);
        let learner = &self.progress.learner;
        let (left, _) = self.standing();
        let (at_full, _) = learner.foresee_cut(1.0, true);
        let (at_rest, _) = learner.foresee_cut(0.0, true);
        let share = at_full - at_rest;
        let engaged = if share > 0.0 {
            (off - at_rest) / share
        } else {
            off
        };
        let divisions = whole((engaged - left) / bench.division, f64::floor)?;
        let outcome = self.outcome(
            state,
            (size, state.smallest() - (state.mean() - size)),
            divisions,
            true,
        );
        // Nothing is risked that a reading would show.
        if divisions == 0 || outcome.odds_under > ODDS_UNDER {
            return None;
        }
        let roughs = bench.stock.passes.iter().skip(usize::from(number));
        let roughs = roughs.filter(|pass| pass.kind == PassKind::Rough).count();
        let roughs = u32::try_from(roughs).unwrap_or(u32::MAX).max(1);
        let lasts = self.lasts_planned();
        let when = match roughs {
            1 => WhenMeasure::AfterThis,
            more => WhenMeasure::After(more),
        };
        Some(self.cut(
            (Some(number), Some(pass), PassKind::Rough),
            &outcome,
            size,
            (roughs.saturating_add(lasts), when),
        ))
    }

    fn lasts_planned(&self) -> u32 {
        let passes = self.bench.stock.passes.iter();
        let lasts = passes.filter(|pass| pass.kind == PassKind::Last).count();
        u32::try_from(lasts).unwrap_or(u32::MAX)
    }

    /// How many last cuts the rest is shared out over.
    fn cuts_left(&self, rest: f64) -> u32 {
        let bench = self.bench;
        let each = bench.stock.last_each.to_mm();
        if rest <= 0.0 {
            return 0;
        }
        let made = self.progress.learner.last_cuts;
        let two = rest >= 2.0 * bench.made_for;
        // The first shows what the second will do; after it one is left, unless the rest is much more than planned.
        if two && (made == 0 || rest > 1.5 * each) {
            2
        } else {
            1
        }
    }

    /// A last cut; `None` where no number of divisions is safe and cuts.
    fn last(&self, state: &State, rest: f64, cuts: u32) -> Option<Next> {
        let (bench, learner) = (self.bench, &self.progress.learner);
        let each = (rest / f64::from(cuts)).min(bench.deepest);
        let engaged = learner.belief.engaged_for(each)?;
        let most = whole((engaged - learner.left) / bench.division, f64::round)?;
        let size = (state.mean(), state.smallest());
        let outcome = self.safest(state, size, most)?;
        let engaged = f64::from(outcome.divisions) * bench.division + learner.left;
        // Where it would rub, or where the work is finished better as it is, there is no cut.
        if outcome.divisions == 0 || engaged < bench.rubs || outcome.off <= 0.0 {
            return None;
        }
        let (number, pass) = bench.last_pass(learner.last_cuts);
        Some(self.cut(
            (number, pass, PassKind::Last),
            &outcome,
            state.mean(),
            (cuts, WhenMeasure::AfterThis),
        ))
    }

    /// The most divisions up to `most` whose odds are within [`ODDS_UNDER`]; `None` where not even none are.
    fn safest(&self, state: &State, size: (f64, f64), most: u32) -> Option<Outcome> {
        let of = |divisions| self.outcome(state, size, divisions, false);
        let safe = |outcome: &Outcome| outcome.odds_under <= ODDS_UNDER;
        let wanted = of(most);
        if safe(&wanted) {
            return Some(wanted);
        }
        let (mut low, mut high) = (0, most);
        if !safe(&of(low)) {
            return None;
        }
        // The odds rise with the infeed.
        while high - low > 1 {
            let middle = low + (high - low) / 2;
            if safe(&of(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(of(low))
    }

    /// What a number of divisions is expected to do to work of a size, and of its smallest place.
    fn outcome(
        &self,
        state: &State,
        (size, smallest): (f64, f64),
        divisions: u32,
        rough: bool,
    ) -> Outcome {
        let learner = &self.progress.learner;
        let (left, before) = self.standing();
        let engaged = f64::from(divisions) * self.bench.division + left;
        let (off, variance) = learner.foresee_cut(engaged, rough);
        let off = off.clamp(0.0, size.max(0.0));
        let deviation = (variance + before + state.own_variance() + state.common_variance()).sqrt();
        Outcome {
            divisions,
            off,
            deviation,
            odds_under: chance_above((smallest - off - self.bench.lower) / deviation),
        }
    }

    /// What stands of earlier infeeds, and the variance of what the cuts since the last reading took off.
    fn standing(&self) -> (f64, f64) {
        let Progress { learner, since, .. } = self.progress;
        if since.is_nothing() {
            return (learner.left, 0.0);
        }
        let foreseen = learner.foresee(since);
        foreseen.map_or((0.0, 0.0), |it| {
            let left = learner.left + since.infeed - it.off;
            (left, it.deviation * it.deviation)
        })
    }

    /// What to do where the work is in tolerance or under it, or polishing is what is left; `None` where it is too large.
    fn at_size(&self, state: &State) -> Option<Next> {
        let bench = self.bench;
        let (small, large, size) = (state.smallest(), state.largest(), state.mean());
        let uncertainty = state.uncertainty();
        let guard = GUARD * uncertainty;
        if small < bench.lower {
            let sure = small + guard < bench.lower || state.readings >= MOST_READINGS;
            return Some(if sure {
                Next::Stop(WhyStop::Under)
            } else {
                Next::Measure(WhyMeasure::ToSettle)
            });
        }
        let planned = bench.polishing > 0.0 && !self.progress.polished;
        let nearly = size - bench.aim <= bench.polishing * POLISHING_OVER;
        if planned
            && nearly
            && let Some(next) = self.polish(state)
        {
            return Some(next);
        }
        let above = small - bench.lower;
        let below = bench.upper - large;
        if below < 0.0 {
            return None;
        }
        if guard <= above && guard <= below {
            return Some(Next::Stop(WhyStop::InTolerance));
        }
        // More readings lessen only what is their own.
        let count = f64::from(state.readings);
        let own = state.own_variance() * count / f64::from(MOST_READINGS.max(state.readings));
        let best = GUARD * (own + state.common_variance()).sqrt();
        if state.readings < MOST_READINGS && best <= above && best <= below {
            return Some(Next::Measure(WhyMeasure::ToSettle));
        }
        // In the upper half another cut may make it surer.
        (above <= below).then_some(Next::Stop(WhyStop::NotProven))
    }

    /// What is left where no cut is safe: a spring pass, abrasive, or to stop.
    fn without_cut(&self, state: &State) -> Next {
        let (bench, learner) = (self.bench, &self.progress.learner);
        let size = state.mean();
        let inside = state.largest() <= bench.upper && bench.lower <= state.smallest();
        let (_, most) = learner.foresee_spring(learner.left);
        let springs = self.progress.springs < MOST_SPRINGS
            && self.progress.cut
            && !self.progress.polished
            && bench.rubs <= learner.left;
        if springs && most > TRIFLE && !inside {
            let outcome = self.outcome(state, (size, state.smallest()), 0, false);
            if outcome.odds_under <= ODDS_UNDER {
                let (number, pass) = bench.last_pass(learner.last_cuts.saturating_sub(1));
                return self.cut(
                    (number, pass, PassKind::Last),
                    &outcome,
                    size,
                    (1, WhenMeasure::AfterThis),
                );
            }
        }
        let within = size - bench.aim <= MOST_POLISHED.max(bench.polishing * POLISHING_OVER);
        let polish = self.polish(state).filter(|_| within);
        match polish {
            // Where polishing is not planned, what is likely good is let be.
            Some(next) if !inside || bench.polishing > 0.0 => next,
            _ if inside => Next::Stop(WhyStop::NotProven),
            _ => Next::Stop(WhyStop::NoSafeCut),
        }
    }

    /// Polishing down to the size aimed at, or as far as the smallest place allows; `None` where that is a trifle.
    fn polish(&self, state: &State) -> Option<Next> {
        let bench = self.bench;
        let uncertainty = state.uncertainty();
        let (size, aim) = (state.mean(), bench.aim);
        // As sure as a cut has to be.
        let most = state.smallest() - bench.lower - score_of(ODDS_UNDER) * uncertainty;
        let aim = aim.max(size - most);
        (size - aim > TRIFLE).then(|| polish((size, aim), uncertainty))
    }

    fn cut(
        &self,
        (number, pass, kind): (Option<u8>, Option<&Pass>, PassKind),
        outcome: &Outcome,
        size: f64,
        (cuts_left, measure): (u32, WhenMeasure),
    ) -> Next {
        let bench = self.bench;
        Next::Cut(Box::new(CutNext {
            pass: number,
            kind,
            spring: outcome.divisions == 0,
            divisions: outcome.divisions,
            graduation: bench.graduation,
            reads: bench.reads,
            dialled: bench.graduation * f64::from(outcome.divisions),
            off_diameter: Length::mm(outcome.off),
            diameter_after: self.after(size, outcome),
            odds_under: Share::of_whole(outcome.odds_under),
            cuts_left,
            measure,
            spindle_speed: pass.map(|pass| pass.spindle_speed),
            feed: pass.map(|pass| pass.feed),
        }))
    }

    /// The diameter to expect, with its working.
    fn after(&self, size: f64, outcome: &Outcome) -> Figure<Length> {
        let learner = &self.progress.learner;
        let (left, _) = self.standing();
        let after = size - outcome.off;
        let reach = COVERAGE * outcome.deviation;
        let dialled = f64::from(outcome.divisions) * self.bench.division;
        Figure {
            value: Length::mm(after),
            range: Some(Range {
                low: Length::mm(after - reach),
                high: Length::mm(after + reach),
            }),
            working: Working {
                symbol: "D",
                formula: "d − a − b · (x + r)",
                parts: &[],
                inputs: vec![
                    Input::new("d", Meaning::MeasuredNow, Value::size(Length::mm(size))),
                    Input::new(
                        "a",
                        Meaning::TakesOffset,
                        Value::Fine(Length::mm(learner.belief.offset)),
                    ),
                    Input::new("b", Meaning::TakesShare, Value::Ratio(learner.belief.share)),
                    Input::new(
                        "x",
                        Meaning::DialledOnDiameter,
                        Value::size(Length::mm(dialled)),
                    ),
                    Input::new("r", Meaning::LeftStanding, Value::Fine(Length::mm(left))),
                ],
                source: Source::Geometry,
            },
        }
    }
}

/// So much is to be polished off.
fn polish((size, aim): (f64, f64), uncertainty: f64) -> Next {
    let off = size - aim;
    let reach = COVERAGE * uncertainty;
    Next::Polish {
        off: Figure {
            value: Length::mm(off),
            range: Some(Range {
                low: Length::mm((off - reach).max(0.0)),
                high: Length::mm(off + reach),
            }),
            working: Working {
                symbol: "p",
                formula: "d − D",
                parts: &[],
                inputs: vec![
                    Input::new("d", Meaning::MeasuredNow, Value::size(Length::mm(size))),
                    Input::new("D", Meaning::AimedDiameter, Value::size(Length::mm(aim))),
                ],
                source: Source::Geometry,
            },
        },
    }
}

/// A number of divisions made whole; `None` where it is no number. Below nought it is nought.
fn whole(divisions: f64, round: fn(f64) -> f64) -> Option<u32> {
    if !divisions.is_finite() {
        return None;
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between nought and a million"
    )]
    // A hair is what conversion between units rounds.
    let whole = round(divisions + 1e-6).clamp(0.0, 1e6) as u32;
    Some(whole)
}

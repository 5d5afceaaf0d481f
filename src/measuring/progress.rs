//! The state of the work, by going through the record once. Millimetres on diameter.

use super::advice::{Doubt, DoubtKind};
use super::doubts::{Known, doubt};
use super::learn::{Learner, OUTLIER, Since};
use super::prior::Prior;
use super::seen::{Seen, seen};
use super::state::{ELSEWHERE, State};
use crate::job::{CutMade, CutMadeKind, DialReads, Job, Reading, What};
use crate::plan::Plan;
use crate::quantity::Length;

/// Work that has warmed or cooled by more than this since is another lathe, so to speak.
///
/// # Source
/// Common practice, no source.
const ANOTHER_TEMPERATURE: f64 = 5.0;

/// Work that has cooled by so many kelvins since it was read is read anew. Own choice.
const COOLED: f64 = 3.0;

/// The stock as received is known to this, on diameter, beside its runout: a calliper on a rough part. Own choice.
const RECEIVED_SLACK: f64 = 0.2;

/// What was done and what is known.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Progress {
    /// What the work measured last.
    pub(super) state: Option<State>,
    /// What was done since.
    pub(super) since: Since,
    /// What is believed of the infeed.
    pub(super) learner: Learner,
    /// Readings that are in doubt.
    pub(super) doubts: Vec<Doubt>,
    /// Whether the newest reading is in doubt.
    pub(super) asks: bool,
    /// Whether abrasive was used after the last cut.
    pub(super) polished: bool,
    /// Spring passes over the setting as it stands.
    pub(super) springs: u32,
    /// Whether something was cut at all.
    pub(super) cut: bool,
    /// What it measured before the cuts that the last state followed, and these cuts; until they are learned from.
    open: Option<(State, Since)>,
    /// Temperature at which was learned.
    above: Option<f64>,
    received: Option<f64>,
    lower: Option<f64>,
}

impl Progress {
    /// Goes through the record.
    pub(super) fn of(job: &Job, plan: &Plan) -> Self {
        let shape = plan.shape.received.as_ref();
        let received = shape.and_then(|received| {
            let met = received
                .swept
                .largest(Length::ZERO, received.shank_length)?;
            Some(met.radius.to_mm() * 2.0 + RECEIVED_SLACK)
        });
        let mut progress = Self {
            state: None,
            since: Since::default(),
            learner: Learner::new(Prior::of(job, plan)),
            doubts: Vec::new(),
            asks: false,
            polished: false,
            springs: 0,
            cut: false,
            open: None,
            above: None,
            received,
            lower: plan.limits.map(|limits| limits.lower.to_mm()),
        };
        for (place, event) in job.record.standing() {
            match &event.what {
                What::Reading(reading) => progress.read(job, place, reading),
                What::Cut(cut) => progress.cut(cut),
                What::Change(_) => progress.change(),
                What::Note(_) | What::Step(_) | What::Offered(_) | What::Answered(_) => {}
            }
        }
        progress.settle();
        progress
    }

    fn read(&mut self, job: &Job, place: usize, reading: &Reading) {
        let Some(seen) = seen(job, reading) else {
            return;
        };
        if !reading.confirmed
            && let Some((kind, meant)) = doubt(seen.diameter, &reading.value, &self.known(&seen))
        {
            self.ask(place, kind, meant, &seen);
            return;
        }
        self.asks = false;
        if !self.since.is_nothing()
            && let Some(before) = self.state.take()
        {
            self.open = Some((before, self.since));
        }
        self.since = Since::default();
        match &mut self.state {
            // Work that has cooled is measured anew: what was read while it was warm was worth less.
            Some(state) if state.warmer() - seen.warmer > COOLED => {
                *state = State::new(&seen, place);
            }
            Some(state) => state.add(&seen, place),
            none => *none = Some(State::new(&seen, place)),
        }
    }

    fn ask(&mut self, place: usize, kind: DoubtKind, meant: Option<f64>, seen: &Seen) {
        let expected = self.known(seen).expected;
        self.asks = true;
        self.doubts.push(Doubt {
            event: u32::try_from(place).unwrap_or(u32::MAX),
            kind,
            expected: expected.map(|(expected, _)| Length::mm(expected)),
            meant: meant.map(Length::mm),
        });
    }

    /// What the next reading is held against.
    fn known(&self, seen: &Seen) -> Known {
        let mut known = Known {
            expected: None,
            before: None,
            received: self.received,
            lower: self.lower,
        };
        let Some(state) = &self.state else {
            return known;
        };
        let own = seen.own * seen.own;
        let (size, elsewhere) = match state.at(seen.place) {
            Some(size) => (size, 0.0),
            None => (state.mean(), ELSEWHERE * ELSEWHERE),
        };
        let apart = own + state.own_variance() + elsewhere + FORM * FORM;
        if self.since.is_nothing() {
            known.expected = Some((size, apart.sqrt()));
            return known;
        }
        if !self.since.unknown {
            known.before = Some((size, OUTLIER * apart.sqrt()));
        }
        if let Some(foreseen) = self.learner.foresee(&self.since) {
            let variance = foreseen.deviation * foreseen.deviation + apart;
            known.expected = Some((size - foreseen.off, variance.sqrt()));
        }
        known
    }

    fn cut(&mut self, cut: &CutMade) {
        self.settle();
        let dialled = cut.dialled.value().to_mm();
        let infeed = match (cut.kind, cut.reads) {
            (CutMadeKind::Polish, _) => 0.0,
            (_, DialReads::Diameter) => dialled,
            (_, DialReads::Radius) => dialled * 2.0,
        };
        self.since.add(cut.kind, infeed);
        self.asks = false;
        let spring = cut.kind == CutMadeKind::Spring || infeed == 0.0;
        match cut.kind {
            CutMadeKind::Polish => self.polished = true,
            _ if spring => self.springs = self.springs.saturating_add(1),
            _ => {
                (self.springs, self.polished) = (0, false);
            }
        }
        self.cut = true;
    }

    fn change(&mut self) {
        self.settle();
        self.learner.forget();
        self.springs = 0;
        if !self.since.is_nothing() {
            self.since.unknown = true;
        }
    }

    /// Learns from the readings of a state once they are all in.
    fn settle(&mut self) {
        let Some(state) = &self.state else {
            return;
        };
        let above = state.above();
        if let Some((before, since)) = self.open.take() {
            let (off, own) = state.off_since(&before);
            self.learner.learn(&since, off, own);
            if self
                .above
                .is_some_and(|then| (above - then).abs() > ANOTHER_TEMPERATURE)
            {
                self.learner.forget();
                self.above = None;
            }
        }
        self.above.get_or_insert(above);
    }
}

/// How far two readings at one place of a turned shank lie apart by its form alone, as a deviation.
///
/// # Source
/// From memory: out of round and ridges of a turned surface, two micrometres or so.
const FORM: f64 = 0.002;

//! What the work measured at one time: all readings between two cuts. Millimetres on diameter.

use super::seen::{Place, Seen};

/// Readings of one place.
#[derive(Clone, Copy, Debug, PartialEq)]
struct AtPlace {
    place: Place,
    sum: f64,
    count: f64,
}

impl AtPlace {
    fn mean(&self) -> f64 {
        self.sum / self.count
    }
}

/// What the work measured.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct State {
    places: Vec<AtPlace>,
    /// Sum of the variances that are each reading's own.
    own: f64,
    /// The largest that readings share.
    common: f64,
    /// Sums of how warm the work was.
    above: f64,
    warmer: f64,
    /// The largest uncertainty that comes of warmth.
    warmth: f64,
    /// The instrument of the first reading, and whether there was another.
    instrument: Option<u8>,
    mixed: bool,
    /// How many readings.
    pub(super) readings: u32,
    /// The last of them, by its place in the record.
    pub(super) event: usize,
}

impl State {
    /// Of its first reading.
    pub(super) fn new(seen: &Seen, event: usize) -> Self {
        let mut state = Self {
            places: Vec::new(),
            own: 0.0,
            common: 0.0,
            above: 0.0,
            warmer: 0.0,
            warmth: 0.0,
            instrument: seen.instrument,
            mixed: false,
            readings: 0,
            event,
        };
        state.add(seen, event);
        state
    }

    /// One more reading.
    pub(super) fn add(&mut self, seen: &Seen, event: usize) {
        match self.places.iter_mut().find(|it| it.place.is(seen.place)) {
            Some(at) => {
                at.sum += seen.diameter;
                at.count += 1.0;
            }
            None => self.places.push(AtPlace {
                place: seen.place,
                sum: seen.diameter,
                count: 1.0,
            }),
        }
        self.own += seen.own * seen.own;
        self.common = self.common.max(seen.common);
        self.above += seen.above;
        self.warmer += seen.warmer;
        self.warmth = self.warmth.max(seen.warmth);
        self.mixed |= self.instrument != seen.instrument;
        self.readings = self.readings.saturating_add(1);
        self.event = event;
    }

    fn means(&self) -> impl Iterator<Item = f64> {
        self.places.iter().map(AtPlace::mean)
    }

    /// The mean of the places, each counted once.
    pub(super) fn mean(&self) -> f64 {
        let (sum, count) = self
            .means()
            .fold((0.0, 0.0), |(sum, count), it| (sum + it, count + 1.0));
        sum / f64::max(count, 1.0)
    }

    /// The smallest of the places.
    pub(super) fn smallest(&self) -> f64 {
        self.means().fold(f64::INFINITY, f64::min)
    }

    /// The largest of the places.
    pub(super) fn largest(&self) -> f64 {
        self.means().fold(f64::NEG_INFINITY, f64::max)
    }

    /// The mean of what was read at a place; `None` where nothing was.
    pub(super) fn at(&self, place: Place) -> Option<f64> {
        let found = self.places.iter().find(|it| it.place.is(place));
        found.map(AtPlace::mean)
    }

    /// Variance of the mean that is the readings' own.
    pub(super) fn own_variance(&self) -> f64 {
        let count = f64::from(self.readings.max(1));
        self.own / (count * count)
    }

    /// Variance that one more reading would not lessen.
    pub(super) fn common_variance(&self) -> f64 {
        self.common * self.common
    }

    /// Standard uncertainty of the mean.
    pub(super) fn uncertainty(&self) -> f64 {
        (self.own_variance() + self.common_variance()).sqrt()
    }

    /// How much warmer than 20 °C the work was, on average, in kelvins.
    pub(super) fn above(&self) -> f64 {
        self.above / f64::from(self.readings.max(1))
    }

    /// How much warmer than the room it was, on average, in kelvins.
    pub(super) fn warmer(&self) -> f64 {
        self.warmer / f64::from(self.readings.max(1))
    }

    /// Standard uncertainty that comes of warmth.
    pub(super) fn warmth(&self) -> f64 {
        self.warmth
    }

    /// How much smaller it is than it was before, and the variance of that: at the places that both know, where there are
    /// any.
    pub(super) fn off_since(&self, before: &Self) -> (f64, f64) {
        let pairs = self
            .places
            .iter()
            .filter_map(|at| Some(before.at(at.place)? - at.mean()));
        let (sum, count) = pairs.fold((0.0, 0.0), |(sum, count), it| (sum + it, count + 1.0));
        // Work cools between two readings, so that what is uncertain of its warmth does not fall out.
        let warmth = self.warmth.powi(2) + before.warmth.powi(2);
        let mut variance = self.own_variance() + before.own_variance() + warmth;
        // What an instrument is off by falls out of the difference, but not between two of them.
        if self.mixed || before.mixed || self.instrument != before.instrument {
            variance += self.common_variance() + before.common_variance();
        }
        if count > 0.0 {
            (sum / count, variance)
        } else {
            let taper = ELSEWHERE * ELSEWHERE;
            (before.mean() - self.mean(), variance + taper)
        }
    }
}

/// How much two places of one shank may differ, as a deviation, before it was measured.
///
/// # Source
/// Common practice, no source: a tail-stock set by eye leaves a hundredth or so over a shank.
pub(super) const ELSEWHERE: f64 = 0.010;

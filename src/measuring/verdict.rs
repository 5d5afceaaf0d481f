//! Whether each tolerance is kept, with the uncertainty counted.
//!
//! After ISO 14253-1: in tolerance is proven where the size keeps away from each limit by a guard band, out of it where it
//! is beyond a limit by the same band; between the two nothing is proven. The band is 1.645 standard uncertainties, so that
//! at its edge the odds of being wrong are 5 %.

use serde::Serialize;

use super::corrected::{Mean, corrected};
use super::normal::chance_above;
use super::since::{diameters_now, since_last_cut};
use crate::job::{Job, Measured, WorkPlace};
use crate::plan::Plan;
use crate::quantity::{Entered, Length, Share};
use crate::working::Figure;

/// The guard band in standard uncertainties: 5 % of a normal law lie beyond it.
///
/// # Source
/// ISO 14253-1:2017 (95 % by default, as seen in secondary sources); the factor is that of the normal law. The edition
/// of 1998 took two standard uncertainties.
pub const GUARD: f64 = 1.645;

/// More readings than this nobody takes to prove something.
///
/// # Source
/// Common practice, no source.
pub const MOST_MORE_READINGS: u32 = 30;

/// Whether one tolerance is kept.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Verdict {
    /// Which.
    pub of: VerdictOf,
    /// What is proven.
    pub is: VerdictIs,
    /// What was measured at 20 °C, with its expanded range; `None` where nothing was.
    pub measured: Option<Figure<Length>>,
    /// Its standard uncertainty; zero where nothing was measured.
    pub uncertainty: Length,
    /// The lower limit; `None` where there is none.
    pub lower: Option<Length>,
    /// The upper limit; `None` where there is none.
    pub upper: Option<Length>,
    /// The guard band on each side.
    pub guard: Length,
    /// The odds that it is in tolerance.
    pub odds_in: Option<Share>,
    /// How many more readings at the same place would prove it, if they show the same; `None` where none would, or
    /// nothing is left to prove.
    pub more_readings: Option<u32>,
    /// How many readings it rests on.
    pub readings: u32,
}

/// Which tolerance.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", content = "place", rename_all = "kebab-case")]
pub enum VerdictOf {
    /// The diameter at a place.
    Diameter(WorkPlace),
    /// Roughness Ra.
    Roughness,
}

/// What is proven of a tolerance.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum VerdictIs {
    /// In tolerance.
    In,
    /// Too large: can be cut again.
    Over,
    /// Too small.
    Under,
    /// Neither is proven.
    NotProven,
    /// No reading could prove it: the instrument is too coarse for the tolerance.
    TooCoarse,
    /// Nothing was measured.
    NotMeasured,
}

/// What a size may be. At least one of the two should be there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Zone {
    /// The smallest permitted; `None`: as small as it likes.
    pub lower: Option<Length>,
    /// The largest permitted; `None`: as large as it likes.
    pub upper: Option<Length>,
}

impl Zone {
    /// What is proven of a size with its standard uncertainty.
    ///
    /// The zone is too narrow for the instrument where the two guard bands leave nothing of it.
    ///
    /// # Source
    /// ISO 14253-1, the band being [`GUARD`] standard uncertainties.
    /// # Example
    /// ```
    /// use skimwright::measuring::{VerdictIs, Zone};
    /// use skimwright::quantity::Length;
    /// let zone = Zone {
    ///     lower: Some(Length::mm(19.987)),
    ///     upper: Some(Length::mm(20.000)),
    /// };
    /// let with = |size, unsure| zone.judge(Length::mm(size), Length::um(unsure));
    /// assert_eq!(with(19.993, 2.754), VerdictIs::In);
    /// assert_eq!(with(19.9885, 2.754), VerdictIs::NotProven);
    /// assert_eq!(with(19.993, 4.0), VerdictIs::TooCoarse);
    /// ```
    pub fn judge(self, size: Length, uncertainty: Length) -> VerdictIs {
        let guard = uncertainty * GUARD;
        let Self { lower, upper } = self;
        if upper.is_some_and(|upper| size > upper + guard) {
            VerdictIs::Over
        } else if lower.is_some_and(|lower| size < lower - guard) {
            VerdictIs::Under
        } else if self.width().is_some_and(|width| guard * 2.0 >= width) {
            VerdictIs::TooCoarse
        } else if lower.is_none_or(|lower| lower + guard <= size)
            && upper.is_none_or(|upper| size <= upper - guard)
        {
            VerdictIs::In
        } else {
            VerdictIs::NotProven
        }
    }

    /// The odds that a size with its standard uncertainty, taken as normal, is in the zone (JCGM 106:2012, 7).
    pub fn odds_in(self, size: Length, uncertainty: Length) -> Share {
        let beyond = |by: Length| {
            if uncertainty > Length::ZERO {
                chance_above(by / uncertainty)
            } else if by < Length::ZERO {
                1.0
            } else {
                0.0
            }
        };
        let over = self.upper.map_or(0.0, |upper| beyond(upper - size));
        let under = self.lower.map_or(0.0, |lower| beyond(size - lower));
        Share::of_whole((1.0 - over - under).clamp(0.0, 1.0))
    }

    /// From the lower limit to the upper.
    fn width(self) -> Option<Length> {
        Some(self.upper? - self.lower?)
    }
}

/// Each tolerance that the job asks for, by the readings since the last cut: the diameter near the shoulder, in the
/// middle, near the free end and wherever else it was read; roughness where it is asked.
///
/// # Source
/// [`Zone::judge`].
pub fn verdicts(job: &Job, plan: &Plan) -> Vec<Verdict> {
    let mut verdicts = Vec::new();
    if let Some(limits) = plan.limits {
        let zone = Zone {
            lower: Some(limits.lower),
            upper: Some(limits.upper),
        };
        let mut read = diameters_now(job);
        for place in [
            WorkPlace::NearShoulder,
            WorkPlace::Middle,
            WorkPlace::FreeEnd,
        ] {
            let found = read.iter().position(|(known, _)| *known == place);
            let readings = found.map(|index| read.remove(index).1).unwrap_or_default();
            verdicts.push(verdict(
                VerdictOf::Diameter(place),
                zone,
                Mean::of(&readings),
            ));
        }
        let others = read.into_iter().map(|(place, readings)| {
            verdict(VerdictOf::Diameter(place), zone, Mean::of(&readings))
        });
        verdicts.extend(others);
    }
    let asked = job.wanted.roughness.as_ref().map(Entered::value);
    if let Some(most) = asked.filter(|most| *most > Length::ZERO) {
        let zone = Zone {
            lower: None,
            upper: Some(most),
        };
        let readings: Vec<_> = since_last_cut(job)
            .into_iter()
            .filter(|(_, reading)| reading.of == Measured::Roughness)
            .filter_map(|(_, reading)| corrected(job, reading))
            .collect();
        verdicts.push(verdict(VerdictOf::Roughness, zone, Mean::of(&readings)));
    }
    verdicts
}

fn verdict(of: VerdictOf, zone: Zone, mean: Option<Mean>) -> Verdict {
    let Some(mean) = mean else {
        return Verdict {
            of,
            is: VerdictIs::NotMeasured,
            measured: None,
            uncertainty: Length::ZERO,
            lower: zone.lower,
            upper: zone.upper,
            guard: Length::ZERO,
            odds_in: None,
            more_readings: None,
            readings: 0,
        };
    };
    let with = |more| zone.judge(mean.value, mean.uncertainty_with(more));
    let (is, more_readings) = match zone.judge(mean.value, mean.uncertainty) {
        open @ (VerdictIs::NotProven | VerdictIs::TooCoarse) => {
            let more = (1..=MOST_MORE_READINGS).find(|more| with(*more) == VerdictIs::In);
            // What more readings would narrow enough is only not proven yet.
            let coarse = with(MOST_MORE_READINGS) == VerdictIs::TooCoarse;
            let is = match open {
                VerdictIs::TooCoarse if !coarse => VerdictIs::NotProven,
                other => other,
            };
            (is, more)
        }
        proven => (proven, None),
    };
    Verdict {
        of,
        is,
        measured: Some(mean.figure()),
        uncertainty: mean.uncertainty,
        lower: zone.lower,
        upper: zone.upper,
        guard: mean.uncertainty * GUARD,
        odds_in: Some(zone.odds_in(mean.value, mean.uncertainty)),
        more_readings,
        readings: mean.readings,
    }
}

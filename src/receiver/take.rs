//! The receiver's limits as something to enter.

use super::asked;
use crate::job::{Field, Job, Receiver, Tolerance, Wanted};
use crate::plan::Checked;
use crate::quantity::{Entered, Entry, Length, Unit};
use crate::tables::{Shank, ShankTolerance};

/// What is wanted with the limits that the receiver asks for, and with its diameter where it takes one size only.
///
/// `None` where it asks for none, or all is as it asks already.
///
/// # Example
/// ```
/// use skimwright::job::{Job, Receiver};
/// use skimwright::receiver::with_its_limits;
/// use skimwright::tables::ShankSize;
/// let mut job = Job::default();
/// let shank = ShankSize::from_code("flat-18").unwrap();
/// job.wanted.receiver = Receiver::SideLock { shank };
/// let wanted = with_its_limits(&job).unwrap();
/// assert_eq!(wanted.diameter.entry().to_string(), "18 mm");
/// job.wanted = wanted;
/// assert_eq!(with_its_limits(&job), None);
/// ```
pub fn with_its_limits(job: &Job) -> Option<Wanted> {
    let mut wanted = job.wanted.clone();
    if let Receiver::SideLock { shank } = &job.wanted.receiver {
        let shank = shank.get()?;
        if wanted.diameter.value() != shank.diameter {
            wanted.diameter = standard_length(shank, shank.diameter)?;
        }
        wanted.tolerance = standard_tolerance(shank)?;
    } else {
        let checked = Checked::new(job);
        let nominal = checked.length(Field::WantedDiameter)?;
        let asked = asked(job, &checked, nominal);
        wanted.tolerance = Tolerance::Class(asked.class.filter(|_| asked.limits.is_some())?);
    }
    (wanted != job.wanted).then_some(wanted)
}

/// The tolerance of a standard shank.
pub(super) fn standard_tolerance(shank: &Shank) -> Option<Tolerance> {
    Some(match shank.tolerance {
        ShankTolerance::Class(class) => Tolerance::Class(class),
        ShankTolerance::Limits(limits) => Tolerance::Limits {
            upper: standard_length(shank, limits.upper)?,
            lower: standard_length(shank, limits.lower)?,
        },
    })
}

/// A length of a standard shank in the unit that its standard is written in.
pub(super) fn standard_length(shank: &Shank, length: Length) -> Option<Entered<Length>> {
    if shank.is_inch() {
        plain(length.to_inch(), Unit::Inch)
    } else {
        plain(length.to_mm(), Unit::Millimetre)
    }
}

/// A plain number with no more decimals than it needs, at most five.
pub(super) fn plain(value: f64, unit: Unit) -> Option<Entered<Length>> {
    let needed = (0..5).find(|decimals| {
        let scale = 10_f64.powi(i32::from(*decimals));
        ((value * scale).round() / scale - value).abs() < crate::part::SAME
    });
    Entry::decimal(value, needed.unwrap_or(5), unit).and_then(Entered::new)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Code, plan};
    use crate::tables::{ColletSize, HoleClass, SeatLoad, ShaftClass, ShankSize, SleeveDuty};

    fn with(receiver: Receiver) -> Job {
        let mut job = Job::default();
        job.wanted.receiver = receiver;
        job
    }

    #[test]
    fn limits_that_were_taken_are_those_asked_for() {
        let mm = |text| Entered::read(text, Unit::Millimetre).unwrap();
        let receivers = [
            Receiver::Bearing {
                load: SeatLoad::RotatingNormal,
                ring_chamfer: mm("1"),
            },
            Receiver::Sleeve {
                duty: SleeveDuty::FullTorque,
                material: crate::tables::WorkMaterial::MediumCarbonSteel,
                outside: mm("22"),
                edge: None,
            },
            Receiver::SideLock {
                shank: ShankSize::from_code("inch-flat-3/4").unwrap(),
            },
            Receiver::SideLock {
                shank: ShankSize::from_code("flat-20").unwrap(),
            },
        ];
        for receiver in receivers {
            let mut job = with(receiver);
            job.wanted.tolerance = Tolerance::Class(ShaftClass::H11);
            let asks = |job: &Job| {
                let others = |code| {
                    matches!(
                        code,
                        Code::LimitsAsked { .. } | Code::ReceiverTakesOthers { .. }
                    )
                };
                plan(job).findings.iter().any(|it| others(it.code))
            };
            assert!(asks(&job), "{:?}", job.wanted.receiver);
            job.wanted = with_its_limits(&job).unwrap();
            assert!(!asks(&job), "{:?}", job.wanted.receiver);
            assert_eq!(with_its_limits(&job), None);
        }
    }

    #[test]
    fn what_asks_for_nothing_offers_nothing() {
        assert_eq!(with_its_limits(&Job::default()), None);
        let hole = HoleClass::H7;
        assert_eq!(
            with_its_limits(&with(Receiver::PlainBore { hole, edge: None })),
            None
        );
        // Between the sizes of a collet there are no limits to ask for.
        let collet = ColletSize::from_code("collet-8").unwrap();
        assert_eq!(with_its_limits(&with(Receiver::Collet { collet })), None);
    }
}

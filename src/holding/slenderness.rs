//! Overhang against diameter: when to use a centre, and when to expect chatter whatever is reckoned.
//!
//! These are rules of thumb for the first look. Where the deflection is known, it decides.

use serde::Serialize;

use crate::job::Support;
use crate::quantity::Length;

/// How slender work is for the way it is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Caution {
    /// Nothing to fear.
    None,
    /// Chatter may start: light cuts, a sharp tool, a small nose radius.
    Careful,
    /// Too slender: it will spring and chatter.
    TooSlender,
}

/// What to do about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Remedy {
    /// Nothing.
    Nothing,
    /// Support the free end with a centre, or stick less out.
    UseCentre,
    /// A steady rest, or one that follows the tool.
    UseSteady,
}

/// Whether the work is hardened.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Hardened {
    /// Soft or tempered.
    No,
    /// Hardened: the forces away from the tool are high for the depth of cut.
    Yes,
}

/// Where caution begins, and where it is no use, as overhang over diameter.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SlendernessLimits {
    /// Up to here there is nothing to fear.
    pub easy: f64,
    /// Beyond here it is too slender.
    pub most: f64,
}

impl SlendernessLimits {
    /// The limits for a way of holding.
    ///
    /// # Source
    /// From memory: chuck only 3 to 4, with a centre 8 to 10, hardened steel 8. A trade article on long shafts says
    /// that 4 is where to start to worry, and 10 too flexible.
    pub const fn of(support: Support, hardened: Hardened) -> Self {
        match (support, hardened) {
            (Support::Chuck | Support::Collet, _) => Self {
                easy: 3.0,
                most: 4.0,
            },
            (_, Hardened::No) => Self {
                easy: 8.0,
                most: 10.0,
            },
            // The worry begins where the article has it for any long shaft.
            (_, Hardened::Yes) => Self {
                easy: 4.0,
                most: 8.0,
            },
        }
    }
}

/// Overhang over diameter above which the free end wants a centre. A lathe owner's manual, general rule; one source.
pub const CENTRE_ABOVE: f64 = 2.5;

/// How slender the work is, and what to do.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Slenderness {
    /// Overhang over diameter.
    pub ratio: f64,
    /// How much to fear.
    pub caution: Caution,
    /// What helps.
    pub remedy: Remedy,
}

/// How slender work is that sticks `overhang` out of the chuck, or is `overhang` long between centres; `None` without a
/// diameter.
///
/// `diameter`: of plain work its own; of stepped work that of [`Beam::equal_diameter`](super::Beam::equal_diameter).
///
/// # Accuracy
/// Rules of thumb.
/// # Source
/// [`SlendernessLimits::of`] and [`CENTRE_ABOVE`].
/// # Example
/// ```
/// use skimwright::holding::{Caution, Hardened, Remedy, Support, slenderness};
/// use skimwright::quantity::Length;
/// let mm = Length::mm;
/// let work = slenderness(mm(56.0), mm(20.0), Support::Chuck, Hardened::No).unwrap();
/// assert_eq!((work.caution, work.remedy), (Caution::None, Remedy::UseCentre));
/// ```
pub fn slenderness(
    overhang: Length,
    diameter: Length,
    support: Support,
    hardened: Hardened,
) -> Option<Slenderness> {
    if diameter <= Length::ZERO {
        return None;
    }
    let ratio = overhang / diameter;
    let limits = SlendernessLimits::of(support, hardened);
    let caution = if ratio <= limits.easy {
        Caution::None
    } else if ratio <= limits.most {
        Caution::Careful
    } else {
        Caution::TooSlender
    };
    let remedy = match support {
        Support::Chuck | Support::Collet if ratio > CENTRE_ABOVE => {
            // A centre does not help where even with one the work is too slender.
            let with_centre = SlendernessLimits::of(Support::ChuckAndCentre, hardened);
            if ratio > with_centre.most {
                Remedy::UseSteady
            } else {
                Remedy::UseCentre
            }
        }
        Support::ChuckAndCentre | Support::BetweenCentres if ratio > limits.most => {
            Remedy::UseSteady
        }
        _ => Remedy::Nothing,
    };
    Some(Slenderness {
        ratio,
        caution,
        remedy,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn look(ratio: f64, support: Support, hardened: Hardened) -> (Caution, Remedy) {
        let work = slenderness(
            Length::mm(10.0 * ratio),
            Length::mm(10.0),
            support,
            hardened,
        );
        let work = work.unwrap();
        (work.caution, work.remedy)
    }

    #[test]
    fn both_sides_of_every_limit() {
        let (no, yes) = (Hardened::No, Hardened::Yes);
        for (ratio, support, hardened, caution, remedy) in [
            (2.5, Support::Chuck, no, Caution::None, Remedy::Nothing),
            (2.6, Support::Collet, no, Caution::None, Remedy::UseCentre),
            (3.1, Support::Chuck, no, Caution::Careful, Remedy::UseCentre),
            (
                4.1,
                Support::Chuck,
                yes,
                Caution::TooSlender,
                Remedy::UseCentre,
            ),
            (
                8.1,
                Support::Chuck,
                yes,
                Caution::TooSlender,
                Remedy::UseSteady,
            ),
            (
                8.1,
                Support::Chuck,
                no,
                Caution::TooSlender,
                Remedy::UseCentre,
            ),
            (
                10.1,
                Support::Chuck,
                no,
                Caution::TooSlender,
                Remedy::UseSteady,
            ),
            (
                8.0,
                Support::ChuckAndCentre,
                no,
                Caution::None,
                Remedy::Nothing,
            ),
            (
                8.1,
                Support::BetweenCentres,
                no,
                Caution::Careful,
                Remedy::Nothing,
            ),
            (
                8.1,
                Support::BetweenCentres,
                yes,
                Caution::TooSlender,
                Remedy::UseSteady,
            ),
            (
                4.1,
                Support::ChuckAndCentre,
                yes,
                Caution::Careful,
                Remedy::Nothing,
            ),
            (
                10.1,
                Support::ChuckAndCentre,
                no,
                Caution::TooSlender,
                Remedy::UseSteady,
            ),
        ] {
            assert_eq!(
                look(ratio, support, hardened),
                (caution, remedy),
                "{ratio} {support:?}"
            );
        }
        assert_eq!(
            slenderness(Length::mm(10.0), Length::ZERO, Support::Chuck, no),
            None
        );
    }
}

//! What a lathe of each class usually has, where its own figures were not entered.
//!
//! * Source: from memory of the data sheets of small and medium lathes; no table was found. All of it is a start: the
//!   figures of the machine itself are better, and each can be entered.
//! * Units: watts, share of the motor's power, revolutions per minute, millimetres per revolution, millimetres.
//! * Left out: the stiffness of each class, which stands with the beam in `holding`.
//! * Checked: by nothing.
//! * Licence: facts only.

use crate::job::Rigidity;
use crate::quantity::{Feed, Length, Power, RotationalSpeed, Share};
use crate::working::Range;

/// What a lathe of one class usually has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsualLathe {
    /// Power of the motor.
    pub power: Power,
    /// The share of it that reaches the spindle: belts and gears take the rest.
    pub efficiency: Share,
    /// Spindle speeds.
    pub speeds: Range<RotationalSpeed>,
    /// Feeds along the work.
    pub feeds: Range<Feed>,
    /// One division of the compound slide's dial: what the slide moves.
    pub compound_graduation: Length,
}

/// What a lathe of this class usually has.
///
/// # Source
/// From memory; see the head of this file.
/// # Example
/// ```
/// use skimwright::job::Rigidity;
/// use skimwright::quantity::Power;
/// use skimwright::tables::usual_lathe;
/// assert_eq!(usual_lathe(Rigidity::Light).power, Power::watts(550.0));
/// ```
pub const fn usual_lathe(class: Rigidity) -> UsualLathe {
    let (watts, efficiency, speeds, feeds) = match class {
        Rigidity::Light => (550.0, 0.75, (50.0, 2500.0), (0.04, 0.3)),
        Rigidity::Medium => (1500.0, 0.75, (40.0, 2000.0), (0.04, 0.5)),
        Rigidity::Heavy => (4000.0, 0.8, (25.0, 1600.0), (0.04, 1.0)),
    };
    UsualLathe {
        power: Power::watts(watts),
        efficiency: Share::of_whole(efficiency),
        speeds: Range {
            low: RotationalSpeed::per_min(speeds.0),
            high: RotationalSpeed::per_min(speeds.1),
        },
        feeds: Range {
            low: Feed::mm_per_rev(feeds.0),
            high: Feed::mm_per_rev(feeds.1),
        },
        compound_graduation: Length::mm(0.02),
    }
}

/// The infeed on radius that one division of the compound slide should give when it is set over for the last cuts.
///
/// # Source
/// Two micrometres: common practice, no source.
pub const USUAL_FINE_INFEED: Length = Length::mm(0.002);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn heavier_lathes_have_more_power_and_turn_slower() {
        for pair in Rigidity::ALL.windows(2) {
            let (lighter, heavier) = (usual_lathe(pair[0]), usual_lathe(pair[1]));
            assert!(lighter.power < heavier.power);
            assert!(heavier.speeds.high < lighter.speeds.high);
            assert!(lighter.feeds.high < heavier.feeds.high);
            assert!(heavier.speeds.low < heavier.speeds.high);
        }
    }
}

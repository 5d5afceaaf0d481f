//! Published figures: standards and handbooks, one file each, and how far each row has been checked.
//!
//! Facts and numbers only; no text or drawing of a standard is reproduced.
//! A number stands in one table and nowhere else, and a table does no arithmetic beyond its unit.

/// Declares the place of a row in a table whose order never changes.
macro_rules! row_index {
    ($(#[$doc:meta])* $name:ident, $row:ty, $table:ident, $code:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(u8);

        impl $name {
            /// The first row.
            pub(crate) const FIRST: Self = Self(0);

            /// The row with this number, as a link stores it; `None` past the end of the table.
            pub fn from_index(index: u8) -> Option<Self> {
                (usize::from(index) < $table.len()).then_some(Self(index))
            }

            /// The number of the row, counted from nought. It never changes from one release to the next.
            pub const fn index(self) -> u8 {
                self.0
            }

            /// The row itself.
            pub fn get(self) -> Option<&'static $row> {
                $table.get(usize::from(self.0))
            }

            /// A short text for files, which never changes either.
            pub fn code(self) -> &'static str {
                self.get().map_or("", |row| row.$code)
            }

            /// The row whose [`code`](Self::code) this is, letter for letter; `None` if there is none.
            pub fn from_code(code: &str) -> Option<Self> {
                Self::all().find(|size| size.code() == code)
            }

            /// Every row, in the order of the table.
            pub fn all() -> impl Iterator<Item = Self> {
                (0..=u8::MAX).map_while(Self::from_index)
            }
        }
    };
}

mod bearings;
mod centre_drills;
mod collets;
mod cutting_data;
mod cutting_groups;
mod file_bite;
mod fits;
mod group_classes;
mod hardness;
mod hardness_limits;
mod instruments;
mod iso286;
mod jaw_grip;
mod lathes;
mod materials;
mod mechanical;
mod morse_ends;
mod points;
mod scales;
mod shanks;
mod specific_force;
mod tapers;
mod threads;
mod tools;

pub use bearings::{
    CONFIRMED_BEARING_BORE, CONFIRMED_SEAT_CLASS, SeatFinish, SeatLoad, bearing_bore,
    confirmed_fillet, confirmed_shoulder, largest_fillet, least_shoulder, seat_class, seat_finish,
};
pub use centre_drills::{CENTRE_DRILLS, CentreDrill, CentreDrillSize, CentreDrillStandard};
pub use collets::{COLLETS, Collet, ColletSize, ColletSystem};
pub use cutting_data::{Condition, SpeedWindow, cutting_speed};
pub use cutting_groups::{
    CUTTING_GROUPS, ClassForce, CuttingGroup, CuttingGroupData, GroupCondition, IsoGroup,
    SECOND_CLASSES, SteelFamily,
};
pub use file_bite::{FileBite, FileHardness};
pub use fits::{CONFIRMED_SLEEVE_RULES, FitKind, SleeveDuty, interference, least_sleeve_wall};
pub use hardness::{OtherScales, confirmed_tensile_strength, other_scales, tensile_strength};
pub(crate) use hardness_limits::hard_steel_window;
pub use hardness_limits::{CONFIRMED_HARDNESS_LIMITS, HARDEST_TURNED, HardnessLimits};
pub use instruments::{
    COARSE_CALLIPER_ERRORS, COMPARATOR_ERROR, CONFIRMED_USUAL_INSTRUMENTS, FINE_CALLIPER_ERRORS,
    FINE_CALLIPER_STEP, GAUGE_BLOCK_ERRORS, INDICATOR_ERRORS, MICROMETER_ERRORS, MICROMETER_FACE,
    UpTo, UsualInstrument, confirmed_instrument_errors, instrument_error, instrument_errors,
    usual_instrument,
};
pub use iso286::{
    Deviations, HoleClass, ShaftClass, confirmed_deviations, confirmed_hole_deviations, deviations,
    hole_deviations, tolerance_grade,
};
pub use jaw_grip::{
    CONFIRMED_CENTRE_HOLES, CONFIRMED_JAW_FRICTION, CONFIRMED_SCROLL_CHUCKS, GRIP_SAFETY_OF_CHUCK,
    GRIP_SAFETY_OF_CUT, GrippedSurface, HAND_TIGHT_SHARE, HARD_CENTRE_HOLE, JAW_FRICTION,
    JawFriction, JawSurface, PLAIN_CENTRE_HOLE, SCROLL_CHUCKS, SOFT_CENTRE_HOLE, ScrollChuck,
    TEETH_BITE_UP_TO, jaw_friction,
};
pub use lathes::{USUAL_FINE_INFEED, UsualLathe, usual_lathe};
pub use materials::{DENSITIES, DensityRange, MaterialDensity, WorkMaterial};
pub use mechanical::Mechanical;
pub use morse_ends::{MORSE_ENDS, MorseEnd};
pub(crate) use points::{points_from_brinell, points_from_vickers};
pub use scales::{HardnessBasis, HardnessScales, rockwell_from_brinell, rockwell_from_vickers};
pub use shanks::{
    CONFIRMED_HYDRAULIC_INSERTION, EndThread, HYDRAULIC_BORES, INCLINED_FLAT_ANGLE, InclinedFlat,
    SHANKS, Shank, ShankDetail, ShankFlat, ShankForm, ShankSize, ShankTolerance,
    hydraulic_insertion,
};
pub use specific_force::{SpecificForce, specific_force};
pub use tapers::{StandardTaper, TAPERS, TaperSeries, TaperSize};
pub use threads::{StandardThread, THREADS, ThreadSeries, ThreadSize};
pub use tools::{Taylor, ToolKind, ToolUsual, tool_usual};

/// How far a figure was checked before it went into a table, best first.
///
/// No standard was read in full: a source here is a printed or published copy, a handbook or a maker's list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Confirmed {
    /// Two sources, apart from each other, print the same.
    TwoSources,
    /// One source prints it, or a rule of the standard gives it.
    OneSource,
    /// Written from memory of the standard or of common practice; nothing printed was seen.
    Memory,
}

impl Confirmed {
    /// The weaker of two marks: that of a figure which rests on both.
    ///
    /// # Example
    /// ```
    /// use skimwright::tables::Confirmed;
    /// assert_eq!(Confirmed::TwoSources.weaker(Confirmed::Memory), Confirmed::Memory);
    /// ```
    #[must_use]
    pub fn weaker(self, other: Self) -> Self {
        self.max(other)
    }
}

/// A value with its spread.
#[derive(Clone, Copy, Debug, PartialEq, serde::Serialize)]
pub struct Spread<Q> {
    /// The least.
    pub low: Q,
    /// The value to use.
    pub typical: Q,
    /// The greatest.
    pub high: Q,
}

impl<Q: Copy> Spread<Q> {
    /// Three times the same.
    pub const fn exact(value: Q) -> Self {
        Self {
            low: value,
            typical: value,
            high: value,
        }
    }

    /// The same spread of something that follows from each.
    pub fn map<R>(self, mut each: impl FnMut(Q) -> R) -> Spread<R> {
        Spread {
            low: each(self.low),
            typical: each(self.typical),
            high: each(self.high),
        }
    }

    /// Two spreads side by side.
    pub fn zip<R: Copy>(self, other: Spread<R>) -> Spread<(Q, R)> {
        Spread {
            low: (self.low, other.low),
            typical: (self.typical, other.typical),
            high: (self.high, other.high),
        }
    }
}

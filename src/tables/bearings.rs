//! Seats for rolling bearings: which class, how large a fillet, how high a shoulder, how smooth and how true.
//!
//! * Source: rolling-bearing catalogues in common use (seat classes, fillets, shoulders, roughness and form), which
//!   follow ISO 582 for ring chamfers; ISO 492, normal class, for the bore of the ring; ISO 286-1, table 1, for IT4.
//! * Units: millimetres and micrometres; a step is over the bound before it and up to and including its own.
//! * What is what: the classes are for ball bearings on a solid steel shaft. The fillet is the largest that a ring of
//!   this least chamfer clears; the shoulder is the least height beside the seat, on radius.
//! * Where catalogues disagree, the careful value stands: fillet 0.1 mm for chamfer 0.15 mm; shoulder 2.8 mm for chamfer
//!   1 mm (2.75 in one). Shoulders differ by up to half a millimetre between catalogues. Older ones ask j6, k6 or m6
//!   where newer ones say k5 or m5.
//! * Left out: roller bearings, housings, sleeves, hollow shafts, seats over 180 mm.
//! * Checked: classes by one source; fillets up to chamfer 1.5 mm by one, from 0.1 mm up; shoulders for chamfers 1 and
//!   1.1 mm by one; the rest, with the bores of the rings and IT4, is from memory.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource};
use super::iso286::{STEP_BOUND, find_step};
use super::{Deviations, ShaftClass, tolerance_grade};
use crate::quantity::Length;

/// How the inner ring of a ball bearing is loaded, which says how tight it must sit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SeatLoad {
    /// The shaft turns under a light load, up to a twentieth of the bearing's dynamic rating.
    RotatingLight,
    /// The shaft turns under a normal or heavy load.
    RotatingNormal,
    /// The shaft stands and the ring must slide along it easily.
    StationaryEasy,
    /// The shaft stands, and the ring need not slide.
    Stationary,
    /// The load is along the axis only.
    AxialOnly,
}

impl SeatLoad {
    /// Every kind, in the order in which links count them: append only.
    pub const ALL: [Self; 5] = [
        Self::RotatingLight,
        Self::RotatingNormal,
        Self::StationaryEasy,
        Self::Stationary,
        Self::AxialOnly,
    ];

    /// The text that stands for it in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::RotatingLight => "rotating-light",
            Self::RotatingNormal => "rotating-normal",
            Self::StationaryEasy => "stationary-easy",
            Self::Stationary => "stationary",
            Self::AxialOnly => "axial-only",
        }
    }

    /// The kind with this code, letter for letter.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|load| load.code() == code)
    }
}

/// The usual class of a ball bearing's seat on a solid steel shaft.
///
/// `bore`: bore of the ring, over 0 and up to 180 mm, under a rotating light load up to 140 mm; `None` outside it.
///
/// # Source
/// Rolling-bearing catalogues in common use; one source. k6 often stands in for k5 with single-row bearings.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::{SeatLoad, ShaftClass, seat_class};
/// let seat = seat_class(SeatLoad::RotatingNormal, Length::mm(30.0));
/// assert_eq!(seat, Some(ShaftClass::K5));
/// ```
pub fn seat_class(load: SeatLoad, bore: Length) -> Option<ShaftClass> {
    use ShaftClass::{G6, H6, J5, J6, Js5, K5, K6, M5, M6};
    let steps: &'static [(u8, ShaftClass)] = match load {
        SeatLoad::RotatingLight => &[(17, Js5), (100, J6), (140, K6)],
        SeatLoad::RotatingNormal => &[(10, Js5), (17, J5), (100, K5), (140, M5), (180, M6)],
        SeatLoad::StationaryEasy => &[(180, G6)],
        SeatLoad::Stationary => &[(180, H6)],
        SeatLoad::AxialOnly => &[(180, J6)],
    };
    find_step(steps, |step| step.0, bore).map(|step| step.1)
}

/// How far [`seat_class`] was checked.
pub const CONFIRMED_SEAT_CLASS: Confirmed = OneSource;

/// The limits of a normal-class bearing's bore: its mean diameter lies from nominal down, never above.
///
/// `bore`: over 0 and up to 180 mm; `None` outside it.
///
/// # Source
/// ISO 492, normal class, mean bore deviation; from memory.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::bearing_bore;
/// assert_eq!(bearing_bore(Length::mm(25.0)).unwrap().lower, Length::um(-10.0));
/// ```
pub fn bearing_bore(bore: Length) -> Option<Deviations> {
    let step = ring_step(bore)?;
    Some(Deviations::um(0.0, -f64::from(step.bore)))
}

/// How far [`bearing_bore`] was checked.
pub const CONFIRMED_BEARING_BORE: Confirmed = Memory;

/// The largest fillet on the shaft that clears a ring with this least chamfer.
///
/// `chamfer`: the least chamfer `r_s` of the ring, 0.05 to 9.5 mm; one between two of the table counts as the smaller.
/// `None` outside it.
///
/// # Source
/// Rolling-bearing catalogues, to the chamfers of ISO 582; one source from 0.1 to 1.5 mm, else from memory.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::largest_fillet;
/// assert_eq!(largest_fillet(Length::mm(1.1)), Some(Length::mm(1.0)));
/// assert_eq!(largest_fillet(Length::mm(0.01)), None);
/// ```
pub fn largest_fillet(chamfer: Length) -> Option<Length> {
    if chamfer > CHAMFERS.last()?.chamfer + STEP_BOUND {
        return None;
    }
    let row = CHAMFERS
        .iter()
        .rev()
        .find(|row| row.chamfer <= chamfer + STEP_BOUND)?;
    Some(row.fillet)
}

/// The least height of the shoulder beside a ring with this least chamfer, on radius.
///
/// `chamfer`: the least chamfer `r_s` of the ring, over 0 and up to 9.5 mm; one between two of the table counts as the
/// larger.
///
/// # Source
/// Rolling-bearing catalogues, which differ by up to 0.5 mm; one source for chamfers 1 and 1.1 mm, else from memory.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::least_shoulder;
/// assert_eq!(least_shoulder(Length::mm(1.1)), Some(Length::mm(3.5)));
/// ```
pub fn least_shoulder(chamfer: Length) -> Option<Length> {
    if chamfer <= Length::ZERO {
        return None;
    }
    let row = CHAMFERS
        .iter()
        .find(|row| chamfer <= row.chamfer + STEP_BOUND)?;
    Some(row.shoulder)
}

/// How far the cell that [`largest_fillet`] reads was checked; `None` where it has no cell.
pub fn confirmed_fillet(chamfer: Length) -> Option<Confirmed> {
    let fillet = largest_fillet(chamfer)?;
    let printed = Length::mm(0.1) <= fillet && fillet <= Length::mm(1.5);
    Some(if printed { OneSource } else { Memory })
}

/// How far the cell that [`least_shoulder`] reads was checked; `None` where it has no cell.
pub fn confirmed_shoulder(chamfer: Length) -> Option<Confirmed> {
    let shoulder = least_shoulder(chamfer)?;
    let printed = Length::mm(2.8) <= shoulder && shoulder <= Length::mm(3.5);
    Some(if printed { OneSource } else { Memory })
}

/// How smooth and how true a seat must be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeatFinish {
    /// Largest arithmetic mean roughness, Ra.
    pub roughness: Length,
    /// Largest total radial run-out of the seat.
    pub runout: Length,
    /// Largest total axial run-out of the shoulder.
    pub shoulder_runout: Length,
    /// How far the weakest of the figures was checked.
    pub confirmed: Confirmed,
}

/// What the seat of a normal-class bearing asks of its surface and form, by the seat's class.
///
/// `bore`: over 0 and up to 180 mm. `None` outside it, and for classes coarser than grade 6.
///
/// # Source
/// Rolling-bearing catalogues: seat IT5/2 and shoulder IT5 for grade 6, IT4/2 and IT4 for grade 5; Ra 0.4 µm for grade 5,
/// 0.8 µm for grade 6 up to 80 mm (from memory), 1.6 µm above. IT4 from memory.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::{ShaftClass, seat_finish};
/// let finish = seat_finish(ShaftClass::K6, Length::mm(25.0)).unwrap();
/// assert_eq!(finish.roughness, Length::um(0.8));
/// assert_eq!(finish.shoulder_runout, Length::um(9.0));
/// ```
pub fn seat_finish(class: ShaftClass, bore: Length) -> Option<SeatFinish> {
    let (roughness, grade, confirmed) = match class.grade() {
        5 => (0.4, Length::um(f64::from(ring_step(bore)?.it4)), Memory),
        6 if bore <= Length::mm(80.0) + STEP_BOUND => (0.8, tolerance_grade(5, bore)?, Memory),
        6 => (1.6, tolerance_grade(5, bore)?, OneSource),
        _ => return None,
    };
    Some(SeatFinish {
        roughness: Length::um(roughness),
        runout: grade / 2.0,
        shoulder_runout: grade,
        confirmed,
    })
}

fn ring_step(bore: Length) -> Option<&'static RingStep> {
    find_step(RING_STEPS, |step| step.upto, bore)
}

/// A step of bores: how far a normal-class bore lies below nominal at most, and IT4, in micrometres.
struct RingStep {
    upto: u8,
    it4: u8,
    bore: u8,
}

const fn ring(upto: u8, it4: u8, bore: u8) -> RingStep {
    RingStep { upto, it4, bore }
}

#[rustfmt::skip]
static RING_STEPS: &[RingStep] = &[
    //    to IT4 bore
    ring(  3,  3,  8),
    ring( 10,  4,  8),
    ring( 18,  5,  8),
    ring( 30,  6, 10),
    ring( 50,  7, 12),
    ring( 80,  8, 15),
    ring(120, 10, 20),
    ring(180, 12, 25),
];

/// A ring's least chamfer, with the largest fillet and the least shoulder.
struct RingCorner {
    chamfer: Length,
    fillet: Length,
    shoulder: Length,
}

const fn chamfer(chamfer: f64, fillet: f64, shoulder: f64) -> RingCorner {
    RingCorner {
        chamfer: Length::mm(chamfer),
        fillet: Length::mm(fillet),
        shoulder: Length::mm(shoulder),
    }
}

#[rustfmt::skip]
static CHAMFERS: &[RingCorner] = &[
    //      r_s   fillet shoulder
    chamfer(0.05, 0.05,  0.3),
    chamfer(0.08, 0.08,  0.3),
    chamfer(0.10, 0.10,  0.4),
    chamfer(0.15, 0.10,  0.6),
    chamfer(0.20, 0.20,  0.8),
    chamfer(0.30, 0.30,  1.25),
    chamfer(0.60, 0.60,  2.25),
    chamfer(1.00, 1.00,  2.8),
    chamfer(1.10, 1.00,  3.5),
    chamfer(1.50, 1.50,  4.25),
    chamfer(2.00, 2.00,  5.0),
    chamfer(2.10, 2.00,  6.0),
    chamfer(2.50, 2.00,  6.0),
    chamfer(3.00, 2.50,  7.0),
    chamfer(4.00, 3.00,  9.0),
    chamfer(5.00, 4.00, 11.0),
    chamfer(6.00, 5.00, 14.0),
    chamfer(7.50, 6.00, 18.0),
    chamfer(9.50, 8.00, 22.0),
];

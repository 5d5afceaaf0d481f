//! Straight shanks of tools, as side-lock, collet, hydraulic and shrink-fit holders ask for them.
//!
//! * Source: ISO 3338-1, -2, -3; DIN 1835-1 forms A, B, D, E; DIN 6535 forms HA, HB, HE; ASME B94.19 (handbook table).
//! * Units: millimetres; the inch shanks are written in inches.
//! * What is what: a flat is given by its length along the axis, the distance of its middle from the end of the shank,
//!   and the height from it to the opposite side. Of two flats this is the one farther from the end: no list says so, but
//!   on a 32 mm shank a second one beyond it would run out of the shank.
//! * Merged: a shank that two standards give alike is one row. Where ISO 3338-1 and DIN 1835-1 ask h8 and DIN 6535 h6,
//!   h6 stands, which serves both. Over the flat DIN 6535 HB is higher at 6, 8 and 10 mm: rows of their own.
//! * Beside the rows, from memory: length +2/0, length of a flat +0.05/0, its place 0/−1, height over it h11; two flats
//!   on inch shanks from 1 in or 1 1/4 in up.
//! * Left out: square ends, coolant holes, centre holes; where the flats of inch shanks lie, and the height over an
//!   inclined flat, were not found.
//! * Checked: diameters and lengths of DIN 6535 by two sources, its flats at 6, 8, 10, 20, 25 and 32 mm by one; two
//!   compilations agree in all lengths. Most else is from memory: measure a real holder before cutting to it.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
use super::iso286::STEP_BOUND;
use super::{Deviations, ShaftClass, deviations};
use crate::quantity::{Angle, Length};
use ShaftClass::{H6, H8};

/// How a straight shank is held from turning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ShankForm {
    /// By friction alone: ISO 3338-1, DIN 1835-1 A, DIN 6535 HA.
    Plain,
    /// By a screw on a flat: ISO 3338-2, DIN 1835-1 B, DIN 6535 HB, ASME B94.19.
    Flat,
    /// By a screw on a flat that slopes by 2°: DIN 1835-1 E, DIN 6535 HE.
    InclinedFlat,
    /// By a thread at its end: ISO 3338-3, DIN 1835-1 D.
    Threaded,
}

impl ShankForm {
    /// Every form, in the order in which they are offered.
    pub const ALL: [Self; 4] = [Self::Plain, Self::Flat, Self::InclinedFlat, Self::Threaded];
}

/// What is cut into a shank besides its diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ShankDetail {
    /// Nothing.
    Plain,
    /// One flat or two.
    Flat(ShankFlat),
    /// An inclined flat.
    InclinedFlat(InclinedFlat),
    /// A thread at the end.
    Threaded(EndThread),
}

/// The flat of a shank for a side-lock holder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShankFlat {
    /// Length of the flat along the axis.
    pub length: Length,
    /// From the end of the shank to the middle of the flat; `None` where it is not known.
    pub centre_from_end: Option<Length>,
    /// From the middle of the flat to that of a second one nearer the end; `None` where there is one flat, or it is
    /// not known.
    pub second_spacing: Option<Length>,
    /// From the flat to the opposite side of the shank.
    pub height: Length,
}

/// The flat that slopes by [`INCLINED_FLAT_ANGLE`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InclinedFlat {
    /// From the end of the shank to where the flat runs out.
    pub runs_out: Length,
    /// From the end of the shank to where the height over the flat is measured. The height itself was not found.
    pub measured_at: Length,
}

/// How far an inclined flat slopes towards the axis. DIN 1835-1 form E, DIN 6535 form HE; from memory.
pub const INCLINED_FLAT_ANGLE: Angle = Angle::degrees(2.0);

/// The thread at the end of a shank: Whitworth form, 20 to the inch, its outside 0.1 mm below the diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EndThread {
    /// Length of the thread from the end.
    pub length: Length,
    /// Outside diameter of the thread.
    pub major: Length,
}

/// How far a shank may lie from its diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ShankTolerance {
    /// By a class of ISO 286.
    Class(ShaftClass),
    /// By limits of its own, as inch shanks.
    Limits(Deviations),
}

/// One size of straight shank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shank {
    /// The text that stands for it in files, such as `flat-25`.
    pub code: &'static str,
    /// The standards that give it.
    pub standards: &'static str,
    /// Diameter.
    pub diameter: Length,
    /// How far the diameter may lie from it.
    pub tolerance: ShankTolerance,
    /// Length of the shank, l1.
    pub length: Length,
    /// What is cut into it.
    pub detail: ShankDetail,
    /// How far diameter and length were checked.
    pub confirmed: Confirmed,
    /// How far the flat or the thread was checked.
    pub confirmed_detail: Confirmed,
}

row_index!(
    /// A size of straight shank: the number of its row.
    ///
    /// # Example
    /// ```
    /// use skimwright::quantity::Length;
    /// use skimwright::tables::{ShankDetail, ShankSize};
    /// let shank = ShankSize::from_code("flat-25").and_then(ShankSize::get).unwrap();
    /// assert_eq!(shank.length, Length::mm(56.0));
    /// let ShankDetail::Flat(flat) = shank.detail else { panic!("a flat shank has a flat") };
    /// assert_eq!(flat.height, Length::mm(23.0));
    /// assert_eq!(flat.second_spacing, Some(Length::mm(17.0)));
    /// ```
    ShankSize, Shank, SHANKS, code
);

impl ShankSize {
    /// The sizes of one form, in the order of the table.
    pub fn of(form: ShankForm) -> impl Iterator<Item = Self> {
        Self::all().filter(move |size| size.get().is_some_and(|shank| shank.form() == form))
    }
}

impl Shank {
    /// How it is held.
    pub const fn form(&self) -> ShankForm {
        match self.detail {
            ShankDetail::Plain => ShankForm::Plain,
            ShankDetail::Flat(_) => ShankForm::Flat,
            ShankDetail::InclinedFlat(_) => ShankForm::InclinedFlat,
            ShankDetail::Threaded(_) => ShankForm::Threaded,
        }
    }

    /// Whether its standard is written in inches.
    pub const fn is_inch(&self) -> bool {
        matches!(self.tolerance, ShankTolerance::Limits(_))
    }

    /// How far its largest and smallest diameter lie from the nominal one.
    ///
    /// # Example
    /// ```
    /// use skimwright::quantity::Length;
    /// use skimwright::tables::ShankSize;
    /// let shank = ShankSize::from_code("plain-20").and_then(ShankSize::get).unwrap();
    /// assert_eq!(shank.deviations().unwrap().lower, Length::um(-13.0));
    /// ```
    pub fn deviations(&self) -> Option<Deviations> {
        match self.tolerance {
            ShankTolerance::Class(class) => deviations(class, self.diameter),
            ShankTolerance::Limits(limits) => Some(limits),
        }
    }
}

/// The least depth to which a shank of this diameter goes into a hydraulic chuck, which asks for class h6.
///
/// `None` for a diameter that no such chuck is made for. Never tighten one empty or on a shorter shank.
///
/// # Source
/// Makers' usual figures for DIN 6535 HA shanks, from memory.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::hydraulic_insertion;
/// assert_eq!(hydraulic_insertion(Length::mm(20.0)), Some(Length::mm(41.0)));
/// assert_eq!(hydraulic_insertion(Length::mm(21.0)), None);
/// ```
pub fn hydraulic_insertion(diameter: Length) -> Option<Length> {
    HYDRAULIC
        .iter()
        .map(|&(bore, depth)| (Length::mm(f64::from(bore)), Length::mm(f64::from(depth))))
        .find(|(bore, _)| (*bore - diameter).abs() <= STEP_BOUND)
        .map(|(_, depth)| depth)
}

/// The least and the greatest bore of hydraulic chucks.
pub const HYDRAULIC_BORES: (Length, Length) = (Length::mm(6.0), Length::mm(32.0));

/// How far [`hydraulic_insertion`] was checked.
pub const CONFIRMED_HYDRAULIC_INSERTION: Confirmed = Memory;

/// Bore and least insertion of hydraulic chucks, millimetres.
#[rustfmt::skip]
static HYDRAULIC: [(u8, u8); 10] = [
    (6, 27), (8, 27), (10, 31), (12, 36), (14, 36), (16, 39), (18, 39), (20, 41), (25, 47), (32, 51),
];

const ISO_PLAIN: &str = "ISO 3338-1, DIN 1835-1 A";
const ANY_PLAIN: &str = "ISO 3338-1, DIN 1835-1 A, DIN 6535 HA";
const HA: &str = "DIN 6535 HA";
const ISO_FLAT: &str = "ISO 3338-2, DIN 1835-1 B";
const ANY_FLAT: &str = "ISO 3338-2, DIN 1835-1 B, DIN 6535 HB";
const HB: &str = "DIN 6535 HB";
const ANY_INCLINED: &str = "DIN 1835-1 E, DIN 6535 HE";
const HE: &str = "DIN 6535 HE";
const THREADED: &str = "ISO 3338-3, DIN 1835-1 D";
const INCH: &str = "ASME B94.19";

/// A metric row.
const fn shank(
    code: &'static str,
    standards: &'static str,
    diameter: f64,
    class: ShaftClass,
    length: f64,
    detail: ShankDetail,
    (confirmed, confirmed_detail): (Confirmed, Confirmed),
) -> Shank {
    Shank {
        code,
        standards,
        diameter: Length::mm(diameter),
        tolerance: ShankTolerance::Class(class),
        length: Length::mm(length),
        detail,
        confirmed,
        confirmed_detail,
    }
}

const fn plain(
    code: &'static str,
    standards: &'static str,
    diameter: f64,
    class: ShaftClass,
    length: f64,
    confirmed: Confirmed,
) -> Shank {
    let marks = (confirmed, confirmed);
    shank(
        code,
        standards,
        diameter,
        class,
        length,
        ShankDetail::Plain,
        marks,
    )
}

/// Diameter and length, then the flat: length, middle from the end, spacing of the second, height.
const fn flat(
    code: &'static str,
    standards: &'static str,
    (diameter, length): (f64, f64),
    (flat, centre, spacing, height): (f64, f64, Option<f64>, f64),
    marks: (Confirmed, Confirmed),
) -> Shank {
    let detail = ShankDetail::Flat(ShankFlat {
        length: Length::mm(flat),
        centre_from_end: Some(Length::mm(centre)),
        second_spacing: match spacing {
            Some(spacing) => Some(Length::mm(spacing)),
            None => None,
        },
        height: Length::mm(height),
    });
    shank(code, standards, diameter, H6, length, detail, marks)
}

const fn inclined(
    code: &'static str,
    standards: &'static str,
    diameter: f64,
    length: f64,
    runs_out: f64,
    measured_at: f64,
) -> Shank {
    let detail = ShankDetail::InclinedFlat(InclinedFlat {
        runs_out: Length::mm(runs_out),
        measured_at: Length::mm(measured_at),
    });
    let marks = (TwoSources, Memory);
    shank(code, standards, diameter, H6, length, detail, marks)
}

const fn threaded(code: &'static str, diameter: f64, length: f64, thread: f64) -> Shank {
    let detail = ShankDetail::Threaded(EndThread {
        length: Length::mm(thread),
        major: Length::mm(diameter - 0.1),
    });
    let marks = (Memory, Memory);
    shank(code, THREADED, diameter, H8, length, detail, marks)
}

/// In inches: diameter, length, length of the flat, height over it.
const fn inch(code: &'static str, diameter: f64, length: f64, flat: f64, height: f64) -> Shank {
    Shank {
        code,
        standards: INCH,
        diameter: Length::inch(diameter),
        tolerance: ShankTolerance::Limits(Deviations {
            upper: Length::ZERO,
            lower: Length::inch(-0.000_5),
        }),
        length: Length::inch(length),
        detail: ShankDetail::Flat(ShankFlat {
            length: Length::inch(flat),
            centre_from_end: None,
            second_spacing: None,
            height: Length::inch(height),
        }),
        confirmed: Memory,
        confirmed_detail: Memory,
    }
}

/// The shanks. Links store the place of a row: the order is frozen, and a new row goes to the end.
#[rustfmt::skip]
pub static SHANKS: &[Shank] = &[
    //    code        standards    d  class  l1    checked
    plain("plain-3",  ANY_PLAIN,  3.0, H6, 28.0, TwoSources),
    plain("plain-4",  ANY_PLAIN,  4.0, H6, 28.0, TwoSources),
    plain("plain-5",  ANY_PLAIN,  5.0, H6, 28.0, TwoSources),
    plain("plain-6",  ANY_PLAIN,  6.0, H6, 36.0, TwoSources),
    plain("plain-8",  ANY_PLAIN,  8.0, H6, 36.0, TwoSources),
    plain("plain-10", ANY_PLAIN, 10.0, H6, 40.0, TwoSources),
    plain("plain-12", ANY_PLAIN, 12.0, H6, 45.0, TwoSources),
    plain("plain-14", HA,        14.0, H6, 45.0, TwoSources),
    plain("plain-16", ANY_PLAIN, 16.0, H6, 48.0, TwoSources),
    plain("plain-18", HA,        18.0, H6, 48.0, TwoSources),
    plain("plain-20", ANY_PLAIN, 20.0, H6, 50.0, TwoSources),
    plain("plain-25", ANY_PLAIN, 25.0, H6, 56.0, TwoSources),
    plain("plain-32", ANY_PLAIN, 32.0, H6, 60.0, TwoSources),
    plain("plain-40", ISO_PLAIN, 40.0, H8, 70.0, Memory),
    plain("plain-50", ISO_PLAIN, 50.0, H8, 80.0, Memory),
    plain("plain-63", ISO_PLAIN, 63.0, H8, 90.0, Memory),
    //   code         standards   d    l1      flat middle second     height   checked: length, flat
    flat("flat-6",    ISO_FLAT, ( 6.0, 36.0), ( 4.2, 18.0, None,        4.8), (Memory,     Memory)),
    flat("flat-8",    ISO_FLAT, ( 8.0, 36.0), ( 5.5, 18.0, None,        6.6), (Memory,     Memory)),
    flat("flat-10",   ISO_FLAT, (10.0, 40.0), ( 7.0, 20.0, None,        8.4), (Memory,     Memory)),
    flat("flat-12",   ANY_FLAT, (12.0, 45.0), ( 8.0, 22.5, None,       10.4), (TwoSources, Memory)),
    flat("flat-14",   HB,       (14.0, 45.0), ( 8.0, 22.5, None,       12.7), (TwoSources, Memory)),
    flat("flat-16",   ANY_FLAT, (16.0, 48.0), (10.0, 24.0, None,       14.2), (TwoSources, Memory)),
    flat("flat-18",   HB,       (18.0, 48.0), (10.0, 24.0, None,       16.2), (TwoSources, Memory)),
    flat("flat-20",   ANY_FLAT, (20.0, 50.0), (11.0, 25.0, None,       18.2), (TwoSources, OneSource)),
    flat("flat-25",   ANY_FLAT, (25.0, 56.0), (12.0, 32.0, Some(17.0), 23.0), (TwoSources, OneSource)),
    flat("flat-32",   ANY_FLAT, (32.0, 60.0), (14.0, 36.0, Some(19.0), 30.0), (TwoSources, OneSource)),
    flat("flat-40",   ISO_FLAT, (40.0, 70.0), (14.0, 40.0, Some(19.0), 38.0), (Memory,     Memory)),
    flat("flat-50",   ISO_FLAT, (50.0, 80.0), (18.0, 45.0, Some(23.0), 47.8), (Memory,     Memory)),
    flat("flat-63",   ISO_FLAT, (63.0, 90.0), (18.0, 50.0, Some(23.0), 60.8), (Memory,     Memory)),
    flat("flat-6-hb", HB,       ( 6.0, 36.0), ( 4.2, 18.0, None,        5.1), (TwoSources, OneSource)),
    flat("flat-8-hb", HB,       ( 8.0, 36.0), ( 5.5, 18.0, None,        6.9), (TwoSources, OneSource)),
    flat("flat-10-hb", HB,      (10.0, 40.0), ( 7.0, 20.0, None,        8.5), (TwoSources, OneSource)),
    //       code           standards      d     l1   runs out  measured at
    inclined("inclined-6",  ANY_INCLINED,  6.0, 36.0, 25.0, 18.0),
    inclined("inclined-8",  ANY_INCLINED,  8.0, 36.0, 25.0, 18.0),
    inclined("inclined-10", ANY_INCLINED, 10.0, 40.0, 28.0, 20.0),
    inclined("inclined-12", ANY_INCLINED, 12.0, 45.0, 33.0, 22.5),
    inclined("inclined-14", HE,           14.0, 45.0, 33.0, 22.5),
    inclined("inclined-16", ANY_INCLINED, 16.0, 48.0, 36.0, 24.0),
    inclined("inclined-18", HE,           18.0, 48.0, 36.0, 24.0),
    inclined("inclined-20", ANY_INCLINED, 20.0, 50.0, 38.0, 25.0),
    inclined("inclined-25", ANY_INCLINED, 25.0, 56.0, 44.0, 32.0),
    inclined("inclined-32", ANY_INCLINED, 32.0, 60.0, 48.0, 35.0),
    //       code            d     l1   thread
    threaded("threaded-6",   6.0, 36.0, 10.0),
    threaded("threaded-10", 10.0, 40.0, 10.0),
    threaded("threaded-12", 12.0, 45.0, 10.0),
    threaded("threaded-16", 16.0, 48.0, 10.0),
    threaded("threaded-20", 20.0, 50.0, 15.0),
    threaded("threaded-25", 25.0, 56.0, 15.0),
    threaded("threaded-32", 32.0, 60.0, 15.0),
    //   code                d      l1        flat   height
    inch("inch-flat-3/8",   0.375, 1.562_50, 0.280, 0.325),
    inch("inch-flat-1/2",   0.500, 1.781_25, 0.330, 0.440),
    inch("inch-flat-5/8",   0.625, 1.906_25, 0.400, 0.560),
    inch("inch-flat-3/4",   0.750, 2.031_25, 0.455, 0.675),
    inch("inch-flat-7/8",   0.875, 2.031_25, 0.455, 0.810),
    inch("inch-flat-1",     1.000, 2.281_25, 0.515, 0.925),
    inch("inch-flat-1-1/4", 1.250, 2.281_25, 0.515, 1.156),
    inch("inch-flat-1-1/2", 1.500, 2.687_50, 0.515, 1.406),
    inch("inch-flat-2",     2.000, 3.250_00, 0.700, 1.900),
    inch("inch-flat-2-1/2", 2.500, 3.500_00, 0.700, 2.400),
];

//! A section that is a taper: its ends and its length; those of a standard one from the gauge plane of its table.
//!
//! The large end lies towards the shoulder. `past_gauge` is how far the section begins on the shoulder's side of the
//! gauge plane; below zero it begins beyond it.

use crate::job::{Field, SectionField, Turned};
use crate::plan::Checked;
use crate::quantity::{Angle, Length, TaperRatio};
use crate::tables::StandardTaper;

/// A taper with everything resolved. Told to be too long, it would come to a point: its small end is zero or less.
pub(crate) struct TaperEnds {
    /// Diameter at the end nearer to the shoulder.
    pub(crate) from_diameter: Length,
    /// Diameter at the end nearer to the free end.
    pub(crate) to_diameter: Length,
    /// Along the axis; zero or less where the section begins beyond the small end.
    pub(crate) length: Length,
}

/// The ratio of a taper of 90 degrees included: 1 in one half.
pub(crate) const STEEPEST: f64 = 0.5;

impl TaperEnds {
    /// The ends of a taper of the job; `None` for any other section, and while a number of it is missing or out of
    /// bounds.
    pub(crate) fn of_section(index: u8, turned: &Turned, checked: &Checked) -> Option<Self> {
        let number = |field| checked.length(Field::Section(index, field));
        let narrowing = |by: &dyn Fn(Length) -> Length| {
            let from_diameter = number(SectionField::ShoulderDiameter)?;
            let length = number(SectionField::Length)?;
            Some(Self {
                from_diameter,
                to_diameter: from_diameter - by(length),
                length,
            })
        };
        match turned {
            Turned::Taper { .. } => Some(Self {
                from_diameter: number(SectionField::ShoulderDiameter)?,
                to_diameter: number(SectionField::EndDiameter)?,
                length: number(SectionField::Length)?,
            }),
            Turned::StandardTaper { taper, length, .. } => {
                let standard = taper.get()?;
                let past_gauge = number(SectionField::PastGauge)?;
                let length = match length {
                    Some(_) => number(SectionField::Length)?,
                    None => usual_length(standard, past_gauge),
                };
                let from_diameter = standard.large_diameter + past_gauge * standard.ratio;
                Some(Self {
                    from_diameter,
                    to_diameter: from_diameter - length * standard.ratio,
                    length,
                })
            }
            Turned::RatioTaper { .. } => {
                let ratio: TaperRatio =
                    checked.value(Field::Section(index, SectionField::Ratio))?;
                // A ratio of nought is no cone; it has a finding, and is drawn as steep as can be.
                let one_in = if ratio.to_one_in() == 0.0 {
                    STEEPEST
                } else {
                    ratio.to_one_in()
                };
                narrowing(&|length| length / one_in)
            }
            Turned::AngleTaper { .. } => {
                let angle: Angle = checked.value(Field::Section(index, SectionField::Angle))?;
                let slope = (angle / 2.0).to_radians().tan();
                narrowing(&|length| length * (2.0 * slope))
            }
            Turned::Cylinder { .. }
            | Turned::Groove { .. }
            | Turned::Thread { .. }
            | Turned::Relief { .. } => None,
        }
    }
}

/// The length of a section that runs to the small end of the table.
pub(crate) fn usual_length(standard: &StandardTaper, past_gauge: Length) -> Length {
    standard.length + past_gauge
}

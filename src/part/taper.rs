//! A section of a standard taper: its ends and its length, from the gauge plane of its table.
//!
//! The large end lies towards the shoulder. `past_gauge` is how far the section begins on the shoulder's side of the
//! gauge plane; below zero it begins beyond it.

use crate::job::{Field, SectionField};
use crate::plan::Checked;
use crate::quantity::Length;
use crate::tables::{StandardTaper, TaperSize};

/// A taper with everything resolved. Told to be too long, it would come to a point: its small end is zero or less.
pub(crate) struct TaperEnds {
    /// Diameter at the end nearer to the shoulder.
    pub(crate) from_diameter: Length,
    /// Diameter at the end nearer to the free end.
    pub(crate) to_diameter: Length,
    /// Along the axis; zero or less where the section begins beyond the small end.
    pub(crate) length: Length,
}

impl TaperEnds {
    /// The ends of a section of the job; `None` while a number of it is missing or out of bounds.
    ///
    /// `typed`: whether the section has a length of its own, or else that of the table.
    pub(crate) fn of_section<T>(
        index: u8,
        taper: TaperSize,
        typed: Option<&T>,
        checked: &Checked,
    ) -> Option<Self> {
        let number = |field| checked.length(Field::Section(index, field));
        let standard = taper.get()?;
        let past_gauge = number(SectionField::PastGauge)?;
        let length = match typed {
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
}

/// The length of a section that runs to the small end of the table.
pub(crate) fn usual_length(standard: &StandardTaper, past_gauge: Length) -> Length {
    standard.length + past_gauge
}

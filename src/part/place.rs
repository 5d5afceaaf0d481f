//! Places along the shank told anew, from the other end or by another side, without anything being moved.

use super::profile::SAME;
use super::received::Received;
use super::sections::SectionShape;
use crate::job::{Cut, Datum, Place};
use crate::quantity::{Angle, Dimension, Entered, Entry, Length, Number, TaperRatio, Units};

impl Received {
    /// The place that lets a section begin at `begin`, z from the shoulder, told from a datum in the units in use;
    /// `None` where the list has no such section that could be resolved.
    ///
    /// # Accuracy
    /// Exact to a nanometre. What would lie beyond an end of the shank is put at that end: no place is below zero.
    pub fn section_place(
        &self,
        index: u8,
        begin: Length,
        from: Datum,
        units: Units,
    ) -> Option<Place> {
        let section = self.sections.iter().find(|it| it.index == index)?;
        let start = match from {
            Datum::Shoulder => begin,
            Datum::FreeEnd => self.shank_length - begin - (section.to - section.from),
        };
        place(start, from, units)
    }
}

impl Place {
    /// The same place of a cut told from another datum, on a shank that is `whole` long.
    ///
    /// # Accuracy
    /// As for [`Received::section_place`].
    ///
    /// # Example
    /// ```
    /// use skimwright::job::{Cut, Datum, Place};
    /// use skimwright::quantity::{Entered, Length, Unit, Units};
    /// let mm = |text| Entered::read(text, Unit::Millimetre).unwrap();
    /// let keyway = Cut::Keyway { width: mm("5"), depth: mm("3"), length: mm("20") };
    /// let place = Place { from: Datum::FreeEnd, start: mm("10") };
    /// // On 80 mm of shank it ends 50 mm from the shoulder.
    /// let told = place.told_from(Datum::Shoulder, &keyway, Length::mm(80.0), Units::Metric);
    /// assert_eq!(told.unwrap().start, mm("50"));
    /// ```
    pub fn told_from(&self, from: Datum, cut: &Cut, whole: Length, units: Units) -> Option<Self> {
        if from == self.from {
            return Some(self.clone());
        }
        place(whole - self.start.value() - cut.along(), from, units)
    }

    /// The place of another cut with the same middle as this one.
    ///
    /// # Accuracy
    /// As for [`Received::section_place`].
    pub fn with_middle_of(&self, before: &Cut, after: &Cut, units: Units) -> Option<Self> {
        let shift = (before.along() - after.along()) / 2.0;
        if shift == Length::ZERO {
            return Some(self.clone());
        }
        place(self.start.value() + shift, self.from, units)
    }

    /// The place right behind this one, away from its datum, for a copy of the cut, if the shank is long enough;
    /// else the one right before; else the same place.
    ///
    /// # Accuracy
    /// As for [`Received::section_place`].
    pub fn beside(&self, cut: &Cut, whole: Length, units: Units) -> Option<Self> {
        let step = match cut {
            Cut::CrossHole { diameter } => diameter.value() * 2.0,
            Cut::WoodruffKeyway { disc, .. } => disc.value(),
            other => other.along(),
        };
        let start = self.start.value();
        if start + step * 2.0 <= whole {
            place(start + step, self.from, units)
        } else if step <= start {
            place(start - step, self.from, units)
        } else {
            Some(self.clone())
        }
    }
}

impl Cut {
    /// How far it reaches along the axis from where its place is measured to; nought for what is placed by its
    /// middle.
    fn along(&self) -> Length {
        match self {
            Self::Flat { length, .. } | Self::Keyway { length, .. } => length.value(),
            Self::WoodruffKeyway { .. } | Self::CrossHole { .. } | Self::Tang { .. } => {
                Length::ZERO
            }
        }
    }
}

impl SectionShape {
    /// Its length over the change of its diameter, negative where it grows outward; `None` for a cylinder.
    pub fn taper_ratio(&self) -> Option<TaperRatio> {
        let change = self.from_diameter - self.to_diameter;
        (change.abs().to_mm() > SAME).then(|| TaperRatio::one_in((self.to - self.from) / change))
    }

    /// The angle between its opposite sides, negative where it grows outward.
    pub fn included_angle(&self) -> Angle {
        let change = self.from_diameter - self.to_diameter;
        Angle::radians(2.0 * (change / ((self.to - self.from) * 2.0)).atan())
    }
}

/// A place with the fewest digits that leave it where it is.
fn place(start: Length, from: Datum, units: Units) -> Option<Place> {
    let unit = units.typed_unit(Dimension::Length);
    let mm = start.max(Length::ZERO).to_mm();
    let value = mm / unit.in_base_units();
    let written = |decimals| Entered::new(Entry::decimal(value, decimals, unit)?);
    let close = |it: &Entered<Length>| (it.value().to_mm() - mm).abs() < SAME / 2.0;
    let start = (0..=Number::MOST_DECIMALS)
        .filter_map(written)
        .find(close)?;
    Some(Place { from, start })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::{Job, Section, Turned};
    use crate::plan::plan;
    use crate::quantity::Unit;

    fn mm(text: &str) -> Entered<Length> {
        Entered::read(text, Unit::Millimetre).unwrap()
    }

    fn section(length: &str, place: Option<Place>) -> Section {
        let turned = Turned::Cylinder {
            diameter: mm("20"),
            length: mm(length),
        };
        Section { turned, place }
    }

    #[test]
    fn a_section_told_from_either_end_stays_where_it_is() {
        let mut job = Job::default();
        job.part.sections = vec![section("25.4", None), section("1/3 in", None)];
        let whole = plan(&job).shape.received.unwrap();
        let was = whole.sections.get(1).unwrap().from;
        for units in Units::ALL {
            for from in Datum::ALL {
                let place = whole.section_place(1, was, from, units).unwrap();
                let mut told = job.clone();
                // Told from the free end the shank must have its length from elsewhere.
                told.part.shank_length = Some(mm("25.4 mm + 1/3 in"));
                told.part.sections.get_mut(1).unwrap().place = Some(place);
                let plan = plan(&told);
                let shape = plan.shape.received.unwrap();
                let now = shape.sections.get(1).unwrap().from;
                assert!((now - was).abs().to_mm() < SAME, "{units:?} {from:?}");
            }
        }
        assert_eq!(
            whole.section_place(7, was, Datum::Shoulder, Units::Metric),
            None
        );
    }

    #[test]
    fn a_cut_with_another_way_to_be_placed_keeps_its_middle() {
        let keyway = Cut::Keyway {
            width: mm("5"),
            depth: mm("3"),
            length: mm("20"),
        };
        let hole = Cut::CrossHole { diameter: mm("5") };
        let place = Place {
            from: Datum::Shoulder,
            start: mm("10"),
        };
        let middle = place.with_middle_of(&keyway, &hole, Units::Metric).unwrap();
        assert_eq!(middle.start, mm("20"));
        assert_eq!(
            middle.with_middle_of(&hole, &keyway, Units::Metric),
            Some(place)
        );
    }

    #[test]
    fn a_copy_stands_beside_the_cut_where_there_is_room() {
        let flat = |length| Cut::Flat {
            over: mm("18"),
            flats: crate::job::Flats::One,
            length: mm(length),
        };
        let place = Place {
            from: Datum::FreeEnd,
            start: mm("15"),
        };
        let start = |length| {
            let beside = place.beside(&flat(length), Length::mm(50.0), Units::Metric);
            beside.unwrap().start
        };
        assert_eq!(start("12"), mm("27"));
        assert_eq!(start("15"), mm("30"));
        assert_eq!(start("18"), mm("15"), "neither behind nor before");
        assert_eq!(start("30"), mm("15"));
        let hole = Cut::CrossHole { diameter: mm("5") };
        let inward = place.beside(&hole, Length::mm(30.0), Units::Metric);
        assert_eq!(inward.unwrap().start, mm("5"));
    }
}

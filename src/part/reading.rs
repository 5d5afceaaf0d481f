//! From a taper that was measured to the standard taper that it is.

use super::received::Received;
use super::recognise::{Candidate, Measured, TaperReading};
use crate::job::{Field, Job, Section, SectionField, Turned};
use crate::plan::Checked;
use crate::quantity::{Length, Units};

/// How far a diameter may be off while nothing else is known: a calliper read with care, common practice, no source.
pub(crate) const USUAL_DIAMETER_ERROR: Length = Length::mm(0.02);

/// The same for the distance between the places: a rule or depth rod laid along the work, common practice, no source.
pub(crate) const USUAL_LENGTH_ERROR: Length = Length::mm(0.1);

impl TaperReading {
    /// The reading that a section of a job holds: its two diameters and its length, and how far they may be off.
    ///
    /// `None` where the section is no taper of two diameters, or a number of it is missing or out of bounds.
    pub fn of_section(job: &Job, index: u8) -> Option<Self> {
        let section = job.part.sections.get(usize::from(index))?;
        if !matches!(section.turned, Turned::Taper { .. }) {
            return None;
        }
        let checked = Checked::new(job);
        let at = |name| Field::Section(index, name);
        let diameter_error = at(SectionField::DiameterError);
        let diameter = |name| {
            Some(Measured {
                value: checked.length(at(name))?,
                error: checked.or_usual(diameter_error, USUAL_DIAMETER_ERROR)?,
            })
        };
        Some(Self {
            large: diameter(SectionField::ShoulderDiameter)?,
            small: diameter(SectionField::EndDiameter)?,
            distance: Measured {
                value: checked.length(at(SectionField::Length))?,
                error: checked.or_usual(at(SectionField::LengthError), USUAL_LENGTH_ERROR)?,
            },
        })
    }
}

impl Candidate {
    /// Where its gauge plane lies, from the shoulder towards the free end; `None` while the section has no place.
    ///
    /// Below nought it lies in the head. `index`: of the section that was measured, large end towards the shoulder.
    pub fn gauge_plane_from_shoulder(&self, received: &Received, index: u8) -> Option<Length> {
        let section = received.sections.iter().find(|it| it.index == index)?;
        Some(section.from - self.gauge_plane.value)
    }

    /// The section that was measured as this standard taper, large end towards the shoulder: it begins and ends
    /// where it did. `None` where it is no taper of two diameters.
    ///
    /// # Accuracy
    /// The place of the gauge plane to the nearest hundredth of a millimetre, or thousandth of an inch.
    ///
    /// # Example
    /// ```
    /// use skimwright::job::{Section, Turned};
    /// use skimwright::part::{Measured, TaperReading, recognise};
    /// use skimwright::quantity::{Entered, Length, Unit, Units};
    /// let mm = |text| Entered::read(text, Unit::Millimetre).unwrap();
    /// let section = Section::from(Turned::Taper {
    ///     shoulder_diameter: mm("24.071"),
    ///     end_diameter: mm("20.307"),
    ///     length: mm("75"),
    ///     diameter_error: None,
    ///     length_error: None,
    /// });
    /// let at = |value, error| Measured { value: Length::mm(value), error: Length::mm(error) };
    /// let reading = TaperReading { large: at(24.071, 0.02), small: at(20.307, 0.02), distance: at(75.0, 0.1) };
    /// let found = recognise(&reading);
    /// let told = found.candidates[0].as_section(&section, Units::Metric).unwrap();
    /// let Turned::StandardTaper { taper, past_gauge, .. } = told.turned else { panic!() };
    /// // A Morse 3 is 23.825 mm at its gauge plane: 0.246 mm more is 4.9 mm before it, at 1 in 19.922.
    /// assert_eq!(taper.code(), "morse-3");
    /// assert!((past_gauge.value().to_mm() - 4.9).abs() < 0.05);
    /// ```
    pub fn as_section(&self, section: &Section, units: Units) -> Option<Section> {
        let Turned::Taper { length, .. } = &section.turned else {
            return None;
        };
        Some(Section {
            turned: Turned::StandardTaper {
                taper: self.size,
                past_gauge: units.enter_near(-self.gauge_plane.value)?,
                length: Some(length.clone()),
            },
            place: section.place.clone(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::part::recognise;
    use crate::plan::plan;
    use crate::quantity::{Entered, Unit};
    use crate::tables::TAPERS;

    fn mm(value: f64) -> Entered<Length> {
        Entered::read(&format!("{value:.4}"), Unit::Millimetre).unwrap()
    }

    #[test]
    fn every_standard_taper_that_is_recognised_stays_where_it_is() {
        let mut count = 0;
        for taper in TAPERS {
            // Nearly the whole of it, begun a twentieth of its length behind the gauge plane.
            let behind = taper.length * 0.05;
            let length = taper.length * 0.9;
            let large = taper.large_diameter - behind * taper.ratio;
            let mut job = Job::default();
            job.part.sections = vec![
                Turned::Cylinder {
                    diameter: mm(large.to_mm() + 2.0),
                    length: mm(7.0),
                }
                .into(),
                Turned::Taper {
                    shoulder_diameter: mm(large.to_mm()),
                    end_diameter: mm((large - length * taper.ratio).to_mm()),
                    length: mm(length.to_mm()),
                    diameter_error: None,
                    length_error: None,
                }
                .into(),
            ];
            let before = plan(&job).shape.received.unwrap();
            let found = recognise(&TaperReading::of_section(&job, 1).unwrap());
            let it = found
                .candidates
                .iter()
                .find(|it| it.size.code() == taper.code)
                .unwrap();
            let plane = it.gauge_plane_from_shoulder(&before, 1).unwrap();
            assert!(
                (plane - (Length::mm(7.0) - behind)).abs().to_mm() < 0.01,
                "{}",
                taper.code
            );
            let told = it.as_section(&job.part.sections[1], Units::Metric).unwrap();
            job.part.sections[1] = told;
            let after = plan(&job).shape.received.unwrap();
            let (was, is) = (&before.sections[1], &after.sections[1]);
            for (was, is, most) in [
                (was.from, is.from, 1e-9),
                (was.to, is.to, 1e-9),
                (was.from_diameter, is.from_diameter, 0.01),
                (was.to_diameter, is.to_diameter, 0.01),
            ] {
                assert!((was - is).abs().to_mm() < most, "{}", taper.code);
            }
            count += 1;
        }
        assert!(count > 60, "{count}");
    }

    #[test]
    fn only_a_taper_of_two_diameters_is_a_reading() {
        let job = Job::default();
        assert_eq!(TaperReading::of_section(&job, 0), None);
        assert_eq!(TaperReading::of_section(&job, 9), None);
    }
}

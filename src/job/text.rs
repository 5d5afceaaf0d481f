//! The fields that are plain texts: names, and the currency.

use super::{EdgeField, Field, InstrumentField, Job, MachineField, RateField};

impl Field {
    /// The most characters that a field of text takes; `None` for all other fields.
    pub const fn most_characters(self) -> Option<usize> {
        Some(match self {
            Self::Title => Job::MOST_TITLE_CHARACTERS,
            Self::Machine(MachineField::Name)
            | Self::Edge(EdgeField::Name)
            | Self::Instrument(_, InstrumentField::Name)
            | Self::MeasuredBy => Job::MOST_NAME_CHARACTERS,
            Self::Rate(RateField::Currency) => Job::MOST_CURRENCY_CHARACTERS,
            _ => return None,
        })
    }
}

impl Job {
    /// The text of a field; `None` for fields that are no texts.
    pub fn text(&self, field: Field) -> Option<&str> {
        Some(match field {
            Field::Title => &self.title,
            Field::MeasuredBy => &self.record.by,
            Field::Machine(MachineField::Name) => &self.shop.machine.name,
            Field::Edge(EdgeField::Name) => &self.shop.edge.name,
            Field::Rate(RateField::Currency) => &self.shop.rates.currency,
            Field::Instrument(index, InstrumentField::Name) => {
                &self.shop.instruments.get(usize::from(index))?.name
            }
            _ => return None,
        })
    }

    /// Puts a text into a field, cut to what the field takes. False, and nothing changed, for fields that are no
    /// texts.
    ///
    /// # Example
    /// ```
    /// use skimwright::job::{Field, Job};
    /// let mut job = Job::default();
    /// assert!(job.set_text(Field::Title, "Milling arbor"));
    /// assert_eq!(job.text(Field::Title), Some("Milling arbor"));
    /// assert!(!job.set_text(Field::Kerf, "1.3"));
    /// ```
    pub fn set_text(&mut self, field: Field, text: &str) -> bool {
        let place = match field {
            Field::Title => &mut self.title,
            Field::MeasuredBy => &mut self.record.by,
            Field::Machine(MachineField::Name) => &mut self.shop.machine.name,
            Field::Edge(EdgeField::Name) => &mut self.shop.edge.name,
            Field::Rate(RateField::Currency) => &mut self.shop.rates.currency,
            Field::Instrument(index, InstrumentField::Name) => {
                match self.shop.instruments.get_mut(usize::from(index)) {
                    Some(instrument) => &mut instrument.name,
                    None => return false,
                }
            }
            _ => return false,
        };
        let most = field.most_characters().unwrap_or_default();
        *place = text.chars().take(most).collect();
        true
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_cut_to_what_its_field_takes() {
        let fields = [
            Field::Title,
            Field::MeasuredBy,
            Field::Machine(MachineField::Name),
            Field::Edge(EdgeField::Name),
            Field::Rate(RateField::Currency),
        ];
        for field in fields {
            let mut job = Job::default();
            let most = field.most_characters().unwrap_or_default();
            assert!(job.set_text(field, &"é".repeat(most + 1)), "{field}");
            assert_eq!(job.text(field), Some("é".repeat(most).as_str()), "{field}");
            assert!(job.set_text(field, ""), "{field}");
            assert_eq!(job, Job::default(), "{field}");
        }
    }

    #[test]
    fn an_instrument_has_a_name_only_where_there_is_one() {
        let name = |index| Field::Instrument(index, InstrumentField::Name);
        let mut job = Job::default();
        assert!(!job.set_text(name(0), "Old one"));
        assert_eq!(job.text(name(0)), None);
        job.shop.instruments = vec![crate::job::Instrument::default(); 2];
        assert!(job.set_text(name(1), &"é".repeat(41)));
        assert_eq!(job.text(name(0)), Some(""));
        assert_eq!(job.text(name(1)), Some("é".repeat(40).as_str()));
    }
}

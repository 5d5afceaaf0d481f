//! What a field holds and says back: the text as typed, what it comes to, what is wrong with it.

use skimwright::job::{Field, GearsError, Job, read_gears};
use skimwright::plan::is_in_bounds;
use skimwright::quantity::{Entry, ReadError, ReadErrorKind, Unit, read};

use super::state::State;

/// What a field says back.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Reading {
    /// The text in the field.
    pub(crate) text: String,
    /// What it comes to, where that is not plain from the text.
    pub(crate) said: Option<String>,
    /// What is wrong with it.
    pub(crate) wrong: Option<Wrong>,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Wrong {
    /// It is no quantity; the plan goes on with the one from before the typing began.
    Unread(ReadError),
    /// It is a quantity that the field cannot take.
    OutOfBounds,
    /// It is no list of speeds or feeds; the plan goes on with the last one that was.
    BadList(GearsError),
}

/// The sign of [`Unit::Currency`].
const ANY_CURRENCY: char = '¤';

impl State {
    /// What a field of numbers holds and says back.
    pub(crate) fn reading(&self, field: Field) -> Reading {
        let unit = self.unit_of(field);
        if let Some(list) = self.job.gears(field) {
            return self.list_reading(field, &list, unit);
        }
        if let Some(text) = self.job.text(field) {
            return Reading {
                text: text.to_owned(),
                said: None,
                wrong: None,
            };
        }
        let entry = self.job.entry(field);
        let text = match (self.drafts.get(field), entry) {
            (Some(draft), _) => draft.clone(),
            (None, Some(entry)) => self.tongue.marked(self.units.field_text(entry, unit)),
            (None, None) => String::new(),
        };
        let wrong = match self.drafts.get(field).map(|text| self.read(field, text)) {
            Some(Err(error)) => Some(Wrong::Unread(error)),
            _ => entry
                .filter(|entry| !is_in_bounds(field, entry))
                .map(|_| Wrong::OutOfBounds),
        };
        let plain = self.tongue.marked(text.trim().to_owned());
        // Nothing need be said back where the text already is the plain number in the unit in use.
        let said = entry
            .filter(|_| !matches!(wrong, Some(Wrong::Unread(_))))
            .map(|entry| self.tongue.marked(self.units.entry_value_in(entry, unit)))
            .filter(|value| value.split('\u{a0}').next() != Some(&plain))
            .map(|value| self.in_currency(&value));
        Reading { text, said, wrong }
    }

    /// What a list of speeds or feeds holds.
    fn list_reading(&self, field: Field, list: &[&Entry], unit: Unit) -> Reading {
        let draft = self.drafts.get(field);
        let wrong = draft.and_then(|text| read_gears(field, text, unit).err());
        let text = draft.cloned().unwrap_or_else(|| {
            let one = |entry: &&Entry| {
                if entry.is_plain() {
                    return self.units.field_text(entry, unit);
                }
                // A fraction or a sum would read as several numbers here.
                let value = self.units.entry_value_in(entry, unit);
                value.replace('\u{a0}', " ")
            };
            let list = list.iter().map(one).collect::<Vec<_>>().join(" ");
            self.tongue.marked(list)
        });
        Reading {
            text,
            said: None,
            wrong: wrong.map(Wrong::BadList),
        }
    }

    /// The unit of a bare number in a field.
    fn unit_of(&self, field: Field) -> Unit {
        field.typed_unit(self.units).unwrap_or(Unit::Millimetre)
    }

    /// The sign beside a field: its unit, or the currency of the job.
    pub(crate) fn sign_of(&self, field: Field) -> String {
        let unit = field.typed_unit(self.units);
        self.in_currency(unit.map_or("", Unit::sign))
    }

    /// An entry as it was typed, or converted, with its unit or the currency of the job.
    pub(crate) fn told(&self, field: Field, entry: &Entry) -> String {
        let unit = self.unit_of(field);
        if entry.unit() == unit && entry.is_plain() {
            self.in_currency(&entry.to_string())
        } else {
            self.in_currency(&self.units.entry_value_in(entry, unit))
        }
    }

    /// The currency in the place of the sign that stands for any.
    fn in_currency(&self, text: &str) -> String {
        let named = text.replace(ANY_CURRENCY, &self.job.shop.rates.currency);
        self.tongue.marked(named.trim_end().to_owned())
    }

    /// Reads a text for a field; empty text is read as nothing where nothing is allowed.
    fn read(&self, field: Field, text: &str) -> Result<Option<Entry>, ReadError> {
        let Some(bounds) = field.bounds() else {
            return Ok(None);
        };
        let unit = self.unit_of(field);
        match read(text, bounds.dimension, Some(unit)) {
            Ok(entry) => Ok(Some(entry)),
            Err(error) if bounds.optional && error.kind == ReadErrorKind::Empty => Ok(None),
            Err(error) => Err(error),
        }
    }

    /// Whether a text is understood in a field.
    pub(super) fn is_read(&self, field: Field, text: &str) -> bool {
        match self.job.gears(field) {
            Some(_) => read_gears(field, text, self.unit_of(field)).is_ok(),
            None => self.read(field, text).is_ok(),
        }
    }

    /// Puts what a text comes to into a job; false where it is not understood.
    pub(super) fn read_into(&self, job: &mut Job, field: Field, text: &str) -> bool {
        if self.job.gears(field).is_some() {
            let list = read_gears(field, text, self.unit_of(field));
            return list.is_ok_and(|list| job.set_gears(field, list));
        }
        let entry = self.read(field, text);
        entry.map(|entry| job.set_entry(field, entry)).is_ok()
    }
}

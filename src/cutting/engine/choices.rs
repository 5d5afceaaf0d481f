//! The feeds or speeds that a machine offers.

use crate::order;

/// The feeds or speeds that a machine offers: gears, or a free range. All finite and above zero.
#[derive(Clone, Debug, PartialEq)]
pub struct Choices(pub(super) Offered);

#[derive(Clone, Debug, PartialEq)]
pub(super) enum Offered {
    /// Rising, each once.
    List(Vec<f64>),
    /// Everything between, both ends included.
    Range { least: f64, most: f64 },
}

/// Why there is no choice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ChoicesError {
    /// The list holds no finite number above zero.
    Empty,
    /// An end of the range is not a finite number above zero, or the least is above the most.
    NoRange {
        /// The least, as given.
        least: f64,
        /// The most, as given.
        most: f64,
    },
}

impl Choices {
    /// Single values, in any order and as often as they come. What is not finite or not above zero is left out.
    ///
    /// # Errors
    /// [`ChoicesError::Empty`] when nothing is left.
    /// # Example
    /// ```
    /// use skimwright::cutting::engine::Choices;
    /// assert_eq!(Choices::list([0.2, 0.1, 0.2, -1.0]), Choices::list([0.1, 0.2]));
    /// ```
    pub fn list(values: impl IntoIterator<Item = f64>) -> Result<Self, ChoicesError> {
        let mut list: Vec<f64> = values.into_iter().filter(|value| is_size(*value)).collect();
        order::numbers(&mut list);
        list.dedup();
        if list.is_empty() {
            return Err(ChoicesError::Empty);
        }
        Ok(Self(Offered::List(list)))
    }

    /// Everything from `least` to `most`, both included.
    ///
    /// # Errors
    /// [`ChoicesError::NoRange`] when an end is not a finite number above zero, or they stand the wrong way round.
    pub fn range(least: f64, most: f64) -> Result<Self, ChoicesError> {
        if is_size(least) && is_size(most) && least <= most {
            Ok(Self(Offered::Range { least, most }))
        } else {
            Err(ChoicesError::NoRange { least, most })
        }
    }

    /// The gears, rising; `None` for a free range.
    pub fn into_list(self) -> Option<Vec<f64>> {
        match self.0 {
            Offered::List(list) => Some(list),
            Offered::Range { .. } => None,
        }
    }

    /// The least that is offered.
    pub fn least(&self) -> f64 {
        match &self.0 {
            Offered::List(list) => list.first().copied().unwrap_or(f64::NAN),
            Offered::Range { least, .. } => *least,
        }
    }

    /// The most that is offered.
    pub fn most(&self) -> f64 {
        match &self.0 {
            Offered::List(list) => list.last().copied().unwrap_or(f64::NAN),
            Offered::Range { most, .. } => *most,
        }
    }
}

fn is_size(value: f64) -> bool {
    value.is_finite() && value > 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_comes_in_order_and_each_value_once() {
        let choices = Choices::list([3.0, f64::NAN, 1.0, 3.0, 0.0, f64::INFINITY, 2.0]).unwrap();
        assert_eq!(choices.0, Offered::List(vec![1.0, 2.0, 3.0]));
        assert_eq!((choices.least(), choices.most()), (1.0, 3.0));
    }

    #[test]
    fn no_choice_is_an_error() {
        assert_eq!(Choices::list([]), Err(ChoicesError::Empty));
        assert_eq!(Choices::list([f64::NAN, -2.0]), Err(ChoicesError::Empty));
        for (least, most) in [(2.0, 1.0), (0.0, 1.0), (1.0, f64::INFINITY)] {
            assert_eq!(
                Choices::range(least, most),
                Err(ChoicesError::NoRange { least, most })
            );
        }
        assert!(Choices::range(f64::NAN, 1.0).is_err());
    }

    #[test]
    fn a_range_may_be_one_value() {
        let choices = Choices::range(2.0, 2.0).unwrap();
        assert_eq!((choices.least(), choices.most()), (2.0, 2.0));
    }
}

//! How long each step beside the feeding takes, where the person knows better than the usual.

use core::fmt;

use serde::de::{MapAccess, Visitor};
use serde::ser::SerializeMap;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::costing::Step;
use crate::quantity::{Entered, Time};

/// Times of the steps; in files an object of those that say something.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StepTimes([StepTime; Step::ALL.len()]);

/// How long a step takes each time; what is empty is the usual.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct StepTime {
    /// At best.
    pub low: Option<Entered<Time>>,
    /// As a rule. Empty for setting the depth, returning, measuring and polishing: the shop has these by themselves.
    pub likely: Option<Entered<Time>>,
    /// At worst.
    pub high: Option<Entered<Time>>,
}

impl StepTimes {
    /// Whether the time that a step takes as a rule stands here: the shop has those of setting the depth, returning,
    /// measuring and polishing by themselves.
    pub const fn has_likely(step: Step) -> bool {
        !matches!(
            step,
            Step::SetDepth | Step::Return | Step::Measure | Step::Polish
        )
    }

    /// The times of a step.
    pub fn of(&self, step: Step) -> Option<&StepTime> {
        self.0.get(usize::from(step.index()))
    }

    /// The same to change it.
    pub fn of_mut(&mut self, step: Step) -> Option<&mut StepTime> {
        self.0.get_mut(usize::from(step.index()))
    }
}

impl Serialize for StepTimes {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let said = || {
            let all = Step::ALL.into_iter().zip(&self.0);
            all.filter(|(_, time)| **time != StepTime::default())
        };
        let mut map = serializer.serialize_map(Some(said().count()))?;
        for (step, time) in said() {
            map.serialize_entry(step.code(), time)?;
        }
        map.end()
    }
}

impl<'de> Deserialize<'de> for StepTimes {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(Times)
    }
}

struct Times;

impl<'de> Visitor<'de> for Times {
    type Value = StepTimes;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("an object of steps with their times")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<StepTimes, A::Error> {
        let mut times = StepTimes::default();
        while let Some(StepName(step)) = map.next_key()? {
            let time: StepTime = map.next_value()?;
            if time.likely.is_some() && !StepTimes::has_likely(step) {
                return Err(serde::de::Error::custom(
                    "the time that this step takes as a rule stands with the shop itself",
                ));
            }
            if let Some(place) = times.of_mut(step) {
                *place = time;
            }
        }
        Ok(times)
    }
}

/// A step by its code, read as a text so that an error in its times is reported under its name.
struct StepName(Step);

impl<'de> Deserialize<'de> for StepName {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Name;

        impl Visitor<'_> for Name {
            type Value = StepName;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("the name of a step")
            }

            fn visit_str<E: serde::de::Error>(self, code: &str) -> Result<StepName, E> {
                let step = Step::from_code(code).map(StepName);
                let short: String = code.chars().take(40).collect();
                step.ok_or_else(|| E::custom(format_args!("no step is called '{short}'")))
            }
        }

        deserializer.deserialize_identifier(Name)
    }
}

//! How a link stores a choice: one byte, its number in its list. Frozen.

use serde::de::{Deserialize, Deserializer, Error};
use serde::ser::Serializer;

use crate::job::{BoreBottom, CentreOrder, CutOffMethod};
use crate::tables::{
    CentreDrillSize, ColletSize, HoleClass, SeatLoad, ShaftClass, ShankSize, TaperSize, ThreadSize,
    ToolKind, WorkMaterial,
};

/// A choice from a list that only grows at its end.
pub(super) trait Numbered: Copy {
    /// Its number in the list.
    fn to_number(self) -> Option<u8>;
    /// The one with this number.
    fn from_number(number: u8) -> Option<Self>;
}

macro_rules! by_list {
    ($($name:ident)*) => {$(
        impl Numbered for $name {
            fn to_number(self) -> Option<u8> {
                let place = Self::ALL.iter().position(|one| *one == self)?;
                u8::try_from(place).ok()
            }

            fn from_number(number: u8) -> Option<Self> {
                Self::ALL.get(usize::from(number)).copied()
            }
        }
    )*};
}
by_list!(BoreBottom CutOffMethod CentreOrder ShaftClass HoleClass SeatLoad ToolKind WorkMaterial);

macro_rules! by_row {
    ($($name:ident)*) => {$(
        impl Numbered for $name {
            fn to_number(self) -> Option<u8> {
                Some(self.index())
            }

            fn from_number(number: u8) -> Option<Self> {
                Self::from_index(number)
            }
        }
    )*};
}
by_row!(TaperSize ThreadSize CentreDrillSize ColletSize ShankSize);

pub(super) fn serialize<T: Numbered, S: Serializer>(
    choice: &T,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let number = choice
        .to_number()
        .ok_or_else(|| serde::ser::Error::custom("not in its list"))?;
    serializer.serialize_u8(number)
}

pub(super) fn deserialize<'de, T: Numbered, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<T, D::Error> {
    let number = u8::deserialize(deserializer)?;
    T::from_number(number).ok_or_else(|| D::Error::custom("not in its list"))
}

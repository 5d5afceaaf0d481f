//! How a link stores a choice: one byte, its number in its list. Frozen.

use super::bytes::{Read, Reader, Write, Writer};
use crate::job::{
    Aim, BoreBottom, BoreEnd, CentreOrder, Change, CutMadeKind, CutOffMethod, Datum, DialReads,
    Flats, InstrumentKind, JawFace, OwnerSays, Rigidity, Support,
};
use crate::tables::{
    CentreDrillSize, ColletSize, CuttingGroup, FileBite, HoleClass, SeatLoad, ShaftClass,
    ShankSize, SleeveDuty, TaperSize, ThreadSize, ToolKind, WorkMaterial,
};

/// A choice from a list that only grows at its end.
pub(super) trait Numbered: Copy {
    /// The first of the list.
    const FIRST: Self;
    /// Its number in the list.
    fn to_number(self) -> Option<u8>;
    /// The one with this number.
    fn from_number(number: u8) -> Option<Self>;
}

macro_rules! by_list {
    ($($name:ident)*) => {$(
        impl Numbered for $name {
            const FIRST: Self = {
                let [first, ..] = Self::ALL;
                first
            };

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
by_list!(OwnerSays InstrumentKind CutMadeKind Change FileBite Aim DialReads JawFace Rigidity Support BoreBottom BoreEnd CutOffMethod CentreOrder Datum Flats ShaftClass HoleClass SeatLoad SleeveDuty ToolKind WorkMaterial);

macro_rules! by_row {
    ($($name:ident)*) => {$(
        impl Numbered for $name {
            const FIRST: Self = Self::FIRST;

            fn to_number(self) -> Option<u8> {
                Some(self.index())
            }

            fn from_number(number: u8) -> Option<Self> {
                Self::from_index(number)
            }
        }
    )*};
}
by_row!(CuttingGroup TaperSize ThreadSize CentreDrillSize ColletSize ShankSize);

macro_rules! as_byte {
    ($($name:ident)*) => {$(
        impl<const VERSION: u8> Read<VERSION> for $name {
            fn read(from: &mut Reader<'_>) -> Self {
                Self::from_number(from.byte()).unwrap_or_else(|| {
                    from.fail();
                    Self::FIRST
                })
            }
        }

        impl Write for $name {
            fn write(&self, to: &mut Writer) -> Option<()> {
                to.byte(self.to_number()?);
                Some(())
            }
        }
    )*};
}
as_byte!(Aim DialReads JawFace Rigidity Support);
as_byte!(BoreBottom BoreEnd CutOffMethod CentreOrder Datum Flats ShaftClass HoleClass SeatLoad SleeveDuty ToolKind WorkMaterial);
as_byte!(TaperSize ThreadSize CentreDrillSize ColletSize ShankSize);

//! The written form of sections, holes and tolerances, as flat objects.
//!
//! Each field is read where it stands, so that an error in it is reported under its own path; whether the kind has
//! that field is asked afterwards.

use core::fmt;

use serde::Deserialize;

use super::Tolerance;
use super::choice::{BoreBottom, BoreEnd, Datum, Flats};
use super::part::{
    Bore, Cut, CutKind, Feature, Hole, HoleKind, Place, Section, Turned, TurnedKind, take_place,
};
use super::receiver::{Receiver, ReceiverKind};
use crate::quantity::{Angle, Entered, Length, TaperRatio};
use crate::tables::{
    CentreDrillSize, ColletSize, HoleClass, SeatLoad, ShaftClass, ShankSize, SleeveDuty, TaperSize,
    ThreadSize, WorkMaterial,
};

/// Declares an object whose fields may all be missing, and what is left of it when some were taken.
macro_rules! flat {
    ($name:ident { $first:ident: $kind:ty, } $($field:ident: $type:ty,)*) => {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        pub(super) struct $name {
            $first: $kind,
            $(pub(super) $field: Option<$type>,)*
        }

        impl $name {
            /// Refuses what nobody took.
            fn finish(&self, of: &'static str) -> Result<(), FormError> {
                $(if self.$field.is_some() {
                    return Err(FormError { of, field: stringify!($field), fault: Fault::Foreign });
                })*
                Ok(())
            }
        }
    };
}
flat! {
    SectionForm { kind: TurnedKind, }
    taper: TaperSize,
    thread: ThreadSize,
    diameter: Entered<Length>,
    shoulder_diameter: Entered<Length>,
    end_diameter: Entered<Length>,
    ratio: Entered<TaperRatio>,
    angle: Entered<Angle>,
    past_gauge: Entered<Length>,
    length: Entered<Length>,
    diameter_error: Entered<Length>,
    length_error: Entered<Length>,
    from: Datum,
    start: Entered<Length>,
}
flat! {
    FeatureForm { kind: CutKind, }
    over: Entered<Length>,
    flats: Flats,
    width: Entered<Length>,
    depth: Entered<Length>,
    disc: Entered<Length>,
    diameter: Entered<Length>,
    thickness: Entered<Length>,
    length: Entered<Length>,
    slot_width: Entered<Length>,
    slot_depth: Entered<Length>,
    from: Datum,
    start: Entered<Length>,
}
flat! {
    BoreForm { kind: HoleKind, }
    end: BoreEnd,
    diameter: Entered<Length>,
    depth: Entered<Length>,
    bottom: BoreBottom,
    step_diameter: Entered<Length>,
    step_depth: Entered<Length>,
    thread: ThreadSize,
    thread_depth: Entered<Length>,
    ream_depth: Entered<Length>,
    drill_depth: Entered<Length>,
    centre_drill: CentreDrillSize,
    off_centre: Entered<Length>,
}
flat! {
    ReceiverForm { kind: ReceiverKind, }
    collet: ColletSize,
    shank: ShankSize,
    hole: HoleClass,
    load: SeatLoad,
    ring_chamfer: Entered<Length>,
    duty: SleeveDuty,
    material: WorkMaterial,
    outside: Entered<Length>,
    edge: Entered<Length>,
}
flat! {
    ToleranceForm { class: Option<ShaftClass>, }
    upper: Entered<Length>,
    lower: Entered<Length>,
}

/// A field that is missing, or that the thing does not have.
pub(super) struct FormError {
    of: &'static str,
    field: &'static str,
    fault: Fault,
}

#[derive(Clone, Copy)]
enum Fault {
    Missing,
    /// The thing has no such field.
    Foreign,
}

impl FormError {
    pub(super) const fn missing(of: &'static str, field: &'static str) -> Self {
        let fault = Fault::Missing;
        Self { of, field, fault }
    }
}

impl fmt::Display for FormError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { of, field, fault } = self;
        let verb = match fault {
            Fault::Missing => "needs",
            Fault::Foreign => "has no",
        };
        write!(f, "{of} {verb} `{field}`")
    }
}

/// Takes a field that must be there.
macro_rules! need {
    ($form:ident.$field:ident, $of:expr) => {
        $form
            .$field
            .take()
            .ok_or(FormError::missing($of, stringify!($field)))?
    };
}

pub(super) use need;

impl TryFrom<SectionForm> for Section {
    type Error = FormError;

    fn try_from(mut form: SectionForm) -> Result<Self, FormError> {
        let (turned, of) = Turned::take(form.kind, &mut form)?;
        let place = take_place(form.from.take(), form.start.take(), of)?;
        form.finish(of)?;
        Ok(Self { turned, place })
    }
}

impl TryFrom<FeatureForm> for Feature {
    type Error = FormError;

    fn try_from(mut form: FeatureForm) -> Result<Self, FormError> {
        let (cut, of) = Cut::take(form.kind, &mut form)?;
        let place = if matches!(cut, Cut::Tang { .. }) {
            None
        } else {
            Some(Place {
                from: need!(form.from, of),
                start: need!(form.start, of),
            })
        };
        form.finish(of)?;
        Ok(Self { cut, place })
    }
}

impl TryFrom<BoreForm> for Bore {
    type Error = FormError;

    fn try_from(mut form: BoreForm) -> Result<Self, FormError> {
        let (hole, of) = Hole::take(form.kind, &mut form)?;
        let bore = Self {
            hole,
            end: form.end.take().unwrap_or(BoreEnd::FreeEnd),
            off_centre: form.off_centre.take(),
        };
        form.finish(of)?;
        Ok(bore)
    }
}

impl TryFrom<ReceiverForm> for Receiver {
    type Error = FormError;

    fn try_from(mut form: ReceiverForm) -> Result<Self, FormError> {
        let (receiver, of) = Self::take(form.kind, &mut form)?;
        form.finish(of)?;
        Ok(receiver)
    }
}

impl TryFrom<ToleranceForm> for Tolerance {
    type Error = FormError;

    fn try_from(mut form: ToleranceForm) -> Result<Self, FormError> {
        if let Some(class) = form.class {
            form.finish("a tolerance by class")?;
            return Ok(Self::Class(class));
        }
        let of = "a tolerance without a class";
        Ok(Self::Limits {
            upper: need!(form.upper, of),
            lower: need!(form.lower, of),
        })
    }
}

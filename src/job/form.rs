//! The written form of sections, holes and tolerances, as flat objects.
//!
//! Each field is read where it stands, so that an error in it is reported under its own path; whether the kind has
//! that field is asked afterwards.

use core::fmt;

use serde::Deserialize;

use super::{Bore, BoreBottom, Section, Tolerance};
use crate::quantity::{Entered, Length};
use crate::tables::{CentreDrillSize, ShaftClass, TaperSize, ThreadSize};

#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum SectionKind {
    Cylinder,
    Taper,
    StandardTaper,
}

#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum BoreKind {
    Drilled,
    Tapped,
    CentreHole,
}

/// Declares an object whose fields may all be missing, and what is left of it when some were taken.
macro_rules! flat {
    ($name:ident { $first:ident: $kind:ty, } $($field:ident: $type:ty,)*) => {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        pub(super) struct $name {
            $first: $kind,
            $($field: Option<$type>,)*
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
    SectionForm { kind: SectionKind, }
    diameter: Entered<Length>,
    shoulder_diameter: Entered<Length>,
    end_diameter: Entered<Length>,
    length: Entered<Length>,
    taper: TaperSize,
    past_gauge: Entered<Length>,
}
flat! {
    BoreForm { kind: BoreKind, }
    diameter: Entered<Length>,
    depth: Entered<Length>,
    bottom: BoreBottom,
    thread: ThreadSize,
    thread_depth: Entered<Length>,
    drill_depth: Entered<Length>,
    centre_drill: CentreDrillSize,
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
        $form.$field.take().ok_or(FormError {
            of: $of,
            field: stringify!($field),
            fault: Fault::Missing,
        })?
    };
}

impl TryFrom<SectionForm> for Section {
    type Error = FormError;

    fn try_from(mut form: SectionForm) -> Result<Self, FormError> {
        let (of, section) = match form.kind {
            SectionKind::Cylinder => {
                let of = "a cylinder";
                let section = Self::Cylinder {
                    diameter: need!(form.diameter, of),
                    length: need!(form.length, of),
                };
                (of, section)
            }
            SectionKind::Taper => {
                let of = "a taper";
                let section = Self::Taper {
                    shoulder_diameter: need!(form.shoulder_diameter, of),
                    end_diameter: need!(form.end_diameter, of),
                    length: need!(form.length, of),
                };
                (of, section)
            }
            SectionKind::StandardTaper => {
                let of = "a standard taper";
                let section = Self::StandardTaper {
                    taper: need!(form.taper, of),
                    past_gauge: need!(form.past_gauge, of),
                    length: form.length.take(),
                };
                (of, section)
            }
        };
        form.finish(of)?;
        Ok(section)
    }
}

impl TryFrom<BoreForm> for Bore {
    type Error = FormError;

    fn try_from(mut form: BoreForm) -> Result<Self, FormError> {
        let (of, bore) = match form.kind {
            BoreKind::Drilled => {
                let of = "a drilled hole";
                let bore = Self::Drilled {
                    diameter: need!(form.diameter, of),
                    depth: need!(form.depth, of),
                    bottom: need!(form.bottom, of),
                };
                (of, bore)
            }
            BoreKind::Tapped => {
                let of = "a tapped hole";
                let bore = Self::Tapped {
                    thread: need!(form.thread, of),
                    thread_depth: need!(form.thread_depth, of),
                    drill_depth: need!(form.drill_depth, of),
                };
                (of, bore)
            }
            BoreKind::CentreHole => {
                let of = "a centre hole";
                let bore = Self::CentreHole {
                    centre_drill: need!(form.centre_drill, of),
                };
                (of, bore)
            }
        };
        form.finish(of)?;
        Ok(bore)
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

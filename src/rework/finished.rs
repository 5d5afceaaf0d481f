//! The finished shank as an outline, the size it is turned to, and what is taken off.

use serde::Serialize;

use crate::job::{Field, Job, Tolerance};
use crate::part::Profile;
use crate::plan::{Checked, Code, Finding};
use crate::quantity::Length;
use crate::tables::deviations;

/// Largest, smallest and aimed-at diameter.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SizeLimits {
    /// The largest permitted.
    pub upper: Length,
    /// The smallest permitted.
    pub lower: Length,
    /// The middle, which is aimed at.
    pub aim: Length,
}

/// The size limits of the finished diameter.
///
/// # Errors
/// A finding when the class has no deviations here or the limits are crossed; `Ok(None)` while a number is missing.
pub(crate) fn size_limits(job: &Job, checked: &Checked) -> Result<Option<SizeLimits>, Finding> {
    let Some(nominal) = checked.length(Field::WantedDiameter) else {
        return Ok(None);
    };
    limits_at(job, checked, nominal)
}

/// The size limits that the job's tolerance gives to a nominal diameter.
fn limits_at(job: &Job, checked: &Checked, nominal: Length) -> Result<Option<SizeLimits>, Finding> {
    let (upper, lower) = match &job.wanted.tolerance {
        Tolerance::Class(class) => {
            let found = deviations(*class, nominal)
                .ok_or(Finding::at(Field::Tolerance, Code::NoSuchLimits))?;
            (found.upper, found.lower)
        }
        Tolerance::Limits { .. } => {
            let typed = (
                checked.length(Field::UpperDeviation),
                checked.length(Field::LowerDeviation),
            );
            let (Some(upper), Some(lower)) = typed else {
                return Ok(None);
            };
            (upper, lower)
        }
    };
    if upper < lower {
        let by = lower - upper;
        return Err(Finding::at(
            Field::UpperDeviation,
            Code::LimitsCrossed { by },
        ));
    }
    let (upper, lower) = (nominal + upper, nominal + lower);
    // Deviations far wider than the part can push a limit through the axis.
    if lower <= Length::ZERO {
        return Err(Finding::at(Field::LowerDeviation, Code::OutOfBounds));
    }
    Ok(Some(SizeLimits {
        upper,
        lower,
        aim: (upper + lower) / 2.0,
    }))
}

/// The job's tolerance turned round: which nominal diameter to ask for, so that a size comes out as it must.
pub(crate) struct Nominal<'a> {
    pub(crate) job: &'a Job,
    pub(crate) checked: &'a Checked<'a>,
}

impl Nominal<'_> {
    /// The largest nominal diameter whose `size` is no more than `most`.
    pub(crate) fn at_most(&self, most: Length, size: impl Fn(SizeLimits) -> Length) -> Length {
        let (one, other) = self.near(most, size);
        one.min(other)
    }

    /// The smallest nominal diameter whose `size` is no less than `least`.
    pub(crate) fn at_least(&self, least: Length, size: impl Fn(SizeLimits) -> Length) -> Length {
        let (one, other) = self.near(least, size);
        one.max(other)
    }

    /// The nominal diameter whose size is `target`, twice: where a step of the table lies between, one is on
    /// either side of it.
    fn near(&self, target: Length, size: impl Fn(SizeLimits) -> Length) -> (Length, Length) {
        let nearer = |nominal: Length| {
            let limits = limits_at(self.job, self.checked, nominal).ok().flatten();
            limits.map_or(target, |limits| target - (size(limits) - nominal))
        };
        let one = nearer(nearer(target));
        (one, nearer(one))
    }
}

/// The shank as it is wanted, whether or not the stock has the metal for it.
#[derive(Clone, Debug, PartialEq)]
pub struct WantedShank {
    /// Diameter of the straight part.
    pub diameter: Length,
    /// Fillet at the shoulder, as large as fits.
    pub fillet: Length,
    /// Chamfer at the end, as large as fits.
    pub chamfer: Length,
    /// Shoulder to finished end.
    pub length: Length,
    /// Its outline.
    pub outer: Profile,
}

impl WantedShank {
    /// Puts fillet, cylinder and chamfer together.
    ///
    /// A fillet or chamfer that does not fit is cut down, so that there is always an outline; findings say so.
    pub(crate) fn new(diameter: Length, length: Length, fillet: Length, chamfer: Length) -> Self {
        let radius = diameter / 2.0;
        let fillet = fillet.min(length);
        let chamfer = chamfer.min(length - fillet).min(radius);
        let mut outer = Profile::default();
        outer.push_fillet(radius, fillet);
        outer.push_line(fillet, length - chamfer, radius, radius);
        outer.push_line(length - chamfer, length, radius, radius - chamfer);
        Self {
            diameter,
            fillet,
            chamfer,
            length,
            outer,
        }
    }

    /// Diameter of the flat of the end, inside the chamfer.
    pub(crate) fn end_diameter(&self) -> Length {
        self.diameter - self.chamfer * 2.0
    }
}

//! The compound slide set over, so that its dial feeds the tool finer than it reads.
//!
//! The angle is from the lathe's axis; infeed is on radius. A graduation is what the slide itself travels: of a dial
//! that reads diameters, half of what it shows.

use crate::quantity::{Angle, Length};

/// Why the slide cannot be set so.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CompoundError {
    /// The infeed or the graduation is not above zero.
    NotPositive,
    /// The infeed is more than one graduation: square to the axis the slide feeds no further than its dial says.
    MoreThanGraduation {
        /// What was wanted on radius.
        infeed: Length,
        /// What one graduation moves.
        graduation: Length,
    },
}

/// The angle from the lathe's axis at which one graduation moves the tool in by an infeed on radius:
/// sin α = infeed/graduation.
///
/// The tool also moves along the work, by graduation · cos α.
///
/// # Errors
/// [`CompoundError`]; a coarser graduation, or a smaller infeed, mends both.
/// # Accuracy
/// Exact. Set by a protractor to half a degree, small angles are off by more than a tenth: try it with an indicator.
/// # Source
/// Right triangle; the workshop rule of 1 in 10 at 5° 44′.
/// # Example
/// ```
/// use skimwright::cutting::compound_angle;
/// use skimwright::quantity::{Angle, Length};
/// let angle = compound_angle(Length::mm(0.002), Length::mm(0.02)).unwrap();
/// assert!((angle.to_degrees() - 5.739).abs() < 0.001);
/// let coarser = compound_angle(Length::mm(0.002), Length::mm(0.05)).unwrap();
/// assert!((coarser.to_degrees() - 2.292).abs() < 0.001);
/// assert!(compound_angle(Length::mm(0.03), Length::mm(0.02)).is_err());
/// ```
pub fn compound_angle(infeed: Length, graduation: Length) -> Result<Angle, CompoundError> {
    if infeed <= Length::ZERO || graduation <= Length::ZERO {
        return Err(CompoundError::NotPositive);
    }
    if infeed > graduation {
        return Err(CompoundError::MoreThanGraduation { infeed, graduation });
    }
    Ok(Angle::radians((infeed / graduation).asin()))
}

/// What one graduation moves the tool in on radius with the slide at an angle from the lathe's axis.
///
/// # Accuracy
/// Exact.
/// # Source
/// As [`compound_angle`], turned round.
/// # Example
/// ```
/// use skimwright::cutting::infeed_at_compound_angle;
/// use skimwright::quantity::{Angle, Length};
/// let infeed = infeed_at_compound_angle(Angle::degrees(30.0), Length::mm(0.02));
/// assert!((infeed.to_mm() - 0.01).abs() < 1e-12);
/// ```
pub fn infeed_at_compound_angle(angle: Angle, graduation: Length) -> Length {
    graduation * angle.to_radians().sin()
}

/// The angle of the compound slide for a chamfer.
///
/// # Source
/// Common practice, no source: drawings that say no angle mean 45°.
pub const CHAMFER_ANGLE: Angle = Angle::degrees(45.0);

/// How far the slide travels, in one cut or several, for a chamfer of a width along the axis at [`CHAMFER_ANGLE`].
///
/// # Accuracy
/// Exact.
/// # Source
/// Diagonal of the square.
/// # Example
/// ```
/// use skimwright::cutting::chamfer_travel;
/// use skimwright::quantity::Length;
/// assert!((chamfer_travel(Length::mm(1.0)).to_mm() - 1.414).abs() < 0.001);
/// ```
pub fn chamfer_travel(width: Length) -> Length {
    width / CHAMFER_ANGLE.to_radians().cos()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_cannot_be_set_says_why() {
        let mm = Length::mm;
        assert_eq!(
            compound_angle(mm(0.0), mm(0.02)),
            Err(CompoundError::NotPositive)
        );
        assert_eq!(
            compound_angle(mm(0.01), mm(0.0)),
            Err(CompoundError::NotPositive)
        );
        let (infeed, graduation) = (mm(0.021), mm(0.02));
        assert_eq!(
            compound_angle(infeed, graduation),
            Err(CompoundError::MoreThanGraduation { infeed, graduation })
        );
        let square = compound_angle(graduation, graduation).unwrap();
        assert!((square.to_degrees() - 90.0).abs() < 1e-12);
    }
}

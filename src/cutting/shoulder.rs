//! How the fillet at a shoulder is turned with a nose radius at hand.
//!
//! The shoulder's face is across the axis, the shank runs away from it. Two lengths place the tool: how far its leading
//! side stands from the face, and how far its nose stands above the finished shank, on radius. Nothing and nothing is
//! the sharp corner.

use serde::Serialize;

use crate::part::SAME;
use crate::quantity::Length;

/// One place at which a pass ends.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FilletStep {
    /// From the shoulder's face to the leading side of the tool.
    pub from_face: Length,
    /// Infeed still to go to the finished diameter, on radius.
    pub infeed_left: Length,
}

/// The passes that make a fillet with a smaller nose.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FilletSteps {
    /// In the order of cutting: the first goes all the way to the face, the last is at size and ends furthest from it.
    pub steps: Vec<FilletStep>,
    /// The highest ridge that they leave on the fillet.
    pub highest_cusp: Length,
}

/// How a fillet is made.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum FilletMethod {
    /// The nose has the fillet's radius: one pass into the corner makes it.
    OwnNose,
    /// The nose is smaller: step by step.
    Steps(FilletSteps),
}

/// Why a fillet cannot be made so.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ShoulderError {
    /// The nose is larger than the fillet: it leaves more metal in the corner than wanted. This is the largest nose.
    NoseTooLarge {
        /// The fillet's own radius.
        largest: Length,
    },
    /// A radius is negative, or a graduation not above zero.
    NotPositive,
    /// Even a pass at every graduation leaves higher ridges than wanted: this high.
    GraduationTooCoarse {
        /// The lowest ridges to be had.
        least_cusp: Length,
    },
    /// There are more graduations in the fillet than anyone counts: more than [`MOST_GRADUATIONS`].
    TooManyGraduations,
}

/// The most graduations on one side of a fillet. A bound for the computer, not for the hand.
pub const MOST_GRADUATIONS: f64 = 2000.0;

/// What the lathe can be set to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Graduations {
    /// Along the axis.
    pub axial: Length,
    /// Across it, on radius: half of what a dial shows that reads diameters.
    pub radial: Length,
}

/// How a fillet is made with a nose radius, leaving no ridge above a height.
///
/// With a smaller nose, each step is a place in whole graduations, rounded away from the finished surface, so that
/// none cuts into the fillet. Each pass feeds along the shank to its place and draws straight out: the leading side of
/// the tool must be square or past it.
///
/// # Errors
/// [`ShoulderError`]: a smaller nose, finer graduations or a higher ridge mends it.
/// # Accuracy
/// Exact for a round nose; backlash and the reading of the dials come on top. No fewer steps are searched for than
/// those of going as far as allowed each time.
/// # Source
/// Own geometry: the nose touches the fillet from inside, so its places lie on an arc of the difference of the radii.
/// # Example
/// ```
/// use skimwright::cutting::{FilletMethod, Graduations, fillet_method};
/// use skimwright::quantity::Length;
/// let dials = Graduations { axial: Length::mm(0.05), radial: Length::mm(0.01) };
/// let nose = Length::mm(0.8);
/// let same = fillet_method(Length::mm(0.8), nose, dials, Length::mm(0.02));
/// assert_eq!(same, Ok(FilletMethod::OwnNose));
/// let FilletMethod::Steps(found) = fillet_method(Length::mm(1.5), nose, dials, Length::mm(0.05)).unwrap() else {
///     panic!("a smaller nose takes steps");
/// };
/// assert!(found.highest_cusp <= Length::mm(0.05));
/// assert!(found.steps.len() > 2);
/// ```
pub fn fillet_method(
    fillet: Length,
    nose_radius: Length,
    graduations: Graduations,
    allowed_cusp: Length,
) -> Result<FilletMethod, ShoulderError> {
    if fillet < Length::ZERO || nose_radius < Length::ZERO {
        return Err(ShoulderError::NotPositive);
    }
    let larger = (nose_radius - fillet).to_mm();
    if larger.abs() <= SAME {
        return Ok(FilletMethod::OwnNose);
    }
    if larger > 0.0 {
        return Err(ShoulderError::NoseTooLarge { largest: fillet });
    }
    if graduations.axial <= Length::ZERO || graduations.radial <= Length::ZERO {
        return Err(ShoulderError::NotPositive);
    }
    let corner = Corner {
        fillet: fillet.to_mm(),
        nose: nose_radius.to_mm(),
    };
    let finest = graduations.axial.min(graduations.radial);
    if corner.reach() / finest.to_mm() > MOST_GRADUATIONS {
        return Err(ShoulderError::TooManyGraduations);
    }
    let places = corner.places(graduations.axial.to_mm(), graduations.radial.to_mm());
    corner
        .fewest(&places, allowed_cusp.to_mm())
        .map(FilletMethod::Steps)
}

/// A fillet and a smaller nose, in millimetres.
#[derive(Clone, Copy)]
struct Corner {
    fillet: f64,
    nose: f64,
}

/// A place of the tool, in millimetres: from the face, and above the shank.
type Place = (f64, f64);

impl Corner {
    /// The radius of the arc on which the nose's places lie.
    fn reach(self) -> f64 {
        self.fillet - self.nose
    }

    /// The least of one coordinate that keeps out of the fillet, for the other.
    fn clear_of(self, other: f64) -> f64 {
        let reach = self.reach();
        let beside = (reach - other).max(0.0);
        reach - ((reach - beside) * (reach + beside)).max(0.0).sqrt()
    }

    /// All places in whole graduations that come closest to the fillet, from the face to the shank.
    fn places(self, axial: f64, radial: f64) -> Vec<Place> {
        // A hair of rounding makes no further graduation.
        let up =
            |value: f64, graduation: f64| (value / graduation - 1e-9).ceil().max(0.0) * graduation;
        let reach = self.reach();
        let mut places: Vec<Place> = Vec::new();
        // Each place must come closer to the shank and further from the face than the last, or one is idle.
        let mut add = |z: f64, y: f64| {
            if places.last().is_some_and(|last| z <= last.0 + SAME) {
                places.pop();
            }
            if places.last().is_none_or(|last| y < last.1 - SAME) {
                places.push((z, y));
            }
        };
        // Near the face the fillet is steep, so the graduations across are gone through; near the shank those along.
        let mut count = (reach / radial - 1e-9).ceil();
        let mut last = 0.0;
        while count >= 0.0 && last <= count * radial {
            let y = count * radial;
            last = up(self.clear_of(y), axial);
            add(last, y);
            count -= 1.0;
        }
        let mut count = (last / axial).round();
        let end = (reach / axial - 1e-9).ceil();
        while count <= end {
            let z = count * axial;
            add(z, up(self.clear_of(z), radial));
            count += 1.0;
        }
        places
    }

    /// As few of the places as leave no ridge above a height.
    fn fewest(self, places: &[Place], allowed: f64) -> Result<FilletSteps, ShoulderError> {
        // Leaving a place out never lowers a ridge, so this is the least there can be.
        let neighbours = places.iter().zip(places.iter().skip(1));
        let least = neighbours
            .map(|(here, next)| self.cusp(*here, *next))
            .fold(0.0, f64::max);
        if allowed < least {
            return Err(ShoulderError::GraduationTooCoarse {
                least_cusp: Length::mm(least),
            });
        }
        let mut steps = Vec::new();
        let mut highest: f64 = 0.0;
        let mut left = places;
        while let Some((here, ahead)) = left.split_first() {
            steps.push(FilletStep {
                // Adding nought takes the sign off a nought.
                from_face: Length::mm(here.0 + 0.0),
                infeed_left: Length::mm(here.1 + 0.0),
            });
            let low_enough = ahead
                .iter()
                .map(|next| self.cusp(*here, *next))
                .take_while(|cusp| *cusp <= allowed);
            let (count, cusp) = low_enough.fold((0, 0.0), |(count, _), cusp| (count + 1, cusp));
            highest = highest.max(cusp);
            left = ahead.get(count.max(1) - 1..).unwrap_or(&[]);
        }
        Ok(FilletSteps {
            steps,
            highest_cusp: Length::mm(highest),
        })
    }

    /// How high above the fillet the ridge between two places stands, the one nearer to the face first.
    ///
    /// The tool clears all that is outside its nose, further out than it and further from the face. The ridge is where
    /// the lower border of what the first place clears meets the border towards the face of what the second clears.
    fn cusp(self, near_face: Place, near_shank: Place) -> f64 {
        let r = self.nose;
        let (dz, dy) = (near_shank.0 - near_face.0, near_face.1 - near_shank.1);
        // The nose's middles.
        let (first_z, first_y) = (near_face.0 + r, near_face.1 + r);
        let (second_z, second_y) = (near_shank.0 + r, near_shank.1 + r);
        let apart = dz.hypot(dy);
        let down = (r * r - apart * apart / 4.0).max(0.0).sqrt() / apart;
        let round = (
            f64::midpoint(first_z, second_z) - down * dy,
            f64::midpoint(first_y, second_y) - down * dz,
        );
        // Past the nose the borders are straight.
        let on_flat = (
            second_z - (r * r - (dy - r) * (dy - r)).max(0.0).sqrt(),
            near_face.1,
        );
        let on_side = (
            near_shank.0,
            first_y - (r * r - (dz - r) * (dz - r)).max(0.0).sqrt(),
        );
        let peak = if apart <= 2.0 * r && round.0 <= first_z && round.1 <= second_y {
            round
        } else if dy <= r && first_z <= on_flat.0 {
            on_flat
        } else if dz <= r && second_y <= on_side.1 {
            on_side
        } else {
            (near_shank.0, near_face.1)
        };
        self.above_fillet(peak)
    }

    /// How far a point stands off the finished surface of the corner.
    fn above_fillet(self, (z, y): Place) -> f64 {
        let inside = |place: f64| (self.fillet - place).max(0.0);
        (self.fillet - inside(z).hypot(inside(y))).max(0.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn dials(axial: f64, radial: f64) -> Graduations {
        Graduations {
            axial: Length::mm(axial),
            radial: Length::mm(radial),
        }
    }

    fn method(fillet: f64, nose: f64, cusp: f64) -> Result<FilletMethod, ShoulderError> {
        let mm = Length::mm;
        fillet_method(mm(fillet), mm(nose), dials(0.05, 0.02), mm(cusp))
    }

    #[test]
    fn what_cannot_be_made_says_why() {
        assert_eq!(
            method(0.3, 0.4, 0.02),
            Err(ShoulderError::NoseTooLarge {
                largest: Length::mm(0.3)
            })
        );
        assert_eq!(method(0.0, 0.0, 0.02), Ok(FilletMethod::OwnNose));
        assert_eq!(method(-1.0, 0.0, 0.02), Err(ShoulderError::NotPositive));
        let mm = Length::mm;
        assert_eq!(
            fillet_method(mm(1.0), mm(0.4), dials(0.0, 0.02), mm(0.02)),
            Err(ShoulderError::NotPositive)
        );
        assert_eq!(
            fillet_method(mm(30.0), mm(0.4), dials(0.05, 0.002), mm(0.02)),
            Err(ShoulderError::TooManyGraduations)
        );
    }

    #[test]
    fn ridges_lower_than_the_dials_allow_name_the_lowest() {
        let Err(ShoulderError::GraduationTooCoarse { least_cusp }) = method(1.0, 0.4, 0.0001)
        else {
            panic!("the dials are too coarse");
        };
        assert!(method(1.0, 0.4, least_cusp.to_mm()).is_ok());
        assert!(method(1.0, 0.4, least_cusp.to_mm() - 1e-9).is_err());
    }

    /// Two noses of 0.5 whose middles lie 0.6 apart on an arc of 1.5 round the middle of a fillet of 2, at 45° to the
    /// face: √(1.5² − 0.3²) + √(0.5² − 0.3²) = 1.4697 + 0.4 from there.
    #[test]
    fn a_ridge_between_two_noses_is_as_by_hand() {
        let corner = Corner {
            fillet: 2.0,
            nose: 0.5,
        };
        let half = (0.3_f64 / 1.5).asin();
        let place = |angle: f64| (1.5 - 1.5 * angle.sin(), 1.5 - 1.5 * angle.cos());
        let middle = core::f64::consts::FRAC_PI_4;
        let cusp = corner.cusp(place(middle + half), place(middle - half));
        let wanted = 2.0 - (2.25_f64 - 0.09).sqrt() - 0.4;
        assert!((cusp - wanted).abs() < 1e-12, "{cusp} against {wanted}");
    }

    #[test]
    fn a_point_without_a_nose_leaves_stairs() {
        let Ok(FilletMethod::Steps(found)) = method(0.5, 0.0, 0.1) else {
            panic!("a point takes steps");
        };
        let corner = Corner {
            fillet: 0.5,
            nose: 0.0,
        };
        let stairs = found.steps.iter().zip(found.steps.iter().skip(1));
        let highest = stairs
            .map(|(one, next)| {
                corner.above_fillet((next.from_face.to_mm(), one.infeed_left.to_mm()))
            })
            .fold(0.0, f64::max);
        assert!((found.highest_cusp.to_mm() - highest).abs() < 1e-12);
    }
}

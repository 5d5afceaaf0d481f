//! Diameters along the work by weighted least squares: their line, and how far their middle stands off it.

use serde::Serialize;

use crate::quantity::Length;

/// A diameter at a place along the work.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Placed {
    /// From the shoulder.
    pub at: Length,
    /// The diameter.
    pub diameter: Length,
    /// Its standard uncertainty against the other places.
    pub uncertainty: Length,
}

/// The line through diameters along the work.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Line {
    /// The place that the line turns about: the middle of the readings by their weights.
    pub at: Length,
    /// The diameter there.
    pub mean: Length,
    /// Its standard uncertainty.
    pub mean_uncertainty: Length,
    /// Growth of the diameter for each length along the work.
    pub slope: f64,
    /// Its standard uncertainty.
    pub slope_uncertainty: f64,
    /// Standard deviation of the readings about the line; `None` for two places, which are always on it.
    pub residual: Option<Length>,
}

/// How far the middle stands above the line through the ends.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Bow {
    /// On diameter; below nothing for a waist.
    pub bulge: Length,
    /// Its standard uncertainty.
    pub uncertainty: Length,
    /// The first and the last place.
    pub between: [Length; 2],
}

/// Places nearer together than this tell nothing of a slope.
const LEAST_SPAN: f64 = 0.5;

/// A place with its weight, in millimetres.
#[derive(Clone, Copy)]
struct Point {
    z: f64,
    d: f64,
    weight: f64,
}

/// The line through diameters along the work by weighted least squares; `None` with less than two places apart.
///
/// # Accuracy
/// Uncertainties are those of the readings, or by the scatter about the line where that is larger.
/// # Source
/// Weighted least squares, as in JCGM 100:2008 (GUM), H.3.
/// # Example
/// ```
/// use skimwright::measuring::{Placed, line_through};
/// use skimwright::quantity::Length;
/// let places = [(5.0, 20.004), (35.0, 20.009), (65.0, 20.011), (95.0, 20.017)];
/// let places = places.map(|(at, diameter)| Placed {
///     at: Length::mm(at),
///     diameter: Length::mm(diameter),
///     uncertainty: Length::um(1.8),
/// });
/// let line = line_through(&places).unwrap();
/// assert!((line.slope - 1.3667e-4).abs() < 1e-8);
/// ```
pub fn line_through(places: &[Placed]) -> Option<Line> {
    let points = points(places)?;
    let first = points.first()?;
    let base = (first.z, first.d);
    let sum = |value: &dyn Fn(&Point) -> f64| points.iter().map(value).sum::<f64>();
    let all = sum(&|p| p.weight);
    let z_mean = sum(&|p| p.weight * (p.z - base.0)) / all;
    let d_mean = sum(&|p| p.weight * (p.d - base.1)) / all;
    let out = |p: &Point| p.z - base.0 - z_mean;
    let up = |p: &Point| p.d - base.1 - d_mean;
    let zz = sum(&|p| p.weight * out(p) * out(p));
    let slope = sum(&|p| p.weight * out(p) * up(p)) / zz;
    let off = |p: &Point| up(p) - slope * out(p);
    let (scale, residual) = scatter(&points, 2, off);
    Some(Line {
        at: Length::mm(base.0 + z_mean),
        mean: Length::mm(base.1 + d_mean),
        mean_uncertainty: Length::mm(scale / all.sqrt()),
        slope,
        slope_uncertainty: scale / zz.sqrt(),
        residual,
    })
}

/// How far the middle of diameters along the work stands above the line through the ends, by a parabola through them;
/// `None` with less than three places apart.
///
/// # Source
/// Weighted least squares on polynomials that are orthogonal over the places (G. E. Forsythe 1957, from memory). Of three
/// places it is the middle against the line.
pub fn bow(places: &[Placed]) -> Option<Bow> {
    let points = points(places)?;
    let line = line_through(places)?;
    let span = ends(&points)?;
    let half = (span[1] - span[0]) / 2.0;
    let sum = |value: &dyn Fn(&Point) -> f64| points.iter().map(value).sum::<f64>();
    // In half spans, so that the powers stay small.
    let x = |p: &Point| (p.z - line.at.to_mm()) / half;
    let two = sum(&|p| p.weight * x(p).powi(2));
    let three = sum(&|p| p.weight * x(p).powi(3));
    let all = sum(&|p| p.weight);
    let curve = |p: &Point| x(p).powi(2) - three / two * x(p) - two / all;
    let size = sum(&|p| p.weight * curve(p).powi(2));
    // Nothing curves where all places but two are the same.
    if size <= all * 1e-6 {
        return None;
    }
    let above = |p: &Point| p.d - line.mean.to_mm() - line.slope * half * x(p);
    let bend = sum(&|p| p.weight * curve(p) * above(p)) / size;
    let (scale, _) = scatter(&points, 3, |p| above(p) - bend * curve(p));
    Some(Bow {
        bulge: Length::mm(-bend),
        uncertainty: Length::mm(scale / size.sqrt()),
        between: span.map(Length::mm),
    })
}

/// The places with their weights; `None` where they do not lie apart.
fn points(places: &[Placed]) -> Option<Vec<Point>> {
    let points: Vec<Point> = places
        .iter()
        .map(|place| Point {
            z: place.at.to_mm(),
            d: place.diameter.to_mm(),
            weight: 1.0 / super::corrected::square(place.uncertainty.max(super::budget::LEAST_OWN)),
        })
        .collect();
    let [first, last] = ends(&points)?;
    (last - first >= LEAST_SPAN).then_some(points)
}

/// The first and the last place.
fn ends(points: &[Point]) -> Option<[f64; 2]> {
    let first = points.first()?.z;
    Some(points.iter().fold([first, first], |[low, high], point| {
        [low.min(point.z), high.max(point.z)]
    }))
}

/// By how much the scatter about a fit of so many unknowns is larger than the readings' own, at least 1, and the standard
/// deviation about it; `None` where every reading is on it anyway.
fn scatter(points: &[Point], unknowns: u32, off: impl Fn(&Point) -> f64) -> (f64, Option<Length>) {
    let count = u32::try_from(points.len()).unwrap_or(u32::MAX);
    let Some(free) = count.checked_sub(unknowns).filter(|it| *it > 0) else {
        return (1.0, None);
    };
    let free = f64::from(free);
    let weighted: f64 = points.iter().map(|p| p.weight * off(p).powi(2)).sum();
    let plain: f64 = points.iter().map(|p| off(p).powi(2)).sum();
    let deviation = Length::mm((plain / free).sqrt());
    ((weighted / free).sqrt().max(1.0), Some(deviation))
}

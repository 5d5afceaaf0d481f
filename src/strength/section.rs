//! One cross-section of a round bar, with whatever weakens it there.
//!
//! Areas and second moments are exact. All cuts are given by where they lie, measured from the axis of the bar, so that
//! turning the bar down leaves them where they are.
//!
//! Taking metal off never raises any property here. Second moments about the centroid keep that law by nature. A textbook
//! modulus does not: trimming the corners of a square raises it, because the outermost fibre comes nearer.
//! So each modulus is the best of several careful values that all keep the law:
//! * that of the round ring between the hole and the nearest cut, which is exact where there is no cut;
//! * the second moment over half the diameter of the bar, unless three flats or more shut the arcs off from each other;
//! * a share of the modulus of the ellipse with the same area and second moment, which serves tangs and polygons.

use core::f64::consts::{FRAC_PI_2, FRAC_PI_4};

use serde::Serialize;

use super::cut::{Cut, Hole, Outside};
use super::region::{HalfPlane, Moments, disc_within};
use crate::quantity::{Angle, Area, Length, SecondMoment, Volume};

/// Share of the ellipse's bending modulus that is counted.
///
/// Own comparison with the least I/c over all directions: 0.78 or more for one or two flats, squares, hexagons
/// (`tests/section_properties.rs`).
const BENDING_SHARE: f64 = 0.78;

/// Share of I/R that is counted with two flats or keyways, which may shift the centroid the same way.
///
/// Own comparison: two flats at right angles 0.91, two keyways at right angles 0.945.
const SEVERAL_CUTS: f64 = 0.90;

/// Share of 4/(1/I₁ + 1/I₂) that is counted as torsion constant once there are flats, keyways or slots.
///
/// That bound (Nicolai's, from memory) is never below the true constant and is exact for rounds, rings, ellipses and thin
/// strips. Own comparison with finite elements: 0.84 for a square, 0.87 for half a round, 0.87 or more for keyways whose
/// floor is no nearer to the axis than [`SHALLOW_FLOOR`]. Triangles with sharp corners lie as low as 0.6.
const TORSION_SHARE: f64 = 0.80;

/// Floor of a keyway, as a share of the radius, below which the torsion constant is taken down in proportion.
///
/// Own comparison with finite elements: of the bound above 0.79 is left at half the radius, 0.68 at 0.4.
const SHALLOW_FLOOR: f64 = 0.65;

/// Share of twice the ellipse's bending modulus that is counted in torsion; own comparison: 0.72 for a square.
const TORSION_ELLIPSE_SHARE: f64 = 0.70;

/// How much a hole takes off the torsion modulus of a section with cuts, for each part of the diameter up to a fifth.
///
/// Own comparison with finite elements: the stress between a hole and a flat is up to 1.4 times the mean.
const HOLE_BESIDE_CUT: f64 = 1.5;

/// Below this share of the hole's diameter, the wall left under a flat or keyway carries less shear flow than the rest.
const FULL_WALL: f64 = 0.25;

/// One cross-section of a round bar.
///
/// Cheap to make: it borrows its cuts. Each keyway or cross hole doubles the work, so give four of them at most.
///
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::strength::CrossSection;
/// let solid = CrossSection::round(Length::mm(20.0)).properties();
/// assert!((solid.bending_modulus.to_mm3() - 785.398).abs() < 1e-3);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossSection<'a> {
    /// The outside; at the root of a thread.
    pub diameter: Length,
    /// What the outside is.
    pub outside: Outside,
    /// A hole along the bar.
    pub hole: Option<Hole>,
    /// What is cut away.
    pub cuts: &'a [Cut],
}

/// How a property was found, for the page to put into words.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Basis {
    /// A solid or hollow round, exact.
    Round,
    /// A hole off the axis: area and bending exact by parallel axes, torsion by the series of the handbooks.
    EccentricHole,
    /// A thread taken at its root, whose helix is not counted.
    ThreadRoot,
    /// A flat as a segment of the circle, exact.
    Flat,
    /// A keyway as a slot with square corners, cut out of the circle exactly; its corner radii are not counted.
    Keyway,
    /// A cross hole as a strip cut away, the usual approximation (stress-concentration handbooks, from memory).
    CrossHole,
    /// A slot: two prongs that bend and twist each for itself.
    Slot,
    /// The torsion of a section with cuts: estimated on the low side.
    TorsionEstimate,
}

/// The properties of one cross-section.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Section {
    /// Area.
    pub area: Area,
    /// Least second moment about any axis through the centroid.
    pub second_moment: SecondMoment,
    /// Torsion constant: torque over shear modulus and twist per length.
    pub torsion_constant: SecondMoment,
    /// Bending modulus in the weakest direction.
    pub bending_modulus: Volume,
    /// Torsion modulus: torque over greatest nominal shear stress.
    pub torsion_modulus: Volume,
}

impl Section {
    /// Nothing left, or a hole that breaks out.
    const NOTHING: Self = Self {
        area: Area::ZERO,
        second_moment: SecondMoment::ZERO,
        torsion_constant: SecondMoment::ZERO,
        bending_modulus: Volume::ZERO,
        torsion_modulus: Volume::ZERO,
    };

    /// Of each property the smaller.
    pub(crate) fn weaker(self, other: Self) -> Self {
        Self {
            area: self.area.min(other.area),
            second_moment: self.second_moment.min(other.second_moment),
            torsion_constant: self.torsion_constant.min(other.torsion_constant),
            bending_modulus: self.bending_modulus.min(other.bending_modulus),
            torsion_modulus: self.torsion_modulus.min(other.torsion_modulus),
        }
    }
}

impl CrossSection<'static> {
    /// A solid round.
    pub const fn round(diameter: Length) -> Self {
        Self {
            diameter,
            outside: Outside::Plain,
            hole: None,
            cuts: &[],
        }
    }

    /// A hollow round with the hole on the axis.
    pub const fn hollow(diameter: Length, hole: Length) -> Self {
        Self {
            hole: Some(Hole {
                diameter: hole,
                offset: Length::ZERO,
                towards: Angle::ZERO,
            }),
            ..Self::round(diameter)
        }
    }
}

/// What of a section bends and twists together, in millimetres.
#[derive(Clone, Copy, Default)]
struct Stiff {
    area: f64,
    /// Central second moments ∫x², ∫y², ∫xy.
    second: (f64, f64, f64),
    /// Nicolai's bound of the torsion constant.
    twist: f64,
}

impl Stiff {
    fn of(moments: Moments) -> Self {
        let area = moments.area.max(0.0);
        let second @ (xx, yy, xy) = moments.central();
        // 4/(1/I₁ + 1/I₂) is four times the determinant over the trace.
        let trace = xx + yy;
        let twist = if trace > 0.0 {
            (4.0 * (xx * yy - xy * xy) / trace).max(0.0)
        } else {
            0.0
        };
        Self {
            area,
            second,
            twist,
        }
    }

    fn plus(self, other: Self) -> Self {
        let (a, b) = (self.second, other.second);
        Self {
            area: self.area + other.area,
            second: (a.0 + b.0, a.1 + b.1, a.2 + b.2),
            twist: self.twist + other.twist,
        }
    }

    /// The smaller principal second moment.
    fn least(self) -> f64 {
        let (xx, yy, xy) = self.second;
        (f64::midpoint(xx, yy) - ((xx - yy) / 2.0).hypot(xy)).max(0.0)
    }
}

impl CrossSection<'_> {
    /// Area, second moments and moduli.
    ///
    /// All are zero where nothing is left, or where the hole breaks out of the round: a C carries hardly any torque.
    ///
    /// # Accuracy
    /// Area and second moment: exact. Moduli: exact for a solid or concentric hollow round. One cut or a hole off the
    /// axis shifts the centroid, which the bending modulus leaves out as textbooks do: it may be up to 7 % high.
    /// Torsion of a section with cuts: the constant low by up to a quarter, more with a deep keyway or a thin wall; the
    /// modulus between 40 % low and 6 % high, without the stress in the sharp corner of a keyway. Three flats that
    /// leave a triangle with sharp corners are not covered: the constant may be a third high.
    /// # Source
    /// Geometry; the constants at the head of this file.
    pub fn properties(&self) -> Section {
        let radius = self.diameter.to_mm() / 2.0;
        let (bore, offset) = self.bore();
        // A wall of less than a nanometre is none, whichever way it was rounded.
        if radius <= 0.0 || (bore > 0.0 && bore + offset >= radius - 1e-6) {
            return Section::NOTHING;
        }
        let whole = self.stiff(radius, bore);
        let second = whole.least();
        // An ellipse has the bending modulus √(I·A)/2.
        let ellipse = (second * whole.area).sqrt() / 2.0;
        let flats = self.cuts.iter().filter(|cut| cut.is_flat()).count();
        let over_radius = if flats < 3 { 1.0 / radius } else { 0.0 };

        // The ring round the hole that no cut touches.
        let ring = (radius - offset).min(self.reach(|_| true));
        let ring_second = ring_second(ring, bore);
        let ring_modulus = if ring_second > 0.0 {
            ring_second / ring
        } else {
            0.0
        };

        let along = self.reach(Cut::runs_along);
        let is_cut = along < f64::INFINITY;
        let (share, beside) = if is_cut {
            let hole = (bore / radius).min(0.2);
            (TORSION_SHARE, 1.0 - HOLE_BESIDE_CUT * hole)
        } else {
            (1.0, 1.0)
        };
        let lengthwise = self.cuts.iter().filter(|cut| cut.runs_along()).count();
        let shifted = if lengthwise < 2 { 1.0 } else { SEVERAL_CUTS };
        let wall = if is_cut && bore > 0.0 {
            ((along - bore) / (2.0 * bore * FULL_WALL)).clamp(0.0, 1.0)
        } else {
            1.0
        };
        let deep = if flats < 3 {
            (self.deepest_floor() / (SHALLOW_FLOOR * radius)).clamp(0.0, 1.0)
        } else if self.deepest_floor() < f64::INFINITY {
            0.0
        } else {
            1.0
        };
        let (twist_without_cuts, peak) = hollow_twist(radius, bore, offset);
        let twist = (whole.twist * share * wall).min(twist_without_cuts);
        let in_torsion =
            (twist * over_radius).max(2.0 * TORSION_ELLIPSE_SHARE * ellipse * wall) / peak;
        Section {
            area: Area::mm2(whole.area),
            second_moment: SecondMoment::mm4(second),
            torsion_constant: SecondMoment::mm4((deep * twist).max(2.0 * ring_second)),
            bending_modulus: Volume::mm3(
                ring_modulus
                    .max(second * over_radius * shifted)
                    .max(BENDING_SHARE * ellipse),
            ),
            torsion_modulus: Volume::mm3((2.0 * ring_modulus).max(beside * in_torsion)),
        }
    }

    /// How each of the properties was found, in the order in which a reader wants it.
    pub fn bases(&self) -> impl Iterator<Item = Basis> {
        let hole = match self.hole {
            Some(hole) if hole.offset != Length::ZERO => Basis::EccentricHole,
            _ => Basis::Round,
        };
        let thread = (self.outside == Outside::ThreadRoot).then_some(Basis::ThreadRoot);
        let estimate = (!self.cuts.is_empty()).then_some(Basis::TorsionEstimate);
        let cuts = self.cuts.iter().map(|cut| match cut {
            Cut::Flat { .. } => Basis::Flat,
            Cut::Keyway { .. } => Basis::Keyway,
            Cut::CrossHole { .. } => Basis::CrossHole,
            Cut::Slot { .. } => Basis::Slot,
        });
        [hole].into_iter().chain(thread).chain(cuts).chain(estimate)
    }

    /// From the axis of the bar to the floor of the deepest keyway; infinite where there is none.
    fn deepest_floor(&self) -> f64 {
        let floors = self.cuts.iter().filter_map(|cut| match cut {
            Cut::Keyway { floor, .. } => Some(floor.to_mm()),
            _ => None,
        });
        floors.fold(f64::INFINITY, f64::min)
    }

    /// The hole's radius and how far its axis lies off.
    fn bore(&self) -> (f64, f64) {
        self.hole.map_or((0.0, 0.0), |hole| {
            (hole.diameter.to_mm() / 2.0, hole.offset.to_mm().abs())
        })
    }

    /// The centre of the hole.
    fn centre(&self) -> (f64, f64) {
        self.hole.map_or((0.0, 0.0), |hole| {
            let (sin, cos) = hole.towards.to_radians().sin_cos();
            (hole.offset.to_mm() * cos, hole.offset.to_mm() * sin)
        })
    }

    /// How near the cuts of a kind come to the axis of the hole; infinite where there are none.
    fn reach(&self, counts: impl Fn(Cut) -> bool) -> f64 {
        let (x, y) = self.centre();
        self.cuts
            .iter()
            .filter(|cut| counts(**cut))
            .map(|cut| match *cut {
                Cut::Flat { distance, at }
                | Cut::Keyway {
                    floor: distance,
                    at,
                    ..
                } => {
                    let (sin, cos) = at.to_radians().sin_cos();
                    distance.to_mm() - (x * cos + y * sin)
                }
                Cut::CrossHole { .. } | Cut::Slot { .. } => 0.0,
            })
            .fold(f64::INFINITY, f64::min)
    }

    /// Area and second moments, each prong of a slotted bar for itself.
    fn stiff(&self, radius: f64, bore: f64) -> Stiff {
        let flats = self.cuts.iter().filter_map(|cut| match *cut {
            Cut::Flat { distance, at } => Some(HalfPlane::new(at.to_radians(), distance.to_mm())),
            _ => None,
        });
        let discs = Discs {
            radius,
            bore,
            centre: self.centre(),
        };
        discs.stiff(&mut flats.collect(), self.cuts, self.cuts)
    }
}

/// Second moment of a ring about a diameter, in mm⁴, from its radii in mm; never below zero.
pub(crate) fn ring_second(outer: f64, inner: f64) -> f64 {
    (FRAC_PI_4 * (outer.max(0.0).powi(4) - inner.powi(4))).max(0.0)
}

/// The torsion constant of a round with a hole off its axis, and by how much its greatest stress exceeds that of a round
/// with the hole on the axis.
///
/// # Source
/// Roark's Formulas for Stress and Strain, torsion of a hollow circular section with an eccentric hole; from memory.
/// Own finite elements with a hole of 0.4 D off by 0.075 D: constant within 0.1 %, stress within 0.3 % (`tests/section_properties.rs`).
fn hollow_twist(radius: f64, bore: f64, offset: f64) -> (f64, f64) {
    // The source's n = d/D and λ = e/D.
    let n2 = (bore / radius).powi(2);
    let off = offset / (2.0 * radius);
    let (a, b, c) = (1.0 - n2, 1.0 - n2 * n2, 1.0 - n2 * n2 * n2);
    let softer = 1.0
        + 16.0 * n2 / (a * b) * off.powi(2)
        + 384.0 * n2 * n2 / (a * a * b.powi(4)) * off.powi(4);
    let peak = 1.0
        + 4.0 * n2 / a * off
        + 32.0 * n2 / (a * b) * off.powi(2)
        + 48.0 * n2 * (1.0 + 2.0 * n2 + 3.0 * n2 * n2 + 2.0 * n2.powi(3)) / (a * b * c)
            * off.powi(3);
    (2.0 * ring_second(radius, bore) / softer, peak)
}

/// The round of the bar and that of the hole.
struct Discs {
    radius: f64,
    bore: f64,
    centre: (f64, f64),
}

impl Discs {
    /// Splits at every slot, then takes keyways and cross holes out of each prong.
    fn stiff(&self, planes: &mut Vec<HalfPlane>, slots: &[Cut], cuts: &[Cut]) -> Stiff {
        let Some((slot, rest)) = slots.split_first() else {
            return Stiff::of(self.remaining(planes, cuts));
        };
        let Cut::Slot { width, along } = *slot else {
            return self.stiff(planes, rest, cuts);
        };
        let mut sum = Stiff::default();
        for turn in [FRAC_PI_2, -FRAC_PI_2] {
            planes.push(HalfPlane::new(
                along.to_radians() + turn,
                -width.max(Length::ZERO).to_mm() / 2.0,
            ));
            sum = sum.plus(self.stiff(planes, rest, cuts));
            planes.pop();
        }
        sum
    }

    /// What is left within the half-planes: the whole less the part that lies in the first cut, and so on, so that cuts
    /// which overlap are taken away once.
    fn remaining(&self, planes: &mut Vec<HalfPlane>, cuts: &[Cut]) -> Moments {
        let Some((cut, rest)) = cuts.split_first() else {
            let hole = if self.bore > 0.0 {
                disc_within(self.bore, self.centre, planes)
            } else {
                Moments::default()
            };
            return disc_within(self.radius, (0.0, 0.0), planes) - hole;
        };
        let whole = self.remaining(planes, rest);
        let Some(removed) = cut.removed() else {
            return whole;
        };
        let kept = planes.len();
        planes.extend(removed);
        let lost = self.remaining(planes, rest);
        planes.truncate(kept);
        whole - lost
    }
}

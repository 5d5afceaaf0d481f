//! The curves that an outline is made of: lines and the quarter circle at the shoulder.

use core::f64::consts::PI;

/// Radii in millimetres; z counted from the shoulder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Curve {
    /// `radius` at `z`, growing by `slope` along z.
    Line { z: f64, radius: f64, slope: f64 },
    /// A quarter circle of radius `fillet` between the shoulder at z = 0 and a shank of radius `shank`.
    Fillet { shank: f64, fillet: f64 },
}

impl Curve {
    pub(super) fn radius_at(self, z: f64) -> f64 {
        match self {
            Self::Line {
                z: start,
                radius,
                slope,
            } => radius + slope * (z - start),
            Self::Fillet { shank, fillet } => {
                let u = (fillet - z).max(0.0).min(fillet);
                shank + fillet - (fillet * fillet - u * u).max(0.0).sqrt()
            }
        }
    }

    /// π ∫ radius² dz between two places.
    pub(super) fn volume(self, from: f64, to: f64) -> f64 {
        match self {
            Self::Line { .. } => {
                // A frustum: exact, and without the cancellation that the antiderivative suffers.
                let (r0, r1) = (self.radius_at(from), self.radius_at(to));
                PI * (to - from) * (r0 * r0 + r0 * r1 + r1 * r1) / 3.0
            }
            Self::Fillet { shank, fillet } => {
                let (a, r) = (shank + fillet, fillet);
                // With u = r − z: radius² = a² − 2a√(r²−u²) + r² − u².
                let antiderivative = |z: f64| {
                    let u = (r - z).max(0.0).min(r);
                    let root = (r * r - u * u).max(0.0).sqrt();
                    let circle = f64::midpoint(u * root, r * r * (u / r).clamp(-1.0, 1.0).asin());
                    a * a * u - 2.0 * a * circle + r * r * u - u * u * u / 3.0
                };
                PI * (antiderivative(from) - antiderivative(to))
            }
        }
    }

    /// π ∫ radius² z dz between two places.
    pub(super) fn moment(self, from: f64, to: f64) -> f64 {
        match self {
            Self::Line { .. } => {
                // Simpson's rule is exact for a polynomial of the third degree.
                let at = |z: f64| self.radius_at(z).powi(2) * z;
                let middle = f64::midpoint(from, to);
                PI * (to - from) * (at(from) + 4.0 * at(middle) + at(to)) / 6.0
            }
            Self::Fillet { shank, fillet } => {
                let (a, r) = (shank + fillet, fillet);
                // With z = r − u: r times the volume, less the integral of u · radius².
                let antiderivative = |z: f64| {
                    let u = (r - z).max(0.0).min(r);
                    let root = (r * r - u * u).max(0.0).sqrt();
                    (a * a + r * r) * u * u / 2.0 - u.powi(4) / 4.0 + 2.0 * a / 3.0 * root.powi(3)
                };
                r * self.volume(from, to) - PI * (antiderivative(from) - antiderivative(to))
            }
        }
    }

    /// Where two curves meet, in no order; curves that coincide meet nowhere.
    pub(super) fn crossings(self, other: Self) -> [Option<f64>; 2] {
        match (self, other) {
            (
                Self::Line { z, radius, slope },
                Self::Line {
                    z: other_z,
                    radius: other_radius,
                    slope: other_slope,
                },
            ) => {
                let gap = radius + slope * (other_z - z) - other_radius;
                let turn = other_slope - slope;
                let crossing = (turn != 0.0).then(|| other_z + gap / turn);
                [crossing.filter(|z| z.is_finite()), None]
            }
            (Self::Line { z, radius, slope }, Self::Fillet { shank, fillet })
            | (Self::Fillet { shank, fillet }, Self::Line { z, radius, slope }) => {
                // The line at z = fillet − u against a − √(r² − u²) is a quadratic in u.
                let m = shank + fillet - (radius + slope * (fillet - z));
                let (a, half_b, c) = (1.0 + slope * slope, m * slope, m * m - fillet * fillet);
                let root = half_b * half_b - a * c;
                if root < 0.0 {
                    return [None, None];
                }
                let place = |sign: f64| {
                    let u = (-half_b + sign * root.sqrt()) / a;
                    (m + slope * u >= 0.0).then_some(fillet - u)
                };
                [place(1.0), place(-1.0)]
            }
            // A part has one shoulder, so two fillets are one and the same.
            (Self::Fillet { .. }, Self::Fillet { .. }) => [None, None],
        }
    }
}

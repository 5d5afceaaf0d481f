//! How far the power law of the cutting force may be trusted at a chip's thickness.

use serde::Serialize;

use super::chip::least_chip_thickness;
use crate::quantity::Length;

/// How far the power law may be trusted at a chip's thickness.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum FitTrust {
    /// From 0.1 to 1 mm, where the constants were measured.
    Trusted,
    /// From 0.03 to 0.1 mm: the blunt edge ploughs and the force is up to 30 % more.
    Underestimates,
    /// Under 0.03 mm or what the edge can cut at all, where it rubs; or above 1 mm, outside all that was measured.
    DoNotTrust,
}

/// The thinnest chip that the constants were measured on. From memory.
pub const THINNEST_FITTED: Length = Length::mm(0.1);

/// The thinnest chip for which the law is of any use. From memory.
pub const THINNEST_USABLE: Length = Length::mm(0.03);

/// The thickest chip that the constants were measured on. From memory.
pub const THICKEST_FITTED: Length = Length::mm(1.0);

/// How much more the force may be where the law underestimates. From memory.
pub const THIN_CHIP_EXCESS: f64 = 0.3;

impl FitTrust {
    /// How far the law may be trusted at a mean thickness, for an edge of a radius.
    ///
    /// # Source
    /// Limits from memory: the constants of this file, and [`least_chip_thickness`].
    pub fn at(thickness: Length, edge_radius: Length) -> Self {
        let rubs = thickness < THINNEST_USABLE.max(least_chip_thickness(edge_radius).typical);
        if rubs || THICKEST_FITTED < thickness {
            Self::DoNotTrust
        } else if thickness < THINNEST_FITTED {
            Self::Underestimates
        } else {
            Self::Trusted
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn trust_ends_where_the_fit_does() {
        for (thickness, trust) in [
            (0.01, FitTrust::DoNotTrust),
            (0.0299, FitTrust::DoNotTrust),
            (0.03, FitTrust::Underestimates),
            (0.0999, FitTrust::Underestimates),
            (0.1, FitTrust::Trusted),
            (1.0, FitTrust::Trusted),
            (1.01, FitTrust::DoNotTrust),
        ] {
            assert_eq!(
                FitTrust::at(Length::mm(thickness), Length::um(10.0)),
                trust,
                "{thickness}"
            );
        }
    }

    /// 0.3 of 0.2 mm: an edge as blunt as that rubs where a keen one cuts.
    #[test]
    fn a_blunt_edge_is_not_trusted_with_a_thin_chip() {
        let at = |thickness| FitTrust::at(Length::mm(thickness), Length::um(200.0));
        assert_eq!(at(0.059), FitTrust::DoNotTrust);
        assert_eq!(at(0.061), FitTrust::Underestimates);
    }
}

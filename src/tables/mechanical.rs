//! Stiffness, expansion, strength and usual hardness of the material classes.
//!
//! * Source: EN 10088-1, EN 1561 and EN 1563 (annexes), handbook tables of steels, tool steels, aluminium, copper and
//!   titanium alloys for modulus, Poisson's ratio and expansion. Strength, share of yield and hardness are from memory
//!   of the material standards (EN 10025-2, EN ISO 683, EN 10088-3, EN 1561, EN 1563, EN 755-2, EN 12164, ASTM B348),
//!   for the state that the class's name says.
//! * Units: gigapascals, micrometres per metre and kelvin (20 to 100 °C; copper alloys to 200 or 300 °C), megapascals,
//!   hundredths of the strength, HRC.
//! * What is what: the typical value is that of the class's commonest material, the range takes in the others. The
//!   strength of case-hardened steel is that of its core, its hardness that of the case. Yield is 0.2 % proof; grey
//!   iron, which does not yield, has 0.1 % proof. A tool steel above 57 HRC breaks before it yields much: its share is
//!   a rough guess.
//! * Where sources disagree, the range takes in both: grey iron 67 to 118 gigapascals by grade, titanium 8.6 in
//!   handbooks and 9.4 to 9.5 in two textbooks, austenitic steel 16.0 and 17.3.
//! * Left out: plastics, cemented carbide; conductivity.
//! * Checked: by the marks of the row. One tool maker's list of material groups has strengths inside nine of the ranges.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
use super::{Spread, WorkMaterial};
use crate::quantity::{Expansion, Hardness, Stress};
use crate::working::Range;

/// How a class of materials bears load and heat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mechanical {
    /// Modulus of elasticity.
    pub elastic_modulus: Spread<Stress>,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Linear expansion.
    pub expansion: Spread<Expansion>,
    /// Tensile strength in the state that the class's name says.
    pub tensile_strength: Spread<Stress>,
    /// Yield strength as a share of the tensile strength.
    pub yield_share: Spread<f64>,
    /// Hardness to expect, where the class is one that Rockwell C measures.
    pub usual_hardness: Option<Range<Hardness>>,
    /// How far the modulus was checked; Poisson's ratio hardly varies and was not always seen.
    pub confirmed_elastic: Confirmed,
    /// How far the expansion was checked.
    pub confirmed_expansion: Confirmed,
}

impl Mechanical {
    /// How far strength, share of yield and hardness were checked, in every class.
    pub const CONFIRMED_STRENGTH: Confirmed = Memory;
}

impl WorkMaterial {
    /// Stiffness, expansion, strength and usual hardness of the class.
    ///
    /// # Accuracy
    /// Modulus and expansion within a few per cent for steels, far wider for cast iron and bronze. Strengths are what is
    /// usual: of a hardened part a measured hardness says more, see [`tensile_strength`](super::tensile_strength).
    /// # Source
    /// As at the head of the table; the typical value is that of the commonest material.
    /// # Example
    /// ```
    /// use skimwright::quantity::{Expansion, Stress};
    /// use skimwright::tables::WorkMaterial;
    /// let steel = WorkMaterial::LowCarbonSteel.mechanical();
    /// assert_eq!(steel.elastic_modulus.typical, Stress::mpa(205_000.0));
    /// assert_eq!(steel.expansion.typical, Expansion::um_per_m_kelvin(11.7));
    /// assert!(WorkMaterial::Brass.mechanical().usual_hardness.is_none());
    /// ```
    #[rustfmt::skip]
    pub const fn mechanical(self) -> Mechanical {
        match self {
            //                                 E, GPa                  ν      expansion           checked                   strength, MPa        yield, %      HRC
            Self::LowCarbonSteel       => row([200.0, 205.0, 210.0], 0.29,  [11.5, 11.7, 12.1], (OneSource,  OneSource), [ 360,  430,  600], [50, 60, 85], None),
            Self::MediumCarbonSteel    => row([200.0, 205.0, 210.0], 0.29,  [11.1, 11.5, 12.1], (OneSource,  Memory),    [ 560,  640,  750], [50, 55, 65], None),
            Self::AlloySteelTempered   => row([200.0, 205.0, 210.0], 0.29,  [11.1, 12.2, 12.3], (TwoSources, Memory),    [ 900,  970, 1100], [70, 78, 90], Some((28, 34))),
            Self::AlloySteelHard       => row([200.0, 205.0, 210.0], 0.29,  [11.1, 12.2, 12.3], (TwoSources, Memory),    [1250, 1350, 1500], [80, 88, 95], Some((40, 45))),
            Self::ToolSteelAnnealed    => row([190.0, 210.0, 215.0], 0.29,  [10.4, 11.0, 11.7], (Memory,     Memory),    [ 600,  700,  850], [45, 55, 65], None),
            Self::HardenedSteel        => row([190.0, 210.0, 215.0], 0.29,  [10.4, 11.0, 11.7], (Memory,     Memory),    [1650, 2050, 2500], [75, 85, 95], Some((50, 62))),
            Self::CaseHardenedSteel    => row([200.0, 205.0, 210.0], 0.29,  [11.1, 11.7, 12.3], (OneSource,  Memory),    [ 500,  850, 1200], [55, 65, 75], Some((58, 62))),
            Self::HighSpeedSteelHard   => row([207.0, 215.0, 230.0], 0.29,  [10.1, 11.0, 11.6], (Memory,     Memory),    [1800, 2200, 2800], [75, 85, 95], Some((62, 66))),
            Self::StainlessMartensitic => row([200.0, 215.0, 215.0], 0.28,  [10.1, 10.5, 10.5], (OneSource,  OneSource), [ 700,  800,  950], [65, 72, 80], Some((20, 28))),
            Self::StainlessAustenitic  => row([193.0, 200.0, 200.0], 0.29,  [15.9, 16.0, 17.3], (OneSource,  OneSource), [ 500,  600,  750], [30, 40, 60], None),
            Self::GreyIron             => row([ 67.0, 110.0, 118.0], 0.26,  [10.0, 10.5, 12.1], (OneSource,  OneSource), [ 150,  250,  350], [60, 65, 70], None),
            Self::DuctileIron          => row([169.0, 169.0, 176.0], 0.275, [11.0, 12.5, 12.5], (TwoSources, Memory),    [ 400,  500,  700], [58, 64, 68], None),
            Self::AluminiumAlloy       => row([ 68.9,  69.0,  72.0], 0.33,  [23.0, 23.6, 24.0], (TwoSources, TwoSources), [260,  310,  570], [78, 87, 93], None),
            Self::Brass                => row([ 96.0,  97.0, 103.0], 0.34,  [19.0, 20.5, 21.0], (OneSource,  OneSource), [ 360,  430,  550], [35, 60, 80], None),
            Self::Bronze               => row([ 95.0, 110.0, 120.0], 0.34,  [16.0, 17.8, 18.5], (Memory,     Memory),    [ 240,  450,  650], [35, 55, 85], None),
            Self::TitaniumAlloy        => row([110.0, 114.0, 120.0], 0.34,  [ 8.6,  8.6,  9.5], (TwoSources, OneSource), [ 895,  950, 1100], [85, 92, 95], Some((30, 38))),
        }
    }
}

/// A row in the units of the head of the table: least, typical, greatest.
const fn row(
    [e_low, e_typical, e_high]: [f64; 3],
    poisson: f64,
    [a_low, a_typical, a_high]: [f64; 3],
    (confirmed_elastic, confirmed_expansion): (Confirmed, Confirmed),
    [s_low, s_typical, s_high]: [u16; 3],
    [y_low, y_typical, y_high]: [u8; 3],
    hardness: Option<(u8, u8)>,
) -> Mechanical {
    Mechanical {
        elastic_modulus: Spread {
            low: Stress::mpa(e_low * 1000.0),
            typical: Stress::mpa(e_typical * 1000.0),
            high: Stress::mpa(e_high * 1000.0),
        },
        poisson,
        expansion: Spread {
            low: Expansion::um_per_m_kelvin(a_low),
            typical: Expansion::um_per_m_kelvin(a_typical),
            high: Expansion::um_per_m_kelvin(a_high),
        },
        tensile_strength: Spread {
            low: Stress::mpa(s_low as f64),
            typical: Stress::mpa(s_typical as f64),
            high: Stress::mpa(s_high as f64),
        },
        yield_share: Spread {
            low: y_low as f64 / 100.0,
            typical: y_typical as f64 / 100.0,
            high: y_high as f64 / 100.0,
        },
        usual_hardness: match hardness {
            Some((low, high)) => Some(Range {
                low: Hardness::hrc(low as f64),
                high: Hardness::hrc(high as f64),
            }),
            None => None,
        },
        confirmed_elastic,
        confirmed_expansion,
    }
}

//! Measurements of cones, with and without errors. A test takes this file in with
//! `#[path = "support/cones.rs"] mod cones;`.
#![allow(dead_code, reason = "each test uses a part of it")]

use skimwright::part::{Measured, TaperReading};
use skimwright::quantity::Length;
use skimwright::tables::{StandardTaper, TaperSize};

/// A linear congruential generator. Multiplier and increment: D. Knuth, MMIX.
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    /// Even between 0 and 1, neither included.
    pub(crate) fn even(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        let high = u32::try_from(self.0 >> 32).unwrap();
        (f64::from(high) + 0.5) / 4_294_967_296.0
    }

    pub(crate) fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.even()
    }

    /// Two normal errors of one standard deviation (G. Box and M. Muller).
    pub(crate) fn normal(&mut self) -> (f64, f64) {
        let radius = (-2.0 * self.even().ln()).sqrt();
        let (sine, cosine) = (core::f64::consts::TAU * self.even()).sin_cos();
        (radius * cosine, radius * sine)
    }
}

/// What the instruments can be off, in millimetres.
#[derive(Clone, Copy)]
pub(crate) struct Setting {
    pub(crate) name: &'static str,
    pub(crate) diameter: f64,
    pub(crate) distance: f64,
}

/// A micrometer over the edges of its anvils, a calliper for the distance.
pub(crate) const MICROMETER: Setting = Setting {
    name: "micrometer",
    diameter: 0.02,
    distance: 0.1,
};

/// A calliper for everything, the distance from scribed lines.
pub(crate) const CALLIPER: Setting = Setting {
    name: "calliper",
    diameter: 0.05,
    distance: 0.3,
};

/// Any number at all: a product may become what a length's own constructor refuses.
pub(crate) fn length(millimetres: f64) -> Length {
    Length::mm(1.0) * millimetres
}

pub(crate) fn mm(value: f64, error: f64) -> Measured {
    Measured {
        value: length(value),
        error: length(error),
    }
}

pub(crate) fn reading(large: f64, small: f64, distance: f64, setting: Setting) -> TaperReading {
    TaperReading {
        large: mm(large, setting.diameter),
        small: mm(small, setting.diameter),
        distance: mm(distance, setting.distance),
    }
}

/// The diameter of a taper so many millimetres from its gauge plane towards the small end.
pub(crate) fn diameter_at(taper: &StandardTaper, place: f64) -> f64 {
    taper.large_diameter.to_mm() - place * taper.ratio
}

/// The reading of a taper at two places, with errors.
pub(crate) fn measure(
    dice: &mut Dice,
    taper: &StandardTaper,
    [from, to]: [f64; 2],
    setting: Setting,
) -> TaperReading {
    let ((first, second), (third, _)) = (dice.normal(), dice.normal());
    reading(
        diameter_at(taper, from) + first * setting.diameter / 2.0,
        diameter_at(taper, to) + second * setting.diameter / 2.0,
        to - from + third * setting.distance / 2.0,
        setting,
    )
}

/// Without errors: the middle of the normal law.
pub(crate) fn exactly(taper: &StandardTaper, from: f64, to: f64, setting: Setting) -> TaperReading {
    reading(
        diameter_at(taper, from),
        diameter_at(taper, to),
        to - from,
        setting,
    )
}

pub(crate) fn row(code: &str) -> (TaperSize, &'static StandardTaper) {
    let size = TaperSize::from_code(code).unwrap();
    (size, size.get().unwrap())
}

/// As far apart as the taper allows, less 0.5 to 1.5 mm at each end.
pub(crate) fn whole(dice: &mut Dice, taper: &StandardTaper) -> [f64; 2] {
    let length = taper.length.to_mm();
    [dice.between(0.5, 1.5), length - dice.between(0.5, 1.5)]
}

/// A micrometer on balls, the distance by gauge blocks.
pub(crate) const FINE: Setting = Setting {
    name: "fine",
    diameter: 0.004,
    distance: 0.01,
};

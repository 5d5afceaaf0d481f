//! Random numbers that are the same everywhere and always.
#![allow(dead_code, reason = "each user takes a part of it")]

use std::f64::consts::TAU;

/// Random numbers: splitmix64. S. Vigna's public-domain generator, constants from memory.
#[derive(Clone, Debug)]
pub(crate) struct Draw(u64);

impl Draw {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed)
    }

    pub(crate) fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut bits = self.0;
        bits = (bits ^ (bits >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        bits = (bits ^ (bits >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        bits ^ (bits >> 31)
    }

    /// From nought to below one.
    pub(crate) fn even(&mut self) -> f64 {
        // The bits of a number from one to below two, less one.
        f64::from_bits((1023 << 52) | (self.bits() >> 12)) - 1.0
    }

    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.even()
    }

    pub(crate) fn logarithmic(&mut self, low: f64, high: f64) -> f64 {
        (self.between(low.ln(), high.ln())).exp()
    }

    /// Standard normal, by Box and Muller.
    pub(crate) fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.even()).ln()).sqrt();
        radius * (TAU * self.even()).cos()
    }

    pub(crate) fn one_of<T: Copy>(&mut self, items: &[T]) -> T {
        let index = self.bits() % items.len() as u64;
        items[usize::try_from(index).unwrap()]
    }
}

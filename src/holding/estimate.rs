//! A figure that nobody knows exactly: the least, the likely and the most to expect.

use serde::Serialize;

/// The least, the likely and the most to expect of something.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Estimate<Q> {
    /// The least to expect.
    pub low: Q,
    /// The likely one.
    pub likely: Q,
    /// The most to expect.
    pub high: Q,
}

impl<Q> Estimate<Q> {
    /// From the three in order.
    pub const fn new(low: Q, likely: Q, high: Q) -> Self {
        Self { low, likely, high }
    }
}

//! What an infeed takes off the diameter: a straight line, and how well it is known.
//!
//! `off = offset + share · engaged`, where `engaged` is what was dialled in and what earlier cuts left standing, on
//! diameter. All numbers in millimetres on diameter; the share is one of a whole.
//!
//! # Source
//! Bayesian linear regression with a normal prior and known scatter, the conjugate case; any textbook of statistics.

/// What is believed of the line: normal, with a covariance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Belief {
    /// What comes off whatever is dialled.
    pub(super) offset: f64,
    /// What comes off of each millimetre.
    pub(super) share: f64,
    /// Variance of the offset.
    pub(super) offset_variance: f64,
    /// Variance of the share.
    pub(super) share_variance: f64,
    /// Covariance of the two.
    pub(super) covariance: f64,
}

/// One measured cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Row {
    /// What was dialled in and what stood from before.
    pub(super) engaged: f64,
    /// What came off.
    pub(super) off: f64,
    /// Variance of what came off, about the line; above nought.
    pub(super) variance: f64,
}

/// What a cut is expected to take off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Expected {
    /// What comes off.
    pub(super) off: f64,
    /// Variance of the line there: what more cuts would lessen.
    pub(super) variance: f64,
}

impl Belief {
    /// Two numbers that know nothing of each other.
    pub(super) const fn apart(
        (offset, deviation): (f64, f64),
        (share, of_share): (f64, f64),
    ) -> Self {
        Self {
            offset,
            share,
            offset_variance: deviation * deviation,
            share_variance: of_share * of_share,
            covariance: 0.0,
        }
    }

    /// What a cut that engages so much takes off.
    pub(super) fn at(&self, engaged: f64) -> Expected {
        let across = 2.0 * engaged * self.covariance;
        let variance = self.offset_variance + across + engaged * engaged * self.share_variance;
        Expected {
            off: self.offset + self.share * engaged,
            variance: variance.max(0.0),
        }
    }

    /// What must be engaged to take so much off; `None` where the share is not above nought.
    pub(super) fn engaged_for(&self, off: f64) -> Option<f64> {
        let engaged = (off - self.offset) / self.share;
        (self.share > 0.0 && engaged.is_finite()).then_some(engaged)
    }

    /// What is believed after one more measured cut. A row of no variance, or with a number that is not finite, teaches
    /// nothing.
    ///
    /// One after another gives what all at once would: (P₀⁻¹ + Σ xxᵀ/s²)⁻¹.
    #[must_use]
    pub(super) fn after(&self, row: &Row) -> Self {
        let Expected { off, variance } = self.at(row.engaged);
        let all = variance + row.variance;
        let surprise = row.off - off;
        if row.variance <= 0.0 || !all.is_finite() || !surprise.is_finite() {
            return *self;
        }
        // The gain is P x/(xᵀ P x + s²), and P loses the gain times xᵀ P.
        let by_offset = self.offset_variance + row.engaged * self.covariance;
        let by_share = self.covariance + row.engaged * self.share_variance;
        Self {
            offset: self.offset + by_offset / all * surprise,
            share: self.share + by_share / all * surprise,
            offset_variance: (self.offset_variance - by_offset * by_offset / all).max(0.0),
            share_variance: (self.share_variance - by_share * by_share / all).max(0.0),
            covariance: self.covariance - by_offset * by_share / all,
        }
    }

    /// What is believed after several measured cuts.
    #[must_use]
    pub(super) fn after_all(&self, rows: impl IntoIterator<Item = Row>) -> Self {
        rows.into_iter()
            .fold(*self, |belief, row| belief.after(&row))
    }
}

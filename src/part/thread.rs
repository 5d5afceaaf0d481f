//! The diameter at the bottom of an outside thread.

use crate::quantity::Length;
use crate::tables::{StandardThread, ThreadSeries};

/// The minor diameter of the screw, rounded root: what is solid under the thread.
///
/// # Source
/// ISO 724 and ISO 68-1 for metric, ASME B1.1 for unified threads: d − 1.2269 P (17/24 of the height of the sharp
/// triangle on each side); BS 84 for Whitworth: d − 1.2807 P.
pub(crate) fn root_diameter(thread: &StandardThread) -> Length {
    let depths = match thread.series {
        ThreadSeries::MetricCoarse
        | ThreadSeries::MetricFine
        | ThreadSeries::Unc
        | ThreadSeries::Unf => 1.226_869,
        ThreadSeries::Bsw => 1.280_654,
    };
    thread.major - thread.pitch * depths
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::ThreadSize;

    /// ISO 724, d3 of coarse threads: M6 4.773, M12 9.853, M20 16.933; BS 84 core diameter of 1/2-12: 0.3933 in.
    #[test]
    fn roots_agree_with_print() {
        for (code, wanted) in [
            ("M6", 4.773),
            ("M12", 9.853),
            ("M20", 16.933),
            ("1/2-12 BSW", 0.3933 * 25.4),
        ] {
            let thread = ThreadSize::from_code(code)
                .and_then(ThreadSize::get)
                .unwrap();
            let root = root_diameter(thread).to_mm();
            assert!((root - wanted).abs() < 2e-3, "{code}: {root}");
        }
    }
}

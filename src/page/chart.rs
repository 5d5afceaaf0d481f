//! The chart of the most that can be had: where a length and a diameter lie on it, in CSS pixels.
//!
//! Lengths run from the left, diameters upward from nought, so that the curve looks like the upper half of the part.

use skimwright::quantity::Length;
use skimwright::rework::Most;
use skimwright::sheet::short;

/// Room beside and below the plot for the figures of its axes, and above it.
pub(crate) const LEFT: f64 = 12.0;
const RIGHT: f64 = 12.0;
pub(crate) const TOP: f64 = 28.0;
const BELOW: f64 = 44.0;

/// How much more than the most the chart is high and wide, so that the curve does not run along its edge.
const MARGIN: f64 = 1.12;

/// The measures of a chart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Chart {
    pub(crate) width: f64,
    pub(crate) height: f64,
    longest: Length,
    widest: Length,
}

impl Chart {
    /// A chart for a curve and a point that is wanted; `None` where there is nothing to be had.
    pub(crate) fn new(width: f64, most: &[Most], wanted: (Length, Length)) -> Option<Self> {
        let longest = most.last()?.length.max(wanted.0);
        let widest = most.first()?.diameter.max(wanted.1);
        (longest > Length::ZERO && widest > Length::ZERO).then(|| Self {
            width,
            height: (width * 0.62).clamp(190.0, 300.0),
            longest: longest * MARGIN,
            widest: widest * MARGIN,
        })
    }

    pub(crate) fn right(self) -> f64 {
        self.width - RIGHT
    }

    pub(crate) fn bottom(self) -> f64 {
        self.height - BELOW
    }

    pub(crate) fn x(self, length: Length) -> f64 {
        LEFT + (self.right() - LEFT) * (length / self.longest)
    }

    pub(crate) fn y(self, diameter: Length) -> f64 {
        self.bottom() - (self.bottom() - TOP) * (diameter / self.widest)
    }

    /// The length at a place across the chart.
    pub(crate) fn length_at(self, x: f64) -> Length {
        let share = (x - LEFT) / (self.right() - LEFT);
        self.longest * share.clamp(0.0, 1.0)
    }

    /// The curve as a line.
    pub(crate) fn curve(self, most: &[Most]) -> String {
        let mut path = String::new();
        for (place, point) in most.iter().enumerate() {
            path.push(if place == 0 { 'M' } else { 'L' });
            path.push_str(&self.point(point.length, point.diameter));
        }
        if let Some(last) = most.last() {
            path.push('L');
            path.push_str(&self.point(last.length, Length::ZERO));
        }
        path
    }

    /// What cannot be had: all above and beyond the curve, as a closed shape.
    pub(crate) fn beyond(self, most: &[Most]) -> String {
        let [right, top, left] = [self.right(), TOP, LEFT].map(short);
        format!("{}H{right}V{top}H{left}Z", self.curve(most))
    }

    /// A point for a path.
    pub(crate) fn point(self, length: Length, diameter: Length) -> String {
        format!("{} {}", short(self.x(length)), short(self.y(diameter)))
    }
}

#[cfg(test)]
mod tests {
    #![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

    use super::*;

    fn curve() -> Vec<Most> {
        [(0.0, 20.0), (50.0, 20.0), (50.0, 10.0), (80.0, 10.0)]
            .map(|(length, diameter)| Most {
                length: Length::mm(length),
                diameter: Length::mm(diameter),
            })
            .to_vec()
    }

    #[test]
    fn what_is_touched_is_what_is_meant() {
        let wanted = (Length::mm(50.0), Length::mm(16.0));
        for width in [240.0, 328.0, 700.0] {
            let chart = Chart::new(width, &curve(), wanted).unwrap();
            for length in [0.0, 12.5, 50.0, 80.0] {
                let length = Length::mm(length);
                let back = chart.length_at(chart.x(length));
                assert!((back - length).abs().to_mm() < 1e-9);
            }
            assert_eq!(chart.length_at(-50.0), Length::ZERO);
            assert!(chart.y(Length::mm(20.0)) > TOP);
            assert!(chart.x(Length::mm(80.0)) < chart.right());
        }
    }

    #[test]
    fn a_point_that_is_wanted_beyond_the_stock_is_on_the_chart() {
        let far = (Length::mm(120.0), Length::mm(30.0));
        let chart = Chart::new(328.0, &curve(), far).unwrap();
        assert!(chart.x(far.0) < chart.right() && chart.y(far.1) > TOP);
        assert_eq!(Chart::new(328.0, &[], far), None);
    }
}

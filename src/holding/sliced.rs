//! A beam out of the outlines of a part.

use super::beam::{Beam, BeamError, Bend, positive};
use crate::order;
use crate::part::{Profile, SAME};
use crate::quantity::{Length, Stress};
use crate::strength::ring_second;

/// Slices of a taper are short enough for the radius to change by no more than this share of itself.
const SLICE: f64 = 0.05;

/// How far inside a slice its ends are looked at, as a share of its width.
const HAIR_SHARE: f64 = 1e-6;

/// A stretch is never cut into more slices than this, however steep it is.
const MOST_SLICES: f64 = 60.0;

impl Beam {
    /// The work between two outlines, `outer` and the holes `inner`, sticking out from the chuck face at `from` to its
    /// end at `to`, both places on the outlines' own axis.
    ///
    /// `to` may lie on either side: a part gripped by its shank sticks out backwards. Holes are taken on the axis.
    ///
    /// # Errors
    /// [`BeamError::Empty`] when the two places are one, [`BeamError::NoMetal`] where there is nothing, or a hole as
    /// wide as the outside.
    /// # Accuracy
    /// Exact for cylinders. Tapers are cut into even slices on which the radius, or that of the hole, changes by no
    /// more than 5 %, along each of which 1/I grows evenly, with its mean by Simpson's rule: the deflection is within
    /// 0.005 % (tested against the closed form for a cone and against numerical integration). A fillet is first
    /// replaced by 12 chords. A cone steeper than 60 slices allow, which hardly bends for its length, is coarser.
    /// # Source
    /// I = π(D⁴ − d⁴)/64.
    pub fn from_outlines(
        outer: &Profile,
        inner: &Profile,
        from: Length,
        to: Length,
        modulus: Stress,
    ) -> Result<Self, BeamError> {
        let (low, high) = (from.min(to), from.max(to));
        let backwards = to < from;
        let mut places: Vec<f64> = [outer, inner]
            .into_iter()
            .flat_map(|outline| outline.between(low, high).points())
            .map(|point| point.z.to_mm())
            .chain([low.to_mm(), high.to_mm()])
            .collect();
        order::numbers(&mut places);
        places.dedup_by(|place, kept| *place - *kept <= SAME);
        let work = Work {
            outer,
            inner,
            from,
            modulus,
        };
        let mut pieces = Vec::with_capacity(places.len());
        for stretch in places.windows(2) {
            if let [start, end] = stretch {
                work.slice(*start, *end, &mut pieces)?;
            }
        }
        if backwards {
            pieces.reverse();
            for (length, bend) in &mut pieces {
                bend.start += bend.growth * *length;
                bend.growth = -bend.growth;
            }
        }
        Self::from_pieces(pieces)
    }
}

/// The outlines that a beam is made from.
struct Work<'a> {
    outer: &'a Profile,
    inner: &'a Profile,
    /// The chuck face.
    from: Length,
    modulus: Stress,
}

impl Work<'_> {
    /// Cuts a stretch without a step or corner into pieces.
    fn slice(&self, start: f64, end: f64, pieces: &mut Vec<(f64, Bend)>) -> Result<(), BeamError> {
        let count = self.slices(start, end);
        let width = (end - start) / count;
        let mut done = 0.0;
        while done < count {
            let bend = self.bend(start + width * done, width)?;
            pieces.push((width, bend));
            done += 1.0;
        }
        Ok(())
    }

    /// Into how many slices a stretch is to be cut: a whole number.
    fn slices(&self, start: f64, end: f64) -> f64 {
        // Just inside, to be on the right side of a step.
        let hair = (end - start) * HAIR_SHARE;
        let (start, end) = (Length::mm(start + hair), Length::mm(end - hair));
        let ratio = |outline: &Profile| {
            let (one, other) = (outline.radius_at(start), outline.radius_at(end));
            let (least, most) = (one.min(other).to_mm(), one.max(other).to_mm());
            if most <= SAME {
                0.0
            } else {
                (most / least.max(SAME)).ln()
            }
        };
        let most = ratio(self.outer).max(ratio(self.inner));
        (most / SLICE).ceil().clamp(1.0, MOST_SLICES)
    }

    /// How a slice bends: its mean by Simpson's rule, its growth from end to end.
    fn bend(&self, from: f64, width: f64) -> Result<Bend, BeamError> {
        // The ends just inside, where a step cannot be met.
        let at = |share: f64| self.flexible(from + width * share);
        let (first, middle, last) = (at(HAIR_SHARE)?, at(0.5)?, at(1.0 - HAIR_SHARE)?);
        let mean = (first + 4.0 * middle + last) / 6.0;
        let growth = (last - first) / (1.0 - 2.0 * HAIR_SHARE);
        Ok(Bend {
            start: mean - growth / 2.0,
            growth: growth / width,
        })
    }

    /// 1/(E I) at a place, in 1/(N mm²).
    fn flexible(&self, z: f64) -> Result<f64, BeamError> {
        let z = Length::mm(z);
        let radius = |outline: &Profile| outline.radius_at(z).to_mm();
        let stiffness = self.modulus.to_mpa() * ring_second(radius(self.outer), radius(self.inner));
        if positive(stiffness) {
            Ok(1.0 / stiffness)
        } else {
            let at = (z - self.from).abs();
            Err(BeamError::NoMetal { at })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Force;

    const STEEL: Stress = Stress::mpa(210_000.0);

    fn mm(value: f64) -> Length {
        Length::mm(value)
    }

    /// A cone loaded at its end bends as much as a bar of its root, times root over end: textbooks, closed form.
    #[test]
    fn a_cone_bends_as_its_closed_form_says() {
        for (root, end) in [(20.0, 16.0), (20.0, 8.0), (10.0, 20.0), (12.0, 11.9)] {
            let mut cone = Profile::default();
            cone.push_line(mm(0.0), mm(70.0), mm(root / 2.0), mm(end / 2.0));
            let beam = Beam::from_outlines(&cone, &Profile::default(), mm(0.0), mm(70.0), STEEL);
            let bent = beam
                .unwrap()
                .deflection(mm(70.0), mm(70.0), Force::newtons(1.0));
            let plain = 70.0_f64.powi(3) / (3.0 * 210_000.0 * ring_second(root / 2.0, 0.0));
            let off = bent.to_mm() / (plain * root / end) - 1.0;
            assert!(off.abs() < 5e-5, "{root} to {end}: off by {off:e}");
        }
    }

    #[test]
    fn where_nothing_resists_there_is_no_beam() {
        let bar = Profile::cylinder(mm(0.0), mm(50.0), mm(8.0));
        let through = Profile::cylinder(mm(30.0), mm(50.0), mm(8.0));
        let none = Profile::default();
        let made = |from, to, hole| Beam::from_outlines(&bar, hole, mm(from), mm(to), STEEL);
        let Err(BeamError::NoMetal { at }) = made(10.0, 50.0, &through) else {
            panic!("a hole as wide as the bar leaves nothing");
        };
        assert!((at.to_mm() - 20.0).abs() < 0.01);
        assert_eq!(made(20.0, 20.0, &none), Err(BeamError::Empty));
        assert!(matches!(
            made(20.0, 60.0, &none),
            Err(BeamError::NoMetal { .. })
        ));
    }

    /// A bored shaft with a taper and a fillet, deflection at its end by summing the unit-load integral itself over
    /// strips.
    #[test]
    fn outlines_bend_as_the_integral_says() {
        let mut outer = Profile::default();
        outer.push_fillet(mm(8.0), mm(2.0));
        outer.push_line(mm(2.0), mm(30.0), mm(8.0), mm(8.0));
        outer.push_line(mm(30.0), mm(60.0), mm(7.0), mm(5.5));
        let mut hole = Profile::cylinder(mm(20.0), mm(50.0), mm(2.0));
        hole.push_line(mm(50.0), mm(60.0), mm(2.0), mm(3.5));
        let unit = Force::newtons(1.0);
        for (from, to) in [(0.0_f64, 60.0_f64), (60.0, 0.0), (25.0, 55.0)] {
            let beam = Beam::from_outlines(&outer, &hole, mm(from), mm(to), STEEL).unwrap();
            let end = beam.length();
            let strips = 200_000_u32;
            let width = (to - from) / f64::from(strips);
            let summed: f64 = (0..strips)
                .map(|strip| {
                    let z = from + width * (f64::from(strip) + 0.5);
                    let radius = |outline: &Profile| outline.radius_at(mm(z)).to_mm();
                    let second = ring_second(radius(&outer), radius(&hole));
                    (to - z).powi(2) / (STEEL.to_mpa() * second) * width.abs()
                })
                .sum();
            let off = beam.deflection(end, end, unit).to_mm() / summed - 1.0;
            assert!(off.abs() < 5e-5, "{from} to {to}: off by {off:e}");
        }
    }
}

//! Stress raised at the foot of a shoulder and in a thread root.

use serde::Serialize;

use crate::quantity::Length;
use crate::tables::Confirmed;
use crate::working::Source;

/// How a stepped bar is loaded.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Load {
    /// Along the axis.
    Tension,
    /// By a moment across the axis.
    Bending,
    /// By a torque about the axis.
    Torsion,
}

impl Load {
    const fn form(self) -> &'static Coefficients {
        match self {
            Self::Tension => &TENSION,
            Self::Bending => &BENDING,
            Self::Torsion => &TORSION,
        }
    }

    /// The closed form for this load in symbols: q = D/d, held between 1.02 and 3, and k = r/d.
    pub const fn formula(self) -> &'static str {
        self.form().text
    }
}

/// The formula behind a factor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Formula {
    /// The closed form for filleted shafts; in tension raised by 6 %.
    ClosedForm,
    /// D/d below 1.02: the closed form at 1.02, run down to 1 with the root of the step's height.
    LowStep,
}

/// By how much the greatest stress exceeds the nominal stress of the small diameter.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Concentration {
    /// The factor, at least 1.
    pub factor: f64,
    /// The formula behind it.
    pub which: Formula,
    /// Whether the shape is within what was compared with finite elements. Outside it the factor is a guide only.
    pub in_range: bool,
}

/// The numbers of the closed form for one load.
///
/// Kt = `base` + `slope` q^−`power` + k^−`sharpness` √(over/under), q = D/d, k = r/d, where over and under are
/// polynomials in q² with the lowest term first.
struct Coefficients {
    base: f64,
    slope: f64,
    power: f64,
    sharpness: f64,
    over: [f64; 3],
    under: [f64; 3],
    raised: f64,
    /// The same in symbols, for the working.
    text: &'static str,
}

/// Bending and tension: "Updated stress concentration factors for filleted shafts in bending and tension", Journal of
/// Mechanical Design 118 (1996); torsion: "Multiaxial stress concentration in filleted shafts", same journal, 123 (2001).
/// All numbers from memory, and each set compared with finite elements of our own (`tests/strength.rs`).
#[rustfmt::skip]
const TENSION: Coefficients = Coefficients {
    base: 0.493, slope: 0.48, power: 2.43, sharpness: 0.48,
    over: [3.43, -3.41, 0.0232], under: [1.0, -8.85, -0.078],
    // Own comparison: without it the closed form lies 2 to 6 % under the finite elements.
    raised: 1.06,
    text: "1.06 · (0.493 + 0.48 · q^−2.43 + k^−0.48 · √((3.43 − 3.41 · q^2 + 0.0232 · q^4)/(1 − 8.85 · q^2 − 0.078 · q^4)))",
};
#[rustfmt::skip]
const BENDING: Coefficients = Coefficients {
    base: 0.632, slope: 0.377, power: 4.4, sharpness: 0.5,
    over: [-0.14, -0.363, 0.503], under: [1.0, -2.39, 3.368],
    raised: 1.0,
    text: "0.632 + 0.377 · q^−4.4 + k^−0.5 · √((−0.14 − 0.363 · q^2 + 0.503 · q^4)/(1 − 2.39 · q^2 + 3.368 · q^4))",
};
#[rustfmt::skip]
const TORSION: Coefficients = Coefficients {
    base: 0.78, slope: 0.2, power: 10.0, sharpness: 0.46,
    over: [0.002, -0.125, 0.123], under: [1.0, -2.75, 2.55],
    raised: 1.0,
    text: "0.78 + 0.2 · q^−10 + k^−0.46 · √((0.002 − 0.125 · q^2 + 0.123 · q^4)/(1 − 2.75 · q^2 + 2.55 · q^4))",
};

/// The least step D/d that the closed form is asked for: in tension the root turns negative below 1.0065.
const LEAST_STEP: f64 = 1.02;

/// The greatest D/d compared with finite elements; beyond it a higher shoulder raises the stress no further, and the
/// form for tension would fall.
const GREATEST_STEP: f64 = 3.0;

/// What conversion between inch and mm rounds, and is forgiven.
const ROUNDING: f64 = 1e-12;

/// The least and greatest r/d compared with finite elements.
const FILLETS: (f64, f64) = (0.02, 0.3);

/// Where the factor at a shoulder comes from, for its working.
pub const SHOULDER_SOURCE: Source = Source::Published {
    title: "Journal of Mechanical Design 118 (1996) and 123 (2001): filleted shafts",
    confirmed: Confirmed::Memory,
};

/// The factor at a shoulder with a fillet, on the nominal stress of the small diameter.
///
/// `large` and `small`: the diameters on both sides, in that order; a `large` that is not larger gives 1. `fillet`: the
/// radius at the foot; it may be larger than the step is high.
///
/// `None` for a sharp corner (a fillet of nothing): its factor has no bound. Take the nose radius of the tool for it, and
/// let the notch sensitivity say what it does. `None` also where `small` is nothing.
///
/// # Accuracy
/// For D/d from 1.02 to 3 and r/d from 0.02 to 0.3, against 180 finite-element results that are right to 0.2 %: tension
/// −1.3 to +4.2 %, bending −0.4 to +1.2 %, torsion −1.9 to +1.3 %. Outside it is a guide, marked by `in_range`.
/// # Source
/// The closed forms named at [`Formula::ClosedForm`]; from memory, compared as said.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::strength::{Load, shoulder};
/// let at = shoulder(Load::Bending, Length::mm(40.0), Length::mm(20.0), Length::mm(2.0)).unwrap();
/// assert!((at.factor - 1.84).abs() < 0.01 && at.in_range);
/// ```
pub fn shoulder(load: Load, large: Length, small: Length, fillet: Length) -> Option<Concentration> {
    if small <= Length::ZERO || fillet <= Length::ZERO {
        return None;
    }
    let step = large / small;
    let fillet = fillet / small;
    let (least, most) = FILLETS;
    let in_range =
        step <= GREATEST_STEP + ROUNDING && least - ROUNDING <= fillet && fillet <= most + ROUNDING;
    if step <= 1.0 {
        return Some(Concentration {
            factor: 1.0,
            which: Formula::LowStep,
            in_range: true,
        });
    }
    let full = closed_form(load, step.clamp(LEAST_STEP, GREATEST_STEP), fillet);
    let (factor, which) = if step < LEAST_STEP {
        // A shallow step raises the stress with the root of its height, as a shallow notch does.
        let share = ((step - 1.0) / (LEAST_STEP - 1.0)).sqrt();
        (1.0 + (full - 1.0) * share, Formula::LowStep)
    } else {
        (full, Formula::ClosedForm)
    };
    Some(Concentration {
        factor,
        which,
        in_range: in_range && step >= LEAST_STEP,
    })
}

fn closed_form(load: Load, step: f64, fillet: f64) -> f64 {
    let form = load.form();
    let square = step * step;
    let polynomial = |[a, b, c]: [f64; 3]| a + square * (b + square * c);
    let ratio = polynomial(form.over) / polynomial(form.under);
    let factor = form.base
        + form.slope * step.powf(-form.power)
        + fillet.powf(-form.sharpness) * ratio.max(0.0).sqrt();
    (form.raised * factor).max(1.0)
}

/// The least and greatest factor in the root of the first thread that carries load.
///
/// # Source
/// From memory of machine-design textbooks; the nominal stress is that of the section at the root.
pub const THREAD_ROOT: (f64, f64) = (2.2, 3.0);

#[cfg(test)]
mod tests {
    use super::*;

    /// The formula that is shown has the numbers that are computed with, in their order.
    #[test]
    fn the_symbols_have_the_numbers() {
        for form in [&TENSION, &BENDING, &TORSION] {
            let shown: Vec<f64> = form
                .text
                .replace("q^2", "q")
                .replace("q^4", "q")
                .replace(" − ", " + −")
                .replace('−', "-")
                .split(|character: char| {
                    !(character.is_ascii_digit() || matches!(character, '.' | '-'))
                })
                .filter_map(|number| number.parse().ok())
                .collect();
            let raised = (form.raised > 1.0).then_some(form.raised);
            let computed: Vec<f64> = raised
                .into_iter()
                .chain([form.base, form.slope, -form.power, -form.sharpness])
                .chain(form.over)
                .chain(form.under)
                .collect();
            assert_eq!(shown, computed, "{}", form.text);
        }
    }
}

//! Force, power and spindle speed of a pass with their workings, from the values that it was planned with.

use super::passes::{Pass, PassCut};
use super::power::cutting_power;
use super::turning::TURNING_SOURCE;
use crate::job::Field;
use crate::quantity::{Feed, Force, Length, Power, RotationalSpeed, Speed, Stress};
use crate::tables::{Confirmed, Spread};
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// What the tangential force of a pass was reckoned from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ForceBasis {
    /// Specific force of a chip one millimetre thick and one wide.
    pub specific: Spread<Stress>,
    /// How steeply it falls with the chip's thickness.
    pub exponent: f64,
    /// Mean thickness of the chip.
    pub thickness: Length,
    /// The factor for the rake.
    pub rake: f64,
    /// The factor for cutting slower than carbide does.
    pub slow: f64,
    /// What a chip too thin for the law may take on top, as a share: the high end of the range counts it.
    pub excess: f64,
}

impl ForceBasis {
    /// The high end of the tangential force, the excess of a thin chip counted.
    pub(super) fn high(&self, depth: Length, feed: Feed) -> Force {
        self.force(self.specific.high, depth, feed) * (1.0 + self.excess)
    }

    /// The tangential force by one value of the specific force: kc1.1 · h^(−mc) · a · f · K · s.
    pub(super) fn force(&self, specific: Stress, depth: Length, feed: Feed) -> Force {
        let kc = specific.to_mpa() * self.thickness.to_mm().powf(-self.exponent);
        let area = depth.to_mm() * feed.to_mm_per_rev();
        Force::newtons(kc * area * self.rake * self.slow)
    }
}

/// What the spindle has and may.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpindleLimits {
    /// What power reaches it.
    pub power: Power,
    /// Above this spindle, chuck or work must not turn.
    pub top_speed: RotationalSpeed,
}

const FORCE_SOURCE: Source = Source::Published {
    title: "O. Kienzle's law of the specific cutting force, on the chip's mean thickness with the nose counted",
    confirmed: Confirmed::OneSource,
};

impl Pass {
    /// Its tangential force, down onto the tool; the high end counts what a thin chip may take on top. `None` for
    /// polishing and for a wheel.
    pub fn force_figure(&self) -> Option<Figure<Force>> {
        let PassCut { force, basis, .. } = self.cut.as_ref()?;
        let basis = basis.as_ref()?;
        Some(Figure {
            value: force.typical,
            range: Some(Range {
                low: force.low,
                high: force.high,
            }),
            working: Working {
                symbol: "F",
                formula: "k · (h/1 mm)^(−m) · a · f · K · s",
                parts: &[],
                inputs: vec![
                    Input::new(
                        "k",
                        Meaning::SpecificForce,
                        Value::Stress(basis.specific.typical),
                    ),
                    Input::new("h", Meaning::ChipThickness, Value::Fine(basis.thickness)),
                    Input::new("m", Meaning::ForceExponent, Value::Ratio(basis.exponent)),
                    Input::new("a", Meaning::PassInfeed, Value::size(self.infeed)),
                    Input::new("f", Meaning::PassFeed, Value::Feed(self.feed)),
                    Input::new("K", Meaning::RakeFactor, Value::Ratio(basis.rake)),
                    Input::new("s", Meaning::SlowFactor, Value::Ratio(basis.slow)),
                ],
                source: FORCE_SOURCE,
            },
        })
    }

    /// The power at its edge, at most; `None` for polishing.
    pub fn power_figure(&self) -> Option<Figure<Power>> {
        let cut = self.cut.as_ref().filter(|cut| cut.basis.is_some())?;
        Some(Figure {
            value: cutting_power(cut.force.high, self.cutting_speed),
            range: None,
            working: Working {
                symbol: "P",
                formula: "F · v",
                parts: &[],
                inputs: vec![
                    Input::new("F", Meaning::HighForce, Value::Force(cut.force.high)),
                    Input::new("v", Meaning::PassSpeed, Value::Speed(self.cutting_speed)),
                ],
                source: TURNING_SOURCE,
            },
        })
    }

    /// Its spindle speed: the highest that cutting speed, power and machine allow, or the next lower one that the
    /// machine has. Where something else holds it back, it is slower.
    pub fn speed_figure(&self, highest: Speed, spindle: SpindleLimits) -> Figure<RotationalSpeed> {
        let mut inputs = vec![
            Input::new(
                "v",
                Meaning::Field(Field::CuttingSpeed),
                Value::Speed(highest),
            ),
            Input::new(
                "D",
                Meaning::EngagedDiameter,
                Value::size(self.diameter_before()),
            ),
            Input::new(
                "nₘₐₓ",
                Meaning::Field(Field::TopSpeed),
                Value::Rotation(spindle.top_speed),
            ),
        ];
        let formula = match &self.cut {
            None => "min(1000 · v/(π · D), nₘₐₓ)",
            Some(cut) => {
                inputs.push(Input::new(
                    "P",
                    Meaning::SpindlePower,
                    Value::Power(spindle.power),
                ));
                inputs.push(Input::new(
                    "F",
                    Meaning::HighForce,
                    Value::Force(cut.force.high),
                ));
                "min(1000 · v/(π · D), 60000 · P/(π · D · F), nₘₐₓ)"
            }
        };
        Figure {
            value: self.spindle_speed,
            range: None,
            working: Working {
                symbol: "n",
                formula,
                parts: &[],
                inputs,
                source: TURNING_SOURCE,
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::job::Job;
    use crate::plan::plan;

    /// The workings give what the plan says, each from its own inputs.
    #[test]
    fn force_and_power_follow_from_their_inputs() {
        let passes = plan(&Job::default()).stock_off.unwrap().passes;
        let mut cuts = 0;
        for pass in &passes {
            let Some(cut) = &pass.cut else {
                assert!(pass.force_figure().is_none());
                continue;
            };
            cuts += 1;
            let basis = cut.basis.unwrap();
            let force = |specific| basis.force(specific, pass.infeed, pass.feed);
            for (got, wanted) in [
                (force(basis.specific.low), cut.force.low),
                (force(basis.specific.typical), cut.force.typical),
                (basis.high(pass.infeed, pass.feed), cut.force.high),
            ] {
                let got = got.to_newtons();
                let wanted = wanted.to_newtons();
                assert!((got / wanted - 1.0).abs() < 1e-9, "{got} against {wanted}");
            }
            let power = pass.power_figure().unwrap().value.to_watts();
            let by_hand = cut.force.high.to_newtons() * pass.cutting_speed.to_m_per_min() / 60.0;
            assert!((power / by_hand - 1.0).abs() < 1e-9);
            assert!((power / cut.power.to_watts() - 1.0).abs() < 1e-9);
        }
        assert!(2 < cuts);
    }
}

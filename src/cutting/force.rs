//! The force of a cut by the power law of the chip's thickness, on the equivalent chip that counts the nose.
//!
//! Tangential is down onto the tool, feed along the work towards the chuck, radial away from the work.
//! The radial force of an edge past square may be negative: it then draws the tool in.

use serde::Serialize;

use super::edge::{EdgeState, EquivalentChip, ToolEdge};
use super::trust::{FitTrust, THIN_CHIP_EXCESS};
use crate::quantity::{Angle, Area, Feed, Force, Length, Speed, Stress};
use crate::tables::Spread;

/// The two constants of a material: what a chip costs, and how that falls with its thickness.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SpecificForce {
    /// The force on a chip one millimetre thick and one wide, over its section (kc1.1).
    pub at_one: Stress,
    /// How steeply it falls with thickness (mc); usually 0.2 to 0.3.
    pub exponent: f64,
}

impl SpecificForce {
    /// The specific force of a chip, whose thickness must be above zero: kc = kc1.1 · h^(−mc).
    ///
    /// # Accuracy
    /// Within 15 % for a known steel, 25 % between 40 and 55 HRC, where [`FitTrust`] says that the law holds.
    /// # Source
    /// O. Kienzle's law, as notes on specific cutting force print it.
    /// # Example
    /// ```
    /// use skimwright::cutting::SpecificForce;
    /// use skimwright::quantity::{Length, Stress};
    /// let steel = SpecificForce { at_one: Stress::mpa(1500.0), exponent: 0.25 };
    /// // The fourth root of 1/0.0625 is two.
    /// let thin = steel.at(Length::mm(0.0625));
    /// assert!((thin.to_mpa() - 3000.0).abs() < 1e-9);
    /// ```
    pub fn at(self, thickness: Length) -> Stress {
        debug_assert!(thickness > Length::ZERO, "a chip has a thickness");
        self.at_one * thickness.to_mm().powf(-self.exponent)
    }
}

/// The spread of the force either way for a known steel. From memory.
pub const STEEL_SPREAD: f64 = 0.15;

/// The spread between 40 and 55 HRC, where two published class tables differ by a fifth.
pub const HARD_SPREAD: f64 = 0.25;

/// What multiplies the force beside material, chip and the tool's rake.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ForceFactors {
    /// For wear; [`Wear::factor`].
    pub wear: f64,
    /// For slow cutting; [`speed_factor`].
    pub speed: f64,
}

impl ForceFactors {
    /// Nothing multiplied: a new edge at carbide's speed.
    pub const NONE: Self = Self {
        wear: 1.0,
        speed: 1.0,
    };

    /// Both together.
    pub const fn product(self) -> f64 {
        self.wear * self.speed
    }
}

/// The factor for a rake: 1 % less for each degree, 1 at none. Held beyond −20° and 30°.
///
/// # Accuracy
/// 1 to 1.5 % for each degree are usual; the smaller keeps the force on the safe side for a positive rake.
/// # Source
/// That it falls: notes on specific cutting force. How much, and the range: from memory.
/// # Example
/// ```
/// use skimwright::cutting::rake_factor;
/// use skimwright::quantity::Angle;
/// assert!((rake_factor(Angle::degrees(10.0)) - 0.9).abs() < 1e-12);
/// ```
pub const fn rake_factor(rake: Angle) -> f64 {
    1.0 - rake.to_degrees().clamp(-20.0, 30.0) / 100.0
}

/// The factor for cutting slower than carbide does: 1.175 up to 40 m/min, falling evenly to 1 at 80.
///
/// # Accuracy
/// 1.15 to 1.2 for high-speed steel at 20 to 40 m/min.
/// # Source
/// From memory.
pub fn speed_factor(speed: Speed) -> f64 {
    let slow = 0.175;
    let share = ((80.0 - speed.to_m_per_min()) / 40.0).clamp(0.0, 1.0);
    1.0 + slow * share
}

/// How far the edge is worn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Wear {
    /// A new edge.
    New,
    /// A land of 0.3 mm below the edge.
    Land,
    /// At the end of its life.
    Spent,
}

impl Wear {
    /// The factor on the tangential force; that across the work grows faster, as [`EdgeState`] says.
    ///
    /// # Accuracy
    /// 1.2 to 1.3 with a land of 0.3 mm; up to 1.5 at the end of life.
    /// # Source
    /// From memory.
    pub const fn factor(self) -> f64 {
        match self {
            Self::New => 1.0,
            Self::Land => 1.25,
            Self::Spent => 1.5,
        }
    }
}

/// One cut, as far as its force goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ForceQuestion {
    /// The material's constants.
    pub specific: SpecificForce,
    /// The tool.
    pub edge: ToolEdge,
    /// Depth on radius.
    pub depth: Length,
    /// Feed.
    pub feed: Feed,
    /// What multiplies the force.
    pub factors: ForceFactors,
    /// The force in the plane of the tool over the tangential force; see [`EdgeState::normal_share`].
    pub normal_share: f64,
}

/// The three forces on the tool, and how far to trust them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CutForces {
    /// Down onto the tool; it takes the power.
    pub tangential: Force,
    /// Along the work, against the feed.
    pub feed: Force,
    /// Across the work: it bends slender work. Negative where the tool is drawn in.
    pub radial: Force,
    /// The chip it was found from.
    pub chip: EquivalentChip,
    /// How far the law holds for that chip.
    pub trust: FitTrust,
}

/// The forces of a cut: Fc = kc · a · f times the factors for rake, wear and speed on the equivalent chip, the other two square to its chord.
///
/// `None` where nothing is cut, as [`EquivalentChip::of`] says.
///
/// # Accuracy
/// [`CutForces::tangential_range`] for the tangential force. The other two hang on the share of the normal force, which
/// one kind of edge leaves open by a sixth to a third either way.
/// # Source
/// O. Kienzle's law; the direction by the rule of the chord, from memory.
/// # Example
/// ```
/// use skimwright::cutting::{ForceFactors, ForceQuestion, SpecificForce, ToolEdge, cut_forces};
/// use skimwright::quantity::{Angle, Feed, Length, Stress};
/// let square = ToolEdge {
///     nose_radius: Length::ZERO,
///     cutting_edge_angle: Angle::degrees(90.0),
///     rake: Angle::ZERO,
///     edge_radius: Length::um(10.0),
/// };
/// let forces = cut_forces(&ForceQuestion {
///     specific: SpecificForce { at_one: Stress::mpa(1500.0), exponent: 0.25 },
///     edge: square,
///     depth: Length::mm(2.0),
///     feed: Feed::mm_per_rev(0.0625),
///     factors: ForceFactors::NONE,
///     normal_share: 0.5,
/// })
/// .unwrap();
/// // 3000 N/mm² on 0.125 mm²; a square edge pushes along the work alone.
/// assert!((forces.tangential.to_newtons() - 375.0).abs() < 1e-9);
/// assert!((forces.feed.to_newtons() - 187.5).abs() < 1e-9);
/// assert!(forces.radial.to_newtons().abs() < 1e-9);
/// ```
pub fn cut_forces(question: &ForceQuestion) -> Option<CutForces> {
    let ForceQuestion {
        specific,
        edge,
        depth,
        feed,
        factors,
        normal_share,
    } = *question;
    let chip = EquivalentChip::of(&edge, depth, feed)?;
    let plain = tangential_force(specific, chip.thickness, depth * feed);
    let tangential = plain * (rake_factor(edge.rake) * factors.product());
    let normal = tangential * normal_share;
    let chord = chip.chord_angle.to_radians();
    Some(CutForces {
        tangential,
        feed: normal * chord.sin(),
        radial: normal * chord.cos(),
        chip,
        trust: FitTrust::at(chip.thickness, edge.edge_radius),
    })
}

/// The tangential force on a chip of a thickness and a section, both above zero: Fc = kc · A.
pub(super) fn tangential_force(specific: SpecificForce, thickness: Length, section: Area) -> Force {
    specific.at(thickness) * section
}

impl CutForces {
    /// Low, likely and high tangential force with the spread of the material's constants, as a share either way.
    ///
    /// Where the law underestimates, the high value counts that too. `None` where the law is not to be trusted.
    ///
    /// # Source
    /// [`STEEL_SPREAD`], [`HARD_SPREAD`] and [`THIN_CHIP_EXCESS`], from memory.
    pub fn tangential_range(&self, spread: f64) -> Option<Spread<Force>> {
        let excess = match self.trust {
            FitTrust::Trusted => 0.0,
            FitTrust::Underestimates => THIN_CHIP_EXCESS,
            FitTrust::DoNotTrust => return None,
        };
        Some(Spread {
            low: self.tangential * (1.0 - spread),
            typical: self.tangential,
            high: self.tangential * ((1.0 + spread) * (1.0 + excess)),
        })
    }

    /// The same cut with another share of the normal force, such as the low or the high of an edge's kind.
    #[must_use]
    pub fn with_edge(&self, edge: EdgeState) -> Spread<Self> {
        let chord = self.chip.chord_angle.to_radians();
        edge.normal_share().map(|share| Self {
            feed: self.tangential * (share * chord.sin()),
            radial: self.tangential * (share * chord.cos()),
            ..*self
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 10° of rake, a land and slow cutting: 0.9 · 1.25 · 1.175 of the plain force.
    #[test]
    fn rake_wear_and_speed_multiply() {
        let cut = |rake, wear: Wear, speed| {
            let question = ForceQuestion {
                specific: SpecificForce {
                    at_one: Stress::mpa(1500.0),
                    exponent: 0.25,
                },
                edge: ToolEdge {
                    nose_radius: Length::mm(0.4),
                    cutting_edge_angle: Angle::degrees(95.0),
                    rake: Angle::degrees(rake),
                    edge_radius: Length::um(10.0),
                },
                depth: Length::mm(1.0),
                feed: Feed::mm_per_rev(0.2),
                factors: ForceFactors {
                    wear: wear.factor(),
                    speed: speed_factor(Speed::m_per_min(speed)),
                },
                normal_share: 0.5,
            };
            cut_forces(&question).unwrap().tangential
        };
        let more = cut(10.0, Wear::Land, 30.0) / cut(0.0, Wear::New, 120.0);
        assert!((more - 0.9 * 1.25 * 1.175).abs() < 1e-12);
    }

    #[test]
    fn factors_hold_their_ends() {
        assert!((rake_factor(Angle::degrees(-6.0)) - 1.06).abs() < 1e-12);
        assert!((rake_factor(Angle::degrees(60.0)) - 0.7).abs() < 1e-12);
        assert!((speed_factor(Speed::m_per_min(20.0)) - 1.175).abs() < 1e-12);
        assert!((speed_factor(Speed::m_per_min(60.0)) - 1.0875).abs() < 1e-12);
        assert!((speed_factor(Speed::m_per_min(200.0)) - 1.0).abs() < 1e-12);
        assert!(Wear::New.factor() < Wear::Land.factor());
        assert!(Wear::Land.factor() < Wear::Spent.factor());
        assert!((ForceFactors::NONE.product() - 1.0).abs() < 1e-12);
    }
}

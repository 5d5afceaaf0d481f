//! How stiff the lathe itself is where it holds work and tool.

use serde::Serialize;

use super::estimate::Estimate;
use crate::job::Rigidity;
use crate::quantity::{Force, Length, Stiffness, Torque};

/// How much torque it takes to tilt the chuck, with spindle and work in it, by a milliradian: 1 mm in a metre.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize)]
pub struct TiltStiffness(Torque);

impl TiltStiffness {
    /// From the torque that tilts by one milliradian.
    pub const fn per_milliradian(torque: Torque) -> Self {
        Self(torque)
    }

    /// The torque that tilts by one milliradian.
    pub const fn to_torque_per_milliradian(self) -> Torque {
        self.0
    }

    /// Radians that a newton millimetre tilts by.
    fn give(self) -> f64 {
        1e-6 / self.0.to_newton_metres()
    }
}

/// The springs between the lathe's bed and the work, and between bed and tool. `None` is rigid.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Springs {
    /// Headstock with chuck or collet, or the head centre, across the axis.
    pub head: Option<Stiffness>,
    /// Tilting of the chuck or collet; nothing between centres.
    pub head_tilt: Option<TiltStiffness>,
    /// Tailstock with its centre, across the axis.
    pub tail: Option<Stiffness>,
    /// Tool post with the slides under it, away from the work.
    pub tool_post: Option<Stiffness>,
}

/// Which spring cannot be: none is so soft that it gives without end, or pulls.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum SpringError {
    /// The head.
    Head,
    /// The tilting of the head.
    HeadTilt,
    /// The tailstock.
    Tail,
    /// The tool post.
    ToolPost,
}

/// What the springs give, in mm/N and rad/(N mm); zero where rigid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Give {
    pub(super) head: f64,
    pub(super) tilt: f64,
    pub(super) tail: f64,
    pub(super) tool: f64,
}

impl Springs {
    /// Nothing gives but the work.
    pub const RIGID: Self = Self {
        head: None,
        head_tilt: None,
        tail: None,
        tool_post: None,
    };

    pub(super) fn give(self) -> Result<Give, SpringError> {
        let across = |spring: Option<Stiffness>, which| {
            checked(spring.map(|it| 1e-3 / it.to_newtons_per_um()), which)
        };
        Ok(Give {
            head: across(self.head, SpringError::Head)?,
            tilt: checked(
                self.head_tilt.map(TiltStiffness::give),
                SpringError::HeadTilt,
            )?,
            tail: across(self.tail, SpringError::Tail)?,
            tool: across(self.tool_post, SpringError::ToolPost)?,
        })
    }
}

fn checked(give: Option<f64>, which: SpringError) -> Result<f64, SpringError> {
    match give {
        None => Ok(0.0),
        Some(give) if give >= 0.0 && give.is_finite() => Ok(give),
        Some(_) => Err(which),
    }
}

/// How far a spring gives under a force.
pub(super) fn pushed(give: f64, force: Force) -> Length {
    Length::mm(give * force.to_newtons())
}

impl Rigidity {
    /// The springs to expect of such a lathe: the softest, the likely, the stiffest.
    ///
    /// No tilting of the chuck is counted, since no figure for it is known; what was measured on a bar in the chuck and
    /// on a longer one gives it.
    ///
    /// # Accuracy
    /// A guess until calibrated by cuts on the lathe itself. A compound slide run far out halves the tool post.
    /// # Source
    /// From memory, small and medium manual lathes: headstock with chuck 20–60 N/µm, tailstock with live centre 8–30,
    /// tool post with slides 10–40. Each range is split into three by equal ratios; the likely one is the middle by
    /// ratio, rounded. A collet has no remembered figure of its own and starts from that of the chuck.
    /// # Example
    /// ```
    /// use skimwright::holding::Rigidity;
    /// let tail = Rigidity::Medium.springs().likely.tail.unwrap();
    /// assert_eq!(tail.to_newtons_per_um(), 15.5);
    /// ```
    pub const fn springs(self) -> Estimate<Springs> {
        match self {
            Self::Light => Estimate::new(
                across(20.0, 8.0, 10.0),
                across(24.0, 10.0, 12.6),
                across(28.8, 12.4, 15.9),
            ),
            Self::Medium => Estimate::new(
                across(28.8, 12.4, 15.9),
                across(34.6, 15.5, 20.0),
                across(41.6, 19.3, 25.2),
            ),
            Self::Heavy => Estimate::new(
                across(41.6, 19.3, 25.2),
                across(50.0, 24.1, 31.7),
                across(60.0, 30.0, 40.0),
            ),
        }
    }
}

/// Springs across the axis from numbers of newtons per micrometre.
const fn across(head: f64, tail: f64, tool_post: f64) -> Springs {
    Springs {
        head: Some(Stiffness::newtons_per_um(head)),
        head_tilt: None,
        tail: Some(Stiffness::newtons_per_um(tail)),
        tool_post: Some(Stiffness::newtons_per_um(tool_post)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_spring_that_gives_without_end_is_refused() {
        for (stiffness, fine) in [(0.0, false), (-3.0, false), (1e-3, true)] {
            let springs = Springs {
                tail: Some(Stiffness::newtons_per_um(stiffness)),
                ..Springs::RIGID
            };
            assert_eq!(springs.give().is_ok(), fine, "{stiffness}");
            if !fine {
                assert_eq!(springs.give(), Err(SpringError::Tail));
            }
        }
    }

    /// By hand: 10 newton metres a milliradian are 10⁷ newton millimetres a radian; 25 N/µm are 25 000 N/mm.
    #[test]
    fn units_of_the_springs() {
        let give = Springs {
            head: Some(Stiffness::newtons_per_um(25.0)),
            head_tilt: Some(TiltStiffness::per_milliradian(Torque::newton_metres(10.0))),
            ..Springs::RIGID
        }
        .give()
        .unwrap();
        assert!((give.head / 4e-5 - 1.0).abs() < 1e-15);
        assert!((give.tilt / 1e-7 - 1.0).abs() < 1e-15);
        assert!(give.tail == 0.0 && give.tool == 0.0);
    }
}

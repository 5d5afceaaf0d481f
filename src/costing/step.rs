//! The steps of a rework beside the feeding itself, in working order, and how long each usually takes.

use serde::{Deserialize, Serialize};

use super::severing::Severing;
use super::three_point::ThreePoint;
use crate::job::CutOffMethod;
use crate::quantity::Time;

/// One step beside the feeding. The numbers are stored in links and never change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Step {
    /// Unpacking, measuring what came, noting its state.
    ReceiveAndCheck = 0,
    /// Chucking, or setting between centres.
    Hold = 1,
    /// Bringing it to run true with an indicator.
    DialIn = 2,
    /// Setting up for the cut and cutting through; what the lathe feeds is not in it.
    CutOff = 3,
    /// Setting up to face and touching on; what the lathe feeds is not in it.
    Face = 4,
    /// Setting up to drill the centre; the drilling itself is not in it.
    Centre = 5,
    /// Dialling in a pass and engaging.
    SetDepth = 6,
    /// Returning after a pass.
    Return = 7,
    /// Measuring after a pass.
    Measure = 8,
    /// Changing the tool and touching on.
    ToolChange = 9,
    /// Grinding an edge anew.
    Regrind = 10,
    /// Polishing to size.
    Polish = 11,
    /// Chamfering and deburring.
    Chamfer = 12,
    /// Cleaning and oiling.
    Clean = 13,
    /// Measuring and noting what leaves the shop.
    FinalCheck = 14,
    /// Packing.
    Pack = 15,
}

/// What a step is counted by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Per {
    /// The rework: once, or not at all.
    Rework,
    /// Each pass.
    Pass,
    /// Each change of tool.
    ToolChange,
    /// Each edge that is ground anew; an insert is turned instead, which is a change of tool.
    Regrind,
}

impl Step {
    /// Every step in the order of its number, which is the working order: a new one goes to the end.
    pub const ALL: [Self; 16] = [
        Self::ReceiveAndCheck,
        Self::Hold,
        Self::DialIn,
        Self::CutOff,
        Self::Face,
        Self::Centre,
        Self::SetDepth,
        Self::Return,
        Self::Measure,
        Self::ToolChange,
        Self::Regrind,
        Self::Polish,
        Self::Chamfer,
        Self::Clean,
        Self::FinalCheck,
        Self::Pack,
    ];

    /// The text that stands for it in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::ReceiveAndCheck => "receive-and-check",
            Self::Hold => "hold",
            Self::DialIn => "dial-in",
            Self::CutOff => "cut-off",
            Self::Face => "face",
            Self::Centre => "centre",
            Self::SetDepth => "set-depth",
            Self::Return => "return",
            Self::Measure => "measure",
            Self::ToolChange => "tool-change",
            Self::Regrind => "regrind",
            Self::Polish => "polish",
            Self::Chamfer => "chamfer",
            Self::Clean => "clean",
            Self::FinalCheck => "final-check",
            Self::Pack => "pack",
        }
    }

    /// The step with this code, letter for letter.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|step| step.code() == code)
    }

    /// Its number, as a link stores it.
    pub const fn index(self) -> u8 {
        self as u8
    }

    /// The step with this number.
    pub fn from_index(index: u8) -> Option<Self> {
        Self::ALL.get(usize::from(index)).copied()
    }

    /// What it is counted by.
    pub const fn per(self) -> Per {
        match self {
            Self::SetDepth | Self::Return | Self::Measure => Per::Pass,
            Self::ToolChange => Per::ToolChange,
            Self::Regrind => Per::Regrind,
            Self::ReceiveAndCheck
            | Self::Hold
            | Self::DialIn
            | Self::CutOff
            | Self::Face
            | Self::Centre
            | Self::Polish
            | Self::Chamfer
            | Self::Clean
            | Self::FinalCheck
            | Self::Pack => Per::Rework,
        }
    }
}

/// How the part is held, as far as it counts for the time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum HoldingWay {
    /// A self-centring chuck as it is: the runout is only looked at.
    Chuck,
    /// A self-centring chuck with packing under a jaw, by trial.
    ChuckWithPacking,
    /// An independent chuck: four readings in each of two planes, and again after each correction.
    FourJaw,
    /// A chuck and a live centre.
    ChuckAndCentre,
    /// A collet.
    Collet,
    /// Between centres with a driver.
    BetweenCentres,
}

impl HoldingWay {
    /// Every way: a new one goes to the end.
    pub const ALL: [Self; 6] = [
        Self::Chuck,
        Self::ChuckWithPacking,
        Self::FourJaw,
        Self::ChuckAndCentre,
        Self::Collet,
        Self::BetweenCentres,
    ];
}

/// What the usual times depend on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StepContext {
    /// How the part is held.
    pub holding: HoldingWay,
    /// How it is cut off; `None` where it is not.
    pub severing: Option<Severing>,
}

/// How long a step usually takes one practised person with all at hand, each time it is done.
///
/// # Accuracy
/// An estimate: the ends are a factor of two or three apart. Going to look for something is not in it.
/// # Source
/// All from memory: setting 0.15 to 0.3 min, returning 0.1 to 0.2, a micrometer reading 0.3 to 0.5, a change of
/// tool 0.5 to 1, chucking and indicating 3 to 15, a centre 1 to 2 min are common practice without a source; the
/// other steps are rough guesses of our own. Cutting through: [`severing_rate`](super::severing_rate).
/// # Example
/// ```
/// use skimwright::costing::{HoldingWay, Step, StepContext, usual};
/// let context = StepContext { holding: HoldingWay::FourJaw, severing: None };
/// assert_eq!(usual(Step::DialIn, &context).high().to_minutes(), 15.0);
/// ```
pub fn usual(step: Step, context: &StepContext) -> ThreePoint {
    match step {
        Step::ReceiveAndCheck => minutes(3.0, 6.0, 12.0),
        Step::Hold => hold(context.holding),
        Step::DialIn => dial_in(context.holding),
        Step::CutOff => context.severing.map_or(ThreePoint::ZERO, |cut| {
            set_up(cut.method()).with(cut.by_area())
        }),
        Step::Face => minutes(0.3, 0.7, 1.5),
        Step::Centre => minutes(0.8, 1.2, 2.0),
        Step::SetDepth => seconds(9.0, 13.0, 18.0),
        Step::Return => seconds(6.0, 9.0, 12.0),
        Step::Measure => seconds(18.0, 24.0, 30.0),
        Step::ToolChange => minutes(0.5, 0.7, 1.0),
        Step::Regrind | Step::Pack => minutes(2.0, 4.0, 8.0),
        Step::Polish | Step::FinalCheck => minutes(1.0, 2.0, 4.0),
        Step::Chamfer | Step::Clean => minutes(0.5, 1.0, 2.0),
    }
}

/// Chucking, from memory.
const fn hold(way: HoldingWay) -> ThreePoint {
    match way {
        HoldingWay::Chuck => minutes(0.5, 1.0, 2.0),
        HoldingWay::ChuckWithPacking | HoldingWay::FourJaw => minutes(1.0, 2.0, 4.0),
        HoldingWay::ChuckAndCentre => minutes(0.7, 1.3, 3.0),
        HoldingWay::Collet => minutes(0.3, 0.5, 1.0),
        HoldingWay::BetweenCentres => minutes(1.0, 2.0, 5.0),
    }
}

/// Indicating, from memory; 3 to 15 min where the runout is corrected.
const fn dial_in(way: HoldingWay) -> ThreePoint {
    match way {
        HoldingWay::Chuck | HoldingWay::ChuckAndCentre => minutes(0.5, 1.0, 3.0),
        HoldingWay::ChuckWithPacking => minutes(3.0, 6.0, 15.0),
        HoldingWay::FourJaw => minutes(3.0, 7.0, 15.0),
        HoldingWay::Collet => minutes(0.3, 0.5, 1.5),
        HoldingWay::BetweenCentres => minutes(0.5, 1.0, 2.0),
    }
}

/// Marking, clamping and shielding the machine before the cut, from memory.
const fn set_up(method: CutOffMethod) -> ThreePoint {
    match method {
        CutOffMethod::HandDisc => minutes(1.0, 2.0, 5.0),
        CutOffMethod::ChopWheel | CutOffMethod::Saw | CutOffMethod::PartingTool => {
            minutes(1.0, 2.0, 4.0)
        }
    }
}

const fn minutes(low: f64, likely: f64, high: f64) -> ThreePoint {
    let (low, likely, high) = (
        Time::minutes(low),
        Time::minutes(likely),
        Time::minutes(high),
    );
    ThreePoint::known(low, likely, high)
}

const fn seconds(low: f64, likely: f64, high: f64) -> ThreePoint {
    let (low, likely, high) = (
        Time::seconds(low),
        Time::seconds(likely),
        Time::seconds(high),
    );
    ThreePoint::known(low, likely, high)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Area;
    use crate::tables::WorkMaterial;

    #[test]
    fn codes_and_numbers_lead_back() {
        for (place, step) in Step::ALL.into_iter().enumerate() {
            assert_eq!(usize::from(step.index()), place);
            assert_eq!(Step::from_index(step.index()), Some(step));
            assert_eq!(Step::from_code(step.code()), Some(step));
            let written = serde_json::to_string(&step).unwrap();
            assert_eq!(written, format!("\"{}\"", step.code()));
        }
        assert_eq!(Step::from_index(16), None);
        assert_eq!(Step::from_code("Hold"), None);
    }

    #[test]
    fn every_usual_time_is_in_order() {
        let cut = |method| Severing::new(method, Area::mm2(314.0), WorkMaterial::LowCarbonSteel);
        for holding in HoldingWay::ALL {
            for method in CutOffMethod::ALL {
                let severing = Some(cut(method).unwrap());
                let context = StepContext { holding, severing };
                for step in Step::ALL {
                    let time = usual(step, &context);
                    assert_eq!(
                        ThreePoint::new(time.low(), time.likely(), time.high()),
                        Ok(time)
                    );
                    assert!(time.low() > Time::ZERO, "{step:?}");
                }
            }
        }
    }

    #[test]
    fn cutting_through_grows_with_the_section_and_stops_at_setting_up_under_feed() {
        let time = |severing| {
            let context = StepContext {
                holding: HoldingWay::Chuck,
                severing,
            };
            usual(Step::CutOff, &context)
        };
        let cut = |area| {
            Severing::new(
                CutOffMethod::HandDisc,
                Area::mm2(area),
                WorkMaterial::HardenedSteel,
            )
            .ok()
        };
        // 2 min of setting up, then 200 mm² a minute.
        assert_eq!(time(cut(200.0)).likely(), Time::minutes(3.0));
        assert_eq!(time(cut(400.0)).likely(), Time::minutes(4.0));
        // 1 min and 400 mm² a minute; 5 min and 80 mm² a minute.
        assert_eq!(time(cut(400.0)).low(), Time::minutes(2.0));
        assert_eq!(time(cut(400.0)).high(), Time::minutes(10.0));
        let fed = Severing::under_feed(Time::minutes(9.0)).ok();
        assert_eq!(time(fed).likely(), Time::minutes(2.0));
        assert_eq!(time(None), ThreePoint::ZERO);
    }
}

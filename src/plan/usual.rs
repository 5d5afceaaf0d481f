//! What an optional field stands for while it is empty.

use super::Checked;
use super::timing::holding_way;
use crate::costing::{Step, StepContext, usual as usual_time};
use crate::cutting::Metal;
use crate::cutting::{usual_finish_feed, usual_infeed, usual_kerf, usual_speed};
use crate::job::{
    EdgeField, Field, InstrumentField, Job, MachineField, SectionField, TimeBound, Turned,
};
use crate::measuring::{graduation, permissible_error, repeat};
use crate::part::{USUAL_DIAMETER_ERROR, USUAL_LENGTH_ERROR, usual_length};
use crate::receiver::{Asked, asked};
use crate::tables::{ToolKind, USUAL_FINE_INFEED, tool_usual, usual_lathe};
use crate::working::Value;

/// The value that an empty optional field stands for in this job; `None` where empty means none at all.
///
/// # Source
/// Each value's own: the tables of tapers and cutting data, and common practice for depth, feed and kerf.
///
/// # Example
/// ```
/// use skimwright::{job::{Field, Job}, plan::usual_value, quantity::Length, working::Value};
/// assert_eq!(usual_value(&Job::default(), Field::Kerf), Some(Value::length(Length::mm(1.3))));
/// ```
pub fn usual_value(job: &Job, field: Field) -> Option<Value> {
    let (material, tool) = (job.part.material, job.shop.tool);
    let lathe = job.shop.machine.rigidity;
    Some(match field {
        Field::ReceiverDepth => Value::length(asked_here(job)?.depth?),
        Field::LeastGrip => Value::length(asked_here(job)?.least_grip?),
        Field::Kerf => Value::length(usual_kerf(job.shop.cut_off_method)),
        Field::RoughInfeed => Value::size(usual_infeed(material, tool, lathe)),
        Field::RoughFeed => Value::Feed(tool_usual(tool).feed_most),
        Field::FinishFeed => Value::Feed(usual_finish_feed(tool)),
        Field::CuttingSpeed => {
            let metal = Metal::read(job, &Checked::new(job), tool);
            Value::Speed(usual_speed(metal.outer.suits.window?, lathe))
        }
        Field::Edge(name) => edge_value(tool, name)?,
        Field::Machine(name) => machine_value(job, name)?,
        Field::Step(step, bound) => step_value(job, step, bound)?,
        Field::Section(index, name) => section_value(job, index, name)?,
        Field::Instrument(index, name) => instrument_value(job, index, name)?,
        _ => return None,
    })
}

/// What an instrument is usually good for at the wanted diameter.
fn instrument_value(job: &Job, index: u8, name: InstrumentField) -> Option<Value> {
    let instrument = job.shop.instruments.get(usize::from(index))?;
    let size = Checked::new(job).length(Field::WantedDiameter)?;
    Some(Value::size(match name {
        InstrumentField::Graduation => graduation(instrument),
        InstrumentField::PermissibleError => permissible_error(instrument, size),
        InstrumentField::Repeat => repeat(instrument),
        InstrumentField::Name | InstrumentField::Kind | InstrumentField::Reference => return None,
    }))
}

/// The usual time of a step; of cutting off it hangs on the section, which is not looked at here.
fn step_value(job: &Job, step: Step, bound: TimeBound) -> Option<Value> {
    let context = StepContext {
        holding: holding_way(job),
        severing: None,
    };
    let usual = usual_time(step, &context);
    let time = match bound {
        TimeBound::Low => usual.low(),
        TimeBound::Likely => usual.likely(),
        TimeBound::High => usual.high(),
    };
    (step != Step::CutOff).then_some(Value::Time(time))
}

fn edge_value(tool: ToolKind, name: EdgeField) -> Option<Value> {
    let usual = tool_usual(tool);
    Some(match name {
        EdgeField::NoseRadius => Value::size(usual.nose_radius),
        EdgeField::CuttingEdgeAngle => Value::Angle(usual.cutting_edge_angle),
        EdgeField::Rake => Value::Angle(usual.rake),
        EdgeField::LeastFeed => Value::Feed(usual.feed_least),
        EdgeField::MostFeed => Value::Feed(usual.feed_most),
        EdgeField::LeastDepth => Value::size(usual.depth_least),
        EdgeField::MostDepth => Value::size(usual.depth_most),
        EdgeField::Edges => Value::Count(u32::from(usual.edges)),
        EdgeField::Name | EdgeField::Price | EdgeField::RegrindTime => return None,
    })
}

fn machine_value(job: &Job, name: MachineField) -> Option<Value> {
    let class = job.shop.machine.rigidity;
    let usual = usual_lathe(class);
    let springs = class.springs().likely;
    Some(match name {
        MachineField::SlowestSpeed => Value::Rotation(usual.speeds.low),
        MachineField::FastestSpeed => Value::Rotation(usual.speeds.high),
        MachineField::FinestFeed => Value::Feed(usual.feeds.low),
        MachineField::CoarsestFeed => Value::Feed(usual.feeds.high),
        MachineField::Power => Value::Power(usual.power),
        MachineField::Efficiency => Value::Share(usual.efficiency.to_whole()),
        MachineField::CompoundGraduation => Value::size(usual.compound_graduation),
        MachineField::FineInfeed => Value::size(USUAL_FINE_INFEED),
        MachineField::HeadStiffness => Value::Stiffness(springs.head?),
        MachineField::TailStiffness => Value::Stiffness(springs.tail?),
        MachineField::PostStiffness => Value::Stiffness(springs.tool_post?),
        MachineField::Name
        | MachineField::Rigidity
        | MachineField::Speeds
        | MachineField::Feeds
        | MachineField::Torque
        | MachineField::Swing
        | MachineField::ChuckTopSpeed
        | MachineField::Graduation
        | MachineField::DialReads => return None,
    })
}

fn section_value(job: &Job, index: u8, name: SectionField) -> Option<Value> {
    let turned = &job.part.sections.get(usize::from(index))?.turned;
    Some(match (name, turned) {
        (
            SectionField::Length,
            Turned::StandardTaper {
                taper, past_gauge, ..
            },
        ) => Value::length(usual_length(taper.get()?, past_gauge.value())),
        (SectionField::DiameterError, Turned::Taper { .. }) => Value::size(USUAL_DIAMETER_ERROR),
        (SectionField::LengthError, Turned::Taper { .. }) => Value::length(USUAL_LENGTH_ERROR),
        _ => return None,
    })
}

fn asked_here(job: &Job) -> Option<Asked> {
    let checked = Checked::new(job);
    let nominal = checked.length(Field::WantedDiameter)?;
    Some(asked(job, &checked, nominal))
}

//! What an optional field stands for while it is empty.

use super::Checked;
use crate::cutting::{usual_cut, usual_kerf, usual_speed};
use crate::job::{Field, Job, SectionField, Turned};
use crate::part::{USUAL_DIAMETER_ERROR, USUAL_LENGTH_ERROR, usual_length};
use crate::receiver::{Asked, asked};
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
    let cut = usual_cut(job.part.material, job.shop.tool);
    Some(match field {
        Field::ReceiverDepth => Value::length(asked_here(job)?.depth?),
        Field::LeastGrip => Value::length(asked_here(job)?.least_grip?),
        Field::Kerf => Value::length(usual_kerf(job.shop.cut_off_method)),
        Field::RoughInfeed => Value::size(cut.rough_infeed),
        Field::RoughFeed => Value::Feed(cut.rough_feed),
        Field::FinishFeed => Value::Feed(cut.finish_feed),
        Field::CuttingSpeed => {
            let (speed, _) = usual_speed(job.part.material, job.shop.tool)?;
            Value::Speed(speed)
        }
        Field::Section(index, name) => section_value(job, index, name)?,
        _ => return None,
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

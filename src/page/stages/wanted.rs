//! Wanted: what the shank shall become.

use skimwright::job::Field;
use yew::prelude::*;

use super::group;
use crate::page::store::{Store, words};
use crate::page::words::Text;

pub(crate) fn wanted_stage(store: &Store) -> Html {
    let words = words(store);
    html! {
        <>
            { group(store, words.say(Text::GroupFinished), &[
                Field::WantedDiameter,
                Field::Tolerance,
                Field::UpperDeviation,
                Field::LowerDeviation,
                Field::WantedLength,
                Field::ShoulderRadius,
                Field::EndChamfer,
                Field::Countersink,
            ]) }
            { group(store, words.say(Text::GroupReceiver), &[Field::ReceiverDepth, Field::LeastGrip]) }
        </>
    }
}

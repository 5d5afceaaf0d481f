//! Which readings of the record are of the work as it is now.

use super::budget::Corrected;
use super::corrected::corrected;
use crate::job::{Job, Measured, Reading, What, WorkPlace};

/// The readings that stand and were taken since the last cut, oldest first, with the place of each event in the record;
/// all that stand where nothing was cut yet.
pub fn since_last_cut(job: &Job) -> Vec<(usize, &Reading)> {
    let mut readings = Vec::new();
    for (index, event) in job.record.standing() {
        match &event.what {
            What::Cut(_) => readings.clear(),
            What::Reading(reading) => readings.push((index, reading)),
            What::Change(_)
            | What::Note(_)
            | What::Step(_)
            | What::Offered(_)
            | What::Answered(_) => {}
        }
    }
    readings
}

/// The readings of the diameter since the last cut that can be believed, by place, in the order in which each place was
/// first read.
pub fn diameters_now(job: &Job) -> Vec<(WorkPlace, Vec<Corrected>)> {
    let mut places: Vec<(WorkPlace, Vec<Corrected>)> = Vec::new();
    for (_, reading) in since_last_cut(job) {
        let Measured::Diameter(place) = &reading.of else {
            continue;
        };
        let Some(worth) = corrected(job, reading) else {
            continue;
        };
        match places
            .iter_mut()
            .find(|(known, _)| same_place(known, place))
        {
            Some((_, readings)) => readings.push(worth),
            None => places.push((place.clone(), vec![worth])),
        }
    }
    places
}

/// Two entered places no farther apart than this are one, in millimetres.
const SAME: f64 = 0.1;

/// Whether two places are one, however they were typed.
fn same_place(one: &WorkPlace, other: &WorkPlace) -> bool {
    match (one, other) {
        (WorkPlace::At(one), WorkPlace::At(other)) => {
            (one.value() - other.value()).abs().to_mm() <= SAME
        }
        _ => one == other,
    }
}

//! The lathe of a job with everything resolved: what was entered, or what its class usually has.

use super::engine::{Choices, ChoicesError};
use crate::job::{DialReads, Field, Gears, Job, MachineField};
use crate::plan::{Checked, Code, Finding, is_in_bounds};
use crate::quantity::{Entered, Length, Power, RotationalSpeed, Share, Torque, Typed};
use crate::tables::usual_lathe;
use crate::working::Range;

/// The lathe of a job.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Lathe {
    /// Spindle speeds, revolutions per minute.
    pub(crate) speeds: Choices,
    /// Feeds, millimetres per revolution, rising.
    pub(crate) feeds: Vec<f64>,
    /// What reaches the spindle.
    pub(crate) spindle_power: Power,
    /// What the drive holds.
    pub(crate) torque: Option<Torque>,
    /// Above this the spindle, the chuck or the work must not turn.
    pub(crate) top_speed: RotationalSpeed,
    /// One division of the cross-slide's dial, on radius.
    pub(crate) division: Option<Length>,
}

/// The numbers of the series R 20 of ISO 3 in one decade, for feeds of which there is no list.
const R20: [f64; 20] = [
    1.0, 1.12, 1.25, 1.4, 1.6, 1.8, 2.0, 2.24, 2.5, 2.8, 3.15, 3.55, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1,
    8.0, 9.0,
];

impl Lathe {
    /// The highest speed that the machine has and that is no higher than this; its slowest where it has none.
    pub(crate) fn at_most(&self, speed: RotationalSpeed) -> RotationalSpeed {
        let wanted = speed.to_per_min();
        let found = match self.speeds.clone().into_list() {
            Some(list) => list.into_iter().rev().find(|one| *one <= wanted),
            None => Some(wanted.min(self.speeds.most())).filter(|it| self.speeds.least() <= *it),
        };
        RotationalSpeed::per_min(found.unwrap_or(self.speeds.least()))
    }

    /// The lathe, and what is wrong with it; `None` while it cannot turn.
    pub(crate) fn read(job: &Job, checked: &Checked) -> (Option<Self>, Vec<Finding>) {
        let mut findings = Vec::new();
        let found = read(job, checked, &mut findings);
        (found, findings)
    }
}

fn read(job: &Job, checked: &Checked, findings: &mut Vec<Finding>) -> Option<Lathe> {
    let machine = &job.shop.machine;
    let usual = usual_lathe(machine.rigidity);
    let of = Field::Machine;
    let by_work = checked.rotation(Field::TopSpeed)?;
    let by_chuck = checked.or_usual(of(MachineField::ChuckTopSpeed), by_work)?;
    let top_speed = by_work.min(by_chuck);
    let speeds = gears(
        &machine.speeds,
        of(MachineField::Speeds),
        (
            of(MachineField::SlowestSpeed),
            of(MachineField::FastestSpeed),
        ),
        usual.speeds,
        checked,
        findings,
    );
    let feeds = gears(
        &machine.feeds,
        of(MachineField::Feeds),
        (of(MachineField::FinestFeed), of(MachineField::CoarsestFeed)),
        usual.feeds,
        checked,
        findings,
    );
    let power: Power = checked.or_usual(of(MachineField::Power), usual.power)?;
    let efficiency: Share = checked.or_usual(of(MachineField::Efficiency), usual.efficiency)?;
    let torque = checked.value(of(MachineField::Torque));
    // A bad figure is no figure: with it the passes would stand on a guess.
    if job.entry(of(MachineField::Torque)).is_some() && torque.is_none() {
        return None;
    }
    let division = checked.length(of(MachineField::Graduation));
    let on_radius = |marked: Length| match machine.dial_reads {
        DialReads::Diameter => marked / 2.0,
        DialReads::Radius => marked,
    };
    Some(Lathe {
        speeds: speeds?,
        feeds: in_steps(feeds?),
        spindle_power: power * efficiency.to_whole(),
        torque,
        top_speed,
        division: division.map(on_radius),
    })
}

/// What a machine offers, in base units.
fn gears<Q: Typed>(
    gears: &Gears<Q>,
    list: Field,
    (low, high): (Field, Field),
    usual: Range<Q>,
    checked: &Checked,
    findings: &mut Vec<Finding>,
) -> Option<Choices> {
    match gears {
        Gears::Listed(entered) => {
            let sound = |it: &&Entered<Q>| is_in_bounds(low, it.entry());
            let values = entered.iter().take(Job::MOST_GEARS).filter(sound);
            if entered.iter().any(|it| !is_in_bounds(low, it.entry())) {
                findings.push(Finding::at(list, Code::OutOfBounds));
            }
            let found = Choices::list(values.map(|it| it.value().to_base()));
            if found == Err(ChoicesError::Empty) {
                findings.push(Finding::at(list, Code::NoGears));
            }
            found.ok()
        }
        Gears::Stepless { .. } => {
            let from: Q = checked.or_usual(low, usual.low)?;
            let to: Q = checked.or_usual(high, usual.high)?;
            let found = Choices::range(from.to_base(), to.to_base());
            if found.is_err() {
                findings.push(Finding::at(high, Code::GearsCrossed));
            }
            found.ok()
        }
    }
}

/// Feeds one by one: a free range in the steps of a standard series, and its ends.
fn in_steps(feeds: Choices) -> Vec<f64> {
    let (least, most) = (feeds.least(), feeds.most());
    feeds.into_list().unwrap_or_else(|| {
        let decades = [0.001, 0.01, 0.1, 1.0];
        let series = decades
            .iter()
            .flat_map(|decade| R20.map(|step| step * decade));
        let inside = series.filter(|feed| least < *feed && *feed < most);
        [least].into_iter().chain(inside).chain([most]).collect()
    })
}

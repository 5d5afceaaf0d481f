//! Which steps are planned, and how often.

use super::planned::*;
use super::severing::Severing;
use super::step::{HoldingWay, Step, StepContext};
use super::three_point::{ThreePoint, ThreePointError};
use crate::quantity::Time;

fn operations() -> Operations {
    Operations {
        context: StepContext {
            holding: HoldingWay::FourJaw,
            severing: Severing::under_feed(Time::minutes(2.0)).ok(),
        },
        passes: vec![Time::minutes(1.0), Time::minutes(2.0)],
        last_passes: 1,
        facing: Some(Time::minutes(0.5)),
        centring: Some(Time::minutes(0.1)),
        spindle: SpindleSteps::NearestLower,
        tool_changes: 3,
        regrinds: 1,
        polished: true,
        own: Vec::new(),
        typed: Vec::new(),
        paces: Vec::new(),
    }
}

fn counts(operations: &Operations) -> Vec<(Step, u32)> {
    let time = planned(operations).unwrap();
    time.steps
        .iter()
        .map(|line| (line.step, line.count))
        .collect()
}

#[test]
fn every_step_that_is_done_stands_in_working_order_with_its_count() {
    let wanted: Vec<(Step, u32)> = Step::ALL
        .into_iter()
        .map(|step| match step {
            Step::SetDepth | Step::Return => (step, 2),
            Step::Measure | Step::ToolChange => (step, 3),
            _ => (step, 1),
        })
        .collect();
    assert_eq!(counts(&operations()), wanted);
}

#[test]
fn what_is_not_done_is_left_out() {
    let mut operations = operations();
    operations.context.severing = None;
    operations.passes.clear();
    (operations.facing, operations.centring) = (None, None);
    (operations.tool_changes, operations.regrinds) = (0, 0);
    operations.polished = false;
    let once = [
        Step::ReceiveAndCheck,
        Step::Hold,
        Step::DialIn,
        Step::Chamfer,
        Step::Clean,
        Step::FinalCheck,
        Step::Pack,
    ];
    assert_eq!(counts(&operations), once.map(|step| (step, 1)));
    assert_eq!(planned(&operations).unwrap().feeding, []);
}

#[test]
fn passes_feed_together_and_the_geared_lathe_may_be_a_step_slower() {
    let time = planned(&operations()).unwrap();
    let lines: Vec<_> = time
        .feeding
        .iter()
        .map(|line| (line.feeding, line.count))
        .collect();
    let once = |feeding| (feeding, 1);
    let wanted = [
        once(Feeding::Parting),
        once(Feeding::Facing),
        once(Feeding::Centring),
        (Feeding::Turning, 2),
    ];
    assert_eq!(lines, wanted);
    let turning = time.feeding.last().unwrap().together;
    assert_eq!(turning.likely(), Time::minutes(3.0));
    assert_eq!(turning.high(), Time::minutes(3.75));
}

#[test]
fn own_times_stand_in_the_place_of_usual_ones() {
    let mut operations = operations();
    let own = |minutes| ThreePoint::exact(Time::minutes(minutes)).unwrap();
    operations.own = vec![(Step::Pack, own(1.0)), (Step::Pack, own(0.0))];
    let time = planned(&operations).unwrap();
    let pack = time.steps.last().unwrap();
    assert_eq!((pack.step, pack.each), (Step::Pack, ThreePoint::ZERO));
    assert!(pack.share.abs() < 1e-15);
}

#[test]
fn a_feeding_time_below_zero_does_not_hide_in_the_sum() {
    let mut operations = operations();
    operations.passes.push(Time::seconds(-1.0));
    let wanted = Err(ThreePointError::LowBelowZero(Time::seconds(-1.0)));
    assert_eq!(planned(&operations), wanted);
}

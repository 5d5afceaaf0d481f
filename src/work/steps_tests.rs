//! The steps by plan and record.

use super::*;
use crate::demo::demo_jobs;
use crate::job::{
    CutMade, CutMadeKind, CutOffMethod, DialReads, Event, Moment, StepEvent, Support,
};
use crate::plan::plan;
use crate::quantity::{Entered, Unit};
use crate::tables::{ToolKind, WorkMaterial};
use crate::work::StepWarning as W;

fn mm(digits: u32, decimals: u8) -> Entered<Length> {
    Entered::plain(digits, decimals, Unit::Millimetre)
}

fn with(change: impl FnOnce(&mut Job)) -> (Vec<StepNow>, Plan) {
    let mut job = Job::default();
    change(&mut job);
    let plan = plan(&job);
    (steps(&job, &plan), plan)
}

fn names(steps: &[StepNow]) -> Vec<WorkStep> {
    steps.iter().map(|it| it.step).collect()
}

fn of(steps: &[StepNow], step: WorkStep) -> StepNow {
    let found = steps.iter().find(|it| it.step == step);
    found.unwrap_or_else(|| panic!("{step:?}")).clone()
}

fn record(events: impl IntoIterator<Item = (WorkStep, StepState)>) -> Record {
    let events = events.into_iter().zip(0_u64..);
    Record {
        events: events
            .map(|((step, state), at)| Event {
                at: Moment::unix_seconds(at),
                struck: false,
                what: What::Step(StepEvent { step, state }),
            })
            .collect(),
        ..Record::default()
    }
}

#[test]
fn a_plain_job_has_every_step_in_working_order() {
    let (steps, _) = with(|_| {});
    assert_eq!(names(&steps), WorkStep::ALL);
    let (swapped, _) = with(|job| job.shop.centre_order = CentreOrder::BeforeFacing);
    let mut wanted = WorkStep::ALL;
    wanted.swap(4, 5);
    assert_eq!(names(&swapped), wanted);
}

#[test]
fn steps_without_work_are_left_out() {
    use WorkStep as S;
    type Row = (fn(&mut Job), &'static [WorkStep]);
    let rows: [Row; 6] = [
        (|job| job.wanted.countersink = None, &[S::Centre]),
        (|job| job.shop.polishing_stock = mm(0, 0), &[S::Polish]),
        (|job| job.shop.facing_stock = mm(0, 0), &[S::Face]),
        // As long as wanted already.
        (|job| job.wanted.length = mm(80, 0), &[S::CutOff, S::Face]),
        // The two last cuts take all.
        (|job| job.wanted.diameter = mm(195, 1), &[S::Rough]),
        // Nothing to turn is known.
        (
            |job| job.wanted.diameter = mm(0, 0),
            &[
                S::CutOff,
                S::Face,
                S::Centre,
                S::Rough,
                S::LastCuts,
                S::Polish,
            ],
        ),
    ];
    for (number, (change, gone)) in rows.into_iter().enumerate() {
        let (steps, _) = with(change);
        let mut wanted = WorkStep::ALL.to_vec();
        wanted.retain(|step| !gone.contains(step));
        if number == 5 {
            // Cutting off and facing do not hang on the diameter.
            let left = names(&steps);
            for step in [S::Rough, S::LastCuts, S::Polish] {
                assert!(!left.contains(&step));
            }
            continue;
        }
        assert_eq!(names(&steps), wanted, "row {number}");
    }
}

#[test]
fn what_was_done_stays_though_the_plan_has_no_work_for_it() {
    let (steps, _) = with(|job| {
        job.wanted.countersink = None;
        job.record = record([(WorkStep::Centre, StepState::Done)]);
    });
    let centre = of(&steps, WorkStep::Centre);
    assert_eq!((centre.how, centre.dial), (StepHow::Done, None));
}

#[test]
fn a_step_stands_as_its_events_say() {
    use StepState::{Done, Paused, Reopened, Started};
    let skipped = || StepState::Skipped(String::new());
    let face = |states: Vec<StepState>| states.into_iter().map(|it| (WorkStep::Face, it)).collect();
    let rows: Vec<(Vec<(WorkStep, StepState)>, StepHow)> = vec![
        (vec![], StepHow::ToDo),
        (face(vec![Started]), StepHow::Running),
        (face(vec![Started, Paused]), StepHow::Paused),
        (face(vec![Started, Paused, Started]), StepHow::Running),
        (face(vec![Started, Done]), StepHow::Done),
        (face(vec![Done]), StepHow::Done),
        (face(vec![skipped()]), StepHow::Skipped),
        (face(vec![Done, Reopened]), StepHow::ToDo),
        (face(vec![Started, Done, Reopened]), StepHow::Paused),
        (face(vec![skipped(), Reopened]), StepHow::ToDo),
        (face(vec![Done, Started]), StepHow::Running),
        (face(vec![Paused]), StepHow::ToDo),
        (face(vec![Done, Paused]), StepHow::Done),
        (
            vec![(WorkStep::Face, Started), (WorkStep::Rough, Started)],
            StepHow::Paused,
        ),
        (
            vec![(WorkStep::Face, Started), (WorkStep::Rough, Done)],
            StepHow::Running,
        ),
        (
            vec![(WorkStep::Face, Started), (WorkStep::Rough, Paused)],
            StepHow::Running,
        ),
        (
            vec![(WorkStep::Face, Done), (WorkStep::Rough, Started)],
            StepHow::Done,
        ),
    ];
    for (events, wanted) in rows {
        let told = format!("{events:?}");
        assert_eq!(how_of(&record(events), WorkStep::Face), wanted, "{told}");
    }
}

/// The clock and how a step stands follow the same events by two ways.
#[test]
fn a_step_runs_when_its_clock_does() {
    let states = [
        StepState::Started,
        StepState::Paused,
        StepState::Done,
        StepState::Skipped(String::new()),
        StepState::Reopened,
    ];
    let all: Vec<(WorkStep, StepState)> = [WorkStep::Face, WorkStep::Rough]
        .into_iter()
        .flat_map(|step| states.clone().map(|state| (step, state)))
        .collect();
    for a in &all {
        for b in &all {
            for c in &all {
                let record = record([a.clone(), b.clone(), c.clone()]);
                for step in [WorkStep::Face, WorkStep::Rough] {
                    let runs = clock_of(&record, step).since.is_some();
                    let how = how_of(&record, step);
                    assert_eq!(runs, how == StepHow::Running, "{a:?} {b:?} {c:?}");
                }
            }
        }
    }
}

#[test]
fn the_current_step_is_the_one_that_runs_or_the_first_open_one() {
    use WorkStep as S;
    let at = |events: Vec<(WorkStep, StepState)>| {
        let (steps, _) = with(|job| job.record = record(events));
        let place = current(&steps);
        steps.get(place).map(|it| it.step)
    };
    assert_eq!(at(vec![]), Some(S::Receive));
    let begun = vec![
        (S::Receive, StepState::Done),
        (S::Hold, StepState::Skipped(String::new())),
        (S::Face, StepState::Started),
    ];
    assert_eq!(at(begun.clone()), Some(S::Face));
    let mut stopped = begun;
    stopped.push((S::Face, StepState::Paused));
    assert_eq!(at(stopped), Some(S::DialIn));
    let all = S::ALL.map(|step| (step, StepState::Done));
    assert_eq!(at(all.to_vec()), None);
}

#[test]
fn times_of_the_steps_add_up_to_the_plan_without_packing() {
    let mut counted = 0;
    for mut job in demo_jobs().into_iter().chain([Job::default()]) {
        for tool in [ToolKind::IndexableCarbide, ToolKind::HighSpeedSteel] {
            job.shop.tool = tool;
            job.shop.edge.regrind_time = Some(Entered::plain(5, 0, Unit::Minute));
            let plan = plan(&job);
            let steps = steps(&job, &plan);
            let Some(time) = &plan.time else {
                continue;
            };
            counted += 1;
            let pack = time
                .steps
                .iter()
                .find(|it| it.step == crate::costing::Step::Pack);
            let wanted = time.spread.mean - pack.unwrap().each.mean();
            let sum: Time = steps.iter().filter_map(|it| it.planned_mean).sum();
            assert!(
                (sum - wanted).abs() < Time::seconds(1e-6),
                "{sum:?} {wanted:?}"
            );
            let left = time_left(&steps, &plan).unwrap();
            assert!((left.mean - wanted).abs() < Time::seconds(1e-6));
            for step in steps {
                let [low, likely, high] = step.planned.unwrap();
                assert!(
                    Time::ZERO < low && low <= likely && likely <= high,
                    "{step:?}"
                );
            }
        }
    }
    assert!(4 <= counted, "{counted}");
}

/// Reckoned by hand from the passes of the plan.
#[test]
fn roughing_and_last_cuts_have_their_own_passes() {
    let (steps, plan) = with(|_| {});
    let stock = plan.stock_off.as_ref().unwrap();
    let time = |kind| -> Time {
        let passes = stock.passes.iter().filter(|it| it.kind == kind);
        // Setting, returning and measuring by the means of their usual ranges.
        let handling = Time::seconds((9.0 + 13.0 + 18.0) / 3.0 + 9.0 + 24.0);
        passes.map(|pass| pass.feeding + handling).sum()
    };
    for (step, kind) in [
        (WorkStep::Rough, PassKind::Rough),
        (WorkStep::LastCuts, PassKind::Last),
    ] {
        let mean = of(&steps, step).planned_mean.unwrap();
        assert_eq!(stock.tool_changes, 0);
        assert!((mean - time(kind)).abs() < Time::seconds(1e-6), "{step:?}");
    }
    // Polishing, and measuring what was polished.
    let polish = of(&steps, WorkStep::Polish).planned_mean.unwrap();
    let wanted = Time::minutes(7.0 / 3.0) + Time::seconds(24.0);
    assert!((polish - wanted).abs() < Time::seconds(1e-6));
}

#[test]
fn each_step_shows_its_figure() {
    let (steps, plan) = with(|_| {});
    let dial = |step| of(&steps, step).dial;
    let cut = plan.cut_off.as_ref().unwrap();
    assert_eq!(
        dial(WorkStep::Receive),
        Some(Dial::AsGiven(Length::mm(20.0)))
    );
    assert_eq!(dial(WorkStep::Clean), None);
    assert_eq!(
        dial(WorkStep::CutOff),
        Some(Dial::CutMark(cut.from_free_end.value))
    );
    assert_eq!(dial(WorkStep::Face), Some(Dial::Facing(Length::mm(1.0))));
    assert_eq!(
        dial(WorkStep::Chamfer),
        Some(Dial::Chamfer(Length::mm(1.0)))
    );
    assert_eq!(
        dial(WorkStep::Check),
        Some(Dial::Diameter(Length::mm(16.0)))
    );
    assert_eq!(
        dial(WorkStep::Polish),
        Some(Dial::PolishOff(Length::mm(0.02)))
    );
    // h6 on 16 mm is 11 µm wide.
    let Some(Dial::Runout(runout)) = dial(WorkStep::DialIn) else {
        panic!("a runout");
    };
    assert!((runout.to_mm() - 0.011).abs() < 1e-9);
}

#[test]
fn runout_is_bounded_by_the_stock_and_a_division() {
    let allowed = |change: fn(&mut Job)| match of(&with(change).0, WorkStep::DialIn).dial {
        Some(Dial::Runout(runout)) => Some((runout.to_um() * 10.0).round() / 10.0),
        _ => None,
    };
    // h5 on 16 mm is 8 µm wide, less than a division.
    let fine = |job: &mut Job| {
        job.wanted.tolerance = crate::job::Tolerance::Limits {
            upper: mm(0, 3),
            lower: Entered::plain(0, 3, Unit::Millimetre),
        };
    };
    assert_eq!(allowed(fine), Some(10.0));
    // 20 mm of stock less 4.495 of runout holds 15.505 + 0.4995 …: the aim of 16 h6 is 15.9945.
    assert_eq!(allowed(|job| job.part.runout = mm(4, 0)), Some(5.5));
    assert_eq!(allowed(|job| job.part.runout = mm(5, 0)), None);
}

#[test]
fn the_infeed_is_of_the_next_pass_as_the_dial_is_marked() {
    let made = |rough: usize, reads| {
        let (steps, plan) = with(|job| {
            job.shop.machine.dial_reads = reads;
            let cut = |kind| Event {
                at: Moment::default(),
                struck: false,
                what: What::Cut(CutMade {
                    kind,
                    dialled: mm(1, 0),
                    reads,
                }),
            };
            let mut struck = cut(CutMadeKind::Rough);
            struck.struck = true;
            job.record.events = vec![cut(CutMadeKind::Rough); rough];
            job.record.events.extend([struck, cut(CutMadeKind::Spring)]);
        });
        (of(&steps, WorkStep::Rough), plan)
    };
    let (_, plan) = made(0, DialReads::Diameter);
    let passes = plan.stock_off.unwrap().passes;
    let rough: Vec<_> = passes
        .iter()
        .filter(|it| it.kind == PassKind::Rough)
        .collect();
    assert!(2 <= rough.len());
    for (number, pass) in rough.iter().enumerate() {
        let on_diameter = made(number, DialReads::Diameter).0;
        assert_eq!(on_diameter.dial, Some(Dial::Infeed(pass.off_diameter)));
        let on_radius = made(number, DialReads::Radius).0;
        assert_eq!(on_radius.dial, Some(Dial::Infeed(pass.infeed)));
        let left = u32::try_from(rough.len() - number).unwrap();
        assert!(on_radius.figures.contains(&StepFigure::PassesLeft(left)));
        assert_eq!(on_radius.spindle_speed, Some(pass.spindle_speed));
    }
    let over = made(rough.len(), DialReads::Diameter).0;
    assert_eq!((over.dial, over.figures.len()), (None, 0));
}

#[test]
fn only_cautions_that_apply_are_said() {
    use WorkStep as S;
    type Row = (fn(&mut Job), WorkStep, W);
    // What brings a caution that the plain job does not have.
    let rows: [Row; 9] = [
        (
            |job| job.shop.cut_off_method = CutOffMethod::HandDisc,
            S::CutOff,
            W::Disc,
        ),
        (
            |job| job.shop.cut_off_method = CutOffMethod::ChopWheel,
            S::CutOff,
            W::HotOffcut,
        ),
        (
            |job| job.shop.cut_off_method = CutOffMethod::PartingTool,
            S::CutOff,
            W::PartingJams,
        ),
        (
            |job| job.part.material = WorkMaterial::GreyIron,
            S::Rough,
            W::DustOfCastIron,
        ),
        (
            |job| job.part.material = WorkMaterial::TitaniumAlloy,
            S::Rough,
            W::TitaniumFire,
        ),
        (
            |job| job.part.material = WorkMaterial::HardenedSteel,
            S::LastCuts,
            W::ChipsHard,
        ),
        (
            |job| job.part.material = WorkMaterial::HardenedSteel,
            S::Centre,
            W::CentreOnHard,
        ),
        (
            |job| job.shop.tool = ToolKind::Grinding,
            S::LastCuts,
            W::Grinding,
        ),
        (
            |job| job.part.head_diameter = mm(90, 0),
            S::Hold,
            W::LosesGrip,
        ),
    ];
    let (plain, _) = with(|_| {});
    for (change, step, warning) in rows {
        assert!(!of(&plain, step).warnings.contains(&warning), "{warning:?}");
        let (steps, _) = with(change);
        assert!(of(&steps, step).warnings.contains(&warning), "{warning:?}");
    }
    // What the plain job has, and what takes it away.
    let gone: [Row; 4] = [
        (
            |job| job.setup.support = Some(Support::BetweenCentres),
            S::Hold,
            W::ChuckKey,
        ),
        (
            |job| job.setup.support = Some(Support::Chuck),
            S::Rough,
            W::CentreNipsUp,
        ),
        (
            |job| job.setup.support = Some(Support::Collet),
            S::DialIn,
            W::ChuckKey,
        ),
        (
            |job| {
                job.part.bores = vec![crate::job::Bore {
                    hole: crate::job::Hole::Through { diameter: mm(4, 0) },
                    off_centre: None,
                    end: crate::job::BoreEnd::FreeEnd,
                }];
            },
            S::Centre,
            W::CentreDrillBreaks,
        ),
    ];
    for (change, step, warning) in gone {
        assert!(of(&plain, step).warnings.contains(&warning), "{warning:?}");
        let (steps, _) = with(change);
        assert!(!of(&steps, step).warnings.contains(&warning), "{warning:?}");
    }
}

/// A report is read without the shop's lathe and tool: by the plan of a plain lathe it would tell of cuts that nobody meant.
#[test]
fn a_report_tells_of_no_open_step_that_its_shop_did_not_have() {
    use crate::offer::handed_back;
    let changes: [fn(&mut Job); 3] = [
        |job| {
            job.shop.tool = ToolKind::CubicBoronNitride;
            job.shop.edge.nose_radius = Some(mm(8, 1));
        },
        |job| {
            job.wanted.diameter = mm(199, 1);
            job.shop.last_cut = mm(5, 1);
        },
        |job| job.shop.last_cut = mm(1, 2),
    ];
    let mut differed = false;
    for change in changes {
        for ended in [0, 3, WorkStep::ALL.len()] {
            let mut job = Job::default();
            change(&mut job);
            let own = steps(&job, &plan(&job));
            let done = own.iter().take(ended);
            job.record = record(done.map(|it| (it.step, StepState::Done)));
            let own = open_steps(&steps(&job, &plan(&job)));
            let back = handed_back(&job);
            let theirs = steps(&back, &plan(&back));
            let told = surely_open_steps(&theirs);
            assert!(
                told.iter().all(|it| own.contains(it)),
                "{told:?} of {own:?}"
            );
            assert_eq!(
                told.contains(&WorkStep::Check),
                own.contains(&WorkStep::Check)
            );
            differed |= open_steps(&theirs).iter().any(|it| !own.contains(it));
        }
    }
    assert!(
        differed,
        "by the plan alone no report would have claimed too much"
    );
}

#[test]
fn what_was_begun_is_open_in_a_report_too() {
    let (steps, _) = with(|job| job.record = record([(WorkStep::Rough, StepState::Started)]));
    assert!(surely_open_steps(&steps).contains(&WorkStep::Rough));
    assert!(!surely_open_steps(&steps).contains(&WorkStep::LastCuts));
}

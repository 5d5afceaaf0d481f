//! What a job teaches of the next.

use super::*;
use crate::job::{Event, Moment, StepEvent, StepState, What};
use crate::plan::plan;

/// A job whose steps took so many seconds, begun at noon of some day.
fn worked(job: &mut Job, seconds: &[(WorkStep, u64)]) {
    let mut now = 1_800_000_000;
    for (step, taken) in seconds {
        for (at, state) in [(now, StepState::Started), (now + taken, StepState::Done)] {
            job.record.events.push(Event {
                at: Moment::unix_seconds(at),
                struck: false,
                what: What::Step(StepEvent { step: *step, state }),
            });
        }
        now += taken + 10;
    }
}

fn with(change: impl FnOnce(&mut Job)) -> (Job, Plan) {
    let mut job = Job::default();
    change(&mut job);
    let plan = plan(&job);
    (job, plan)
}

fn of(times: &[StepTimeReal], step: WorkStep) -> StepTimeReal {
    *times.iter().find(|it| it.step == step).unwrap()
}

fn pace(step: WorkStep, tenths: u32, jobs: u32) -> LearnedPace {
    LearnedPace {
        step,
        factor: Entered::plain(tenths, 1, Unit::Percent),
        jobs: Entered::plain(jobs, 0, Unit::Piece),
    }
}

/// The likely time of a step at the usual pace, in whole seconds.
fn usual_seconds(step: WorkStep) -> u64 {
    let (_, plan) = with(|_| {});
    let spread = times::spread_at_usual_pace(plan.time.as_ref().unwrap(), &[step]).unwrap();
    u64::from(whole(spread.likely.to_seconds(), 1e9))
}

#[test]
fn only_what_was_done_and_timed_counts() {
    use WhyNoPace as Why;
    let likely = usual_seconds(WorkStep::DialIn);
    let dial_in = |seconds| move |job: &mut Job| worked(job, &[(WorkStep::DialIn, seconds)]);
    let why = |change: &dyn Fn(&mut Job)| {
        let (job, plan) = with(|job| change(job));
        of(&real_times(&job, &plan), WorkStep::DialIn).why
    };
    let strike_last = |job: &mut Job| job.record.events.last_mut().unwrap().struck = true;
    assert_eq!(why(&|_| {}), Some(Why::NotDone));
    assert_eq!(why(&dial_in(likely)), None);
    assert_eq!(why(&dial_in(0)), Some(Why::NotTimed));
    assert_eq!(why(&dial_in(2 * 86_400)), Some(Why::ClockBroken));
    assert_eq!(why(&dial_in(likely / 6)), Some(Why::TooQuick));
    assert_eq!(why(&dial_in(likely * 6)), Some(Why::TooSlow));
    let unfinished = |job: &mut Job| {
        dial_in(likely)(job);
        strike_last(job);
    };
    assert_eq!(why(&unfinished), Some(Why::NotDone));
    let skipped = |job: &mut Job| {
        dial_in(likely)(job);
        job.record.events.last_mut().unwrap().what = What::Step(StepEvent {
            step: WorkStep::DialIn,
            state: StepState::Skipped(String::new()),
        });
    };
    assert_eq!(why(&skipped), Some(Why::Skipped));
    let typed = |job: &mut Job| {
        dial_in(likely)(job);
        let own = job.shop.times.of_mut(crate::costing::Step::DialIn).unwrap();
        own.likely = Some(Entered::plain(3, 0, Unit::Minute));
    };
    assert_eq!(why(&typed), Some(Why::OwnTimes));
    // The plan has no time at all.
    let no_plan = |job: &mut Job| {
        dial_in(likely)(job);
        job.wanted.diameter = Entered::plain(0, 0, Unit::Millimetre);
    };
    assert_eq!(why(&no_plan), Some(Why::NotPlanned));
}

#[test]
fn the_first_job_moves_half_way_and_jobs_that_agree_converge() {
    let likely = usual_seconds(WorkStep::Hold);
    let mut learned = Vec::new();
    // Half again as long each time: 1.5 to the power of n/(n + 1).
    for jobs in 1..=8_u32 {
        let (job, plan) = with(|job| {
            job.shop.machine.learned.paces = learned;
            worked(job, &[(WorkStep::Hold, likely * 3 / 2)]);
        });
        learned = paces_after(&job, &plan);
        let n = f64::from(jobs);
        let ratio = f64::from(u32::try_from(likely * 3 / 2).unwrap());
        let spread = times::spread_at_usual_pace(plan.time.as_ref().unwrap(), &[WorkStep::Hold]);
        let ratio = ratio / spread.unwrap().likely.to_seconds();
        let wanted = ratio.powf(n / (n + 1.0));
        let [pace] = learned.as_slice() else {
            panic!("one step was learned");
        };
        let got = pace.factor.value().to_whole();
        assert!(
            (got - wanted).abs() < 0.003,
            "{jobs}: {got}, by hand {wanted}"
        );
        assert!((pace.jobs.value().to_pieces() - n).abs() < 1e-9);
    }
}

#[test]
fn one_odd_day_does_not_swing_what_five_taught() {
    let likely = usual_seconds(WorkStep::Hold);
    let known = vec![pace(WorkStep::Hold, 1000, 5)];
    for (seconds, low, high) in [
        (likely * 9 / 2, 1.0, 1.11),
        (likely / 4, 0.90, 1.0),
        (likely * 100, 0.9999, 1.0001),
    ] {
        let (job, plan) = with(|job| {
            job.shop.machine.learned.paces.clone_from(&known);
            worked(job, &[(WorkStep::Hold, seconds)]);
        });
        let after = paces_after(&job, &plan);
        let got = after.first().unwrap().factor.value().to_whole();
        assert!(low <= got && got <= high, "{seconds} s: {got}");
    }
}

#[test]
fn what_a_job_says_nothing_about_stays_as_it_was() {
    let known = vec![pace(WorkStep::Hold, 1230, 4), pace(WorkStep::Rough, 800, 2)];
    let likely = usual_seconds(WorkStep::Face);
    let (job, plan) = with(|job| {
        job.shop.machine.learned.paces.clone_from(&known);
        worked(job, &[(WorkStep::Face, likely)]);
    });
    let after = paces_after(&job, &plan);
    let steps: Vec<WorkStep> = after.iter().map(|it| it.step).collect();
    assert_eq!(steps, [WorkStep::Hold, WorkStep::Face, WorkStep::Rough]);
    assert!(known.iter().all(|it| after.contains(it)));
    // Onto a lathe that other jobs taught since: theirs is kept too.
    let other = Learned {
        takes: None,
        paces: vec![pace(WorkStep::Clean, 1100, 7)],
    };
    let kept = learned_after(&job, &plan, &other);
    let steps: Vec<WorkStep> = kept.paces.iter().map(|it| it.step).collect();
    assert_eq!(steps, [WorkStep::Face, WorkStep::Clean]);
}

/// The factor is against the usual time, so that what was learned before is not learned again.
#[test]
fn a_day_at_the_learned_pace_confirms_it() {
    let likely = usual_seconds(WorkStep::Hold);
    let (job, plan) = with(|job| {
        job.shop.machine.learned.paces = vec![pace(WorkStep::Hold, 2000, 3)];
        worked(job, &[(WorkStep::Hold, likely * 2)]);
    });
    let real = of(&real_times(&job, &plan), WorkStep::Hold);
    assert!((real.factor.unwrap().to_whole() - 2.0).abs() < 0.02);
    assert!((real.against_plan.unwrap().to_whole() - 1.0).abs() < 0.01);
    let after = paces_after(&job, &plan);
    let got = after.first().unwrap().factor.value().to_whole();
    assert!((got - 2.0).abs() < 0.01, "{got}");
}

#[test]
fn a_learned_pace_scales_its_step_alone() {
    let (job, plain) = with(|_| {});
    let plain_steps = steps(&job, &plain);
    for step in WorkStep::ALL {
        let at = |tenths| with(|job| job.shop.machine.learned.paces = vec![pace(step, tenths, 3)]);
        let (_, same) = at(1000);
        assert_eq!(same, plain, "{step:?} at its usual pace");
        let (job, doubled) = at(2000);
        let time = doubled.time.as_ref().unwrap();
        assert_eq!(time.learned.len(), 1);
        assert_eq!(
            time.learned.first().map(|it| (it.step, it.jobs)),
            Some((step, 3))
        );
        for (before, after) in plain_steps.iter().zip(steps(&job, &doubled)) {
            let factor = if before.step == step { 2.0 } else { 1.0 };
            for (before, after) in before
                .planned
                .unwrap()
                .into_iter()
                .zip(after.planned.unwrap())
            {
                assert!(
                    (after - before * factor).abs() < Time::seconds(1e-6),
                    "{step:?}"
                );
            }
        }
        let own = plain_steps.iter().find(|it| it.step == step).unwrap();
        let plain_mean = plain.time.as_ref().unwrap().spread.mean;
        let grown = time.spread.mean - plain_mean - own.planned_mean.unwrap();
        assert!(grown.abs() < Time::seconds(1e-6), "{step:?} {grown:?}");
        let sum: f64 = time.steps.iter().map(|it| it.share).sum::<f64>()
            + time.feeding.iter().map(|it| it.share).sum::<f64>();
        assert!((sum - 1.0).abs() < 1e-9);
        // What is turned does not hang on the person's pace.
        assert_eq!(doubled.stock_off, plain.stock_off);
    }
}

#[test]
fn typed_times_win_over_learned_ones() {
    let typed = |job: &mut Job| {
        let own = job.shop.times.of_mut(crate::costing::Step::Hold).unwrap();
        own.high = Some(Entered::plain(9, 0, Unit::Minute));
        job.shop.polish_time = Entered::plain(3, 0, Unit::Minute);
    };
    let (_, plain) = with(typed);
    let (_, learned) = with(|job| {
        typed(job);
        job.shop.machine.learned.paces = vec![pace(WorkStep::Hold, 3000, 3)];
    });
    assert_eq!(learned, plain);
    // Of polishing, what was typed is the polishing alone, not the measuring after it.
    let (_, polish) = with(|job| {
        typed(job);
        job.shop.machine.learned.paces = vec![pace(WorkStep::Polish, 2000, 3)];
    });
    let grown = polish.time.unwrap().spread.mean - plain.time.unwrap().spread.mean;
    assert!((grown - Time::seconds(24.0)).abs() < Time::seconds(1e-6));
}

#[test]
fn factors_that_no_one_can_believe_are_bounded() {
    for (tenths, wanted) in [(0, 0.2), (10, 0.2), (1_000_000, 5.0)] {
        let (_, plan) = with(|job| {
            job.shop.machine.learned.paces = vec![pace(WorkStep::Hold, tenths, 1)];
        });
        let learned = plan.time.unwrap().learned;
        let got = learned.first().unwrap().factor;
        assert!((got - wanted).abs() < 1e-12, "{tenths}: {got}");
    }
}

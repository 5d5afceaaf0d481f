//! What is advised at the lathe: common practice, every state, doubts on both sides of their limits, and laws that hold
//! whatever was entered.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/record.rs"]
mod record;

use proptest::prelude::*;
use record::{
    change, confirmed, cut, cut_as, last, length, reading, reading_at, rough, warm, with,
};
use skimwright::cutting::PassKind;
use skimwright::job::{
    Change, CutMadeKind, DialReads, Field, Job, MachineField, Record, Tolerance, What, WorkPlace,
};
use skimwright::measuring::{
    Advice, CutNext, DoubtKind, Next, ODDS_UNDER, TakesFrom, WhenMeasure, WhyMeasure, WhyStop,
    advise, takes_after,
};
use skimwright::plan::{Plan, plan};
use skimwright::quantity::{Entered, Length, Unit};
use skimwright::tables::{ShaftClass, ToolKind};

/// A shank of 20 mm that becomes 16 mm, on a dial of a hundredth, with a sharp tool.
fn job() -> Job {
    let mut job = Job::default();
    job.shop.tool = ToolKind::HighSpeedSteel;
    job.shop.machine.graduation = Some(length("0.01"));
    job
}

fn without_polishing() -> Job {
    let mut job = job();
    job.shop.polishing_stock = length("0");
    job
}

fn after(job: &Job, whats: impl IntoIterator<Item = What>) -> Advice {
    let job = with(job, whats);
    advise(&job, &plan(&job))
}

fn next_cut(job: &Job, whats: impl IntoIterator<Item = What>) -> CutNext {
    match after(job, whats).next {
        Next::Cut(cut) => *cut,
        other => panic!("{other:?}"),
    }
}

/// What is dialled for a cut, as it is typed.
fn dialled(cut: &CutNext) -> String {
    format!("{:.4}", cut.dialled.to_mm())
}

#[test]
fn an_empty_record_asks_for_a_reading() {
    let advice = after(&job(), []);
    assert_eq!(advice.next, Next::Measure(WhyMeasure::First));
    assert!(advice.size.is_none() && advice.doubts.is_empty());
    assert_eq!(
        (advice.takes.cuts, advice.takes.from),
        (0, TakesFrom::Stiffness)
    );
}

/// Two equal last cuts of 0.25 mm, and 0.02 mm left to polish: common practice.
#[test]
fn last_cuts_and_polishing_are_as_the_trade_has_them() {
    let job = job();
    // 16 h6 is 15.989 to 16; 0.02 for polishing and twice 0.25 are still on.
    let first = next_cut(&job, [reading("16.515")]);
    assert_eq!(
        (first.kind, first.cuts_left, first.spring),
        (PassKind::Last, 2, false)
    );
    assert!(
        (first.off_diameter.to_mm() - 0.25).abs() < 0.006,
        "{first:?}"
    );
    assert_eq!(first.measure, WhenMeasure::AfterThis);
    let turned = dialled(&first);
    let measured = [reading("16.515"), last(&turned), reading("16.266")];
    let second = next_cut(&job, measured.clone());
    assert_eq!((second.kind, second.cuts_left), (PassKind::Last, 1));
    assert!(
        (second.diameter_after.value.to_mm() - 16.0145).abs() < 0.006,
        "{second:?}"
    );
    let turned = dialled(&second);
    let all = measured
        .into_iter()
        .chain([last(&turned), reading("16.015")]);
    let Next::Polish { off } = after(&job, all).next else {
        panic!("polishing is left");
    };
    assert!((off.value.to_mm() - 0.02).abs() < 0.003, "{off:?}");
}

/// Roughing goes pass by pass without a reading between, and is measured before the last cuts.
#[test]
fn roughing_is_measured_before_the_last_cuts() {
    let job = job();
    let planned = plan(&job).stock_off.unwrap();
    let roughs = planned
        .passes
        .iter()
        .filter(|it| it.kind == PassKind::Rough)
        .count();
    assert!(roughs >= 2);
    let mut whats = vec![reading("20")];
    for done in 0..roughs {
        let cut = next_cut(&job, whats.clone());
        assert_eq!(cut.kind, PassKind::Rough, "{done}");
        assert_eq!(cut.pass, Some(u8::try_from(done).unwrap()));
        let left = u32::try_from(roughs - done).unwrap();
        assert_eq!(cut.cuts_left, left + 2);
        let when = if left == 1 {
            WhenMeasure::AfterThis
        } else {
            WhenMeasure::After(left)
        };
        assert_eq!(cut.measure, when);
        whats.push(rough(&dialled(&cut)));
    }
    let advice = after(&job, whats);
    assert_eq!(advice.next, Next::Measure(WhyMeasure::AfterCut));
    assert!(advice.size.is_none());
}

/// The first cut takes off a tenth less than was dialled; the second counts on it.
#[test]
fn the_second_cut_counts_on_what_the_first_showed() {
    let job = without_polishing();
    let short = next_cut(&job, [reading("16.494"), last("0.25"), reading("16.269")]);
    let full = next_cut(&job, [reading("16.494"), last("0.25"), reading("16.244")]);
    // 0.025 mm more is on, and a tenth less of it comes off.
    let more = short.dialled - full.dialled;
    assert!((0.02..0.05).contains(&more.to_mm()), "{short:?} {full:?}");
    let taught = after(&job, [reading("16.494"), last("0.25"), reading("16.269")]).takes;
    assert_eq!(taught.cuts, 1);
    assert!((taught.left.to_mm() - 0.025).abs() < 1e-9);
    assert!(taught.covariance.to_mm() < 0.0);
}

#[test]
fn work_at_size_stops_for_its_own_reason() {
    let mut wide = without_polishing();
    wide.wanted.tolerance = Tolerance::Class(ShaftClass::H9);
    // 16 h9 is 15.957 to 16.
    let stop = |text: &str| after(&wide, [reading(text)]).next;
    assert_eq!(stop("15.98"), Next::Stop(WhyStop::InTolerance));
    assert_eq!(stop("15.94"), Next::Stop(WhyStop::Under));
    assert_eq!(stop("15.956"), Next::Measure(WhyMeasure::ToSettle));
    let again = ["15.956"; 4].map(reading);
    assert_eq!(after(&wide, again).next, Next::Stop(WhyStop::Under));
    // Four thousandths too large: no cut is so light, so abrasive has to do it.
    assert!(
        matches!(stop("16.004"), Next::Polish { .. }),
        "{:?}",
        stop("16.004")
    );
}

#[test]
fn what_is_missing_is_named() {
    let mut job = job();
    job.wanted.diameter = length("0");
    assert_eq!(
        after(&job, [reading("16.5")]).next,
        Next::Stop(WhyStop::Missing(Field::WantedDiameter))
    );
    let mut job = Job::default();
    job.shop.machine.graduation = Some(length("0"));
    let next = after(&job, [reading("16.5")]).next;
    let field = Field::Machine(MachineField::Graduation);
    assert_eq!(next, Next::Stop(WhyStop::Missing(field)));
}

#[test]
fn warm_work_waits_for_its_last_cut() {
    let job = without_polishing();
    let cold = after(
        &job,
        [reading("16.494"), last("0.25"), warm("16.244", "21")],
    );
    assert!(matches!(cold.next, Next::Cut(_)), "{:?}", cold.next);
    let hot = after(
        &job,
        [reading("16.494"), last("0.25"), warm("16.263", "120")],
    );
    assert_eq!(hot.next, Next::Measure(WhyMeasure::TooWarm));
    // Once it has cooled it is measured anew.
    let cooled = [
        reading("16.494"),
        last("0.25"),
        warm("16.263", "120"),
        warm("16.244", "22"),
    ];
    assert!(matches!(after(&job, cooled).next, Next::Cut(_)));
    // Far from size it does not matter.
    let far = after(&job, [warm("20.01", "80")]);
    assert!(matches!(far.next, Next::Cut(_)), "{:?}", far.next);
}

#[test]
fn a_change_forgets_what_was_learned() {
    let job = without_polishing();
    let begun = [
        reading("16.9"),
        last("0.2"),
        reading("16.71"),
        last("0.2"),
        reading("16.512"),
    ];
    let known = after(&job, begun.clone()).takes;
    assert_eq!(known.cuts, 2);
    for what in [
        Change::NewEdge,
        Change::HeldAgain,
        Change::DialSet,
        Change::OtherFeed,
    ] {
        let takes = after(&job, begun.clone().into_iter().chain([change(what)])).takes;
        assert_eq!((takes.cuts, takes.left.to_mm()), (0, 0.0), "{what:?}");
        assert!(takes.offset_deviation > known.offset_deviation * 2.0);
    }
    let warmer = [
        reading("16.9"),
        last("0.2"),
        reading("16.71"),
        last("0.2"),
        warm("16.512", "26"),
    ];
    assert_eq!(after(&job, warmer).takes.cuts, 0);
}

/// Several cuts without a reading are one measured step: what is left at its end is what was dialled less what came off.
#[test]
fn cuts_between_two_readings_are_one_step() {
    let job = without_polishing();
    let takes = after(
        &job,
        [reading("17"), last("0.2"), last("0.2"), reading("16.61")],
    )
    .takes;
    assert_eq!(takes.cuts, 1);
    assert!((takes.left.to_mm() - 0.01).abs() < 1e-9);
    // A spring pass takes off some of it, and teaches nothing.
    let sprung = [
        reading("17"),
        last("0.2"),
        reading("16.81"),
        cut(CutMadeKind::Spring, "0"),
        reading("16.803"),
    ];
    let takes = after(&job, sprung).takes;
    assert_eq!(takes.cuts, 1);
    assert!((takes.left.to_mm() - 0.003).abs() < 1e-9);
}

/// What is odd about the last of some readings.
fn doubted(whats: impl IntoIterator<Item = What>) -> Option<(DoubtKind, Option<f64>)> {
    let advice = after(&without_polishing(), whats);
    assert_eq!(advice.next == Next::Answer, !advice.doubts.is_empty());
    let doubt = advice.doubts.last()?;
    Some((
        doubt.kind,
        doubt.meant.map(|it| (it.to_mm() * 1e4).round() / 1e4),
    ))
}

#[test]
fn slips_are_asked_about_and_true_readings_are_not() {
    let second = |text: &str| doubted([reading("16.7"), last("0.25"), reading(text)]);
    // 16.455 or so is expected.
    for honest in ["16.45", "16.46", "16.44", "16.48", "16.5", "0.6478 in"] {
        assert_eq!(second(honest), None, "{honest}");
    }
    for (slip, kind, meant) in [
        ("0.6478", DoubtKind::WrongUnit, Some(16.4541)),
        ("417.83", DoubtKind::WrongUnit, Some(16.45)),
        ("16.95", DoubtKind::WholeTurn, Some(16.45)),
        ("15.955", DoubtKind::WholeTurn, Some(16.455)),
        ("17.09", DoubtKind::WholeTurn, Some(16.455)),
        ("14.65", DoubtKind::SwappedDigits, Some(16.45)),
        ("1.645", DoubtKind::SlippedMark, Some(16.45)),
        ("164.5", DoubtKind::SlippedMark, Some(16.45)),
        ("16.8", DoubtKind::Larger, None),
        ("16.2", DoubtKind::Unlikely, None),
        ("20.9", DoubtKind::Impossible, None),
    ] {
        assert_eq!(second(slip), Some((kind, meant)), "{slip}");
    }
    // As read first, before anything is known.
    let first = |text: &str| doubted([reading(text)]);
    for honest in ["20", "20.1", "19.5", "16.2", "15.9", "0.78 in"] {
        assert_eq!(first(honest), None, "{honest}");
    }
    for (slip, kind, meant) in [
        ("0.787", DoubtKind::WrongUnit, Some(19.9898)),
        ("508", DoubtKind::WrongUnit, Some(20.0)),
        ("2.00", DoubtKind::SlippedMark, Some(20.0)),
        ("200", DoubtKind::SlippedMark, Some(20.0)),
        ("25", DoubtKind::Impossible, None),
        ("12", DoubtKind::Unlikely, None),
    ] {
        assert_eq!(first(slip), Some((kind, meant)), "{slip}");
    }
    // A second reading of the same place that differs.
    assert_eq!(doubted([reading("16.7"), reading("16.702")]), None);
    let apart = doubted([reading("16.7"), reading("16.2")]);
    assert_eq!(apart, Some((DoubtKind::WholeTurn, Some(16.7))));
}

#[test]
fn a_doubt_ends_by_a_word_or_a_stroke() {
    let job = without_polishing();
    let begun = [reading("16.7"), last("0.25")];
    let slipped = after(&job, begun.clone().into_iter().chain([reading("16.95")]));
    assert_eq!((slipped.doubts.len(), slipped.takes.cuts), (1, 0));
    assert!(slipped.size.is_none());
    let sure = after(&job, begun.clone().into_iter().chain([confirmed("16.2")]));
    assert!(sure.doubts.is_empty());
    assert!((sure.size.unwrap().diameter.value.to_mm() - 16.2).abs() < 1e-3);
    // It is believed, but nothing is learned from it.
    assert_eq!(sure.takes.cuts, 0);
    let mut struck = with(
        &job,
        begun
            .into_iter()
            .chain([reading("16.95"), reading("16.452")]),
    );
    struck.record.events[2].struck = true;
    let mended = advise(&struck, &plan(&struck));
    assert_eq!((mended.doubts.len(), mended.takes.cuts), (0, 1));
    // A good reading after a doubted one is enough to go on.
    struck.record.events[2].struck = false;
    let passed_over = advise(&struck, &plan(&struck));
    assert_eq!(passed_over.doubts.len(), 1);
    assert!(matches!(passed_over.next, Next::Cut(_)));
}

#[test]
fn a_job_teaches_the_next_one() {
    let job = without_polishing();
    let cuts = [
        reading("17"),
        last("0.2"),
        reading("16.82"),
        last("0.2"),
        reading("16.622"),
        last("0.15"),
        reading("16.469"),
        last("0.15"),
        reading("16.32"),
    ];
    let done = with(&job, cuts.clone());
    let learned = takes_after(
        &done,
        &plan(&done),
        done.shop.machine.learned.takes.as_ref(),
    )
    .unwrap();
    assert!((learned.cuts.value().to_pieces() - 4.0).abs() < 1e-9);
    let share = learned.share.value().to_whole();
    assert!((0.85..1.0).contains(&share), "{share}");
    let mut next = with(&job, cuts);
    next.shop.machine.learned.takes = Some(learned.clone());
    let advice = advise(&next, &plan(&next));
    assert_eq!(advice.takes.from, TakesFrom::Learned);
    let again = takes_after(
        &next,
        &plan(&next),
        next.shop.machine.learned.takes.as_ref(),
    )
    .unwrap();
    assert!((again.cuts.value().to_pieces() - 8.0).abs() < 1e-9);
    // One job that agrees moves it little.
    assert!((again.share.value().to_whole() - share).abs() < 0.02);
    assert!(takes_after(&job, &plan(&job), job.shop.machine.learned.takes.as_ref()).is_none());
    let mut wild = next.clone();
    let takes = wild.shop.machine.learned.takes.as_mut().unwrap();
    takes.share = Entered::read("-900", Unit::Percent).unwrap();
    takes.offset = length("400");
    takes.offset_deviation = length("-3");
    assert_sound(&wild, &plan(&wild));
    let kept = takes_after(
        &wild,
        &plan(&wild),
        wild.shop.machine.learned.takes.as_ref(),
    )
    .unwrap();
    assert!((0.3..=1.1).contains(&kept.share.value().to_whole()));
    assert!(kept.offset.value().to_mm().abs() <= 0.05);
}

/// That nothing in advice is anything but a number, and that a cut keeps its promises.
fn assert_sound(job: &Job, plan: &Plan) {
    let advice = advise(job, plan);
    let takes = &advice.takes;
    for number in [
        takes.share.to_whole(),
        takes.share_deviation.to_whole(),
        takes.offset.to_mm(),
        takes.offset_deviation.to_mm(),
        takes.covariance.to_mm(),
        takes.scatter.to_mm(),
        takes.left.to_mm(),
    ] {
        assert!(number.is_finite());
    }
    if let Next::Cut(cut) = &advice.next {
        let whole = cut.graduation.to_mm() * f64::from(cut.divisions);
        assert!((cut.dialled.to_mm() - whole).abs() < 1e-9);
        assert!(cut.odds_under.to_whole() <= ODDS_UNDER);
        assert!(cut.off_diameter.is_finite() && cut.diameter_after.value.is_finite());
        let range = cut.diameter_after.range.unwrap();
        assert!(range.low <= cut.diameter_after.value && cut.diameter_after.value <= range.high);
        assert_eq!(cut.spring, cut.divisions == 0);
        assert!(cut.cuts_left >= 1);
    }
    if let Some(size) = &advice.size {
        assert!(size.uncertainty.to_mm() > 0.0);
        assert!(size.smallest <= size.largest);
    }
    for doubt in &advice.doubts {
        assert!(doubt.meant.is_none_or(Length::is_finite));
    }
}

fn any_number() -> impl Strategy<Value = String> {
    prop_oneof![
        6 => (1500_u32..2100).prop_map(|it| format!("{}", f64::from(it) / 100.0)),
        1 => (1500_u32..2100).prop_map(|it| format!("{} in", f64::from(it) / 100.0)),
        1 => Just("0".to_owned()),
        1 => Just("999999999999999".to_owned()),
        1 => Just("0.000000001".to_owned()),
        1 => (0_u32..1000).prop_map(|it| format!("{it}")),
    ]
}

fn any_what() -> impl Strategy<Value = What> {
    let kinds = prop_oneof![
        Just(CutMadeKind::Rough),
        Just(CutMadeKind::Last),
        Just(CutMadeKind::Spring),
        Just(CutMadeKind::Polish),
    ];
    let infeed = prop_oneof![
        6 => (0_u32..80).prop_map(|it| format!("{}", f64::from(it) / 100.0)),
        1 => Just("3 - 5".to_owned()),
        1 => any_number(),
    ];
    let reads = prop_oneof![Just(DialReads::Diameter), Just(DialReads::Radius)];
    let places = prop_oneof![
        Just(WorkPlace::Middle),
        Just(WorkPlace::FreeEnd),
        any_number().prop_map(|at| WorkPlace::At(length(&at))),
    ];
    let changes = prop_oneof![
        Just(Change::NewEdge),
        Just(Change::HeldAgain),
        Just(Change::DialSet),
        Just(Change::OtherFeed),
    ];
    prop_oneof![
        4 => (any_number(), places).prop_map(|(text, place)| reading_at(&text, place)),
        2 => any_number().prop_map(|text| confirmed(&text)),
        4 => (kinds, infeed, reads).prop_map(|(kind, text, reads)| cut_as(kind, &text, reads)),
        1 => changes.prop_map(change),
        1 => Just(What::Note("a note".to_owned())),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Whatever was entered, advice comes, and what it says can be done.
    #[test]
    fn any_record_gives_sound_advice(
        whats in proptest::collection::vec(any_what(), 0..40), struck in any::<u64>(), grind in any::<bool>(),
    ) {
        let mut job = with(&without_polishing(), whats);
        if grind {
            job.shop.tool = ToolKind::Grinding;
            job.shop.machine.graduation = None;
        }
        for (index, event) in job.record.events.iter_mut().enumerate() {
            event.struck = struck >> (index % 64) & 1 == 1;
        }
        assert_sound(&job, &plan(&without_polishing()));
    }

    /// A good record in inches says what the same in millimetres says, and moments and struck events change nothing.
    #[test]
    fn units_and_clocks_change_nothing(
        first in 640_u32..660, off in 5_u32..12, infeed in 6_u32..13, seconds in any::<u64>(),
    ) {
        let job = without_polishing();
        let thou = |it: u32| format!("{} in", f64::from(it) / 1000.0);
        let in_mm = |it: u32| format!("{:.4}", f64::from(it) / 1000.0 * 25.4);
        let record = |say: &dyn Fn(u32) -> String| {
            [reading(&say(first)), last(&say(infeed)), confirmed(&say(first - off))]
        };
        let metric = with(&job, record(&in_mm));
        let plan = plan(&job);
        let mut inch = with(&job, record(&thou));
        let one = advise(&metric, &plan);
        for event in &mut inch.record.events {
            event.at = skimwright::job::Moment::unix_seconds(seconds);
        }
        let mut odd = record::event(reading("3"));
        odd.struck = true;
        inch.record.events.insert(1, odd);
        let other = advise(&inch, &plan);
        prop_assert!((one.takes.share.to_whole() - other.takes.share.to_whole()).abs() < 1e-9);
        match (&one.next, &other.next) {
            (Next::Cut(one), Next::Cut(other)) => prop_assert_eq!(one.divisions, other.divisions),
            (one, other) => prop_assert_eq!(std::mem::discriminant(one), std::mem::discriminant(other)),
        }
    }
}

#[test]
fn the_longest_record_is_gone_through() {
    let job = without_polishing();
    let plan = plan(&job);
    let cuts = (0..Record::MOST_EVENTS / 2).flat_map(|_| [last("0.2"), confirmed("16.8")]);
    assert_sound(&with(&job, cuts), &plan);
    let doubts = (0..Record::MOST_EVENTS).map(|_| reading("0.66"));
    assert_sound(&with(&job, doubts), &plan);
}

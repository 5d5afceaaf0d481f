//! What becomes of a job when a receiver is chosen, its limits are taken, a standard shank or the most is taken, and a
//! measured taper is said to be a standard one.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::collections::BTreeSet;
use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::{
    Field, Job, Receiver, ReceiverField, ReceiverKind, SectionField, Tolerance, Turned, TurnedKind,
};
use skimwright::part::{TaperReading, recognise};
use skimwright::plan::{Code, Level};
use skimwright::quantity::{Length, Units};
use skimwright::receiver::becomes;
use skimwright::rework::{Take, offer};
use skimwright::tables::{
    ColletSize, HoleClass, SeatLoad, ShaftClass, ShankSize, SleeveDuty, WorkMaterial,
};

use super::edit::{Edit, Kind, List, WantedEdit, stands};
use super::options::{Filter, RECEIVERS, Standard, groups};
use super::state::{Action, Panel, Shown, State};
use super::words::Words;

fn fresh() -> State {
    State::open(None, "", None)
}

fn edited(state: &State, edit: WantedEdit) -> State {
    state.clone().after(Action::Edit(Edit::Wanted(edit)))
}

fn typed(state: State, field: Field, text: &str) -> State {
    state
        .after(Action::Type(field, text.to_owned()))
        .after(Action::Leave(field))
}

fn text(state: &State, field: Field) -> String {
    state.reading(field).text
}

fn says(state: &State) -> Vec<String> {
    let words = Words::new(state.units, &state.job);
    let asks = words.asks(&state.job, &state.plan);
    asks.into_iter()
        .map(|ask| format!("{}: {}", ask.name, ask.says))
        .collect()
}

const fn of_receiver(name: ReceiverField) -> Field {
    Field::Receiver(name)
}

#[test]
fn every_receiver_can_be_chosen_and_undone_and_fits_the_job() {
    let examples = demo_jobs().into_iter().chain([Job::default()]);
    for job in examples {
        for units in Units::ALL {
            let start = fresh()
                .after(Action::TakeExample(Rc::new(job.clone())))
                .after(Action::ShowUnits(units));
            for kind in ReceiverKind::ALL {
                let chosen = edited(&start, WantedEdit::Kind(*kind));
                assert_eq!(chosen.job.wanted.receiver.kind(), *kind);
                for found in &chosen.plan.findings {
                    assert!(found.code != Code::OutOfBounds, "{kind:?}: {found:?}");
                    let others = matches!(found.code, Code::ReceiverTakesOthers { .. });
                    let any = matches!(
                        kind,
                        ReceiverKind::Own | ReceiverKind::PlainBore | ReceiverKind::Sleeve
                    );
                    assert!(!(others && any), "{kind:?}: {found:?}");
                }
                if chosen.job != start.job {
                    assert_eq!(chosen.after(Action::Undo).job, start.job);
                }
            }
        }
    }
}

#[test]
fn a_receiver_keeps_its_edge_and_forgets_the_depth_of_the_one_before() {
    let edge = of_receiver(ReceiverField::Edge);
    let state = typed(fresh(), edge, "0.5");
    let state = typed(state, Field::ReceiverDepth, "30");
    let state = typed(state, Field::LeastGrip, "25 furlongs");
    let bore = edited(&state, WantedEdit::Kind(ReceiverKind::PlainBore));
    assert_eq!(text(&bore, edge), "0.5");
    assert_eq!(text(&bore, Field::ReceiverDepth), "");
    assert_eq!(
        text(&bore, Field::LeastGrip),
        "",
        "nor what was not understood"
    );
    let collet = edited(&bore, WantedEdit::Kind(ReceiverKind::Collet));
    assert!(!stands(&collet.job, edge) && stands(&bore.job, edge));
    assert!(stands(&collet.job, of_receiver(ReceiverField::Collet)));
    assert!(!stands(&collet.job, of_receiver(ReceiverField::Hole)));
}

#[test]
fn each_choice_changes_its_own_receiver_and_no_other() {
    let size = ColletSize::from_code("collet-40").unwrap();
    let shank = ShankSize::from_code("inclined-16").unwrap();
    let choices = [
        (ReceiverKind::Collet, WantedEdit::Collet(size)),
        (ReceiverKind::SideLock, WantedEdit::Shank(shank)),
        (ReceiverKind::PlainBore, WantedEdit::Hole(HoleClass::H8)),
        (ReceiverKind::Bearing, WantedEdit::Load(SeatLoad::AxialOnly)),
        (
            ReceiverKind::Sleeve,
            WantedEdit::SleeveDuty(SleeveDuty::FullTorque),
        ),
        (
            ReceiverKind::Sleeve,
            WantedEdit::SleeveMaterial(WorkMaterial::Bronze),
        ),
    ];
    for (kind, choice) in &choices {
        for (other, _) in &choices {
            let before = edited(&fresh(), WantedEdit::Kind(*other));
            let after = edited(&before, choice.clone());
            assert_eq!(after.job != before.job, kind == other, "{choice:?}");
            assert_eq!(after.job.wanted.receiver.kind(), *other);
        }
    }
}

#[test]
fn what_a_receiver_asks_is_said_with_what_the_shank_has() {
    let bearing = edited(&fresh(), WantedEdit::Kind(ReceiverKind::Bearing));
    let asked = says(&bearing);
    // 16 mm under normal load: j5, +5 and −3 µm, against h6, 0 and −11 µm.
    let limits = "Limits of the diameter: 15.997\u{a0}mm to 16.005\u{a0}mm, j5; yours reach 0.008\u{a0}mm below";
    assert!(asked.iter().any(|it| it == limits), "{asked:#?}");
    assert!(
        asked.iter().any(|it| it.contains("Ra 0.4\u{a0}µm")),
        "{asked:#?}"
    );
    let taken = edited(&bearing, WantedEdit::TakeLimits);
    assert_eq!(taken.job.wanted.tolerance, Tolerance::Class(ShaftClass::J5));
    assert!(
        says(&taken)
            .iter()
            .any(|it| it.ends_with("yours lie within"))
    );
    assert_eq!(taken.after(Action::Undo).job, bearing.job);

    let bore = says(&edited(&fresh(), WantedEdit::Kind(ReceiverKind::PlainBore)));
    // 16 H7: 0 to +18 µm.
    let hole = "Its hole: 16.000\u{a0}mm to 16.018\u{a0}mm".to_owned();
    assert!(bore.contains(&hole), "{bore:#?}");
    let sleeve = says(&edited(&fresh(), WantedEdit::Kind(ReceiverKind::Sleeve)));
    let bored = sleeve
        .iter()
        .any(|it| it.starts_with("Bore the sleeve to: 16"));
    assert!(bored, "{sleeve:#?}");

    let holder = edited(&fresh(), WantedEdit::Kind(ReceiverKind::SideLock));
    let shank = ShankSize::from_code("inch-flat-5/8").unwrap();
    let inch = edited(&holder, WantedEdit::Shank(shank));
    let diameter = typed(inch, Field::WantedDiameter, "15.9x");
    let taken = edited(&diameter, WantedEdit::TakeLimits);
    // In the unit of its standard, and what was not understood does not hide it.
    assert_eq!(text(&taken, Field::WantedDiameter), "15.875");
    assert_eq!(taken.job.wanted.diameter.entry().to_string(), "0.625 in");
    assert!(matches!(
        taken.job.wanted.tolerance,
        Tolerance::Limits { .. }
    ));
    let stops = |state: &State| {
        let stops = state.plan.findings.iter();
        stops.filter(|it| it.level == Level::Stop).count()
    };
    assert_eq!(stops(&taken), 0, "{:?}", taken.plan.findings);
}

#[test]
fn every_figure_of_a_sleeve_and_of_strength_can_be_named() {
    let state = edited(&fresh(), WantedEdit::Kind(ReceiverKind::Sleeve));
    let words = Words::new(state.units, &state.job);
    let figures = [
        Shown::SleevePressure,
        Shown::SleeveHolds,
        Shown::WarmerBy,
        Shown::MassAfter,
        Shown::BalanceAfter,
    ];
    let mut names: Vec<String> = figures.map(|shown| words.figure_name(shown)).to_vec();
    names.sort();
    names.dedup();
    assert_eq!(names.len(), figures.len());
}

#[test]
fn what_is_taken_of_the_list_is_wanted_in_one_step_and_still_in_the_list() {
    for job in demo_jobs().into_iter().chain([Job::default()]) {
        let start = fresh().after(Action::TakeExample(Rc::new(job)));
        let found = becomes(&start.job);
        for one in found.iter().step_by(7) {
            let wanted = Rc::new(one.wanted.clone());
            let taken = edited(&start, WantedEdit::Become(wanted));
            assert_eq!(taken.job.wanted, one.wanted);
            assert_eq!(taken.job.part, start.job.part);
            if taken.job != start.job {
                assert_eq!(taken.clone().after(Action::Undo).job, start.job);
            }
            // The list of the changed job offers the same again, which is how it is known as taken.
            let again = becomes(&taken.job);
            assert!(again.iter().any(|it| it.wanted == one.wanted), "{one:?}");
        }
    }
}

/// A shank of 10 mm with a flat is another in each of two standards.
#[test]
fn standard_shanks_of_the_list_can_be_told_apart() {
    let found = becomes(&Job::default());
    let all = groups(&found, Filter::default());
    let words = Words::new(Units::Metric, &Job::default());
    let names = all.iter().map(|group| {
        let shank = group.shank.get().unwrap();
        words.shank_in_full(shank, group.told_apart(&all))
    });
    let names: BTreeSet<String> = names.collect();
    assert_eq!(names.len(), all.len(), "{names:#?}");
    for standard in ["ISO 3338-2", "DIN 6535 HB"] {
        let name = format!("⌀10 × 40 mm, flat, {standard}");
        assert!(names.contains(&name), "{names:#?}");
    }
    assert!(names.contains("⌀10 × 40 mm, plain"));
}

#[test]
fn the_list_is_grouped_by_shank_and_filtered() {
    let found = becomes(&Job::default());
    let all = groups(&found, Filter::default());
    assert!(all.len() > 20, "{}", all.len());
    let count: usize = all.iter().map(|group| group.all.len()).sum();
    assert_eq!(count, found.len());
    for group in &all {
        assert!(group.all.iter().all(|one| one.shank == group.shank));
        assert_eq!(*group.best, **group.all.first().unwrap());
    }
    for receiver in RECEIVERS {
        let filter = Filter {
            receiver: Some(receiver),
            ..Filter::default()
        };
        let some = groups(&found, filter);
        assert!(!some.is_empty() && some.len() < all.len());
        let kinds = some.iter().flat_map(|group| &group.all);
        assert!(
            kinds
                .clone()
                .all(|one| one.wanted.receiver.kind() == receiver)
        );
    }
    let of = |standard| {
        let filter = Filter {
            standard,
            ..Filter::default()
        };
        groups(&found, filter).len()
    };
    assert_eq!(of(Standard::Metric) + of(Standard::Inch), of(Standard::Any));
    // 3/4, 5/8, 1/2 and 3/8 in, each in full length.
    assert_eq!(of(Standard::Inch), 4);
    let full = Filter {
        full_length: true,
        ..Filter::default()
    };
    assert!(
        groups(&found, full)
            .iter()
            .all(|group| group.best.full_length)
    );
    // The choice of filters is the page's, not the job's.
    let state = fresh().after(Action::Filter(full));
    assert_eq!((state.filter, state.can_undo()), (full, false));
}

#[test]
fn the_most_is_taken_whole_or_in_part_in_one_step() {
    let state = typed(fresh(), Field::WantedLength, "not a length");
    let found = state.plan.clean_up.clone().unwrap();
    let most = offer(&state.job, &found, Length::mm(60.0), Units::Metric).unwrap();
    let take = |take| edited(&state, WantedEdit::Most(most.clone(), take));
    let both = take(Take::Both);
    let fields = [Field::WantedDiameter, Field::WantedLength];
    assert_eq!(fields.map(|field| text(&both, field)), ["19.98", "60"]);
    assert_eq!(both.after(Action::Undo).job, state.job);
    let thin = take(Take::Diameter);
    assert_eq!(thin.job.wanted.length, state.job.wanted.length);
    // What was typed there is not touched.
    assert_eq!(text(&thin, Field::WantedLength), "not a length");
    let long = take(Take::Length);
    assert_eq!(fields.map(|field| text(&long, field)), ["16", "60"]);
}

#[test]
fn a_taper_that_is_recognised_stays_where_it_is() {
    let kind = Edit::Kind(0, Kind::Section(TurnedKind::Taper));
    let mut state = fresh().after(Action::Edit(kind));
    for (name, value) in [
        (SectionField::ShoulderDiameter, "23.72"),
        (SectionField::EndDiameter, "19.96"),
        (SectionField::Length, "75"),
    ] {
        state = typed(state, Field::Section(0, name), value);
    }
    let before = state.plan.shape.received.as_ref().unwrap().sections[0];
    let found = recognise(&TaperReading::of_section(&state.job, 0).unwrap());
    let edit = Edit::Recognised(0, found.candidates[0]);
    let told = state.clone().after(Action::Edit(edit));
    let Turned::StandardTaper { taper, .. } = &told.job.part.sections[0].turned else {
        panic!("{:?}", told.job.part.sections);
    };
    assert_eq!(taper.code(), "morse-3");
    let after = told.plan.shape.received.as_ref().unwrap().sections[0];
    for (was, is) in [
        (before.from, after.from),
        (before.to, after.to),
        (before.from_diameter, after.from_diameter),
        (before.to_diameter, after.to_diameter),
    ] {
        assert!((was - is).abs().to_mm() < 0.01, "{before:?} {after:?}");
    }
    assert_eq!(told.after(Action::Undo).job, state.job);
    // Another row has no such taper.
    let edit = Edit::Recognised(0, found.candidates[0]);
    let plain = fresh().after(Action::Edit(edit));
    assert_eq!(plain.job, fresh().job);
}

#[test]
fn what_a_taper_may_be_follows_its_row() {
    let add = || Action::Edit(Edit::Add(Kind::Section(TurnedKind::Taper)));
    let state = fresh().after(add()).after(add());
    let state = state.after(Action::Open(Panel::Recognise(2), true));
    let moved = state.after(Action::Edit(Edit::MoveBack(List::Sections, 2)));
    let is_open = |index| moved.panels.is_open(Panel::Recognise(index), &moved.job);
    assert!(is_open(1) && !is_open(2));
}

#[test]
fn choices_of_a_receiver_are_told_from_its_numbers() {
    for kind in ReceiverKind::ALL {
        let state = edited(&fresh(), WantedEdit::Kind(*kind));
        let receiver: &Receiver = &state.job.wanted.receiver;
        for name in [ReceiverField::RingChamfer, ReceiverField::Outside] {
            assert_eq!(stands(&state.job, of_receiver(name)), receiver.has(name));
        }
        assert!(stands(&state.job, of_receiver(ReceiverField::Kind)));
    }
}

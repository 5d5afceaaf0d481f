//! What becomes of a part when rows are added, moved, copied, changed and taken out.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::job::{
    BoreEnd, Cut, CutKind, Datum, FeatureField, Field, Flats, Hole, HoleKind, Job, SectionField,
    TurnedKind,
};
use skimwright::plan::{Level, plan};
use skimwright::quantity::{Length, Units};
use skimwright::tables::{TaperSize, ThreadSize};

use super::edit::{Edit, Kind, List};
use super::state::{Action, Panel, Spot, State};

pub(super) fn fresh() -> State {
    State::open(None, "", None)
}

pub(super) fn after(state: &State, edits: impl IntoIterator<Item = Edit>) -> State {
    let actions = edits.into_iter().map(Action::Edit);
    actions.fold(state.clone(), State::after)
}

pub(super) fn typed(state: State, field: Field, text: &str) -> State {
    state
        .after(Action::Type(field, text.to_owned()))
        .after(Action::Leave(field))
}

pub(super) fn text(state: &State, field: Field) -> String {
    state.reading(field).text
}

pub(super) const fn section(index: u8, name: SectionField) -> Field {
    Field::Section(index, name)
}

const fn feature(index: u8, name: FeatureField) -> Field {
    Field::Feature(index, name)
}

/// Where each section begins, in the order of the list.
pub(super) fn begins(state: &State) -> Vec<f64> {
    let received = state.plan.shape.received.as_ref().unwrap();
    let mut sections = received.sections.clone();
    sections.sort_by_key(|it| it.index);
    let begins = sections.iter().map(|it| it.from.to_mm());
    begins.map(|at| (at * 1e6).round() / 1e6).collect()
}

/// From where to where a cut reaches.
fn span(state: &State, index: u8) -> (f64, f64) {
    let received = state.plan.shape.received.as_ref().unwrap();
    let found = received.features.iter().find(|it| it.index == index);
    let shape = found.unwrap();
    let round = |at: Length| (at.to_mm() * 1e6).round() / 1e6;
    (round(shape.from), round(shape.to))
}

fn every_kind() -> impl Iterator<Item = Kind> {
    List::ALL.into_iter().flat_map(List::kinds)
}

/// A shank of 20, 30 and 40 mm length, 20, 18 and 16 mm thick.
pub(super) fn three_steps() -> State {
    let cylinder = || Edit::Add(Kind::Section(TurnedKind::Cylinder));
    let mut state = after(&fresh(), [cylinder(), cylinder()]);
    for (index, (diameter, length)) in [("20", "20"), ("18", "30"), ("16", "40")]
        .into_iter()
        .enumerate()
    {
        let index = u8::try_from(index).unwrap();
        state = typed(state, section(index, SectionField::Diameter), diameter);
        state = typed(state, section(index, SectionField::Length), length);
    }
    state
}

#[test]
fn every_kind_can_be_added_and_taken_out_and_comes_back_with_undo() {
    for units in Units::ALL {
        let start = fresh().after(Action::ShowUnits(units));
        for kind in every_kind() {
            let list = kind.list();
            let before = list.len(&start.job.part);
            let added = after(&start, [Edit::Add(kind)]);
            assert_eq!(list.len(&added.job.part), before + 1, "{kind:?}");
            let index = u8::try_from(before).unwrap();
            let gone = after(&added, [Edit::Remove(list, index)]);
            assert_eq!(gone.job, start.job, "{kind:?}");
            let back = gone.after(Action::Undo);
            assert_eq!(back.job, added.job, "{kind:?}");
            assert_eq!(back.after(Action::Undo).job, start.job, "{kind:?}");
        }
    }
}

#[test]
fn a_new_row_suits_the_part_it_is_added_to() {
    for units in Units::ALL {
        for diameter in ["3", "7.3", "1 in", "160"] {
            let mut start = fresh().after(Action::ShowUnits(units));
            let with_unit = if diameter.contains("in") {
                diameter.to_owned()
            } else {
                format!("{diameter} mm")
            };
            start = typed(start, section(0, SectionField::Diameter), &with_unit);
            start = typed(start, Field::HeadDiameter, "400 mm");
            start = typed(start, Field::WantedDiameter, "2 mm");
            start = typed(start, Field::WantedLength, "2 mm");
            for kind in every_kind() {
                let added = after(&start, [Edit::Add(kind)]);
                let list = kind.list();
                let wrong = added.plan.findings.iter().find(|it| {
                    Level::Stop == it.level && List::of(it.field).is_some_and(|(of, _)| of == list)
                });
                // The smallest tapped hole is M3, and a taper of the table is as thick as it is.
                let no_room = diameter == "3" && matches!(kind, Kind::Bore(_) | Kind::Section(_));
                assert!(
                    no_room || wrong.is_none(),
                    "{units:?} {diameter} {kind:?}: {wrong:?}"
                );
            }
        }
    }
}

#[test]
fn new_figures_are_round_in_the_units_in_use() {
    let keyway = Edit::Add(Kind::Feature(CutKind::Keyway));
    let metric = after(&fresh(), [keyway.clone()]);
    // For 20 mm: a quarter wide, half of that deep, as long as the shaft is thick, half of that from the end.
    let names = [
        FeatureField::Width,
        FeatureField::Depth,
        FeatureField::Length,
        FeatureField::Start,
    ];
    let texts = |state: &State| names.map(|name| text(state, feature(0, name)));
    assert_eq!(texts(&metric), ["5", "2.5", "20", "10"]);
    let inch = fresh().after(Action::ShowUnits(Units::InchFraction));
    let inch = after(&inch, [keyway]);
    // 20 mm are 0.787 in.
    assert_eq!(texts(&inch), ["3/16", "3/32", "13/16", "3/8"]);
}

#[test]
fn a_full_list_takes_no_more() {
    for kind in every_kind() {
        let list = kind.list();
        let many = core::iter::repeat_n(Edit::Add(kind), 20);
        let full = after(&fresh(), many);
        assert_eq!(list.len(&full.job.part), list.most(), "{kind:?}");
        let copied = after(&full, [Edit::Copy(list, 0)]);
        assert_eq!(copied.job, full.job, "{kind:?}");
    }
}

#[test]
fn what_is_not_there_is_left_alone() {
    let start = fresh();
    for list in List::ALL {
        for index in [7, u8::MAX] {
            let edits = [
                Edit::Remove(list, index),
                Edit::MoveOn(list, index),
                Edit::MoveBack(list, index),
                Edit::Copy(list, index),
            ];
            assert_eq!(after(&start, edits).job, start.job);
        }
    }
    let edits = [
        Edit::MoveBack(List::Sections, 0),
        Edit::MoveOn(List::Sections, 0),
        Edit::Kind(3, Kind::Section(TurnedKind::Groove)),
        Edit::Kind(0, Kind::Head),
        Edit::SectionFrom(4, None),
        Edit::FeatureFrom(0, Datum::FreeEnd),
        Edit::Flats(0, Flats::Two),
        Edit::End(0, BoreEnd::HeadEnd),
        Edit::OuterThread(0, ThreadSize::from_code("M10").unwrap()),
        Edit::Taper(0, TaperSize::from_code("morse-2").unwrap()),
    ];
    let state = after(&start, edits);
    assert_eq!(state.job, start.job);
    assert!(!state.can_undo());
}

#[test]
fn sections_that_swap_still_follow_one_another() {
    let plain = three_steps();
    assert_eq!(begins(&plain), [0.0, 20.0, 50.0]);
    let swapped = after(&plain, [Edit::MoveOn(List::Sections, 0)]);
    assert_eq!(begins(&swapped), [0.0, 30.0, 50.0]);
    let back = after(&swapped, [Edit::MoveBack(List::Sections, 1)]);
    assert_eq!(back.job, plain.job);
    // The same where both have places of their own, told from either end.
    for datum in Datum::ALL {
        let placed = typed(plain.clone(), Field::ShankLength, "90");
        let told = [0, 1, 2].map(|index| Edit::SectionFrom(index, Some(datum)));
        let placed = after(&placed, told);
        assert_eq!(begins(&placed), [0.0, 20.0, 50.0]);
        let swapped = after(&placed, [Edit::MoveOn(List::Sections, 1)]);
        assert_eq!(begins(&swapped), [0.0, 20.0, 60.0]);
        assert_eq!(swapped.plan.findings, plan(&swapped.job).findings);
        assert!(swapped.plan.shape.received.is_some());
    }
}

#[test]
fn a_section_told_from_elsewhere_stays_where_it_is() {
    let state = typed(three_steps(), Field::ShankLength, "90");
    let shoulder = after(&state, [Edit::SectionFrom(1, Some(Datum::Shoulder))]);
    assert_eq!(text(&shoulder, section(1, SectionField::Start)), "20");
    let end = after(&shoulder, [Edit::SectionFrom(1, Some(Datum::FreeEnd))]);
    assert_eq!(text(&end, section(1, SectionField::Start)), "40");
    assert_eq!(begins(&end), begins(&state));
    let behind = after(&end, [Edit::SectionFrom(1, None)]);
    assert_eq!(behind.job, state.job);
    // Typed in thirds of an inch it is as exact.
    let odd = typed(state, section(0, SectionField::Length), "1/3 in");
    let told = after(&odd, [Edit::SectionFrom(1, Some(Datum::Shoulder))]);
    assert_eq!(begins(&told), begins(&odd));
    let found = |state: &State| {
        let findings = state.plan.findings.iter();
        findings.map(|it| it.field).collect::<Vec<_>>()
    };
    assert_eq!(found(&told), found(&odd), "neither gap nor overlap");
}

#[test]
fn while_nothing_can_be_drawn_a_place_can_still_be_chosen() {
    let broken = typed(three_steps(), section(0, SectionField::Length), "-5");
    assert!(broken.plan.shape.received.is_none());
    let told = after(&broken, [Edit::SectionFrom(2, Some(Datum::FreeEnd))]);
    assert_eq!(text(&told, section(2, SectionField::Start)), "0");
}

#[test]
fn a_cut_told_from_the_other_end_stays_where_it_is() {
    for kind in [
        CutKind::Flat,
        CutKind::Keyway,
        CutKind::WoodruffKeyway,
        CutKind::CrossHole,
    ] {
        let state = after(&fresh(), [Edit::Add(Kind::Feature(kind))]);
        let told = after(&state, [Edit::FeatureFrom(0, Datum::Shoulder)]);
        assert_ne!(told.job, state.job);
        assert_eq!(span(&told, 0), span(&state, 0), "{kind:?}");
        let back = after(&told, [Edit::FeatureFrom(0, Datum::FreeEnd)]);
        assert_eq!(span(&back, 0), span(&state, 0), "{kind:?}");
        let undone = back.after(Action::Undo).after(Action::Undo);
        assert_eq!(undone.job, state.job);
    }
}

#[test]
fn a_change_of_kind_keeps_what_means_the_same() {
    let kind = |kind| Edit::Kind(1, Kind::Section(kind));
    let state = three_steps();
    let taper = after(&state, [kind(TurnedKind::Taper)]);
    let ends = [SectionField::ShoulderDiameter, SectionField::EndDiameter];
    assert_eq!(
        ends.map(|name| text(&taper, section(1, name))),
        ["18", "18"]
    );
    assert_eq!(text(&taper, section(1, SectionField::Length)), "30");
    // 18 to 15 over 30 mm is 1 in 10.
    let taper = typed(taper, section(1, SectionField::EndDiameter), "15");
    let ratio = after(&taper, [kind(TurnedKind::RatioTaper)]);
    assert_eq!(text(&ratio, section(1, SectionField::Ratio)), "10");
    let angle = after(&taper, [kind(TurnedKind::AngleTaper)]);
    // 2 · atan(1.5/30).
    assert_eq!(text(&angle, section(1, SectionField::Angle)), "5.725");
    let back = after(&ratio, [kind(TurnedKind::Taper)]);
    assert_eq!(ends.map(|name| text(&back, section(1, name))), ["18", "15"]);
    // A taper of the table brings its own length; from there its own diameters go on.
    let table = after(&state, [kind(TurnedKind::StandardTaper)]);
    assert_eq!(text(&table, section(1, SectionField::Length)), "");
    let plain = after(&table, [kind(TurnedKind::Taper)]);
    assert_eq!(
        text(&plain, section(1, SectionField::ShoulderDiameter)),
        "17.78"
    );
    for changed in [&taper, &ratio, &angle, &back, &table, &plain] {
        assert_eq!(begins(changed), [0.0, 20.0, begins(changed)[2]]);
    }

    let bore = |kind| Edit::Kind(0, Kind::Bore(kind));
    let holes = after(&fresh(), [Edit::Add(Kind::Bore(HoleKind::Drilled))]);
    let holes = after(&holes, [Edit::End(0, BoreEnd::HeadEnd)]);
    let holes = typed(
        holes,
        Field::Bore(0, skimwright::job::BoreField::Depth),
        "33",
    );
    let tapped = after(&holes, [bore(HoleKind::Tapped)]);
    let drilled = Field::Bore(0, skimwright::job::BoreField::DrillDepth);
    assert_eq!(text(&tapped, drilled), "33");
    assert_eq!(tapped.job.part.bores[0].end, BoreEnd::HeadEnd);
    assert_eq!(
        after(&tapped, [bore(HoleKind::Reamed)])
            .reading(drilled)
            .text,
        "33"
    );
}

#[test]
fn a_change_of_kind_leaves_a_cut_where_it_is() {
    let middle = |state: &State| {
        let (from, to) = span(state, 0);
        f64::midpoint(from, to)
    };
    let keyway = after(&fresh(), [Edit::Add(Kind::Feature(CutKind::Keyway))]);
    let kind = |kind| Edit::Kind(0, Kind::Feature(kind));
    let hole = after(&keyway, [kind(CutKind::CrossHole)]);
    assert!((middle(&hole) - middle(&keyway)).abs() < 1e-6);
    let flat = after(&hole, [kind(CutKind::Flat)]);
    assert!((middle(&flat) - middle(&keyway)).abs() < 1e-6);
    let tang = after(&flat, [kind(CutKind::Tang)]);
    assert_eq!(tang.job.part.features[0].place, None);
    let flat = after(&tang, [kind(CutKind::Flat)]);
    assert!(flat.job.part.features[0].place.is_some());
}

#[test]
fn a_copy_stands_where_it_can_be_seen() {
    let sections = after(&three_steps(), [Edit::Copy(List::Sections, 0)]);
    assert_eq!(begins(&sections), [0.0, 20.0, 40.0, 70.0]);
    let placed = after(
        &three_steps(),
        [Edit::SectionFrom(1, Some(Datum::Shoulder))],
    );
    let placed = after(&placed, [Edit::Copy(List::Sections, 1)]);
    assert!((begins(&placed)[2] - 50.0).abs() < 1e-9);

    let flat = after(&fresh(), [Edit::Add(Kind::Feature(CutKind::Flat))]);
    let flats = after(&flat, [Edit::Copy(List::Features, 0)]);
    // 20 mm long, 10 from the end of 80; the copy further in.
    assert_eq!(
        (span(&flats, 0), span(&flats, 1)),
        ((50.0, 70.0), (30.0, 50.0))
    );

    let centre = after(&fresh(), [Edit::Add(Kind::Bore(HoleKind::CentreHole))]);
    let centres = after(&centre, [Edit::Copy(List::Bores, 0)]);
    let ends = centres.job.part.bores.iter().map(|it| it.end);
    assert!(ends.eq([BoreEnd::FreeEnd, BoreEnd::HeadEnd]));
    assert_eq!(centres.after(Action::Undo).job, centre.job);

    for kind in [Kind::Feature(CutKind::Tang), Kind::Bore(HoleKind::Through)] {
        let one = after(&fresh(), [Edit::Add(kind)]);
        assert_eq!(after(&one, [Edit::Copy(kind.list(), 0)]).job, one.job);
    }
    let head = after(&fresh(), [Edit::Add(Kind::Head), Edit::Copy(List::Head, 0)]);
    assert_eq!(head.job.part.head_beyond.len(), 2);
}

#[test]
fn choices_within_a_row_are_kept() {
    let thread = ThreadSize::from_code("M12").unwrap();
    let state = after(
        &fresh(),
        [
            Edit::Add(Kind::Section(TurnedKind::Thread)),
            Edit::OuterThread(1, thread),
            Edit::Add(Kind::Feature(CutKind::Flat)),
            Edit::Flats(0, Flats::Two),
            Edit::Add(Kind::Bore(HoleKind::Tapped)),
            Edit::Thread(0, thread),
        ],
    );
    let part = &state.job.part;
    assert!(matches!(
        part.features[0].cut,
        Cut::Flat {
            flats: Flats::Two,
            ..
        }
    ));
    assert!(matches!(part.bores[0].hole, Hole::Tapped { thread: it, .. } if it == thread));
    let received = state.plan.shape.received.as_ref().unwrap();
    assert_eq!(received.sections[1].from_diameter, Length::mm(12.0));
}

#[test]
fn a_long_list_is_closed_but_for_what_was_opened() {
    let open = |state: &State, index| {
        let row = Panel::Row(List::Sections, index);
        state.panels.is_open(row, &state.job)
    };
    let two = after(&fresh(), [Edit::Add(Kind::Section(TurnedKind::Groove))]);
    assert!(open(&two, 0) && open(&two, 1));
    let four = after(
        &two,
        [TurnedKind::Relief, TurnedKind::Thread].map(|kind| Edit::Add(Kind::Section(kind))),
    );
    let all = |state: &State| [0, 1, 2, 3].map(|index| open(state, index));
    // What was just added is open.
    assert_eq!(all(&four), [false, true, true, true]);
    let closed = four.after(Action::Open(Panel::Row(List::Sections, 1), false));
    assert_eq!(all(&closed), [false, false, true, true]);
    // It goes where its row goes.
    let moved = after(&closed, [Edit::MoveBack(List::Sections, 2)]);
    assert_eq!(all(&moved), [false, true, false, true]);
    assert_eq!(
        moved.panels.spot.unwrap().0,
        Spot::MovesBack(List::Sections, 1)
    );
    let less = after(&moved, [Edit::Remove(List::Sections, 0)]);
    assert_eq!(all(&less), [true, false, true, false]);
    let spot = Spot::Opens(Panel::Row(List::Sections, 0));
    assert_eq!(less.panels.spot.unwrap().0, spot);
}

#[test]
fn the_way_to_a_field_opens_what_it_stands_in() {
    let state = after(
        &three_steps(),
        [Edit::Add(Kind::Section(TurnedKind::Taper))],
    );
    let is_open = |state: &State, panel| state.panels.is_open(panel, &state.job);
    let ways = [
        (
            section(0, SectionField::Length),
            Panel::Row(List::Sections, 0),
        ),
        (section(3, SectionField::LengthError), Panel::Errors(3)),
        (Field::ShankLength, Panel::MoreOfPart),
        (Field::DutyTorque, Panel::Duty),
    ];
    for (field, panel) in ways {
        assert!(!is_open(&state, panel), "{field}");
        let there = state.clone().after(Action::Pick(Some(field)));
        assert_eq!(there.picked, Some(field));
        assert!(is_open(&there, panel), "{field}");
    }
    // An empty list has no field: there something is added.
    let there = state.after(Action::Pick(Some(Field::Bores)));
    assert_eq!(there.picked, None);
    assert!(is_open(&there, Panel::Add(List::Bores)));
}

#[test]
fn a_panel_does_not_close_under_the_finger() {
    let state = typed(fresh(), Field::ShankLength, "80");
    let open = |state: &State| state.panels.is_open(Panel::MoreOfPart, &state.job);
    assert!(open(&state));
    let emptied = typed(state, Field::ShankLength, "");
    assert_eq!(*emptied.job, Job::default());
    assert!(open(&emptied));
}

#[test]
fn an_open_field_does_not_become_anothers() {
    let state = three_steps().after(Action::Pick(Some(section(2, SectionField::Diameter))));
    let moved = after(&state, [Edit::MoveBack(List::Sections, 2)]);
    assert_eq!(moved.picked, None);
    let changed = after(&state, [Edit::Kind(2, Kind::Section(TurnedKind::Taper))]);
    assert_eq!(changed.picked, None, "a taper has no such field");
    let other = after(&state, [Edit::Add(Kind::Bore(HoleKind::Drilled))]);
    assert_eq!(other.picked, state.picked);
}

//! Which figures and places new rows have, and which stay through a change of kind.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::job::{Field, SectionField, Turned, TurnedKind};
use skimwright::quantity::Length;

use super::edit::{Edit, Kind, List};
use super::edit_tests::{after, begins, fresh, section, text, three_steps, typed};

#[test]
fn a_new_groove_is_cut_into_the_longest_section() {
    for (kind, start, wide) in [
        // A tenth of 16 mm wide, in the middle of the 40 mm from 50 on.
        (TurnedKind::Groove, "69", "1.6"),
        (TurnedKind::Relief, "69", "2.5"),
    ] {
        let grooved = after(&three_steps(), [Edit::Add(Kind::Section(kind))]);
        assert_eq!(text(&grooved, section(3, SectionField::Start)), start);
        assert_eq!(text(&grooved, section(3, SectionField::Length)), wide);
        let received = grooved.plan.shape.received.as_ref().unwrap();
        assert_eq!(received.shank_length, Length::mm(90.0));
        // In the list it can stand anywhere; on the shank it stays.
        let moved = after(&grooved, [Edit::MoveBack(List::Sections, 3)]);
        let there = begins(&grooved);
        assert_eq!(
            begins(&moved),
            [there[0], there[1], there[3], there[2]],
            "{kind:?}"
        );
        let copied = after(&grooved, [Edit::Copy(List::Sections, 3)]);
        assert!(begins(&copied)[4] > there[3]);
        let second = after(&grooved, [Edit::Add(Kind::Section(kind))]);
        assert!(begins(&second)[4] > there[3], "{kind:?} beside the first");
        assert_eq!(
            copied.plan.shape.received.as_ref().unwrap().shank_length,
            Length::mm(90.0)
        );
    }
}

#[test]
fn new_threads_are_of_first_choice() {
    for (diameter, thread) in [("9.2", "M8"), ("15", "M12"), ("2", "M3"), ("100", "M42")] {
        let start = typed(fresh(), section(0, SectionField::Diameter), diameter);
        let added = after(&start, [Edit::Add(Kind::Section(TurnedKind::Thread))]);
        let shown = &added.job.part.sections[1].turned;
        assert!(
            matches!(shown, Turned::Thread { thread: it, .. } if it.code() == thread),
            "{diameter}: {shown:?}"
        );
    }
}

#[test]
fn a_taper_by_ratio_or_angle_that_is_none_keeps_its_typed_diameter() {
    for kind in [TurnedKind::RatioTaper, TurnedKind::AngleTaper] {
        let taper = after(&three_steps(), [Edit::Kind(1, Kind::Section(kind))]);
        let taper = typed(taper, section(1, SectionField::ShoulderDiameter), "17.5");
        let plain = after(&taper, [Edit::Kind(1, Kind::Section(TurnedKind::Cylinder))]);
        assert_eq!(text(&plain, section(1, SectionField::Diameter)), "17.5");
    }
}

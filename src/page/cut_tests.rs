//! Passes that are looked at and pinned, and what is said of the cut.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use skimwright::cutting::{Care, HeldBy, Limit};
use skimwright::job::{DialPlane, DialReads, Field, HoldingField, PinField};
use skimwright::plan::{Code, Finding};
use skimwright::quantity::{Length, Speed, Units};

use super::edit::{Edit, ShopEdit};
use super::state::State;
use super::state::{Action, Spot, Stage};
use super::words::Words;

fn fresh() -> State {
    State::open(None, "", None)
}

fn after(state: State, actions: impl IntoIterator<Item = Action>) -> State {
    actions.into_iter().fold(state, State::after)
}

fn pinned(state: &State, pass: usize) -> Option<u8> {
    let stock = state.plan.stock_off.as_ref().unwrap();
    stock.passes.get(pass).unwrap().cut.as_ref().unwrap().pinned
}

#[test]
fn a_picked_pass_takes_the_focus_to_its_detail_and_back() {
    let open = after(
        fresh(),
        [Action::GoTo(Stage::Plan), Action::PickPass(Some(1))],
    );
    assert_eq!(open.pass, Some(1));
    assert_eq!(open.panels.spot.unwrap().0, Spot::PassDetail);
    let closed = open.clone().after(Action::PickPass(None));
    assert_eq!(closed.pass, None);
    assert_eq!(closed.panels.spot.unwrap().0, Spot::Pass(1));
    assert_eq!(open.after(Action::GoTo(Stage::Wanted)).pass, None);
}

#[test]
fn a_picked_pass_is_pinned_and_unpinned_where_it_stands() {
    let open = after(fresh(), [Action::PickPass(Some(1))]);
    assert_eq!(pinned(&open, 1), None);
    let pin = open.clone().after(Action::PinPicked);
    assert_eq!(pin.job.setup.pins.len(), 1);
    assert_eq!(pinned(&pin, usize::from(pin.pass.unwrap())), Some(0));
    // The focus stays with the button that was pressed.
    assert_eq!(pin.panels.spot, open.panels.spot);
    let unpinned = pin.after(Action::PinPicked);
    assert!(unpinned.job.setup.pins.is_empty());
    assert_eq!(unpinned.plan, open.plan);
    assert_eq!(after(unpinned, [Action::Undo]).job.setup.pins.len(), 1);
    // Without a picked pass there is nothing to pin.
    assert!(fresh().after(Action::PinPicked).job.setup.pins.is_empty());
}

/// What other rows would bring belongs to the job that is here.
#[test]
fn what_would_help_is_worked_out_anew_for_another_job() {
    let state = fresh();
    let before = state.compared().clone();
    assert!(!before.counts.is_empty());
    let looked = state.after(Action::PickPass(Some(0)));
    assert_eq!(*looked.compared(), before);
    let other = looked.after(Action::Type(Field::WantedDiameter, "12".to_owned()));
    assert_ne!(*other.compared(), before);
}

#[test]
fn what_is_dialled_in_follows_the_dial() {
    let first = |state: &State| {
        state
            .plan
            .stock_off
            .as_ref()
            .unwrap()
            .passes
            .first()
            .unwrap()
            .clone()
    };
    let pass = first(&fresh());
    assert_eq!(
        pass.dialled(DialReads::Radius) * 2.0,
        pass.dialled(DialReads::Diameter)
    );
    let radius = fresh().after(Action::Edit(Edit::Shop(ShopEdit::DialReads(
        DialReads::Radius,
    ))));
    assert_eq!(radius.job.shop.machine.dial_reads, DialReads::Radius);
    assert_eq!(first(&radius).infeed, pass.infeed);
}

#[test]
fn what_holds_a_pass_back_is_named() {
    let words = Words::new(Units::Metric, &fresh().job);
    let by = HeldBy {
        depth: Some(Limit::Power),
        feed: Some(Limit::Finish),
        speed: None,
    };
    assert_eq!(
        words.held_by(by),
        "Held back by: depth – power, feed – finish."
    );
    assert!(words.held_by(HeldBy::default()).contains("nothing"));
}

/// The axis lies 0.05 mm off to a quarter turn after jaw 1 all along, so the part moves the other way, to 30° past jaw 3.
/// Flat jaws at 0°, 120° and 240° then stand 0, −0.0433 and 0.0433 mm further out, and what they lack against the third
/// is packed. The rule of thumb puts three quarters of the runout of 0.1 mm under jaw 2, nearest to the high side.
#[test]
fn readings_become_moves_and_packing() {
    let place = |field| Field::Holding(field);
    let mut actions = vec![
        Action::Type(place(HoldingField::NearPlace), "-10".to_owned()),
        Action::Type(place(HoldingField::FarPlace), "40".to_owned()),
    ];
    for plane in [DialPlane::Near, DialPlane::Far] {
        for (quarter, text) in (0..).zip(["0", "0.05", "0", "-0.05"]) {
            actions.push(Action::Type(Field::Dial(plane, quarter), text.to_owned()));
        }
    }
    let state = after(fresh(), actions);
    let words = Words::new(Units::Metric, &state.job);
    let dial = state.plan.dial.unwrap();
    let plain = |text: String| text.replace('\u{a0}', " ");
    let first = plain(words.first_move(&dial.dial_in.unwrap().at_chuck));
    assert!(
        first.contains("move the part 0.050 mm towards jaw 3, 30° on to jaw 1"),
        "{first}"
    );
    let packing = dial.packing.unwrap();
    assert!(!packing.differ());
    assert_eq!(
        plain(words.packing(packing.flat.thickness)),
        "0.043 mm under jaw 1, 0.087 mm under jaw 2"
    );
    assert!(plain(words.thumb(&packing)).contains("0.075 mm under jaw 2"));
    let tap = words.then_tap(&dial).unwrap();
    assert!(tap.contains("needs no tap"), "{tap}");
}

/// Every finding of the cut says what is wrong and what mends it, and no two say the same.
#[test]
fn each_finding_of_the_cut_has_words_of_its_own() {
    let words = Words::new(Units::Metric, &fresh().job);
    let (mm, limit, share) = (Length::mm(1.25), Limit::Torque, 1.5);
    let codes = [
        Code::InfeedTooFine {
            infeed: mm,
            least: mm,
        },
        Code::LastCutsReduced { each: mm },
        Code::LastCutsLighter { each: mm },
        Code::TooManyPasses,
        Code::ToolCannotCut,
        Code::CobaltGradeNeeded,
        Code::ToolAtItsLimit,
        Code::ToolWithCare {
            care: Care::NoInterruptedCut,
        },
        Code::ToolWithCare {
            care: Care::NearlyTooSoft,
        },
        Code::ToolWithCare {
            care: Care::DustAndSlow,
        },
        Code::ToolWithCare {
            care: Care::HardnessUncertain,
        },
        Code::SoftCoreUnderTool { pass: 2 },
        Code::NoGears,
        Code::GearsCrossed,
        Code::NameTooLong,
        Code::TooLargeToSwing { largest: mm },
        Code::NoPass { limit, share },
        Code::NoRowOfPasses,
        Code::PinsOverlap { other: 2 },
        Code::PinOutside { start: mm, end: mm },
        Code::PinBreaks { limit, share },
        Code::GivesWay {
            by: mm,
            allowed: mm,
        },
        Code::RoughnessNotReached { expected: mm },
        Code::SpeedAboveWindow {
            highest: Speed::m_per_min(90.0),
        },
        Code::NoRate,
        Code::TimesCrossed,
        Code::MayChatter {
            ratio: 5.2,
            easy: 3.0,
        },
        Code::ShortGrip { least: mm },
        Code::CentreWithoutHole,
        Code::DialNotPossible,
        Code::DialIncomplete,
        Code::GrindInstead,
    ];
    let mut said = Vec::new();
    for code in codes {
        let found = Finding {
            level: code.level(),
            field: Field::Pin(0, PinField::After),
            code,
        };
        let told = words.finding(&found);
        assert!(
            20 < told.what.len() && told.what.ends_with('.'),
            "{code:?}: {told:?}"
        );
        assert!(
            10 < told.mend.len() && told.mend.ends_with('.'),
            "{code:?}: {told:?}"
        );
        assert!(
            !said.contains(&told.what),
            "{code:?} says what another says"
        );
        said.push(told.what);
    }
}

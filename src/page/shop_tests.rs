//! The lathe, the tool, the holding, the pinned passes, and what is kept for other jobs.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use skimwright::cutting::{Pass, PassKind};
use skimwright::demo::demo_jobs;
use skimwright::job::{
    Aim, DialPlane, EdgeField, Field, Gears, GearsError, HoldingField, Job, MachineField, PinField,
    RateField, Rigidity, Support,
};
use skimwright::plan::number_fields;
use skimwright::quantity::Units;

use super::edit::{Edit, ShopEdit};
use super::panels::fields_in;
use super::state::{Action, Panel, State, Wrong};
use super::view::Spot;
use super::words::Words;

pub(super) const SPEEDS: Field = Field::Machine(MachineField::Speeds);
pub(super) const LATHE_NAME: Field = Field::Machine(MachineField::Name);

pub(super) fn fresh() -> State {
    State::open(None, "", None)
}

pub(super) fn after(state: State, actions: impl IntoIterator<Item = Action>) -> State {
    actions.into_iter().fold(state, State::after)
}

pub(super) fn typed(field: Field, text: &str) -> Action {
    Action::Type(field, text.to_owned())
}

pub(super) fn named(field: Field, text: &str) -> Action {
    Action::Edit(Edit::Text(field, text.to_owned()))
}

pub(super) fn shop(edit: ShopEdit) -> Action {
    Action::Edit(Edit::Shop(edit))
}

pub(super) fn listed() -> State {
    after(fresh(), [shop(ShopEdit::Speeds(Gears::Listed(Vec::new())))])
}

fn speeds(state: &State) -> Vec<String> {
    let list = state.job.gears(SPEEDS).unwrap();
    list.iter().map(ToString::to_string).collect()
}

#[test]
fn a_list_is_taken_while_it_is_typed_and_put_in_order_when_it_is_left() {
    let state = after(listed(), [typed(SPEEDS, "800/70; 115, 70")]);
    assert_eq!(speeds(&state), ["70 rpm", "115 rpm", "800 rpm"]);
    assert_eq!(state.reading(SPEEDS).text, "800/70; 115, 70");
    assert_eq!(state.reading(SPEEDS).wrong, None);
    let left = state.after(Action::Leave(SPEEDS));
    assert_eq!(left.reading(SPEEDS).text, "70 115 800");
    let words = Words::new(left.units, &left.job);
    let said = words.gears(SPEEDS, &left.job.gears(SPEEDS).unwrap());
    assert_eq!(said, "3 speeds, 70 to 800\u{a0}rpm");
    assert!(words.gears(SPEEDS, &[]).contains("No speeds"));
}

#[test]
fn a_bad_number_is_named_and_the_last_good_list_stays() {
    let state = after(
        listed(),
        [
            typed(SPEEDS, "70 115"),
            typed(SPEEDS, "70 115 2oo"),
            Action::Leave(SPEEDS),
        ],
    );
    assert_eq!(speeds(&state), ["70 rpm", "115 rpm"]);
    let reading = state.reading(SPEEDS);
    assert_eq!(reading.text, "70 115 2oo", "nothing is lost");
    let Some(Wrong::BadList(GearsError::Unread { piece, .. })) = &reading.wrong else {
        panic!("{reading:?}");
    };
    assert_eq!(piece, "2oo");
    let words = Words::new(state.units, &state.job);
    let told = words.wrong(SPEEDS, &reading.wrong.unwrap(), None);
    assert!(
        told.contains("“2oo”") && told.contains("last list"),
        "{told}"
    );
    // Out of bounds, with the bounds said.
    let state = state.after(typed(SPEEDS, "70 0"));
    let told = words.wrong(SPEEDS, &state.reading(SPEEDS).wrong.unwrap(), None);
    assert!(
        told.starts_with("“0”: This takes 1\u{a0}rpm to 50000\u{a0}rpm."),
        "{told}"
    );
    // The whole of the typing is one step of undo.
    let back = state.after(Action::Undo);
    assert_eq!(speeds(&back), Vec::<String>::new());
    assert_eq!(back.reading(SPEEDS).text, "");
}

#[test]
fn a_list_and_stepless_change_places() {
    let ends = [MachineField::SlowestSpeed, MachineField::FastestSpeed].map(Field::Machine);
    let state = fresh();
    assert!(ends.iter().all(|end| state.job.has(*end)));
    assert_eq!(state.job.gears(SPEEDS), None);
    let state = after(listed(), [typed(SPEEDS, "70 x")]);
    assert!(ends.iter().all(|end| !state.job.has(*end)));
    let state = after(state, [shop(ShopEdit::Speeds(Gears::default()))]);
    assert_eq!(state.job, fresh().job);
    let again = after(state, [shop(ShopEdit::Speeds(Gears::Listed(Vec::new())))]);
    assert_eq!(again.reading(SPEEDS).text, "", "no draft from before");
    assert_eq!(again.reading(SPEEDS).wrong, None);
}

#[test]
fn feeds_are_read_and_shown_in_the_units_in_use() {
    let feeds = Field::Machine(MachineField::Feeds);
    let state = after(
        fresh(),
        [
            shop(ShopEdit::Feeds(Gears::Listed(Vec::new()))),
            typed(feeds, "0,1 0,05"),
            Action::Leave(feeds),
        ],
    );
    assert_eq!(state.reading(feeds).text, "0.05 0.1");
    let inch = state.after(Action::ShowUnits(Units::InchDecimal));
    assert_eq!(inch.reading(feeds).text, "0.00197 0.00394");
    assert_eq!(inch.sign_of(feeds), "in/rev");
}

#[test]
fn a_name_of_a_lathe_and_the_currency_are_one_step_of_undo_each() {
    let currency = Field::Rate(RateField::Currency);
    let state = after(
        fresh(),
        [
            named(LATHE_NAME, "O"),
            named(LATHE_NAME, "Ol"),
            named(LATHE_NAME, "Old"),
            Action::Leave(LATHE_NAME),
            named(currency, "E"),
            named(currency, "EUR"),
        ],
    );
    assert_eq!(state.job.text(LATHE_NAME), Some("Old"));
    let back = state.after(Action::Undo);
    assert_eq!(back.job.text(currency), Some(""));
    assert_eq!(back.job.text(LATHE_NAME), Some("Old"));
    assert_eq!(back.after(Action::Undo).job, fresh().job);
}

#[test]
fn money_is_shown_in_the_currency_of_the_job() {
    let rate = Field::Rate(RateField::PerHour);
    let state = after(fresh(), [typed(rate, "62,50")]);
    assert_eq!(state.reading(rate).said.as_deref(), Some("62.5"));
    assert_eq!(state.sign_of(rate), "");
    let state = after(state, [named(Field::Rate(RateField::Currency), "EUR")]);
    assert_eq!(state.reading(rate).said.as_deref(), Some("62.5\u{a0}EUR"));
    assert_eq!(state.sign_of(rate), "EUR");
    let state = after(state, [typed(rate, "-1")]);
    assert_eq!(state.reading(rate).wrong, Some(Wrong::OutOfBounds));
}

#[test]
fn roughness_is_typed_in_micrometres() {
    for units in Units::ALL {
        let state = after(
            fresh(),
            [Action::ShowUnits(units), typed(Field::Roughness, "1,6")],
        );
        let entry = state.job.entry(Field::Roughness).unwrap();
        assert_eq!(entry.to_string(), "1.6 µm");
        let left = state.after(Action::Leave(Field::Roughness));
        let reading = left.reading(Field::Roughness);
        assert_eq!((reading.text.as_str(), reading.said), ("1.6", None));
        assert_eq!(left.sign_of(Field::Roughness), "µm");
        let coarse = left.after(typed(Field::Roughness, "0.2 mm"));
        assert_eq!(
            coarse.reading(Field::Roughness).wrong,
            Some(Wrong::OutOfBounds)
        );
        let words = Words::new(units, &coarse.job);
        assert_eq!(
            words.wrong(Field::Roughness, &Wrong::OutOfBounds, None),
            "This takes 0.01\u{a0}µm to 100\u{a0}µm."
        );
    }
}

#[test]
fn bounds_are_said_in_the_unit_of_the_field() {
    let state = fresh();
    let said = |field| {
        let words = Words::new(state.units, &state.job);
        words.wrong(field, &Wrong::OutOfBounds, None)
    };
    let efficiency = Field::Machine(MachineField::Efficiency);
    assert_eq!(said(efficiency), "This takes 10\u{a0}% to 100\u{a0}%.");
    let power = Field::Machine(MachineField::Power);
    assert_eq!(said(power), "This takes 0.01\u{a0}kW to 1000\u{a0}kW.");
}

#[test]
fn every_choice_is_made_and_undone() {
    for edit in [
        ShopEdit::Aim(Aim::LeastCost),
        ShopEdit::Support(Some(Support::BetweenCentres)),
        ShopEdit::Rigidity(Rigidity::Heavy),
        ShopEdit::Speeds(Gears::Listed(Vec::new())),
        ShopEdit::AddPin,
    ] {
        let state = after(fresh(), [shop(edit.clone())]);
        assert_ne!(state.job, fresh().job, "{edit:?}");
        let back = state.after(Action::Undo);
        assert_eq!(back.job, fresh().job, "{edit:?}");
        assert!(!back.can_undo(), "{edit:?}");
    }
    let state = fresh().after(shop(ShopEdit::Support(None)));
    assert!(!state.can_undo(), "nothing changed");
}

#[test]
fn a_planned_pass_is_pinned_as_it_is() {
    for job in demo_jobs() {
        for units in Units::ALL {
            let state = after(
                fresh(),
                [
                    Action::TakeExample(job.clone().into()),
                    Action::ShowUnits(units),
                ],
            );
            let passes = state.plan.stock_off.clone().unwrap().passes;
            for (index, pass) in (0_u8..).zip(&passes) {
                let pinned = state.clone().after(shop(ShopEdit::PinPass(index)));
                if pass.kind == PassKind::Polish {
                    assert_eq!(pinned.job, state.job, "polishing is no cut");
                    continue;
                }
                let [pin] = pinned.job.setup.pins.as_slice() else {
                    panic!("{:?}", pinned.job.setup.pins);
                };
                let near = |one: f64, other: f64, off: f64| (one - other).abs() <= off;
                // Half a thousandth of a millimetre, half a tenth of a thou.
                let off = if units.is_inch() {
                    0.000_05 * 25.4
                } else {
                    0.000_5
                } + 1e-9;
                let after = pin.after.value().to_mm();
                assert!(near(after, pass.diameter_after.to_mm(), off), "{pin:?}");
                let infeed = pin.infeed.value().to_mm();
                assert!(near(infeed, pass.infeed.to_mm(), off), "{pin:?}");
                let speed = pin.speed.as_ref().unwrap().value().to_per_min();
                assert!(
                    near(speed, pass.spindle_speed.to_per_min(), 0.051),
                    "{pin:?}"
                );
                let feed = pin.feed.as_ref().unwrap();
                let off = if units.is_inch() {
                    0.000_005 * 25.4
                } else {
                    0.000_05
                };
                assert!(near(
                    feed.value().to_mm_per_rev(),
                    pass.feed.to_mm_per_rev(),
                    off + 1e-9
                ));
                assert_eq!(feed.entry().unit().is_inch(), units.is_inch());
                // The same once more is none; the rest may be planned anew round it, so that it is not where it was.
                let planned = pinned.plan.stock_off.as_ref().map(|stock| &stock.passes);
                let pins = |pass: &Pass| pass.cut.as_ref().is_some_and(|cut| cut.pinned == Some(0));
                let place = planned.and_then(|passes| passes.iter().position(pins));
                let place = u8::try_from(place.unwrap()).unwrap();
                let twice = pinned.clone().after(shop(ShopEdit::PinPass(place)));
                assert!(twice.job == pinned.job, "pass {index}, then {place}");
            }
        }
    }
}

#[test]
fn pins_are_added_and_taken_out_with_their_texts() {
    let state = after(fresh(), [shop(ShopEdit::AddPin), shop(ShopEdit::AddPin)]);
    let pins = &state.job.setup.pins;
    assert_eq!(pins.len(), 2);
    let first = state
        .plan
        .stock_off
        .as_ref()
        .unwrap()
        .passes
        .first()
        .unwrap();
    let pin = pins.first().unwrap();
    assert!((pin.after.value().to_mm() - first.diameter_after.to_mm()).abs() <= 0.005);
    assert!(
        pin.after.entry().to_string().len() <= "17.12 mm".len(),
        "a round figure"
    );
    assert_ne!(pins.first(), pins.get(1), "the next planned pass");
    let spot = state.panels.spot.map(|(spot, _)| spot);
    assert_eq!(spot, Some(Spot::Opens(Panel::Pin(1))));

    let second = Field::Pin(1, PinField::Infeed);
    let state = after(state, [typed(second, "much"), shop(ShopEdit::RemovePin(0))]);
    assert_eq!(state.job.setup.pins.len(), 1);
    let moved = Field::Pin(0, PinField::Infeed);
    assert_eq!(
        state.reading(moved).wrong,
        None,
        "a text stands at its own pass alone"
    );
    assert_eq!(state.reading(second).text, "");
    let state = after(state, [shop(ShopEdit::RemovePin(7))]);
    assert_eq!(state.job.setup.pins.len(), 1);

    let many = vec![shop(ShopEdit::AddPin); 40];
    let full = after(state, many);
    assert!(full.job.setup.pins.len() <= Job::MOST_PINS);
}

#[test]
fn every_field_of_the_shop_stands_in_a_panel_that_a_finding_opens() {
    let mut state = after(listed(), [shop(ShopEdit::AddPin)]);
    let texts = [
        LATHE_NAME,
        SPEEDS,
        Field::Edge(EdgeField::Name),
        Field::Rate(RateField::Currency),
        Field::Holding(HoldingField::Support),
        Field::Tool,
    ];
    let numbers = number_fields(&state.job);
    let of_shop = numbers.into_iter().filter(|field| {
        matches!(
            field,
            Field::Edge(_)
                | Field::Machine(_)
                | Field::Step(..)
                | Field::Rate(_)
                | Field::Holding(_)
                | Field::Dial(..)
                | Field::Pin(..)
        )
    });
    let panels = [
        Panel::Tool,
        Panel::Lathe,
        Panel::Holding,
        Panel::Dialling,
        Panel::Pin(0),
        Panel::StepTimes,
        Panel::Rates,
    ];
    for field in of_shop.chain(texts) {
        let own = panels
            .into_iter()
            .find(|own| fields_in(*own).contains(&field));
        let own = own.unwrap_or_else(|| panic!("{field} stands nowhere"));
        state = state.after(Action::Pick(Some(field)));
        assert_eq!(state.picked, Some(field));
        assert!(state.panels.is_open(own, &state.job), "{field}");
    }
    let state = fresh().after(Action::Pick(Some(Field::Pins)));
    assert!(state.panels.is_open(Panel::Pins, &state.job));
    assert_eq!(state.picked, None);
}

#[test]
fn every_new_field_has_words_of_its_own() {
    let state = after(fresh(), [shop(ShopEdit::AddPin)]);
    let words = Words::new(state.units, &state.job);
    let mut seen: Vec<String> = Vec::new();
    for field in number_fields(&state.job) {
        assert!(!words.field(field).is_empty(), "{field}");
        let full = words.field_in_full(field);
        if matches!(field, Field::Dial(..) | Field::Pin(..) | Field::Machine(_)) {
            assert!(!seen.contains(&full), "{field}: {full}");
            seen.push(full);
        }
    }
    let far = words.field_in_full(Field::Dial(DialPlane::Far, 2));
    assert_eq!(far, "Indicator further out: half a turn on");
}

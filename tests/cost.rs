//! The cost of a rework: by hand, at its limits, and by laws.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use core::num::NonZeroU8;

use proptest::option;
use proptest::prelude::*;
use skimwright::costing::{
    Cost, CostError, CostPart, Counted, EdgeCounting, Insert, LARGEST_PRICE, MOST_USED, PriceField,
    Rates, Spread, ThreePoint, Used, cost,
};
use skimwright::quantity::{Money, Time};
use skimwright::working::Value;

fn money(sum: f64) -> Money {
    Money::of_currency(sum)
}

fn insert(price: f64, edges: u8) -> Insert {
    Insert {
        price: money(price),
        edges: NonZeroU8::new(edges).unwrap(),
    }
}

/// A spread that is exactly so many minutes.
fn exactly(minutes: f64) -> Spread {
    let each = ThreePoint::exact(Time::minutes(minutes)).unwrap();
    Spread::of(&[], &[Counted { each, count: 1 }])
}

/// Handling from so many minutes to three times as many.
fn about(minutes: f64) -> Spread {
    let [low, likely, high] = [1.0, 2.0, 3.0].map(|times| Time::minutes(minutes * times));
    let each = ThreePoint::new(low, likely, high).unwrap();
    Spread::of(&[Counted { each, count: 1 }], &[])
}

/// 60 an hour, 25 at the least, 3 for consumables, 7.50 for postage, inserts at 12 with four edges, discs at 2.
fn rates() -> Rates {
    Rates {
        hourly: Some(money(60.0)),
        minimum_charge: Some(money(25.0)),
        consumables: Some(money(3.0)),
        postage: Some(money(7.5)),
        insert: Some(insert(12.0, 4)),
        disc_price: Some(money(2.0)),
    }
}

const USED: Used = Used {
    edges: 1.25,
    discs: 0.5,
};

#[track_caller]
fn near(got: Money, wanted: f64) {
    let got = got.to_currency();
    assert!((got - wanted).abs() < 1e-9, "{got}, wanted {wanted}");
}

#[test]
fn a_cost_is_as_reckoned_by_hand() {
    // 90 min at 60 an hour; two whole edges at 3; half a disc at 2.
    let whole = cost(&exactly(90.0), &USED, &rates(), EdgeCounting::Whole).unwrap();
    near(whole.likely, 90.0 + 6.0 + 1.0 + 3.0 + 7.5);
    assert_eq!((whole.low, whole.high), (whole.likely, whole.likely));
    assert!(!whole.minimum_applied);
    let parts = [
        (CostPart::Labour, money(90.0)),
        (CostPart::Edges, money(6.0)),
        (CostPart::Discs, money(1.0)),
        (CostPart::Consumables, money(3.0)),
        (CostPart::Postage, money(7.5)),
    ];
    assert_eq!(whole.parts, parts);
    let share = cost(&exactly(90.0), &USED, &rates(), EdgeCounting::Share).unwrap();
    near(share.likely, whole.likely.to_currency() - 6.0 + 3.75);
}

#[test]
fn the_minimum_lifts_all_but_the_postage() {
    // 10 min: 10, and 10 of all else, make 20; 5 are missing.
    let short = cost(&exactly(10.0), &USED, &rates(), EdgeCounting::Whole).unwrap();
    near(short.likely, 25.0 + 7.5);
    assert!(short.minimum_applied);
    assert!(short.parts.contains(&(CostPart::ToMinimum, money(5.0))));
    // At 15 min it is reached to the coin, and nothing is lifted.
    let enough = cost(&exactly(15.0), &USED, &rates(), EdgeCounting::Whole).unwrap();
    near(enough.likely, 25.0 + 7.5);
    assert!(!enough.minimum_applied);
}

#[test]
fn a_minimum_below_the_likely_cost_still_lifts_the_low_one() {
    let mut rates = Rates {
        hourly: Some(money(60.0)),
        ..Rates::default()
    };
    let time = about(15.0);
    let free = cost(&time, &Used::default(), &rates, EdgeCounting::Share).unwrap();
    rates.minimum_charge = Some((free.low + free.likely) / 2.0);
    let held = cost(&time, &Used::default(), &rates, EdgeCounting::Share).unwrap();
    assert!(!held.minimum_applied);
    assert_eq!((held.likely, held.high), (free.likely, free.high));
    assert_eq!(Some(held.low), rates.minimum_charge);
}

#[test]
fn whole_edges_are_the_begun_ones() {
    let edges = |edges| {
        let used = Used { edges, discs: 0.0 };
        let rates = Rates {
            hourly: Some(Money::ZERO),
            insert: Some(insert(8.0, 8)),
            ..Rates::default()
        };
        cost(&exactly(1.0), &used, &rates, EdgeCounting::Whole)
            .unwrap()
            .likely
            .to_currency()
    };
    let cases = [
        (0.0, 0.0),
        (0.01, 1.0),
        (1.0, 1.0),
        (0.1 + 0.2 + 0.7 + 1e-15, 1.0),
        (1.01, 2.0),
    ];
    for (used, wanted) in cases {
        assert!(
            (edges(used) - wanted).abs() < 1e-12,
            "{used}: {}",
            edges(used)
        );
    }
}

#[test]
fn without_a_rate_there_is_no_cost_and_every_wrong_number_is_named() {
    let told = |rates: Rates, used: Used| {
        cost(&exactly(1.0), &used, &rates, EdgeCounting::Whole)
            .unwrap_err()
            .to_string()
    };
    let none = Rates {
        hourly: None,
        ..rates()
    };
    assert_eq!(told(none, USED), "there is no hourly rate: enter one");
    let wrong = [
        ("hourly rate", PriceField::Hourly),
        ("minimum charge", PriceField::MinimumCharge),
        ("sum for consumables", PriceField::Consumables),
        ("postage", PriceField::Postage),
        ("price of an insert", PriceField::Insert),
        ("price of a disc", PriceField::Disc),
    ];
    for (name, field) in wrong {
        for price in [money(-0.01), LARGEST_PRICE * 1.01] {
            let mut rates = rates();
            match field {
                PriceField::Hourly => rates.hourly = Some(price),
                PriceField::MinimumCharge => rates.minimum_charge = Some(price),
                PriceField::Consumables => rates.consumables = Some(price),
                PriceField::Postage => rates.postage = Some(price),
                PriceField::Insert => rates.insert = Some(insert(price.to_currency(), 2)),
                PriceField::Disc => rates.disc_price = Some(price),
            }
            let error = cost(&exactly(1.0), &USED, &rates, EdgeCounting::Share);
            assert_eq!(error, Err(CostError::Price(field)));
            assert_eq!(
                told(rates, USED),
                format!("the {name} is not from zero to 1000000000000")
            );
        }
    }
    for amount in [-0.1, f64::NAN, MOST_USED * 1.01] {
        let edges = Used {
            edges: amount,
            ..USED
        };
        let discs = Used {
            discs: amount,
            ..USED
        };
        assert_eq!(
            told(rates(), edges),
            "the edges used are not from zero to 1000000"
        );
        assert_eq!(
            told(rates(), discs),
            "the discs used are not from zero to 1000000"
        );
    }
}

#[test]
fn the_working_gives_the_likely_cost() {
    for minutes in [10.0, 90.0] {
        let cost = cost(&exactly(minutes), &USED, &rates(), EdgeCounting::Whole).unwrap();
        let figure = cost.figure();
        let line = figure.working.with_numbers(|value| match value {
            Value::Time(time) => format!("{} min", time.to_minutes()),
            Value::Money(money) => format!("{}", money.to_currency()),
            Value::Ratio(ratio) => format!("{ratio}"),
            other => panic!("{other:?}"),
        });
        let wanted = format!("max({minutes} min/(60 min) · 60 + 2 · 3 + 0.5 · 2 + 3, 25) + 7.5");
        assert_eq!(line, wanted);
        let by_hand = (minutes / 60.0 * 60.0 + 2.0 * 3.0 + 0.5 * 2.0 + 3.0_f64).max(25.0) + 7.5;
        near(figure.value, by_hand);
    }
}

fn any_price() -> impl Strategy<Value = Money> {
    prop_oneof![1 => Just(0.0), 4 => 0.0..500.0].prop_map(money)
}

fn any_rates() -> impl Strategy<Value = Rates> {
    (
        any_price(),
        option::of(any_price()),
        option::of(any_price()),
        option::of(any_price()),
        option::of((any_price(), 1_u8..9)),
        option::of(any_price()),
    )
        .prop_map(
            |(hourly, minimum_charge, consumables, postage, of_insert, disc_price)| Rates {
                hourly: Some(hourly),
                minimum_charge,
                consumables,
                postage,
                insert: of_insert.map(|(price, edges)| insert(price.to_currency(), edges)),
                disc_price,
            },
        )
}

fn any_used() -> impl Strategy<Value = Used> {
    (0.0..20.0, 0.0..3.0).prop_map(|(edges, discs)| Used { edges, discs })
}

fn three(cost: &Cost) -> [f64; 3] {
    [cost.low, cost.likely, cost.high].map(Money::to_currency)
}

const ROUNDING: f64 = 1e-7;

proptest! {
    #[test]
    fn a_cost_is_in_order_never_negative_and_the_sum_of_its_parts(rates in any_rates(), used in any_used(), minutes in 0.0..600.0) {
        for counting in [EdgeCounting::Share, EdgeCounting::Whole] {
            let cost = cost(&about(minutes), &used, &rates, counting).unwrap();
            let [low, likely, high] = three(&cost);
            prop_assert!(0.0 <= low && low <= likely && likely <= high);
            let parts: Money = cost.parts.iter().map(|(_, money)| *money).sum();
            prop_assert!((parts.to_currency() - likely).abs() < ROUNDING);
            prop_assert!(cost.parts.iter().all(|(_, money)| *money > Money::ZERO));
            let lifted = cost.parts.iter().any(|(part, _)| *part == CostPart::ToMinimum);
            prop_assert_eq!(lifted, cost.minimum_applied);
        }
    }

    #[test]
    fn whole_edges_never_cost_less_than_their_share(rates in any_rates(), used in any_used(), minutes in 0.0..600.0) {
        let at = |counting| three(&cost(&about(minutes), &used, &rates, counting).unwrap());
        for (share, whole) in at(EdgeCounting::Share).into_iter().zip(at(EdgeCounting::Whole)) {
            prop_assert!(share <= whole + ROUNDING);
        }
    }

    #[test]
    fn more_time_and_more_wear_never_cost_less(rates in any_rates(), used in any_used(), minutes in 0.0..600.0, more in (0.0..60.0, 0.0..2.0, 0.0..1.0)) {
        let worn = Used { edges: used.edges + more.1, discs: used.discs + more.2 };
        let before = cost(&about(minutes), &used, &rates, EdgeCounting::Whole).unwrap();
        let after = cost(&about(minutes + more.0), &worn, &rates, EdgeCounting::Whole).unwrap();
        for (before, after) in three(&before).into_iter().zip(three(&after)) {
            prop_assert!(before <= after + ROUNDING);
        }
    }

    #[test]
    fn another_currency_changes_every_sum_alike(rates in any_rates(), used in any_used(), minutes in 0.0..600.0, factor in 0.01..100.0) {
        let other = Rates {
            hourly: rates.hourly.map(|price| price * factor),
            minimum_charge: rates.minimum_charge.map(|price| price * factor),
            consumables: rates.consumables.map(|price| price * factor),
            postage: rates.postage.map(|price| price * factor),
            insert: rates.insert.map(|insert| Insert { price: insert.price * factor, ..insert }),
            disc_price: rates.disc_price.map(|price| price * factor),
        };
        let plain = cost(&about(minutes), &used, &rates, EdgeCounting::Whole).unwrap();
        let scaled = cost(&about(minutes), &used, &other, EdgeCounting::Whole).unwrap();
        for (plain, scaled) in three(&plain).into_iter().zip(three(&scaled)) {
            prop_assert!((plain * factor - scaled).abs() <= 1e-12 * scaled + ROUNDING);
        }
    }
}

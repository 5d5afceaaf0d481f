//! The total of many uncertain durations: against a million draws each, and by laws.
//!
//! The rows come from `tests/outside/cycle_time.py` (numpy 2.4.6, seeds in it): 10 %, 50 % and 90 % points, mean and
//! standard deviation. A point of a million draws is itself off by about 0.002 deviations.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use proptest::collection::vec;
use proptest::prelude::*;
use skimwright::costing::{
    Counted, HoldingWay, Operations, PACE_SPREAD, Severing, SpindleSteps, Spread, Step,
    StepContext, ThreePoint, planned,
};
use skimwright::job::CutOffMethod;
use skimwright::quantity::{Area, Time};
use skimwright::tables::WorkMaterial;
use skimwright::working::{Meaning, Value};

/// Count; low, likely and high in seconds.
type Term = (u32, [f64; 3]);

/// What it is, handling, feeding, the three points, mean, deviation; all in seconds.
type Row = (
    &'static str,
    &'static [Term],
    &'static [Term],
    [f64; 3],
    f64,
    f64,
);

#[rustfmt::skip]
const ROWS: &[Row] = &[
    ("a lone handling step", &[(1, [180.0, 420.0, 900.0])], &[],
        [304.188, 482.328, 723.043], 500.217, 159.011),
    ("a lone lopsided step", &[(1, [0.0, 0.0, 100.0])], &[],
        [5.074, 29.060, 68.524], 33.359, 23.950),
    ("a lone lopsided step, the other way", &[(1, [0.0, 100.0, 100.0])], &[],
        [31.101, 69.567, 96.907], 66.660, 24.653),
    ("a lone exact step: the pace alone", &[(1, [100.0, 100.0, 100.0])], &[],
        [86.180, 100.008, 113.823], 100.006, 10.206),
    ("a lone lopsided feed", &[], &[(1, [100.0, 100.0, 125.0])],
        [101.290, 107.314, 117.097], 108.330, 5.889),
    ("a lone feed, the other way", &[], &[(1, [0.0, 100.0, 100.0])],
        [31.761, 70.772, 94.865], 66.714, 23.528),
    ("an even feed", &[], &[(1, [0.0, 50.0, 100.0])],
        [22.347, 50.008, 77.663], 50.016, 20.422),
    ("two lopsided feeds", &[], &[(2, [0.0, 0.0, 100.0])],
        [24.351, 64.153, 111.993], 66.639, 33.334),
    ("five lopsided feeds", &[], &[(5, [0.0, 0.0, 100.0])],
        [99.942, 164.337, 236.300], 166.658, 52.663),
    ("a hundred feeds", &[], &[(100, [10.0, 20.0, 60.0])],
        [2861.804, 2999.119, 3139.061], 2999.895, 108.055),
    ("two steps", &[(2, [30.0, 60.0, 120.0])], &[],
        [102.402, 137.914, 180.430], 140.006, 30.211),
    ("one large, many small", &[(1, [0.0, 100.0, 1000.0]), (20, [5.0, 6.0, 9.0])], &[],
        [229.514, 458.868, 837.878], 499.668, 231.734),
    ("four passes, exact feed", &[(4, [9.0, 13.0, 18.0]), (4, [6.0, 9.0, 12.0]), (4, [18.0, 24.0, 30.0])], &[(1, [240.0, 240.0, 240.0])],
        [398.734, 425.126, 452.110], 425.339, 20.040),
    ("four passes, geared", &[(4, [9.0, 13.0, 18.0]), (4, [6.0, 9.0, 12.0]), (4, [18.0, 24.0, 30.0])], &[(1, [240.0, 240.0, 300.0])],
        [413.734, 444.699, 477.720], 445.350, 24.534),
    ("thirty passes, geared", &[(30, [9.0, 13.0, 18.0]), (30, [6.0, 9.0, 12.0]), (30, [18.0, 24.0, 30.0])], &[(1, [3600.0, 3600.0, 4500.0])],
        [4971.526, 5269.078, 5643.975], 5289.973, 255.878),
    ("two hundred passes, exact", &[(200, [9.0, 13.0, 18.0]), (200, [6.0, 9.0, 12.0]), (200, [18.0, 24.0, 30.0])], &[(1, [9000.0, 9000.0, 9000.0])],
        [16984.149, 18265.702, 19547.256], 18265.528, 946.240),
    ("a small job in a collet", &[(1, [180.0, 360.0, 720.0]), (1, [18.0, 30.0, 60.0]), (1, [18.0, 30.0, 90.0]), (3, [9.0, 13.0, 18.0]), (3, [6.0, 9.0, 12.0]), (3, [18.0, 24.0, 30.0]), (2, [30.0, 42.0, 60.0]), (2, [30.0, 60.0, 120.0]), (1, [60.0, 120.0, 240.0]), (1, [120.0, 240.0, 480.0])], &[(1, [100.0, 100.0, 125.0])],
        [1151.452, 1386.305, 1658.635], 1397.238, 195.978),
    ("a whole job in a four-jaw chuck", &[(1, [180.0, 360.0, 720.0]), (1, [60.0, 120.0, 240.0]), (1, [180.0, 420.0, 900.0]), (1, [120.0, 240.0, 600.0]), (1, [18.0, 42.0, 90.0]), (1, [48.0, 72.0, 120.0]), (12, [9.0, 13.0, 18.0]), (12, [6.0, 9.0, 12.0]), (12, [18.0, 24.0, 30.0]), (3, [30.0, 42.0, 60.0]), (1, [120.0, 240.0, 480.0]), (1, [60.0, 120.0, 240.0]), (2, [30.0, 60.0, 120.0]), (1, [60.0, 120.0, 240.0]), (1, [120.0, 240.0, 480.0])], &[(1, [20.0, 20.0, 25.0]), (1, [6.0, 6.0, 7.5]), (1, [720.0, 720.0, 900.0])],
        [3460.206, 3970.725, 4531.691], 3986.337, 412.119),
    ("a long job with many regrinds", &[(1, [180.0, 360.0, 720.0]), (1, [60.0, 120.0, 300.0]), (1, [30.0, 60.0, 120.0]), (40, [9.0, 13.0, 18.0]), (40, [6.0, 9.0, 12.0]), (40, [18.0, 24.0, 30.0]), (10, [30.0, 42.0, 60.0]), (10, [120.0, 240.0, 480.0]), (2, [30.0, 60.0, 120.0])], &[(1, [14400.0, 14400.0, 18000.0])],
        [20137.474, 21406.577, 22953.286], 21483.771, 1074.372),
    ("nearly all feeding", &[(1, [60.0, 120.0, 240.0])], &[(1, [36000.0, 36000.0, 45000.0])],
        [36602.068, 38775.068, 42285.576], 39137.832, 2119.689),
    ("nearly all handling", &[(1, [7200.0, 10800.0, 21600.0]), (50, [18.0, 24.0, 30.0])], &[(1, [10.0, 10.0, 10.0])],
        [10317.040, 13959.623, 19194.270], 14406.370, 3405.414),
];

/// The rows that are whole jobs, with many durations.
const WHOLE_JOBS: &[&str] = &["a small job in a collet", "a whole job in a four-jaw chuck"];

/// How far a point may be off, in deviations: whatever it is made of, and in a whole job.
const WORST: f64 = 0.11;
const WORST_OF_JOBS: f64 = 0.03;

fn counted(terms: &[Term]) -> Vec<Counted> {
    terms
        .iter()
        .map(|&(count, times)| {
            let [low, likely, high] = times.map(Time::seconds);
            Counted {
                each: ThreePoint::new(low, likely, high).unwrap(),
                count,
            }
        })
        .collect()
}

fn spread(handling: &[Term], feeding: &[Term]) -> Spread {
    Spread::of(&counted(handling), &counted(feeding))
}

fn points(spread: &Spread) -> [f64; 3] {
    [spread.low, spread.likely, spread.high].map(Time::to_seconds)
}

#[test]
fn the_points_lie_where_a_million_draws_put_them() {
    for &(what, handling, feeding, wanted, mean, deviation) in ROWS {
        let got = spread(handling, feeding);
        let allowed = if WHOLE_JOBS.contains(&what) {
            WORST_OF_JOBS
        } else {
            WORST
        };
        for (got, wanted) in points(&got).into_iter().zip(wanted) {
            let off = (got - wanted) / deviation;
            assert!(
                off.abs() <= allowed,
                "{what}: {got}, drawn {wanted}, off by {off} deviations"
            );
        }
        let off = (got.mean.to_seconds() - mean) / deviation;
        assert!(off.abs() < 0.005, "{what}: mean {mean}, off by {off}");
        let off = got.deviation.to_seconds() / deviation - 1.0;
        assert!(off.abs() < 0.005, "{what}: deviation, off by {off}");
    }
}

/// One triangle alone has its points in closed form; of all sums it is the least like a normal variable.
#[test]
fn a_lone_triangle_is_off_by_what_the_doc_says_and_no_more() {
    let mut worst: f64 = 0.0;
    for peak in 0..=100 {
        let peak = f64::from(peak) / 100.0;
        let point = |share: f64| {
            if share <= peak {
                (share * peak).sqrt()
            } else {
                1.0 - ((1.0 - share) * (1.0 - peak)).sqrt()
            }
        };
        let deviation = ((1.0 - peak + peak * peak) / 18.0).sqrt();
        let got = spread(&[], &[(1, [0.0, peak, 1.0])]);
        for (got, share) in points(&got).into_iter().zip([0.1, 0.5, 0.9]) {
            worst = worst.max(((got - point(share)) / deviation).abs());
        }
    }
    assert!(WORST * 0.9 < worst && worst <= WORST, "{worst}");
}

#[test]
fn nothing_takes_no_time() {
    for none in [spread(&[], &[]), spread(&[(0, [1.0, 2.0, 3.0])], &[])] {
        assert_eq!([none.low, none.likely, none.high], [Time::ZERO; 3]);
        assert_eq!((none.mean, none.deviation), (Time::ZERO, Time::ZERO));
    }
}

#[test]
fn what_is_exact_and_fed_has_no_spread() {
    let exact = spread(&[], &[(3, [20.0; 3])]);
    let minute = Time::minutes(1.0);
    assert_eq!([exact.low, exact.likely, exact.high], [minute; 3]);
    assert_eq!(exact.deviation, Time::ZERO);
}

#[test]
fn the_pace_does_not_average_out_over_many_passes() {
    let share = |count| {
        let spread = spread(&[(count, [9.0, 13.0, 18.0])], &[]);
        spread.deviation / spread.mean
    };
    // A triangle of ± 25 % has a deviation of 25 %/√6.
    let of_pace = PACE_SPREAD / 6.0_f64.sqrt();
    assert!(share(1) > share(10) && share(10) > share(1000));
    assert!((share(1_000_000) - of_pace).abs() < 1e-6);
}

#[test]
fn the_largest_count_of_the_longest_steps_stays_finite() {
    let longest = skimwright::costing::LONGEST.to_seconds();
    let spread = spread(
        &[(u32::MAX, [0.0, 0.0, longest]), (u32::MAX, [longest; 3])],
        &[(u32::MAX, [0.0, longest, longest])],
    );
    let [low, likely, high] = points(&spread);
    assert!(0.0 < low && low < likely && likely < high && high.is_finite());
}

#[test]
fn the_working_gives_the_likely_time() {
    let spread = spread(&[(1, [180.0, 420.0, 900.0])], &[(1, [100.0, 100.0, 125.0])]);
    let figure = spread.figure();
    let number = |symbol| {
        let input = figure
            .working
            .inputs
            .iter()
            .find(|input| input.symbol == symbol)
            .unwrap();
        match input.value {
            Value::Time(time) => time.to_seconds(),
            Value::Ratio(ratio) => ratio,
            other => panic!("{symbol} is {other:?}"),
        }
    };
    let by_hand = number("m₁") + number("m₂") - number("g") * number("s") / 6.0;
    assert!((figure.value.to_seconds() - by_hand).abs() < 1e-9);
    assert!((number("m₁") - 325.0 / 3.0).abs() < 1e-9);
    assert!((number("m₂") - 500.0).abs() < 1e-9);
    let pace = figure
        .working
        .inputs
        .iter()
        .find(|input| input.meaning == Meaning::PaceSpread);
    assert_eq!(pace.unwrap().value, Value::Share(PACE_SPREAD));
    let range = figure.range.unwrap();
    assert!(range.low < figure.value && figure.value < range.high);
}

/// A step of 0 to about ten minutes, its corners as likely as its inside.
fn any_times() -> impl Strategy<Value = [f64; 3]> {
    let part = || prop_oneof![1 => Just(0.0), 3 => 0.0..200.0, 1 => 0.0..2.0];
    (part(), part(), part()).prop_map(|(low, rise, fall)| [low, low + rise, low + rise + fall])
}

fn any_terms() -> impl Strategy<Value = Vec<Term>> {
    vec((prop_oneof![0_u32..6, 0_u32..500], any_times()), 0..6)
}

/// What rounding may add, in seconds for totals of hours.
const ROUNDING: f64 = 1e-6;

proptest! {
    #[test]
    fn the_points_lie_in_order_between_the_sums_of_the_ends(handling in any_terms(), feeding in any_terms()) {
        let ends = |place: usize, pace: f64| -> f64 {
            let sum = |terms: &[Term]| -> f64 {
                terms.iter().map(|(count, times)| f64::from(*count) * times[place]).sum()
            };
            sum(&handling) * pace + sum(&feeding)
        };
        let [low, likely, high] = points(&spread(&handling, &feeding));
        prop_assert!(ends(0, 1.0 - PACE_SPREAD) <= low + ROUNDING);
        prop_assert!(low <= likely && likely <= high);
        prop_assert!(high <= ends(2, 1.0 + PACE_SPREAD) + ROUNDING);
    }

    #[test]
    fn a_step_that_takes_longer_makes_no_point_earlier(
        handling in any_terms(),
        feeding in any_terms(),
        step in (1_u32..6, any_times()),
        (which, more) in (0_usize..3, 0.0..1.0),
        fed in any::<bool>(),
    ) {
        let (count, times) = step;
        let mut longer = times;
        // Low and likely rise at most to the next one, high by as much as it is and a minute.
        longer[which] += more * match which {
            2 => times[2] + 60.0,
            _ => times[which + 1] - times[which],
        };
        let with = |times| {
            let (mut handling, mut feeding) = (handling.clone(), feeding.clone());
            if fed { feeding.push((count, times)) } else { handling.push((count, times)) }
            spread(&handling, &feeding)
        };
        let (before, after) = (with(times), with(longer));
        for (before, after) in points(&before).into_iter().zip(points(&after)) {
            prop_assert!(before <= after + ROUNDING, "{before} then {after}");
        }
    }

    #[test]
    fn one_more_of_a_step_makes_no_point_earlier(handling in any_terms(), feeding in any_terms(), times in any_times(), count in 0_u32..50) {
        let with = |count| {
            let mut all = handling.clone();
            all.push((count, times));
            points(&spread(&all, &feeding))
        };
        for (before, after) in with(count).into_iter().zip(with(count + 1)) {
            prop_assert!(before <= after + ROUNDING, "{before} then {after}");
        }
    }

    #[test]
    fn all_times_by_a_factor_give_all_points_by_it(handling in any_terms(), feeding in any_terms(), factor in 0.01_f64..100.0) {
        let by = |terms: &[Term]| -> Vec<Term> {
            terms.iter().map(|(count, times)| (*count, times.map(|time| time * factor))).collect()
        };
        let plain = points(&spread(&handling, &feeding));
        let scaled = points(&spread(&by(&handling), &by(&feeding)));
        for (plain, scaled) in plain.into_iter().zip(scaled) {
            prop_assert!((plain * factor - scaled).abs() <= 1e-9 * scaled.abs() + ROUNDING);
        }
    }

    #[test]
    fn order_and_grouping_do_not_matter(handling in any_terms(), feeding in any_terms(), times in any_times(), counts in (0_u32..9, 0_u32..9)) {
        let mut together = handling.clone();
        together.push((counts.0 + counts.1, times));
        let mut apart = vec![(counts.0, times)];
        apart.extend(handling.iter().rev());
        apart.push((counts.1, times));
        let (together, apart) = (spread(&together, &feeding), spread(&apart, &feeding));
        for (together, apart) in points(&together).into_iter().zip(points(&apart)) {
            prop_assert!((together - apart).abs() < ROUNDING);
        }
    }
}

fn operations() -> impl Strategy<Value = Operations> {
    let seconds = || (0.0..2000.0).prop_map(Time::seconds);
    let cut = || {
        let by_area = (0_usize..4, 1.0..5000.0).prop_filter_map(
            "a saw in soft metal only",
            |(method, area)| {
                Severing::new(
                    CutOffMethod::ALL[method],
                    Area::mm2(area),
                    WorkMaterial::HardenedSteel,
                )
                .ok()
            },
        );
        let fed = (0.0..2000.0).prop_map(|time| Severing::under_feed(Time::seconds(time)).unwrap());
        proptest::option::of(prop_oneof![by_area, fed])
    };
    (
        (0_usize..6, cut()),
        vec(seconds(), 0..20),
        (
            proptest::option::of(seconds()),
            proptest::option::of(seconds()),
        ),
        any::<(bool, bool)>(),
        (0_u32..10, 0_u32..10),
    )
        .prop_map(
            |(
                (holding, severing),
                passes,
                (facing, centring),
                (known, polished),
                (tool_changes, regrinds),
            )| Operations {
                context: StepContext {
                    holding: HoldingWay::ALL[holding],
                    severing,
                },
                passes,
                last_passes: 2,
                facing,
                centring,
                spindle: if known {
                    SpindleSteps::Known
                } else {
                    SpindleSteps::NearestLower
                },
                tool_changes,
                regrinds,
                polished,
                own: vec![],
                typed: vec![],
                paces: vec![],
            },
        )
}

proptest! {
    #[test]
    fn the_shares_of_all_lines_make_up_the_whole(operations in operations()) {
        let time = planned(&operations).unwrap();
        let steps: f64 = time.steps.iter().map(|line| line.share).sum();
        let feeding: f64 = time.feeding.iter().map(|line| line.share).sum();
        prop_assert!((steps + feeding - 1.0).abs() < 1e-12);
        prop_assert!((feeding * time.spread.mean.to_seconds() - time.spread.feeding_mean.to_seconds()).abs() < ROUNDING);
        prop_assert!(time.steps.is_sorted_by_key(|line| line.step));
        prop_assert_eq!(time.total.value, time.spread.likely);
    }

    #[test]
    fn one_more_pass_takes_longer(operations in operations(), pass in 0.0..500.0) {
        let mut longer = operations.clone();
        longer.passes.push(Time::seconds(pass));
        let (before, after) = (planned(&operations).unwrap(), planned(&longer).unwrap());
        for (before, after) in points(&before.spread).into_iter().zip(points(&after.spread)) {
            prop_assert!(before < after);
        }
    }
}

/// A job by hand: a 20 mm soft bar cut with a disc, faced, three passes of a minute, chuck with packing.
#[test]
fn a_whole_job_adds_up_as_by_hand() {
    let section = Area::mm2(400.0);
    let operations = Operations {
        context: StepContext {
            holding: HoldingWay::ChuckWithPacking,
            severing: Severing::new(
                CutOffMethod::HandDisc,
                section,
                WorkMaterial::LowCarbonSteel,
            )
            .ok(),
        },
        passes: vec![Time::minutes(1.0); 3],
        last_passes: 2,
        facing: Some(Time::minutes(0.5)),
        centring: None,
        spindle: SpindleSteps::Known,
        tool_changes: 1,
        regrinds: 0,
        polished: false,
        own: vec![],
        typed: vec![],
        paces: vec![],
    };
    let time = planned(&operations).unwrap();
    let each = |step| {
        time.steps
            .iter()
            .find(|line| line.step == step)
            .unwrap()
            .each
    };
    // Setting up 1, 2, 5 min; 400 mm² at 800, 400, 200 mm² a minute: 0.5, 1, 2 min.
    let cut = each(Step::CutOff);
    assert_eq!(
        [cut.low(), cut.likely(), cut.high()],
        [1.5, 3.0, 7.0].map(Time::minutes)
    );
    // Means in minutes: receive 7, hold 7/3, dial in 8, cut off 11.5/3, face 2.5/3, change 2.2/3, chamfer and clean
    // 3.5/3 each, check 7/3, pack 14/3; three times set, return, measure 40, 27, 72 s in thirds; feeding 3.5.
    let handling =
        7.0 + 8.0 + (7.0 + 11.5 + 2.5 + 2.2 + 3.5 + 3.5 + 7.0 + 14.0) / 3.0 + 139.0 / 60.0;
    let got = time.spread.handling_mean.to_minutes();
    assert!((got - handling).abs() < 1e-9, "{got}, by hand {handling}");
    assert!((time.spread.feeding_mean.to_minutes() - 3.5).abs() < 1e-12);
    assert!((time.spread.mean.to_minutes() - handling - 3.5).abs() < 1e-9);
}

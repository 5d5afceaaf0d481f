//! Shops and set-ups of every kind; [`super`] makes whole jobs of them.

use std::fmt::Debug;

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
use skimwright::costing::Step;
use skimwright::job::{
    Aim, CentreOrder, CutOffMethod, DialReads, Edge, Gears, JawFace, Job, Machine, Pin, Plane,
    Rates, Rigidity, Setup, Shop, StepTime, StepTimes, Support,
};
use skimwright::quantity::Typed;
use skimwright::tables::ToolKind;

use super::records::{instruments, learned};
use super::{Numbers, entered, length};

/// Any shop.
pub(crate) fn shop(numbers: Numbers) -> impl Strategy<Value = Shop> {
    let length = move || length(numbers);
    let time = move || entered(numbers);
    (
        (
            select(ToolKind::ALL.to_vec()),
            select(CutOffMethod::ALL.to_vec()),
            select(CentreOrder::ALL.to_vec()),
            select(Aim::ALL.to_vec()),
        ),
        (option::of(length()), length()),
        (option::of(length()), length(), length()),
        (
            option::of(entered(numbers)),
            option::of(entered(numbers)),
            option::of(entered(numbers)),
            entered(numbers),
            length(),
        ),
        (
            (time(), time(), time(), time()),
            step_times(numbers).boxed(),
        ),
        (
            edge(numbers).boxed(),
            machine(numbers).boxed(),
            rates(numbers).boxed(),
            instruments(numbers).boxed(),
        ),
    )
        .prop_map(|(choices, cut_off, depths, speeds, times, more)| Shop {
            tool: choices.0,
            aim: choices.3,
            edge: more.0,
            machine: more.1,
            cut_off_method: choices.1,
            kerf: cut_off.0,
            facing_stock: cut_off.1,
            centre_order: choices.2,
            rough_infeed: depths.0,
            last_cut: depths.1,
            polishing_stock: depths.2,
            cutting_speed: speeds.0,
            rough_feed: speeds.1,
            finish_feed: speeds.2,
            top_speed: speeds.3,
            approach: speeds.4,
            set_time: times.0.0,
            return_time: times.0.1,
            measure_time: times.0.2,
            polish_time: times.0.3,
            times: times.1,
            rates: more.2,
            instruments: more.3,
        })
}

/// Times of steps; most often of none. A step of which the shop has the likely time by itself has none here.
fn step_times(numbers: Numbers) -> impl Strategy<Value = StepTimes> {
    let time = (maybe(numbers), maybe(numbers), maybe(numbers));
    let steps = vec((select(Step::ALL.to_vec()), time), 0..=Step::ALL.len());
    let any = steps.prop_map(|steps| {
        let mut times = StepTimes::default();
        for (step, (low, likely, high)) in steps {
            let by_shop = matches!(
                step,
                Step::SetDepth | Step::Return | Step::Measure | Step::Polish
            );
            if let Some(place) = times.of_mut(step) {
                *place = StepTime {
                    low,
                    likely: likely.filter(|_| !by_shop),
                    high,
                };
            }
        }
        times
    });
    prop_oneof![2 => Just(StepTimes::default()), 1 => any]
}

/// Any set-up.
pub(crate) fn setup(numbers: Numbers) -> impl Strategy<Value = Setup> {
    let pin = (
        entered(numbers),
        entered(numbers),
        maybe(numbers),
        maybe(numbers),
    )
        .prop_map(|(after, infeed, speed, feed)| Pin {
            after,
            infeed,
            speed,
            feed,
        });
    (
        option::of(select(Support::ALL.to_vec())),
        option::of(select(JawFace::ALL.to_vec())),
        (maybe(numbers), maybe(numbers), maybe(numbers)),
        (plane(numbers), plane(numbers)),
        prop_oneof![3 => Just(Vec::new()), 1 => vec(pin, 0..=Job::MOST_PINS)],
        maybe(numbers),
    )
        .prop_map(
            |(support, jaws, holding, planes, pins, room_temperature)| Setup {
                support,
                jaws,
                grip_length: holding.0,
                grip_force: holding.1,
                tail_force: holding.2,
                near: planes.0,
                far: planes.1,
                pins,
                room_temperature,
            },
        )
}

fn maybe<Q: Typed + Debug + 'static>(
    numbers: Numbers,
) -> impl Strategy<Value = Option<skimwright::quantity::Entered<Q>>> {
    option::weighted(0.3, entered(numbers))
}

fn plane(numbers: Numbers) -> impl Strategy<Value = Plane> {
    let readings = (
        maybe(numbers),
        maybe(numbers),
        maybe(numbers),
        maybe(numbers),
    );
    (maybe(numbers), readings).prop_map(|(place, readings)| Plane {
        place,
        readings: readings.into(),
    })
}

pub(super) fn name(most: usize) -> impl Strategy<Value = String> {
    let letters = vec(any::<char>(), 0..=most);
    prop_oneof![
        2 => Just(String::new()),
        1 => letters.prop_map(|letters| letters.into_iter().collect()),
    ]
}

fn edge(numbers: Numbers) -> impl Strategy<Value = Edge> {
    (
        name(Job::MOST_NAME_CHARACTERS),
        (maybe(numbers), maybe(numbers), maybe(numbers)),
        (
            maybe(numbers),
            maybe(numbers),
            maybe(numbers),
            maybe(numbers),
        ),
        (maybe(numbers), maybe(numbers), maybe(numbers)),
    )
        .prop_map(|(name, shape, window, worth)| Edge {
            name,
            nose_radius: shape.0,
            cutting_edge_angle: shape.1,
            rake: shape.2,
            least_feed: window.0,
            most_feed: window.1,
            least_depth: window.2,
            most_depth: window.3,
            price: worth.0,
            edges: worth.1,
            regrind_time: worth.2,
        })
}

fn gears<Q: Typed + Debug + 'static>(numbers: Numbers) -> impl Strategy<Value = Gears<Q>> {
    prop_oneof![
        (maybe(numbers), maybe(numbers)).prop_map(|(from, to)| Gears::Stepless { from, to }),
        vec(entered(numbers), 0..=Job::MOST_GEARS).prop_map(Gears::Listed),
    ]
}

fn machine(numbers: Numbers) -> impl Strategy<Value = Machine> {
    (
        (
            name(Job::MOST_NAME_CHARACTERS),
            select(Rigidity::ALL.to_vec()),
            select(DialReads::ALL.to_vec()),
        ),
        (gears(numbers), gears(numbers)),
        (
            maybe(numbers),
            maybe(numbers),
            maybe(numbers),
            maybe(numbers),
            maybe(numbers),
        ),
        (maybe(numbers), maybe(numbers), maybe(numbers)),
        (maybe(numbers), maybe(numbers), maybe(numbers)),
        learned(numbers).boxed(),
    )
        .prop_map(|(choices, gears, drive, dials, stiff, learned)| Machine {
            name: choices.0,
            rigidity: choices.1,
            speeds: gears.0,
            feeds: gears.1,
            power: drive.0,
            efficiency: drive.1,
            torque: drive.2,
            swing: drive.3,
            chuck_top_speed: drive.4,
            graduation: dials.0,
            dial_reads: choices.2,
            compound_graduation: dials.1,
            fine_infeed: dials.2,
            head_stiffness: stiff.0,
            tail_stiffness: stiff.1,
            post_stiffness: stiff.2,
            learned,
        })
}

fn rates(numbers: Numbers) -> impl Strategy<Value = Rates> {
    (
        name(Job::MOST_CURRENCY_CHARACTERS),
        (
            maybe(numbers),
            maybe(numbers),
            maybe(numbers),
            maybe(numbers),
        ),
    )
        .prop_map(|(currency, sums)| Rates {
            currency,
            per_hour: sums.0,
            least: sums.1,
            consumables: sums.2,
            postage: sums.3,
        })
}

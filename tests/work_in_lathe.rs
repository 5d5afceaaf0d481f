//! What the plan says of work in the lathe, against sums by hand: how it bends, how it is dialled in, how long all of it
//! takes and what that costs.
//!
//! * Bending: the cantilever F L³/(3 E I) and the propped cantilever, as any textbook of strength of materials has them,
//!   with springs in the supports by superposition.
//! * Dialling: the offset of an axis is half the difference of opposite readings; two planes give a straight line.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::float_cmp,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/sound.rs"]
mod sound;

use std::f64::consts::PI;

use skimwright::costing::{CostPart, Counted, Feeding, Spread, Step};
use skimwright::holding::{FormPoint, Shape};
use skimwright::job::{
    DialPlane, EdgeField, Field, HoldingField, Job, MachineField, RateField, SectionField, Support,
    TimeBound, Tolerance,
};
use skimwright::plan::{Code, Level, plan};
use skimwright::quantity::{Length, Money};
use sound::{mm, set, sound, with};

#[track_caller]
fn close(what: &str, got: f64, wanted: f64, tolerance: f64) {
    assert!(
        (got - wanted).abs() <= tolerance,
        "{what}: {got}, by hand {wanted}"
    );
}

/// What gives beside the work, in millimetres a newton: chuck 20, centre 10 and tool post 25 N/µm.
const HEAD: f64 = 1e-3 / 20.0;
const TAIL: f64 = 1e-3 / 10.0;
const POST: f64 = 1e-3 / 25.0;

/// A straight shank of 18 mm, gripped up to its shoulder, that becomes 16 by 90.
fn straight(support: Support) -> Job {
    let mut job = with(
        sound(),
        &[
            (Field::Section(0, SectionField::Diameter), "18"),
            (Field::Section(0, SectionField::Length), "110"),
            (Field::WantedLength, "90"),
            (Field::ShoulderRadius, "0"),
            (Field::EndChamfer, "0"),
            (Field::PolishingStock, "0"),
            // All of the head, so that the chuck ends at the shoulder.
            (Field::Holding(HoldingField::GripLength), "30"),
            (Field::Holding(HoldingField::GripForce), "20 kN"),
            (Field::Machine(MachineField::HeadStiffness), "20 N/µm"),
            (Field::Machine(MachineField::TailStiffness), "10 N/µm"),
            (Field::Machine(MachineField::PostStiffness), "25 N/µm"),
        ],
    );
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm("0.1"),
        lower: mm("-0.1"),
    };
    job.setup.support = Some(support);
    job
}

/// E I of a bar of 16 mm, in N mm².
fn bar(job: &Job) -> f64 {
    let modulus = job
        .part
        .material
        .mechanical()
        .elastic_modulus
        .typical
        .to_mpa();
    modulus * PI * 16.0_f64.powi(4) / 64.0
}

#[test]
fn work_in_a_chuck_bends_as_a_cantilever_does() {
    let job = straight(Support::Chuck);
    let found = plan(&job);
    let holding = found.holding.unwrap();
    assert_eq!(holding.support, Support::Chuck);
    close("chuck face", holding.chuck_face.to_mm(), 0.0, 1e-9);
    close("overhang", holding.overhang.to_mm(), 90.0, 1e-9);
    close("gripped", holding.gripped_diameter.to_mm(), 40.0, 1e-9);
    // 90/16.
    close("slenderness", holding.slender.unwrap().ratio, 5.625, 1e-6);
    let force = holding.across.to_newtons();
    let last = found
        .stock_off
        .as_ref()
        .unwrap()
        .last_cut()
        .unwrap()
        .cut
        .as_ref()
        .unwrap();
    close("across", force, last.across.to_newtons(), 1e-9);
    assert!(0.0 < force);
    let form = holding.form.unwrap();
    assert_eq!(form.shape, Shape::BellMouth);
    for FormPoint {
        at,
        parting,
        size_error,
    } in &form.points
    {
        let a = at.to_mm();
        let gives = HEAD + POST + a.powi(3) / (3.0 * bar(&job));
        close("parting", parting.to_um(), force * gives * 1000.0, 1e-6);
        close("error", size_error.to_um(), 2.0 * parting.to_um(), 1e-9);
    }
    close("least at", form.least.at.to_mm(), 0.0, 0.01);
    close("greatest at", form.greatest.at.to_mm(), 90.0, 0.01);
    // Twice F L³/(3 E I): what the springs give is the same all along.
    let spread = 2.0 * force * 90.0_f64.powi(3) / (3.0 * bar(&job)) * 1000.0;
    close("taper", form.taper.to_um(), spread, 1e-4 * spread);
    // A third of 0.2 mm.
    close("allowed", holding.allowed.to_um(), 200.0 / 3.0, 1e-6);
    // And the planner used of its limit what that says.
    let load = last
        .loads
        .iter()
        .find(|it| it.limit == skimwright::cutting::Limit::Deflection)
        .unwrap();
    close(
        "load",
        load.share,
        form.taper / holding.allowed,
        1e-3 * load.share,
    );
    assert!(holding.tail.is_none());
}

#[test]
fn work_in_chuck_and_centre_bends_as_a_propped_cantilever_does() {
    let job = straight(Support::ChuckAndCentre);
    let holding = plan(&job).holding.unwrap();
    let (force, length, ei) = (holding.across.to_newtons(), 90.0_f64, bar(&job));
    let form = holding.form.unwrap();
    for FormPoint { at, parting, .. } in &form.points {
        // By superposition: what the free bar gives at the tool, less what the centre holds back.
        let a = at.to_mm();
        let at_tool = HEAD + a.powi(3) / (3.0 * ei);
        let at_end = HEAD + length.powi(3) / (3.0 * ei);
        let between = HEAD + a * a * (3.0 * length - a) / (6.0 * ei);
        let gives = at_tool - between * between / (at_end + TAIL) + POST;
        close("parting", parting.to_um(), force * gives * 1000.0, 1e-6);
    }
    // With supports that hardly give, the middle gives as the propped cantilever: F a³ b² (3 a + 4 b)/(12 E I L³).
    let mut stiff = job;
    for field in [
        MachineField::HeadStiffness,
        MachineField::TailStiffness,
        MachineField::PostStiffness,
    ] {
        set(&mut stiff, Field::Machine(field), "10000 N/µm");
    }
    let holding = plan(&stiff).holding.unwrap();
    let force = holding.across.to_newtons();
    let form = holding.form.unwrap();
    let middle = &form.points[form.points.len() / 2];
    let (a, b) = (middle.at.to_mm(), length - middle.at.to_mm());
    let bent = a.powi(3) * b * b * (3.0 * a + 4.0 * b) / (12.0 * ei * length.powi(3));
    // Two springs of 10 000 N/µm give 0.0002 µm a newton at most.
    close(
        "middle",
        middle.parting.to_um() / force,
        bent * 1000.0,
        2e-4,
    );
    assert_eq!(form.shape, Shape::Barrel);
    let tail = holding.tail.unwrap();
    assert!(Length::ZERO < form.greatest.size_error && tail.thrust.low <= tail.thrust.likely);
}

/// The usual grip is two thirds of the head: the part sticks out further by the rest.
#[test]
fn what_sticks_out_of_the_chuck_counts_the_head() {
    let holding = plan(&sound()).holding.unwrap();
    close("grip", holding.grip_length.to_mm(), 20.0, 1e-9);
    close("face", holding.chuck_face.to_mm(), -10.0, 1e-9);
    close("overhang", holding.overhang.to_mm(), 60.0, 1e-9);
    // Between centres it is the whole part.
    let mut job = sound();
    job.setup.support = Some(Support::BetweenCentres);
    let holding = plan(&job).holding.unwrap();
    close("between centres", holding.overhang.to_mm(), 80.0, 1e-9);
    assert!(holding.grip.is_none() && holding.tail.is_some());
}

/// Readings in two planes, z = 10 and z = 60 mm.
fn dialled() -> Job {
    let mut job = with(
        sound(),
        &[
            (Field::Holding(HoldingField::NearPlace), "10"),
            (Field::Holding(HoldingField::FarPlace), "60"),
        ],
    );
    let planes = [
        (DialPlane::Near, ["20", "34", "12", "-2"]),
        (DialPlane::Far, ["50", "74", "2", "-22"]),
    ];
    for (plane, readings) in planes {
        for (quarter, reading) in (0..).zip(readings) {
            set(
                &mut job,
                Field::Dial(plane, quarter),
                &format!("{reading} µm"),
            );
        }
    }
    job
}

#[test]
fn two_planes_give_offset_and_tilt_as_by_hand() {
    let dial = plan(&dialled()).dial.unwrap();
    let offset = |what: &str, got: skimwright::holding::Offset, x: f64, y: f64| {
        close(what, got.x().to_um(), x, 1e-9);
        close(what, got.y().to_um(), y, 1e-9);
    };
    // (20 − 12)/2, (34 + 2)/2; (50 − 2)/2, (74 + 22)/2.
    offset("near", dial.near.offset, 4.0, 18.0);
    let far = dial.far.unwrap();
    offset("far", far.offset, 24.0, 48.0);
    // All that is left over in the near plane: (20 + 12) and (34 − 2) have the same mean.
    close("left over", dial.near.left_over.to_um(), 0.0, 1e-9);
    // 20 and 30 µm in 50 mm are 0.4 and 0.6 µm a millimetre. The chuck ends at −10 and the part at 50:
    // 4 − 20 · 0.4 = −4 and 18 − 20 · 0.6 = 6 there, 4 + 40 · 0.4 = 20 and 18 + 40 · 0.6 = 42 at the end.
    let way = dial.dial_in.unwrap();
    close("chuck", way.at_chuck.z.to_mm(), -10.0, 1e-9);
    offset("at the chuck", way.at_chuck.shift, 4.0, -6.0);
    close("end", way.at_free_end.z.to_mm(), 50.0, 1e-9);
    offset("at the free end", way.at_free_end.shift, -24.0, -36.0);
    // The indicator shows twice √(24² + 36²) = 43.27 between the two moves.
    close(
        "between",
        way.runout_between.to_um(),
        2.0 * 24.0_f64.hypot(36.0),
        1e-9,
    );
    assert!(dial.packing.is_some());
}

#[test]
fn readings_that_say_too_little_are_said() {
    let incomplete = |job: &Job| {
        let found = plan(job);
        let said = found
            .findings
            .iter()
            .find(|it| it.code == Code::DialIncomplete);
        (
            found.dial.map(|it| it.dial_in.is_some()),
            said.map(|it| it.field),
        )
    };
    assert_eq!(incomplete(&dialled()), (Some(true), None));
    // One plane alone says where to move the chuck end, and nothing is wrong with that.
    let mut near_only = dialled();
    near_only.setup.far = skimwright::job::Plane::default();
    assert_eq!(incomplete(&near_only), (Some(false), None));
    // Three of four readings are enough, two are not.
    let mut three = dialled();
    three.setup.near.readings[3] = None;
    assert_eq!(incomplete(&three), (Some(true), None));
    let mut two = three;
    two.setup.near.readings[1] = None;
    assert_eq!(incomplete(&two).1, Some(Field::Dial(DialPlane::Near, 1)));
    // Two planes at one place, or at a place that is not said.
    let far_place = Field::Holding(HoldingField::FarPlace);
    let mut same = dialled();
    set(&mut same, far_place, "10");
    assert_eq!(incomplete(&same), (Some(false), Some(far_place)));
    let mut unsaid = dialled();
    assert!(unsaid.set_entry(far_place, None));
    assert_eq!(incomplete(&unsaid), (Some(false), Some(far_place)));
}

#[test]
fn the_whole_time_is_that_of_its_lines() {
    let mut parted = sound();
    parted.shop.cut_off_method = skimwright::job::CutOffMethod::PartingTool;
    for job in [sound(), parted] {
        let found = plan(&job);
        let time = found.time.unwrap();
        let handling: Vec<Counted> = time
            .steps
            .iter()
            .map(|line| Counted {
                each: line.each,
                count: line.count,
            })
            .collect();
        let fed: Vec<Counted> = time
            .feeding
            .iter()
            .map(|line| Counted {
                each: line.together,
                count: 1,
            })
            .collect();
        assert_eq!(time.spread, Spread::of(&handling, &fed));
        close(
            "total",
            time.total.value.to_seconds(),
            time.spread.likely.to_seconds(),
            1e-9,
        );
        // The mean by hand: a third of low, likely and high of each.
        let mean = |it: &Counted| {
            let sum = it.each.low() + it.each.likely() + it.each.high();
            sum.to_seconds() / 3.0 * f64::from(it.count)
        };
        let by_hand: f64 = handling.iter().chain(&fed).map(mean).sum();
        close("mean", time.spread.mean.to_seconds(), by_hand, 1e-6);
        let shares = time
            .steps
            .iter()
            .map(|line| line.share)
            .chain(time.feeding.iter().map(|line| line.share));
        close("shares", shares.sum(), 1.0, 1e-9);
        let range = time.total.range.unwrap();
        assert!(range.low < time.total.value && time.total.value < range.high);
        // Every pass of the plan is counted, and facing by hand: the bar of 20 mm from its rim to its axis.
        let stock = found.stock_off.unwrap();
        let cuts = stock.passes.iter().filter(|it| it.cut.is_some());
        let under_feed: f64 = cuts.map(|it| it.feeding.to_seconds()).sum();
        let of = |feeding| {
            time.feeding
                .iter()
                .find(|line| line.feeding == feeding)
                .unwrap()
        };
        close(
            "turning",
            of(Feeding::Turning).together.likely().to_seconds(),
            under_feed,
            1e-9,
        );
        assert!(
            time.feeding
                .iter()
                .any(|line| line.feeding == Feeding::Facing)
        );
        let parting = time
            .feeding
            .iter()
            .any(|line| line.feeding == Feeding::Parting);
        assert_eq!(
            parting,
            job.shop.cut_off_method == skimwright::job::CutOffMethod::PartingTool
        );
    }
}

#[test]
fn the_cost_is_its_time_at_the_rate_and_what_is_used_up() {
    assert!(plan(&sound()).cost.is_none(), "no rate, no cost");
    let job = with(
        sound(),
        &[
            (Field::Rate(RateField::PerHour), "72"),
            (Field::Rate(RateField::Consumables), "3.50"),
            (Field::Rate(RateField::Postage), "8"),
            (Field::Edge(EdgeField::Price), "10"),
            (Field::Edge(EdgeField::Edges), "4"),
        ],
    );
    let found = plan(&job);
    let (cost, time) = (found.cost.unwrap(), found.time.unwrap());
    // 72 an hour are 0.02 a second; one edge, begun, is a quarter of an insert.
    let stock = found.stock_off.unwrap();
    assert!(stock.edges_used <= 1.0);
    let fixed = 3.5 + 8.0 + 2.5;
    let money = |seconds: f64| seconds * 0.02 + fixed;
    close(
        "likely",
        cost.likely.to_currency(),
        money(time.spread.likely.to_seconds()),
        1e-9,
    );
    close(
        "low",
        cost.low.to_currency(),
        money(time.spread.low.to_seconds()),
        1e-9,
    );
    close(
        "high",
        cost.high.to_currency(),
        money(time.spread.high.to_seconds()),
        1e-9,
    );
    let part = |which| {
        cost.parts
            .iter()
            .find(|(it, _)| *it == which)
            .map(|(_, money)| money.to_currency())
    };
    assert_eq!(part(CostPart::Postage), Some(8.0));
    assert_eq!(part(CostPart::Consumables), Some(3.5));
    assert_eq!(part(CostPart::Edges), Some(2.5));
    let sum: Money = cost
        .parts
        .iter()
        .fold(Money::ZERO, |sum, (_, money)| sum + *money);
    close("parts", sum.to_currency(), cost.likely.to_currency(), 1e-9);
    // A least charge lifts all but the postage.
    let least = plan(&with(job, &[(Field::Rate(RateField::Least), "500")]))
        .cost
        .unwrap();
    assert!(least.minimum_applied);
    close("least", least.likely.to_currency(), 508.0, 1e-9);
}

#[test]
fn own_times_of_a_step_count_and_crossed_ones_are_said() {
    let packing = |low: &str, likely: &str, high: &str| {
        let mut job = sound();
        for (bound, text) in [
            (TimeBound::Low, low),
            (TimeBound::Likely, likely),
            (TimeBound::High, high),
        ] {
            if !text.is_empty() {
                set(&mut job, Field::Step(Step::Pack, bound), text);
            }
        }
        let found = plan(&job);
        let crossed = found
            .findings
            .iter()
            .find(|it| it.code == Code::TimesCrossed);
        let crossed = crossed.map(|it| (it.field, it.level));
        let line = found
            .time
            .unwrap()
            .steps
            .into_iter()
            .find(|it| it.step == Step::Pack)
            .unwrap();
        let each = [line.each.low(), line.each.likely(), line.each.high()];
        (each.map(skimwright::quantity::Time::to_seconds), crossed)
    };
    // The usual is 2, 4 and 8 min.
    assert_eq!(packing("", "", "").0, [120.0, 240.0, 480.0]);
    assert_eq!(packing("60", "90", "200"), ([60.0, 90.0, 200.0], None));
    // What is not said is stretched as the likely time is.
    assert_eq!(packing("", "120", ""), ([60.0, 120.0, 240.0], None));
    assert_eq!(packing("", "", "600"), ([120.0, 240.0, 600.0], None));
    // Out of order: said at the one that is out of order, and the usual is planned with.
    let (usual, crossed) = packing("300", "", "");
    assert_eq!(
        (usual, crossed.unwrap().0),
        (
            [120.0, 240.0, 480.0],
            Field::Step(Step::Pack, TimeBound::Low)
        )
    );
    let (_, crossed) = packing("", "600", "500");
    let (field, level) = crossed.unwrap();
    assert_eq!(field, Field::Step(Step::Pack, TimeBound::High));
    assert!(Level::Clear < level);
}

#[test]
fn the_times_of_each_pass_are_those_of_the_shop() {
    let job = with(
        sound(),
        &[
            (Field::SetTime, "20"),
            (Field::ReturnTime, "5"),
            (Field::MeasureTime, "40"),
            (Field::PolishTime, "200"),
            (Field::Step(Step::SetDepth, TimeBound::High), "60"),
        ],
    );
    let time = plan(&job).time.unwrap();
    let each = |step| {
        let line = time.steps.iter().find(|it| it.step == step).unwrap();
        [line.each.low(), line.each.likely(), line.each.high()]
            .map(skimwright::quantity::Time::to_seconds)
    };
    let near = |got: [f64; 3], wanted: [f64; 3]| {
        for (got, wanted) in got.into_iter().zip(wanted) {
            close("time", got, wanted, 1e-9);
        }
    };
    // Stretched as 9, 13 and 18 s; 6, 9 and 12 s; 18, 24 and 30 s; 1, 2 and 4 min.
    near(each(Step::SetDepth), [20.0 * 9.0 / 13.0, 20.0, 60.0]);
    near(each(Step::Return), [5.0 * 6.0 / 9.0, 5.0, 5.0 * 12.0 / 9.0]);
    near(each(Step::Measure), [30.0, 40.0, 50.0]);
    near(each(Step::Polish), [100.0, 200.0, 400.0]);
}

//! Depths of centres in a plan against DIN 332-1 form A and ISO 6411 type A (length of the cone, as printed), and
//! against the right triangle of a 60° cone: (D − d)/2/tan 30°.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/sound.rs"]
mod sound;

use skimwright::job::{BoreBottom, CentreOrder, Field, Hole, Job, SectionField};
use skimwright::plan::plan;
use skimwright::rework::{Centre, CentreOn};
use skimwright::tables::CentreDrillSize;
use sound::{codes, drilled, set, sound, tapped, with};

/// Depth of a 60° cone: 0.8660 of the difference of its diameters.
fn triangle(outer: f64, inner: f64) -> f64 {
    (outer - inner) / 2.0 / 30.0_f64.to_radians().tan()
}

#[track_caller]
fn close(got: f64, wanted: f64, tolerance: f64) {
    assert!((got - wanted).abs() <= tolerance, "{got}, wanted {wanted}");
}

/// A shank of 60 mm that becomes 50 mm by 50 mm; 30 mm fall off.
fn thick(countersink: &str) -> Job {
    with(
        sound(),
        &[
            (Field::HeadDiameter, "80"),
            (Field::Section(0, SectionField::Diameter), "60"),
            (Field::WantedDiameter, "50"),
            (Field::Countersink, countersink),
        ],
    )
}

#[track_caller]
fn centre(job: &Job) -> Centre {
    let plan = plan(job);
    plan.centre.unwrap_or_else(|| panic!("{:?}", plan.findings))
}

#[track_caller]
fn solid(centre: &Centre) -> &'static str {
    match centre.on {
        CentreOn::Solid { drill, .. } => drill,
        CentreOn::Hole { bore } => panic!("on a hole of {bore:?}"),
    }
}

#[track_caller]
fn hole(centre: &Centre) -> f64 {
    match centre.on {
        CentreOn::Hole { bore } => bore.to_mm(),
        CentreOn::Solid { drill, .. } => panic!("on solid stock with {drill}"),
    }
}

/// Drill, mouth, printed length of the cone, printed least depth of the whole hole.
#[rustfmt::skip]
const PRINTED: &[(&str, &str, f64, f64)] = &[
    ("A1",     "2.12", 0.97,  1.9), ("A1.25",  "2.65", 1.21,  2.3), ("A1.6",   "3.35", 1.52,  2.9),
    ("A2",     "4.25", 1.95,  3.7), ("A2.5",   "5.3",  2.42,  4.6), ("A3.15",  "6.7",  3.07,  5.9),
    ("A4",     "8.5",  3.9,   7.4), ("A5",    "10.6",  4.85,  9.2), ("A6.3",  "13.2",  5.98, 11.5),
    ("A8",    "17.0",  7.79, 14.8), ("A10",   "21.2",  9.7,  18.4),
];

#[test]
fn each_standard_mouth_on_solid_stock_takes_its_drill_to_the_printed_depth() {
    for &(drill, mouth, cone, least_depth) in PRINTED {
        let found = centre(&thick(mouth));
        assert_eq!(solid(&found), drill);
        // The printed column cuts 2.425 to 2.42.
        close(found.cone_depth.value.to_mm(), cone, 0.006);
        let row = CentreDrillSize::from_code(drill).unwrap().get().unwrap();
        let range = found.feed_depth.range.unwrap();
        close(
            range.low.to_mm(),
            row.pilot_length_min.to_mm() + cone,
            0.006,
        );
        close(
            range.high.to_mm(),
            row.pilot_length_max.to_mm() + cone,
            0.006,
        );
        assert!(least_depth <= range.low.to_mm(), "{drill}");
        assert!(range.low < found.feed_depth.value && found.feed_depth.value < range.high);
        // A sharp live centre reaches as deep as its own triangle.
        close(
            found.point_reach.to_mm(),
            triangle(row.countersink_diameter.unwrap().to_mm(), 0.0),
            1e-9,
        );
    }
}

#[test]
fn facing_stock_left_on_deepens_the_feed_by_itself_and_may_want_a_larger_drill() {
    let after = centre(&thick("8.5"));
    let mut job = thick("8.5");
    job.shop.centre_order = CentreOrder::BeforeFacing;
    let before = centre(&job);
    // 1 mm widens the cone to 9.65 mm at the rough face, inside the 10 mm body of A4.
    assert_eq!((solid(&after), solid(&before)), ("A4", "A4"));
    close(
        (before.feed_depth.value - after.feed_depth.value).to_mm(),
        1.0,
        1e-9,
    );
    close(
        before.cone_depth.value.to_mm(),
        after.cone_depth.value.to_mm(),
        1e-12,
    );
    // 2 mm widen it to 10.81 mm, past that body.
    set(&mut job, Field::FacingStock, "2");
    assert_eq!(solid(&centre(&job)), "A5");
}

/// Where there is no room for a cut, all that is too long is faced off, and counts before facing.
#[test]
fn all_that_is_faced_back_is_counted_before_facing() {
    let mut job = thick("8.5");
    set(&mut job, Field::WantedLength, "79");
    set(&mut job, Field::FacingStock, "0.4");
    let after = centre(&job).feed_depth.value;
    job.shop.centre_order = CentreOrder::BeforeFacing;
    close((centre(&job).feed_depth.value - after).to_mm(), 1.0, 1e-9);
}

#[test]
fn an_existing_bore_is_only_countersunk_at_its_edge() {
    for (bore, mouth) in [("8.5", "12"), ("10.2", "14.5"), ("20", "25"), ("5", "5.4")] {
        let mut job = thick(mouth);
        job.part.bores = vec![drilled(bore, "75", BoreBottom::DrillPoint)];
        let found = centre(&job);
        let (d, c): (f64, f64) = (bore.parse().unwrap(), mouth.parse().unwrap());
        close(hole(&found), d, 1e-12);
        close(found.cone_depth.value.to_mm(), triangle(c, d), 1e-9);
        close(found.feed_depth.value.to_mm(), triangle(c, d), 1e-9);
        job.shop.centre_order = CentreOrder::BeforeFacing;
        close(
            centre(&job).feed_depth.value.to_mm(),
            triangle(c, d) + 1.0,
            1e-9,
        );
    }
}

/// The crests of a thread are the surface of its hole: M10 has 8.376 mm there (ISO 724).
#[test]
fn a_thread_is_countersunk_from_its_crests() {
    let mut job = thick("12");
    job.part.bores = vec![tapped("M10", "60", "70")];
    let found = centre(&job);
    close(hole(&found), 8.376, 0.0005);
    close(
        found.cone_depth.value.to_mm(),
        triangle(12.0, 8.376),
        0.0005,
    );
    assert!(!codes(&plan(&job)).contains(&"countersink-on-thread".to_owned()));
}

/// What is left of a hole is shallower than the cone: nothing guides a countersink, so it is drilled.
#[test]
fn a_hole_with_no_depth_left_is_centred_as_solid_stock() {
    // Face at 30 mm from the free end: 2 mm of a flat hole are left, and the cone wants 3.03 mm.
    let mut job = thick("12");
    job.part.bores = vec![drilled("8.5", "32", BoreBottom::Flat)];
    assert_eq!(solid(&centre(&job)), "A6.3");
    // Only the drill point is left: a dimple of 118°.
    job.part.bores = vec![drilled("8.5", "29", BoreBottom::DrillPoint)];
    assert_eq!(solid(&centre(&job)), "A6.3");
}

/// In an old centre hole the new cone runs parallel to the old one and ends at its pilot.
#[test]
fn a_larger_mouth_on_a_centre_hole_runs_down_to_its_pilot() {
    let mut job = thick("8");
    set(&mut job, Field::WantedLength, "80");
    let size = CentreDrillSize::from_code("A3.15").unwrap();
    job.part.bores = vec![Hole::CentreHole { centre_drill: size }.into()];
    let found = centre(&job);
    close(hole(&found), 6.7, 1e-4);
    close(found.cone_depth.value.to_mm(), triangle(8.0, 3.15), 1e-4);
    // From first touch, which is all round the old cone at once.
    close(found.feed_depth.value.to_mm(), triangle(8.0, 6.7), 1e-4);
}

/// The same, with a millimetre still to be faced: the tool touches the old cone all round as before, so the stock
/// above the finished face adds nothing. A plain hole beside it is touched at the rough edge.
#[test]
fn facing_stock_round_an_old_centre_hole_adds_nothing_to_the_feed() {
    let mut job = thick("8");
    set(&mut job, Field::WantedLength, "79");
    let size = CentreDrillSize::from_code("A3.15").unwrap();
    job.part.bores = vec![Hole::CentreHole { centre_drill: size }.into()];
    // The mouth of 6.7 mm is 6.7 − 2 tan 30° = 5.545 mm wide a millimetre deeper.
    let at_face = 6.7 - 2.0 * 30.0_f64.to_radians().tan();
    for order in CentreOrder::ALL {
        job.shop.centre_order = order;
        let found = centre(&job);
        close(hole(&found), at_face, 1e-4);
        close(found.feed_depth.value.to_mm(), triangle(8.0, at_face), 1e-4);
    }
}

/// 9 mm down to half a millimetre above the finished face, then 8 mm: the edge of the step is touched first.
#[test]
fn a_step_in_the_facing_stock_is_touched_at_its_edge() {
    let mut job = thick("10");
    job.shop.centre_order = CentreOrder::BeforeFacing;
    job.part.bores = vec![
        drilled("9", "29.5", BoreBottom::Flat),
        drilled("8", "75", BoreBottom::Flat),
    ];
    let found = centre(&job);
    // At the rough edge the tool would touch at 9 − 2 tan 30° = 7.845 mm, at the step at 8 − tan 30° = 7.423 mm.
    close(
        found.feed_depth.value.to_mm(),
        triangle(10.0, 8.0) + 0.5,
        1e-4,
    );
}

#[test]
fn in_a_stepped_hole_the_cone_ends_where_it_meets_the_wall() {
    // 12 mm for 1 mm below the face, then 8 mm.
    let mut job = thick("16");
    job.part.bores = vec![
        drilled("12", "31", BoreBottom::Flat),
        drilled("8", "75", BoreBottom::Flat),
    ];
    let found = centre(&job);
    close(hole(&found), 12.0, 1e-9);
    close(found.cone_depth.value.to_mm(), triangle(16.0, 8.0), 1e-5);
    assert!(!codes(&plan(&job)).contains(&"point-touches-bottom".to_owned()));
    // A mouth of 12.5 mm ends on the 12 mm wall, and the edge of the step is in the way of the point.
    set(&mut job, Field::Countersink, "12.5");
    close(
        centre(&job).cone_depth.value.to_mm(),
        triangle(12.5, 12.0),
        1e-9,
    );
    assert!(codes(&plan(&job)).contains(&"point-touches-bottom".to_owned()));
}

/// The point may stand out into the air behind a short head with a through hole.
#[test]
fn a_through_hole_leaves_room_for_the_point() {
    let mut job = thick("36");
    set(&mut job, Field::HeadLength, "2");
    set(&mut job, Field::WantedLength, "10");
    job.part.bores = vec![drilled("30", "90", BoreBottom::Flat)];
    let found = centre(&job);
    // It reaches 31.2 mm deep, past the 12 mm that are there.
    assert!(found.point_reach.to_mm() > 31.0);
    assert!(!codes(&plan(&job)).contains(&"point-touches-bottom".to_owned()));
    set(&mut job, Field::Section(0, SectionField::Length), "81");
    job.part.bores = vec![drilled("30", "82.5", BoreBottom::Flat)];
    assert!(codes(&plan(&job)).contains(&"point-touches-bottom".to_owned()));
}

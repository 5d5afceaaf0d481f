//! What a turned shank can go into: collets and standard shanks, against the published tables and against each other.
//!
//! ISO 15488 / DIN 6499 (dimension sheets and a second list with the holders' back bores), common practice for 5C and R8;
//! ISO 3338-1, -2, -3, DIN 1835-1, DIN 6535, ASME B94.19.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::Length;
use skimwright::tables::{
    COLLETS, Collet, ColletSize, ColletSystem, Confirmed, INCLINED_FLAT_ANGLE, SHANKS, ShaftClass,
    Shank, ShankDetail, ShankForm, ShankSize, ShankTolerance, hydraulic_insertion,
};

/// Only takes up the arithmetic, in millimetres.
const SAME: f64 = 1e-9;

/// Inch values are printed in whole thousandths; the millimetre lists round to 0.01 and 0.001.
const INCH_ROUNDING: f64 = 0.006;

#[track_caller]
fn is(what: &str, got: Length, wanted: f64) {
    close(what, got, wanted, SAME);
}

#[track_caller]
fn close(what: &str, got: Length, wanted: f64, tolerance: f64) {
    let got = got.to_mm();
    assert!(
        (got - wanted).abs() <= tolerance,
        "{what}: got {got}, wanted {wanted}"
    );
}

/// ISO 15488 / DIN 6499: size; least and greatest bore; body; length; back bore of the holder.
#[rustfmt::skip]
const ISO_15488: [(u8, f64, f64, f64, f64, Option<f64>); 8] = [
    ( 8,  0.5,  5.0,  8.5, 13.6, None),
    (11,  0.5,  7.0, 11.5, 18.0, Some(7.5)),
    (16,  0.5, 10.0, 17.0, 27.5, Some(10.5)),
    (20,  1.0, 13.0, 21.0, 31.5, Some(13.5)),
    (25,  1.0, 16.0, 26.0, 34.0, Some(18.0)),
    (32,  2.0, 20.0, 33.0, 40.0, Some(23.5)),
    (40,  3.0, 26.0, 41.0, 46.0, Some(30.5)),
    (50, 10.0, 34.0, 52.0, 60.0, None),
];

/// The second list: size, least length gripped, rounded to 0.1 mm or whole millimetres; collapse above 3 mm bore.
#[rustfmt::skip]
const SECOND_LIST: [(u8, f64, f64); 8] = [
    (8, 9.0, 0.5), (11, 12.0, 0.5), (16, 18.3, 1.0), (20, 21.0, 1.0), (25, 22.7, 1.0), (32, 26.7, 1.0), (40, 30.7, 1.0),
    (50, 40.0, 2.0),
];

fn collet(code: &str) -> &'static Collet {
    ColletSize::from_code(code)
        .and_then(ColletSize::get)
        .unwrap()
}

fn shank(code: &str) -> &'static Shank {
    ShankSize::from_code(code).and_then(ShankSize::get).unwrap()
}

#[test]
fn collets_are_as_published() {
    for (size, least, greatest, body, length, back) in ISO_15488 {
        let code = format!("collet-{size}");
        let row = collet(&code);
        is(&code, row.smallest_bore, least);
        is(&code, row.largest_bore, greatest);
        is(&code, row.body_diameter, body);
        is(&code, row.overall_length, length);
        assert_eq!(row.back_bore.map(Length::to_mm), back, "{code}");
        assert_eq!(row.system, ColletSystem::Iso15488);
        assert_eq!(row.shank_class, ShaftClass::H6);
    }
    for (size, least_grip, collapse) in SECOND_LIST {
        let code = format!("collet-{size}");
        let row = collet(&code);
        close(&code, row.least_grip().unwrap(), least_grip, 0.07);
        is(&code, row.collapse(row.largest_bore), collapse);
        if row.smallest_bore <= Length::mm(3.0) {
            is(&code, row.collapse(Length::mm(3.0)), 0.5);
            is(&code, row.collapse(Length::mm(3.5)), collapse);
        }
    }
    assert_eq!(ColletSize::of(ColletSystem::Iso15488).count(), 8);
    assert_eq!(COLLETS.len(), 10);
}

/// 5C: 1/16 to 1 1/16 in, body 1.250 in, 83.3 mm long; R8: 3 mm to 7/8 in, parallel part 0.949 in, 4 in long.
#[test]
fn the_two_without_a_standard_are_as_published() {
    for (code, bores, body, length, class) in [
        ("collet-5c", (1.588, 26.987), 31.75, 83.3, ShaftClass::H9),
        ("collet-r8", (3.0, 22.225), 24.105, 101.6, ShaftClass::H6),
    ] {
        let row = collet(code);
        close(code, row.smallest_bore, bores.0, 0.001);
        close(code, row.largest_bore, bores.1, 0.001);
        close(code, row.body_diameter, body, 0.001);
        is(code, row.overall_length, length);
        is(code, row.collapse(row.largest_bore), 0.1);
        assert_eq!(row.shank_class, class);
        assert_eq!((row.back_bore, row.least_grip()), (None, None));
        assert_eq!(row.confirmed_bores, Confirmed::Memory);
    }
}

/// The ranges of neighbouring bores meet: in steps of 0.01 mm every diameter of the range is held, none above it.
#[test]
fn no_diameter_in_the_range_is_unheld() {
    for row in ColletSize::of(ColletSystem::Iso15488).map(|size| size.get().unwrap()) {
        let mut held = 0;
        for hundredth in 0..=4000 {
            let diameter = Length::mm(f64::from(hundredth) / 100.0);
            if diameter < row.smallest_bore || row.largest_bore < diameter {
                assert_eq!(row.nominal_bore_for(diameter), None);
                continue;
            }
            held += 1;
            let bore = row.nominal_bore_for(diameter).unwrap();
            let what = format!("{} at {}", row.code, diameter.to_mm());
            assert!(diameter <= bore + Length::mm(SAME), "{what}");
            assert!(
                bore - row.collapse(bore) <= diameter + Length::mm(SAME),
                "{what}"
            );
            assert!(bore <= row.largest_bore + Length::mm(SAME), "{what}");
        }
        assert!(held > 400);
    }
}

#[test]
fn a_bore_is_found_for_a_shank() {
    for (code, diameter, bore) in [
        ("collet-8", 4.6, Some(5.0)),
        ("collet-16", 3.0, Some(3.0)),
        ("collet-16", 3.000_000_4, Some(3.0)),
        ("collet-16", 3.01, Some(4.0)),
        ("collet-16", 2.2, Some(2.5)),
        ("collet-32", 19.05, Some(20.0)),
        ("collet-50", 10.5, Some(12.0)),
        ("collet-50", 9.0, None),
        // 5C by sixty-fourths and whole millimetres.
        ("collet-5c", 25.4, Some(25.4)),
        ("collet-5c", 25.0, Some(25.0)),
        ("collet-5c", 24.95, Some(25.0)),
        ("collet-5c", 24.89, None),
        ("collet-5c", 25.41, None),
        ("collet-5c", 26.9, Some(26.987_5)),
        ("collet-5c", 27.0, None),
        // R8 by sixteenths: 25/64 in is 9.92 mm and lies within 0.1 of 10 mm, 27/64 in has no bore.
        ("collet-r8", 12.7, Some(12.7)),
        ("collet-r8", 9.922, Some(10.0)),
        ("collet-r8", 10.716, None),
        ("collet-r8", 22.225, Some(22.225)),
        ("collet-r8", 22.9, None),
    ] {
        let got = collet(code)
            .nominal_bore_for(Length::mm(diameter))
            .map(Length::to_mm);
        let fits = match (got, bore) {
            (Some(got), Some(bore)) => f64::abs(got - bore) < 1e-6,
            (got, bore) => got == bore,
        };
        assert!(fits, "{code} at {diameter}: got {got:?}, wanted {bore:?}");
    }
}

/// A bigger collet is bigger in everything, and a shank passes through the hole behind it.
#[test]
fn collets_grow_with_their_size() {
    let rows: Vec<_> = ColletSize::of(ColletSystem::Iso15488)
        .map(|size| size.get().unwrap())
        .collect();
    for pair in rows.windows(2) {
        assert!(pair[0].largest_bore < pair[1].largest_bore);
        assert!(pair[0].smallest_bore <= pair[1].smallest_bore);
        assert!(pair[0].body_diameter < pair[1].body_diameter);
        assert!(pair[0].overall_length < pair[1].overall_length);
    }
    for row in COLLETS {
        assert!(row.largest_bore < row.body_diameter);
        assert!(
            row.back_bore
                .is_none_or(|back| row.largest_bore < back && back < row.body_diameter)
        );
    }
}

/// Standard, code of our row, diameter, class, length l1.
#[rustfmt::skip]
const PLAIN: &[(&str, &str, f64, &str, f64)] = &[
    ("ISO 3338-1", "plain-3", 3.0, "h8", 28.0),
    ("ISO 3338-1", "plain-4", 4.0, "h8", 28.0),
    ("ISO 3338-1", "plain-5", 5.0, "h8", 28.0),
    ("ISO 3338-1", "plain-6", 6.0, "h8", 36.0),
    ("ISO 3338-1", "plain-8", 8.0, "h8", 36.0),
    ("ISO 3338-1", "plain-10", 10.0, "h8", 40.0),
    ("ISO 3338-1", "plain-12", 12.0, "h8", 45.0),
    ("ISO 3338-1", "plain-16", 16.0, "h8", 48.0),
    ("ISO 3338-1", "plain-20", 20.0, "h8", 50.0),
    ("ISO 3338-1", "plain-25", 25.0, "h8", 56.0),
    ("ISO 3338-1", "plain-32", 32.0, "h8", 60.0),
    ("ISO 3338-1", "plain-40", 40.0, "h8", 70.0),
    ("ISO 3338-1", "plain-50", 50.0, "h8", 80.0),
    ("ISO 3338-1", "plain-63", 63.0, "h8", 90.0),
    ("DIN 1835-1 A", "plain-3", 3.0, "h8", 28.0),
    ("DIN 1835-1 A", "plain-4", 4.0, "h8", 28.0),
    ("DIN 1835-1 A", "plain-5", 5.0, "h8", 28.0),
    ("DIN 1835-1 A", "plain-6", 6.0, "h8", 36.0),
    ("DIN 1835-1 A", "plain-8", 8.0, "h8", 36.0),
    ("DIN 1835-1 A", "plain-10", 10.0, "h8", 40.0),
    ("DIN 1835-1 A", "plain-12", 12.0, "h8", 45.0),
    ("DIN 1835-1 A", "plain-16", 16.0, "h8", 48.0),
    ("DIN 1835-1 A", "plain-20", 20.0, "h8", 50.0),
    ("DIN 1835-1 A", "plain-25", 25.0, "h8", 56.0),
    ("DIN 1835-1 A", "plain-32", 32.0, "h8", 60.0),
    ("DIN 1835-1 A", "plain-40", 40.0, "h8", 70.0),
    ("DIN 1835-1 A", "plain-50", 50.0, "h8", 80.0),
    ("DIN 1835-1 A", "plain-63", 63.0, "h8", 90.0),
    ("DIN 6535 HA", "plain-3", 3.0, "h6", 28.0),
    ("DIN 6535 HA", "plain-4", 4.0, "h6", 28.0),
    ("DIN 6535 HA", "plain-5", 5.0, "h6", 28.0),
    ("DIN 6535 HA", "plain-6", 6.0, "h6", 36.0),
    ("DIN 6535 HA", "plain-8", 8.0, "h6", 36.0),
    ("DIN 6535 HA", "plain-10", 10.0, "h6", 40.0),
    ("DIN 6535 HA", "plain-12", 12.0, "h6", 45.0),
    ("DIN 6535 HA", "plain-14", 14.0, "h6", 45.0),
    ("DIN 6535 HA", "plain-16", 16.0, "h6", 48.0),
    ("DIN 6535 HA", "plain-18", 18.0, "h6", 48.0),
    ("DIN 6535 HA", "plain-20", 20.0, "h6", 50.0),
    ("DIN 6535 HA", "plain-25", 25.0, "h6", 56.0),
    ("DIN 6535 HA", "plain-32", 32.0, "h6", 60.0),
];

/// Standard, code of our row, diameter, l1; the four sizes of the flat; spacing of a second one.
type Flatted = (&'static str, &'static str, f64, f64, [f64; 4], Option<f64>);

/// Standard, code of our row, diameter, l1; length of the flat, its middle from the end, height over it, its depth;
/// spacing of a second flat. Class h6 throughout.
#[rustfmt::skip]
const FLAT: &[Flatted] = &[
    ("ISO 3338-2", "flat-6", 6.0, 36.0, [4.2, 18.0, 4.8, 1.2], None),
    ("ISO 3338-2", "flat-8", 8.0, 36.0, [5.5, 18.0, 6.6, 1.4], None),
    ("ISO 3338-2", "flat-10", 10.0, 40.0, [7.0, 20.0, 8.4, 1.6], None),
    ("ISO 3338-2", "flat-12", 12.0, 45.0, [8.0, 22.5, 10.4, 1.6], None),
    ("ISO 3338-2", "flat-16", 16.0, 48.0, [10.0, 24.0, 14.2, 1.8], None),
    ("ISO 3338-2", "flat-20", 20.0, 50.0, [11.0, 25.0, 18.2, 1.8], None),
    ("ISO 3338-2", "flat-25", 25.0, 56.0, [12.0, 32.0, 23.0, 2.0], Some(17.0)),
    ("ISO 3338-2", "flat-32", 32.0, 60.0, [14.0, 36.0, 30.0, 2.0], Some(19.0)),
    ("ISO 3338-2", "flat-40", 40.0, 70.0, [14.0, 40.0, 38.0, 2.0], Some(19.0)),
    ("ISO 3338-2", "flat-50", 50.0, 80.0, [18.0, 45.0, 47.8, 2.2], Some(23.0)),
    ("ISO 3338-2", "flat-63", 63.0, 90.0, [18.0, 50.0, 60.8, 2.2], Some(23.0)),
    ("DIN 1835-1 B", "flat-6", 6.0, 36.0, [4.2, 18.0, 4.8, 1.2], None),
    ("DIN 1835-1 B", "flat-8", 8.0, 36.0, [5.5, 18.0, 6.6, 1.4], None),
    ("DIN 1835-1 B", "flat-10", 10.0, 40.0, [7.0, 20.0, 8.4, 1.6], None),
    ("DIN 1835-1 B", "flat-12", 12.0, 45.0, [8.0, 22.5, 10.4, 1.6], None),
    ("DIN 1835-1 B", "flat-16", 16.0, 48.0, [10.0, 24.0, 14.2, 1.8], None),
    ("DIN 1835-1 B", "flat-20", 20.0, 50.0, [11.0, 25.0, 18.2, 1.8], None),
    ("DIN 1835-1 B", "flat-25", 25.0, 56.0, [12.0, 32.0, 23.0, 2.0], Some(17.0)),
    ("DIN 1835-1 B", "flat-32", 32.0, 60.0, [14.0, 36.0, 30.0, 2.0], Some(19.0)),
    ("DIN 1835-1 B", "flat-40", 40.0, 70.0, [14.0, 40.0, 38.0, 2.0], Some(19.0)),
    ("DIN 1835-1 B", "flat-50", 50.0, 80.0, [18.0, 45.0, 47.8, 2.2], Some(23.0)),
    ("DIN 1835-1 B", "flat-63", 63.0, 90.0, [18.0, 50.0, 60.8, 2.2], Some(23.0)),
    ("DIN 6535 HB", "flat-6-hb", 6.0, 36.0, [4.2, 18.0, 5.1, 0.9], None),
    ("DIN 6535 HB", "flat-8-hb", 8.0, 36.0, [5.5, 18.0, 6.9, 1.1], None),
    ("DIN 6535 HB", "flat-10-hb", 10.0, 40.0, [7.0, 20.0, 8.5, 1.5], None),
    ("DIN 6535 HB", "flat-12", 12.0, 45.0, [8.0, 22.5, 10.4, 1.6], None),
    ("DIN 6535 HB", "flat-14", 14.0, 45.0, [8.0, 22.5, 12.7, 1.3], None),
    ("DIN 6535 HB", "flat-16", 16.0, 48.0, [10.0, 24.0, 14.2, 1.8], None),
    ("DIN 6535 HB", "flat-18", 18.0, 48.0, [10.0, 24.0, 16.2, 1.8], None),
    ("DIN 6535 HB", "flat-20", 20.0, 50.0, [11.0, 25.0, 18.2, 1.8], None),
    ("DIN 6535 HB", "flat-25", 25.0, 56.0, [12.0, 32.0, 23.0, 2.0], Some(17.0)),
    ("DIN 6535 HB", "flat-32", 32.0, 60.0, [14.0, 36.0, 30.0, 2.0], Some(19.0)),
];

/// Standard, code of our row, diameter, l1, where the flat runs out, where it is measured.
#[rustfmt::skip]
const INCLINED: &[(&str, &str, f64, f64, f64, f64)] = &[
    ("DIN 1835-1 E", "inclined-6", 6.0, 36.0, 25.0, 18.0),
    ("DIN 6535 HE", "inclined-6", 6.0, 36.0, 25.0, 18.0),
    ("DIN 1835-1 E", "inclined-8", 8.0, 36.0, 25.0, 18.0),
    ("DIN 6535 HE", "inclined-8", 8.0, 36.0, 25.0, 18.0),
    ("DIN 1835-1 E", "inclined-10", 10.0, 40.0, 28.0, 20.0),
    ("DIN 6535 HE", "inclined-10", 10.0, 40.0, 28.0, 20.0),
    ("DIN 1835-1 E", "inclined-12", 12.0, 45.0, 33.0, 22.5),
    ("DIN 6535 HE", "inclined-12", 12.0, 45.0, 33.0, 22.5),
    ("DIN 6535 HE", "inclined-14", 14.0, 45.0, 33.0, 22.5),
    ("DIN 1835-1 E", "inclined-16", 16.0, 48.0, 36.0, 24.0),
    ("DIN 6535 HE", "inclined-16", 16.0, 48.0, 36.0, 24.0),
    ("DIN 6535 HE", "inclined-18", 18.0, 48.0, 36.0, 24.0),
    ("DIN 1835-1 E", "inclined-20", 20.0, 50.0, 38.0, 25.0),
    ("DIN 6535 HE", "inclined-20", 20.0, 50.0, 38.0, 25.0),
    ("DIN 1835-1 E", "inclined-25", 25.0, 56.0, 44.0, 32.0),
    ("DIN 6535 HE", "inclined-25", 25.0, 56.0, 44.0, 32.0),
    ("DIN 1835-1 E", "inclined-32", 32.0, 60.0, 48.0, 35.0),
    ("DIN 6535 HE", "inclined-32", 32.0, 60.0, 48.0, 35.0),
];

/// Standard, code of our row, diameter, l1, length of the thread.
#[rustfmt::skip]
const THREADED: &[(&str, &str, f64, f64, f64)] = &[
    ("ISO 3338-3", "threaded-6", 6.0, 36.0, 10.0),
    ("ISO 3338-3", "threaded-10", 10.0, 40.0, 10.0),
    ("ISO 3338-3", "threaded-12", 12.0, 45.0, 10.0),
    ("ISO 3338-3", "threaded-16", 16.0, 48.0, 10.0),
    ("ISO 3338-3", "threaded-20", 20.0, 50.0, 15.0),
    ("ISO 3338-3", "threaded-25", 25.0, 56.0, 15.0),
    ("ISO 3338-3", "threaded-32", 32.0, 60.0, 15.0),
];

/// ASME B94.19 in millimetres: code of our row, diameter, length, length of the flat, height over it, its depth.
#[rustfmt::skip]
const INCH: &[(&str, f64, f64, f64, f64, f64)] = &[
    ("inch-flat-3/8", 9.525, 39.69, 7.112, 8.255, 1.27),
    ("inch-flat-1/2", 12.7, 45.24, 8.382, 11.176, 1.524),
    ("inch-flat-5/8", 15.875, 48.42, 10.16, 14.224, 1.651),
    ("inch-flat-3/4", 19.05, 51.59, 11.557, 17.145, 1.905),
    ("inch-flat-7/8", 22.225, 51.59, 11.557, 20.574, 1.651),
    ("inch-flat-1", 25.4, 57.94, 13.081, 23.495, 1.905),
    ("inch-flat-1-1/4", 31.75, 57.94, 13.081, 29.362, 2.388),
    ("inch-flat-1-1/2", 38.1, 68.26, 13.081, 35.712, 2.388),
    ("inch-flat-2", 50.8, 82.55, 17.78, 48.26, 2.54),
    ("inch-flat-2-1/2", 63.5, 88.9, 17.78, 60.96, 2.54),
];

/// Bores of hydraulic chucks with their least insertion: makers' usual figures.
#[rustfmt::skip]
const HYDRAULIC: [(f64, f64); 10] = [
    (6.0, 27.0), (8.0, 27.0), (10.0, 31.0), (12.0, 36.0), (14.0, 36.0), (16.0, 39.0), (18.0, 39.0), (20.0, 41.0),
    (25.0, 47.0), (32.0, 51.0),
];

#[test]
fn plain_shanks_are_as_published() {
    for (standard, code, diameter, class, length) in PLAIN {
        let row = shank(code);
        is(code, row.diameter, *diameter);
        is(code, row.length, *length);
        assert_eq!(row.detail, ShankDetail::Plain);
        assert!(row.standards.contains(standard), "{code}: {standard}");
        // Where the standards ask two classes, ours is the finer, whose limits lie within the other's.
        let asked =
            skimwright::tables::deviations(ShaftClass::from_code(class).unwrap(), row.diameter)
                .unwrap();
        let ours = row.deviations().unwrap();
        assert!(
            asked.lower <= ours.lower && ours.upper <= asked.upper,
            "{code}"
        );
        let asked_by_one = PLAIN
            .iter()
            .any(|other| other.1 == *code && named(row, other.3));
        assert!(asked_by_one, "{code}");
    }
}

fn named(row: &Shank, class: &str) -> bool {
    row.tolerance == ShankTolerance::Class(ShaftClass::from_code(class).unwrap())
}

#[test]
fn flatted_shanks_are_as_published() {
    for (standard, code, diameter, length, [flat_length, middle, height, depth], spacing) in FLAT {
        let row = shank(code);
        is(code, row.diameter, *diameter);
        is(code, row.length, *length);
        let ShankDetail::Flat(flat) = row.detail else {
            panic!("{code} has no flat");
        };
        is(code, flat.length, *flat_length);
        is(code, flat.centre_from_end.unwrap(), *middle);
        is(code, flat.height, *height);
        // The height over the flat is the diameter less its depth.
        is(code, row.diameter - flat.height, *depth);
        assert_eq!(flat.second_spacing.map(Length::to_mm), *spacing, "{code}");
        assert!(row.standards.contains(standard), "{code}: {standard}");
        assert!(named(row, "h6"));
    }
}

#[test]
fn inclined_and_threaded_shanks_are_as_published() {
    for (standard, code, diameter, length, runs_out, measured_at) in INCLINED {
        let row = shank(code);
        is(code, row.diameter, *diameter);
        is(code, row.length, *length);
        let ShankDetail::InclinedFlat(flat) = row.detail else {
            panic!("{code} has no inclined flat");
        };
        is(code, flat.runs_out, *runs_out);
        is(code, flat.measured_at, *measured_at);
        assert!(row.standards.contains(standard), "{code}: {standard}");
        assert!(named(row, "h6"));
    }
    assert!((INCLINED_FLAT_ANGLE.to_degrees() - 2.0).abs() < SAME);
    for (standard, code, diameter, length, thread_length) in THREADED {
        let row = shank(code);
        is(code, row.diameter, *diameter);
        is(code, row.length, *length);
        let ShankDetail::Threaded(thread) = row.detail else {
            panic!("{code} has no thread");
        };
        is(code, thread.length, *thread_length);
        is(code, thread.major, diameter - 0.1);
        assert!(row.standards.contains(standard), "{code}: {standard}");
        assert!(named(row, "h8"));
    }
}

#[test]
fn inch_shanks_are_as_published() {
    for (code, diameter, length, flat_length, height, depth) in INCH {
        let row = shank(code);
        close(code, row.diameter, *diameter, INCH_ROUNDING);
        close(code, row.length, *length, INCH_ROUNDING);
        let ShankDetail::Flat(flat) = row.detail else {
            panic!("{code} has no flat");
        };
        close(code, flat.length, *flat_length, INCH_ROUNDING);
        close(code, flat.height, *height, INCH_ROUNDING);
        close(code, row.diameter - flat.height, *depth, INCH_ROUNDING);
        assert_eq!((flat.centre_from_end, flat.second_spacing), (None, None));
        let limits = row.deviations().unwrap();
        assert_eq!(limits.upper, Length::ZERO);
        close(code, limits.lower, -0.0127, SAME);
    }
}

/// Every row is printed somewhere, and every name in a row's list of standards stands in one of the lists above.
#[test]
fn no_row_is_without_its_source() {
    let metric = |code: &str| -> Vec<&str> {
        let plain = PLAIN.iter().map(|row| (row.0, row.1));
        let flat = FLAT.iter().map(|row| (row.0, row.1));
        let inclined = INCLINED.iter().map(|row| (row.0, row.1));
        let threaded = THREADED.iter().map(|row| (row.0, row.1));
        let all = plain.chain(flat).chain(inclined).chain(threaded);
        all.filter(|row| row.1 == code).map(|row| row.0).collect()
    };
    for row in SHANKS {
        if INCH.iter().any(|inch| inch.0 == row.code) {
            continue;
        }
        let printed = metric(row.code);
        let mut named: Vec<&str> = row.standards.split(", ").collect();
        // Form D of DIN 1835-1 is the shank of ISO 3338-3, which the list names.
        named.retain(|name| *name != "DIN 1835-1 D");
        assert_eq!(named.len(), printed.len(), "{}", row.code);
        assert!(
            named.iter().all(|name| printed.contains(name)),
            "{}",
            row.code
        );
    }
}

/// A flat lies within the shank, and so does a second one; it takes away less than a quarter of the diameter.
#[test]
fn flats_lie_within_the_shank() {
    let mut flats = 0;
    for row in SHANKS {
        assert!(Length::ZERO < row.length && row.deviations().is_some());
        match row.detail {
            ShankDetail::Flat(flat) => {
                flats += 1;
                assert!(flat.height < row.diameter && row.diameter * 0.75 < flat.height);
                let Some(middle) = flat.centre_from_end else {
                    continue;
                };
                let half = flat.length / 2.0;
                assert!(half < middle && middle + half < row.length, "{}", row.code);
                if let Some(spacing) = flat.second_spacing {
                    assert!(flat.length < spacing);
                    // The second flat lies towards the end.
                    assert!(middle - spacing - half > Length::ZERO, "{}", row.code);
                }
            }
            ShankDetail::InclinedFlat(flat) => {
                assert!(flat.measured_at < flat.runs_out && flat.runs_out < row.length);
            }
            ShankDetail::Threaded(thread) => assert!(thread.length < row.length),
            ShankDetail::Plain => {}
        }
    }
    assert_eq!(flats, ShankSize::of(ShankForm::Flat).count());
    let counted: usize = ShankForm::ALL
        .into_iter()
        .map(|form| ShankSize::of(form).count())
        .sum();
    assert_eq!(counted, SHANKS.len());
}

/// The same diameter has the same length in every metric form.
#[test]
fn a_diameter_has_one_length() {
    let metric = |row: &&Shank| matches!(row.tolerance, ShankTolerance::Class(_));
    for one in SHANKS.iter().filter(metric) {
        for other in SHANKS.iter().filter(metric) {
            if one.diameter == other.diameter {
                assert_eq!(one.length, other.length, "{} and {}", one.code, other.code);
            }
        }
    }
}

#[test]
fn hydraulic_chucks_take_less_than_a_whole_shank() {
    for (bore, depth) in HYDRAULIC {
        is(
            "hydraulic",
            hydraulic_insertion(Length::mm(bore)).unwrap(),
            depth,
        );
        let plain = shank(&format!("plain-{bore}"));
        assert!(Length::mm(depth) < plain.length);
    }
    for odd in [5.0, 6.1, 22.0, 40.0] {
        assert_eq!(hydraulic_insertion(Length::mm(odd)), None);
    }
}

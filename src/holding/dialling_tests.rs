//! Readings by hand and by law.

use super::*;
use crate::quantity::Angle;
use core::f64::consts::TAU;
use proptest::prelude::*;

fn um(value: f64) -> Length {
    Length::um(value)
}

fn mm(value: f64) -> Length {
    Length::mm(value)
}

fn read(readings: &[f64]) -> Dialled {
    let readings: Vec<_> = readings.iter().map(|it| Some(um(*it))).collect();
    Dialled::from_readings(&readings).unwrap()
}

#[track_caller]
fn is(offset: Offset, x: f64, y: f64) {
    let off = (offset - Offset::new(um(x), um(y))).size();
    assert!(off.to_um() < 1e-9, "{offset:?}, wanted {x} {y}");
}

/// Worked apart: z 10 reads 20, 34, 12, −2 and z 60 reads 50, 74, 2, −22 µm at 0°, 90°, 180°, 270°.
fn two_planes() -> DialledAxis {
    let plane = |z, readings: &[f64]| DialledPlane {
        z: mm(z),
        dialled: read(readings),
    };
    DialledAxis::new(
        plane(10.0, &[20.0, 34.0, 12.0, -2.0]),
        plane(60.0, &[50.0, 74.0, 2.0, -22.0]),
    )
    .unwrap()
}

#[test]
fn the_worked_two_planes() {
    let axis = two_planes();
    is(axis.offset_at(mm(10.0)), 4.0, 18.0);
    is(axis.offset_at(mm(60.0)), 24.0, 48.0);
    is(axis.tilt_over(mm(1.0)), 0.4, 0.6);
    is(axis.offset_at(mm(0.0)), 0.0, 12.0);
    is(axis.offset_at(mm(100.0)), 40.0, 72.0);
}

/// From the same: at the chuck, z = 0, by 12 µm away from 90°; then at z = 100 by (−40, −60) µm.
#[test]
fn dialling_the_worked_planes_in() {
    let axis = two_planes();
    let plan = axis
        .dial_in(mm(0.0), mm(100.0), Jaws::Four, um(1.0))
        .unwrap();
    is(plan.at_chuck.shift, 0.0, -12.0);
    assert_eq!(plan.at_chuck.nearest.jaw, 4);
    is(plan.at_free_end.shift, -40.0, -60.0);
    // atan(60/40) = 56.3°, in the third quarter: 236.3°, nearest to the jaw at 270°, 33.7° before it.
    assert_eq!(plan.at_free_end.nearest.jaw, 4);
    assert!((plan.at_free_end.nearest.beside.to_degrees() + 33.690).abs() < 1e-3);
    let between = 2.0 * 40.0_f64.hypot(60.0);
    assert!((plan.runout_between.to_um() - between).abs() < 1e-9);
    assert!((axis.runout_after_chuck(mm(0.0), mm(100.0)).to_um() - between).abs() < 1e-9);
    // Shares at z = 100 are −0.8 and 1.8, each plane is wrong by √½ µm; runout is twice the offset.
    let wrong = 2.0 * 0.5_f64.sqrt() * 0.8_f64.hypot(1.8);
    assert!((plan.remains_at_free_end.to_um() - wrong).abs() < 1e-9);
}

#[test]
fn two_places_tell_one_line() {
    let found = read(&[30.0, 10.0]);
    is(found.offset, 10.0, 0.0);
    assert_eq!(found.known, Known::AlongOneLine);
    assert_eq!(found.direction_error(um(1.0)), None);
    let plane = |z| DialledPlane {
        z: mm(z),
        dialled: found,
    };
    assert_eq!(
        DialledAxis::new(plane(0.0), plane(50.0)),
        Err(DiallingError::OneLineOnly)
    );
}

#[test]
fn what_tells_nothing_is_refused() {
    let some = |count: usize| vec![Some(um(1.0)); count];
    let from = |readings: &[Option<Length>]| Dialled::from_readings(readings).unwrap_err();
    assert_eq!(from(&some(0)), DiallingError::TooFew);
    assert_eq!(from(&some(1)), DiallingError::TooFew);
    assert_eq!(from(&some(9)), DiallingError::TooMany);
    let mut gaps = some(4);
    gaps[0] = None;
    assert!(Dialled::from_readings(&gaps).is_ok());
    gaps[2] = None;
    assert_eq!(from(&gaps), DiallingError::Missing { more: 1 });
    assert_eq!(from(&[None, None]), DiallingError::Missing { more: 2 });
    let plane = DialledPlane {
        z: mm(5.0),
        dialled: read(&[1.0, 2.0, 3.0, 4.0]),
    };
    assert_eq!(
        DialledAxis::new(plane, plane),
        Err(DiallingError::SamePlane)
    );
    let refused = two_planes().dial_in(mm(3.0), mm(3.0), Jaws::Three, um(1.0));
    assert_eq!(refused, Err(DiallingError::SamePlane));
}

/// Oval work reads the same twice a turn: four readings leave it over, and the offset does not see it.
#[test]
fn oval_work_is_left_over() {
    let found = read(&[20.0 + 5.0, 34.0 - 5.0, 12.0 + 5.0, -2.0 - 5.0]);
    is(found.offset, 4.0, 18.0);
    assert!((found.left_over.to_um() - 5.0).abs() < 1e-9);
    assert!((found.span.to_um() - 36.0).abs() < 1e-9);
    assert!(read(&[1.0, 5.0, 9.0]).left_over.to_um() < 1e-9);
}

/// e = 18.44 µm and each reading good for 1 µm: √½/18.44 of a radian.
#[test]
fn the_direction_is_as_good_as_the_readings() {
    let found = read(&[20.0, 34.0, 12.0, -2.0]);
    let off = found.direction_error(um(1.0)).unwrap();
    assert!((off.to_degrees() - 2.198).abs() < 1e-3, "{off:?}");
    assert_eq!(found.direction_error(um(30.0)), None);
}

proptest! {
    /// Readings made from an offset give it back, whatever their number, with any mean and with one missing.
    #[test]
    fn readings_of_an_offset_give_it_back(
        count in 3_usize..=8, size in 0.0..200.0_f64, degrees in 0.0..360.0_f64, mean in -500.0..500.0_f64, gap in 0_usize..8,
    ) {
        let offset = Offset::towards(um(size), Angle::degrees(degrees));
        let mut readings: Vec<_> = (0_u8..8)
            .take(count)
            .map(|index| {
                let at = Angle::radians(TAU * f64::from(index) / places(count));
                Some(um(mean) + offset.part_towards(at))
            })
            .collect();
        let found = Dialled::from_readings(&readings).unwrap();
        prop_assert!((found.offset - offset).size().to_um() < 1e-9);
        prop_assert!(found.left_over.to_um() < 1e-9);
        prop_assert!((found.error_share - (2.0 / places(count)).sqrt()).abs() < 1e-12);
        if count > 3 {
            readings[gap % count] = None;
            let without = Dialled::from_readings(&readings).unwrap();
            prop_assert!((without.offset - offset).size().to_um() < 1e-9);
            prop_assert!(without.error_share >= found.error_share);
        }
    }

    /// One reading wrong by d moves the offset by no more than the error share times d.
    #[test]
    fn one_wrong_reading_moves_little(count in 3_usize..=8, which in 0_usize..8, wrong in -20.0..20.0_f64) {
        let mut readings = vec![Some(um(7.0)); count];
        readings[which % count] = Some(um(7.0 + wrong));
        let found = Dialled::from_readings(&readings).unwrap();
        let most = found.error_share * wrong.abs() * (1.0 + 1e-9) + 1e-9;
        prop_assert!(found.offset.size().to_um() <= most);
    }

    /// Both moves together bring the axis onto that of the spindle, everywhere.
    #[test]
    fn both_moves_make_it_run_true(
        readings in proptest::collection::vec(-100.0..100.0_f64, 8), chuck in -30.0..0.0_f64, end in 80.0..200.0_f64,
        z in -50.0..250.0_f64,
    ) {
        let plane = |z, readings: &[f64]| DialledPlane { z: mm(z), dialled: read(readings) };
        let axis = DialledAxis::new(plane(5.0, &readings[..4]), plane(70.0, &readings[4..])).unwrap();
        let plan = axis.dial_in(mm(chuck), mm(end), Jaws::Three, um(1.0)).unwrap();
        // The first move shifts all alike, the second grows evenly from the chuck.
        let turned = plan.at_free_end.shift * ((z - chuck) / (end - chuck));
        let left = axis.offset_at(mm(z)) + plan.at_chuck.shift + turned;
        prop_assert!(left.size().to_um() < 1e-9);
    }
}

fn places(count: usize) -> f64 {
    (0..count).map(|_| 1.0).sum()
}

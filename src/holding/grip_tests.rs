//! Grips by hand.

use super::*;

fn newtons(value: f64) -> Force {
    Force::newtons(value)
}

fn load() -> GripLoad {
    GripLoad {
        cutting: newtons(320.0),
        cut_diameter: Length::mm(18.0),
        gripped_diameter: Length::mm(20.0),
        feed: newtons(130.0),
        tail_thrust: newtons(300.0),
        stop: Force::ZERO,
    }
}

const ONE: GripSafety = GripSafety {
    cut: 1.0,
    chuck: 1.0,
};

const FRICTION: Friction = Friction {
    tangential: 0.12,
    axial: 0.15,
};

/// Turning 320 · 0.9/0.12 = 2400 N; sliding (130 + 300)/0.15 = 2866.7 N; both by Pythagoras.
#[test]
fn turning_and_sliding_by_hand() {
    let needed = grip_needed(load(), FRICTION, ONE, Force::ZERO).unwrap();
    assert!((needed.turning.to_newtons() - 2400.0).abs() < 1e-9);
    assert!((needed.sliding.to_newtons() - 430.0 / 0.15).abs() < 1e-9);
    assert!((needed.together.to_newtons() - 3738.7).abs() < 0.1);
    let safe = grip_needed(load(), FRICTION, GripSafety::default(), newtons(100.0)).unwrap();
    assert!((safe.turning.to_newtons() - 1.5 * (3600.0 + 100.0)).abs() < 1e-9);
    // The tail's thrust is what it is: only the forces of the cut have the safety factor.
    assert!((safe.sliding.to_newtons() - 1.5 * (495.0 / 0.15 + 100.0)).abs() < 1e-9);
}

#[test]
fn a_stop_bears_a_push_and_no_pull() {
    let stop = newtons(5000.0);
    let pushed = GripLoad { stop, ..load() };
    let sliding = |load| {
        grip_needed(load, FRICTION, ONE, Force::ZERO)
            .unwrap()
            .sliding
    };
    assert_eq!(sliding(pushed), Force::ZERO);
    let pulled = GripLoad {
        feed: newtons(-430.0),
        stop,
        ..load()
    };
    assert!((sliding(pulled).to_newtons() - 130.0 / 0.15).abs() < 1e-9);
}

#[test]
fn without_friction_or_work_nothing_holds() {
    let slippery = Friction {
        tangential: 0.0,
        ..FRICTION
    };
    assert_eq!(grip_needed(load(), slippery, ONE, Force::ZERO), None);
    let nothing = GripLoad {
        gripped_diameter: Length::ZERO,
        ..load()
    };
    assert_eq!(grip_needed(nothing, FRICTION, ONE, Force::ZERO), None);
}

#[test]
fn teeth_do_not_bite_hard_work() {
    let of = |hardness| Friction::of(JawSurface::Serrated, GrippedSurface::Turned, hardness);
    let smooth = Friction::of(
        JawSurface::Smooth,
        GrippedSurface::Turned,
        WorkHardness::Bites,
    );
    assert_eq!(of(WorkHardness::TooHard), smooth);
    assert!(of(WorkHardness::Bites).tangential > smooth.tangential);
}

#[test]
fn chucks_between_and_outside_the_table() {
    let at = |diameter, how| scroll_chuck_grip(Length::mm(diameter), how);
    let rated = at(112.5, Tightening::Rated).unwrap();
    assert!((rated.low.to_newtons() - 15_000.0).abs() < 1e-9);
    assert!((rated.likely.to_newtons() - 18_250.0).abs() < 1e-9);
    let by_hand = at(125.0, Tightening::ByHand).unwrap();
    assert_eq!(by_hand.high, newtons(12_500.0));
    assert_eq!(
        at(160.0, Tightening::Rated).unwrap().high,
        newtons(35_000.0)
    );
    assert_eq!(at(99.0, Tightening::Rated), None);
    assert_eq!(at(200.0, Tightening::Rated), None);
}

/// 0.3 kg at 40 mm and 1500 turns a minute: 0.3 · 0.04 · (157.08)² = 296.1 N a jaw.
#[test]
fn flung_jaws_by_hand() {
    let loss = centrifugal_loss(
        Mass::grams(300.0),
        Length::mm(40.0),
        3,
        RotationalSpeed::per_min(1500.0),
    );
    assert!((loss.to_newtons() - 888.26).abs() < 0.01);
}

/// Without friction a cone of 45° passes the pull on as it is; 8° and 0.1 make tan 13.711° = 0.24398.
#[test]
fn a_collet_is_a_wedge() {
    let straight = collet_grip(newtons(1000.0), Angle::degrees(45.0), 0.0);
    assert!((straight.to_newtons() - 1000.0).abs() < 1e-9);
    let common = collet_grip(newtons(1000.0), Angle::degrees(8.0), 0.1);
    assert!((common.to_newtons() - 4098.7).abs() < 1.0, "{common:?}");
    assert_eq!(
        collet_grip(newtons(1000.0), Angle::degrees(95.0), 0.1),
        Force::ZERO
    );
}

#[test]
fn short_grips_tip() {
    let overhang = tipping_overhang(newtons(9000.0), Length::mm(10.0), newtons(-300.0));
    assert!((overhang.unwrap().to_mm() - 100.0).abs() < 1e-9);
    assert_eq!(
        tipping_overhang(newtons(9000.0), Length::mm(10.0), Force::ZERO),
        None
    );
    assert!(is_short_grip(Length::mm(9.9), Length::mm(20.0)));
    assert!(!is_short_grip(Length::mm(10.0), Length::mm(20.0)));
}

#[test]
fn verdicts_on_both_sides_of_their_limits() {
    let safety = GripSafety::default();
    let verdict = |held| {
        grip_ratio(newtons(held), newtons(5400.0), safety)
            .unwrap()
            .verdict
    };
    assert_eq!(verdict(5400.0), GripVerdict::Holds);
    assert_eq!(verdict(5399.0), GripVerdict::SafetyEaten);
    assert_eq!(verdict(2401.0), GripVerdict::SafetyEaten);
    assert_eq!(verdict(2399.0), GripVerdict::Slips);
    assert_eq!(grip_ratio(newtons(1.0), Force::ZERO, safety), None);
}

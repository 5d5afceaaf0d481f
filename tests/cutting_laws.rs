//! Laws that hold for every cut, and reckoning from outside where a formula could hide a fault.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use proptest::prelude::*;
use skimwright::cutting::{
    CutForces, EdgeDuty, EdgeState, FilletMethod, FilletStep, FinishCut, FitTrust, ForceFactors,
    ForceQuestion, Graduations, HeldSpeed, LifeExponents, MACHINE_FLOOR, ShoulderError,
    SpecificForce, ToolEdge, ToolLife, chip_without_nose, compound_angle, cut_forces,
    cutting_power, facing_time_at_held_speed, feed_for_ideal_roughness, feed_for_ridge_height,
    fillet_method, ideal_roughness, infeed_at_compound_angle, ridge_height,
};
use skimwright::quantity::{Angle, Feed, Length, RotationalSpeed, Speed, Stress, Time};
use skimwright::tables::WorkMaterial;

const STEEL: SpecificForce = SpecificForce {
    at_one: Stress::mpa(1725.0),
    exponent: 0.24,
};

fn edge(nose: f64, kappa: f64) -> ToolEdge {
    ToolEdge {
        nose_radius: Length::mm(nose),
        cutting_edge_angle: Angle::degrees(kappa),
        rake: Angle::ZERO,
        edge_radius: Length::um(10.0),
    }
}

fn forces(edge: ToolEdge, depth: f64, feed: f64) -> CutForces {
    cut_forces(&ForceQuestion {
        specific: STEEL,
        edge,
        depth: Length::mm(depth),
        feed: Feed::mm_per_rev(feed),
        factors: ForceFactors::NONE,
        normal_share: 0.5,
    })
    .unwrap()
}

fn power(edge: ToolEdge, depth: f64, feed: f64, speed: f64) -> f64 {
    cutting_power(
        forces(edge, depth, feed).tangential,
        Speed::m_per_min(speed),
    )
    .to_watts()
}

proptest! {
    #[test]
    fn every_force_is_finite(
        nose in 0.0..10.0_f64, kappa in 0.1..179.9_f64, depth in -5.0..2.0_f64, feed in -5.0..1.0_f64,
    ) {
        let (depth, feed) = (10.0_f64.powf(depth), 10.0_f64.powf(feed));
        let got = forces(edge(nose, kappa), depth, feed);
        for force in [got.tangential, got.feed, got.radial] {
            prop_assert!(force.is_finite());
        }
        prop_assert!(got.tangential.to_newtons() > 0.0);
        prop_assert!(got.feed.to_newtons() > -1e-9, "{got:?}");
        prop_assert!(got.chip.thickness.to_mm() > 0.0 && got.chip.edge_length.is_finite());
        let range = got.tangential_range(0.15);
        prop_assert_eq!(range.is_none(), got.trust == FitTrust::DoNotTrust);
        if let Some(range) = range {
            prop_assert!(range.low < range.typical && range.typical < range.high);
        }
    }

    #[test]
    fn power_rises_with_depth_feed_and_speed(
        nose in 0.0..1.6_f64, kappa in 30.0..110.0_f64, depth in 0.01..5.0_f64, feed in 0.01..0.8_f64,
        speed in 5.0..300.0_f64, more in 1.001..2.0_f64,
    ) {
        let edge = edge(nose, kappa);
        let here = power(edge, depth, feed, speed);
        prop_assert!(power(edge, depth * more, feed, speed) > here);
        prop_assert!(power(edge, depth, feed * more, speed) > here);
        prop_assert!(power(edge, depth, feed, speed * more) > here);
    }

    /// The nose lengthens the edge in the cut, so that the chip is thinner and dearer. Up to 120°: far past square the
    /// straight edge without a nose would be the longer one.
    #[test]
    fn the_nose_makes_the_chip_thinner_and_the_force_higher(
        nose in 0.0..1.6_f64, kappa in 15.0..120.0_f64, depth in 0.01..5.0_f64, feed in 0.01..0.8_f64,
    ) {
        let edge = edge(nose, kappa);
        let got = forces(edge, depth, feed);
        let plain = chip_without_nose(&edge, Length::mm(depth), Feed::mm_per_rev(feed)).unwrap();
        let hair = 1.0 + 1e-12;
        prop_assert!(got.chip.thickness.to_mm() <= plain.thickness.to_mm() * hair);
        let simple = STEEL.at(plain.thickness).to_mpa() * depth * feed;
        prop_assert!(got.tangential.to_newtons() * hair >= simple);
        // The section of the chip stays the same.
        let section = (got.chip.thickness * got.chip.edge_length).to_mm2();
        prop_assert!((section / (depth * feed) - 1.0).abs() < 1e-12);
    }

    /// The lower end of the chord lies no further than nose and feed from that of the straight edge.
    #[test]
    fn deep_cuts_do_not_feel_the_nose(
        nose in 0.1..1.6_f64, kappa in 30.0..110.0_f64, times in 20.0..1000.0_f64, feed in 0.02..0.5_f64,
    ) {
        let depth = times * nose;
        let got = forces(edge(nose, kappa), depth, feed).chip.chord_angle.to_degrees();
        let most = ((4.0 * nose + feed) / depth).to_degrees();
        prop_assert!((got - kappa).abs() < most, "{got} against {kappa}");
    }

    /// What slender work asks for: the smaller nose, as long as the feed leaves a surface and not a thread.
    #[test]
    fn a_smaller_nose_pushes_less_aside(
        nose in 0.1..1.6_f64, smaller in 0.1..0.95_f64, depth in 0.05..2.0_f64, share in 0.05..0.5_f64,
    ) {
        let feed = nose * smaller * share;
        let radial = |nose| forces(edge(nose, 95.0), depth, feed).radial.to_newtons();
        prop_assert!(radial(nose * smaller) < radial(nose));
    }

    #[test]
    fn the_forces_of_an_edge_are_those_of_its_share(
        nose in 0.0..1.6_f64, depth in 0.05..2.0_f64, feed in 0.02..0.2_f64,
    ) {
        let got = forces(edge(nose, 95.0), depth, feed);
        let worn = got.with_edge(EdgeState::WornOrChamfered);
        let normal = |one: &CutForces| one.feed.to_newtons().hypot(one.radial.to_newtons());
        let tangential = got.tangential.to_newtons();
        prop_assert!((normal(&worn.low) / tangential - 0.7).abs() < 1e-9);
        prop_assert!((normal(&worn.high) / tangential - 1.0).abs() < 1e-9);
        prop_assert!((normal(&got) / tangential - 0.5).abs() < 1e-9);
    }

    #[test]
    fn life_falls_and_leads_back(
        n in 0.08..0.6_f64, x in 0.0..0.9_f64, y in 0.0..0.5_f64, speed in 20.0..300.0_f64, feed in 0.05..0.5_f64,
        depth in 0.1..3.0_f64, more in 1.001..2.0_f64,
    ) {
        let exponents = LifeExponents { life: n, feed: x, depth: y };
        let duty = |speed, feed, depth| EdgeDuty {
            speed: Speed::m_per_min(speed),
            feed: Feed::mm_per_rev(feed),
            depth: Length::mm(depth),
        };
        let law = ToolLife::new(exponents, duty(100.0, 0.2, 1.0), Time::minutes(15.0)).unwrap();
        let life = |speed, feed, depth| law.life(&duty(speed, feed, depth)).unwrap();
        let here = life(speed, feed, depth);
        prop_assert!(life(speed * more, feed, depth) < here);
        prop_assert!(life(speed, feed * more, depth) <= here);
        prop_assert!(life(speed, feed, depth * more) <= here);
        let back = law.speed_for(here, Feed::mm_per_rev(feed), Length::mm(depth)).unwrap();
        prop_assert!((back.to_m_per_min() / speed - 1.0).abs() < 1e-9);
        let used = law.share_used(&duty(speed, feed, depth), here).unwrap();
        prop_assert!((used - 1.0).abs() < 1e-12);
    }

    #[test]
    fn feeds_for_ridges_and_ideal_roughness_lead_back(nose in 0.05..2.0_f64, share in 0.01..1.99_f64) {
        let (nose, feed) = (Length::mm(nose), Feed::mm_per_rev(nose * share));
        let height = ridge_height(feed, nose).unwrap();
        let back = feed_for_ridge_height(height, nose);
        prop_assert!((back / feed - 1.0).abs() < 1e-9, "{back:?} {feed:?}");
        let mean = ideal_roughness(feed, nose).unwrap();
        prop_assert!((feed_for_ideal_roughness(mean, nose) / feed - 1.0).abs() < 1e-9);
        // The approximation f²/(8 · r) is on the low side.
        prop_assert!(height.to_mm() >= mean.to_mm() * 4.0 * (1.0 - 1e-12));
    }

    #[test]
    fn the_largest_feed_gives_what_is_wanted_and_no_larger_does(
        which in 0..WorkMaterial::ALL.len(), nose in 0.1..1.6_f64, speed in 5.0..300.0_f64, wanted in 0.1..12.5_f64,
    ) {
        let cut = FinishCut {
            nose_radius: Length::mm(nose),
            material: WorkMaterial::ALL[which],
            speed: Speed::m_per_min(speed),
            floor: MACHINE_FLOOR,
        };
        let wanted = Length::um(wanted);
        let feeds = cut.largest_feed(wanted);
        let hair = 1e-9;
        let most = Feed::mm_per_rev(2.0 * nose);
        if let Some(likely) = feeds.likely {
            prop_assert!(cut.roughness(likely).unwrap().typical.to_mm() <= wanted.to_mm() + hair);
            let more = likely * 1.01;
            if more <= most {
                prop_assert!(cut.roughness(more).unwrap().typical > wanted);
            }
        } else {
            // Not even the finest feed gives it.
            let finest = cut.roughness(Feed::mm_per_rev(1e-6)).unwrap();
            prop_assert!(finest.typical.to_mm() >= wanted.to_mm() - hair);
        }
        if let Some(safe) = feeds.safe {
            prop_assert!(safe <= feeds.likely.unwrap());
            prop_assert!(cut.roughness(safe).unwrap().high.to_mm() <= wanted.to_mm() + hair);
        }
        let roughness = cut.roughness(Feed::mm_per_rev(nose / 10.0)).unwrap();
        prop_assert!(roughness.low <= roughness.typical && roughness.typical <= roughness.high);
    }

    /// Against the sum over a thousand rings, each at its own spindle speed.
    #[test]
    fn facing_at_a_held_speed_is_the_sum_of_its_rings(
        from in 1.0..80.0_f64, share in 0.0..0.99_f64, speed in 20.0..200.0_f64, top in 200.0..3000.0_f64,
    ) {
        let to = from * share;
        let held = HeldSpeed {
            cutting_speed: Speed::m_per_min(speed),
            top: RotationalSpeed::per_min(top),
        };
        let rings = 1000;
        let ring = (from - to) / f64::from(rings);
        let sum: f64 = (0..rings)
            .map(|index| to + (f64::from(index) + 0.5) * ring)
            .map(|d| ring / 2.0 / (0.1 * (1000.0 * speed / (core::f64::consts::PI * d)).min(top)))
            .sum();
        let got = facing_time_at_held_speed(Length::mm(from), Length::mm(to), Feed::mm_per_rev(0.1), held);
        prop_assert!((got.to_minutes() / sum - 1.0).abs() < 1e-5, "{got:?} {sum}");
    }

    #[test]
    fn the_compound_angle_leads_back(share in 1e-4..1.0_f64, graduation in 0.001..0.5_f64) {
        let (infeed, graduation) = (Length::mm(share * graduation), Length::mm(graduation));
        let angle = compound_angle(infeed, graduation).unwrap();
        prop_assert!(Angle::ZERO < angle && angle.to_degrees() <= 90.0);
        prop_assert!((infeed_at_compound_angle(angle, graduation) / infeed - 1.0).abs() < 1e-9);
    }

    /// Along rays from the middle of the fillet, where all places clear the metal: none reaches into the fillet, and the
    /// highest ridge is as high as said.
    #[test]
    fn steps_leave_the_fillet_whole_and_the_ridges_as_said(
        nose in 0.1..1.0_f64, more in 0.02..2.0_f64, axial in 0.01..0.1_f64, radial in 0.005..0.1_f64,
        cusp in 0.001..0.2_f64,
    ) {
        let fillet = nose + more;
        let dials = Graduations { axial: Length::mm(axial), radial: Length::mm(radial) };
        let found = fillet_method(Length::mm(fillet), Length::mm(nose), dials, Length::mm(cusp));
        let found = match found {
            Ok(FilletMethod::Steps(found)) => found,
            Err(ShoulderError::GraduationTooCoarse { least_cusp }) => {
                prop_assert!(least_cusp > Length::mm(cusp));
                return Ok(());
            }
            other => return Err(TestCaseError::fail(format!("{other:?}"))),
        };
        let steps = &found.steps;
        prop_assert_eq!(steps[0].from_face, Length::ZERO);
        prop_assert_eq!(steps[steps.len() - 1].infeed_left, Length::ZERO);
        for pair in steps.windows(2) {
            prop_assert!(pair[0].from_face < pair[1].from_face);
            prop_assert!(pair[0].infeed_left > pair[1].infeed_left);
        }
        for step in steps {
            for (length, graduation) in [(step.from_face, axial), (step.infeed_left, radial)] {
                let count = length.to_mm() / graduation;
                prop_assert!((count - count.round()).abs() < 1e-6);
            }
        }
        let rays = 1000;
        let mut highest: f64 = 0.0;
        for ray in 0..=rays {
            let angle = core::f64::consts::FRAC_PI_2 * f64::from(ray) / f64::from(rays);
            let reach = steps.iter().map(|step| cleared(step, nose, fillet, angle)).fold(0.0, f64::max);
            prop_assert!(reach <= fillet + 1e-9, "cut into the fillet by {}", reach - fillet);
            highest = highest.max(fillet - reach);
        }
        let said = found.highest_cusp.to_mm();
        prop_assert!(said <= cusp);
        // A ray beside the peak meets it lower, by no more than its step along the arc.
        prop_assert!(highest <= said + 1e-9, "{highest} above {said}");
        prop_assert!(highest >= said - 2.0 * fillet / f64::from(rays), "{highest} below {said}");
    }
}

/// How far from the middle of the fillet a place clears the metal along a ray, by halving.
fn cleared(step: &FilletStep, nose: f64, fillet: f64, angle: f64) -> f64 {
    let (z, y) = (step.from_face.to_mm(), step.infeed_left.to_mm());
    let clears = |reach: f64| {
        let (at_z, at_y) = (fillet - reach * angle.sin(), fillet - reach * angle.cos());
        let (beside_z, beside_y) = (z + nose - at_z, y + nose - at_y);
        let in_corner = beside_z > 0.0 && beside_y > 0.0;
        z <= at_z && y <= at_y && (!in_corner || beside_z.hypot(beside_y) <= nose)
    };
    let (mut low, mut high) = (0.0, 2.0 * fillet);
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if clears(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    low
}

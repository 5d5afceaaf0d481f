//! Deflections and reactions of stepped shafts against a frame solver, against worked cases, and by law.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use proptest::prelude::*;
use skimwright::holding::{Beam, Held, Segment, Springs, Support, TiltStiffness};
use skimwright::quantity::{Force, Length, SecondMoment, Stiffness, Stress, Torque};
use skimwright::strength::CrossSection;

/// Made by `tests/outside/stepped_shafts.py` with `PyNiteFEA` 3.2.0: 100 shafts, six ways of holding each, two places
/// each.
const SOLVED: &str = include_str!("outside/stepped_shafts.csv");

fn mm(value: f64) -> Length {
    Length::mm(value)
}

fn segment(length: f64, outside: f64, hole: f64, modulus: f64) -> Segment {
    let section = CrossSection::hollow(mm(outside), mm(hole)).properties();
    Segment {
        length: mm(length),
        second_moment: section.second_moment,
        modulus: Stress::mpa(modulus),
    }
}

fn held(segments: &[Segment], support: Support, springs: Springs) -> Held {
    Held::new(Beam::new(segments).unwrap(), support, springs).unwrap()
}

fn spring(newtons_per_mm: f64) -> Stiffness {
    Stiffness::newtons_per_um(newtons_per_mm / 1000.0)
}

fn numbers(text: &str, mark: char) -> Vec<f64> {
    text.split(mark).map(|it| it.parse().unwrap()).collect()
}

/// Where thick meets thin the solver loses digits to its large matrix, and its two reactions no longer make up the
/// force: what they lack says how far to trust it. Of all 3600 figures 26 differ by more than one part in 10⁸, the
/// worst by 5 in 10⁷. For the cases between rigid centres the integral was reckoned apart with 40 digits: the
/// differences are the solver's.
#[test]
fn shafts_agree_with_a_frame_solver() {
    let force = Force::newtons(100.0);
    let (mut segments, mut springs) = (Vec::new(), Springs::RIGID);
    let (mut cases, mut far, mut worst) = (0, 0, 0.0_f64);
    for line in SOLVED.lines().filter(|line| !line.starts_with('#')) {
        let (case, rest) = line.split_once(',').unwrap();
        if case == "shaft" {
            let parts: Vec<&str> = rest.splitn(5, ',').collect();
            let [modulus, head, tail, tilt] = [0, 1, 2, 3].map(|at| parts[at].parse().unwrap());
            springs = Springs {
                head: Some(spring(head)),
                // N mm/rad; a milliradian takes a thousandth of them, and a newton metre is a thousand again.
                head_tilt: Some(TiltStiffness::per_milliradian(Torque::newton_metres(
                    tilt * 1e-6,
                ))),
                tail: Some(spring(tail)),
                tool_post: None,
            };
            segments = parts[4]
                .split(',')
                .map(|part| numbers(part, ':'))
                .map(|part| segment(part[0], part[1], part[2], modulus))
                .collect();
            continue;
        }
        let support = match case.trim_end_matches("-springs") {
            "chuck-only" => Support::Chuck,
            "chuck-and-centre" => Support::ChuckAndCentre,
            "between-centres" => Support::BetweenCentres,
            other => panic!("{other}"),
        };
        let sprung = case.ends_with("-springs");
        let held = held(
            &segments,
            support,
            if sprung { springs } else { Springs::RIGID },
        );
        let row = numbers(rest, ',');
        let (at, solved) = (mm(row[0]), [row[1], row[2], row[3]]);
        let ours = [
            held.deflection(at, force).to_um(),
            held.head_reaction(at, force).to_newtons(),
            held.tail_reaction(at, force).to_newtons(),
        ];
        let lacking = (solved[1] + solved[2] - 100.0).abs() / 100.0;
        let allowed = 1e-8 + 10.0 * lacking;
        // A reaction is compared with the force, since it may be nothing.
        let scales = [solved[0], 100.0, 100.0];
        for ((got, wanted), scale) in ours.into_iter().zip(solved).zip(scales) {
            let off = (got - wanted).abs() / scale;
            assert!(off < allowed, "{line}: {got}, wanted {wanted}, off {off:e}");
            worst = worst.max(off);
            far += usize::from(off > 1e-8);
        }
        cases += 1;
    }
    assert_eq!(cases, 1200);
    println!("worst relative difference {worst:e}, above 1e-8: {far} figures");
    assert!(far <= 26 && worst < 1e-6);
}

/// Worked with three programs of different making, alike to six digits: 40 mm of 22, 60 of 16, 20 of 10 from the chuck,
/// 300 N. Columns: place, chuck only, chuck and centre, its reaction, with a tailstock of 20 N/µm, between centres.
const STEPPED: &[[f64; 6]] = &[
    [60.0, 9.798, 4.2834, 61.150, 4.843, 15.925],
    [100.0, 64.440, 5.590, 199.766, 11.566, 9.312],
];

#[test]
fn the_worked_stepped_shaft_comes_out() {
    let shaft = [(40.0, 22.0), (60.0, 16.0), (20.0, 10.0)]
        .map(|(length, outside)| segment(length, outside, 0.0, 210_000.0));
    let force = Force::newtons(300.0);
    let soft = Springs {
        tail: Some(spring(20_000.0)),
        ..Springs::RIGID
    };
    for [at, chuck, centre, reaction, sprung, between] in STEPPED.iter().copied() {
        let deflection = |support, springs| {
            held(&shaft, support, springs)
                .deflection(mm(at), force)
                .to_um()
        };
        let tail = held(&shaft, Support::ChuckAndCentre, Springs::RIGID);
        for (got, wanted) in [
            (deflection(Support::Chuck, Springs::RIGID), chuck),
            (deflection(Support::Collet, Springs::RIGID), chuck),
            (deflection(Support::ChuckAndCentre, Springs::RIGID), centre),
            (deflection(Support::ChuckAndCentre, soft), sprung),
            (deflection(Support::BetweenCentres, Springs::RIGID), between),
            (tail.tail_reaction(mm(at), force).to_newtons(), reaction),
        ] {
            // Half of the last digit printed.
            assert!(
                (got - wanted).abs() <= 5.1e-4,
                "{at}: {got}, wanted {wanted}"
            );
        }
    }
}

/// The closed forms of textbooks for a plain bar, a the place and b the rest: F a³/3EI, F a³b²(3a + 4b)/12EIL³, F
/// a²b²/3EIL. With 16 mm, 120 mm, a = 70 mm and 300 N: 50.772, 7.5291 and 15.1107 µm.
#[test]
fn a_plain_bar_bends_as_textbooks_say() {
    let bar = [segment(120.0, 16.0, 0.0, 210_000.0)];
    let force = Force::newtons(300.0);
    for (support, wanted) in [
        (Support::Chuck, 50.772),
        (Support::ChuckAndCentre, 7.5291),
        (Support::BetweenCentres, 15.1107),
    ] {
        let held = held(&bar, support, Springs::RIGID);
        let got = held.deflection(mm(70.0), force).to_um();
        assert!((got / wanted - 1.0).abs() < 1e-5, "{support:?}: {got}");
    }
    // The largest when the load goes along: at 0.5858 L, F L³/(101.9 EI); at L/2, F L³/(48 EI).
    let stiffness = 210_000.0
        * CrossSection::round(mm(16.0))
            .properties()
            .second_moment
            .to_mm4();
    let whole = 300.0 * 120.0_f64.powi(3) / stiffness;
    for (support, share, divisor) in [
        (Support::ChuckAndCentre, 0.5858, 101.9),
        (Support::BetweenCentres, 0.5, 48.0),
    ] {
        let held = held(&bar, support, Springs::RIGID);
        let at = |share: f64| held.deflection(mm(120.0 * share), force).to_mm();
        assert!((at(share) * divisor / whole - 1.0).abs() < 1e-3);
        assert!(at(share) > at(share - 0.02) && at(share) > at(share + 0.02));
    }
}

prop_compose! {
    fn any_shaft()(parts in proptest::collection::vec((4.0..60.0, 6.0..40.0, 0.0..0.8), 1..7)) -> Vec<Segment> {
        parts.into_iter().map(|(length, outside, share)| segment(length, outside, outside * share, 210_000.0)).collect()
    }
}

prop_compose! {
    fn any_springs()(head in 10_000.0..80_000.0, tail in 5_000.0..40_000.0, tilt in 10.0..500.0) -> Springs {
        Springs {
            head: Some(spring(head)),
            head_tilt: Some(TiltStiffness::per_milliradian(Torque::newton_metres(tilt))),
            tail: Some(spring(tail)),
            tool_post: None,
        }
    }
}

fn gives(segments: &[Segment], support: Support, springs: Springs, share: f64) -> f64 {
    let held = held(segments, support, springs);
    held.deflection(held.length() * share, Force::newtons(100.0))
        .to_mm()
}

proptest! {
    /// A further support never makes the work give more: chuck and centre are stiffer than either end alone.
    #[test]
    fn support_never_softens(shaft in any_shaft(), springs in any_springs(), share in 0.02..0.98_f64) {
        for springs in [Springs::RIGID, springs] {
            let both = gives(&shaft, Support::ChuckAndCentre, springs, share);
            let chuck = gives(&shaft, Support::Chuck, springs, share);
            let centres = gives(&shaft, Support::BetweenCentres, springs, share);
            prop_assert!(0.0 < both);
            prop_assert!(both <= chuck * (1.0 + 1e-12));
            prop_assert!(both <= centres * (1.0 + 1e-9));
        }
    }

    /// Between centres, a shaft turned end for end gives as much at the same place of itself.
    #[test]
    fn between_centres_either_end_may_be_the_head(shaft in any_shaft(), share in 0.02..0.98_f64) {
        let turned: Vec<Segment> = shaft.iter().rev().copied().collect();
        let one = gives(&shaft, Support::BetweenCentres, Springs::RIGID, share);
        let other = gives(&turned, Support::BetweenCentres, Springs::RIGID, 1.0 - share);
        prop_assert!((one / other - 1.0).abs() < 1e-8, "{one} {other}");
    }

    /// What a gives under a force at b, b gives under that force at a.
    #[test]
    fn places_answer_each_other(
        shaft in any_shaft(), springs in any_springs(), one in 0.0..1.0_f64, other in 0.0..1.0_f64,
    ) {
        let force = Force::newtons(100.0);
        for support in [Support::Chuck, Support::ChuckAndCentre, Support::BetweenCentres] {
            let held = held(&shaft, support, springs);
            let (one, other) = (held.length() * one, held.length() * other);
            let there = held.deflection_elsewhere(one, other, force);
            let back = held.deflection_elsewhere(other, one, force);
            prop_assert_eq!(there, back);
            // Two places under both forces at once store energy: each pair is at least as stiff as its parts.
            let (first, second) = (held.deflection(one, force), held.deflection(other, force));
            prop_assert!(there.to_mm().powi(2) <= first.to_mm() * second.to_mm() * (1.0 + 1e-9));
        }
    }

    /// A stiffer spring, whichever it is, never makes the work give more, and rigid least of all.
    #[test]
    fn stiffer_springs_give_less(shaft in any_shaft(), soft in any_springs(), share in 0.0..1.0_f64, which in 0..3) {
        let stiffer = |spring: Option<Stiffness>| spring.map(|it| it * 2.0);
        let mut stiff = soft;
        match which {
            0 => stiff.head = stiffer(soft.head),
            1 => stiff.tail = stiffer(soft.tail),
            _ => stiff.head_tilt = soft.head_tilt.map(|it| {
                TiltStiffness::per_milliradian(it.to_torque_per_milliradian() * 2.0)
            }),
        }
        for support in [Support::Chuck, Support::ChuckAndCentre, Support::BetweenCentres] {
            let [softer, firmer, rigid] =
                [soft, stiff, Springs::RIGID].map(|it| gives(&shaft, support, it, share));
            prop_assert!(firmer <= softer * (1.0 + 1e-12));
            prop_assert!(rigid <= firmer * (1.0 + 1e-9) + 1e-15);
        }
    }

    /// Twice the modulus halves the bending, and nothing else changes.
    #[test]
    fn bending_goes_with_the_modulus(shaft in any_shaft(), share in 0.02..0.98_f64) {
        let doubled: Vec<Segment> = shaft
            .iter()
            .map(|it| Segment { modulus: it.modulus * 2.0, ..*it })
            .collect();
        for support in [Support::Chuck, Support::ChuckAndCentre, Support::BetweenCentres] {
            let [once, twice] =
                [&shaft, &doubled].map(|it| gives(it, support, Springs::RIGID, share));
            prop_assert!((once / twice / 2.0 - 1.0).abs() < 1e-12);
        }
    }

    /// Forces and moments about the chuck face balance.
    #[test]
    fn the_supports_bear_the_force(shaft in any_shaft(), springs in any_springs(), share in 0.0..1.0_f64) {
        let force = Force::newtons(100.0);
        for support in [Support::Chuck, Support::Collet, Support::ChuckAndCentre, Support::BetweenCentres] {
            let held = held(&shaft, support, springs);
            let at = held.length() * share;
            let tail = held.tail_reaction(at, force);
            prop_assert!((held.head_reaction(at, force) + tail - force).abs().to_newtons() < 1e-9);
            let moment = held.head_moment(at, force) + tail * held.length();
            prop_assert!((moment - force * at).abs().to_newton_metres() < 1e-9);
        }
    }
}

/// A part with a second moment by hand, so that the outline constructor and the segments meet.
#[test]
fn segments_take_second_moments_as_they_are() {
    let bar = Segment {
        length: mm(50.0),
        second_moment: SecondMoment::mm4(1000.0),
        modulus: Stress::mpa(200_000.0),
    };
    let held = held(&[bar], Support::Chuck, Springs::RIGID);
    // 480 · 50³/(3 · 2·10⁵ · 1000) = 0.1 mm.
    let bent = held.deflection(mm(50.0), Force::newtons(480.0));
    assert!((bent.to_mm() - 0.1).abs() < 1e-15);
}

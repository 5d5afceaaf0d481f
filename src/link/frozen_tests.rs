//! Every number that a link stores for a choice or a unit, written down once more: one that moved would open
//! other people's links as other jobs. A new entry goes to the end, here too.

use super::choice::Numbered;
use super::tests::body;
use crate::costing::Step;
use crate::job::{
    Aim, BoreBottom, BoreEnd, CentreOrder, Change, CutMadeKind, CutOffMethod, Datum, DialReads,
    EdgeField, Field, Flats, InstrumentKind, JawFace, Job, MachineField, RateField, Rigidity,
    Support, WorkStep,
};
use crate::quantity::{Entered, Entry, Number, Term, Unit};
use crate::tables::{
    CentreDrillSize, ColletSize, CuttingGroup, FileBite, HoleClass, SeatLoad, ShaftClass,
    ShankSize, SleeveDuty, TaperSize, ThreadSize, ToolKind, WorkMaterial,
};

/// The choices of one kind are these, by their codes, numbered from 0.
#[track_caller]
fn frozen<T: Numbered + serde::Serialize>(codes: &str) {
    let mut next = 0;
    for code in codes.split(", ") {
        let choice = T::from_number(next);
        let found = choice.map(|choice| serde_json::to_value(choice).unwrap());
        assert_eq!(found, Some(code.into()), "number {next}");
        assert_eq!(choice.and_then(T::to_number), Some(next), "{code}");
        next += 1;
    }
    assert!(
        T::from_number(next).is_none(),
        "number {next} is not written down here"
    );
}

#[test]
fn choices_keep_their_numbers() {
    frozen::<BoreBottom>("drill-point, flat");
    frozen::<BoreEnd>("free-end, head-end");
    frozen::<Datum>("shoulder, free-end");
    frozen::<Flats>("one, two");
    frozen::<SleeveDuty>("adhesive, light-torque, medium-torque, full-torque");
    frozen::<CutOffMethod>("hand-disc, chop-wheel, saw, parting-tool");
    frozen::<CentreOrder>("after-facing, before-facing");
    frozen::<Aim>("least-time, least-cost");
    frozen::<DialReads>("diameter, radius");
    frozen::<Rigidity>("light, medium, heavy");
    frozen::<Support>("chuck, chuck-and-centre, between-centres, collet");
    frozen::<JawFace>("smooth, serrated");
    frozen::<FileBite>("cuts, bites, scratches, skates");
    frozen::<InstrumentKind>("micrometer, calliper, indicator, gauge");
    frozen::<CutMadeKind>("rough, last, spring, polish");
    frozen::<Change>("new-edge, held-again, dial-set, other-feed");
    frozen::<CuttingGroup>(
        "p-1, p-2, p-3, p-4, p-5, p-6, p-7, p-8, p-9, p-9x, p-10, p-11, p-12, p-13, m-14, k-15, k-16, k-17, k-18, \
         k-19, k-20, n-21, n-22, n-23, n-24, n-25, n-26, n-27, n-28, s-31, s-32, s-33, s-34, s-35, s-36, s-37, \
         h-38, h-39, h-40, h-41",
    );
    frozen::<ShaftClass>(
        "h5, h6, h7, h8, h9, g6, k6, js5, j5, j6, js6, k5, m5, m6, n6, p6, r6, s6, f7, g5, h11",
    );
    frozen::<HoleClass>("H6, H7, H8, G7, K7, N7, P7");
    frozen::<SeatLoad>("rotating-light, rotating-normal, stationary-easy, stationary, axial-only");
    frozen::<ToolKind>(
        "high-speed-steel, brazed-carbide, indexable-carbide, cubic-boron-nitride, indexable-flat, ceramic, grinding",
    );
    frozen::<WorkMaterial>(
        "low-carbon-steel, medium-carbon-steel, alloy-steel-tempered, alloy-steel-hard, tool-steel-annealed, \
         hardened-steel, case-hardened-steel, high-speed-steel-hard, stainless-martensitic, \
         stainless-austenitic, grey-iron, ductile-iron, aluminium-alloy, brass, bronze, titanium-alloy",
    );
}

/// Steps of the work, by the number that a link stores.
#[test]
fn steps_keep_their_numbers() {
    let codes = "receive-and-check, hold, dial-in, cut-off, face, centre, set-depth, return, measure, tool-change, \
                 regrind, polish, chamfer, clean, final-check, pack";
    let codes: Vec<&str> = codes.split(", ").collect();
    for (number, code) in (0_u8..).zip(&codes) {
        let step = Step::from_index(number).unwrap();
        assert_eq!((step.code(), step.index()), (*code, number));
    }
    assert_eq!(Step::ALL.len(), codes.len());
    assert!(Step::from_index(16).is_none());
}

/// Steps at the machine, by the number that a link stores.
#[test]
fn steps_at_the_machine_keep_their_numbers() {
    let codes = "receive, hold, dial-in, cut-off, face, centre, rough, last-cuts, polish, chamfer, check, clean";
    for (number, code) in (0_u8..).zip(codes.split(", ")) {
        let step = WorkStep::from_index(number).unwrap();
        assert_eq!(serde_json::to_value(step).unwrap(), code);
        assert_eq!(step.index(), number);
    }
    assert_eq!(WorkStep::ALL.len(), 12);
    assert!(WorkStep::from_index(12).is_none());
}

#[test]
fn tapers_keep_their_numbers() {
    frozen::<TaperSize>(
        "morse-0, morse-1, morse-2, morse-3, morse-4, morse-4.5, morse-5, morse-6, morse-7, brown-sharpe-1, \
         brown-sharpe-2, brown-sharpe-3, brown-sharpe-4, brown-sharpe-5, brown-sharpe-6, brown-sharpe-7, \
         brown-sharpe-8, brown-sharpe-9, brown-sharpe-10, brown-sharpe-11, brown-sharpe-12, brown-sharpe-13, \
         brown-sharpe-14, brown-sharpe-15, brown-sharpe-16, jarno-2, jarno-3, jarno-4, jarno-5, jarno-6, \
         jarno-7, jarno-8, jarno-9, jarno-10, jarno-11, jarno-12, jarno-13, jarno-14, jarno-15, jarno-16, \
         jarno-17, jarno-18, jarno-19, jarno-20, metric-4, metric-6, metric-80, metric-100, metric-120, \
         metric-160, metric-200, chuck-b10, chuck-b12, chuck-b16, chuck-b18, chuck-b22, chuck-b24, \
         jacobs-0, jacobs-1, jacobs-2, jacobs-2-short, jacobs-3, jacobs-4, jacobs-5, jacobs-6, \
         jacobs-33, steep-30, steep-35, steep-40, steep-45, steep-50, steep-55, steep-60, r8",
    );
}

#[test]
fn threads_keep_their_numbers() {
    frozen::<ThreadSize>(
        "M3, M3.5, M4, M4.5, M5, M6, M7, M8, M9, M10, M11, M12, M14, M16, M18, M20, M22, M24, M27, M30, M33, \
         M36, M39, M42, M3x0.35, M4x0.5, M5x0.5, M6x0.75, M8x0.75, M8x1, M10x0.75, M10x1, M10x1.25, M12x1, \
         M12x1.25, M12x1.5, M14x1, M14x1.25, M14x1.5, M15x1, M16x1, M16x1.5, M17x1, M18x1, M18x1.5, M18x2, \
         M20x1, M20x1.5, M20x2, M22x1, M22x1.5, M22x2, M24x1, M24x1.5, M24x2, M25x1.5, M27x1.5, M27x2, M30x1, \
         M30x1.5, M30x2, M33x1.5, M33x2, M35x1.5, M36x1.5, M36x2, M36x3, M39x1.5, M39x2, M39x3, M40x1.5, \
         M42x1.5, M42x2, M42x3, #10-24 UNC, #12-24 UNC, 1/4-20 UNC, 5/16-18 UNC, 3/8-16 UNC, 7/16-14 UNC, \
         1/2-13 UNC, 9/16-12 UNC, 5/8-11 UNC, 3/4-10 UNC, 7/8-9 UNC, 1-8 UNC, 1-1/8-7 UNC, 1-1/4-7 UNC, \
         1-3/8-6 UNC, 1-1/2-6 UNC, 7/16-20 UNF, 1/4-20 BSW, 5/16-18 BSW, 3/8-16 BSW, 7/16-14 BSW, 1/2-12 BSW, \
         9/16-12 BSW, 5/8-11 BSW, 11/16-11 BSW, 3/4-10 BSW, 7/8-9 BSW, 1-8 BSW",
    );
}

#[test]
fn centre_drills_keep_their_numbers() {
    frozen::<CentreDrillSize>(
        "A0.5, A0.63, A0.8, A1, A1.25, A1.6, A2, A2.5, A3.15, A4, A5, A6.3, A8, A10, asme-00, asme-0, asme-1, \
         asme-2, asme-3, asme-4, asme-5, asme-6, asme-7, asme-8, asme-10",
    );
}

#[test]
fn collets_and_shanks_keep_their_numbers() {
    frozen::<ColletSize>(
        "collet-8, collet-11, collet-16, collet-20, collet-25, collet-32, collet-40, collet-50, collet-5c, collet-r8",
    );
    frozen::<ShankSize>(
        "plain-3, plain-4, plain-5, plain-6, plain-8, plain-10, plain-12, plain-14, plain-16, plain-18, \
         plain-20, plain-25, plain-32, plain-40, plain-50, plain-63, flat-6, flat-8, flat-10, flat-12, \
         flat-14, flat-16, flat-18, flat-20, flat-25, flat-32, flat-40, flat-50, flat-63, flat-6-hb, \
         flat-8-hb, flat-10-hb, inclined-6, inclined-8, inclined-10, inclined-12, inclined-14, inclined-16, \
         inclined-18, inclined-20, inclined-25, inclined-32, threaded-6, threaded-10, threaded-12, \
         threaded-16, threaded-20, threaded-25, threaded-32, inch-flat-3/8, inch-flat-1/2, inch-flat-5/8, \
         inch-flat-3/4, inch-flat-7/8, inch-flat-1, inch-flat-1-1/4, inch-flat-1-1/2, inch-flat-2, \
         inch-flat-2-1/2",
    );
}

/// A unit is three bits of a number's tag, counted within what the field measures.
#[test]
fn units_keep_their_numbers() {
    use Unit::{
        Brinell, Centimetre, Currency, Degree, FootPerMinute, Horsepower, Inch, InchPerRevolution,
        Kilonewton, Kilowatt, Metre, MetrePerMinute, Micrometre, Millimetre,
        MillimetrePerRevolution, Minute, Newton, NewtonMetre, NewtonPerMicrometre, Percent, Piece,
        PoundFoot, PoundForce, RevolutionPerMinute, RockwellC, Second, Thou, Vickers, Watt,
    };
    let lists: [(Field, &[Unit]); 14] = [
        (
            Field::WantedLength,
            &[Millimetre, Inch, Thou, Micrometre, Centimetre, Metre],
        ),
        (Field::CuttingSpeed, &[MetrePerMinute, FootPerMinute]),
        (
            Field::RoughFeed,
            &[MillimetrePerRevolution, InchPerRevolution],
        ),
        (Field::SetTime, &[Second, Minute]),
        (Field::TopSpeed, &[RevolutionPerMinute]),
        (Field::DutyForce, &[Newton, Kilonewton, PoundForce]),
        (Field::DutyTorque, &[NewtonMetre, PoundFoot]),
        (Field::DutyPower, &[Kilowatt, Watt, Horsepower]),
        (Field::CoreHardness, &[RockwellC, Vickers, Brinell]),
        (Field::Edge(EdgeField::Rake), &[Degree]),
        (Field::Edge(EdgeField::Edges), &[Piece]),
        (
            Field::Machine(MachineField::HeadStiffness),
            &[NewtonPerMicrometre],
        ),
        (Field::Machine(MachineField::Efficiency), &[Percent]),
        (Field::Rate(RateField::PerHour), &[Currency]),
    ];
    let mut seen = 0;
    for (field, units) in lists {
        let with = |unit: Unit| {
            // 73 with two decimals: a byte of its own behind the tag.
            let number = Number::Decimal {
                digits: 73,
                decimals: 2,
            };
            let term = Term {
                negative: false,
                number,
                unit,
            };
            let mut job = Job::default();
            assert!(job.set_entry(field, Entry::from_terms(vec![term])));
            body(&job)
        };
        let first = with(units[0]);
        let place = first.windows(2).position(|pair| pair == [2, 73]).unwrap();
        for (number, unit) in (0_u8..).zip(units) {
            let mut wanted = first.clone();
            wanted[place] = number << 4 | 2;
            assert_eq!(with(*unit), wanted, "{unit:?}");
            seen += 1;
        }
    }
    for (number, unit) in (0_u8..).zip([Unit::Celsius, Unit::Fahrenheit]) {
        let mut job = Job::default();
        job.setup.room_temperature = Some(Entered::plain(73, 2, unit));
        assert!(body(&job).ends_with(&[number << 4 | 2, 73]), "{unit:?}");
        seen += 1;
    }
    // The ratio of a taper is the only unit of what it measures, and no field of the whole job.
    assert_eq!(seen + 1, Unit::ALL.len());
}

//! What each mistake in the shape of the part, its receiver and its duty is answered with, and that what a finding
//! proposes does mend it.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/jobs.rs"]
mod jobs;
#[path = "support/sound.rs"]
mod sound;

use std::collections::BTreeSet;

use jobs::any_job;
use proptest::prelude::*;
use skimwright::job::{
    Bore, BoreBottom, BoreEnd, BoreField, Cut, Datum, Feature, FeatureField, Field, Flats,
    HeadPiece, Hole, Job, Place, Receiver, ReceiverField, Section, SectionField, Tolerance, Turned,
};
use skimwright::plan::{Code, Finding, Level, plan};
use skimwright::quantity::{Entered, Length, Unit};
use skimwright::receiver::becomes;
use skimwright::tables::{
    CentreDrillSize, ColletSize, HoleClass, SeatLoad, ShaftClass, ShankSize, SleeveDuty,
    WorkMaterial,
};
use sound::{code, codes, cylinder, drilled, mm, set, set_length, sound, taper, tapped};

struct Row {
    what: &'static str,
    change: fn(&mut Job),
    code: &'static str,
    field: Field,
    level: Level,
    /// Types what the finding names; `None` where its code carries nothing to type.
    mend: Option<fn(&mut Job, &Finding)>,
}

const fn row(
    what: &'static str,
    change: fn(&mut Job),
    code: &'static str,
    field: Field,
    level: Level,
) -> Row {
    Row {
        what,
        change,
        code,
        field,
        level,
        mend: None,
    }
}

impl Row {
    const fn mended(self, mend: fn(&mut Job, &Finding)) -> Self {
        Self {
            mend: Some(mend),
            ..self
        }
    }
}

const STOP: Level = Level::Stop;
const CAUTION: Level = Level::Caution;

const fn section(index: u8, name: SectionField) -> Field {
    Field::Section(index, name)
}

const fn feature(name: FeatureField) -> Field {
    Field::Feature(0, name)
}

const fn hole(index: u8, name: BoreField) -> Field {
    Field::Bore(index, name)
}

fn placed(section: Section, from: Datum, start: &str) -> Section {
    Section {
        place: Some(Place {
            from,
            start: mm(start),
        }),
        ..section
    }
}

fn ratio(shoulder: &str, one_in: &str, length: &str) -> Section {
    Turned::RatioTaper {
        shoulder_diameter: mm(shoulder),
        ratio: Entered::read(one_in, Unit::ToOne).unwrap(),
        length: mm(length),
    }
    .into()
}

fn angle(shoulder: &str, degrees: &str, length: &str) -> Section {
    Turned::AngleTaper {
        shoulder_diameter: mm(shoulder),
        angle: Entered::read(degrees, Unit::Degree).unwrap(),
        length: mm(length),
    }
    .into()
}

fn cut(cut: Cut, from: Datum, start: &str) -> Vec<Feature> {
    vec![Feature {
        cut,
        place: Some(Place {
            from,
            start: mm(start),
        }),
    }]
}

fn flat(over: &str, flats: Flats) -> Cut {
    Cut::Flat {
        over: mm(over),
        flats,
        length: mm("10"),
    }
}

fn keyway(depth: &str) -> Cut {
    Cut::Keyway {
        width: mm("5"),
        depth: mm(depth),
        length: mm("15"),
    }
}

fn woodruff(depth: &str) -> Cut {
    Cut::WoodruffKeyway {
        width: mm("4"),
        depth: mm(depth),
        disc: mm("30"),
    }
}

fn tang(thickness: &str, length: &str) -> Vec<Feature> {
    vec![Feature {
        cut: Cut::Tang {
            thickness: mm(thickness),
            length: mm(length),
            slot_width: None,
            slot_depth: None,
        },
        place: None,
    }]
}

fn from_head(bore: Bore) -> Bore {
    Bore {
        end: BoreEnd::HeadEnd,
        ..bore
    }
}

fn stepped(narrow: &str, wide: &str) -> Bore {
    Hole::Stepped {
        diameter: mm(narrow),
        depth: mm("25"),
        step_diameter: mm(wide),
        step_depth: mm("10"),
        bottom: BoreBottom::Flat,
    }
    .into()
}

fn reamed(diameter: &str, ream: &str, drill: &str) -> Bore {
    Hole::Reamed {
        diameter: mm(diameter),
        ream_depth: mm(ream),
        drill_depth: mm(drill),
    }
    .into()
}

fn side_lock(job: &mut Job, code: &str) {
    let shank = ShankSize::from_code(code).unwrap();
    job.wanted.receiver = Receiver::SideLock { shank };
}

fn collet(job: &mut Job, code: &str) {
    let collet = ColletSize::from_code(code).unwrap();
    job.wanted.receiver = Receiver::Collet { collet };
}

fn bearing(job: &mut Job, chamfer: &str) {
    job.wanted.receiver = Receiver::Bearing {
        load: SeatLoad::RotatingNormal,
        ring_chamfer: mm(chamfer),
    };
    job.wanted.tolerance = Tolerance::Class(ShaftClass::J5);
}

fn groove(diameter: &str, length: &str) -> Section {
    Turned::Groove {
        diameter: mm(diameter),
        length: mm(length),
    }
    .into()
}

fn sleeve(job: &mut Job, duty: SleeveDuty, outside: &str) {
    job.wanted.receiver = Receiver::Sleeve {
        duty,
        material: WorkMaterial::MediumCarbonSteel,
        outside: mm(outside),
        edge: None,
    };
    job.wanted.tolerance = Tolerance::Class(duty.fit().1);
}

fn limits(job: &mut Job, lower: Length, upper: Length) {
    let nominal = job.wanted.diameter.value();
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm("0"),
        lower: mm("0"),
    };
    set_length(job, Field::UpperDeviation, upper - nominal);
    set_length(job, Field::LowerDeviation, lower - nominal);
}

/// Types a diameter or length that keeps clear of what was found by a hundredth.
fn hundredth() -> Length {
    Length::mm(0.01)
}

const OUTSIDE: Field = Field::Receiver(ReceiverField::Outside);

#[rustfmt::skip]
#[expect(clippy::too_many_lines, reason = "a table of cases")]
fn rows() -> Vec<Row> { vec![
    row("sections that overlap", |job| job.part.sections = vec![cylinder("20", "30"),
        placed(cylinder("18", "55"), Datum::Shoulder, "25")], "sections-overlap", section(1, SectionField::Start), STOP)
        .mended(type_mend),
    row("sections that overlap, told from the free end", |job| { set(job, Field::ShankLength, "80");
        job.part.sections = vec![cylinder("20", "30"), placed(cylinder("18", "52"), Datum::FreeEnd, "0")]; },
        "sections-overlap", section(1, SectionField::Start), STOP),
    row("a gap", |job| job.part.sections = vec![cylinder("20", "30"),
        placed(cylinder("18", "50"), Datum::Shoulder, "33")], "gap-before", section(1, SectionField::Start), STOP)
        .mended(type_mend),
    row("a gap at the shoulder", |job| job.part.sections = vec![placed(cylinder("20", "80"), Datum::Shoulder, "2")],
        "gap-before", section(0, SectionField::Start), STOP).mended(type_mend),
    row("shorter than its sections", |job| set(job, Field::ShankLength, "79"), "lengths-disagree", Field::ShankLength, STOP)
        .mended(|job, found| if let Code::LengthsDisagree { sum, .. } = found.code { set_length(job, Field::ShankLength, sum); }),
    row("longer than its sections", |job| set(job, Field::ShankLength, "81"), "lengths-disagree", Field::ShankLength, STOP)
        .mended(|job, found| if let Code::LengthsDisagree { sum, .. } = found.code { set_length(job, Field::ShankLength, sum); }),
    row("begins beyond the free end", |job| { set(job, Field::ShankLength, "80");
        job.part.sections = vec![cylinder("20", "80"), placed(cylinder("20", "10"), Datum::Shoulder, "95")]; },
        "gap-before", section(1, SectionField::Start), STOP).mended(type_mend),
    row("begins beyond the shoulder", |job| { set(job, Field::ShankLength, "80");
        job.part.sections = vec![placed(cylinder("20", "30"), Datum::FreeEnd, "60"), cylinder("20", "70")]; },
        "sections-overlap", section(0, SectionField::Start), STOP),
    row("no sections", |job| job.part.sections.clear(), "no-section", Field::Sections, STOP),
    row("a hundred sections", |job| job.part.sections = vec![cylinder("20", "1"); 100], "too-many", Field::Sections, STOP),
    row("9 features", |job| job.part.features = vec![cut(keyway("3"), Datum::Shoulder, "5")[0].clone(); 9],
        "too-many", Field::Features, STOP),
    row("7 holes", |job| job.part.bores = vec![drilled("3", "5", BoreBottom::Flat); 7], "too-many", Field::Bores, STOP),
    row("5 further pieces of the head", |job| job.part.head_beyond = vec![HeadPiece { diameter: mm("30"), length: mm("5") }; 5],
        "too-many", Field::HeadBeyond, STOP),
    row("taper steeper than 90°", |job| job.part.sections = vec![taper("40", "20", "9")],
        "taper-too-steep", section(0, SectionField::Length), STOP),
    row("taper that grows steeper than 90°", |job| job.part.sections = vec![taper("20", "40", "9")],
        "taper-too-steep", section(0, SectionField::Length), STOP),
    row("1 in 0.4", |job| job.part.sections = vec![ratio("40", "0.4", "3")], "taper-too-steep", section(0, SectionField::Ratio), STOP),
    row("1 in -0.4", |job| job.part.sections = vec![ratio("40", "-0.4", "3")], "taper-too-steep", section(0, SectionField::Ratio), STOP),
    row("1 in 0", |job| job.part.sections = vec![ratio("40", "0", "3")], "taper-too-steep", section(0, SectionField::Ratio), STOP),
    row("91°", |job| job.part.sections = vec![angle("40", "91", "3")], "taper-too-steep", section(0, SectionField::Angle), STOP),
    row("-91°", |job| job.part.sections = vec![angle("40", "-91", "3")], "taper-too-steep", section(0, SectionField::Angle), STOP),
    row("1 in 5 to a point", |job| job.part.sections = vec![ratio("20", "5", "101")],
        "taper-comes-to-a-point", section(0, SectionField::Length), STOP),
    row("60° to a point", |job| job.part.sections = vec![angle("20", "60", "18")],
        "taper-comes-to-a-point", section(0, SectionField::Length), STOP),
    row("holes from both ends that meet", |job| { job.wanted.countersink = None; job.part.bores = vec![drilled("6", "60", BoreBottom::Flat),
        from_head(drilled("8", "55", BoreBottom::Flat))]; }, "holes-meet", hole(1, BoreField::Depth), CAUTION)
        .mended(|job, found| if let Code::HolesMeet { by } = found.code { set_length(job, found.field, Length::mm(55.0) - by); }),
    row("drilled wider than the part", |job| job.part.bores = vec![drilled("21", "10", BoreBottom::Flat)],
        "bore-too-wide", hole(0, BoreField::Diameter), STOP).mended(type_narrower),
    row("reamed wider than the part", |job| job.part.bores = vec![reamed("21", "8", "10")],
        "bore-too-wide", hole(0, BoreField::Diameter), STOP).mended(type_narrower),
    row("stepped wider than the part", |job| job.part.bores = vec![stepped("8", "21")],
        "bore-too-wide", hole(0, BoreField::StepDiameter), STOP).mended(type_narrower),
    row("through, wider than the part", |job| job.part.bores = vec![Hole::Through { diameter: mm("21") }.into()],
        "bore-too-wide", hole(0, BoreField::Diameter), STOP).mended(type_narrower),
    row("tapped wider than the part", |job| job.part.bores = vec![tapped("M24", "8", "10")],
        "bore-too-wide", hole(0, BoreField::Thread), STOP),
    row("centre hole wider than the part", |job| { job.part.sections = vec![cylinder("20", "70"), cylinder("9", "10")];
        let centre_drill = CentreDrillSize::from_code("A5").unwrap();
        job.part.bores = vec![Hole::CentreHole { centre_drill }.into()]; }, "bore-too-wide", hole(0, BoreField::CentreDrill), STOP),
    row("wider than the head", |job| job.part.bores = vec![from_head(drilled("41", "5", BoreBottom::Flat))],
        "bore-too-wide", hole(0, BoreField::Diameter), STOP).mended(type_narrower),
    row("step no wider", |job| job.part.bores = vec![stepped("8", "8")], "step-not-wider", hole(0, BoreField::StepDiameter), CAUTION),
    row("step narrower", |job| job.part.bores = vec![stepped("8", "6")], "step-not-wider", hole(0, BoreField::StepDiameter), CAUTION),
    row("reamed deeper than drilled", |job| job.part.bores = vec![reamed("6", "12", "10")],
        "ream-below-hole", hole(0, BoreField::DrillDepth), CAUTION)
        .mended(|job, found| if let Code::ReamBelowHole { by } = found.code { set_length(job, found.field, Length::mm(10.0) + by); }),
    row("thread deeper than its hole", |job| job.part.bores = vec![tapped("M8", "12", "10")],
        "thread-below-hole", hole(0, BoreField::DrillDepth), CAUTION)
        .mended(|job, found| if let Code::ThreadBelowHole { by } = found.code { set_length(job, found.field, Length::mm(10.0) + by); }),
    row("keyway beyond the free end", |job| job.part.features = cut(keyway("3"), Datum::Shoulder, "80"),
        "feature-off-shank", feature(FeatureField::Start), CAUTION)
        .mended(|job, found| if let Code::FeatureOffShank { longest } = found.code {
            set_length(job, found.field, longest - Length::mm(15.0)); }),
    row("keyway beyond the shoulder", |job| job.part.features = cut(keyway("3"), Datum::FreeEnd, "80"),
        "feature-off-shank", feature(FeatureField::Start), CAUTION)
        .mended(|job, found| if let Code::FeatureOffShank { longest } = found.code {
            set_length(job, found.field, longest - Length::mm(15.0)); }),
    row("cross hole beyond the end", |job| job.part.features = cut(Cut::CrossHole { diameter: mm("5") }, Datum::Shoulder, "90"),
        "feature-off-shank", feature(FeatureField::Start), CAUTION)
        .mended(|job, found| if let Code::FeatureOffShank { longest } = found.code { set_length(job, found.field, longest); }),
    row("flat through the axis", |job| job.part.features = cut(flat("9", Flats::One), Datum::Shoulder, "10"),
        "feature-too-deep", feature(FeatureField::Over), STOP),
    row("keyway to the axis", |job| job.part.features = cut(keyway("10"), Datum::Shoulder, "10"),
        "feature-too-deep", feature(FeatureField::Depth), STOP),
    row("Woodruff keyway to the axis", |job| job.part.features = cut(woodruff("10"), Datum::Shoulder, "30"),
        "feature-too-deep", feature(FeatureField::Depth), STOP),
    row("flat over more than the shank", |job| job.part.features = cut(flat("20", Flats::One), Datum::Shoulder, "10"),
        "feature-cuts-nothing", feature(FeatureField::Over), CAUTION),
    row("two flats over more than the shank", |job| job.part.features = cut(flat("21", Flats::Two), Datum::Shoulder, "10"),
        "feature-cuts-nothing", feature(FeatureField::Over), CAUTION),
    row("tang as thick as the shank", |job| job.part.features = tang("20", "12"),
        "feature-cuts-nothing", feature(FeatureField::Thickness), CAUTION),
    row("cross hole that stays", |job| job.part.features = cut(Cut::CrossHole { diameter: mm("5") }, Datum::Shoulder, "40"),
        "cross-hole-stays", feature(FeatureField::Kind), CAUTION)
        .mended(|job, found| if let Code::CrossHoleStays { longest, .. } = found.code { set_length(job, Field::WantedLength, longest); }),
    row("a collet for thinner shanks", |job| collet(job, "collet-16"), "receiver-takes-others", Field::WantedDiameter, STOP)
        .mended(|job, found| if let Code::ReceiverTakesOthers { largest, .. } = found.code { set_length(job, found.field, largest); }),
    row("a holder for another shank", |job| side_lock(job, "flat-12"), "receiver-takes-others", Field::WantedDiameter, STOP)
        .mended(|job, found| if let Code::ReceiverTakesOthers { largest, .. } = found.code { set_length(job, found.field, largest); }),
    row("a hydraulic chuck between its sizes", |job| { job.wanted.receiver = Receiver::Hydraulic {}; set(job, Field::WantedDiameter, "17"); },
        "receiver-takes-others", Field::WantedDiameter, STOP)
        .mended(|job, found| if let Code::ReceiverTakesOthers { smallest, .. } = found.code { set_length(job, found.field, smallest); }),
    row("other limits than the holder asks", |job| { side_lock(job, "flat-16"); job.wanted.tolerance = Tolerance::Class(ShaftClass::K6); },
        "limits-asked", Field::Tolerance, CAUTION).mended(type_limits),
    row("other limits than the ring asks", |job| { bearing(job, "1"); job.wanted.tolerance = Tolerance::Class(ShaftClass::H6); },
        "limits-asked", Field::Tolerance, CAUTION).mended(type_limits),
    row("larger than its bore", |job| { job.wanted.receiver = Receiver::PlainBore { hole: HoleClass::H7, edge: None };
        job.wanted.tolerance = Tolerance::Class(ShaftClass::K6); }, "may-not-go-in", Field::Tolerance, CAUTION)
        .mended(|job, found| if let Code::MayNotGoIn { most } = found.code {
            let nominal = job.wanted.diameter.value();
            let upper = plan(job).limits.unwrap().upper - most;
            limits(job, nominal - hundredth(), upper);
        }),
    row("fillet on a broken edge", |job| job.wanted.receiver = Receiver::Own { edge: Some(mm("0.5")) },
        "fillet-meets-edge", Field::ShoulderRadius, CAUTION)
        .mended(|job, found| if let Code::FilletMeetsEdge { largest } = found.code { set_length(job, found.field, largest); }),
    row("fillet on a bearing ring", |job| bearing(job, "0.6"), "fillet-meets-edge", Field::ShoulderRadius, CAUTION)
        .mended(|job, found| if let Code::FilletMeetsEdge { largest } = found.code { set_length(job, found.field, largest); }),
    row("shoulder too low for a ring", |job| { bearing(job, "1"); set(job, Field::HeadDiameter, "18"); },
        "shoulder-too-low", Field::WantedDiameter, CAUTION)
        .mended(|job, found| if let Code::ShoulderTooLow { height, least } = found.code {
            set_length(job, Field::HeadDiameter, Length::mm(18.0) + (least - height) * 2.0); }),
    row("flat where no shank is", |job| { side_lock(job, "flat-16"); set(job, Field::WantedLength, "25"); },
        "flat-misses-shank", Field::WantedLength, STOP)
        .mended(|job, found| if let Code::FlatMissesShank { least } = found.code {
            set_length(job, found.field, least); }),
    row("shorter than its standard", |job| { side_lock(job, "flat-16"); set(job, Field::WantedLength, "47"); },
        "shorter-than-standard", Field::WantedLength, CAUTION)
        .mended(|job, found| if let Code::ShorterThanStandard { standard } = found.code { set_length(job, found.field, standard); }),
    row("sleeve with no wall at all", |job| sleeve(job, SleeveDuty::LightTorque, "15"), "sleeve-too-thin", OUTSIDE, CAUTION),
    row("cross hole as wide as the shank", |job| job.part.features = cut(Cut::CrossHole { diameter: mm("16") }, Datum::Shoulder, "20"),
        "feature-too-deep", feature(FeatureField::Diameter), STOP),
    row("groove cut in beyond the end", |job| job.part.sections.push(placed(groove("15", "4"), Datum::Shoulder, "78")),
        "feature-off-shank", section(1, SectionField::Start), CAUTION),
    row("groove as wide as what it is cut into", |job| job.part.sections.push(placed(groove("20", "4"), Datum::FreeEnd, "10")),
        "feature-cuts-nothing", section(1, SectionField::Diameter), CAUTION),
    row("sleeve too thin", |job| sleeve(job, SleeveDuty::LightTorque, "18"), "sleeve-too-thin", OUTSIDE, CAUTION)
        .mended(|job, found| if let Code::SleeveTooThin { least, .. } = found.code {
            let seat = plan(job).limits.unwrap().aim;
            set_length(job, OUTSIDE, seat + least * 2.0); }),
    row("sleeve that gives way", |job| { sleeve(job, SleeveDuty::FullTorque, "21"); limits(job, Length::mm(16.08), Length::mm(16.1)); },
        "sleeve-yields", Field::Tolerance, STOP),
    row("sleeve that may slip", |job| { sleeve(job, SleeveDuty::MediumTorque, "24"); set(job, Field::DutyTorque, "500 N·m"); },
        "sleeve-may-slip", Field::Tolerance, CAUTION)
        .mended(|job, found| if let Code::SleeveMaySlip { held } = found.code {
            set(job, Field::DutyTorque, &format!("{:.9} N·m", held.to_newton_metres())); }),
    row("a force without its arm", |job| set(job, Field::DutyForce, "200 N"), "duty-incomplete", Field::DutyOverhang, CAUTION)
        .mended(|job, found| set(job, found.field, "30")),
    row("a power without its speed", |job| set(job, Field::DutyPower, "2 kW"), "duty-incomplete", Field::DutySpeed, CAUTION)
        .mended(|job, found| set(job, found.field, "1400")),
    row("more than it bears", |job| set(job, Field::DutyTorque, "900 N·m"), "duty-too-much", Field::WantedDiameter, STOP)
        .mended(|job, found| if let Code::DutyTooMuch { safety } = found.code {
            set(job, Field::DutyTorque, &format!("{:.6} N·m", 900.0 * safety * 0.999_99)); }),
    row("little to spare", |job| set(job, Field::DutyTorque, "100 N·m"), "safety-low", Field::WantedDiameter, CAUTION)
        .mended(|job, found| if let Code::SafetyLow { safety } = found.code {
            set(job, Field::DutyTorque, &format!("{:.6} N·m", 100.0 * safety / 2.0)); }),
    row("case of unknown depth", |job| job.part.material = WorkMaterial::CaseHardenedSteel,
        "case-depth-unknown", Field::CaseDepth, CAUTION).mended(|job, found| set(job, found.field, "3")),
    row("case turned away", |job| { job.part.material = WorkMaterial::CaseHardenedSteel; set(job, Field::CaseDepth, "0.8"); },
        "case-turned-away", Field::CaseDepth, CAUTION),
] }

fn type_mend(job: &mut Job, found: &Finding) {
    let (Code::GapBefore { mend, .. } | Code::SectionsOverlap { mend, .. }) = found.code else {
        panic!("{found:?} carries no mend");
    };
    set_length(job, found.field, mend);
}

fn type_narrower(job: &mut Job, found: &Finding) {
    let Code::BoreTooWide { outside, .. } = found.code else {
        panic!("{found:?} carries no diameter");
    };
    set_length(job, found.field, outside - hundredth());
}

fn type_limits(job: &mut Job, found: &Finding) {
    let Code::LimitsAsked { lower, upper } = found.code else {
        panic!("{found:?} carries no limits");
    };
    limits(job, lower, upper);
}

#[test]
fn every_mistake_is_named_at_its_field() {
    for row in rows() {
        let mut job = sound();
        (row.change)(&mut job);
        let plan = plan(&job);
        let named = |it: &&Finding| code(it) == row.code && it.field == row.field;
        let Some(found) = plan.findings.iter().find(named) else {
            panic!("{}: {:?}", row.what, plan.findings);
        };
        assert_eq!(found.level, row.level, "{}", row.what);
    }
}

#[test]
fn what_a_finding_names_mends_it() {
    let mut mended = 0;
    for row in rows() {
        let Some(mend) = row.mend else {
            continue;
        };
        let mut job = sound();
        (row.change)(&mut job);
        let before = plan(&job);
        let found = before.findings.iter().find(|it| code(it) == row.code);
        mend(&mut job, found.unwrap());
        let after = plan(&job);
        assert!(
            !codes(&after).contains(&row.code.to_owned()),
            "{}: {:?}",
            row.what,
            after.findings
        );
        mended += 1;
    }
    println!(
        "{} mistakes, of which {mended} are mended by what is named",
        rows().len()
    );
}

/// The codes of the part's shape, its receiver and its duty: none is there for nothing.
#[test]
fn the_table_brings_about_every_code_of_shape_receiver_and_duty() {
    let seen: BTreeSet<&str> = rows().iter().map(|row| row.code).collect();
    assert_eq!(seen.len(), 31, "{seen:?}");
}

/// What is entered from the free end is mended from there: the start that a finding names is measured from it too.
#[test]
fn a_start_from_the_free_end_is_mended_from_there() {
    let mut job = sound();
    set(&mut job, Field::ShankLength, "80");
    job.part.sections = vec![
        cylinder("20", "30"),
        placed(cylinder("18", "45"), Datum::FreeEnd, "8"),
        cylinder("18", "5"),
    ];
    let before = plan(&job);
    let overlap = before
        .findings
        .iter()
        .find(|it| code(it) == "sections-overlap");
    // 30 mm and 45 mm leave 5 mm of the 80 mm behind them.
    let mend = Length::mm(5.0);
    let by = Length::mm(3.0);
    assert_eq!(
        overlap.map(|it| it.code),
        Some(Code::SectionsOverlap { by, mend })
    );
    type_mend(&mut job, overlap.unwrap());
    assert_eq!(codes(&plan(&job)), ["all-clear"]);
    set(&mut job, section(1, SectionField::Start), "2");
    let gap = plan(&job);
    let gap = gap.findings.iter().find(|it| code(it) == "gap-before");
    type_mend(&mut job, gap.unwrap());
    assert_eq!(codes(&plan(&job)), ["all-clear"]);
}

/// A part too small for any standard shank becomes nothing, and nothing is wrong with that.
#[test]
fn a_part_for_which_nothing_fits_becomes_nothing() {
    let mut job = sound();
    job.part.sections = vec![cylinder("2", "10")];
    assert_eq!(becomes(&job), []);
    job.part.sections.clear();
    assert_eq!(becomes(&job), []);
    job.part.sections = vec![cylinder("20", "80")];
    job.part.bores = vec![
        Hole::Through {
            diameter: mm("19.99"),
        }
        .into(),
    ];
    assert_eq!(becomes(&job), []);
}

/// Whether a text that shows numbers shows none that is not finite; JSON would leave such a one out.
fn has_only_finite_numbers(text: &str) -> bool {
    text.split(|letter: char| !letter.is_alphanumeric())
        .all(|word| !matches!(word, "NaN" | "inf"))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1024, failure_persistence: None, ..ProptestConfig::default() })]

    /// Any job at all has a plan and can be asked what it becomes, and every number in both is finite.
    #[test]
    fn nothing_panics_and_every_number_is_finite(job in any_job()) {
        let job = Job { title: String::new(), ..job };
        let plan = plan(&job);
        prop_assert!(has_only_finite_numbers(&format!("{plan:?}")), "{plan:?}");
        let found = becomes(&job);
        prop_assert!(has_only_finite_numbers(&format!("{found:?}")), "{found:?}");
        prop_assert!(found.iter().all(|one| one.kept.iter().all(|share| (0.0..=1.0 + 1e-9).contains(share))));
    }
}

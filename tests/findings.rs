//! What each mistake in a job is answered with, and that what a finding proposes does mend it.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::large_stack_arrays,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/mistakes.rs"]
mod mistakes;
#[path = "support/sound.rs"]
mod sound;

use mistakes::{CAUTION, Row, STOP, codes_of, row};
use skimwright::job::{
    BoreBottom, BoreField, Bounds, CentreOrder, CutOffMethod, EdgeField, Field, Job, Rigidity,
    Section, SectionField, Tolerance, Turned,
};
use skimwright::plan::{Code, Level, number_fields, plan};
use skimwright::quantity::{Dimension, Entry, Length, Unit};
use skimwright::tables::{ShaftClass, TaperSeries, TaperSize, ToolKind, WorkMaterial};
use sound::{code, codes, cylinder, drilled, mm, set, set_length, sound, taper, tapped, with};

const LEAST_DEPTH: Field = Field::Edge(EdgeField::LeastDepth);
const SHANK: Field = Field::Section(0, SectionField::Diameter);

#[test]
fn nothing_stands_against_a_sound_job() {
    let plan = plan(&sound());
    assert_eq!(codes(&plan), ["all-clear"]);
    assert_eq!(plan.findings[0].level, Level::Clear);
}

/// Jobs that a shop does every day, each without a word against it.
#[test]
fn ordinary_jobs_come_out_clear() {
    let mut through_tempered = sound();
    through_tempered.part.material = WorkMaterial::AlloySteelTempered;
    through_tempered.part.bores = vec![drilled("6", "115", BoreBottom::DrillPoint)];
    set(&mut through_tempered, Field::Countersink, "8");

    let mut disc_and_faced = sound();
    disc_and_faced.shop.cut_off_method = CutOffMethod::HandDisc;

    let mut case_cut_open = sound();
    case_cut_open.part.material = WorkMaterial::CaseHardenedSteel;
    // The cut lays the core open, but 2 mm off the radius leave the case on.
    set(&mut case_cut_open, Field::CaseDepth, "3");
    // Hard metal presses the tool off more than a light lathe and a fine tolerance bear.
    case_cut_open.shop.machine.rigidity = Rigidity::Heavy;
    case_cut_open.wanted.tolerance = Tolerance::Class(ShaftClass::H8);
    case_cut_open.shop.tool = ToolKind::CubicBoronNitride;
    case_cut_open.shop.cut_off_method = CutOffMethod::ChopWheel;

    let mut brass_in_high_speed_steel = sound();
    brass_in_high_speed_steel.part.material = WorkMaterial::Brass;
    brass_in_high_speed_steel.shop.tool = ToolKind::HighSpeedSteel;
    brass_in_high_speed_steel.shop.cut_off_method = CutOffMethod::PartingTool;

    let mut into_a_holder = with(
        sound(),
        &[(Field::ReceiverDepth, "55"), (Field::LeastGrip, "45")],
    );
    into_a_holder.part.sections = vec![taper("24", "18", "90")];

    for job in [
        through_tempered,
        disc_and_faced,
        case_cut_open,
        brass_in_high_speed_steel,
        into_a_holder,
    ] {
        assert_eq!(codes(&plan(&job)), ["all-clear"], "{job:?}");
    }
}

#[rustfmt::skip]
const ROWS: &[Row] = &[
    row("title of 81 letters", |job| job.title = "a".repeat(81), "title-too-long", Field::Title, CAUTION),
    row("no section", |job| job.part.sections.clear(), "no-section", Field::Sections, STOP),
    row("13 sections", |job| job.part.sections = vec![cylinder("20", "10"); 13], "too-many", Field::Sections, STOP),
    row("7 holes", |job| job.part.bores = vec![drilled("3", "5", BoreBottom::Flat); 7], "too-many", Field::Bores, STOP),
    row("taper past its point", |job| job.part.sections = vec![morse_2("0", Some("400"))],
        "taper-comes-to-a-point", Field::Section(0, SectionField::Length), STOP),
    row("taper of no length", |job| job.part.sections = vec![morse_2("-290", None)],
        "out-of-bounds", Field::Section(0, SectionField::PastGauge), STOP),
    row("upper below lower", |job| limits(job, "-0.02", "-0.01"), "limits-crossed", Field::UpperDeviation, STOP),
    row("limit through the axis", |job| { limits(job, "0", "-4"); set(job, Field::WantedDiameter, "3"); },
        "out-of-bounds", Field::LowerDeviation, STOP),
    row("class without a size", |job| { set(job, SHANK, "220"); set(job, Field::HeadDiameter, "300");
        set(job, Field::WantedDiameter, "200"); }, "no-such-limits", Field::Tolerance, STOP),
    row("longer than the shank", |job| set(job, Field::WantedLength, "81"), "shank-too-short", Field::WantedLength, STOP),
    row("larger than the stock", |job| set(job, Field::WantedDiameter, "20.5"), "not-cleaned-up", Field::WantedDiameter, STOP),
    row("runout eats the stock", |job| set(job, Field::Runout, "4.02"), "not-cleaned-up", Field::WantedDiameter, STOP),
    row("taper too thin at its end", |job| job.part.sections = vec![taper("20", "12", "80")],
        "not-cleaned-up", Field::WantedDiameter, STOP),
    row("just the size of the stock", |job| set(job, Field::WantedDiameter, "20"), "cleans-up-low", Field::WantedDiameter, CAUTION),
    row("hole wider than the shank", |job| job.part.bores = vec![drilled("16.5", "60", BoreBottom::Flat)],
        "breaks-out", Field::WantedDiameter, STOP),
    row("thread crest to crest", |job| job.part.bores = vec![tapped("M16", "50", "55")],
        "breaks-out", Field::WantedDiameter, STOP),
    row("wall of 1 mm", |job| job.part.bores = vec![drilled("14", "60", BoreBottom::Flat)],
        "thin-wall", Field::WantedDiameter, CAUTION),
    row("thread in the end", |job| job.part.bores = vec![tapped("M8", "40", "45")],
        "thread-left", Field::Bore(0, BoreField::Thread), CAUTION),
    row("thread in the offcut", |job| job.part.bores = vec![tapped("M8", "20", "45")],
        "thread-cut-away", Field::Bore(0, BoreField::Thread), CAUTION),
    row("thread below its hole", |job| job.part.bores = vec![tapped("M8", "20", "15")],
        "thread-below-hole", Field::Bore(0, BoreField::DrillDepth), CAUTION),
    row("too little in the receiver", |job| set(job, Field::LeastGrip, "49"), "grip-too-short", Field::WantedLength, STOP),
    row("receiver too shallow to grip", |job| { set(job, Field::LeastGrip, "40"); set(job, Field::ReceiverDepth, "35"); },
        "grip-too-short", Field::ReceiverDepth, STOP),
    row("receiver shallower than the shank", |job| set(job, Field::ReceiverDepth, "40"),
        "shoulder-stands-off", Field::ReceiverDepth, CAUTION),
    row("countersink over the whole end", |job| set(job, Field::Countersink, "14.5"),
        "countersink-too-wide", Field::Countersink, STOP),
    row("countersink inside the hole", |job| job.part.bores = vec![drilled("6", "60", BoreBottom::Flat)],
        "countersink-in-hole", Field::Countersink, STOP),
    row("countersink on the thread", |job| { job.part.bores = vec![tapped("M8", "60", "70")]; set(job, Field::Countersink, "7.5"); },
        "countersink-on-thread", Field::Countersink, CAUTION),
    row("no drill so wide", |job| { big(job); set(job, Field::Countersink, "26"); }, "no-centre-drill", Field::Countersink, STOP),
    row("no room for the point", |job| job.part.bores = vec![drilled("4.5", "33", BoreBottom::Flat)],
        "point-touches-bottom", Field::Countersink, CAUTION),
    row("fillet over the shoulder", |job| set(job, Field::HeadDiameter, "17"), "fillet-too-large", Field::ShoulderRadius, STOP),
    row("fillet without metal", |job| set(job, Field::ShoulderRadius, "2.5"), "fillet-in-part", Field::ShoulderRadius, CAUTION),
    row("fillet and chamfer meet", |job| { set(job, Field::WantedLength, "1.5"); job.wanted.countersink = None; },
        "no-straight-shank", Field::EndChamfer, STOP),
    row("chamfer to the axis", |job| { set(job, Field::EndChamfer, "8"); job.wanted.countersink = None; },
        "no-straight-shank", Field::EndChamfer, STOP),
    row("head no larger", |job| set(job, Field::HeadDiameter, "16"), "no-shoulder", Field::HeadDiameter, CAUTION),
    row("no fillet", |job| set(job, Field::ShoulderRadius, "0"), "sharp-shoulder", Field::ShoulderRadius, CAUTION),
    row("no chamfer", |job| set(job, Field::EndChamfer, "0"), "sharp-end", Field::EndChamfer, CAUTION),
    row("no room for a cut", |job| set(job, Field::WantedLength, "78"), "faced-back", Field::WantedLength, CAUTION),
    row("long as it is", |job| set(job, Field::WantedLength, "80"), "length-already", Field::WantedLength, CAUTION),
    row("nothing on", |job| set(job, Field::WantedDiameter, "20.1"), "nothing-to-turn", Field::WantedDiameter, CAUTION),
    row("last cuts too fine", |job| set(job, Field::LastCut, "0.05"), "infeed-too-fine", Field::LastCut, CAUTION),
    row("roughing too fine", |job| set(job, Field::RoughInfeed, "0.04"), "infeed-too-fine", Field::RoughInfeed, CAUTION),
    row("little stock for the last cuts", |job| { set(job, Field::WantedDiameter, "19.6"); set(job, Field::ShoulderRadius, "0.15"); },
        "last-cuts-reduced", Field::LastCut, CAUTION),
    row("hundreds of passes", |job| { set(job, Field::RoughInfeed, "0.005"); set(job, LEAST_DEPTH, "0.002"); },
        "too-many-passes", Field::RoughInfeed, STOP),
    row("saw on hard steel", |job| job.part.material = WorkMaterial::HardenedSteel, "saw-cannot-cut", Field::CutOffMethod, STOP),
    row("tool too soft", |job| { job.part.material = WorkMaterial::HardenedSteel; job.shop.tool = ToolKind::HighSpeedSteel; },
        "tool-cannot-cut", Field::Tool, STOP),
    row("plain high-speed steel on hard alloy steel", |job| {
        job.part.material = WorkMaterial::AlloySteelHard;
        job.shop.tool = ToolKind::HighSpeedSteel;
    }, "cobalt-grade-needed", Field::Tool, CAUTION),
    row("carbide insert on hardened steel", |job| {
        job.part.material = WorkMaterial::HardenedSteel;
        job.shop.tool = ToolKind::IndexableCarbide;
    }, "tool-at-its-limit", Field::Tool, CAUTION),
    row("hard through and through", |job| { job.part.material = WorkMaterial::HardenedSteel; disc(job); },
        "hard-end", Field::Countersink, CAUTION),
    row("hard skin from the disc", |job| { disc(job); set(job, Field::FacingStock, "0.3"); }, "hard-end", Field::Countersink, CAUTION),
    row("skin still on", |job| { disc(job); job.shop.centre_order = CentreOrder::BeforeFacing; },
        "hard-end", Field::Countersink, CAUTION),
    row("case still on the end", |job| { job.part.material = WorkMaterial::CaseHardenedSteel;
        job.shop.tool = ToolKind::CubicBoronNitride; set(job, Field::WantedLength, "80"); }, "hard-end", Field::Countersink, CAUTION),
];

fn morse_2(past_gauge: &str, length: Option<&str>) -> Section {
    Turned::StandardTaper {
        taper: TaperSize::find(TaperSeries::Morse, "2").unwrap(),
        past_gauge: mm(past_gauge),
        length: length.map(mm),
    }
    .into()
}

fn limits(job: &mut Job, upper: &str, lower: &str) {
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm(upper),
        lower: mm(lower),
    };
}

fn disc(job: &mut Job) {
    job.shop.cut_off_method = CutOffMethod::HandDisc;
}

/// A shank of 60 mm that becomes 50 mm.
fn big(job: &mut Job) {
    set(job, SHANK, "60");
    set(job, Field::WantedDiameter, "50");
    set(job, Field::HeadDiameter, "80");
}

#[test]
fn each_mistake_is_named_at_its_field() {
    mistakes::check(ROWS);
}

/// Every code but one can be brought about: none is there for nothing, and the table leaves none out.
#[test]
fn the_table_brings_about_every_code() {
    let seen = codes_of(ROWS);
    // 39 codes of mistakes, and one that there is none.
    assert_eq!(seen.len(), 39, "{seen:?}");
}

/// A job file may hold more sections and holes than a byte can count.
#[test]
fn hundreds_of_sections_and_holes_are_too_many_and_no_more() {
    let mut job = sound();
    job.part.sections = vec![cylinder("20", "10"); 300];
    job.part.bores = vec![tapped("M8", "20", "15"); 300];
    let plan = plan(&job);
    let too_many = |field| {
        let mut findings = plan.findings.iter();
        findings.any(|found| found.field == field && found.code == Code::TooMany)
    };
    assert!(too_many(Field::Sections) && too_many(Field::Bores));
    // What is beyond the most is left aside.
    let received = plan.shape.received.unwrap();
    assert_eq!(received.sections.len(), Job::MOST_SECTIONS);
    assert_eq!(received.bores.len(), Job::MOST_BORES);
}

/// A number below its least or above its most is named at its field, and the rest of the plan stands.
#[test]
fn each_number_outside_its_bounds_is_named() {
    let mut job = sound();
    job.part.sections = vec![
        cylinder("30", "20"),
        taper("28", "26", "20"),
        morse_2("0", Some("60")),
    ];
    job.part.bores = vec![
        drilled("5", "20", BoreBottom::Flat),
        tapped("M8", "10", "12"),
    ];
    limits(&mut job, "0", "-0.02");
    let fields = number_fields(&job);
    // 8 of the part, of which 3 are hardnesses; 3 sections of 2, 5 and 2 numbers; 2 holes of 2 and an offset each; 8
    // wanted, the edge of the receiver, 2 of its depth, 5 of the duty, 14 of the shop; 10 of the tool, 15 of the lathe,
    // 3 of each of the 16 steps but 4 that the shop has by itself, 4 rates; 5 of the holding, the room,
    // 8 readings.
    assert_eq!(
        fields.len(),
        8 + 9 + 6 + 8 + 1 + 2 + 5 + 14 + 10 + 15 + (16 * 3 - 4) + 4 + 5 + 1 + 8
    );
    // What may be empty is filled, from the middle of its bounds.
    for field in &fields {
        if job.entry(*field).is_none() {
            let bounds = field.bounds().unwrap();
            set(&mut job, *field, &typed_middle(bounds));
        }
    }
    for field in fields {
        let bounds = field.bounds().unwrap();
        let unit = job.entry(field).unwrap().unit();
        let step = 0.01;
        for outside in [bounds.least - step, bounds.most + step, 2e9] {
            let mut wrong = job.clone();
            // A share is typed in per cent.
            let typed = if unit == Unit::Percent {
                outside * 100.0
            } else {
                outside
            };
            let entry = Entry::decimal(typed, 3, unit);
            assert!(wrong.set_entry(field, entry));
            let named = plan(&wrong)
                .findings
                .iter()
                .any(|finding| finding.field == field && finding.code == Code::OutOfBounds);
            assert!(named, "{field} {outside}");
        }
        let named = plan(&job)
            .findings
            .iter()
            .any(|finding| finding.field == field && finding.code == Code::OutOfBounds);
        assert!(!named, "{field}");
    }
}

/// The middle of the bounds, as it is typed: a share in per cent, all else in its base unit.
fn typed_middle(bounds: Bounds) -> String {
    let middle = f64::midpoint(bounds.least, bounds.most);
    let scale = if bounds.dimension == Dimension::Share {
        100.0
    } else {
        1.0
    };
    format!("{:.3}", middle * scale)
}

/// Types what the finding with this code proposes, and looks that the finding is gone.
#[track_caller]
fn mends(job: &Job, code_name: &str, field: Field, proposal: impl Fn(Code) -> Option<Length>) {
    let before = plan(job);
    let found = before.findings.iter().find(|it| code(it) == code_name);
    let length = found
        .and_then(|found| proposal(found.code))
        .unwrap_or_else(|| panic!("{code_name} in {:?}", before.findings));
    let mut mended = job.clone();
    set_length(&mut mended, field, length);
    let after = plan(&mended);
    assert!(
        !codes(&after).contains(&code_name.to_owned()),
        "{length:?} into {field}: {:?}",
        after.findings
    );
    let bounds = field.bounds().unwrap();
    assert!(bounds.least <= length.to_mm() && length.to_mm() <= bounds.most);
}

fn largest(code: Code) -> Option<Length> {
    match code {
        Code::NotCleanedUp { largest, .. }
        | Code::CleansUpLow { largest, .. }
        | Code::FilletTooLarge { largest }
        | Code::FilletInPart { largest }
        | Code::NoCentreDrill { largest } => Some(largest),
        _ => None,
    }
}

#[test]
fn the_largest_diameter_named_cleans_up_whatever_the_tolerance() {
    let all = ShaftClass::ALL.map(Tolerance::Class);
    let odd = [("0.05", "0.02"), ("-0.3", "-0.5"), ("0.3", "-0.3")].map(|(upper, lower)| {
        Tolerance::Limits {
            upper: mm(upper),
            lower: mm(lower),
        }
    });
    for tolerance in all.into_iter().chain(odd) {
        // Stock at and about the steps of the tables: 18 and 30 mm.
        for stock in [
            "18.000", "18.005", "18.02", "20", "29.99", "30.001", "30.02",
        ] {
            let mut job = with(sound(), &[(SHANK, stock), (Field::WantedDiameter, "31")]);
            job.wanted.tolerance = tolerance.clone();
            mends(&job, "not-cleaned-up", Field::WantedDiameter, largest);
            let mut low = job.clone();
            set(&mut low, Field::WantedDiameter, stock);
            if codes(&plan(&low)).contains(&"cleans-up-low".to_owned()) {
                mends(&low, "cleans-up-low", Field::WantedDiameter, largest);
            }
        }
    }
}

#[test]
fn the_longest_shank_named_cleans_up() {
    let mut job = with(
        sound(),
        &[(Field::Runout, "0.1"), (Field::WantedLength, "70")],
    );
    job.part.sections = vec![
        cylinder("22", "10"),
        taper("20", "14", "60"),
        cylinder("25", "10"),
    ];
    let longest = |code| match code {
        Code::NotCleanedUp { longest, .. } => Some(longest),
        _ => None,
    };
    mends(&job, "not-cleaned-up", Field::WantedLength, longest);
    job.part.sections = vec![cylinder("22", "30"), cylinder("15", "50")];
    mends(&job, "not-cleaned-up", Field::WantedLength, longest);
}

#[test]
fn the_smallest_diameter_named_leaves_the_wall_advised() {
    for (hole, deep) in [("16.5", "60"), ("17.9", "60"), ("15.999", "75")] {
        let mut job = with(sound(), &[(Field::Runout, "0.06"), (SHANK, "26")]);
        job.part.bores = vec![drilled(hole, deep, BoreBottom::DrillPoint)];
        let smallest = |code| match code {
            Code::BreaksOut { smallest, .. } => Some(smallest),
            _ => None,
        };
        mends(&job, "breaks-out", Field::WantedDiameter, smallest);
        let Code::BreaksOut { smallest, .. } = plan(&job).findings[0].code else {
            panic!("breaks out first");
        };
        set_length(&mut job, Field::WantedDiameter, smallest);
        assert!(
            !codes(&plan(&job)).contains(&"thin-wall".to_owned()),
            "{hole}"
        );
    }
}

#[test]
fn what_a_finding_proposes_mends_it() {
    let longest = |code| match code {
        Code::ShankTooShort { longest, .. } => Some(longest),
        _ => None,
    };
    let long = with(sound(), &[(Field::WantedLength, "95")]);
    mends(&long, "shank-too-short", Field::WantedLength, longest);

    let wide = with(sound(), &[(Field::Countersink, "14.5")]);
    mends(
        &wide,
        "countersink-too-wide",
        Field::Countersink,
        |code| match code {
            Code::CountersinkTooWide { end } => Some(end),
            _ => None,
        },
    );

    let mut no_drill = sound();
    big(&mut no_drill);
    set(&mut no_drill, Field::Countersink, "26");
    mends(&no_drill, "no-centre-drill", Field::Countersink, largest);
    no_drill.shop.centre_order = CentreOrder::BeforeFacing;
    mends(&no_drill, "no-centre-drill", Field::Countersink, largest);

    let high = with(sound(), &[(Field::HeadDiameter, "17")]);
    mends(&high, "fillet-too-large", Field::ShoulderRadius, largest);
    let part = with(
        sound(),
        &[(Field::ShoulderRadius, "2.5"), (Field::Runout, "0.2")],
    );
    mends(&part, "fillet-in-part", Field::ShoulderRadius, largest);

    let few = with(sound(), &[(Field::WantedDiameter, "19.6")]);
    mends(
        &few,
        "last-cuts-reduced",
        Field::LastCut,
        |code| match code {
            Code::LastCutsReduced { each } => Some(each),
            _ => None,
        },
    );
    let fine = with(sound(), &[(Field::LastCut, "0.05")]);
    mends(
        &fine,
        "infeed-too-fine",
        Field::LastCut,
        |code| match code {
            Code::InfeedTooFine { least, .. } => Some(least * 2.0),
            _ => None,
        },
    );
    let rub = with(sound(), &[(Field::RoughInfeed, "0.04")]);
    mends(
        &rub,
        "infeed-too-fine",
        Field::RoughInfeed,
        |code| match code {
            Code::InfeedTooFine { least, .. } => Some(least * 2.0),
            _ => None,
        },
    );

    let shallow = with(sound(), &[(Field::ReceiverDepth, "40")]);
    mends(
        &shallow,
        "shoulder-stands-off",
        Field::ReceiverDepth,
        |code| match code {
            Code::ShoulderStandsOff { by } => Some(Length::mm(40.0) + by),
            _ => None,
        },
    );
}

/// A shank of 50 mm bottoms in a receiver of 49.5 mm, and half a millimetre of it, part of the fillet, stays outside.
#[test]
fn what_stands_out_of_a_full_receiver_is_all_that_does_not_go_in() {
    for (depth, stands_out) in [("40", Some(10.0)), ("49.5", Some(0.5)), ("50", None)] {
        let plan = plan(&with(sound(), &[(Field::ReceiverDepth, depth)]));
        let found = plan.findings.iter().find_map(|found| match found.code {
            Code::ShoulderStandsOff { by } => Some(by.to_mm()),
            _ => None,
        });
        assert_eq!(found.is_some(), stands_out.is_some(), "{depth}");
        if let (Some(by), Some(wanted)) = (found, stands_out) {
            assert!((by - wanted).abs() < 1e-9, "{depth}: {by}");
        }
    }
}

/// The hole must be deep enough below the face for the point of a live centre.
#[test]
fn the_least_depth_named_makes_room_for_the_point() {
    for bottom in [BoreBottom::Flat, BoreBottom::DrillPoint] {
        let mut job = sound();
        job.part.bores = vec![drilled("4.5", "33", bottom)];
        // 30 mm of the shank fall off, kerf and facing stock counted.
        mends(
            &job,
            "point-touches-bottom",
            Field::Bore(0, BoreField::Depth),
            |code| match code {
                Code::PointTouchesBottom { least_depth } => Some(Length::mm(30.0) + least_depth),
                _ => None,
            },
        );
    }
}

//! The DXF file, read back group by group.
#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use super::*;
use crate::demo::demo_jobs;
use crate::plan::plan;
use proptest::prelude::*;
use std::collections::BTreeSet;

use crate::sheet::any_job;

/// The groups of a file; every line must end with CR LF and hold nothing but ASCII.
fn groups(file: &str) -> Vec<(u16, &str)> {
    assert!(file.is_ascii());
    assert_eq!(file.matches('\n').count(), file.matches("\r\n").count());
    let lines: Vec<&str> = file.strip_suffix("\r\n").unwrap().split("\r\n").collect();
    assert!(lines.len().is_multiple_of(2) && lines.iter().all(|line| line.len() <= 255));
    let pairs = lines.chunks_exact(2);
    pairs
        .map(|pair| (pair[0].trim().parse().unwrap(), pair[1]))
        .collect()
}

/// The entities of a file: what each is, and its groups.
fn entities<'a>(groups: &[(u16, &'a str)]) -> Vec<(&'a str, Vec<(u16, &'a str)>)> {
    let start = groups.iter().position(|it| *it == (2, "ENTITIES")).unwrap();
    let mut found: Vec<(&str, Vec<_>)> = Vec::new();
    for (code, value) in &groups[start + 1..] {
        if *code == 0 {
            found.push((value, Vec::new()));
        } else {
            found.last_mut().unwrap().1.push((*code, *value));
        }
    }
    found.retain(|(name, _)| !["ENDSEC", "EOF"].contains(name));
    found
}

/// The whole form: sections in order, known layers and line types, numbers that are numbers.
fn check(file: &str) {
    let groups = groups(file);
    let sections: Vec<&str> = groups
        .windows(2)
        .filter(|pair| pair[0] == (0, "SECTION"))
        .map(|pair| pair[1].1)
        .collect();
    assert_eq!(sections, ["HEADER", "TABLES", "BLOCKS", "ENTITIES"]);
    assert_eq!(groups.iter().filter(|it| **it == (0, "ENDSEC")).count(), 4);
    assert_eq!(groups.last(), Some(&(0, "EOF")));
    let named = |kind: &str| -> BTreeSet<&str> {
        let pairs = groups.windows(2).filter(|pair| pair[0] == (0, kind));
        pairs.map(|pair| pair[1].1).collect()
    };
    let (layers, line_types) = (named("LAYER"), named("LTYPE"));
    for (code, value) in &groups {
        match code {
            8 => assert!(layers.contains(value), "{value}"),
            6 => assert!(line_types.contains(value), "{value}"),
            10..=59 => assert!(value.parse::<f64>().unwrap().is_finite() && value.contains('.')),
            _ => {}
        }
    }
    for (name, groups) in entities(&groups) {
        let number = |code: u16| -> f64 {
            let (_, value) = groups.iter().find(|group| group.0 == code).unwrap();
            value.parse().unwrap()
        };
        let differ = |one, other| 1e-9 < (number(one) - number(other)).abs();
        match name {
            "LINE" => assert!(differ(10, 11) || differ(20, 21), "{groups:?}"),
            "ARC" => assert!(number(40) > 0.0 && differ(50, 51)),
            "SOLID" | "TEXT" => {}
            other => panic!("{other}"),
        }
    }
}

#[test]
fn every_drawing_is_a_whole_file() {
    for job in demo_jobs() {
        let plan = plan(&job);
        for stage in [Stage::Received, Stage::Wanted, Stage::Plan] {
            for units in Units::ALL {
                check(&dxf(&job, &plan, stage, units));
            }
        }
    }
    let mut empty = Job::default();
    empty.part.sections.clear();
    let plan = plan(&empty);
    assert!(plan.shape.received.is_none());
    let file = dxf(&empty, &plan, Stage::Plan, Units::Metric);
    check(&file);
    assert_eq!(entities(&groups(&file)).len(), 1);
}

/// The usual job by hand: head ⌀40 × 30, shank ⌀20 × 80.
#[test]
fn the_part_is_drawn_in_true_size() {
    let job = Job::default();
    let plan = plan(&job);
    let file = dxf(&job, &plan, Stage::Plan, Units::Metric);
    let groups = groups(&file);
    let received: Vec<_> = entities(&groups)
        .into_iter()
        .filter(|(_, groups)| groups.contains(&(8, "RECEIVED")))
        .collect();
    let line = |from: (&str, &str), to: (&str, &str)| {
        let wanted = [(10, from.0), (20, from.1), (11, to.0), (21, to.1)];
        received
            .iter()
            .any(|(_, it)| wanted.iter().all(|group| it.contains(group)))
    };
    for sign in ["", "-"] {
        let at = |radius: &str| format!("{sign}{radius}");
        assert!(line(("-30.0", &at("20.0")), ("0.0", &at("20.0"))), "{file}");
        assert!(line(("0.0", &at("10.0")), ("80.0", &at("10.0"))));
    }
    let shank = plan.shape.shank.unwrap();
    let wanted = decimal_of(shank.fillet.to_mm());
    let arcs: Vec<_> = entities(&groups)
        .into_iter()
        .filter(|(name, _)| *name == "ARC")
        .collect();
    assert_eq!(arcs.len(), 2);
    for (_, arc) in arcs {
        assert!(arc.contains(&(40, wanted.as_str())) && arc.contains(&(10, wanted.as_str())));
        // A quarter circle from the shoulder to the shank.
        let ends = [("180.0", "270.0"), ("90.0", "180.0")];
        assert!(
            ends.iter()
                .any(|(from, to)| arc.contains(&(50, from)) && arc.contains(&(51, to)))
        );
    }
}

fn decimal_of(value: f64) -> String {
    let text = value.to_string();
    if text.contains('.') {
        text
    } else {
        text + ".0"
    }
}

#[test]
fn a_title_cannot_break_the_file() {
    for title in [
        "  0\r\nSECTION\n",
        "%%c ^J %%%%d",
        "Dorn ⌀25 ±0.01°, 軸",
        "\0\u{7f}\u{2028}",
        "",
    ] {
        let title = title.to_owned();
        let job = Job {
            title,
            ..Job::default()
        };
        let file = dxf(&job, &plan(&job), Stage::Received, Units::Metric);
        check(&file);
        let plain = dxf(&Job::default(), &plan(&job), Stage::Received, Units::Metric);
        assert_eq!(groups(&file).len(), groups(&plain).len(), "{:?}", job.title);
    }
    assert_eq!(
        ascii("%%c%%%^ ⌀25 ± 1° × 45° µ軸"),
        "%c%  %%c25 %%p 1%%d x 45%%d u?"
    );
}

#[test]
fn hatching_ends_at_what_is_open() {
    let at = |x: f64, y: f64| Point::new(x, y);
    let square = [at(2.0, -1.0), at(4.0, -1.0), at(4.0, 1.0), at(2.0, 1.0)];
    let through = outside((at(0.0, 0.0), at(6.0, 0.0)), &square);
    assert_eq!(
        through,
        [(at(0.0, 0.0), at(2.0, 0.0)), (at(4.0, 0.0), at(6.0, 0.0))]
    );
    assert!(outside((at(2.5, 0.0), at(3.5, 0.0)), &square).is_empty());
    assert_eq!(
        outside((at(3.0, 0.0), at(3.0, 5.0)), &square),
        [(at(3.0, 1.0), at(3.0, 5.0))]
    );
    let beside = (at(0.0, 3.0), at(6.0, 3.0));
    assert_eq!(outside(beside, &square), [beside]);
    assert_eq!(outside(beside, &[]), [beside]);
}

#[test]
fn powers_of_two_are_no_less_than_asked() {
    for (wanted, power) in [
        (1.0, 1.0),
        (1.01, 2.0),
        (0.3, 0.5),
        (0.0, 2.0_f64.powi(-16)),
        (7.9, 8.0),
    ] {
        assert!(
            (power_of_two(wanted) - power).abs() < f64::EPSILON,
            "{wanted}"
        );
    }
    assert!(power_of_two(f64::INFINITY) > 65_536.0 && power_of_two(f64::NAN) > 0.0);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn any_job_has_a_whole_file(job in any_job::job(), stage in 0..3_usize) {
        let stage = [Stage::Received, Stage::Wanted, Stage::Plan][stage];
        check(&dxf(&job, &plan(&job), stage, Units::Metric));
    }
}

//! Charts: every point lies on its chart, axes rise evenly, and a known shape comes out where it should.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/jobs.rs"]
mod jobs;

use proptest::prelude::*;
use skimwright::cutting::CountPoint;
use skimwright::demo::demo_jobs;
use skimwright::holding::{FormError, FormPoint, Shape};
use skimwright::job::Job;
use skimwright::plan::{compare, plan};
use skimwright::quantity::{Length, Money, Time, Units};
use skimwright::sheet::{Chart, Compare, Point, Tick, count_chart, form_chart};

/// A straight bell mouth: 2 µm at 10 mm to 12 µm at 60 mm.
fn bell_mouth() -> FormError {
    let point = |at: f64| FormPoint {
        at: Length::mm(at),
        parting: Length::um(at / 10.0),
        size_error: Length::um(at / 5.0),
    };
    let points: Vec<FormPoint> = [10.0, 20.0, 35.0, 60.0].map(point).to_vec();
    FormError {
        greatest: points[3],
        least: points[0],
        taper: points[3].size_error - points[0].size_error,
        shape: Shape::BellMouth,
        points,
    }
}

/// Everything is finite and on the chart, and the numbers of each axis rise by equal steps.
#[track_caller]
fn check(chart: &Chart) {
    let on = |point: &Point| {
        (-1e-6..=chart.width + 1e-6).contains(&point.x)
            && (-1e-6..=chart.height + 1e-6).contains(&point.y)
    };
    let in_plot = |point: &Point| {
        let plot = chart.plot;
        (plot.x - 1e-6..=plot.x + plot.width + 1e-6).contains(&point.x)
            && (plot.y - 1e-6..=plot.y + plot.height + 1e-6).contains(&point.y)
    };
    assert!(chart.line.iter().all(in_plot), "{chart:?}");
    assert!(chart.outline.iter().all(on), "{chart:?}");
    for dot in &chart.dots {
        assert!(in_plot(&dot.at), "{dot:?}");
        if let Some((at, text)) = &dot.label {
            let half = f64::from(u32::try_from(text.chars().count()).unwrap()) * 4.0;
            let ends = [at.x - half, at.x + half].map(|x| Point::new(x, at.y));
            assert!(ends.iter().all(on), "{dot:?}");
        }
    }
    if let Some(band) = chart.band {
        let ends = [
            Point::new(band.x, band.y),
            Point::new(band.x + band.width, band.y + band.height),
        ];
        assert!(ends.iter().all(in_plot) && 0.0 <= band.height, "{band:?}");
    }
    for (ticks, sign) in [(&chart.across, 1.0), (&chart.up, -1.0)] {
        let gaps: Vec<f64> = ticks
            .windows(2)
            .map(|pair: &[Tick]| (pair[1].at - pair[0].at) * sign)
            .collect();
        assert!(gaps.iter().all(|gap| 4.0 < *gap), "{ticks:?}");
        assert!(
            gaps.iter().all(|gap| (gap - gaps[0]).abs() < 1e-6),
            "{ticks:?}"
        );
        let mut texts: Vec<&str> = ticks.iter().map(|it| it.text.as_str()).collect();
        texts.dedup();
        assert_eq!(texts.len(), ticks.len(), "no number twice");
    }
    assert!(2 <= chart.up.len(), "{:?}", chart.up);
}

fn texts(ticks: &[Tick]) -> Vec<&str> {
    ticks.iter().map(|it| it.text.as_str()).collect()
}

#[test]
fn a_bell_mouth_rises_to_the_free_end() {
    let chart = form_chart(&bell_mouth(), Length::um(4.0), None, 328.0, Units::Metric).unwrap();
    check(&chart);
    assert_eq!((chart.across_unit, chart.up_unit), ("mm", "µm"));
    assert_eq!(
        texts(&chart.across),
        ["0", "10", "20", "30", "40", "50", "60"]
    );
    assert_eq!(texts(&chart.up), ["2", "4", "6", "8", "10", "12"]);
    // The number of the axis and the point of the line that has it stand level.
    assert!((chart.line[0].y - chart.up[0].at).abs() < 1e-9);
    assert!((chart.line[3].y - chart.up[5].at).abs() < 1e-9);
    assert!((chart.line[1].x - chart.across[2].at).abs() < 1e-9);
    // 4 µm of 10 are allowed above the least.
    let band = chart.band.unwrap();
    let whole = chart.line[0].y - chart.line[3].y;
    assert!((band.height / whole - 0.4).abs() < 1e-9);
    let [greatest, least] = &chart.dots[..] else {
        panic!()
    };
    assert_eq!(greatest.label.as_ref().unwrap().1, "12\u{a0}µm");
    assert_eq!(least.label.as_ref().unwrap().1, "2\u{a0}µm");
    assert!(greatest.label.as_ref().unwrap().0.y < greatest.at.y);
    assert!(least.at.y < least.label.as_ref().unwrap().0.y);
    let inch = form_chart(
        &bell_mouth(),
        Length::um(4.0),
        None,
        328.0,
        Units::InchDecimal,
    );
    let inch = inch.unwrap();
    check(&inch);
    assert_eq!(inch.up_unit, "thou");
    assert_eq!(inch.dots[0].label.as_ref().unwrap().1, "0.47\u{a0}thou");
    // The same shape in either unit.
    let share = |chart: &Chart| (chart.line[1].x - chart.plot.x) / chart.plot.width;
    assert!((share(&chart) - share(&inch)).abs() < 1e-9);
}

#[test]
fn the_planned_row_is_marked() {
    let point = |passes: u32, minutes: f64, cost: f64| CountPoint {
        passes,
        time: Time::minutes(minutes),
        cost: Some(Money::of_currency(cost)),
        planned: passes == 5,
    };
    let counts = [
        point(4, 12.0, 30.0),
        point(5, 10.0, 31.0),
        point(6, 11.0, 33.0),
    ];
    let chart = count_chart(&counts, Compare::Time, 328.0).unwrap();
    check(&chart);
    assert_eq!(texts(&chart.across), ["4", "5", "6"]);
    // From 10 to 12 min by steps of half a minute: from nought nobody could tell them apart.
    assert_eq!(chart.up_unit, "min");
    assert_eq!(texts(&chart.up), ["10.0", "10.5", "11.0", "11.5", "12.0"]);
    let apart = [point(4, 30.0, 1.0), point(5, 10.0, 1.0)];
    let apart = count_chart(&apart, Compare::Time, 328.0).unwrap();
    assert_eq!(texts(&apart.up), ["0", "10", "20", "30"]);
    let labels: Vec<_> = chart.dots.iter().map(|it| it.label.is_some()).collect();
    assert_eq!(labels, [false, true, false]);
    assert_eq!(chart.dots[1].label.as_ref().unwrap().1, "10\u{a0}min");
    // Less time lies lower.
    assert!(chart.line[0].y < chart.line[2].y && chart.line[2].y < chart.line[1].y);
    let cost = count_chart(&counts, Compare::Cost, 328.0).unwrap();
    assert_eq!(cost.dots[1].label.as_ref().unwrap().1, "31.00");
    assert!(cost.line[1].y < cost.line[0].y);
    let without = counts.map(|it| CountPoint { cost: None, ..it });
    assert_eq!(count_chart(&without, Compare::Cost, 328.0), None);
    assert_eq!(count_chart(&[], Compare::Time, 328.0), None);
}

#[track_caller]
fn check_job(job: &Job, width: f64, units: Units) -> u32 {
    let plan = plan(job);
    let mut drawn = 0;
    let mut seen = |chart: Option<Chart>| {
        if let Some(chart) = chart {
            check(&chart);
            drawn += 1;
        }
    };
    if let Some((holding, form)) = plan
        .holding
        .as_ref()
        .and_then(|it| Some((it, it.form.as_ref()?)))
    {
        let finished = plan.shape.finished.as_ref();
        seen(form_chart(form, holding.allowed, finished, width, units));
    }
    let counts = compare(job, &plan).counts;
    for what in [Compare::Time, Compare::Cost] {
        seen(count_chart(&counts, what, width));
    }
    drawn
}

#[test]
fn every_example_has_its_charts() {
    for job in demo_jobs().into_iter().chain([Job::default()]) {
        for width in [260.0, 328.0, 640.0] {
            assert!(2 <= check_job(&job, width, Units::Metric), "{}", job.title);
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn any_job_has_sound_charts(job in jobs::any_job(), width in 240.0..900.0_f64, inch in any::<bool>()) {
        check_job(&job, width, if inch { Units::InchDecimal } else { Units::Metric });
    }
}

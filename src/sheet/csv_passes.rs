//! The passes of a plan as a table for a spreadsheet.

use super::csv::{DecimalMark, Table};
use crate::cutting::{Pass, PassKind};
use crate::job::{DialReads, Job};
use crate::plan::Plan;
use crate::quantity::{Dimension, Force, Length, Units};

/// Decimals of what is small, in millimetres and in inches: a tenth of a micrometre.
const FINE: (usize, usize) = (4, 6);

/// The passes of a plan, one row each, as CSV; a head without rows while there are none.
///
/// `plan` is the plan of `job`. Lengths, feeds and cutting speeds are in the unit that `units` types, forces in newtons,
/// power in watts, times in seconds, roughness in micrometres.
///
/// # Accuracy
/// Lengths to 0.1 µm or a millionth of an inch, times to a tenth of a second.
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, quantity::Units};
/// use skimwright::sheet::{DecimalMark, passes_csv};
/// let job = Job::default();
/// let text = passes_csv(&job, &plan(&job), Units::Metric, DecimalMark::Point);
/// assert!(text.starts_with("\u{feff}pass,kind,dialled [mm],"));
/// ```
pub fn passes_csv(job: &Job, plan: &Plan, units: Units, mark: DecimalMark) -> String {
    let heads = heads(units);
    let heads: Vec<&str> = heads.iter().map(String::as_str).collect();
    let mut table = Table::new(mark, &heads);
    let passes = plan.stock_off.as_ref().map_or(&[][..], |it| &it.passes);
    for (number, pass) in (1_u32..).zip(passes) {
        table.number(f64::from(number), 0);
        row(&mut table, pass, job.shop.machine.dial_reads, units);
        table.end_row();
    }
    table.into_text()
}

fn heads(units: Units) -> [String; 25] {
    let length = units.typed_unit(Dimension::Length).sign();
    let speed = units.typed_unit(Dimension::Speed).sign();
    let feed = units.typed_unit(Dimension::Feed).sign();
    [
        ("pass", ""),
        ("kind", ""),
        ("dialled", length),
        ("dial reads", ""),
        ("infeed on radius", length),
        ("off diameter", length),
        ("diameter before", length),
        ("diameter after", length),
        ("metal", length),
        ("travel", length),
        ("ends from shoulder", length),
        ("cutting speed", speed),
        ("spindle speed", "1/min"),
        ("feed", feed),
        ("time", "s"),
        ("feeding", "s"),
        ("force low", "N"),
        ("force", "N"),
        ("force high", "N"),
        ("force along", "N"),
        ("force across", "N"),
        ("power", "W"),
        ("roughness Ra", "µm"),
        ("edge used", "%"),
        ("to know", ""),
    ]
    .map(|(name, unit)| {
        if unit.is_empty() {
            name.to_owned()
        } else {
            format!("{name} [{unit}]")
        }
    })
}

fn row(table: &mut Table, pass: &Pass, reads: DialReads, units: Units) {
    let turned = pass.kind != PassKind::Polish;
    let decimals = if units.is_inch() { FINE.1 } else { FINE.0 };
    let length = |length: Length| {
        if units.is_inch() {
            length.to_inch()
        } else {
            length.to_mm()
        }
    };
    table.say(match pass.kind {
        PassKind::Rough => "rough",
        PassKind::Last => "last",
        PassKind::Polish => "polish",
    });
    // Nothing is dialled for polishing, and the tool does not feed.
    let cutting = |value: f64| turned.then_some(value);
    table.number(cutting(length(pass.dialled(reads))), decimals);
    table.say(dial_reads(reads));
    table.number(cutting(length(pass.infeed)), decimals);
    for size in [
        pass.off_diameter,
        pass.diameter_before(),
        pass.diameter_after,
        pass.metal,
        pass.travel,
        pass.ends_at,
    ] {
        table.number(length(size), decimals);
    }
    let (speed, feed) = if units.is_inch() {
        (
            pass.cutting_speed.to_ft_per_min(),
            pass.feed.to_inch_per_rev(),
        )
    } else {
        (pass.cutting_speed.to_m_per_min(), pass.feed.to_mm_per_rev())
    };
    table.number(speed, 2);
    table.number(pass.spindle_speed.to_per_min(), 1);
    table.number(cutting(feed), decimals);
    table.number(pass.time.to_seconds(), 1);
    table.number(cutting(pass.feeding.to_seconds()), 1);
    let cut = pass.cut.as_ref();
    // A wheel has no law of force here.
    let known = cut.filter(|cut| cut.basis.is_some());
    for force in [
        known.map(|cut| cut.force.low),
        known.map(|cut| cut.force.typical),
        known.map(|cut| cut.force.high),
        known.map(|cut| cut.along),
        known.map(|cut| cut.across),
    ] {
        table.number(force.map(Force::to_newtons), 1);
    }
    table.number(known.map(|cut| cut.power.to_watts()), 1);
    let roughness = cut.and_then(|cut| cut.roughness);
    table.number(roughness.map(|it| it.typical.to_um()), 2);
    table.number(cut.map(|cut| cut.edge_used * 100.0), 2);
    let marks: Vec<&str> = cut.map_or_else(Vec::new, |cut| {
        let marks = [
            (cut.pinned.is_some(), "pinned"),
            (cut.new_edge, "fresh edge first"),
            (cut.interrupted, "interrupted"),
            (cut.in_core, "core below the case"),
        ];
        let told = marks.into_iter().filter(|(is, _)| *is);
        told.map(|(_, mark)| mark).collect()
    });
    table.say(&marks.join(" / "));
}

/// What a dial's marks mean.
pub(super) const fn dial_reads(reads: DialReads) -> &'static str {
    match reads {
        DialReads::Diameter => "diameter",
        DialReads::Radius => "radius",
    }
}

//! Example jobs to look at and to start from. Invented for this program; no real part, shop or owner.

use crate::job::{
    Bore, BoreBottom, CentreOrder, CutOffMethod, Job, Part, Section, Shop, Tolerance, Wanted,
};
use crate::quantity::{Entered, Length, Unit};
use crate::tables::{ShaftClass, TaperSeries, TaperSize, ThreadSize, ToolKind, WorkMaterial};

/// The example jobs, in the order of the page.
pub fn demo_jobs() -> [Job; 3] {
    [milling_arbor(), saw_arbor(), roller_stub()]
}

fn mm(digits: u32, decimals: u8) -> Entered<Length> {
    Entered::plain(digits, decimals, Unit::Millimetre)
}

fn inch(whole: u16, numerator: u16, denominator: u16) -> Entered<Length> {
    Entered::mixed(whole, numerator, denominator, Unit::Inch)
}

/// A hardened milling arbor with a plain 32 mm shank and an M12 hole, for a 25 mm side-lock holder.
fn milling_arbor() -> Job {
    let thread = ThreadSize::from_code("M12").map(|thread| Bore::Tapped {
        thread,
        thread_depth: mm(30, 0),
        drill_depth: mm(38, 0),
    });
    Job {
        title: "Milling arbor, 32 mm to 25 mm".to_owned(),
        part: Part {
            material: WorkMaterial::HardenedSteel,
            head_diameter: mm(50, 0),
            head_length: mm(35, 0),
            runout: mm(2, 2),
            sections: vec![Section::Cylinder {
                diameter: mm(32, 0),
                length: mm(715, 1),
            }],
            bores: thread.into_iter().collect(),
        },
        wanted: Wanted {
            diameter: mm(25, 0),
            tolerance: Tolerance::Class(ShaftClass::H6),
            length: mm(56, 0),
            shoulder_radius: mm(12, 1),
            end_chamfer: mm(1, 0),
            countersink: Some(mm(15, 0)),
            receiver_depth: Some(mm(58, 0)),
            least_grip: Some(mm(48, 0)),
        },
        shop: Shop {
            tool: ToolKind::CubicBoronNitride,
            cut_off_method: CutOffMethod::HandDisc,
            ..Shop::default()
        },
        ..Job::default()
    }
}

/// An inch-size saw arbor with a Brown & Sharpe taper No. 9 that becomes 3/4 in straight.
fn saw_arbor() -> Job {
    let taper =
        TaperSize::find(TaperSeries::BrownSharpe, "9").map(|taper| Section::StandardTaper {
            taper,
            past_gauge: inch(0, 1, 8),
            length: None,
        });
    let thread = ThreadSize::from_code("3/8-16 UNC").map(|thread| Bore::Tapped {
        thread,
        thread_depth: Entered::plain(1, 0, Unit::Inch),
        drill_depth: inch(1, 1, 4),
    });
    Job {
        title: "Saw arbor, taper no. 9 to 3/4 in".to_owned(),
        part: Part {
            material: WorkMaterial::AlloySteelTempered,
            head_diameter: inch(1, 3, 4),
            head_length: inch(1, 1, 2),
            runout: Entered::plain(1, 3, Unit::Inch),
            sections: taper.into_iter().collect(),
            bores: thread.into_iter().collect(),
        },
        wanted: Wanted {
            diameter: inch(0, 3, 4),
            tolerance: Tolerance::Limits {
                upper: Entered::plain(0, 0, Unit::Inch),
                lower: minus_half_thou(),
            },
            length: inch(2, 1, 2),
            shoulder_radius: inch(0, 1, 32),
            end_chamfer: inch(0, 1, 32),
            countersink: Some(inch(0, 5, 16)),
            receiver_depth: None,
            least_grip: Some(Entered::plain(2, 0, Unit::Inch)),
        },
        shop: Shop {
            tool: ToolKind::BrazedCarbide,
            cut_off_method: CutOffMethod::Saw,
            kerf: Some(inch(0, 1, 16)),
            facing_stock: inch(0, 1, 32),
            last_cut: Entered::plain(10, 3, Unit::Inch),
            polishing_stock: Entered::plain(1, 3, Unit::Inch),
            ..Shop::default()
        },
        ..Job::default()
    }
}

/// A lower deviation of half a thousandth of an inch.
fn minus_half_thou() -> Entered<Length> {
    Entered::negative(5, 4, Unit::Inch)
}

/// A stainless roller stub in two steps with a drilled end, turned down for a 17 mm bearing bore.
fn roller_stub() -> Job {
    Job {
        title: "Roller stub for a 17 mm bearing".to_owned(),
        part: Part {
            material: WorkMaterial::StainlessAustenitic,
            head_diameter: mm(38, 0),
            head_length: mm(25, 0),
            runout: mm(5, 2),
            sections: vec![
                Section::Cylinder {
                    diameter: mm(25, 0),
                    length: mm(22, 0),
                },
                Section::Cylinder {
                    diameter: mm(20, 0),
                    length: mm(30, 0),
                },
            ],
            bores: vec![Bore::Drilled {
                diameter: mm(8, 0),
                depth: mm(34, 0),
                bottom: BoreBottom::DrillPoint,
            }],
        },
        wanted: Wanted {
            diameter: mm(17, 0),
            tolerance: Tolerance::Class(ShaftClass::K6),
            length: mm(36, 0),
            shoulder_radius: mm(3, 1),
            end_chamfer: mm(5, 1),
            countersink: Some(mm(10, 0)),
            receiver_depth: None,
            least_grip: None,
        },
        shop: Shop {
            tool: ToolKind::HighSpeedSteel,
            cut_off_method: CutOffMethod::PartingTool,
            centre_order: CentreOrder::BeforeFacing,
            facing_stock: mm(5, 1),
            top_speed: Entered::plain(1400, 0, Unit::RevolutionPerMinute),
            ..Shop::default()
        },
        ..Job::default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Level, plan};

    #[test]
    fn every_example_can_be_planned_without_a_stop() {
        for job in demo_jobs() {
            let plan = plan(&job);
            let findings = &plan.findings;
            assert!(
                findings.iter().all(|finding| finding.level < Level::Stop),
                "{}: {findings:?}",
                job.title
            );
            assert!(plan.stock_off.is_some() && plan.centre.is_some() && plan.time.is_some());
            assert!(!job.part.sections.is_empty() && !job.part.bores.is_empty());
        }
    }
}

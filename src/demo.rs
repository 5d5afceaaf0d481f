//! Example jobs to look at and to start from. Invented for this program; no real part, shop or owner.

use crate::job::{
    Bore, BoreBottom, BoreEnd, CentreOrder, Cut, CutOffMethod, Datum, Duty, Feature, Flats, Gears,
    HeadPiece, Hole, Job, Machine, Part, Place, Receiver, Rigidity, Section, Shop, Tolerance,
    Turned, Wanted,
};
use crate::quantity::{Entered, Hardness, Length, Power, Unit};
use crate::tables::{
    CentreDrillSize, ColletSize, SeatLoad, ShaftClass, ShankSize, TaperSeries, TaperSize,
    ThreadSize, ToolKind, WorkMaterial,
};

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

fn hrc(points: u32) -> Entered<Hardness> {
    Entered::plain(points, 0, Unit::RockwellC)
}

fn cylinder(diameter: Entered<Length>, length: Entered<Length>) -> Section {
    Turned::Cylinder { diameter, length }.into()
}

fn placed(cut: Cut, from: Datum, start: Entered<Length>) -> Feature {
    Feature {
        cut,
        place: Some(Place { from, start }),
    }
}

fn from_head(hole: Hole) -> Bore {
    Bore {
        end: BoreEnd::HeadEnd,
        ..hole.into()
    }
}

/// A hardened milling arbor with a 32 mm shank and an M12 hole, for a 25 mm side-lock holder.
fn milling_arbor() -> Job {
    let thread = ThreadSize::from_code("M12").map(|thread| Hole::Tapped {
        thread,
        thread_depth: mm(30, 0),
        drill_depth: mm(38, 0),
    });
    let bolt_hole = Hole::Stepped {
        diameter: mm(13, 0),
        depth: mm(26, 0),
        step_diameter: mm(20, 0),
        step_depth: mm(13, 0),
        bottom: BoreBottom::DrillPoint,
    };
    let flat = Cut::Flat {
        over: mm(305, 1),
        flats: Flats::One,
        length: mm(16, 0),
    };
    Job {
        title: "Milling arbor, 32 mm to 25 mm".to_owned(),
        part: Part {
            material: WorkMaterial::HardenedSteel,
            head_diameter: mm(50, 0),
            head_length: mm(35, 0),
            head_beyond: vec![HeadPiece {
                diameter: mm(42, 0),
                length: mm(8, 0),
            }],
            runout: mm(2, 2),
            end_runout: Some(mm(3, 2)),
            surface_hardness: Some(hrc(58)),
            sections: vec![
                Turned::Relief {
                    diameter: mm(31, 0),
                    length: mm(3, 0),
                }
                .into(),
                cylinder(mm(32, 0), mm(27, 0)),
                Turned::Groove {
                    diameter: mm(30, 0),
                    length: mm(3, 0),
                }
                .into(),
                cylinder(mm(32, 0), mm(385, 1)),
            ],
            features: vec![placed(flat, Datum::Shoulder, mm(36, 0))],
            bores: thread
                .map(Bore::from)
                .into_iter()
                .chain([from_head(bolt_hole)])
                .collect(),
            ..Part::default()
        },
        wanted: Wanted {
            diameter: mm(25, 0),
            tolerance: Tolerance::Class(ShaftClass::H6),
            length: mm(56, 0),
            shoulder_radius: mm(12, 1),
            end_chamfer: mm(1, 0),
            countersink: Some(mm(15, 0)),
            roughness: None,
            receiver: ShankSize::from_code("flat-25")
                .map_or_else(Receiver::default, |shank| Receiver::SideLock { shank }),
            receiver_depth: Some(mm(58, 0)),
            least_grip: Some(mm(48, 0)),
            duty: Duty {
                torque: Some(Entered::plain(60, 0, Unit::NewtonMetre)),
                side_load: Some(Entered::plain(900, 0, Unit::Newton)),
                overhang: Some(mm(60, 0)),
                ..Duty::default()
            },
        },
        shop: Shop {
            tool: ToolKind::CubicBoronNitride,
            cut_off_method: CutOffMethod::HandDisc,
            machine: cabinet_lathe(),
            ..Shop::default()
        },
        ..Job::default()
    }
}

/// A lathe on its cabinet with nine spindle speeds and six feeds.
fn cabinet_lathe() -> Machine {
    let speeds = [60, 100, 160, 260, 420, 600, 850, 1200, 1800];
    let rpm = |speed| Entered::plain(speed, 0, Unit::RevolutionPerMinute);
    let feeds = [5, 8, 10, 14, 20, 28];
    let feed = |hundredths| Entered::plain(hundredths, 2, Unit::MillimetrePerRevolution);
    Machine {
        rigidity: Rigidity::Medium,
        speeds: Gears::Listed(speeds.map(rpm).to_vec()),
        feeds: Gears::Listed(feeds.map(feed).to_vec()),
        power: Some(Entered::plain(15, 1, Unit::Kilowatt)),
        graduation: Some(mm(2, 2)),
        ..Machine::default()
    }
}

/// An inch-size saw arbor with a Brown & Sharpe taper No. 9 and a tang that becomes 3/4 in straight, for a collet.
fn saw_arbor() -> Job {
    let taper = TaperSize::find(TaperSeries::BrownSharpe, "9").map(|taper| Turned::StandardTaper {
        taper,
        past_gauge: inch(0, 1, 8),
        length: None,
    });
    let thread = ThreadSize::from_code("3/8-16 UNC").map(|thread| Hole::Tapped {
        thread,
        thread_depth: Entered::plain(1, 0, Unit::Inch),
        drill_depth: inch(1, 1, 4),
    });
    let reamed = from_head(Hole::Reamed {
        diameter: inch(0, 1, 2),
        ream_depth: Entered::plain(1, 0, Unit::Inch),
        drill_depth: inch(1, 1, 8),
    });
    let coolant = Hole::Through {
        diameter: inch(0, 3, 16),
    };
    let tang = Cut::Tang {
        thickness: inch(0, 7, 16),
        length: inch(0, 11, 16),
        slot_width: Some(inch(0, 1, 8)),
        slot_depth: Some(inch(0, 1, 4)),
    };
    let drift = Cut::CrossHole {
        diameter: inch(0, 1, 4),
    };
    let key = Cut::WoodruffKeyway {
        width: inch(0, 3, 16),
        depth: inch(0, 5, 32),
        disc: inch(0, 3, 4),
    };
    Job {
        title: "Saw arbor, taper no. 9 to 3/4 in".to_owned(),
        part: Part {
            material: WorkMaterial::AlloySteelTempered,
            head_diameter: inch(1, 3, 4),
            head_length: inch(1, 1, 2),
            runout: Entered::plain(1, 3, Unit::Inch),
            sections: taper.map(Section::from).into_iter().collect(),
            features: vec![
                Feature {
                    cut: tang,
                    place: None,
                },
                placed(drift, Datum::FreeEnd, inch(1, 1, 4)),
                placed(key, Datum::FreeEnd, inch(1, 5, 16)),
            ],
            bores: thread
                .map(Bore::from)
                .into_iter()
                .chain([reamed, coolant.into()])
                .collect(),
            ..Part::default()
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
            roughness: None,
            receiver: ColletSize::from_code("collet-32")
                .map_or_else(Receiver::default, |collet| Receiver::Collet { collet }),
            duty: Duty {
                power: Some(inch_power()),
                speed: Some(Entered::plain(600, 0, Unit::RevolutionPerMinute)),
                ..Duty::default()
            },
            ..Wanted::default()
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

/// One and a half horsepower.
fn inch_power() -> Entered<Power> {
    Entered::plain(15, 1, Unit::Horsepower)
}

/// A stainless roller stub in steps and tapers with a thread at its drilled end, turned down for a 17 mm bearing bore.
fn roller_stub() -> Job {
    let thread = ThreadSize::from_code("M20x1.5").map(|thread| Turned::Thread {
        thread,
        length: mm(10, 0),
    });
    let centre = CentreDrillSize::from_code("A5")
        .map(|centre_drill| Bore::from(Hole::CentreHole { centre_drill }));
    let drilled = Hole::Drilled {
        diameter: mm(8, 0),
        depth: mm(34, 0),
        bottom: BoreBottom::DrillPoint,
    };
    let keyway = Cut::Keyway {
        width: mm(6, 0),
        depth: mm(35, 1),
        length: mm(8, 0),
    };
    let sections = [
        cylinder(mm(25, 0), mm(12, 0)),
        Turned::Taper {
            shoulder_diameter: mm(25, 0),
            end_diameter: mm(24, 0),
            length: mm(4, 0),
            diameter_error: None,
            length_error: None,
        }
        .into(),
        Turned::RatioTaper {
            shoulder_diameter: mm(24, 0),
            ratio: Entered::plain(5, 0, Unit::ToOne),
            length: mm(10, 0),
        }
        .into(),
        Turned::AngleTaper {
            shoulder_diameter: mm(22, 0),
            angle: Entered::plain(30, 0, Unit::Degree),
            length: mm(3, 0),
        }
        .into(),
        cylinder(mm(20, 0), mm(13, 0)),
    ];
    Job {
        title: "Roller stub for a 17 mm bearing".to_owned(),
        part: Part {
            material: WorkMaterial::StainlessAustenitic,
            head_diameter: mm(38, 0),
            head_length: mm(25, 0),
            runout: mm(5, 2),
            sections: sections
                .into_iter()
                .chain(thread.map(Section::from))
                .collect(),
            features: vec![placed(keyway, Datum::FreeEnd, mm(1, 0))],
            bores: [Bore::from(drilled)].into_iter().chain(centre).collect(),
            ..Part::default()
        },
        wanted: Wanted {
            diameter: mm(17, 0),
            tolerance: Tolerance::Class(ShaftClass::J5),
            length: mm(36, 0),
            shoulder_radius: mm(3, 1),
            end_chamfer: mm(5, 1),
            countersink: Some(mm(10, 0)),
            roughness: None,
            receiver: Receiver::Bearing {
                load: SeatLoad::RotatingNormal,
                ring_chamfer: mm(3, 1),
            },
            ..Wanted::default()
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
    use crate::job::{CutKind, HoleKind, TurnedKind};
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

    /// Whoever looks at the examples sees everything that a part can have.
    #[test]
    fn every_kind_stands_in_an_example() {
        let jobs = demo_jobs();
        let parts = || jobs.iter().map(|job| &job.part);
        for kind in TurnedKind::ALL {
            let mut sections = parts().flat_map(|part| &part.sections);
            assert!(
                sections.any(|section| section.turned.kind() == *kind),
                "{kind:?}"
            );
        }
        for kind in CutKind::ALL {
            let mut features = parts().flat_map(|part| &part.features);
            assert!(
                features.any(|feature| feature.cut.kind() == *kind),
                "{kind:?}"
            );
        }
        for kind in HoleKind::ALL {
            let mut bores = parts().flat_map(|part| &part.bores);
            assert!(bores.any(|bore| bore.hole.kind() == *kind), "{kind:?}");
        }
    }
}

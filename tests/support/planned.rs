//! Jobs of a workshop's sizes, most of which can be planned to the end, with every length a whole number of
//! thousandths of an inch, so that the same job can be typed in inches and in millimetres.
#![allow(dead_code, reason = "each test uses a part of it")]

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
use skimwright::job::{
    Bore, BoreBottom, CentreOrder, CutOffMethod, Hole, Job, Part, Section, Shop, Tolerance, Turned,
    Wanted,
};
use skimwright::quantity::{Entered, Entry, Length, Number, Term, Unit};
use skimwright::tables::{ThreadSize, ToolKind, WorkMaterial};

/// A job in thousandths of an inch. Nothing is left to a default that has a size of its own.
#[derive(Clone, Debug)]
pub(crate) struct Planned {
    material: WorkMaterial,
    tool: ToolKind,
    head: (i64, i64),
    runout: i64,
    /// Diameters at both ends, and the length.
    sections: Vec<(i64, i64, i64)>,
    /// Diameter, depth and bottom.
    bores: Vec<(i64, i64, BoreBottom)>,
    /// A thread, its depth, and how much deeper its hole is.
    thread: Option<(ThreadSize, i64, i64)>,
    wanted: (i64, i64),
    deviations: (i64, i64),
    edges: (i64, i64),
    countersink: Option<i64>,
    kerf: i64,
    facing: i64,
    order: CentreOrder,
    /// Roughing infeed, last cut, polishing stock, approach.
    cuts: (i64, i64, i64, i64),
}

type Ends = (i64, i64, i64);

fn section() -> impl Strategy<Value = Ends> {
    let diameter = 400_i64..2000;
    prop_oneof![
        (diameter.clone(), 100_i64..3000)
            .prop_map(|(diameter, length)| (diameter, diameter, length)),
        (diameter, -150_i64..150, 200_i64..3000)
            .prop_map(|(diameter, grows, length)| { (diameter, diameter + grows, length) }),
    ]
}

/// Any planned job.
pub(crate) fn planned() -> impl Strategy<Value = Planned> {
    let threads: Vec<ThreadSize> = ThreadSize::all().collect();
    let bottoms = select(BoreBottom::ALL.to_vec());
    let shape = (
        vec(section(), 1..5),
        vec((40_i64..700, 50_i64..6000, bottoms), 0..3),
        option::of((select(threads), 100_i64..2000, 0_i64..400)),
        (300_i64..2500, 0_i64..2000),
        prop_oneof![Just(0_i64), 0_i64..40],
    );
    let wanted = (
        (40_i64..105, 5_i64..110),
        (-5_i64..5, 0_i64..10),
        (0_i64..80, 0_i64..60),
        option::of(30_i64..800),
    );
    let shop = (
        select(WorkMaterial::ALL.to_vec()),
        select(ToolKind::ALL.to_vec()),
        (0_i64..150, 0_i64..150),
        select(CentreOrder::ALL.to_vec()),
        (8_i64..60, 1_i64..30, 0_i64..4, 0_i64..200),
    );
    (shape, wanted, shop).prop_map(|(shape, wanted, shop)| {
        let (sections, bores, thread, head, runout) = shape;
        let ((of_stock, of_length), (upper, width), edges, countersink) = wanted;
        let (material, tool, (kerf, facing), order, cuts) = shop;
        let thin = sections
            .iter()
            .map(|(a, b, _)| *a.min(b))
            .min()
            .unwrap_or(400);
        let long: i64 = sections.iter().map(|(.., length)| length).sum();
        Planned {
            material,
            tool,
            head,
            runout,
            sections,
            bores,
            thread,
            // Most are smaller and shorter than the stock, some a little larger and longer.
            wanted: (
                (thin * of_stock / 100).max(60),
                (long * of_length / 100).max(40),
            ),
            deviations: (upper, upper - width),
            edges,
            countersink,
            kerf,
            facing,
            order,
            cuts,
        }
    })
}

impl Planned {
    /// Without its thread, whose size is the standard's.
    pub(crate) fn without_thread(self) -> Self {
        Self {
            thread: None,
            ..self
        }
    }

    /// The job, typed in inches or millimetres, every length `scale` times as large.
    pub(crate) fn job(&self, unit: Unit, scale: i64) -> Job {
        let length = |thousandths: i64| typed(thousandths * scale, unit);
        let some = |thousandths: i64| Some(length(thousandths));
        let sections = self.sections.iter().map(|&(from, to, long)| {
            if from == to {
                return Turned::Cylinder {
                    diameter: length(from),
                    length: length(long),
                };
            }
            Turned::Taper {
                shoulder_diameter: length(from),
                end_diameter: length(to),
                length: length(long),
                diameter_error: None,
                length_error: None,
            }
        });
        let drilled = self
            .bores
            .iter()
            .map(|&(diameter, depth, bottom)| Hole::Drilled {
                diameter: length(diameter),
                depth: length(depth),
                bottom,
            });
        let tapped = self.thread.map(|(thread, depth, deeper)| Hole::Tapped {
            thread,
            thread_depth: length(depth),
            drill_depth: length(depth + deeper),
        });
        Job {
            part: Part {
                material: self.material,
                head_diameter: length(self.head.0),
                head_length: length(self.head.1),
                runout: length(self.runout),
                sections: sections.map(Section::from).collect(),
                bores: drilled.chain(tapped).map(Bore::from).collect(),
                ..Part::default()
            },
            wanted: Wanted {
                diameter: length(self.wanted.0),
                tolerance: Tolerance::Limits {
                    upper: length(self.deviations.0),
                    lower: length(self.deviations.1),
                },
                length: length(self.wanted.1),
                shoulder_radius: length(self.edges.0),
                end_chamfer: length(self.edges.1),
                countersink: self.countersink.map(length),
                ..Wanted::default()
            },
            shop: Shop {
                tool: self.tool,
                cut_off_method: CutOffMethod::Saw,
                kerf: some(self.kerf),
                facing_stock: length(self.facing),
                centre_order: self.order,
                rough_infeed: some(self.cuts.0),
                last_cut: length(self.cuts.1),
                polishing_stock: length(self.cuts.2),
                approach: length(self.cuts.3),
                ..Shop::default()
            },
            ..Job::default()
        }
    }
}

/// Thousandths of an inch as typed in a unit; both are exact.
fn typed(thousandths: i64, unit: Unit) -> Entered<Length> {
    let (digits, decimals) = match unit {
        Unit::Inch => (thousandths.unsigned_abs(), 3),
        _ => (thousandths.unsigned_abs() * 254, 4),
    };
    let term = Term {
        negative: thousandths < 0,
        number: Number::Decimal { digits, decimals },
        unit,
    };
    let entry = Entry::from_terms(vec![term]).expect("one sound number");
    Entered::new(entry).expect("a length")
}

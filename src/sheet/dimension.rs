//! Which dimensions a stage shows, still in the part's own lengths: what, from where to where, with which text.
//!
//! Inner features belong to the section's side, outer ones to the view's, as ISO 129-1 asks of a half-section.
//! A figure in brackets follows from others: nobody typed it.

use super::drawing::Stage;
use super::geometry::{Area, Point};
use super::scale::Side;
use crate::job::{Bore, BoreField, CentreOrder, Field, Job, Section, SectionField};
use crate::part::{BoreShape, Received, SAME, SectionShape};
use crate::plan::Plan;
use crate::quantity::{Entry, Grade, Length, Units};
use crate::rework::CutOff;

/// How a dimension is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Along the axis: a line with two arrow heads.
    Along,
    /// A diameter or a thread: a line square to the axis, its arrow head on the outline.
    Diameter,
    /// A radius or a chamfer: a slanting leader.
    Leader,
}

/// What a dimension measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measure {
    /// The number of its field.
    Entered,
    /// Head and shank as received, over all.
    TotalLength,
    /// The large end of a standard taper.
    TaperStart,
    /// The small end of a standard taper.
    TaperEnd,
    /// From the free end to the mark of the cut.
    CutFromFreeEnd,
    /// From the shoulder to the mark of the cut.
    CutFromShoulder,
    /// What the cut turns into dust.
    Kerf,
    /// What is faced off.
    FacingTaken,
    /// The shank after facing.
    ShankFinished,
    /// The piece that falls off.
    OffcutLength,
    /// How deep the centre is fed.
    CentreDepth,
}

/// A dimension as it is drawn, which is also a button: it opens its field.
#[derive(Clone, Debug, PartialEq)]
pub struct DimensionMark {
    /// The field that it opens.
    pub field: Field,
    /// What it measures.
    pub measure: Measure,
    /// How it is drawn.
    pub kind: Kind,
    /// Its text.
    pub text: String,
    /// The middle of the text's foot.
    pub text_at: Point,
    /// Its thin lines: extension lines, dimension line or leader.
    pub lines: Vec<(Point, Point)>,
    /// Its arrow heads, closed and filled.
    pub arrows: Vec<Vec<Point>>,
    /// Where a finger meets it.
    pub hit: Area,
}

/// A dimension before it has its place on the canvas.
#[derive(Clone, Debug)]
pub(crate) struct Wish {
    pub(crate) field: Field,
    pub(crate) measure: Measure,
    pub(crate) text: String,
    pub(crate) side: Side,
    pub(crate) target: Target,
}

/// What a dimension points at.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Target {
    /// Between two places, each at a distance from the axis where the extension line begins.
    Along {
        from: (Length, Length),
        to: (Length, Length),
    },
    /// A place of the outline, met square to the axis.
    Diameter { z: Length, radius: Length },
    /// A place of the outline, met by a slanting leader.
    Leader { z: Length, radius: Length },
}

/// Makes the wishes of one drawing.
struct Wishes<'a> {
    job: &'a Job,
    units: Units,
    /// The widest text that has room, in characters.
    most_characters: usize,
    list: Vec<Wish>,
}

/// The dimensions of a stage.
pub(crate) fn wishes(
    job: &Job,
    plan: &Plan,
    received: &Received,
    stage: Stage,
    units: Units,
    most_characters: usize,
) -> Vec<Wish> {
    let mut wishes = Wishes {
        job,
        units,
        most_characters,
        list: Vec::new(),
    };
    match stage {
        Stage::Received => wishes.received(received),
        Stage::Wanted => wishes.wanted(plan, received),
        Stage::Plan => {
            if let Some(cut) = &plan.cut_off {
                wishes.plan(plan, cut, received);
            }
        }
    }
    wishes.list
}

/// Where the arrow head of a hole's size stands: clear of its mouth, and where no wider hole swallows it.
fn met_at(shape: &BoreShape, received: &Received) -> Length {
    let (end, holes) = (received.shank_length, &received.inner);
    let deep = end - shape.profile.start();
    let places = [0.25, 0.4, 0.55, 0.7, 0.85, 0.95].map(|share| end - deep * share);
    let is_surface = |z: &Length| {
        let here = holes.radius_at(*z);
        here.to_mm() <= shape.widest.radius_at(*z).to_mm() + SAME
    };
    let mut places = places.into_iter();
    places.find(is_surface).unwrap_or(end - deep * 0.25)
}

impl Wishes<'_> {
    fn received(&mut self, received: &Received) {
        let whole = received.whole_outer();
        let head_radius = received.head.radius_at(received.head.end());
        let head_start = received.head.start();
        let head_place = if received.head.is_empty() {
            Length::ZERO
        } else {
            head_radius
        };
        self.diameter(
            Field::HeadDiameter,
            Side::View,
            head_start / 2.0,
            head_place,
        );
        self.along(
            Field::HeadLength,
            Side::View,
            (head_start, head_radius),
            (Length::ZERO, head_radius),
        );
        for section in &received.sections {
            self.section(section);
        }
        for bore in &received.bores {
            self.bore(bore, received);
        }
        let end_radius = received.outer.radius_at(received.shank_length);
        let total = whole.end() - whole.start();
        self.derived(
            (Field::Sections, Measure::TotalLength),
            total,
            Side::Section,
            (whole.start(), whole.radius_at(whole.start())),
            (whole.end(), end_radius),
        );
    }

    fn section(&mut self, shape: &SectionShape) {
        let field = |name| Field::Section(shape.index, name);
        let Some(section) = self.job.part.sections.get(usize::from(shape.index)) else {
            return;
        };
        let long = shape.to - shape.from;
        let at = |share: f64| {
            let diameter = shape.from_diameter + (shape.to_diameter - shape.from_diameter) * share;
            (shape.from + long * share, diameter / 2.0)
        };
        // The arrow heads stand a little inside the ends, so that none seems to belong to a neighbour.
        let (near, far) = (at(0.06), at(0.94));
        match section {
            Section::Cylinder { .. } => {
                let (z, radius) = at(0.5);
                self.diameter(field(SectionField::Diameter), Side::View, z, radius);
            }
            Section::Taper { .. } => {
                let start = field(SectionField::ShoulderDiameter);
                self.diameter(start, Side::View, near.0, near.1);
                self.diameter(field(SectionField::EndDiameter), Side::View, far.0, far.1);
            }
            Section::StandardTaper { .. } => {
                let ends = [
                    (Measure::TaperStart, near, shape.from_diameter),
                    (Measure::TaperEnd, far, shape.to_diameter),
                ];
                for (measure, (z, radius), diameter) in ends {
                    let size = self.units.length(diameter, Grade::Size);
                    self.list.push(Wish {
                        field: field(SectionField::Taper),
                        measure,
                        text: format!("(⌀{size})"),
                        side: Side::View,
                        target: Target::Diameter { z, radius },
                    });
                }
            }
        }
        let (from, to) = (at(0.0), at(1.0));
        let length = field(SectionField::Length);
        if self.job.entry(length).is_some() {
            self.along(length, Side::View, from, to);
        } else {
            self.derived((length, Measure::Entered), long, Side::View, from, to);
        }
    }

    /// A hole: its diameter or thread, and its depths from the free end.
    fn bore(&mut self, shape: &BoreShape, received: &Received) {
        let field = |name| Field::Bore(shape.index, name);
        let Some(bore) = self.job.part.bores.get(usize::from(shape.index)) else {
            return;
        };
        let end = received.shank_length;
        let inside = met_at(shape, received);
        let radius = shape.widest.radius_at(inside);
        let met = Target::Diameter { z: inside, radius };
        let edge = (end, received.outer.radius_at(end));
        let depths: &[BoreField] = match bore {
            Bore::Drilled { .. } => &[BoreField::Depth],
            Bore::Tapped { .. } => &[BoreField::ThreadDepth, BoreField::DrillDepth],
            Bore::CentreHole { .. } => &[],
        };
        for name in depths {
            let typed = match (bore, name) {
                (Bore::Drilled { depth, .. }, _) => depth.value(),
                (Bore::Tapped { thread_depth, .. }, BoreField::ThreadDepth) => thread_depth.value(),
                (Bore::Tapped { drill_depth, .. }, _) => drill_depth.value(),
                (Bore::CentreHole { .. }, _) => continue,
            };
            // A hole deeper than the part ends where the part does.
            let bottom = (end - typed).max(received.whole_outer().start());
            self.along(field(*name), Side::Section, (bottom, radius), edge);
        }
        let (name, text, target) = match bore {
            Bore::Drilled { diameter, .. } => {
                let text = self.text("⌀", diameter.entry(), "");
                (BoreField::Diameter, text, met)
            }
            Bore::Tapped { thread, .. } => (BoreField::Thread, thread.code().to_owned(), met),
            Bore::CentreHole { centre_drill } => {
                let drill = centre_drill.get().map_or("", |drill| drill.designation);
                let radius = shape.profile.radius_at(end);
                let mouth = Target::Leader { z: end, radius };
                (BoreField::CentreDrill, drill.to_owned(), mouth)
            }
        };
        self.list.push(Wish {
            field: field(name),
            measure: Measure::Entered,
            text,
            side: Side::Section,
            target,
        });
    }

    fn wanted(&mut self, plan: &Plan, received: &Received) {
        let (Some(shank), Some(cut)) = (&plan.shape.shank, &plan.cut_off) else {
            return;
        };
        let face = cut.shank_finished.value;
        let radius = shank.diameter / 2.0;
        let head_radius = received.head.radius_at(Length::ZERO);
        let straight = face - shank.fillet - shank.chamfer;
        // Nearer to the shoulder, so that the leader of the chamfer has room.
        let inside = shank.fillet + straight * 0.35;
        self.diameter(Field::WantedDiameter, Side::View, inside, radius);
        self.along(
            Field::WantedLength,
            Side::View,
            (Length::ZERO, head_radius),
            (face, radius - shank.chamfer),
        );
        // The middle of the arc stands 1 − cos 45° of the radius off both its tangents.
        let arc = shank.fillet * (1.0 - core::f64::consts::FRAC_1_SQRT_2);
        self.leader(
            Field::ShoulderRadius,
            ("R", ""),
            Side::View,
            (arc, radius + arc),
        );
        let half = shank.chamfer / 2.0;
        let chamfer = (face - half, radius - half);
        self.leader(Field::EndChamfer, ("", " × 45°"), Side::View, chamfer);
        if let Some(mouth) = self.job.wanted.countersink.as_ref() {
            let shown = (mouth.value() / 2.0).min(radius).max(Length::ZERO);
            self.leader(Field::Countersink, ("⌀", ""), Side::Section, (face, shown));
        }
    }

    fn plan(&mut self, plan: &Plan, cut: &CutOff, received: &Received) {
        let end = received.shank_length;
        let (face, mark) = (cut.shank_finished.value, cut.from_shoulder.value);
        let offcut = mark + cut.kerf;
        let stock = |z| received.outer.radius_at(z);
        let at = |z| (z, stock(z));
        let shoulder = (Length::ZERO, received.head.radius_at(Length::ZERO));
        let finished = plan.shape.finished.as_ref();
        let end_face = (face, finished.map_or(stock(face), |it| it.radius_at(face)));
        let has_offcut = Length::ZERO < cut.offcut_length.value;
        let has_facing = Length::ZERO < cut.facing;
        let below = Side::Section;
        self.derived(
            (Field::WantedLength, Measure::ShankFinished),
            face,
            below,
            shoulder,
            end_face,
        );
        if has_facing {
            let what = (Field::FacingStock, Measure::FacingTaken);
            self.derived(what, cut.facing, below, end_face, at(mark));
        }
        if has_offcut {
            self.derived(
                (Field::WantedLength, Measure::CutFromFreeEnd),
                cut.from_free_end.value,
                Side::View,
                at(mark),
                at(end),
            );
            let what = (Field::FacingStock, Measure::CutFromShoulder);
            self.derived(what, mark, Side::View, shoulder, at(mark));
            let what = (Field::Kerf, Measure::Kerf);
            self.derived(what, cut.kerf, below, at(mark), at(offcut));
            let what = (Field::Kerf, Measure::OffcutLength);
            self.derived(what, cut.offcut_length.value, below, at(offcut), at(end));
        }
        if let Some(centre) = &plan.centre {
            let from = match self.job.shop.centre_order {
                CentreOrder::AfterFacing => end_face,
                CentreOrder::BeforeFacing => at(mark),
            };
            let depth = centre.feed_depth.value;
            let bottom = (from.0 - depth, Length::ZERO);
            let what = (Field::Countersink, Measure::CentreDepth);
            self.derived(what, depth, below, bottom, from);
        }
    }

    /// The entry as it was typed, or what it comes to where that is too long to stand on a drawing.
    fn text(&self, before: &str, entry: &Entry, after: &str) -> String {
        let typed = self.units.entry(entry);
        let around = before.chars().count() + after.chars().count();
        let text = if typed.chars().count() + around <= self.most_characters {
            typed
        } else {
            self.units.entry_value(entry)
        };
        format!("{before}{text}{after}")
    }

    fn along(&mut self, field: Field, side: Side, from: (Length, Length), to: (Length, Length)) {
        let Some(entry) = self.job.entry(field) else {
            return;
        };
        self.list.push(Wish {
            field,
            measure: Measure::Entered,
            text: self.text("", entry, ""),
            side,
            target: Target::Along { from, to },
        });
    }

    fn derived(
        &mut self,
        (field, measure): (Field, Measure),
        value: Length,
        side: Side,
        from: (Length, Length),
        to: (Length, Length),
    ) {
        let text = self.units.length(value, Grade::Length);
        let aside = matches!(measure, Measure::TotalLength | Measure::Entered);
        self.list.push(Wish {
            field,
            measure,
            text: if aside { format!("({text})") } else { text },
            side,
            target: Target::Along { from, to },
        });
    }

    fn diameter(&mut self, field: Field, side: Side, z: Length, radius: Length) {
        let Some(entry) = self.job.entry(field) else {
            return;
        };
        self.list.push(Wish {
            field,
            measure: Measure::Entered,
            text: self.text("⌀", entry, ""),
            side,
            target: Target::Diameter { z, radius },
        });
    }

    fn leader(
        &mut self,
        field: Field,
        (before, after): (&str, &str),
        side: Side,
        (z, radius): (Length, Length),
    ) {
        let Some(entry) = self.job.entry(field) else {
            return;
        };
        self.list.push(Wish {
            field,
            measure: Measure::Entered,
            text: self.text(before, entry, after),
            side,
            target: Target::Leader { z, radius },
        });
    }
}

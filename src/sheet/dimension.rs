//! Which dimensions a stage shows, still in the part's own lengths: what, from where to where, with which text.
//!
//! Inner features belong to the section's side, outer ones to the view's, as ISO 129-1 asks of a half-section.
//! A figure in brackets follows from others: nobody typed it.

use super::drawing::Stage;
use super::geometry::{Area, Point};
use super::scale::{Scale, Side};
use crate::job::{CentreOrder, Field, Job};
use crate::part::Received;
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
    pub(crate) rank: Rank,
}

/// How much a dimension is missed when there is no room for it, the most first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Rank {
    /// What is looked at now.
    Picked,
    /// What the shank is: sizes and lengths of its sections, all that is wanted, the cut.
    Shank,
    /// The head at the shoulder, the length over all, the sizes of holes.
    Body,
    /// Depths of holes, the sizes of what is cut in.
    Detail,
    /// Where it is and how long.
    Place,
    /// The rest of the head, slots, steps, what is beside the axis.
    Rest,
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
pub(crate) struct Wishes<'a> {
    pub(super) job: &'a Job,
    pub(super) units: Units,
    /// Where the part stands, for what must not point into a gap.
    pub(super) scale: &'a Scale,
    /// The widest text that has room, in characters.
    pub(super) most_characters: usize,
    pub(super) list: Vec<Wish>,
}

impl Wishes<'_> {
    /// The dimensions of a stage.
    pub(crate) fn of_stage(mut self, plan: &Plan, received: &Received, stage: Stage) -> Vec<Wish> {
        match stage {
            Stage::Received => self.received(received),
            Stage::Wanted => self.wanted(plan, received),
            Stage::Plan => {
                if let Some(cut) = &plan.cut_off {
                    self.plan(plan, cut, received);
                }
            }
        }
        self.list
    }

    fn wanted(&mut self, plan: &Plan, received: &Received) {
        let (Some(shank), Some(cut)) = (&plan.shape.shank, &plan.cut_off) else {
            return;
        };
        let face = cut.shank_finished.value;
        // A shank wanted thicker than the part is pointed at where the part ends.
        let whole = received.whole_outer();
        let most = whole.largest(whole.start(), whole.end());
        let most = most.map_or(Length::ZERO, |point| point.radius);
        let radius = (shank.diameter / 2.0).min(most);
        let head_radius = received.head.radius_at(Length::ZERO);
        let straight = face - shank.fillet - shank.chamfer;
        // Nearer to the shoulder, so that the leader of the chamfer has room.
        let inside = (shank.fillet + straight * 0.35).min(face);
        let wanted = |field| (Rank::Shank, field);
        self.entered(
            wanted(Field::WantedDiameter),
            ("⌀", ""),
            Side::View,
            Target::Diameter {
                z: self.scale.seen(inside),
                radius,
            },
        );
        self.entered(
            wanted(Field::WantedLength),
            ("", ""),
            Side::View,
            Target::Along {
                from: (Length::ZERO, head_radius),
                to: (face, (radius - shank.chamfer).max(Length::ZERO)),
            },
        );
        // The middle of the arc stands 1 − cos 45° of the radius off both its tangents.
        let arc = shank.fillet * (1.0 - core::f64::consts::FRAC_1_SQRT_2);
        let leader = |z, radius| Target::Leader { z, radius };
        self.entered(
            wanted(Field::ShoulderRadius),
            ("R", ""),
            Side::View,
            leader(arc.min(face), (radius + arc).min(most)),
        );
        let half = shank.chamfer / 2.0;
        let chamfer = leader(
            (face - half).max(Length::ZERO),
            (radius - half).max(Length::ZERO),
        );
        self.entered(
            wanted(Field::EndChamfer),
            ("", " × 45°"),
            Side::View,
            chamfer,
        );
        if let Some(mouth) = self.job.wanted.countersink.as_ref() {
            let shown = (mouth.value() / 2.0).min(radius).max(Length::ZERO);
            let mouth = leader(face, shown);
            self.entered(wanted(Field::Countersink), ("⌀", ""), Side::Section, mouth);
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
            // A finding speaks of a countersink that is deeper than the part; there is nothing to point at.
            if received.head.start() <= bottom.0 {
                self.derived(what, depth, below, bottom, from);
            }
        }
    }

    /// The entry as it was typed, or what it comes to where that is too long to stand on a drawing.
    pub(super) fn text(&self, before: &str, entry: &Entry, after: &str) -> String {
        let typed = self.units.entry(entry);
        let around = before.chars().count() + after.chars().count();
        let text = if typed.chars().count() + around <= self.most_characters {
            typed
        } else {
            self.units.entry_value(entry)
        };
        format!("{before}{text}{after}")
    }

    /// Adds a dimension of what was entered; none where the field is empty.
    pub(super) fn entered(
        &mut self,
        (rank, field): (Rank, Field),
        (before, after): (&str, &str),
        side: Side,
        target: Target,
    ) {
        if let Some(entry) = self.job.entry(field) {
            let text = self.text(before, entry, after);
            self.say((rank, field), Measure::Entered, text, side, target);
        }
    }

    pub(super) fn say(
        &mut self,
        (rank, field): (Rank, Field),
        measure: Measure,
        text: String,
        side: Side,
        target: Target,
    ) {
        self.list.push(Wish {
            field,
            measure,
            text,
            side,
            target,
            rank,
        });
    }

    pub(super) fn derived(
        &mut self,
        (field, measure): (Field, Measure),
        value: Length,
        side: Side,
        from: (Length, Length),
        to: (Length, Length),
    ) {
        let text = self.units.length(value, Grade::Length);
        let (rank, text) = match measure {
            Measure::TotalLength => (Rank::Body, format!("({text})")),
            Measure::Entered => (Rank::Shank, format!("({text})")),
            _ => (Rank::Shank, text),
        };
        self.say(
            (rank, field),
            measure,
            text,
            side,
            Target::Along { from, to },
        );
    }
}

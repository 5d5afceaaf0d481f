//! The dimensions of the part as received: head, sections, what is cut in, holes.

use super::dimension::{Measure, Rank, Target, Wishes};
use super::scale::Side;
use crate::job::{
    Bore, BoreEnd, BoreField, Cut, Datum, Feature, FeatureField, Field, HeadField, Hole,
    SectionField, Turned,
};
use crate::part::{BoreShape, CutShape, FeatureShape, Received, SAME, SectionShape};
use crate::quantity::{Grade, Length};

/// A size across the axis; a figure along it.
const DIAMETER: (&str, &str) = ("⌀", "");
const PLAIN: (&str, &str) = ("", "");

impl Wishes<'_> {
    pub(super) fn received(&mut self, received: &Received) {
        self.head(received);
        for shape in &received.sections {
            self.section(shape, received);
        }
        let end = received.shank_length;
        let shoulder = received.outer.radius_at(Length::ZERO);
        let end_radius = received.outer.radius_at(end);
        self.entered(
            (Rank::Shank, Field::ShankLength),
            PLAIN,
            Side::View,
            Target::Along {
                from: (Length::ZERO, shoulder),
                to: (end, end_radius),
            },
        );
        for shape in &received.features {
            if let Some(feature) = self.job.part.features.get(usize::from(shape.index)) {
                self.feature(shape, feature, received);
            }
        }
        for shape in &received.bores {
            if let Some(bore) = self.job.part.bores.get(usize::from(shape.index)) {
                self.bore(shape, bore, received);
            }
        }
        let whole = received.whole_outer();
        let (from, to) = (whole.start(), whole.end());
        self.derived(
            (Field::Sections, Measure::TotalLength),
            to - from,
            Side::Section,
            (from, whole.radius_at(from)),
            (to, end_radius),
        );
    }

    /// Every piece of the head, from the shoulder outward.
    fn head(&mut self, received: &Received) {
        let first = (Rank::Body, Field::HeadDiameter, Field::HeadLength);
        let beyond = (0..=u8::MAX)
            .zip(&self.job.part.head_beyond)
            .map(|(index, _)| {
                let field = |name| Field::Head(index, name);
                (
                    Rank::Rest,
                    field(HeadField::Diameter),
                    field(HeadField::Length),
                )
            });
        let fields: Vec<(Rank, Field, Field)> = core::iter::once(first).chain(beyond).collect();
        let length = |field| self.length(field);
        let mut to = Length::ZERO;
        let mut pieces = Vec::with_capacity(fields.len());
        for (rank, diameter, long) in fields {
            let from = (to - length(long)).max(received.head.start());
            pieces.push((rank, diameter, long, from, to));
            to = from;
        }
        for (rank, diameter, long, from, to) in pieces {
            let middle = self.scale.seen((from + to) / 2.0);
            // A head without length has no outline to point at.
            let radius = received.head.radius_at(middle);
            self.entered(
                (rank, diameter),
                DIAMETER,
                Side::View,
                Target::Diameter { z: middle, radius },
            );
            let ends = Target::Along {
                from: (from, radius),
                to: (to, radius),
            };
            self.entered((rank, long), PLAIN, Side::View, ends);
        }
    }

    fn section(&mut self, shape: &SectionShape, received: &Received) {
        let field = |name| Field::Section(shape.index, name);
        let sized = |name| (Rank::Shank, field(name));
        let Some(section) = self.job.part.sections.get(usize::from(shape.index)) else {
            return;
        };
        let long = shape.to - shape.from;
        // A section that is told to begin before the shoulder or to end beyond the shank is pointed at where the
        // shank is.
        let inside = |share: f64| {
            let z = shape.from + long * share;
            z.max(Length::ZERO).min(received.shank_length)
        };
        let surface = |z: Length| (shape.diameter_at(z) / 2.0).min(received.outer.radius_at(z));
        let at = |share: f64| (inside(share), surface(inside(share)));
        let met = |share: f64| {
            let z = self.scale.seen(inside(share));
            let radius = surface(z);
            Target::Diameter { z, radius }
        };
        // The arrow heads stand a little inside the ends, so that none seems to belong to a neighbour.
        let (near, middle, far) = (met(0.06), met(0.5), met(0.94));
        let view = Side::View;
        match &section.turned {
            Turned::Cylinder { .. } | Turned::Groove { .. } | Turned::Relief { .. } => {
                self.entered(sized(SectionField::Diameter), DIAMETER, view, middle);
            }
            Turned::Taper { .. } => {
                self.entered(sized(SectionField::ShoulderDiameter), DIAMETER, view, near);
                self.entered(sized(SectionField::EndDiameter), DIAMETER, view, far);
            }
            Turned::RatioTaper { .. } => {
                self.entered(sized(SectionField::ShoulderDiameter), DIAMETER, view, near);
                self.entered(sized(SectionField::Ratio), PLAIN, view, far);
            }
            Turned::AngleTaper { .. } => {
                self.entered(sized(SectionField::ShoulderDiameter), DIAMETER, view, near);
                self.entered(sized(SectionField::Angle), PLAIN, view, far);
            }
            Turned::Thread { thread, .. } => {
                let text = thread.code().to_owned();
                self.say(
                    sized(SectionField::Thread),
                    Measure::Entered,
                    text,
                    view,
                    middle,
                );
            }
            Turned::StandardTaper { .. } => {
                let ends = [
                    (Measure::TaperStart, near, shape.from_diameter),
                    (Measure::TaperEnd, far, shape.to_diameter),
                ];
                for (measure, target, diameter) in ends {
                    let size = self.units.length(diameter, Grade::Size);
                    let text = format!("(⌀{size})");
                    self.say(sized(SectionField::Taper), measure, text, view, target);
                }
            }
        }
        let (from, to) = (at(0.0), at(1.0));
        let length = field(SectionField::Length);
        if self.job.entry(length).is_some() {
            self.entered(
                (Rank::Shank, length),
                PLAIN,
                view,
                Target::Along { from, to },
            );
        } else {
            self.derived((length, Measure::Entered), long, view, from, to);
        }
        if let Some(place) = &section.place {
            let start = (Rank::Place, field(SectionField::Start));
            let nearer = match place.from {
                Datum::Shoulder => from,
                Datum::FreeEnd => to,
            };
            self.start(start, place.from, nearer, received);
        }
    }

    /// From the datum to where something begins.
    fn start(
        &mut self,
        what: (Rank, Field),
        datum: Datum,
        nearer: (Length, Length),
        received: &Received,
    ) {
        let edge = |z| (z, received.outer.radius_at(z));
        let (from, to) = match datum {
            Datum::Shoulder => (edge(Length::ZERO), nearer),
            Datum::FreeEnd => (nearer, edge(received.shank_length)),
        };
        // What begins at its datum has no distance to show.
        if (to.0 - from.0).to_mm() > SAME {
            self.entered(what, PLAIN, Side::View, Target::Along { from, to });
        }
    }

    fn feature(&mut self, shape: &FeatureShape, feature: &Feature, received: &Received) {
        let of = |rank, name| (rank, Field::Feature(shape.index, name));
        let size = |name| of(Rank::Detail, name);
        let middle = self.scale.seen((shape.from + shape.to) / 2.0);
        let surface = |z| received.outer.radius_at(z);
        let at = |radius: Length| Target::Diameter {
            z: middle,
            radius: radius.max(Length::ZERO).min(surface(middle)),
        };
        let (view, section) = (Side::View, Side::Section);
        match (&feature.cut, shape.cut) {
            (Cut::Flat { .. }, CutShape::Flat { distance, .. }) => {
                self.entered(size(FeatureField::Over), PLAIN, section, at(distance));
            }
            (Cut::Keyway { .. }, CutShape::Keyway { width, bottom }) => {
                self.entered(size(FeatureField::Width), PLAIN, view, at(width / 2.0));
                self.entered(size(FeatureField::Depth), PLAIN, section, at(bottom));
            }
            (Cut::WoodruffKeyway { .. }, CutShape::Woodruff { width, bottom, .. }) => {
                self.entered(size(FeatureField::Width), PLAIN, view, at(width / 2.0));
                self.entered(size(FeatureField::Depth), PLAIN, section, at(bottom));
                let z = shape.from + (shape.to - shape.from) * 0.8;
                let disc = Target::Leader {
                    z,
                    radius: ((surface(z) + bottom) / 2.0).max(Length::ZERO),
                };
                self.entered(of(Rank::Rest, FeatureField::Disc), DIAMETER, section, disc);
            }
            (Cut::CrossHole { .. }, CutShape::CrossHole { diameter }) => {
                self.entered(
                    size(FeatureField::Diameter),
                    DIAMETER,
                    view,
                    at(diameter / 2.0),
                );
            }
            (Cut::Tang { .. }, CutShape::Tang { half, slot }) => {
                self.entered(size(FeatureField::Thickness), PLAIN, section, at(half));
                if let Some((width, depth)) = slot {
                    let from = shape.to - depth;
                    let z = self.scale.seen(from + depth / 2.0);
                    let radius = (width / 2.0).min(surface(z));
                    let rest = |name| of(Rank::Rest, name);
                    let met = Target::Diameter { z, radius };
                    self.entered(rest(FeatureField::SlotWidth), PLAIN, view, met);
                    let reach = Target::Along {
                        from: (from, radius),
                        to: (shape.to, surface(shape.to)),
                    };
                    self.entered(rest(FeatureField::SlotDepth), PLAIN, view, reach);
                }
            }
            _ => {}
        }
        let ends = Target::Along {
            from: (shape.from, surface(shape.from)),
            to: (shape.to, surface(shape.to)),
        };
        self.entered(of(Rank::Place, FeatureField::Length), PLAIN, view, ends);
        if let Some(place) = &feature.place {
            let z = match (feature.is_placed_by_middle(), place.from) {
                (true, _) => (shape.from + shape.to) / 2.0,
                (false, Datum::Shoulder) => shape.from,
                (false, Datum::FreeEnd) => shape.to,
            };
            let start = of(Rank::Place, FeatureField::Start);
            self.start(start, place.from, (z, surface(z)), received);
        }
    }

    /// A hole: its sizes, and its depths from the end that it was made from.
    fn bore(&mut self, shape: &BoreShape, bore: &Bore, received: &Received) {
        let field = |name| Field::Bore(shape.index, name);
        let whole = received.whole_outer();
        let mouth = match shape.end {
            BoreEnd::FreeEnd => received.shank_length,
            BoreEnd::HeadEnd => whole.start(),
        };
        let under = |depth: Length| match shape.end {
            BoreEnd::FreeEnd => (mouth - depth).max(whole.start()),
            BoreEnd::HeadEnd => (mouth + depth).min(whole.end()),
        };
        let wall = |z: Length| {
            let radius = shape.widest.radius_at(z) + shape.off_centre;
            radius.min(whole.radius_at(z))
        };
        let edge = (mouth, whole.radius_at(mouth));
        for name in bore
            .hole
            .numbers()
            .into_iter()
            .filter(|name| is_depth(*name))
        {
            let bottom = under(self.length(field(name)));
            let bottom = (bottom, wall(bottom));
            let (from, to) = match shape.end {
                BoreEnd::FreeEnd => (bottom, edge),
                BoreEnd::HeadEnd => (edge, bottom),
            };
            let target = Target::Along { from, to };
            self.entered((Rank::Detail, field(name)), PLAIN, Side::Section, target);
        }
        let inside = self.scale.seen(met_at(shape, mouth, received));
        let at = |z| Target::Diameter { z, radius: wall(z) };
        let size = |name| (Rank::Body, field(name));
        let section = Side::Section;
        match &bore.hole {
            Hole::Drilled { .. } | Hole::Reamed { .. } | Hole::Through { .. } => {
                self.entered(size(BoreField::Diameter), DIAMETER, section, at(inside));
            }
            Hole::Stepped { .. } => {
                let depth = |name| self.length(field(name));
                let (step, whole) = (depth(BoreField::StepDepth), depth(BoreField::Depth));
                let narrow = self.scale.seen(under((step + whole.max(step)) / 2.0));
                let wide = self.scale.seen(under(step / 2.0));
                self.entered(size(BoreField::Diameter), DIAMETER, section, at(narrow));
                let step = (Rank::Rest, field(BoreField::StepDiameter));
                self.entered(step, DIAMETER, section, at(wide));
            }
            Hole::Tapped { thread, .. } => {
                let text = thread.code().to_owned();
                self.say(
                    size(BoreField::Thread),
                    Measure::Entered,
                    text,
                    section,
                    at(inside),
                );
            }
            Hole::CentreHole { centre_drill } => {
                let drill = centre_drill.get().map_or("", |drill| drill.designation);
                let radius = wall(mouth);
                let target = Target::Leader { z: mouth, radius };
                let what = size(BoreField::CentreDrill);
                self.say(what, Measure::Entered, drill.to_owned(), section, target);
            }
        }
        if shape.off_centre.to_mm() > SAME {
            let z = self.scale.seen(under((mouth - inside).abs() / 2.0));
            let axis = Target::Leader {
                z,
                radius: shape.off_centre.min(whole.radius_at(z)),
            };
            let what = (Rank::Rest, field(BoreField::OffCentre));
            self.entered(what, ("e ", ""), section, axis);
        }
    }

    /// The length that a field holds; zero where it is empty.
    fn length(&self, field: Field) -> Length {
        let entry = self.job.entry(field);
        entry.map_or(Length::ZERO, |entry| Length::mm(entry.base_value()))
    }
}

/// Where the arrow head of a hole's size stands: clear of its mouth, and where no wider hole swallows it.
fn met_at(shape: &BoreShape, mouth: Length, received: &Received) -> Length {
    let bottom = match shape.end {
        BoreEnd::FreeEnd => shape.profile.start(),
        BoreEnd::HeadEnd => shape.profile.end(),
    };
    let at = |share: f64| mouth + (bottom - mouth) * share;
    let places = [0.25, 0.4, 0.55, 0.7, 0.85, 0.95].map(at);
    let is_surface = |z: &Length| {
        let here = received.inner.radius_at(*z);
        here.to_mm() <= shape.widest.radius_at(*z).to_mm() + SAME
    };
    let mut places = places.into_iter();
    places.find(is_surface).unwrap_or(at(0.25))
}

const fn is_depth(name: BoreField) -> bool {
    matches!(
        name,
        BoreField::Depth
            | BoreField::StepDepth
            | BoreField::ThreadDepth
            | BoreField::ReamDepth
            | BoreField::DrillDepth
    )
}

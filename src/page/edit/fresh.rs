//! New rows with round figures that suit the part, to be typed over.
//!
//! The shares are common practice, no source: a key about a quarter of the shaft wide and half as deep as wide.
//! They only give a thing its place on the drawing until it has been measured.

use skimwright::job::{
    Bore, BoreBottom, Cut, CutKind, Datum, Feature, Field, Flats, HeadPiece, Hole, HoleKind, Part,
    Place, Section, SectionField, Turned, TurnedKind,
};
use skimwright::part::{Received, SectionShape};
use skimwright::quantity::{
    Angle, Entered, Entry, Grade, Length, TaperRatio, Typed, Unit, Units, show,
};
use skimwright::tables::{
    CentreDrillSize, CentreDrillStandard, TaperSeries, TaperSize, ThreadSeries, ThreadSize,
};

/// What new figures are derived from.
#[derive(Clone, Copy)]
pub(super) struct Fresh {
    units: Units,
    /// Diameter of the shank at its free end, grooves left out.
    end_diameter: Length,
    /// Shoulder to free end.
    shank_length: Length,
    longest: Longest,
}

/// The longest section that is not thinned itself: there is room for a groove.
#[derive(Clone, Copy)]
struct Longest {
    middle: Length,
    end: Length,
    /// In the middle.
    diameter: Length,
    /// How many grooves and reliefs it has already.
    cut_in: u8,
}

impl Fresh {
    /// From the part, or from the plain new part while this one cannot be resolved.
    pub(super) fn new(received: Option<&Received>, units: Units) -> Self {
        // A groove or relief at the end says nothing of what follows it.
        let found = received.and_then(|it| {
            let full = it.sections.iter().filter(|it| !is_recess(it.kind));
            let last = full.clone().next_back().or(it.sections.last())?;
            let long = |it: &&SectionShape| (it.to - it.from).to_mm();
            let longest = full.max_by(|a, b| long(a).total_cmp(&long(b)));
            let longest = longest.unwrap_or(last);
            let middle = (longest.from + longest.to) / 2.0;
            let inside =
                |it: &&SectionShape| it.cut_in && longest.from <= it.from && it.to <= longest.to;
            let longest = Longest {
                middle,
                end: longest.to,
                diameter: longest.diameter_at(middle),
                cut_in: u8::try_from(it.sections.iter().filter(inside).count()).ok()?,
            };
            Some((last.to_diameter, it.shank_length, longest))
        });
        let sound = found.filter(|(diameter, length, longest)| {
            [*diameter, *length, longest.diameter]
                .iter()
                .all(|it| *it > NOTHING)
        });
        let (end_diameter, shank_length, longest) = sound.unwrap_or_else(|| {
            let diameter = Length::mm(20.0);
            let longest = Longest {
                middle: Length::mm(40.0),
                end: Length::mm(80.0),
                diameter,
                cut_in: 0,
            };
            (diameter, Length::mm(80.0), longest)
        });
        Self {
            units,
            end_diameter,
            shank_length,
            longest,
        }
    }

    /// A further piece of the head.
    pub(super) fn head_piece(self, part: &Part) -> Option<HeadPiece> {
        let last = part.head_beyond.last();
        let diameter = last.map_or(&part.head_diameter, |piece| &piece.diameter);
        let length = last.map_or(&part.head_length, |piece| &piece.length);
        Some(HeadPiece {
            diameter: self.round(diameter.value() * 0.75)?,
            length: length.clone(),
        })
    }

    /// A section that follows the last one; a groove or relief is cut into the longest one.
    pub(super) fn section(self, kind: TurnedKind) -> Option<Section> {
        let diameter = if is_recess(kind) {
            self.longest.diameter
        } else {
            self.end_diameter
        };
        let part = |share: f64| self.round(diameter * share);
        let turned = match kind {
            TurnedKind::Cylinder => Turned::Cylinder {
                diameter: self.exact(diameter)?,
                length: part(1.0)?,
            },
            TurnedKind::Taper => Turned::Taper {
                shoulder_diameter: self.exact(diameter)?,
                end_diameter: part(0.8)?,
                length: part(1.0)?,
                diameter_error: None,
                length_error: None,
            },
            TurnedKind::StandardTaper => Turned::StandardTaper {
                taper: nearest_taper(diameter)?,
                past_gauge: self.round_or_nothing(NOTHING)?,
                length: None,
            },
            TurnedKind::RatioTaper => Turned::RatioTaper {
                shoulder_diameter: self.exact(diameter)?,
                ratio: plain(20.0, 0, Unit::ToOne)?,
                length: part(1.0)?,
            },
            TurnedKind::AngleTaper => Turned::AngleTaper {
                shoulder_diameter: self.exact(diameter)?,
                angle: plain(5.0, 0, Unit::Degree)?,
                length: part(1.0)?,
            },
            TurnedKind::Groove => Turned::Groove {
                diameter: part(0.9)?,
                length: part(0.1)?,
            },
            TurnedKind::Thread => Turned::Thread {
                thread: self.thread_up_to(diameter)?,
                length: part(1.0)?,
            },
            TurnedKind::Relief => Turned::Relief {
                diameter: part(0.85)?,
                length: part(0.15)?,
            },
        };
        let mut section = Section::from(turned);
        if let Turned::Groove { length, .. } | Turned::Relief { length, .. } = &section.turned {
            let length = length.value();
            // Beside those that are there, not over them.
            let beside = length * (2.0 * f64::from(self.longest.cut_in));
            let start = self.longest.middle - length / 2.0 + beside;
            let start = start.min(self.longest.end - length);
            section.place = Some(Place {
                from: Datum::Shoulder,
                start: self.round_or_nothing(start.max(NOTHING))?,
            });
        }
        Some(section)
    }

    /// Something cut into the shank near its free end.
    pub(super) fn feature(self, kind: CutKind) -> Option<Feature> {
        let part = |share: f64| self.round(self.end_diameter * share);
        let long = self.round(self.end_diameter.min(self.shank_length / 2.0))?;
        let cut = match kind {
            CutKind::Flat => Cut::Flat {
                over: part(0.9)?,
                flats: Flats::One,
                length: long,
            },
            CutKind::Keyway => Cut::Keyway {
                width: part(0.25)?,
                depth: part(0.125)?,
                length: long,
            },
            CutKind::WoodruffKeyway => Cut::WoodruffKeyway {
                width: part(0.2)?,
                depth: part(0.25)?,
                disc: part(0.8)?,
            },
            CutKind::CrossHole => Cut::CrossHole {
                diameter: part(0.25)?,
            },
            CutKind::Tang => Cut::Tang {
                thickness: part(0.35)?,
                length: self.round((self.end_diameter / 2.0).min(self.shank_length / 4.0))?,
                slot_width: None,
                slot_depth: None,
            },
        };
        let place = match kind {
            CutKind::Tang => None,
            _ => Some(self.place()?),
        };
        Some(Feature { cut, place })
    }

    /// Where a new cut begins.
    pub(super) fn place(self) -> Option<Place> {
        Some(Place {
            from: Datum::FreeEnd,
            start: self.round((self.end_diameter / 2.0).min(self.shank_length / 4.0))?,
        })
    }

    pub(super) fn bore(self, kind: HoleKind) -> Option<Bore> {
        let diameter = self.end_diameter;
        let part = |share: f64| self.round(diameter * share);
        let hole = match kind {
            HoleKind::Drilled => Hole::Drilled {
                diameter: part(0.4)?,
                depth: part(1.0)?,
                bottom: BoreBottom::DrillPoint,
            },
            HoleKind::Stepped => Hole::Stepped {
                diameter: part(0.3)?,
                depth: part(1.5)?,
                step_diameter: part(0.5)?,
                step_depth: part(0.5)?,
                bottom: BoreBottom::DrillPoint,
            },
            HoleKind::Tapped => Hole::Tapped {
                thread: self.thread_up_to(diameter / 2.0)?,
                thread_depth: part(1.0)?,
                drill_depth: part(1.3)?,
            },
            HoleKind::Reamed => Hole::Reamed {
                diameter: part(0.4)?,
                ream_depth: part(1.0)?,
                drill_depth: part(1.3)?,
            },
            HoleKind::Through => Hole::Through {
                diameter: part(0.3)?,
            },
            HoleKind::CentreHole => Hole::CentreHole {
                centre_drill: centre_drill_up_to(diameter / 3.0)?,
            },
        };
        Some(hole.into())
    }

    /// The largest thread of first choice that is no larger, or the smallest there is.
    fn thread_up_to(self, diameter: Length) -> Option<ThreadSize> {
        let series = if self.units.is_inch() {
            ThreadSeries::Unc
        } else {
            ThreadSeries::MetricCoarse
        };
        let fits = |size: &ThreadSize| size.get().is_some_and(|thread| thread.major <= diameter);
        let mut sizes = ThreadSize::of(series).filter(|size| is_first_choice(*size));
        let smallest = sizes.next()?;
        Some(sizes.filter(fits).last().unwrap_or(smallest))
    }

    /// A round figure near a length, never nought: whole millimetres or sixteenths of an inch, finer where small.
    fn round(self, length: Length) -> Option<Entered<Length>> {
        let step = self.step(length);
        self.round_or_nothing(length.max(step))
    }

    fn step(self, length: Length) -> Length {
        let steps = if self.units.is_inch() {
            [1.0 / 64.0, 1.0 / 32.0, 1.0 / 16.0].map(Length::inch)
        } else {
            [0.1, 0.5, 1.0].map(Length::mm)
        };
        let [fine, middle, coarse] = steps;
        if length < middle * 4.0 {
            fine
        } else if length < coarse * 5.0 {
            middle
        } else {
            coarse
        }
    }

    fn round_or_nothing(self, length: Length) -> Option<Entered<Length>> {
        let step = self.step(length);
        let rounded = step * (length / step).round();
        if self.units.is_inch() {
            let text = Units::InchFraction.length_bare(rounded, Grade::Length);
            Entered::read(&text, Unit::Inch).ok()
        } else {
            plain(rounded.to_mm(), 1, Unit::Millimetre)
        }
    }

    /// The number of a field as the shape of a section has it.
    pub(super) fn found(self, field: Field, shape: &SectionShape) -> Option<Entry> {
        let Field::Section(_, name) = field else {
            return None;
        };
        let length = match name {
            SectionField::ShoulderDiameter => shape.from_diameter,
            SectionField::Diameter | SectionField::EndDiameter => shape.to_diameter,
            SectionField::Length => shape.to - shape.from,
            SectionField::Ratio => {
                let ratio: Entered<TaperRatio> =
                    plain(shape.taper_ratio()?.to_one_in(), 3, Unit::ToOne)?;
                return Some(ratio.entry().clone());
            }
            SectionField::Angle => {
                let degrees = shape.included_angle().to_degrees();
                let angle: Entered<Angle> = plain(degrees, 3, Unit::Degree)?;
                return Some(angle.entry().clone());
            }
            _ => return None,
        };
        Some(self.exact(length)?.entry().clone())
    }

    /// A length that was found, not chosen, as fine as it can be measured.
    fn exact(self, length: Length) -> Option<Entered<Length>> {
        exact(length, self.units)
    }
}

/// A length as fine as it can be measured, in the unit in use.
pub(super) fn exact(length: Length, units: Units) -> Option<Entered<Length>> {
    if units.is_inch() {
        plain(length.to_inch(), 4, Unit::Inch)
    } else {
        plain(length.to_mm(), 3, Unit::Millimetre)
    }
}

const NOTHING: Length = Length::mm(0.0);

/// Whether a section of this kind is thinner than what it stands between.
pub(super) const fn is_recess(kind: TurnedKind) -> bool {
    matches!(kind, TurnedKind::Groove | TurnedKind::Relief)
}

/// The metric threads of first choice, as far as the table goes: ISO 261, column 1; from memory.
const FIRST_CHOICE: [&str; 13] = [
    "M3", "M4", "M5", "M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30", "M36", "M42",
];

/// Whether a thread of the coarse series is one that is bought everywhere; of the inch ones those by fractions.
fn is_first_choice(size: ThreadSize) -> bool {
    let code = size.code();
    FIRST_CHOICE.contains(&code) || (code.ends_with("UNC") && !code.starts_with('#'))
}

/// A plain number of at most so many decimals, without zeros at its end.
pub(super) fn plain<Q: Typed>(value: f64, decimals: usize, unit: Unit) -> Option<Entered<Q>> {
    Entered::read(&show::trimmed(value, decimals), unit).ok()
}

/// The Morse taper, the commonest on a shank, whose large end is nearest to a diameter.
fn nearest_taper(diameter: Length) -> Option<TaperSize> {
    let off = |size: TaperSize| {
        let row = size.get().filter(|row| row.series == TaperSeries::Morse)?;
        Some((size, (row.large_diameter - diameter).abs().to_mm()))
    };
    let nearest = TaperSize::all()
        .filter_map(off)
        .min_by(|(_, a), (_, b)| a.total_cmp(b));
    nearest.map(|(size, _)| size)
}

/// The largest centre drill whose countersink is no larger, or the smallest there is.
fn centre_drill_up_to(diameter: Length) -> Option<CentreDrillSize> {
    let mouth = |size: &CentreDrillSize| size.get()?.countersink_diameter;
    let fits = |size: &CentreDrillSize| mouth(size).is_some_and(|mouth| mouth <= diameter);
    let mut sizes = CentreDrillSize::of(CentreDrillStandard::Iso);
    let smallest = sizes.next()?;
    Some(sizes.filter(fits).last().unwrap_or(smallest))
}

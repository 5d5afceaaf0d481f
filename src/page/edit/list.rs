//! What a part has several of, and how rows of any of it are added, moved, copied and taken out.

use skimwright::job::{
    BoreEnd, BoreField, CutKind, FeatureField, Field, HeadField, Hole, HoleKind, Job, Part,
    ReceiverField, SectionField, TurnedKind,
};
use skimwright::part::Received;
use skimwright::quantity::{Length, Units};

/// What a part has several of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum List {
    /// Further pieces of the head.
    Head,
    Sections,
    Features,
    Bores,
}

/// One row of a list: its kind, where the list has several.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    Head,
    Section(TurnedKind),
    Feature(CutKind),
    Bore(HoleKind),
}

impl Kind {
    pub(crate) const fn list(self) -> List {
        match self {
            Self::Head => List::Head,
            Self::Section(_) => List::Sections,
            Self::Feature(_) => List::Features,
            Self::Bore(_) => List::Bores,
        }
    }
}

impl List {
    pub(crate) const ALL: [Self; 4] = [Self::Head, Self::Sections, Self::Features, Self::Bores];

    /// Every kind of row, in the order in which they are offered.
    pub(crate) fn kinds(self) -> Vec<Kind> {
        match self {
            Self::Head => vec![Kind::Head],
            Self::Sections => TurnedKind::ALL.iter().copied().map(Kind::Section).collect(),
            Self::Features => CutKind::ALL.iter().copied().map(Kind::Feature).collect(),
            Self::Bores => HoleKind::ALL.iter().copied().map(Kind::Bore).collect(),
        }
    }

    pub(crate) const fn most(self) -> usize {
        match self {
            Self::Head => Job::MOST_HEAD_BEYOND,
            Self::Sections => Job::MOST_SECTIONS,
            Self::Features => Job::MOST_FEATURES,
            Self::Bores => Job::MOST_BORES,
        }
    }

    pub(crate) const fn len(self, part: &Part) -> usize {
        match self {
            Self::Head => part.head_beyond.len(),
            Self::Sections => part.sections.len(),
            Self::Features => part.features.len(),
            Self::Bores => part.bores.len(),
        }
    }

    /// The list as a whole, as findings name it.
    pub(crate) const fn field(self) -> Field {
        match self {
            Self::Head => Field::HeadBeyond,
            Self::Sections => Field::Sections,
            Self::Features => Field::Features,
            Self::Bores => Field::Bores,
        }
    }

    /// The list, and the row in it, that a field belongs to.
    pub(crate) fn of(field: Field) -> Option<(Self, Option<u8>)> {
        let row = match field {
            Field::Head(index, _) => (Self::Head, Some(index)),
            Field::Section(index, _) => (Self::Sections, Some(index)),
            Field::Feature(index, _) => (Self::Features, Some(index)),
            Field::Bore(index, _) => (Self::Bores, Some(index)),
            other => (Self::ALL.into_iter().find(|it| it.field() == other)?, None),
        };
        Some(row)
    }

    /// The field that is opened when the list as a whole is meant: of its last row; `None` when there is none.
    pub(crate) fn last_field(self, part: &Part) -> Option<Field> {
        let last = u8::try_from(self.len(part).checked_sub(1)?).ok()?;
        Some(match self {
            Self::Head => Field::Head(last, HeadField::Length),
            Self::Sections => Field::Section(last, SectionField::Length),
            Self::Features => Field::Feature(last, FeatureField::Kind),
            Self::Bores => Field::Bore(last, BoreField::Kind),
        })
    }

    /// Whether one more of it, such as this row, means anything: a part has one tang, and one hole right through.
    pub(crate) fn can_copy(self, part: &Part, index: u8) -> bool {
        let index = usize::from(index);
        let sole = match self {
            Self::Head | Self::Sections => false,
            Self::Features => part
                .features
                .get(index)
                .is_none_or(|it| it.cut.kind() == CutKind::Tang),
            Self::Bores => part
                .bores
                .get(index)
                .is_none_or(|it| it.hole.kind() == HoleKind::Through),
        };
        !sole && index < self.len(part) && self.len(part) < self.most()
    }
}

/// Rows of any kind.
trait Rows {
    fn remove_at(&mut self, index: usize);
    fn swap_next(&mut self, index: usize);
    fn copy_behind(&mut self, index: usize) -> Option<()>;
}

impl<T: Clone> Rows for Vec<T> {
    fn remove_at(&mut self, index: usize) {
        self.remove(index);
    }

    fn swap_next(&mut self, index: usize) {
        self.swap(index, index + 1);
    }

    fn copy_behind(&mut self, index: usize) -> Option<()> {
        let copy = self.get(index)?.clone();
        self.insert(index + 1, copy);
        Some(())
    }
}

fn rows(part: &mut Part, list: List) -> &mut dyn Rows {
    match list {
        List::Head => &mut part.head_beyond,
        List::Sections => &mut part.sections,
        List::Features => &mut part.features,
        List::Bores => &mut part.bores,
    }
}

/// Takes a row out.
pub(super) fn remove(part: &mut Part, list: List, index: u8) -> Option<()> {
    let index = usize::from(index);
    (index < list.len(part)).then(|| rows(part, list).remove_at(index))
}

/// Swaps a row with the one behind it. Sections that have places of their own swap these too, so that the two
/// still follow one another from where they began.
pub(super) fn swap_next(
    part: &mut Part,
    list: List,
    index: u8,
    received: Option<&Received>,
    units: Units,
) -> Option<()> {
    let next = index.checked_add(1)?;
    if usize::from(next) >= list.len(part) {
        return None;
    }
    if let (List::Sections, Some(received)) = (list, received) {
        // What is cut into the others stays where it is, wherever it stands in the list.
        let chained = |at| span(received, at).filter(|_| !is_cut_in(received, at));
        let [first, second] = [index, next].map(chained);
        if let (Some((from, _)), Some((other, end))) = (first, second) {
            let begin = from.min(other);
            place_at(part, received, next, begin, units);
            place_at(part, received, index, begin + (end - other), units);
        }
    }
    rows(part, list).swap_next(usize::from(index));
    Some(())
}

/// Puts a copy behind a row: a section follows it, a cut stands beside it, a hole is made from the other end.
pub(super) fn copy(
    part: &mut Part,
    list: List,
    index: u8,
    received: Option<&Received>,
    units: Units,
) -> Option<()> {
    if !list.can_copy(part, index) {
        return None;
    }
    rows(part, list).copy_behind(usize::from(index))?;
    let at = usize::from(index) + 1;
    match list {
        List::Head => {}
        List::Sections => {
            let copy = part.sections.get_mut(at)?;
            // A second groove right behind the first would be one wide groove.
            let behind = |it: &Received| {
                let (from, to) = span(it, index)?;
                Some(if is_cut_in(it, index) {
                    to + (to - from)
                } else {
                    to
                })
            };
            let end = received.and_then(behind);
            if let (Some(place), Some(received), Some(end)) = (&mut copy.place, received, end)
                && let Some(behind) = received.section_place(index, end, place.from, units)
            {
                *place = behind;
            }
        }
        List::Features => {
            let copy = part.features.get_mut(at)?;
            if let (Some(place), Some(received)) = (&mut copy.place, received)
                && let Some(beside) = place.beside(&copy.cut, received.shank_length, units)
            {
                *place = beside;
            }
        }
        List::Bores => {
            let copy = part.bores.get_mut(at)?;
            copy.end = other_end(copy.end);
        }
    }
    Some(())
}

const fn other_end(end: BoreEnd) -> BoreEnd {
    match end {
        BoreEnd::FreeEnd => BoreEnd::HeadEnd,
        BoreEnd::HeadEnd => BoreEnd::FreeEnd,
    }
}

/// From where to where a section reaches.
fn span(received: &Received, index: u8) -> Option<(Length, Length)> {
    let section = received.sections.iter().find(|it| it.index == index)?;
    Some((section.from, section.to))
}

/// Whether a section is cut into the others and takes no length of its own.
fn is_cut_in(received: &Received, index: u8) -> bool {
    let mut sections = received.sections.iter();
    sections.any(|it| it.index == index && it.cut_in)
}

/// Lets a section with a place of its own begin elsewhere; the others follow by themselves.
fn place_at(part: &mut Part, received: &Received, index: u8, begin: Length, units: Units) {
    let section = part.sections.get_mut(usize::from(index));
    if let Some(place) = section.and_then(|it| it.place.as_mut())
        && let Some(moved) = received.section_place(index, begin, place.from, units)
    {
        *place = moved;
    }
}

/// The fields of a row that hold numbers and mean the same in another kind, the nearest in meaning first.
pub(super) fn same_meaning(field: Field) -> Vec<Field> {
    match field {
        Field::Section(index, name) => {
            let also: &[SectionField] = match name {
                // A taper by its ratio or angle has one diameter that was typed: at the shoulder.
                SectionField::Diameter => {
                    &[SectionField::EndDiameter, SectionField::ShoulderDiameter]
                }
                SectionField::ShoulderDiameter | SectionField::EndDiameter => {
                    &[SectionField::Diameter]
                }
                _ => &[],
            };
            let also = also.iter().map(|name| Field::Section(index, *name));
            [field].into_iter().chain(also).collect()
        }
        Field::Bore(index, name) => {
            let also = match name {
                BoreField::Depth => BoreField::DrillDepth,
                BoreField::DrillDepth => BoreField::Depth,
                BoreField::ThreadDepth => BoreField::ReamDepth,
                BoreField::ReamDepth => BoreField::ThreadDepth,
                other => other,
            };
            vec![field, Field::Bore(index, also)]
        }
        other => vec![other],
    }
}

/// Whether a job has a place for a field, be it a number or a choice.
pub(crate) fn stands(job: &Job, field: Field) -> bool {
    let part = &job.part;
    let row = match field {
        Field::Section(index, name) => part.sections.get(usize::from(index)).map(|it| {
            matches!(name, SectionField::Kind | SectionField::From) || it.turned.has(name)
        }),
        Field::Feature(index, name) => part.features.get(usize::from(index)).map(|it| {
            let placed = name == FeatureField::From && it.place.is_some();
            placed || name == FeatureField::Kind || it.cut.has(name)
        }),
        Field::Bore(index, name) => part
            .bores
            .get(usize::from(index))
            .map(|it| matches!(name, BoreField::Kind | BoreField::End) || it.hole.has(name)),
        Field::Receiver(name) => Some(name == ReceiverField::Kind || job.wanted.receiver.has(name)),
        _ => Some(field.bounds().is_none()),
    };
    job.has(field) || row == Some(true)
}

/// Whether a field is a number of the shape of this row, not of its place.
pub(super) fn is_of_shape(field: Field, list: List, index: u8) -> bool {
    let of_place = matches!(
        field,
        Field::Section(_, SectionField::Start)
            | Field::Feature(_, FeatureField::Start)
            | Field::Bore(_, BoreField::OffCentre)
    );
    !of_place && List::of(field) == Some((list, Some(index)))
}

/// Keeps the bottom of a hole through a change of its kind.
pub(super) fn keep_bottom(before: &Hole, after: &mut Hole) {
    if let Hole::Drilled { bottom: was, .. } | Hole::Stepped { bottom: was, .. } = before
        && let Hole::Drilled { bottom, .. } | Hole::Stepped { bottom, .. } = after
    {
        *bottom = *was;
    }
}

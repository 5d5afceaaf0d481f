//! Changes to a job that are no typed number: choices, and rows that are added, moved, copied or taken out.

mod fresh;
mod list;
mod record;
mod shop;
mod wanted;

use skimwright::cutting::Pass;
use skimwright::job::{
    BoreBottom, BoreEnd, CentreOrder, Cut, CutOffMethod, Datum, Field, Flats, Hole, Job, Part,
    Place, Tolerance, Turned, TurnedKind,
};
use skimwright::part::{Candidate, Received};
use skimwright::plan::{Plan, number_fields};
use skimwright::quantity::{Dimension, Entered, Length, Unit, Units};
use skimwright::tables::{
    CentreDrillSize, CuttingGroup, FileBite, ShaftClass, TaperSize, ThreadSize, ToolKind,
    WorkMaterial,
};

pub(crate) use list::{Kind, List, stands};
pub(crate) use record::RecordEdit;
pub(crate) use shop::{ShopEdit, can_pin, is_read_with};
pub(crate) use wanted::WantedEdit;

use fresh::Fresh;

/// One change.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Edit {
    /// A name, or the currency.
    Text(Field, String),
    Material(WorkMaterial),
    /// What the material is more exactly; `None` is its usual group.
    CuttingGroup(Option<CuttingGroup>),
    /// How a file takes to it; `None` was not tried.
    FileBite(Option<FileBite>),
    Add(Kind),
    Remove(List, u8),
    /// Behind the next one: outward, where the list follows the part.
    MoveOn(List, u8),
    /// Before the last one.
    MoveBack(List, u8),
    Copy(List, u8),
    Kind(u8, Kind),
    /// Where a section begins; `None` is where the one before ends.
    SectionFrom(u8, Option<Datum>),
    FeatureFrom(u8, Datum),
    Flats(u8, Flats),
    Taper(u8, TaperSize),
    OuterThread(u8, ThreadSize),
    End(u8, BoreEnd),
    Bottom(u8, BoreBottom),
    Thread(u8, ThreadSize),
    CentreDrill(u8, CentreDrillSize),
    /// A taper that was measured is this standard one.
    Recognised(u8, Candidate),
    Wanted(WantedEdit),
    ToleranceClass(ShaftClass),
    ToleranceLimits,
    Tool(ToolKind),
    CutOffMethod(CutOffMethod),
    CentreOrder(CentreOrder),
    Shop(ShopEdit),
    Record(RecordEdit),
}

/// What a change is made with, besides the job.
#[derive(Clone, Copy)]
struct With<'a> {
    received: Option<&'a Received>,
    /// The passes as they are planned.
    passes: &'a [Pass],
    units: Units,
}

impl Edit {
    /// The field that a run of these changes belongs to, so that they are one step of undo.
    pub(crate) const fn typing(&self) -> Option<Field> {
        match self {
            Self::Text(field, _) => Some(*field),
            _ => None,
        }
    }

    /// The list whose rows, and with them their fields, change their places or their kind.
    pub(crate) const fn moves_fields(&self) -> Option<List> {
        match self {
            Self::Remove(list, _)
            | Self::MoveOn(list, _)
            | Self::MoveBack(list, _)
            | Self::Copy(list, _) => Some(*list),
            Self::Kind(_, kind) => Some(kind.list()),
            Self::Taper(..) | Self::SectionFrom(..) | Self::Recognised(..) => Some(List::Sections),
            Self::FeatureFrom(..) => Some(List::Features),
            _ => None,
        }
    }

    /// Whether it puts a number into this field.
    pub(crate) fn fills(&self, field: Field) -> bool {
        match self {
            Self::Wanted(edit) => edit.fills(field),
            Self::Shop(edit) => edit.fills(field),
            _ => false,
        }
    }

    /// Whether rows change their places, so that a field that is open would be another's.
    pub(crate) const fn moves_rows(&self) -> bool {
        matches!(
            self,
            Self::Remove(..)
                | Self::MoveOn(..)
                | Self::MoveBack(..)
                | Self::Copy(..)
                | Self::Shop(ShopEdit::RemovePin(_) | ShopEdit::RemoveInstrument(_))
        )
    }

    /// Makes the change; false when it does not fit the job. New rows get round figures in the units in use.
    ///
    /// `plan` is the plan of the job as it is: from there comes where things are.
    pub(crate) fn apply(&self, job: &mut Job, plan: &Plan, units: Units) -> bool {
        let with = With {
            received: plan.shape.received.as_ref(),
            passes: plan.stock_off.as_ref().map_or(&[], |it| &it.passes),
            units,
        };
        self.try_on(job, with).is_some()
    }

    fn try_on(&self, job: &mut Job, with: With) -> Option<()> {
        match self {
            Self::Text(field, text) => job.set_text(*field, text).then_some(())?,
            Self::Material(material) => {
                job.part.material = *material;
                // A finer group belonged to the material before.
                job.part.cutting_group = None;
            }
            Self::CuttingGroup(group) => job.part.cutting_group = *group,
            Self::FileBite(bite) => job.part.file_bite = *bite,
            Self::Add(kind) => add(job, *kind, with)?,
            Self::Remove(list, index) => list::remove(&mut job.part, *list, *index)?,
            Self::MoveOn(list, index) => {
                list::swap_next(&mut job.part, *list, *index, with.received, with.units)?;
            }
            Self::MoveBack(list, index) => {
                let before = index.checked_sub(1)?;
                list::swap_next(&mut job.part, *list, before, with.received, with.units)?;
            }
            Self::Copy(list, index) => {
                list::copy(&mut job.part, *list, *index, with.received, with.units)?;
            }
            Self::Kind(index, kind) => change_kind(job, *index, *kind, with)?,
            Self::Recognised(index, candidate) => {
                let section = job.part.sections.get_mut(usize::from(*index))?;
                *section = candidate.as_section(section, with.units)?;
            }
            Self::Wanted(edit) => edit.try_on(job, with)?,
            Self::Shop(edit) => edit.try_on(job, with)?,
            Self::Record(edit) => edit.try_on(job)?,
            Self::ToleranceClass(class) => job.wanted.tolerance = Tolerance::Class(*class),
            Self::ToleranceLimits => {
                let (upper, lower) = if with.units.is_inch() {
                    (length("0", Unit::Inch)?, length("-0.001", Unit::Inch)?)
                } else {
                    let unit = Unit::Millimetre;
                    (length("0", unit)?, length("-0.02", unit)?)
                };
                job.wanted.tolerance = Tolerance::Limits { upper, lower };
            }
            Self::Tool(tool) => job.shop.tool = *tool,
            Self::CutOffMethod(method) => {
                job.shop.cut_off_method = *method;
                // A width that was typed belonged to the method before.
                job.shop.kerf = None;
            }
            Self::CentreOrder(order) => job.shop.centre_order = *order,
            Self::SectionFrom(..)
            | Self::FeatureFrom(..)
            | Self::Flats(..)
            | Self::Taper(..)
            | Self::OuterThread(..)
            | Self::End(..)
            | Self::Bottom(..)
            | Self::Thread(..)
            | Self::CentreDrill(..) => self.choose_in_row(&mut job.part, with)?,
        }
        Some(())
    }

    /// A choice within a row.
    fn choose_in_row(&self, part: &mut Part, with: With) -> Option<()> {
        let at = |index: u8| usize::from(index);
        match *self {
            Self::SectionFrom(index, from) => section_from(part, index, from, with)?,
            Self::FeatureFrom(index, from) => feature_from(part, index, from, with)?,
            Self::Flats(index, choice) => match &mut part.features.get_mut(at(index))?.cut {
                Cut::Flat { flats, .. } => *flats = choice,
                _ => return None,
            },
            Self::Taper(index, size) => match &mut part.sections.get_mut(at(index))?.turned {
                Turned::StandardTaper { taper, length, .. } => {
                    *taper = size;
                    // A length that was typed belonged to the size before.
                    *length = None;
                }
                _ => return None,
            },
            Self::OuterThread(index, size) => match &mut part.sections.get_mut(at(index))?.turned {
                Turned::Thread { thread, .. } => *thread = size,
                _ => return None,
            },
            Self::End(index, end) => part.bores.get_mut(at(index))?.end = end,
            Self::Bottom(index, choice) => match &mut part.bores.get_mut(at(index))?.hole {
                Hole::Drilled { bottom, .. } | Hole::Stepped { bottom, .. } => *bottom = choice,
                _ => return None,
            },
            Self::Thread(index, size) => match &mut part.bores.get_mut(at(index))?.hole {
                Hole::Tapped { thread, .. } => *thread = size,
                _ => return None,
            },
            Self::CentreDrill(index, size) => match &mut part.bores.get_mut(at(index))?.hole {
                Hole::CentreHole { centre_drill } => *centre_drill = size,
                _ => return None,
            },
            _ => return None,
        }
        Some(())
    }
}

fn length(text: &str, unit: Unit) -> Option<Entered<Length>> {
    Entered::read(text, unit).ok()
}

fn add(job: &mut Job, kind: Kind, with: With) -> Option<()> {
    if kind.list().len(&job.part) >= kind.list().most() {
        return None;
    }
    let fresh = Fresh::new(with.received, with.units);
    match kind {
        Kind::Head => {
            let piece = fresh.head_piece(&job.part)?;
            job.part.head_beyond.push(piece);
        }
        Kind::Section(kind) => job.part.sections.push(fresh.section(kind)?),
        Kind::Feature(kind) => job.part.features.push(fresh.feature(kind)?),
        Kind::Bore(kind) => job.part.bores.push(fresh.bore(kind)?),
    }
    Some(())
}

/// Another kind in the same place, with the figures of the one before where they mean the same.
fn change_kind(job: &mut Job, index: u8, kind: Kind, with: With) -> Option<()> {
    let before = job.clone();
    let fresh = Fresh::new(with.received, with.units);
    let (at, part) = (usize::from(index), &mut job.part);
    let mut shape = None;
    match kind {
        Kind::Head => return None,
        Kind::Section(kind) => {
            let section = part.sections.get_mut(at)?;
            section.turned = fresh.section(kind)?.turned;
            let sections = with.received.map(|it| it.sections.as_slice());
            shape = sections.and_then(|all| all.iter().find(|it| it.index == index));
            // What was cut into the others would lie over them.
            if shape.is_some_and(|it| it.cut_in) && !fresh::is_recess(kind) {
                section.place = None;
            }
        }
        Kind::Feature(kind) => {
            let (feature, new) = (part.features.get_mut(at)?, fresh.feature(kind)?);
            // What is new to a place begins where a new one would.
            let place = feature.place.take().or_else(|| fresh.place());
            let place = place.and_then(|it| it.with_middle_of(&feature.cut, &new.cut, with.units));
            feature.place = place.filter(|_| new.place.is_some());
            feature.cut = new.cut;
        }
        Kind::Bore(kind) => {
            let bore = part.bores.get_mut(at)?;
            let mut hole = fresh.bore(kind)?.hole;
            list::keep_bottom(&bore.hole, &mut hole);
            bore.hole = hole;
        }
    }
    // A standard taper has the length of its table until another is typed.
    if kind == Kind::Section(TurnedKind::StandardTaper) {
        return Some(());
    }
    for field in number_fields(job) {
        if !list::is_of_shape(field, kind.list(), index) {
            continue;
        }
        let mut same = list::same_meaning(field).into_iter();
        let was = same.find_map(|same| before.entry(same).cloned());
        if let Some(kept) = was.or_else(|| fresh.found(field, shape?)) {
            job.set_entry(field, Some(kept));
        }
    }
    Some(())
}

/// A section that begins where it does, told from elsewhere. While nothing can be resolved it begins at the datum.
fn section_from(part: &mut Part, index: u8, from: Option<Datum>, with: With) -> Option<()> {
    let section = part.sections.get_mut(usize::from(index))?;
    section.place = match (from, with.received) {
        (None, _) => None,
        (Some(from), Some(received)) => {
            let shape = received.sections.iter().find(|it| it.index == index)?;
            received.section_place(index, shape.from, from, with.units)
        }
        (Some(from), None) => Some(Place {
            from,
            start: nothing(with.units)?,
        }),
    };
    Some(())
}

fn feature_from(part: &mut Part, index: u8, from: Datum, with: With) -> Option<()> {
    let feature = part.features.get_mut(usize::from(index))?;
    let place = feature.place.as_mut()?;
    *place = match with.received {
        Some(received) => place.told_from(from, &feature.cut, received.shank_length, with.units)?,
        None => Place {
            from,
            start: place.start.clone(),
        },
    };
    Some(())
}

fn nothing(units: Units) -> Option<Entered<Length>> {
    length("0", units.typed_unit(Dimension::Length))
}

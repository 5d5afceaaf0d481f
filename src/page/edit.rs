//! Changes to a job that are no typed number: choices, and rows that are added, moved or taken out.

use skimwright::job::{
    Bore, BoreBottom, CentreOrder, CutOffMethod, Field, Job, Section, Tolerance,
};
use skimwright::quantity::{Dimension, Entered, Length, Units};
use skimwright::tables::{
    CentreDrillSize, ShaftClass, TaperSize, ThreadSize, ToolKind, WorkMaterial,
};

/// One change.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Edit {
    Title(String),
    Material(WorkMaterial),
    AddSection(SectionKind),
    RemoveSection(u8),
    MoveSectionOut(u8),
    SectionKind(u8, SectionKind),
    Taper(u8, TaperSize),
    AddBore(BoreKind),
    RemoveBore(u8),
    BoreKind(u8, BoreKind),
    Bottom(u8, BoreBottom),
    Thread(u8, ThreadSize),
    CentreDrill(u8, CentreDrillSize),
    ToleranceClass(ShaftClass),
    ToleranceLimits,
    Tool(ToolKind),
    CutOffMethod(CutOffMethod),
    CentreOrder(CentreOrder),
}

/// The kinds of outer section.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum SectionKind {
    Cylinder,
    Taper,
    StandardTaper,
}

impl SectionKind {
    pub(crate) const ALL: [Self; 3] = [Self::Cylinder, Self::Taper, Self::StandardTaper];

    pub(crate) const fn of(section: &Section) -> Self {
        match section {
            Section::Cylinder { .. } => Self::Cylinder,
            Section::Taper { .. } => Self::Taper,
            Section::StandardTaper { .. } => Self::StandardTaper,
        }
    }
}

/// The kinds of hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum BoreKind {
    Drilled,
    Tapped,
    CentreHole,
}

impl BoreKind {
    pub(crate) const ALL: [Self; 3] = [Self::Drilled, Self::Tapped, Self::CentreHole];

    pub(crate) const fn of(bore: &Bore) -> Self {
        match bore {
            Bore::Drilled { .. } => Self::Drilled,
            Bore::Tapped { .. } => Self::Tapped,
            Bore::CentreHole { .. } => Self::CentreHole,
        }
    }
}

impl Edit {
    /// The field that a run of these changes belongs to, so that they are one step of undo.
    pub(crate) const fn typing(&self) -> Option<Field> {
        match self {
            Self::Title(_) => Some(Field::Title),
            _ => None,
        }
    }

    /// Whether sections or holes, and with them their fields, change their places or their kind.
    pub(crate) const fn moves_fields(&self) -> bool {
        matches!(
            self,
            Self::RemoveSection(_)
                | Self::MoveSectionOut(_)
                | Self::SectionKind(..)
                | Self::Taper(..)
                | Self::RemoveBore(_)
                | Self::BoreKind(..)
        )
    }

    /// Makes the change; false when it does not fit the job. New rows get round figures in the units in use.
    pub(crate) fn apply(&self, job: &mut Job, units: Units) -> bool {
        let Job {
            part, wanted, shop, ..
        } = job;
        match self {
            Self::Title(title) => {
                job.title = title.chars().take(Job::MOST_TITLE_CHARACTERS).collect();
            }
            Self::Material(material) => part.material = *material,
            Self::AddSection(kind) => {
                if part.sections.len() >= Job::MOST_SECTIONS {
                    return false;
                }
                let Some(section) = new_section(*kind, part.sections.last(), units) else {
                    return false;
                };
                part.sections.push(section);
            }
            Self::RemoveSection(index) => {
                let index = usize::from(*index);
                if index >= part.sections.len() {
                    return false;
                }
                part.sections.remove(index);
            }
            Self::MoveSectionOut(index) => {
                let index = usize::from(*index);
                if index + 1 >= part.sections.len() {
                    return false;
                }
                part.sections.swap(index, index + 1);
            }
            Self::SectionKind(index, kind) => {
                let Some(section) = part.sections.get_mut(usize::from(*index)) else {
                    return false;
                };
                let Some(changed) = new_section(*kind, Some(section), units) else {
                    return false;
                };
                *section = changed;
            }
            Self::Taper(index, size) => {
                let Some(Section::StandardTaper { taper, length, .. }) =
                    part.sections.get_mut(usize::from(*index))
                else {
                    return false;
                };
                *taper = *size;
                // A length that was typed belonged to the size before.
                *length = None;
            }
            Self::AddBore(_) | Self::RemoveBore(_) | Self::BoreKind(..) => {
                return self.apply_to_bores(&mut part.bores, units);
            }
            Self::Bottom(index, choice) => match part.bores.get_mut(usize::from(*index)) {
                Some(Bore::Drilled { bottom, .. }) => *bottom = *choice,
                _ => return false,
            },
            Self::Thread(index, size) => match part.bores.get_mut(usize::from(*index)) {
                Some(Bore::Tapped { thread, .. }) => *thread = *size,
                _ => return false,
            },
            Self::CentreDrill(index, size) => match part.bores.get_mut(usize::from(*index)) {
                Some(Bore::CentreHole { centre_drill }) => *centre_drill = *size,
                _ => return false,
            },
            Self::ToleranceClass(class) => wanted.tolerance = Tolerance::Class(*class),
            Self::ToleranceLimits => {
                let (Some(upper), Some(lower)) =
                    (length(units, "0", "0"), length(units, "-0.02", "-0.001"))
                else {
                    return false;
                };
                wanted.tolerance = Tolerance::Limits { upper, lower };
            }
            Self::Tool(tool) => shop.tool = *tool,
            Self::CutOffMethod(method) => {
                shop.cut_off_method = *method;
                // A width that was typed belonged to the method before.
                shop.kerf = None;
            }
            Self::CentreOrder(order) => shop.centre_order = *order,
        }
        true
    }

    fn apply_to_bores(&self, bores: &mut Vec<Bore>, units: Units) -> bool {
        match self {
            Self::AddBore(kind) if bores.len() < Job::MOST_BORES => {
                let bore = new_bore(*kind, units);
                bore.map(|bore| bores.push(bore)).is_some()
            }
            Self::RemoveBore(index) if usize::from(*index) < bores.len() => {
                bores.remove(usize::from(*index));
                true
            }
            Self::BoreKind(index, kind) => {
                let slot = bores
                    .get_mut(usize::from(*index))
                    .zip(new_bore(*kind, units));
                slot.map(|(slot, bore)| *slot = bore).is_some()
            }
            _ => false,
        }
    }
}

/// A length in the units in use, from a text for each.
fn length(units: Units, metric: &str, inch: &str) -> Option<Entered<Length>> {
    let text = if units.is_inch() { inch } else { metric };
    Entered::read(text, units.typed_unit(Dimension::Length)).ok()
}

/// A section of a kind, with the figures of the one it follows or replaces where they mean the same.
fn new_section(kind: SectionKind, from: Option<&Section>, units: Units) -> Option<Section> {
    let (start, end, long) = match from {
        Some(Section::Cylinder { diameter, length }) => (
            Some(diameter.clone()),
            Some(diameter.clone()),
            Some(length.clone()),
        ),
        Some(Section::Taper {
            shoulder_diameter,
            end_diameter,
            length,
        }) => (
            Some(shoulder_diameter.clone()),
            Some(end_diameter.clone()),
            Some(length.clone()),
        ),
        Some(Section::StandardTaper { length, .. }) => (None, None, length.clone()),
        None => (None, None, None),
    };
    let start = start.or_else(|| length(units, "20", "3/4"))?;
    let end = end.unwrap_or_else(|| start.clone());
    let long = long.or_else(|| length(units, "20", "3/4"))?;
    Some(match kind {
        SectionKind::Cylinder => Section::Cylinder {
            diameter: end,
            length: long,
        },
        SectionKind::Taper => Section::Taper {
            shoulder_diameter: start,
            end_diameter: end,
            length: long,
        },
        SectionKind::StandardTaper => Section::StandardTaper {
            taper: TaperSize::from_code("morse-2")?,
            past_gauge: length(units, "0", "0")?,
            length: None,
        },
    })
}

fn new_bore(kind: BoreKind, units: Units) -> Option<Bore> {
    let code = if units.is_inch() { "3/8-16 UNC" } else { "M10" };
    Some(match kind {
        BoreKind::Drilled => Bore::Drilled {
            diameter: length(units, "8", "5/16")?,
            depth: length(units, "20", "3/4")?,
            bottom: BoreBottom::DrillPoint,
        },
        BoreKind::Tapped => Bore::Tapped {
            thread: ThreadSize::from_code(code)?,
            thread_depth: length(units, "20", "3/4")?,
            drill_depth: length(units, "26", "1")?,
        },
        BoreKind::CentreHole => Bore::CentreHole {
            centre_drill: CentreDrillSize::from_code("A2.5")?,
        },
    })
}

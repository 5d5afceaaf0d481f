//! Version 2 of the job in a link. Frozen: links of this form are in other people's letters, and newer versions begin
//! with its pieces.
//!
//! The order of the fields and the numbers of the kinds are the form. Their pieces are laid out by
//! [`super::bytes`], numbers by [`super::number`], choices by [`super::choice`].
//!
//! What few parts have stands behind a byte of its own, which is all there is where there is none of it.

use super::bytes::{
    Read, Reader, Write, Writer, read_fields, read_kinds, read_or, write_fields, write_kinds,
};
use crate::job::{
    Bore, BoreEnd, Cut, Duty, Feature, FormVersion, HeadPiece, Hole, Job, Part, Place, Receiver,
    Record, Section, Setup, Shop, Tolerance, Turned, Wanted,
};

/// Most characters of a title.
const MOST_TITLE: usize = 80;
/// Most outer sections.
const MOST_SECTIONS: usize = 12;
/// Most holes.
const MOST_BORES: usize = 6;
/// Most further pieces of the head.
const MOST_HEAD_BEYOND: usize = 4;
/// Most features.
const MOST_FEATURES: usize = 8;

/// The job in these bytes; `None` when they are not exactly one job within its limits.
pub(super) fn read(bytes: &[u8]) -> Option<Job> {
    let from = &mut Reader::new(bytes);
    let job = read_base(from);
    from.is_done().then_some(job)
}

/// The job as far as this version has it; newer ones have more behind it.
pub(super) fn read_base(from: &mut Reader<'_>) -> Job {
    Job {
        version: FormVersion,
        title: from.text(MOST_TITLE),
        part: Read::<2>::read(from),
        wanted: Read::<2>::read(from),
        shop: Read::<2>::read(from),
        setup: Setup::default(),
        record: Record::default(),
    }
}

/// The way back; `None` when the title or a list is too long.
pub(super) fn write_base(job: &Job, to: &mut Writer) -> Option<()> {
    to.text(&job.title, MOST_TITLE)?;
    job.part.write(to)?;
    job.wanted.write(to)?;
    job.shop.write(to)
}

macro_rules! fields {
    ($($list:tt)*) => {
        read_fields! { 2, $($list)* }
        write_fields! { $($list)* }
    };
}
fields! {
    HeadPiece { diameter, length }
    Place { from, start }
    Section { turned, place }
    Feature { cut, place }
    Duty { torque, side_load, overhang, power, speed }
}

/// The shop as far as this version has it; the rest is what nobody said.
macro_rules! shop {
    ($($field:ident),* $(,)?) => {
        impl Read<2> for Shop {
            fn read(from: &mut Reader<'_>) -> Self {
                Self {
                    $($field: Read::<2>::read(from),)*
                    ..Self::default()
                }
            }
        }

        write_fields! { Shop { $($field),* } }
    };
}
shop! {
    tool, cut_off_method, kerf, facing_stock, centre_order, rough_infeed, last_cut, polishing_stock,
    cutting_speed, rough_feed, finish_feed, top_speed, approach, set_time, return_time, measure_time,
    polish_time,
}

macro_rules! kinds {
    ($($list:tt)*) => {
        read_kinds! { 2, $($list)* }
        write_kinds! { $($list)* }
    };
}
kinds! {
    Turned {
        0 Cylinder { diameter, length }
        1 Taper { shoulder_diameter, end_diameter, length, diameter_error, length_error }
        2 StandardTaper { taper, past_gauge, length }
        3 RatioTaper { shoulder_diameter, ratio, length }
        4 AngleTaper { shoulder_diameter, angle, length }
        5 Groove { diameter, length }
        6 Thread { thread, length }
        7 Relief { diameter, length }
    }
    Cut {
        0 Flat { over, flats, length }
        1 Keyway { width, depth, length }
        2 WoodruffKeyway { width, depth, disc }
        3 CrossHole { diameter }
        4 Tang { thickness, length, slot_width, slot_depth }
    }
    Hole {
        0 Drilled { diameter, depth, bottom }
        1 Stepped { diameter, depth, step_diameter, step_depth, bottom }
        2 Tapped { thread, thread_depth, drill_depth }
        3 Reamed { diameter, ream_depth, drill_depth }
        4 Through { diameter }
        5 CentreHole { centre_drill }
    }
    Receiver {
        0 Own { edge }
        1 Collet { collet }
        2 SideLock { shank }
        3 Hydraulic { }
        4 PlainBore { hole, edge }
        5 Bearing { load, ring_chamfer }
        6 Sleeve { duty, material, outside, edge }
    }
}

const CLASS: u8 = 0;
const LIMITS: u8 = 1;

impl Read<2> for Tolerance {
    fn read(from: &mut Reader<'_>) -> Self {
        match from.byte() {
            CLASS => Self::Class(Read::<2>::read(from)),
            LIMITS => Self::Limits {
                upper: Read::<2>::read(from),
                lower: Read::<2>::read(from),
            },
            _ => {
                from.fail();
                Self::Class(Read::<2>::read(from))
            }
        }
    }
}

impl Write for Tolerance {
    fn write(&self, to: &mut Writer) -> Option<()> {
        match self {
            Self::Class(class) => {
                to.byte(CLASS);
                class.write(to)
            }
            Self::Limits { upper, lower } => {
                to.byte(LIMITS);
                upper.write(to)?;
                lower.write(to)
            }
        }
    }
}

impl Read<2> for Option<Place> {
    fn read(from: &mut Reader<'_>) -> Self {
        from.is_there().then(|| Read::<2>::read(from))
    }
}

impl Write for Option<Place> {
    fn write(&self, to: &mut Writer) -> Option<()> {
        to.is_there(self.is_some());
        match self {
            Some(place) => place.write(to),
            None => Some(()),
        }
    }
}

impl Read<2> for Part {
    fn read(from: &mut Reader<'_>) -> Self {
        let mut part = Self {
            material: Read::<2>::read(from),
            head_diameter: Read::<2>::read(from),
            head_length: Read::<2>::read(from),
            head_beyond: Vec::new(),
            runout: Read::<2>::read(from),
            end_runout: None,
            surface_hardness: None,
            case_depth: None,
            core_hardness: None,
            cutting_group: None,
            file_bite: None,
            shank_length: None,
            sections: from.list::<2, _>(MOST_SECTIONS),
            features: Vec::new(),
            bores: from.list::<2, _>(MOST_BORES),
        };
        if from.is_there() {
            part.head_beyond = from.list::<2, _>(MOST_HEAD_BEYOND);
            part.end_runout = Read::<2>::read(from);
            part.surface_hardness = Read::<2>::read(from);
            part.case_depth = Read::<2>::read(from);
            part.core_hardness = Read::<2>::read(from);
            part.shank_length = Read::<2>::read(from);
            part.features = from.list::<2, _>(MOST_FEATURES);
        }
        part
    }
}

impl Write for Part {
    fn write(&self, to: &mut Writer) -> Option<()> {
        self.material.write(to)?;
        self.head_diameter.write(to)?;
        self.head_length.write(to)?;
        self.runout.write(to)?;
        to.list(&self.sections, MOST_SECTIONS)?;
        to.list(&self.bores, MOST_BORES)?;
        let more = !self.head_beyond.is_empty()
            || self.end_runout.is_some()
            || self.surface_hardness.is_some()
            || self.case_depth.is_some()
            || self.core_hardness.is_some()
            || self.shank_length.is_some()
            || !self.features.is_empty();
        to.is_there(more);
        if more {
            to.list(&self.head_beyond, MOST_HEAD_BEYOND)?;
            self.end_runout.write(to)?;
            self.surface_hardness.write(to)?;
            self.case_depth.write(to)?;
            self.core_hardness.write(to)?;
            self.shank_length.write(to)?;
            to.list(&self.features, MOST_FEATURES)?;
        }
        Some(())
    }
}

impl Read<2> for Bore {
    fn read(from: &mut Reader<'_>) -> Self {
        let hole: Hole = Read::<2>::read(from);
        let mut bore = Self::from(hole);
        if from.is_there() {
            bore.end = Read::<2>::read(from);
            bore.off_centre = Read::<2>::read(from);
        }
        bore
    }
}

impl Write for Bore {
    fn write(&self, to: &mut Writer) -> Option<()> {
        self.hole.write(to)?;
        let more = self.end != BoreEnd::FreeEnd || self.off_centre.is_some();
        to.is_there(more);
        if more {
            self.end.write(to)?;
            self.off_centre.write(to)?;
        }
        Some(())
    }
}

impl Read<2> for Wanted {
    fn read(from: &mut Reader<'_>) -> Self {
        Self {
            diameter: Read::<2>::read(from),
            tolerance: Read::<2>::read(from),
            length: Read::<2>::read(from),
            shoulder_radius: Read::<2>::read(from),
            end_chamfer: Read::<2>::read(from),
            countersink: Read::<2>::read(from),
            roughness: None,
            receiver_depth: Read::<2>::read(from),
            least_grip: Read::<2>::read(from),
            receiver: Read::<2>::read(from),
            duty: if from.is_there() {
                Read::<2>::read(from)
            } else {
                Duty::default()
            },
        }
    }
}

impl Write for Wanted {
    fn write(&self, to: &mut Writer) -> Option<()> {
        self.diameter.write(to)?;
        self.tolerance.write(to)?;
        self.length.write(to)?;
        self.shoulder_radius.write(to)?;
        self.end_chamfer.write(to)?;
        self.countersink.write(to)?;
        self.receiver_depth.write(to)?;
        self.least_grip.write(to)?;
        self.receiver.write(to)?;
        let more = self.duty != Duty::default();
        to.is_there(more);
        if more {
            self.duty.write(to)?;
        }
        Some(())
    }
}

//! Version 1 of the job in a link. Frozen: links of this form are in other people's letters.
//!
//! It is laid out as [`super::v2`] is, with fewer fields and kinds; only that is written down here.

use super::bytes::{Read, Reader, read_kinds, read_or};
use crate::job::{
    Bore, Duty, FormVersion, Hole, Job, Part, Receiver, Record, Section, Setup, Shop, Tolerance,
    Turned, Wanted,
};

/// Most characters of a title.
const MOST_TITLE: usize = 80;
/// Most outer sections.
const MOST_SECTIONS: usize = 12;
/// Most holes.
const MOST_BORES: usize = 6;

/// The job in these bytes; `None` when they are not exactly one job within its limits.
pub(super) fn read(bytes: &[u8]) -> Option<Job> {
    let from = &mut Reader::new(bytes);
    let job = Job {
        version: FormVersion,
        title: from.text(MOST_TITLE),
        part: Read::<1>::read(from),
        wanted: Read::<1>::read(from),
        // As in version 2.
        shop: <Shop as Read<2>>::read(from),
        setup: Setup::default(),
        record: Record::default(),
    };
    from.is_done().then_some(job)
}

impl Read<1> for Part {
    fn read(from: &mut Reader<'_>) -> Self {
        Self {
            material: Read::<1>::read(from),
            head_diameter: Read::<1>::read(from),
            head_length: Read::<1>::read(from),
            head_beyond: Vec::new(),
            runout: Read::<1>::read(from),
            end_runout: None,
            surface_hardness: None,
            case_depth: None,
            core_hardness: None,
            cutting_group: None,
            file_bite: None,
            shank_length: None,
            sections: from.list::<1, _>(MOST_SECTIONS),
            features: Vec::new(),
            bores: from.list::<1, _>(MOST_BORES),
        }
    }
}

impl Read<1> for Wanted {
    fn read(from: &mut Reader<'_>) -> Self {
        Self {
            diameter: Read::<1>::read(from),
            // As in version 2.
            tolerance: <Tolerance as Read<2>>::read(from),
            length: Read::<1>::read(from),
            shoulder_radius: Read::<1>::read(from),
            end_chamfer: Read::<1>::read(from),
            countersink: Read::<1>::read(from),
            roughness: None,
            receiver_depth: Read::<1>::read(from),
            least_grip: Read::<1>::read(from),
            receiver: Receiver::default(),
            duty: Duty::default(),
        }
    }
}

impl Read<1> for Section {
    fn read(from: &mut Reader<'_>) -> Self {
        let turned: Turned = Read::<1>::read(from);
        turned.into()
    }
}

impl Read<1> for Bore {
    fn read(from: &mut Reader<'_>) -> Self {
        let hole: Hole = Read::<1>::read(from);
        hole.into()
    }
}

read_kinds! { 1,
    Turned {
        0 Cylinder { diameter, length }
        1 Taper { shoulder_diameter, end_diameter, length, diameter_error = None, length_error = None }
        2 StandardTaper { taper, past_gauge, length }
    }
    Hole {
        0 Drilled { diameter, depth, bottom }
        1 Tapped { thread, thread_depth, drill_depth }
        2 CentreHole { centre_drill }
    }
}

//! The part: its outline, its holes, and what follows from its shape alone.

mod curve;
mod profile;
mod received;
mod taper;

pub use profile::{Pick, Point, Profile};
pub use received::{BoreShape, Received, SectionShape};

pub(crate) use profile::{HAIR, SAME};
pub(crate) use received::{CENTRE_HALF_ANGLE, centre, cone_height};
pub(crate) use taper::{TaperEnds, usual_length};

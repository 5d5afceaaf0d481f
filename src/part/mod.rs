//! The part: its outline, its holes, and what follows from its shape alone.

mod chi_square;
mod curve;
mod profile;
mod received;
mod recognise;
mod taper;

pub use profile::{Pick, Point, Profile};
pub use received::{BoreShape, Received, SectionShape};
pub use recognise::{
    Candidate, LEAST_SHARE, LargeEnd, Measured, Recognition, TaperReading, Verdict, recognise,
};

pub(crate) use profile::{HAIR, SAME};
pub(crate) use received::{CENTRE_HALF_ANGLE, centre, cone_height};
pub(crate) use taper::{TaperEnds, usual_length};

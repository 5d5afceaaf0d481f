//! The part: its outline, its holes, what is cut into it, and what follows from its shape alone.

mod bores;
mod chi_square;
mod curve;
mod features;
mod place;
mod profile;
mod reading;
mod received;
mod recognise;
mod sections;
mod taper;
mod thread;

pub use features::{CutShape, FeatureShape};
pub use profile::{Pick, Point, Profile};
pub use received::{BoreShape, OffAxis, Received};
pub use recognise::{
    Candidate, LEAST_SHARE, LargeEnd, Measured, Recognition, TaperReading, Verdict, recognise,
};
pub use sections::SectionShape;

pub(crate) use bores::{CENTRE_HALF_ANGLE, centre, cone_height};
pub(crate) use profile::{HAIR, SAME};
pub(crate) use reading::{USUAL_DIAMETER_ERROR, USUAL_LENGTH_ERROR};
pub(crate) use taper::{STEEPEST, TaperEnds, usual_length};

//! Holding the work: how to bring it to run true.
//!
//! Pure geometry that knows nothing of a job. Places along the work are counted from the chuck face, or from the head
//! centre, outward. Directions are counted from jaw 1 towards jaw 2, so that on a three-jaw chuck the second jaw
//! stands at 120°.

mod dialling;
mod offset;
mod packing;
mod readings;

pub use dialling::{DialIn, DialledAxis, DialledPlane, Shift};
pub use offset::{Jaws, NearestJaw, Offset};
pub use packing::{
    FARTHEST_SHARE, JawContact, Packing, PackingError, RuleOfThumb, movement, packing,
    packing_for_runout,
};
pub use readings::{Dialled, DiallingError, FEWEST_READINGS, Known, MOST_READINGS};

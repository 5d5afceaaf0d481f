//! What the rework does to the part: the cut, the clean-up, the walls, the new centre.

pub(crate) mod bears;
pub(crate) mod centre;
pub(crate) mod clean_up;
pub(crate) mod cut_off;
pub(crate) mod cuts;
pub(crate) mod finished;
pub(crate) mod grip;
pub(crate) mod kept;
pub(crate) mod metal;
mod most;
pub(crate) mod safety;
pub(crate) mod wall;

pub use bears::{Bears, Shoulder, SurfaceLeft};
pub use centre::{Centre, CentreOn};
pub use clean_up::{Because, CleanUp, Most};
pub use cut_off::{CutKind, CutOff};
pub use finished::{SizeLimits, WantedShank};
pub use kept::{Kept, Weakest};
pub use metal::{Masses, MetalBudget};
pub use most::{Offer, Take, nearest_stop, offer};
pub use safety::UnderDuty;
pub use wall::{ADVISED_WALL_SOURCE, Wall};

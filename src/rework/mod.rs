//! What the rework does to the part: the cut, the clean-up, the walls, the new centre.

pub(crate) mod centre;
pub(crate) mod clean_up;
pub(crate) mod cut_off;
pub(crate) mod finished;
pub(crate) mod grip;
pub(crate) mod wall;

pub use centre::{Centre, CentreOn};
pub use clean_up::CleanUp;
pub use cut_off::{CutKind, CutOff};
pub use finished::{MetalBudget, SizeLimits, WantedShank};
pub use wall::{ADVISED_WALL_SOURCE, Wall};

//! Holding the work: how far it bends under the tool, whether the chuck grips it, and how to bring it to run true.
//!
//! Pure mechanics and geometry that know nothing of a job. Places along the work are counted from the chuck face, or
//! from the head centre, outward. Directions are counted from jaw 1 towards jaw 2, so that on a three-jaw chuck the
//! second jaw stands at 120°.

mod beam;
mod centre;
mod dial_plan;
mod dialling;
mod estimate;
mod form_error;
mod grip;
mod hold;
mod offset;
mod packing;
mod readings;
mod report;
mod slenderness;
mod sliced;
mod springs;
mod supports;

pub use beam::{Beam, BeamError, Segment};
pub use centre::{CentreKind, CentrePressure, CentreSeat, heating_thrust, thrust_needed};
pub use dial_plan::{DialPlan, JawPacking};
pub use dialling::{DialIn, DialledAxis, DialledPlane, Shift};
pub use estimate::Estimate;
pub use form_error::{FormError, FormPoint, Shape, copied_after, copied_share, largest_force};
pub use grip::{
    Friction, GripLoad, GripNeeded, GripRatio, GripSafety, GripVerdict, Tightening, WorkHardness,
    centrifugal_loss, collet_grip, grip_needed, grip_ratio, is_short_grip, scroll_chuck_grip,
    tipping_overhang,
};
pub(crate) use hold::{Hold, support, variation_allowed};
pub use offset::{Jaws, NearestJaw, Offset};
pub use packing::{
    FARTHEST_SHARE, JawContact, Packing, PackingError, RuleOfThumb, movement, packing,
    packing_for_runout,
};
pub use readings::{Dialled, DiallingError, FEWEST_READINGS, Known, MOST_READINGS};
pub use report::{GripHeld, HoldingPlan, TailLoad};
pub use slenderness::{
    CENTRE_ABOVE, Caution, Hardened, Remedy, Slenderness, SlendernessLimits, slenderness,
};
pub use springs::{SpringError, Springs, TiltStiffness};
pub use supports::Held;

pub use crate::job::{Rigidity, Support};

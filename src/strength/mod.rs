//! Mechanics of a shank: cross-sections, stress at a shoulder, fatigue, safety against a duty, and sleeves pressed on.
//!
//! Nothing here knows a job: all goes in and comes out as quantities. Where a value cannot be exact it is the careful
//! one, and each file says how careful.

mod concentration;
mod cut;
mod duty;
mod fatigue;
mod press_fit;
mod region;
mod section;

pub use concentration::{Concentration, Formula, Load, SHOULDER_SOURCE, THREAD_ROOT, shoulder};
pub use cut::{Cut, Hole, Outside};
pub use duty::{
    Assessment, Course, Duty, Fatigue, GOODMAN_SOURCE, Notch, Place, Strength, Stresses, assess,
    goodman,
};
pub use fatigue::{
    ENDURANCE_SOURCE, EnduranceLimit, NOTCH_SOURCE, NotchSensitivity, Surface, endurance_limit,
    hard_surface, notch_sensitivity,
};
pub use press_fit::{
    Elastic, Largest, Member, PRESS_FIT_SOURCE, PressFit, Pressed, after_flattening,
};
pub(crate) use section::ring_second;
pub use section::{Basis, CrossSection, Section};

//! Turning to size: the usual cuts, the passes, and how long they take; forces, finish and life of the edge.

mod bench;
mod chip;
mod choose;
mod compare;
mod compound;
mod derate;
mod edge;
pub mod engine;
mod feeding_time;
mod finish;
mod force;
mod grinding;
mod lathe;
mod law;
mod limit;
mod metal;
mod pass_figures;
pub(crate) mod passes;
mod pins;
mod planner;
mod polishing;
mod power;
mod refused;
mod report;
mod roughness;
mod search;
mod setup;
mod shoulder;
mod suits;
mod tool;
mod tool_life;
mod trust;
mod turning;
mod usual;
mod wear;

pub use chip::{
    ChipFormer, ChipKind, ChipVerdict, ChipWindow, CutStage, LEAST_CHIP_SHARE, STRINGY_BELOW,
    chip_verdict, least_chip_thickness, least_feed,
};
pub use choose::{ToolChoice, ToolVerdict};
pub use compare::{CountPoint, Saving, WIDENED};
pub(crate) use compare::{by_count, savings};
pub use compound::{
    CHAMFER_ANGLE, CompoundError, chamfer_travel, compound_angle, infeed_at_compound_angle,
};
pub use derate::{
    Cooling, Derate, EdgeMaterial, Engagement, HARDENED_END, Skin, derate, first_cut_clears,
};
pub use edge::{EdgeState, EquivalentChip, ToolEdge, chip_without_nose};
pub use feeding_time::{
    CENTRE_DRILL_FEED, CENTRE_DRILL_SPEED, HeldSpeed, PARTING_LAST, PARTING_OVERHANG,
    PARTING_SPEED_SHARE, centre_drill_spindle_speed, centre_drilling_time, facing_time,
    facing_time_at_held_speed, held_speed_time, parting_feeds, parting_force, parting_time,
};
pub use finish::{ChamferPlan, FilletPlan, FilletWay, FineInfeed, FinishPlan, PolishPlan};
pub use force::{
    CutForces, ForceFactors, ForceQuestion, HARD_SPREAD, STEEL_SPREAD, SpecificForce, Wear,
    cut_forces, rake_factor, speed_factor,
};
pub use grinding::{GrindQuestion, GrindReason, when_to_grind};
pub(crate) use lathe::Lathe;
pub use limit::{HeldBy, Limit, Load};
pub(crate) use metal::Metal;
pub use pass_figures::{ForceBasis, SpindleLimits};
pub use passes::{Pass, PassCut, PassKind, SectionStock, StockOff};
pub(crate) use planner::stock_off;
pub use polishing::{PolishingVerdict, least_polishing_stock, polishing_verdict};
pub use power::{
    LATHE_EFFICIENCY, cutting_power, cutting_torque, exact_removal_rate, motor_power,
    power_by_energy, removal_rate, spindle_torque,
};
pub use roughness::{
    BUILT_UP_EDGE, FeedFor, FinishCut, MACHINE_FLOOR, MEAN_SHORTFALL, feed_for_ideal_roughness,
    feed_for_ridge_height, has_built_up_edge, ideal_roughness, largest_arc_feed, ridge_height,
    roughness_ratio,
};
pub use shoulder::{
    FilletMethod, FilletStep, FilletSteps, Graduations, MOST_GRADUATIONS, ShoulderError,
    fillet_method,
};
pub use suits::{Care, Suits, Unfit, Verdict, suits};
pub use tool_life::{EdgeDuty, LifeExponents, ToolLife, economic_life};
pub use trust::{FitTrust, THICKEST_FITTED, THIN_CHIP_EXCESS, THINNEST_FITTED, THINNEST_USABLE};
pub use turning::{spindle_speed, surface_speed, turning_time};
pub use usual::{is_hard, usual_finish_feed, usual_infeed, usual_kerf, usual_speed};

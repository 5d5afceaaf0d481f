//! The drawing of a job: a half-section to scale with its dimensions, as lines in canvas coordinates.

mod body;
mod dimension;
mod drawing;
mod geometry;
mod hatch;
mod place;
mod scale;

pub use dimension::{DimensionMark, Kind, Measure};
pub use drawing::{Canvas, Drawing, Stage, drawing};
pub use geometry::{Area, Geometry, Point, Role, Shape};

//! The drawing of a job: a half-section to scale with its dimensions, as lines in canvas coordinates.

mod body;
mod breaks;
mod cuts;
mod dimension;
mod drawing;
mod geometry;
mod hatch;
mod holes;
mod marks;
mod place;
mod received;
mod room;
mod scale;
mod svg;

pub use dimension::{DimensionMark, Kind, Measure};
pub use drawing::{Canvas, Drawing, Stage, drawing};
pub use geometry::{Area, Geometry, Point, Role, Shape};
pub use marks::{Mark, MarkKind};
pub use svg::{file_name, paper, short, svg};

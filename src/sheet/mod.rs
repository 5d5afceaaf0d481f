//! The drawing of a job, a half-section to scale with its dimensions, and its charts: as lines in canvas coordinates.

mod body;
mod breaks;
mod chart;
mod cuts;
mod dimension;
mod drawing;
mod geometry;
mod hatch;
mod holes;
mod layers;
mod marks;
mod place;
mod received;
mod room;
mod scale;
mod svg;

pub use chart::{Chart, Compare, Dot, Tick, count_chart, form_chart};
pub use dimension::{DimensionMark, Kind, Measure};
pub use drawing::{Canvas, Drawing, Stage, drawing};
pub use geometry::{Area, Geometry, Point, Role, Shape};
pub use marks::{Mark, MarkKind};
pub use svg::{file_name, paper, short, svg};

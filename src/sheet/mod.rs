//! The drawing of a job, a half-section to scale with its dimensions, and its charts: as lines in canvas coordinates.
//! And what leaves the page: drawing files, tables for a spreadsheet, and the link as a QR code.

#[cfg(test)]
mod any_job;
mod body;
mod breaks;
mod chart;
mod csv;
mod csv_passes;
mod csv_record;
mod cuts;
mod date;
mod dimension;
mod drawing;
mod dxf;
mod dxf_entity;
mod geometry;
mod hatch;
mod holes;
mod layers;
mod marks;
mod name;
mod place;
mod qr;
mod received;
mod room;
mod scale;
mod svg;

pub use chart::{Chart, Compare, Dot, Tick, count_chart, form_chart};
pub use csv::DecimalMark;
pub use csv_passes::passes_csv;
pub use csv_record::{events_csv, readings_csv};
pub use date::iso_utc;
pub use dimension::{DimensionMark, Kind, Measure};
pub use drawing::{Canvas, Drawing, Stage, drawing};
pub use dxf::dxf;
pub use geometry::{Area, Geometry, Point, Role, Shape};
pub use marks::{Mark, MarkKind};
pub use name::{file_name, file_name_of};
pub use qr::{Qr, QrLevel, qr};
pub use svg::{paper, picture, scale_of, short, svg, true_scale};

//! The part as received: what it is made of, its head, its shank section by section, what is cut into it, its holes.

use serde::{Deserialize, Serialize};

use super::choice::{BoreBottom, BoreEnd, Datum, Flats};
use super::form::{BoreForm, FeatureForm, FormError, SectionForm, need};
use super::item_field::{BoreField, FeatureField, SectionField};
use super::kinds::{field_listed, field_slot, field_taken, field_type, kinds};
use super::slot::Slot;
use crate::quantity::{Angle, Entered, Hardness, Length, TaperRatio};
use crate::tables::{CentreDrillSize, CuttingGroup, FileBite, TaperSize, ThreadSize, WorkMaterial};

/// The part as received.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Part {
    /// What it is made of and how hard it is.
    pub material: WorkMaterial,
    /// Diameter of the head next to the shoulder; the head stays untouched.
    pub head_diameter: Entered<Length>,
    /// Length of that piece of the head.
    pub head_length: Entered<Length>,
    /// What follows of the head beyond it, away from the shank; at most [`Job::MOST_HEAD_BEYOND`](super::Job).
    pub head_beyond: Vec<HeadPiece>,
    /// Total indicated runout of the shank to the features that stay, near the shoulder.
    pub runout: Entered<Length>,
    /// The same near the free end; `None` where it is as near the shoulder, so that the shank is not tilted.
    pub end_runout: Option<Entered<Length>>,
    /// Hardness measured on the outside.
    pub surface_hardness: Option<Entered<Hardness>>,
    /// How deep a hard case reaches; `None` where the part is as hard all through.
    pub case_depth: Option<Entered<Length>>,
    /// Hardness below the case.
    pub core_hardness: Option<Entered<Hardness>>,
    /// What it is more exactly: one of the groups of its material; `None` is the usual one.
    pub cutting_group: Option<CuttingGroup>,
    /// How a file takes to it, where its hardness was not measured.
    pub file_bite: Option<FileBite>,
    /// Shoulder to free end, measured over all; `None` is the sum of the sections.
    pub shank_length: Option<Entered<Length>>,
    /// Outer sections of the shank, from the shoulder outward; 1 to [`Job::MOST_SECTIONS`](super::Job).
    pub sections: Vec<Section>,
    /// What is cut into the shank; at most [`Job::MOST_FEATURES`](super::Job).
    pub features: Vec<Feature>,
    /// Holes along the axis; at most [`Job::MOST_BORES`](super::Job).
    pub bores: Vec<Bore>,
}

/// A further piece of the head.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HeadPiece {
    /// Its diameter.
    pub diameter: Entered<Length>,
    /// Along the axis.
    pub length: Entered<Length>,
}

/// Where something begins, measured from an end of the shank to its nearer side.
///
/// Of a cross hole and a Woodruff keyway the middle is meant.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Place {
    /// What it is measured from.
    pub from: Datum,
    /// How far away.
    pub start: Entered<Length>,
}

/// One outer section of the shank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "SectionForm")]
pub struct Section {
    /// Its shape.
    #[serde(flatten)]
    pub turned: Turned,
    /// Where it begins; `None` is where the one before ends.
    #[serde(flatten)]
    pub place: Option<Place>,
}

/// Something cut into the shank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "FeatureForm")]
pub struct Feature {
    /// Its shape.
    #[serde(flatten)]
    pub cut: Cut,
    /// Where it is; a tang is at the free end and has no place.
    #[serde(flatten)]
    pub place: Option<Place>,
}

/// One hole along the axis, all depths from the end that it was made from, as received.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "BoreForm")]
pub struct Bore {
    /// Its shape.
    #[serde(flatten)]
    pub hole: Hole,
    /// The end that it was made from.
    pub end: BoreEnd,
    /// How far its axis lies beside that of the shank; `None` is not at all.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub off_centre: Option<Entered<Length>>,
}

kinds! {
    /// The shape of an outer section.
    Turned, kinds TurnedKind, fields SectionField, form SectionForm {
        /// The same diameter all along.
        Cylinder, "a cylinder" {
            /// The diameter.
            diameter: number Length, Diameter;
            /// Along the axis.
            length: number Length, Length;
        }
        /// A taper given by its two diameters.
        Taper, "a taper" {
            /// At the end nearer to the shoulder.
            shoulder_diameter: number Length, ShoulderDiameter;
            /// At the end nearer to the free end.
            end_diameter: number Length, EndDiameter;
            /// Along the axis.
            length: number Length, Length;
            /// How far each diameter may be off; `None` is the usual.
            diameter_error: optional Length, DiameterError;
            /// How far the length may be off; `None` is the usual.
            length_error: optional Length, LengthError;
        }
        /// A taper by series and size, large end towards the shoulder.
        StandardTaper, "a standard taper" {
            /// Series and size.
            taper: choice TaperSize, Taper;
            /// How far the section begins on the shoulder's side of the gauge plane; negative: beyond it.
            past_gauge: number Length, PastGauge;
            /// Along the axis; `None` is the length of the table, plus what stands before the gauge plane.
            length: optional Length, Length;
        }
        /// A taper by its ratio, 1 in so many; negative where it grows outward.
        RatioTaper, "a taper by ratio" {
            /// At the end nearer to the shoulder.
            shoulder_diameter: number Length, ShoulderDiameter;
            /// Length over change of diameter.
            ratio: number TaperRatio, Ratio;
            /// Along the axis.
            length: number Length, Length;
        }
        /// A taper by its included angle; negative where it grows outward.
        AngleTaper, "a taper by angle" {
            /// At the end nearer to the shoulder.
            shoulder_diameter: number Length, ShoulderDiameter;
            /// The included angle.
            angle: number Angle, Angle;
            /// Along the axis.
            length: number Length, Length;
        }
        /// A groove.
        Groove, "a groove" {
            /// At its bottom.
            diameter: number Length, Diameter;
            /// Its width along the axis.
            length: number Length, Length;
        }
        /// An outside thread.
        Thread, "a thread" {
            /// Its size.
            thread: choice ThreadSize, Thread;
            /// Along the axis.
            length: number Length, Length;
        }
        /// A relief: a recess before a shoulder or behind a thread.
        Relief, "a relief" {
            /// At its bottom.
            diameter: number Length, Diameter;
            /// Its width along the axis.
            length: number Length, Length;
        }
    }
}

kinds! {
    /// The shape of what is cut into the shank.
    Cut, kinds CutKind, fields FeatureField, form FeatureForm {
        /// A flat, or two opposite ones.
        Flat, "a flat" {
            /// From the flat to the opposite side; across both flats where there are two.
            over: number Length, Over;
            /// One, or two opposite.
            flats: choice Flats, Flats;
            /// Along the axis.
            length: number Length, Length;
        }
        /// A keyway for a parallel key.
        Keyway, "a keyway" {
            /// Its width.
            width: number Length, Width;
            /// Its depth below the outside.
            depth: number Length, Depth;
            /// Along the axis.
            length: number Length, Length;
        }
        /// A keyway for a Woodruff key: a segment of a disc.
        WoodruffKeyway, "a Woodruff keyway" {
            /// Its width.
            width: number Length, Width;
            /// Its depth below the outside, at the deepest.
            depth: number Length, Depth;
            /// Diameter of the cutter.
            disc: number Length, Disc;
        }
        /// A hole across the axis, right through.
        CrossHole, "a cross hole" {
            /// Its diameter.
            diameter: number Length, Diameter;
        }
        /// A flat tang at the free end.
        Tang, "a tang" {
            /// Across its two flats.
            thickness: number Length, Thickness;
            /// From the free end.
            length: number Length, Length;
            /// Width of a slot across it; `None` where there is none.
            slot_width: optional Length, SlotWidth;
            /// Depth of that slot from the free end.
            slot_depth: optional Length, SlotDepth;
        }
    }
}

kinds! {
    /// The shape of a hole along the axis.
    Hole, kinds HoleKind, fields BoreField, form BoreForm {
        /// A plain hole.
        Drilled, "a drilled hole" {
            /// The diameter.
            diameter: number Length, Diameter;
            /// To the end of the full diameter.
            depth: number Length, Depth;
            /// What its bottom is like.
            bottom: choice BoreBottom, Bottom;
        }
        /// A hole with a wider one in its mouth.
        Stepped, "a stepped hole" {
            /// The narrow diameter.
            diameter: number Length, Diameter;
            /// To the end of the narrow diameter.
            depth: number Length, Depth;
            /// The wide diameter.
            step_diameter: number Length, StepDiameter;
            /// How deep the wide diameter goes.
            step_depth: number Length, StepDepth;
            /// What its bottom is like.
            bottom: choice BoreBottom, Bottom;
        }
        /// A threaded hole.
        Tapped, "a tapped hole" {
            /// The thread.
            thread: choice ThreadSize, Thread;
            /// How deep the thread is full.
            thread_depth: number Length, ThreadDepth;
            /// How deep the hole has its full diameter.
            drill_depth: number Length, DrillDepth;
        }
        /// A reamed hole.
        Reamed, "a reamed hole" {
            /// The reamed diameter.
            diameter: number Length, Diameter;
            /// How deep it is reamed.
            ream_depth: number Length, ReamDepth;
            /// How deep it is drilled.
            drill_depth: number Length, DrillDepth;
        }
        /// A plain hole from end to end.
        Through, "a through hole" {
            /// The diameter.
            diameter: number Length, Diameter;
        }
        /// A 60° centre hole made with a standard centre drill to its standard mouth.
        CentreHole, "a centre hole" {
            /// The drill.
            centre_drill: choice CentreDrillSize, CentreDrill;
        }
    }
}

impl From<Turned> for Section {
    /// Where the one before ends.
    fn from(turned: Turned) -> Self {
        Self {
            turned,
            place: None,
        }
    }
}

impl From<Hole> for Bore {
    /// From the free end, on the axis.
    fn from(hole: Hole) -> Self {
        Self {
            hole,
            end: BoreEnd::FreeEnd,
            off_centre: None,
        }
    }
}

impl Feature {
    /// Whether its place is that of its middle.
    pub fn is_placed_by_middle(&self) -> bool {
        matches!(self.cut, Cut::CrossHole { .. } | Cut::WoodruffKeyway { .. })
    }
}

/// The place in a written form; both fields or none.
pub(super) fn take_place(
    from: Option<Datum>,
    start: Option<Entered<Length>>,
    of: &'static str,
) -> Result<Option<Place>, FormError> {
    match (from, start) {
        (Some(from), Some(start)) => Ok(Some(Place { from, start })),
        (None, None) => Ok(None),
        (None, Some(_)) => Err(FormError::missing(of, "from")),
        (Some(_), None) => Err(FormError::missing(of, "start")),
    }
}

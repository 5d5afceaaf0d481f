//! Where to cut, what falls off, what stays.
//!
//! From the shoulder outward lie: the shank wanted, the facing stock, the kerf, the offcut.
//! Where the shank has no room for a cut, all that is too long is faced off instead.

use serde::Serialize;

use super::metal::{mass, net_volume};
use crate::job::Field;
use crate::part::{Received, SAME};
use crate::plan::Checked;
use crate::quantity::{Length, Mass};
use crate::tables::DensityRange;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// How the shank comes to its length.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum CutKind {
    /// It is cut off and faced.
    CutAndFace,
    /// There is no room for a cut, so it is faced back.
    FaceOnly,
    /// It is as long as wanted already, or shorter.
    AsItIs,
}

/// Where to cut and what follows from it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CutOff {
    /// How.
    pub kind: CutKind,
    /// The mark from the free end as received: the side of the cut nearer to the shoulder.
    pub from_free_end: Figure<Length>,
    /// The same mark from the shoulder.
    pub from_shoulder: Figure<Length>,
    /// Width of the cut; zero when nothing is cut.
    pub kerf: Length,
    /// Faced off after the cut.
    pub facing: Length,
    /// Length of the piece that falls off.
    pub offcut_length: Figure<Length>,
    /// Its mass.
    pub offcut_mass: Figure<Mass>,
    /// The shank after cutting, before facing.
    pub shank_after_cut: Figure<Length>,
    /// The shank after facing.
    pub shank_finished: Figure<Length>,
}

/// Plans the cut.
///
/// `None` while the shank as received, the length wanted, the kerf or the facing stock cannot be computed with.
pub(crate) fn cut_off(
    received: &Received,
    checked: &Checked,
    kerf: Length,
    density: DensityRange,
) -> Option<CutOff> {
    let shank = received.shank_length;
    let wanted = checked.length(Field::WantedLength)?;
    let facing_stock = checked.length(Field::FacingStock)?;
    let (kind, facing, kerf) = way(shank - wanted, facing_stock, kerf);
    // Without a cut the mark is the end itself, not a rounding beside it.
    let finished = match kind {
        CutKind::AsItIs => shank,
        CutKind::FaceOnly | CutKind::CutAndFace => wanted,
    };
    let (mark, offcut) = match kind {
        CutKind::AsItIs | CutKind::FaceOnly => (shank, Length::ZERO),
        CutKind::CutAndFace => (finished + facing, shank - finished - facing - kerf),
    };
    let volume = net_volume(received, mark + kerf, shank);
    // A shank that is too short stays as it is.
    let length_meant = if (wanted - shank).to_mm() <= SAME {
        Meaning::Field(Field::WantedLength)
    } else {
        Meaning::ShankFinished
    };
    let whole = ("S", Meaning::ShankReceived, shank);
    let length = ("L", length_meant, finished);
    let faced = ("f", Meaning::FacingTaken, facing);
    let marked = ("m", Meaning::CutFromShoulder, mark);
    let sawn = ("k", Meaning::Field(Field::Kerf), kerf);
    Some(CutOff {
        kind,
        from_free_end: exact(shank - mark, "x", "S − L − f", &[whole, length, faced]),
        from_shoulder: exact(mark, "m", "L + f", &[length, faced]),
        kerf,
        facing,
        offcut_length: exact(offcut, "o", "S − m − k", &[whole, marked, sawn]),
        offcut_mass: mass(volume, Meaning::OffcutVolume, density),
        shank_after_cut: exact(mark, "R₁", "L + f", &[length, faced]),
        shank_finished: exact(finished, "R₂", "m − f", &[marked, faced]),
    })
}

/// How what is too long comes off: the way, what is faced, and the width of the cut.
fn way(surplus: Length, facing_stock: Length, kerf: Length) -> (CutKind, Length, Length) {
    // A cut needs its own width and the facing stock, and must leave something to fall off.
    if surplus.to_mm() <= SAME {
        (CutKind::AsItIs, Length::ZERO, Length::ZERO)
    } else if (surplus - facing_stock - kerf).to_mm() <= SAME {
        (CutKind::FaceOnly, surplus, Length::ZERO)
    } else {
        (CutKind::CutAndFace, facing_stock, kerf)
    }
}

/// A length by plain arithmetic.
pub(super) fn exact(
    value: Length,
    symbol: &'static str,
    formula: &'static str,
    inputs: &[(&'static str, Meaning, Length)],
) -> Figure<Length> {
    let inputs = inputs
        .iter()
        .map(|&(symbol, meaning, length)| Input::new(symbol, meaning, Value::length(length)))
        .collect();
    Figure {
        value,
        range: None,
        working: Working {
            symbol,
            formula,
            parts: &[],
            inputs,
            source: Source::Geometry,
        },
    }
}

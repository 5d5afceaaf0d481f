//! An address as a QR code, to go from screen or paper to a phone.
//!
//! Digits behind the `#` stand in a numeric segment, three of them in ten bits; what is before them in letters.

use core::fmt::Write;

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

use super::svg::{Escaped, short};
use crate::quantity::Length;

/// Longer addresses have no code: the largest takes 7089 digits, and letters before them take more room than digits.
const MOST_BYTES: usize = 7089;

/// A QR code.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Qr {
    /// Row by row, without the quiet zone.
    rows: Vec<Vec<bool>>,
    version: u8,
    level: QrLevel,
}

/// How much of a code may be soiled before it cannot be read any more.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum QrLevel {
    /// About 7 in a hundred.
    L,
    /// About 15 in a hundred.
    M,
    /// About 25 in a hundred.
    Q,
    /// About 30 in a hundred.
    H,
}

/// An address as the smallest code that holds it with level M, or with level L where M has no room; a higher level where
/// the same size has room for it. `None` when it is too long for any.
///
/// # Source
/// ISO/IEC 18004; the crate `qrcodegen` makes the code, two decoders outside the project read it.
///
/// # Example
/// ```
/// use skimwright::sheet::qr;
/// let code = qr("https://shop.example/#0312345").unwrap();
/// assert_eq!((code.version(), code.side()), (3, 29 + 8));
/// assert!(code.is_dark(4, 4) && !code.is_dark(3, 4));
/// assert!(qr(&"1".repeat(8000)).is_none());
/// ```
pub fn qr(address: &str) -> Option<Qr> {
    if MOST_BYTES < address.len() {
        return None;
    }
    let before = address.rfind('#').map_or(0, |at| at + 1);
    let (before, behind) = address.split_at_checked(before)?;
    let segments: Vec<QrSegment> = [before, behind]
        .into_iter()
        .filter(|text| !text.is_empty())
        .map(segment)
        .collect();
    let made = [QrCodeEcc::Medium, QrCodeEcc::Low]
        .into_iter()
        .find_map(|level| {
            let (least, most) = (Version::MIN, Version::MAX);
            QrCode::encode_segments_advanced(&segments, level, least, most, None, true).ok()
        })?;
    let size = made.size();
    Some(Qr {
        rows: (0..size)
            .map(|y| (0..size).map(|x| made.get_module(x, y)).collect())
            .collect(),
        version: made.version().value(),
        level: match made.error_correction_level() {
            QrCodeEcc::Low => QrLevel::L,
            QrCodeEcc::Medium => QrLevel::M,
            QrCodeEcc::Quartile => QrLevel::Q,
            QrCodeEcc::High => QrLevel::H,
        },
    })
}

/// A text in the densest mode that takes it.
fn segment(text: &str) -> QrSegment {
    if QrSegment::is_numeric(text) {
        QrSegment::make_numeric(text)
    } else if QrSegment::is_alphanumeric(text) {
        QrSegment::make_alphanumeric(text)
    } else {
        QrSegment::make_bytes(text.as_bytes())
    }
}

impl Qr {
    /// Modules that must stay light on every side (ISO/IEC 18004).
    pub const QUIET: usize = 4;

    /// A module printed smaller than this is not read at arm's length by every phone: of a picture 1920 pixels wide that
    /// takes in 60° a module has two pixels at 350 mm. Common practice, no source.
    pub const LEAST_MODULE: Length = Length::mm(0.4);

    /// The version, from 1 to 40: the code is 17 modules and four for each version wide.
    pub const fn version(&self) -> u8 {
        self.version
    }

    /// How much of it may be soiled.
    pub const fn level(&self) -> QrLevel {
        self.level
    }

    /// Modules of a side, the quiet zone counted.
    pub fn side(&self) -> usize {
        self.rows.len() + 2 * Self::QUIET
    }

    /// Whether a module is dark; x to the right and y downward, from the corner of the quiet zone.
    pub fn is_dark(&self, x: usize, y: usize) -> bool {
        let at = |place: usize| place.checked_sub(Self::QUIET);
        let row = at(y).and_then(|y| self.rows.get(y));
        let module = row.zip(at(x)).and_then(|(row, x)| row.get(x));
        module.copied().unwrap_or(false)
    }

    /// The side of the smallest print that a phone reads at arm's length, the quiet zone counted: modules of
    /// [`Qr::LEAST_MODULE`].
    pub fn least_side(&self) -> Length {
        // At most 185 modules.
        let side = u8::try_from(self.side()).unwrap_or(u8::MAX);
        Self::LEAST_MODULE * f64::from(side)
    }

    /// The dark modules as an SVG path, a module being one unit: it stands in a view box of [`Qr::side`] units both
    /// ways, whose ground must be light also in a dark look. Modules side by side are one rectangle.
    pub fn path(&self) -> String {
        let mut path = String::new();
        for (y, row) in (Self::QUIET..).zip(&self.rows) {
            let mut x = Self::QUIET;
            for run in row.chunk_by(|a, b| a == b) {
                let long = run.len();
                if run.first() == Some(&true) {
                    // Writing to a string cannot fail.
                    let _ = write!(path, "M{x} {y}h{long}v1h-{long}z");
                }
                x += long;
            }
        }
        path
    }

    /// The code as the text of an SVG file that stands by itself, black on white, each module as large as `module`: kept
    /// to 0.1–10 mm, what is not finite to [`Qr::LEAST_MODULE`]. `title` may hold anything.
    pub fn svg(&self, module: Length, title: &str) -> String {
        let module = module.to_mm();
        let module = if module.is_finite() {
            module.clamp(0.1, 10.0)
        } else {
            Self::LEAST_MODULE.to_mm()
        };
        let side = self.side();
        let wide = short(module * f64::from(u8::try_from(side).unwrap_or(u8::MAX)));
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{wide}mm\" height=\"{wide}mm\" \
             viewBox=\"0 0 {side} {side}\" shape-rendering=\"crispEdges\"><title>{}</title>\
             <path fill=\"#fff\" d=\"M0 0h{side}v{side}h-{side}z\"/><path d=\"{}\"/></svg>\n",
            Escaped(title),
            self.path(),
        )
    }
}

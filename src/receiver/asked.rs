//! What a receiver asks of the shank: size and limits, length, edge.

use serde::Serialize;

use crate::job::{Field, Job, Receiver, ReceiverField};
use crate::part::SAME;
use crate::plan::Checked;
use crate::quantity::Length;
use crate::rework::SizeLimits;
use crate::tables::{
    Confirmed, Deviations, HYDRAULIC_BORES, ShaftClass, ShankDetail, ShankSize, bearing_bore,
    deviations, hole_deviations, hydraulic_insertion, interference, largest_fillet, least_shoulder,
    seat_class,
};
use crate::working::{Range, Source};

/// What a receiver asks; `None` is what it does not care for, or what is not known of it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Asked {
    /// The smallest and the largest nominal diameter that it is made for.
    pub diameters: Option<Range<Length>>,
    /// The limits asked of the diameter wanted.
    pub limits: Option<Range<Length>>,
    /// The class behind these limits.
    pub class: Option<ShaftClass>,
    /// The least length of shank that it must grip.
    pub least_grip: Option<Length>,
    /// The most that it can grip: its own length.
    pub most_grip: Option<Length>,
    /// How deep it takes the shank.
    pub depth: Option<Length>,
    /// The length of the standard shank that it is made for.
    pub shank_length: Option<Length>,
    /// The largest fillet at the shoulder that its edge clears, so that the shoulder can come down on it.
    pub largest_fillet: Option<Length>,
    /// The least height of the shoulder, on radius.
    pub least_shoulder: Option<Length>,
    /// The flat that it clamps.
    pub flat: Option<FlatAsked>,
    /// Where this comes from.
    pub source: Source,
}

/// The flat that a side-lock holder clamps, places from the shank's end.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FlatAsked {
    /// Its length along the axis; `None` for an inclined flat, which runs from the end to `end`.
    pub length: Option<Length>,
    /// Its middle; for an inclined flat the place where its height is measured. `None` where it is not known.
    pub middle: Option<Length>,
    /// From the middle to that of a second flat, nearer to the end.
    pub second: Option<Length>,
    /// From the flat to the opposite side of the shank; `None` where it is not known.
    pub height: Option<Length>,
    /// Where an inclined flat runs out.
    pub runs_out: Option<Length>,
}

impl FlatAsked {
    /// The farthest place from the shank's end that the flat reaches; `None` where it is not known.
    pub fn reach(&self) -> Option<Length> {
        let straight = self
            .middle
            .zip(self.length)
            .map(|(middle, length)| middle + length / 2.0);
        self.runs_out.or(straight)
    }
}

/// How far limits reach beyond those asked for; nought where they do not.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Off {
    /// The largest permitted, above the largest asked.
    pub above: Length,
    /// The smallest permitted, below the smallest asked.
    pub below: Length,
}

impl Asked {
    /// How far the limits of a job reach beyond those asked for; `None` where none are.
    pub fn off(&self, limits: SizeLimits) -> Option<Off> {
        let asked = self.limits?;
        let beyond = |by: Length| if by.to_mm() > SAME { by } else { Length::ZERO };
        Some(Off {
            above: beyond(limits.upper - asked.high),
            below: beyond(asked.low - limits.lower),
        })
    }

    const NOTHING: Self = Self {
        diameters: None,
        limits: None,
        class: None,
        least_grip: None,
        most_grip: None,
        depth: None,
        shank_length: None,
        largest_fillet: None,
        least_shoulder: None,
        flat: None,
        source: Source::Geometry,
    };
}

/// A range about a nominal diameter.
fn about(nominal: Length, deviations: Deviations) -> Range<Length> {
    Range {
        low: nominal + deviations.lower,
        high: nominal + deviations.upper,
    }
}

/// What the job's receiver asks of a shank of this nominal diameter.
pub(crate) fn asked(job: &Job, checked: &Checked, nominal: Length) -> Asked {
    let edge = checked.length(Field::Receiver(ReceiverField::Edge));
    let published = |title, confirmed| Source::Published { title, confirmed };
    match &job.wanted.receiver {
        Receiver::Own { .. } | Receiver::PlainBore { .. } => Asked {
            largest_fillet: edge,
            ..Asked::NOTHING
        },
        Receiver::Collet { collet } => {
            let Some(collet) = collet.get() else {
                return Asked::NOTHING;
            };
            let bore = collet.nominal_bore_for(nominal);
            Asked {
                diameters: Some(Range {
                    low: collet.smallest_bore,
                    high: collet.largest_bore,
                }),
                limits: bore.map(|bore| Range {
                    low: bore - collet.collapse(bore),
                    high: bore,
                }),
                class: Some(collet.shank_class),
                most_grip: Some(collet.overall_length),
                // Where no figure is known, as much as it is thick: common practice, no source.
                least_grip: Some(collet.least_grip().unwrap_or(nominal)),
                source: published(
                    "ISO 15488, and common practice for collets",
                    collet.confirmed_bores,
                ),
                ..Asked::NOTHING
            }
        }
        Receiver::SideLock { shank } => side_lock(*shank),
        Receiver::Hydraulic {} => hydraulic(nominal),
        Receiver::Bearing { load, .. } => {
            let chamfer = checked.length(Field::Receiver(ReceiverField::RingChamfer));
            let class = seat_class(*load, nominal);
            let limits = class.and_then(|class| deviations(class, nominal));
            Asked {
                diameters: Some(Range {
                    low: Length::mm(1.0),
                    high: Length::mm(180.0),
                }),
                limits: limits.map(|limits| about(nominal, limits)),
                class,
                largest_fillet: chamfer.and_then(largest_fillet),
                least_shoulder: chamfer.and_then(least_shoulder),
                source: published(
                    "Rolling-bearing catalogues, to ISO 582 and ISO 492",
                    Confirmed::OneSource,
                ),
                ..Asked::NOTHING
            }
        }
        Receiver::Sleeve { duty, .. } => {
            let (_, class) = duty.fit();
            let limits = deviations(class, nominal);
            Asked {
                limits: limits.map(|limits| about(nominal, limits)),
                class: Some(class),
                largest_fillet: edge,
                source: published(
                    "ISO 286-1, preferred fits",
                    crate::tables::CONFIRMED_SLEEVE_RULES,
                ),
                ..Asked::NOTHING
            }
        }
    }
}

/// A side-lock holder is made for one standard shank.
fn side_lock(size: ShankSize) -> Asked {
    let Some(shank) = size.get() else {
        return Asked::NOTHING;
    };
    let flat = match shank.detail {
        ShankDetail::Flat(flat) => Some(FlatAsked {
            length: Some(flat.length),
            middle: flat.centre_from_end,
            second: flat.second_spacing,
            height: Some(flat.height),
            runs_out: None,
        }),
        ShankDetail::InclinedFlat(flat) => Some(FlatAsked {
            length: None,
            middle: Some(flat.measured_at),
            second: None,
            height: None,
            runs_out: Some(flat.runs_out),
        }),
        ShankDetail::Plain | ShankDetail::Threaded(_) => None,
    };
    Asked {
        diameters: Some(Range {
            low: shank.diameter,
            high: shank.diameter,
        }),
        limits: shank
            .deviations()
            .map(|deviations| about(shank.diameter, deviations)),
        shank_length: Some(shank.length),
        flat,
        source: Source::Published {
            title: shank.standards,
            confirmed: shank.confirmed.weaker(shank.confirmed_detail),
        },
        ..Asked::NOTHING
    }
}

/// The bores of hydraulic chucks are those of plain shanks.
fn hydraulic(nominal: Length) -> Asked {
    let class = ShaftClass::H6;
    let least_grip = hydraulic_insertion(nominal);
    let limits = least_grip.and_then(|_| deviations(class, nominal));
    Asked {
        diameters: Some(Range {
            low: HYDRAULIC_BORES.0,
            high: HYDRAULIC_BORES.1,
        }),
        limits: limits.map(|limits| about(nominal, limits)),
        class: Some(class),
        least_grip,
        source: Source::Published {
            title: "Makers of hydraulic chucks, for shanks to DIN 6535 HA",
            confirmed: Confirmed::Memory,
        },
        ..Asked::NOTHING
    }
}

/// The limits of the receiver's hole; `None` where it closes on the shank, or nothing is known of it.
pub(super) fn hole(job: &Job, nominal: Length) -> Option<Range<Length>> {
    hole_here(job, nominal).map(|deviations| about(nominal, deviations))
}

fn hole_here(job: &Job, nominal: Length) -> Option<Deviations> {
    match &job.wanted.receiver {
        Receiver::PlainBore { hole, .. } => hole_deviations(*hole, nominal),
        Receiver::Bearing { .. } => bearing_bore(nominal),
        Receiver::Sleeve { duty, .. } => hole_deviations(duty.fit().0, nominal),
        Receiver::Own { .. }
        | Receiver::Collet { .. }
        | Receiver::SideLock { .. }
        | Receiver::Hydraulic {} => None,
    }
}

/// How much larger the shank is than the receiver's hole, least and greatest; `None` where there is no such hole.
pub(crate) fn fit(job: &Job, nominal: Length, limits: SizeLimits) -> Option<Range<Length>> {
    let hole = hole_here(job, nominal)?;
    let shaft = Deviations {
        upper: limits.upper - nominal,
        lower: limits.lower - nominal,
    };
    Some(interference(shaft, hole))
}

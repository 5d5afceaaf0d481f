//! English: what the shank goes into, and what that asks of it.

use skimwright::job::{Job, Receiver, ReceiverKind};
use skimwright::plan::Plan;
use skimwright::quantity::{Entered, Grade, Length, Units, show};
use skimwright::receiver::{Asked, FlatAsked};
use skimwright::rework::SizeLimits;
use skimwright::tables::{
    ColletSize, ColletSystem, FitKind, HoleClass, SeatLoad, ShaftClass, Shank, ShankForm,
    SleeveDuty, seat_finish,
};
use skimwright::working::{Range, Source};

use super::Words;
use super::about::{Ask, OfReceiver};

pub(super) const fn text(text: OfReceiver) -> &'static str {
    match text {
        OfReceiver::Kind(kind) => kind_name(kind),
        OfReceiver::Hole(class) => hole(class),
        OfReceiver::Load(load) => bearing_load(load),
        OfReceiver::Duty(duty) => sleeve_duty(duty),
        OfReceiver::Form(ShankForm::Plain) => "Plain",
        OfReceiver::Form(ShankForm::Flat) => "With a flat",
        OfReceiver::Form(ShankForm::InclinedFlat) => "With a flat that slopes by 2°",
        OfReceiver::Form(ShankForm::Threaded) => "Threaded at the end",
        OfReceiver::Fit(FitKind::Clearance) => "At or below size: slides in an H hole",
        OfReceiver::Fit(FitKind::Transition) => "About size: tapped or pushed in",
        OfReceiver::Fit(FitKind::Interference) => "Above size: pressed in",
        OfReceiver::IsoCollets => "ISO 15488",
        OfReceiver::OtherCollets => "Others",
        OfReceiver::OwnLimits => "By their figures",
        OfReceiver::Asks => "What it asks",
        OfReceiver::TakeLimits => "Take its limits",
    }
}

const fn kind_name(kind: ReceiverKind) -> &'static str {
    match kind {
        ReceiverKind::Own => "Something else, or not known",
        ReceiverKind::Collet => "Collet",
        ReceiverKind::SideLock => "Side-lock holder",
        ReceiverKind::Hydraulic => "Hydraulic chuck",
        ReceiverKind::PlainBore => "Plain bore",
        ReceiverKind::Bearing => "Ball bearing",
        ReceiverKind::Sleeve => "Repair sleeve",
    }
}

const fn hole(class: HoleClass) -> &'static str {
    match class {
        HoleClass::H6 => "H6, reamed or ground, fine",
        HoleClass::H7 => "H7, reamed or bored",
        HoleClass::H8 => "H8, bored",
        HoleClass::G7 => "G7, always above size",
        HoleClass::K7 => "K7, about size",
        HoleClass::N7 => "N7, below size",
        HoleClass::P7 => "P7, below size, for pressing",
    }
}

const fn bearing_load(load: SeatLoad) -> &'static str {
    match load {
        SeatLoad::RotatingLight => "Shaft turns, light load",
        SeatLoad::RotatingNormal => "Shaft turns, normal or heavy load",
        SeatLoad::StationaryEasy => "Shaft stands, ring must slide",
        SeatLoad::Stationary => "Shaft stands",
        SeatLoad::AxialOnly => "Load along the axis only",
    }
}

const fn sleeve_duty(duty: SleeveDuty) -> &'static str {
    match duty {
        SleeveDuty::Adhesive => "Glued with retaining adhesive",
        SleeveDuty::LightTorque => "Pressed, little torque",
        SleeveDuty::MediumTorque => "Pressed, some torque",
        SleeveDuty::FullTorque => "Shrunk, all the torque of the shank",
    }
}

pub(super) fn name(receiver: &Receiver) -> String {
    match receiver {
        Receiver::Collet { collet } => collet_name(*collet),
        Receiver::SideLock { shank } => {
            let size = shank.get().map(self::shank);
            format!(
                "{} {}",
                kind_name(receiver.kind()),
                size.unwrap_or_default()
            )
        }
        other => kind_name(other.kind()).to_owned(),
    }
}

fn collet_name(size: ColletSize) -> String {
    let code = collet_code(size);
    match size.get().map(|collet| collet.system) {
        Some(ColletSystem::Iso15488) => format!("ISO 15488 collet, size {code}"),
        _ => format!("{code} collet"),
    }
}

pub(super) fn collet(words: Words, size: ColletSize) -> String {
    let code = collet_code(size);
    size.get().map_or(code.clone(), |collet| {
        let smallest = words.length_bare(collet.smallest_bore);
        format!(
            "{code}: {smallest} to {}",
            words.length(collet.largest_bore)
        )
    })
}

fn collet_code(size: ColletSize) -> String {
    // Codes are plain letters and digits.
    size.code()
        .trim_start_matches("collet-")
        .to_ascii_uppercase()
}

/// `⌀16 × 48 mm`, `⌀3/4 × 2 1/32 in`: by the unit of its standard, whatever is in use.
pub(super) fn shank(shank: &Shank) -> String {
    if shank.is_inch() {
        let inch = |length| Units::InchFraction.length_bare(length, Grade::Length);
        format!("⌀{} × {} in", inch(shank.diameter), inch(shank.length))
    } else {
        let mm = |length: Length| show::trimmed(length.to_mm(), 2);
        format!("⌀{} × {} mm", mm(shank.diameter), mm(shank.length))
    }
}

pub(super) fn shank_in_full(shank: &Shank, standard: Option<&str>) -> String {
    let form = match shank.form() {
        ShankForm::Plain => "plain",
        ShankForm::Flat => "flat",
        ShankForm::InclinedFlat => "inclined flat",
        ShankForm::Threaded => "threaded",
    };
    let standard = standard.map_or_else(String::new, |standard| format!(", {standard}"));
    format!("{}, {form}{standard}", self::shank(shank))
}

pub(super) fn asks(words: Words, job: &Job, plan: &Plan) -> Vec<Ask> {
    let Some(receiver) = &plan.receiver else {
        return Vec::new();
    };
    let asked = &receiver.asked;
    let mut asks = Vec::new();
    asks.extend(diameters(words, job, asked));
    asks.extend(
        plan.limits
            .and_then(|limits| size(words, job, asked, limits)),
    );
    asks.extend(receiver.hole.map(|hole| bored(words, job, hole)));
    asks.extend(receiver.fit.map(|fit| fits(words, fit)));
    asks.extend(lengths(words, job, plan, asked));
    asks.extend(shoulder(words, job, asked));
    asks.extend(asked.flat.map(|it| flat(words, &it)));
    asks.extend(finish(words, job, asked));
    if let Some(sleeve) = &receiver.sleeve {
        asks.push(Ask {
            name: "Wall of the finished sleeve",
            says: format!(
                "{}, at least {}",
                words.length(sleeve.wall),
                words.length(sleeve.least_wall)
            ),
            off: sleeve.wall < sleeve.least_wall,
        });
    }
    if asked.source != Source::Geometry && !asks.is_empty() {
        asks.push(plain("Source", words.source(asked.source)));
    }
    asks
}

const fn plain(name: &'static str, says: String) -> Ask {
    Ask {
        name,
        says,
        off: false,
    }
}

fn diameters(words: Words, job: &Job, asked: &Asked) -> Option<Ask> {
    let range = asked.diameters?;
    let nominal = job.wanted.diameter.value();
    let says = if range.low == range.high {
        words.size(range.low)
    } else {
        words.range(&words.size(range.low), &words.size(range.high))
    };
    let outside = nominal < range.low || range.high < nominal;
    let between = !outside && asked.limits.is_none();
    Some(Ask {
        name: "Takes diameters of",
        says: if outside {
            format!("{says}; the shank is to be {}", words.size(nominal))
        } else if between {
            format!(
                "{says}, in steps: {} lies between two of them",
                words.size(nominal)
            )
        } else {
            says
        },
        off: outside || between,
    })
}

/// The limits asked for, and how far those of the job are off.
fn size(words: Words, job: &Job, asked: &Asked, limits: SizeLimits) -> Option<Ask> {
    let (range, off) = (asked.limits?, asked.off(limits)?);
    let says = words.range(&words.size(range.low), &words.size(range.high));
    let is_collet = matches!(job.wanted.receiver, Receiver::Collet { .. });
    // A collet closes on far more than the class that it holds best.
    let class = match (asked.class.map(ShaftClass::code), is_collet) {
        (Some(class), true) => format!(", best {class}"),
        (Some(class), false) => format!(", {class}"),
        (None, _) => String::new(),
    };
    let mut parts = Vec::new();
    if off.above > Length::ZERO {
        parts.push(format!("{} above", words.size(off.above)));
    }
    if off.below > Length::ZERO {
        parts.push(format!("{} below", words.size(off.below)));
    }
    let yours = if parts.is_empty() {
        "yours lie within".to_owned()
    } else {
        format!("yours reach {}", parts.join(" and "))
    };
    Some(Ask {
        name: "Limits of the diameter",
        says: format!("{says}{class}; {yours}"),
        off: !parts.is_empty(),
    })
}

/// The limits of its hole: those of a sleeve have to be made, the others are there.
fn bored(words: Words, job: &Job, hole: Range<Length>) -> Ask {
    let name = match job.wanted.receiver {
        Receiver::Sleeve { .. } => "Bore the sleeve to",
        _ => "Its hole",
    };
    plain(
        name,
        words.range(&words.size(hole.low), &words.size(hole.high)),
    )
}

/// Room, or too large, or both as it comes out.
fn fits(words: Words, fit: Range<Length>) -> Ask {
    let size = |length: Length| words.size(length.abs());
    let says = if fit.high <= Length::ZERO {
        format!("{} to {} of room", size(fit.high), size(fit.low))
    } else if fit.low >= Length::ZERO {
        format!(
            "the shank is {} to {} larger than the hole",
            size(fit.low),
            size(fit.high)
        )
    } else {
        format!(
            "from {} of room to {} too large",
            size(fit.low),
            size(fit.high)
        )
    };
    plain("Fit", says)
}

fn lengths(words: Words, job: &Job, plan: &Plan, asked: &Asked) -> Vec<Ask> {
    let mut asks = Vec::new();
    let typed = job.wanted.least_grip.as_ref().map(Entered::value);
    if let Some(grip) = &plan.grip {
        let least = typed.or(asked.least_grip);
        let gripped = words.length(grip.value);
        asks.push(Ask {
            name: "Grips",
            says: match least {
                Some(least) => format!("{gripped}; it needs {}", words.length(least)),
                None => gripped,
            },
            off: least.is_some_and(|least| grip.value < least),
        });
    }
    if let Some(standard) = asked.shank_length {
        let length = job.wanted.length.value();
        asks.push(Ask {
            name: "Length of the standard shank",
            says: if length < standard {
                let short = words.length(standard - length);
                format!("{}; yours is {short} shorter", words.length(standard))
            } else {
                words.length(standard)
            },
            off: length < standard,
        });
    }
    asks
}

fn shoulder(words: Words, job: &Job, asked: &Asked) -> Vec<Ask> {
    let mut asks = Vec::new();
    if let Some(largest) = asked.largest_fillet {
        let fillet = job.wanted.shoulder_radius.value();
        asks.push(Ask {
            name: "Largest fillet that its edge clears",
            says: format!(
                "{}; yours is {}",
                words.size_at_most(largest),
                words.units().entry(job.wanted.shoulder_radius.entry())
            ),
            off: fillet > largest,
        });
    }
    if let Some(least) = asked.least_shoulder {
        let height = (job.part.head_diameter.value() - job.wanted.diameter.value()) / 2.0;
        asks.push(Ask {
            name: "Height of the shoulder",
            says: format!(
                "{} at least; yours is {}",
                words.length(least),
                words.length(height)
            ),
            off: height < least,
        });
    }
    asks
}

fn flat(words: Words, flat: &FlatAsked) -> Ask {
    let length = |length| words.length(length);
    let mut parts = Vec::new();
    if let Some(runs_out) = flat.runs_out {
        parts.push(format!(
            "slopes by 2°, deepest at the end, runs out {} from it",
            length(runs_out)
        ));
        if let Some(at) = flat.middle {
            parts.push(format!(
                "its height is measured {} from the end",
                length(at)
            ));
        }
    } else {
        parts.extend(flat.length.map(|it| format!("{} long", length(it))));
        parts.extend(
            flat.middle
                .map(|it| format!("its middle {} from the end", length(it))),
        );
    }
    parts.extend(
        flat.height
            .map(|it| format!("{} from it to the opposite side", length(it))),
    );
    parts.extend(
        flat.second
            .map(|it| format!("a second one like it, {} nearer to the end", length(it))),
    );
    plain("Flat to be milled", parts.join("; "))
}

/// What a bearing asks of its seat.
fn finish(words: Words, job: &Job, asked: &Asked) -> Option<Ask> {
    if !matches!(job.wanted.receiver, Receiver::Bearing { .. }) {
        return None;
    }
    let finish = seat_finish(asked.class?, job.wanted.diameter.value())?;
    let fine = |length| words.units().fine(length);
    Some(plain(
        "Finish of the seat",
        format!(
            "Ra {} or smoother; runs out {} at most, its shoulder {}",
            fine(finish.roughness),
            fine(finish.runout),
            fine(finish.shoulder_runout)
        ),
    ))
}

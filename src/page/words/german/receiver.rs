//! German: what the shank goes into, and what that asks of it.

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

use crate::page::words::{Ask, OfReceiver, Words};

pub(super) const fn text(text: OfReceiver) -> &'static str {
    match text {
        OfReceiver::Kind(kind) => kind_name(kind),
        OfReceiver::Hole(class) => hole(class),
        OfReceiver::Load(load) => bearing_load(load),
        OfReceiver::Duty(duty) => sleeve_duty(duty),
        OfReceiver::Form(ShankForm::Plain) => "Glatt",
        OfReceiver::Form(ShankForm::Flat) => "Mit Spannfläche",
        OfReceiver::Form(ShankForm::InclinedFlat) => "Mit Spannfläche, 2° geneigt",
        OfReceiver::Form(ShankForm::Threaded) => "Gewinde am Ende",
        OfReceiver::Fit(FitKind::Clearance) => "Auf Maß oder darunter: gleitet in H-Bohrung",
        OfReceiver::Fit(FitKind::Transition) => "Etwa auf Maß: geklopft oder geschoben",
        OfReceiver::Fit(FitKind::Interference) => "Über Maß: eingepresst",
        OfReceiver::IsoCollets => "ISO 15488",
        OfReceiver::OtherCollets => "Andere",
        OfReceiver::OwnLimits => "Nach Zahlen",
        OfReceiver::Asks => "Was sie verlangt",
        OfReceiver::TakeLimits => "Grenzen übernehmen",
    }
}

const fn kind_name(kind: ReceiverKind) -> &'static str {
    match kind {
        ReceiverKind::Own => "Etwas anderes, oder unbekannt",
        ReceiverKind::Collet => "Spannzange",
        ReceiverKind::SideLock => "Halter, Seitschraube",
        ReceiverKind::Hydraulic => "Hydrodehnfutter",
        ReceiverKind::PlainBore => "Bohrung",
        ReceiverKind::Bearing => "Kugellager",
        ReceiverKind::Sleeve => "Reparaturhülse",
    }
}

const fn hole(class: HoleClass) -> &'static str {
    match class {
        HoleClass::H6 => "H6, gerieben oder geschliffen, fein",
        HoleClass::H7 => "H7, gerieben oder ausgedreht",
        HoleClass::H8 => "H8, ausgedreht",
        HoleClass::G7 => "G7, immer über Maß",
        HoleClass::K7 => "K7, etwa auf Maß",
        HoleClass::N7 => "N7, unter Maß",
        HoleClass::P7 => "P7, unter Maß, zum Pressen",
    }
}

const fn bearing_load(load: SeatLoad) -> &'static str {
    match load {
        SeatLoad::RotatingLight => "Welle dreht, leichte Last",
        SeatLoad::RotatingNormal => "Welle dreht, normale oder schwere Last",
        SeatLoad::StationaryEasy => "Welle steht, Ring muss gleiten",
        SeatLoad::Stationary => "Welle steht",
        SeatLoad::AxialOnly => "Last nur längs der Achse",
    }
}

const fn sleeve_duty(duty: SleeveDuty) -> &'static str {
    match duty {
        SleeveDuty::Adhesive => "Geklebt mit Fügeklebstoff",
        SleeveDuty::LightTorque => "Gepresst, wenig Drehmoment",
        SleeveDuty::MediumTorque => "Gepresst, mäßiges Drehmoment",
        SleeveDuty::FullTorque => "Geschrumpft, volles Drehmoment des Schafts",
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
        Some(ColletSystem::Iso15488) => format!("Spannzange ISO 15488, Größe {code}"),
        _ => format!("Spannzange {code}"),
    }
}

pub(in crate::page::words) fn collet(words: Words, size: ColletSize) -> String {
    let code = collet_code(size);
    size.get().map_or(code.clone(), |collet| {
        let smallest = words.length_bare(collet.smallest_bore);
        format!(
            "{code}: {smallest} bis {}",
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
pub(in crate::page::words) fn shank(shank: &Shank) -> String {
    if shank.is_inch() {
        let inch = |length| Units::InchFraction.length_bare(length, Grade::Length);
        format!("⌀{} × {} in", inch(shank.diameter), inch(shank.length))
    } else {
        let mm = |length: Length| show::trimmed(length.to_mm(), 2);
        format!("⌀{} × {} mm", mm(shank.diameter), mm(shank.length))
    }
}

pub(in crate::page::words) fn shank_in_full(shank: &Shank, standard: Option<&str>) -> String {
    let form = match shank.form() {
        ShankForm::Plain => "glatt",
        ShankForm::Flat => "mit Spannfläche",
        ShankForm::InclinedFlat => "geneigte Spannfläche",
        ShankForm::Threaded => "mit Gewinde",
    };
    let standard = standard.map_or_else(String::new, |standard| format!(", {standard}"));
    format!("{}, {form}{standard}", self::shank(shank))
}

pub(in crate::page::words) fn asks(words: Words, job: &Job, plan: &Plan) -> Vec<Ask> {
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
            name: "Wand der fertigen Hülse",
            says: format!(
                "{}, mindestens {}",
                words.length(sleeve.wall),
                words.length(sleeve.least_wall)
            ),
            off: sleeve.wall < sleeve.least_wall,
        });
    }
    if asked.source != Source::Geometry && !asks.is_empty() {
        asks.push(plain("Quelle", words.source(asked.source)));
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
        name: "Nimmt Durchmesser von",
        says: if outside {
            format!("{says}; der Schaft soll {} werden", words.size(nominal))
        } else if between {
            format!(
                "{says}, in Stufen: {} liegt zwischen zweien",
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
        (Some(class), true) => format!(", am besten {class}"),
        (Some(class), false) => format!(", {class}"),
        (None, _) => String::new(),
    };
    let mut parts = Vec::new();
    if off.above > Length::ZERO {
        parts.push(format!("{} darüber", words.size(off.above)));
    }
    if off.below > Length::ZERO {
        parts.push(format!("{} darunter", words.size(off.below)));
    }
    let yours = if parts.is_empty() {
        "die eigenen liegen darin".to_owned()
    } else {
        format!("die eigenen reichen {}", parts.join(" und "))
    };
    Some(Ask {
        name: "Grenzmaße des Durchmessers",
        says: format!("{says}{class}; {yours}"),
        off: !parts.is_empty(),
    })
}

/// The limits of its hole: those of a sleeve have to be made, the others are there.
fn bored(words: Words, job: &Job, hole: Range<Length>) -> Ask {
    let name = match job.wanted.receiver {
        Receiver::Sleeve { .. } => "Hülse ausdrehen auf",
        _ => "Ihre Bohrung",
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
        format!("{} bis {} Spiel", size(fit.high), size(fit.low))
    } else if fit.low >= Length::ZERO {
        format!(
            "der Schaft hat {} bis {} Übermaß",
            size(fit.low),
            size(fit.high)
        )
    } else {
        format!("von {} Spiel bis {} Übermaß", size(fit.low), size(fit.high))
    };
    plain("Passung", says)
}

fn lengths(words: Words, job: &Job, plan: &Plan, asked: &Asked) -> Vec<Ask> {
    let mut asks = Vec::new();
    let typed = job.wanted.least_grip.as_ref().map(Entered::value);
    if let Some(grip) = &plan.grip {
        let least = typed.or(asked.least_grip);
        let gripped = words.length(grip.value);
        asks.push(Ask {
            name: "Spannt",
            says: match least {
                Some(least) => format!("{gripped}; nötig sind {}", words.length(least)),
                None => gripped,
            },
            off: least.is_some_and(|least| grip.value < least),
        });
    }
    if let Some(standard) = asked.shank_length {
        let length = job.wanted.length.value();
        asks.push(Ask {
            name: "Länge des Normschafts",
            says: if length < standard {
                let short = words.length(standard - length);
                format!("{}; der eigene ist {short} kürzer", words.length(standard))
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
            name: "Größter Radius, an dem ihre Kante vorbeigeht",
            says: format!(
                "{}; der eigene ist {}",
                words.size_at_most(largest),
                words.typed(job.wanted.shoulder_radius.entry())
            ),
            off: fillet > largest,
        });
    }
    if let Some(least) = asked.least_shoulder {
        let height = (job.part.head_diameter.value() - job.wanted.diameter.value()) / 2.0;
        asks.push(Ask {
            name: "Höhe der Schulter",
            says: format!(
                "mindestens {}; die eigene ist {}",
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
            "um 2° geneigt, am Ende am tiefsten, läuft {} davon aus",
            length(runs_out)
        ));
        if let Some(at) = flat.middle {
            parts.push(format!("ihre Höhe gilt {} vom Ende", length(at)));
        }
    } else {
        parts.extend(flat.length.map(|it| format!("{} lang", length(it))));
        parts.extend(
            flat.middle
                .map(|it| format!("ihre Mitte {} vom Ende", length(it))),
        );
    }
    parts.extend(
        flat.height
            .map(|it| format!("{} von ihr zur Seite gegenüber", length(it))),
    );
    parts.extend(
        flat.second
            .map(|it| format!("eine zweite ebensolche, {} näher am Ende", length(it))),
    );
    plain("Zu fräsende Spannfläche", parts.join("; "))
}

/// What a bearing asks of its seat.
fn finish(words: Words, job: &Job, asked: &Asked) -> Option<Ask> {
    if !matches!(job.wanted.receiver, Receiver::Bearing { .. }) {
        return None;
    }
    let finish = seat_finish(asked.class?, job.wanted.diameter.value())?;
    let fine = |length| words.fine(length);
    Some(plain(
        "Oberfläche des Sitzes",
        format!(
            "Ra {} oder glatter; Rundlaufabweichung höchstens {}, Schulter {}",
            fine(finish.roughness),
            fine(finish.runout),
            fine(finish.shoulder_runout)
        ),
    ))
}

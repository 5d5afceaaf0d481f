//! Spanish: what the shank goes into, and what that asks of it.

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
        OfReceiver::Form(ShankForm::Plain) => "Liso",
        OfReceiver::Form(ShankForm::Flat) => "Con plano",
        OfReceiver::Form(ShankForm::InclinedFlat) => "Con plano inclinado 2°",
        OfReceiver::Form(ShankForm::Threaded) => "Con rosca en el extremo",
        OfReceiver::Fit(FitKind::Clearance) => "A medida o por debajo: desliza en un agujero H",
        OfReceiver::Fit(FitKind::Transition) => {
            "Más o menos a medida: entra a golpecitos o empujando"
        }
        OfReceiver::Fit(FitKind::Interference) => "Por encima de medida: entra a presión",
        OfReceiver::IsoCollets => "ISO 15488",
        OfReceiver::OtherCollets => "Otras",
        OfReceiver::OwnLimits => "Por sus cifras",
        OfReceiver::Asks => "Qué pide",
        OfReceiver::TakeLimits => "Tomar sus límites",
    }
}

const fn kind_name(kind: ReceiverKind) -> &'static str {
    match kind {
        ReceiverKind::Own => "Otra cosa, o no se sabe",
        ReceiverKind::Collet => "Pinza",
        ReceiverKind::SideLock => "Portaútil de tornillo lateral",
        ReceiverKind::Hydraulic => "Portaútil hidráulico",
        ReceiverKind::PlainBore => "Agujero liso",
        ReceiverKind::Bearing => "Rodamiento de bolas",
        ReceiverKind::Sleeve => "Casquillo de reparación",
    }
}

const fn hole(class: HoleClass) -> &'static str {
    match class {
        HoleClass::H6 => "H6, escariado o rectificado, fino",
        HoleClass::H7 => "H7, escariado o mandrinado",
        HoleClass::H8 => "H8, mandrinado",
        HoleClass::G7 => "G7, siempre por encima de medida",
        HoleClass::K7 => "K7, más o menos a medida",
        HoleClass::N7 => "N7, por debajo de medida",
        HoleClass::P7 => "P7, por debajo de medida, a presión",
    }
}

const fn bearing_load(load: SeatLoad) -> &'static str {
    match load {
        SeatLoad::RotatingLight => "Gira el eje, carga ligera",
        SeatLoad::RotatingNormal => "Gira el eje, carga normal o fuerte",
        SeatLoad::StationaryEasy => "Eje quieto, el aro tiene que deslizar",
        SeatLoad::Stationary => "Eje quieto",
        SeatLoad::AxialOnly => "Carga solo a lo largo del eje",
    }
}

const fn sleeve_duty(duty: SleeveDuty) -> &'static str {
    match duty {
        SleeveDuty::Adhesive => "Pegado con adhesivo retenedor",
        SleeveDuty::LightTorque => "A presión, poco par",
        SleeveDuty::MediumTorque => "A presión, par mediano",
        SleeveDuty::FullTorque => "Calado en caliente, todo el par del mango",
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
        Some(ColletSystem::Iso15488) => format!("Pinza ISO 15488, tamaño {code}"),
        _ => format!("Pinza {code}"),
    }
}

pub(in crate::page::words) fn collet(words: Words, size: ColletSize) -> String {
    let code = collet_code(size);
    size.get().map_or(code.clone(), |collet| {
        let smallest = words.length_bare(collet.smallest_bore);
        format!("{code}: {smallest} a {}", words.length(collet.largest_bore))
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
        ShankForm::Plain => "liso",
        ShankForm::Flat => "con plano",
        ShankForm::InclinedFlat => "con plano inclinado",
        ShankForm::Threaded => "con rosca",
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
            name: "Pared del casquillo acabado",
            says: format!(
                "{}, por lo menos {}",
                words.length(sleeve.wall),
                words.length(sleeve.least_wall)
            ),
            off: sleeve.wall < sleeve.least_wall,
        });
    }
    if asked.source != Source::Geometry && !asks.is_empty() {
        asks.push(plain("Fuente", words.source(asked.source)));
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
        name: "Admite diámetros de",
        says: if outside {
            format!("{says}; el mango ha de ser de {}", words.size(nominal))
        } else if between {
            format!(
                "{says}, por escalones: {} queda entre dos de ellos",
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
        (Some(class), true) => format!(", mejor {class}"),
        (Some(class), false) => format!(", {class}"),
        (None, _) => String::new(),
    };
    let mut parts = Vec::new();
    if off.above > Length::ZERO {
        parts.push(format!("{} por encima", words.size(off.above)));
    }
    if off.below > Length::ZERO {
        parts.push(format!("{} por debajo", words.size(off.below)));
    }
    let yours = if parts.is_empty() {
        "los tuyos quedan dentro".to_owned()
    } else {
        format!("los tuyos llegan {}", parts.join(" y "))
    };
    Some(Ask {
        name: "Límites del diámetro",
        says: format!("{says}{class}; {yours}"),
        off: !parts.is_empty(),
    })
}

/// The limits of its hole: those of a sleeve have to be made, the others are there.
fn bored(words: Words, job: &Job, hole: Range<Length>) -> Ask {
    let name = match job.wanted.receiver {
        Receiver::Sleeve { .. } => "Mandrinar el casquillo a",
        _ => "Su agujero",
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
        format!("{} a {} de juego", size(fit.high), size(fit.low))
    } else if fit.low >= Length::ZERO {
        format!(
            "el mango tiene de {} a {} de apriete",
            size(fit.low),
            size(fit.high)
        )
    } else {
        format!(
            "de {} de juego a {} de apriete",
            size(fit.low),
            size(fit.high)
        )
    };
    plain("Ajuste", says)
}

fn lengths(words: Words, job: &Job, plan: &Plan, asked: &Asked) -> Vec<Ask> {
    let mut asks = Vec::new();
    let typed = job.wanted.least_grip.as_ref().map(Entered::value);
    if let Some(grip) = &plan.grip {
        let least = typed.or(asked.least_grip);
        let gripped = words.length(grip.value);
        asks.push(Ask {
            name: "Sujeta",
            says: match least {
                Some(least) => format!("{gripped}; necesita {}", words.length(least)),
                None => gripped,
            },
            off: least.is_some_and(|least| grip.value < least),
        });
    }
    if let Some(standard) = asked.shank_length {
        let length = job.wanted.length.value();
        asks.push(Ask {
            name: "Longitud del mango normalizado",
            says: if length < standard {
                let short = words.length(standard - length);
                format!("{}; el tuyo es {short} más corto", words.length(standard))
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
            name: "Mayor radio de acuerdo que libra su arista",
            says: format!(
                "{}; el tuyo es {}",
                words.size_at_most(largest),
                words.typed(job.wanted.shoulder_radius.entry())
            ),
            off: fillet > largest,
        });
    }
    if let Some(least) = asked.least_shoulder {
        let height = (job.part.head_diameter.value() - job.wanted.diameter.value()) / 2.0;
        asks.push(Ask {
            name: "Altura del resalte",
            says: format!(
                "{} por lo menos; la tuya es {}",
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
            "inclinado 2°, más hondo en el extremo, acaba a {} de él",
            length(runs_out)
        ));
        if let Some(at) = flat.middle {
            parts.push(format!("su altura se mide a {} del extremo", length(at)));
        }
    } else {
        parts.extend(flat.length.map(|it| format!("{} de largo", length(it))));
        parts.extend(
            flat.middle
                .map(|it| format!("su centro a {} del extremo", length(it))),
        );
    }
    parts.extend(
        flat.height
            .map(|it| format!("{} de él al lado opuesto", length(it))),
    );
    parts.extend(
        flat.second
            .map(|it| format!("otro igual, {} más cerca del extremo", length(it))),
    );
    plain("Plano que hay que fresar", parts.join("; "))
}

/// What a bearing asks of its seat.
fn finish(words: Words, job: &Job, asked: &Asked) -> Option<Ask> {
    if !matches!(job.wanted.receiver, Receiver::Bearing { .. }) {
        return None;
    }
    let finish = seat_finish(asked.class?, job.wanted.diameter.value())?;
    let fine = |length| words.fine(length);
    Some(plain(
        "Acabado del asiento",
        format!(
            "Ra {} o más fino; salto de {} como mucho, y el del resalte {}",
            fine(finish.roughness),
            fine(finish.runout),
            fine(finish.shoulder_runout)
        ),
    ))
}

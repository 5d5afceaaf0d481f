//! Spanish: what is said to the owner of a part, in plain words.

use skimwright::job::{CutKind, Field, HoleKind, Job, OwnerSays, Receiver, TurnedKind};
use skimwright::offer::{Goes, HowMuch, Price, Risk};
use skimwright::plan::Plan;
use skimwright::quantity::{Entered, Time, show};

use super::receiver;
use crate::page::words::{OfOwner, Words};

pub(super) const fn text(text: OfOwner) -> &'static str {
    match text {
        OfOwner::Lead => {
            "Esto es lo que se le haría a tu pieza. Solo hay una, y lo que se corta no se puede volver a poner: léelo con \
             calma y responde abajo. No se corta nada antes de que estés de acuerdo."
        }
        OfOwner::Print => "Imprimir esta página",
        OfOwner::BeforeTitle => "Tu pieza tal como está ahora",
        OfOwner::AfterTitle => "Tu pieza después",
        OfOwner::NoDrawing => "No se puede dibujar: faltan medidas. Pregunta antes de aceptar.",
        OfOwner::Broken => {
            "Donde las líneas se interrumpen se omite un tramo largo y liso para que se vea lo demás."
        }
        OfOwner::Key => {
            "Las líneas gruesas son lo que queda; lo gris es lo que se quita. Bajo la línea del medio la pieza se ve \
             cortada por dentro."
        }
        OfOwner::Ruler => {
            "Esta línea mide 50 mm si la impresión es fiel. Si no, imprime otra vez al 100 % y sin «ajustar a la página»."
        }
        OfOwner::FitsTitle => "Dónde tiene que encajar",
        OfOwner::GoesTitle => "Lo que se va para siempre",
        OfOwner::GoesLead => "Nada de esto se puede volver a poner.",
        OfOwner::StaysTitle => "Lo que queda",
        OfOwner::StrengthTitle => "Cuánto aguanta después",
        OfOwner::StrengthNote => {
            "Calculado en el sitio más débil del mango, antes y después, solo con las medidas. Aquí no se conocen \
             defectos, golpes ni tratamiento térmico."
        }
        OfOwner::NoStrength => {
            "No se pudo calcular cuánto aguanta después. Pregunta antes de aceptar."
        }
        OfOwner::RisksTitle => "Lo que hay que saber antes de aceptar",
        OfOwner::NoRisks => {
            "Las cifras no muestran nada en contra. Eso no es una promesa: grietas ocultas, un mango torcido o una medida \
             equivocada solo se ven al trabajar."
        }
        OfOwner::Stopped => "Tal como está aquí, no se puede hacer. Pide otra oferta.",
        OfOwner::CostTitle => "Tiempo y coste",
        OfOwner::TimeName => "Tiempo en la máquina",
        OfOwner::PriceName => "Coste",
        OfOwner::NoTime => "no se dice",
        OfOwner::NoPrice => "no se dice: pregúntalo antes de aceptar",
        OfOwner::CostNote => {
            "Una estimación del trabajo en sí. Si es el precio que pagas, solo lo puede decir el taller."
        }
        OfOwner::RatesTitle => "Con qué se calcula el coste",
        OfOwner::ShopTitle => "Con qué se hace",
        OfOwner::Lathe => "Torno",
        OfOwner::Tool => "Herramienta",
        OfOwner::Held => "Sujeta en",
        OfOwner::Instruments => "Medido con",
        OfOwner::Estimates => {
            "Todas las cifras de aquí son estimaciones a partir de las medidas que se dieron."
        }
        OfOwner::AnswerTitle => "Tu respuesta",
        OfOwner::AnswerLead => {
            "Tu respuesta vale para exactamente lo que se ve aquí. Si el trabajo cambia después, se te pregunta otra vez."
        }
        OfOwner::Says(OwnerSays::Agree) => "De acuerdo: hazlo así",
        OfOwner::Says(OwnerSays::AgreeWithChange) => "De acuerdo, con un cambio",
        OfOwner::Says(OwnerSays::Decline) => "No: no lo hagas",
        OfOwner::Says(OwnerSays::Ask) => "Antes, una pregunta",
        OfOwner::WordsName(Some(OwnerSays::AgreeWithChange)) => "Qué hay que cambiar",
        OfOwner::WordsName(Some(OwnerSays::Ask)) => "Tu pregunta",
        OfOwner::WordsName(_) => "Con tus palabras, si quieres",
        OfOwner::Name => "Tu nombre, si quieres",
        OfOwner::NameHint => "Solo lo ve quien recibe tu respuesta.",
        OfOwner::Unsaid => "Elige arriba una de las cuatro respuestas; después la puedes enviar.",
        OfOwner::WordsFirst => {
            "Escribe qué quieres cambiar o qué preguntas; después lo puedes enviar."
        }
        OfOwner::GoesBack => {
            "Así vuelve tu respuesta: se hace un enlace, y tú se lo envías a quien te envió esta página. Esta página no \
             envía nada por su cuenta, y nadie más ve lo que escribes."
        }
        OfOwner::Send => "Enviar respuesta",
        OfOwner::Copy => "Copiar respuesta",
        OfOwner::Mail => "Por correo",
        OfOwner::MailSubject => "Respuesta sobre la pieza",
        OfOwner::LinkName => "La respuesta como enlace",
        OfOwner::Sent => "Entregada. Si no llegó al taller, envíala otra vez: cuenta una sola vez.",
        OfOwner::Copied => "Copiada. Pégala en un mensaje a quien te envió esta página.",
        OfOwner::Failed => {
            "Este navegador no deja compartir ni copiar. Aquí está tu respuesta, para copiarla a mano:"
        }
        OfOwner::BadTitle => "Este enlace no se puede abrir",
        OfOwner::BadLead => {
            "Llegó cortado o cambiado: en los mensajes, los enlaces largos pierden a menudo el final. Pide que te lo envíen \
             otra vez, mejor solo, en un mensaje aparte."
        }
        OfOwner::Bad => {
            "Es de una versión más nueva de esta página. Recarga la página e inténtalo otra vez."
        }
    }
}

pub(in crate::page::words) fn goes(words: Words, goes: &Goes) -> String {
    let much = |name: &str, much: HowMuch| match much {
        HowMuch::All => format!("{name}: del todo"),
        HowMuch::Some => format!("{name}: en parte; lo que queda es más pequeño"),
    };
    match goes {
        Goes::CutOff { length, mass } => format!(
            "El extremo del mango: se cortan {}, que pesan {}",
            words.length(*length),
            words.units().mass(*mass)
        ),
        Goes::FacedOff(length) => format!(
            "El extremo del mango: se tornean {} de su cara",
            words.length(*length)
        ),
        Goes::Chips { mass, more: true } => {
            format!("Otros {} se hacen viruta", words.units().mass(*mass))
        }
        Goes::Chips { mass, more: false } => {
            format!("{} se hacen viruta", words.units().mass(*mass))
        }
        Goes::Turned(kind, how) => much(turned(*kind), *how),
        Goes::Cut(kind, how) => much(cut(*kind), *how),
        Goes::Hole(kind, how) => much(hole(*kind), *how),
    }
}

const fn turned(kind: TurnedKind) -> &'static str {
    match kind {
        TurnedKind::Cylinder => "Un tramo redondo y liso",
        TurnedKind::Taper | TurnedKind::RatioTaper | TurnedKind::AngleTaper => "Un cono",
        TurnedKind::StandardTaper => "El cono normalizado, así que ya no encaja donde estaba",
        TurnedKind::Groove => "Una ranura",
        TurnedKind::Thread => "Una rosca, así que ahí ya no se enrosca nada",
        TurnedKind::Relief => "Un rebaje",
    }
}

const fn cut(kind: CutKind) -> &'static str {
    match kind {
        CutKind::Flat => "Un plano, donde lo sujetaba un tornillo",
        CutKind::Keyway | CutKind::WoodruffKeyway => {
            "Un chavetero, así que ahí ya no arrastra una chaveta"
        }
        CutKind::CrossHole => "Un agujero a través del mango",
        CutKind::Tang => "La lengüeta del extremo",
    }
}

const fn hole(kind: HoleKind) -> &'static str {
    match kind {
        HoleKind::Tapped => "El agujero roscado del extremo",
        HoleKind::CentreHole => "El agujero de centrado del extremo, con el que se torneó",
        _ => "El agujero del extremo",
    }
}

pub(in crate::page::words) fn stays(words: Words, job: &Job, plan: &Plan) -> Vec<String> {
    let mut said = vec!["La cabeza no se toca.".to_owned()];
    let size = |field| job.entry(field).map(|entry| words.units().entry(entry));
    if let (Some(cut), Some(diameter)) = (&plan.cut_off, size(Field::WantedDiameter)) {
        let long = words.length(cut.shank_finished.value);
        said.push(match &plan.shape.received {
            Some(received) => format!(
                "El mango, que medía {} de largo, queda con ⌀{diameter} y {long} de largo.",
                words.length(received.shank_length)
            ),
            None => format!("El mango queda con ⌀{diameter} y {long} de largo."),
        });
    }
    if let Some(masses) = &plan.masses {
        said.push(format!(
            "La pieza entera pesa ahora {} y después {}.",
            words.units().mass(masses.before.value),
            words.units().mass(masses.after.value)
        ));
    }
    said
}

pub(in crate::page::words) fn fits_into(receiver: &Receiver) -> String {
    match receiver {
        Receiver::Own { .. } => {
            "No se dijo en qué entra, solo su medida. Comprueba que es la medida que necesitas."
                .to_owned()
        }
        Receiver::Collet { .. } => format!(
            "Una pinza, que la agarra en redondo: {}.",
            receiver::name(receiver)
        ),
        Receiver::SideLock { .. } => format!(
            "Un portaútil que la aprieta con un tornillo de lado: {}.",
            receiver::name(receiver)
        ),
        Receiver::Hydraulic { .. } => {
            "Un portaútil hidráulico, que la agarra en redondo.".to_owned()
        }
        Receiver::PlainBore { .. } => "Un agujero redondo y liso.".to_owned(),
        Receiver::Bearing { .. } => "El aro interior de un rodamiento de bolas.".to_owned(),
        Receiver::Sleeve { .. } => {
            "Un casquillo de reparación, que se cala en el mango y se tornea con él.".to_owned()
        }
    }
}

pub(in crate::page::words) fn strength_kept(plan: &Plan) -> Vec<String> {
    let Some(kept) = &plan.kept else {
        return Vec::new();
    };
    let share = |value: f64| show::share(value);
    vec![
        format!(
            "Queda cerca del {} de la resistencia a doblarse.",
            share(kept.bending.value)
        ),
        format!(
            "Queda cerca del {} de la resistencia a torcerse.",
            share(kept.torsion.value)
        ),
        format!(
            "Queda cerca del {} de la rigidez: con la misma carga de lado se dobla unas {} veces lo de antes.",
            share(kept.stiffness.value),
            show::trimmed(kept.bends_further().unwrap_or(0.0), 1)
        ),
    ]
}

pub(in crate::page::words) const fn risk(risk: Risk) -> [&'static str; 2] {
    match risk {
        Risk::FiguresDisagree => [
            "Las medidas de la pieza no están completas o no cuadran.",
            "Lo que se ve aquí puede estar mal. Pregunta antes de aceptar.",
        ],
        Risk::TooLittleMetal => [
            "Hay demasiado poco metal para la medida que se quiere.",
            "Así, la pieza se estropearía.",
        ],
        Risk::BreaksOut => [
            "Un agujero de dentro se abriría por el costado o en otro agujero.",
            "La pieza se estropearía, o tendría fugas.",
        ],
        Risk::TooWeak => [
            "Es demasiado débil para la carga que se dijo.",
            "Se doblaría o se rompería con el uso.",
        ],
        Risk::DoesNotFit => [
            "Tiene otra medida que la que admite su sitio, o queda sujeta muy corta.",
            "Podría soltarse con el uso.",
        ],
        Risk::MayNotFit => [
            "Quizá no entre, o no tanto como debe.",
            "Haz que la prueben en su sitio antes de llevártela.",
        ],
        Risk::ShortShank => [
            "Queda más corta que la norma de aquello donde entra.",
            "Se sujeta en menos longitud de lo habitual.",
        ],
        Risk::SleeveWeak => [
            "El casquillo de reparación es fino, podría ceder o resbalar.",
            "Puede soltarse con la carga.",
        ],
        Risk::TracesStay => [
            "Sobra poco metal.",
            "En algunos sitios pueden quedar huellas de la superficie vieja.",
        ],
        Risk::ThinWall => [
            "La pared alrededor de un agujero queda fina.",
            "Ahí puede ceder antes que en otro sitio.",
        ],
        Risk::ThreadLeft => [
            "Una rosca vieja queda en parte o se corta.",
            "Debilita ahí la pieza, y lo que queda de la rosca quizá no aguante.",
        ],
        Risk::HoleStays => [
            "Queda un agujero a través del mango.",
            "Ahí el mango es más débil.",
        ],
        Risk::HardnessGoes => [
            "La capa dura de la pieza se quita.",
            "La superficie queda más blanda y se gasta antes.",
        ],
        Risk::HardnessUnknown => [
            "No se sabe hasta qué hondura llega la capa dura.",
            "La superficie puede quedar más blanda y gastarse antes.",
        ],
        Risk::LittleToSpare => [
            "Con la carga que se dijo queda poca reserva.",
            "Un golpe o una carga mayor podría romperla.",
        ],
        Risk::SharpCorner => [
            "La esquina donde el mango llega a la cabeza es viva.",
            "En las esquinas vivas empiezan las grietas. Un pequeño radio ahí ayudaría: pídelo.",
        ],
        Risk::CentreInDoubt => [
            "Un centro nuevo en el extremo no sale del todo como se quiere.",
            "Más adelante cuesta más volver a tornearla o rectificarla centrada.",
        ],
    }
}

pub(in crate::page::words) fn time_offered([low, likely, high]: &[Entered<Time>; 3]) -> String {
    range([low.value(), likely.value(), high.value()].map(show::time))
}

pub(in crate::page::words) fn price_offered(words: Words, price: &Price) -> String {
    let [low, likely, high] = &price.range;
    range([low, likely, high].map(|sum| words.money_in(sum.value(), &price.currency)))
}

fn range([low, likely, high]: [String; 3]) -> String {
    if low == high {
        low
    } else {
        format!("de {low} a {high}, lo más probable unos {likely}")
    }
}

pub(in crate::page::words) fn printed_at((paper, part): (u32, u32)) -> String {
    if paper == part {
        "Dibujada a tamaño real, 1 : 1: pon la pieza encima.".to_owned()
    } else {
        format!("Demasiado grande para el papel a tamaño real: dibujada a {paper} : {part}.")
    }
}

pub(in crate::page::words) fn answered_before(says: OwnerSays, when: &str, sent: bool) -> String {
    let said = match says {
        OwnerSays::Agree => "Dijiste que sí",
        OwnerSays::AgreeWithChange => "Dijiste que sí, con un cambio",
        OwnerSays::Decline => "Dijiste que no",
        OwnerSays::Ask => "Hiciste una pregunta",
    };
    if sent {
        format!("{said} ({when}). Puedes cambiar tu respuesta y enviarla otra vez: vale la última.")
    } else {
        format!("{said} ({when}), pero la respuesta aún no se envió desde aquí.")
    }
}

pub(in crate::page::words) fn characters_left(words: Words, left: usize) -> String {
    words.count(left, "carácter libre", "caracteres libres")
}

//! Spanish: links that are given away, and the owner's answers to them.

use skimwright::job::{Moment, OwnerSays};
use skimwright::link::LinkError;
use skimwright::offer::{Agreement, Fit};

use crate::page::sharing::{AnswerTold, Handed, NoLink, ShareTo};
use crate::page::words::about_sharing::{Holds, OfAnswer, SAFE_LINK};
use crate::page::words::{Moment as Calendar, OfSharing, Words};

pub(super) const fn text(text: OfSharing) -> &'static str {
    match text {
        OfSharing::Title => "Compartir",
        OfSharing::ToWhom => "¿Para quién?",
        OfSharing::To(ShareTo::Colleague) => "Un compañero",
        OfSharing::To(ShareTo::Owner) => "El dueño de la pieza",
        OfSharing::To(ShareTo::HandBack) => "Quien recibe la pieza",
        OfSharing::ToHint(ShareTo::HandBack) => {
            "El informe: qué se midió y se hizo, y con qué. Nada en él se puede cambiar."
        }
        OfSharing::ToHint(ShareTo::Colleague) => "El trabajo entero, para verlo y seguir con él.",
        OfSharing::ToHint(ShareTo::Owner) => {
            "Una página en palabras sencillas: qué se hace, qué se pierde, tiempo y coste. El dueño responde con su propio \
             enlace."
        }
        OfSharing::ShowsToo => "Enseñar también al dueño",
        OfSharing::ShowsRates => "Tus tarifas",
        OfSharing::ShowsMachine => holds(Holds::Machine),
        OfSharing::Holds(this) => holds(this),
        OfSharing::InIt => "En el enlace",
        OfSharing::NotInIt => "No en el enlace",
        OfSharing::Link => "El enlace",
        OfSharing::Share => "Compartir enlace",
        OfSharing::Copy => "Copiar enlace",
        OfSharing::Qr => "Ver código QR",
        OfSharing::QrHide => "Ocultar código QR",
        OfSharing::QrName => "Código QR del enlace",
        OfSharing::QrTooLong => {
            "El enlace es demasiado largo para un código QR. Compártelo o cópialo."
        }
        OfSharing::QrDense => "Código fino: enséñalo grande, con la cámara quieta y cerca.",
        OfSharing::Handed(Handed::Shared) => "Entregado.",
        OfSharing::Handed(Handed::Copied) => "Enlace copiado. Pégalo en un mensaje.",
        OfSharing::Handed(Handed::Failed) => {
            "Este navegador no deja compartir ni copiar. Aquí está el enlace, para copiarlo a mano:"
        }
        OfSharing::NoLink(NoLink::OfferTooLong) => {
            "Lo que se enseña al dueño es demasiado largo para un enlace. Quita tramos o agujeros que no importen, o acorta nombres."
        }
        OfSharing::NoLink(NoLink::RecordFull) => {
            "El registro del torno está lleno: no cabría una respuesta. Duplica este trabajo y ofrece la copia."
        }
        OfSharing::NoLink(NoLink::NotOnesOwn) => {
            "Este trabajo es de otra persona. Guárdalo primero como tuyo para ofrecerlo."
        }
        OfSharing::OwnPlanStops => {
            "Tu propio plan se detiene. El dueño no sabe de tu torno ni de tu herramienta: mira qué lo detiene antes de ofrecer."
        }
        OfSharing::NoLink(NoLink::TooLong) => {
            "Con su registro es demasiado largo para un enlace. Guárdalo como archivo: lleva lo mismo."
        }
        OfSharing::WithoutRecord => {
            "El registro del torno es demasiado largo para un enlace y se queda fuera. En un archivo cabe el trabajo entero."
        }
        OfSharing::SaveFile => "Guardar archivo",
        OfSharing::AnswerTitle => "¿Llegó una respuesta?",
        OfSharing::AnswerHint => {
            "Abre su enlace, o pégalo aquí. Las palabras de alrededor no estorban."
        }
        OfSharing::AnswerField => "La respuesta del dueño",
        OfSharing::AnswerTake => "Incorporar respuesta",
        OfSharing::Told(told) => answer_told(told),
        OfSharing::Offered => "Enseñado al dueño",
        OfSharing::Answered(OwnerSays::Agree) => "El dueño está de acuerdo",
        OfSharing::Answered(OwnerSays::AgreeWithChange) => "El dueño está de acuerdo con un cambio",
        OfSharing::Answered(OwnerSays::Decline) => "El dueño no quiere",
        OfSharing::Answered(OwnerSays::Ask) => "El dueño pregunta algo",
        OfSharing::Answer(piece) => answer(piece),
        OfSharing::StandsLabel => "El dueño",
        OfSharing::HisWords => "En palabras del dueño",
        OfSharing::Shown => "Ver lo ofrecido",
        OfSharing::ShownTitle => "Lo que vio el dueño",
        OfSharing::ShownLead => "A esta versión se refiere la respuesta. Aquí no se puede cambiar.",
        OfSharing::ShownUnanswered => {
            "Esto es lo ofrecido. Todavía no llegó respuesta. Aquí no se puede cambiar."
        }
        OfSharing::OfferAgain => "Ofrecer de nuevo",
    }
}

/// What a link holds, or does not.
const fn holds(holds: Holds) -> &'static str {
    match holds {
        Holds::Name => "El nombre del trabajo",
        Holds::Part => "La pieza, y lo que se quiere de ella",
        Holds::Shop => {
            "Tu torno, herramienta, tiempos, tarifas e instrumentos, y lo aprendido de ellos"
        }
        Holds::Held => "Cómo se sujeta la pieza",
        Holds::Record => "El registro del torno, con tiempos",
        Holds::Answers => "Las respuestas del dueño, con su nombre y sus palabras",
        Holds::Measuring => "Tus instrumentos, la temperatura del taller y quién midió",
        Holds::CutOff => "Cómo se tronza el extremo",
        Holds::Cost => "Tiempo y coste, de menos a más",
        Holds::Rates => "Tus tarifas",
        Holds::Machine => "Torno, herramienta, instrumentos y sujeción",
        Holds::Turning => "Torno, herramienta y sujeción",
        Holds::TimesAndRecord => "Tus tiempos de cada paso, y el registro del torno",
        Holds::RecordTooLong => "El registro del torno, que es demasiado largo",
        Holds::OtherJobs => "Tus otros trabajos",
    }
}

/// A piece of what is said of an answer.
const fn answer(piece: OfAnswer) -> &'static str {
    match piece {
        OfAnswer::What(OwnerSays::Agree) => "Visto bueno",
        OfAnswer::What(OwnerSays::AgreeWithChange) => "Visto bueno con un cambio",
        OfAnswer::What(OwnerSays::Decline) => "Negativa",
        OfAnswer::What(OwnerSays::Ask) => "Una pregunta",
        OfAnswer::By => "de",
        OfAnswer::ToWhatWasShown => "a lo enseñado el",
        OfAnswer::InWords(OwnerSays::AgreeWithChange) => "cambio pedido",
        OfAnswer::InWords(OwnerSays::Ask) => "pregunta",
        OfAnswer::InWords(OwnerSays::Agree | OwnerSays::Decline) => "en sus palabras",
        OfAnswer::ChangedSince => "El trabajo cambió después.",
        OfAnswer::CannotTell => {
            "De este informe no se desprende si el trabajo sigue siendo el que se mostró."
        }
        OfAnswer::NewerOffer => "Después se hizo otra oferta.",
    }
}

const fn answer_told(told: AnswerTold) -> &'static str {
    match told {
        AnswerTold::Taken(Fit::Current) => {
            "Respuesta incorporada: se refiere al trabajo tal como está ahora."
        }
        AnswerTold::Taken(Fit::Changed) => {
            "Respuesta incorporada. El trabajo cambió desde que se ofreció: ofrécelo de nuevo."
        }
        AnswerTold::Taken(_) => {
            "Respuesta incorporada. Se refiere a una oferta anterior: después se hizo otra."
        }
        AnswerTold::Same => "Esta respuesta ya estaba incorporada.",
        AnswerTold::Earlier => "Ya se incorporó una respuesta posterior. Esta se deja aparte.",
        AnswerTold::Foreign => "Esta respuesta no es de ningún trabajo de este aparato.",
        AnswerTold::InTrash => {
            "Esta respuesta es de un trabajo de la papelera. Recupéralo allí y abre la respuesta otra vez."
        }
        AnswerTold::Full => "En el registro del trabajo no cabe más. La respuesta no se incorporó.",
        AnswerTold::NotAnAnswer => {
            "Esto no es una respuesta, sino otro enlace. Ábrelo como enlace."
        }
        AnswerTold::Bad(error) => match error {
            LinkError::Empty => "Aún no hay nada que incorporar.",
            LinkError::TooLong => {
                "Es mucho más largo que cualquier respuesta. Pega solo la respuesta."
            }
            LinkError::Newer { .. } => {
                "La respuesta es de una versión más nueva. Recarga esta página e inténtalo otra vez."
            }
            LinkError::Several => "Ahí hay más de un enlace. Pega solo la respuesta.",
            LinkError::Damaged | LinkError::BeyondLimits => {
                "La respuesta llegó cortada o cambiada. Pide que te la envíen otra vez."
            }
            LinkError::NotALink | LinkError::TooLarge => "En este texto no hay ninguna respuesta.",
        },
    }
}

pub(in crate::page::words) fn entries(words: Words, count: usize) -> String {
    words.count(count, "entrada", "entradas")
}

pub(in crate::page::words) fn link_length(words: Words, characters: usize) -> String {
    let long = words.count(characters, "carácter", "caracteres");
    if SAFE_LINK < characters {
        format!(
            "El enlace tiene {long}. Algunos chats cortan enlaces tan largos: envíalo por correo, o solo."
        )
    } else {
        format!("El enlace tiene {long}.")
    }
}

pub(in crate::page::words) fn stands(
    words: Words,
    agreement: &Agreement<'_>,
    when: &dyn Fn(Moment) -> Calendar,
) -> Option<String> {
    let (offered_at, _) = agreement.offered?;
    let day = |at| words.moment(when(at));
    let Some((at, answered)) = agreement.answered else {
        let offered = day(offered_at);
        return Some(if agreement.unchanged {
            format!("Enseñado al dueño ({offered}). Aún no se ha incorporado ninguna respuesta.")
        } else {
            format!(
                "Enseñado al dueño ({offered}), pero el trabajo cambió después: enséñalo otra vez."
            )
        });
    };
    let said = words.answer_of(answered, &day(at));
    Some(match (agreement.fit, answered.says) {
        (Some(Fit::Current), OwnerSays::AgreeWithChange) => {
            format!("{said}. Cambia el trabajo como quiere y ofrécelo de nuevo.")
        }
        (Some(Fit::Current), _) => format!("{said}."),
        (Some(Fit::Changed), _) => {
            format!("{said}, pero el trabajo cambió después: ofrécelo de nuevo.")
        }
        _ => format!("{said}, a una oferta anterior: otra más nueva espera respuesta."),
    })
}

//! German: links that are given away, and the owner's answers to them.

use skimwright::job::{Moment, OwnerSays};
use skimwright::link::LinkError;
use skimwright::offer::{Agreement, Fit};

use crate::page::sharing::{AnswerTold, Handed, NoLink, ShareTo};
use crate::page::words::about_sharing::{Holds, OfAnswer, SAFE_LINK};
use crate::page::words::{Moment as Calendar, OfSharing, Words};

pub(super) const fn text(text: OfSharing) -> &'static str {
    match text {
        OfSharing::Title => "Teilen",
        OfSharing::ToWhom => "Für wen?",
        OfSharing::To(ShareTo::Colleague) => "Für einen Kollegen",
        OfSharing::To(ShareTo::Owner) => "Für den Besitzer",
        OfSharing::To(ShareTo::HandBack) => "Für den Empfänger des Teils",
        OfSharing::ToHint(ShareTo::HandBack) => {
            "Der Bericht: was gemessen und getan wurde, und womit. Darin lässt sich nichts ändern."
        }
        OfSharing::ToHint(ShareTo::Colleague) => "Der ganze Auftrag, zum Ansehen und Weitermachen.",
        OfSharing::ToHint(ShareTo::Owner) => {
            "Eine Seite in einfachen Worten: was getan wird, was verloren geht, Zeit und Kosten. Der Besitzer antwortet mit \
             einem eigenen Link."
        }
        OfSharing::ShowsToo => "Dem Besitzer auch zeigen",
        OfSharing::ShowsRates => "Die eigenen Sätze",
        OfSharing::ShowsMachine => holds(Holds::Machine),
        OfSharing::Holds(this) => holds(this),
        OfSharing::InIt => "Im Link",
        OfSharing::NotInIt => "Nicht im Link",
        OfSharing::Link => "Der Link",
        OfSharing::Share => "Link teilen",
        OfSharing::Copy => "Link kopieren",
        OfSharing::Qr => "QR-Code zeigen",
        OfSharing::QrHide => "QR-Code verbergen",
        OfSharing::QrName => "QR-Code des Links",
        OfSharing::QrTooLong => {
            "Der Link ist zu lang für einen QR-Code. Stattdessen teilen oder kopieren."
        }
        OfSharing::QrDense => "Ein feiner Code: groß zeigen, Kamera ruhig und nah halten.",
        OfSharing::Handed(Handed::Shared) => "Weitergegeben.",
        OfSharing::Handed(Handed::Copied) => {
            "Der Link ist kopiert. Jetzt in eine Nachricht einfügen."
        }
        OfSharing::Handed(Handed::Failed) => {
            "Dieser Browser lässt weder Teilen noch Kopieren zu. Hier der Link, von Hand zu kopieren:"
        }
        OfSharing::NoLink(NoLink::OfferTooLong) => {
            "Was dem Besitzer gezeigt wird, ist zu lang für einen Link. Abschnitte oder Bohrungen weglassen, auf die es nicht ankommt, oder Namen kürzen."
        }
        OfSharing::NoLink(NoLink::RecordFull) => {
            "Das Protokoll ist voll: Eine Antwort fände keinen Platz mehr. Diesen Auftrag kopieren und die Kopie anbieten."
        }
        OfSharing::NoLink(NoLink::NotOnesOwn) => {
            "Dieser Auftrag kam von jemand anderem. Erst als eigenen Auftrag behalten, dann anbieten."
        }
        OfSharing::OwnPlanStops => {
            "Die eigene Planung hält an. Von Drehmaschine und Werkzeug erfährt der Besitzer nichts: Vor dem Anbieten nachsehen, woran es liegt."
        }
        OfSharing::NoLink(NoLink::TooLong) => {
            "Mit seinem Protokoll ist er zu lang für einen Link. Als Datei sichern: Sie enthält dasselbe."
        }
        OfSharing::WithoutRecord => {
            "Das Protokoll an der Maschine ist zu lang für einen Link und bleibt draußen. Eine Datei fasst den ganzen Auftrag."
        }
        OfSharing::SaveFile => "Als Datei sichern",
        OfSharing::AnswerTitle => "Kam eine Antwort?",
        OfSharing::AnswerHint => {
            "Ihren Link öffnen, oder hier einfügen. Worte drum herum schaden nicht."
        }
        OfSharing::AnswerField => "Antwort des Besitzers",
        OfSharing::AnswerTake => "Antwort übernehmen",
        OfSharing::Told(told) => answer_told(told),
        OfSharing::Offered => "Dem Besitzer gezeigt",
        OfSharing::Answered(OwnerSays::Agree) => "Der Besitzer ist einverstanden",
        OfSharing::Answered(OwnerSays::AgreeWithChange) => {
            "Der Besitzer ist mit einer Änderung einverstanden"
        }
        OfSharing::Answered(OwnerSays::Decline) => "Der Besitzer lehnt ab",
        OfSharing::Answered(OwnerSays::Ask) => "Der Besitzer fragt",
        OfSharing::Answer(piece) => answer(piece),
        OfSharing::StandsLabel => "Der Besitzer",
        OfSharing::HisWords => "In seinen Worten",
        OfSharing::Shown => "Angebot ansehen",
        OfSharing::ShownTitle => "Was dem Besitzer gezeigt wurde",
        OfSharing::ShownLead => {
            "Auf diese Fassung bezieht sich die Antwort. Sie lässt sich hier nicht ändern."
        }
        OfSharing::ShownUnanswered => {
            "Das wurde angeboten. Eine Antwort darauf kam noch nicht. Es lässt sich hier nicht ändern."
        }
        OfSharing::OfferAgain => "Neu anbieten",
    }
}

/// A piece of what is said of an answer.
const fn answer(piece: OfAnswer) -> &'static str {
    match piece {
        OfAnswer::What(OwnerSays::Agree) => "Zustimmung",
        OfAnswer::What(OwnerSays::AgreeWithChange) => "Zustimmung mit Änderung",
        OfAnswer::What(OwnerSays::Decline) => "Ablehnung",
        OfAnswer::What(OwnerSays::Ask) => "Eine Frage",
        OfAnswer::By => "von",
        OfAnswer::ToWhatWasShown => "zum Stand, gezeigt am",
        OfAnswer::InWords(OwnerSays::AgreeWithChange) => "gewünschte Änderung",
        OfAnswer::InWords(OwnerSays::Ask) => "Frage",
        OfAnswer::InWords(OwnerSays::Agree | OwnerSays::Decline) => "in seinen Worten",
        OfAnswer::ChangedSince => "Der Auftrag wurde seither geändert.",
        OfAnswer::CannotTell => {
            "Ob der Auftrag noch ist, was gezeigt wurde, lässt sich diesem Bericht nicht entnehmen."
        }
        OfAnswer::NewerOffer => "Seither gab es ein neueres Angebot.",
    }
}

const fn answer_told(told: AnswerTold) -> &'static str {
    match told {
        AnswerTold::Taken(Fit::Current) => {
            "Die Antwort ist übernommen: Sie gilt dem Auftrag, wie er jetzt ist."
        }
        AnswerTold::Taken(Fit::Changed) => {
            "Die Antwort ist übernommen. Der Auftrag wurde seit dem Angebot geändert: neu anbieten."
        }
        AnswerTold::Taken(_) => {
            "Die Antwort ist übernommen. Sie gilt einem älteren Angebot: Seitdem gab es ein neueres."
        }
        AnswerTold::Same => "Diese Antwort war schon übernommen.",
        AnswerTold::Earlier => "Eine spätere Antwort war schon übernommen. Diese bleibt beiseite.",
        AnswerTold::Foreign => "Diese Antwort gehört zu keinem Auftrag auf diesem Gerät.",
        AnswerTold::InTrash => {
            "Diese Antwort gehört zu einem Auftrag im Papierkorb. Ihn zurückholen und die Antwort noch einmal öffnen."
        }
        AnswerTold::Full => {
            "Das Protokoll des Auftrags ist voll. Die Antwort wurde nicht übernommen."
        }
        AnswerTold::NotAnAnswer => {
            "Das ist keine Antwort, sondern ein anderer Link. Als Link öffnen."
        }
        AnswerTold::Bad(error) => match error {
            LinkError::Empty => "Noch ist nichts zu übernehmen.",
            LinkError::TooLong => "Das ist viel länger als jede Antwort. Nur die Antwort einfügen.",
            LinkError::Newer { .. } => {
                "Die Antwort stammt von einer neueren Fassung. Diese Seite neu laden und noch einmal versuchen."
            }
            LinkError::Several => "Darin steht mehr als ein Link. Nur die Antwort einfügen.",
            LinkError::Damaged | LinkError::BeyondLimits => {
                "Die Antwort wurde unterwegs gekürzt oder verändert. Noch einmal senden lassen."
            }
            LinkError::NotALink | LinkError::TooLarge => "In diesem Text steht keine Antwort.",
        },
    }
}

/// What a link holds, or does not.
const fn holds(holds: Holds) -> &'static str {
    match holds {
        Holds::Name => "Der Name des Auftrags",
        Holds::Part => "Das Teil, und was daraus werden soll",
        Holds::Shop => {
            "Maschine, Werkzeug, Zeiten, Sätze und Messmittel, und was über sie gelernt wurde"
        }
        Holds::Held => "Die Einspannung",
        Holds::Record => "Das Protokoll an der Maschine, mit Zeiten",
        Holds::Answers => "Antworten des Besitzers, mit Namen und Worten",
        Holds::Measuring => "Messmittel, Raumtemperatur, und wer gemessen hat",
        Holds::CutOff => "Wie das Ende abgetrennt wird",
        Holds::Cost => "Zeit und Kosten, von klein bis groß",
        Holds::Rates => "Die eigenen Sätze",
        Holds::Machine => "Maschine, Werkzeug, Messmittel und Einspannung",
        Holds::Turning => "Maschine, Werkzeug und Einspannung",
        Holds::TimesAndRecord => "Die Zeiten jedes Schritts, und das Protokoll an der Maschine",
        Holds::RecordTooLong => "Das Protokoll an der Maschine: Es ist zu lang",
        Holds::OtherJobs => "Die anderen Aufträge",
    }
}

pub(in crate::page::words) fn entries(words: Words, count: usize) -> String {
    words.count(count, "Eintrag", "Einträge")
}

pub(in crate::page::words) fn link_length(words: Words, characters: usize) -> String {
    // A character is as many in German.
    let long = words.count(characters, "Zeichen", "Zeichen");
    if SAFE_LINK < characters {
        format!(
            "Der Link hat {long}. Manche Chats kürzen so lange Links: per Mail senden, oder allein."
        )
    } else {
        format!("Der Link hat {long}.")
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
            format!("Dem Besitzer gezeigt ({offered}). Noch keine Antwort übernommen.")
        } else {
            format!("Dem Besitzer gezeigt ({offered}), aber seither geändert: noch einmal zeigen.")
        });
    };
    let said = words.answer_of(answered, &day(at));
    Some(match (agreement.fit, answered.says) {
        (Some(Fit::Current), OwnerSays::AgreeWithChange) => {
            format!("{said}. Den Auftrag wie gewünscht ändern und neu anbieten.")
        }
        (Some(Fit::Current), _) => format!("{said}."),
        (Some(Fit::Changed), _) => {
            format!("{said}, aber der Auftrag wurde seither geändert: neu anbieten.")
        }
        _ => format!("{said}, zu einem älteren Angebot: Ein neueres wartet auf Antwort."),
    })
}

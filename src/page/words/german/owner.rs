//! German: what is said to the owner of a part, in plain words.

use skimwright::job::{CutKind, Field, HoleKind, Job, OwnerSays, Receiver, TurnedKind};
use skimwright::offer::{Goes, HowMuch, Price, Risk};
use skimwright::plan::Plan;
use skimwright::quantity::{Entered, Time, show};

use super::receiver;
use crate::page::words::{OfOwner, Words};

pub(super) const fn text(text: OfOwner) -> &'static str {
    match text {
        OfOwner::Lead => {
            "Das würde mit dem Teil geschehen. Es gibt nur eines, und was abgetrennt ist, kommt nicht wieder dran: in Ruhe \
             durchlesen, dann unten antworten. Vor der Zustimmung wird nichts geschnitten."
        }
        OfOwner::Print => "Diese Seite drucken",
        OfOwner::BeforeTitle => "Das Teil, wie es jetzt ist",
        OfOwner::AfterTitle => "Das Teil danach",
        OfOwner::NoDrawing => {
            "Es lässt sich nicht zeichnen: Maße fehlen. Vor der Zustimmung nachfragen."
        }
        OfOwner::Broken => {
            "Wo die Linien unterbrochen sind, ist ein langes glattes Stück ausgelassen, damit der Rest zu sehen ist."
        }
        OfOwner::Key => {
            "Dicke Linien sind, was bleibt; grau ist, was wegkommt. Unter der Mittellinie ist das Teil aufgeschnitten \
             gezeigt."
        }
        OfOwner::Ruler => {
            "Diese Linie ist 50 mm lang, wenn der Druck stimmt. Wenn nicht, noch einmal mit 100 % drucken, ohne „an Seite \
             anpassen“."
        }
        OfOwner::FitsTitle => "Wo es passen soll",
        OfOwner::GoesTitle => "Was für immer weg ist",
        OfOwner::GoesLead => "Nichts davon kommt wieder dran.",
        OfOwner::StaysTitle => "Was bleibt",
        OfOwner::StrengthTitle => "Wie fest es danach ist",
        OfOwner::StrengthNote => {
            "An der schwächsten Stelle des Schafts gerechnet, vorher und nachher, allein aus den Maßen. Fehler im Metall, \
             Stöße und Wärmebehandlung sind hier nicht bekannt."
        }
        OfOwner::NoStrength => {
            "Wie fest es danach ist, ließ sich nicht rechnen. Vor der Zustimmung nachfragen."
        }
        OfOwner::RisksTitle => "Vor der Zustimmung zu wissen",
        OfOwner::NoRisks => {
            "Die Zahlen zeigen nichts, was dagegen spricht. Das ist kein Versprechen: verborgene Risse, ein krummer Schaft \
             oder ein falsches Maß zeigen sich erst bei der Arbeit."
        }
        OfOwner::Stopped => "So, wie es hier steht, geht es nicht. Um ein anderes Angebot bitten.",
        OfOwner::CostTitle => "Zeit und Kosten",
        OfOwner::TimeName => "Zeit an der Maschine",
        OfOwner::PriceName => "Kosten",
        OfOwner::NoTime => "nicht gesagt",
        OfOwner::NoPrice => "nicht gesagt: vor der Zustimmung danach fragen",
        OfOwner::CostNote => {
            "Eine Schätzung der Arbeit selbst. Ob das auch der Preis ist, der zu zahlen ist, kann nur die Werkstatt sagen."
        }
        OfOwner::RatesTitle => "Womit die Kosten gerechnet sind",
        OfOwner::ShopTitle => "Womit gearbeitet wird",
        OfOwner::Lathe => "Maschine",
        OfOwner::Tool => "Werkzeug",
        OfOwner::Held => "Gespannt",
        OfOwner::Instruments => "Gemessen mit",
        OfOwner::Estimates => "Alle Zahlen hier sind Schätzungen aus den eingetragenen Maßen.",
        OfOwner::AnswerTitle => "Die Antwort",
        OfOwner::AnswerLead => {
            "Die Antwort gilt genau dem, was hier steht. Ändert sich die Arbeit später, wird neu gefragt."
        }
        OfOwner::Says(OwnerSays::Agree) => "Einverstanden: so machen",
        OfOwner::Says(OwnerSays::AgreeWithChange) => "Einverstanden, mit einer Änderung",
        OfOwner::Says(OwnerSays::Decline) => "Abgelehnt: nicht machen",
        OfOwner::Says(OwnerSays::Ask) => "Zuerst eine Frage",
        OfOwner::WordsName(Some(OwnerSays::AgreeWithChange)) => "Was zu ändern ist",
        OfOwner::WordsName(Some(OwnerSays::Ask)) => "Die Frage",
        OfOwner::WordsName(_) => "In eigenen Worten, wenn gewünscht",
        OfOwner::Name => "Name, wenn gewünscht",
        OfOwner::NameHint => "Ihn sieht nur, wer die Antwort bekommt.",
        OfOwner::Unsaid => "Oben eine der vier Antworten wählen; dann lässt sie sich senden.",
        OfOwner::WordsFirst => {
            "Aufschreiben, was zu ändern oder was die Frage ist; dann lässt sich die Antwort senden."
        }
        OfOwner::GoesBack => {
            "So kommt die Antwort zurück: Sie wird ein Link, und der geht an den Absender dieser Seite. Diese Seite sendet \
             nichts von selbst, und niemand sonst sieht, was hier geschrieben wird."
        }
        OfOwner::Send => "Antwort senden",
        OfOwner::Copy => "Antwort kopieren",
        OfOwner::Mail => "Per Mail antworten",
        OfOwner::MailSubject => "Antwort zum Teil",
        OfOwner::LinkName => "Die Antwort als Link",
        OfOwner::Sent => {
            "Weitergegeben. Kam die Antwort in der Werkstatt nicht an, noch einmal senden: Sie zählt nur einmal."
        }
        OfOwner::Copied => {
            "Kopiert. Jetzt in eine Nachricht an den Absender dieser Seite einfügen."
        }
        OfOwner::Failed => {
            "Dieser Browser lässt weder Teilen noch Kopieren zu. Hier die Antwort, von Hand zu kopieren:"
        }
        OfOwner::BadTitle => "Dieser Link lässt sich nicht öffnen",
        OfOwner::BadLead => {
            "Er wurde unterwegs gekürzt oder verändert: In Nachrichten verlieren lange Links oft ihr Ende. Noch einmal \
             senden lassen, am besten allein in einer eigenen Nachricht."
        }
        OfOwner::Bad => {
            "Er stammt von einer neueren Fassung dieser Seite. Die Seite neu laden und noch einmal versuchen."
        }
    }
}

pub(in crate::page::words) fn goes(words: Words, goes: &Goes) -> String {
    let much = |name: &str, much: HowMuch| match much {
        HowMuch::All => format!("{name}: ganz"),
        HowMuch::Some => format!("{name}: zum Teil; was bleibt, ist kleiner"),
    };
    match goes {
        Goes::CutOff { length, mass } => format!(
            "Das Ende des Schafts: {} davon, {} schwer, werden abgetrennt",
            words.length(*length),
            words.units().mass(*mass)
        ),
        Goes::FacedOff(length) => format!(
            "Das Ende des Schafts: {} werden von der Stirnfläche abgedreht",
            words.length(*length)
        ),
        Goes::Chips { mass, more: true } => {
            format!("Weitere {} werden zu Spänen", words.units().mass(*mass))
        }
        Goes::Chips { mass, more: false } => {
            format!("{} werden zu Spänen", words.units().mass(*mass))
        }
        Goes::Turned(kind, how) => much(turned(*kind), *how),
        Goes::Cut(kind, how) => much(cut(*kind), *how),
        Goes::Hole(kind, how) => much(hole(*kind), *how),
    }
}

const fn turned(kind: TurnedKind) -> &'static str {
    match kind {
        TurnedKind::Cylinder => "Ein glattes rundes Stück",
        TurnedKind::Taper | TurnedKind::RatioTaper | TurnedKind::AngleTaper => "Ein Kegel",
        TurnedKind::StandardTaper => "Der Normkegel, sodass es nicht mehr passt, wo es herkam",
        TurnedKind::Groove => "Ein Einstich",
        TurnedKind::Thread => "Ein Gewinde, sodass sich dort nichts mehr aufschrauben lässt",
        TurnedKind::Relief => "Ein Freistich",
    }
}

const fn cut(kind: CutKind) -> &'static str {
    match kind {
        CutKind::Flat => "Eine Abflachung, an der eine Schraube hielt",
        CutKind::Keyway | CutKind::WoodruffKeyway => {
            "Eine Nut, sodass dort keine Passfeder mehr antreibt"
        }
        CutKind::CrossHole => "Ein Loch quer durch den Schaft",
        CutKind::Tang => "Der Lappen am Ende",
    }
}

const fn hole(kind: HoleKind) -> &'static str {
    match kind {
        HoleKind::Tapped => "Das Gewindeloch im Ende",
        HoleKind::CentreHole => "Die Zentrierbohrung im Ende, auf der es gedreht wurde",
        _ => "Das Loch im Ende",
    }
}

pub(in crate::page::words) fn stays(words: Words, job: &Job, plan: &Plan) -> Vec<String> {
    let mut said = vec!["Der Kopf bleibt unberührt.".to_owned()];
    let size = |field| job.entry(field).map(|entry| words.units().entry(entry));
    if let (Some(cut), Some(diameter)) = (&plan.cut_off, size(Field::WantedDiameter)) {
        let long = words.length(cut.shank_finished.value);
        said.push(match &plan.shape.received {
            Some(received) => format!(
                "Der Schaft, vorher {} lang, ist dann ⌀{diameter} und {long} lang.",
                words.length(received.shank_length)
            ),
            None => format!("Der Schaft ist dann ⌀{diameter} und {long} lang."),
        });
    }
    if let Some(masses) = &plan.masses {
        said.push(format!(
            "Das ganze Teil wiegt jetzt {} und danach {}.",
            words.units().mass(masses.before.value),
            words.units().mass(masses.after.value)
        ));
    }
    said
}

pub(in crate::page::words) fn fits_into(receiver: &Receiver) -> String {
    match receiver {
        Receiver::Own { .. } => {
            "Worin es sitzen soll, wurde nicht gesagt, nur das Maß. Prüfen, ob es das richtige Maß ist."
                .to_owned()
        }
        Receiver::Collet { .. } => format!(
            "Eine Spannzange, die rundum fasst: {}.",
            receiver::name(receiver)
        ),
        Receiver::SideLock { .. } => format!(
            "Ein Halter, der mit einer Schraube von der Seite klemmt: {}.",
            receiver::name(receiver)
        ),
        Receiver::Hydraulic { .. } => "Ein Hydrodehnfutter, das rundum fasst.".to_owned(),
        Receiver::PlainBore { .. } => "Ein glattes rundes Loch.".to_owned(),
        Receiver::Bearing { .. } => "Der Innenring eines Kugellagers.".to_owned(),
        Receiver::Sleeve { .. } => {
            "Eine Reparaturhülse, die auf den Schaft kommt und mit ihm überdreht wird.".to_owned()
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
            "Etwa {} der Festigkeit gegen Biegen bleiben.",
            share(kept.bending.value)
        ),
        format!(
            "Etwa {} der Festigkeit gegen Verdrehen bleiben.",
            share(kept.torsion.value)
        ),
        format!(
            "Etwa {} der Steifigkeit bleiben: Unter gleicher Last von der Seite biegt es sich etwa {}-mal so weit.",
            share(kept.stiffness.value),
            show::trimmed(kept.bends_further().unwrap_or(0.0), 1)
        ),
    ]
}

pub(in crate::page::words) const fn risk(risk: Risk) -> [&'static str; 2] {
    match risk {
        Risk::FiguresDisagree => [
            "Die Maße des Teils sind nicht vollständig oder widersprechen sich.",
            "Was hier steht, kann falsch sein. Vor der Zustimmung nachfragen.",
        ],
        Risk::TooLittleMetal => [
            "Für das gewünschte Maß ist zu wenig Metall da.",
            "So würde das Teil verdorben.",
        ],
        Risk::BreaksOut => [
            "Ein Loch im Innern würde zur Seite oder in ein anderes Loch durchbrechen.",
            "Das Teil würde verdorben oder undicht.",
        ],
        Risk::TooWeak => [
            "Es ist zu schwach für die genannte Last.",
            "Es würde sich im Gebrauch verbiegen oder brechen.",
        ],
        Risk::DoesNotFit => [
            "Es hat ein anderes Maß, als sein Platz verlangt, oder sitzt zu kurz darin.",
            "Es könnte sich im Gebrauch lösen.",
        ],
        Risk::MayNotFit => [
            "Es geht vielleicht nicht hinein, oder nicht so weit, wie es soll.",
            "Vor dem Abholen an seinem Platz probieren lassen.",
        ],
        Risk::ShortShank => [
            "Es wird kürzer als die Norm für das, wo es hineinkommt.",
            "Es ist auf weniger Länge gefasst als üblich.",
        ],
        Risk::SleeveWeak => [
            "Die Reparaturhülse ist dünn, könnte nachgeben oder rutschen.",
            "Sie kann sich unter Last lösen.",
        ],
        Risk::TracesStay => [
            "Es ist wenig Metall übrig.",
            "Stellenweise bleiben vielleicht Spuren der alten Oberfläche.",
        ],
        Risk::ThinWall => [
            "Die Wand um ein Loch wird dünn.",
            "Dort gibt es vielleicht eher nach als anderswo.",
        ],
        Risk::ThreadLeft => [
            "Ein altes Gewinde bleibt zum Teil oder wird angeschnitten.",
            "Es schwächt das Teil dort, und was vom Gewinde bleibt, hält vielleicht nicht.",
        ],
        Risk::HoleStays => [
            "Ein Loch quer durch den Schaft bleibt darin.",
            "Dort ist der Schaft schwächer.",
        ],
        Risk::HardnessGoes => [
            "Die harte Schicht des Teils wird abgedreht.",
            "Die Oberfläche ist danach weicher und nutzt sich eher ab.",
        ],
        Risk::HardnessUnknown => [
            "Wie tief die harte Schicht reicht, ist nicht bekannt.",
            "Die Oberfläche ist danach vielleicht weicher und nutzt sich eher ab.",
        ],
        Risk::LittleToSpare => [
            "Unter der genannten Last ist wenig Reserve.",
            "Ein Stoß oder eine größere Last könnte es zerbrechen.",
        ],
        Risk::SharpCorner => [
            "Die Ecke, an der der Schaft auf den Kopf trifft, ist scharf.",
            "An scharfen Ecken beginnen Risse. Ein kleiner Radius dort hülfe: danach fragen.",
        ],
        Risk::CentreInDoubt => [
            "Eine neue Zentrierung im Ende gelingt nicht ganz wie gewünscht.",
            "Später ist es schwerer, es wieder rundlaufend zu drehen oder zu schleifen.",
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
        format!("{low} bis {high}, am ehesten etwa {likely}")
    }
}

pub(in crate::page::words) fn printed_at((paper, part): (u32, u32)) -> String {
    if paper == part {
        "In wahrer Größe gezeichnet, 1 : 1: das Teil darauflegen.".to_owned()
    } else {
        format!("In wahrer Größe zu groß fürs Papier: im Maßstab {paper} : {part} gezeichnet.")
    }
}

pub(in crate::page::words) fn answered_before(says: OwnerSays, when: &str, sent: bool) -> String {
    let said = match says {
        OwnerSays::Agree => "Schon zugestimmt",
        OwnerSays::AgreeWithChange => "Schon mit einer Änderung zugestimmt",
        OwnerSays::Decline => "Schon abgelehnt",
        OwnerSays::Ask => "Schon eine Frage gestellt",
    };
    if sent {
        format!(
            "{said} ({when}). Die Antwort lässt sich ändern und noch einmal senden: Die neueste zählt."
        )
    } else {
        format!("{said} ({when}), aber von hier noch nicht gesendet.")
    }
}

pub(in crate::page::words) fn characters_left(words: Words, left: usize) -> String {
    words.count(left, "Zeichen übrig", "Zeichen übrig")
}

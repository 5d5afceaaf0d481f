//! English: what is said to the owner of a part, in plain words.

use skimwright::job::{CutKind, Field, HoleKind, Job, OwnerSays, Receiver, TurnedKind};
use skimwright::offer::{Goes, HowMuch, Price, Risk};
use skimwright::plan::Plan;
use skimwright::quantity::{Entered, Time, show};

use super::about_owner::OfOwner;
use super::{Words, english_receiver};

pub(super) const fn text(text: OfOwner) -> &'static str {
    match text {
        OfOwner::Lead => {
            "This is what would be done to your part. There is only one, and what is cut away cannot be put back: read it \
             through, then answer below. Nothing is cut before you agree."
        }
        OfOwner::Print => "Print this page",
        OfOwner::BeforeTitle => "Your part as it is now",
        OfOwner::AfterTitle => "Your part afterwards",
        OfOwner::NoDrawing => "It cannot be drawn: figures are missing. Ask before you agree.",
        OfOwner::Broken => {
            "Where the lines are broken, a long plain piece is left out so that the rest can be seen."
        }
        OfOwner::Key => {
            "Thick lines are what is left, grey is what comes off. Below the middle line the part is shown cut open."
        }
        OfOwner::Ruler => {
            "This line is 50 mm long if the print is true. If it is not, print again at 100 % and not “fit to page”."
        }
        OfOwner::FitsTitle => "What it is to fit",
        OfOwner::GoesTitle => "What is gone for good",
        OfOwner::GoesLead => "None of this can be put back.",
        OfOwner::StaysTitle => "What stays",
        OfOwner::StrengthTitle => "How strong it is afterwards",
        OfOwner::StrengthNote => {
            "Reckoned at the weakest place of the shank, before and after, from the sizes alone. Flaws, shocks and heat \
             treatment are not known here."
        }
        OfOwner::NoStrength => {
            "How strong it is afterwards could not be reckoned. Ask before you agree."
        }
        OfOwner::RisksTitle => "What to know before you agree",
        OfOwner::NoRisks => {
            "The figures show nothing that speaks against it. That is no promise: hidden cracks, a bent shank or a wrong \
             measure show only at the work."
        }
        OfOwner::Stopped => "As it stands here, it cannot be done. Ask for another offer.",
        OfOwner::CostTitle => "Time and cost",
        OfOwner::TimeName => "Time on the machine",
        OfOwner::PriceName => "Cost",
        OfOwner::NoTime => "not said",
        OfOwner::NoPrice => "not said: ask for it before you agree",
        OfOwner::CostNote => {
            "An estimate of the work itself. Whether it is the price that you pay, only the shop can say."
        }
        OfOwner::RatesTitle => "What the cost is reckoned with",
        OfOwner::ShopTitle => "What it is done with",
        OfOwner::Lathe => "Lathe",
        OfOwner::Tool => "Tool",
        OfOwner::Held => "Held by",
        OfOwner::Instruments => "Measured with",
        OfOwner::Estimates => "All figures here are estimates from the sizes that were entered.",
        OfOwner::AnswerTitle => "Your answer",
        OfOwner::AnswerLead => {
            "Your answer is to exactly what is shown here. If the work is changed later, you are asked again."
        }
        OfOwner::Says(OwnerSays::Agree) => "I agree: do it so",
        OfOwner::Says(OwnerSays::AgreeWithChange) => "I agree, with a change",
        OfOwner::Says(OwnerSays::Decline) => "I decline: do not do it",
        OfOwner::Says(OwnerSays::Ask) => "I have a question first",
        OfOwner::WordsName(Some(OwnerSays::AgreeWithChange)) => "What is to be changed",
        OfOwner::WordsName(Some(OwnerSays::Ask)) => "Your question",
        OfOwner::WordsName(_) => "In your own words, if you like",
        OfOwner::Name => "Your name, if you like",
        OfOwner::NameHint => "Only who gets your answer sees it.",
        OfOwner::Unsaid => "Choose one of the four answers above; then you can send it.",
        OfOwner::WordsFirst => {
            "Write down what you want changed or what you ask; then you can send it."
        }
        OfOwner::GoesBack => {
            "This is how your answer gets back: it becomes a link, and you send that link to whoever sent you this page. \
             This page sends nothing by itself, and nobody else sees what you write."
        }
        OfOwner::Send => "Send the answer",
        OfOwner::Copy => "Copy the answer",
        OfOwner::Mail => "Answer by mail",
        OfOwner::MailSubject => "Answer about the part",
        OfOwner::LinkName => "The answer as a link",
        OfOwner::Sent => "Handed on. If it did not reach the shop, send it again: it counts once.",
        OfOwner::Copied => "Copied. Now paste it into a message to whoever sent you this page.",
        OfOwner::Failed => {
            "This browser lets no page share or copy. Here is your answer, to copy by hand:"
        }
        OfOwner::BadTitle => "This link cannot be opened",
        OfOwner::BadLead => {
            "It was cut or changed on its way: in a message, long links often lose their end. Ask for it to be sent again, \
             best by itself in a message of its own."
        }
        OfOwner::Bad => {
            "It comes from a newer version of this page. Load the page anew and try again."
        }
    }
}

pub(super) fn goes(words: Words, goes: &Goes) -> String {
    let much = |name: &str, much: HowMuch| match much {
        HowMuch::All => format!("{name}: all of it"),
        HowMuch::Some => format!("{name}: some of it; what is left is smaller"),
    };
    match goes {
        Goes::CutOff { length, mass } => format!(
            "The end of the shank: {}, which weighs {}, is cut off",
            words.length(*length),
            words.units().mass(*mass)
        ),
        Goes::FacedOff(length) => {
            format!(
                "The end of the shank: {} is turned off its face",
                words.length(*length)
            )
        }
        Goes::Chips { mass, more: true } => {
            format!("{} more become chips", words.units().mass(*mass))
        }
        Goes::Chips { mass, more: false } => format!("{} become chips", words.units().mass(*mass)),
        Goes::Turned(kind, how) => much(turned(*kind), *how),
        Goes::Cut(kind, how) => much(cut(*kind), *how),
        Goes::Hole(kind, how) => much(hole(*kind), *how),
    }
}

const fn turned(kind: TurnedKind) -> &'static str {
    match kind {
        TurnedKind::Cylinder => "A plain round piece",
        TurnedKind::Taper | TurnedKind::RatioTaper | TurnedKind::AngleTaper => "A taper",
        TurnedKind::StandardTaper => {
            "The standard taper, so that it no longer fits where it came from"
        }
        TurnedKind::Groove => "A groove",
        TurnedKind::Thread => "A thread, so that nothing screws on there any more",
        TurnedKind::Relief => "A recess",
    }
}

const fn cut(kind: CutKind) -> &'static str {
    match kind {
        CutKind::Flat => "A flat, where a screw held it",
        CutKind::Keyway | CutKind::WoodruffKeyway => {
            "A keyway, so that a key no longer drives it there"
        }
        CutKind::CrossHole => "A hole across the shank",
        CutKind::Tang => "The tang at the end",
    }
}

const fn hole(kind: HoleKind) -> &'static str {
    match kind {
        HoleKind::Tapped => "The threaded hole in the end",
        HoleKind::CentreHole => "The centre hole in the end, which it was turned on",
        _ => "The hole in the end",
    }
}

pub(super) fn stays(words: Words, job: &Job, plan: &Plan) -> Vec<String> {
    let mut said = vec!["The head is not touched.".to_owned()];
    let size = |field| job.entry(field).map(|entry| words.units().entry(entry));
    if let (Some(cut), Some(diameter)) = (&plan.cut_off, size(Field::WantedDiameter)) {
        let long = words.length(cut.shank_finished.value);
        said.push(match &plan.shape.received {
            Some(received) => format!(
                "The shank, which was {} long, is then ⌀{diameter} and {long} long.",
                words.length(received.shank_length)
            ),
            None => format!("The shank is then ⌀{diameter} and {long} long."),
        });
    }
    if let Some(masses) = &plan.masses {
        said.push(format!(
            "The whole part weighs {} now and {} afterwards.",
            words.units().mass(masses.before.value),
            words.units().mass(masses.after.value)
        ));
    }
    said
}

pub(super) fn fits_into(receiver: &Receiver) -> String {
    match receiver {
        Receiver::Own { .. } => "What it goes into was not said; only its size was. Check that this is the size you need.".to_owned(),
        Receiver::Collet { .. } => format!("A collet, which grips it all round: {}.", english_receiver::name(receiver)),
        Receiver::SideLock { .. } => {
            format!("A holder that clamps it with a screw from the side: {}.", english_receiver::name(receiver))
        }
        Receiver::Hydraulic { .. } => "A hydraulic chuck, which grips it all round.".to_owned(),
        Receiver::PlainBore { .. } => "A plain round hole.".to_owned(),
        Receiver::Bearing { .. } => "The inner ring of a ball bearing.".to_owned(),
        Receiver::Sleeve { .. } => {
            "A repair sleeve, which is put on the shank and turned with it.".to_owned()
        }
    }
}

pub(super) fn strength_kept(plan: &Plan) -> Vec<String> {
    let Some(kept) = &plan.kept else {
        return Vec::new();
    };
    let share = |value: f64| show::share(value);
    vec![
        format!(
            "About {} of the strength against bending is kept.",
            share(kept.bending.value)
        ),
        format!(
            "About {} of the strength against twisting is kept.",
            share(kept.torsion.value)
        ),
        format!(
            "About {} of the stiffness is kept: under the same side load it bends about {} times as far.",
            share(kept.stiffness.value),
            show::trimmed(kept.bends_further().unwrap_or(0.0), 1)
        ),
    ]
}

pub(super) const fn risk(risk: Risk) -> [&'static str; 2] {
    match risk {
        Risk::FiguresDisagree => [
            "The figures of the part are not complete or do not agree.",
            "What is shown here may be wrong. Ask before you agree.",
        ],
        Risk::TooLittleMetal => [
            "There is too little metal for the size that is wanted.",
            "As it stands, the part would be spoilt.",
        ],
        Risk::BreaksOut => [
            "A hole inside would open through the side or into another hole.",
            "The part would be spoilt, or leak.",
        ],
        Risk::TooWeak => [
            "It is too weak for the load that was named.",
            "It would bend or break in use.",
        ],
        Risk::DoesNotFit => [
            "It is of another size than what it goes into takes, or is held too short.",
            "It could come loose in use.",
        ],
        Risk::MayNotFit => [
            "It may not go in, or not as far as it should.",
            "Have it tried in its place before you take it back.",
        ],
        Risk::ShortShank => [
            "It becomes shorter than the standard for what it goes into.",
            "It is held on less length than usual.",
        ],
        Risk::SleeveWeak => [
            "The repair sleeve is thin, could give way, or could slip.",
            "It may come loose under load.",
        ],
        Risk::TracesStay => [
            "There is little metal to spare.",
            "Traces of the old surface may stay in places.",
        ],
        Risk::ThinWall => [
            "The wall round a hole becomes thin.",
            "It may give way there sooner than elsewhere.",
        ],
        Risk::ThreadLeft => [
            "Some of an old thread is left or cut through.",
            "It weakens the part there, and what is left of the thread may not hold.",
        ],
        Risk::HoleStays => [
            "A hole across the shank stays in it.",
            "The shank is weaker there.",
        ],
        Risk::HardnessGoes => [
            "The hard skin of the part is turned away.",
            "The surface is softer afterwards and wears sooner.",
        ],
        Risk::HardnessUnknown => [
            "How deep the hard skin goes is not known.",
            "The surface may be softer afterwards and wear sooner.",
        ],
        Risk::LittleToSpare => [
            "Under the load that was named there is little to spare.",
            "A knock or a heavier load could break it.",
        ],
        Risk::SharpCorner => [
            "The corner where the shank meets the head is sharp.",
            "Cracks begin at sharp corners. A small radius there would help: ask for it.",
        ],
        Risk::CentreInDoubt => [
            "A new centre in the end cannot be made quite as wanted.",
            "It is harder to turn or grind it true again later.",
        ],
    }
}

pub(super) fn time_offered([low, likely, high]: &[Entered<Time>; 3]) -> String {
    range([low.value(), likely.value(), high.value()].map(show::time))
}

pub(super) fn price_offered(words: Words, price: &Price) -> String {
    let [low, likely, high] = &price.range;
    range([low, likely, high].map(|sum| words.money_in(sum.value(), &price.currency)))
}

fn range([low, likely, high]: [String; 3]) -> String {
    if low == high {
        low
    } else {
        format!("{low} to {high}, most likely about {likely}")
    }
}

pub(super) fn printed_at((paper, part): (u32, u32)) -> String {
    if paper == part {
        "Drawn at true size, 1 : 1: lay the part on it.".to_owned()
    } else {
        format!("Too large for the paper at true size: drawn at {paper} : {part}.")
    }
}

pub(super) fn answered_before(says: OwnerSays, when: &str, sent: bool) -> String {
    let said = match says {
        OwnerSays::Agree => "You agreed",
        OwnerSays::AgreeWithChange => "You agreed with a change",
        OwnerSays::Decline => "You declined",
        OwnerSays::Ask => "You asked a question",
    };
    if sent {
        format!("{said} ({when}). You can change your answer and send it again: the newest counts.")
    } else {
        format!("{said} ({when}), but the answer was not sent from here yet.")
    }
}

pub(super) fn characters_left(words: Words, left: usize) -> String {
    words.count(left, "character left", "characters left")
}

//! What an owner answers, and what his address holds.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use skimwright::demo::demo_jobs;
use skimwright::job::{Moment, OwnerSays, Shows};
use skimwright::link::{self, Linked};
use skimwright::offer::Offer;
use skimwright::plan::plan;

use super::state::{OwnerAction, OwnerState, Visit, visit};
use crate::page::sharing::Handed;

const AT: Moment = Moment::unix_seconds(1_790_000_000);
const LATER: Moment = Moment::unix_seconds(1_790_000_600);

fn offer() -> Offer {
    let [job, ..] = demo_jobs();
    Offer::of(&job, &plan(&job), Shows::default())
}

fn after(state: OwnerState, actions: impl IntoIterator<Item = OwnerAction>) -> OwnerState {
    actions.into_iter().fold(state, OwnerState::after)
}

#[test]
fn an_offers_address_is_the_owners_and_every_other_the_shops() {
    let offer = offer();
    let text = link::encode_offer(&offer).unwrap();
    assert_eq!(visit(&text), Visit::Owner(offer.into()));
    let digits = link::in_digits(&text).unwrap();
    assert!(matches!(visit(&digits), Visit::Owner(_)));
    let cut = text.get(..text.len() - 4).unwrap();
    assert!(matches!(visit(cut), Visit::BadLink(_)));
    let [job, ..] = demo_jobs();
    let report = link::encode_handed_back(&job).unwrap();
    let cut = report.get(..report.len() - 4).unwrap();
    assert!(matches!(visit(cut), Visit::BadLink(_)));
    for other in ["", "o", "offer", "u", &link::encode(&job).unwrap(), &report] {
        assert_eq!(visit(other), Visit::Shop, "{other}");
    }
}

#[test]
fn an_answer_is_whole_once_it_is_chosen_and_said() {
    let state = OwnerState::open(&offer(), None);
    assert_eq!(state.link(), None);
    let agreed = after(state.clone(), [OwnerAction::Says(OwnerSays::Agree, AT)]);
    let Linked::Answer(answered, at) = link::open(&agreed.link().unwrap()).unwrap() else {
        panic!("no answer");
    };
    assert_eq!((answered.says, at), (OwnerSays::Agree, AT));
    assert_eq!(Some(answered.to), link::offer_mark(&offer()));

    let asks = after(state, [OwnerAction::Says(OwnerSays::Ask, AT)]);
    assert!(asks.lacks_words() && asks.link().is_none());
    let asks = asks.after(OwnerAction::Words("  Why? ".to_owned(), LATER));
    let Linked::Answer(answered, at) = link::open(&asks.link().unwrap()).unwrap() else {
        panic!("no answer");
    };
    assert_eq!((answered.words.as_str(), at), ("Why?", LATER));
}

#[test]
fn the_same_answer_has_the_same_moment_and_is_remembered() {
    let state = after(
        OwnerState::open(&offer(), None),
        [
            OwnerAction::Says(OwnerSays::Decline, AT),
            OwnerAction::Handed(Handed::Copied),
            OwnerAction::Says(OwnerSays::Decline, LATER),
        ],
    );
    assert_eq!(state.at, AT);
    assert!(state.sent);
    let kept = state.kept().unwrap();
    let again = OwnerState::open(&offer(), Some(&kept));
    assert_eq!(again.before, Some((OwnerSays::Decline, AT, true)));
    assert_eq!(again.link(), state.link());
    let changed = again.after(OwnerAction::By("Ada".to_owned(), LATER));
    assert!(!changed.sent && changed.handed.is_none());
    assert_ne!(changed.link(), state.link());
}

#[test]
fn words_are_kept_before_anything_is_chosen() {
    let state = OwnerState::open(&offer(), None);
    assert_eq!(state.kept(), None);
    let state = state.after(OwnerAction::Words("Mind the hole".to_owned(), AT));
    let again = OwnerState::open(&offer(), Some(&state.kept().unwrap()));
    assert_eq!(again.words, "Mind the hole");
    assert_eq!((again.says, again.before, again.sent), (None, None, false));
    assert_eq!(again.link(), None);
}

#[test]
fn what_was_kept_for_another_offer_or_was_spoilt_is_left_aside() {
    let state = after(
        OwnerState::open(&offer(), None),
        [OwnerAction::Says(OwnerSays::Agree, AT)],
    );
    let kept = state.kept().unwrap();
    let [_, job, ..] = demo_jobs();
    let other = Offer::of(&job, &plan(&job), Shows::default());
    for (offer, kept) in [
        (&other, kept.as_str()),
        (&offer(), "sent"),
        (&offer(), "sent rubbish"),
    ] {
        let opened = OwnerState::open(offer, Some(kept));
        assert_eq!((opened.says, opened.before), (None, None));
    }
}

#[test]
fn words_and_name_are_no_longer_than_a_link_takes() {
    let long = "\u{202e}<b>🛠️\u{200d}ä ".repeat(5000);
    let state = after(
        OwnerState::open(&offer(), None),
        [
            OwnerAction::Says(OwnerSays::Agree, AT),
            OwnerAction::Words(long.clone(), AT),
            OwnerAction::By(long, AT),
        ],
    );
    assert_eq!(state.words.chars().count(), 400);
    assert_eq!(state.by.chars().count(), 40);
    assert!(matches!(
        link::open(&state.link().unwrap()),
        Ok(Linked::Answer(..))
    ));
}

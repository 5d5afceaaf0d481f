//! What is kept of lathes and tools for other jobs.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use skimwright::job::{EdgeField, Field, Gears, MachineField, Rigidity};
use skimwright::link::{Kept, decode_kept, encode_kept};
use skimwright::tables::ToolKind;

use super::edit::{Edit, ShopEdit};
use super::shelf::{Question, Shelf, ShelfAction};
use super::shop_tests::{LATHE_NAME, SPEEDS, after, fresh, listed, named, shop, typed};
use super::state::{Action, Cover, State};
use super::words::Words;

fn with_lathe(name: &str) -> State {
    after(
        listed(),
        [
            typed(SPEEDS, "70 115 200"),
            Action::Leave(SPEEDS),
            named(LATHE_NAME, name),
            Action::Leave(LATHE_NAME),
        ],
    )
}

fn shelf(action: ShelfAction) -> Action {
    Action::Shelf(action)
}

#[test]
fn a_lathe_is_kept_and_taken_into_another_job() {
    let state = with_lathe("Old");
    let kept = state.clone().after(shelf(ShelfAction::Keep(Shelf::Lathes)));
    assert_eq!(kept.shelves.names(Shelf::Lathes), ["Old"]);
    assert_eq!(kept.shelves.changes, 1);
    assert_eq!(kept.job, state.job, "the job is as it was");
    // As after a reload, with another job.
    let text = encode_kept(&kept.shelves.kept).unwrap();
    let other = fresh().after(shelf(ShelfAction::Found(Some(text))));
    assert_eq!(
        other.shelves.changes, 0,
        "what was read need not be written"
    );
    let take = other.shelves.take(Shelf::Lathes, 0).unwrap();
    let taken = after(
        other,
        [
            typed(Field::Machine(MachineField::Power), "x"),
            Action::Edit(take),
        ],
    );
    assert_eq!(taken.job.shop.machine, state.job.shop.machine);
    assert_eq!(
        taken.reading(Field::Machine(MachineField::Power)).wrong,
        None
    );
    assert_eq!(taken.after(Action::Undo).job, fresh().job);
}

#[test]
fn the_same_name_is_asked_about_before_it_is_replaced() {
    let state = with_lathe("Old").after(shelf(ShelfAction::Keep(Shelf::Lathes)));
    // The very same needs no asking and no writing.
    let same = state.clone().after(shelf(ShelfAction::Keep(Shelf::Lathes)));
    assert_eq!((same.cover, same.shelves.changes), (None, 1));
    let changed = after(
        state,
        [
            shop(ShopEdit::Rigidity(Rigidity::Heavy)),
            shelf(ShelfAction::Keep(Shelf::Lathes)),
        ],
    );
    let question = Question::Replace(Shelf::Lathes);
    assert_eq!(changed.cover, Some(Cover::Ask(question)));
    assert_eq!(changed.shelves.changes, 1, "nothing yet");
    let words = Words::new(changed.units, &changed.job);
    assert!(words.question(question, "Old").contains("“Old”"));
    let replaced = changed.after(shelf(ShelfAction::Yes(question)));
    assert_eq!(replaced.cover, None);
    assert_eq!(replaced.shelves.names(Shelf::Lathes), ["Old"]);
    assert!(replaced.shelves.holds(Shelf::Lathes, &replaced.job));
}

#[test]
fn without_a_name_or_room_nothing_is_kept() {
    for name in ["", "   "] {
        let state = with_lathe(name).after(shelf(ShelfAction::Keep(Shelf::Lathes)));
        assert_eq!(state.shelves.changes, 0);
    }
    let mut state = fresh();
    for number in 0..Kept::MOST {
        let name = format!("Lathe {number}");
        state = after(
            state,
            [
                named(LATHE_NAME, &name),
                shelf(ShelfAction::Keep(Shelf::Lathes)),
            ],
        );
    }
    assert_eq!(state.shelves.names(Shelf::Lathes).len(), Kept::MOST);
    let one_more = state.after(named(LATHE_NAME, "One more"));
    assert!(!one_more.shelves.has_room(Shelf::Lathes, &one_more.job));
    let before = one_more.shelves.kept.clone();
    let refused = one_more.after(shelf(ShelfAction::Keep(Shelf::Lathes)));
    assert_eq!(refused.shelves.kept, before);
}

#[test]
fn a_tool_is_kept_with_its_kind_and_removed_after_asking() {
    let state = after(
        fresh(),
        [
            Action::Edit(Edit::Tool(ToolKind::HighSpeedSteel)),
            named(Field::Edge(EdgeField::Name), "Knife"),
            typed(Field::Edge(EdgeField::NoseRadius), "0.2"),
            shelf(ShelfAction::Keep(Shelf::Tools)),
        ],
    );
    let take = state.shelves.take(Shelf::Tools, 0).unwrap();
    let taken = after(state.clone(), [Action::Reset, Action::Edit(take)]);
    assert_eq!(taken.job.shop.tool, ToolKind::HighSpeedSteel);
    assert_eq!(taken.job.shop.edge, state.job.shop.edge);
    let gone = taken.after(shelf(ShelfAction::Yes(Question::Remove(Shelf::Tools, 0))));
    assert_eq!(*gone.shelves.kept, Kept::default());
    let none = gone.after(shelf(ShelfAction::Yes(Question::Remove(Shelf::Tools, 3))));
    assert_eq!(*none.shelves.kept, Kept::default());
}

#[test]
fn what_cannot_be_read_is_left_alone_until_something_is_kept_anew() {
    for text in ["garbage", "Azzzz", "Bnewer", "c"] {
        assert!(decode_kept(text).is_err());
        let state = with_lathe("Old").after(shelf(ShelfAction::Found(Some(text.to_owned()))));
        assert!(state.shelves.unread, "{text}");
        assert_eq!(state.shelves.changes, 0, "{text}");
        let kept = state.after(shelf(ShelfAction::Keep(Shelf::Lathes)));
        assert!(!kept.shelves.unread);
        assert_eq!(kept.shelves.changes, 1);
    }
    let none = fresh().after(shelf(ShelfAction::Found(None)));
    assert!(!none.shelves.unread);
}

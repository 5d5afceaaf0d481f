//! What the part's owner answered, in one line for paper.

use skimwright::offer::{agreement, shown_at};

use crate::page::hooks::clock::calendar;
use crate::page::store::{Store, words};
use crate::page::words::AnswerOnPaper;

/// The newest answer with at most so many characters of its words; `None` where none came.
pub(super) fn answer_line(store: &Store, most: usize) -> Option<String> {
    let agreement = agreement(&store.job, &store.plan);
    let (_, answered) = agreement.answered?;
    let answer = AnswerOnPaper {
        shown: shown_at(&store.job.record, answered.to),
        // What is handed back is without the shop's own, which the offer was reckoned from.
        whole: !store.print.handed_back,
        agreement,
    };
    words(store).answer_in_a_line(&answer, most, calendar)
}

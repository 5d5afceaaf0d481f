//! What the part's owner is shown, what he answers, and what was agreed.

mod agreement;
mod goes;
mod risk;
mod shown;

pub use agreement::{Agreement, Fit, Incoming, agreement, answer_fits, incoming, shown_at};
pub use goes::{Goes, HowMuch, goes};
pub use risk::{Risk, is_stopped, risks};
pub use shown::{Offer, Price, handed_back, on_paper};

//! What the part's owner is shown, what he answers, and what was agreed.

mod agreement;
mod shown;

pub use agreement::{Agreement, Fit, agreement, answer_fits};
pub use shown::{Offer, Price, handed_back};

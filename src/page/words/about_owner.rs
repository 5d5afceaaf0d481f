//! What is said to the owner of a part, who is no machinist.

use skimwright::job::{OwnerSays, Receiver};
use skimwright::offer::{Goes, Price, Risk};
use skimwright::plan::Plan;
use skimwright::quantity::{Entered, Time};

use super::{Moment, Words};
use skimwright::job::Job;

/// A fixed text for the owner of a part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfOwner {
    Lead,
    Print,
    BeforeTitle,
    AfterTitle,
    NoDrawing,
    Broken,
    Key,
    Ruler,
    FitsTitle,
    GoesTitle,
    GoesLead,
    StaysTitle,
    StrengthTitle,
    StrengthNote,
    NoStrength,
    RisksTitle,
    NoRisks,
    Stopped,
    CostTitle,
    TimeName,
    PriceName,
    NoTime,
    NoPrice,
    CostNote,
    RatesTitle,
    ShopTitle,
    Lathe,
    Tool,
    Held,
    Instruments,
    Estimates,
    // The answer
    AnswerTitle,
    AnswerLead,
    Says(OwnerSays),
    WordsName(Option<OwnerSays>),
    Name,
    NameHint,
    Unsaid,
    WordsFirst,
    GoesBack,
    Send,
    Copy,
    Mail,
    MailSubject,
    LinkName,
    Sent,
    Copied,
    Failed,
    // A link that cannot be opened
    BadTitle,
    BadLead,
    Bad,
}

impl Words {
    /// Something that is gone for good.
    pub(crate) fn goes(self, goes: &Goes) -> String {
        said!(self, owner::goes(self, goes))
    }

    /// What stays of the shank.
    pub(crate) fn stays(self, job: &Job, plan: &Plan) -> Vec<String> {
        said!(self, owner::stays(self, job, plan))
    }

    /// What it is to fit.
    pub(crate) fn fits_into(self, receiver: &Receiver) -> String {
        said!(self, owner::fits_into(receiver))
    }

    /// How strong and how stiff it still is.
    pub(crate) fn strength_kept(self, plan: &Plan) -> Vec<String> {
        said!(self, owner::strength_kept(plan))
    }

    /// What can go wrong, and what that means for the owner.
    pub(crate) fn risk(self, risk: Risk) -> [&'static str; 2] {
        said!(self, owner::risk(risk))
    }

    /// From the shortest to the longest time, and the likely one.
    pub(crate) fn time_offered(self, times: &[Entered<Time>; 3]) -> String {
        said!(self, owner::time_offered(times))
    }

    /// From the lowest to the highest cost, and the likely one.
    pub(crate) fn price_offered(self, price: &Price) -> String {
        said!(self, owner::price_offered(self, price))
    }

    /// The scale of a printed drawing.
    pub(crate) fn printed_at(self, scale: (u32, u32)) -> String {
        said!(self, owner::printed_at(scale))
    }

    /// How many characters are left.
    pub(crate) fn characters_left(self, left: usize) -> String {
        said!(self, owner::characters_left(self, left))
    }

    /// What was answered before on this device.
    pub(crate) fn answered_before(self, says: OwnerSays, at: Moment, sent: bool) -> String {
        said!(self, owner::answered_before(says, &self.moment(at), sent))
    }
}

//! What is printed and handed over, and how the files that leave the page are written.

use skimwright::sheet::DecimalMark;

use crate::page::state::State;

/// What is printed and handed over.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct AtPrint {
    /// Whether the job sheet is in the document.
    pub(crate) sheet: bool,
    /// How often printing it was asked for since it is there.
    pub(crate) asked: u32,
    /// The decimal mark that was chosen for tables; `None` is that of the browser.
    pub(crate) mark: Option<DecimalMark>,
    /// Whether what is shown came as a link that hands it back: a report, with nothing to change.
    pub(crate) handed_back: bool,
}

/// What is done about printing and files.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum PrintAction {
    /// The browser is about to print: the job sheet has to be there.
    Ready,
    /// Prints the job sheet.
    Sheet,
    /// Tables are written with this decimal mark.
    Mark(DecimalMark),
}

impl AtPrint {
    /// The job sheet says what is no longer so: it goes.
    pub(crate) fn put_away(&mut self) {
        (self.sheet, self.asked) = (false, 0);
    }
}

impl State {
    pub(in crate::page) fn at_print(&mut self, action: PrintAction) {
        match action {
            PrintAction::Ready => self.print.sheet = true,
            PrintAction::Sheet => {
                self.print.sheet = true;
                self.print.asked = self.print.asked.saturating_add(1);
            }
            PrintAction::Mark(mark) => self.print.mark = Some(mark),
        }
    }
}

//! English: what is wrong with a link.

use skimwright::link::LinkError;

pub(super) const fn bad_link(error: LinkError) -> &'static str {
    match error {
        LinkError::Empty | LinkError::NotALink => {
            "The address holds no job of this page. Yours is unchanged."
        }
        LinkError::Newer { .. } => {
            "This link is from a newer version of the page. Load the page anew with a signal, then open the link \
             again. Yours is unchanged."
        }
        LinkError::TooLong | LinkError::BeyondLimits | LinkError::TooLarge => {
            "This link holds more than a job of this page can have. Yours is unchanged."
        }
        LinkError::Damaged => {
            "This link was cut short or changed on its way. Ask for it again, and copy the whole of it. Yours is \
             unchanged."
        }
        LinkError::Several => {
            "There is more than one link here, and they are not the same job. Open one of them. Yours is unchanged."
        }
    }
}

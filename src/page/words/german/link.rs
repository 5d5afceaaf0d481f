//! German: what is wrong with a link.

use skimwright::link::LinkError;

pub(super) const fn bad_link(error: LinkError) -> &'static str {
    match error {
        LinkError::Empty | LinkError::NotALink => {
            "Die Adresse enthält keinen Auftrag dieser Seite. Der eigene ist unverändert."
        }
        LinkError::Newer { .. } => {
            "Dieser Link stammt von einer neueren Fassung der Seite. Die Seite bei Empfang neu laden, dann den Link \
             noch einmal öffnen. Der eigene Auftrag ist unverändert."
        }
        LinkError::TooLong | LinkError::BeyondLimits | LinkError::TooLarge => {
            "Dieser Link enthält mehr, als ein Auftrag dieser Seite haben kann. Der eigene ist unverändert."
        }
        LinkError::Damaged => {
            "Dieser Link wurde unterwegs gekürzt oder verändert. Noch einmal senden lassen und ganz kopieren. Der \
             eigene Auftrag ist unverändert."
        }
        LinkError::Several => {
            "Hier steht mehr als ein Link, und es ist nicht derselbe Auftrag. Einen davon öffnen. Der eigene Auftrag \
             ist unverändert."
        }
    }
}

//! Spanish: what is wrong with a link.

use skimwright::link::LinkError;

pub(super) const fn bad_link(error: LinkError) -> &'static str {
    match error {
        LinkError::Empty | LinkError::NotALink => {
            "La dirección no lleva ningún trabajo de esta página. El tuyo sigue igual."
        }
        LinkError::Newer { .. } => {
            "Este enlace es de una versión más nueva de la página. Recarga la página con cobertura y abre el enlace \
             otra vez. El tuyo sigue igual."
        }
        LinkError::TooLong | LinkError::BeyondLimits | LinkError::TooLarge => {
            "Este enlace lleva más de lo que cabe en un trabajo de esta página. El tuyo sigue igual."
        }
        LinkError::Damaged => {
            "Este enlace llegó cortado o cambiado. Pídelo otra vez y cópialo entero. El tuyo sigue igual."
        }
        LinkError::Several => {
            "Aquí hay más de un enlace, y no son el mismo trabajo. Abre uno de ellos. El tuyo sigue igual."
        }
    }
}

//! Spanish: the jobs that are kept.

use skimwright::job::Progress;

use crate::page::jobs::{Fate, FileTrouble};
use crate::page::state::Saved;
use crate::page::words::about_jobs::Suffix;
use crate::page::words::{OfJobs, Words};

pub(super) const fn text(text: OfJobs) -> &'static str {
    match text {
        OfJobs::Title => "Trabajos",
        OfJobs::New => "Trabajo nuevo",
        OfJobs::Search => "Buscar por nombre",
        OfJobs::None => "Aún no hay trabajos guardados. Lo que escribas se guarda aquí solo.",
        OfJobs::NoneFound => "Ningún trabajo lleva eso en el nombre.",
        OfJobs::Open => "abierto ahora",
        OfJobs::More => "Más",
        OfJobs::Name => "Nombre",
        OfJobs::Duplicate => "Duplicar",
        OfJobs::ToTrash => "A la papelera",
        OfJobs::Restore => "Recuperar",
        OfJobs::Trash => "Papelera",
        OfJobs::EmptyTrash => "Vaciar papelera",
        OfJobs::EmptyQuestion => {
            "¿Borrar para siempre todos los trabajos de la papelera? No se puede deshacer. Los demás se quedan."
        }
        OfJobs::EmptyNo => "Conservarlos",
        OfJobs::Progress(Progress::New) => "nuevo",
        OfJobs::Progress(Progress::Planned) => "planeado",
        OfJobs::Progress(Progress::Cutting) => "en el torno",
        OfJobs::Progress(Progress::Done) => "hecho",
        OfJobs::NotRead => "no se puede leer; queda como está",
        OfJobs::FromNewer => "de una versión más nueva de la página; queda como está",
        OfJobs::Trashed => "En la papelera.",
        OfJobs::Restored => "De vuelta entre tus trabajos.",
        OfJobs::Duplicated => "Duplicado. La copia va primero.",
        OfJobs::UndoTrash => "Deshacer",
        OfJobs::TakenIn => "Qué fue de los trabajos del archivo:",
        OfJobs::SaveFile => "Guardar archivo",
        OfJobs::SaveAll => "Guardar todos",
        OfJobs::OpenFile => "Abrir archivo",
        OfJobs::DropHere => {
            "O suelta aquí un archivo de trabajos. Nada de lo guardado se sobrescribe."
        }
        OfJobs::FileFailed(trouble) => match trouble {
            FileTrouble::NotLoaded => {
                "No se pudo cargar la parte de la página que escribe y lee archivos. Inténtalo otra vez con cobertura."
            }
            FileTrouble::TooLong => {
                "El archivo es más grande que cualquier archivo de trabajos. No se incorporó nada."
            }
            FileTrouble::NotJson => {
                "El archivo está dañado o no lleva trabajos. No se incorporó nada."
            }
            FileTrouble::NotOurs => {
                "El archivo no lleva trabajos de esta página. No se incorporó nada."
            }
            FileTrouble::Newer => {
                "El archivo es de una versión más nueva de la página. Recarga la página y ábrelo otra vez. No se incorporó nada."
            }
            FileTrouble::NotRead => "El archivo no se pudo leer o escribir. No se cambió nada.",
        },
        OfJobs::Lasting => "Este navegador ha prometido no borrar tus trabajos por su cuenta.",
        OfJobs::NotLasting => {
            "Este navegador puede borrar tus trabajos por su cuenta si falta sitio o si no vienes en semanas."
        }
        OfJobs::OneOnly => {
            "Este navegador solo guarda el trabajo abierto. Los demás están aquí hasta que cierres la página."
        }
        OfJobs::NewerKeeps => {
            "Una versión más nueva de esta página guarda tus trabajos en este navegador. No se tocan: recarga la página \
             para tener esa versión."
        }
        OfJobs::StillReading => "Leyendo tus trabajos…",
        OfJobs::Begun => "Hay un trabajo nuevo abierto. El anterior está en Trabajos.",
        OfJobs::Back => "Volver al anterior",
        OfJobs::OtherTab => {
            "Otra pestaña cambió este trabajo a la vez. Los dos están en Trabajos: el tuyo lleva «(otra pestaña)» en el \
             nombre."
        }
        OfJobs::Elsewhere => {
            "Este trabajo también está abierto en otra pestaña. Lo que se cambie allí se ve aquí."
        }
        OfJobs::Full => {
            "No queda sitio en este aparato: el último cambio NO está guardado. Sigue aquí mientras la página esté \
             abierta, y se vuelve a intentar."
        }
    }
}

pub(super) const fn saved(saved: Saved) -> &'static str {
    match saved {
        Saved::Pending => "guardando…",
        Saved::Nothing => "aún nada escrito",
        Saved::Yes => "guardado en este aparato",
        Saved::One => "guardado en este aparato, solo este",
        Saved::Full => "NO guardado: no queda sitio",
        Saved::Again => "NO guardado: el navegador se negó; reintentando",
        Saved::Refused => {
            "NO guardado: este navegador no conserva nada. Envíate el enlace a ti mismo."
        }
        Saved::Visiting => "de un enlace, no guardado aquí",
    }
}

/// What tells a job from the one that it stands beside.
pub(in crate::page::words) const fn suffix(suffix: Suffix) -> &'static str {
    match suffix {
        Suffix::Copy => "(copia)",
        Suffix::OtherTab => "(otra pestaña)",
        Suffix::File => "(de un archivo)",
        Suffix::Nameless => "Trabajo",
    }
}

pub(in crate::page::words) fn more_about(title: &str) -> String {
    format!(" sobre {title}")
}

pub(in crate::page::words) fn show_more(count: usize) -> String {
    format!("Ver {count} más")
}

/// What became of a job of a file, behind its name; why it was not read comes behind that.
pub(in crate::page::words) const fn fate(fate: &Fate) -> &'static str {
    match fate {
        Fate::Taken => "incorporado.",
        Fate::Beside => "aquí hay guardado otro estado suyo; este queda al lado como copia.",
        Fate::Same => "ya estaba aquí, igual; se deja.",
        Fate::Restored => "estaba igual en la papelera, y ha vuelto.",
        Fate::Unread(why) if why.is_empty() => "no incorporado: no se puede leer.",
        Fate::Unread(_) => "no incorporado:",
    }
}

pub(in crate::page::words) fn emptied(words: Words, count: usize) -> String {
    words.count(count, "trabajo borrado.", "trabajos borrados.")
}

pub(in crate::page::words) fn in_file(words: Words, count: usize) -> String {
    words.count(
        count,
        "trabajo está en el archivo, entre tus descargas.",
        "trabajos están en el archivo, entre tus descargas.",
    )
}

pub(in crate::page::words) fn cleared(words: Words, count: usize) -> String {
    let gone = words.count(
        count,
        "trabajo guardado en este navegador ya no está",
        "trabajos guardados en este navegador ya no están",
    );
    format!(
        "{gone}: ha vaciado su almacén. El último trabajo abierto está aquí si quedó su segunda copia. Abre un archivo \
         guardado o un enlace compartido para recuperar otros."
    )
}

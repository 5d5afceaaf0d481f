//! German: the jobs that are kept.

use skimwright::job::Progress;

use crate::page::jobs::{Fate, FileTrouble};
use crate::page::state::Saved;
use crate::page::words::about_jobs::Suffix;
use crate::page::words::{OfJobs, Words};

pub(super) const fn text(text: OfJobs) -> &'static str {
    match text {
        OfJobs::Title => "Aufträge",
        OfJobs::New => "Neuer Auftrag",
        OfJobs::Search => "Nach Namen suchen",
        OfJobs::None => {
            "Noch kein Auftrag aufbewahrt. Was eingegeben wird, bleibt von selbst hier."
        }
        OfJobs::NoneFound => "Kein Auftrag hat das im Namen.",
        OfJobs::Open => "gerade offen",
        OfJobs::More => "Mehr",
        OfJobs::Name => "Name",
        OfJobs::Duplicate => "Duplizieren",
        OfJobs::ToTrash => "In den Papierkorb",
        OfJobs::Restore => "Zurückholen",
        OfJobs::Trash => "Papierkorb",
        OfJobs::EmptyTrash => "Papierkorb leeren",
        OfJobs::EmptyQuestion => {
            "Alle Aufträge im Papierkorb endgültig löschen? Das lässt sich nicht zurücknehmen. Die anderen bleiben."
        }
        OfJobs::EmptyNo => "Behalten",
        OfJobs::Progress(Progress::New) => "neu",
        OfJobs::Progress(Progress::Planned) => "geplant",
        OfJobs::Progress(Progress::Cutting) => "in Arbeit",
        OfJobs::Progress(Progress::Done) => "fertig",
        OfJobs::NotRead => "nicht lesbar; bleibt, wie er ist",
        OfJobs::FromNewer => "von einer neueren Fassung der Seite; bleibt, wie er ist",
        OfJobs::Trashed => "Im Papierkorb.",
        OfJobs::Restored => "Wieder bei den Aufträgen.",
        OfJobs::Duplicated => "Dupliziert. Die Kopie steht zuerst.",
        OfJobs::UndoTrash => "Zurück",
        OfJobs::TakenIn => "Was aus den Aufträgen der Datei wurde:",
        OfJobs::SaveFile => "Als Datei sichern",
        OfJobs::SaveAll => "Alle als Datei",
        OfJobs::OpenFile => "Datei öffnen",
        OfJobs::DropHere => {
            "Oder eine Auftragsdatei hierher ziehen. Nichts Aufbewahrtes wird überschrieben."
        }
        OfJobs::FileFailed(trouble) => match trouble {
            FileTrouble::NotLoaded => {
                "Der Teil der Seite, der Dateien schreibt und liest, ließ sich nicht laden. Mit Empfang noch einmal \
                 versuchen."
            }
            FileTrouble::TooLong => {
                "Die Datei ist größer, als eine Auftragsdatei sein kann. Nichts wurde übernommen."
            }
            FileTrouble::NotJson => {
                "Die Datei ist beschädigt oder enthält keine Aufträge. Nichts wurde übernommen."
            }
            FileTrouble::NotOurs => {
                "Die Datei enthält keine Aufträge dieser Seite. Nichts wurde übernommen."
            }
            FileTrouble::Newer => {
                "Die Datei stammt von einer neueren Fassung der Seite. Die Seite neu laden und die Datei noch einmal \
                 öffnen. Nichts wurde übernommen."
            }
            FileTrouble::NotRead => {
                "Die Datei ließ sich nicht lesen oder schreiben. Nichts wurde geändert."
            }
        },
        OfJobs::Lasting => "Dieser Browser hat zugesagt, die Aufträge nicht von selbst zu löschen.",
        OfJobs::NotLasting => {
            "Dieser Browser löscht die Aufträge vielleicht von selbst, wenn der Platz knapp wird oder die Seite wochenlang \
             nicht benutzt wird."
        }
        OfJobs::OneOnly => {
            "Dieser Browser bewahrt nur den offenen Auftrag auf. Die anderen sind da, bis die Seite zugeht."
        }
        OfJobs::NewerKeeps => {
            "Eine neuere Fassung dieser Seite bewahrt die Aufträge in diesem Browser auf. Sie bleiben unberührt: die Seite \
             neu laden, dann kommt diese Fassung."
        }
        OfJobs::StillReading => "Die Aufträge werden gelesen …",
        OfJobs::Begun => "Ein neuer Auftrag ist offen. Der vorige steht unter Aufträge.",
        OfJobs::Back => "Zum vorigen",
        OfJobs::OtherTab => {
            "Ein anderer Tab hat diesen Auftrag zur gleichen Zeit geändert. Beide stehen unter Aufträge: Der von hier hat \
             „(anderer Tab)“ im Namen."
        }
        OfJobs::Elsewhere => {
            "Dieser Auftrag ist auch in einem anderen Tab offen. Was dort geändert wird, erscheint hier."
        }
        OfJobs::Full => {
            "Auf diesem Gerät ist kein Platz mehr: Die letzte Änderung ist NICHT gesichert. Sie bleibt hier, solange die \
             Seite offen ist, und wird wieder versucht."
        }
    }
}

pub(super) const fn saved(saved: Saved) -> &'static str {
    match saved {
        Saved::Pending => "wird gesichert …",
        Saved::Nothing => "noch nichts eingegeben",
        Saved::Yes => "auf diesem Gerät gesichert",
        Saved::One => "auf diesem Gerät gesichert, nur dieser",
        Saved::Full => "NICHT gesichert: kein Platz mehr",
        Saved::Again => "NICHT gesichert: Browser lehnt ab; neuer Versuch",
        Saved::Refused => {
            "NICHT gesichert: Dieser Browser bewahrt nichts auf. Den Link an sich selbst senden."
        }
        Saved::Visiting => "von einem Link, hier nicht gesichert",
    }
}

/// What tells a job from the one that it stands beside.
pub(in crate::page::words) const fn suffix(suffix: Suffix) -> &'static str {
    match suffix {
        Suffix::Copy => "(Kopie)",
        Suffix::OtherTab => "(anderer Tab)",
        Suffix::File => "(aus Datei)",
        Suffix::Nameless => "Auftrag",
    }
}

pub(in crate::page::words) fn more_about(title: &str) -> String {
    format!(" zu {title}")
}

pub(in crate::page::words) fn show_more(count: usize) -> String {
    format!("{count} mehr zeigen")
}

/// What became of a job of a file, behind its name; why it was not read comes behind that.
pub(in crate::page::words) const fn fate(fate: &Fate) -> &'static str {
    match fate {
        Fate::Taken => "übernommen.",
        Fate::Beside => {
            "ein anderer Stand davon ist hier aufbewahrt; dieser steht als Kopie daneben."
        }
        Fate::Same => "schon hier, genauso; ausgelassen.",
        Fate::Restored => "lag genauso im Papierkorb und ist wieder da.",
        Fate::Unread(why) if why.is_empty() => "nicht übernommen: nicht lesbar.",
        Fate::Unread(_) => "nicht übernommen:",
    }
}

pub(in crate::page::words) fn emptied(words: Words, count: usize) -> String {
    words.count(count, "Auftrag gelöscht.", "Aufträge gelöscht.")
}

pub(in crate::page::words) fn in_file(words: Words, count: usize) -> String {
    words.count(
        count,
        "Auftrag ist in der Datei, bei den Downloads.",
        "Aufträge sind in der Datei, bei den Downloads.",
    )
}

pub(in crate::page::words) fn cleared(words: Words, count: usize) -> String {
    let gone = words.count(
        count,
        "in diesem Browser aufbewahrter Auftrag ist weg",
        "in diesem Browser aufbewahrte Aufträge sind weg",
    );
    format!(
        "{gone}: Der Browser hat seinen Speicher geleert. Der zuletzt offene Auftrag ist da, wenn seine zweite Kopie \
         blieb. Eine gesicherte Datei oder ein geteilter Link bringt andere zurück."
    )
}

//! German: the pieces of a line of the record, and of what it proves.

use skimwright::job::CentreOrder;

use crate::page::words::about_record::OfRecord;

pub(in crate::page::words) const fn piece(piece: OfRecord) -> &'static str {
    match piece {
        OfRecord::DialledIn => "zugestellt",
        OfRecord::OnDiameter => "im Durchmesser",
        OfRecord::OnSlide => "am Schlitten",
        OfRecord::Note => "Notiz",
        OfRecord::Begun => "begonnen",
        OfRecord::Paused => "unterbrochen",
        OfRecord::Done => "erledigt",
        OfRecord::LeftOut => "ausgelassen",
        OfRecord::ToDoAgain => "noch einmal",
        OfRecord::Length => "Länge",
        OfRecord::Runout => "Rundlauf",
        OfRecord::At => "bei",
        OfRecord::SaidRight => "als richtig bestätigt",
        OfRecord::NearShoulder => "nahe der Schulter",
        OfRecord::InMiddle => "in der Mitte",
        OfRecord::AtFreeEnd => "am freien Ende",
        OfRecord::FromShoulder => "von der Schulter",
        OfRecord::ThinnerBy => "Das freie Ende ist dünner um",
        OfRecord::ThickerBy => "Das freie Ende ist dicker um",
        OfRecord::Over => "auf",
        OfRecord::Tapered => "Es ist kegelig.",
        OfRecord::ShiftTail => "Den Reitstock um",
        OfRecord::AwayFromTool => "vom Werkzeug weg versetzen",
        OfRecord::TowardTool => "zum Werkzeug hin versetzen",
        OfRecord::NoBarrel => "Weder Bauch noch Taille, soweit die Messungen reichen:",
        OfRecord::Waist => "Taille: Die Mitte ist dünner um",
        OfRecord::Barrel => "Bauch: Die Mitte ist dicker um",
        OfRecord::Diameter => "Durchmesser",
        OfRecord::OrMore => "oder mehr",
        OfRecord::OrLess => "oder weniger",
        OfRecord::Planned => "Geplant",
        OfRecord::DepthFrom(Some(CentreOrder::BeforeFacing)) => "der rohen Stirnfläche",
        OfRecord::DepthFrom(Some(CentreOrder::AfterFacing)) => "der fertigen Planfläche",
        OfRecord::DepthFrom(None) => "der ersten Berührung am Lochrand",
    }
}

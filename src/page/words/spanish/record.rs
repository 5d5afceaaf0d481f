//! Spanish: the pieces of a line of the record, and of what it proves.

use skimwright::job::CentreOrder;

use crate::page::words::about_record::OfRecord;

pub(in crate::page::words) const fn piece(piece: OfRecord) -> &'static str {
    match piece {
        OfRecord::DialledIn => "penetración",
        OfRecord::OnDiameter => "en diámetro",
        OfRecord::OnSlide => "en el carro",
        OfRecord::Note => "Nota",
        OfRecord::Begun => "empezado",
        OfRecord::Paused => "en pausa",
        OfRecord::Done => "hecho",
        OfRecord::LeftOut => "omitido",
        OfRecord::ToDoAgain => "por repetir",
        OfRecord::Length => "Longitud",
        OfRecord::Runout => "Salto",
        OfRecord::At => "a",
        OfRecord::SaidRight => "confirmada",
        OfRecord::NearShoulder => "cerca del resalte",
        OfRecord::InMiddle => "en el medio",
        OfRecord::AtFreeEnd => "en el extremo libre",
        OfRecord::FromShoulder => "desde el resalte",
        OfRecord::ThinnerBy => "El extremo libre es más delgado en",
        OfRecord::ThickerBy => "El extremo libre es más grueso en",
        OfRecord::Over => "a lo largo de",
        OfRecord::Tapered => "Hay conicidad.",
        OfRecord::ShiftTail => "Desplaza el contrapunto",
        OfRecord::AwayFromTool => "alejándolo de la herramienta",
        OfRecord::TowardTool => "hacia la herramienta",
        OfRecord::NoBarrel => "Ni barriga ni cintura que las lecturas alcancen a ver:",
        OfRecord::Waist => "Cintura: el medio es más delgado en",
        OfRecord::Barrel => "Barriga: el medio es más grueso en",
        OfRecord::Diameter => "Diámetro",
        OfRecord::OrMore => "o más",
        OfRecord::OrLess => "o menos",
        OfRecord::Planned => "Previsto",
        OfRecord::DepthFrom(Some(CentreOrder::BeforeFacing)) => "la cara en bruto",
        OfRecord::DepthFrom(Some(CentreOrder::AfterFacing)) => "la cara acabada",
        OfRecord::DepthFrom(None) => "el primer roce con el borde del agujero",
    }
}

//! English: the pieces of a line of the record, and of what it proves.

use skimwright::job::CentreOrder;

use super::about_record::OfRecord;

pub(super) const fn piece(piece: OfRecord) -> &'static str {
    match piece {
        OfRecord::DialledIn => "dialled in",
        OfRecord::OnDiameter => "on the diameter",
        OfRecord::OnSlide => "on the slide",
        OfRecord::Note => "Note",
        OfRecord::Begun => "begun",
        OfRecord::Paused => "paused",
        OfRecord::Done => "done",
        OfRecord::LeftOut => "left out",
        OfRecord::ToDoAgain => "to do again",
        OfRecord::Length => "Length",
        OfRecord::Runout => "Runout",
        OfRecord::At => "at",
        OfRecord::SaidRight => "said to be right",
        OfRecord::NearShoulder => "near the shoulder",
        OfRecord::InMiddle => "in the middle",
        OfRecord::AtFreeEnd => "at the free end",
        OfRecord::FromShoulder => "from the shoulder",
        OfRecord::ThinnerBy => "The free end is thinner by",
        OfRecord::ThickerBy => "The free end is thicker by",
        OfRecord::Over => "over",
        OfRecord::Tapered => "There is a taper.",
        OfRecord::ShiftTail => "Shift the tail-stock",
        OfRecord::AwayFromTool => "away from the tool",
        OfRecord::TowardTool => "toward the tool",
        OfRecord::NoBarrel => "No barrel or waist that the readings can tell:",
        OfRecord::Waist => "Waist: the middle is thinner by",
        OfRecord::Barrel => "Barrel: the middle is thicker by",
        OfRecord::Diameter => "Diameter",
        OfRecord::OrMore => "or more",
        OfRecord::OrLess => "or less",
        OfRecord::Planned => "Planned",
        OfRecord::DepthFrom(Some(CentreOrder::BeforeFacing)) => "the rough face",
        OfRecord::DepthFrom(Some(CentreOrder::AfterFacing)) => "the finished face",
        OfRecord::DepthFrom(None) => "first touch on the hole's edge",
    }
}

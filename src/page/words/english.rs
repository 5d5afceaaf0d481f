//! English: the fixed texts.

use skimwright::cutting::PassKind;
use skimwright::job::{BoreBottom, CentreOrder, CutOffMethod};
use skimwright::plan::Level;
use skimwright::quantity::Units;
use skimwright::rework::CutKind;
use skimwright::sheet::{MarkKind, Measure};
use skimwright::strength::Load;
use skimwright::tables::{TaperSeries, ThreadSeries, ToolKind, WorkMaterial};

use super::text::Text;
use super::{
    Words, english_becomes, english_cut, english_items, english_jobs, english_lathe, english_link,
    english_owner, english_print, english_receiver, english_recognise, english_sharing,
    english_shop, english_stages, english_strength, english_time,
};
use crate::page::state::{Look, Share, Shown};

#[expect(
    clippy::too_many_lines,
    clippy::match_same_arms,
    reason = "one arm a text, in the order of the catalogue; two may read the same in one language"
)]
pub(super) const fn text(text: Text) -> &'static str {
    match text {
        Text::AppName => "Skimwright",
        Text::JobUntitled => "Job without a name",
        Text::StageName(stage) => english_stages::stage_name(stage),
        Text::StageLead(stage) => english_stages::stage_lead(stage),
        Text::StagesLabel => "Stages of the job",
        Text::Undo => "Undo",
        Text::Redo => "Redo",
        Text::Share => "Share",
        Text::Menu => "Menu",
        Text::Close => "Close",
        Text::SavedState(saved) => english_jobs::saved(saved),
        Text::DrawingLabel => "Drawing of the part, to scale",
        Text::DrawingHint => "Tap a dimension to change it.",
        Text::DrawingKeyReceived => "as received",
        Text::DrawingKeyFinished => "finished",
        Text::DrawingKeyRemoved => "comes off",
        Text::DrawingKeyCut => "cut off here",
        Text::DrawingKeyKerf => "kerf",
        Text::DrawingKeySection => "cut open",
        Text::DrawingKeyThread => "thread",
        Text::DrawingKeyFlat => "flat",
        Text::DrawingKeyAxis => "axis",
        Text::DrawingMissing => {
            "Nothing to draw yet: a figure of the part is missing or out of range."
        }
        Text::DrawingBroken => {
            "Long plain stretches are left out between break lines; dimensions say the true lengths."
        }
        Text::DrawingLarger => "Larger",
        Text::DrawingSmaller => "Smaller",
        Text::DrawingWhole => "Whole",
        Text::DimensionsAll => "Show all",
        Text::DimensionsFewer => "Show fewer",
        Text::SaveSvg => "Save as SVG",
        Text::SavePng => "Save as PNG",
        Text::Done => "Done",
        Text::Measure(measure) => measure_name(measure),
        Text::GroupPart => "The part",
        Text::GroupMoreOfPart => "More about the part",
        Text::GroupErrors => "How sure these measures are",
        Text::GroupList(list) => english_items::group(list),
        Text::GroupDuty => "What it has to carry",
        Text::GroupFinished => "Finished shank",
        Text::GroupReceiver => "What it goes into",
        Text::GroupCuttingOff => "Cutting off, facing, centring",
        Text::GroupTurning => "Turning",
        Text::GroupTimes => "Times for each pass",
        Text::NoneListed(list) => english_items::none(list),
        Text::Full => "The list is full.",
        Text::Add(list) => english_items::add(list),
        Text::Remove => "Remove",
        Text::MoveOn(list) => english_items::move_on(list),
        Text::MoveBack(list) => english_items::move_back(list),
        Text::Copy(list) => english_items::copy(list),
        Text::Kind(kind) => english_items::kind(kind),
        Text::AtShoulder => "At the shoulder",
        Text::BehindOneBefore => "Behind the one before",
        Text::From(datum) => english_items::from(datum),
        Text::Flats(flats) => english_items::flats(flats),
        Text::End(end) => english_items::end(end),
        Text::Bottom(BoreBottom::DrillPoint) => "Drill point, 118°",
        Text::Bottom(BoreBottom::Flat) => "Flat",
        Text::TaperSeries(series) => taper_series(series),
        Text::ThreadSeries(series) => thread_series(series),
        Text::Material(material) => material_name(material),
        Text::Tool(tool) => tool_name(tool),
        Text::CutOffMethod(method) => cut_off_method(method),
        Text::CentreOrder(CentreOrder::AfterFacing) => "After facing",
        Text::CentreOrder(CentreOrder::BeforeFacing) => "Before facing",
        Text::ToleranceClass(class) => class.code(),
        Text::ToleranceLimits => "Limits of my own",
        Text::KeysLabel => "Keys that a phone lacks",
        Text::KeySlash => "Fraction bar",
        Text::KeyMinus => "Minus",
        Text::KeyPlus => "Plus",
        Text::KeyInch => "Inch",
        Text::KeyMillimetre => "mm, millimetre",
        Text::KeySpace => "Space",
        Text::KeySemicolon => "Semicolon",
        Text::FiguresLabel => "The five figures",
        Text::FigureName(shown) => figure_name(shown),
        Text::FigureMissing => "not yet",
        Text::FigureCut => "Cut off",
        Text::FigureShank => "Shank left",
        Text::FigureStock => "Infeed per pass",
        Text::FigureCentre => "Centre depth",
        Text::FigureTime => "Whole time",
        Text::FromFreeEnd => "from free end",
        Text::ToFaceOff => "to face off",
        Text::Gripped => "grip",
        Text::NothingOff => "nothing",
        Text::NoCentreWanted => "none wanted",
        Text::OnDrill => "centre drill",
        Text::OnHole => "on hole of",
        Text::CutKind(kind) => cut_kind(kind),
        Text::FindingsLabel => "Findings",
        Text::LevelName(Level::Clear) => "Clear",
        Text::LevelName(Level::Caution) => "Caution",
        Text::LevelName(Level::Stop) => "Stop",
        Text::ToField => "Change",
        Text::PassesLabel => "Passes",
        Text::PassNumber => "No.",
        Text::PassKind(kind) => pass_kind(kind),
        Text::PassDial => "Dial in",
        Text::PassInfeed => "Infeed",
        Text::PassOff => "Off ⌀",
        Text::PassAfter => "⌀ after",
        Text::PassMetal => "Length",
        Text::PassSpeed => "Speed",
        Text::PassFeed => "Feed",
        Text::PassTime => "Time",
        Text::PassMarks => "Notes",
        Text::NoPasses => "No passes: there is nothing to turn off.",
        Text::NoPassesYet => "No passes yet: the findings say why.",
        Text::PassesNote => {
            "Tap a pass for its forces and limits. Stop after each of the two last cuts and measure: the first shows \
             what the second will do."
        }
        Text::MoreLabel => "More figures",
        Text::LimitsLabel => "Finished diameter, smallest to largest",
        Text::SectionsOffLabel => "Comes off the diameter",
        Text::MetalLabel => "Where the metal of the shank goes",
        Text::MetalReceived => "Shank as received",
        Text::MetalOffcut => "Offcut",
        Text::MetalKerf => "Kerf, to dust",
        Text::MetalFacing => "Faced off",
        Text::MetalTurned => "Turned off",
        Text::MetalCentred => "Centred out",
        Text::MetalLeft => "Finished shank",
        Text::CareLabel => "Take care",
        Text::CareSetUp => {
            "Take the chuck key out. Eye protection; no gloves, sleeves or long hair near the spindle. Stop it to \
             measure."
        }
        Text::CareDisc => {
            "Abrasive disc: guard on, eye and ear protection, never twist it in the cut; cover the ways from the grit. \
             Keep the work below 150 °C: no colour."
        }
        Text::CareDiscSpeed => {
            "The top speed printed on the disc must be more than the machine's; throw a dropped or old disc away."
        }
        Text::CareHard => {
            "Hard work: chips are hot and sharp, and an edge can burst. Keep the guard down; centre a hard end with \
             carbide."
        }
        Text::CareChips => "Long chips: stop the spindle and use a hook, never the hand.",
        Text::CareDust => {
            "Cast iron makes fine abrasive dust: a mask, cover the ways, and a vacuum cleaner rather than the air line."
        }
        Text::CareFire => {
            "Titanium chips can burn: a sharp tool, no heap of fine chips, dry sand at hand, never water on a fire."
        }
        Text::CarePolish => "Polishing: hold the strip open-handed, never wound round the work.",
        Text::CareLives => {
            "For parts that lift, hold pressure, or belong to a vehicle, an aircraft or a medical device, the local \
             rules and a licensed engineer decide, not this page."
        }
        Text::CareEstimates => {
            "Times and masses are estimates. Heat treatment and hidden flaws cannot be seen from here."
        }
        Text::Cut(text) => english_cut::text(text),
        Text::Time(text) => english_time::text(text),
        Text::Jobs(text) => english_jobs::text(text),
        Text::Lathe(text) => english_lathe::text(text),
        Text::Owner(text) => english_owner::text(text),
        Text::Sharing(text) => english_sharing::text(text),
        Text::Print(text) => english_print::text(text),
        Text::Shop(text) => english_shop::text(text),
        Text::Receiver(text) => english_receiver::text(text),
        Text::Becoming(text) => english_becomes::text(text),
        Text::Strength(text) => english_strength::text(text),
        Text::Taper(text) => english_recognise::text(text),
        Text::WorkingFormula => "Formula",
        Text::WorkingNumbers => "With the numbers",
        Text::WorkingInputs => "What went in",
        Text::WorkingSource => "Source",
        Text::WorkingEstimate => "An estimate",
        Text::WorkingInfeed => "Dial in half of it: the cross-slide moves on radius.",
        Text::BadLink(error) => english_link::bad_link(error),
        Text::BadStore => {
            "The job kept in this browser could not be read. It was put aside, not deleted."
        }
        Text::Visiting => "This job came with a link and is not kept. Yours are, and not changed.",
        Text::KeepVisitor => "Make it my job",
        Text::BackToOwn => "Back to mine",
        Text::UpdateWaits => "A newer version of the page is ready. Nothing you typed is lost.",
        Text::UpdateNow => "Use it now",
        Text::Dismiss => "All right",
        Text::UnitsLabel => "Units",
        Text::UnitsName(Units::Metric) => "mm",
        Text::UnitsName(Units::InchDecimal) => "inch, decimal",
        Text::UnitsName(Units::InchFraction) => "inch, 1/64",
        Text::LanguageLabel => "Language",
        Text::LookLabel => "Look",
        Text::LookName(look) => look_name(look),
        Text::ExamplesLabel => "Examples",
        Text::ExamplesLead => "Each becomes a job of its own; yours stays under Jobs.",
        Text::PrivacyLabel => "Privacy",
        Text::Privacy => {
            "Everything is worked out and kept on this device. A link holds the whole job in the part that browsers \
             never send; who has the link has the job."
        }
        Text::ShareTitle => "Rework of a turned part",
    }
}

pub(super) fn usual(value: &str) -> String {
    format!("usual: {value}")
}

/// Dimensions that have no room on the drawing.
pub(super) fn hidden(words: Words, count: usize) -> String {
    words.count(
        count,
        "dimension is not shown here. The lists have it.",
        "dimensions are not shown here. The lists have them.",
    )
}

/// A numbered place of the drawing.
pub(super) fn mark(what: MarkKind, at: &str, in_head: bool) -> String {
    let what = match what {
        MarkKind::ThinnestWall => "the thinnest wall round a hole",
        MarkKind::TightestCleanUp => "where the stock has least to spare",
        MarkKind::WeakestSection => "where the finished shank is weakest in bending",
    };
    let head = if in_head { ", in the head" } else { "" };
    format!("{what}, {at} from the shoulder{head}")
}

pub(super) fn range(low: &str, high: &str) -> String {
    format!("{low} to {high}")
}

/// A label with the row that it is about, such as a section.
pub(super) fn about_row(label: &str, row: &str) -> String {
    format!("{label}: {}", row.to_ascii_lowercase())
}

pub(super) fn off_diameter(off: &str) -> String {
    format!("takes {off} off\u{a0}⌀")
}

/// The plan in plain words, for whoever is no machinist.
pub(super) fn plan_in_short(offcut: Option<&str>, shank: &str, finished: &str) -> String {
    let falls = match offcut {
        Some(offcut) => format!("A piece of {offcut} falls off the free end."),
        None => "Nothing is cut off.".to_owned(),
    };
    format!(
        "{falls} A shank of {shank} stays and is turned to ⌀{finished}. What is off cannot be put back."
    )
}

pub(super) fn findings_in_short(words: Words, stops: usize, cautions: usize) -> String {
    let count = |number, one, more| words.count(number, one, more);
    match (stops, cautions) {
        (0, 0) => "Clear: nothing stands against the plan.".to_owned(),
        (0, _) => format!(
            "{} to read in the plan.",
            count(cautions, "caution", "cautions")
        ),
        (_, 0) => format!("{} in the plan.", count(stops, "stop", "stops")),
        _ => format!(
            "{} and {} in the plan.",
            count(stops, "stop", "stops"),
            count(cautions, "caution", "cautions")
        ),
    }
}

const fn measure_name(measure: Measure) -> &'static str {
    match measure {
        Measure::Entered => "Dimension",
        Measure::TotalLength => "Length over all",
        Measure::TaperStart => "Large end of the taper",
        Measure::TaperEnd => "Small end of the taper",
        Measure::CutFromFreeEnd => "Mark for the cut, from the free end",
        Measure::CutFromShoulder => "Mark for the cut, from the shoulder",
        Measure::Kerf => "Kerf",
        Measure::FacingTaken => "Faced off",
        Measure::ShankFinished => "Shank after facing",
        Measure::OffcutLength => "Length of the offcut",
        Measure::CentreDepth => "Depth to feed in",
    }
}

const fn taper_series(series: TaperSeries) -> &'static str {
    match series {
        TaperSeries::Morse => "Morse",
        TaperSeries::BrownSharpe => "Brown & Sharpe",
        TaperSeries::Jarno => "Jarno",
        TaperSeries::Metric => "Metric",
        TaperSeries::Chuck => "Drill chuck",
        TaperSeries::Jacobs => "Jacobs",
        TaperSeries::Steep => "7/24 taper",
        TaperSeries::R8 => "Collet taper",
    }
}

const fn thread_series(series: ThreadSeries) -> &'static str {
    match series {
        ThreadSeries::MetricCoarse => "Metric, coarse",
        ThreadSeries::MetricFine => "Metric, fine",
        ThreadSeries::Unc => "UNC",
        ThreadSeries::Unf => "UNF",
        ThreadSeries::Bsw => "BSW",
    }
}

const fn material_name(material: WorkMaterial) -> &'static str {
    match material {
        WorkMaterial::LowCarbonSteel => "Low-carbon steel",
        WorkMaterial::MediumCarbonSteel => "Medium-carbon steel",
        WorkMaterial::AlloySteelTempered => "Alloy steel, tempered (about 30 HRC)",
        WorkMaterial::AlloySteelHard => "Alloy steel, hard (40–45 HRC)",
        WorkMaterial::ToolSteelAnnealed => "Tool steel, annealed",
        WorkMaterial::HardenedSteel => "Hardened steel (50–62 HRC)",
        WorkMaterial::CaseHardenedSteel => "Case-hardened steel",
        WorkMaterial::HighSpeedSteelHard => "High-speed steel, hard (62–66 HRC)",
        WorkMaterial::StainlessMartensitic => "Stainless steel, martensitic",
        WorkMaterial::StainlessAustenitic => "Stainless steel, austenitic",
        WorkMaterial::GreyIron => "Grey cast iron",
        WorkMaterial::DuctileIron => "Ductile cast iron",
        WorkMaterial::AluminiumAlloy => "Aluminium alloy",
        WorkMaterial::Brass => "Brass",
        WorkMaterial::Bronze => "Bronze",
        WorkMaterial::TitaniumAlloy => "Titanium alloy",
    }
}

const fn tool_name(tool: ToolKind) -> &'static str {
    match tool {
        ToolKind::HighSpeedSteel => "High-speed steel",
        ToolKind::BrazedCarbide => "Brazed carbide",
        ToolKind::IndexableCarbide => "Carbide insert, coated",
        ToolKind::CubicBoronNitride => "Boron nitride (CBN) insert",
        ToolKind::IndexableFlat => "Carbide insert, flat top",
        ToolKind::Ceramic => "Ceramic insert",
        ToolKind::Grinding => "Grinder on the tool post",
    }
}

const fn cut_off_method(method: CutOffMethod) -> &'static str {
    match method {
        CutOffMethod::HandDisc => "Abrasive disc by hand",
        CutOffMethod::ChopWheel => "Abrasive wheel in a stand",
        CutOffMethod::Saw => "Saw",
        CutOffMethod::PartingTool => "Parting tool",
    }
}

const fn cut_kind(kind: CutKind) -> &'static str {
    match kind {
        CutKind::CutAndFace => "Cut off",
        CutKind::FaceOnly => "Face back",
        CutKind::AsItIs => "No cut",
    }
}

const fn figure_name(shown: Shown) -> &'static str {
    match shown {
        Shown::CutFromFreeEnd => "Mark for the cut, from the free end",
        Shown::CutFromShoulder => "Mark for the cut, from the shoulder",
        Shown::OffcutLength => "Length of the offcut",
        Shown::OffcutMass => "Mass of the offcut",
        Shown::ShankAfterCut => "Shank after cutting, before facing",
        Shown::ShankFinished => "Shank after facing",
        Shown::Grip => "What the receiver can grip",
        Shown::StockOff => "Most to come off the diameter",
        Shown::RoughEach => "Each roughing pass, off the diameter",
        Shown::SpindleSpeed => "Spindle speed of the first pass",
        Shown::ConeDepth => "Depth of the cone",
        Shown::CentreDepth => "Depth to feed in",
        Shown::Time => "Whole time",
        Shown::Cost => "Whole cost",
        Shown::LargestDiameter => "Largest diameter to be had",
        Shown::Wall(_) => "Least wall",
        Shown::SleevePressure => "Pressure of the sleeve",
        Shown::SleeveStress => "Stress in the sleeve, at its bore",
        Shown::ShaftStress => "Stress in the shank under it",
        Shown::SleeveHolds => "Torque that the sleeve holds",
        Shown::WarmerBy => "Sleeve warmer than the shank, to slip on",
        Shown::Kept(Share::Bending) => "Kept in bending",
        Shown::Kept(Share::Torsion) => "Kept in torsion",
        Shown::Kept(Share::Stiffness) => "Kept of stiffness in bending",
        Shown::Kept(Share::Twist) => "Kept of stiffness in torsion",
        Shown::Shoulder(Load::Bending) => "Stress raised in bending",
        Shown::Shoulder(Load::Torsion) => "Stress raised in torsion",
        Shown::Shoulder(Load::Tension) => "Stress raised in tension",
        Shown::AgainstYield => "Against bending or twisting out of shape",
        Shown::AgainstFatigue => "Against breaking in the long run",
        Shown::MassBefore => "Mass as received",
        Shown::MassChips => "Chips, all of them",
        Shown::MassAfter => "Mass when finished",
        Shown::BalanceBefore => "Centre of gravity as received",
        Shown::BalanceAfter => "Centre of gravity when finished",
        Shown::PassForce(_) => "Force down onto the tool",
        Shown::PassPower(_) => "Power at the edge, at most",
        Shown::PassSpeed(_) => "Spindle speed",
        Shown::Slender => "Sticks out, over its diameter",
        Shown::Deflection => "Larger by, where work and tool part most",
        Shown::Ridge => "Ridges of the last cut",
        Shown::CompoundAngle => "Compound slide, from the lathe's axis",
        Shown::SizeNow => "Diameter now, at 20 °C",
        Shown::AfterNext => "Diameter after this cut",
        Shown::PolishNext => "To polish off the diameter",
        Shown::TaperFound => "Thicker at the free end by",
        Shown::TailShift => "Tail-stock, across",
        Shown::Measured(_) => "Measured, at 20 °C",
    }
}

const fn pass_kind(kind: PassKind) -> &'static str {
    match kind {
        PassKind::Rough => "rough",
        PassKind::Last => "last",
        PassKind::Polish => "polish",
    }
}

const fn look_name(look: Look) -> &'static str {
    match look {
        Look::System => "as the device",
        Look::Light => "light",
        Look::Dark => "dark",
        Look::Sunlight => "sunlight",
    }
}

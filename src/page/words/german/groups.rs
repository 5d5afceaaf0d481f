//! German: materials and tools, the groups of materials that are cut alike, and how a file takes to them.

use skimwright::quantity::show;
use skimwright::tables::{CuttingGroup, FileBite, ToolKind, WorkMaterial};

pub(super) const fn material(material: WorkMaterial) -> &'static str {
    match material {
        WorkMaterial::LowCarbonSteel => "Baustahl, wenig Kohlenstoff",
        WorkMaterial::MediumCarbonSteel => "Vergütungsstahl, unlegiert",
        WorkMaterial::AlloySteelTempered => "Legierter Stahl, vergütet (etwa 30 HRC)",
        WorkMaterial::AlloySteelHard => "Legierter Stahl, hart (40–45 HRC)",
        WorkMaterial::ToolSteelAnnealed => "Werkzeugstahl, geglüht",
        WorkMaterial::HardenedSteel => "Gehärteter Stahl (50–62 HRC)",
        WorkMaterial::CaseHardenedSteel => "Einsatzgehärteter Stahl",
        WorkMaterial::HighSpeedSteelHard => "Schnellarbeitsstahl, hart (62–66 HRC)",
        WorkMaterial::StainlessMartensitic => "Nichtrostender Stahl, martensitisch",
        WorkMaterial::StainlessAustenitic => "Nichtrostender Stahl, austenitisch",
        WorkMaterial::GreyIron => "Grauguss",
        WorkMaterial::DuctileIron => "Kugelgrafitguss",
        WorkMaterial::AluminiumAlloy => "Aluminiumlegierung",
        WorkMaterial::Brass => "Messing",
        WorkMaterial::Bronze => "Bronze",
        WorkMaterial::TitaniumAlloy => "Titanlegierung",
    }
}

pub(super) const fn tool(tool: ToolKind) -> &'static str {
    match tool {
        ToolKind::HighSpeedSteel => "Schnellarbeitsstahl",
        ToolKind::BrazedCarbide => "Hartmetall, gelötet",
        ToolKind::IndexableCarbide => "Wendeplatte, beschichtet",
        ToolKind::CubicBoronNitride => "Bornitridplatte (CBN)",
        ToolKind::IndexableFlat => "Wendeplatte, glatte Spanfläche",
        ToolKind::Ceramic => "Keramikplatte",
        ToolKind::Grinding => "Schleifgerät am Stahlhalter",
    }
}

/// What a group is, with its hardness.
pub(in crate::page::words) fn cutting_group(group: Option<CuttingGroup>) -> String {
    let Some(group) = group else {
        return "Wie bei seiner Art üblich".to_owned();
    };
    let Some(row) = group.get() else {
        return group.code().to_owned();
    };
    let hard = match (row.hardness, row.brinell) {
        (Some(points), _) => format!(", {}", show::hardness(points)),
        (None, Some(brinell)) => format!(", {brinell}\u{a0}HBW"),
        (None, None) => String::new(),
    };
    let code = row.code.to_ascii_uppercase().replace('-', "\u{a0}");
    format!("{code}: {}{hard}", what(row.code))
}

fn what(code: &str) -> &'static str {
    match code {
        "p-1" => "Stahl unter 0,25 % Kohlenstoff, geglüht",
        "p-2" => "Stahl ab 0,25 % Kohlenstoff, geglüht",
        "p-3" => "Stahl unter 0,55 % Kohlenstoff, vergütet",
        "p-4" => "Stahl ab 0,55 % Kohlenstoff, geglüht",
        "p-5" => "Stahl ab 0,55 % Kohlenstoff, vergütet",
        "p-6" => "niedriglegierter Stahl, geglüht",
        "p-7" | "p-8" | "p-9" | "p-9x" => "niedriglegierter Stahl, vergütet",
        "p-10" => "hochlegierter und Werkzeugstahl, geglüht",
        "p-11" => "hochlegierter und Werkzeugstahl, vergütet",
        "p-12" => "nichtrostend, ferritisch oder martensitisch, geglüht",
        "p-13" => "nichtrostend, martensitisch, vergütet",
        "m-14" => "nichtrostend, austenitisch oder Duplex",
        "k-15" => "Grauguss, ferritisch oder perlitisch",
        "k-16" => "Grauguss, perlitisch oder martensitisch",
        "k-17" => "Kugelgrafitguss, ferritisch",
        "k-18" => "Kugelgrafitguss, perlitisch",
        "k-19" => "Temperguss, ferritisch",
        "k-20" => "Temperguss, perlitisch",
        "n-21" => "Aluminium-Knetlegierung, weich",
        "n-22" => "Aluminium-Knetlegierung, ausgehärtet",
        "n-23" => "Aluminiumguss, weich",
        "n-24" => "Aluminiumguss, ausgehärtet",
        "n-25" => "Aluminiumguss, über 12 % Silizium",
        "n-26" => "Automaten-Kupferlegierung",
        "n-27" => "Messing",
        "n-28" => "Bronze oder Kupfer",
        "s-36" => "Reintitan",
        "s-37" => "Titanlegierung, ausgehärtet",
        "h-38" | "h-39" => "gehärteter Stahl",
        "h-40" => "Hartguss",
        "h-41" => "gehärtetes Gusseisen",
        _ => "warmfeste Legierung",
    }
}

pub(in crate::page::words) const fn file_bite(bite: Option<FileBite>) -> &'static str {
    match bite {
        None => "Nicht versucht",
        Some(FileBite::Cuts) => "Schneidet leicht: bis 35 HRC",
        Some(FileBite::Bites) => "Greift unter Druck: 35 bis 50 HRC",
        Some(FileBite::Scratches) => "Kratzt nur: 50 bis 60 HRC",
        Some(FileBite::Skates) => "Rutscht ab: ab 60 HRC",
    }
}

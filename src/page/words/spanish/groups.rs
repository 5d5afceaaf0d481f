//! Spanish: materials and tools, the groups of materials that are cut alike, and how a file takes to them.

use skimwright::quantity::show;
use skimwright::tables::{CuttingGroup, FileBite, ToolKind, WorkMaterial};

pub(super) const fn material(material: WorkMaterial) -> &'static str {
    match material {
        WorkMaterial::LowCarbonSteel => "Acero bajo en carbono",
        WorkMaterial::MediumCarbonSteel => "Acero de medio carbono",
        WorkMaterial::AlloySteelTempered => "Acero aleado, bonificado (unos 30 HRC)",
        WorkMaterial::AlloySteelHard => "Acero aleado, duro (40–45 HRC)",
        WorkMaterial::ToolSteelAnnealed => "Acero de herramientas, recocido",
        WorkMaterial::HardenedSteel => "Acero templado (50–62 HRC)",
        WorkMaterial::CaseHardenedSteel => "Acero cementado",
        WorkMaterial::HighSpeedSteelHard => "Acero rápido, duro (62–66 HRC)",
        WorkMaterial::StainlessMartensitic => "Acero inoxidable, martensítico",
        WorkMaterial::StainlessAustenitic => "Acero inoxidable, austenítico",
        WorkMaterial::GreyIron => "Fundición gris",
        WorkMaterial::DuctileIron => "Fundición nodular",
        WorkMaterial::AluminiumAlloy => "Aleación de aluminio",
        WorkMaterial::Brass => "Latón",
        WorkMaterial::Bronze => "Bronce",
        WorkMaterial::TitaniumAlloy => "Aleación de titanio",
    }
}

pub(super) const fn tool(tool: ToolKind) -> &'static str {
    match tool {
        ToolKind::HighSpeedSteel => "Acero rápido",
        ToolKind::BrazedCarbide => "Metal duro soldado",
        ToolKind::IndexableCarbide => "Plaquita de metal duro, recubierta",
        ToolKind::CubicBoronNitride => "Plaquita de nitruro de boro (CBN)",
        ToolKind::IndexableFlat => "Plaquita de metal duro, cara lisa",
        ToolKind::Ceramic => "Plaquita de cerámica",
        ToolKind::Grinding => "Muela en el portaherramientas",
    }
}

/// What a group is, with its hardness.
pub(in crate::page::words) fn cutting_group(group: Option<CuttingGroup>) -> String {
    let Some(group) = group else {
        return "Lo habitual en su clase".to_owned();
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
        "p-1" => "acero de menos de 0,25 % de carbono, recocido",
        "p-2" => "acero desde 0,25 % de carbono, recocido",
        "p-3" => "acero de menos de 0,55 % de carbono, bonificado",
        "p-4" => "acero desde 0,55 % de carbono, recocido",
        "p-5" => "acero desde 0,55 % de carbono, bonificado",
        "p-6" => "acero de baja aleación, recocido",
        "p-7" | "p-8" | "p-9" | "p-9x" => "acero de baja aleación, bonificado",
        "p-10" => "acero de alta aleación y de herramientas, recocido",
        "p-11" => "acero de alta aleación y de herramientas, bonificado",
        "p-12" => "inoxidable, ferrítico o martensítico, recocido",
        "p-13" => "inoxidable, martensítico, bonificado",
        "m-14" => "inoxidable, austenítico o dúplex",
        "k-15" => "fundición gris, ferrítica o perlítica",
        "k-16" => "fundición gris, perlítica o martensítica",
        "k-17" => "fundición nodular, ferrítica",
        "k-18" => "fundición nodular, perlítica",
        "k-19" => "fundición maleable, ferrítica",
        "k-20" => "fundición maleable, perlítica",
        "n-21" => "aluminio de forja, blando",
        "n-22" => "aluminio de forja, envejecido",
        "n-23" => "aluminio fundido, blando",
        "n-24" => "aluminio fundido, envejecido",
        "n-25" => "aluminio fundido, más de 12 % de silicio",
        "n-26" => "aleación de cobre de fácil mecanizado",
        "n-27" => "latón",
        "n-28" => "bronce o cobre",
        "s-36" => "titanio puro",
        "s-37" => "aleación de titanio, envejecida",
        "h-38" | "h-39" => "acero templado",
        "h-40" => "fundición en coquilla",
        "h-41" => "fundición templada",
        _ => "aleación resistente al calor",
    }
}

pub(in crate::page::words) const fn file_bite(bite: Option<FileBite>) -> &'static str {
    match bite {
        None => "No se ha probado",
        Some(FileBite::Cuts) => "Corta bien: hasta 35 HRC",
        Some(FileBite::Bites) => "Muerde si se aprieta: 35 a 50 HRC",
        Some(FileBite::Scratches) => "Solo raya: 50 a 60 HRC",
        Some(FileBite::Skates) => "Resbala: 60 HRC o más",
    }
}

//! English: the groups of materials that are cut alike, and how a file takes to them.

use skimwright::quantity::show;
use skimwright::tables::{CuttingGroup, FileBite};

/// What a group is, with its hardness.
pub(super) fn cutting_group(group: Option<CuttingGroup>) -> String {
    let Some(group) = group else {
        return "As its kind usually is".to_owned();
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
        "p-1" => "steel below 0.25 % carbon, annealed",
        "p-2" => "steel from 0.25 % carbon, annealed",
        "p-3" => "steel below 0.55 % carbon, tempered",
        "p-4" => "steel from 0.55 % carbon, annealed",
        "p-5" => "steel from 0.55 % carbon, tempered",
        "p-6" => "low-alloy steel, annealed",
        "p-7" | "p-8" | "p-9" | "p-9x" => "low-alloy steel, tempered",
        "p-10" => "high-alloy and tool steel, annealed",
        "p-11" => "high-alloy and tool steel, tempered",
        "p-12" => "stainless, ferritic or martensitic, annealed",
        "p-13" => "stainless, martensitic, tempered",
        "m-14" => "stainless, austenitic or duplex",
        "k-15" => "grey iron, ferritic or pearlitic",
        "k-16" => "grey iron, pearlitic or martensitic",
        "k-17" => "ductile iron, ferritic",
        "k-18" => "ductile iron, pearlitic",
        "k-19" => "malleable iron, ferritic",
        "k-20" => "malleable iron, pearlitic",
        "n-21" => "wrought aluminium, soft",
        "n-22" => "wrought aluminium, aged",
        "n-23" => "cast aluminium, soft",
        "n-24" => "cast aluminium, aged",
        "n-25" => "cast aluminium, above 12 % silicon",
        "n-26" => "free-cutting copper alloy",
        "n-27" => "brass",
        "n-28" => "bronze or copper",
        "s-36" => "titanium, pure",
        "s-37" => "titanium alloy, aged",
        "h-38" | "h-39" => "hardened steel",
        "h-40" => "chilled cast iron",
        "h-41" => "hardened cast iron",
        _ => "heat-resistant alloy",
    }
}

pub(super) const fn file_bite(bite: Option<FileBite>) -> &'static str {
    match bite {
        None => "Not tried",
        Some(FileBite::Cuts) => "Cuts freely: up to 35 HRC",
        Some(FileBite::Bites) => "Bites under pressure: 35 to 50 HRC",
        Some(FileBite::Scratches) => "Only scratches: 50 to 60 HRC",
        Some(FileBite::Skates) => "Skates off: 60 HRC and up",
    }
}

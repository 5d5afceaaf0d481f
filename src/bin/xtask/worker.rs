//! Writes the service worker: its template with the list of a build's files in it.

use std::fs;
use std::path::{Path, PathBuf};

use data_encoding::{BASE64, HEXLOWER};
use sha2::{Digest, Sha256, Sha384};

use crate::Outcome;

const WORKER: &str = "sw.js";

/// Writes `dist/sw.js` with the build's hash and every other file of `dist/` in it.
pub(crate) fn write(root: &Path) -> Outcome {
    let dist = root.join("dist");
    let template = root.join("src/shell").join(WORKER);
    let template =
        fs::read_to_string(&template).map_err(|error| cannot("read", &template, &error))?;
    let list = list(&dist)?;
    let build: String = HEXLOWER
        .encode(&Sha256::digest(&list))
        .chars()
        .take(16)
        .collect();
    let filled = fill(
        &fill(&template, "'{build}'", &format!("'{build}'"))?,
        "'{files}'",
        &list,
    )?;
    let target = dist.join(WORKER);
    fs::write(&target, filled).map_err(|error| cannot("write", &target, &error))
}

/// Every file under a folder with its address relative to it, sorted.
pub(crate) fn files(folder: &Path) -> Outcome<Vec<(String, PathBuf)>> {
    let mut found = Vec::new();
    collect(folder, "", &mut found)?;
    found.sort();
    Ok(found)
}

fn collect(folder: &Path, prefix: &str, found: &mut Vec<(String, PathBuf)>) -> Outcome {
    let entries = fs::read_dir(folder).map_err(|error| cannot("read", folder, &error))?;
    for entry in entries {
        let path = entry
            .map_err(|error| cannot("read", folder, &error))?
            .path();
        let Some(name) = path.file_name().and_then(|name| name.to_str()) else {
            return Err(format!(
                "{} has a name that no address can hold.",
                path.display()
            ));
        };
        let address = format!("{prefix}{name}");
        if path.is_dir() {
            collect(&path, &format!("{address}/"), found)?;
        } else {
            found.push((address, path));
        }
    }
    Ok(())
}

/// Whether a file only tells programmers about the module for JavaScript.
pub(crate) fn is_declaration(address: &str) -> bool {
    address.ends_with(".d.ts")
}

/// What a browser compares a fetched file with.
pub(crate) fn integrity(path: &Path) -> Outcome<String> {
    let bytes = fs::read(path).map_err(|error| cannot("read", path, &error))?;
    Ok(format!("sha384-{}", BASE64.encode(&Sha384::digest(bytes))))
}

/// The list as the worker reads it: one pair of address and integrity a line.
fn list(dist: &Path) -> Outcome<String> {
    let mut lines = Vec::new();
    for (address, path) in files(dist)? {
        if address == WORKER || is_declaration(&address) {
            continue;
        }
        let integrity = integrity(&path)?;
        // The page is kept under its folder's address: some hosts send index.html on to it.
        let address = if address == "index.html" {
            "./"
        } else {
            &address
        };
        lines.push(format!("  ['{address}', '{integrity}'],\n"));
    }
    Ok(format!("[\n{}]", lines.concat()))
}

fn fill(template: &str, place: &str, text: &str) -> Outcome<String> {
    if template.matches(place).count() == 1 {
        Ok(template.replacen(place, text, 1))
    } else {
        Err(format!(
            "the service worker's template must hold {place} exactly once."
        ))
    }
}

fn cannot(verb: &str, path: &Path, error: &std::io::Error) -> String {
    format!("cannot {verb} {}: {error}", path.display())
}

#[cfg(test)]
mod tests {
    use super::fill;

    #[test]
    fn a_place_is_filled_once_or_not_at_all() {
        assert_eq!(
            fill("a = '{x}';", "'{x}'", "[1]"),
            Ok("a = [1];".to_owned())
        );
        assert!(fill("a = 2;", "'{x}'", "[1]").is_err());
        assert!(fill("'{x}' '{x}'", "'{x}'", "[1]").is_err());
    }
}

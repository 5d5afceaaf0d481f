//! The versions of the programs that build the page, each read from its one place.

use std::fs;
use std::path::Path;

use crate::Outcome;

/// The Trunk version that `Trunk.toml` asks for.
pub(crate) fn trunk(root: &Path) -> Outcome<String> {
    let text = read(root, "Trunk.toml")?;
    text.lines()
        .find_map(|line| line.strip_prefix("trunk-version = \"="))
        .and_then(|rest| rest.strip_suffix('"'))
        .map(str::to_owned)
        .ok_or_else(|| "Trunk.toml names no exact trunk-version.".to_owned())
}

/// The wasm-bindgen version in `Cargo.lock`: the programs must be of exactly that one.
pub(crate) fn wasm_bindgen(root: &Path) -> Outcome<String> {
    locked_version(&read(root, "Cargo.lock")?, "wasm-bindgen")
        .ok_or_else(|| "Cargo.lock holds no wasm-bindgen.".to_owned())
}

fn locked_version(lock: &str, package: &str) -> Option<String> {
    let name = format!("name = \"{package}\"");
    let mut lines = lock.lines().skip_while(|line| *line != name);
    let version = lines.nth(1)?;
    Some(
        version
            .strip_prefix("version = \"")?
            .strip_suffix('"')?
            .to_owned(),
    )
}

fn read(root: &Path, file: &str) -> Outcome<String> {
    fs::read_to_string(root.join(file)).map_err(|error| format!("{file} cannot be read: {error}"))
}

#[cfg(test)]
mod tests {
    use super::locked_version;

    #[test]
    fn the_package_is_found_by_its_whole_name() {
        let lock = "[[package]]\nname = \"wasm-bindgen-futures\"\nversion = \"0.4.1\"\n\n\
                    [[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\nsource = \"x\"\n";
        assert_eq!(
            locked_version(lock, "wasm-bindgen").as_deref(),
            Some("0.2.130")
        );
        assert_eq!(locked_version(lock, "wasm"), None);
    }
}

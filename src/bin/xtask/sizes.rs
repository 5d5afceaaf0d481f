//! Prints how large the page is, and refuses one that is too large for a phone with bad signal.

use std::fs;
use std::io::Write;
use std::path::Path;

use crate::{Outcome, worker};

/// What the first visit may cost at most, in bytes after brotli.
const BUDGET: usize = 650_000;

/// What it should stay under.
const AIM: usize = 160_000;

/// One file as it is and as a good host sends it.
struct Size {
    address: String,
    raw: usize,
    sent: usize,
}

/// Prints every file of `dist/` and gives the size of the first load in bytes after brotli.
///
/// Pictures of the icon are left out of the first load, and so is the module that reads and writes files of jobs: they are
/// fetched later, the first for installing, the second for use without a network or when it is needed.
pub(crate) fn print(root: &Path) -> Outcome<usize> {
    let dist = root.join("dist");
    if !dist.is_dir() {
        return Err("there is no build yet: `cargo xtask build` makes one.".to_owned());
    }
    let mut sizes = measure(&dist)?;
    sizes.sort_by_key(|size| std::cmp::Reverse(size.sent));
    println!("{:>10} {:>10}", "raw", "brotli");
    for size in &sizes {
        line(&size.address, size.raw, size.sent);
    }
    let (files, sizes): (Vec<Size>, Vec<Size>) = sizes
        .into_iter()
        .partition(|size| size.address.starts_with("api/"));
    let (later, first): (Vec<Size>, Vec<Size>) = sizes
        .into_iter()
        .partition(|size| only_for_installing(&size.address));
    let wasm: Vec<&Size> = first
        .iter()
        .filter(|size| has_extension(&size.address, "wasm"))
        .collect();
    line(
        "WebAssembly",
        sum(wasm.iter().map(|size| size.raw)),
        sum(wasm.iter().map(|size| size.sent)),
    );
    line(
        "for installing only",
        sum(later.iter().map(|size| size.raw)),
        sum(later.iter().map(|size| size.sent)),
    );
    line(
        "for files of jobs only",
        sum(files.iter().map(|size| size.raw)),
        sum(files.iter().map(|size| size.sent)),
    );
    let total = sum(first.iter().map(|size| size.sent));
    line("first load", sum(first.iter().map(|size| size.raw)), total);
    Ok(total)
}

/// Compares a first load with the budget.
pub(crate) fn check(total: usize) -> Outcome {
    if BUDGET < total {
        return Err(format!(
            "the first load is {} after brotli, over the budget of {}.",
            kilobytes(total),
            kilobytes(BUDGET)
        ));
    }
    if AIM < total {
        println!("The first load is above the aim of {}.", kilobytes(AIM));
    }
    Ok(())
}

fn measure(dist: &Path) -> Outcome<Vec<Size>> {
    let mut sizes = Vec::new();
    let page = worker::files(dist)?
        .into_iter()
        .filter(|(address, _)| !worker::is_declaration(address));
    for (address, path) in page {
        let bytes =
            fs::read(&path).map_err(|error| format!("cannot read {}: {error}", path.display()))?;
        // A picture is compressed already; a host sends it as it is.
        let sent = if has_extension(&address, "png") {
            bytes.len()
        } else {
            brotli_size(&bytes)?
        };
        sizes.push(Size {
            address,
            raw: bytes.len(),
            sent,
        });
    }
    Ok(sizes)
}

/// The size at brotli's strongest setting, 11, with the window of 4 MiB that hosts use.
fn brotli_size(bytes: &[u8]) -> Outcome<usize> {
    let mut packed = Vec::new();
    let mut writer = brotli::CompressorWriter::new(&mut packed, 4096, 11, 22);
    writer
        .write_all(bytes)
        .map_err(|error| format!("brotli failed: {error}"))?;
    drop(writer);
    Ok(packed.len())
}

fn only_for_installing(address: &str) -> bool {
    address.starts_with("icons/") && address != "icons/mark.svg"
}

fn has_extension(address: &str, extension: &str) -> bool {
    Path::new(address)
        .extension()
        .is_some_and(|found| found == extension)
}

fn sum(sizes: impl Iterator<Item = usize>) -> usize {
    sizes.sum()
}

fn line(what: &str, raw: usize, sent: usize) {
    println!("{:>10} {:>10}  {what}", kilobytes(raw), kilobytes(sent));
}

/// Thousands of bytes with one decimal.
fn kilobytes(bytes: usize) -> String {
    format!("{}.{} kB", bytes / 1000, bytes % 1000 / 100)
}

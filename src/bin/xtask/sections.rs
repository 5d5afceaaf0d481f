//! Takes out of the program what only tools read.

use std::fs;
use std::path::Path;

use crate::Outcome;

/// What every WebAssembly file begins with: its mark and the version of the form.
const HEAD: usize = 8;

/// The number of a section that tools put in: names of functions, which tools were at work.
const CUSTOM: u8 = 0;

/// Takes such sections out of a WebAssembly file. The browser reads none of them.
pub(crate) fn strip(path: &Path) -> Outcome {
    let cannot = |what: &str, error: &dyn std::fmt::Display| {
        format!("{} cannot be {what}: {error}", path.display())
    };
    let bytes = fs::read(path).map_err(|error| cannot("read", &error))?;
    let kept = without_custom(&bytes)
        .ok_or_else(|| cannot("stripped", &"its sections do not fill it."))?;
    fs::write(path, kept).map_err(|error| cannot("written", &error))
}

/// The file without them; `None` when its sections do not end where it does.
fn without_custom(bytes: &[u8]) -> Option<Vec<u8>> {
    let (head, mut rest) = bytes.split_at_checked(HEAD)?;
    let mut kept = head.to_vec();
    while let Some((number, behind)) = rest.split_first() {
        let (length, content) = whole(behind)?;
        let (_, next) = content.split_at_checked(length)?;
        if *number != CUSTOM {
            kept.extend_from_slice(rest.get(..rest.len() - next.len())?);
        }
        rest = next;
    }
    Some(kept)
}

/// A whole number of seven bits a byte, low first, and what stands behind it.
fn whole(bytes: &[u8]) -> Option<(usize, &[u8])> {
    let last = bytes.iter().position(|byte| *byte < 0x80)?;
    let (number, rest) = bytes.split_at_checked(last + 1)?;
    let bits = |byte: &u8| usize::from(byte & 0x7f);
    let value = number.iter().rev().try_fold(0_usize, |value, byte| {
        value.checked_mul(0x80)?.checked_add(bits(byte))
    })?;
    Some((value, rest))
}

#[cfg(test)]
mod tests {
    use super::without_custom;

    #[test]
    fn only_sections_for_tools_go() {
        let head = b"\0asm\x01\0\0\0";
        let (tools, code) = ([0, 3, 1, b'n', 7], [10, 0x82, 0, 5, 6]);
        let file = [head.as_slice(), &tools, &code, &tools].concat();
        let wanted = [head.as_slice(), &code].concat();
        assert_eq!(without_custom(&file), Some(wanted));
        let cut_short = [head.as_slice(), &[10, 0x82, 0, 5]].concat();
        assert_eq!(without_custom(&cut_short), None);
    }
}

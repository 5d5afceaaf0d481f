//! QR codes, read back by a decoder that is not ours.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::link::{decode, encode, encode_digits};
use skimwright::quantity::Length;
use skimwright::sheet::{Qr, QrLevel, qr};

const ADDRESS: &str = "https://shop.example/plan/#";

/// What a decoder reads from the code, its modules four pixels wide.
fn read(code: &Qr) -> String {
    const PIXELS: usize = 4;
    let side = code.side() * PIXELS;
    let shade = |x: usize, y: usize| {
        if code.is_dark(x / PIXELS, y / PIXELS) {
            0
        } else {
            255
        }
    };
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, shade);
    let grids = image.detect_grids();
    assert_eq!(grids.len(), 1);
    let (_, text) = grids[0].decode().unwrap();
    text
}

#[test]
fn a_decoder_reads_the_link_of_every_example() {
    for job in demo_jobs().into_iter().chain([Job::default()]) {
        let mut sides = Vec::new();
        for link in [encode(&job).unwrap(), encode_digits(&job).unwrap()] {
            let address = format!("{ADDRESS}{link}");
            let code = qr(&address).unwrap();
            assert!(QrLevel::M <= code.level());
            assert_eq!(
                code.side(),
                17 + 4 * usize::from(code.version()) + 2 * Qr::QUIET
            );
            let text = read(&code);
            assert_eq!(text, address);
            assert_eq!(decode(&text).as_ref(), Ok(&job));
            sides.push(code.side());
        }
        assert!(sides[1] < sides[0], "digits take less room: {sides:?}");
    }
}

/// The most that ISO/IEC 18004 says version 40 holds: 7089 digits or 2953 bytes with level L, 5596 or 2331 with M.
#[test]
fn the_largest_codes_are_those_of_the_standard() {
    for (letter, most_m, most_l) in [("7", 5596, 7089), ("x", 2331, 2953), ("A", 3391, 4296)] {
        let at = |count: usize| qr(&letter.repeat(count));
        let level = |count: usize| at(count).map(|code| (code.version(), code.level()));
        assert_eq!(level(most_m), Some((40, QrLevel::M)), "{letter}");
        // With level L it is smaller again.
        assert!(
            at(most_m + 1).is_some_and(|code| code.level() == QrLevel::L && code.version() < 40)
        );
        assert_eq!(level(most_l), Some((40, QrLevel::L)), "{letter}");
        assert!(at(most_l + 1).is_none(), "{letter}");
    }
    let digits = "0123456789".repeat(700);
    let address = format!("{ADDRESS}{digits}");
    assert_eq!(read(&qr(&address).unwrap()), address);
}

#[test]
fn any_address_has_a_code_or_none() {
    for text in [
        "",
        "#",
        "##1",
        "HTTPS://SHOP.EXAMPLE/#12",
        "é#1",
        "\0",
        "a#1a",
    ] {
        let code = qr(text).unwrap();
        assert_eq!(code.version(), 1 + u8::from(text.len() > 20));
    }
    assert!(qr(&"é".repeat(1_000_000)).is_none());
}

#[test]
fn the_path_covers_the_dark_modules() {
    let code = qr(&format!("{ADDRESS}03123456789")).unwrap();
    let mut dark = vec![vec![false; code.side()]; code.side()];
    for run in code.path().split_terminator('z') {
        let (at, long) = run.strip_prefix('M').unwrap().split_once('h').unwrap();
        let (x, y) = at.split_once(' ').unwrap();
        let (x, y): (usize, usize) = (x.parse().unwrap(), y.parse().unwrap());
        let (long, back) = long.split_once("v1h-").unwrap();
        assert_eq!(long, back);
        dark[y][x..x + long.parse::<usize>().unwrap()].fill(true);
    }
    for (y, row) in dark.iter().enumerate() {
        for (x, is_dark) in row.iter().enumerate() {
            assert_eq!(*is_dark, code.is_dark(x, y), "{x} {y}");
        }
    }
    let quiet =
        (0..code.side()).all(|at| (0..Qr::QUIET).all(|edge| !dark[at][edge] && !dark[edge][at]));
    assert!(quiet);
    let file = code.svg(Length::mm(0.5), "a < b");
    assert!(file.contains("<title>a &lt; b</title>") && file.contains(&code.path()));
    let wide = code.least_side().to_mm() / 0.4 * 0.5;
    assert!(file.contains(&format!("width=\"{wide}mm\"")), "{file}");
}

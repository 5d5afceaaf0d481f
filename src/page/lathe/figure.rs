//! The figure of a step, large enough to be read at arm's length and more.
//!
//! It is drawn, not written: a long one is made narrower first, down to where its digits can still be told, then smaller,
//! so that it always fits and is never cut off. Every font comes out as wide as its place, whatever the device has.

use skimwright::sheet::short;
use yew::prelude::*;

/// Height of the drawing's place in its own units, one CSS pixel each where it is drawn full size.
const HEIGHT: f64 = 116.0;

/// Size of the type: digits are 0.70 to 0.73 of it high in the fonts of phones and desks, 105 to 110 units.
const TYPE: f64 = 150.0;

/// Where digits stand, from the top of their place.
const BASELINE: f64 = 113.0;

/// Width of a digit over the size of the type: the mean of common fonts.
const DIGIT: f64 = 0.58;

/// Width of a character over that of a digit.
fn width_of(character: char) -> f64 {
    match character {
        '.' | ',' | ' ' | '\u{a0}' | '\'' | ':' => 0.5,
        '/' => 0.65,
        _ if character.is_ascii_uppercase() => 1.25,
        _ => 1.0,
    }
}

/// The figure with its unit; `words` is what readers say.
pub(crate) fn large_figure(text: &str, unit: &str, words: String) -> Html {
    let characters: f64 = text.chars().map(width_of).sum();
    let width = characters * DIGIT * TYPE;
    let class = match text.chars().count() {
        ..=6 => "dial-figure",
        7 => "dial-figure dial-figure-long",
        _ => "dial-figure dial-figure-longest",
    };
    let (width, height) = (short(width), short(HEIGHT));
    html! {
        <p class="dial">
            <svg {class} width={width.clone()} height={height.clone()} viewBox={format!("0 0 {width} {height}")}
                preserveAspectRatio="none" role="img" aria-label={words}>
                <text x="0" y={short(BASELINE)} font-size={short(TYPE)} textLength={width.clone()}
                    lengthAdjust="spacingAndGlyphs">{ text.to_owned() }</text>
            </svg>
            if !unit.is_empty() {
                <span class="dial-unit" aria-hidden="true">{ unit.to_owned() }</span>
            }
        </p>
    }
}

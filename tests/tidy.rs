//! Rules of the source tree that no linter knows.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::fs;
use std::path::{Path, PathBuf};

/// All that may stand at the top of the checkout, files with a leading dot apart.
const TOP: &[&str] = &[
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "Trunk.toml",
    "index.html",
    "rust-toolchain.toml",
    "src",
    "styles",
    "tests",
    "webdriver.json",
];

/// What is made while working and never committed.
const MADE: &[&str] = &["dist", "target"];

/// What belongs to the page and its tools; all else in `src/` is the core.
const NOT_CORE: &[&str] = &[
    "src/bin/",
    "src/js/",
    "src/main.rs",
    "src/page/",
    "src/shell/",
];

/// Names that only the page may use.
const WEB: &[&str] = &["yew", "web_sys", "js_sys", "wasm_bindgen"];

/// What brings kilobytes of the library into the page, and what stands in its place.
const HEAVY: &[&str] = &[
    // `page::short_map`, `order`, `letter`, ASCII, `quantity::digits`.
    "BTreeMap",
    "BTreeSet",
    ".sort",
    ".is_alphabetic",
    ".is_alphanumeric",
    "char::to_lowercase",
    ":.1}",
    ":.2}",
    ":.3}",
];

const LONGEST_FILE: usize = 500;

const LONGEST_README: usize = 80;

/// Properties whose value is, or holds, a colour.
const PAINTED: &[&str] = &[
    "background",
    "border",
    "caret-color",
    "color",
    "column-rule",
    "fill",
    "outline",
    "accent-color",
    "box-shadow",
    "stop-color",
    "stroke",
    "text-decoration",
];

/// The colours that CSS knows by a plain name: its sixteen oldest, and others that are typed in haste.
const NAMED: &[&str] = &[
    "aqua",
    "black",
    "blue",
    "brown",
    "coral",
    "crimson",
    "cyan",
    "darkblue",
    "darkgray",
    "darkgreen",
    "darkred",
    "dimgray",
    "fuchsia",
    "gold",
    "gray",
    "green",
    "grey",
    "ivory",
    "lightgray",
    "lime",
    "magenta",
    "maroon",
    "navy",
    "olive",
    "orange",
    "pink",
    "purple",
    "rebeccapurple",
    "red",
    "salmon",
    "silver",
    "steelblue",
    "tan",
    "teal",
    "tomato",
    "white",
    "whitesmoke",
    "yellow",
];

#[test]
fn the_top_holds_only_what_is_listed() {
    let unknown: Vec<String> = fs::read_dir(top())
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .filter(|name| {
            !name.starts_with('.')
                && !TOP.contains(&name.as_str())
                && !MADE.contains(&name.as_str())
        })
        .collect();
    assert_eq!(
        unknown,
        Vec::<String>::new(),
        "move these into src, styles or tests"
    );
}

#[test]
fn the_core_names_nothing_of_the_web() {
    let is_core = |name: &str| !NOT_CORE.iter().any(|folder| name.starts_with(folder));
    let found = lines_where("src", &["rs"], |name, line| {
        is_core(name) && WEB.iter().any(|word| line.contains(word))
    });
    assert_eq!(
        found,
        Vec::<String>::new(),
        "the core must build without a browser"
    );
}

#[test]
fn the_page_carries_no_heavy_piece_of_the_library() {
    let for_page = |name: &str| {
        !name.starts_with("src/bin/") && !name.ends_with("tests.rs") && name != "src/order.rs"
    };
    let found = lines_where("src", &["rs"], |name, line| {
        for_page(name) && HEAVY.iter().any(|piece| line.contains(piece))
    });
    assert_eq!(
        found,
        Vec::<String>::new(),
        "the page has a smaller way for it"
    );
}

#[test]
fn no_source_file_is_too_long_to_read() {
    let long: Vec<String> = files("src", &["rs", "js"])
        .into_iter()
        .chain(files("styles", &["css"]))
        .filter(|(_, text)| LONGEST_FILE < text.lines().count())
        .map(|(name, _)| name)
        .collect();
    assert_eq!(long, Vec::<String>::new(), "split these by noun");
}

#[test]
fn the_readme_is_short() {
    let lines = fs::read_to_string(top().join("README.md"))
        .unwrap()
        .lines()
        .count();
    assert!(lines <= LONGEST_README, "{lines} lines");
}

#[test]
fn only_the_tokens_hold_colours() {
    let found = lines_where("styles", &["css"], |name, line| {
        name != "styles/tokens.css" && holds_raw_colour(line)
    });
    assert_eq!(
        found,
        Vec::<String>::new(),
        "name the colour's role in tokens.css"
    );
}

#[test]
fn raw_colours_are_recognised() {
    for line in [
        "color: #fff;",
        "  background: rgb(0 0 0 / 50%);",
        "border: 1px solid red;",
        "fill: hsl(1 2% 3%);",
    ] {
        assert!(holds_raw_colour(line), "{line}");
    }
    for line in [
        "color: var(--ink);",
        ".red-mark {",
        "border: 0 solid currentColor;",
        "fill: none;",
        "a:hover {",
    ] {
        assert!(!holds_raw_colour(line), "{line}");
    }
}

#[test]
fn the_page_writes_no_styles_or_markup_of_its_own() {
    let found = lines_where("src/page", &["rs"], |_, line| {
        line.contains("from_html_unchecked")
            || line
                .split_whitespace()
                .any(|word| word.starts_with("style="))
    });
    assert_eq!(
        found,
        Vec::<String>::new(),
        "the page's policy stops these: use classes and elements"
    );
}

/// Keys as browsers name them, not as a person reads them.
const KEYS: [&str; 2] = ["\"Home\" =>", "\"End\" =>"];

#[test]
fn all_text_of_the_page_stands_in_its_catalogue() {
    let found = lines_where("src/page", &["rs"], |name, line| {
        !name.starts_with("src/page/words/")
            && !name.ends_with("tests.rs")
            && name != "src/page/hooks/database.rs"
            && !line.trim_start().starts_with("//")
            && !KEYS.iter().any(|key| line.trim_start().starts_with(key))
            && (holds_sentence(line) || holds_plain_words(line))
    });
    assert_eq!(
        found,
        Vec::<String>::new(),
        "text that a person reads belongs to src/page/words"
    );
}

#[test]
fn words_are_told_from_classes_and_markup() {
    for text in [
        "{ \"mm\" }",
        "<p>{ \"of the diameter\" }</p>",
        "aria-label=\"drawing\"",
        "title=\"x\"",
        "placeholder=\"figure\"",
        "(\"aria-label\", \"chart\".to_owned()),",
        "text(\"on hand\")",
        "text(\"on\")",
        "format!(\"{count} rows in all\")",
        "button(\"undo\", onclick)",
    ] {
        assert!(holds_plain_words(text), "{text}");
    }
    for code in [
        "<div class=\"field wide\">",
        "class={classes!(\"field field-choice\", wrong.then_some(\"field-wrong\"))}",
        "element(\"p\", \"chart-axis chart-across\", text(up))",
        "{ \" = \" }",
        "let class = if ask.off { \"ask ask-off\" } else { \"ask\" };",
        "any_button(\"button\", text(label), None, onclick)",
        "element(\"section\", \"group shop\", drawn.collect())",
        "tag(\"text\", class, &attributes, text(says))",
        "aria-label={words.say(Text::Menu)}",
        "(\"aria-labelledby\", format!(\"{title_id} {says_id}\")),",
        "<button type=\"button\">",
        "format!(\"{place}-{field}\")",
    ] {
        assert!(!holds_plain_words(code), "{code}");
    }
}

#[test]
fn figures_leave_the_page_through_its_words() {
    let apart = |name: &str| {
        // What is put into a field's entry is read again, and is no text of the page.
        name.starts_with("src/page/words/") || name.starts_with("src/page/edit/")
    };
    let found = lines_where("src/page", &["rs"], |name, line| {
        !apart(name)
            && !name.ends_with("tests.rs")
            && (line.contains("show::") || line.contains("units()."))
    });
    assert_eq!(
        found,
        Vec::<String>::new(),
        "`Words` gives figures the decimal mark of the language"
    );
}

/// What a person hears or reads of an element, as attributes.
const SPOKEN: &[&str] = &[
    "aria-label",
    "aria-description",
    "aria-placeholder",
    "aria-roledescription",
    "aria-valuetext",
    "title",
    "placeholder",
    "alt",
    "summary",
];

/// What makes text of what it is given.
const TEXTS: &[&str] = &[
    " text(",
    "(text(",
    "paragraph(",
    "hint(",
    " button(",
    "status(",
    "option(",
];

/// Whether a line has words between quotes where a person reads them: as text of an element, as its name, or several
/// with nothing but spaces between.
fn holds_plain_words(line: &str) -> bool {
    let pieces: Vec<&str> = line.split('"').collect();
    (1..pieces.len()).step_by(2).any(|place| {
        let piece = |back: usize| {
            place
                .checked_sub(back)
                .and_then(|at| pieces.get(at).copied())
        };
        let (text, before) = (piece(0).unwrap_or_default(), piece(1).unwrap_or_default());
        let has_letter = text.chars().any(char::is_alphabetic) && !text.contains(['{', '}']);
        let is_spoken = SPOKEN.iter().any(|name| {
            before.trim_start().ends_with(&format!(" {name}="))
                || before.trim_start() == format!("{name}=")
                || (before == ", " && piece(2) == Some(name))
        });
        let spaced = format!(" {before}");
        let is_text = TEXTS.iter().any(|start| spaced.ends_with(start));
        // `{ "text" }` between tags, not a block of code.
        let is_child = before.strip_suffix("{ ").is_some_and(|it| {
            let it = it.trim();
            it.is_empty() || it.ends_with(['>', '}'])
        });
        let is_class = before.contains("class")
            || piece(3).is_some_and(|it| it.ends_with("element("))
            || before.ends_with("any_button(")
            || before.ends_with("reason = ");
        let is_word = |it: &str| it.len() > 1 && it.chars().all(char::is_alphabetic);
        let written: Vec<&str> = text.split(' ').filter(|it| !it.contains('{')).collect();
        let in_a_row = written
            .windows(2)
            .any(|two| two.iter().all(|it| is_word(it)));
        (has_letter && (is_spoken || is_text || is_child)) || (in_a_row && !is_class)
    })
}

#[test]
fn sentences_are_told_from_codes() {
    for text in [
        "\"Tap a dimension\"",
        "\"Undo\"",
        "{ \"From here to there\" }",
    ] {
        assert!(holds_sentence(text), "{text}");
    }
    for code in [
        "class=\"field-input banner-link\"",
        "\"M3 3h18v18\"",
        "\"AbortError\"",
        "\"mm\"",
        "\" = \"",
    ] {
        assert!(!holds_sentence(code), "{code}");
    }
}

/// Names of the platform, which look like words.
const PLATFORM: &[&str] = &["Enter", "Escape", "Tab"];

/// Whether a line has a text between quotes that begins like a word with a capital: `Undo`, `Tap a dimension`.
fn holds_sentence(line: &str) -> bool {
    line.split('"').skip(1).step_by(2).any(|text| {
        let first = text.split(' ').next().unwrap_or_default();
        let mut letters = first.chars();
        let capital = letters.next().is_some_and(char::is_uppercase);
        let rest = letters.as_str();
        let word = rest.len() > 1 && rest.chars().all(char::is_lowercase);
        let article = first.len() == 1 && first == "A" && text.len() > 2;
        capital && (word || article) && !PLATFORM.contains(&text)
    })
}

/// Whether a line of a style sheet gives a colour by its value or plain name.
fn holds_raw_colour(line: &str) -> bool {
    let Some((property, value)) = line.trim().split_once(": ") else {
        return false;
    };
    let painted =
        property.starts_with("--") || PAINTED.iter().any(|start| property.starts_with(start));
    let by_value = ["#", "rgb(", "rgba(", "hsl(", "hsla(", "oklch(", "lab("]
        .iter()
        .any(|start| value.contains(start));
    let by_name = value
        .split([' ', ',', ';', '(', ')'])
        .any(|word| NAMED.contains(&word.to_ascii_lowercase().as_str()));
    painted && (by_value || by_name)
}

/// Every line for which `wrong` holds, as `file:number: line`.
fn lines_where(
    folder: &str,
    extensions: &[&str],
    wrong: impl Fn(&str, &str) -> bool,
) -> Vec<String> {
    let mut found = Vec::new();
    for (name, text) in files(folder, extensions) {
        for (number, line) in text.lines().enumerate() {
            if wrong(&name, line) {
                found.push(format!("{name}:{}: {}", number + 1, line.trim()));
            }
        }
    }
    found
}

/// The files under a folder with one of the extensions: name from the top, with forward slashes, and text.
fn files(folder: &str, extensions: &[&str]) -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut folders = vec![top().join(folder)];
    while let Some(next) = folders.pop() {
        for entry in fs::read_dir(next).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path
                .extension()
                .is_some_and(|extension| extensions.iter().any(|known| extension == *known))
            {
                let name = path
                    .strip_prefix(top())
                    .unwrap()
                    .to_str()
                    .unwrap()
                    .replace('\\', "/");
                found.push((name, fs::read_to_string(&path).unwrap()));
            }
        }
    }
    found.sort();
    found
}

fn top() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).to_path_buf()
}

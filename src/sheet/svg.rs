//! The drawing as a file of its own: an SVG image in millimetres, black on white, at a scale of ISO 5455.

use core::fmt::Write;

use super::drawing::{Canvas, Drawing, Stage, draw};
use super::geometry::{Geometry, Point, Role};
use super::marks::Mark;
use crate::job::Job;
use crate::plan::Plan;
use crate::quantity::digits::push_hundredths;
use crate::quantity::{Length, Units};

/// Millimetres of paper a pixel: a canvas of 1080 is 270 mm, inside the borders of A4 across; text of 14 is 3.5 mm
/// high, the size of ISO 3098 that is usual at A4.
const PAPER: f64 = 0.25;

/// Drawing scales of ISO 5455, paper to part, the largest first.
const SCALES: [(u32, u32); 18] = [
    (50, 1),
    (20, 1),
    (10, 1),
    (5, 1),
    (2, 1),
    (1, 1),
    (1, 2),
    (1, 5),
    (1, 10),
    (1, 20),
    (1, 50),
    (1, 100),
    (1, 200),
    (1, 500),
    (1, 1000),
    (1, 2000),
    (1, 5000),
    (1, 10000),
];

/// Draws a job and its plan for [`svg`]: as [`drawing`](super::drawing()) does, on a sheet of A4 laid across and at a
/// scale of ISO 5455.
pub fn paper(job: &Job, plan: &Plan, stage: Stage, units: Units) -> Drawing {
    let canvas = Canvas {
        width: 1080.0,
        text_height: 14.0,
        target: 32.0,
        ..Canvas::default()
    };
    draw(job, plan, (stage, units), canvas, |factor| {
        let (paper, part) = scale_below(factor * PAPER);
        f64::from(paper) / f64::from(part) / PAPER
    })
}

/// Draws a job and its plan for [`svg`] on paper of a width, at true scale where that fits, else at the largest scale of
/// ISO 5455 that does. The width is kept to 60–1024 mm.
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, quantity::{Length, Units}};
/// use skimwright::sheet::{Stage, scale_of, true_scale};
/// let job = Job::default();
/// let sheet = true_scale(&job, &plan(&job), Stage::Plan, Units::Metric, Length::mm(180.0));
/// assert_eq!(scale_of(&sheet), (1, 1));
/// let narrow = true_scale(&job, &plan(&job), Stage::Plan, Units::Metric, Length::mm(90.0));
/// assert_eq!(scale_of(&narrow), (1, 2));
/// ```
pub fn true_scale(job: &Job, plan: &Plan, stage: Stage, units: Units, width: Length) -> Drawing {
    let canvas = Canvas {
        width: width.to_mm() / PAPER,
        text_height: 14.0,
        target: 32.0,
        ..Canvas::default()
    };
    draw(job, plan, (stage, units), canvas.checked(), |factor| {
        let (paper, part) = scale_below((factor * PAPER).min(1.0));
        f64::from(paper) / f64::from(part) / PAPER
    })
}

/// The scale that [`svg`] gives to a drawing, paper to part.
pub fn scale_of(drawing: &Drawing) -> (u32, u32) {
    scale_below((drawing.scale * PAPER).max(f64::MIN_POSITIVE))
}

/// The largest scale of ISO 5455 that is no larger than `most`; the smallest one where none is.
fn scale_below(most: f64) -> (u32, u32) {
    let ratio = |(paper, part): &(u32, u32)| f64::from(*paper) / f64::from(*part);
    let fits = |scale: &&(u32, u32)| ratio(scale) <= most * (1.0 + 1e-9);
    SCALES.iter().find(fits).copied().unwrap_or((1, 10_000))
}

/// A drawing as the text of an SVG file that stands by itself: no style sheet, no script, no other file.
///
/// `title` is the name of the job, `note` what else is to stand in the last line; both may hold anything. The image
/// has its size in millimetres, so that it prints at the scale that it names.
///
/// # Accuracy
/// Coordinates are rounded to a hundredth of a pixel, 0.0025 mm on paper.
/// # Source
/// Line widths 0.5 and 0.25 mm in the ratio 2 : 1 of ISO 128-2, scales of ISO 5455; from memory.
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, quantity::Units};
/// use skimwright::sheet::{Stage, paper, svg};
/// let job = Job::default();
/// let file = svg(&paper(&job, &plan(&job), Stage::Plan, Units::Metric), "Spindle <2>", "mm");
/// assert!(file.starts_with("<svg") && file.contains("Spindle &lt;2&gt;"));
/// // 110 mm of part fit twice as large on the sheet.
/// assert!(file.contains("2 : 1"));
/// ```
pub fn svg(drawing: &Drawing, title: &str, note: &str) -> String {
    let (paper, part) = scale_of(drawing);
    let line = [title, &format!("{paper} : {part}"), note]
        .into_iter()
        .filter(|words| !words.is_empty())
        .collect::<Vec<_>>()
        .join(" \u{b7} ");
    file(drawing, title, &line)
}

/// The same to be shown at any size: it names no scale.
pub fn picture(drawing: &Drawing) -> String {
    file(drawing, "", "")
}

/// The file with a last line, which needs no room where it is empty.
fn file(drawing: &Drawing, title: &str, line: &str) -> String {
    let (paper, part) = scale_of(drawing);
    let millimetres = if drawing.scale > 0.0 {
        f64::from(paper) / f64::from(part) / drawing.scale
    } else {
        PAPER
    };
    let text = drawing.text_height;
    let foot = drawing.height + 2.0 * text;
    let height = if line.is_empty() {
        drawing.height
    } else {
        foot + text
    };
    let mut file = String::new();
    // Writing to a string cannot fail.
    let _ = write!(
        file,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{}mm\" height=\"{}mm\" viewBox=\"0 0 {} {}\" \
         font-family=\"sans-serif\" font-size=\"{}\"><title>{}</title>\
         <rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\
         <g fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\">",
        short(drawing.width * millimetres),
        short(height * millimetres),
        short(drawing.width),
        short(height),
        short(text),
        Escaped(title),
    );
    // The wide line is 0.5 mm on paper, or as much thinner as the whole.
    let wide = 0.5 / PAPER;
    for shape in &drawing.shapes {
        path(&mut file, &shape.geometry.path(), &paint(shape.role, wide));
    }
    for mark in &drawing.dimensions {
        let lines = Geometry::Segments(mark.lines.clone()).path();
        path(&mut file, &lines, &stroke(wide / 2.0));
        let arrows: String = mark.arrows.iter().map(|arrow| arrow_path(arrow)).collect();
        path(&mut file, &arrows, "fill=\"#000\" stroke=\"none\"");
    }
    for mark in &drawing.marks {
        let lines = Geometry::Segments(vec![mark.line]).path();
        path(&mut file, &lines, &stroke(2.0 * wide));
        let _ = write!(
            file,
            "<circle cx=\"{}\" cy=\"{}\" r=\"{}\" fill=\"#fff\" stroke-width=\"{}\"/>",
            short(mark.at.x),
            short(mark.at.y),
            short(text * Mark::RADIUS),
            short(wide / 2.0),
        );
    }
    file.push_str("</g><g fill=\"#000\" text-anchor=\"middle\">");
    for mark in &drawing.dimensions {
        write_text(&mut file, mark.text_at, &mark.text);
    }
    for mark in &drawing.marks {
        let at = Point::new(mark.at.x, mark.at.y + text * 0.35);
        write_text(&mut file, at, &mark.number.to_string());
    }
    file.push_str("</g><g fill=\"#000\">");
    if !line.is_empty() {
        write_text(&mut file, Point::new(text, foot), line);
    }
    file.push_str("</g></svg>\n");
    file
}

fn path(file: &mut String, path: &str, paint: &str) {
    if !path.is_empty() {
        let _ = write!(file, "<path d=\"{path}\" {paint}/>");
    }
}

fn write_text(file: &mut String, at: Point, text: &str) {
    let (x, y) = (short(at.x), short(at.y));
    let _ = write!(file, "<text x=\"{x}\" y=\"{y}\">{}</text>", Escaped(text));
}

fn arrow_path(points: &[Point]) -> String {
    let (points, closed) = (points.to_vec(), true);
    Geometry::Polyline { points, closed }.path()
}

/// How a role is painted: line types of ISO 128-2, tints in grey.
fn paint(role: Role, wide: f64) -> String {
    const DASHES: &str = " stroke-dasharray=\"14 3 2 3\"";
    const TWO_DOTS: &str = " stroke-dasharray=\"14 3 2 3 2 3\"";
    let area = |tint: &str| format!("fill=\"{tint}\" stroke=\"none\"");
    match role {
        Role::RemovedArea => area("#e4e4e4"),
        Role::KerfArea => area("#aaa"),
        Role::OpenArea => area("#fff"),
        Role::ThickOutline | Role::PickedLayer => stroke(wide),
        Role::CutLine => stroke(wide) + DASHES,
        Role::LastLayer => stroke(wide / 2.0) + TWO_DOTS,
        Role::Axis => stroke(wide / 2.0) + DASHES,
        Role::RemovedHatch
        | Role::SectionHatch
        | Role::RoughLayer
        | Role::ThinOutline
        | Role::ThreadThin
        | Role::FlatMark
        | Role::BreakLine => stroke(wide / 2.0),
    }
}

fn stroke(width: f64) -> String {
    format!("stroke-width=\"{}\"", short(width))
}

/// A number as SVG writes it: to a hundredth.
pub fn short(value: f64) -> String {
    let mut text = String::new();
    push_hundredths(&mut text, value);
    text
}

/// Text that no reader of XML can take for a mark, without the control characters that XML has no place for.
pub(super) struct Escaped<'a>(pub(super) &'a str);

impl core::fmt::Display for Escaped<'_> {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        for character in self.0.chars() {
            match character {
                '&' => f.write_str("&amp;")?,
                '<' => f.write_str("&lt;")?,
                '>' => f.write_str("&gt;")?,
                '"' => f.write_str("&quot;")?,
                '\'' => f.write_str("&#39;")?,
                '\u{fffe}' | '\u{ffff}' => {}
                other if other.is_control() => f.write_char(' ')?,
                other => f.write_char(other)?,
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::demo::demo_jobs;
    use crate::plan::plan;

    /// Every tag is closed, in order, every attribute is in quotes, and no text holds a bare mark.
    #[track_caller]
    fn check_xml(file: &str) {
        let mut open: Vec<&str> = Vec::new();
        let mut rest = file.trim_end();
        while let Some(start) = rest.find('<') {
            let text = &rest[..start];
            assert!(!text.contains('>'), "{text}");
            for after in text.split('&').skip(1) {
                let known = ["amp;", "lt;", "gt;", "quot;", "#39;"];
                assert!(known.iter().any(|known| after.starts_with(known)), "{text}");
            }
            let end = start + rest[start..].find('>').unwrap();
            let tag = &rest[start + 1..end];
            assert!(
                !tag.contains('<') && tag.matches('"').count().is_multiple_of(2),
                "{tag}"
            );
            if let Some(name) = tag.strip_prefix('/') {
                assert_eq!(open.pop(), Some(name));
            } else if !tag.ends_with('/') {
                open.push(tag.split(' ').next().unwrap());
            }
            rest = &rest[end + 1..];
        }
        assert!(open.is_empty() && rest.is_empty(), "{open:?} {rest}");
    }

    fn number(file: &str, name: &str, until: &str) -> f64 {
        let start = file.find(name).unwrap() + name.len();
        let end = start + file[start..].find(until).unwrap();
        file[start..end].parse().unwrap()
    }

    #[test]
    fn every_drawing_is_whole_and_escaped() {
        let bad = "</svg><script>alert(\"1\")</script> & ' \u{0} \u{ffff}";
        for job in demo_jobs() {
            let plan = plan(&job);
            for stage in [Stage::Received, Stage::Wanted, Stage::Plan] {
                for units in Units::ALL {
                    let file = svg(&paper(&job, &plan, stage, units), bad, bad);
                    check_xml(&file);
                    assert!(!file.contains("<script") && !file.contains('\u{0}'));
                    assert_eq!(file.matches("</svg>").count(), 1);
                    assert!(!file.contains("style") && !file.contains("NaN"));
                }
            }
        }
        check_xml(&svg(&Drawing::default(), "", ""));
        let [arbor, ..] = demo_jobs();
        let drawn = paper(&arbor, &plan(&arbor), Stage::Plan, Units::Metric);
        let shown = picture(&drawn);
        check_xml(&shown);
        assert!(!shown.contains(" : ") && shown.contains("<text"));
    }

    #[test]
    fn it_prints_at_the_scale_that_it_names() {
        // Head 30, shank 80: 110 mm at 2 : 1 are 220 on paper.
        let job = Job::default();
        let drawing = paper(&job, &plan(&job), Stage::Received, Units::Metric);
        let file = svg(&drawing, "", "mm");
        let pixel = number(&file, " width=\"", "mm\"") / number(&file, "viewBox=\"0 0 ", " ");
        assert!((pixel - PAPER).abs() < 1e-3, "{pixel}");
        assert!((drawing.scale * pixel * 110.0 - 220.0).abs() < 0.3);
        assert!(file.contains(">2 : 1 \u{b7} mm</text>"), "{file}");
    }

    #[test]
    fn a_screen_drawing_keeps_its_shape_and_gets_a_scale() {
        let [arbor, ..] = demo_jobs();
        let canvas = Canvas::default();
        let drawing =
            crate::sheet::drawing(&arbor, &plan(&arbor), Stage::Plan, canvas, Units::Metric);
        let file = svg(&drawing, &arbor.title, "");
        check_xml(&file);
        let millimetres = number(&file, " width=\"", "mm\"") / 328.0 * drawing.scale;
        // Pixels of paper over millimetres of part: one half.
        assert!((millimetres - 0.5).abs() < 1e-3, "{millimetres}");
        assert!(file.contains("1 : 2"));
    }

    #[test]
    fn scales_are_taken_from_the_list() {
        let cases = [
            (1.0, (1, 1)),
            (0.99, (1, 2)),
            (60.0, (50, 1)),
            (2.2, (2, 1)),
            (0.0, (1, 10_000)),
        ];
        for (most, wanted) in cases {
            assert_eq!(scale_below(most), wanted, "{most}");
        }
    }
}

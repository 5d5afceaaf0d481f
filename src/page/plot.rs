//! A chart as a picture, with its title and what it shows in words.

use skimwright::sheet::{Chart, Geometry, Point, short};
use yew::prelude::*;
use yew::virtual_dom::VTag;

use super::markup::{all, element, text};
use super::words::Words;

/// A chart with the names of its axes; `says` is what a reader is told of it.
pub(crate) fn plot(
    words: Words,
    chart: &Chart,
    id: &'static str,
    title: &'static str,
    says: String,
    [across, up]: [String; 2],
) -> Html {
    let (title_id, says_id) = (format!("{id}-title"), format!("{id}-says"));
    let (width, height) = (short(chart.width), short(chart.height));
    let attributes = [
        ("role", "img".to_owned()),
        ("aria-labelledby", format!("{title_id} {says_id}")),
        ("viewBox", format!("0 0 {width} {height}")),
        ("width", width),
        ("height", height),
    ];
    let mut inside = vec![
        tag("title", "", &[("id", title_id)], text(title)),
        tag("desc", "", &[("id", says_id)], text(says)),
    ];
    paint(words, chart, &mut inside);
    let parts = vec![
        element("p", "chart-axis", text(up)),
        tag("svg", "", &attributes, all(inside)),
        element("p", "chart-axis chart-across", text(across)),
    ];
    element("figure", "plot", all(parts))
}

/// All that is seen, in the order that it is painted.
fn paint(words: Words, chart: &Chart, inside: &mut Vec<Html>) {
    let plot = chart.plot;
    let (right, foot) = (plot.x + plot.width, plot.y + plot.height);
    let corner = |x, y| Point::new(x, y);
    inside.push(line("chart-part", &chart.outline));
    if let Some(band) = chart.band {
        let attributes = [
            ("x", short(band.x)),
            ("y", short(band.y)),
            ("width", short(band.width)),
            ("height", short(band.height)),
        ];
        inside.push(tag("rect", "chart-band", &attributes, Html::default()));
    }
    let levels = chart.up.iter().map(|tick| tick.at);
    inside.extend(levels.map(|y| line("chart-level", &[corner(plot.x, y), corner(right, y)])));
    let frame = [
        corner(plot.x, plot.y),
        corner(plot.x, foot),
        corner(right, foot),
    ];
    inside.push(line("chart-frame", &frame));
    let size = Chart::TICK_TEXT;
    inside.extend(chart.up.iter().map(|tick| {
        let at = corner(plot.x - 4.0, tick.at + size * 0.35);
        label("chart-up", at, size, words.marked(tick.text.clone()))
    }));
    inside.extend(chart.across.iter().map(|tick| {
        let at = corner(tick.at, foot + size * 1.3);
        label("chart-along", at, size, words.marked(tick.text.clone()))
    }));
    inside.push(line("chart-line", &chart.line));
    inside.extend(chart.dots.iter().map(|dot| {
        let (class, radius) = match dot.label {
            Some(_) => ("chart-dot is-marked", 5.0),
            None => ("chart-dot", 4.0),
        };
        let attributes = [
            ("cx", short(dot.at.x)),
            ("cy", short(dot.at.y)),
            ("r", short(radius)),
        ];
        tag("circle", class, &attributes, Html::default())
    }));
    let values = chart.dots.iter().filter_map(|dot| dot.label.as_ref());
    inside.extend(values.map(|(at, says)| {
        label(
            "chart-value",
            *at,
            Chart::LABEL_TEXT,
            words.marked(says.clone()),
        )
    }));
}

fn line(class: &'static str, points: &[Point]) -> Html {
    let (points, closed) = (points.to_vec(), false);
    let path = Geometry::Polyline { points, closed }.path();
    tag("path", class, &[("d", path)], Html::default())
}

fn label(class: &'static str, at: Point, size: f64, says: String) -> Html {
    let attributes = [
        ("x", short(at.x)),
        ("y", short(at.y)),
        ("font-size", short(size)),
    ];
    tag("text", class, &attributes, text(says))
}

/// An element with its attributes.
#[inline(never)]
fn tag(
    name: &'static str,
    class: &'static str,
    attributes: &[(&'static str, String)],
    inside: Html,
) -> Html {
    let mut tag = VTag::new(name);
    if !class.is_empty() {
        tag.add_attribute("class", class);
    }
    for (key, value) in attributes {
        tag.add_attribute(key, value.clone());
    }
    tag.add_child(inside);
    tag.into()
}

/// The numbers of a chart as a table, folded up until it is asked for.
pub(crate) fn numbers(title: &'static str, heads: &[&'static str], rows: Vec<Vec<String>>) -> Html {
    let heads = heads
        .iter()
        .map(|head| tag("th", "", &[("scope", "col".to_owned())], text(*head)));
    let cells = |row: Vec<String>| {
        let cells = row.into_iter().map(|cell| element("td", "", text(cell)));
        element("tr", "", cells.collect())
    };
    let table = vec![
        element("thead", "", element("tr", "", heads.collect())),
        element("tbody", "", rows.into_iter().map(cells).collect()),
    ];
    let parts = vec![
        element("summary", "", text(title)),
        element("table", "", all(table)),
    ];
    element("details", "chart-numbers", all(parts))
}

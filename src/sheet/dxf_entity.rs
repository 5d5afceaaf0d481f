//! The parts of a DXF file of release 12 (AC1009): lines, arcs, texts, and the tables that they need.
//!
//! A file is groups of two lines, a code that says what follows and the value. Only ASCII, every line ends with CR LF.
//!
//! # Source
//! "`AutoCAD` Release 12 DXF reference", group codes and sections; from memory, and read back by another program in
//! `tests/outside/`.

use core::fmt::{Display, Write};

use super::geometry::Point;
use crate::quantity::digits::push_digits;

/// Something drawn, in millimetres: x along the axis from the shoulder, y upward from the axis.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Entity {
    Line(Point, Point),
    /// Counter-clockwise between two angles in degrees.
    Arc {
        centre: Point,
        radius: f64,
        from: f64,
        to: f64,
    },
    /// A filled triangle.
    Solid([Point; 3]),
    /// One line of text, its foot at a point: the middle of it, or its beginning.
    Text {
        at: Point,
        height: f64,
        text: String,
        middle: bool,
    },
}

/// What an entity stands for, and with it line type and pen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Layer {
    Outline,
    Received,
    Removed,
    Section,
    Kerf,
    Cut,
    Rough,
    Last,
    Axis,
    Thread,
    Flat,
    Dimension,
    Title,
}

/// Line types by their usual names, with dashes and gaps in units of the drawing's line widths.
const LINE_TYPES: [(&str, &str, &[f64]); 3] = [
    ("CONTINUOUS", "Solid line", &[]),
    (
        "CENTER",
        "Center ____ _ ____ _ ____",
        &[14.0, -3.0, 2.0, -3.0],
    ),
    (
        "PHANTOM",
        "Phantom ____ _ _ ____ _ _ ____",
        &[14.0, -3.0, 2.0, -3.0, 2.0, -3.0],
    ),
];

impl Layer {
    const ALL: [Self; 13] = [
        Self::Outline,
        Self::Received,
        Self::Removed,
        Self::Section,
        Self::Kerf,
        Self::Cut,
        Self::Rough,
        Self::Last,
        Self::Axis,
        Self::Thread,
        Self::Flat,
        Self::Dimension,
        Self::Title,
    ];

    /// Name, colour and line type. Release 12 has no line widths: a colour is a pen, 7 the thick one.
    const fn look(self) -> (&'static str, u8, &'static str) {
        match self {
            Self::Outline => ("OUTLINE", 7, "CONTINUOUS"),
            Self::Received => ("RECEIVED", 4, "CONTINUOUS"),
            Self::Removed => ("HATCH_REMOVED", 1, "CONTINUOUS"),
            Self::Section => ("HATCH", 8, "CONTINUOUS"),
            Self::Kerf => ("KERF", 6, "CONTINUOUS"),
            Self::Cut => ("CUT", 6, "CENTER"),
            Self::Rough => ("PASS_ROUGH", 5, "CONTINUOUS"),
            Self::Last => ("PASS_LAST", 5, "PHANTOM"),
            Self::Axis => ("AXIS", 2, "CENTER"),
            Self::Thread => ("THREAD", 3, "CONTINUOUS"),
            Self::Flat => ("FLAT", 3, "CONTINUOUS"),
            Self::Dimension => ("DIMENSION", 2, "CONTINUOUS"),
            Self::Title => ("TITLE", 7, "CONTINUOUS"),
        }
    }
}

/// A file that grows group by group.
struct Groups(String);

impl Groups {
    fn put(&mut self, code: u16, value: impl Display) {
        // Writing to a string cannot fail.
        let _ = write!(self.0, "{code:>3}\r\n{value}\r\n");
    }

    fn number(&mut self, code: u16, value: f64) {
        self.put(code, decimal(value));
    }

    fn point(&mut self, code: u16, at: Point) {
        self.number(code, at.x);
        self.number(code + 10, at.y);
    }

    fn point_3d(&mut self, code: u16, at: Point) {
        self.point(code, at);
        self.number(code + 20, 0.0);
    }

    fn begin(&mut self, section: &str) {
        self.put(0, "SECTION");
        self.put(2, section);
    }

    fn table(&mut self, name: &str, count: usize) {
        self.put(0, "TABLE");
        self.put(2, name);
        self.put(70, count);
    }

    fn header(&mut self, (low, high): (Point, Point), text: f64) {
        self.begin("HEADER");
        for (name, code, value) in [("$ACADVER", 1, "AC1009"), ("$DWGCODEPAGE", 3, "ascii")] {
            self.put(9, name);
            self.put(code, value);
        }
        for (name, at) in [
            ("$INSBASE", Point::new(0.0, 0.0)),
            ("$EXTMIN", low),
            ("$EXTMAX", high),
        ] {
            self.put(9, name);
            self.point_3d(10, at);
        }
        for (name, at) in [("$LIMMIN", low), ("$LIMMAX", high)] {
            self.put(9, name);
            self.point(10, at);
        }
        for (name, value) in [("$LTSCALE", 1.0), ("$TEXTSIZE", text)] {
            self.put(9, name);
            self.number(40, value);
        }
        // Decimals, four of them, and angles in degrees.
        for (name, value) in [("$LUNITS", 2), ("$LUPREC", 4), ("$AUNITS", 0)] {
            self.put(9, name);
            self.put(70, value);
        }
        self.put(0, "ENDSEC");
    }

    fn tables(&mut self, dash: f64) {
        self.begin("TABLES");
        self.table("LTYPE", LINE_TYPES.len());
        for (name, words, dashes) in LINE_TYPES {
            self.put(0, "LTYPE");
            self.put(2, name);
            self.put(70, 0);
            self.put(3, words);
            self.put(72, 65);
            self.put(73, dashes.len());
            let whole: f64 = dashes.iter().map(|dash| dash.abs()).sum();
            self.number(40, whole * dash);
            for long in dashes {
                self.number(49, long * dash);
            }
        }
        self.put(0, "ENDTAB");
        self.table("LAYER", Layer::ALL.len() + 1);
        let looks = Layer::ALL.map(Layer::look);
        for (name, colour, line_type) in [("0", 7, "CONTINUOUS")].into_iter().chain(looks) {
            self.put(0, "LAYER");
            self.put(2, name);
            self.put(70, 0);
            self.put(62, colour);
            self.put(6, line_type);
        }
        self.put(0, "ENDTAB");
        self.table("STYLE", 1);
        self.put(0, "STYLE");
        self.put(2, "STANDARD");
        self.put(70, 0);
        for (code, value) in [(40, 0.0), (41, 1.0), (50, 0.0)] {
            self.number(code, value);
        }
        self.put(71, 0);
        self.number(42, 2.5);
        self.put(3, "txt");
        self.put(4, "");
        self.put(0, "ENDTAB");
        self.put(0, "ENDSEC");
    }

    fn entity(&mut self, layer: Layer, entity: &Entity) {
        let name = match entity {
            Entity::Line(..) => "LINE",
            Entity::Arc { .. } => "ARC",
            Entity::Solid(_) => "SOLID",
            Entity::Text { .. } => "TEXT",
        };
        self.put(0, name);
        self.put(8, layer.look().0);
        match entity {
            Entity::Line(from, to) => {
                self.point_3d(10, *from);
                self.point_3d(11, *to);
            }
            Entity::Arc {
                centre,
                radius,
                from,
                to,
            } => {
                self.point_3d(10, *centre);
                self.number(40, *radius);
                self.number(50, *from);
                self.number(51, *to);
            }
            Entity::Solid([a, b, c]) => {
                // The last corner twice makes a triangle of it.
                for (code, at) in [(10, a), (11, b), (12, c), (13, c)] {
                    self.point_3d(code, *at);
                }
            }
            Entity::Text {
                at,
                height,
                text,
                middle,
            } => {
                self.point_3d(10, *at);
                self.number(40, *height);
                self.put(1, text);
                if *middle {
                    self.put(72, 1);
                    self.point_3d(11, *at);
                }
            }
        }
    }
}

/// The text of a file with these entities. `notes` are comments at its head, `dash` is the length of one unit of the line
/// types, `height` that of texts.
pub(super) fn file(entities: &[(Layer, Entity)], notes: &[&str], dash: f64, height: f64) -> String {
    let mut groups = Groups(String::new());
    for note in notes {
        groups.put(999, ascii(note));
    }
    groups.header(extents(entities), height);
    groups.tables(dash);
    groups.begin("BLOCKS");
    groups.put(0, "ENDSEC");
    groups.begin("ENTITIES");
    for (layer, entity) in entities {
        groups.entity(*layer, entity);
    }
    groups.put(0, "ENDSEC");
    groups.put(0, "EOF");
    groups.0
}

/// The corners of what is drawn, texts by their feet alone.
fn extents(entities: &[(Layer, Entity)]) -> (Point, Point) {
    let points = entities.iter().flat_map(|(_, entity)| entity.points());
    let found = points.fold(None, |found: Option<(Point, Point)>, at| {
        let (low, high) = found.unwrap_or((at, at));
        Some((
            Point::new(low.x.min(at.x), low.y.min(at.y)),
            Point::new(high.x.max(at.x), high.y.max(at.y)),
        ))
    });
    let nought = Point::new(0.0, 0.0);
    found.unwrap_or((nought, nought))
}

impl Entity {
    /// Points that hold its extents.
    fn points(&self) -> Vec<Point> {
        match self {
            Self::Line(from, to) => vec![*from, *to],
            Self::Solid(corners) => corners.to_vec(),
            Self::Text { at, .. } => vec![*at],
            Self::Arc {
                centre,
                radius,
                from,
                to,
            } => {
                let at = |turn: f64| {
                    let (sine, cosine) = turn.to_radians().sin_cos();
                    Point::new(centre.x + radius * cosine, centre.y + radius * sine)
                };
                let on =
                    |turn: &f64| (turn - from).rem_euclid(360.0) <= (to - from).rem_euclid(360.0);
                let quarters = [0.0, 90.0, 180.0, 270.0].into_iter().filter(on);
                quarters.chain([*from, *to]).map(at).collect()
            }
        }
    }
}

/// A number with nine decimals at most: a picometre, where it is a length.
fn decimal(value: f64) -> String {
    /// What is larger is no length of a part.
    const MOST: f64 = 1e12;
    const LEAST: f64 = 5e-10;
    let value = if value.abs() < MOST { value } else { 0.0 };
    let mut text = String::new();
    if value <= -LEAST {
        text.push('-');
    }
    push_digits(&mut text, value, 9);
    let short = text.trim_end_matches('0').len();
    text.truncate(short);
    if text.ends_with('.') {
        text.push('0');
    }
    text
}

/// A text with nothing but what every reader shows: signs of the trade by the codes that DXF has for them, and a question
/// mark for what has none. Two percent signs and a circumflex would begin a code.
pub(super) fn ascii(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '\u{2300}' | '\u{d8}' | '\u{f8}' => plain.push_str("%%c"),
            '\u{b0}' => plain.push_str("%%d"),
            '\u{b1}' => plain.push_str("%%p"),
            '\u{2212}' | '\u{2013}' | '\u{2014}' => plain.push('-'),
            '\u{d7}' => plain.push('x'),
            '\u{2248}' => plain.push('~'),
            '\u{b5}' | '\u{3bc}' => plain.push('u'),
            '%' if plain.ends_with('%') => {}
            '^' => plain.push(' '),
            other if other.is_whitespace() || other.is_control() => plain.push(' '),
            other if other.is_ascii() => plain.push(other),
            _ => plain.push('?'),
        }
    }
    plain
}

//! A part written down anew from the fields of its job, for tests that look everywhere along it. It knows nothing of
//! the program's outlines. A test takes this file in with `#[path = "support/slices.rs"] mod slices;`.
#![allow(dead_code, reason = "each test uses a part of it")]

use skimwright::job::{BoreBottom, BoreEnd, Cut, Datum, Flats, Hole, Job, Section, Turned};

/// A hair beside an edge, and what counts as the same, in millimetres.
pub(crate) const BESIDE: f64 = 2e-6;

/// A straight piece of an outline between two places.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Line {
    pub(crate) from: f64,
    pub(crate) to: f64,
    radii: (f64, f64),
}

impl Line {
    fn at(&self, z: f64) -> f64 {
        let share = (z - self.from) / (self.to - self.from);
        self.radii.0 + (self.radii.1 - self.radii.0) * share
    }

    fn holds(&self, z: f64) -> bool {
        self.from <= z && z <= self.to
    }

    /// The part of it that lies between two places.
    fn clip(&self, from: f64, to: f64) -> Option<Self> {
        let (low, high) = (self.from.max(from), self.to.min(to));
        (high - low > 1e-6).then(|| Self {
            from: low,
            to: high,
            radii: (self.at(low), self.at(high)),
        })
    }
}

/// A cut, and the radius below which it leaves all metal; a cross hole has none.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Cleared {
    pub(crate) index: u8,
    pub(crate) from: f64,
    pub(crate) to: f64,
    pub(crate) clear: Option<f64>,
}

/// A hole, threads at their major diameter.
pub(crate) struct Round {
    pub(crate) index: u8,
    pub(crate) off_centre: f64,
    lines: Vec<Line>,
}

impl Round {
    /// Its radius at a place; nought where it is not.
    pub(crate) fn radius(&self, z: f64) -> f64 {
        widest(&self.lines, z)
    }
}

fn widest(lines: &[Line], z: f64) -> f64 {
    let here = lines.iter().filter(|line| line.holds(z));
    here.map(|line| line.at(z)).fold(0.0, f64::max)
}

/// The part by its radii.
pub(crate) struct Slices {
    pub(crate) whole: f64,
    pub(crate) head_start: f64,
    /// Sections in their order along the shank, threads at their bottom.
    pub(crate) roots: Vec<Line>,
    outside: Vec<Line>,
    head: Vec<Line>,
    pub(crate) features: Vec<Cleared>,
    pub(crate) holes: Vec<Round>,
    off_axis: (f64, f64),
}

/// Threads of the tables that the random parts have: major diameter, pitch, minor diameter of the nut.
fn thread(code: &str) -> (f64, f64, f64) {
    match code {
        "M8" => (8.0, 1.25, 6.647),
        "M12" => (12.0, 1.75, 10.106),
        "M20x1.5" => (20.0, 1.5, 18.376),
        "M24" => (24.0, 3.0, 20.752),
        "M30x2" => (30.0, 2.0, 27.835),
        other => panic!("{other} is not among these threads"),
    }
}

/// Length, radii outside, radii at the bottom of a thread.
fn section(section: &Section) -> (f64, (f64, f64), (f64, f64)) {
    let mm = |entered: &skimwright::quantity::Entered<skimwright::quantity::Length>| {
        entered.value().to_mm()
    };
    let plain = |length: f64, near: f64, far: f64| {
        let radii = (near / 2.0, far / 2.0);
        (length, radii, radii)
    };
    match &section.turned {
        Turned::Cylinder { diameter, length }
        | Turned::Groove { diameter, length }
        | Turned::Relief { diameter, length } => plain(mm(length), mm(diameter), mm(diameter)),
        Turned::Taper {
            shoulder_diameter,
            end_diameter,
            length,
            ..
        } => plain(mm(length), mm(shoulder_diameter), mm(end_diameter)),
        Turned::RatioTaper {
            shoulder_diameter,
            ratio,
            length,
        } => {
            let near = mm(shoulder_diameter);
            let far = near - mm(length) / ratio.value().to_one_in();
            plain(mm(length), near, far)
        }
        Turned::AngleTaper {
            shoulder_diameter,
            angle,
            length,
        } => {
            let near = mm(shoulder_diameter);
            let slope = 2.0 * (angle.value().to_degrees().to_radians() / 2.0).tan();
            plain(mm(length), near, near - mm(length) * slope)
        }
        Turned::Thread {
            thread: size,
            length,
        } => {
            let (major, pitch, _) = thread(size.code());
            // ISO 68-1: the screw's root lies 17/24 of the height of the sharp triangle below its crest.
            let deep = 17.0 / 24.0 * 0.75_f64.sqrt() * pitch;
            let (major, root) = (major / 2.0, major / 2.0 - deep);
            (mm(length), (major, major), (root, root))
        }
        Turned::StandardTaper { .. } => panic!("no standard tapers among these parts"),
    }
}

impl Slices {
    /// Of a job whose sections follow one another without a place of their own.
    pub(crate) fn new(job: &Job) -> Self {
        let part = &job.part;
        let (mut outside, mut roots, mut end) = (Vec::new(), Vec::new(), 0.0);
        for it in &part.sections {
            let (length, outer, root) = section(it);
            let line = |radii| Line {
                from: end,
                to: end + length,
                radii,
            };
            outside.push(line(outer));
            roots.push(line(root));
            end += length;
        }
        let pieces = [(&part.head_diameter, &part.head_length)].into_iter();
        let beyond = part.head_beyond.iter().map(|it| (&it.diameter, &it.length));
        let (mut head, mut head_start) = (Vec::new(), 0.0);
        for (diameter, length) in pieces.chain(beyond) {
            let (radius, length) = (diameter.value().to_mm() / 2.0, length.value().to_mm());
            head.push(Line {
                from: head_start - length,
                to: head_start,
                radii: (radius, radius),
            });
            head_start -= length;
        }
        let runout = part.runout.value().to_mm();
        let end_runout = part
            .end_runout
            .as_ref()
            .map_or(runout, |it| it.value().to_mm());
        let mut slices = Self {
            whole: end,
            head_start,
            roots,
            outside,
            head,
            features: Vec::new(),
            holes: Vec::new(),
            off_axis: (runout / 2.0, end_runout / 2.0),
        };
        slices.features = slices.cleared(job);
        slices.holes = slices.rounds(job);
        slices
    }

    fn cleared(&self, job: &Job) -> Vec<Cleared> {
        let features = (0_u8..).zip(&job.part.features);
        let all = features.filter_map(|(index, feature)| {
            let mm = |entered: &skimwright::quantity::Entered<skimwright::quantity::Length>| {
                entered.value().to_mm()
            };
            let long = match &feature.cut {
                Cut::Flat { length, .. }
                | Cut::Keyway { length, .. }
                | Cut::Tang { length, .. } => mm(length),
                Cut::WoodruffKeyway { depth, disc, .. } => {
                    let (radius, depth) = (mm(disc) / 2.0, mm(depth).min(mm(disc) / 2.0));
                    2.0 * (radius * radius - (radius - depth) * (radius - depth)).sqrt()
                }
                Cut::CrossHole { diameter } => mm(diameter),
            };
            let by_middle = matches!(
                feature.cut,
                Cut::CrossHole { .. } | Cut::WoodruffKeyway { .. }
            );
            let from = feature.place.as_ref().map_or(self.whole - long, |place| {
                let start = mm(&place.start) - if by_middle { long / 2.0 } else { 0.0 };
                match place.from {
                    Datum::Shoulder => start,
                    Datum::FreeEnd => self.whole - start - long,
                }
            });
            let (from, to) = (from.max(0.0), (from + long).min(self.whole));
            if to - from <= 1e-6 {
                return None;
            }
            // Both ends of each piece of the surface along it.
            let along: Vec<f64> = self
                .outside
                .iter()
                .filter_map(|line| line.clip(from, to))
                .flat_map(|line| [line.radii.0, line.radii.1])
                .collect();
            let most = along.iter().copied().fold(0.0, f64::max);
            let least = along.iter().copied().fold(f64::INFINITY, f64::min);
            let clear = match &feature.cut {
                Cut::Flat {
                    over,
                    flats: Flats::One,
                    ..
                } => Some(mm(over) - most),
                Cut::Flat { over, .. } => Some(mm(over) / 2.0),
                Cut::Keyway { depth, .. } | Cut::WoodruffKeyway { depth, .. } => {
                    Some(least - mm(depth))
                }
                Cut::Tang { thickness, .. } => Some(mm(thickness) / 2.0),
                Cut::CrossHole { .. } => None,
            };
            Some(Cleared {
                index,
                from,
                to,
                clear,
            })
        });
        all.collect()
    }

    fn rounds(&self, job: &Job) -> Vec<Round> {
        let bores = (0_u8..).zip(&job.part.bores);
        let all = bores.map(|(index, bore)| {
            let mm = |entered: &skimwright::quantity::Entered<skimwright::quantity::Length>| {
                entered.value().to_mm()
            };
            let point = |radius: f64, depth: f64, bottom: BoreBottom| {
                let high = radius / 59_f64.to_radians().tan();
                (bottom == BoreBottom::DrillPoint).then_some((depth, depth + high, radius, 0.0))
            };
            // By depth: from, to, radius at both.
            let mut pieces: Vec<(f64, f64, f64, f64)> = Vec::new();
            match &bore.hole {
                Hole::Drilled {
                    diameter,
                    depth,
                    bottom,
                } => {
                    let radius = mm(diameter) / 2.0;
                    pieces.push((0.0, mm(depth), radius, radius));
                    pieces.extend(point(radius, mm(depth), *bottom));
                }
                Hole::Stepped {
                    diameter,
                    depth,
                    step_diameter,
                    step_depth,
                    bottom,
                } => {
                    let (radius, wide) = (mm(diameter) / 2.0, mm(step_diameter) / 2.0);
                    pieces.push((0.0, mm(depth), radius, radius));
                    pieces.push((0.0, mm(step_depth), wide, wide));
                    pieces.extend(point(radius, mm(depth), *bottom));
                }
                Hole::Tapped {
                    thread: size,
                    thread_depth,
                    drill_depth,
                } => {
                    let (major, _, minor) = thread(size.code());
                    let (major, minor) = (major / 2.0, minor / 2.0);
                    pieces.push((0.0, mm(thread_depth), major, major));
                    pieces.push((0.0, mm(drill_depth), minor, minor));
                    pieces.extend(point(minor, mm(drill_depth), BoreBottom::DrillPoint));
                }
                Hole::Reamed {
                    diameter,
                    drill_depth,
                    ..
                } => {
                    let radius = mm(diameter) / 2.0;
                    pieces.push((0.0, mm(drill_depth), radius, radius));
                    pieces.extend(point(radius, mm(drill_depth), BoreBottom::DrillPoint));
                }
                Hole::Through { diameter } => {
                    let radius = mm(diameter) / 2.0;
                    pieces.push((0.0, self.whole - self.head_start, radius, radius));
                }
                // A2.5 of ISO 866: pilot 2.5 by 3.1 to 4.1 mm, mouth 5.3 mm, 60 degrees.
                Hole::CentreHole { .. } => {
                    let high = 1.4 / 30_f64.to_radians().tan();
                    pieces.push((0.0, high, 2.65, 1.25));
                    pieces.push((high, high + 3.6, 1.25, 1.25));
                }
            }
            let lines = pieces.into_iter().map(|(near, far, first, last)| {
                if bore.end == BoreEnd::FreeEnd {
                    Line {
                        from: self.whole - far,
                        to: self.whole - near,
                        radii: (last, first),
                    }
                } else {
                    Line {
                        from: self.head_start + near,
                        to: self.head_start + far,
                        radii: (first, last),
                    }
                }
            });
            Round {
                index,
                off_centre: bore.off_centre.as_ref().map_or(0.0, mm),
                lines: lines
                    .filter(|line| line.to - line.from > 1e-6)
                    .filter_map(|line| line.clip(self.head_start, self.whole))
                    .collect(),
            }
        });
        all.collect()
    }

    /// How far the axis is off, half the runout in a straight line; in the head as at the shoulder.
    pub(crate) fn off_axis(&self, z: f64) -> f64 {
        let share = (z / self.whole).clamp(0.0, 1.0);
        self.off_axis.0 + (self.off_axis.1 - self.off_axis.0) * share
    }

    /// What is metal all round at a place of the shank, about its own axis.
    pub(crate) fn sound(&self, z: f64) -> f64 {
        let cut = self.features.iter().filter(|it| it.from < z && z < it.to);
        let cleared = cut.filter_map(|it| it.clear).map(|clear| clear.max(0.0));
        cleared.fold(self.root(z), f64::min)
    }

    /// The outside with threads at their bottom.
    pub(crate) fn root(&self, z: f64) -> f64 {
        widest(&self.roots, z)
    }

    /// The largest true cylinder about the axis that stays.
    pub(crate) fn solid(&self, z: f64) -> f64 {
        (self.sound(z) - self.off_axis(z)).max(0.0)
    }

    pub(crate) fn head(&self, z: f64) -> f64 {
        widest(&self.head, z)
    }

    /// Places all along between two: a dense row, and both sides of every edge.
    pub(crate) fn places(&self, from: f64, to: f64) -> Vec<f64> {
        const DENSE: u32 = 2000;
        let row = (0..DENSE).map(|n| from + (to - from) * (f64::from(n) + 0.5) / f64::from(DENSE));
        let lines = self.roots.iter().chain(&self.head);
        let lines = lines.chain(self.holes.iter().flat_map(|it| &it.lines));
        let edges = lines
            .flat_map(|line| [line.from, line.to])
            .chain(self.features.iter().flat_map(|it| [it.from, it.to]))
            .chain([from, to]);
        let beside = edges.flat_map(|z| [z - BESIDE, z + BESIDE]);
        let mut all: Vec<f64> = row.chain(beside).filter(|z| from < *z && *z < to).collect();
        all.sort_by(f64::total_cmp);
        all
    }
}

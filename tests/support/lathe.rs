//! A lathe that is only reckoned, for trying what is advised: it springs, wears, is touched on badly and is read by an
//! instrument that is off. All is drawn from ranges, by a generator of its own, so that a run can be repeated.
//!
//! Millimetres on diameter.
//!
//! | what | drawn | why |
//! | --- | --- | --- |
//! | share of an infeed that springs away, last cut | 1 to 15 %, even on a logarithmic scale | a stiff lathe with a short shank to a light one with a slender shank; textbooks' stiffness |
//! | the same in roughing | 1.2 to 2.5 times it | a coarser feed presses harder on the same depth |
//! | first touch | deviation 20 µm | touching on by eye or paper: a hundredth on radius |
//! | each setting of the dial | deviation 0.5 to 3 µm | a tenth of a division read by eye; slack taken up the same way each time |
//! | screw | swings by up to 4 µm once a turn of 2 mm | a worn or eccentric thrust collar |
//! | scatter of a cut | deviation 1 to 5 µm | built-up edge, hard spots |
//! | wear | 0 to 1 µm larger each cut | edges recede by a few micrometres in minutes |
//! | edge rubs below | half to once the depth that the plan believes, drawn as 3 to 30 µm engaged | rounding of the edge |
//! | taper between two places | deviation 3 µm | a tail-stock set with an indicator |
//! | work warmer than said | 0 to 5 K each reading, 11.5 µm/m·K | measured soon after the cut |
//! | good instrument | off by a deviation of 2.3 µm always, of 1.2 µm each time, read to 1 µm | micrometer of 4 µm |
//! | poor instrument | off by a deviation of 11.5 µm always, of 6 µm each time, read to 10 µm | calliper of 20 µm |
//! | polishing | 2 to 4 µm each time | a few strokes of fine cloth |
#![allow(dead_code, reason = "each user takes a part of it")]

#[path = "draw.rs"]
mod draw;

use std::f64::consts::TAU;

pub(crate) use draw::Draw;

/// What the work is measured with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Gauge {
    Good,
    Poor,
}

/// A lathe with the work in it.
#[derive(Clone, Debug)]
pub(crate) struct Lathe {
    draw: Draw,
    /// Diameter at the shoulder end and at the free end.
    size: f64,
    taper: f64,
    /// Where the edge would turn if nothing gave way.
    edge: f64,
    /// What the dial has been turned in all told, and the screw's own error there.
    dialled: f64,
    share: f64,
    rough_share: f64,
    setting: f64,
    swing: (f64, f64),
    scatter: f64,
    wear: f64,
    rubs: f64,
    bias: f64,
    repeat: f64,
    step: f64,
    aside: f64,
}

const TURN: f64 = 2.0;

impl Lathe {
    /// A lathe drawn at random, with work of a size in it, touched on.
    pub(crate) fn draw(seed: u64, size: f64, gauge: Gauge) -> Self {
        let mut draw = Draw::new(seed);
        let sprung = draw.logarithmic(0.01, 0.15);
        let rough = (sprung * draw.between(1.2, 2.5)).min(0.5);
        let touch = 0.020 * draw.normal();
        let (bias, repeat, step) = match gauge {
            Gauge::Good => (0.0023, 0.0012, 0.001),
            Gauge::Poor => (0.0115, 0.006, 0.01),
        };
        Self {
            size,
            taper: 0.003 * draw.normal(),
            edge: size + touch,
            dialled: 0.0,
            share: 1.0 - sprung,
            rough_share: 1.0 - rough,
            setting: draw.between(0.0005, 0.003),
            swing: (draw.between(0.0, 0.004), draw.between(0.0, TAU)),
            scatter: draw.between(0.001, 0.005),
            wear: draw.between(0.0, 0.001),
            rubs: draw.between(0.003, 0.030),
            bias: bias * draw.normal(),
            repeat,
            step,
            aside: 0.0,
            draw,
        }
    }

    fn screw(&self, dialled: f64) -> f64 {
        let (swing, phase) = self.swing;
        swing * (TAU * dialled / TURN + phase).sin()
    }

    /// One cut with so much dialled in on the diameter.
    pub(crate) fn cut(&mut self, dialled: f64, rough: bool) {
        let screw = self.screw(self.dialled + dialled) - self.screw(self.dialled);
        self.dialled += dialled;
        self.edge -= dialled + screw - self.wear;
        // The setting's own error does not add up: the dial is read anew each time.
        let setting = if dialled == 0.0 {
            self.aside
        } else {
            self.setting * self.draw.normal()
        };
        self.aside = setting;
        let engaged = self.size - (self.edge + setting);
        if engaged <= 0.0 {
            return;
        }
        let share = if rough { self.rough_share } else { self.share };
        let rubbing = (engaged / self.rubs).min(1.0);
        let off = engaged * share * rubbing + self.scatter * self.draw.normal() * rubbing;
        self.size -= off.max(0.0);
    }

    /// A few strokes with abrasive.
    pub(crate) fn polish(&mut self, most: f64) {
        let off = self.draw.between(0.002, 0.004);
        self.size -= off.min(most.max(0.0005) * 1.3);
    }

    /// What the instrument shows at the shoulder end and at the free end.
    pub(crate) fn read(&mut self) -> [f64; 2] {
        [-0.5, 0.5].map(|at| {
            let warm = self.size * 11.5e-6 * self.draw.between(0.0, 5.0);
            let own = self.repeat * self.draw.normal();
            let shown = self.size + self.taper * at + warm + self.bias + own;
            (shown / self.step).round() * self.step
        })
    }

    /// The smallest and the largest diameter that are really there.
    pub(crate) fn really(&self) -> (f64, f64) {
        let half = self.taper.abs() / 2.0;
        (self.size - half, self.size + half)
    }
}

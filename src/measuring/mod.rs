//! Measuring at the lathe: what readings are worth, what an infeed takes off, what to dial in next, and whether the work
//! is in tolerance.
//!
//! Diameters are at 20 °C unless a name says otherwise; z = 0 is the shoulder, z grows toward the free end.

mod advice;

pub use advice::{
    Advice, CutNext, Doubt, DoubtKind, Next, SizeNow, Takes, TakesFrom, TaperFound, TaperVerdict,
    Verdict, VerdictIs, VerdictOf, WhenMeasure, WhyMeasure, WhyStop, advise,
};

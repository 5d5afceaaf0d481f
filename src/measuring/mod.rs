//! Measuring at the lathe: what readings are worth, what an infeed takes off, what to dial in next, and whether the work
//! is in tolerance.
//!
//! Diameters are at 20 °C unless a name says otherwise; z = 0 is the shoulder, z grows toward the free end.

mod advice;
mod advise;
mod belief;
#[cfg(test)]
mod belief_tests;
mod bench;
mod budget;
mod corrected;
mod doubts;
mod instruments;
mod keyed;
mod learn;
mod line;
mod next_cut;
mod normal;
mod places;
mod prior;
mod progress;
mod seen;
mod since;
mod state;
mod takes_after;
mod taper;
mod temperature;
mod verdict;

pub use advice::{
    Advice, CutNext, Doubt, DoubtKind, Next, SizeNow, Takes, TakesFrom, WhenMeasure, WhyMeasure,
    WhyStop,
};
pub use advise::advise;
pub use budget::{
    BudgetRow, COVERAGE, Contribution, Corrected, FORM_LIMIT, LEAST_OWN, Shared, Taken, correct,
};
pub use corrected::{MOST_READ, Mean, corrected};
pub use instruments::{
    InstrumentFigures, ROUGHNESS_ERROR, graduation, instrument_figures, permissible_error, repeat,
};
pub use keyed::{
    Keyed, as_meant, cut_as_advised, cut_without_infeed, dialled_bare, divisions, expected, keyed,
    next_place, one_in, shown_bare, shown_decimals,
};
pub use line::{Bow, Line, Placed, bow, line_through};
pub use next_cut::ODDS_UNDER;
pub use normal::{chance_above, score_of};
pub use places::{place_along, straight_part};
pub use since::{diameters_now, since_last_cut};
pub use takes_after::takes_after;
pub use taper::{
    BarrelCause, FORGIVEN_SHARE, LIKELY_CAUSE_SHARE, Middle, TaperFound, TaperVerdict,
    forgiven_taper, taper, told,
};
pub use temperature::{
    BELIEVED_TEMPERATURES, INSTRUMENT_EXPANSION, REFERENCE_TEMPERATURE, ROOM_LIMIT,
    UNSAID_ROOM_LIMIT, WORK_LIMIT, Warmth,
};
pub use verdict::{GUARD, MOST_MORE_READINGS, Verdict, VerdictIs, VerdictOf, Zone, verdicts};

//! The passes of a job: how the stock is shared out, the search, and what each pass found does.

use super::bench::{Bench, Eased, Grid, whole_steps};
use super::engine::{Choices, Refusal, Schedule};
use super::limit::Limit;
use super::pass_figures::SpindleLimits;
use super::passes::{Pass, PassKind, PassQuestion, StockOff, most_off, rough_each, section_stock};
use super::pins::{Pinned, pinned};
use super::search::{Found, Search};
use super::setup::Setup;
use super::wear::{change, edge_in_time, edges_used, place_edges};
use crate::job::Field;
use crate::part::SAME;
use crate::plan::{Code, Finding};
use crate::quantity::{Length, Time};

/// Plans the passes; `None` while a number is missing, the tool does not cut, or no row of passes is possible.
pub(crate) fn stock_off(question: &PassQuestion) -> (Option<StockOff>, Vec<Finding>) {
    let mut findings = Vec::new();
    let found = Planner::read(question, &mut findings).and_then(|it| it.plan(&mut findings));
    (found, findings)
}

/// The stock of a job, and all that it is turned with.
pub(super) struct Planner<'a> {
    pub(super) question: &'a PassQuestion<'a>,
    pub(super) setup: Setup,
    /// The largest diameter that is met, runout counted, and the runout there.
    pub(super) start: Length,
    runout: Length,
    /// The diameter aimed at.
    pub(super) aim: Length,
    pub(super) polishing: Length,
    /// Off the diameter by turning.
    pub(super) to_turn: Length,
    /// What each last cut was asked to take off the diameter, by whole divisions of the dial.
    pub(super) asked: Length,
    /// What each last cut takes off the diameter, as far as stock and tool go.
    pub(super) last: Length,
    /// Whether there is more to turn than the two last cuts.
    pub(super) roughs: bool,
    /// Seconds that an edge counts for when cost is to be least.
    pub(super) edge: Time,
    /// How long a change of edge takes.
    change: Time,
}

impl<'a> Planner<'a> {
    pub(super) fn read(
        question: &'a PassQuestion<'a>,
        findings: &mut Vec<Finding>,
    ) -> Option<Self> {
        let PassQuestion {
            checked,
            received,
            shank,
            limits,
            ..
        } = question;
        let setup = Setup::read(question, findings)?;
        let met = received.swept.largest(Length::ZERO, setup.end)?;
        let start = met.radius * 2.0;
        let aim = limits.aim;
        debug_assert!(setup.end <= shank.length, "no further than the shank");
        let polishing = checked.length(Field::PolishingStock)?;
        // Where less is on than the polishing stock, that is all there is to polish off.
        let polishing = polishing.min((start - aim).max(Length::ZERO));
        let to_turn = (start - aim - polishing).max(Length::ZERO);
        let asked = snapped(checked.length(Field::LastCut)?, &setup);
        let for_the_tool = asked.min(setup.tool.depths.high * 2.0);
        let last = for_the_tool.min(to_turn / 2.0);
        let rough = (to_turn - last * 2.0).max(Length::ZERO);
        // A rest too thin for the edge to cut goes to the two last cuts instead of a pass that only rubs.
        let thin = rough / 2.0 < setup.tool.depths.low && to_turn / 4.0 <= setup.most_infeed;
        let roughs = rough.to_mm() > SAME && !thin;
        let change = change(question)?;
        let edge = edge_in_time(question, &setup, change, findings);
        Some(Self {
            start,
            runout: received.off_axis.runout_at(met.z),
            aim,
            polishing,
            asked,
            last: if roughs { last } else { to_turn / 2.0 },
            to_turn,
            roughs,
            question,
            setup,
            edge,
            change,
        })
    }

    fn plan(&self, findings: &mut Vec<Finding>) -> Option<StockOff> {
        let mut passes = Vec::new();
        if self.to_turn.to_mm() <= SAME {
            findings.push(Finding::at(Field::WantedDiameter, Code::NothingToTurn));
        } else {
            findings.extend(self.cut_findings());
            passes = self.turned(findings)?;
        }
        let last = passes.iter().find(|pass| pass.kind == PassKind::Last);
        let last_each = last.map(|pass| pass.off_diameter);
        if let Some(each) = last_each.filter(|each| {
            let lighter = each.to_mm() < self.asked.to_mm() - SAME;
            lighter && self.roughs
        }) {
            findings.push(Finding::at(Field::LastCut, Code::LastCutsLighter { each }));
        }
        let tool_changes = place_edges(&mut passes);
        let edges_used = edges_used(&passes);
        let rough = passes
            .iter()
            .filter(|it| it.kind == PassKind::Rough)
            .count();
        if self.polishing.to_mm() > SAME {
            passes.push(self.polish());
        }
        let question = self.question;
        let spindle = SpindleLimits {
            power: self.setup.lathe.spindle_power,
            top_speed: self.setup.lathe.top_speed,
        };
        Some(StockOff {
            most: most_off(self.start, self.aim, self.runout),
            sections: section_stock(question.received, self.aim, self.setup.end),
            rough_each: rough_each(
                u32::try_from(rough).ok()?,
                self.to_turn,
                last_each.unwrap_or(self.last),
            ),
            last_each: last_each.unwrap_or(self.last),
            polishing: self.polishing,
            spindle_speed: passes
                .first()
                .map(|pass| pass.speed_figure(self.setup.speed, spindle)),
            cutting_speed: self.setup.speed,
            spindle,
            edges_used,
            tool_changes,
            passes,
        })
    }

    pub(super) fn grid(&self) -> Grid {
        let zero = (self.aim + self.polishing) / 2.0;
        // Where the two last cuts are all there is, they need not stand on the dial's divisions.
        let division = self.setup.lathe.division.filter(|_| self.roughs);
        Grid::new((zero, self.start / 2.0), self.last / 2.0, division)
    }

    pub(super) fn bench(&self, edge: Time) -> Bench<'_> {
        Bench::new(
            self.question,
            &self.setup,
            self.grid(),
            self.last / 2.0,
            edge,
        )
    }

    /// The pinned passes, on the places of a bench.
    pub(super) fn pinned(&self, bench: &Bench) -> Vec<Pinned> {
        let (job, checked) = (self.question.job, self.question.checked);
        pinned(job, checked, &self.setup.lathe, &bench.grid)
    }

    /// The passes with the tool.
    fn turned(&self, findings: &mut Vec<Finding>) -> Option<Vec<Pass>> {
        let mut bench = self.bench(self.edge);
        let pinned = self.pinned(&bench);
        let mut found = self.schedule(&bench, &pinned);
        // Where work and lathe give way too much even in the lightest cut, the rest is planned all the same.
        if matches!(found, Err(Refusal::NoSchedule)) && self.gives_way(&bench) {
            bench = self.bench(self.edge);
            bench.eased.push(Eased {
                limit: Limit::Deflection,
                by: f64::INFINITY,
            });
            found = self.schedule(&bench, &pinned);
        }
        let (schedule, passes) = match found {
            Ok(found) => found,
            Err(refusal) => {
                findings.push(self.refused(&refusal, &bench, &pinned));
                return None;
            }
        };
        // What a limit that was left out of account would say is told all the same.
        let plain = self.bench(self.edge);
        let mut passes = self.report(&plain, &passes, &pinned);
        // Least time leaves wear out of account while one edge lasts.
        let used = edges_used(&passes);
        if 1.0 < used && self.edge <= Time::ZERO {
            let mut careful = self.bench(self.change);
            careful.eased.clone_from(&bench.eased);
            if let Ok((_, weighed)) = self.schedule(&careful, &pinned) {
                careful.eased.clear();
                passes = self.report(&careful, &weighed, &pinned);
            }
        }
        debug_assert!(
            passes.len() == schedule.count() || 1.0 < used,
            "every pass has a setting"
        );
        findings.extend(self.pass_findings(&passes));
        Some(passes)
    }

    /// The passes with one limit widened.
    pub(super) fn eased(&self, eased: Eased) -> Option<Vec<Pass>> {
        let mut bench = self.bench(self.edge);
        bench.eased.push(eased);
        let pinned = self.pinned(&bench);
        let (_, found) = self.schedule(&bench, &pinned).ok()?;
        Some(self.report(&bench, &found, &pinned))
    }

    fn schedule(
        &self,
        bench: &Bench,
        pinned: &[Pinned],
    ) -> Result<(Schedule, Vec<Found>), Refusal> {
        let feeds = Choices::list(bench.law.feeds.iter().copied());
        let Ok(feeds) = feeds else {
            return Err(Refusal::NoSchedule);
        };
        let search = Search::new(bench, &feeds, pinned);
        let last = whole_steps(self.last / 2.0, bench.grid.step);
        let asked = if self.roughs {
            last
        } else {
            bench.grid.steps / 2
        };
        let schedule = match search.best(&[asked]) {
            // Where the last cuts asked for are too much, shallower ones are looked at.
            Err(Refusal::NoSchedule) if self.roughs => {
                let finest = whole_steps(self.setup.tool.depths.low, bench.grid.step);
                let shallower: Vec<u32> = (finest.max(1)..asked).collect();
                search.best(&shallower)?
            }
            found => found?,
        };
        let passes = search.passes(&schedule);
        Ok((schedule, passes))
    }
}

/// What is taken off the diameter by whole divisions of the dial, at least one.
fn snapped(off_diameter: Length, setup: &Setup) -> Length {
    match setup.lathe.division {
        None => off_diameter,
        Some(division) => division * 2.0 * (off_diameter / 2.0 / division).round().max(1.0),
    }
}

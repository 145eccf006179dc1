//! What the core answers, asked for by the page: with [`crate::session`] the one
//! place that calls it.

use crate::browser::after_paint;
use crate::session::Session;
use coldseat_core::ask::{
    DRAWS, DropAnswer, DropOdds, DropView, Fault, HeightsNeeds, Lacks, OddsRun, Owner,
    PlannedHeights, StepId, StepReport, drop_of_cylinder, drop_of_paper,
};
use leptos::prelude::*;
use std::sync::Arc;

/// How long a sleeve may take to go home.
#[derive(Clone, Debug, PartialEq)]
pub enum Home {
    /// There is no drop to tell it of.
    None,
    /// Its draws are under way.
    Drawing,
    /// Drawn.
    Ready(Arc<DropOdds>),
    /// The core refused.
    Refused(Fault),
}

/// Draws at a time: a few milliseconds, between two frames.
const AT_ONCE: usize = 10;

/// Follows a drop with the band of its time, drawn a few drops at a time so that
/// no key waits for it; begun anew whenever the drop is another.
pub fn home_within(drop: impl Fn() -> Option<Box<DropView>> + 'static) -> RwSignal<Home> {
    let home = RwSignal::new(Home::None);
    let turn = StoredValue::new(0_u32);
    Effect::new(move |_| {
        let mine = turn.get_value().wrapping_add(1);
        turn.set_value(mine);
        let Some(view) = drop().filter(|view| view.band.nominal.clearance_entry.as_m() > 0.0)
        else {
            home.set(Home::None);
            return;
        };
        home.set(Home::Drawing);
        let run = OddsRun::new(view.case.drop.clone(), view.case.unknowns(), DRAWS, 1);
        go_on(run, mine, turn, home);
    });
    home
}

fn go_on(mut run: OddsRun, mine: u32, turn: StoredValue<u32>, home: RwSignal<Home>) {
    after_paint(move || {
        // Another drop has begun, or the screen is gone.
        if turn.try_get_value() != Some(mine) {
            return;
        }
        let told = match run.advance(AT_ONCE) {
            Ok(false) => return go_on(run, mine, turn, home),
            Ok(true) => run.odds(),
            Err(fault) => Err(fault),
        };
        home.set(match told {
            Ok(Some(odds)) => Home::Ready(Arc::new(odds)),
            Ok(None) => Home::Drawing,
            Err(fault) => Home::Refused(fault),
        });
    });
}

/// A plan of heights, as far as it is known.
#[derive(Clone, Debug, PartialEq)]
pub enum HeightsFound {
    /// There is nothing to work it out from.
    None,
    /// It is being worked out.
    Working,
    /// Worked out.
    Ready(Arc<PlannedHeights>),
    /// The core refused.
    Refused(Fault),
}

/// Follows what a plan is worked out from with the plan: once the screen is painted,
/// so that no key waits for it, and anew only where a number is another.
pub fn heights_planned(
    needs: impl Fn() -> Option<HeightsNeeds> + 'static,
) -> RwSignal<HeightsFound> {
    let found = RwSignal::new(HeightsFound::None);
    let turn = StoredValue::new(0_u32);
    Effect::new(move |_| {
        let mine = turn.get_value().wrapping_add(1);
        turn.set_value(mine);
        let Some(needs) = needs().filter(|needs| !needs.is_too_many()) else {
            found.set(HeightsFound::None);
            return;
        };
        found.set(HeightsFound::Working);
        after_paint(move || {
            // A number has changed, or the screen is gone.
            if turn.try_get_value() != Some(mine) {
                return;
            }
            found.set(match needs.plan() {
                Ok(planned) => HeightsFound::Ready(Arc::new(planned)),
                Err(fault) => HeightsFound::Refused(fault),
            });
        });
    });
    found
}

impl Session {
    /// What a step says.
    #[must_use]
    pub fn step_report(self, owner: Owner, step: StepId) -> Option<StepReport> {
        match owner {
            Owner::Cylinder(cylinder) => self.reports.with(|reports| {
                reports
                    .iter()
                    .find(|r| r.cylinder == cylinder)
                    .and_then(|r| r.step(step))
                    .cloned()
            }),
            _ => self.whole.with(|whole| {
                let of = whole.iter().find(|(o, _)| *o == owner)?;
                of.1.iter().find(|s| s.id == step).cloned()
            }),
        }
    }

    /// The step of the block to work on: the first not settled.
    #[must_use]
    pub fn block_step(self) -> StepId {
        self.whole.with(|whole| {
            whole
                .iter()
                .find(|(owner, _)| *owner == Owner::Block)
                .and_then(|(_, steps)| steps.iter().find(|s| !s.is_settled()))
                .map_or(StepId::Report, |s| s.id)
        })
    }

    /// The cold drop without a job.
    #[must_use]
    pub fn drop_answer(self) -> DropAnswer {
        self.drop_open.with(|open| drop_of_paper(&open.job))
    }

    /// The cold drop of a cylinder of the open job.
    #[must_use]
    pub fn drop_of(self, cylinder: u8) -> DropAnswer {
        self.reports.with(|reports| {
            let report = reports.iter().find(|r| r.cylinder == cylinder);
            self.open.with(|open| match (open, report) {
                (Some(open), Some(report)) => drop_of_cylinder(&open.job, report),
                _ => DropAnswer::Lacks(Lacks::default()),
            })
        })
    }
}

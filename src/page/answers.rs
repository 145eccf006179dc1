//! What the core answers, asked for by the page: with [`crate::state`] the one
//! place that calls it.

use crate::browser::after_paint;
use crate::state::State;
use coldseat_core::job::assess::assess_owner;
use coldseat_core::job::drop::{DropCase, DropVerdict, case_of, verdict};
use coldseat_core::job::report::StepReport;
use coldseat_core::job::step::StepId;
use coldseat_core::job::{Field, Job, Owner};
use coldseat_core::quantity::report::Fault;
use coldseat_core::quantity::{Length, Seconds};
use coldseat_core::thermal::drop_band::{DropBand, cold_drop_band};
use coldseat_core::thermal::drop_odds::{DRAWS, DropOdds, OddsRun};
use leptos::prelude::*;
use std::sync::Arc;

/// A drop that is worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct DropView {
    /// Nominal, early and late.
    pub band: DropBand,
    /// What its clearance allows.
    pub verdict: DropVerdict,
    /// What it was asked with.
    pub case: DropCase,
}

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
pub fn home_within(drop: impl Fn() -> Option<Arc<DropView>> + 'static) -> RwSignal<Home> {
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

/// A drop, or why there is none.
#[derive(Clone, Debug, PartialEq)]
pub enum DropAnswer {
    /// Worked out.
    Ready(Arc<DropView>),
    /// These fields are missing or cannot be used.
    Missing(Vec<Field>),
    /// The core refused.
    Refused(Fault),
}

impl State {
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
        let (case, least) = self.drop_sheet.with(|sheet| {
            let least = coldseat_core::job::engine::preset_si(Field::EntryLeast, sheet.units);
            (sheet.case(), Length::from_m(least.unwrap_or(0.0)))
        });
        worked_out(case, least)
    }

    /// The cold drop of a cylinder of the open job.
    #[must_use]
    pub fn drop_of(self, cylinder: u8) -> DropAnswer {
        let usual_carry = Seconds::from_s(8.0);
        let asked = self.open.with(|open| {
            open.as_ref().map(|open| {
                let least = open.job.engine_si(Field::EntryLeast).unwrap_or(0.0);
                (
                    case_of(&open.job, cylinder, usual_carry),
                    Length::from_m(least),
                )
            })
        });
        match asked {
            Some((case, least)) => worked_out(case, least),
            None => DropAnswer::Missing(Vec::new()),
        }
    }
}

/// Reports of the block and of every deck, by whose they are.
pub type Whole = Vec<(Owner, Vec<StepReport>)>;

/// Reports of the block and of every deck.
#[must_use]
pub fn whole_of(job: &Job) -> Whole {
    core::iter::once(Owner::Block)
        .chain((0..job.engine.banks()).map(Owner::Bank))
        .map(|owner| (owner, assess_owner(job, owner)))
        .collect()
}

fn worked_out(case: Result<DropCase, Vec<Field>>, least: Length) -> DropAnswer {
    match case {
        Err(missing) => DropAnswer::Missing(missing),
        Ok(case) => match cold_drop_band(&case.drop, case.u_fit) {
            Ok(band) => {
                let verdict = verdict(&band, least);
                DropAnswer::Ready(Arc::new(DropView {
                    band,
                    verdict,
                    case,
                }))
            }
            Err(fault) => DropAnswer::Refused(fault),
        },
    }
}

//! What the core answers, asked for by the page: with [`crate::state`] the one
//! place that calls it.

use crate::state::State;
use coldseat_core::job::assess::assess_owner;
use coldseat_core::job::drop::{DropCase, DropVerdict, case_of, verdict};
use coldseat_core::job::report::StepReport;
use coldseat_core::job::step::StepId;
use coldseat_core::job::{Field, Job, Owner};
use coldseat_core::quantity::report::Fault;
use coldseat_core::quantity::{Length, Seconds};
use coldseat_core::thermal::drop_band::{DropBand, cold_drop_band};
use leptos::prelude::*;
use std::sync::Arc;

/// A drop that is worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct DropView {
    /// Nominal, early and late.
    pub band: DropBand,
    /// What its clearance allows.
    pub verdict: DropVerdict,
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
                DropAnswer::Ready(Arc::new(DropView { band, verdict }))
            }
            Err(fault) => DropAnswer::Refused(fault),
        },
    }
}

//! What the core answers, asked for by the page: with [`crate::state`] the one
//! place that calls it.

use crate::state::State;
use coldseat_core::ask::drop::{DropAnswer, drop_of_cylinder, drop_of_sheet};
use coldseat_core::job::Owner;
use coldseat_core::job::model::reading::Lacks;
use coldseat_core::job::step::StepId;
use coldseat_core::job::verdict::StepReport;
use leptos::prelude::*;

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
        self.drop_sheet.with(drop_of_sheet)
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

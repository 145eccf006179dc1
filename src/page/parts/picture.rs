//! Which drawing shows a step, and with what.

use crate::drawings::fit_band::fit_band;
use crate::drawings::section::{Section, section};
use crate::drawings::staircase::{Stair, staircase};
use crate::parts::answer::mean;
use crate::state::State;
use coldseat_core::job::field::UnitSystem;
use coldseat_core::job::report::{Answer, StepReport};
use coldseat_core::job::step::{Drawing, StepSpec};
use coldseat_core::job::{Field, Owner};
use leptos::prelude::*;

/// The drawing of a step, where its numbers are there.
pub fn drawing(
    state: State,
    spec: &StepSpec,
    owner: Owner,
    report: &StepReport,
    units: UnitSystem,
) -> Option<AnyView> {
    let of_engine = |field| {
        state
            .open
            .with(|o| o.as_ref().and_then(|o| o.job.engine_si(field)))
    };
    let values = |field| {
        state.open.with(|o| {
            o.as_ref()
                .map_or(Vec::new(), |o| o.job.entries.values(owner, field))
        })
    };
    let average = |field| {
        let list: Vec<(u8, f64)> = values(field);
        (!list.is_empty()).then(|| list.iter().map(|(_, v)| v).sum::<f64>() / list.len() as f64)
    };
    match (spec.drawing, &report.answer) {
        (Drawing::FitBand, Answer::Fit(fit, _)) => Some(fit_band(
            fit,
            of_engine(Field::FitLow)?,
            of_engine(Field::FitHigh)?,
            units,
        )),
        (Drawing::FlangeSection, answer) => {
            let (predicted_m, measured_m) = match answer {
                Answer::Heights(h) => (mean(&h.predicted), Some(mean(&h.height))),
                Answer::Seat(seat) => {
                    let predicted = mean(&seat.predicted);
                    (predicted, Some(predicted + seat.gap_mean.as_m()))
                }
                _ => (
                    average(Field::FlangeThickness)? + of_engine(Field::Shim)?
                        - average(Field::CounterboreDepth)?,
                    None,
                ),
            };
            Some(section(
                &Section {
                    thickness_m: average(Field::FlangeThickness)?,
                    predicted_m,
                    measured_m,
                },
                units,
            ))
        }
        (Drawing::Staircase, Answer::Pulls(seat)) => {
            let loaded = values(Field::PullLoaded);
            let stairs: Vec<Stair> = values(Field::PullReleased)
                .into_iter()
                .map(|(index, released_m)| Stair {
                    loaded_m: loaded.iter().find(|(i, _)| *i == index).map(|(_, v)| *v),
                    released_m,
                })
                .collect();
            Some(staircase(
                &stairs,
                mean(&seat.predicted),
                of_engine(Field::GapLimit)?,
                units,
            ))
        }
        _ => None,
    }
}

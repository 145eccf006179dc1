//! Which drawing shows a step, and with what.

use crate::drawings::bars::{chill_bar, load_bars, oxygen_bar};
use crate::drawings::deck_map::deck_map;
use crate::drawings::fit_band::fit_band;
use crate::drawings::own_cuts::own_cuts;
use crate::drawings::plan::{Block, Hole, plan};
use crate::drawings::round::round;
use crate::drawings::section::{Section, section};
use crate::drawings::staircase::{Stair, staircase};
use crate::drawings::wall_clock::wall_clock;
use crate::parts::answer::mean;
use crate::parts::timer::seconds_since;
use crate::state::State;
use coldseat_core::job::field::{Places, UnitSystem};
use coldseat_core::job::loads::loads;
use coldseat_core::job::own_cuts::own_cuts as cuts_of;
use coldseat_core::job::report::{Answer, Detail, More, StepReport};
use coldseat_core::job::step::{Drawing, StepId, StepSpec};
use coldseat_core::job::{Field, Owner};
use coldseat_markup::view;
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
    let first_levels = || {
        let field = *spec
            .fields
            .iter()
            .find(|f| f.spec().places == Places::Levels)?;
        round(&values(field), units)
    };
    match (spec.drawing, &report.answer) {
        (Drawing::Round, _) => first_levels(),
        (Drawing::WallClock, Answer::Walls(walls)) => {
            wall_clock(walls, of_engine(Field::WallLook)?, units)
        }
        (Drawing::Plan, _) => block_plan(state, units),
        (Drawing::Oxygen, Answer::Oxygen(oxygen)) => Some(oxygen_bar(oxygen)),
        (Drawing::ChillClock, Answer::Chill(chill)) => {
            let kept = values(Field::ChillTime).first().map(|(_, s)| *s);
            let running = state
                .open
                .with(|o| o.as_ref()?.job.steps.get(&(owner, spec.id))?.started);
            let elapsed = running.map(|since| seconds_since(state.now.get(), since));
            Some(chill_bar(chill, elapsed.or(kept)))
        }
        (Drawing::DeckMap, _) => {
            let plane = of_engine(Field::PlannedCut);
            deck_map(
                &values(Field::LowSpot),
                &holes_of(state, owner),
                plane,
                units,
            )
        }
        (Drawing::Profile, _) => first_levels(),
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
            let shape = section(
                &Section {
                    thickness_m: average(Field::FlangeThickness)?,
                    predicted_m,
                    measured_m,
                },
                units,
            );
            let cuts = matches!(answer, Answer::Counterbore(_))
                .then(|| own_cuts(&state.reports.with(|r| cuts_of(r)), units))
                .flatten();
            Some(view! { {shape} {cuts} }.into_any())
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
            let stairs = staircase(
                &stairs,
                mean(&seat.predicted),
                of_engine(Field::GapLimit)?,
                units,
            );
            let loads = state.open.with(|o| match (o, owner) {
                (Some(o), Owner::Cylinder(cylinder)) => loads(&o.job, cylinder),
                _ => Vec::new(),
            });
            Some(view! { {stairs} {load_bars(&loads, units)} }.into_any())
        }
        _ => None,
    }
}

/// The cylinders of a bank, from the front.
pub fn holes_of(state: State, owner: Owner) -> Vec<u8> {
    let bank = match owner {
        Owner::Bank(bank) => bank,
        _ => 0,
    };
    state.open.with(|open| {
        open.as_ref().map_or(Vec::new(), |o| {
            let engine = &o.job.engine;
            (1..=engine.cylinders)
                .filter(|c| engine.bank_of(*c) == bank)
                .collect()
        })
    })
}

/// The block from above, as far as its numbers are there.
pub fn block_plan(state: State, units: UnitSystem) -> Option<AnyView> {
    let report = state.step_report(Owner::Block, StepId::Choose)?;
    let web_m = report.number.as_ref()?.si;
    let further = |cylinder: u8, step: StepId| {
        state
            .step_report(Owner::Cylinder(cylinder), step)
            .map(|s| s.answer)
    };
    state.open.with(|open| {
        let job = &open.as_ref()?.job;
        let pitch_m = job.engine_si(Field::Pitch)?;
        let hole = |cylinder: u8| Hole {
            cylinder,
            off: match further(cylinder, StepId::Centre) {
                Some(Answer::More(list)) => {
                    let of = |detail: Detail| {
                        list.iter()
                            .find(|m: &&More| m.detail == detail)
                            .map(|m| m.si)
                    };
                    of(Detail::OffsetUp).zip(of(Detail::OffsetRight))
                }
                _ => None,
            },
            wall_m: match further(cylinder, StepId::Wall) {
                Some(Answer::Walls(walls)) => walls.iter().map(|(_, w)| w.as_m()).reduce(f64::min),
                _ => None,
            },
        };
        let banks = (0..job.engine.banks())
            .map(|bank| {
                (1..=job.engine.cylinders)
                    .filter(|c| job.engine.bank_of(*c) == bank)
                    .map(hole)
                    .collect()
            })
            .collect();
        plan(
            &Block {
                pitch_m,
                counterbore_m: pitch_m - web_m,
                bore_m: job.engine_si(Field::NominalOd)?,
                web_m,
                banks,
            },
            units,
        )
    })
}

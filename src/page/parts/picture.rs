//! Which drawing shows a step, and with what.

use crate::drawings::bars::{chill_bar, load_bars, oxygen_bar};
use crate::drawings::deck_map::deck_map;
use crate::drawings::fit_band::fit_band;
use crate::drawings::own_cuts::own_cuts;
use crate::drawings::plan::plan;
use crate::drawings::round::round;
use crate::drawings::section::section;
use crate::drawings::staircase::staircase;
use crate::drawings::wall_clock::wall_clock;
use crate::parts::heights::heights_of;
use crate::parts::timer::seconds_since;
use crate::state::State;
use coldseat_core::ask::{
    Answer, Drawing, Field, LoadCheck, Owner, Places, StepId, StepReport, StepSpec, UnitSystem,
    block_plan as plan_of, form_limit, holes_of as holes, loads, mean_length, own_cuts as cuts_of,
    section as section_of, shown, shown_engine, stairs as stairs_of,
};
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
            .session
            .open
            .with(|o| o.as_ref().and_then(|o| shown_engine(&o.job, field)))
    };
    let values = |field| {
        state.session.open.with(|o| {
            o.as_ref()
                .map_or(Vec::new(), |o| shown(&o.job, owner, field))
        })
    };
    let first_levels = || {
        let field = *spec
            .fields
            .iter()
            .find(|f| f.spec().places == Places::Levels)?;
        let limit = form_limit(field).and_then(of_engine);
        round(&values(field), limit, units)
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
                .session
                .open
                .with(|o| o.as_ref()?.job.steps.get(&(owner, spec.id))?.started);
            let elapsed = running.map(|since| seconds_since(state.ui.now.get(), since));
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
            let shape = state
                .session
                .open
                .with(|o| section_of(&o.as_ref()?.job, owner, answer))?;
            let shape = section(&shape, units);
            let cuts = matches!(answer, Answer::Counterbore(_))
                .then(|| own_cuts(&state.session.reports.with(|r| cuts_of(r)), units))
                .flatten();
            Some(view! { {shape} {cuts} }.into_any())
        }
        (Drawing::Heights, _) => {
            let Owner::Bank(bank) = owner else {
                return None;
            };
            state
                .session
                .open
                .with(|o| heights_of(&o.as_ref()?.job, bank, units))
        }
        (Drawing::Staircase, Answer::Pulls(seat)) => {
            let (stairs, loads) = state.session.open.with(|o| {
                let job = &o.as_ref()?.job;
                let loads = match owner {
                    Owner::Cylinder(cylinder) => loads(job, cylinder).ok(),
                    Owner::Block | Owner::Bank(_) => None,
                };
                Some((stairs_of(job, owner), loads.into_iter().flatten().collect()))
            })?;
            let loads: Vec<LoadCheck> = loads;
            let stairs = staircase(
                &stairs,
                mean_length(&seat.predicted)?.as_m(),
                of_engine(Field::GapLimit)?,
                units,
            );
            Some(view! { {stairs} {load_bars(&loads, units)} }.into_any())
        }
        _ => None,
    }
}

/// The cylinders of a bank, from the front.
pub fn holes_of(state: State, owner: Owner) -> Vec<u8> {
    let bank = match owner {
        Owner::Bank(bank) => bank,
        Owner::Block | Owner::Cylinder(_) => 0,
    };
    state.session.open.with(|open| {
        let holes = open.as_ref().map(|o| holes(&o.job, bank));
        holes.unwrap_or_default()
    })
}

/// The block from above, as far as its numbers are there.
pub fn block_plan(state: State, units: UnitSystem) -> Option<AnyView> {
    let choose = state.session.step_report(Owner::Block, StepId::Choose)?;
    let shown = state.session.reports.with(|reports| {
        state
            .session
            .open
            .with(|open| plan_of(&open.as_ref()?.job, &choose, reports))
    })?;
    plan(&shown, units)
}

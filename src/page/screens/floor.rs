//! The floor sheet: what to hone and cut to, cylinder by cylinder, in type that
//! is read from the machine. Printed and taped to the block.

use crate::browser;
use crate::live::live;
use crate::screens::job::job_head;
use crate::show::{bare, length_unit};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::job::handover::{Targets, targets};
use coldseat_core::job::report::CylinderReport;
use coldseat_core::job::{Job, UnitSystem};
use coldseat_core::quantity::Length;
use leptos::prelude::*;

/// From so many cylinders on the type is smaller, so that one page takes them.
const MANY: usize = 9;

/// The screen.
#[component]
pub fn FloorScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    let units = untrack(|| state.units(Target::Job));
    let sheet = move || {
        let reports = state.reports.get();
        state
            .open
            .with(|open| open.as_ref().map(|o| floor(&o.job, &reports, units)))
    };
    view! {
        {job_head(state, &id)}
        <div class="row screen-only">
            <button type="button" class="button-first" on:click=|_| browser::print()>
                {t::PRINT}
            </button>
        </div>
        <article class="record">{live(sheet)}</article>
    }
}

fn floor(job: &Job, reports: &[CylinderReport], units: UnitSystem) -> AnyView {
    let all = targets(job, reports);
    let class = if all.len() >= MANY {
        "floor floor-many"
    } else {
        "floor"
    };
    let rows: Vec<AnyView> = all.iter().map(|one| row(one, units)).collect();
    let unit = length_unit(units).symbol();
    view! {
        <h2>{format!("{}: {}", t::FLOOR_SHEET, job.name)}</h2>
        <p>{format!("{}. {}", job.engine.name, t::FLOOR_WHAT)}</p>
        <table class=class>
            <thead>
                <tr>
                    <th scope="col">{t::CYLINDER}</th>
                    <th scope="col">{format!("{} ({unit})", t::HONE_TO)}</th>
                    <th scope="col">{format!("{} ({unit})", t::CUT_TO)}</th>
                    <th scope="col">{format!("{} ({unit})", t::STANDS_PROUD)}</th>
                </tr>
            </thead>
            <tbody>{rows}</tbody>
        </table>
        <p class="record-words">{t::STANDING_WORDS}</p>
    }
    .into_any()
}

fn row(one: &Targets, units: UnitSystem) -> AnyView {
    let show = |length: Option<Length>| {
        length.map_or_else(|| "\u{2013}".to_owned(), |l| bare(l.as_m(), units))
    };
    let bore = match one.bore {
        Some((low, high)) => format!(
            "{} \u{2026} {}",
            bare(low.as_m(), units),
            bare(high.as_m(), units)
        ),
        None => show(None),
    };
    view! {
        <tr>
            <th scope="row">{one.cylinder}</th>
            <td>{bore}</td>
            <td>{show(one.depth)}</td>
            <td>{show(one.proud)}</td>
        </tr>
    }
    .into_any()
}

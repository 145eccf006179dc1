//! The floor sheet: what to hone and cut to, cylinder by cylinder, in type that
//! is read from the machine. Printed and taped to the block.

use crate::browser;
use crate::live::live;
use crate::parts::bar::whole_bar;
use crate::parts::table::{Line, cell, hole, table};
use crate::show::{bare, length_unit};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Field, Job, Length, Standing, Targets, UnitSystem, targets};
use coldseat_markup::view;
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
    let units = untrack(|| state.session.units(Target::Job));
    let key = id.clone();
    let sheet = move || {
        state
            .session
            .open
            .with(|open| open.as_ref().map(|o| floor(&key, &o.job, units)))
    };
    view! {
        {whole_bar(state, &id, t::FLOOR_SHEET.get().to_owned())}
        <div class="row screen-only">
            <button type="button" class="button-first" on:click=|_| browser::print()>
                {t::PRINT}
            </button>
        </div>
        <article class="record">{live(sheet)}</article>
    }
    .into_any()
}

fn floor(id: &str, job: &Job, units: UnitSystem) -> AnyView {
    let all = targets(job);
    let class = if all.len() >= MANY {
        "cards floor floor-many"
    } else {
        "cards floor"
    };
    let lines: Vec<Line> = all.iter().map(|one| line(id, one, units)).collect();
    let unit = length_unit(units).symbol();
    let heads = [
        t::CYLINDER.get().to_owned(),
        format!("{} ({unit})", t::HONE_TO),
        t::MEASURED_BORE.get().to_owned(),
        format!("{} ({unit})", t::CUT_TO),
        t::MEASURED_DEPTH.get().to_owned(),
        format!("{} ({unit})", t::STANDS_PROUD),
        t::INITIALS.get().to_owned(),
    ];
    view! {
        <h2>{format!("{}: {}", t::FLOOR_SHEET, job.name)}</h2>
        <p>{format!("{}. {}", job.engine.name, t::FLOOR_WHAT)}</p>
        {table(class, None, &heads, lines)}
        <p class="record-words">{t::STANDING_WORDS}</p>
    }
    .into_any()
}

/// Where the hand writes what it measured, and who it was.
const fn blank() -> String {
    String::new()
}

fn line(id: &str, one: &Targets, units: UnitSystem) -> Line {
    let show = |si: Option<f64>| si.map_or_else(|| "\u{2013}".to_owned(), |si| bare(si, units));
    // The nominal size is no size to hone to: the sheet waits for the sleeve.
    let bore = match &one.bore {
        Standing::Known(to) if to.taken != Some(Field::SleeveOd) => {
            match to.range(length_unit(units)) {
                [Some(low), Some(high)] => t::span(&low, &high),
                _ => show(Some(to.si)),
            }
        }
        _ => show(None),
    };
    let depth = match &one.depth {
        Standing::Known(to) => Some(to.si),
        _ => None,
    };
    Line {
        class: "",
        head: hole(id, one.cylinder),
        cells: [
            bore,
            blank(),
            show(depth),
            blank(),
            show(one.proud.map(Length::as_m)),
            blank(),
        ]
        .map(cell)
        .into_iter()
        .collect(),
    }
}

//! The plan of the heights of a deck whose sleeves are left proud: worked out from the
//! job's readings once the screen is painted, and again only when one of them changes;
//! once it is worked to it stays, line by line with its ticks, and is compared with
//! the heights that were measured.

use crate::answers::{HeightsFound, heights_planned};
use crate::browser;
use crate::drawings::heights::{Bars, before_and_after};
use crate::live::live;
use crate::memo::Memo;
use crate::parts::engine_wants::{engine_fields, wanted_so_far};
use crate::parts::shims::shims;
use crate::parts::table::{Line, cell, table};
use crate::parts::verdict::verdict;
use crate::show::{bare, length, length_unit};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    Field, HeightsNeeds, Job, KeptHole, Lacks, Length, Owner, Place, PlannedHeights, Signal as Go,
    Task, UnitSystem, drop_heights_plan, heights_needs, is_at_hand, kept_plan, mean_of, off_plan,
    proud_deck, shown_engine, take_heights_plan, tick_plan,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// What a deck's plan stands on.
#[derive(Clone, Debug, PartialEq)]
enum Needs {
    /// The job is not open.
    None,
    /// There is nothing under these sleeves to cut or to shim.
    NothingUnder,
    /// Something is missing or cannot be used.
    Lacks(Lacks),
    /// All is there.
    All(HeightsNeeds),
}

fn with_job<T>(state: State, look: impl FnOnce(&Job) -> T) -> Option<T> {
    state
        .session
        .open
        .with(|open| open.as_ref().map(|open| look(&open.job)))
}

/// The part.
pub fn heights_plan(state: State, bank: u8) -> AnyView {
    let units = untrack(|| state.session.units(Target::Job));
    let kept = Memo::new(move |_| with_job(state, |job| kept_plan(job, bank)));
    let is_kept = Memo::new(move |_| kept.with(|kept| !matches!(kept, None | Some(Ok(None)))));
    let needs = Memo::new(move |_| {
        // What is worked to is not worked out once more.
        if is_kept.get() {
            return Needs::None;
        }
        match with_job(state, |job| heights_needs(job, bank)) {
            None => Needs::None,
            Some(Ok(None)) => Needs::NothingUnder,
            Some(Ok(Some(needs))) => Needs::All(needs),
            Some(Err(lacks)) => Needs::Lacks(lacks),
        }
    });
    let found = heights_planned(move || match needs.get() {
        Needs::All(needs) => Some(needs),
        Needs::None | Needs::NothingUnder | Needs::Lacks(_) => None,
    });
    let body = move || {
        let kept = kept.get();
        match kept {
            Some(Ok(Some(plan))) => worked_to(state, bank, &plan, units),
            Some(Err(lack)) => broken(state, bank, &Lacks::from(lack), units),
            None | Some(Ok(None)) => needs.with(|needs| match needs {
                Needs::None => ().into_any(),
                Needs::NothingUnder => view! { <p>{t::NOTHING_TO_PLAN}</p> }.into_any(),
                Needs::Lacks(lacks) => missing(lacks, units),
                Needs::All(needs) if needs.is_too_many() => {
                    view! { <p>{t::TOO_MANY_HOLES}</p> }.into_any()
                }
                Needs::All(_) => match found.get() {
                    HeightsFound::None | HeightsFound::Working => {
                        view! { <p class="quiet" aria-live="polite">{t::PLAN_WORKING}</p> }
                            .into_any()
                    }
                    HeightsFound::Refused(fault) => verdict(Go::Look, t::plan_refused(&fault)),
                    HeightsFound::Ready(planned) => offered(state, bank, &planned, units),
                },
            }),
        }
    };
    view! {
        <section class="after-cut heights-plan" aria-labelledby="heights-plan">
            <h3 id="heights-plan">{t::PLAN_OF_HEIGHTS}</h3>
            {live(body)}
            {wanted_here(needs)}
            {shims(state, Target::Job)}
        </section>
    }
    .into_any()
}

/// What is missing, one by one, and what cannot be used.
fn missing(lacks: &Lacks, units: UnitSystem) -> AnyView {
    let missing = lacks.missing.iter().map(t::missing_of);
    let mend = lacks.unusable.iter().map(|one| t::mend(one, units));
    let refused = lacks.refused.iter().map(t::fault);
    let lines: Vec<AnyView> = missing
        .chain(mend)
        .chain(refused)
        .map(|words| view! { <li>{words}</li> }.into_any())
        .collect();
    view! {
        <p>{t::PLAN_WANTS}</p>
        <ul>{lines}</ul>
    }
    .into_any()
}

/// Numbers of the engine that a plan waits for, here where they are wanted.
fn wanted_here(needs: Memo<Needs>) -> AnyView {
    let wants = wanted_so_far(move || {
        needs.with(|needs| {
            let Needs::Lacks(lacks) = needs else {
                return Vec::new();
            };
            // The limits are asked for above, the shims have a list.
            let own = |field: &Field| matches!(field, Field::LedgeCutMost | Field::LedgeCutStep);
            let missing = lacks.missing.iter().map(|missing| missing.field);
            missing.filter(own).collect()
        })
    });
    live(move || engine_fields(&wants.get())).into_any()
}

/// The limits, for a drawing.
fn limits(state: State) -> Option<(f64, f64)> {
    let of = |field| with_job(state, |job| shown_engine(job, field)).flatten();
    of(Field::ProudLow).zip(of(Field::ProudHigh))
}

/// What is done at a hole, short, under its drawing.
fn short(
    sleeve: Option<u8>,
    turn: u8,
    shim: Length,
    cut: Length,
    units: UnitSystem,
) -> Vec<String> {
    let cut = (cut.as_m() > 0.0).then(|| t::cut_short(&bare(cut.as_m(), units)));
    let shim = (shim.as_m() > 0.0).then(|| t::shim_short(&bare(shim.as_m(), units)));
    let sleeve = sleeve.map(t::sleeve_short);
    let turn = (turn > 0).then(|| t::turn_short(turn));
    [cut, shim, sleeve, turn].into_iter().flatten().collect()
}

/// A plan as it was found: its picture, its lines, and the button that takes it.
fn offered(state: State, bank: u8, planned: &PlannedHeights, units: UnitSystem) -> AnyView {
    let bars: Vec<Bars> = planned
        .holes
        .iter()
        .map(|hole| {
            let sleeve = (hole.sleeve != hole.cylinder).then_some(hole.sleeve);
            let shim = hole.shim_after();
            Bars {
                cylinder: hole.cylinder,
                before: hole.before.clone(),
                after: hole.after.clone(),
                words: short(sleeve, hole.turn, shim, hole.cut, units),
            }
        })
        .collect();
    let picture =
        limits(state).map(|limits| before_and_after(&bars, limits, units, t::HEIGHTS_NOW.get()));
    let plan = &planned.plan;
    let head = match plan.exceeds {
        Some((limit, by)) => verdict(Go::Stop, t::no_plan(limit, &length(by.as_m(), units))),
        None if planned.is_nothing() => {
            return view! {
                {picture}
                <p>{t::PLAN_NOTHING}</p>
            }
            .into_any();
        }
        None => {
            let shims = planned.count(Task::Shim);
            view! { <p>{t::plan_counts(plan.cuts, shims, plan.moved, plan.turned)}</p> }.into_any()
        }
    };
    let lines: Vec<AnyView> = Task::ALL
        .into_iter()
        .flat_map(|task| {
            let line = move |hole: &coldseat_core::ask::PlannedHole| {
                t::planned_line(task, hole, &|m: Length| length(m.as_m(), units))
            };
            planned
                .holes
                .iter()
                .filter_map(line)
                .collect::<Vec<String>>()
        })
        .map(|words| view! { <li>{words}</li> }.into_any())
        .collect();
    let taken = planned.clone();
    let take = plan.possible.then(|| {
        let take = move |_| {
            state
                .session
                .edit(|job| take_heights_plan(job, &taken, browser::now()));
        };
        view! {
            <p class="quiet">{t::PLAN_TAKE_WHAT}</p>
            <button
                type="button"
                class="button-first"
                disabled=move || state.session.is_read_only(Target::Job)
                on:click=take
            >
                {t::PLAN_TAKE}
            </button>
        }
    });
    let moves = (plan.moved > 0).then(|| view! { <p class="fault">{t::PLAN_MOVES}</p> });
    let in_it = sleeve_in(state, bank).then(|| view! { <p class="fault">{t::PLAN_SLEEVE_IN}</p> });
    view! {
        {head}
        {picture}
        <ol class="plan-lines">{lines}</ol>
        {moves}
        {in_it}
        {take}
    }
    .into_any()
}

/// Whether a height of a sleeve of the deck was read: it is in.
fn sleeve_in(state: State, bank: u8) -> bool {
    let read = |job: &Job| {
        job.cylinders_of(bank).any(|cylinder| {
            let owner = Owner::Cylinder(cylinder);
            [Field::WarmHeight, Field::SeatHeight]
                .into_iter()
                .flat_map(|field| Place::all(owner, field))
                .any(|place| job.entries.get(place).is_some())
        })
    };
    with_job(state, read) == Some(true)
}

/// A plan that is worked to and of which something cannot be read.
fn broken(state: State, bank: u8, lacks: &Lacks, units: UnitSystem) -> AnyView {
    view! {
        {missing(lacks, units)}
        {give_up(state, bank)}
    }
    .into_any()
}

/// The button that gives a plan up.
fn give_up(state: State, bank: u8) -> AnyView {
    view! {
        <button
            type="button"
            disabled=move || state.session.is_read_only(Target::Job)
            on:click=move |_| state.session.edit(|job| drop_heights_plan(job, bank, browser::now()))
        >
            {t::PLAN_GIVE_UP}
        </button>
    }
    .into_any()
}

/// A plan that is worked to: lines with ticks, then the heights against it.
fn worked_to(state: State, bank: u8, plan: &[KeptHole], units: UnitSystem) -> AnyView {
    let lines: Vec<AnyView> = Task::ALL
        .into_iter()
        .flat_map(|task| {
            let here = plan.iter().filter(move |hole| hole.wants(task));
            here.map(move |hole| tick(state, task, hole, units))
        })
        .collect();
    let lines = if lines.is_empty() {
        view! { <p>{t::PLAN_NO_TASK}</p> }.into_any()
    } else {
        view! { <ol class="plan-lines">{lines}</ol> }.into_any()
    };
    let moves = plan.iter().any(|hole| hole.sleeve != hole.cylinder);
    let together = moves.then(|| view! { <p class="quiet">{t::PLAN_TOGETHER}</p> });
    let is_open = plan.iter().any(KeptHole::is_open);
    let in_it = (is_open && sleeve_in(state, bank))
        .then(|| view! { <p class="fault">{t::PLAN_SLEEVE_IN}</p> });
    view! {
        {in_it}
        {lines}
        {together}
        {against(state, bank, plan, units)}
        {give_up(state, bank)}
    }
    .into_any()
}

fn tick(state: State, task: Task, hole: &KeptHole, units: UnitSystem) -> AnyView {
    let words = t::kept_line(task, hole, &|m: Length| length(m.as_m(), units));
    let cylinder = hole.cylinder;
    let done = hole.is_done(task);
    let button = if done { t::PLAN_TICK_BACK } else { t::DONE };
    let name = format!("{button}: {words}");
    let is_left = with_job(state, |job| is_at_hand(job, hole, task)) == Some(true);
    let none_left = (!is_left).then(|| view! { <p class="fault">{t::PLAN_NONE_LEFT}</p> });
    view! {
        <li class=if done { "plan-done" } else { "" }>
            <span>{words} {none_left}</span>
            <button
                type="button"
                aria-label=name
                aria-pressed=done.to_string()
                disabled=move || !is_left || state.session.is_read_only(Target::Job)
                on:click=move |_| {
                    state.session.edit(|job| tick_plan(job, cylinder, task, browser::now()));
                }
            >
                {button}
            </button>
        </li>
    }
    .into_any()
}

/// The heights that were measured against those planned.
fn against(state: State, bank: u8, plan: &[KeptHole], units: UnitSystem) -> Option<AnyView> {
    let deck = with_job(state, |job| proud_deck(job, bank))?.ok()?;
    let measured = |hole: &KeptHole| deck.measured().find(|m| m.cylinder == hole.cylinder);
    let lines: Vec<Line> = plan
        .iter()
        .map(|hole| {
            let dash = || crate::parts::record_file::DASH.to_owned();
            let now = measured(hole);
            let off = now.and_then(|now| off_plan(hole, now));
            let cells = [
                mean_of(&hole.heights).map_or_else(dash, |mean| bare(mean.as_m(), units)),
                now.map_or_else(dash, |now| bare(now.mean.as_m(), units)),
                off.map_or_else(dash, |off| {
                    t::signed_off(&bare(off.as_m(), units), off.as_m())
                }),
            ];
            Line {
                class: "",
                head: hole.cylinder.into_any(),
                cells: cells.into_iter().map(cell).collect(),
            }
        })
        .collect();
    let bars: Vec<Bars> = plan
        .iter()
        .map(|hole| Bars {
            cylinder: hole.cylinder,
            before: hole.heights.clone(),
            after: measured(hole).map_or_else(Vec::new, |now| now.heights.clone()),
            words: Vec::new(),
        })
        .collect();
    let picture = limits(state)
        .map(|limits| before_and_after(&bars, limits, units, t::HEIGHTS_PLANNED.get()));
    let unit = length_unit(units).symbol();
    let heads = [
        t::CYLINDER.get().to_owned(),
        format!("{} ({unit})", t::PLANNED),
        format!("{} ({unit})", t::MEASURED_AGAIN_MEAN),
        format!("{} ({unit})", t::OFF_PLAN),
    ];
    Some(
        view! {
            {picture}
            {table("cards", None, &heads, lines)}
        }
        .into_any(),
    )
}

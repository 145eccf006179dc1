//! The list of all steps in shop order: those of a cylinder among those of the
//! whole job and of the decks.

use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::answer::summary;
use crate::parts::verdict::shape;
use crate::route::{Route, View};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Owner, STEPS, Signal as Go, StepId, StepSpec, Subject, step_of_all};
use coldseat_markup::view;
use leptos::prelude::*;

/// Where a step is worked on, and whose it is. Without a cylinder: the first
/// that gets a sleeve.
#[must_use]
pub fn place_of(state: State, cylinder: Option<u8>, spec: &StepSpec) -> (View, Owner) {
    match spec.subject {
        Subject::Block => (View::Whole(Some(spec.id)), Owner::Block),
        Subject::Bank if spec.id == StepId::Deck => {
            let bank = state.open.with_untracked(|open| {
                open.as_ref()
                    .zip(cylinder)
                    .map_or(0, |(o, c)| o.job.engine.bank_of(c))
            });
            (View::Deck(bank), Owner::Bank(bank))
        }
        Subject::Bank => (View::Whole(Some(spec.id)), Owner::Bank(0)),
        Subject::Cylinder => {
            let cylinder = cylinder.or_else(|| {
                state
                    .open
                    .with_untracked(|o| o.as_ref().and_then(|o| o.job.cylinders().next()))
            });
            (
                View::Cylinder(cylinder, Some(spec.id)),
                Owner::Cylinder(cylinder.unwrap_or(1)),
            )
        }
    }
}

/// All steps.
pub fn step_list(state: State, id: &str, cylinder: Option<u8>, open: StepId) -> AnyView {
    let items: Vec<AnyView> = STEPS
        .iter()
        .map(|spec| step_line(state, id, cylinder, spec, spec.id == open))
        .collect();
    view! { <ol>{items}</ol> }.into_any()
}

/// A step seen over all cylinders.
fn of_all_cylinders(state: State, step: StepId) -> (Go, bool, String) {
    let all = state.reports.with(|reports| step_of_all(reports, step));
    let count = t::cylinders_done(all.done, all.of);
    (all.signal, all.passed_over, count)
}

/// A step in the list.
fn step_line(
    state: State,
    id: &str,
    cylinder: Option<u8>,
    spec: &'static StepSpec,
    is_open: bool,
) -> AnyView {
    let units = untrack(|| state.units(Target::Job));
    let (view, owner) = place_of(state, cylinder, spec);
    let of_all = cylinder.is_none() && spec.subject == Subject::Cylinder;
    let report = Memo::new(move |before: Option<&(Go, bool, String)>| {
        let now = if of_all {
            of_all_cylinders(state, spec.id)
        } else {
            state
                .step_report(owner, spec.id)
                .map_or((Go::None, false, String::new()), |r| {
                    (r.signal, r.passed_over, summary(&r, units))
                })
        };
        // The number follows every key, its colour waits for the reading.
        match before {
            Some((signal, passed_over, _)) if state.half_typed.get() => {
                (*signal, *passed_over, now.2)
            }
            _ => now,
        }
    });
    let word = move || {
        let (signal, passed_over, _) = report.get();
        if passed_over && signal == Go::None {
            t::PASSED
        } else {
            t::signal(signal)
        }
    };
    let address = Route::Job {
        id: id.to_owned(),
        view,
    }
    .address();
    let class = if spec.subject == Subject::Cylinder {
        "step-line"
    } else {
        "step-line step-whole"
    };
    view! {
        <li>
            <a class=class href=address aria-current=is_open.then_some("step")>
                <span class=words(move || mark_class(report.get().0))>
                    {live(move || shape(report.get().0))}
                    <span class="mark-word">{live(word)}</span>
                </span>
                <span class="step-title">{format!("{} {}", spec.number, t::step_title(spec.id))}</span>
                <span class="step-summary">{live(move || report.get().2)}</span>
            </a>
        </li>
    }
    .into_any()
}

const fn mark_class(signal: Go) -> &'static str {
    match signal {
        Go::None | Go::Marked | Go::Wait => "mark",
        Go::Go => "mark mark-go",
        Go::Look => "mark mark-look",
        Go::Stop => "mark mark-stop",
    }
}

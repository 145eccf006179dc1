//! The list of all steps in shop order: those of a cylinder among those of the
//! whole job and of the decks.

use crate::live::live;
use crate::memo::Memo;
use crate::parts::answer::summary;
use crate::parts::verdict::shape;
use crate::screens::{Route, View};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    Listed, Owner, Phase, Signal as Go, Stand, StepId, StepSpec, Subject, phase_tally, step_of_all,
    steps_with,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// Where a step is worked on, and whose it is. Without a cylinder: the first
/// that gets a sleeve.
#[must_use]
pub fn place_of(state: State, cylinder: Option<u8>, spec: &StepSpec) -> (View, Owner) {
    match spec.subject {
        Subject::Block => (View::Whole(Some(spec.id)), Owner::Block),
        Subject::Bank if matches!(spec.id, StepId::Deck | StepId::Heights) => {
            let bank = state.session.open.with_untracked(|open| {
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
                    .session
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

/// All steps, folded by phase: the one of the open step stands open.
pub fn step_list(
    state: State,
    id: &str,
    cylinder: Option<u8>,
    open: StepId,
    stand: Stand,
) -> AnyView {
    let phases: Vec<AnyView> = Phase::ALL
        .into_iter()
        .map(|phase| phase_fold(state, id, cylinder, steps_of_phase(phase, stand), open))
        .collect();
    phases.into_any()
}

/// The steps of a phase, with such sleeves.
fn steps_of_phase(phase: Phase, stand: Stand) -> (Phase, Vec<&'static StepSpec>) {
    let of = steps_with(stand).filter(|spec| spec.id.phase() == phase);
    (phase, of.collect())
}

/// What a line of the list says: signal, whether it is done, its number.
type Said = Memo<(Listed, String)>;

fn phase_fold(
    state: State,
    id: &str,
    cylinder: Option<u8>,
    (phase, of_phase): (Phase, Vec<&'static StepSpec>),
    open: StepId,
) -> AnyView {
    let steps: Vec<(&'static StepSpec, Said)> = of_phase
        .into_iter()
        .map(|spec| (spec, said(state, cylinder, spec)))
        .collect();
    let all: Vec<Said> = steps.iter().map(|(_, said)| *said).collect();
    let tally = Memo::new(move |_| {
        let lines: Vec<Listed> = all.iter().map(|said| said.get().0).collect();
        phase_tally(&lines)
    });
    let mark = move || {
        let tally = tally.get();
        match tally.signal {
            Go::None if tally.passed_over => marked(Go::None, t::PASSED.get()),
            Go::None if tally.done == tally.of => tick(),
            Go::None => ().into_any(),
            signal => marked(signal, t::signal(signal)),
        }
    };
    let count = move || {
        let tally = tally.get();
        t::steps_done(tally.done, tally.of)
    };
    let items: Vec<AnyView> = steps
        .into_iter()
        .map(|(spec, said)| step_line(state, id, cylinder, spec, said, spec.id == open))
        .collect();
    let is_here = open.phase() == phase;
    view! {
        <details class="phase" open=is_here>
            <summary>
                <span class="phase-name">{t::phase(phase)}</span>
                {live(mark)}
                <span class="phase-count">{live(count)}</span>
            </summary>
            <ol>{items}</ol>
        </details>
    }
    .into_any()
}

/// A step, or over all cylinders where none is open.
fn said(state: State, cylinder: Option<u8>, spec: &'static StepSpec) -> Said {
    let units = untrack(|| state.session.units(Target::Job));
    let (_, owner) = place_of(state, cylinder, spec);
    let of_all = cylinder.is_none() && spec.subject == Subject::Cylinder;
    Memo::new(move |before: Option<&(Listed, String)>| {
        let now = if of_all {
            let all = state
                .session
                .reports
                .with(|reports| step_of_all(reports, spec.id));
            let listed = Listed {
                signal: all.signal,
                passed_over: all.passed_over,
                done: all.of > 0 && all.done == all.of,
            };
            (listed, t::cylinders_done(all.done, all.of))
        } else {
            match state.session.step_report(owner, spec.id) {
                Some(report) => {
                    let listed = Listed {
                        signal: report.signal,
                        passed_over: report.passed_over,
                        done: report.is_settled(),
                    };
                    (listed, summary(&report, units))
                }
                None => {
                    let listed = Listed {
                        signal: Go::None,
                        passed_over: false,
                        done: false,
                    };
                    (listed, String::new())
                }
            }
        };
        // The number follows every key, its colour waits for the reading.
        match before {
            Some((listed, _)) if state.session.half_typed.get() => (*listed, now.1),
            _ => now,
        }
    })
}

/// A step in the list.
fn step_line(
    state: State,
    id: &str,
    cylinder: Option<u8>,
    spec: &'static StepSpec,
    said: Said,
    is_open: bool,
) -> AnyView {
    let (view, _) = place_of(state, cylinder, spec);
    let mark = move || {
        let (listed, _) = said.get();
        match listed.signal {
            Go::None if listed.passed_over => marked(Go::None, t::PASSED.get()),
            // What is good and behind the hand is quiet: `go` is for what may be
            // done next.
            Go::Go if listed.done => tick(),
            signal => marked(signal, t::signal(signal)),
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
                {live(mark)}
                <span class="step-title">{format!("{} {}", spec.number, t::step_title(spec.id))}</span>
                <span class="step-summary">{live(move || said.get().1)}</span>
            </a>
        </li>
    }
    .into_any()
}

/// A signal by shape and word.
fn marked(signal: Go, word: &'static str) -> AnyView {
    view! {
        <span class=mark_class(signal)>
            {shape(signal)} <span class="mark-word">{word}</span>
        </span>
    }
    .into_any()
}

/// Done, and good: a tick.
fn tick() -> AnyView {
    view! {
        <span class="mark mark-done">
            <svg class="shape" viewBox="0 0 24 24" aria-hidden="true">
                <path d="M4 13l5 5L20 6"></path>
            </svg>
            <span class="mark-word">{t::DONE_TICK}</span>
        </span>
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

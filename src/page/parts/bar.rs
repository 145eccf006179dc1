//! Where I am: job and step in one line, the cylinders under it, all else behind
//! one button.

use crate::live::{live, maybe, words};
use crate::memo::Memo;
use crate::parts::folder::kept_line;
use crate::parts::strip::Strip;
use crate::parts::timer::RunningTimers;
use crate::parts::wall::wall_button;
use crate::screens::{Route, View};
use crate::session::Session;
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{Place, StepId};
use coldseat_markup::view;
use leptos::prelude::*;

/// The bar of a screen of a job. `place` heads the screen, `shown` and `step` are
/// what the strip marks and keeps.
pub fn job_bar(
    state: State,
    id: &str,
    place: AnyView,
    shown: Signal<Option<u8>>,
    step: Signal<Option<StepId>>,
) -> AnyView {
    view! {
        <div class="bar">
            {job_head(state, Some(id), place)}
            <Strip id=id.to_owned() shown=shown step=step />
        </div>
        <RunningTimers id=id.to_owned() />
    }
    .into_any()
}

/// The same for a screen that is of no cylinder.
pub fn whole_bar(state: State, id: &str, heading: String) -> AnyView {
    let place = view! { <h2>{heading}</h2> }.into_any();
    let (shown, step) = (Signal::derive(|| None), Signal::derive(|| None));
    job_bar(state, id, place, shown, step)
}

/// The bar of an engine sheet, which has no cylinders and no other screen.
pub fn sheet_bar(state: State, heading: String) -> AnyView {
    let place = view! { <h2>{heading}</h2> }.into_any();
    view! { <div class="bar">{job_head(state, None, place)}</div> }.into_any()
}

/// One line, and what the button opens.
fn job_head(state: State, id: Option<&str>, place: AnyView) -> AnyView {
    let name = Memo::new(move |_| {
        let name = state.session.open.with(|open| {
            let job = &open.as_ref()?.job;
            let name = if job.sheet {
                &job.engine.name
            } else {
                &job.name
            };
            Some(name.trim().to_owned())
        });
        name.filter(|name| !name.is_empty())
            .unwrap_or_else(|| t::UNNAMED.get().to_owned())
    });
    let name = move || name.get();
    let opens = move |_| state.ui.menu.update(|open| *open = !*open);
    view! {
        <div class="bar-line">
            <div class="bar-where">
                <div class="bar-job">
                    <h1 id="screen-heading" class="job-title" tabindex="-1">
                        {live(name)}
                    </h1>
                    <p class="keeping">{live(move || kept_line(state))}</p>
                </div>
                {place}
            </div>
            <button
                type="button"
                class="bar-menu"
                aria-expanded=words(move || state.ui.menu.get().to_string())
                on:click=opens
            >
                {t::MENU}
            </button>
        </div>
        <div class="bar-more">
            {id.map(|id| screens(state, id))}
            {wall_button(state)}
            {take_back(state)}
        </div>
    }
    .into_any()
}

/// The other screens of a job.
fn screens(state: State, id: &str) -> AnyView {
    let link = |view: View, words: String| {
        let route = Route::Job {
            id: id.to_owned(),
            view,
        };
        let address = route.address();
        let current = move || {
            state.ui.route.with(|now| match (now, &route) {
                (Route::Job { view: a, .. }, Route::Job { view: b, .. }) => {
                    (core::mem::discriminant(a) == core::mem::discriminant(b)
                        && !matches!(a, View::Deck(_))
                        || a == b)
                        .then_some("page")
                }
                _ => None,
            })
        };
        view! {
            <a href=address aria-current=maybe(current)>
                {words}
            </a>
        }
        .into_any()
    };
    let banks = state
        .session
        .open
        .with_untracked(|open| open.as_ref().map_or(1, |o| o.job.engine.banks()));
    let decks: Vec<AnyView> = (0..banks)
        .map(|bank| {
            let words = if banks == 1 {
                t::DECK.get().to_owned()
            } else {
                format!("{} {}", t::DECK, t::bank(bank))
            };
            link(View::Deck(bank), words)
        })
        .collect();
    view! {
        <nav class="job-nav" aria-label=t::WORKING.get()>
            {link(View::Cylinder(None, None), t::CYLINDERS.get().to_owned())}
            {link(View::Whole(None), t::WHOLE_JOB.get().to_owned())}
            {decks}
            {link(View::Record, t::RECORD.get().to_owned())}
            {link(View::Engine, t::ENGINE_AND_LIMITS.get().to_owned())}
        </nav>
    }
    .into_any()
}

/// Undo and redo over the whole job.
fn take_back(state: State) -> AnyView {
    let step = |words: &'static str, can: RwSignal<bool>, act: fn(Session) -> Option<Place>| {
        view! {
            <button
                type="button"
                class="button-small"
                aria-disabled=maybe(move || (!can.get()).then_some("true"))
                on:click=move |_| {
                    act(state.session);
                }
            >
                {words}
            </button>
        }
        .into_any()
    };
    view! {
        <p class="take-back">
            {step(t::UNDO_JOB.get(), state.session.can_undo, Session::undo_job)}
            {step(t::REDO_JOB.get(), state.session.can_redo, Session::redo_job)}
        </p>
    }
    .into_any()
}

//! Engine sheets: profiles kept apart from any block. One is made, copied and
//! edited here, and a job begins with it.

use crate::live::live;
use crate::screens::new::{engine_form, first_engine};
use crate::screens::{Route, View};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::Job;
use coldseat_markup::view;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn EnginesScreen() -> impl IntoView {
    let state = State::here();
    let engine = RwSignal::new(first_engine(state));
    let list = move || {
        let sheets: Vec<AnyView> = state.library.jobs.with(|jobs| {
            jobs.iter()
                .filter(|job| job.row.sheet && job.row.binned.is_none())
                .map(|job| {
                    let address = Route::Job {
                        id: job.id.clone(),
                        view: View::Engine,
                    }
                    .address();
                    let name = if job.row.engine.trim().is_empty() {
                        t::UNNAMED.get().to_owned()
                    } else {
                        job.row.engine.clone()
                    };
                    view! {
                        <li>
                            <a class="job" href=address>
                                <strong class="job-name">{name}</strong>
                                <span class="job-about">
                                    {t::cylinders(job.row.cylinders.len())}
                                </span>
                            </a>
                        </li>
                    }
                    .into_any()
                })
                .collect()
        });
        if sheets.is_empty() {
            view! { <p class="quiet">{t::NO_SHEETS}</p> }.into_any()
        } else {
            view! { <ul class="jobs">{sheets}</ul> }.into_any()
        }
    };
    let begin = move |_| {
        let engine = engine.get_untracked();
        let numbers = state.session.new_numbers(engine.units);
        state.begin(Job::engine_sheet(engine, &numbers), None);
    };
    view! {
        <h1 id="screen-heading" tabindex="-1">
            {t::ENGINES}
        </h1>
        <p class="quiet">{t::ENGINES_WHAT}</p>
        {live(list)}
        <h2>{t::NEW_SHEET}</h2>
        <div class="form">
            {engine_form(engine)}
            <button type="button" class="button-first" on:click=begin>
                {t::MAKE_SHEET}
            </button>
        </div>
    }
    .into_any()
}

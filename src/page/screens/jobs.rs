//! The jobs of this device; the page opens here.

use crate::browser;
use crate::library::{Kept, Listed};
use crate::live::live;
use crate::parts::strip::bore;
use crate::route::{Route, View};
use crate::state::State;
use crate::texts as t;
use coldseat_core::job::demo::Demo;
use leptos::prelude::*;

/// The list.
#[component]
pub fn JobsScreen() -> impl IntoView {
    let state = State::here();
    let list = move || {
        let jobs = state.jobs.get();
        if jobs.is_empty() {
            return view! { <p class="quiet">{t::NO_JOBS}</p> }.into_any();
        }
        let items: Vec<AnyView> = jobs.into_iter().map(line).collect();
        view! { <ul class="jobs">{items}</ul> }.into_any()
    };
    let kept = move || {
        let kept = state.kept.get();
        (!kept.is_empty()).then(|| {
            let items: Vec<AnyView> = kept.into_iter().map(damaged).collect();
            view! {
                <section class="kept" aria-labelledby="kept-heading">
                    <h2 id="kept-heading">{t::DAMAGED_HEAD}</h2>
                    <p>{t::DAMAGED_WHAT}</p>
                    <ul>{items}</ul>
                </section>
            }
            .into_any()
        })
    };
    let demos: Vec<AnyView> = Demo::ALL
        .into_iter()
        .map(|demo| {
            let name = demo.job(0).name;
            view! {
                <button
                    type="button"
                    on:click=move |_| state.begin(demo.job(browser::now()), None)
                >
                    {name}
                </button>
            }
            .into_any()
        })
        .collect();
    view! {
        <h1 id="screen-heading" tabindex="-1">
            {t::JOBS_ON_DEVICE}
        </h1>
        <div class="doors">
            <a class="door door-first" href="#/drop">
                <strong>{t::COLD_DROP}</strong>
                <span>{t::COLD_DROP_WHAT}</span>
            </a>
            <a class="door" href="#/new">
                <strong>{t::NEW_JOB}</strong>
                <span>{t::NEW_JOB_WHAT}</span>
            </a>
        </div>
        {live(list)}
        {live(kept)}
        <section class="demos" aria-labelledby="demo-heading">
            <h2 id="demo-heading">{t::OPEN_DEMO}</h2>
            <div class="row">{demos}</div>
        </section>
    }
}

fn line(listed: Listed) -> AnyView {
    let job = listed.row;
    let address = Route::Job {
        id: listed.id,
        view: View::Cylinder(None, None),
    }
    .address();
    let name = if job.name.trim().is_empty() {
        t::UNNAMED.to_owned()
    } else {
        job.name
    };
    let about = [job.customer, job.engine]
        .into_iter()
        .filter(|s| !s.trim().is_empty())
        .collect::<Vec<_>>()
        .join(" \u{b7} ");
    let rings: Vec<AnyView> = job.cylinders.iter().map(|c| bore(*c)).collect();
    let tally = t::tally(&job.cylinders);
    let newer = listed
        .newer
        .then(|| view! { <span class="job-newer">{t::NEWER}</span> });
    view! {
        <li>
            <a class="job" href=address>
                <strong class="job-name">{name}</strong>
                <span class="job-about">{about}</span>
                <span class="job-rings">{rings}</span>
                <span class="job-tally">{tally}</span>
                <span class="job-date">
                    {format!("{} {}", t::CHANGED, browser::date(job.changed))}
                </span>
                {newer}
            </a>
        </li>
    }
    .into_any()
}

fn damaged(kept: Kept) -> AnyView {
    let file = format!("{}.txt", kept.key.replace('/', "-"));
    let words = format!("{}: {}", kept.key, t::unreadable(kept.why));
    let name = format!("{} ({})", t::SAVE_TO_FILE, kept.key);
    view! {
        <li>
            <span>{words}</span>
            <button
                type="button"
                aria-label=name
                on:click=move |_| browser::save_file(&file, &kept.content)
            >
                {t::SAVE_TO_FILE}
            </button>
        </li>
    }
    .into_any()
}

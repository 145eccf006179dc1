//! The jobs of this device; the page opens here.

use crate::browser;
use crate::library::{Kept, Listed};
use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::folder::marks;
use crate::parts::listed::listed;
use crate::parts::strip::bore;
use crate::screens::files::last_backup;
use crate::screens::{Route, View};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::document::{Row, remind};
use coldseat_core::ask::{Demo, State as Condition};
use coldseat_markup::view;
use leptos::prelude::*;

/// Jobs drawn at once; more at a tap. Two thousand lines would take a second.
const SHOWN: usize = 20;

/// The list.
#[component]
pub fn JobsScreen() -> impl IntoView {
    let state = State::here();
    let sought = RwSignal::new(String::new());
    let shown = RwSignal::new(SHOWN);
    // What is searched, worked out when somebody searches.
    let texts = Memo::new(move |_| {
        state.library.jobs.with(|jobs| {
            let text = |job: &Listed| {
                let row = &job.row;
                format!(
                    "{} {} {} {}",
                    row.name,
                    about(row),
                    browser::date(row.changed),
                    t::tally(&row.cylinders, row.disputed)
                )
                .to_lowercase()
            };
            jobs.iter().map(text).collect::<Vec<String>>()
        })
    });
    let found = move || -> Vec<Listed> {
        let words = sought.get().to_lowercase();
        let words: Vec<&str> = words.split_whitespace().collect();
        state.library.jobs.with(|jobs| {
            let here = jobs.iter().filter(|job| is_here(job));
            if words.is_empty() {
                return here.cloned().collect();
            }
            texts.with(|texts| {
                jobs.iter()
                    .zip(texts)
                    .filter(|(job, text)| is_here(job) && words.iter().all(|w| text.contains(w)))
                    .map(|(job, _)| job.clone())
                    .collect()
            })
        })
    };
    let list = move || {
        let jobs = found();
        if jobs.is_empty() {
            let words = if sought.with(|s| s.trim().is_empty()) {
                t::NO_JOBS
            } else {
                t::NONE_FOUND
            };
            return view! { <p class="quiet">{words}</p> }.into_any();
        }
        let count = jobs.len();
        let items = jobs.into_iter().take(shown.get()).map(line).collect();
        listed(items, count, shown, SHOWN)
    };
    let search = move || {
        let many = state.library.jobs.with(|jobs| jobs.len() > 3);
        many.then(|| {
            view! {
                <p class="search">
                    <label for="search">{t::SEARCH}</label>
                    <input
                        id="search"
                        type="search"
                        autocomplete="off"
                        on:input=move |event| {
                            shown.set(SHOWN);
                            sought.set(event_target_value(&event));
                        }
                    />
                </p>
            }
            .into_any()
        })
    };
    let reminder = move || {
        let last = state.session.shop.with(last_backup);
        let changed: Vec<u64> = state
            .library
            .jobs
            .with(|jobs| jobs.iter().map(|j| j.row.changed).collect());
        remind(last, &changed, browser::now()).map(|due| {
            view! {
                <p class="quiet">
                    {t::reminder(due)} " "
                    <a href="#/files">{t::BACKUP_NOW}</a>
                </p>
            }
            .into_any()
        })
    };
    let kept = move || {
        let kept = state.library.kept.get();
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
    // Whoever has jobs knows the doors: the jobs stand higher.
    let doors = move || {
        let some = state.library.jobs.with(|jobs| jobs.iter().any(is_here));
        if some { "doors doors-known" } else { "doors" }
    };
    view! {
        <div class="first">
            <h1 id="screen-heading" tabindex="-1">
                {t::NAME}
            </h1>
            <p class="quiet">{t::WHAT_IT_IS}</p>
        </div>
        <div class=words(doors)>
            <a class="door door-first" href="#/new">
                <strong>{t::NEW_JOB}</strong>
                <span>{t::NEW_JOB_WHAT}</span>
            </a>
            <a class="door" href="#/drop">
                <strong>{t::COLD_DROP}</strong>
                <span>{t::COLD_DROP_WHAT}</span>
            </a>
        </div>
        <section class="on-device" aria-labelledby="jobs-heading">
            <h2 id="jobs-heading">{t::JOBS_ON_DEVICE}</h2>
            {live(reminder)}
            {live(search)}
            {live(list)}
        </section>
        {live(kept)}
        <section class="demos" aria-labelledby="demo-heading">
            <h2 id="demo-heading">{t::OPEN_DEMO}</h2>
            <div class="row">{demos}</div>
        </section>
        <p class="row">
            <a class="button" href="#/engines">
                {t::ENGINES}
            </a>
            <a class="button" href="#/files">
                {t::FILES}
            </a>
            <a class="button" href="#/learnt">
                {t::LEARNT}
            </a>
        </p>
    }
    .into_any()
}

/// Whether a job is in this list: not in the bin, no engine sheet.
fn is_here(job: &Listed) -> bool {
    job.row.binned.is_none() && !job.row.sheet
}

/// Whose block, which engine.
pub fn about(row: &Row) -> String {
    [row.customer.as_str(), row.engine.as_str()]
        .into_iter()
        .filter(|s| !s.trim().is_empty())
        .collect::<Vec<_>>()
        .join(" \u{b7} ")
}

fn line(listed: Listed) -> AnyView {
    let marks = marks(&listed.name);
    let address = Route::Job {
        id: listed.id,
        view: if listed
            .row
            .cylinders
            .iter()
            .all(|c| *c == Condition::NotBegun)
        {
            View::Whole(None)
        } else {
            View::Cylinder(None, None)
        },
    }
    .address();
    let job = listed.row;
    let about = about(&job);
    let name = if job.name.trim().is_empty() {
        t::UNNAMED.get().to_owned()
    } else {
        job.name
    };
    let rings: Vec<AnyView> = job.cylinders.iter().map(|c| bore(*c)).collect();
    let tally = t::tally(&job.cylinders, job.disputed);
    let next = job.next.map(|(cylinder, step)| {
        view! { <span class="job-next">{t::next_in_job(cylinder, step)}</span> }
    });
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
                {next}
                <span class="job-date">
                    {format!("{} {}", t::CHANGED, browser::date(job.changed))}
                </span>
                {newer}
                {marks}
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
                on:click=move |_| {
                    browser::save_file(&file, &kept.content, "text/plain");
                }
            >
                {t::SAVE_TO_FILE}
            </button>
        </li>
    }
    .into_any()
}

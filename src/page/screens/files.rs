//! Backup, files and the bin: what leaves the device, what comes to it, what is
//! to be gone.

use crate::browser;
use crate::folder::destroy;
use crate::library::Listed;
use crate::live::live;
use crate::screens::jobs::about;
use crate::share::file::save_all;
use crate::share::import::{Line, Outcome, Preview, look_into, take};
use crate::state::State;
use crate::texts as t;
use coldseat_core::storage::slots::DROPS;
use coldseat_markup::view;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// The screen.
#[component]
pub fn FilesScreen() -> impl IntoView {
    let state = State::here();
    let preview = RwSignal::new(None::<Preview>);
    let chosen = move |event: leptos::ev::Event| {
        let input = event
            .target()
            .and_then(|target| target.dyn_into::<web_sys::HtmlInputElement>().ok());
        let Some(input) = input else { return };
        if let Some(file) = input.files().and_then(|files| files.get(0)) {
            look_into(state, file, preview);
        }
        // The same file can be chosen once more.
        input.set_value("");
    };
    let last = move || {
        let at = state.session.shop.with(last_backup);
        match at {
            Some(at) => format!("{}: {}", t::LAST_BACKUP, browser::date(at)),
            None => t::NO_BACKUP.get().to_owned(),
        }
    };
    view! {
        <h1 id="screen-heading" tabindex="-1">
            {t::FILES}
        </h1>
        <section class="files" aria-labelledby="backup-heading">
            <h2 id="backup-heading">{t::BACKUP}</h2>
            <p>{t::BACKUP_WHAT}</p>
            <p>{live(last)}</p>
            <button type="button" class="button-first" on:click=move |_| save_all(state)>
                {t::SAVE_ALL}
            </button>
        </section>
        <section class="files" aria-labelledby="import-heading">
            <h2 id="import-heading">{t::IMPORT}</h2>
            <p>{t::IMPORT_WHAT}</p>
            <label for="import-file">{t::IMPORT_FILE}</label>
            <input id="import-file" type="file" on:change=chosen />
            {live(move || shown(state, preview))}
        </section>
        {live(move || bin(state))}
    }
    .into_any()
}

/// When the last backup was made, as the settings remember it.
#[must_use]
pub fn last_backup(shop: &coldseat_core::ask::document::Shop) -> Option<u64> {
    shop.backup_at
}

fn shown(state: State, preview: RwSignal<Option<Preview>>) -> Option<AnyView> {
    let words = match preview.get()? {
        Preview::Reading => t::OPENING.get().to_owned(),
        Preview::Refused(fault) => t::file_fault(&fault),
        Preview::Taken(count) => t::taken(count),
        Preview::Lines(lines) => return Some(preview_list(state, preview, &lines)),
    };
    Some(view! { <p role="status">{words}</p> }.into_any())
}

fn preview_list(state: State, preview: RwSignal<Option<Preview>>, lines: &[Line]) -> AnyView {
    let items: Vec<AnyView> = lines
        .iter()
        .map(|line| {
            let name = if line.name.trim().is_empty() {
                t::UNNAMED.get()
            } else {
                &line.name
            };
            let mut words = format!("{name}: {}", t::outcome(&line.outcome));
            if line.repaired {
                words = format!("{words}; {}", t::PARTLY_REPAIRED);
            }
            view! { <li>{words}</li> }.into_any()
        })
        .collect();
    let any = lines
        .iter()
        .any(|line| matches!(line.outcome, Outcome::New | Outcome::Joins(..)));
    let button = any.then(|| {
        view! {
            <button type="button" class="button-first" on:click=move |_| take(state, preview)>
                {t::TAKE_ALL}
            </button>
        }
    });
    view! {
        <div role="status">
            <p>{t::PREVIEW}</p>
            <ul class="preview">{items}</ul>
        </div>
        <p class="row">
            {button}
            <button type="button" on:click=move |_| preview.set(None)>
                {t::NOT_TAKEN}
            </button>
        </p>
    }
    .into_any()
}

fn bin(state: State) -> Option<AnyView> {
    let mut binned: Vec<Listed> = Vec::new();
    for list in [state.library.jobs, state.library.drops] {
        list.with(|list| {
            let in_bin = list.iter().filter(|one| one.row.binned.is_some());
            binned.extend(in_bin.cloned());
        });
    }
    if binned.is_empty() {
        return None;
    }
    let names: Vec<String> = binned.iter().map(|one| one.name.clone()).collect();
    // Asked once more: it is the only thing here that cannot be taken back.
    let asked = RwSignal::new(false);
    let items: Vec<AnyView> = binned
        .into_iter()
        .map(|job| binned_line(state, job))
        .collect();
    let empty = move || {
        let names = names.clone();
        if asked.get() {
            view! {
                <p>{t::EMPTY_BIN_SURE}</p>
                <p class="row">
                    <button type="button" on:click=move |_| destroy(state, names.clone())>
                        {t::EMPTY_BIN_YES}
                    </button>
                    <button type="button" on:click=move |_| asked.set(false)>
                        {t::EMPTY_BIN_NO}
                    </button>
                </p>
            }
            .into_any()
        } else {
            view! {
                <button type="button" on:click=move |_| asked.set(true)>
                    {t::EMPTY_BIN}
                </button>
            }
            .into_any()
        }
    };
    Some(
        view! {
            <section class="files" aria-labelledby="bin-heading">
                <h2 id="bin-heading">{t::BIN}</h2>
                <p>{t::BIN_WHAT}</p>
                <ul class="preview">{items}</ul>
                {live(empty)}
            </section>
        }
        .into_any(),
    )
}

fn binned_line(state: State, job: Listed) -> AnyView {
    let about = if job.name.starts_with(DROPS) {
        let of = t::drop_about(&job.row.engine, &job.row.customer);
        format!("{} {of}", t::COLD_DROP)
    } else {
        about(&job.row)
    };
    let name = format!("{} ({})", job.row.name, about.trim());
    let label = format!("{}: {}", t::OUT_OF_BIN, job.row.name);
    view! {
        <li>
            <span>{name}</span>
            <button
                type="button"
                class="button-small"
                aria-label=label
                on:click=move |_| state.out_of_bin(job.name.clone(), job.id.clone())
            >
                {t::OUT_OF_BIN}
            </button>
        </li>
    }
    .into_any()
}

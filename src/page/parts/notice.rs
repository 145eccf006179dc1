//! Standing notices under the head of the page: the store, repairs, a version
//! that waits. They stay until what they say is over.

use crate::browser;
use crate::live::live;
use crate::memo::Memo;
use crate::offline;
use crate::parts::conflicts::conflict_notice;
use crate::screens::{Route, View};
use crate::share::file::save_job;
use crate::storage::Keeping;
use crate::texts as t;
use crate::{
    state::{State, Target},
    storage::Store,
};
use coldseat_core::ask::document::Repair;
use coldseat_core::storage::Open;
use coldseat_markup::view;
use leptos::prelude::*;

/// Of an open document: whether it may only be read, what was repaired, whether it
/// is in the bin.
fn of<P>(open: &Open<P>) -> (bool, Vec<Repair>, bool) {
    (open.read_only, open.repairs.clone(), open.binned.is_some())
}

/// All notices that hold now.
#[component]
pub fn Notices() -> impl IntoView {
    let state = State::here();
    let store = move || {
        let words = match state.storage.store.get() {
            Store::Works => return None,
            Store::Blocked => t::STORE_BLOCKED,
            Store::Full => t::STORE_FULL,
        };
        Some(
            view! {
                <div class="notice notice-bad" role="alert">
                    <p>{words}</p>
                    {move || state.session.open.with(Option::is_some).then(|| export_button(state))}
                </div>
            }
            .into_any(),
        )
    };
    let one = move || match state.storage.keeping.get() {
        Keeping::Only(place, why) => Some(
            view! {
                <div class="notice" role="status">
                    <p>{t::kept_in_one(place, why)}</p>
                    {move || state.session.open.with(Option::is_some).then(|| export_button(state))}
                </div>
            }
            .into_any(),
        ),
        Keeping::Gone => {
            let (target, words) = match state.ui.route.get() {
                Route::Job { .. } => (Target::Job, t::GONE),
                Route::Drop(Some(_)) => (Target::Drop, t::DROP_GONE),
                _ => return None,
            };
            Some(
                view! {
                    <div class="notice notice-bad" role="alert">
                        <p>{words}</p>
                        <button type="button" on:click=move |_| state.session.keep_anew(target)>
                            {t::KEEP_ANEW}
                        </button>
                    </div>
                }
                .into_any(),
            )
        }
        _ => None,
    };
    let offline = move || {
        (state.ui.not_offline.get() && state.ui.route.get() == Route::Jobs).then(|| {
            view! { <div class="notice" role="status"><p>{t::NOT_OFFLINE}</p></div> }.into_any()
        })
    };
    let undone = move || {
        state.storage.not_destroyed.get().then(|| {
            view! {
                <div class="notice notice-bad" role="alert">
                    <p>{t::NOT_DESTROYED}</p>
                    <button type="button" on:click=move |_| state.storage.not_destroyed.set(false)>
                        {t::UNDERSTOOD}
                    </button>
                </div>
            }
            .into_any()
        })
    };
    let job = move || {
        let (target, words, (read_only, repairs, binned)) = match state.ui.route.get() {
            Route::Job { .. } => (
                Target::Job,
                [t::READ_ONLY, t::IN_BIN, t::REPAIRED],
                state
                    .session
                    .open
                    .with(|open| open.as_ref().map(of).unwrap_or_default()),
            ),
            Route::Drop(_) => (
                Target::Drop,
                [t::DROP_READ_ONLY, t::DROP_IN_BIN, t::DROP_REPAIRED],
                state.session.drop_open.with(of),
            ),
            _ => return None,
        };
        let [read_only_words, binned_words, repaired_words] = words;
        if read_only {
            return Some(
                view! { <div class="notice notice-bad"><p>{read_only_words}</p></div> }.into_any(),
            );
        }
        if binned {
            return Some(
                view! {
                    <div class="notice">
                        <p>{binned_words}</p>
                        <button type="button" on:click=move |_| state.session.bin(target, false)>
                            {t::OUT_OF_BIN}
                        </button>
                    </div>
                }
                .into_any(),
            );
        }
        (!repairs.is_empty()).then(|| {
            let items: Vec<AnyView> = repairs
                .iter()
                .map(|r| view! { <li>{t::repair(r)}</li> }.into_any())
                .collect();
            view! {
                <div class="notice notice-bad">
                    <p>{repaired_words}</p>
                    <ul>{items}</ul>
                    <button
                        type="button"
                        on:click=move |_| {
                            state.session.open.update(|o| {
                                if let Some(o) = o {
                                    o.repairs.clear();
                                }
                            });
                            state.session.drop_open.update(|o| o.repairs.clear());
                        }
                    >
                        {t::UNDERSTOOD}
                    </button>
                </div>
            }
            .into_any()
        })
    };
    let back = move || {
        let jobs = state.storage.brought_back.get();
        (!jobs.is_empty()).then(|| {
            let items: Vec<AnyView> = jobs
                .into_iter()
                .map(|name| view! { <li>{name}</li> }.into_any())
                .collect();
            view! {
                <div class="notice" role="status">
                    <p>{t::BROUGHT_BACK}</p>
                    <ul>{items}</ul>
                    <button type="button" on:click=move |_| state.storage.brought_back.set(Vec::new())>
                        {t::UNDERSTOOD}
                    </button>
                </div>
            }
            .into_any()
        })
    };
    // Never in mid-work: while a step is open it only says that it waits.
    let in_work = Memo::new(move |_| {
        matches!(
            state.ui.route.get(),
            Route::Job {
                view: View::Cylinder(..) | View::Deck(_) | View::Engine,
                ..
            }
        )
    });
    let update = move || {
        state.ui.update_ready.get().then(|| {
            view! {
                <div class="notice" role="status">
                    <p>{t::UPDATE_READY}</p>
                    {move || {
                        if in_work.get() {
                            view! { <p>{t::UPDATE_LATER}</p> }.into_any()
                        } else {
                            view! {
                                <button type="button" on:click=|_| offline::take_update()>
                                    {t::UPDATE_NOW}
                                </button>
                            }
                                .into_any()
                        }
                    }}
                </div>
            }
            .into_any()
        })
    };
    let one_file = browser::is_one_file();
    let file = move || {
        (one_file && state.ui.route.get() == Route::Jobs).then(|| {
            view! {
                <div class="notice" role="status">
                    <p>{t::ONE_FILE}</p>
                    <p>
                        <a class="button" href="#/files">
                            {t::FILES}
                        </a>
                    </p>
                </div>
            }
            .into_any()
        })
    };
    view! { <div class="notices">{live(store)} {live(one)} {live(undone)} {live(offline)} {live(file)} {live(back)} {live(job)} {conflict_notice(state)} {live(update)}</div> }.into_any()
}

/// Hands the open job over as a file.
pub fn export_button(state: State) -> AnyView {
    view! {
        <button
            type="button"
            on:click=move |_| save_job(state)
        >
            {t::SAVE_TO_FILE}
        </button>
    }
    .into_any()
}

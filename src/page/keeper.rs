//! The session of this tab ([`coldseat_core::storage::session`]) in the browser:
//! its asks are carried out one by one, what it tells is shown.

use crate::browser;
use crate::library::{self, OpenJob};
use crate::route::Route;
use crate::state::{State, Store};
use crate::storage::durable;
use crate::storage::local::Local;
use coldseat_core::ask::document::{ColdDropPaper, Row, Shop, peek_slot};
use coldseat_core::ask::{UnitSystem, Writer};
use coldseat_core::storage::Answer;
use coldseat_core::storage::Ask;
use coldseat_core::storage::StoreFault;
pub use coldseat_core::storage::keeper::Keeping;
pub use coldseat_core::storage::keeper::Store as Place;
use coldseat_core::storage::session::Session;
use coldseat_core::storage::session::Told;
use coldseat_core::storage::slots;
use coldseat_core::storage::slots::JOBS;
use leptos::prelude::*;
use std::cell::{Cell, RefCell};
use std::time::Duration;

/// An answer that takes longer is not waited for: what is typed is said to be
/// where it is.
const PATIENCE: Duration = Duration::from_secs(6);
/// What was refused is tried again so often.
const AGAIN: Duration = Duration::from_secs(20);

thread_local! {
    static SESSION: RefCell<Option<Session>> = const { RefCell::new(None) };
    static BUSY: Cell<bool> = const { Cell::new(false) };
    // Asks so far.
    static ASKS: Cell<u64> = const { Cell::new(0) };
}

/// Does something with the session of this tab, which is begun at the first
/// call.
pub fn with<T>(does: impl FnOnce(&mut Session) -> T) -> T {
    SESSION.with_borrow_mut(|session| {
        does(session.get_or_insert_with(|| {
            let writer = Writer::of(browser::device(), browser::chance());
            let units = UnitSystem::Inch;
            let fresh = (Shop::fresh(units), ColdDropPaper::fresh(units));
            Session::start(&Local, writer, fresh, browser::now())
        }))
    })
}

/// Carries out what the session asks of the durable store, until it asks for
/// nothing more.
pub fn run(state: State) {
    show_keeping(state);
    if BUSY.replace(true) {
        return;
    }
    wasm_bindgen_futures::spawn_local(async move {
        while let Some(ask) = with(|session| session.next(&Local)) {
            let number = ASKS.replace(ASKS.get() + 1) + 1;
            let is_putting = matches!(ask, Ask::Put(_));
            let is_late = move || {
                if ASKS.get() == number && BUSY.get() {
                    with(Session::late);
                    show_keeping(state);
                    state.looking.set(false);
                }
            };
            set_timeout(is_late, PATIENCE);
            let answer = durable::perform(ask).await;
            if is_putting && matches!(answer, Answer::Put(Ok(_))) {
                browser::ask_to_persist();
            }
            let told = with(|session| session.answered(answer, &Local, browser::now()));
            state.show(told);
            show_keeping(state);
        }
        BUSY.set(false);
        show_keeping(state);
    });
}

/// Tries again, now and then, what was refused.
pub fn keep_trying(state: State) {
    let again = move || {
        let state_now = with(|session| session.keeping());
        if matches!(state_now, Keeping::Only(..) | Keeping::Held(_)) {
            with(|session| session.try_again(&Local));
            run(state);
        }
    };
    // A page that cannot set an interval tries again at the next key.
    let _ = set_interval_with_handle(again, AGAIN);
}

/// Shows how far all has come.
fn show_keeping(state: State) {
    let (keeping, has_looked) = with(|session| (session.keeping(), session.keeper().has_looked()));
    if state.keeping.get_untracked() != keeping {
        state.keeping.set(keeping);
    }
    let store = match keeping {
        Keeping::Held(StoreFault::Full) => Store::Full,
        Keeping::Held(_) => Store::Blocked,
        Keeping::Both | Keeping::Only(..) => Store::Works,
        Keeping::Idle | Keeping::Writing | Keeping::Gone => {
            let has_any = Local::is_there() || with(|s| s.keeper().heads().next().is_some());
            match state.store.get_untracked() {
                Store::Blocked if has_looked && has_any => Store::Works,
                before => before,
            }
        }
    };
    if state.store.get_untracked() != store {
        state.store.set(store);
    }
}

impl State {
    /// Shows what the session tells.
    pub fn show(self, told: Told) {
        if told.job {
            self.open.set(with(|session| session.job().cloned()));
            self.show_history();
        }
        if told.shop {
            self.show_shop();
        }
        if told.cold_drop {
            let sheet = with(|session| session.cold_drop().job.sheet.clone());
            self.drop_sheet.set(sheet);
        }
        if !told.brought_back.is_empty() {
            let names = told.brought_back.iter().map(|name| {
                let content = slots::newest_content(&Local, name);
                let row = content.and_then(|c| Row::from_bytes(&peek_slot(&c)?.row));
                row.map_or_else(|| name.clone(), |row| row.name)
            });
            let names: Vec<String> = names.collect();
            self.brought_back.update(|jobs| jobs.extend(names));
        }
        if told.not_destroyed {
            self.not_destroyed.set(true);
        }
        if told.listed {
            if told.others {
                library::forget_row(None);
            } else if let Some(id) = with(|session| session.job().map(|open| open.id.clone())) {
                library::forget_row(Some(&id));
            }
            let shows = matches!(
                self.route.get_untracked(),
                Route::Jobs | Route::Files | Route::New | Route::Engines | Route::Learnt
            );
            if shows {
                self.scan();
            }
        }
        if let Some(id) = told.fetched
            && matches!(self.route.get_untracked(), Route::Job { id: now, .. } if now == id)
        {
            self.looking.set(false);
        }
        if with(|session| session.keeper().has_looked()) && self.looking.get_untracked() {
            let waits = matches!(self.route.get_untracked(), Route::Job { .. })
                && self.open.with_untracked(Option::is_none)
                && with(|session| !session.keeper().is_quiet());
            self.looking.set(waits);
        }
    }
}

/// A job, wherever it is: open, under way, in local storage, in the second store.
pub async fn stored(state: State, id: &str) -> Option<OpenJob> {
    state.flush();
    if let Some(here) = with(|session| session.at_hand(&Local, id)) {
        return Some(here);
    }
    match durable::perform(Ask::Get(format!("{JOBS}{id}"))).await {
        Answer::Got(Ok(Some(content))) => OpenJob::of_content(id, &content),
        _ => None,
    }
}

/// Takes a job out of the bin.
pub fn out_of_bin(state: State, id: String) {
    wasm_bindgen_futures::spawn_local(async move {
        if let Some(opened) = stored(state, &id).await {
            with(|session| session.open_job(&Local, &opened.id, ""));
            if with(|session| session.job().is_none()) {
                // Only the second store has it.
                let document = opened.document(&format!("{JOBS}{id}"));
                with(|session| session.take(&id, &document, &Local, browser::now()));
                with(|session| session.open_job(&Local, &id, ""));
            }
            bin_open(state);
        }
    });
}

fn bin_open(state: State) {
    state.open.set(with(|session| session.job().cloned()));
    state.bin(false);
    library::forget_row(None);
    state.scan();
}

/// Takes jobs out of both stores, for good.
pub fn destroy(state: State, ids: &[String]) {
    with(|session| session.destroy(ids));
    run(state);
}

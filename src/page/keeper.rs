//! The session of this tab ([`coldseat_core::storage::session`]) in the browser:
//! its asks are carried out one by one, what it tells is shown.

use crate::browser;
use crate::folder;
use crate::library::{self, OpenDrop, OpenJob};
use crate::route::Route;
use crate::state::{State, Store, Target};
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
use coldseat_core::storage::slots::DROPS;
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
            state.show_what(told, is_putting);
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
        self.show_what(told, false);
    }

    /// The same; `is_own` where no list but that of jobs is another by it.
    fn show_what(self, told: Told, is_own: bool) {
        if told.job {
            self.open.set(with(|session| session.job().cloned()));
            self.show_history();
        }
        if told.shop {
            self.show_shop();
        }
        if told.cold_drop {
            self.show_drop();
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
            } else {
                self.forget_open_rows();
            }
            let shows = match self.route.get_untracked() {
                Route::Jobs | Route::Files | Route::New | Route::Engines | Route::Learnt => true,
                // The one that is typed into is not in its list.
                Route::Drop(_) => told.others || !is_own,
                _ => false,
            };
            if shows {
                self.scan();
            }
        }
        let shown = self.route.get_untracked().document();
        if told.fetched.is_some() && told.fetched == shown {
            self.looking.set(false);
        }
        if with(|session| session.keeper().has_looked()) && self.looking.get_untracked() {
            let is_open = match self.route.get_untracked() {
                Route::Job { .. } => self.open.with_untracked(Option::is_some),
                Route::Drop(Some(id)) => self.drop_open.with_untracked(|open| open.id == id),
                _ => true,
            };
            self.looking
                .set(!is_open && with(|session| !session.keeper().is_quiet()));
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

/// A kept cold drop, wherever it is.
pub async fn stored_drop(state: State, id: &str) -> Option<OpenDrop> {
    state.flush();
    if let Some(here) = with(|session| session.kept_drop_at_hand(&Local, id)) {
        return Some(here);
    }
    match durable::perform(Ask::Get(format!("{DROPS}{id}"))).await {
        Answer::Got(Ok(Some(content))) => OpenDrop::of_content(id, &content),
        _ => None,
    }
}

/// Takes a document out of the bin, by its name and key.
pub fn out_of_bin(state: State, name: String, id: String) {
    wasm_bindgen_futures::spawn_local(async move {
        let is_drop = name.starts_with(DROPS);
        let found = if is_drop {
            let found = stored_drop(state, &id).await;
            found.map(|open| open.document(&name))
        } else {
            stored(state, &id).await.map(|open| open.document(&name))
        };
        let Some(found) = found else {
            return;
        };
        if with(|session| session.keeper().copies(&Local, &name).is_empty()) {
            // Only the second store has it.
            with(|session| session.take(&id, &found, &Local, browser::now()));
        }
        if is_drop {
            with(|session| session.open_drop(&Local, &id));
            state.bin(Target::Drop, false);
            let told = with(|session| session.close_drop(&Local, browser::now()));
            state.show(told);
        } else {
            with(|session| session.open_job(&Local, &id, ""));
            state.open.set(with(|session| session.job().cloned()));
            state.bin(Target::Job, false);
        }
        library::forget_row(None);
        state.scan();
    });
}

/// Takes documents out of both stores, for good.
pub fn destroy(state: State, names: Vec<String>) {
    wasm_bindgen_futures::spawn_local(async move {
        folder::bury(&names).await;
        with(|session| session.destroy(names));
        run(state);
    });
}

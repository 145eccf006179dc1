//! What keeps the documents of this tab ([`coldseat_core::storage::session`]) in the
//! browser: its asks are carried out one by one, what it tells goes to whoever listens.
//! No screen is known here.

use super::durable;
use super::local::Local;
use crate::browser;
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

/// How the store fares.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Store {
    /// It takes what it is given.
    Works,
    /// There is none.
    Blocked,
    /// It takes nothing more.
    Full,
}

/// What the stores tell.
#[derive(Clone, Debug)]
pub enum Event {
    /// An answer is late: what is at hand is all there is for now.
    Late,
    /// What is to be shown anew; `true` where it is what this tab wrote.
    Told(Told, bool),
}

/// How the stores fare, and who hears of it.
#[derive(Clone, Copy)]
pub struct StorageState {
    /// How the store fares.
    pub store: RwSignal<Store>,
    /// How far what was typed last has come.
    pub keeping: RwSignal<Keeping>,
    /// What was to be taken out for good is still there: the second store refused.
    pub not_destroyed: RwSignal<bool>,
    /// Jobs whose newer copy came out of the second store.
    pub brought_back: RwSignal<Vec<String>>,
    listener: StoredValue<Option<Callback<Event>>>,
}

impl StorageState {
    /// Looks whether there is a store; nobody listens yet.
    #[must_use]
    pub fn new() -> Self {
        let store = if Local::is_there() {
            Store::Works
        } else {
            Store::Blocked
        };
        Self {
            store: RwSignal::new(store),
            keeping: RwSignal::new(Keeping::Idle),
            not_destroyed: RwSignal::new(false),
            brought_back: RwSignal::new(Vec::new()),
            listener: StoredValue::new(None),
        }
    }

    /// From here on what the stores tell goes there.
    pub fn listen(self, hears: impl Fn(Event) + Send + Sync + 'static) {
        self.listener.set_value(Some(Callback::new(hears)));
    }

    fn event(self, event: Event) {
        if let Some(listener) = self.listener.get_value() {
            listener.run(event);
        }
    }

    /// Tells what is to be shown anew.
    pub fn tell(self, told: Told) {
        self.tell_what(told, false);
    }

    fn tell_what(self, told: Told, is_own: bool) {
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
        self.event(Event::Told(told, is_own));
    }

    /// Something was changed that is not written yet.
    pub fn writing(self) {
        self.keeping.set(Keeping::Writing);
    }

    /// Carries out what the session asks of the durable store, until it asks for
    /// nothing more.
    pub fn run(self) {
        self.show_keeping();
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
                        self.show_keeping();
                        self.event(Event::Late);
                    }
                };
                set_timeout(is_late, PATIENCE);
                let answer = durable::perform(ask).await;
                if is_putting && matches!(answer, Answer::Put(Ok(_))) {
                    browser::ask_to_persist();
                }
                let told = with(|session| session.answered(answer, &Local, browser::now()));
                self.tell_what(told, is_putting);
                self.show_keeping();
            }
            BUSY.set(false);
            self.show_keeping();
        });
    }

    /// Tries again, now and then, what was refused.
    pub fn keep_trying(self) {
        let again = move || {
            let state_now = with(|session| session.keeping());
            if matches!(state_now, Keeping::Only(..) | Keeping::Held(_)) {
                with(|session| session.try_again(&Local));
                self.run();
            }
        };
        // A page that cannot set an interval tries again at the next key.
        let _ = set_interval_with_handle(again, AGAIN);
    }

    /// Takes documents out of both stores, for good.
    pub fn destroy(self, names: Vec<String>) {
        with(|session| session.destroy(names));
        self.run();
    }

    /// Shows how far all has come.
    fn show_keeping(self) {
        let (keeping, has_looked) =
            with(|session| (session.keeping(), session.keeper().has_looked()));
        if self.keeping.get_untracked() != keeping {
            self.keeping.set(keeping);
        }
        let store = match keeping {
            Keeping::Held(StoreFault::Full) => Store::Full,
            Keeping::Held(_) => Store::Blocked,
            Keeping::Both | Keeping::Only(..) => Store::Works,
            Keeping::Idle | Keeping::Writing | Keeping::Gone => {
                let has_any = Local::is_there() || with(|s| s.keeper().heads().next().is_some());
                match self.store.get_untracked() {
                    Store::Blocked if has_looked && has_any => Store::Works,
                    before => before,
                }
            }
        };
        if self.store.get_untracked() != store {
            self.store.set(store);
        }
    }
}

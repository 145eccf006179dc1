//! The shop's folder of this device ([`coldseat_core::storage::folder`]) in the
//! browser: its calls are carried out, what comes is joined, how it stands is shown.
//! A device that has not joined makes no request and has no timer.

use crate::browser;
use crate::library;
use crate::screens::{Route, View};
use crate::state::State;
use crate::storage::dav;
use crate::storage::local::Local;
use crate::storage::with;
use coldseat_core::ask::Place;
use coldseat_core::storage::folder::Event;
use coldseat_core::storage::folder::Folder;
use coldseat_core::storage::folder::Own;
use coldseat_core::storage::folder::Reply;
use coldseat_core::storage::folder::Standing;
use coldseat_core::storage::folder::entered_on;
use coldseat_core::storage::folder::index::tidy;
use coldseat_core::storage::session::Told;
use coldseat_core::storage::session::Took;
use coldseat_core::storage::slots;
use leptos::prelude::*;
use std::cell::{Cell, RefCell};
use std::collections::VecDeque;
use std::time::Duration;
use wasm_bindgen_futures::spawn_local;

mod documents;

pub use documents::destroy;
use documents::feed;

/// What is remembered of joining: key, name, number of the last index.
const OWN: &str = "coldseat/folder";
/// Whose turn it is of the tabs of this device, and until when.
const TURN: &str = "coldseat/folder/turn";
/// Names of documents that came from others and were not opened since.
const NEWS: &str = "coldseat/folder/news";
/// How often is looked whether something is to be done.
const TICK: Duration = Duration::from_millis(700);
/// The folder is looked into so often, ms; of a page in the background seldom.
const LOOK: u64 = 2_000;
const LOOK_HIDDEN: u64 = 30_000;
/// A folder that is not reached is tried so often, ms.
const AGAIN: u64 = 5_000;
/// A tab that has not said so for so long has its turn no more, ms.
const TURN_ENDS: u64 = 6_000;
/// What came is shown together, ms.
const TOGETHER: Duration = Duration::from_millis(200);
/// What comes waits no longer for a hand that types, ms.
const HAND_FIRST: u64 = 1_000;
/// News that are remembered.
const NEWS_MOST: usize = 500;

thread_local! {
    static FOLDER: RefCell<Option<Folder>> = const { RefCell::new(None) };
    static DRIVING: Cell<bool> = const { Cell::new(false) };
    static TICKS: Cell<bool> = const { Cell::new(false) };
    static SCANNED: Cell<bool> = const { Cell::new(false) };
    static LOOKED: Cell<u64> = const { Cell::new(0) };
    static TAB: Cell<u32> = const { Cell::new(0) };
    // Replies that were not taken yet: tickets, replies, the server's times.
    static REPLIES: RefCell<VecDeque<(u32, Reply, Option<u64>)>> =
        const { RefCell::new(VecDeque::new()) };
    static TAKING: Cell<bool> = const { Cell::new(false) };
    static TOLD: RefCell<Option<Told>> = const { RefCell::new(None) };
}

/// Another device, as Settings lists it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OtherDevice {
    /// Its key.
    pub key: String,
    /// What it is called.
    pub name: String,
    /// When it wrote last.
    pub at: u64,
    /// It was struck.
    pub is_struck: bool,
    /// A later version of the page writes there.
    pub is_newer: bool,
}

/// What the screens follow.
#[derive(Clone, Copy)]
pub struct Shop {
    /// What this device is called in the folder; none: it has not joined.
    pub joined: RwSignal<Option<String>>,
    /// How it stands; none where another tab of the page is at it.
    pub standing: RwSignal<Option<Standing>>,
    /// The other devices.
    pub others: RwSignal<Vec<OtherDevice>>,
    /// Documents that came and were not opened since.
    pub news: RwSignal<Vec<String>>,
    /// Documents that wait to be sent.
    pub waiting: RwSignal<Vec<String>>,
    /// The folder had less of this device than it was given.
    pub was_older: RwSignal<bool>,
    /// A name for this device that is being typed.
    pub typed: RwSignal<Option<String>>,
    /// What devices are called, by their numbers.
    pub names: RwSignal<Vec<(u32, String)>>,
}

fn remembered() -> Option<(Own, u64)> {
    let text = browser::local_text(OWN)?;
    let mut lines = text.lines();
    let (key, name, number) = (lines.next()?, lines.next()?, lines.next()?);
    let own = Own {
        key: key.to_owned(),
        name: name.to_owned(),
        writer: browser::device() & 0xf_ffff,
    };
    coldseat_core::storage::is_id(key).then_some((own, number.parse().ok()?))
}

fn remember(own: &Own, number: u64) {
    browser::set_local_text(OWN, &format!("{}\n{}\n{number}\n", own.key, own.name));
}

/// Does something with the folder, where this device has joined it.
fn with_folder<T>(does: impl FnOnce(&mut Folder) -> T) -> Option<T> {
    FOLDER.with_borrow_mut(|folder| folder.as_mut().map(does))
}

/// A signal is set only where it is another: what follows it is not drawn for nothing.
fn show<T: PartialEq + Send + Sync + 'static>(signal: RwSignal<T>, now: T) {
    if signal.with_untracked(|before| *before != now) {
        signal.set(now);
    }
}

impl Shop {
    /// Sets everything up; nothing is asked for where this device has not joined.
    #[must_use]
    pub fn start(state: State) -> Self {
        let shop = Self {
            joined: RwSignal::new(None),
            standing: RwSignal::new(None),
            others: RwSignal::new(Vec::new()),
            news: RwSignal::new(Vec::new()),
            typed: RwSignal::new(None),
            waiting: RwSignal::new(Vec::new()),
            was_older: RwSignal::new(false),
            names: RwSignal::new(Vec::new()),
        };
        TAB.set(browser::chance());
        if let Some((own, number)) = remembered() {
            shop.begins(state, own, number);
        }
        shop
    }

    /// From the context.
    #[must_use]
    pub fn here() -> Self {
        expect_context()
    }

    fn begins(self, state: State, own: Own, number: u64) {
        let news = browser::local_text(NEWS).unwrap_or_default();
        self.news.set(news.lines().map(str::to_owned).collect());
        self.joined.set(Some(own.name.clone()));
        FOLDER.set(Some(Folder::new(own, number)));
        SCANNED.set(false);
        if TICKS.replace(true) {
            return;
        }
        let tick = move || self.ticks(state);
        // A page that cannot set an interval is as one that has not joined.
        let _ = set_interval_with_handle(tick, TICK);
        let heard = window_event_listener(leptos::ev::storage, move |event| {
            let key = event.key();
            if let Some(name) = key.as_deref().and_then(slots::name_of) {
                with_folder(|folder| folder.touch(name));
            }
            // Another tab joined, left, or gave this device another name.
            if key.as_deref() == Some(OWN) && remembered().is_none() {
                self.is_left();
            }
        });
        on_cleanup(move || heard.remove());
    }

    /// Joins under a name; says whether it is one.
    pub fn join(self, state: State, name: &str) -> bool {
        let name = tidy(name);
        if name.is_empty() {
            return false;
        }
        let own = Own {
            key: browser::fresh_id(),
            name,
            writer: browser::device() & 0xf_ffff,
        };
        remember(&own, 0);
        self.begins(state, own, 0);
        LOOKED.set(0);
        self.ticks(state);
        true
    }

    /// Calls this device otherwise; says whether the name is one.
    pub fn rename(self, name: &str) -> bool {
        let name = tidy(name);
        if name.is_empty() {
            return false;
        }
        if let Some((mut own, number)) = remembered() {
            own.name.clone_from(&name);
            remember(&own, number);
            with_folder(|folder| folder.rename(&name));
            self.joined.set(Some(name));
            LOOKED.set(0);
        }
        true
    }

    /// Leaves: what lies in the folder stays there, for the others.
    pub fn leave(self) {
        browser::remove_local_text(OWN);
        browser::remove_local_text(NEWS);
        self.is_left();
    }

    fn is_left(self) {
        FOLDER.set(None);
        self.joined.set(None);
        self.standing.set(None);
        self.others.set(Vec::new());
        self.news.set(Vec::new());
        self.waiting.set(Vec::new());
        self.was_older.set(false);
    }

    /// Strikes a device that is lost.
    pub fn strike(self, state: State, key: &str) {
        with_folder(|folder| folder.strike(key));
        LOOKED.set(0);
        self.ticks(state);
    }

    /// Whether it is this tab's turn: one tab of a device is at the folder.
    fn is_its_turn() -> bool {
        let (tab, now) = (TAB.get().to_string(), browser::now());
        let held = browser::local_text(TURN).and_then(|text| {
            let (who, at) = text.split_once(' ')?;
            let at: u64 = at.parse().ok()?;
            (who != tab && now.abs_diff(at) < TURN_ENDS).then_some(())
        });
        if held.is_none() {
            browser::set_local_text(TURN, &format!("{tab} {now}"));
        }
        held.is_none()
    }

    fn ticks(self, state: State) {
        if FOLDER.with_borrow(Option::is_none) {
            return;
        }
        if !Self::is_its_turn() {
            show(self.standing, None);
            return;
        }
        let is_ready = with(|session| session.keeper().has_looked());
        if !is_ready {
            return;
        }
        if !SCANNED.replace(true) {
            with_folder(|folder| folder.scan(library::all_names()));
        }
        self.is_opened(state);
        let touched = with(|session| session.touched());
        let now = browser::now();
        let every = match self
            .standing
            .with_untracked(|s| s.as_ref().is_some_and(|s| s.away.is_some()))
        {
            true => AGAIN,
            false if document().hidden() => LOOK_HIDDEN,
            false => LOOK,
        };
        let is_due = now.abs_diff(LOOKED.get()) >= every || (!touched.is_empty() && every == LOOK);
        with_folder(|folder| {
            for name in &touched {
                folder.touch(name);
            }
            if is_due {
                folder.look();
            }
        });
        self.drive(state);
    }

    /// What is open is no news any more.
    fn is_opened(self, state: State) {
        if let Route::Job {
            id,
            view: View::Cylinder(..) | View::Whole(_) | View::Engine,
        } = state.ui.route.get_untracked()
        {
            let name = format!("{}{id}", slots::JOBS);
            if self.news.with_untracked(|news| news.contains(&name)) {
                self.news.update(|news| news.retain(|other| *other != name));
                self.keep_news();
            }
        }
    }

    fn keep_news(self) {
        let news = self.news.with_untracked(|news| news.join("\n"));
        browser::set_local_text(NEWS, &news);
    }

    /// Carries out what the folder asks, until it asks for nothing more.
    fn drive(self, state: State) {
        if DRIVING.replace(true) {
            return;
        }
        spawn_local(async move {
            feed().await;
            let now = browser::now();
            while let Some((ticket, call)) = with_folder(|folder| folder.next(now)).flatten() {
                LOOKED.set(now);
                spawn_local(async move {
                    let (reply, at) = dav::carry(&call).await;
                    REPLIES.with_borrow_mut(|all| all.push_back((ticket, reply, at)));
                    self.takes(state);
                });
            }
            DRIVING.set(false);
            self.shows();
            let is_wanted = with_folder(|folder| folder.wants().is_some());
            if is_wanted == Some(true) {
                self.drive(state);
            }
        });
    }

    /// Takes the replies one by one: a copy is joined, then the hand has its turn.
    fn takes(self, state: State) {
        if TAKING.replace(true) {
            return;
        }
        spawn_local(async move {
            while let Some((ticket, reply, at)) = REPLIES.with_borrow_mut(VecDeque::pop_front) {
                let events =
                    with_folder(|folder| folder.answered(ticket, reply, at, browser::now()));
                let events = events.unwrap_or_default();
                let is_work = !events.is_empty();
                for event in events {
                    self.comes(state, event);
                }
                self.drive(state);
                if is_work {
                    hand_first(state).await;
                }
            }
            TAKING.set(false);
        });
    }

    fn comes(self, state: State, event: Event) {
        match event {
            Event::Came(name, slot) => {
                let (took, told) =
                    with(|session| session.take_copy(&name, &slot, &Local, browser::now()));
                for name in with(|session| session.touched()) {
                    with_folder(|folder| folder.touch(&name));
                }
                if took == Took::Came {
                    library::forget_row(Some(&name));
                    self.is_news(state, name);
                }
                tells(state, told);
            }
            Event::Wrote(number) => {
                if let Some(own) = with_folder(|folder| folder.own().clone()) {
                    remember(&own, number);
                }
            }
            Event::Older => self.was_older.set(true),
        }
    }

    fn is_news(self, state: State, name: String) {
        let open = state
            .session
            .open
            .with_untracked(|o| o.as_ref().map(|o| o.id.clone()));
        let is_open = open.is_some_and(|id| name == format!("{}{id}", slots::JOBS));
        let is_known = self.news.with_untracked(|news| news.contains(&name));
        if is_open || is_known || !name.starts_with(slots::JOBS) {
            return;
        }
        self.news.update(|news| {
            news.push(name);
            let more = news.len().saturating_sub(NEWS_MOST);
            news.drain(..more);
        });
        self.keep_news();
    }

    /// Shows how the folder stands.
    fn shows(self) {
        let shown = with_folder(|folder| {
            let others = folder.peers().map(|(key, peer)| OtherDevice {
                key: key.clone(),
                name: peer
                    .index
                    .as_ref()
                    .map(|i| i.name.clone())
                    .unwrap_or_default(),
                at: peer.index.as_ref().map_or(0, |i| i.at),
                is_struck: folder.is_struck(key),
                is_newer: peer.is_newer,
            });
            let names = folder
                .names()
                .map(|(number, name)| (number, name.to_owned()));
            (
                folder.standing().clone(),
                others.collect::<Vec<_>>(),
                names.collect::<Vec<_>>(),
                folder.waiting().cloned().collect::<Vec<_>>(),
            )
        });
        let Some((standing, others, names, waiting)) = shown else {
            return;
        };
        show(self.standing, Some(standing));
        show(self.others, others);
        show(self.names, names);
        show(self.waiting, waiting);
    }

    /// What the device is called on which the reading at a place of the open job was
    /// entered, where that is another one.
    #[must_use]
    pub fn entered_on(self, state: State, place: Place) -> Option<String> {
        self.joined.with(Option::is_some).then_some(())?;
        let number = state
            .session
            .open
            .with_untracked(|open| entered_on(&open.as_ref()?.job.ledger, place))?;
        if number == browser::device() & 0xf_ffff {
            return None;
        }
        self.names.with(|names| {
            let of_it = names.iter().find(|(other, _)| *other == number);
            of_it.map(|(_, name)| name.clone())
        })
    }
}

/// Lets the browser do what waits; while the hand types, until it rests.
async fn hand_first(state: State) {
    let begun = browser::now();
    browser::breathe().await;
    while state.session.half_typed.get_untracked() && browser::now().abs_diff(begun) < HAND_FIRST {
        browser::painted().await;
    }
}

/// What came is shown together: a list is not drawn anew for each of a hundred.
fn tells(state: State, told: Told) {
    let waits = TOLD.with_borrow_mut(|all| {
        let waits = all.is_some();
        let all = all.get_or_insert_default();
        all.job |= told.job;
        all.shop |= told.shop;
        all.cold_drop |= told.cold_drop;
        all.listed |= told.listed;
        waits
    });
    if waits {
        return;
    }
    set_timeout(
        move || {
            if let Some(told) = TOLD.take() {
                state.storage.tell(told);
                state.storage.run();
            }
        },
        TOGETHER,
    );
}

//! Keeps what is typed: at once in local storage, then in the second store,
//! and only when that one has it on the medium is it "saved".
//!
//! At the start both stores are compared: the newer copy of a document counts
//! and is said to have been taken; what only one store has goes to the other.

use crate::browser;
use crate::library::{self, Listed, OpenJob};
use crate::route::Route;
use crate::state::{State, Store};
use crate::storage::durable::{self, Head, Write};
use crate::storage::local::Local;
use crate::storage::slots::{self, JOBS, Next};
use crate::storage::{Shelf, ShelfFault};
use coldseat_core::document::row::Row;
use coldseat_core::document::slot::read_slot;
use leptos::prelude::*;
use litemap::LiteMap;
use std::cell::{Cell, RefCell};

/// How far what was typed last has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keeping {
    /// Nothing was typed yet.
    Idle,
    /// On its way.
    Writing,
    /// On the medium.
    Saved,
    /// In local storage, which the browser writes out when it likes.
    Quick,
    /// On the screen only.
    Held,
}

/// Documents put into the second store at a time, where many are to go.
const BATCH: usize = 50;

/// A write that is under way.
struct Waiting {
    content: String,
    key: String,
    local: Result<(), ShelfFault>,
}

thread_local! {
    static WAITING: RefCell<LiteMap<String, Waiting>> = const { RefCell::new(LiteMap::new_vec()) };
    // Marks of what is known to be in the second store.
    static KNOWN: RefCell<LiteMap<String, u32>> = const { RefCell::new(LiteMap::new_vec()) };
    // Nothing is written into the second store before it was looked into.
    static BUSY: Cell<bool> = const { Cell::new(true) };
}

/// Keeps a text under a name; returns its sequence number.
pub fn keep(state: State, name: String, text: &str, row: Vec<u8>, above: u64) -> u64 {
    library::forget_row(name.strip_prefix(JOBS));
    let (next, local) = match slots::next(&Local, &name, text, row.clone(), above) {
        Ok(next) => {
            let written = slots::write(&Local, &next);
            (next, written)
        }
        Err(fault) => {
            let sequence = above.saturating_add(1);
            let slot = slots::Slot {
                sequence,
                row,
                text: text.to_owned(),
            };
            let content = coldseat_core::document::slot::write_slot(&slot);
            let key = String::new();
            (
                Next {
                    key,
                    content,
                    sequence,
                },
                Err(fault),
            )
        }
    };
    WAITING.with_borrow_mut(|waiting| {
        let Next { key, content, .. } = next;
        waiting.insert(
            name,
            Waiting {
                content,
                key,
                local,
            },
        )
    });
    set(state, Keeping::Writing);
    if !BUSY.replace(true) {
        wasm_bindgen_futures::spawn_local(drain(state));
    }
    next.sequence
}

/// Something was typed and is about to be kept.
pub fn begins(state: State) {
    set(state, Keeping::Writing);
}

fn set(state: State, keeping: Keeping) {
    if state.keeping.get_untracked() != keeping {
        state.keeping.set(keeping);
    }
}

/// Writes what waits until nothing waits any more.
async fn drain(state: State) {
    let mut last = None;
    loop {
        let batch = WAITING.with_borrow_mut(core::mem::take);
        if batch.is_empty() {
            break;
        }
        let contents = batch
            .iter()
            .map(|(name, waiting)| (name.clone(), waiting.content.clone()));
        let written = put(contents.collect()).await;
        let result = written.as_ref().map(drop).map_err(|fault| *fault);
        for (name, waiting) in batch {
            last = Some(settle(state, &name, &waiting, result));
        }
        // Another tab was there first: joined, and written once more.
        for (name, content) in written.unwrap_or_default() {
            if let Some(id) = name.strip_prefix(JOBS) {
                state.found_other(id, &content);
            }
        }
    }
    BUSY.set(false);
    if let Some(keeping) = last {
        set(state, keeping);
    }
}

/// Writes into the second store what was made from what is known to be there;
/// returns what another tab has written there instead.
async fn put(contents: Vec<(String, String)>) -> Result<Vec<(String, String)>, ShelfFault> {
    let writes: Vec<Write> = KNOWN.with_borrow(|known| {
        let write = |(name, content): (String, String)| Write {
            known: known.get(&name).copied(),
            name,
            content,
        };
        contents.into_iter().map(write).collect()
    });
    let others = durable::put(&writes).await?;
    for write in writes {
        know(&write.name, &write.content);
    }
    for (name, content) in &others {
        know(name, content);
    }
    Ok(others)
}

fn know(name: &str, content: &str) {
    KNOWN.with_borrow_mut(|known| known.insert(name.to_owned(), durable::mark(content)));
}

/// What a write has come to once the second store has answered.
fn settle(state: State, name: &str, waiting: &Waiting, durable: Result<(), ShelfFault>) -> Keeping {
    let store = match (waiting.local, durable) {
        (Ok(()), Ok(())) => {
            slots::settle(&Local, name);
            Store::Works
        }
        // Moved to where there is room. A later write may be under way.
        (Err(_), Ok(())) => {
            let newer = WAITING.with_borrow(|w| w.contains_key(name));
            if !newer {
                Local.remove(&waiting.key);
                slots::leave(&Local, name);
            }
            Store::Works
        }
        (Ok(()), Err(_)) => Store::Works,
        (Err(ShelfFault::Blocked), Err(_)) => Store::Blocked,
        (Err(ShelfFault::Full), Err(_)) => Store::Full,
    };
    if state.store.get_untracked() != store {
        state.store.set(store);
    }
    match (waiting.local, durable) {
        (_, Ok(())) => {
            if name.starts_with(JOBS) {
                browser::ask_to_persist();
            }
            Keeping::Saved
        }
        (Ok(()), Err(_)) => Keeping::Quick,
        _ => Keeping::Held,
    }
}

/// Compares both stores, once, at the start.
pub async fn catch_up(state: State) {
    if let Ok(heads) = durable::heads().await {
        let mut known = Vec::new();
        let mut far = Vec::new();
        let mut back = Vec::new();
        for head in heads {
            KNOWN.with_borrow_mut(|known| known.insert(head.name.clone(), head.mark));
            match slots::peek(&Local, &head.name).map(|peek| peek.sequence) {
                Some(sequence) if sequence < head.sequence => back.push(head.clone()),
                Some(sequence) if sequence == head.sequence => known.push(head.name.clone()),
                Some(_) => {}
                None => far.extend(listed(&head)),
            }
        }
        for head in back {
            bring_back(state, &head).await;
            known.push(head.name);
        }
        state.far.set(far);
        if state.store.get_untracked() == Store::Blocked {
            state.store.set(Store::Works);
        }
        mirror(&known).await;
    }
    state.scan();
    let missing = matches!(state.route.get_untracked(), Route::Job { .. })
        && state.open.with_untracked(Option::is_none);
    state.looking.set(false);
    if missing {
        // Perhaps one of those that only the second store has.
        state.arrive();
    }
    drain(state).await;
}

/// A document that only the second store has, for the list.
fn listed(head: &Head) -> Option<Listed> {
    Some(Listed {
        id: head.name.strip_prefix(JOBS)?.to_owned(),
        row: Row::from_bytes(&head.row)?,
        newer: false,
    })
}

/// Takes the newer copy of a document out of the second store.
async fn bring_back(state: State, head: &Head) {
    let Ok(Some(content)) = durable::get(&head.name).await else {
        return;
    };
    know(&head.name, &content);
    // Where it finds no room, it is read from the second store.
    let _ = slots::write_newer(&Local, &head.name, &content);
    let Some(id) = head.name.strip_prefix(JOBS) else {
        return;
    };
    library::forget_row(Some(id));
    let row = Row::from_bytes(&head.row).unwrap_or_default();
    state.brought_back.update(|jobs| jobs.push(row.name));
    state.found_other(id, &content);
}

/// Puts into the second store what only local storage has, or has newer.
async fn mirror(known: &[String]) {
    let ids = slots::job_ids(&Local);
    let names: Vec<String> = ids
        .into_iter()
        .map(|id| format!("{JOBS}{id}"))
        .chain([slots::SHOP.to_owned()])
        .filter(|name| !known.contains(name))
        .collect();
    for batch in names.chunks(BATCH) {
        let contents: Vec<(String, String)> = batch
            .iter()
            .filter_map(|name| Some((name.clone(), slots::newest_content(&Local, name)?)))
            .collect();
        // What does not fit stays where it is.
        if contents.is_empty() || put(contents).await.is_err() {
            return;
        }
        for name in batch {
            slots::settle(&Local, name);
        }
    }
}

/// A job, wherever it is: on the desk, in local storage, in the second store.
pub async fn stored(state: State, id: &str) -> Option<OpenJob> {
    let open = state
        .open
        .with_untracked(|open| open.clone().filter(|open| open.id == id));
    if let Some(here) = open.or_else(|| library::read_job(id)) {
        return Some(here);
    }
    let name = format!("{JOBS}{id}");
    let content = durable::get(&name).await.ok().flatten()?;
    know(&name, &content);
    library::open_slot(id, &read_slot(&content)?)
}

/// Takes a job out of the bin.
pub fn out_of_bin(state: State, id: String) {
    wasm_bindgen_futures::spawn_local(async move {
        let opened = stored(state, &id).await;
        if opened.is_some() {
            state.put_on_desk(opened);
            state.bin(false);
            state.scan();
        }
    });
}

/// Takes jobs out of both stores, for good.
pub fn destroy(state: State, ids: Vec<String>) {
    wasm_bindgen_futures::spawn_local(async move {
        let names: Vec<String> = ids.iter().map(|id| format!("{JOBS}{id}")).collect();
        // First the store that would bring them back.
        let gone = durable::remove(&names).await.is_ok();
        if !gone && state.far.with_untracked(|far| !far.is_empty()) {
            return;
        }
        for name in &names {
            slots::leave(&Local, name);
            KNOWN.with_borrow_mut(|known| known.remove(name));
            library::forget_row(name.strip_prefix(JOBS));
        }
        state
            .far
            .update(|far| far.retain(|job| !ids.contains(&job.id)));
        let open = state
            .open
            .with_untracked(|open| open.as_ref().is_some_and(|open| ids.contains(&open.id)));
        if open {
            state.put_on_desk(None);
        }
        state.scan();
    });
}

/// Opens a job that only the second store has.
pub fn fetch(state: State, id: String) {
    state.looking.set(true);
    wasm_bindgen_futures::spawn_local(async move {
        let opened = stored(state, &id).await;
        let here = matches!(
            state.route.get_untracked(),
            Route::Job { id: ref now, .. } if *now == id
        );
        if here {
            state.put_on_desk(opened);
        }
        state.looking.set(false);
    });
}

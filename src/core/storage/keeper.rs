//! Keeps documents: at once in the quick store, then in the durable one, and says
//! of each how far it has come. Knows no kind of document and has none open.
//!
//! At the start, and whenever the person comes back, both stores are compared.
//! What only one has goes to the other; where both have a document and it is not the same, both copies are joined. The
//! durable store compares before it writes: what another tab wrote there is never
//! written over, it comes back and is joined.

pub use super::kept::{Event, Found, Keeping, Store};
use super::slots::{self, DROP, SHOP};
use super::{Answer, Ask, Head, Named, Shelf, StoreFault, Write, mark};
use crate::document::slot::peek_slot;
use litemap::LiteMap;
use std::collections::VecDeque;
use written::come_to;

mod again;
mod refill;
mod written;

/// Documents written at a time, where many are to go.
const BATCH: usize = 50;

/// What is to go into the durable store.
#[derive(Clone, Debug)]
pub(super) struct Pending {
    content: String,
    sequence: u64,
    local: Result<(), StoreFault>,
    /// Nobody typed it: it is only carried from one store to the other.
    is_carried: bool,
}

/// Why a slot is fetched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Fetch {
    /// Both stores differ.
    Compare,
    /// To be opened.
    Open,
    /// To see whether it is still there.
    Verify,
    /// The quick store has lost it.
    Refill,
}

/// A name, and the latest sequence number that is to go.
type UpTo = (String, u64);
/// What waits to be written, under its name.
type Waited = (String, Pending);

/// What is under way.
#[derive(Clone, Debug)]
enum Flight {
    Heads,
    Get(String, Fetch),
    Put(LiteMap<String, Pending>),
    /// What is to go; and what waited to be written of it, should the store refuse.
    Remove(Vec<UpTo>, Vec<Waited>),
}

/// A keeper.
#[derive(Clone, Debug)]
pub struct Keeper {
    flight: Option<Flight>,
    is_to_look: bool,
    has_looked: bool,
    fetches: VecDeque<(String, Fetch)>,
    removals: VecDeque<Vec<String>>,
    pending: LiteMap<String, Pending>,
    /// What one of the stores refused.
    pub(super) owed: LiteMap<String, Pending>,
    carried: VecDeque<String>,
    /// What the quick store has lost.
    refills: VecDeque<String>,
    /// Marks of what it was given back, until the durable store is seen to have it
    /// still.
    refilled: LiteMap<String, u32>,
    /// Marks of what the durable store has and is part of what is written next.
    known: LiteMap<String, u32>,
    heads: LiteMap<String, Head>,
    states: LiteMap<String, Keeping>,
    /// What is another here than it was when this was asked last.
    touched: LiteMap<String, ()>,
}

impl Default for Keeper {
    fn default() -> Self {
        Self::new()
    }
}

impl Keeper {
    /// One that first looks at what the durable store has.
    #[must_use]
    pub const fn new() -> Self {
        Self {
            flight: None,
            is_to_look: true,
            has_looked: false,
            fetches: VecDeque::new(),
            removals: VecDeque::new(),
            pending: LiteMap::new_vec(),
            owed: LiteMap::new_vec(),
            carried: VecDeque::new(),
            refills: VecDeque::new(),
            refilled: LiteMap::new_vec(),
            known: LiteMap::new_vec(),
            heads: LiteMap::new_vec(),
            states: LiteMap::new_vec(),
            touched: LiteMap::new_vec(),
        }
    }

    /// How far a document has come.
    #[must_use]
    pub fn state(&self, name: &str) -> Keeping {
        self.states.get(name).copied().unwrap_or(Keeping::Idle)
    }

    /// How far the one has come that has come the least far.
    #[must_use]
    pub fn worst(&self) -> Keeping {
        let all = self.states.values().copied();
        all.max_by_key(|state| state.rank())
            .unwrap_or(Keeping::Idle)
    }

    /// Names of documents that this tab wrote or took out since this was asked last.
    pub fn touched(&mut self) -> Vec<String> {
        let touched = core::mem::replace(&mut self.touched, LiteMap::new_vec());
        touched.into_iter().map(|(name, ())| name).collect()
    }

    pub(super) fn touch(&mut self, name: &str) {
        self.touched.insert(name.to_owned(), ());
    }

    /// Something was typed and is about to be kept, or is kept no more.
    pub fn set_state(&mut self, name: &str, state: Keeping) {
        self.states.insert(name.to_owned(), state);
    }

    /// Nobody shows a document any more that was found to be gone; or it is back.
    pub fn forget_gone(&mut self, name: &str) {
        if self.state(name) == Keeping::Gone {
            self.states.remove(name);
        }
    }

    /// Whether the durable store was looked into.
    #[must_use]
    pub const fn has_looked(&self) -> bool {
        self.has_looked
    }

    /// Whether nothing is under way and nothing waits but what was refused.
    #[must_use]
    pub fn is_quiet(&self) -> bool {
        self.flight.is_none() && !self.is_to_look && self.pending.is_empty() && {
            let is_nothing_to_get = self.fetches.is_empty() && self.refills.is_empty();
            is_nothing_to_get && self.removals.is_empty() && self.carried.is_empty()
        }
    }

    /// Heads of the documents of the durable store, as far as is known.
    pub fn heads(&self) -> impl Iterator<Item = &Head> {
        self.heads.values()
    }

    /// Whether a write of a document waits, for the first time or once more.
    pub(super) fn waits(&self, name: &str) -> bool {
        self.pending.contains_key(name) || self.owed.contains_key(name)
    }

    /// Contents under way that a store may not have yet, the newest first.
    fn held(&self, name: &str) -> impl Iterator<Item = &str> {
        let flown = match &self.flight {
            Some(Flight::Put(writes)) => writes.get(name),
            _ => None,
        };
        [self.pending.get(name), flown, self.owed.get(name)]
            .into_iter()
            .flatten()
            .map(|pending| pending.content.as_str())
    }

    /// Names and contents of what may be in no store yet.
    #[must_use]
    pub fn all_held(&self) -> Vec<Named> {
        let flown = match &self.flight {
            Some(Flight::Put(writes)) => Some(writes),
            _ => None,
        };
        let mut all: LiteMap<String, String> = LiteMap::new_vec();
        for (name, pending) in [Some(&self.owed), flown, Some(&self.pending)]
            .into_iter()
            .flatten()
            .flat_map(LiteMap::iter)
        {
            all.insert(name.clone(), pending.content.clone());
        }
        all.into_iter().collect()
    }

    /// All copies of a document that are at hand: under way, in the quick store.
    #[must_use]
    pub fn copies(&self, shelf: &dyn Shelf, name: &str) -> Vec<String> {
        let mut copies: Vec<String> = self.held(name).map(str::to_owned).collect();
        if let Some(content) = slots::newest_content(shelf, name)
            && !copies.contains(&content)
        {
            copies.push(content);
        }
        copies
    }

    /// Keeps a text under a name; returns its sequence number and mark.
    pub fn keep(
        &mut self,
        shelf: &dyn Shelf,
        name: &str,
        (text, row): (&str, Vec<u8>),
        above: u64,
    ) -> (u64, u32) {
        let (content, sequence, local) = match slots::next(shelf, name, text, row.clone(), above) {
            Ok(next) => {
                let written = slots::write(shelf, &next);
                (next.content, next.sequence, written)
            }
            Err(fault) => {
                let slot = slots::Slot {
                    sequence: above.saturating_add(1),
                    row,
                    text: text.to_owned(),
                };
                let content = crate::document::slot::write_slot(&slot);
                (content, slot.sequence, Err(fault))
            }
        };
        let mark = mark(&content);
        self.owed.remove(name);
        self.pending.insert(
            name.to_owned(),
            Pending {
                content,
                sequence,
                local,
                is_carried: false,
            },
        );
        self.set_state(name, Keeping::Writing);
        self.touch(name);
        (sequence, mark)
    }

    /// What of the durable store is part of the open document now.
    pub fn know(&mut self, name: &str, content: &str) {
        self.known.insert(name.to_owned(), mark(content));
    }

    /// Both stores have what the durable one has, and that is all there is: what
    /// waits was made without it and is part of it.
    pub fn lies_in_both(&mut self, name: &str) {
        self.owed.remove(name);
        self.pending.remove(name);
        self.touch(name);
        if self.states.contains_key(name) {
            self.set_state(name, Keeping::Both);
        }
    }

    /// The durable store is to be looked into again.
    pub const fn look(&mut self) {
        self.is_to_look = true;
    }

    /// A document is to be opened that only the durable store has.
    pub fn fetch(&mut self, name: &str) {
        self.fetches.push_back((name.to_owned(), Fetch::Open));
    }

    /// A document is open and may have been taken out by another tab.
    pub fn verify(&mut self, name: &str) {
        let ask = (name.to_owned(), Fetch::Verify);
        if !self.fetches.contains(&ask) {
            self.fetches.push_back(ask);
        }
    }

    /// Takes documents out of both stores, for good: first out of the one that
    /// would bring them back.
    pub fn destroy(&mut self, names: Vec<String>) {
        self.removals.push_back(names);
    }

    /// What the durable store is to be asked next; one thing at a time.
    pub fn next(&mut self, shelf: &dyn Shelf) -> Option<Ask> {
        if self.flight.is_some() {
            return None;
        }
        if core::mem::take(&mut self.is_to_look) {
            self.flight = Some(Flight::Heads);
            return Some(Ask::Heads);
        }
        if let Some(names) = self.removals.pop_front() {
            let up_to = |name: String| {
                let sequence = self.latest(shelf, &name);
                (name, sequence)
            };
            let all = names.iter().cloned().map(up_to).collect();
            let mut waited = Vec::new();
            for name in &names {
                let (owed, pending) = (self.owed.remove(name), self.pending.remove(name));
                waited.extend(pending.or(owed).map(|one| (name.clone(), one)));
            }
            self.flight = Some(Flight::Remove(all, waited));
            return Some(Ask::Remove(names));
        }
        if !self.pending.is_empty() {
            let pending = core::mem::take(&mut self.pending);
            return Some(self.put(pending));
        }
        if let Some((name, why)) = self.fetches.pop_front() {
            self.flight = Some(Flight::Get(name.clone(), why));
            return Some(Ask::Get(name));
        }
        let mut writes = LiteMap::new_vec();
        while writes.len() < BATCH
            && let Some(name) = self.carried.pop_front()
        {
            if let Some(content) = slots::newest_content(shelf, &name)
                && let Some(peek) = peek_slot(&content)
            {
                let pending = Pending {
                    content,
                    sequence: peek.sequence,
                    local: Ok(()),
                    is_carried: true,
                };
                writes.insert(name, pending);
            }
        }
        if !writes.is_empty() {
            return Some(self.put(writes));
        }
        let name = self.refills.pop_front()?;
        self.flight = Some(Flight::Get(name.clone(), Fetch::Refill));
        Some(Ask::Get(name))
    }

    fn put(&mut self, writes: LiteMap<String, Pending>) -> Ask {
        let ask = writes.iter().map(|(name, pending)| Write {
            name: name.clone(),
            content: pending.content.clone(),
            known: self.known.get(name).copied(),
        });
        let ask = Ask::Put(ask.collect());
        self.flight = Some(Flight::Put(writes));
        ask
    }

    /// What the durable store answered. Answers to nothing are nothing.
    pub fn answered(&mut self, shelf: &dyn Shelf, answer: Answer) -> Vec<Event> {
        match (self.flight.take(), answer) {
            (Some(Flight::Heads), Answer::Heads(heads)) => self.looked(shelf, heads),
            (Some(Flight::Get(name, why)), Answer::Got(got)) => self.got(shelf, name, why, got),
            (Some(Flight::Put(writes)), Answer::Put(put)) => self.written(shelf, writes, put),
            (Some(Flight::Remove(names, waited)), Answer::Removed(removed)) => {
                self.removed(shelf, (names, waited), removed)
            }
            (flight, _) => {
                self.flight = flight;
                Vec::new()
            }
        }
    }

    fn looked(&mut self, shelf: &dyn Shelf, heads: Result<Vec<Head>, StoreFault>) -> Vec<Event> {
        self.has_looked = true;
        let Ok(heads) = heads else {
            return vec![Event::Listed];
        };
        self.heads = LiteMap::new_vec();
        self.refills.clear();
        for head in heads {
            let name = head.name.clone();
            match slots::newest_content(shelf, &name) {
                // What waits may have been made without it.
                Some(content) if mark(&content) == head.mark => {
                    if !self.waits(&name) {
                        self.know(&name, &content);
                    }
                }
                None if name != SHOP && name != DROP => {
                    if self.held(&name).next().is_none() {
                        self.refills.push_back(name.clone());
                    }
                }
                _ => self.fetches.push_back((name.clone(), Fetch::Compare)),
            }
            self.heads.insert(name, head);
        }
        self.confirm_refilled(shelf);
        self.carried = slots::names(shelf)
            .into_iter()
            .filter(|name| !self.heads.contains_key(name) && !self.pending.contains_key(name))
            .collect();
        vec![Event::Listed]
    }

    fn got(
        &mut self,
        shelf: &dyn Shelf,
        name: String,
        why: Fetch,
        got: Result<Option<String>, StoreFault>,
    ) -> Vec<Event> {
        match (why, got) {
            (Fetch::Open, got) => vec![Event::Fetched(name, got.ok().flatten())],
            (Fetch::Compare, Ok(Some(content))) => {
                vec![Event::Other(name, content, Found::Comparing)]
            }
            (Fetch::Verify, Ok(Some(content))) => {
                vec![Event::Other(name, content, Found::Writing)]
            }
            (Fetch::Verify, Ok(None)) => {
                self.heads.remove(&name);
                self.known.remove(&name);
                let is_here = !self.copies(shelf, &name).is_empty();
                if is_here {
                    self.carried.push_back(name);
                    return Vec::new();
                }
                self.set_state(&name, Keeping::Gone);
                self.touch(&name);
                vec![Event::Gone(name), Event::Listed]
            }
            (Fetch::Refill, got) => {
                self.refill(shelf, name, got);
                Vec::new()
            }
            (Fetch::Compare, Ok(None)) => Vec::new(),
            (Fetch::Compare | Fetch::Verify, Err(_)) => Vec::new(),
        }
    }
}

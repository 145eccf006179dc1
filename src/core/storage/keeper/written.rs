//! What has come of writes and removals.

use super::{Event, Fetch, Found, Keeper, Keeping, Pending, Store, UpTo, Waited};
use crate::document::slot::peek_slot;
use crate::storage::{Head, Named, Shelf, StoreFault, mark, slots};
use litemap::LiteMap;

impl Keeper {
    pub(super) fn written(
        &mut self,
        shelf: &dyn Shelf,
        writes: LiteMap<String, Pending>,
        put: Result<Vec<Named>, StoreFault>,
    ) -> Vec<Event> {
        let (strangers, result) = match put {
            Ok(strangers) => (strangers, Ok(())),
            Err(fault) => (Vec::new(), Err(fault)),
        };
        // What was only carried is listed already.
        let is_listed = writes.values().all(|pending| pending.is_carried);
        for (name, pending) in writes {
            if strangers.iter().any(|(other, _)| *other == name) {
                // Kept until it is joined: it may be in no store.
                self.owed.insert(name, pending);
            } else {
                self.settle(shelf, name, pending, result);
            }
        }
        let mut events = Vec::new();
        if !is_listed || !strangers.is_empty() {
            events.push(Event::Listed);
        }
        let other = |(name, content)| Event::Other(name, content, Found::Writing);
        events.extend(strangers.into_iter().map(other));
        events
    }

    /// What a write has come to.
    fn settle(
        &mut self,
        shelf: &dyn Shelf,
        name: String,
        pending: Pending,
        durable: Result<(), StoreFault>,
    ) {
        let is_last = !self.pending.contains_key(&name);
        if durable.is_ok() {
            self.know(&name, &pending.content);
            let head = Head {
                name: name.clone(),
                sequence: pending.sequence,
                mark: mark(&pending.content),
                row: peek_slot(&pending.content).map_or(Vec::new(), |peek| peek.row),
            };
            self.heads.insert(name.clone(), head);
            match pending.local {
                Ok(()) => slots::settle(shelf, &name),
                // It lies where there is room; older ones have done their duty.
                Err(_) => slots::leave_below(shelf, &name, pending.sequence),
            }
        }
        let state = come_to(pending.local, durable);
        // What was only carried says nothing of what a tab typed; but where one store
        // was all that had it, now both have.
        let is_both = state == Keeping::Both
            && matches!(self.state(&name), Keeping::Only(..))
            && !self.owed.contains_key(&name);
        if is_last && (!pending.is_carried || is_both) {
            self.set_state(&name, state);
        }
        let is_owed = durable.is_err() || pending.local.is_err();
        if is_last && is_owed && !pending.is_carried {
            self.owed.insert(name, pending);
        }
    }

    /// The latest sequence number of a document that is here.
    pub(super) fn latest(&self, shelf: &dyn Shelf, name: &str) -> u64 {
        let copies = self.copies(shelf, name);
        let sequences = copies.iter().filter_map(|content| peek_slot(content));
        sequences.map(|peek| peek.sequence).max().unwrap_or(0)
    }

    /// What was written since, in this tab or another, stays.
    pub(super) fn removed(
        &mut self,
        shelf: &dyn Shelf,
        (names, waited): (Vec<UpTo>, Vec<Waited>),
        removed: Result<(), StoreFault>,
    ) -> Vec<Event> {
        let has_none = removed == Err(StoreFault::Blocked) && self.heads.is_empty();
        let is_gone = removed.is_ok() || has_none;
        for (name, pending) in waited.into_iter().filter(|_| !is_gone) {
            if !self.pending.contains_key(&name) {
                self.pending.insert(name, pending);
            }
        }
        for (name, up_to) in names.iter().filter(|_| is_gone) {
            slots::leave_below(shelf, name, up_to.saturating_add(1));
            self.known.remove(name);
            self.heads.remove(name);
            self.touch(name);
            self.fetches
                .retain(|(other, why)| other != name || *why != Fetch::Verify);
            if !self.pending.contains_key(name) && !self.owed.contains_key(name) {
                self.states.remove(name);
            }
        }
        let names = names.into_iter().map(|(name, _)| name).collect();
        vec![Event::Destroyed(names, is_gone), Event::Listed]
    }
}

/// What a write has come to.
pub(super) const fn come_to(
    local: Result<(), StoreFault>,
    durable: Result<(), StoreFault>,
) -> Keeping {
    match (local, durable) {
        (Ok(()), Ok(())) => Keeping::Both,
        (Err(fault), Ok(())) => Keeping::Only(Store::Durable, fault),
        (Ok(()), Err(fault)) => Keeping::Only(Store::Quick, fault),
        (Err(fault), Err(_)) => Keeping::Held(fault),
    }
}

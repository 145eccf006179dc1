//! Stores that refused or do not answer.

use super::{Flight, Keeper, come_to};
use crate::storage::{Shelf, StoreFault, mark, slots};
use litemap::LiteMap;

impl Keeper {
    /// What was refused is tried once more.
    pub fn try_again(&mut self, shelf: &dyn Shelf) {
        for (name, mut pending) in core::mem::take(&mut self.owed) {
            if self.pending.contains_key(&name) {
                continue;
            }
            let mark = mark(&pending.content);
            let lies_durable = self.known.get(&name) == Some(&mark);
            if pending.local.is_err() {
                pending.local = slots::write_newer(shelf, &name, &pending.content);
            }
            match pending.local {
                Ok(()) if lies_durable => {
                    let content = slots::newest_content(shelf, &name);
                    if content.as_deref() == Some(&*pending.content) {
                        slots::settle(shelf, &name);
                        self.lies_in_both(&name);
                    } else {
                        // Another tab has written a later one.
                        self.verify(&name);
                    }
                }
                Err(_) if lies_durable => drop(self.owed.insert(name, pending)),
                _ => drop(self.pending.insert(name, pending)),
            }
        }
    }

    /// The durable store has not answered for a while: what waits for it is where
    /// it is, and says so.
    pub fn late(&mut self) {
        let flown = match &self.flight {
            Some(Flight::Put(writes)) => Some(writes),
            None => return,
            Some(_) => None,
        };
        for (name, pending) in flown
            .into_iter()
            .chain([&self.pending])
            .flat_map(LiteMap::iter)
        {
            if !pending.is_carried {
                let state = come_to(pending.local, Err(StoreFault::Silent));
                self.states.insert(name.clone(), state);
            }
        }
    }
}

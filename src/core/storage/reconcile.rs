//! Two copies of a document that nobody has open.

use super::keeper::{Keeper, Keeping, Store};
use super::open::row_of;
use super::{Shelf, StoreFault, slots};
use crate::document::merge::merge;
use crate::document::slot::read_slot;
use crate::document::{Document, Restored, restore, write};

impl Keeper {
    /// Joins another copy of a document that nobody has open with the one here,
    /// and writes what comes of it where it is not yet. Says whether it had more
    /// than was here.
    pub fn reconcile(&mut self, shelf: &dyn Shelf, name: &str, other: &str) -> bool {
        let theirs = readable_content(other);
        let copies = self.copies(shelf, name);
        let ours = copies
            .iter()
            .filter_map(|content| readable_content(content));
        let ours = ours.reduce(|(a, of_a), (b, of_b)| (merge(&a, &b).unwrap_or(a), of_a.max(of_b)));
        match (ours, theirs) {
            (None, _) => {
                // Only there, or not to be read here: it stays where it is.
                if slots::newest_content(shelf, name).is_none() {
                    let _ = slots::write_newer(shelf, name, other);
                    self.know(name, other);
                    self.touch(name);
                }
                false
            }
            (Some((ours, sequence)), None) => {
                if is_newer(other) {
                    self.set_state(name, Keeping::Only(Store::Quick, StoreFault::Newer));
                    return false;
                }
                // Damaged: kept aside, then written over.
                let _ = slots::keep(shelf, other);
                self.know(name, other);
                self.keep(shelf, name, (&write(&ours), row_of(&ours)), sequence);
                false
            }
            (Some((ours, sequence)), Some((theirs, of_theirs))) => {
                let Some(joined) = merge(&ours, &theirs) else {
                    return false;
                };
                self.know(name, other);
                self.owed.remove(name);
                let is_theirs = joined == theirs;
                if is_theirs && slots::write_newer(shelf, name, other).is_ok() && {
                    slots::newest_content(shelf, name).as_deref() == Some(other)
                } {
                    self.lies_in_both(name);
                } else {
                    let above = sequence.max(of_theirs);
                    self.keep(shelf, name, (&write(&joined), row_of(&joined)), above);
                }
                joined != ours
            }
        }
    }
}

/// The document of a slot where it may be changed, and the slot's sequence number.
pub(super) fn readable_content(content: &str) -> Option<(Document, u64)> {
    let slot = read_slot(content)?;
    match restore(&slot.text) {
        Restored::Valid(document) | Restored::Repaired(document, _) => {
            Some((document, slot.sequence))
        }
        Restored::Newer { .. } | Restored::Unreadable(_) => None,
    }
}

/// Whether a later version of the program wrote a slot.
pub(super) fn is_newer(content: &str) -> bool {
    read_slot(content).is_some_and(|slot| matches!(restore(&slot.text), Restored::Newer { .. }))
}

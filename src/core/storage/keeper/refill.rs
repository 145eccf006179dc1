//! A quick store that has lost documents gets them back out of the durable one:
//! one by one, when nothing else is to be done.

use super::Keeper;
use crate::storage::{Shelf, StoreFault, mark, slots};

impl Keeper {
    /// What the durable store has of a document that the quick one has lost.
    pub(super) fn refill(
        &mut self,
        shelf: &dyn Shelf,
        name: String,
        got: Result<Option<String>, StoreFault>,
    ) {
        let is_missing = |keeper: &Self| keeper.held(&name).next().is_none() && !lies(shelf, &name);
        match got {
            Ok(Some(content)) if is_missing(self) => {
                if slots::write_newer(shelf, &name, &content).is_err() {
                    // No room: the others stay where they are.
                    self.refills.clear();
                } else if lies(shelf, &name) {
                    self.know(&name, &content);
                    self.touch(&name);
                    self.refilled.insert(name, mark(&content));
                }
            }
            Ok(_) => {}
            Err(_) => self.refills.clear(),
        }
        if self.refills.is_empty() && !self.refilled.is_empty() {
            self.look();
        }
    }

    /// What was given back while another tab took it out of both stores is taken
    /// out once more; where the durable store has nothing at all, it was emptied.
    pub(super) fn confirm_refilled(&mut self, shelf: &dyn Shelf) {
        for (name, given) in core::mem::take(&mut self.refilled) {
            let is_gone = !self.heads.is_empty() && !self.heads.contains_key(&name);
            let is_as_given = || {
                let content = slots::newest_content(shelf, &name);
                content.is_some_and(|content| mark(&content) == given)
            };
            if is_gone && self.held(&name).next().is_none() && is_as_given() {
                slots::leave(shelf, &name);
                self.touch(&name);
            }
        }
    }
}

/// Whether the quick store has a document.
fn lies(shelf: &dyn Shelf, name: &str) -> bool {
    slots::newest_content(shelf, name).is_some()
}

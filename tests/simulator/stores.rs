//! The two stores of a device with their real failings.
//!
//! The quick one is written out by the browser later: what was not is gone when
//! the browser is killed. It may be full, turned off, emptied, and a write may be
//! torn by the kill. The durable one is a transaction at a time: it is on the
//! medium when it has committed, whether or not the answer arrives.

use coldseat_core::document::slot::peek_slot;
use coldseat_core::storage::{Answer, Ask, Head, Shelf, StoreFault, mark};
use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

/// Local storage of a device.
#[derive(Default)]
pub struct Quick {
    now: RefCell<BTreeMap<String, String>>,
    on_medium: RefCell<BTreeMap<String, String>>,
    changed: RefCell<Vec<String>>,
    pub fault: Cell<Option<StoreFault>>,
}

impl Quick {
    /// Keys that were changed and not yet told to other tabs.
    pub fn changed(&self) -> Vec<String> {
        self.changed.take()
    }

    /// The browser writes it out.
    pub fn write_out(&self) {
        self.on_medium.replace(self.now.borrow().clone());
    }

    /// The browser is killed; the write that was under way may be torn.
    pub fn kill(&self, is_torn: bool) {
        let mut left = self.on_medium.borrow().clone();
        if is_torn && let Some((key, text)) = self.now.borrow().iter().next_back() {
            let half: String = text.chars().take(text.chars().count() / 2).collect();
            // The slot that was being written, never the other one.
            if left.get(key).is_none_or(|before| before != text) {
                left.insert(key.clone(), half);
            }
        }
        self.now.replace(left.clone());
        self.on_medium.replace(left);
    }

    /// All of it is gone, and no tab is told.
    pub fn empty(&self) {
        self.now.borrow_mut().clear();
        self.on_medium.borrow_mut().clear();
    }
}

impl Shelf for Quick {
    fn get(&self, key: &str) -> Result<Option<String>, StoreFault> {
        match self.fault.get() {
            Some(StoreFault::Blocked) => Err(StoreFault::Blocked),
            _ => Ok(self.now.borrow().get(key).cloned()),
        }
    }
    fn set(&self, key: &str, text: &str) -> Result<(), StoreFault> {
        if let Some(fault) = self.fault.get() {
            return Err(fault);
        }
        self.changed.borrow_mut().push(key.to_owned());
        self.now
            .borrow_mut()
            .insert(key.to_owned(), text.to_owned());
        Ok(())
    }
    fn remove(&self, key: &str) {
        let is_there = self.fault.get() != Some(StoreFault::Blocked);
        if is_there && self.now.borrow_mut().remove(key).is_some() {
            self.changed.borrow_mut().push(key.to_owned());
        }
    }
    fn keys(&self) -> Vec<String> {
        match self.fault.get() {
            Some(StoreFault::Blocked) => Vec::new(),
            _ => self.now.borrow().keys().cloned().collect(),
        }
    }
}

/// A shelf with nothing on it: what a session would do if no other tab wrote.
pub struct Bare;

impl Shelf for Bare {
    fn get(&self, _: &str) -> Result<Option<String>, StoreFault> {
        Ok(None)
    }
    fn set(&self, _: &str, _: &str) -> Result<(), StoreFault> {
        Err(StoreFault::Full)
    }
    fn remove(&self, _: &str) {}
    fn keys(&self) -> Vec<String> {
        Vec::new()
    }
}

/// IndexedDB of a device.
#[derive(Default)]
pub struct Durable {
    pub slots: BTreeMap<String, String>,
    pub fault: Option<StoreFault>,
}

impl Durable {
    /// A transaction runs; `is_aborted` rolls it back.
    pub fn run(&mut self, ask: &Ask, is_aborted: bool) -> Answer {
        let refusal = if is_aborted {
            Some(StoreFault::Full)
        } else {
            self.fault
        };
        match ask {
            Ask::Heads => Answer::Heads(match self.fault {
                Some(StoreFault::Blocked) => Err(StoreFault::Blocked),
                _ => Ok(self.slots.iter().map(head).collect()),
            }),
            Ask::Get(name) => Answer::Got(match self.fault {
                Some(StoreFault::Blocked) => Err(StoreFault::Blocked),
                _ => Ok(self.slots.get(name).cloned()),
            }),
            Ask::Remove(names) => Answer::Removed(match refusal {
                Some(fault) => Err(fault),
                None => {
                    self.slots.retain(|name, _| !names.contains(name));
                    Ok(())
                }
            }),
            Ask::Put(writes) => Answer::Put(match refusal {
                Some(fault) => Err(fault),
                None => {
                    let mut strangers = Vec::new();
                    for write in writes {
                        match self.slots.get(&write.name) {
                            Some(there)
                                if *there != write.content && Some(mark(there)) != write.known =>
                            {
                                strangers.push((write.name.clone(), there.clone()));
                            }
                            _ => {
                                self.slots.insert(write.name.clone(), write.content.clone());
                            }
                        }
                    }
                    Ok(strangers)
                }
            }),
        }
    }
}

fn head((name, content): (&String, &String)) -> Head {
    let peek = peek_slot(content);
    Head {
        name: name.clone(),
        sequence: peek.as_ref().map_or(0, |peek| peek.sequence),
        mark: mark(content),
        row: peek.map_or(Vec::new(), |peek| peek.row),
    }
}

//! The browser's local storage, through gloo-storage. That library takes the
//! storage for granted; a private window or a policy may forbid it, so it is
//! asked first. What the browser refuses stays in memory, so that work goes on
//! until the page closes.

use super::{Shelf, ShelfFault};
use coldseat_core::numerics::order::each_once;
use gloo_storage::{LocalStorage, Storage as _};
use litemap::LiteMap;
use std::cell::RefCell;

thread_local! {
    /// Texts that the browser did not take.
    static IN_MEMORY: RefCell<LiteMap<String, String>> = const { RefCell::new(LiteMap::new_vec()) };
}

/// Local storage of this origin.
#[derive(Clone, Copy, Debug)]
pub struct Local;

impl Local {
    fn storage() -> Result<web_sys::Storage, ShelfFault> {
        let window = web_sys::window().ok_or(ShelfFault::Blocked)?;
        match window.local_storage() {
            Ok(Some(_)) => Ok(LocalStorage::raw()),
            _ => Err(ShelfFault::Blocked),
        }
    }

    /// Whether the browser stores anything at all.
    #[must_use]
    pub fn is_there() -> bool {
        Self::storage().is_ok_and(|storage| storage.length().is_ok())
    }
}

impl Shelf for Local {
    fn get(&self, key: &str) -> Result<Option<String>, ShelfFault> {
        let held = IN_MEMORY.with_borrow(|texts| texts.get(key).cloned());
        if held.is_some() {
            return Ok(held);
        }
        match Self::storage() {
            Ok(storage) => storage.get_item(key).map_err(|_| ShelfFault::Blocked),
            Err(_) => Ok(None),
        }
    }

    fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault> {
        let result = match Self::storage() {
            Ok(storage) => storage.set_item(key, text).map_err(|_| ShelfFault::Full),
            Err(fault) => Err(fault),
        };
        IN_MEMORY.with_borrow_mut(|texts| {
            if result.is_err() {
                texts.insert(key.to_owned(), text.to_owned());
            } else {
                texts.remove(key);
            }
        });
        result
    }

    fn remove(&self, key: &str) {
        IN_MEMORY.with_borrow_mut(|texts| texts.remove(key));
        if let Ok(storage) = Self::storage() {
            // A storage that refuses keeps an older copy: no harm.
            let _ = storage.remove_item(key);
        }
    }

    fn keys(&self) -> Vec<String> {
        let mut keys: Vec<String> = IN_MEMORY.with_borrow(|texts| texts.keys().cloned().collect());
        if let Ok(storage) = Self::storage() {
            let count = storage.length().unwrap_or(0);
            keys.extend((0..count).filter_map(|index| storage.key(index).ok().flatten()));
        }
        each_once(keys)
    }
}

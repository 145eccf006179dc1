//! The browser's local storage, through gloo-storage. That library takes the
//! storage for granted; a private window or a policy may forbid it, so it is
//! asked first.

use coldseat_core::storage::Shelf;
use coldseat_core::storage::StoreFault;
use gloo_storage::{LocalStorage, Storage as _};

/// Local storage of this origin.
#[derive(Clone, Copy, Debug)]
pub struct Local;

impl Local {
    fn storage() -> Result<web_sys::Storage, StoreFault> {
        let window = web_sys::window().ok_or(StoreFault::Blocked)?;
        match window.local_storage() {
            Ok(Some(_)) => Ok(LocalStorage::raw()),
            _ => Err(StoreFault::Blocked),
        }
    }

    /// Whether the browser stores anything at all.
    #[must_use]
    pub fn is_there() -> bool {
        Self::storage().is_ok_and(|storage| storage.length().is_ok())
    }
}

impl Shelf for Local {
    fn get(&self, key: &str) -> Result<Option<String>, StoreFault> {
        Self::storage()?
            .get_item(key)
            .map_err(|_| StoreFault::Blocked)
    }

    fn set(&self, key: &str, text: &str) -> Result<(), StoreFault> {
        Self::storage()?
            .set_item(key, text)
            .map_err(|_| StoreFault::Full)
    }

    fn remove(&self, key: &str) {
        if let Ok(storage) = Self::storage() {
            // A storage that refuses keeps an older copy: no harm.
            let _ = storage.remove_item(key);
        }
    }

    fn keys(&self) -> Vec<String> {
        let Ok(storage) = Self::storage() else {
            return Vec::new();
        };
        let count = storage.length().unwrap_or(0);
        (0..count)
            .filter_map(|index| storage.key(index).ok().flatten())
            .collect()
    }
}

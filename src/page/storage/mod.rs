//! Where documents are kept on this device.
//!
//! [`slots`] is the scheme (two slots per document, checked, the newer one
//! counts), on any [`Shelf`]; [`local`] is the browser's local storage;
//! [`durable`] the second store, which tells when a write lies on the medium.

pub mod durable;
pub mod local;
pub mod slots;

/// A place for texts under keys.
pub trait Shelf {
    /// The text under a key.
    ///
    /// # Errors
    /// [`ShelfFault`] where the browser refuses.
    fn get(&self, key: &str) -> Result<Option<String>, ShelfFault>;
    /// Puts a text under a key.
    ///
    /// # Errors
    /// [`ShelfFault`] where the browser refuses.
    fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault>;
    /// Takes a key out; what is not there is gone already.
    fn remove(&self, key: &str);
    /// All keys.
    fn keys(&self) -> Vec<String>;
}

/// Why a shelf refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShelfFault {
    /// There is no storage: private window, or turned off.
    Blocked,
    /// No room, or the write did not arrive whole.
    Full,
}

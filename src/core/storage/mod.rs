//! What becomes of what is typed: two stores, other tabs, other devices.
//!
//! [`Session`](session::Session) is a tab: what is open, its history, who writes.
//! It keeps through [`Keeper`](keeper::Keeper), which writes at once into the
//! quick store ([`Shelf`]) and asks the durable one ([`Ask`], [`Answer`]). Nothing
//! here waits, looks at a clock or knows a browser: whoever runs it hands in the
//! shelf and the time, carries the asks out one by one and brings the answers,
//! whenever they come. The page does so, and so does the simulator of the tests.

pub mod folder;
pub mod keeper;
mod kept;
mod open;
mod reconcile;
pub mod session;
mod sheet;
pub mod slots;
mod told;

pub use open::Open;

/// A place for texts under keys that answers at once: local storage.
pub trait Shelf {
    /// The text under a key.
    ///
    /// # Errors
    /// [`StoreFault`] where the browser refuses.
    fn get(&self, key: &str) -> Result<Option<String>, StoreFault>;
    /// Puts a text under a key.
    ///
    /// # Errors
    /// [`StoreFault`] where the browser refuses.
    fn set(&self, key: &str, text: &str) -> Result<(), StoreFault>;
    /// Takes a key out; what is not there is gone already.
    fn remove(&self, key: &str);
    /// All keys.
    fn keys(&self) -> Vec<String>;
}

/// Why a store refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StoreFault {
    /// There is none: private window, or turned off.
    Blocked,
    /// No room, or the write did not arrive whole.
    Full,
    /// It does not answer.
    Silent,
    /// A later version of the program wrote there; this one must not.
    Newer,
}

/// What is known of a document of the durable store without fetching it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Head {
    /// Under which name.
    pub name: String,
    /// Sequence number of its slot.
    pub sequence: u64,
    /// Mark of its slot.
    pub mark: u32,
    /// Bytes of its row.
    pub row: Vec<u8>,
}

/// A slot to be written into the durable store.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Write {
    /// Under which name.
    pub name: String,
    /// The slot.
    pub content: String,
    /// Mark of the slot that it was made from; `None` for none. Where another
    /// one is there, it is not written.
    pub known: Option<u32>,
}

/// A slot under its name.
pub type Named = (String, String);

/// What the durable store is asked for: one thing at a time, wholly or not at
/// all.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Ask {
    /// Heads of all documents.
    Heads,
    /// The slot under a name.
    Get(String),
    /// Write slots.
    Put(Vec<Write>),
    /// Take documents out.
    Remove(Vec<String>),
}

/// What the durable store answers, each to its ask.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// To [`Ask::Heads`].
    Heads(Result<Vec<Head>, StoreFault>),
    /// To [`Ask::Get`].
    Got(Result<Option<String>, StoreFault>),
    /// To [`Ask::Put`]: written and on the medium, but for those whose place
    /// holds what was not known; these are returned with what is there.
    Put(Result<Vec<Named>, StoreFault>),
    /// To [`Ask::Remove`].
    Removed(Result<(), StoreFault>),
}

/// The mark of a slot.
#[must_use]
pub fn mark(content: &str) -> u32 {
    crc32fast::hash(content.as_bytes())
}

/// Whether a text can be the key of a job.
#[must_use]
pub fn is_id(id: &str) -> bool {
    (1..=40).contains(&id.len()) && id.bytes().all(|b| b.is_ascii_alphanumeric())
}

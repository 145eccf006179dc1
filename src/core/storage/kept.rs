//! How far a document has come, and what an answer of the durable store brings.

use super::StoreFault;

/// One of the two stores.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Store {
    /// The one that answers at once; browsers write it out seconds later.
    Quick,
    /// The one that answers when all is on the medium.
    Durable,
}

/// How far a document has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keeping {
    /// Nothing was typed yet.
    Idle,
    /// On its way.
    Writing,
    /// In both stores, on the medium.
    Both,
    /// In this store only; why not in the other.
    Only(Store, StoreFault),
    /// On the screen only.
    Held(StoreFault),
    /// Another tab took it out of both stores.
    Gone,
}

impl Keeping {
    /// What is worse is greater.
    pub(super) const fn rank(self) -> u8 {
        match self {
            Self::Idle => 0,
            Self::Both => 1,
            Self::Only(Store::Durable, _) => 2,
            Self::Only(Store::Quick, _) => 3,
            Self::Writing => 4,
            Self::Gone => 5,
            Self::Held(_) => 6,
        }
    }
}

/// What has come of an answer, for whoever has documents open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Event {
    /// Another copy of a document was found, to be joined with the open one; why.
    Other(String, String, Found),
    /// A document that was asked for: its slot, where there is one.
    Fetched(String, Option<String>),
    /// A document is in neither store any more.
    Gone(String),
    /// These were taken out for good, or could not be.
    Destroyed(Vec<String>, bool),
    /// Where what lies has changed.
    Listed,
}

/// Where another copy of a document was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Found {
    /// When both stores were compared: the quick one may have forgotten.
    Comparing,
    /// Where it was to be written: another tab was there first.
    Writing,
}

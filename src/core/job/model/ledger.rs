//! What a job remembers so that two copies of it can be joined: values that
//! stand beside the one shown because two people typed different ones, and
//! marks of values that were replaced knowingly.
//!
//! Everything is told by the path of a value in the document
//! (`entries/3/bore_d/0`, `steps/engine/caps`, `customer`). The rules of joining
//! are the document's ([`crate::document::merge`]); most jobs have an empty
//! ledger.

use crate::job::model::place::Millis;
use crate::numerics::order::in_order;
use litemap::LiteMap;
use serde_json::Value;

/// A value that stands beside the one shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Rival {
    /// As it stands in the document.
    pub value: Value,
    /// When it was set, where the value itself does not say; else 0.
    pub at: Millis,
}

/// Marks of values, in order, each once.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks(Vec<u32>);

impl Marks {
    /// Adds one.
    pub fn insert(&mut self, mark: u32) {
        if let Err(at) = self.0.binary_search(&mark) {
            self.0.insert(at, mark);
        }
    }

    /// Whether it is among them.
    #[must_use]
    pub fn contains(&self, mark: u32) -> bool {
        self.0.binary_search(&mark).is_ok()
    }

    /// All.
    #[must_use]
    pub fn as_slice(&self) -> &[u32] {
        &self.0
    }
}

impl FromIterator<u32> for Marks {
    fn from_iter<I: IntoIterator<Item = u32>>(marks: I) -> Self {
        let mut marks = in_order(marks.into_iter().collect(), u32::cmp);
        marks.dedup();
        Self(marks)
    }
}

/// The ledger.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ledger {
    /// Values beside the one shown, until one is chosen.
    pub rivals: LiteMap<String, Vec<Rival>>,
    /// Marks (CRC-32) of values that were replaced knowingly: a copy that still
    /// has one of them is not asked about it.
    pub replaced: LiteMap<String, Marks>,
    /// When a value was set that does not say so itself.
    pub stamps: LiteMap<String, Millis>,
}

impl Ledger {
    /// Whether there is nothing in it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.rivals.is_empty() && self.replaced.is_empty() && self.stamps.is_empty()
    }
}

//! What a job remembers so that two copies of it can be joined: values that
//! stand beside the one shown because two people typed different ones, and
//! marks of values that were replaced knowingly.
//!
//! Everything is told by the path of a value in the document
//! (`entries/3/bore_d/0`, `steps/engine/caps`, `customer`). The rules of joining
//! are the document's ([`crate::document::merge`]); most jobs have an empty
//! ledger.

use super::Millis;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// A value that stands beside the one shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Rival {
    /// As it stands in the document.
    pub value: Value,
    /// When it was set, where the value itself does not say; else 0.
    pub at: Millis,
}

/// The ledger.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ledger {
    /// Values beside the one shown, until one is chosen.
    pub rivals: BTreeMap<String, Vec<Rival>>,
    /// Marks (CRC-32) of values that were replaced knowingly: a copy that still
    /// has one of them is not asked about it.
    pub replaced: BTreeMap<String, BTreeSet<u32>>,
    /// When a value was set that does not say so itself.
    pub stamps: BTreeMap<String, Millis>,
}

impl Ledger {
    /// Whether there is nothing in it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.rivals.is_empty() && self.replaced.is_empty() && self.stamps.is_empty()
    }
}

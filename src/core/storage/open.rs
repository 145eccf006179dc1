//! A document that is open, and how it comes out of a slot.

use super::slots::id_in;
use crate::document::paper::Paper;
use crate::document::row::Row;
use crate::document::slot::{Slot, read_slot};
use crate::document::{Document, Repair, Restored, restore};
use crate::job::Millis;
use serde_json::{Map, Value};

/// An open document.
#[derive(Clone, Debug, PartialEq)]
pub struct Open<P> {
    /// Its key.
    pub id: String,
    /// What it holds: the job, or another kind of document.
    pub job: P,
    /// Sequence number of the slot it was read from or written to.
    pub sequence: u64,
    /// When it was begun.
    pub created: Millis,
    /// When it was changed last, as it was read.
    pub changed: Millis,
    /// When it was put into the bin, if it was.
    pub binned: Option<Millis>,
    /// What of the envelope is unknown here.
    pub unknown: Map<String, Value>,
    /// Written by a later version: not to be changed.
    pub read_only: bool,
    /// What was repaired when it was read.
    pub repairs: Vec<Repair>,
}

impl<P: Paper> Open<P> {
    /// A document that is begun.
    #[must_use]
    pub fn begun(id: String, job: P, at: Millis) -> Self {
        Self {
            id,
            job,
            sequence: 0,
            created: at,
            changed: at,
            binned: None,
            unknown: Map::new(),
            read_only: false,
            repairs: Vec::new(),
        }
    }

    /// Out of a slot; `None` where it does not read.
    #[must_use]
    pub fn of_slot(id: &str, slot: &Slot) -> Option<Self> {
        let (document, repairs, read_only) = match restore(&slot.text) {
            Restored::Valid(document) => (document, Vec::new(), false),
            Restored::Repaired(document, repairs) => (document, repairs, false),
            Restored::Newer { readable, .. } => (readable?, Vec::new(), true),
            Restored::Unreadable(_) => return None,
        };
        Some(Self {
            id: id.to_owned(),
            job: P::of_body(&document.body)?.clone(),
            sequence: slot.sequence,
            created: document.created,
            changed: document.changed,
            binned: document.binned,
            unknown: document.unknown,
            read_only,
            repairs,
        })
    }

    /// Out of the content of a slot.
    #[must_use]
    pub fn of_content(id: &str, content: &str) -> Option<Self> {
        Self::of_slot(id, &read_slot(content)?)
    }

    /// As a document; its key only where there are many of its kind.
    #[must_use]
    pub fn document(&self, name: &str) -> Document {
        let mut document = Document::new(self.job.clone().into_body(), self.created);
        document.changed = self.changed;
        document.id = id_in(name).is_some().then(|| self.id.clone());
        document.binned = self.binned;
        document.unknown = self.unknown.clone();
        document
    }
}

/// The row of a document, as bytes; none for what is in no list.
#[must_use]
pub(super) fn row_of(document: &Document) -> Vec<u8> {
    Row::of(document).map_or(Vec::new(), |row| row.bytes())
}

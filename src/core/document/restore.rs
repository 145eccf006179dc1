//! The one way in for documents, wherever they come from.

use super::paper::{BIN, Paper, take_ledger, values};
use super::read::Reading;
use super::row::BINNED;
use super::write::checksum;
use super::{Document, LONGEST, VERSION};
use crate::job::ledger::Ledger;
use serde_json::{Map, Value};

/// What came of a text.
#[derive(Clone, Debug, PartialEq)]
pub enum Restored {
    /// As it was written.
    Valid(Document),
    /// Usable; something had to be repaired or set aside.
    Repaired(Document, Vec<Repair>),
    /// Written by a later version: to be shown as far as it reads, not to be
    /// changed.
    Newer {
        /// Its version.
        version: u64,
        /// As far as this version can read it.
        readable: Option<Document>,
    },
    /// Not readable: keep it, show it, let it be exported.
    Unreadable(Unreadable),
}

/// What had to be repaired.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Repair {
    /// The checksum does not fit: something was changed outside this program.
    Checksum,
    /// A part was missing and starts empty or with its default.
    Missing(String),
    /// A part could not be used; it is kept in the document, set aside.
    SetAside(String),
}

/// Why a text cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unreadable {
    /// Nothing there.
    Empty,
    /// Longer than any document.
    TooLong,
    /// Begins like JSON but is torn or damaged.
    Torn,
    /// Something else.
    NotADocument,
}

/// Reads a document.
#[must_use]
pub fn restore(text: &str) -> Restored {
    if text.len() > LONGEST {
        return Restored::Unreadable(Unreadable::TooLong);
    }
    if text.trim().is_empty() {
        return Restored::Unreadable(Unreadable::Empty);
    }
    // serde_json stops at 128 levels: nesting cannot exhaust the stack.
    let envelope = match serde_json::from_str::<Value>(text) {
        Ok(Value::Object(envelope)) => envelope,
        Ok(_) => return Restored::Unreadable(Unreadable::NotADocument),
        Err(_) => return Restored::Unreadable(Unreadable::Torn),
    };
    let Some(version) = envelope.get("version").and_then(Value::as_u64) else {
        return Restored::Unreadable(Unreadable::NotADocument);
    };
    match read(envelope) {
        None if version <= VERSION => Restored::Unreadable(Unreadable::NotADocument),
        readable if version > VERSION => Restored::Newer {
            version,
            readable: readable.map(|(document, _)| document),
        },
        Some((document, repairs)) if !repairs.is_empty() => Restored::Repaired(document, repairs),
        Some((document, _)) => Restored::Valid(document),
        None => Restored::Unreadable(Unreadable::NotADocument),
    }
}

fn read(mut envelope: Map<String, Value>) -> Option<(Document, Vec<Repair>)> {
    let mut reading = Reading::new();
    let kind = envelope.remove("kind")?;
    envelope.remove("version");
    let body = envelope.remove("body")?;
    let sum = envelope.remove("checksum");
    if sum.as_ref().and_then(Value::as_str) != Some(checksum(&body).as_str()) {
        reading.repairs.push(Repair::Checksum);
    }
    let Value::Object(mut body) = body else {
        return None;
    };
    let mut time = |key: &str| {
        envelope
            .remove(key)
            .and_then(|v| v.as_u64())
            .unwrap_or_else(|| {
                reading.repairs.push(Repair::Missing(key.to_owned()));
                0
            })
    };
    let (created, changed) = (time("created"), time("changed"));
    let app = match envelope.remove("app") {
        Some(Value::String(app)) => app,
        _ => String::new(),
    };
    let id = match envelope.remove("id") {
        Some(Value::String(id)) => Some(id),
        Some(other) => {
            // Not one of ours: kept where it was.
            envelope.insert("id".to_owned(), other);
            None
        }
        None => None,
    };
    let binned = envelope.get(BINNED).and_then(Value::as_u64);
    if binned.is_some() {
        envelope.remove(BINNED);
    }
    let ledger = take_ledger(&mut body, binned).unwrap_or_else(|value| {
        reading.no_ledger(value);
        Ledger::default()
    });
    let body = match kind.as_str()? {
        "coldseat.job" => {
            let job = reading.job(body);
            with_ledger(job, ledger, &reading).into_body()
        }
        "coldseat.shop" => {
            let shop = reading.shop(body);
            with_ledger(shop, ledger, &reading).into_body()
        }
        "coldseat.drop" => {
            let drop = reading.cold_drop(body);
            with_ledger(drop, ledger, &reading).into_body()
        }
        _ => return None,
    };
    let document = Document {
        app,
        created,
        changed,
        id,
        binned,
        body,
        unknown: envelope,
    };
    Some((document, reading.repairs))
}

/// A paper with its ledger. Who wrote a value that was set aside is known no more:
/// it is no value of the paper.
fn with_ledger<P: Paper>(mut paper: P, mut ledger: Ledger, reading: &Reading) -> P {
    if !reading.repairs.is_empty() {
        let there = values(&paper, None).flat;
        ledger
            .by
            .retain(|path, _| path == BIN || there.contains_key(path));
    }
    *paper.ledger_mut() = ledger;
    paper
}

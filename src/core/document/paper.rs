//! What every kind of document can do: be taken apart into single values and put
//! together again. Keeping, joining and taking back know nothing else of it.

use super::flat::{Flat, body, flat};
use super::ledger::{read_ledger, write_ledger};
use super::read::Reading;
use super::write::{drop_value, job_value, shop_value};
use super::{Body, ColdDropPaper, Shop};
use crate::job::ledger::Ledger;
use crate::job::{Job, Millis};
use serde_json::{Map, Value};

/// Path of when a document was put into the bin; no key of a body is escaped to
/// it.
pub(super) const BIN: &str = "~bin";

/// Key of the ledger in a body; it is no value of it.
pub(super) const LEDGER: &str = "copies";

/// The values of a document and the ledger over them.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Values {
    pub flat: Flat,
    pub ledger: Ledger,
}

/// A kind of document.
pub trait Paper: Clone + PartialEq {
    /// Its body as it is written, without the ledger.
    fn value(&self) -> Value;
    /// Its ledger.
    fn ledger(&self) -> &Ledger;
    /// Its ledger, to be changed.
    fn ledger_mut(&mut self) -> &mut Ledger;
    /// Out of a body that this program made, without a ledger.
    fn of(body: Map<String, Value>) -> Self;
    /// What stands in a body even where it is empty.
    fn blank() -> Map<String, Value>;
    /// As the body of a document.
    fn into_body(self) -> Body;
    /// The body of a document, where it is of this kind.
    fn of_body(body: &Body) -> Option<&Self>;
}

impl Paper for Job {
    fn value(&self) -> Value {
        job_value(self)
    }
    fn ledger(&self) -> &Ledger {
        &self.ledger
    }
    fn ledger_mut(&mut self) -> &mut Ledger {
        &mut self.ledger
    }
    fn of(body: Map<String, Value>) -> Self {
        Reading::new().job(body)
    }
    fn blank() -> Map<String, Value> {
        let mut blank = Map::new();
        for key in ["name", "customer", "note"] {
            blank.insert(key.to_owned(), "".into());
        }
        for key in ["engine", "entries", "unlocks"] {
            blank.insert(key.to_owned(), Value::Object(Map::new()));
        }
        blank.insert("left_out".to_owned(), Value::Array(Vec::new()));
        blank
    }
    fn into_body(self) -> Body {
        Body::Job(Box::new(self))
    }
    fn of_body(body: &Body) -> Option<&Self> {
        match body {
            Body::Job(job) => Some(job),
            Body::Shop(_) | Body::Drop(_) => None,
        }
    }
}

impl Paper for Shop {
    fn value(&self) -> Value {
        shop_value(self)
    }
    fn ledger(&self) -> &Ledger {
        &self.ledger
    }
    fn ledger_mut(&mut self) -> &mut Ledger {
        &mut self.ledger
    }
    fn of(body: Map<String, Value>) -> Self {
        Reading::new().shop(body)
    }
    fn blank() -> Map<String, Value> {
        entries_only()
    }
    fn into_body(self) -> Body {
        Body::Shop(Box::new(self))
    }
    fn of_body(body: &Body) -> Option<&Self> {
        match body {
            Body::Shop(shop) => Some(shop),
            Body::Job(_) | Body::Drop(_) => None,
        }
    }
}

impl Paper for ColdDropPaper {
    fn value(&self) -> Value {
        drop_value(self)
    }
    fn ledger(&self) -> &Ledger {
        &self.ledger
    }
    fn ledger_mut(&mut self) -> &mut Ledger {
        &mut self.ledger
    }
    fn of(body: Map<String, Value>) -> Self {
        Reading::new().cold_drop(body)
    }
    fn blank() -> Map<String, Value> {
        entries_only()
    }
    fn into_body(self) -> Body {
        Body::Drop(Box::new(self))
    }
    fn of_body(body: &Body) -> Option<&Self> {
        match body {
            Body::Drop(drop) => Some(drop),
            Body::Job(_) | Body::Shop(_) => None,
        }
    }
}

fn entries_only() -> Map<String, Value> {
    let mut blank = Map::new();
    blank.insert("entries".to_owned(), Value::Object(Map::new()));
    blank
}

/// The values of a document, when it was put into the bin among them.
pub(super) fn values<P: Paper>(paper: &P, binned: Option<Millis>) -> Values {
    let mut flat = flat(&paper.value());
    if let Some(at) = binned {
        flat.insert(BIN.to_owned(), at.into());
    }
    Values {
        flat,
        ledger: paper.ledger().clone(),
    }
}

/// A document out of its values, and when it was put into the bin.
pub(super) fn of_values<P: Paper>(values: &Values) -> (P, Option<Millis>) {
    let binned = values.flat.get(BIN).and_then(Value::as_u64);
    (of_flat(&values.flat, values.ledger.clone()), binned)
}

/// A document out of single values and a ledger.
pub(super) fn of_flat<P: Paper>(flat: &Flat, ledger: Ledger) -> P {
    let mut paper = P::of(body(flat, P::blank()));
    *paper.ledger_mut() = ledger;
    paper
}

/// The body of a document, its ledger in it.
pub(super) fn whole_body<P: Paper>(paper: &P, binned: Option<Millis>) -> Value {
    let mut value = paper.value();
    if !paper.ledger().is_empty() {
        let mut flat = flat(&value);
        if let Some(at) = binned {
            flat.insert(BIN.to_owned(), at.into());
        }
        if let Some(ledger) = write_ledger(paper.ledger(), &flat)
            && let Value::Object(body) = &mut value
        {
            body.insert(LEDGER.to_owned(), ledger);
        }
    }
    value
}

/// Takes the ledger out of a body: the ledger, or what stood in its place and
/// is none.
pub(super) fn take_ledger(
    body: &mut Map<String, Value>,
    binned: Option<Millis>,
) -> Result<Ledger, Value> {
    let Some(value) = body.remove(LEDGER) else {
        return Ok(Ledger::default());
    };
    let mut flat = flat(&Value::Object(body.clone()));
    if let Some(at) = binned {
        flat.insert(BIN.to_owned(), at.into());
    }
    read_ledger(&value, &flat).ok_or(value)
}

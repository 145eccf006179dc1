//! A document to text: compact JSON with sorted keys, so that the checksum
//! over the body is the same wherever it is taken.

use super::flat::SHEET;
use super::paper::{Paper, whole_body};
use super::row::BINNED;
use super::{Body, ColdDropPaper, Document, Shop, Speech, VERSION};
use crate::job::hand::HandOrder;
use crate::job::step::Mark;
use crate::job::{Entries, Entry, Job};
use crate::quantity::wire::Wire;
use serde_json::{Map, Value};

/// The text of a document.
#[must_use]
pub fn write(document: &Document) -> String {
    let (body, is_signed) = match &document.body {
        Body::Job(job) => body_of(&**job, document),
        Body::Shop(shop) => body_of(&**shop, document),
        Body::Drop(drop) => body_of(&**drop, document),
    };
    let checksum = checksum(&body);
    let mut envelope = Map::new();
    let mut set = |key: &str, value: Value| envelope.insert(key.to_owned(), value);
    set("kind", document.body.kind().into());
    set("version", version(document, is_signed).into());
    set("app", document.app.clone().into());
    set("created", document.created.into());
    set("changed", document.changed.into());
    set("checksum", checksum.into());
    set("body", body);
    if let Some(id) = &document.id {
        set("id", id.clone().into());
    }
    if let Some(at) = document.binned {
        set(BINNED, at.into());
    }
    merge(&mut envelope, &document.unknown);
    Value::Object(envelope).to_string()
}

/// A body, and whether it knows who wrote its values.
fn body_of<P: Paper>(paper: &P, document: &Document) -> (Value, bool) {
    let is_signed = !paper.ledger().seen.is_empty();
    (whole_body(paper, document.binned), is_signed)
}

/// The version of a document: programs of version 1 know no writers and no
/// cold drop, those of version 2 take every cold drop for the one in use;
/// everything else they read.
fn version(document: &Document, is_signed: bool) -> u64 {
    match &document.body {
        Body::Job(_) | Body::Shop(_) if !is_signed => 1,
        Body::Drop(_) if document.id.is_some() => VERSION,
        Body::Job(_) | Body::Shop(_) | Body::Drop(_) => 2,
    }
}

/// CRC-32 over the body's compact text, in hex.
pub(super) fn checksum(body: &Value) -> String {
    format!("{:08x}", crc32fast::hash(body.to_string().as_bytes()))
}

fn entry_value(entry: &Entry) -> Value {
    let mut parts: Vec<Value> = vec![
        entry.text.clone().into(),
        serde_json::to_value(entry.unit).unwrap_or_default(),
        entry.at.into(),
    ];
    if entry.kept || !entry.rest.is_empty() {
        parts.push(if entry.kept {
            "kept".into()
        } else {
            Value::Null
        });
        parts.extend(entry.rest.iter().cloned());
    }
    Value::Array(parts)
}

fn entries_value(entries: &Entries) -> Value {
    let mut owners = Map::new();
    for (place, entry) in entries.iter() {
        let fields = owners
            .entry(place.owner.name())
            .or_insert_with(|| Value::Object(Map::new()));
        let Value::Object(fields) = fields else {
            continue;
        };
        let list = fields
            .entry(place.field.spec().id)
            .or_insert_with(|| Value::Array(Vec::new()));
        let Value::Array(list) = list else { continue };
        // Empty places in front keep their position.
        while list.len() < usize::from(place.index) {
            list.push(Value::Null);
        }
        list.push(entry_value(entry));
    }
    Value::Object(owners)
}

pub(super) fn job_value(job: &Job) -> Value {
    let engine = &job.engine;
    let mut engine_map = Map::new();
    let mut set = |key: &str, value: Value| engine_map.insert(key.to_owned(), value);
    set("name", engine.name.clone().into());
    set("cylinders", engine.cylinders.into());
    set("layout", engine.layout.id().into());
    set("units", engine.units.id().into());
    set("sleeve_material", engine.sleeve_material.id().into());
    set("block_material", engine.block_material.id().into());

    let mut unlocks = Map::new();
    for (bank, unlock) in &job.unlocks {
        let mut one = Map::new();
        one.insert("reason".to_owned(), unlock.reason.clone().into());
        one.insert("at".to_owned(), unlock.at.into());
        unlocks.insert((bank + 1).to_string(), Value::Object(one));
    }

    let mut body = Map::new();
    let mut set = |key: &str, value: Value| body.insert(key.to_owned(), value);
    set("name", job.name.clone().into());
    set("customer", job.customer.clone().into());
    set("note", job.note.clone().into());
    set("engine", Value::Object(engine_map));
    set("entries", entries_value(&job.entries));
    set("left_out", job.left_out.clone().into());
    if job.sheet {
        set(SHEET, true.into());
    }
    set("unlocks", Value::Object(unlocks));
    let steps = steps_value(job);
    if !steps.is_empty() {
        body.insert("steps".to_owned(), Value::Object(steps));
    }
    merge(&mut body, &job.unknown);
    Value::Object(body)
}

/// A value of a document in words: a reading as it was typed.
pub(super) fn write_entry_words(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Array(parts) => match parts.as_slice() {
            [Value::String(text), Value::String(unit), ..] => format!("{text} {unit}"),
            _ => value.to_string(),
        },
        Value::Object(object) => {
            let words = ["mark", "why", "note", "reason"].map(|key| match object.get(key) {
                Some(Value::String(text)) => text.as_str(),
                _ => "",
            });
            let words: Vec<&str> = words.into_iter().filter(|w| !w.is_empty()).collect();
            words.join(", ")
        }
        _ => value.to_string(),
    }
}

/// Marks, notes and running timers, by owner and step. Left out where there is
/// none, as in documents written before there were any.
fn steps_value(job: &Job) -> Map<String, Value> {
    let mut owners = Map::new();
    for ((owner, step), record) in &job.steps {
        let mut one = Map::new();
        let mut set = |key: &str, value: Value| one.insert(key.to_owned(), value);
        match &record.mark {
            None => {}
            Some(Mark::Done) => drop(set("mark", "done".into())),
            Some(Mark::NotForThisJob) => drop(set("mark", "not_for_this_job".into())),
            Some(Mark::Skipped(why)) => {
                set("mark", "skipped".into());
                set("why", why.clone().into());
            }
        }
        if !record.note.is_empty() {
            set("note", record.note.clone().into());
        }
        if let Some(started) = record.started {
            set("started", started.into());
        }
        set("at", record.at.into());
        merge(&mut one, &record.unknown);
        let of = owners
            .entry(owner.name())
            .or_insert_with(|| Value::Object(Map::new()));
        if let Value::Object(of) = of {
            of.insert(step.spec().name.to_owned(), Value::Object(one));
        }
    }
    owners
}

pub(super) fn shop_value(shop: &Shop) -> Value {
    let mut body = Map::new();
    let mut set = |key: &str, value: Value| body.insert(key.to_owned(), value);
    set("units", shop.units.id().into());
    set("entries", entries_value(&shop.entries));
    for (key, switch) in [("pad", shop.pad), ("feedback", shop.feedback)] {
        if let Some(on) = switch {
            set(key, on.into());
        }
    }
    let wire = shop.wire.as_ref().map(Wire::words);
    let words = [
        ("wire", wire.as_deref()),
        ("hand", shop.hand.map(HandOrder::id)),
        ("speech", shop.speech.map(Speech::id)),
        ("skip_key", shop.skip_key.as_deref()),
        ("back_key", shop.back_key.as_deref()),
    ];
    for (key, word) in words {
        if let Some(word) = word {
            set(key, word.into());
        }
    }
    if let Some(at) = shop.backup_at {
        set("backup_at", at.into());
    }
    merge(&mut body, &shop.unknown);
    Value::Object(body)
}

pub(super) fn drop_value(paper: &ColdDropPaper) -> Value {
    let sheet = &paper.sheet;
    let mut body = Map::new();
    let mut set = |key: &str, value: Value| body.insert(key.to_owned(), value);
    set("units", sheet.units.id().into());
    set("sleeve_material", sheet.sleeve_material.id().into());
    set("block_material", sheet.block_material.id().into());
    set("entries", entries_value(&sheet.entries));
    if !paper.name.is_empty() {
        set("name", paper.name.clone().into());
    }
    merge(&mut body, &paper.unknown);
    Value::Object(body)
}

/// Puts back what was unknown; what is known wins.
fn merge(known: &mut Map<String, Value>, unknown: &Map<String, Value>) {
    for (key, value) in unknown {
        match (known.get_mut(key), value) {
            (Some(Value::Object(into)), Value::Object(from)) => merge(into, from),
            (Some(_), _) => {}
            (None, value) => {
                known.insert(key.clone(), value.clone());
            }
        }
    }
}

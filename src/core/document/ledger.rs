//! The ledger of a job in its document, and how it is kept: which value was
//! replaced knowingly, which stand side by side.
//!
//! In the body under `copies`, left out where it is empty:
//! `{"rivals": {path: [[value, at], …]}, "replaced": {path: [mark, …]},
//! "stamps": {path: at}}`. Programs that do not know it carry it along.

use super::flat::Flat;
use crate::job::Millis;
use crate::job::ledger::{Ledger, Marks, Rival};
use litemap::LiteMap;
use serde_json::{Map, Value};

/// When a value was set, where it says so itself: a reading in its third
/// place, an object under `at`.
fn own_time(value: &Value) -> Option<Millis> {
    match value {
        Value::Array(parts) => parts.get(2).and_then(Value::as_u64),
        Value::Object(object) => object.get("at").and_then(Value::as_u64),
        _ => None,
    }
}

/// A value with the time it was set.
pub(super) fn rival(ledger: &Ledger, path: &str, value: &Value) -> Rival {
    let at = match own_time(value) {
        Some(_) => 0,
        None => ledger.stamps.get(path).copied().unwrap_or(0),
    };
    Rival {
        value: value.clone(),
        at,
    }
}

impl Rival {
    /// What is compared: the later one is shown; of two at one time the one
    /// whose text is greater, so that every copy shows the same.
    pub(super) fn rank(&self) -> (Millis, String) {
        (own_time(&self.value).unwrap_or(self.at), self.text())
    }

    fn text(&self) -> String {
        format!("{} {}", self.value, self.at)
    }

    /// Its mark among the replaced.
    pub(super) fn mark(&self) -> u32 {
        crc32fast::hash(self.text().as_bytes())
    }
}

/// A value that was changed.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Change {
    pub path: String,
    pub before: Option<Value>,
    pub after: Option<Value>,
}

/// What differs between two states.
pub(super) fn changes(before: &Flat, after: &Flat) -> Vec<Change> {
    let gone = before
        .iter()
        .filter(|(path, _)| !after.contains_key(*path))
        .map(|(path, value)| (path, Some(value), None));
    let come = after
        .iter()
        .map(|(path, value)| (path, before.get(path), Some(value)))
        .filter(|(_, before, after)| before != after);
    gone.chain(come)
        .map(|(path, before, after)| Change {
            path: path.clone(),
            before: before.cloned(),
            after: after.cloned(),
        })
        .collect()
}

/// Notes that a value was replaced knowingly.
pub(super) fn note(ledger: &mut Ledger, change: &Change, at: Millis) {
    if let Some(before) = &change.before {
        let mark = rival(ledger, &change.path, before).mark();
        ledger
            .replaced
            .entry(change.path.clone())
            .or_default()
            .insert(mark);
    }
    match &change.after {
        Some(value) if own_time(value).is_none() => {
            ledger.stamps.insert(change.path.clone(), at);
        }
        _ => {
            ledger.stamps.remove(&change.path);
        }
    }
}

/// Brings a value that was just set, or taken away, into order with the rest of
/// its place; says whether that changed it.
///
/// - Where it was taken away and others stand beside it, the latest is shown.
/// - What was typed last is shown, also by a clock that is behind: then it is
///   set in the moment after the latest beside it.
/// - What comes back after it was replaced is set anew, in a moment that was
///   not used before: other copies have been told that the old one is gone.
pub(super) fn settle(
    ledger: &mut Ledger,
    path: &str,
    value: &mut Option<Value>,
    at: Millis,
) -> bool {
    let beside = ledger.rivals.get(path);
    let latest = beside.into_iter().flatten().map(Rival::rank).max();
    if value.is_none() {
        return promote(ledger, path, value);
    }
    let Some(value) = value else { return false };
    let marks = ledger.replaced.get(path).cloned().unwrap_or_default();
    let mut at = latest
        .as_ref()
        .map_or(at, |(time, _)| at.max(time.saturating_add(1)));
    let mut changed = false;
    // As many moments as there are marks, and one more: one of them is free.
    for _ in 0..=marks.as_slice().len() {
        let now = rival(ledger, path, value);
        if !marks.contains(now.mark()) && latest.as_ref().is_none_or(|l| now.rank() > *l) {
            break;
        }
        match value {
            Value::Array(parts) if parts.get(2).is_some_and(Value::is_u64) => {
                parts[2] = at.into();
            }
            Value::Object(object) if object.get("at").is_some_and(Value::is_u64) => {
                object.insert("at".to_owned(), at.into());
            }
            _ => drop(ledger.stamps.insert(path.to_owned(), at)),
        }
        changed = true;
        at = at.saturating_add(1);
    }
    changed
}

fn promote(ledger: &mut Ledger, path: &str, value: &mut Option<Value>) -> bool {
    let Some(mut beside) = ledger.rivals.remove(path).filter(|list| !list.is_empty()) else {
        return false;
    };
    // They stand in order, the latest first.
    let shown = beside.remove(0);
    if !beside.is_empty() {
        ledger.rivals.insert(path.to_owned(), beside);
    }
    if shown.at > 0 {
        ledger.stamps.insert(path.to_owned(), shown.at);
    }
    *value = Some(shown.value);
    true
}

/// The ledger as it stands in a body; `None` where it is empty.
pub(super) fn write_ledger(ledger: &Ledger) -> Option<Value> {
    let mut whole = Map::new();
    let mut set = |key: &str, part: Map<String, Value>| {
        if !part.is_empty() {
            whole.insert(key.to_owned(), Value::Object(part));
        }
    };
    // One by one: what is collected is sorted by code of its own.
    let mut rivals = Map::new();
    for (path, beside) in &ledger.rivals {
        let list = beside
            .iter()
            .map(|r| Value::from(vec![r.value.clone(), r.at.into()]));
        rivals.insert(path.clone(), list.collect());
    }
    set("rivals", rivals);
    let mut replaced = Map::new();
    for (path, marks) in &ledger.replaced {
        let list = marks.as_slice().iter().map(|mark| Value::from(*mark));
        replaced.insert(path.clone(), list.collect());
    }
    set("replaced", replaced);
    let mut stamps = Map::new();
    for (path, at) in &ledger.stamps {
        stamps.insert(path.clone(), (*at).into());
    }
    set("stamps", stamps);
    (!whole.is_empty()).then_some(Value::Object(whole))
}

/// Reads a ledger; `None` where the value is none, or holds more than one.
pub(super) fn read_ledger(value: &Value) -> Option<Ledger> {
    let mut whole = value.as_object()?.clone();
    let mut part = |key: &str| match whole.remove(key) {
        None => Some(Map::new()),
        Some(Value::Object(part)) => Some(part),
        Some(_) => None,
    };
    let mut rivals = LiteMap::new();
    for (path, list) in part("rivals")? {
        let list: Option<Vec<Rival>> = list.as_array()?.iter().map(read_rival).collect();
        rivals.insert(path, list?);
    }
    let mut replaced = LiteMap::new();
    for (path, list) in part("replaced")? {
        let marks: Option<Marks> = list
            .as_array()?
            .iter()
            .map(|mark| u32::try_from(mark.as_u64()?).ok())
            .collect();
        replaced.insert(path, marks?);
    }
    let mut stamps = LiteMap::new();
    for (path, at) in part("stamps")? {
        stamps.insert(path, at.as_u64()?);
    }
    whole.is_empty().then_some(Ledger {
        rivals,
        replaced,
        stamps,
    })
}

fn read_rival(value: &Value) -> Option<Rival> {
    match value.as_array()?.as_slice() {
        [value, at] => Some(Rival {
            value: value.clone(),
            at: at.as_u64()?,
        }),
        _ => None,
    }
}

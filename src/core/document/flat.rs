//! The body of a document as single values under paths, and back: what is compared,
//! joined and taken back is a value, not a document.
//!
//! A reading is one value (`entries/3/bore_d/0`), so are what is kept of a step
//! (`steps/3/wall`), a number of the engine's head (`engine/cylinders`), a
//! release of a deck (`unlocks/1`); everything else is one value a key. Blank
//! texts and empty lists are no values. `/` and `~` in keys are written `~1`
//! and `~0` (RFC 6901, section 3).

use super::paper::{BIN, LEDGER};
use serde_json::{Map, Value};
use std::collections::BTreeMap;

/// Values by path.
pub(super) type Flat = BTreeMap<String, Value>;

/// Key of a body that says that it is an engine sheet.
pub(super) const SHEET: &str = "sheet";

/// Parts of a body that hold values under keys of their own.
const PARTS: [&str; 4] = ["engine", "unlocks", "set_aside", "entries"];
/// Where what has no place is kept.
const ASIDE: &str = "set_aside";
/// Longer lists are one value.
const LIST_MOST: usize = 1000;
/// The parts that hold values by owner.
const BY_OWNER: [&str; 2] = ["entries", "steps"];

fn escaped(key: &str) -> String {
    key.replace('~', "~0").replace('/', "~1")
}

fn plain(key: &str) -> String {
    key.replace("~1", "/").replace("~0", "~")
}

/// Keys of a path, as they were.
pub(super) fn keys(path: &str) -> Vec<String> {
    path.split('/').map(plain).collect()
}

/// Whether a value says nothing.
fn is_blank(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::String(text) => text.is_empty(),
        Value::Array(list) => list.is_empty(),
        Value::Object(object) => object.is_empty(),
        _ => false,
    }
}

/// The values of a body.
pub(super) fn flat(body: &Value) -> Flat {
    let mut flat = Flat::new();
    let Value::Object(body) = body else {
        return flat;
    };
    for (key, value) in body.iter().filter(|(key, _)| *key != LEDGER) {
        let path = escaped(key);
        let depth = match key.as_str() {
            key if BY_OWNER.contains(&key) => 2,
            key if PARTS.contains(&key) => 1,
            _ => 0,
        };
        put(&mut flat, path, value, depth, key == "entries");
    }
    flat
}

fn put(flat: &mut Flat, path: String, value: &Value, depth: u8, lists: bool) {
    match value {
        Value::Object(object) if depth > 0 => {
            for (key, value) in object {
                let path = format!("{path}/{}", escaped(key));
                put(flat, path, value, depth - 1, lists);
            }
        }
        Value::Array(list) if lists && depth == 0 && list.len() <= LIST_MOST => {
            for (index, value) in list.iter().enumerate().filter(|(_, v)| !v.is_null()) {
                flat.insert(format!("{path}/{index}"), value.clone());
            }
        }
        value if is_blank(value) => {}
        value => {
            flat.insert(path, value.clone());
        }
    }
}

/// The body of values, without a ledger; what is blank stands there in any case.
pub(super) fn body(flat: &Flat, blank: Map<String, Value>) -> Map<String, Value> {
    let mut body = blank;
    for (path, value) in flat.iter().filter(|(path, _)| *path != BIN) {
        if place(&mut body, &keys(path), value).is_none() {
            // Two copies of different shape: kept where it can be looked at.
            if let Some(aside) = child(&mut body, ASIDE) {
                aside.insert(path.clone(), value.clone());
            }
        }
    }
    body
}

fn place(body: &mut Map<String, Value>, keys: &[String], value: &Value) -> Option<()> {
    match keys {
        [part, owner, field, index] if part == "entries" => {
            let list = child(child(body, part)?, owner)?
                .entry(field.clone())
                .or_insert_with(|| Value::Array(Vec::new()))
                .as_array_mut()?;
            let index: usize = index.parse().ok().filter(|index| *index < LIST_MOST)?;
            if list.len() <= index {
                list.resize(index + 1, Value::Null);
            }
            *list.get_mut(index)? = value.clone();
        }
        [part, owner, key] => {
            child(child(body, part)?, owner)?.insert(key.clone(), value.clone());
        }
        [part, key] => {
            child(body, part)?.insert(key.clone(), value.clone());
        }
        [key] => {
            body.insert(key.clone(), value.clone());
        }
        _ => return None,
    }
    Some(())
}

/// The object under a key; `None` where something else is there.
fn child<'a>(map: &'a mut Map<String, Value>, key: &str) -> Option<&'a mut Map<String, Value>> {
    map.entry(key.to_owned())
        .or_insert_with(|| Value::Object(Map::new()))
        .as_object_mut()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::document::paper::Paper;
    use crate::job::Job;

    #[test]
    fn the_golden_job_comes_back_from_its_values() {
        let text = include_str!("../../../tests/golden/job-v1.json");
        let whole: Value = serde_json::from_str(text).unwrap();
        let values = flat(&whole["body"]);
        assert_eq!(values["entries/1/sleeve_od/3"][0], "not yet");
        assert_eq!(Value::Object(body(&values, Job::blank())), whole["body"]);
    }

    #[test]
    fn odd_keys_and_odd_shapes_come_back() {
        let odd = serde_json::json!({
            "name": "", "customer": "", "note": "", "left_out": [], "unlocks": {},
            "engine": {"a/b": 1, "~": [2]},
            "entries": {"3": {"x": [null, ["1", "in", 5]], "y": "gone"}, "pump": 7},
            "set_aside": {"entries.3.bore_d": "gone"},
            "colour/of~it": {"deep": [[[1]]]},
        });
        assert_eq!(Value::Object(body(&flat(&odd), Job::blank())), odd);
        // A list and a word in the same place: one stands, one is set aside.
        let mut both = flat(&odd);
        both.insert("entries/3/y/0".to_owned(), "here".into());
        let both = body(&both, Job::blank());
        assert_eq!(both["entries"]["3"]["y"], "gone");
        assert_eq!(both["set_aside"]["entries/3/y/0"], "here");
    }
}

//! A body to a job or a shop: takes what it knows out of the JSON and leaves
//! the rest, so that the rest can be kept.

use super::flat::SHEET;
use super::paper::LEDGER;
use super::restore::Repair;
use super::{ColdDropPaper, Shop, Speech};
use crate::job::drop::DropSheet;
use crate::job::engine::{CYLINDERS_MOST, Engine, Layout};
use crate::job::hand::HandOrder;
use crate::job::ledger::Ledger;
use crate::job::step::{Mark, StepId, StepRecord};
use crate::job::{Entries, Entry, Field, Job, Millis, Owner, Place, UnitSystem, Unlock};
use crate::materials::MaterialId;
use crate::quantity::parse::Unit;
use crate::quantity::wire::Wire;
use litemap::LiteMap;
use serde_json::{Map, Value};

type Object = Map<String, Value>;

/// Longest name, customer or reason.
const NAME_MOST: usize = 300;
/// Longest note.
const NOTE_MOST: usize = 20_000;
/// Longest text of an entry: more than any number, less than a nuisance.
const ENTRY_MOST: usize = 200;

/// Longest name of a key of a keyboard.
const KEY_MOST: usize = 30;

/// Key under which values that could not be used are set aside.
const ASIDE: &str = "set_aside";

/// A reading of one body: what had to be repaired, what was set aside.
pub(super) struct Reading {
    pub(super) repairs: Vec<Repair>,
    aside: Object,
}

impl Reading {
    pub(super) fn new() -> Self {
        Self {
            repairs: Vec::new(),
            aside: Object::new(),
        }
    }

    /// Keeps a value that cannot be used, under its path.
    fn set_aside(&mut self, path: String, value: Value) {
        self.repairs.push(Repair::SetAside(path.clone()));
        self.aside.insert(path, value);
    }

    fn text(&mut self, object: &mut Object, key: &str, most: usize) -> String {
        match object.remove(key) {
            Some(Value::String(text)) if text.chars().count() <= most => text,
            Some(other) => {
                self.set_aside(key.to_owned(), other);
                String::new()
            }
            None => {
                self.repairs.push(Repair::Missing(key.to_owned()));
                String::new()
            }
        }
    }

    /// A word out of a list of words.
    fn word<T>(
        &mut self,
        object: &mut Object,
        key: &str,
        from: impl Fn(&str) -> Option<T>,
        fallback: T,
    ) -> T {
        match object.remove(key) {
            Some(Value::String(text)) => from(&text).unwrap_or_else(|| {
                self.set_aside(key.to_owned(), text.into());
                fallback
            }),
            Some(other) => {
                self.set_aside(key.to_owned(), other);
                fallback
            }
            None => {
                self.repairs.push(Repair::Missing(key.to_owned()));
                fallback
            }
        }
    }

    fn object(&mut self, object: &mut Object, key: &str) -> Object {
        match object.remove(key) {
            Some(Value::Object(inner)) => inner,
            Some(other) => {
                self.set_aside(key.to_owned(), other);
                Object::new()
            }
            None => {
                self.repairs.push(Repair::Missing(key.to_owned()));
                Object::new()
            }
        }
    }

    fn engine(&mut self, object: &mut Object) -> Engine {
        let name = self.text(object, "name", NAME_MOST);
        let cylinders = match object.remove("cylinders") {
            Some(value) => match value.as_u64().and_then(|n| u8::try_from(n).ok()) {
                Some(n) if (1..=CYLINDERS_MOST).contains(&n) => n,
                _ => {
                    // All are kept within reach; none of their numbers is lost.
                    self.set_aside("engine.cylinders".to_owned(), value);
                    CYLINDERS_MOST
                }
            },
            None => {
                self.repairs
                    .push(Repair::Missing("engine.cylinders".to_owned()));
                CYLINDERS_MOST
            }
        };
        Engine {
            name,
            cylinders,
            layout: self.word(object, "layout", Layout::from_id, Layout::InLine),
            units: self.word(object, "units", UnitSystem::from_id, UnitSystem::Inch),
            sleeve_material: self.word(
                object,
                "sleeve_material",
                MaterialId::from_id,
                MaterialId::GrayIron,
            ),
            block_material: self.word(
                object,
                "block_material",
                MaterialId::from_id,
                MaterialId::GrayIron,
            ),
        }
    }

    /// Takes the entries; owners and fields not known here stay in `object`.
    fn entries(&mut self, object: &mut Object) -> Entries {
        let mut entries = Entries::default();
        for (name, value) in core::mem::take(object) {
            let Some(owner) = Owner::from_name(&name) else {
                object.insert(name, value);
                continue;
            };
            let Value::Object(mut fields) = value else {
                self.set_aside(format!("entries.{name}"), value);
                continue;
            };
            for (id, list) in core::mem::take(&mut fields) {
                let Some(field) = Field::from_id(&id) else {
                    fields.insert(id, list);
                    continue;
                };
                let path = format!("entries.{name}.{id}");
                let Value::Array(list) = list else {
                    self.set_aside(path, list);
                    continue;
                };
                for (index, value) in list.into_iter().enumerate() {
                    if value.is_null() {
                        continue;
                    }
                    let room = usize::from(field.spec().places.count());
                    match u8::try_from(index)
                        .ok()
                        .filter(|_| index < room)
                        .zip(entry_from(&value))
                    {
                        Some((index, entry)) => {
                            entries.put(
                                Place {
                                    owner,
                                    field,
                                    index,
                                },
                                entry,
                            );
                        }
                        None => self.set_aside(format!("{path}.{index}"), value),
                    }
                }
            }
            if !fields.is_empty() {
                object.insert(name, Value::Object(fields));
            }
        }
        entries
    }

    /// Whether it is an engine sheet; jobs have no such key.
    fn sheet(&mut self, body: &mut Object) -> bool {
        match body.remove(SHEET) {
            None => false,
            Some(Value::Bool(sheet)) => sheet,
            Some(other) => {
                self.set_aside(SHEET.to_owned(), other);
                false
            }
        }
    }

    fn left_out(&mut self, body: &mut Object) -> Vec<u8> {
        let Some(value) = body.remove("left_out") else {
            return Vec::new();
        };
        let numbers: Option<Vec<u8>> = value.as_array().and_then(|list| {
            list.iter()
                .map(|v| v.as_u64().and_then(|n| u8::try_from(n).ok()))
                .collect()
        });
        match numbers {
            Some(mut numbers) if numbers.len() <= usize::from(CYLINDERS_MOST) => {
                numbers.retain(|n| (1..=CYLINDERS_MOST).contains(n));
                numbers
            }
            _ => {
                self.set_aside("left_out".to_owned(), value);
                Vec::new()
            }
        }
    }

    fn unlocks(&mut self, body: &mut Object) -> LiteMap<u8, Unlock> {
        let mut unlocks = LiteMap::new();
        for (bank, value) in self.object(body, "unlocks") {
            let number = bank.parse::<u8>().ok().filter(|n| (1..=2).contains(n));
            let reason = value.get("reason").and_then(Value::as_str);
            match (number, reason) {
                (Some(number), Some(reason)) if reason.chars().count() <= NAME_MOST => {
                    unlocks.insert(
                        number - 1,
                        Unlock {
                            reason: reason.to_owned(),
                            at: value.get("at").and_then(Value::as_u64).unwrap_or(0),
                        },
                    );
                }
                _ => self.set_aside(format!("unlocks.{bank}"), value),
            }
        }
        unlocks
    }

    /// Marks, notes and timers; owners and steps not known here stay.
    fn steps(&mut self, object: &mut Object) -> LiteMap<(Owner, StepId), StepRecord> {
        let mut steps = LiteMap::new();
        for (name, value) in core::mem::take(object) {
            let Some(owner) = Owner::from_name(&name) else {
                object.insert(name, value);
                continue;
            };
            let Value::Object(mut of) = value else {
                self.set_aside(format!("steps.{name}"), value);
                continue;
            };
            for (step, value) in core::mem::take(&mut of) {
                let Some(id) = StepId::from_name(&step) else {
                    of.insert(step, value);
                    continue;
                };
                match record_from(&value) {
                    Some(record) => {
                        steps.insert((owner, id), record);
                    }
                    None => self.set_aside(format!("steps.{name}.{step}"), value),
                }
            }
            if !of.is_empty() {
                object.insert(name, Value::Object(of));
            }
        }
        steps
    }

    /// What stood in the ledger's place and is none.
    pub(super) fn no_ledger(&mut self, value: Value) {
        self.set_aside(LEDGER.to_owned(), value);
    }

    /// A job out of a body.
    pub(super) fn job(&mut self, mut body: Object) -> Job {
        let name = self.text(&mut body, "name", NAME_MOST);
        let customer = self.text(&mut body, "customer", NAME_MOST);
        let note = self.text(&mut body, "note", NOTE_MOST);
        let mut engine_object = self.object(&mut body, "engine");
        let engine = self.engine(&mut engine_object);
        let mut entries_object = self.object(&mut body, "entries");
        let entries = self.entries(&mut entries_object);
        let left_out = self.left_out(&mut body);
        let sheet = self.sheet(&mut body);
        let unlocks = self.unlocks(&mut body);
        // Documents without marks have no such part.
        let mut steps_object = if body.contains_key("steps") {
            self.object(&mut body, "steps")
        } else {
            Object::new()
        };
        let steps = self.steps(&mut steps_object);
        Job {
            name,
            customer,
            note,
            engine,
            entries,
            sheet,
            left_out,
            unlocks,
            steps,
            ledger: Ledger::default(),
            unknown: self.rest(
                body,
                [
                    ("engine", engine_object),
                    ("entries", entries_object),
                    ("steps", steps_object),
                ],
            ),
        }
    }

    /// A shop out of a body.
    pub(super) fn shop(&mut self, mut body: Object) -> Shop {
        let units = self.word(&mut body, "units", UnitSystem::from_id, UnitSystem::Inch);
        let mut entries_object = self.object(&mut body, "entries");
        let entries = self.entries(&mut entries_object);
        let mut switch = |key: &str| match body.remove(key) {
            None => None,
            Some(Value::Bool(on)) => Some(on),
            Some(other) => {
                self.set_aside(key.to_owned(), other);
                None
            }
        };
        let (pad, feedback) = (switch("pad"), switch("feedback"));
        let mut text = |key: &str, is_one: &dyn Fn(&str) -> bool| match body.remove(key) {
            Some(Value::String(text)) if is_one(&text) => Some(text),
            None => None,
            Some(other) => {
                self.set_aside(key.to_owned(), other);
                None
            }
        };
        let hand = text("hand", &|id| HandOrder::from_id(id).is_some());
        let speech = text("speech", &|id| Speech::from_id(id).is_some());
        let is_key = |key: &str| !key.is_empty() && key.chars().count() <= KEY_MOST;
        let (skip_key, back_key) = (text("skip_key", &is_key), text("back_key", &is_key));
        let wire = text("wire", &|words| Wire::from_words(words).is_some());
        let backup_at = match body.remove("backup_at") {
            None => None,
            Some(value) => value.as_u64().or_else(|| {
                self.set_aside("backup_at".to_owned(), value);
                None
            }),
        };
        Shop {
            units,
            entries,
            pad,
            feedback,
            hand: hand.as_deref().and_then(HandOrder::from_id),
            speech: speech.as_deref().and_then(Speech::from_id),
            skip_key,
            back_key,
            wire: wire.as_deref().and_then(Wire::from_words),
            backup_at,
            ledger: Ledger::default(),
            unknown: self.rest(body, [("entries", entries_object)]),
        }
    }

    /// A cold drop out of a body.
    pub(super) fn cold_drop(&mut self, mut body: Object) -> ColdDropPaper {
        let units = self.word(&mut body, "units", UnitSystem::from_id, UnitSystem::Inch);
        let mut material =
            |key: &str| self.word(&mut body, key, MaterialId::from_id, MaterialId::GrayIron);
        let (sleeve_material, block_material) =
            (material("sleeve_material"), material("block_material"));
        let mut entries_object = self.object(&mut body, "entries");
        let entries = self.entries(&mut entries_object);
        let name = if body.contains_key("name") {
            self.text(&mut body, "name", NAME_MOST)
        } else {
            String::new()
        };
        ColdDropPaper {
            name,
            sheet: DropSheet {
                entries,
                units,
                sleeve_material,
                block_material,
            },
            ledger: Ledger::default(),
            unknown: self.rest(body, [("entries", entries_object)]),
        }
    }

    /// What is left of the body and of its parts, with what was set aside.
    fn rest<const N: usize>(&mut self, mut body: Object, parts: [(&str, Object); N]) -> Object {
        for (key, part) in parts {
            if !part.is_empty() {
                body.insert(key.to_owned(), Value::Object(part));
            }
        }
        if !self.aside.is_empty() {
            let mut aside = core::mem::take(&mut self.aside);
            if let Some(Value::Object(earlier)) = body.remove(ASIDE) {
                for (path, value) in earlier {
                    aside.entry(path).or_insert(value);
                }
            }
            body.insert(ASIDE.to_owned(), Value::Object(aside));
        }
        body
    }
}

/// `[text, unit, milliseconds, "kept" or null, …]`.
fn entry_from(value: &Value) -> Option<Entry> {
    let parts = value.as_array()?;
    let text = parts.first()?.as_str()?;
    let unit: Unit = serde_json::from_value(parts.get(1)?.clone()).ok()?;
    let at: Millis = parts.get(2)?.as_u64()?;
    if text.chars().count() > ENTRY_MOST || text.trim().is_empty() {
        return None;
    }
    let mut entry = Entry::new(text, unit, at);
    match parts.get(3) {
        None | Some(Value::Null) => {}
        Some(Value::String(word)) if word == "kept" => entry.kept = true,
        Some(_) => return None,
    }
    entry.rest = parts.iter().skip(4).cloned().collect();
    Some(entry)
}

/// `{mark, why, note, started, at, …}`, all but `at` optional.
fn record_from(value: &Value) -> Option<StepRecord> {
    let mut object = value.as_object()?.clone();
    let mut text = |key: &str, most: usize| match object.remove(key) {
        None => Some(String::new()),
        Some(Value::String(text)) if text.chars().count() <= most => Some(text),
        Some(_) => None,
    };
    let mark = text("mark", NAME_MOST)?;
    let why = text("why", NAME_MOST)?;
    let note = text("note", NOTE_MOST)?;
    let mark = match mark.as_str() {
        "" => None,
        "done" => Some(Mark::Done),
        "skipped" => Some(Mark::Skipped(why)),
        "not_for_this_job" => Some(Mark::NotForThisJob),
        _ => return None,
    };
    let mut time = |key: &str| match object.remove(key) {
        None => Some(None),
        Some(value) => value.as_u64().map(Some),
    };
    let started = time("started")?;
    let at = time("at")?.unwrap_or(0);
    Some(StepRecord {
        mark,
        note,
        started,
        at,
        unknown: object,
    })
}

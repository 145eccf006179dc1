//! The ledger of a document, and how it is kept: who set which value, which
//! were replaced knowingly, which stand side by side.
//!
//! In the body under `copies`, left out where it is empty: `{"seen": {writer:
//! [first, last]}, "by": {path: writer or null}, "rivals": {path: [[value, at,
//! writer], …]}, "replaced": {path: [mark, …]}, "stamps": {path: at}}`. The writer
//! of a value is the only one in whose span its time lies; `by` says so where
//! that does not tell. Version 1 had neither `seen` nor `by`.

use super::flat::Flat;
use super::pen::Pen;
use crate::job::Millis;
use crate::job::ledger::{Ledger, Marks, Rival, Span, Writer};
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

/// A value with the time it was set and who set it.
pub(super) fn rival(ledger: &Ledger, path: &str, value: &Value) -> Rival {
    Rival {
        value: value.clone(),
        at: ledger.stamps.get(path).copied().unwrap_or(0),
        by: ledger.by.get(path).copied(),
    }
}

impl Rival {
    /// When it was set; 0 where nothing says so.
    pub(super) fn time(&self) -> Millis {
        if self.at > 0 {
            self.at
        } else {
            own_time(&self.value).unwrap_or(0)
        }
    }

    /// What is compared: the later one is shown; of two at one time the one
    /// whose text is greater, so that every copy shows the same.
    pub(super) fn rank(&self) -> (Millis, String, Option<Writer>) {
        (self.time(), self.text(), self.by)
    }

    fn text(&self) -> String {
        format!("{} {}", self.value, self.at)
    }

    /// Its mark among the replaced, where it has no writer.
    pub(super) fn mark(&self) -> u32 {
        crc32fast::hash(self.text().as_bytes())
    }

    /// Whether both are one and the same setting of a value.
    pub(super) fn is(&self, other: &Self) -> bool {
        match (self.by, other.by) {
            (None, None) => self == other,
            (mine, theirs) => mine == theirs && self.time() == other.time(),
        }
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

/// Whether two values are the same but for when they were set.
pub(super) fn alike(a: Option<&Value>, b: Option<&Value>) -> bool {
    match (a, b) {
        (Some(Value::Array(a)), Some(Value::Array(b))) if a.len() > 2 && a.len() == b.len() => {
            (0..a.len()).all(|i| i == 2 || a.get(i) == b.get(i))
        }
        (Some(Value::Object(a)), Some(Value::Object(b))) => {
            let plain = |o: &Map<String, Value>| {
                let mut o = o.clone();
                o.remove("at");
                o
            };
            plain(a) == plain(b)
        }
        (a, b) => a == b,
    }
}

/// Notes that a value was replaced knowingly: of a writer that is told by what
/// this copy has seen.
fn replace(ledger: &mut Ledger, path: &str, gone: &Rival) {
    if gone.by.is_none() {
        ledger
            .replaced
            .entry(path.to_owned())
            .or_default()
            .insert(gone.mark());
    }
}

/// How much of a change is the hand's that makes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Hand {
    /// It comes to the place: what it changes is what everyone sees there.
    Comes,
    /// It is there: what it changes is its own.
    Stays,
}

/// Sets a change down: the value gets its writer and moment, what it replaces is
/// noted. Says whether something else is to be shown than was set.
///
/// - What was typed last is shown, also by a clock that is behind: then it is
///   set in the moment after the latest beside it.
/// - Whoever changes a value that others typed as well, the same, changes
///   theirs too: it is not there any more to come back.
/// - Where it was taken away and others stand beside it, the latest is shown.
pub(super) fn set_down(
    ledger: &mut Ledger,
    change: &mut Change,
    pen: &mut Pen,
    at: Millis,
    hand: Hand,
) -> bool {
    let path = &change.path;
    if let Some(before) = &change.before {
        let gone = rival(ledger, path, before);
        replace(ledger, path, &gone);
        if hand == Hand::Comes
            && let Some(beside) = ledger.rivals.remove(path)
        {
            let is_same = |rival: &Rival| alike(Some(&rival.value), Some(before));
            let (same, others): (Vec<_>, Vec<_>) = beside.into_iter().partition(is_same);
            for rival in &same {
                replace(ledger, path, rival);
            }
            if !others.is_empty() {
                ledger.rivals.insert(path.clone(), others);
            }
        }
    }
    ledger.by.remove(path);
    ledger.stamps.remove(path);
    let Some(value) = &change.after else {
        return promote(ledger, path, &mut change.after);
    };
    sign(ledger, path, value, pen, at);
    false
}

/// Writes under a value who set it and when.
pub(super) fn sign(ledger: &mut Ledger, path: &str, value: &Value, pen: &mut Pen, at: Millis) {
    let beside = ledger.rivals.get(path).into_iter().flatten();
    let floor = beside.map(Rival::time).max();
    // A reading says when it was typed; what comes back is set anew. What is kept
    // of a step says when it was marked, whatever else of it is changed.
    let own = own_time(value);
    let wanted = own
        .filter(|own| value.is_array() && *own <= at && at - own < FRESH)
        .unwrap_or(at);
    let (writer, moment) = pen.moment(wanted, floor);
    ledger.by.insert(path.to_owned(), writer);
    if own == Some(moment) {
        ledger.stamps.remove(path);
    } else {
        ledger.stamps.insert(path.to_owned(), moment);
    }
    ledger.see(
        writer,
        Span {
            first: moment,
            last: moment,
        },
    );
}

/// What was typed so long ago, ms, is set down with its own time.
const FRESH: Millis = 2000;

/// Takes a value out of the ledger as the one that is shown.
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
    if let Some(by) = shown.by {
        ledger.by.insert(path.to_owned(), by);
    }
    *value = Some(shown.value);
    true
}

/// The only writer in whose span a moment lies.
fn told_by_time(seen: &LiteMap<Writer, Span>, at: Millis) -> Option<Writer> {
    let mut found = seen
        .iter()
        .filter(|(_, span)| span.first <= at && at <= span.last);
    let (writer, _) = found.next()?;
    found.next().is_none().then_some(*writer)
}

/// The ledger as it stands in a body with these values; `None` where it is
/// empty.
pub(super) fn write_ledger(ledger: &Ledger, values: &Flat) -> Option<Value> {
    let mut whole = Map::new();
    let mut set = |key: &str, part: Map<String, Value>| {
        if !part.is_empty() {
            whole.insert(key.to_owned(), Value::Object(part));
        }
    };
    let name = |writer: Option<&Writer>| writer.map_or(Value::Null, |w| w.name().into());
    // One by one: what is collected is sorted by code of its own.
    let mut by = Map::new();
    if !ledger.seen.is_empty() {
        for (path, value) in values {
            let writer = ledger.by.get(path);
            let at = rival(ledger, path, value).time();
            if told_by_time(&ledger.seen, at).as_ref() != writer {
                by.insert(path.clone(), name(writer));
            }
        }
    }
    set("by", by);
    let mut seen = Map::new();
    for (writer, span) in &ledger.seen {
        seen.insert(writer.name(), vec![span.first, span.last].into());
    }
    set("seen", seen);
    let mut rivals = Map::new();
    for (path, beside) in &ledger.rivals {
        let list = beside.iter().map(|r| {
            let mut parts = vec![r.value.clone(), r.at.into()];
            parts.extend(r.by.map(|w| Value::from(w.name())));
            Value::from(parts)
        });
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

/// Reads the ledger of a body with these values; `None` where the value is none,
/// or holds more than one.
pub(super) fn read_ledger(value: &Value, values: &Flat) -> Option<Ledger> {
    let mut whole = value.as_object()?.clone();
    let mut part = |key: &str| match whole.remove(key) {
        None => Some(Map::new()),
        Some(Value::Object(part)) => Some(part),
        Some(_) => None,
    };
    let mut ledger = Ledger::default();
    for (path, list) in part("rivals")? {
        let list: Option<Vec<Rival>> = list.as_array()?.iter().map(read_rival).collect();
        ledger.rivals.insert(path, list?);
    }
    for (path, list) in part("replaced")? {
        let marks: Option<Marks> = list
            .as_array()?
            .iter()
            .map(|mark| u32::try_from(mark.as_u64()?).ok())
            .collect();
        ledger.replaced.insert(path, marks?);
    }
    for (path, at) in part("stamps")? {
        ledger.stamps.insert(path, at.as_u64()?);
    }
    for (name, span) in part("seen")? {
        let (first, last) = match span.as_array()?.as_slice() {
            [first, last] => (first.as_u64()?, last.as_u64()?),
            _ => return None,
        };
        let writer = Writer::from_name(&name).filter(|_| first <= last)?;
        ledger.seen.insert(writer, Span { first, last });
    }
    let mut by: LiteMap<String, Option<Writer>> = LiteMap::new_vec();
    for (path, writer) in part("by")? {
        by.insert(path, read_writer(&writer)?);
    }
    if !whole.is_empty() {
        return None;
    }
    for (path, value) in values.iter().filter(|_| !ledger.seen.is_empty()) {
        let at = rival(&ledger, path, value).time();
        let writer = match by.get(path) {
            Some(said) => *said,
            None => told_by_time(&ledger.seen, at),
        };
        if let Some(writer) = writer {
            ledger.by.insert(path.clone(), writer);
        }
    }
    // What stands here was seen here, whoever wrote the ledger.
    let mut stand: Vec<(Writer, Millis)> = Vec::new();
    for (path, value) in values {
        let shown = rival(&ledger, path, value);
        stand.extend(shown.by.map(|writer| (writer, shown.time())));
    }
    for beside in ledger.rivals.values().flatten() {
        stand.extend(beside.by.map(|writer| (writer, beside.time())));
    }
    for (writer, at) in stand {
        if !ledger.has_seen(writer, at) {
            ledger.see(
                writer,
                Span {
                    first: at,
                    last: at,
                },
            );
        }
    }
    Some(ledger)
}

/// A writer, or `null` for none.
fn read_writer(value: &Value) -> Option<Option<Writer>> {
    match value {
        Value::Null => Some(None),
        Value::String(name) => Writer::from_name(name).map(Some),
        _ => None,
    }
}

fn read_rival(value: &Value) -> Option<Rival> {
    let (value, at, by) = match value.as_array()?.as_slice() {
        [value, at] => (value, at, None),
        [value, at, writer] => (value, at, read_writer(writer)?),
        _ => return None,
    };
    Some(Rival {
        value: value.clone(),
        at: at.as_u64()?,
        by,
    })
}

//! Two copies of one document joined, value by value: two phones, two tabs, a
//! file that went out and came back.
//!
//! Nothing is dropped. A value that one copy replaced knowingly gives way to
//! what replaced it; values that two people set without knowing of each other
//! both stay, the later one shown, until one is chosen ([`conflicts`],
//! [`choose`]). What is blank in one copy only is filled from the other.
//!
//! Every setting of a value has its writer and its moment (a *dot*), every copy
//! says up to which moment it has seen each writer. A value stays if both copies
//! have it, or if the one that lacks it has not seen it. That is the optimised
//! observed-remove set (A. Bieniusa, M. Zawirski, N. Preguica, M. Shapiro,
//! C. Baquero, V. Balegas, S. Duarte, *An optimized conflict-free replicated
//! set*, INRIA RR-8083, 2012) at every place; no ancestor is needed: joining is
//! commutative, associative and idempotent, whatever the order in which copies
//! meet. Values of version 1 have no writer: there a mark tells what was
//! replaced.

use super::flat::{flat, keys};
use super::ledger::{Hand, changes, rival, set_down, sign};
use super::paper::{BIN, Paper, Values, of_flat, of_values, values};
use super::pen::Pen;
use super::write::write_entry_words;
use super::{Body, Document};
use crate::job::ledger::{Ledger, Marks, Rival};
use crate::job::step::StepId;
use crate::job::{Field, Millis, Owner, Place};
use crate::numerics::order::{each_once, in_order};
use serde_json::{Map, Value};

/// All values that stand at a path.
fn at_path<'a>(own: &'a Values, path: &str) -> impl Iterator<Item = Rival> + use<'a> {
    let shown = own
        .flat
        .get(path)
        .map(|value| rival(&own.ledger, path, value));
    let beside = own.ledger.rivals.get(path).into_iter().flatten().cloned();
    shown.into_iter().chain(beside)
}

/// Joins the values of two copies.
pub(super) fn join(a: &Values, b: &Values) -> Values {
    let mut joined = Values::default();
    for ledger in [&a.ledger, &b.ledger] {
        for (writer, span) in &ledger.seen {
            joined.ledger.see(*writer, *span);
        }
    }
    let mut paths: Vec<String> = a.flat.keys().chain(b.flat.keys()).cloned().collect();
    for one in [a, b] {
        paths.extend(one.ledger.rivals.keys().cloned());
        paths.extend(one.ledger.replaced.keys().cloned());
    }
    for path in each_once(paths) {
        let of = |own: &Ledger| own.replaced.get(&path).cloned().unwrap_or_default();
        let (marks_a, marks_b) = (of(&a.ledger), of(&b.ledger));
        let both = marks_a.as_slice().iter().chain(marks_b.as_slice());
        let marks: Marks = both.copied().collect();
        let mut found: Vec<Rival> = Vec::new();
        for (own, other) in [(a, b), (b, a)] {
            found.extend(at_path(own, &path).filter(|value| {
                let in_both = || at_path(other, &path).any(|one| one.is(value));
                match value.by {
                    Some(writer) => !other.ledger.has_seen(writer, value.time()) || in_both(),
                    // Without a writer, in the bin only where both copies are.
                    None if path == BIN => in_both(),
                    None => !marks.contains(value.mark()),
                }
            }));
        }
        let ranked = found
            .into_iter()
            .map(|value| (value.rank(), value))
            .collect();
        let ranked = in_order(ranked, |(a, _), (b, _)| b.cmp(a));
        let mut found: Vec<Rival> = ranked.into_iter().map(|(_, value)| value).collect();
        found.dedup_by(|one, before| one.is(before));
        let mut found = found.into_iter();
        if let Some(shown) = found.next() {
            if shown.at > 0 {
                joined.ledger.stamps.insert(path.clone(), shown.at);
            }
            if let Some(writer) = shown.by {
                joined.ledger.by.insert(path.clone(), writer);
            }
            joined.flat.insert(path.clone(), shown.value);
        }
        let beside: Vec<Rival> = found.collect();
        if !beside.is_empty() {
            joined.ledger.rivals.insert(path.clone(), beside);
        }
        if !marks.as_slice().is_empty() {
            joined.ledger.replaced.insert(path, marks);
        }
    }
    joined
}

/// Joins two copies of a document's body.
#[must_use]
pub fn merge_papers<P: Paper>(a: &P, b: &P) -> P {
    of_values(&join(&values(a, None), &values(b, None))).0
}

/// Joins a copy with what a writer set in another, begun by itself: what stood
/// there at its beginning says nothing.
#[must_use]
pub fn merge_signed<P: Paper>(copy: &P, begun: &P) -> P {
    let mut signed = values(begun, None);
    let by = &signed.ledger.by;
    signed.flat.retain(|path, _| by.contains_key(path));
    of_values(&join(&values(copy, None), &signed)).0
}

/// Joins two copies of a document; `None` where they are of two kinds.
#[must_use]
pub fn merge(a: &Document, b: &Document) -> Option<Document> {
    match (&a.body, &b.body) {
        (Body::Job(job), Body::Job(other)) => Some(merged(a, &**job, b, &**other)),
        (Body::Shop(shop), Body::Shop(other)) => Some(merged(a, &**shop, b, &**other)),
        (Body::Drop(drop), Body::Drop(other)) => Some(merged(a, &**drop, b, &**other)),
        _ => None,
    }
}

fn merged<P: Paper>(a: &Document, body_a: &P, b: &Document, body_b: &P) -> Document {
    let (of_a, of_b) = (values(body_a, a.binned), values(body_b, b.binned));
    let joined = join(&of_a, &of_b);
    let (body, binned) = of_values::<P>(&joined);
    // The copy that has all of the other was changed last, whatever clocks say.
    let changed = match (joined == of_a, joined == of_b) {
        (true, false) => a.changed,
        (false, true) => b.changed,
        _ => a.changed.max(b.changed),
    };
    Document {
        app: a.app.clone().max(b.app.clone()),
        created: a.created.min(b.created),
        changed,
        id: a.id.clone().max(b.id.clone()),
        binned,
        body: body.into_body(),
        unknown: merge_envelopes(&a.unknown, &b.unknown),
    }
}

fn merge_envelopes(a: &Map<String, Value>, b: &Map<String, Value>) -> Map<String, Value> {
    let mut joined = Map::new();
    for (key, value) in a.iter().chain(b) {
        let other = if a.contains_key(key) {
            b.get(key)
        } else {
            None
        };
        let later = other.filter(|other| {
            let rank = |v: &Value| (v.as_u64(), v.to_string());
            rank(other) > rank(value)
        });
        joined
            .entry(key.clone())
            .or_insert_with(|| later.unwrap_or(value).clone());
    }
    joined
}

/// Puts a document into the bin, or takes it out.
pub fn put_in_bin<P: Paper>(
    paper: &mut P,
    binned: &mut Option<Millis>,
    into: bool,
    pen: &mut Pen,
    at: Millis,
) {
    let mut change = super::ledger::Change {
        path: BIN.to_owned(),
        before: binned.map(Value::from),
        after: into.then(|| at.into()),
    };
    set_down(paper.ledger_mut(), &mut change, pen, at, Hand::Comes);
    // Put in twice, apart from each other, it comes out at once.
    paper.ledger_mut().rivals.remove(BIN);
    *binned = into.then_some(at);
}

/// How many values a joined document has that it had not before, or had otherwise.
#[must_use]
pub fn gain<P: Paper>(before: &P, joined: &P) -> usize {
    changes(&flat(&before.value()), &flat(&joined.value())).len()
}

/// Where in a job a value stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Spot {
    /// A reading.
    Reading(Place),
    /// What is kept of a step.
    Step(Owner, StepId),
    /// Anything else, by its keys.
    Other(Vec<String>),
}

/// Where a path leads.
#[must_use]
pub fn spot(path: &str) -> Spot {
    let keys = keys(path);
    let found = match keys.as_slice() {
        [part, owner, field, index] if part == "entries" => Owner::from_name(owner)
            .zip(Field::from_id(field))
            .zip(index.parse().ok())
            .map(|((owner, field), index)| {
                Spot::Reading(Place {
                    owner,
                    field,
                    index,
                })
            }),
        [part, owner, step] if part == "steps" => Owner::from_name(owner)
            .zip(StepId::from_name(step))
            .map(|(owner, step)| Spot::Step(owner, step)),
        _ => None,
    };
    found.unwrap_or(Spot::Other(keys))
}

/// A place with more than one value.
#[derive(Clone, Debug, PartialEq)]
pub struct Conflict {
    /// Its path, for [`choose`].
    pub path: String,
    /// Where it is.
    pub spot: Spot,
    /// The values, the one shown first: in words, and when each was set.
    pub values: Vec<(String, Option<Millis>)>,
}

/// All places of a document with more than one value. Where both typed the same,
/// there is nothing to ask.
#[must_use]
pub fn conflicts<P: Paper>(paper: &P) -> Vec<Conflict> {
    let ledger = paper.ledger();
    if ledger.rivals.is_empty() {
        return Vec::new();
    }
    let values = flat(&paper.value());
    ledger
        .rivals
        .iter()
        .filter_map(|(path, beside)| {
            let shown = rival(ledger, path, values.get(path)?);
            let values: Vec<(String, Option<Millis>)> = core::iter::once(&shown)
                .chain(beside)
                .map(|one| {
                    let at = one.rank().0;
                    (write_entry_words(&one.value), (at > 0).then_some(at))
                })
                .collect();
            let first = &values.first()?.0;
            values
                .iter()
                .any(|(words, _)| words != first)
                .then(|| Conflict {
                    path: path.clone(),
                    spot: spot(path),
                    values: values.clone(),
                })
        })
        .collect()
}

/// Chooses one of the values of a place, counted as in [`Conflict::values`];
/// the others are replaced knowingly, and the chosen one is set anew: where two
/// people choose apart from each other, both choices stand. A path or number that
/// is none changes nothing.
pub fn choose<P: Paper>(paper: &mut P, path: &str, which: usize, pen: &mut Pen, at: Millis) {
    let mut values = flat(&paper.value());
    let mut ledger = paper.ledger().clone();
    let Some(beside) = ledger.rivals.remove(path) else {
        return;
    };
    let shown = values.get(path).map(|value| rival(&ledger, path, value));
    let mut all: Vec<Rival> = shown.into_iter().chain(beside).collect();
    if which >= all.len() {
        return;
    }
    let chosen = all.swap_remove(which);
    if chosen.by.is_none() {
        all.push(chosen.clone());
    }
    for mark in all.iter().filter(|one| one.by.is_none()).map(Rival::mark) {
        ledger
            .replaced
            .entry(path.to_owned())
            .or_default()
            .insert(mark);
    }
    sign(&mut ledger, path, &chosen.value, pen, at);
    values.insert(path.to_owned(), chosen.value);
    *paper = of_flat(&values, ledger);
}

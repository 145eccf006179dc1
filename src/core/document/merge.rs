//! Two copies of one job joined, value by value: two phones, two tabs, a file
//! that went out and came back.
//!
//! Nothing is dropped. A value that one copy replaced knowingly gives way to
//! what replaced it; values that two people set without knowing of each other
//! both stay, the later one shown, until one is chosen ([`conflicts`],
//! [`choose`]). What is blank in one copy only is filled from the other.
//!
//! A place holds a set of values, and a set of marks of values replaced; the
//! joined place is the union of the values without those marked in either. That
//! is an observed-remove set (M. Shapiro, N. Preguica, C. Baquero, M. Zawirski,
//! *A comprehensive study of convergent and commutative replicated data types*,
//! INRIA RR-7506, 2011, section 3.3): joining is commutative, associative and
//! idempotent, whatever the order in which copies meet. The tests hold it to
//! that.

use super::flat::{Flat, body, flat, keys};
use super::ledger::{changes, rival, write_ledger};
use super::row::BINNED;
use super::write::{job_value, write_entry_words};
use super::{Body, Document, read::job_of};
use crate::job::ledger::{Ledger, Marks, Rival};
use crate::job::step::StepId;
use crate::job::{Field, Job, Millis, Owner, Place};
use crate::numerics::order::{each_once, in_order};
use serde_json::{Map, Value};

/// The values of a job and its ledger.
fn parts(job: &Job) -> (Flat, &Ledger) {
    (flat(&job_value(job)), &job.ledger)
}

/// A job out of values and a ledger.
pub(super) fn job_from(values: &Flat, ledger: &Ledger) -> Job {
    let mut whole = body(values);
    if let Some(ledger) = write_ledger(ledger) {
        whole.insert(super::flat::LEDGER.to_owned(), ledger);
    }
    job_of(whole)
}

/// Joins two copies of a job.
#[must_use]
pub fn merge_jobs(a: &Job, b: &Job) -> Job {
    let ((a, ledger_a), (b, ledger_b)) = (parts(a), parts(b));
    let mut joined = Flat::new();
    let mut ledger = Ledger::default();
    let mut paths: Vec<String> = a.keys().chain(b.keys()).cloned().collect();
    for one in [ledger_a, ledger_b] {
        paths.extend(one.rivals.keys().cloned());
        paths.extend(one.replaced.keys().cloned());
    }
    for path in &each_once(paths) {
        let of = |own: &Ledger| own.replaced.get(path).cloned().unwrap_or_default();
        let (marks_a, marks_b) = (of(ledger_a), of(ledger_b));
        let both = marks_a.as_slice().iter().chain(marks_b.as_slice());
        let marks: Marks = both.copied().collect();
        let mut found: Vec<Rival> = Vec::new();
        for (values, own) in [(&a, ledger_a), (&b, ledger_b)] {
            let shown = values.get(path).map(|value| rival(own, path, value));
            let beside = own.rivals.get(path).into_iter().flatten().cloned();
            found.extend(shown.into_iter().chain(beside));
        }
        found.retain(|value| !marks.contains(value.mark()));
        let ranked = found
            .into_iter()
            .map(|value| (value.rank(), value))
            .collect();
        let ranked = in_order(ranked, |(a, _), (b, _)| b.cmp(a));
        let mut found: Vec<Rival> = ranked.into_iter().map(|(_, value)| value).collect();
        found.dedup();
        if !marks.as_slice().is_empty() {
            ledger.replaced.insert(path.clone(), marks);
        }
        let mut found = found.into_iter();
        if let Some(shown) = found.next() {
            if shown.at > 0 {
                ledger.stamps.insert(path.clone(), shown.at);
            }
            joined.insert(path.clone(), shown.value);
        }
        let beside: Vec<Rival> = found.collect();
        if !beside.is_empty() {
            ledger.rivals.insert(path.clone(), beside);
        }
    }
    job_from(&joined, &ledger)
}

/// Joins two copies of a document; `None` where one is no job.
#[must_use]
pub fn merge(a: &Document, b: &Document) -> Option<Document> {
    let (Body::Job(job_a), Body::Job(job_b)) = (&a.body, &b.body) else {
        return None;
    };
    Some(Document {
        app: a.app.clone().max(b.app.clone()),
        created: a.created.min(b.created),
        changed: a.changed.max(b.changed),
        body: Body::Job(Box::new(merge_jobs(job_a, job_b))),
        unknown: merge_envelopes(&a.unknown, &b.unknown),
    })
}

fn merge_envelopes(a: &Map<String, Value>, b: &Map<String, Value>) -> Map<String, Value> {
    let mut joined = Map::new();
    for (key, value) in a.iter().chain(b) {
        let other = if a.contains_key(key) {
            b.get(key)
        } else {
            None
        };
        // In the bin only where both copies are.
        if key == BINNED && !(a.contains_key(key) && b.contains_key(key)) {
            continue;
        }
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

/// Takes over what `theirs` changed since `base`, into `mine`, which was made
/// from the same `base`: two tabs of one device.
#[must_use]
pub fn merge_since(base: &Job, mine: &Job, theirs: &Job) -> Job {
    if base == mine {
        return theirs.clone();
    }
    if base == theirs {
        return mine.clone();
    }
    let (from, _) = parts(base);
    let ((mut mine, mut ledger_mine), (mut theirs, mut ledger_theirs)) = (
        (parts(mine).0, mine.ledger.clone()),
        (parts(theirs).0, theirs.ledger.clone()),
    );
    // What one of them left as it was is the other's to say.
    let paths: Vec<String> = mine.keys().chain(theirs.keys()).cloned().collect();
    for path in each_once(paths) {
        let before = from.get(&path);
        if mine.get(&path) == before {
            copy(
                &path,
                (&theirs, &ledger_theirs),
                (&mut mine, &mut ledger_mine),
            );
        } else if theirs.get(&path) == before {
            copy(
                &path,
                (&mine, &ledger_mine),
                (&mut theirs, &mut ledger_theirs),
            );
        }
    }
    merge_jobs(
        &job_from(&mine, &ledger_mine),
        &job_from(&theirs, &ledger_theirs),
    )
}

/// Copies a value and its stamp.
fn copy(path: &str, (from, stamps): (&Flat, &Ledger), (into, ledger): (&mut Flat, &mut Ledger)) {
    match from.get(path) {
        Some(value) => into.insert(path.to_owned(), value.clone()),
        None => into.remove(path),
    };
    match stamps.stamps.get(path) {
        Some(at) => ledger.stamps.insert(path.to_owned(), *at),
        None => ledger.stamps.remove(path),
    };
}

/// How many values a joined job has that it had not before, or had otherwise.
#[must_use]
pub fn gain(before: &Job, joined: &Job) -> usize {
    changes(&parts(before).0, &parts(joined).0).len()
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

/// All places of a job with more than one value. Where both typed the same,
/// there is nothing to ask.
#[must_use]
pub fn conflicts(job: &Job) -> Vec<Conflict> {
    if job.ledger.rivals.is_empty() {
        return Vec::new();
    }
    let (values, ledger) = parts(job);
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
/// the others are replaced knowingly. A path or number that is none changes
/// nothing.
pub fn choose(job: &mut Job, path: &str, which: usize) {
    let (mut values, _) = parts(job);
    let mut ledger = job.ledger.clone();
    let Some(beside) = ledger.rivals.remove(path) else {
        return;
    };
    let shown = values.get(path).map(|value| rival(&ledger, path, value));
    let mut all: Vec<Rival> = shown.into_iter().chain(beside).collect();
    if which >= all.len() {
        return;
    }
    let chosen = all.swap_remove(which);
    let marks = ledger.replaced.entry(path.to_owned()).or_default();
    for mark in all.iter().map(Rival::mark).filter(|m| *m != chosen.mark()) {
        marks.insert(mark);
    }
    if chosen.at > 0 {
        ledger.stamps.insert(path.to_owned(), chosen.at);
    } else {
        ledger.stamps.remove(path);
    }
    values.insert(path.to_owned(), chosen.value);
    *job = job_from(&values, &ledger);
}

//! What is in the store: jobs that read, jobs that do not, the shop's settings.
//! Reads only; nothing here writes.

use crate::storage::local::Local;
use crate::storage::slots::{self, JOBS, SHOP};
use coldseat_core::document::{Body, Repair, Restored, Shop, Unreadable, restore};
use coldseat_core::job::Job;
use coldseat_core::job::assess::assess;
use coldseat_core::job::report::State as Condition;

/// The open job.
#[derive(Clone, Debug, PartialEq)]
pub struct OpenJob {
    /// Its key in the store.
    pub id: String,
    /// The job.
    pub job: Job,
    /// Its envelope, the body left out.
    pub created: u64,
    /// What of the envelope is unknown here.
    pub unknown: serde_json::Map<String, serde_json::Value>,
    /// Written by a later version: not to be changed.
    pub read_only: bool,
    /// What was repaired when it was read.
    pub repairs: Vec<Repair>,
}

/// A line of the list of jobs.
#[derive(Clone, Debug, PartialEq)]
pub struct Listed {
    /// Its key.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Whose block.
    pub customer: String,
    /// The engine's name.
    pub engine: String,
    /// When it was last changed.
    pub changed: u64,
    /// State of each cylinder.
    pub cylinders: Vec<Condition>,
    /// Written by a later version.
    pub newer: bool,
}

/// Stored data that cannot be read.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// Its key in the store.
    pub key: String,
    /// Its content, untouched.
    pub content: String,
    /// Why it cannot be read.
    pub why: Unreadable,
}

/// All jobs, newest first, and everything that could not be read.
#[must_use]
pub fn scan() -> (Vec<Listed>, Vec<Kept>) {
    let mut jobs = Vec::new();
    let mut damaged: Vec<Kept> = slots::kept(&Local)
        .into_iter()
        .map(|(key, content)| Kept {
            key,
            content,
            why: Unreadable::Torn,
        })
        .collect();
    for id in slots::job_ids(&Local) {
        let Ok(loaded) = slots::load(&Local, &format!("{JOBS}{id}")) else {
            continue;
        };
        let mut listed = None;
        for slot in &loaded.whole {
            match head(&id, &slot.text) {
                Ok(head) => {
                    listed = Some(head);
                    break;
                }
                Err(why) => damaged.push(Kept {
                    key: id.clone(),
                    content: slot.text.clone(),
                    why,
                }),
            }
        }
        damaged.extend(loaded.damaged.into_iter().map(|(key, content)| Kept {
            key,
            content,
            why: Unreadable::Torn,
        }));
        jobs.extend(listed);
    }
    jobs.sort_by(|a, b| b.changed.cmp(&a.changed).then(a.name.cmp(&b.name)));
    (jobs, damaged)
}

/// A job out of the store; the newest whole slot that reads.
#[must_use]
pub fn read_job(id: &str) -> Option<OpenJob> {
    let loaded = slots::load(&Local, &format!("{JOBS}{id}")).ok()?;
    loaded.whole.iter().find_map(|slot| {
        let (document, repairs, read_only) = match restore(&slot.text) {
            Restored::Valid(document) => (document, Vec::new(), false),
            Restored::Repaired(document, repairs) => (document, repairs, false),
            Restored::Newer { readable, .. } => (readable?, Vec::new(), true),
            Restored::Unreadable(_) => return None,
        };
        let Body::Job(job) = document.body else {
            return None;
        };
        Some(OpenJob {
            id: id.to_owned(),
            job: *job,
            created: document.created,
            unknown: document.unknown,
            read_only,
            repairs,
        })
    })
}

/// The shop's settings.
#[must_use]
pub fn read_shop() -> Option<Shop> {
    let loaded = slots::load(&Local, SHOP).unwrap_or_default();
    loaded
        .whole
        .iter()
        .find_map(|slot| match restore(&slot.text) {
            Restored::Valid(d) | Restored::Repaired(d, _) => match d.body {
                Body::Shop(shop) => Some(shop),
                Body::Job(_) => None,
            },
            _ => None,
        })
}

fn listed(id: &str, job: &Job, changed: u64) -> Listed {
    Listed {
        id: id.to_owned(),
        name: job.name.clone(),
        customer: job.customer.clone(),
        engine: job.engine.name.clone(),
        changed,
        cylinders: assess(job).into_iter().map(|r| r.state).collect(),
        newer: false,
    }
}

fn head(id: &str, text: &str) -> Result<Listed, Unreadable> {
    let (document, newer) = match restore(text) {
        Restored::Valid(document) | Restored::Repaired(document, _) => (document, false),
        Restored::Newer { readable, .. } => (readable.ok_or(Unreadable::NotADocument)?, true),
        Restored::Unreadable(why) => return Err(why),
    };
    match &document.body {
        Body::Job(job) => Ok(Listed {
            newer,
            ..listed(id, job, document.changed)
        }),
        Body::Shop(_) => Err(Unreadable::NotADocument),
    }
}

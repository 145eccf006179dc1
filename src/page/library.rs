//! What is in the store: jobs that read, jobs that do not, the shop's settings.
//! Reads only; nothing here writes.

use crate::storage::local::Local;
use crate::storage::slots::{self, JOBS, SHOP, Slot};
use coldseat_core::document::row::Row;
use coldseat_core::document::slot::read_slot;
use coldseat_core::document::{Body, Repair, Restored, Shop, Unreadable, restore};
use coldseat_core::job::Job;
use coldseat_core::numerics::order::in_order;
use litemap::LiteMap;
use std::cell::RefCell;

/// The open job.
#[derive(Clone, Debug, PartialEq)]
pub struct OpenJob {
    /// Its key in the store.
    pub id: String,
    /// The job.
    pub job: Job,
    /// Sequence number of the slot it was read from or written to.
    pub sequence: u64,
    /// Its envelope, the body left out.
    pub created: u64,
    /// When it was changed last, as it was read.
    pub changed: u64,
    /// When it was put into the bin, if it was.
    pub binned: Option<u64>,
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
    /// What is shown of it.
    pub row: Row,
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

thread_local! {
    /// Rows that were read since they changed last: a season's jobs are not
    /// looked into at every visit to the list.
    static ROWS: RefCell<LiteMap<String, Row>> = const { RefCell::new(LiteMap::new_vec()) };
}

/// A job of the store changed: its row is read anew. `None`: any may have.
pub fn forget_row(id: Option<&str>) {
    ROWS.with_borrow_mut(|rows| match id {
        Some(id) => drop(rows.remove(id)),
        None => rows.clear(),
    });
}

/// All jobs of local storage, and everything that could not be read.
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
        let name = format!("{JOBS}{id}");
        let row = ROWS.with_borrow(|rows| rows.get(&id).cloned()).or_else(|| {
            let peek = slots::peek(&Local, &name)?;
            Row::from_bytes(&peek.row).filter(Row::is_current)
        });
        if let Some(row) = row {
            ROWS.with_borrow_mut(|rows| rows.insert(id.clone(), row.clone()));
            jobs.push(Listed {
                id,
                row,
                newer: false,
            });
            continue;
        }
        let Ok(loaded) = slots::load(&Local, &name) else {
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
    (jobs, damaged)
}

/// The documents of all jobs of local storage.
#[must_use]
pub fn all_texts() -> Vec<String> {
    slots::job_ids(&Local)
        .into_iter()
        .filter_map(|id| {
            let content = slots::newest_content(&Local, &format!("{JOBS}{id}"))?;
            Some(read_slot(&content)?.text)
        })
        .collect()
}

/// Newest first.
#[must_use]
pub fn sorted(jobs: Vec<Listed>) -> Vec<Listed> {
    in_order(jobs, |a, b| {
        let (a, b) = (&a.row, &b.row);
        b.changed.cmp(&a.changed).then(a.name.cmp(&b.name))
    })
}

/// A job out of the store; the newest whole slot that reads.
#[must_use]
pub fn read_job(id: &str) -> Option<OpenJob> {
    let loaded = slots::load(&Local, &format!("{JOBS}{id}")).ok()?;
    loaded.whole.iter().find_map(|slot| open_slot(id, slot))
}

/// A job out of a slot.
#[must_use]
pub fn open_slot(id: &str, slot: &Slot) -> Option<OpenJob> {
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
        sequence: slot.sequence,
        created: document.created,
        changed: document.changed,
        binned: document.binned,
        unknown: document.unknown,
        read_only,
        repairs,
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
                Body::Job(_) | Body::Drop(_) => None,
            },
            _ => None,
        })
}

fn head(id: &str, text: &str) -> Result<Listed, Unreadable> {
    let (document, newer) = match restore(text) {
        Restored::Valid(document) | Restored::Repaired(document, _) => (document, false),
        Restored::Newer { readable, .. } => (readable.ok_or(Unreadable::NotADocument)?, true),
        Restored::Unreadable(why) => return Err(why),
    };
    Ok(Listed {
        id: id.to_owned(),
        row: Row::of(&document).ok_or(Unreadable::NotADocument)?,
        newer,
    })
}

//! What is in the store: jobs that read, jobs that do not, the shop's settings.
//! Reads only; nothing here writes.

use crate::keeper::with;
use crate::storage::local::Local;
use coldseat_core::ask::document::{Restored, Row, Unreadable, peek_slot, read_slot, restore};
use coldseat_core::ask::{Job, each_once, in_order};
use coldseat_core::storage::Open;
use coldseat_core::storage::slots;
use coldseat_core::storage::slots::JOBS;
use litemap::LiteMap;
use std::cell::RefCell;

/// The open job.
pub type OpenJob = Open<Job>;

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

/// All jobs of both stores, and everything that could not be read.
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
    let ids = slots::job_ids(&Local);
    for id in ids.iter().cloned() {
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
    jobs.extend(elsewhere(&ids));
    (jobs, damaged)
}

/// Jobs that local storage has not: in the second store, or under way.
fn elsewhere(here: &[String]) -> Vec<Listed> {
    let mut rows: LiteMap<String, Row> = LiteMap::new_vec();
    let id_of = |name: &str| {
        let id = name.strip_prefix(JOBS)?;
        here.binary_search_by(|one| one.as_str().cmp(id))
            .is_err()
            .then(|| id.to_owned())
    };
    with(|session| {
        for head in session.keeper().heads() {
            if let Some((id, row)) = id_of(&head.name).zip(Row::from_bytes(&head.row)) {
                rows.insert(id, row);
            }
        }
        for (name, content) in session.keeper().all_held() {
            let row = peek_slot(&content).and_then(|peek| Row::from_bytes(&peek.row));
            if let Some((id, row)) = id_of(&name).zip(row) {
                rows.insert(id, row);
            }
        }
    });
    rows.into_iter()
        .map(|(id, row)| Listed {
            id,
            row: row.without_its_green(),
            newer: false,
        })
        .collect()
}

/// Names of all documents of this device, in whichever store.
#[must_use]
pub fn all_names() -> Vec<String> {
    let mut names = slots::names(&Local);
    with(|session| {
        names.extend(session.keeper().heads().map(|head| head.name.clone()));
        names.extend(
            session
                .keeper()
                .all_held()
                .into_iter()
                .map(|(name, _)| name),
        );
    });
    each_once(names)
}

/// The document under a name, as far as it is at hand.
#[must_use]
pub fn text_at_hand(name: &str) -> Option<String> {
    let copies = with(|session| session.keeper().copies(&Local, name));
    copies
        .iter()
        .find_map(|content| Some(read_slot(content)?.text))
}

/// Newest first.
#[must_use]
pub fn sorted(jobs: Vec<Listed>) -> Vec<Listed> {
    in_order(jobs, |a, b| {
        let (a, b) = (&a.row, &b.row);
        b.changed.cmp(&a.changed).then(a.name.cmp(&b.name))
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

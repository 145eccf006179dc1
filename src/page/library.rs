//! What lies on the device: jobs and cold drops that read, and what does not.
//! Reads only; nothing here writes.

use crate::storage::local::Local;
use crate::storage::with;
use coldseat_core::ask::document::{
    ColdDropPaper, Restored, Row, Unreadable, peek_slot, read_slot, restore,
};
use coldseat_core::ask::{Job, each_once, in_order};
use coldseat_core::storage::Open;
use coldseat_core::storage::slots;
use coldseat_core::storage::slots::DROPS;
use coldseat_core::storage::slots::id_in;
use leptos::prelude::*;
use litemap::LiteMap;
use std::cell::RefCell;

/// The open job.
pub type OpenJob = Open<Job>;

/// The open cold drop.
pub type OpenDrop = Open<ColdDropPaper>;

/// A line of a list.
#[derive(Clone, Debug, PartialEq)]
pub struct Listed {
    /// Its name in the stores.
    pub name: String,
    /// Its key.
    pub id: String,
    /// What is shown of it.
    pub row: Row,
    /// Written by a later version.
    pub newer: bool,
}

impl Listed {
    fn of(name: &str, row: Row, newer: bool) -> Self {
        Self {
            id: id_in(name).unwrap_or(name).to_owned(),
            name: name.to_owned(),
            row,
            newer,
        }
    }
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

/// The lists of what lies on the device, as they are shown.
#[derive(Clone, Copy)]
pub struct Library {
    /// Jobs of this device, newest first.
    pub jobs: RwSignal<Vec<Listed>>,
    /// Cold drops under a name, changed last first.
    pub drops: RwSignal<Vec<Listed>>,
    /// What could not be read.
    pub kept: RwSignal<Vec<Kept>>,
}

impl Library {
    /// As it is now.
    #[must_use]
    pub fn start() -> Self {
        let library = Self {
            jobs: RwSignal::new(Vec::new()),
            drops: RwSignal::new(Vec::new()),
            kept: RwSignal::new(Vec::new()),
        };
        library.scan();
        library
    }

    /// Looks at every key of the store.
    pub fn scan(self) {
        let found = scan();
        self.jobs.set(sorted(found.jobs));
        self.drops.set(sorted(found.drops));
        self.kept.set(found.kept);
    }
}

/// What lies in both stores.
struct Scan {
    /// Jobs and engine sheets.
    pub jobs: Vec<Listed>,
    /// Cold drops under a name.
    pub drops: Vec<Listed>,
    /// What cannot be read.
    pub kept: Vec<Kept>,
}

impl Scan {
    fn list(&mut self, listed: Listed) {
        if listed.name.starts_with(DROPS) {
            self.drops.push(listed);
        } else {
            self.jobs.push(listed);
        }
    }
}

thread_local! {
    /// Rows that were read since they changed last, by name: a season's jobs are
    /// not looked into at every visit to the list.
    static ROWS: RefCell<LiteMap<String, Row>> = const { RefCell::new(LiteMap::new_vec()) };
}

/// A document of the store changed: its row is read anew. `None`: any may have.
pub fn forget_row(name: Option<&str>) {
    ROWS.with_borrow_mut(|rows| match name {
        Some(name) => drop(rows.remove(name)),
        None => rows.clear(),
    });
}

/// All jobs and kept cold drops of both stores, and everything that could not be
/// read.
fn scan() -> Scan {
    let torn = |(key, content)| Kept {
        key,
        content,
        why: Unreadable::Torn,
    };
    let mut found = Scan {
        jobs: Vec::new(),
        drops: Vec::new(),
        kept: slots::kept(&Local).into_iter().map(torn).collect(),
    };
    let names = slots::names(&Local);
    for name in names.iter().filter(|name| id_in(name).is_some()) {
        let row = ROWS
            .with_borrow(|rows| rows.get(name).cloned())
            .or_else(|| {
                let peek = slots::peek(&Local, name)?;
                Row::from_bytes(&peek.row).filter(Row::is_current)
            });
        if let Some(row) = row {
            ROWS.with_borrow_mut(|rows| rows.insert(name.clone(), row.clone()));
            found.list(Listed::of(name, row, false));
            continue;
        }
        let Ok(loaded) = slots::load(&Local, name) else {
            continue;
        };
        let mut listed = None;
        for slot in &loaded.whole {
            match head(name, &slot.text) {
                Ok(head) => {
                    listed = Some(head);
                    break;
                }
                Err(why) => found.kept.push(Kept {
                    key: name.clone(),
                    content: slot.text.clone(),
                    why,
                }),
            }
        }
        found.kept.extend(loaded.damaged.into_iter().map(torn));
        if let Some(listed) = listed {
            found.list(listed);
        }
    }
    for listed in elsewhere(&names) {
        found.list(listed);
    }
    found
}

/// What local storage has not: in the second store, or under way.
fn elsewhere(here: &[String]) -> Vec<Listed> {
    let mut rows: LiteMap<String, Row> = LiteMap::new_vec();
    let is_far = |name: &String| id_in(name).is_some() && here.binary_search(name).is_err();
    with(|session| {
        for head in session.keeper().heads().filter(|head| is_far(&head.name)) {
            if let Some(row) = Row::from_bytes(&head.row) {
                rows.insert(head.name.clone(), row);
            }
        }
        for (name, content) in session.keeper().all_held() {
            let row = peek_slot(&content).and_then(|peek| Row::from_bytes(&peek.row));
            if let Some(row) = row.filter(|_| is_far(&name)) {
                rows.insert(name, row);
            }
        }
    });
    rows.into_iter()
        .map(|(name, row)| Listed::of(&name, row.without_its_green(), false))
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
fn sorted(jobs: Vec<Listed>) -> Vec<Listed> {
    in_order(jobs, |a, b| {
        let (a, b) = (&a.row, &b.row);
        b.changed.cmp(&a.changed).then(a.name.cmp(&b.name))
    })
}

fn head(name: &str, text: &str) -> Result<Listed, Unreadable> {
    let (document, newer) = match restore(text) {
        Restored::Valid(document) | Restored::Repaired(document, _) => (document, false),
        Restored::Newer { readable, .. } => (readable.ok_or(Unreadable::NotADocument)?, true),
        Restored::Unreadable(why) => return Err(why),
    };
    let row = Row::of(&document).ok_or(Unreadable::NotADocument)?;
    Ok(Listed::of(name, row, newer))
}

//! Jobs out of a file: first what would change, then, at the person's word, the
//! change. A copy of a job that is here is joined with it; nothing here is ever
//! written over.

use crate::browser;
use crate::library::{OpenDrop, OpenJob};
use crate::state::State;
use crate::storage::local::Local;
use crate::storage::with;
use crate::texts as t;
use coldseat_core::ask::document::{
    Body, Document, FILE_MOST, FileFault, Found, Paper, Restored, Unreadable, conflicts, gain,
    merge, read_file,
};
use coldseat_core::storage::is_id;
use coldseat_core::storage::slots::DROP;
use coldseat_core::storage::slots::DROPS;
use coldseat_core::storage::slots::JOBS;
use coldseat_core::storage::slots::SHOP;
use leptos::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// What would come of a job in a file.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// It is not here yet.
    New,
    /// It is here, and nothing would change.
    Same,
    /// Joined with the one here: so many values come, so many places have two.
    Joins(usize, usize),
    /// Written by a later version: cannot be taken.
    Newer(u64),
    /// Not readable.
    Unreadable(Unreadable),
}

/// A line of the preview.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Name of the job.
    pub name: String,
    /// What would come of it.
    pub outcome: Outcome,
    /// Whether something in it had to be repaired.
    pub repaired: bool,
    /// Under which key, and the document as it would be.
    takes: Option<(String, Document)>,
}

/// What a file would change.
#[derive(Clone, Debug, PartialEq)]
pub enum Preview {
    /// It is being read.
    Reading,
    /// Not usable as a whole.
    Refused(FileFault),
    /// Job by job.
    Lines(Vec<Line>),
    /// So many jobs were taken.
    Taken(usize),
}

/// Reads a file and says what it would change.
pub fn look_into(state: State, file: web_sys::File, preview: RwSignal<Option<Preview>>) {
    state.session.flush();
    preview.set(Some(Preview::Reading));
    if file.size() > FILE_MOST as f64 {
        preview.set(Some(Preview::Refused(FileFault::TooLong)));
        return;
    }
    spawn_local(async move {
        let text = JsFuture::from(file.text())
            .await
            .ok()
            .and_then(|text| text.as_string())
            .unwrap_or_default();
        let seen = match read_file(&text) {
            Err(fault) => Preview::Refused(fault),
            Ok(found) => {
                let mut lines = Vec::new();
                for one in found {
                    lines.push(line(state, one).await);
                }
                Preview::Lines(lines)
            }
        };
        preview.set(Some(seen));
    });
}

async fn line(state: State, found: Found) -> Line {
    let refused = |outcome| Line {
        name: String::new(),
        outcome,
        repaired: false,
        takes: None,
    };
    let (document, repaired) = match found.restored {
        Restored::Valid(document) => (document, false),
        Restored::Repaired(document, _) => (document, true),
        Restored::Newer { version, .. } => return refused(Outcome::Newer(version)),
        Restored::Unreadable(why) => return refused(Outcome::Unreadable(why)),
    };
    let id = found.id.filter(|id| is_id(id));
    let (name, here) = match &document.body {
        Body::Job(job) => {
            let here = match &id {
                Some(id) => state.session.stored(id).await,
                None => None,
            };
            let document = |here: OpenJob| {
                let name = format!("{JOBS}{}", here.id);
                (here.document(&name), here.read_only)
            };
            (job.name.clone(), here.map(document))
        }
        Body::Shop(_) => {
            let here = with(|s| (s.shop().document(SHOP), s.shop().read_only));
            (t::SETTINGS.get().to_owned(), Some(here))
        }
        Body::Drop(drop) if id.is_some() => {
            let here = match &id {
                Some(id) => state.session.stored_drop(id).await,
                None => None,
            };
            let document = |here: OpenDrop| {
                let name = format!("{DROPS}{}", here.id);
                (here.document(&name), here.read_only)
            };
            (drop.name.clone(), here.map(document))
        }
        Body::Drop(_) => {
            let here = with(|s| (s.cold_drop().document(DROP), s.cold_drop().read_only));
            (t::COLD_DROP.get().to_owned(), Some(here))
        }
    };
    let id = id.unwrap_or_else(browser::fresh_id);
    let (outcome, takes) = match here {
        None => (Outcome::New, Some(document)),
        Some((_, true)) => (Outcome::Unreadable(Unreadable::NotADocument), None),
        Some((here, false)) => match merge(&here, &document) {
            None => (Outcome::Unreadable(Unreadable::NotADocument), None),
            Some(joined) => match joins(&here, &joined) {
                (0, 0) => (Outcome::Same, None),
                (values, both) => (Outcome::Joins(values, both), Some(document)),
            },
        },
    };
    Line {
        name,
        outcome,
        repaired,
        takes: takes.map(|document| (id, document)),
    }
}

/// How many values come with a joined document, and in how many places there
/// are two then that were not before.
fn joins(here: &Document, joined: &Document) -> (usize, usize) {
    fn of<P: Paper>(here: &P, joined: &P) -> (usize, usize) {
        let asked = |paper: &P| conflicts(paper);
        let (before, after) = (asked(here), asked(joined));
        let new = after.iter().filter(|one| !before.contains(one)).count();
        let values = gain(here, joined);
        // As long as something comes, all that is to be chosen is told.
        if values + new == 0 {
            (0, 0)
        } else {
            (values, after.len())
        }
    }
    match (&here.body, &joined.body) {
        (Body::Job(a), Body::Job(b)) => of(&**a, &**b),
        (Body::Shop(a), Body::Shop(b)) => of(&**a, &**b),
        (Body::Drop(a), Body::Drop(b)) => of(&**a, &**b),
        _ => (0, 0),
    }
}

/// Takes what the preview shows.
pub fn take(state: State, preview: RwSignal<Option<Preview>>) {
    let Some(Preview::Lines(lines)) = preview.get_untracked() else {
        return;
    };
    state.session.flush();
    let mut count = 0;
    for (id, document) in lines.into_iter().filter_map(|line| line.takes) {
        // It is joined with what is here now, whatever the preview said.
        let told = with(|session| session.take(&id, &document, &Local, browser::now()));
        state.storage.tell(told);
        count += 1;
    }
    state.storage.run();
    state.library.scan();
    preview.set(Some(Preview::Taken(count)));
}

//! Jobs out of a file: first what would change, then, at the person's word, the
//! change. A copy of a job that is here is joined with it; nothing here is ever
//! written over.

use crate::browser;
use crate::keeper;
use crate::library::{self, OpenJob};
use crate::route::is_id;
use crate::state::State;
use crate::storage::slots::JOBS;
use coldseat_core::document::file::{FILE_MOST, FileFault, Found, read_file};
use coldseat_core::document::merge::{conflicts, gain, merge};
use coldseat_core::document::row::Row;
use coldseat_core::document::{Body, Document, Restored, Unreadable, write};
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
    state.flush();
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
    let Body::Job(job) = &document.body else {
        return refused(Outcome::Unreadable(Unreadable::NotADocument));
    };
    let name = job.name.clone();
    let id = found.id.filter(|id| is_id(id));
    let here = match &id {
        Some(id) => keeper::stored(state, id).await,
        None => None,
    };
    let id = id.unwrap_or_else(browser::fresh_id);
    let (outcome, takes) = match here.filter(|here| !here.read_only) {
        None => (Outcome::New, Some(document)),
        Some(here) => {
            let joined = merge(&document_of(&here), &document);
            match joined {
                Some(joined) => match &joined.body {
                    Body::Job(job) if **job != here.job => {
                        let values = gain(&here.job, &**job);
                        let both = conflicts(&**job).len();
                        (Outcome::Joins(values, both), Some(joined))
                    }
                    _ => (Outcome::Same, None),
                },
                None => (Outcome::Unreadable(Unreadable::NotADocument), None),
            }
        }
    };
    Line {
        name,
        outcome,
        repaired,
        takes: takes.map(|document| (id, document)),
    }
}

fn document_of(open: &OpenJob) -> Document {
    let mut document = Document::new(Body::Job(Box::new(open.job.clone())), open.created);
    document.changed = open.changed;
    document.id = Some(open.id.clone());
    document.binned = open.binned;
    document.unknown = open.unknown.clone();
    document
}

/// Takes what the preview shows.
pub fn take(state: State, preview: RwSignal<Option<Preview>>) {
    let Some(Preview::Lines(lines)) = preview.get_untracked() else {
        return;
    };
    spawn_local(async move {
        let mut count = 0;
        for (id, document) in lines.into_iter().filter_map(|line| line.takes) {
            let before = keeper::stored(state, &id).await;
            // It may have been changed while the preview stood.
            let mut document = match &before {
                Some(here) => match merge(&document_of(here), &document) {
                    Some(joined) => joined,
                    None => continue,
                },
                None => document,
            };
            document.id = Some(id.clone());
            let above = before.map_or(0, |here| here.sequence);
            let row = Row::of(&document).unwrap_or_default().bytes();
            keeper::keep(state, format!("{JOBS}{id}"), &write(&document), row, above);
            if state
                .open
                .with_untracked(|o| o.as_ref().is_some_and(|o| o.id == id))
            {
                state.put_on_desk(library::read_job(&id));
            }
            count += 1;
        }
        state.scan();
        preview.set(Some(Preview::Taken(count)));
    });
}

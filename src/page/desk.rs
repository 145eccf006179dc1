//! The open job: changed, taken back, written, and taken over from another tab
//! that changed it.
//!
//! Two tabs write the same slots. Whoever finds a newer slot there than the one
//! it began from joins it with its own, value by value, before it writes; the
//! second store compares once more inside its transaction, which is the lock.

use crate::browser;
use crate::keeper;
use crate::library::{self, OpenJob};
use crate::route::{Route, View};
use crate::state::State;
use crate::storage::local::Local;
use crate::storage::slots::{self, JOBS};
use coldseat_core::document::edit::{History, Noted, Stay};
use coldseat_core::document::merge::{Spot, merge_papers, put_in_bin};
use coldseat_core::document::pen::Pen;
use coldseat_core::document::row::Row;
use coldseat_core::document::slot::read_slot;
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::field::Scope;
use coldseat_core::job::ledger::Writer;
use coldseat_core::job::{Entries, Entry, Job, Place};
use leptos::prelude::*;

/// What belongs to the open job and is not shown.
#[derive(Clone, Copy)]
pub struct Desk {
    /// Whether there is a step to take back.
    pub can_undo: RwSignal<bool>,
    /// Whether there is a step to do again.
    pub can_redo: RwSignal<bool>,
    history: StoredValue<Option<History>>,
    /// Who writes in this tab.
    pen: StoredValue<Pen>,
    /// Whether it was written since it was opened.
    wrote: StoredValue<bool>,
    /// Whether a change waits to be written, and whether it goes on at the place
    /// of the one before.
    waits: StoredValue<Option<Stay>>,
    /// The place that was typed into last, while the hand is there.
    visit: StoredValue<Option<Place>>,
}

impl Desk {
    /// An empty one.
    #[must_use]
    pub fn new() -> Self {
        Self {
            can_undo: RwSignal::new(false),
            can_redo: RwSignal::new(false),
            history: StoredValue::new(None),
            pen: StoredValue::new(Pen::new(Writer::of(browser::chance(), browser::chance()))),
            wrote: StoredValue::new(false),
            waits: StoredValue::new(None),
            visit: StoredValue::new(None),
        }
    }
}

impl State {
    /// Opens a job, or closes the one that is open.
    pub fn put_on_desk(self, opened: Option<OpenJob>) {
        let desk = self.desk;
        desk.wrote.set_value(false);
        desk.waits.set_value(None);
        desk.visit.set_value(None);
        if let Some(open) = &opened {
            desk.pen
                .update_value(|pen| pen.opens(&open.id, &open.job.ledger));
        }
        desk.history.set_value(opened.as_ref().map(|open| {
            let text = browser::session_text(&history_key(&open.id)).unwrap_or_default();
            History::from_text(&open.job, &text)
        }));
        self.open.set(opened);
        self.show_history();
    }

    fn show_history(self) {
        let (undo, redo) = self.desk.history.with_value(|history| {
            history
                .as_ref()
                .map_or((false, false), |h| (h.can_undo(), h.can_redo()))
        });
        for (signal, now) in [(self.desk.can_undo, undo), (self.desk.can_redo, redo)] {
            if signal.get_untracked() != now {
                signal.set(now);
            }
        }
    }

    /// The open job as a document.
    #[must_use]
    pub fn open_document(self) -> Option<Document> {
        self.open.with_untracked(|open| {
            open.as_ref().map(|open| {
                let mut document =
                    Document::new(Body::Job(Box::new(open.job.clone())), open.created);
                document.changed = browser::now();
                document.unknown = open.unknown.clone();
                document.id = Some(open.id.clone());
                document.binned = open.binned;
                document
            })
        })
    }

    /// The open job as the text of a document.
    #[must_use]
    pub fn open_text(self) -> Option<String> {
        self.open_document().map(|document| write(&document))
    }

    /// Changes the open job and writes it.
    pub fn edit(self, change: impl FnOnce(&mut Job)) {
        self.desk.visit.set_value(None);
        self.edit_at(change, Stay::New);
    }

    fn edit_at(self, change: impl FnOnce(&mut Job), stay: Stay) {
        let mut changed = false;
        self.open.update(|open| {
            if let Some(open) = open.as_mut().filter(|o| !o.read_only) {
                change(&mut open.job);
                changed = true;
            }
        });
        if changed {
            self.save_soon(stay);
        }
    }

    /// Types into a place of the open job.
    pub fn type_entry(self, place: Place, entry: Entry) {
        let stay = if self.desk.visit.get_value() == Some(place) {
            Stay::Same
        } else {
            Stay::New
        };
        self.desk.visit.set_value(Some(place));
        self.edit_at(|job| drop(job.entries.put(place, entry)), stay);
    }

    /// The hand goes elsewhere: what is typed next is a change of its own.
    pub fn leaves_place(self) {
        self.desk.visit.set_value(None);
    }

    /// Writes the open job as soon as the change is painted: a key shows at
    /// once, and is "saved" when it is. What leaves the job or the page writes
    /// it first ([`State::flush`]).
    fn save_soon(self, stay: Stay) {
        match self.desk.waits.get_value() {
            None => {
                self.desk.waits.set_value(Some(stay));
                keeper::begins(self);
                browser::after_paint(move || self.flush());
            }
            Some(_) if stay == Stay::New => self.desk.waits.set_value(Some(stay)),
            Some(_) => {}
        }
    }

    /// Writes what waits for the paint.
    pub fn flush(self) {
        if let Some(stay) = self.desk.waits.get_value() {
            self.desk.waits.set_value(None);
            self.note(stay);
            self.save_open();
        }
    }

    /// Notes a change in the history and the job's ledger.
    fn note(self, stay: Stay) {
        let at = browser::now();
        let mut noted = Noted::Nothing;
        // Without a word to who watches the job, where nothing that is shown
        // changes.
        self.open.update_untracked(|open| {
            self.desk.history.update_value(|history| {
                if let (Some(open), Some(history)) = (open, history) {
                    self.desk.pen.update_value(|pen| {
                        noted = history.note(&mut open.job, pen, at, stay);
                        pen.wrote(&open.id, &open.job.ledger);
                    });
                }
            });
        });
        if noted == Noted::Shows {
            self.open.update(|_| {});
        }
        self.show_history();
    }

    /// Writes the open job, now; takes in first what another tab wrote.
    fn save_open(self) {
        self.take_in_newer();
        let Some(document) = self.open_document() else {
            return;
        };
        self.desk.wrote.set_value(true);
        let row = Row::of(&document).unwrap_or_default().bytes();
        let text = write(&document);
        self.open.update_untracked(|open| {
            if let Some(open) = open {
                let name = format!("{JOBS}{}", open.id);
                open.sequence = keeper::keep(self, name, &text, row, open.sequence);
                open.unknown = document.unknown;
                let history = self
                    .desk
                    .history
                    .with_value(|history| history.as_ref().map(History::text));
                browser::set_session_text(&history_key(&open.id), &history.unwrap_or_default());
            }
        });
    }

    /// Takes in what another tab wrote into local storage since; says whether
    /// there was anything.
    fn take_in_newer(self) -> bool {
        let Some((name, sequence)) = self.open.with_untracked(|open| {
            open.as_ref()
                .map(|o| (format!("{JOBS}{}", o.id), o.sequence))
        }) else {
            return false;
        };
        let newer = slots::peek(&Local, &name)
            .filter(|peek| peek.sequence > sequence)
            .and_then(|_| slots::newest_content(&Local, &name));
        newer.is_some_and(|content| self.take_in(&content))
    }

    /// Joins a slot of the open job that was written elsewhere.
    fn take_in(self, content: &str) -> bool {
        let Some(slot) = read_slot(content) else {
            return false;
        };
        let mut taken = false;
        self.open.update(|open| {
            let Some(open) = open else {
                return;
            };
            let Some(theirs) = library::open_slot(&open.id, &slot) else {
                return;
            };
            open.job = merge_papers(&open.job, &theirs.job);
            open.sequence = open.sequence.max(slot.sequence);
            open.unknown = theirs.unknown;
            self.desk.history.update_value(|history| {
                if let Some(history) = history {
                    history.take_over(&open.job);
                }
            });
            taken = true;
        });
        taken
    }

    /// Another tab changed local storage.
    pub fn heard(self, key: Option<String>) {
        let id = key.as_deref().and_then(slots::id_of);
        library::forget_row(id.as_deref());
        let Some(id) = id else {
            return;
        };
        if self
            .open
            .with_untracked(|o| o.as_ref().is_some_and(|o| o.id == id))
        {
            self.flush();
            self.take_in_newer();
        }
        if matches!(self.route.get_untracked(), Route::Jobs | Route::Engines) {
            self.scan();
        }
    }

    /// The second store has another slot of a job than the one known here:
    /// newer after a crash, or another tab's that was there first. Where the job
    /// is open it is joined; what was typed here is written again.
    pub fn found_other(self, id: &str, content: &str) {
        if !self.is_open(id) {
            return;
        }
        self.flush();
        let ours = self.desk.wrote.get_value();
        if self.take_in(content) && ours {
            self.save_open();
        }
    }

    fn is_open(self, id: &str) -> bool {
        self.open
            .with_untracked(|open| open.as_ref().is_some_and(|open| open.id == id))
    }

    fn step_back(self, step: StepBack) -> Option<Place> {
        self.flush();
        self.desk.visit.set_value(None);
        let at = browser::now();
        let mut spot = None;
        self.open.update(|open| {
            self.desk.history.update_value(|history| {
                if let (Some(open), Some(history)) =
                    (open.as_mut().filter(|o| !o.read_only), history)
                {
                    self.desk.pen.update_value(|pen| {
                        spot = step(history, &mut open.job, pen, at);
                        pen.wrote(&open.id, &open.job.ledger);
                    });
                }
            });
        });
        if spot.is_some() {
            self.save_open();
        }
        self.show_history();
        match spot? {
            Spot::Reading(place) => Some(place),
            _ => None,
        }
    }

    /// Takes the last change of the job back; says at which reading it was.
    pub fn undo_job(self) -> Option<Place> {
        self.step_back(History::undo)
    }

    /// Does the last change again that was taken back.
    pub fn redo_job(self) -> Option<Place> {
        self.step_back(History::redo)
    }

    /// Puts the open job into the bin, or takes it out.
    pub fn bin(self, into: bool) {
        self.flush();
        self.open.update(|open| {
            if let Some(open) = open.as_mut().filter(|o| !o.read_only) {
                self.desk.pen.update_value(|pen| {
                    let at = browser::now();
                    put_in_bin(&mut open.job, &mut open.binned, into, pen, at);
                    pen.wrote(&open.id, &open.job.ledger);
                });
            }
        });
        self.save_open();
    }

    /// Chooses one of the values of a place that has more than one.
    pub fn choose(self, path: &str, which: usize) {
        self.flush();
        self.open.update(|open| {
            self.desk.history.update_value(|history| {
                if let (Some(open), Some(history)) =
                    (open.as_mut().filter(|o| !o.read_only), history)
                {
                    self.desk.pen.update_value(|pen| {
                        history.choose(&mut open.job, pen, browser::now(), (path, which));
                        pen.wrote(&open.id, &open.job.ledger);
                    });
                }
            });
        });
        self.save_open();
        self.show_history();
    }

    /// Begins a job and goes to it.
    pub fn begin(self, mut job: Job, note_of_numbers: Option<Entries>) {
        if let Some(entries) = note_of_numbers {
            for (place, entry) in entries.iter() {
                job.entries.put(*place, entry.clone());
            }
        }
        self.flush();
        let id = browser::fresh_id();
        // Nothing measured yet: it begins with the first step of the whole job.
        let is_new = job
            .entries
            .iter()
            .all(|(place, _)| place.field.spec().scope == Scope::Engine);
        let view = match (job.sheet, is_new) {
            (true, _) => View::Engine,
            (false, true) => View::Whole(None),
            (false, false) => View::Cylinder(None, None),
        };
        self.put_on_desk(Some(OpenJob {
            id: id.clone(),
            job,
            sequence: 0,
            created: browser::now(),
            changed: browser::now(),
            binned: None,
            unknown: serde_json::Map::new(),
            read_only: false,
            repairs: Vec::new(),
        }));
        self.save_open();
        browser::go(&Route::Job { id, view }.address());
    }
}

/// A step of the history, taken back or done again.
type StepBack = fn(&mut History, &mut Job, &mut Pen, u64) -> Option<Spot>;

/// Where the history of a job waits for a reload.
fn history_key(id: &str) -> String {
    format!("coldseat/history/{id}")
}

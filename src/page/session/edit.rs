//! What is open as it is changed: shown at once, noted and kept once the
//! change is painted.

use super::{Session, Target};
use crate::browser;
use crate::library::{self, OpenDrop, OpenJob};
use crate::storage::durable;
use crate::storage::local::Local;
use crate::storage::with;
use coldseat_core::ask::document::{
    ColdDropPaper, DisputedSpot as Spot, Document, Shop, Stay, write,
};
use coldseat_core::ask::{DropSheet, Entries, Entry, Job, Place};
use coldseat_core::storage::session::Which;
use coldseat_core::storage::slots::{self, DROPS, JOBS};
use coldseat_core::storage::{Answer, Ask};
use leptos::prelude::*;

/// Which document holds the numbers of a target.
fn which(target: Target) -> Which {
    match target {
        Target::Job => Which::Job,
        Target::Drop => with(|session| session.drop_at_hand().0),
        Target::Shop => Which::Shop,
    }
}

impl Session {
    /// Opens a job, wherever it is; says whether it is open or may be soon.
    pub fn open_job(self, id: &str) -> bool {
        self.flush();
        self.visit.set_value(None);
        let past = browser::session_text(&history_key(id)).unwrap_or_default();
        let may = with(|session| session.open_job(&Local, id, &past));
        self.show_job();
        self.show_history();
        self.storage.run();
        may
    }

    /// Shows the job that is open.
    pub(crate) fn show_job(self) {
        self.open.set(with(|session| session.job().cloned()));
    }

    pub(crate) fn show_history(self) {
        let (undo, redo) = with(|session| session.steps(Which::Job));
        for (signal, now) in [(self.can_undo, undo), (self.can_redo, redo)] {
            if signal.get_untracked() != now {
                signal.set(now);
            }
        }
    }

    /// The open job as the text of a document.
    #[must_use]
    pub fn open_text(self) -> Option<String> {
        self.flush();
        let document: Option<Document> = with(|session| session.document());
        document.map(|document| write(&document))
    }

    /// Changes the open job and writes it.
    pub fn edit(self, change: impl FnOnce(&mut Job)) {
        self.visit.set_value(None);
        self.edit_at(change, Stay::New);
    }

    fn edit_at(self, change: impl FnOnce(&mut Job), stay: Stay) {
        let at = browser::now();
        if with(|session| session.edit_job(change, stay, at)) {
            let job = with(|session| session.job().map(|open| open.job.clone()));
            self.open.update(|open| {
                if let (Some(open), Some(job)) = (open, job) {
                    open.job = job;
                }
            });
            self.save_soon();
        }
    }

    fn edit_shop_at(self, change: impl FnOnce(&mut Shop), stay: Stay) {
        let at = browser::now();
        if with(|session| session.edit_shop(change, stay, at)) {
            self.shop.set(with(|session| session.shop().job.clone()));
            self.save_soon();
        }
    }

    /// Changes the shop's settings and writes them.
    pub fn edit_shop(self, change: impl FnOnce(&mut Shop)) {
        self.visit.set_value(None);
        self.edit_shop_at(change, Stay::New);
    }

    pub(crate) fn edit_drop_at(self, change: impl FnOnce(&mut ColdDropPaper), stay: Stay) {
        let at = browser::now();
        if with(|session| session.edit_drop(change, stay, at)) {
            self.show_drop_numbers();
            self.save_soon();
        }
    }

    /// Changes the cold drop at hand and writes it.
    pub fn edit_drop(self, change: impl FnOnce(&mut DropSheet)) {
        self.visit.set_value(None);
        self.edit_drop_at(|paper| change(&mut paper.sheet), Stay::New);
    }

    /// Types into a place.
    pub fn type_entry(self, target: Target, place: Place, entry: Entry) {
        let stay = if self.visit.get_value() == Some((target, place)) {
            Stay::Same
        } else {
            Stay::New
        };
        self.visit.set_value(Some((target, place)));
        let put = |entries: &mut Entries| drop(entries.put(place, entry));
        match target {
            Target::Job => self.edit_at(|job| put(&mut job.entries), stay),
            Target::Drop => self.edit_drop_at(|paper| put(&mut paper.sheet.entries), stay),
            Target::Shop => self.edit_shop_at(|shop| put(&mut shop.entries), stay),
        }
    }

    /// The hand goes elsewhere: what is typed next is a change of its own.
    pub fn leaves_place(self) {
        self.visit.set_value(None);
    }

    /// Writes what is changed as soon as the change is painted: a key shows at
    /// once, and is "saved" when it is. What leaves the job or the page writes
    /// it first ([`Session::flush`]).
    fn save_soon(self) {
        self.storage.writing();
        if !self.waits.get_value() {
            self.waits.set_value(true);
            browser::after_paint(move || self.flush());
        }
    }

    /// Writes what waits for the paint.
    pub fn flush(self) {
        if self.waits.get_value() {
            self.waits.set_value(false);
            let told = with(|session| session.flush(&Local, browser::now()));
            self.storage.tell(told);
            self.kept();
        }
    }

    /// Something was noted and written.
    fn kept(self) {
        self.show_history();
        self.forget_open_rows();
        let own = with(|session| {
            let id = session.job().map(|open| open.id.clone());
            id.zip(session.history())
        });
        if let Some((id, history)) = own {
            browser::set_session_text(&history_key(&id), &history);
        }
        self.storage.run();
    }

    /// Another tab changed local storage.
    pub fn heard(self, key: Option<String>) {
        self.flush();
        match key.as_deref().map(slots::name_of) {
            None => library::forget_row(None),
            Some(Some(name)) => library::forget_row(Some(name)),
            // Not a document's.
            Some(None) => {}
        }
        let told = with(|session| session.heard(key.as_deref(), &Local, browser::now()));
        self.storage.tell(told);
        self.storage.run();
    }

    /// The person comes back to the tab.
    pub fn comes_back(self) {
        self.flush();
        let told = with(|session| session.comes_back(&Local, browser::now()));
        self.storage.tell(told);
        self.storage.run();
    }

    fn step_back(self, target: Target, is_redo: bool) -> Option<Place> {
        self.flush();
        self.visit.set_value(None);
        let at = browser::now();
        let which = which(target);
        let (spot, told) = with(|session| session.step(which, is_redo, &Local, at));
        self.storage.tell(told);
        self.kept();
        match spot? {
            Spot::Reading(place) => Some(place),
            _ => None,
        }
    }

    /// Takes the last change of a target back; says at which reading it was.
    pub fn undo(self, target: Target) -> Option<Place> {
        self.step_back(target, false)
    }

    /// Takes the last change of the job back; says at which reading it was.
    pub fn undo_job(self) -> Option<Place> {
        self.step_back(Target::Job, false)
    }

    /// Does the last change again that was taken back.
    pub fn redo_job(self) -> Option<Place> {
        self.step_back(Target::Job, true)
    }

    /// Puts what is open into the bin, or takes it out.
    pub fn bin(self, target: Target, into: bool) {
        self.flush();
        let which = which(target);
        let told = with(|session| session.bin(which, into, &Local, browser::now()));
        self.storage.tell(told);
        self.kept();
    }

    /// Keeps anew what is open and another tab took out.
    pub fn keep_anew(self, target: Target) {
        let which = which(target);
        let told = with(|session| session.keep_anew(which, &Local, browser::now()));
        self.storage.tell(told);
        self.kept();
    }

    /// Chooses one of the values of a place that has more than one.
    pub fn choose(self, target: Target, path: &str, value: usize) {
        self.flush();
        self.visit.set_value(None);
        let chosen = (path, value);
        let at = browser::now();
        let which = which(target);
        let told = with(|session| session.choose(which, chosen, &Local, at));
        self.storage.tell(told);
        self.kept();
    }

    /// A job, wherever it is: open, under way, in local storage, in the second store.
    pub async fn stored(self, id: &str) -> Option<OpenJob> {
        self.flush();
        if let Some(here) = with(|session| session.at_hand(&Local, id)) {
            return Some(here);
        }
        match durable::perform(Ask::Get(format!("{JOBS}{id}"))).await {
            Answer::Got(Ok(Some(content))) => OpenJob::of_content(id, &content),
            _ => None,
        }
    }

    /// A kept cold drop, wherever it is.
    pub async fn stored_drop(self, id: &str) -> Option<OpenDrop> {
        self.flush();
        if let Some(here) = with(|session| session.kept_drop_at_hand(&Local, id)) {
            return Some(here);
        }
        match durable::perform(Ask::Get(format!("{DROPS}{id}"))).await {
            Answer::Got(Ok(Some(content))) => OpenDrop::of_content(id, &content),
            _ => None,
        }
    }

    /// Begins a job and opens it; returns its key.
    pub fn begin(self, job: Job) -> String {
        self.flush();
        let id = browser::fresh_id();
        with(|session| session.begin(&Local, id.clone(), job, browser::now()));
        self.show_job();
        self.kept();
        id
    }
}

/// Where the history of a job waits for a reload.
fn history_key(id: &str) -> String {
    format!("coldseat/history/{id}")
}

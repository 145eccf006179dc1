//! The cold drops without a job: the one in use, and those kept under a name.

use super::Session;
use crate::browser;
use crate::library::{self, OpenDrop};
use crate::storage::local::Local;
use crate::storage::with;
use coldseat_core::ask::document::{ColdDropPaper, Stay};
use coldseat_core::ask::{DropSheet, UnitSystem};
use coldseat_core::storage::slots::{DROPS, JOBS};
use leptos::prelude::*;

/// The numbers of the cold drop at hand: one signal with the whole of it.
#[derive(Clone, Copy)]
pub struct DropNumbers(pub RwSignal<OpenDrop>);

impl DropNumbers {
    /// Looks at them, and follows them.
    pub fn with<R>(self, look: impl FnOnce(&DropSheet) -> R) -> R {
        self.0.with(|open| look(&open.job.sheet))
    }

    /// Looks at them as they stand.
    pub fn with_untracked<R>(self, look: impl FnOnce(&DropSheet) -> R) -> R {
        self.0.with_untracked(|open| look(&open.job.sheet))
    }

    /// The numbers; whoever asks follows them.
    #[must_use]
    pub fn get(self) -> DropSheet {
        self.with(DropSheet::clone)
    }
}

impl Session {
    /// Opens the kept cold drop under a key, wherever it is; without one the one in
    /// use is at hand.
    pub fn open_drop(self, wanted: &str) {
        if self.drop_open.with_untracked(|open| open.id == wanted) {
            return;
        }
        self.leaves_place();
        let told = with(|session| session.close_drop(&Local, browser::now()));
        self.storage.tell(told);
        if !wanted.is_empty() {
            let may = with(|session| session.open_drop(&Local, wanted));
            self.show_drop();
            let is_open = self.drop_open.with_untracked(|open| open.id == wanted);
            self.looking.set(may && !is_open);
        }
        self.storage.run();
    }

    /// Shows the cold drop at hand.
    pub(crate) fn show_drop(self) {
        self.drop_open
            .set(with(|session| session.drop_at_hand().1.clone()));
    }

    /// Shows what was typed into it.
    pub(crate) fn show_drop_numbers(self) {
        let job = with(|session| session.drop_at_hand().1.job.clone());
        self.drop_open.update(|open| open.job = job);
    }

    /// The rows of what is open are read anew.
    pub(crate) fn forget_open_rows(self) {
        if let Some(id) = with(|session| session.job().map(|open| open.id.clone())) {
            library::forget_row(Some(&format!("{JOBS}{id}")));
        }
        let open = self.drop_open.with_untracked(|open| open.id.clone());
        if !open.is_empty() {
            library::forget_row(Some(&format!("{DROPS}{open}")));
        }
    }

    /// Keeps the numbers at hand under a name, the day where it is none, and opens
    /// what is kept; returns its key.
    pub fn keep_drop(self, name: &str) -> String {
        self.flush();
        let at = browser::now();
        let name: String = name.trim().chars().take(NAME_MOST).collect();
        let name = if name.is_empty() {
            browser::date(at)
        } else {
            name
        };
        let paper = ColdDropPaper::of(name, self.drop_sheet.with_untracked(DropSheet::clone));
        let id = browser::fresh_id();
        with(|session| session.begin_drop(&Local, id.clone(), paper, at));
        self.show_drop();
        self.storage.run();
        id
    }

    /// Another name for the kept cold drop that is open.
    pub fn name_drop(self, name: String) {
        self.leaves_place();
        self.edit_drop_at(|paper| paper.name = name, Stay::Same);
    }
}

/// Longest name of a cold drop.
pub const NAME_MOST: usize = 80;

/// The cold drop as it opens: nothing typed, usual values stand and are told.
#[must_use]
pub fn fresh_drop(units: UnitSystem) -> DropSheet {
    ColdDropPaper::fresh(units).sheet
}

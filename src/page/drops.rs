//! The cold drops without a job: the one in use, and those kept under a name.

use crate::browser;
use crate::keeper::{self, with};
use crate::library::{self, OpenDrop};
use crate::route::Route;
use crate::state::State;
use crate::storage::local::Local;
use crate::texts as t;
use coldseat_core::ask::DropSheet;
use coldseat_core::ask::document::{ColdDropPaper, Stay};
use coldseat_core::storage::slots::JOBS;
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

impl State {
    /// Whichever cold drop was used last stands in the address from here on.
    pub(crate) fn to_last_drop(self) {
        let used = with(|session| session.drop_used());
        let newest = self.drops.with_untracked(|drops| {
            let here = drops.iter().find(|drop| drop.row.binned.is_none());
            here.map(|drop| (drop.id.clone(), drop.row.changed))
        });
        if let Some((id, changed)) = newest
            && used.is_none_or(|used| used < changed)
        {
            browser::replace_hash(&Route::Drop(Some(id)).address());
        }
    }

    /// Opens the kept cold drop that the address names, wherever it is; elsewhere
    /// the one in use is at hand.
    pub(crate) fn drop_of_route(self, route: &Route) {
        let wanted = match route {
            Route::Drop(id) => id.clone(),
            _ => None,
        };
        let wanted = wanted.unwrap_or_default();
        if self.drop_open.with_untracked(|open| open.id == wanted) {
            return;
        }
        self.leaves_place();
        let told = with(|session| session.close_drop(&Local, browser::now()));
        self.show(told);
        if !wanted.is_empty() {
            let may = with(|session| session.open_drop(&Local, &wanted));
            self.show_drop();
            let is_open = self.drop_open.with_untracked(|open| open.id == wanted);
            self.looking.set(may && !is_open);
        }
        keeper::run(self);
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
        if let Some(name) = Route::Drop(Some(open)).document() {
            library::forget_row(Some(&name));
        }
    }

    /// Keeps the numbers at hand under a name, the day where it is none, and opens
    /// what is kept.
    pub fn keep_drop(self, name: &str) {
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
        keeper::run(self);
        browser::go(&Route::Drop(Some(id)).address());
    }

    /// Another name for the kept cold drop that is open.
    pub fn name_drop(self, name: String) {
        self.leaves_place();
        self.edit_drop_at(|paper| paper.name = name, Stay::Same);
    }

    /// A copy of the kept cold drop that is open, which is opened.
    pub fn copy_drop(self) {
        let name = self.drop_open.with_untracked(|open| open.job.name.clone());
        self.keep_drop(&t::copy_of(&name));
    }
}

/// Longest name of a cold drop.
pub const NAME_MOST: usize = 80;

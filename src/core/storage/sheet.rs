//! An open document with all that belongs to it and is not shown: its history,
//! what of it lies where.

use super::keeper::{Keeper, Keeping, Store};
use super::open::{Open, row_of};
use super::reconcile::is_newer;
use super::{Shelf, StoreFault, mark, slots};
use crate::document::edit::{History, Noted, Stay};
use crate::document::merge::{Spot, merge, merge_signed, put_in_bin};
use crate::document::paper::Paper;
use crate::document::pen::Pen;
use crate::document::write;
use crate::job::Millis;

/// An open document.
#[derive(Clone, Debug)]
pub(super) struct Sheet<P: Paper> {
    /// Under which name it is kept.
    pub name: String,
    pub open: Open<P>,
    pub history: History,
    /// Whether a change waits to be noted, and whether it goes on at the place
    /// of the one before.
    pub waits: Option<Stay>,
    /// Mark of the slot of the quick store that is part of it.
    local: Option<u32>,
    /// Nothing of it was ever kept: what it holds was not typed.
    is_fresh: bool,
    /// It was changed since it was written.
    is_changed: bool,
    /// It shows something else than when that was told last.
    shows: bool,
}

/// What a meeting with another copy has come to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Met {
    /// It cannot be read.
    Unreadable,
    /// It is what is here.
    Same,
    /// All of it was here, and more than it has.
    Less,
    /// It has come in; `true` where it had all that is here.
    Joined(bool),
}

impl<P: Paper> Sheet<P> {
    /// A document that nobody has changed yet.
    pub fn fresh(name: String, open: Open<P>) -> Self {
        Self {
            history: History::of(&open.job),
            name,
            open,
            waits: None,
            local: None,
            is_fresh: true,
            is_changed: false,
            shows: false,
        }
    }

    /// A document out of copies of its slot, joined; `None` where none reads.
    pub fn of_copies(name: &str, id: &str, copies: &[String], past: &str) -> Option<Self> {
        let mut reads = copies.iter().filter_map(|content| {
            let open = Open::<P>::of_content(id, content)?;
            Some((open, content))
        });
        let (open, content) = reads.next()?;
        let mut sheet = Self::fresh(name.to_owned(), open);
        sheet.is_fresh = false;
        sheet.local = Some(mark(content));
        for (other, content) in reads {
            sheet.join(other);
            sheet.local = Some(mark(content));
        }
        sheet.history = History::from_text(&sheet.open.job, past);
        Some(sheet)
    }

    /// Whether it shows something else than when this was asked last.
    pub const fn shows(&mut self) -> bool {
        core::mem::replace(&mut self.shows, false)
    }

    /// Whether it was changed since it was written.
    pub const fn is_to_save(&self) -> bool {
        self.waits.is_some() || self.is_changed
    }

    /// Whether it was ever in a store.
    pub const fn was_kept(&self) -> bool {
        !self.is_fresh
    }

    /// Takes what of another copy is not here.
    fn join(&mut self, other: Open<P>) -> Met {
        if other.read_only {
            self.open.read_only = true;
            self.shows = true;
            return Met::Unreadable;
        }
        if self.is_fresh {
            self.is_fresh = false;
            let typed = !self.open.job.ledger().by.is_empty();
            let mine = core::mem::replace(&mut self.open, other);
            if typed {
                self.open.changed = mine.changed;
            }
            if typed {
                // What was typed before the copy was found; what stood there by
                // itself says nothing.
                self.open.job = merge_signed(&self.open.job, &mine.job);
            }
            self.history.take_over(&self.open.job);
            self.shows = true;
            return Met::Joined(!typed);
        }
        let mine = self.open.document(&self.name);
        let theirs = other.document(&self.name);
        let Some(joined) = merge(&mine, &theirs) else {
            return Met::Unreadable;
        };
        let Some(job) = P::of_body(&joined.body).cloned() else {
            return Met::Unreadable;
        };
        self.open.sequence = self.open.sequence.max(other.sequence);
        if joined == mine {
            return if joined == theirs {
                Met::Same
            } else {
                Met::Less
            };
        }
        self.open.job = job;
        self.open.created = joined.created;
        self.open.changed = joined.changed;
        self.open.binned = joined.binned;
        let had_all = joined == theirs;
        self.open.unknown = joined.unknown;
        self.history.take_over(&self.open.job);
        self.shows = true;
        Met::Joined(had_all)
    }

    /// Takes the content of a slot in.
    pub fn meet(&mut self, content: &str) -> Met {
        match Open::of_content(&self.open.id, content) {
            Some(other) => self.join(other),
            None => Met::Unreadable,
        }
    }

    /// Takes in what another tab wrote into the quick store since.
    pub fn take_in_newer(&mut self, shelf: &dyn Shelf) -> Met {
        let Some(content) = slots::newest_content(shelf, &self.name) else {
            return Met::Same;
        };
        let mark = mark(&content);
        if self.local == Some(mark) {
            return Met::Same;
        }
        let met = self.meet(&content);
        if met != Met::Unreadable {
            self.local = Some(mark);
        }
        met
    }

    /// Notes a change that waits.
    pub fn note(&mut self, pen: &mut Pen, at: Millis) {
        let Some(stay) = self.waits.take() else {
            return;
        };
        pen.opens(&self.name, self.open.job.ledger());
        let noted = self.history.note(&mut self.open.job, pen, at, stay);
        pen.wrote(&self.name, self.open.job.ledger());
        self.is_changed = true;
        self.shows |= noted == Noted::Shows;
        if noted != Noted::Nothing {
            self.open.changed = at;
        }
    }

    /// A step of the history, back or forth.
    pub fn step(&mut self, is_redo: bool, pen: &mut Pen, at: Millis) -> Option<Spot> {
        pen.opens(&self.name, self.open.job.ledger());
        let before = self.open.job.ledger().clone();
        let job = &mut self.open.job;
        let spot = if is_redo {
            self.history.redo(job, pen, at)
        } else {
            self.history.undo(job, pen, at)
        };
        pen.wrote(&self.name, self.open.job.ledger());
        // What was changed elsewhere meanwhile is left as it is.
        if *self.open.job.ledger() != before {
            self.open.changed = at;
            self.is_changed = true;
            self.shows = true;
        }
        spot
    }

    /// Chooses one of several values.
    pub fn choose(&mut self, pen: &mut Pen, at: Millis, which: (&str, usize)) {
        pen.opens(&self.name, self.open.job.ledger());
        self.history.choose(&mut self.open.job, pen, at, which);
        pen.wrote(&self.name, self.open.job.ledger());
        self.open.changed = at;
        self.shows = true;
    }

    /// Puts it into the bin or takes it out.
    pub fn bin(&mut self, into: bool, pen: &mut Pen, at: Millis) {
        pen.opens(&self.name, self.open.job.ledger());
        let open = &mut self.open;
        put_in_bin(&mut open.job, &mut open.binned, into, pen, at);
        pen.wrote(&self.name, self.open.job.ledger());
        self.open.changed = at;
        self.shows = true;
    }

    /// Writes it; takes in first what another tab wrote.
    pub fn save(&mut self, shelf: &dyn Shelf, keeper: &mut Keeper) {
        self.take_in_newer(shelf);
        if self.open.read_only {
            keeper.set_state(&self.name, Keeping::Held(StoreFault::Newer));
            return;
        }
        self.is_fresh = false;
        self.is_changed = false;
        let document = self.open.document(&self.name);
        let written = (&*write(&document), row_of(&document));
        let above = self.open.sequence;
        let (sequence, mark) = keeper.keep(shelf, &self.name, written, above);
        self.open.sequence = sequence;
        self.local = Some(mark);
    }

    /// The durable store has another copy than the one it was written over: it is
    /// joined, and what comes of it goes where it is not.
    pub fn found_other(&mut self, shelf: &dyn Shelf, keeper: &mut Keeper, content: &str) -> Met {
        let met = self.meet(content);
        match met {
            Met::Unreadable if is_newer(content) => {
                self.open.read_only = true;
                keeper.set_state(&self.name, Keeping::Only(Store::Quick, StoreFault::Newer));
            }
            Met::Unreadable => {
                // Damaged: kept aside, and written over.
                let _ = slots::keep(shelf, content);
                keeper.know(&self.name, content);
                self.save(shelf, keeper);
            }
            Met::Same | Met::Less | Met::Joined(_) => {
                keeper.know(&self.name, content);
                let is_theirs = met == Met::Joined(true) && !self.is_to_save();
                let lies_quick = is_theirs
                    && slots::write_newer(shelf, &self.name, content).is_ok()
                    && slots::newest_content(shelf, &self.name).as_deref() == Some(content);
                if lies_quick {
                    self.local = Some(mark(content));
                    keeper.lies_in_both(&self.name);
                } else {
                    self.save(shelf, keeper);
                }
            }
        }
        met
    }
}

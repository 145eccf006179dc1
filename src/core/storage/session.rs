//! A tab: the open job, the shop's settings and the cold drops, who writes, and
//! what is told of how far it all has come.
//!
//! Whoever runs it calls what the person did, then carries the asks out
//! ([`Session::next`], [`Session::answered`]) and shows what [`Told`] says.

use super::keeper::{Keeper, Keeping};
use super::open::Open;
use super::sheet::{Met, Sheet};
use super::slots::{self, DROP, DROPS, JOBS, SHOP};
pub use super::told::{Told, Which};
use super::{Ask, Shelf};
use crate::document::edit::{History, Stay};
use crate::document::merge::Spot;
use crate::document::paper::Paper;
use crate::document::pen::Pen;
use crate::document::{ColdDropPaper, Document, Shop};
use crate::job::ledger::Writer;
use crate::job::{Job, Millis};

/// A tab.
#[derive(Clone, Debug)]
pub struct Session {
    keeper: Keeper,
    pen: Pen,
    job: Option<Sheet<Job>>,
    shop: Sheet<Shop>,
    cold_drop: Sheet<ColdDropPaper>,
    /// The cold drop that is open and kept under a name; where there is none, the
    /// one in use is at hand.
    kept_drop: Option<Sheet<ColdDropPaper>>,
    /// What is to be opened when it comes, by its name, with its history.
    wanted: Option<(String, String)>,
}

/// Does the same to whichever document is meant; `None` where none is open.
macro_rules! on {
    ($session:expr, $which:expr, |$sheet:ident| $does:expr) => {
        match $which {
            Which::Job => $session.job.as_mut().map(|$sheet| $does),
            Which::Shop => Some({
                let $sheet = &mut $session.shop;
                $does
            }),
            // One of a kind: what is done is compiled once for both.
            Which::Drop | Which::KeptDrop => {
                let open = if matches!($which, Which::Drop) {
                    Some(&mut $session.cold_drop)
                } else {
                    $session.kept_drop.as_mut()
                };
                open.map(|$sheet| $does)
            }
        }
    };
}

mod answers;
mod drops;
mod take;

pub use take::Took;

impl Session {
    /// A tab that starts: reads the settings and the cold drop out of the quick
    /// store, else begins them with what is handed in. The writer must be no
    /// other's.
    #[must_use]
    pub fn start(
        shelf: &dyn Shelf,
        writer: Writer,
        (shop, cold_drop): (Shop, ColdDropPaper),
        at: Millis,
    ) -> Self {
        let keeper = Keeper::new();
        Self {
            shop: single(&keeper, shelf, SHOP, shop, at),
            cold_drop: single(&keeper, shelf, DROP, cold_drop, at),
            keeper,
            pen: Pen::new(writer),
            job: None,
            kept_drop: None,
            wanted: None,
        }
    }

    /// The open job.
    #[must_use]
    pub fn job(&self) -> Option<&Open<Job>> {
        self.job.as_ref().map(|sheet| &sheet.open)
    }

    /// The shop's settings.
    #[must_use]
    pub const fn shop(&self) -> &Open<Shop> {
        &self.shop.open
    }

    /// The cold drop in use, which has no name.
    #[must_use]
    pub const fn cold_drop(&self) -> &Open<ColdDropPaper> {
        &self.cold_drop.open
    }

    /// What keeps.
    #[must_use]
    pub const fn keeper(&self) -> &Keeper {
        &self.keeper
    }

    /// Names of documents that this tab wrote or took out since this was asked last.
    pub fn touched(&mut self) -> Vec<String> {
        self.keeper.touched()
    }

    /// How far what was typed here has come, all in all.
    #[must_use]
    pub fn keeping(&self) -> Keeping {
        self.keeper.worst()
    }

    /// Whether there is a step to take back, and one to do again.
    #[must_use]
    pub fn steps(&self, which: Which) -> (bool, bool) {
        let of = |history: &History| (history.can_undo(), history.can_redo());
        match which {
            Which::Job => self.job.as_ref().map_or((false, false), |s| of(&s.history)),
            Which::Shop => of(&self.shop.history),
            Which::Drop => of(&self.cold_drop.history),
            Which::KeptDrop => {
                let kept = self.kept_drop.as_ref();
                kept.map_or((false, false), |s| of(&s.history))
            }
        }
    }

    /// The history of the open job, for the time until the page is loaded anew.
    #[must_use]
    pub fn history(&self) -> Option<String> {
        self.job.as_ref().map(|sheet| sheet.history.text())
    }

    /// The open job as a document.
    #[must_use]
    pub fn document(&self) -> Option<Document> {
        let sheet = self.job.as_ref()?;
        Some(sheet.open.document(&sheet.name))
    }

    /// A job out of what is at hand here: open, under way, in the quick store.
    #[must_use]
    pub fn at_hand(&self, shelf: &dyn Shelf, id: &str) -> Option<Open<Job>> {
        if let Some(open) = self.job().filter(|open| open.id == id) {
            return Some(open.clone());
        }
        self.stored(shelf, &format!("{JOBS}{id}"), id)
    }

    /// A document out of what is under way or in the quick store.
    fn stored<P: Paper>(&self, shelf: &dyn Shelf, name: &str, id: &str) -> Option<Open<P>> {
        let copies = self.keeper.copies(shelf, name);
        Sheet::of_copies(name, id, &copies, "").map(|sheet| sheet.open)
    }

    /// Opens a job that is at hand; where only the durable store has it, it is
    /// asked for and opened when it comes ([`Told::fetched`]). Says whether it is
    /// open or may be.
    pub fn open_job(&mut self, shelf: &dyn Shelf, id: &str, history: &str) -> bool {
        let name = format!("{JOBS}{id}");
        self.leaves(Which::Job);
        self.keeper.forget_gone(&name);
        let copies = self.keeper.copies(shelf, &name);
        self.job = Sheet::of_copies(&name, id, &copies, history);
        self.wanted = None;
        self.job.is_some() || self.fetch(name, history)
    }

    /// Asks the durable store for what is to be opened; says whether it may have it.
    fn fetch(&mut self, name: String, history: &str) -> bool {
        let is_far = !self.keeper.has_looked() || self.keeper.heads().any(|h| h.name == name);
        if is_far {
            self.keeper.fetch(&name);
            self.wanted = Some((name, history.to_owned()));
        }
        is_far
    }

    /// Puts a document onto the desk that was fetched, with what has come to hand
    /// meanwhile.
    fn opened(&mut self, shelf: &dyn Shelf, (name, content): (&str, &str), told: &mut Told) {
        let Some((_, past)) = self.wanted.take_if(|(wanted, _)| *wanted == name) else {
            return;
        };
        let mut copies = vec![content.to_owned()];
        copies.extend(self.keeper.copies(shelf, name));
        let waits = self.keeper.waits(name);
        let which = if let Some(id) = name.strip_prefix(JOBS) {
            self.job = Sheet::of_copies(name, id, &copies, &past);
            told.job |= self.job.is_some();
            Which::Job
        } else if let Some(id) = name.strip_prefix(DROPS) {
            self.kept_drop = Sheet::of_copies(name, id, &copies, &past);
            told.cold_drop |= self.kept_drop.is_some();
            Which::KeptDrop
        } else {
            return;
        };
        let _ = on!(self, which, |sheet| {
            self.keeper.know(name, content);
            if waits {
                // It was made without the copy that came, and would go over it.
                sheet.save(shelf, &mut self.keeper);
            }
        });
    }

    /// Begins a job and keeps it.
    pub fn begin(&mut self, shelf: &dyn Shelf, id: String, job: Job, at: Millis) {
        let name = format!("{JOBS}{id}");
        let mut sheet = Sheet::fresh(name, Open::begun(id, job, at));
        sheet.save(shelf, &mut self.keeper);
        self.leaves(Which::Job);
        self.job = Some(sheet);
        self.wanted = None;
    }

    /// What is open gives way: that it was deleted is no matter any more.
    fn leaves(&mut self, which: Which) {
        let name = on!(self, which, |sheet| sheet.name.clone());
        self.keeper.forget_gone(&name.unwrap_or_default());
    }

    /// Closes the open job; what waits is written.
    pub fn close_job(&mut self, shelf: &dyn Shelf, at: Millis) -> Told {
        let told = self.flush(shelf, at);
        self.leaves(Which::Job);
        self.job = None;
        self.wanted = None;
        told
    }

    /// Changes a document; it is noted and kept with [`Session::flush`]. Says
    /// whether it may be changed.
    fn edit<P: Paper>(
        (keeper, pen): (&mut Keeper, &mut Pen),
        sheet: Option<&mut Sheet<P>>,
        change: impl FnOnce(&mut P),
        (stay, at): (Stay, Millis),
    ) -> bool {
        let Some(sheet) = sheet.filter(|sheet| !sheet.open.read_only) else {
            return false;
        };
        if stay == Stay::New {
            // What waits is a step of its own.
            sheet.note(pen, at);
        }
        change(&mut sheet.open.job);
        sheet.waits = sheet.waits.or(Some(stay));
        keeper.set_state(&sheet.name, Keeping::Writing);
        true
    }

    /// Changes the open job.
    pub fn edit_job(&mut self, change: impl FnOnce(&mut Job), stay: Stay, at: Millis) -> bool {
        let own = (&mut self.keeper, &mut self.pen);
        Self::edit(own, self.job.as_mut(), change, (stay, at))
    }

    /// Changes the shop's settings.
    pub fn edit_shop(&mut self, change: impl FnOnce(&mut Shop), stay: Stay, at: Millis) -> bool {
        let own = (&mut self.keeper, &mut self.pen);
        Self::edit(own, Some(&mut self.shop), change, (stay, at))
    }

    /// Notes and writes what waits.
    pub fn flush(&mut self, shelf: &dyn Shelf, at: Millis) -> Told {
        let mut told = Told::default();
        for which in Which::ALL {
            let _ = on!(self, which, |sheet| if sheet.is_to_save() {
                sheet.note(&mut self.pen, at);
                sheet.save(shelf, &mut self.keeper);
            });
        }
        self.tell(&mut told);
        told
    }

    /// Tells which documents show something else.
    fn tell(&mut self, told: &mut Told) {
        for which in Which::ALL {
            if on!(self, which, |sheet| sheet.shows()) == Some(true) {
                told.of(which);
            }
        }
    }

    /// Takes a step of the history back, or does it again; says where it was.
    pub fn step(
        &mut self,
        which: Which,
        is_redo: bool,
        shelf: &dyn Shelf,
        at: Millis,
    ) -> (Option<Spot>, Told) {
        let mut told = self.flush(shelf, at);
        let spot = on!(self, which, |sheet| {
            let may = !sheet.open.read_only;
            let spot = if may {
                sheet.step(is_redo, &mut self.pen, at)
            } else {
                None
            };
            if sheet.is_to_save() {
                sheet.save(shelf, &mut self.keeper);
            }
            spot
        });
        self.tell(&mut told);
        (spot.flatten(), told)
    }

    /// Chooses one of the values of a place that has more than one.
    pub fn choose(
        &mut self,
        which: Which,
        (path, value): (&str, usize),
        shelf: &dyn Shelf,
        at: Millis,
    ) -> Told {
        let mut told = self.flush(shelf, at);
        let _ = on!(self, which, |sheet| if !sheet.open.read_only {
            sheet.choose(&mut self.pen, at, (path, value));
            sheet.save(shelf, &mut self.keeper);
        });
        self.tell(&mut told);
        told
    }

    /// Puts what is open into the bin, or takes it out.
    pub fn bin(&mut self, which: Which, into: bool, shelf: &dyn Shelf, at: Millis) -> Told {
        let mut told = self.flush(shelf, at);
        let _ = on!(self, which, |sheet| {
            if !sheet.open.read_only && sheet.open.binned.is_some() != into {
                sheet.bin(into, &mut self.pen, at);
                sheet.save(shelf, &mut self.keeper);
            }
        });
        self.tell(&mut told);
        told
    }

    /// Keeps anew what is open and another tab took out of both stores.
    pub fn keep_anew(&mut self, which: Which, shelf: &dyn Shelf, at: Millis) -> Told {
        let mut told = self.flush(shelf, at);
        let _ = on!(self, which, |sheet| sheet.save(shelf, &mut self.keeper));
        told.listed = true;
        self.tell(&mut told);
        told
    }

    /// Takes documents out of both stores, for good.
    pub fn destroy(&mut self, names: Vec<String>) {
        self.keeper.destroy(names);
    }

    /// Another tab changed the quick store: under this key, or all of it.
    pub fn heard(&mut self, key: Option<&str>, shelf: &dyn Shelf, at: Millis) -> Told {
        let mut told = self.flush(shelf, at);
        told.listed = true;
        let name = match key {
            None => {
                self.keeper.look();
                told.others = true;
                None
            }
            Some(key) => match slots::name_of(key) {
                None => return told,
                Some(name) => Some(name.to_owned()),
            },
        };
        for which in Which::ALL {
            let _ = on!(self, which, |sheet| {
                if name.as_ref().is_some_and(|name| *name != sheet.name) {
                    // Another document.
                } else if slots::newest_content(shelf, &sheet.name).is_none() {
                    if sheet.was_kept() {
                        self.keeper.verify(&sheet.name);
                    }
                } else if matches!(sheet.take_in_newer(shelf), Met::Joined(false) | Met::Less) {
                    // What is here is not there.
                    sheet.save(shelf, &mut self.keeper);
                } else if self.keeper.state(&sheet.name) == Keeping::Gone {
                    // Deleted, and kept anew by another tab.
                    self.keeper.verify(&sheet.name);
                }
            });
        }
        self.tell(&mut told);
        if let Some(name) = name
            && slots::newest_content(shelf, &name).is_none()
        {
            // Gone, or moved to where there is room.
            self.keeper.look();
        }
        told
    }

    /// The person comes back to the tab: what is open may have been taken out
    /// without a word, what was refused may find room.
    pub fn comes_back(&mut self, shelf: &dyn Shelf, at: Millis) -> Told {
        let told = self.heard(None, shelf, at);
        self.keeper.try_again(shelf);
        told
    }

    /// What was refused is tried once more.
    pub fn try_again(&mut self, shelf: &dyn Shelf) {
        self.keeper.try_again(shelf);
    }

    /// The durable store has not answered for a while.
    pub fn late(&mut self) {
        self.keeper.late();
    }

    /// What the durable store is to be asked next.
    pub fn next(&mut self, shelf: &dyn Shelf) -> Option<Ask> {
        self.keeper.next(shelf)
    }
}

/// A document of which there is one: out of the quick store, else as it begins.
fn single<P: Paper>(
    keeper: &Keeper,
    shelf: &dyn Shelf,
    name: &str,
    fresh: P,
    at: Millis,
) -> Sheet<P> {
    let copies = keeper.copies(shelf, name);
    Sheet::of_copies(name, "", &copies, "")
        .unwrap_or_else(|| Sheet::fresh(name.to_owned(), Open::begun(String::new(), fresh, at)))
}

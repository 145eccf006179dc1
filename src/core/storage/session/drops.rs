//! The cold drops of a tab: the one in use, and one that is kept under a name.

use super::{Session, Told, Which};
use crate::document::ColdDropPaper;
use crate::document::edit::Stay;
use crate::job::Millis;
use crate::storage::Shelf;
use crate::storage::open::Open;
use crate::storage::sheet::Sheet;
use crate::storage::slots::DROPS;

impl Session {
    /// The cold drop at hand: the kept one that is open, else the one in use.
    #[must_use]
    pub fn drop_at_hand(&self) -> (Which, &Open<ColdDropPaper>) {
        match &self.kept_drop {
            Some(kept) => (Which::KeptDrop, &kept.open),
            None => (Which::Drop, &self.cold_drop.open),
        }
    }

    /// When the cold drop in use was changed last; nothing where nobody ever
    /// changed it.
    #[must_use]
    pub fn drop_used(&self) -> Option<Millis> {
        let sheet = &self.cold_drop;
        sheet.was_kept().then_some(sheet.open.changed)
    }

    /// A cold drop that is kept, out of what is at hand here: open, under way, in
    /// the quick store.
    #[must_use]
    pub fn kept_drop_at_hand(&self, shelf: &dyn Shelf, id: &str) -> Option<Open<ColdDropPaper>> {
        let open = self.kept_drop.as_ref().map(|sheet| &sheet.open);
        if let Some(open) = open.filter(|open| open.id == id) {
            return Some(open.clone());
        }
        self.stored(shelf, &format!("{DROPS}{id}"), id)
    }

    /// Opens a cold drop that is kept and at hand, as [`Session::open_job`] does a
    /// job.
    pub fn open_drop(&mut self, shelf: &dyn Shelf, id: &str) -> bool {
        let name = format!("{DROPS}{id}");
        self.leaves(Which::KeptDrop);
        self.keeper.forget_gone(&name);
        let copies = self.keeper.copies(shelf, &name);
        self.kept_drop = Sheet::of_copies(&name, id, &copies, "");
        self.wanted = None;
        self.kept_drop.is_some() || self.fetch(name, "")
    }

    /// Closes the kept cold drop that is open; what waits is written.
    pub fn close_drop(&mut self, shelf: &dyn Shelf, at: Millis) -> Told {
        let mut told = self.flush(shelf, at);
        self.leaves(Which::KeptDrop);
        told.cold_drop |= self.kept_drop.take().is_some();
        told
    }

    /// Keeps a cold drop under a key of its own, and opens it.
    pub fn begin_drop(&mut self, shelf: &dyn Shelf, id: String, paper: ColdDropPaper, at: Millis) {
        let name = format!("{DROPS}{id}");
        let mut sheet = Sheet::fresh(name, Open::begun(id, paper, at));
        sheet.save(shelf, &mut self.keeper);
        self.leaves(Which::KeptDrop);
        self.kept_drop = Some(sheet);
        self.wanted = None;
    }

    /// Changes the cold drop at hand.
    pub fn edit_drop(
        &mut self,
        change: impl FnOnce(&mut ColdDropPaper),
        stay: Stay,
        at: Millis,
    ) -> bool {
        let own = (&mut self.keeper, &mut self.pen);
        let sheet = self.kept_drop.as_mut().unwrap_or(&mut self.cold_drop);
        Self::edit(own, Some(sheet), change, (stay, at))
    }
}

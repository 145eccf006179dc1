//! What comes from elsewhere: out of a file, out of the shop's folder.

use super::{Session, Told, Which};
use crate::document::grave::Grave;
use crate::document::merge::merge;
use crate::document::slot::read_slot;
use crate::document::{Body, Document, Restored, restore, write};
use crate::job::Millis;
use crate::storage::open::row_of;
use crate::storage::reconcile::{is_newer, readable_content};
use crate::storage::sheet::Met;
use crate::storage::slots::{self, DROP, DROPS, JOBS, SHOP, id_in};
use crate::storage::{Shelf, StoreFault};

/// Prefix of what is remembered of documents that were taken out for good.
const GONE: &str = "coldseat/gone/";

/// What came of a copy out of the shop's folder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Took {
    /// All of it was here.
    Same,
    /// It was not here, or it had something that was not.
    Came,
    /// It was taken out here for good, and nobody has changed it since.
    Gone,
    /// A later version of the page wrote it, or the one here.
    Newer,
    /// It does not read, or it is another document than it says.
    Unreadable,
}

impl Session {
    /// Takes a document in that came with a file: joined with what is here, or
    /// new. Another copy that only the durable store has comes back from there
    /// and is joined as well.
    pub fn take(&mut self, id: &str, document: &Document, shelf: &dyn Shelf, at: Millis) -> Told {
        self.takes(id, document, shelf, at).1
    }

    /// Takes a copy in that another device put into the shop's folder under the
    /// name of a document, as a slot.
    pub fn take_copy(
        &mut self,
        name: &str,
        slot: &str,
        shelf: &dyn Shelf,
        at: Millis,
    ) -> (Took, Told) {
        let restored = read_slot(slot).map(|slot| restore(&slot.text));
        let document = match restored {
            Some(Restored::Valid(document) | Restored::Repaired(document, _)) => document,
            Some(Restored::Newer { .. }) => return (Took::Newer, Told::default()),
            Some(Restored::Unreadable(_)) | None => return (Took::Unreadable, Told::default()),
        };
        let is_it = match &document.body {
            Body::Job(_) => name.starts_with(JOBS),
            Body::Drop(_) => name.starts_with(DROPS),
            Body::Shop(_) => name == SHOP,
        };
        if !is_it || document.id.as_deref() != id_in(name) {
            return (Took::Unreadable, Told::default());
        }
        let is_here = Which::ALL
            .into_iter()
            .any(|which| on!(self, which, |sheet| sheet.name == name) == Some(true))
            || self.keeper.heads().any(|head| head.name == name)
            || !self.keeper.copies(shelf, name).is_empty();
        if !is_here && grave(shelf, name).is_some_and(|grave| grave.covers(&document)) {
            return (Took::Gone, Told::default());
        }
        self.takes(id_in(name).unwrap_or_default(), &document, shelf, at)
    }

    /// Remembers a document that is about to be taken out for good, so that an older
    /// copy in the shop's folder does not bring it back.
    ///
    /// # Errors
    /// Where the quick store refuses.
    pub fn bury(&self, shelf: &dyn Shelf, name: &str, slot: &str) -> Result<(), StoreFault> {
        let restored = read_slot(slot).map(|slot| restore(&slot.text));
        let Some(Restored::Valid(document) | Restored::Repaired(document, _)) = restored else {
            return Ok(());
        };
        let mut gone = Grave::of(&document);
        if let Some(before) = grave(shelf, name) {
            gone = gone.with(&before);
        }
        shelf.set(&format!("{GONE}{name}"), &gone.text())
    }

    /// Joins a document with what is here; says what came of it.
    fn takes(
        &mut self,
        id: &str,
        document: &Document,
        shelf: &dyn Shelf,
        at: Millis,
    ) -> (Took, Told) {
        let mut told = self.flush(shelf, at);
        let (name, which) = match &document.body {
            Body::Job(_) => (format!("{JOBS}{id}"), Which::Job),
            Body::Shop(_) => (SHOP.to_owned(), Which::Shop),
            Body::Drop(_) if document.id.is_none() => (DROP.to_owned(), Which::Drop),
            Body::Drop(_) => (format!("{DROPS}{id}"), Which::KeptDrop),
        };
        let mut document = document.clone();
        document.id = id_in(&name).map(str::to_owned);
        let met = on!(self, which, |sheet| {
            if sheet.name == name {
                // A slot of it is made only where it is open: most are not.
                let slot = slots::Slot {
                    sequence: 0,
                    row: Vec::new(),
                    text: write(&document),
                };
                let met = sheet.meet(&crate::document::slot::write_slot(&slot));
                if matches!(met, Met::Joined(_)) {
                    sheet.save(shelf, &mut self.keeper);
                }
                Some(met)
            } else {
                None
            }
        });
        told.listed = true;
        if let Some(met) = met.flatten() {
            self.tell(&mut told);
            let took = match met {
                Met::Same | Met::Less => Took::Same,
                Met::Joined(_) => Took::Came,
                Met::Unreadable => Took::Newer,
            };
            return (took, told);
        }
        told.others = true;
        let copies = self.keeper.copies(shelf, &name);
        if copies.iter().any(|content| is_newer(content)) {
            told.listed = false;
            return (Took::Newer, told);
        }
        let here = copies.iter().filter_map(|copy| readable_content(copy));
        let here = here.reduce(|(a, of_a), (b, of_b)| (merge(&a, &b).unwrap_or(a), of_a.max(of_b)));
        let (joined, above) = match here {
            None => (document, 0),
            Some((here, above)) => match merge(&here, &document) {
                // It has all of it already.
                Some(joined) if copies.len() == 1 && joined == here => return (Took::Same, told),
                joined => (joined.unwrap_or(here), above),
            },
        };
        let row = row_of(&joined);
        self.keeper
            .keep(shelf, &name, (&write(&joined), row), above);
        (Took::Came, told)
    }
}

fn grave(shelf: &dyn Shelf, name: &str) -> Option<Grave> {
    let text = shelf.get(&format!("{GONE}{name}")).ok()??;
    Grave::from_text(&text)
}

//! Two slots per document. A write goes to the slot that does not hold the
//! newest whole text, is read back, and counts from then on, because its
//! sequence number is higher: a write torn by a crash leaves the other slot.
//!
//! What a slot looks like is told by [`crate::document::slot`].
//! Content that is damaged is never overwritten: it is first copied to a key of
//! its own under `coldseat/kept/`.

use super::{Shelf, StoreFault, is_id};
pub use crate::document::slot::Slot;
use crate::document::slot::{Peek, peek_slot, read_slot, write_slot};
use crate::numerics::order::each_once;

/// Prefix of all keys of jobs.
pub const JOBS: &str = "coldseat/job/";
/// Name of the shop's settings.
pub const SHOP: &str = "coldseat/shop";
/// Name of the cold drop in use.
pub const DROP: &str = "coldseat/drop";
/// Prefix of the names of cold drops that are kept.
pub const DROPS: &str = "coldseat/drops/";
/// Prefix of what could not be read.
pub const KEPT: &str = "coldseat/kept/";

const SLOTS: [&str; 2] = ["/a", "/b"];

/// What is under a name.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Loaded {
    /// Whole slots, newest first.
    pub whole: Vec<Slot>,
    /// Keys and contents of slots that are damaged.
    pub damaged: Vec<(String, String)>,
}

/// What is under a name.
///
/// # Errors
/// Where the shelf refuses.
pub fn load(shelf: &dyn Shelf, name: &str) -> Result<Loaded, StoreFault> {
    let mut loaded = Loaded::default();
    for (key, content) in contents(shelf, name)? {
        match read_slot(&content) {
            Some(slot) => {
                // The newest first.
                let at = loaded
                    .whole
                    .partition_point(|s| s.sequence >= slot.sequence);
                loaded.whole.insert(at, slot);
            }
            None => loaded.damaged.push((key, content)),
        }
    }
    Ok(loaded)
}

/// Keys and contents of the slots of a name.
fn contents(shelf: &dyn Shelf, name: &str) -> Result<Vec<(String, String)>, StoreFault> {
    let mut found = Vec::new();
    for suffix in SLOTS {
        let key = format!("{name}{suffix}");
        if let Some(content) = shelf.get(&key)? {
            found.push((key, content));
        }
    }
    Ok(found)
}

/// The newest whole slot of a name, not unpacked; `None` where a slot is
/// damaged, so that the name is looked into with [`load`].
#[must_use]
pub fn peek(shelf: &dyn Shelf, name: &str) -> Option<Peek> {
    let peeks: Option<Vec<Peek>> = contents(shelf, name)
        .ok()?
        .iter()
        .map(|(_, content)| peek_slot(content))
        .collect();
    peeks?.into_iter().max_by_key(|peek| peek.sequence)
}

/// A text with its row as the next slot of a name: its key, its content.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Next {
    /// The slot that does not hold the newest.
    pub key: String,
    /// What to write there.
    pub content: String,
    /// Its sequence number.
    pub sequence: u64,
}

/// Plans the next write under a name; its sequence number is above every whole
/// slot's and above `above`, the one the text was made from.
///
/// # Errors
/// Where the shelf refuses.
pub fn next(
    shelf: &dyn Shelf,
    name: &str,
    text: &str,
    row: Vec<u8>,
    above: u64,
) -> Result<Next, StoreFault> {
    let newest = newest(shelf, name)?;
    let sequence = newest
        .map_or(above, |(_, sequence)| sequence.max(above))
        .saturating_add(1);
    Ok(Next {
        key: format!("{name}{}", SLOTS[newest.map_or(0, |(index, _)| 1 - index)]),
        content: write_slot(&Slot {
            sequence,
            row,
            text: text.to_owned(),
        }),
        sequence,
    })
}

/// Writes what was planned and reads it back.
///
/// # Errors
/// [`StoreFault::Full`] where it did not arrive whole; the last whole text is
/// still there then.
pub fn write(shelf: &dyn Shelf, next: &Next) -> Result<(), StoreFault> {
    if let Some(content) = shelf.get(&next.key)?
        && peek_slot(&content).is_none()
    {
        keep(shelf, &content)?;
    }
    shelf.set(&next.key, &next.content)?;
    if shelf.get(&next.key)?.as_deref() == Some(next.content.as_str()) {
        Ok(())
    } else {
        Err(StoreFault::Full)
    }
}

/// Writes a slot as it stands, where it is newer than what is there.
///
/// # Errors
/// As [`fn@write`].
pub fn write_newer(shelf: &dyn Shelf, name: &str, content: &str) -> Result<(), StoreFault> {
    let Some(sequence) = peek_slot(content).map(|peek| peek.sequence) else {
        return Ok(());
    };
    let newest = newest(shelf, name)?;
    if newest.is_some_and(|(_, there)| there >= sequence) {
        return Ok(());
    }
    let next = Next {
        key: format!("{name}{}", SLOTS[newest.map_or(0, |(index, _)| 1 - index)]),
        content: content.to_owned(),
        sequence,
    };
    write(shelf, &next)
}

/// Slot and sequence number of the newest whole slot.
fn newest(shelf: &dyn Shelf, name: &str) -> Result<Option<(usize, u64)>, StoreFault> {
    let mut newest: Option<(usize, u64)> = None;
    for (index, suffix) in SLOTS.into_iter().enumerate() {
        let content = shelf.get(&format!("{name}{suffix}"))?;
        if let Some(peek) = content.as_deref().and_then(peek_slot)
            && newest.is_none_or(|(_, best)| peek.sequence > best)
        {
            newest = Some((index, peek.sequence));
        }
    }
    Ok(newest)
}

/// Content of the newest whole slot of a name.
#[must_use]
pub fn newest_content(shelf: &dyn Shelf, name: &str) -> Option<String> {
    let (index, _) = newest(shelf, name).ok()??;
    shelf.get(&format!("{name}{}", SLOTS[index])).ok()?
}

/// After the second store has a document: the older slot has done its duty.
pub fn settle(shelf: &dyn Shelf, name: &str) {
    let Ok(Some((newest, sequence))) = newest(shelf, name) else {
        return;
    };
    let older = format!("{name}{}", SLOTS[1 - newest]);
    // Another tab may have written there in the meantime.
    if let Ok(Some(content)) = shelf.get(&older)
        && peek_slot(&content).is_some_and(|peek| peek.sequence < sequence)
    {
        shelf.remove(&older);
    }
}

/// Takes the whole slots of a name out, where the document is to be gone.
pub fn leave(shelf: &dyn Shelf, name: &str) {
    leave_below(shelf, name, u64::MAX);
}

/// Takes the whole slots of a name out that are older than a sequence number,
/// where the second store has a newer one.
pub fn leave_below(shelf: &dyn Shelf, name: &str, sequence: u64) {
    for (key, content) in contents(shelf, name).unwrap_or_default() {
        if peek_slot(&content).is_some_and(|peek| peek.sequence < sequence) {
            shelf.remove(&key);
        }
    }
}

/// Copies damaged content to a key of its own, once.
///
/// # Errors
/// Where the shelf refuses.
pub fn keep(shelf: &dyn Shelf, content: &str) -> Result<(), StoreFault> {
    let key = format!("{KEPT}{:08x}", crc32fast::hash(content.as_bytes()));
    if shelf.get(&key)?.is_none() {
        shelf.set(&key, content)?;
    }
    Ok(())
}

/// The name of the document whose slot is under a key.
#[must_use]
pub fn name_of(key: &str) -> Option<&str> {
    let name = SLOTS.iter().find_map(|suffix| key.strip_suffix(suffix))?;
    let is_one = name == SHOP || name == DROP;
    (is_one || id_in(name).is_some()).then_some(name)
}

/// The key of a document in its name, where there are many of its kind.
#[must_use]
pub fn id_in(name: &str) -> Option<&str> {
    let mut kinds = [JOBS, DROPS].into_iter();
    kinds
        .find_map(|kind| name.strip_prefix(kind))
        .filter(|id| is_id(id))
}

/// Names of all documents, found by looking at every key.
#[must_use]
pub fn names(shelf: &dyn Shelf) -> Vec<String> {
    let keys = shelf.keys();
    let names = keys.iter().filter_map(|key| name_of(key));
    each_once(names.map(str::to_owned).collect())
}

/// What was kept because it could not be read.
#[must_use]
pub fn kept(shelf: &dyn Shelf) -> Vec<(String, String)> {
    shelf
        .keys()
        .into_iter()
        .filter(|key| key.starts_with(KEPT))
        .filter_map(|key| {
            let content = shelf.get(&key).ok()??;
            Some((key, content))
        })
        .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use std::cell::{Cell, RefCell};
    use std::collections::BTreeMap;

    #[derive(Default)]
    struct Memory {
        texts: RefCell<BTreeMap<String, String>>,
        /// Letters a write may still take; then it is cut off.
        room: Cell<Option<usize>>,
    }

    impl Shelf for Memory {
        fn get(&self, key: &str) -> Result<Option<String>, StoreFault> {
            Ok(self.texts.borrow().get(key).cloned())
        }
        fn set(&self, key: &str, text: &str) -> Result<(), StoreFault> {
            let room = self.room.get().unwrap_or(usize::MAX);
            let cut = text.chars().take(room).collect();
            self.texts.borrow_mut().insert(key.to_owned(), cut);
            Ok(())
        }
        fn remove(&self, key: &str) {
            self.texts.borrow_mut().remove(key);
        }
        fn keys(&self) -> Vec<String> {
            self.texts.borrow().keys().cloned().collect()
        }
    }

    const NAME: &str = "coldseat/job/a1";

    fn save(shelf: &Memory, text: &str) -> Result<(), StoreFault> {
        write(shelf, &next(shelf, NAME, text, Vec::new(), 0)?)
    }

    #[test]
    fn the_newest_whole_text_counts() {
        let shelf = Memory::default();
        for text in ["one", "two", "three"] {
            save(&shelf, text).unwrap();
            assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, text);
        }
        assert_eq!(shelf.keys().len(), 2);
        assert_eq!(names(&shelf), [NAME]);
        assert_eq!(id_in(NAME), Some("a1"));
    }

    #[test]
    fn a_torn_write_leaves_the_text_before_it() {
        let mut torn = 0;
        for room in 0..90 {
            let shelf = Memory::default();
            save(&shelf, "one").unwrap();
            save(&shelf, "two").unwrap();
            shelf.room.set(Some(room));
            let result = save(&shelf, "three");
            shelf.room.set(None);
            let left = &load(&shelf, NAME).unwrap().whole[0].text;
            let wanted = if result.is_err() { "two" } else { "three" };
            assert_eq!(left, wanted, "{room}");
            torn += usize::from(result.is_err());
        }
        assert!((5..90).contains(&torn), "{torn} of 90 were torn");
    }

    #[test]
    fn damaged_content_is_kept_before_its_slot_is_used() {
        let shelf = Memory::default();
        shelf.set("coldseat/job/a1/a", "scribble").unwrap();
        assert_eq!(load(&shelf, NAME).unwrap().damaged.len(), 1);
        save(&shelf, "one").unwrap();
        save(&shelf, "two").unwrap();
        let kept = kept(&shelf);
        assert_eq!(kept.len(), 1);
        assert_eq!(kept[0].1, "scribble");
        assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, "two");
    }

    #[test]
    fn one_slot_is_left_when_the_second_store_has_it() {
        let shelf = Memory::default();
        for text in ["one", "two", "three"] {
            save(&shelf, text).unwrap();
            settle(&shelf, NAME);
            assert_eq!(shelf.keys().len(), 1);
            assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, text);
        }
        leave(&shelf, NAME);
        assert!(shelf.keys().is_empty());
        // What is damaged stays.
        shelf.set("coldseat/job/a1/a", "scribble").unwrap();
        leave(&shelf, NAME);
        assert_eq!(shelf.keys().len(), 1);
    }

    #[test]
    fn a_newer_slot_is_taken_and_an_older_is_not() {
        let shelf = Memory::default();
        save(&shelf, "one").unwrap();
        let newer = next(&shelf, NAME, "far on", Vec::new(), 9).unwrap();
        assert_eq!(newer.sequence, 10);
        save(&shelf, "two").unwrap();
        write_newer(&shelf, NAME, &newer.content).unwrap();
        assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, "far on");
        let older = write_slot(&Slot {
            sequence: 3,
            row: Vec::new(),
            text: "back".to_owned(),
        });
        write_newer(&shelf, NAME, &older).unwrap();
        assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, "far on");
    }
}

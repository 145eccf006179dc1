//! Two slots per document. A write goes to the slot that does not hold the
//! newest whole text, is read back, and counts from then on, because its
//! sequence number is higher: a write torn by a crash leaves the other slot.
//!
//! A slot is one line `1 <sequence> <length> <crc32>` and the text. Content
//! that is damaged is never overwritten: it is first copied to a key of its
//! own under `coldseat/kept/`.

use super::{Shelf, ShelfFault};

/// Prefix of all keys of jobs.
pub const JOBS: &str = "coldseat/job/";
/// Name of the shop's settings.
pub const SHOP: &str = "coldseat/shop";
/// Prefix of what could not be read.
pub const KEPT: &str = "coldseat/kept/";

const SLOTS: [&str; 2] = ["/a", "/b"];

/// A slot's content.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slot {
    /// Its sequence number.
    pub sequence: u64,
    /// Its text.
    pub text: String,
}

/// What is under a name.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Loaded {
    /// Whole slots, newest first.
    pub whole: Vec<Slot>,
    /// Keys and contents of slots that are damaged.
    pub damaged: Vec<(String, String)>,
}

/// Writes a slot.
#[must_use]
pub fn pack(slot: &Slot) -> String {
    let (sequence, text) = (slot.sequence, &slot.text);
    let crc = crc32fast::hash(text.as_bytes());
    format!("1 {sequence} {} {crc:08x}\n{text}", text.len())
}

/// Reads a slot; `None` where it is not whole.
#[must_use]
pub fn unpack(content: &str) -> Option<Slot> {
    let (head, text) = content.split_once('\n')?;
    let mut parts = head.split(' ');
    let schema = parts.next()?;
    let sequence = parts.next()?.parse().ok()?;
    let length: usize = parts.next()?.parse().ok()?;
    let crc = u32::from_str_radix(parts.next()?, 16).ok()?;
    let whole = schema == "1"
        && parts.next().is_none()
        && length == text.len()
        && crc == crc32fast::hash(text.as_bytes());
    whole.then(|| Slot {
        sequence,
        text: text.to_owned(),
    })
}

/// What is under a name.
///
/// # Errors
/// Where the shelf refuses.
pub fn load(shelf: &dyn Shelf, name: &str) -> Result<Loaded, ShelfFault> {
    let mut loaded = Loaded::default();
    for suffix in SLOTS {
        let key = format!("{name}{suffix}");
        if let Some(content) = shelf.get(&key)? {
            match unpack(&content) {
                Some(slot) => loaded.whole.push(slot),
                None => loaded.damaged.push((key, content)),
            }
        }
    }
    loaded
        .whole
        .sort_by_key(|slot| core::cmp::Reverse(slot.sequence));
    Ok(loaded)
}

/// Writes a text under a name and reads it back.
///
/// # Errors
/// [`ShelfFault::Full`] where it did not arrive whole; the last whole text is
/// still there then.
pub fn save(shelf: &dyn Shelf, name: &str, text: &str) -> Result<(), ShelfFault> {
    let mut newest: Option<(usize, u64)> = None;
    let mut contents = [None, None];
    for (index, suffix) in SLOTS.into_iter().enumerate() {
        let content = shelf.get(&format!("{name}{suffix}"))?;
        let sequence = content.as_deref().and_then(unpack).map(|s| s.sequence);
        if let Some(sequence) = sequence
            && newest.is_none_or(|(_, best)| sequence > best)
        {
            newest = Some((index, sequence));
        }
        contents[index] = content.map(|c| (c, sequence.is_some()));
    }
    let target = newest.map_or(0, |(index, _)| 1 - index);
    if let Some((content, false)) = &contents[target] {
        keep(shelf, content)?;
    }
    let packed = pack(&Slot {
        sequence: newest.map_or(1, |(_, sequence)| sequence.saturating_add(1)),
        text: text.to_owned(),
    });
    let key = format!("{name}{}", SLOTS[target]);
    shelf.set(&key, &packed)?;
    if shelf.get(&key)?.as_deref() == Some(packed.as_str()) {
        Ok(())
    } else {
        Err(ShelfFault::Full)
    }
}

/// Copies damaged content to a key of its own, once.
fn keep(shelf: &dyn Shelf, content: &str) -> Result<(), ShelfFault> {
    let key = format!("{KEPT}{:08x}", crc32fast::hash(content.as_bytes()));
    if shelf.get(&key)?.is_none() {
        shelf.set(&key, content)?;
    }
    Ok(())
}

/// Names of all jobs, found by looking at every key.
#[must_use]
pub fn job_ids(shelf: &dyn Shelf) -> Vec<String> {
    let mut ids: Vec<String> = shelf
        .keys()
        .iter()
        .filter_map(|key| {
            let id = key.strip_prefix(JOBS)?;
            let id = SLOTS.iter().find_map(|suffix| id.strip_suffix(suffix))?;
            crate::route::is_id(id).then(|| id.to_owned())
        })
        .collect();
    ids.sort();
    ids.dedup();
    ids
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
        /// Bytes a write may still take; then it is cut off.
        room: Cell<Option<usize>>,
    }

    impl Shelf for Memory {
        fn get(&self, key: &str) -> Result<Option<String>, ShelfFault> {
            Ok(self.texts.borrow().get(key).cloned())
        }
        fn set(&self, key: &str, text: &str) -> Result<(), ShelfFault> {
            let end = self.room.get().unwrap_or(text.len()).min(text.len());
            self.texts
                .borrow_mut()
                .insert(key.to_owned(), text[..end].to_owned());
            Ok(())
        }
        fn keys(&self) -> Vec<String> {
            self.texts.borrow().keys().cloned().collect()
        }
    }

    const NAME: &str = "coldseat/job/a1";

    #[test]
    fn the_newest_whole_text_counts() {
        let shelf = Memory::default();
        for text in ["one", "two", "three"] {
            save(&shelf, NAME, text).unwrap();
            assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, text);
        }
        assert_eq!(shelf.keys().len(), 2);
        assert_eq!(job_ids(&shelf), ["a1"]);
    }

    #[test]
    fn a_torn_write_leaves_the_text_before_it() {
        for room in 0..20 {
            let shelf = Memory::default();
            save(&shelf, NAME, "one").unwrap();
            save(&shelf, NAME, "two").unwrap();
            shelf.room.set(Some(room));
            let result = save(&shelf, NAME, "three");
            shelf.room.set(None);
            if result.is_err() {
                assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, "two", "{room}");
            }
        }
    }

    #[test]
    fn damaged_content_is_kept_before_its_slot_is_used() {
        let shelf = Memory::default();
        shelf.set("coldseat/job/a1/a", "scribble").unwrap();
        assert_eq!(load(&shelf, NAME).unwrap().damaged.len(), 1);
        save(&shelf, NAME, "one").unwrap();
        save(&shelf, NAME, "two").unwrap();
        let kept = kept(&shelf);
        assert_eq!(kept.len(), 1);
        assert_eq!(kept[0].1, "scribble");
        assert_eq!(load(&shelf, NAME).unwrap().whole[0].text, "two");
    }

    #[test]
    fn what_is_not_a_slot_is_not_read_as_one() {
        for content in ["", "1 1 3", "1 1 3 00000000\nabc", "2 1 3 352441c2\nabc"] {
            assert_eq!(unpack(content), None, "{content}");
        }
        let slot = Slot {
            sequence: 7,
            text: "abc\ndef".into(),
        };
        assert_eq!(unpack(&pack(&slot)), Some(slot));
    }
}

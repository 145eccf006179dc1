//! What a document remembers so that two copies of it can be joined: who wrote
//! each value, what a copy has seen of each writer, values that stand beside the
//! one shown because two people typed different ones.
//!
//! Everything is told by the path of a value in the document
//! (`entries/3/bore_d/0`, `steps/engine/caps`, `customer`). The rules of joining
//! are the document's ([`crate::document::merge`]).
//!
//! Values of documents of version 1 have no writer: they are known by their
//! content, and replaced ones by a mark.

use crate::job::model::entries::Entries;
use crate::job::model::place::{Millis, Place};
use crate::numerics::order::in_order;
use crate::quantity::parse::Unit;
use litemap::LiteMap;
use serde_json::Value;

/// Who wrote: a tab of a device, anew at every start of the page. 20 bits say
/// which device, 28 which start of a tab, 16 count on where its clock was set
/// back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Writer(u64);

impl Writer {
    /// The writer of a tab; of both numbers the lower bits count, 20 and 28.
    #[must_use]
    pub const fn of(device: u32, tab: u32) -> Self {
        let (device, tab) = (device as u64 & 0xf_ffff, tab as u64 & 0xfff_ffff);
        Self(device << 44 | tab << 16)
    }

    /// The same tab, its times begun anew; `None` after 65,536 of them.
    #[must_use]
    pub const fn again(self) -> Option<Self> {
        if self.0 & 0xffff == 0xffff {
            None
        } else {
            Some(Self(self.0 + 1))
        }
    }

    /// Which device.
    #[must_use]
    pub const fn device(self) -> u32 {
        (self.0 >> 44) as u32
    }

    /// As it stands in documents: 16 hexadecimal digits.
    #[must_use]
    pub fn name(self) -> String {
        format!("{:016x}", self.0)
    }

    /// Out of a document.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        let plain = name.len() == 16 && name.bytes().all(|b| b"0123456789abcdef".contains(&b));
        u64::from_str_radix(name, 16)
            .ok()
            .filter(|_| plain)
            .map(Self)
    }
}

/// A value that stands beside the one shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Rival {
    /// As it stands in the document.
    pub value: Value,
    /// When it was set, where the value itself does not say; else 0.
    pub at: Millis,
    /// Who set it; `None` in version 1.
    pub by: Option<Writer>,
}

/// Marks of values, in order, each once.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks(Vec<u32>);

impl Marks {
    /// Adds one.
    pub fn insert(&mut self, mark: u32) {
        if let Err(at) = self.0.binary_search(&mark) {
            self.0.insert(at, mark);
        }
    }

    /// Whether it is among them.
    #[must_use]
    pub fn contains(&self, mark: u32) -> bool {
        self.0.binary_search(&mark).is_ok()
    }

    /// All.
    #[must_use]
    pub fn as_slice(&self) -> &[u32] {
        &self.0
    }
}

impl FromIterator<u32> for Marks {
    fn from_iter<I: IntoIterator<Item = u32>>(marks: I) -> Self {
        let mut marks = in_order(marks.into_iter().collect(), u32::cmp);
        marks.dedup();
        Self(marks)
    }
}

/// From when to when a writer wrote, as far as a copy has seen it: all it wrote
/// into this document up to the last moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// Its first moment.
    pub first: Millis,
    /// Its last moment.
    pub last: Millis,
}

/// The ledger.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ledger {
    /// Values beside the one shown, until one is chosen.
    pub rivals: LiteMap<String, Vec<Rival>>,
    /// Marks (CRC-32) of values without a writer that were replaced knowingly: a
    /// copy that still has one of them is not asked about it.
    pub replaced: LiteMap<String, Marks>,
    /// When a value was set that does not say so itself.
    pub stamps: LiteMap<String, Millis>,
    /// Who set the value shown.
    pub by: LiteMap<String, Writer>,
    /// What this copy has seen.
    pub seen: LiteMap<Writer, Span>,
}

/// A place with two values that were typed in ignorance of each other.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Disputed {
    /// Where.
    pub place: Place,
    /// The texts typed there with their units, the one shown first.
    pub values: Vec<(String, Unit)>,
}

impl Ledger {
    /// Whether there is nothing in it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.rivals.is_empty()
            && self.replaced.is_empty()
            && self.stamps.is_empty()
            && self.by.is_empty()
            && self.seen.is_empty()
    }

    /// Whether this copy has seen what a writer set at a moment.
    #[must_use]
    pub fn has_seen(&self, writer: Writer, at: Millis) -> bool {
        self.seen.get(&writer).is_some_and(|span| at <= span.last)
    }

    /// Notes that a moment of a writer was seen.
    pub fn see(&mut self, writer: Writer, span: Span) {
        let known = self.seen.get(&writer).copied().unwrap_or(span);
        self.seen.insert(
            writer,
            Span {
                first: known.first.min(span.first),
                last: known.last.max(span.last),
            },
        );
    }

    /// Which places of the entries are in dispute, and between which values;
    /// costs nothing where there is none. Where both typed the same, there is
    /// none.
    #[must_use]
    pub fn disputed(&self, entries: &Entries) -> Vec<Disputed> {
        let places = self.rivals.iter();
        places
            .filter_map(|(path, beside)| between(Place::from_path(path)?, beside, entries))
            .collect()
    }

    /// Whether a place of the entries is in dispute.
    #[must_use]
    pub fn is_disputed(&self, place: Place, entries: &Entries) -> bool {
        let beside = self.rivals.get(&place.path());
        beside.is_some_and(|beside| between(place, beside, entries).is_some())
    }
}

/// Between which values a place is in dispute, where it is.
fn between(place: Place, beside: &[Rival], entries: &Entries) -> Option<Disputed> {
    let shown = entries.get(place)?;
    let mut values = vec![(shown.text.clone(), shown.unit)];
    for other in beside.iter().filter_map(|rival| typed(&rival.value)) {
        if !values.contains(&other) {
            values.push(other);
        }
    }
    (values.len() > 1).then_some(Disputed { place, values })
}

/// Text and unit of a reading as it stands in a document.
fn typed(value: &Value) -> Option<(String, Unit)> {
    let parts = value.as_array()?;
    let unit = serde_json::from_value(parts.get(1)?.clone()).ok()?;
    Some((parts.first()?.as_str()?.to_owned(), unit))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::model::entries::Entry;
    use crate::job::model::field::Field;

    #[test]
    fn a_writer_comes_back_and_nonsense_is_none() {
        let writer = Writer::of(0xabcde, 7).again().unwrap();
        assert_eq!(Writer::from_name(&writer.name()), Some(writer));
        assert_eq!(writer.device(), 0xabcde);
        for name in ["", "abc", "+00000000000000f", "00000000000000FF"] {
            assert_eq!(Writer::from_name(name), None, "{name}");
        }
    }

    #[test]
    fn disputes_name_their_place_and_values() {
        let place = Place::of_cylinder(3, Field::BoreD, 0);
        let mut entries = Entries::default();
        entries.put(place, Entry::new("4.2571", Unit::Inch, 5));
        let mut ledger = Ledger::default();
        assert!(ledger.disputed(&entries).is_empty());
        let rival = |text: &str| Rival {
            value: serde_json::json!([text, "in", 4]),
            at: 0,
            by: None,
        };
        let path = "entries/3/bore_d/0".to_owned();
        ledger.rivals.insert(path.clone(), vec![rival("4.2571")]);
        assert!(ledger.disputed(&entries).is_empty(), "both typed the same");
        ledger.rivals.insert(path, vec![rival("4.2569")]);
        ledger
            .rivals
            .insert("customer".to_owned(), vec![rival("x")]);
        let found = ledger.disputed(&entries);
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].place, place);
        assert!(ledger.is_disputed(place, &entries));
        assert!(!ledger.is_disputed(Place::of_cylinder(2, Field::BoreD, 0), &entries));
        let texts: Vec<&str> = found[0].values.iter().map(|v| v.0.as_str()).collect();
        assert_eq!(texts, ["4.2571", "4.2569"]);
    }
}

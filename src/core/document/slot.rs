//! What a store holds under one key: a document with its row and a sequence
//! number, packed, as text.
//!
//! `2` and then, 15 bits to a UTF-16 code unit: CRC-32 over the rest, sequence
//! number, length of the row, the row, the packed document. A store written
//! before there was packing holds `1 <sequence> <length> <crc32>`, a line's end
//! and the document as it stands: it is read for ever, and written only where
//! a document is too long to be packed.

use super::pack::{pack, put_number, take_number, unpack};
use super::units::{from_units, to_units};

const PACKED: char = '2';

/// What is under a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slot {
    /// It grows with every write; the highest counts.
    pub sequence: u64,
    /// Bytes of the row of the list; none in an old slot.
    pub row: Vec<u8>,
    /// The document.
    pub text: String,
}

/// A slot whose document is still packed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Peek {
    /// As in [`Slot`].
    pub sequence: u64,
    /// As in [`Slot`].
    pub row: Vec<u8>,
    document: Content,
}

#[derive(Clone, Debug, PartialEq, Eq)]
enum Content {
    Packed(Vec<u8>),
    Plain(String),
}

impl Peek {
    /// With the document unpacked; `None` where it is not whole.
    #[must_use]
    pub fn open(self) -> Option<Slot> {
        Some(Slot {
            sequence: self.sequence,
            row: self.row,
            text: match self.document {
                Content::Packed(bytes) => unpack(&bytes)?,
                Content::Plain(text) => text,
            },
        })
    }
}

/// The text of a slot.
#[must_use]
pub fn write_slot(slot: &Slot) -> String {
    let Some(packed) = pack(&slot.text) else {
        let crc = crc32fast::hash(slot.text.as_bytes());
        let (sequence, length) = (slot.sequence, slot.text.len());
        return format!("1 {sequence} {length} {crc:08x}\n{}", slot.text);
    };
    let mut rest = Vec::new();
    put_number(&mut rest, slot.sequence);
    put_number(&mut rest, slot.row.len() as u64);
    rest.extend(&slot.row);
    rest.extend(packed);
    let mut bytes = crc32fast::hash(&rest).to_le_bytes().to_vec();
    bytes.extend(rest);
    format!("{PACKED}{}", to_units(&bytes))
}

/// Looks into a slot; `None` where it is not whole. Costs a checksum and no
/// unpacking: for lists.
#[must_use]
pub fn peek_slot(content: &str) -> Option<Peek> {
    let Some(units) = content.strip_prefix(PACKED) else {
        return peek_plain(content);
    };
    let bytes = from_units(units)?;
    let (crc, mut rest) = bytes.split_at_checked(4)?;
    if crc != crc32fast::hash(rest).to_le_bytes() {
        return None;
    }
    let sequence = take_number(&mut rest)?;
    let length = usize::try_from(take_number(&mut rest)?).ok()?;
    let (row, packed) = rest.split_at_checked(length)?;
    Some(Peek {
        sequence,
        row: row.to_vec(),
        document: Content::Packed(packed.to_vec()),
    })
}

/// Reads a slot; `None` where it is not whole.
#[must_use]
pub fn read_slot(content: &str) -> Option<Slot> {
    peek_slot(content)?.open()
}

fn peek_plain(content: &str) -> Option<Peek> {
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
    whole.then(|| Peek {
        sequence,
        row: Vec::new(),
        document: Content::Plain(text.to_owned()),
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::document::row::Row;
    use crate::document::{Body, Document, write};
    use crate::job::demo::Demo;

    fn slot(demo: Demo) -> Slot {
        let job = demo.job(1_700_000_000_000);
        let document = Document::new(Body::Job(Box::new(job)), 1_700_000_000_000);
        Slot {
            sequence: 300,
            row: Row::of(&document).unwrap().bytes(),
            text: write(&document),
        }
    }

    #[test]
    fn a_slot_of_eight_cylinders_comes_back_out_of_2500_bytes() {
        for demo in Demo::ALL {
            let slot = slot(demo);
            let content = write_slot(&slot);
            let bytes = 2 * content.encode_utf16().count();
            assert!(bytes <= 2400, "{demo:?}: {bytes}");
            assert_eq!(read_slot(&content), Some(slot));
        }
    }

    #[test]
    fn a_slot_written_before_packing_is_read_and_one_too_long_is_written_so() {
        // "abc\ndef" by hand: 7 bytes, CRC-32 (ISO-HDLC) from zlib.crc32.
        let old = "1 7 7 b73be3f4\nabc\ndef";
        let read = read_slot(old).unwrap();
        assert_eq!((read.sequence, read.text.as_str()), (7, "abc\ndef"));
        let long = Slot {
            sequence: 1,
            row: Vec::new(),
            text: "x".repeat(super::super::pack::UNPACKED_MOST + 1),
        };
        assert_eq!(read_slot(&write_slot(&long)), Some(long));
    }

    #[test]
    fn what_is_not_a_slot_is_not_read_as_one() {
        for content in [
            "",
            "1 1 3",
            "1 1 3 00000000\nabc",
            "2 1 3 352441c2\nabc",
            "2",
        ] {
            assert_eq!(read_slot(content), None, "{content}");
        }
        let units: Vec<char> = write_slot(&slot(Demo::InchFive)).chars().collect();
        for end in 0..units.len() {
            assert_eq!(read_slot(&units[..end].iter().collect::<String>()), None);
        }
        for at in 1..units.len() {
            let mut flipped = units.clone();
            flipped[at] = char::from_u32(u32::from(flipped[at]) ^ 4).unwrap();
            let read = read_slot(&flipped.iter().collect::<String>());
            assert_eq!(read, None, "unit {at}");
        }
    }
}

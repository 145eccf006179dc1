//! What is tried with hostile bytes: each function takes any bytes at all and
//! panics where a rule of the program is broken. Run by libFuzzer (`cargo xtask
//! fuzz`) and, over the corpora and seeded changes of them, by `tests/hostile.rs`.
//!
//! Rules: no panic, at most [`MEMORY_MOST`] at a time, and what was understood
//! comes back the same after it was written.

use std::collections::BTreeMap;

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use coldseat_core::document::file::read_file;
use coldseat_core::document::link::{Shared, decode, encode};
use coldseat_core::document::pack::{pack, unpack, unpack_unchecked};
use coldseat_core::document::row::Row;
use coldseat_core::document::slot::{peek_slot, read_slot};
use coldseat_core::document::units::{from_units, to_units};
use coldseat_core::document::{Body, Document, Restored, restore, write};
use coldseat_core::evaluator::answer;
use coldseat_core::job::Job;
use coldseat_core::job::assess::assess;
use coldseat_core::quantity::format;
use coldseat_core::quantity::parse::{Unit, parse};
use serde_json::value::RawValue;

mod server;

pub use server::folder;

/// Bytes that may be allocated at a time.
pub const MEMORY_MOST: usize = 64 << 20;

/// Every unit; the first byte of a quantity picks the one it is read in.
const UNITS: [Unit; 18] = [
    Unit::Inch,
    Unit::Thou,
    Unit::Tenth,
    Unit::Millimetre,
    Unit::Micrometre,
    Unit::Celsius,
    Unit::Fahrenheit,
    Unit::Kelvin,
    Unit::Psi,
    Unit::Bar,
    Unit::Megapascal,
    Unit::PoundForce,
    Unit::Kilonewton,
    Unit::ShortTon,
    Unit::MetricTon,
    Unit::Second,
    Unit::Minute,
    Unit::Plain,
];

/// A text as a link; and the bytes as a link's content under a checksum that
/// fits, as changes by chance never make one.
pub fn link(bytes: &[u8]) {
    shared(&String::from_utf8_lossy(bytes));
    let mut content = bytes.to_vec();
    content.extend(crc32fast::hash(bytes).to_le_bytes());
    shared(&URL_SAFE_NO_PAD.encode(content));
}

fn shared(text: &str) {
    let Ok(shared) = decode(text, 1) else {
        return;
    };
    // A link that was understood can be sent on and says the same.
    let again = encode(&shared).expect("a link that was read can be written");
    assert_eq!(decode(&again, 1).as_ref(), Ok(&shared));
    // What the page does with it before anybody agrees to anything.
    match shared {
        Shared::Profile(engine, entries) => looked_at(&Job::new(engine, entries)),
        Shared::Floor(job) => looked_at(&job),
        Shared::Drop(sheet) => {
            if let Ok(case) = sheet.case() {
                let _ = coldseat_core::thermal::cold_drop::cold_drop(&case.drop);
            }
        }
    }
}

fn looked_at(job: &Job) {
    assert_eq!(assess(job).len(), usize::from(job.engine.cylinders));
}

/// A text as a document, a file and a slot; and the bytes as what is packed.
pub fn document(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    restored(restore(&text));
    for found in read_file(&text).into_iter().flatten() {
        restored(found.restored);
    }
    if let Some(peek) = peek_slot(&text) {
        let _ = Row::from_bytes(&peek.row);
    }
    let _ = read_slot(&text);
    let _ = Row::from_bytes(bytes);
    assert_eq!(from_units(&to_units(bytes)).as_deref(), Some(bytes));
    let _ = from_units(&text);
    let _ = unpack(bytes);
    // Past the checksum, as changes by chance never make one.
    if let Some(text) = unpack_unchecked(bytes) {
        restored(restore(&text));
    }
    // Packing takes a hundred times as long as all the rest: one in sixteen.
    if crc32fast::hash(bytes).is_multiple_of(16)
        && let Some(packed) = pack(&text)
    {
        assert_eq!(unpack(&packed).as_deref(), Some(&*text));
    }
}

fn restored(restored: Restored) {
    let document = match restored {
        Restored::Valid(document) | Restored::Repaired(document, _) => document,
        Restored::Newer { .. } | Restored::Unreadable(_) => return,
    };
    comes_back(&document);
    if let Body::Job(job) = &document.body {
        looked_at(job);
        let row = Row::of(&document).map(|row| row.bytes());
        assert!(row.is_some_and(|bytes| Row::from_bytes(&bytes).is_some()));
    }
}

/// What was repaired once is whole when it is written and read again.
fn comes_back(document: &Document) {
    match restore(&write(document)) {
        Restored::Valid(again) => assert_eq!(&again, document),
        other => panic!("written and read again it is {other:?}"),
    }
}

/// A unit and a text: read, shown, read again.
pub fn quantity(bytes: &[u8]) {
    let Some((first, rest)) = bytes.split_first() else {
        return;
    };
    let assumed = UNITS[usize::from(*first) % UNITS.len()];
    let text = String::from_utf8_lossy(rest);
    let _ = Unit::from_word(&text);
    let Ok(typed) = parse(&text, assumed) else {
        return;
    };
    assert!(typed.si.is_finite());
    assert_eq!(typed.unit.kind(), assumed.kind());
    assert_eq!(typed.text, text.trim());
    // The kept text under its kept unit is the same number for ever.
    assert_eq!(parse(&typed.text, typed.unit).as_ref(), Ok(&typed));
    for unit in UNITS.into_iter().filter(|u| u.kind() == assumed.kind()) {
        let shown = format::with_unit(typed.si, unit);
        // `?` is what is too large to be shown to anybody.
        if !shown.starts_with('?') {
            let read = parse(&shown, unit).expect("what is shown can be typed");
            // Half of the last digit shown, and what a double holds of it.
            let step = unit.to_si(format::last_digit(unit)) - unit.to_si(0.0);
            let room = 0.500_001 * step + 1e-11 * typed.si.abs();
            assert!(
                (read.si - typed.si).abs() <= room,
                "{} shown as {shown}",
                typed.text
            );
        }
        let _ = format::signed(typed.si, unit);
    }
}

/// A line: the answer is one line of JSON. Its parts stay unread text, as the id
/// is the caller's own, byte for byte, and may be a number no double holds.
pub fn evaluator(bytes: &[u8]) {
    let line = String::from_utf8_lossy(bytes);
    if let Some(answer) = answer(&line) {
        assert!(!answer.contains('\n') || line.contains('\n'), "{answer}");
        let read: Result<BTreeMap<String, &RawValue>, _> = serde_json::from_str(&answer);
        let read = read.unwrap_or_else(|error| panic!("{error}: {answer}"));
        assert!(
            read.contains_key("id") && read.contains_key("calc"),
            "{answer}"
        );
        assert!(
            read.contains_key("error")
                != (read.contains_key("outputs") && read.contains_key("findings")),
            "{answer}"
        );
        let ours = read.iter().filter(|(name, _)| *name != "id");
        for (name, part) in ours {
            let whole: Result<serde_json::Value, _> = serde_json::from_str(part.get());
            assert!(whole.is_ok(), "{name}: {answer}");
        }
    }
}

//! A document made small, and back: for storage that is counted in UTF-16 code
//! units, and for files that hold many jobs.
//!
//! The text stays the same document, byte for byte. What repeats in every job
//! is told once: the time of each reading becomes a difference from the one
//! before it, each number of a list one from the number before it, the unit of a
//! field is said once, and the rest is deflated against a dictionary of the
//! words and presets that every document has. A text that does
//! not have this shape is deflated as it stands.
//!
//! `[method][crc32, little-endian][deflate]`, method 0 for a text as it stands,
//! 1 for columns. The dictionary belongs to these two methods for ever; another
//! one is another method. The reader is total: any bytes are answered, nothing
//! grows beyond [`UNPACKED_MOST`].

use miniz_oxide::deflate::core::{
    CompressorOxide, TDEFLFlush, TDEFLStatus, compress, create_comp_flags_from_zip_params,
};
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};
use serde_json::{Map, Value};
use std::sync::OnceLock;

/// Words of every document; frozen, as stored documents lean on it.
const WORDS: &[u8] = include_bytes!("pack_words.txt");
/// Longest text that is packed or unpacked: 2 MiB, a hundred times a job of
/// eight cylinders.
pub const UNPACKED_MOST: usize = 2 << 20;
const PLAIN: u8 = 0;
const COLUMNS: u8 = 1;
/// Method and checksum.
const HEAD: usize = 5;

/// Packs a text; `None` where it is too long to be unpacked again.
#[must_use]
pub fn pack(text: &str) -> Option<Vec<u8>> {
    if text.len() > UNPACKED_MOST {
        return None;
    }
    let columns = Columns::of(text)
        .map(|columns| packed(COLUMNS, &columns.bytes(), text))
        .filter(|bytes| unpack(bytes).as_deref() == Some(text));
    let packed = columns.or_else(|| packed_plain(text))?;
    Some(packed)
}

fn packed_plain(text: &str) -> Option<Vec<u8>> {
    let bytes = packed(PLAIN, text.as_bytes(), text);
    (unpack(&bytes).as_deref() == Some(text)).then_some(bytes)
}

fn packed(method: u8, content: &[u8], text: &str) -> Vec<u8> {
    let mut bytes = vec![method];
    bytes.extend(crc32fast::hash(text.as_bytes()).to_le_bytes());
    bytes.extend(deflated(content));
    bytes
}

/// The text that was packed; `None` where these bytes are not whole.
#[must_use]
pub fn unpack(bytes: &[u8]) -> Option<String> {
    let text = unpack_unchecked(bytes)?;
    let crc = crc32fast::hash(text.as_bytes()).to_le_bytes();
    (bytes.get(1..HEAD) == Some(crc.as_slice())).then_some(text)
}

/// As [`unpack`], whether the checksum fits or not. For whoever tries what
/// stands behind the checksum; nobody else has a use for such a text.
#[must_use]
pub fn unpack_unchecked(bytes: &[u8]) -> Option<String> {
    let (head, rest) = bytes.split_at_checked(HEAD)?;
    let content = inflated(rest)?;
    match *head.first()? {
        PLAIN => String::from_utf8(content).ok(),
        COLUMNS => Columns::from_bytes(&content)?.text(),
        _ => None,
    }
}

fn deflated(content: &[u8]) -> Vec<u8> {
    // To read the dictionary takes as long as all the rest: it is read once.
    static HAS_READ_WORDS: OnceLock<CompressorOxide> = OnceLock::new();
    let begun = HAS_READ_WORDS.get_or_init(|| {
        // Level 9, a raw stream without zlib's head.
        let mut compressor = CompressorOxide::new(create_comp_flags_from_zip_params(9, -15, 0));
        // What the dictionary itself becomes is thrown away: it ends on a byte, and
        // the reader has the dictionary in its window already.
        run(&mut compressor, WORDS, TDEFLFlush::Sync);
        compressor
    });
    run(&mut begun.clone(), content, TDEFLFlush::Finish)
}

fn run(compressor: &mut CompressorOxide, mut input: &[u8], flush: TDEFLFlush) -> Vec<u8> {
    let mut out = Vec::new();
    let mut piece = [0_u8; 4096];
    loop {
        let (status, taken, given) = compress(compressor, input, &mut piece, flush);
        out.extend_from_slice(piece.get(..given).unwrap_or_default());
        input = input.get(taken..).unwrap_or_default();
        let more = status == TDEFLStatus::Okay
            && (!input.is_empty() || given == piece.len() || flush == TDEFLFlush::Finish);
        if !more {
            return out;
        }
    }
}

fn inflated(bytes: &[u8]) -> Option<Vec<u8>> {
    let most = WORDS.len() + UNPACKED_MOST + UNPACKED_MOST / 4;
    let mut out = WORDS.to_vec();
    let mut at = out.len();
    let mut input = bytes;
    let mut state = Box::<DecompressorOxide>::default();
    out.resize(
        at + (64 << 10).min(bytes.len().saturating_mul(16)).max(64),
        0,
    );
    loop {
        let (status, taken, given) = decompress(
            &mut state,
            input,
            &mut out,
            at,
            TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF,
        );
        at += given;
        input = input.get(taken..)?;
        match status {
            TINFLStatus::Done if input.is_empty() => {
                out.truncate(at);
                return out.get(WORDS.len()..).map(<[u8]>::to_vec);
            }
            TINFLStatus::HasMoreOutput if out.len() < most => {
                let room = (out.len() * 2).min(most);
                out.resize(room, 0);
            }
            _ => return None,
        }
    }
}

/// Readings of one list lie close together: each becomes the difference from
/// the one before it, in its last digit, where both have as many decimals.
fn differences(list: &mut [Value]) {
    let mut before: Option<(i64, usize)> = None;
    for value in list {
        let now = value.as_str().and_then(decimal);
        if let (Some((number, places)), Some((from, same))) = (now, before)
            && places == same
        {
            *value = (number - from).into();
        }
        before = now;
    }
}

/// The readings of differences; `None` where one follows no number.
fn sums(list: &mut [Value]) -> Option<()> {
    let mut before: Option<(i64, usize)> = None;
    for value in list {
        if let Value::Number(difference) = value {
            let (number, places) = before?;
            let now = number.checked_add(difference.as_i64()?)?;
            *value = Value::String(in_digits(now, places));
        }
        before = value.as_str().and_then(decimal);
    }
    Some(())
}

/// A decimal number as a whole number of its last digit, with its decimals;
/// `None` where it would not come back letter for letter.
fn decimal(text: &str) -> Option<(i64, usize)> {
    let places = text.split_once('.').map_or(0, |(_, digits)| digits.len());
    if text.len() > 15 {
        return None;
    }
    let number = text.replacen('.', "", 1).parse().ok()?;
    (in_digits(number, places) == text).then_some((number, places))
}

fn in_digits(number: i64, places: usize) -> String {
    let sign = if number < 0 { "-" } else { "" };
    let digits = format!("{:0>width$}", number.unsigned_abs(), width = places + 1);
    match digits.split_at_checked(digits.len() - places) {
        Some((whole, rest)) if places > 0 => format!("{sign}{whole}.{rest}"),
        _ => format!("{sign}{digits}"),
    }
}

/// A document with the times and units of its readings taken out.
struct Columns {
    times: Vec<u64>,
    skeleton: String,
}

/// The readings of an envelope, list by list, in the order of the text.
fn lists(envelope: &mut Value) -> impl Iterator<Item = (&String, &mut Vec<Value>)> {
    envelope
        .get_mut("body")
        .and_then(|body| body.get_mut("entries"))
        .and_then(Value::as_object_mut)
        .into_iter()
        .flat_map(Map::values_mut)
        .filter_map(Value::as_object_mut)
        .flatten()
        .filter_map(|(field, list)| Some((field, list.as_array_mut()?)))
}

impl Columns {
    /// `None` where the text is not what a reader would write again.
    fn of(text: &str) -> Option<Self> {
        let mut envelope: Value = serde_json::from_str(text).ok()?;
        let again = envelope.to_string();
        if again != text {
            return None;
        }
        let mut times = Vec::new();
        let mut units = Map::new();
        for (field, list) in lists(&mut envelope) {
            for entry in list.iter_mut() {
                let Value::Array(parts) = entry else {
                    continue;
                };
                let short = parts.len() == 3;
                let [Value::String(words), unit @ Value::String(_), at, ..] = parts.as_mut_slice()
                else {
                    continue;
                };
                let Some(time) = at.as_u64() else { continue };
                times.push(time);
                let usual = units.entry(field.clone()).or_insert_with(|| unit.clone());
                if usual == unit && short {
                    *entry = Value::String(core::mem::take(words));
                } else {
                    *at = Value::Null;
                }
            }
            differences(list);
        }
        let skeleton = Value::Array(vec![Value::Object(units), envelope]).to_string();
        Some(Self { times, skeleton })
    }

    fn text(self) -> Option<String> {
        let Value::Array(parts) = serde_json::from_str(&self.skeleton).ok()? else {
            return None;
        };
        let [units, mut envelope] = <[Value; 2]>::try_from(parts).ok()?;
        let mut times = self.times.into_iter();
        for (field, list) in lists(&mut envelope) {
            sums(list)?;
            for entry in list {
                match entry {
                    Value::String(words) => {
                        let parts = vec![
                            Value::String(core::mem::take(words)),
                            units.get(field)?.clone(),
                            times.next()?.into(),
                        ];
                        *entry = Value::Array(parts);
                    }
                    Value::Array(parts) => {
                        if let [Value::String(_), Value::String(_), at @ Value::Null, ..] =
                            parts.as_mut_slice()
                        {
                            *at = times.next()?.into();
                        }
                    }
                    _ => {}
                }
            }
        }
        times.next().is_none().then(|| envelope.to_string())
    }

    /// Count, unit of time, differences, then the skeleton.
    fn bytes(&self) -> Vec<u8> {
        let whole_seconds = self.times.iter().all(|t| t % 1000 == 0);
        let scale = if whole_seconds { 1000 } else { 1 };
        let mut bytes = Vec::new();
        put_number(&mut bytes, self.times.len() as u64);
        put_number(&mut bytes, scale);
        let mut before = 0_u64;
        for time in &self.times {
            let now = time / scale;
            // Zigzag: small either way is small.
            let step = now.wrapping_sub(before).cast_signed();
            put_number(&mut bytes, ((step << 1) ^ (step >> 63)).cast_unsigned());
            before = now;
        }
        bytes.extend(self.skeleton.as_bytes());
        bytes
    }

    fn from_bytes(bytes: &[u8]) -> Option<Self> {
        let mut rest = bytes;
        let count = take_number(&mut rest)?;
        let scale = take_number(&mut rest)?;
        // Every difference takes a byte at least: a lie about their number ends here.
        if count > rest.len() as u64 {
            return None;
        }
        let mut before = 0_u64;
        let mut times = Vec::new();
        for _ in 0..count {
            let code = take_number(&mut rest)?;
            let step = (code >> 1).cast_signed() ^ -(code & 1).cast_signed();
            before = before.wrapping_add(step.cast_unsigned());
            times.push(before.checked_mul(scale)?);
        }
        let skeleton = String::from_utf8(rest.to_vec()).ok()?;
        Some(Self { times, skeleton })
    }
}

pub(super) fn put_number(bytes: &mut Vec<u8>, mut number: u64) {
    while number >= 0x80 {
        bytes.push((number & 0x7f) as u8 | 0x80);
        number >>= 7;
    }
    bytes.push(number as u8);
}

pub(super) fn take_number(rest: &mut &[u8]) -> Option<u64> {
    let mut number = 0_u64;
    for shift in (0..64).step_by(7) {
        let (byte, after) = rest.split_first()?;
        *rest = after;
        number |= u64::from(byte & 0x7f) << shift;
        if byte & 0x80 == 0 {
            return Some(number);
        }
    }
    None
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::super::units::{from_units, to_units};
    use super::*;
    use crate::document::{Body, Document, write};
    use crate::job::demo::Demo;
    use crate::job::{Job, Owner};

    fn text(job: Job) -> String {
        write(&Document::new(Body::Job(Box::new(job)), 1_700_000_000_000))
    }

    /// A demo with the times of a working day: seconds within a field, minutes
    /// between fields.
    fn spread(demo: Demo) -> Job {
        let mut job = demo.job(1_700_000_000_000);
        let mut at = 1_700_000_000_000;
        let mut lot = fastrand::Rng::with_seed(3);
        let mut field = None;
        let entries: Vec<_> = job.entries.iter().map(|(p, e)| (*p, e.clone())).collect();
        for (place, mut entry) in entries {
            if place.owner != Owner::Block {
                let new =
                    field.replace((place.owner, place.field)) != Some((place.owner, place.field));
                let pause = if new { 30..1500 } else { 3..12 };
                at += lot.u64(pause) * 1000;
                entry.at = at;
                job.entries.put(place, entry);
            }
        }
        job
    }

    #[test]
    fn a_job_of_eight_cylinders_takes_2500_bytes_at_most() {
        for demo in Demo::ALL {
            let text = text(spread(demo));
            let units = to_units(&pack(&text).unwrap()).encode_utf16().count();
            // The row of the list, the slot's head and the key come on top: less
            // than 200 bytes; the whole is measured in the browser.
            assert!(
                2 * units <= 2300,
                "{demo:?}: {} of {} bytes",
                2 * units,
                text.len()
            );
        }
    }

    #[test]
    fn readings_of_every_shape_come_back() {
        let texts = [
            "132.010",
            "132.009",
            "-0.002",
            "0.001",
            "-0.001",
            "12",
            "9",
            "5",
            ".5",
            "0.50",
            "00.5",
            "-0.0",
            "0,010",
            "1e3",
            "+2",
            "",
            "-",
            ".",
            "9223372036854775807",
            "5.1970 in",
        ];
        for first in texts {
            for second in texts {
                let mut list: Vec<Value> = [first, second, first].map(Value::from).into();
                let whole = list.clone();
                differences(&mut list);
                assert_eq!(sums(&mut list), Some(()));
                assert_eq!(list, whole);
            }
        }
        assert_eq!(sums(&mut [5.into()]), None);
        let mut near: Vec<Value> = ["132.010", "132.009"].map(Value::from).into();
        differences(&mut near);
        assert_eq!(near[1], -1);
    }

    #[test]
    fn texts_come_back() {
        let mut job = spread(Demo::InchFive);
        let place = *job.entries.iter().next().unwrap().0;
        job.entries.keep(place);
        let whole = text(job);
        let others = [
            "",
            "{}",
            "[1,2]",
            "no document",
            "{ \"a\" : 1 }",
            whole.as_str(),
        ];
        for text in others {
            let packed = pack(text).unwrap();
            assert_eq!(unpack(&packed).as_deref(), Some(text));
            assert_eq!(from_units(&to_units(&packed)), Some(packed));
        }
        let odd = whole.replace("\"mm\"", "\"mm\",1");
        assert_eq!(unpack(&pack(&odd).unwrap()).unwrap(), odd);
        assert_eq!(pack(&"x".repeat(UNPACKED_MOST + 1)), None);
    }

    #[test]
    fn damage_is_noticed_and_a_bomb_stays_small() {
        let whole = text(spread(Demo::InchFive));
        let packed = pack(&whole).unwrap();
        for end in 0..packed.len() {
            assert_eq!(unpack(&packed[..end]), None);
        }
        for at in 0..packed.len() {
            let mut flipped = packed.clone();
            flipped[at] ^= 1 << (at % 8);
            // The last byte may end in bits that say nothing, and a flipped bit
            // may point to another copy of the same letters: then nothing is lost.
            let same = unpack(&flipped).is_none_or(|t| t == whole);
            assert!(same, "byte {at}");
        }
        let bomb = [vec![PLAIN, 0, 0, 0, 0], deflated(&vec![0; 64 << 20])].concat();
        assert!(bomb.len() < 100_000);
        assert_eq!(unpack(&bomb), None);
    }
}

//! Links: an engine profile, a cold drop or the floor sheet of a job in a piece
//! of an address.
//!
//! Version byte, kind, body, CRC-32 of all of it, in base64url without padding
//! (RFC 4648, section 5). The body is a compact binary: which fields are other
//! than usual as bits (version 1: which are there), their numbers as whole counts
//! of the last digit typed, so that what was typed comes back digit for digit.
//! What the bytes stand for is frozen in `tables`; `tests/golden/links` holds
//! links of every shipped version.
//!
//! A link is hostile: its length is bounded before it is decoded, every read is
//! checked, every number must read and lie in its range, nothing is stored here.

mod bytes;
mod tables;

use super::LONGEST;
use crate::job::drop::DropSheet;
use crate::job::engine::{CYLINDERS_MOST, Engine, Layout};
use crate::job::field::{Field, UnitSystem};
use crate::job::{Entries, Entry, Job, Millis, Owner, Place};
use crate::materials::MaterialId;
use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use bytes::{Reader, put_count, put_number, put_text};

/// The version written here.
const LINK_VERSION: u8 = 2;
/// Longer payloads are not decoded.
pub const PAYLOAD_MOST: usize = 8192;
/// Bytes of a name at most.
const NAME_MOST: usize = 80;
/// What stands before the payload in an address.
pub const MARK: &str = "#/s/";

/// What a link carries.
#[derive(Clone, Debug, PartialEq)]
pub enum Shared {
    /// An engine with its numbers.
    Profile(Engine, Entries),
    /// A cold drop.
    Drop(DropSheet),
    /// A job as far as its floor sheet goes: engine, name, and of each cylinder
    /// its sleeve.
    Floor(Box<Job>),
}

/// Why a link cannot be used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LinkFault {
    /// Nothing there.
    Empty,
    /// Longer than any link of this program.
    TooLong,
    /// It holds characters that no link has.
    Foreign,
    /// Cut off, or changed on the way: the checksum does not fit.
    Damaged,
    /// Written by a later version.
    Later(u8),
    /// A number is outside its range.
    OutOfRange(Field),
    /// A count of cylinders that no engine has.
    Cylinders(u8),
}

/// The payload of a link.
///
/// # Errors
/// [`LinkFault::TooLong`] where it would be longer than one that is read.
pub fn encode(shared: &Shared) -> Result<String, LinkFault> {
    let mut out = vec![LINK_VERSION];
    match shared {
        Shared::Profile(engine, entries) => {
            out.push(0);
            put_engine(&mut out, engine, entries);
        }
        Shared::Drop(sheet) => {
            out.push(1);
            out.push(index(tables::UNITS, sheet.units.id()));
            out.push(index(tables::MATERIALS, sheet.sleeve_material.id()));
            out.push(index(tables::MATERIALS, sheet.block_material.id()));
            put_fields(
                &mut out,
                tables::DROP,
                &sheet.entries,
                &Entries::default(),
                Owner::Block,
                sheet.units,
            );
        }
        Shared::Floor(job) => {
            out.push(2);
            put_engine(&mut out, &job.engine, &job.entries);
            put_text(&mut out, short(&job.name));
            for cylinder in 1..=job.engine.cylinders {
                let owner = Owner::Cylinder(cylinder);
                out.push(u8::from(job.left_out.contains(&cylinder)));
                put_fields(
                    &mut out,
                    tables::FLOOR,
                    &job.entries,
                    &Entries::default(),
                    owner,
                    job.engine.units,
                );
            }
        }
    }
    let checksum = crc32fast::hash(&out);
    out.extend_from_slice(&checksum.to_le_bytes());
    let payload = URL_SAFE_NO_PAD.encode(&out);
    if payload.len() > PAYLOAD_MOST {
        return Err(LinkFault::TooLong);
    }
    Ok(payload)
}

/// Reads the payload out of an address, or out of a text with one in it: what a
/// messenger put round it, percent-encoding and a second copy behind it are
/// taken off.
///
/// # Errors
/// Why it cannot be used, in the order in which one looks.
pub fn decode(text: &str, at: Millis) -> Result<Shared, LinkFault> {
    if text.len() > LONGEST.min(16 * PAYLOAD_MOST) {
        return Err(LinkFault::TooLong);
    }
    let payload = payload_of(text);
    if payload.is_empty() {
        return Err(LinkFault::Empty);
    }
    if payload.len() > PAYLOAD_MOST {
        return Err(LinkFault::TooLong);
    }
    if !payload
        .bytes()
        .all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_')
    {
        return Err(LinkFault::Foreign);
    }
    // A length that no encoding has is a link cut short.
    let bytes = URL_SAFE_NO_PAD
        .decode(&payload)
        .map_err(|_| LinkFault::Damaged)?;
    let (content, checksum) = bytes.split_last_chunk::<4>().ok_or(LinkFault::Damaged)?;
    if crc32fast::hash(content) != u32::from_le_bytes(*checksum) {
        return Err(LinkFault::Damaged);
    }
    let mut reader = Reader::new(content);
    let version = reader.byte()?;
    if version > LINK_VERSION {
        return Err(LinkFault::Later(version));
    }
    let shared = match reader.byte()? {
        0 => {
            let (engine, entries) = take_engine(&mut reader, version, at)?;
            Shared::Profile(engine, entries)
        }
        1 => take_drop(&mut reader, at)?,
        2 => take_floor(&mut reader, version, at)?,
        _ => return Err(LinkFault::Damaged),
    };
    if !reader.is_empty() {
        return Err(LinkFault::Damaged);
    }
    Ok(shared)
}

/// The payload alone.
fn payload_of(text: &str) -> String {
    let plain = unescaped(text.trim());
    let from = plain.find(MARK).map_or(0, |at| at + MARK.len());
    let rest = &plain[from..];
    // A second copy begins with its own address.
    let until = ["http:", "https:", MARK]
        .iter()
        .filter_map(|mark| rest.find(mark))
        .min()
        .unwrap_or(rest.len());
    let trimmed = rest[..until].trim_end_matches(['.', ',', ')', '>', ']', '"', '\'', ' ', '\n']);
    trimmed.trim().to_owned()
}

/// Percent-encoding taken off, where it is ASCII.
fn unescaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find('%') {
        out.push_str(&rest[..at]);
        let code = rest.get(at + 1..at + 3);
        let byte = code.and_then(|hex| u8::from_str_radix(hex, 16).ok());
        match byte.filter(u8::is_ascii) {
            Some(byte) => {
                out.push(char::from(byte));
                rest = &rest[at + 3..];
            }
            None => {
                out.push('%');
                rest = &rest[at + 1..];
            }
        }
    }
    out.push_str(rest);
    out
}

/// A name cut to what a link carries, at a character.
fn short(name: &str) -> &str {
    let mut end = name.len().min(NAME_MOST);
    while !name.is_char_boundary(end) {
        end -= 1;
    }
    &name[..end]
}

/// The place of a word in a frozen table; a test holds that it is there.
fn index(table: &[&str], word: &str) -> u8 {
    table.iter().position(|w| *w == word).unwrap_or(0) as u8
}

fn put_engine(out: &mut Vec<u8>, engine: &Engine, entries: &Entries) {
    out.push(index(tables::UNITS, engine.units.id()));
    out.push(index(tables::LAYOUTS, engine.layout.id()));
    out.push(engine.cylinders);
    out.push(index(tables::MATERIALS, engine.sleeve_material.id()));
    out.push(index(tables::MATERIALS, engine.block_material.id()));
    put_text(out, short(&engine.name));
    put_fields(
        out,
        tables::ENGINE,
        entries,
        &usual(engine.units, 0),
        Owner::Block,
        engine.units,
    );
}

/// What every field of an engine is unless a link says otherwise.
fn usual(units: UnitSystem, at: Millis) -> Entries {
    let mut entries = Entries::default();
    for (id, inch, metric) in tables::USUAL {
        if let Some(field) = Field::from_id(id) {
            let text = match units {
                UnitSystem::Inch => *inch,
                UnitSystem::Metric => *metric,
            };
            let entry = Entry::new(text, field.unit(units), at);
            entries.put(Place::of_engine(field), entry);
        }
    }
    entries
}

/// The places of a table, in order: all places of a field one after the other.
fn places(table: &'static [&'static str], owner: Owner) -> impl Iterator<Item = Place> {
    table
        .iter()
        .filter_map(|id| Field::from_id(id))
        .flat_map(move |field| {
            (0..field.spec().places.count()).map(move |index| Place {
                owner,
                field,
                index,
            })
        })
}

/// Writes which places are other than `usual`, and their texts; one that is
/// empty there is written as an empty text.
fn put_fields(
    out: &mut Vec<u8>,
    table: &'static [&'static str],
    entries: &Entries,
    usual: &Entries,
    owner: Owner,
    units: UnitSystem,
) {
    // What does not read or lies outside its range is nobody else's business.
    let usable = |place: Place| entries.get(place).filter(|_| entries.is_usable(place));
    let is_usual = |place: Place| match (usable(place), usual.get(place)) {
        (Some(here), Some(there)) => here.text == there.text && here.unit == there.unit,
        (None, None) => true,
        _ => false,
    };
    let other: Vec<bool> = places(table, owner).map(|p| !is_usual(p)).collect();
    put_count(out, other.len().div_ceil(8) as u64);
    for eight in other.chunks(8) {
        let bits = eight.iter().enumerate();
        out.push(bits.fold(0, |byte, (bit, is)| byte | (u8::from(*is) << bit)));
    }
    for (place, _) in places(table, owner).zip(other).filter(|(_, is)| *is) {
        let unit = place.field.unit(units);
        match usable(place) {
            Some(entry) => put_number(out, &entry.text, entry.unit, unit),
            None => put_number(out, "", unit, unit),
        }
    }
}

fn word<T>(
    reader: &mut Reader<'_>,
    table: &[&str],
    read: impl Fn(&str) -> Option<T>,
) -> Result<T, LinkFault> {
    let at = usize::from(reader.byte()?);
    table
        .get(at)
        .and_then(|word| read(word))
        .ok_or(LinkFault::Damaged)
}

fn take_engine(
    reader: &mut Reader<'_>,
    version: u8,
    at: Millis,
) -> Result<(Engine, Entries), LinkFault> {
    let units = word(reader, tables::UNITS, UnitSystem::from_id)?;
    let layout = word(reader, tables::LAYOUTS, Layout::from_id)?;
    let cylinders = reader.byte()?;
    if !(1..=CYLINDERS_MOST).contains(&cylinders) {
        return Err(LinkFault::Cylinders(cylinders));
    }
    let sleeve_material = word(reader, tables::MATERIALS, MaterialId::from_id)?;
    let block_material = word(reader, tables::MATERIALS, MaterialId::from_id)?;
    let name = reader.text(NAME_MOST)?;
    let engine = Engine {
        name,
        cylinders,
        layout,
        units,
        sleeve_material,
        block_material,
    };
    // Version 1 named every field that was there.
    let mut entries = if version == 1 {
        Entries::default()
    } else {
        usual(units, at)
    };
    take_fields(
        reader,
        tables::ENGINE,
        Owner::Block,
        units,
        at,
        &mut entries,
    )?;
    Ok((engine, entries))
}

fn take_drop(reader: &mut Reader<'_>, at: Millis) -> Result<Shared, LinkFault> {
    let units = word(reader, tables::UNITS, UnitSystem::from_id)?;
    let sleeve_material = word(reader, tables::MATERIALS, MaterialId::from_id)?;
    let block_material = word(reader, tables::MATERIALS, MaterialId::from_id)?;
    let mut entries = Entries::default();
    take_fields(reader, tables::DROP, Owner::Block, units, at, &mut entries)?;
    Ok(Shared::Drop(DropSheet {
        entries,
        units,
        sleeve_material,
        block_material,
    }))
}

fn take_floor(reader: &mut Reader<'_>, version: u8, at: Millis) -> Result<Shared, LinkFault> {
    let (engine, entries) = take_engine(reader, version, at)?;
    let units = engine.units;
    let mut job = Job::new(engine, entries);
    job.name = reader.text(NAME_MOST)?;
    for cylinder in 1..=job.engine.cylinders {
        if reader.byte()? & 1 == 1 {
            job.left_out.push(cylinder);
        }
        let owner = Owner::Cylinder(cylinder);
        take_fields(reader, tables::FLOOR, owner, units, at, &mut job.entries)?;
    }
    Ok(Shared::Floor(Box::new(job)))
}

fn take_fields(
    reader: &mut Reader<'_>,
    table: &'static [&'static str],
    owner: Owner,
    units: UnitSystem,
    at: Millis,
    entries: &mut Entries,
) -> Result<(), LinkFault> {
    let count = reader.count()?;
    // Fields are added at the table's end: more of them are a later page's.
    let known = places(table, owner).count().div_ceil(8) as u64;
    if count > known {
        return Err(LinkFault::Later(LINK_VERSION));
    }
    let bits = reader.take(count as usize)?;
    for (nth, place) in places(table, owner).enumerate() {
        let is_there = bits
            .get(nth / 8)
            .is_some_and(|byte| byte >> (nth % 8) & 1 == 1);
        if !is_there {
            continue;
        }
        let unit = place.field.unit(units);
        let text = reader.number(unit)?;
        let is_empty = text.is_empty();
        entries.put(place, Entry::new(text, unit, at));
        if !is_empty && !entries.is_usable(place) {
            return Err(LinkFault::OutOfRange(place.field));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests;

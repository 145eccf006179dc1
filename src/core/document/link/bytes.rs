//! Numbers and texts as few bytes: what the parts of a link are written with.

use super::LinkFault;
use crate::quantity::format::{decimals, fixed};
use crate::quantity::parse::{Unit, parse};

/// A text of a number is no longer than a person types.
const TEXT_MOST: usize = 60;

/// Writes a count, seven bits a byte, the lowest first.
pub(super) fn put_count(out: &mut Vec<u8>, mut count: u64) {
    while count >= 0x80 {
        out.push(count as u8 | 0x80);
        count >>= 7;
    }
    out.push(count as u8);
}

/// Writes a text with its length before it.
pub(super) fn put_text(out: &mut Vec<u8>, text: &str) {
    put_count(out, text.len() as u64);
    out.extend_from_slice(text.as_bytes());
}

/// Writes a typed number: a whole count of the unit's last digit where that
/// gives the text back digit for digit, else the text itself.
pub(super) fn put_number(out: &mut Vec<u8>, text: &str, typed: Unit, unit: Unit) {
    let digits = places(unit);
    let plain = parse(text, unit).ok().filter(|n| n.unit == unit);
    let whole = plain.filter(|_| typed == unit).and_then(|n| {
        let count = (unit.from_si(n.si) * 10_f64.powi(digits as i32)).round();
        let fits = count.abs() < 1e12 && shown(count as i64, digits) == text;
        fits.then_some(count as i64)
    });
    match whole {
        Some(count) => {
            let folded = ((count << 1) ^ (count >> 63)) as u64;
            put_count(out, folded << 1);
        }
        None => {
            // A text without its unit would be read in another one.
            let with_unit = match parse(text, typed) {
                Ok(n) if n.unit == typed && typed != unit && !text.ends_with(typed.symbol()) => {
                    format!("{text} {}", typed.symbol())
                }
                _ => text.to_owned(),
            };
            put_count(out, (with_unit.len() as u64) << 1 | 1);
            out.extend_from_slice(with_unit.as_bytes());
        }
    }
}

/// Decimals of a whole count of a unit: plain numbers with three.
fn places(unit: Unit) -> usize {
    match unit {
        Unit::Plain => 3,
        other => decimals(other),
    }
}

/// The text of a whole count.
fn shown(count: i64, digits: usize) -> String {
    fixed(count as f64 / 10_f64.powi(digits as i32), digits)
}

/// Reads from the front; every step tells when there is not enough.
pub(super) struct Reader<'a> {
    rest: &'a [u8],
}

impl<'a> Reader<'a> {
    pub(super) const fn new(bytes: &'a [u8]) -> Self {
        Self { rest: bytes }
    }

    pub(super) const fn is_empty(&self) -> bool {
        self.rest.is_empty()
    }

    pub(super) fn byte(&mut self) -> Result<u8, LinkFault> {
        Ok(self.take(1)?[0])
    }

    pub(super) fn take(&mut self, count: usize) -> Result<&'a [u8], LinkFault> {
        if count > self.rest.len() {
            return Err(LinkFault::Damaged);
        }
        let (front, rest) = self.rest.split_at(count);
        self.rest = rest;
        Ok(front)
    }

    pub(super) fn count(&mut self) -> Result<u64, LinkFault> {
        let mut count = 0_u64;
        for shift in (0..63).step_by(7) {
            let byte = self.byte()?;
            count |= u64::from(byte & 0x7f) << shift;
            if byte & 0x80 == 0 {
                return Ok(count);
            }
        }
        Err(LinkFault::Damaged)
    }

    pub(super) fn text(&mut self, most: usize) -> Result<String, LinkFault> {
        let length = self.count()?;
        self.words(length, most)
    }

    fn words(&mut self, length: u64, most: usize) -> Result<String, LinkFault> {
        let length = usize::try_from(length).map_err(|_| LinkFault::Damaged)?;
        if length > most {
            return Err(LinkFault::Damaged);
        }
        let text = core::str::from_utf8(self.take(length)?).map_err(|_| LinkFault::Damaged)?;
        if text.chars().any(char::is_control) {
            return Err(LinkFault::Damaged);
        }
        Ok(text.to_owned())
    }

    /// The text of a number, as it was typed.
    pub(super) fn number(&mut self, unit: Unit) -> Result<String, LinkFault> {
        let head = self.count()?;
        if head & 1 == 1 {
            return self.words(head >> 1, TEXT_MOST);
        }
        let folded = head >> 1;
        let count = (folded >> 1) as i64 ^ -((folded & 1) as i64);
        Ok(shown(count, places(unit)))
    }
}

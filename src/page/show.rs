//! Numbers as a person reads them, in the unit of the job. Formats only: the
//! conversions are the core's.

use crate::texts as t;
use crate::words;
use coldseat_core::ask::{Bound, End, Unit, UnitSystem, format};

/// The unit of lengths.
#[must_use]
pub const fn length_unit(units: UnitSystem) -> Unit {
    match units {
        UnitSystem::Inch => Unit::Inch,
        UnitSystem::Metric => Unit::Millimetre,
    }
}

/// A length with its unit.
#[must_use]
pub fn length(si: f64, units: UnitSystem) -> String {
    words::marked(format::with_unit(si, length_unit(units)))
}

/// A length without its unit.
#[must_use]
pub fn bare(si: f64, units: UnitSystem) -> String {
    words::marked(format::number(si, length_unit(units)))
}

/// A length without its unit, as fine as it is.
#[must_use]
pub fn in_full(si: f64, units: UnitSystem) -> String {
    words::marked(format::in_full(si, length_unit(units)))
}

/// A number with the symbol of its unit.
#[must_use]
pub fn number(si: f64, unit: Unit) -> String {
    words::marked(format::with_unit(si, unit))
}

/// A number without the symbol of its unit.
#[must_use]
pub fn bare_number(si: f64, unit: Unit) -> String {
    words::marked(format::number(si, unit))
}

/// A difference in a unit of temperature, without its symbol.
#[must_use]
pub fn difference(si: f64, unit: Unit) -> String {
    words::marked(format::difference(si, unit))
}

/// A difference with its sign and unit.
#[must_use]
pub fn signed(si: f64, unit: Unit) -> String {
    words::marked(format::signed(si, unit))
}

/// A plain number with so many decimals.
#[must_use]
pub fn fixed(value: f64, decimals: usize) -> String {
    words::marked(format::fixed(value, decimals))
}

/// A span of seconds: tenths below ten, whole ones above.
#[must_use]
pub fn seconds(s: f64) -> String {
    fixed(s, if s.abs() < 9.95 { 1 } else { 0 })
}

/// Whole seconds, as they are kept.
#[must_use]
pub fn whole_seconds(s: f64) -> String {
    fixed(s, 0)
}

/// Seconds and tenths, as short times are kept.
#[must_use]
pub fn tenth_seconds(s: f64) -> String {
    fixed(s, 1)
}

/// Minutes and seconds, as on a clock.
#[must_use]
pub fn clock(s: f64) -> String {
    let whole = s.max(0.0).round() as u64;
    if whole < 3600 {
        format!("{}:{:02}", whole / 60, whole % 60)
    } else {
        let minutes = whole / 60;
        format!("{}:{:02}:{:02}", minutes / 60, minutes % 60, whole % 60)
    }
}

/// A plain number to one decimal.
#[must_use]
pub fn tenths(value: f64) -> String {
    fixed(value, 1)
}

/// An allowed range in words.
#[must_use]
pub fn range(bound: &Bound, unit: Unit) -> String {
    let symbol = unit.symbol();
    let show = |si: f64| {
        // As few digits as tell the range; 39.3701 in is 39.37 in.
        let digits = format::decimals(unit).min(3);
        let text = format::fixed(unit.from_si(si), digits);
        words::marked(if text.contains('.') {
            text.trim_end_matches('0').trim_end_matches('.').to_owned()
        } else {
            text
        })
    };
    let from = match bound.lo_end {
        End::In => show(bound.lo),
        End::Out => t::more_than(&show(bound.lo)),
    };
    let to = match bound.hi_end {
        End::In => show(bound.hi),
        End::Out => t::less_than(&show(bound.hi)),
    };
    let gap = if symbol.is_empty() { "" } else { " " };
    let range = t::Range {
        from: &from,
        to: &to,
    };
    format!("{}{gap}{symbol}", range.say())
}

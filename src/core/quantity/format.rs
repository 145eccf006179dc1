//! Numbers to text, for people. The evaluator does not use it: its numbers
//! round-trip.
//!
//! Inch to 4 decimals (5 where it matters), millimetres to 3, form in
//! micrometres. A value that rounds to zero has no sign.

use super::parse::Unit;

/// Digits of a number at most: more are no reading (a bar code has 8 to 14).
pub const DIGITS_MOST: usize = 12;

/// `value` with `decimals` digits behind the point, rounded half away from
/// zero; `-0.0000` is written `0.0000`. Not a number and values beyond 1e15
/// are written `?`: nothing shown to a person is ever that large.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::fixed;
/// assert_eq!(fixed(0.00426, 4), "0.0043");
/// assert_eq!(fixed(-0.00001, 4), "0.0000");
/// ```
#[must_use]
pub fn fixed(value: f64, decimals: usize) -> String {
    let decimals = decimals.min(9);
    let scale = 10_u64.pow(decimals as u32);
    let scaled = value.abs() * scale as f64;
    if !scaled.is_finite() || scaled >= 1e15 {
        return "?".to_owned();
    }
    // A shown decimal half (0.00125 at 4 digits) is stored a hair below or
    // above it; nudging by a part in 1e12 rounds it as a person would.
    let units = (scaled * (1.0 + 1e-12) + 0.5) as u64;
    let sign = if value < 0.0 && units != 0 { "-" } else { "" };
    let (whole, rest) = (units / scale, units % scale);
    if decimals == 0 {
        format!("{sign}{whole}")
    } else {
        format!("{sign}{whole}.{rest:0decimals$}")
    }
}

/// Whether a number is shown as zero in a unit: then its sign says nothing.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::shows_zero;
/// use coldseat_core::quantity::parse::Unit;
/// // A micrometre: none of a tenth of a thou, one in the third decimal of a mm.
/// assert!(shows_zero(-1e-6, Unit::Inch));
/// assert!(!shows_zero(-1e-6, Unit::Millimetre));
/// ```
#[must_use]
pub fn shows_zero(si: f64, unit: Unit) -> bool {
    !number(si, unit)
        .chars()
        .any(|c| matches!(c, '1'..='9' | '?'))
}

/// `value` with at least the decimals its unit is shown with, and as many more, up to
/// two, as it has: what is known to a half of a tenth is not rounded up to a whole one.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::in_full;
/// use coldseat_core::quantity::parse::Unit;
/// assert_eq!(in_full(0.000_05 * 0.0254, Unit::Inch), "0.00005");
/// assert_eq!(in_full(0.002 * 0.0254, Unit::Inch), "0.0020");
/// ```
#[must_use]
pub fn in_full(si: f64, unit: Unit) -> String {
    let least = decimals(unit);
    let mut text = fixed(unit.from_si(si), least + 2);
    for _ in 0..2 {
        if text.ends_with('0') {
            text.pop();
        }
    }
    text
}

/// Whether a typed text has its unit in it: a word, or the mark of inches.
#[must_use]
pub fn names_unit(text: &str) -> bool {
    let is_mark = |c: char| matches!(c, '"' | '\u{2033}' | '\'');
    text.chars().any(|c| c.is_alphabetic() || is_mark(c))
}

/// A text as it was typed, with its unit where it names none itself.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::typed;
/// use coldseat_core::quantity::parse::Unit;
/// assert_eq!(typed("4.2", Unit::Inch), "4.2 in");
/// assert_eq!(typed("106 mm", Unit::Inch), "106 mm");
/// ```
#[must_use]
pub fn typed(text: &str, unit: Unit) -> String {
    let symbol = unit.symbol();
    if symbol.is_empty() || names_unit(text) {
        text.to_owned()
    } else {
        format!("{text} {symbol}")
    }
}

/// Decimals with which a unit is shown.
#[must_use]
pub const fn decimals(unit: Unit) -> usize {
    match unit {
        Unit::Inch | Unit::ShortTon | Unit::MetricTon => 4,
        Unit::Millimetre => 3,
        Unit::Thou | Unit::Micrometre | Unit::Kilonewton | Unit::Megapascal => 1,
        Unit::Celsius | Unit::Fahrenheit | Unit::Kelvin | Unit::Minute => 1,
        Unit::Tenth | Unit::Psi | Unit::Bar | Unit::PoundForce | Unit::Second => 0,
        Unit::CubicFoot => 0,
        Unit::CubicMetre | Unit::PoundFoot | Unit::NewtonMetre => 1,
        Unit::Plain => 2,
    }
}

/// Digits alone as a lathe hand says them, counted from the last decimal of a unit:
/// `43` and `0043` are 0.0043 in. `None` where anything but digits stands behind a
/// sign, and where there are more of them than a hand types.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::from_right;
/// use coldseat_core::quantity::parse::Unit;
/// assert_eq!(from_right("142", Unit::Inch).as_deref(), Some("0.0142"));
/// assert_eq!(from_right("0142", Unit::Inch).as_deref(), Some("0.0142"));
/// assert_eq!(from_right("-12", Unit::Millimetre).as_deref(), Some("-0.012"));
/// assert_eq!(from_right("4.2", Unit::Inch), None);
/// ```
#[must_use]
pub fn from_right(text: &str, unit: Unit) -> Option<String> {
    let text = text.trim();
    let (sign, digits) = match text.strip_prefix(['-', '\u{2212}']) {
        Some(digits) => ("-", digits.trim_start()),
        None => ("", text.strip_prefix('+').unwrap_or(text).trim_start()),
    };
    let is_digits = !digits.is_empty() && digits.bytes().all(|b| b.is_ascii_digit());
    if !is_digits || digits.len() > DIGITS_MOST {
        return None;
    }
    let width = decimals(unit) + 1;
    let padded = format!("{digits:0>width$}");
    let (whole, rest) = padded.split_at(padded.len() - decimals(unit));
    let whole = match whole.trim_start_matches('0') {
        "" => "0",
        whole => whole,
    };
    let point = if rest.is_empty() { "" } else { "." };
    Some(format!("{sign}{whole}{point}{rest}"))
}

/// What one step of the last digit shown is worth, in the unit itself.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::last_digit;
/// use coldseat_core::quantity::parse::Unit;
/// assert_eq!(last_digit(Unit::Inch), 0.0001);
/// assert_eq!(last_digit(Unit::Psi), 1.0);
/// ```
#[must_use]
pub fn last_digit(unit: Unit) -> f64 {
    // Divided, not multiplied up: 1 / 10000 is the double nearest to 0.0001.
    1.0 / 10_f64.powi(decimals(unit) as i32)
}

/// An SI number in `unit`, without the unit's symbol.
#[must_use]
pub fn number(si: f64, unit: Unit) -> String {
    fixed(unit.from_si(si), decimals(unit))
}

/// An SI number in `unit`, with its symbol: `0.0043 in`.
#[must_use]
pub fn with_unit(si: f64, unit: Unit) -> String {
    let symbol = unit.symbol();
    if symbol.is_empty() {
        number(si, unit)
    } else {
        format!("{} {symbol}", number(si, unit))
    }
}

/// An SI difference in `unit`, with its symbol.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::difference;
/// use coldseat_core::quantity::parse::Unit;
/// assert_eq!(difference(1.0, Unit::Fahrenheit), "1.8 \u{b0}F");
/// ```
#[must_use]
pub fn difference(si: f64, unit: Unit) -> String {
    format!(
        "{} {}",
        fixed(si / unit.scale(), decimals(unit)),
        unit.symbol()
    )
}

/// An SI difference in `unit` with its sign always written: `+0.0004`.
#[must_use]
pub fn signed(si: f64, unit: Unit) -> String {
    let text = fixed(si / unit.scale(), decimals(unit));
    let is_zero = text.bytes().all(|b| b == b'0' || b == b'.');
    if text.starts_with('-') || is_zero {
        text
    } else {
        format!("+{text}")
    }
}

/// The largest round number of a unit, one, two or five of a decade, that is not
/// above a length: what the scale of a drawing is made of. Both SI.
///
/// # Example
/// ```
/// use coldseat_core::quantity::format::rule;
/// use coldseat_core::quantity::parse::Unit;
/// let inch = rule(0.0254 * 0.0037, Unit::Inch) / 0.0254;
/// assert!((inch - 0.002).abs() < 1e-12);
/// let mm = rule(0.000_61, Unit::Millimetre) * 1e3;
/// assert!((mm - 0.5).abs() < 1e-12);
/// ```
#[must_use]
pub fn rule(most_si: f64, unit: Unit) -> f64 {
    let most = unit.from_si(most_si).max(f64::MIN_POSITIVE);
    let decade = 10_f64.powf(most.log10().floor());
    let times = [5.0, 2.0].into_iter().find(|n| n * decade <= most);
    unit.to_si(decade * times.unwrap_or(1.0)) // one of it always fits
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounds_as_a_person_would() {
        assert_eq!(fixed(0.00125, 4), "0.0013");
        assert_eq!(fixed(4.2589, 4), "4.2589");
        assert_eq!(fixed(-4.25, 1), "-4.3");
        assert_eq!(fixed(12.0, 0), "12");
        assert_eq!(fixed(f64::NAN, 2), "?");
        assert_eq!(fixed(f64::INFINITY, 2), "?");
        assert_eq!(fixed(1e300, 2), "?");
    }

    #[test]
    fn units_and_signs() {
        assert_eq!(with_unit(0.0043 * 0.0254, Unit::Inch), "0.0043 in");
        assert_eq!(with_unit(0.108_21, Unit::Millimetre), "108.210 mm");
        assert_eq!(with_unit(293.15, Unit::Fahrenheit), "68.0 \u{b0}F");
        assert_eq!(signed(0.0004 * 0.0254, Unit::Inch), "+0.0004");
        assert_eq!(signed(-0.0004 * 0.0254, Unit::Inch), "-0.0004");
        assert_eq!(signed(1e-9, Unit::Inch), "0.0000");
    }
}

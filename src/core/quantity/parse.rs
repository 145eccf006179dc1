//! Typed text to a quantity. The text is kept as it was typed, so that inches
//! stay inches and millimetres stay millimetres, digit for digit.
//!
//! Accepted: `4.2589`, `4,2589`, `.0043`, `-0.002`, `17/64`, `4 17/64`,
//! `4-17/64`, each alone (the assumed unit applies) or followed by a unit:
//! `in`, `"`, `thou`, `tenths`, `mm`, `um`, `C`, `F`, `K`, `psi`, `bar`,
//! `MPa`, `lbf`, `kN`, `short ton`, `t`, `s`, `min`, `ft3`, `m3`, `lbf ft`, `N m`.

use super::{INCH_M, LBF_N, PSI_PA, Temperature};
use serde::{Deserialize, Serialize};

/// One foot (NIST SP 811: exactly 0.3048 m).
const FOOT_M: f64 = 12.0 * INCH_M;

/// What a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Lengths, diameters, heights, fits.
    Length,
    /// Points on a temperature scale.
    Temperature,
    /// Pressures and stresses.
    Pressure,
    /// Forces.
    Force,
    /// Spans of time.
    Time,
    /// Rooms.
    Volume,
    /// Torques.
    Torque,
    /// Counts, ratios and other plain numbers.
    Plain,
}

/// A unit that a person types.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Unit {
    /// Inch.
    #[serde(rename = "in")]
    Inch,
    /// Thousandth of an inch.
    #[serde(rename = "thou")]
    Thou,
    /// Ten-thousandth of an inch.
    #[serde(rename = "tenth")]
    Tenth,
    /// Millimetre.
    #[serde(rename = "mm")]
    Millimetre,
    /// Micrometre.
    #[serde(rename = "um")]
    Micrometre,
    /// Degree Celsius.
    #[serde(rename = "C")]
    Celsius,
    /// Degree Fahrenheit.
    #[serde(rename = "F")]
    Fahrenheit,
    /// Kelvin.
    #[serde(rename = "K")]
    Kelvin,
    /// Pound-force per square inch.
    #[serde(rename = "psi")]
    Psi,
    /// Bar.
    #[serde(rename = "bar")]
    Bar,
    /// Megapascal.
    #[serde(rename = "MPa")]
    Megapascal,
    /// Pound-force.
    #[serde(rename = "lbf")]
    PoundForce,
    /// Kilonewton.
    #[serde(rename = "kN")]
    Kilonewton,
    /// Short ton-force: 2000 lbf.
    #[serde(rename = "short ton")]
    ShortTon,
    /// Metric ton-force: 1000 kgf.
    #[serde(rename = "t")]
    MetricTon,
    /// Second.
    #[serde(rename = "s")]
    Second,
    /// Minute.
    #[serde(rename = "min")]
    Minute,
    /// Cubic foot.
    #[serde(rename = "ft3")]
    CubicFoot,
    /// Cubic metre.
    #[serde(rename = "m3")]
    CubicMetre,
    /// Pound-force foot.
    #[serde(rename = "lbf ft")]
    PoundFoot,
    /// Newton metre.
    #[serde(rename = "N m")]
    NewtonMetre,
    /// No unit.
    #[serde(rename = "")]
    Plain,
}

impl Unit {
    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Inch | Self::Thou | Self::Tenth | Self::Millimetre | Self::Micrometre => {
                Kind::Length
            }
            Self::Celsius | Self::Fahrenheit | Self::Kelvin => Kind::Temperature,
            Self::Psi | Self::Bar | Self::Megapascal => Kind::Pressure,
            Self::PoundForce | Self::Kilonewton | Self::ShortTon | Self::MetricTon => Kind::Force,
            Self::Second | Self::Minute => Kind::Time,
            Self::CubicFoot | Self::CubicMetre => Kind::Volume,
            Self::PoundFoot | Self::NewtonMetre => Kind::Torque,
            Self::Plain => Kind::Plain,
        }
    }

    /// As it is written behind a number.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Thou => "thou",
            Self::Tenth => "tenths",
            Self::Millimetre => "mm",
            Self::Micrometre => "\u{b5}m",
            Self::Celsius => "\u{b0}C",
            Self::Fahrenheit => "\u{b0}F",
            Self::Kelvin => "K",
            Self::Psi => "psi",
            Self::Bar => "bar",
            Self::Megapascal => "MPa",
            Self::PoundForce => "lbf",
            Self::Kilonewton => "kN",
            Self::ShortTon => "short tons",
            Self::MetricTon => "metric tons",
            Self::Second => "s",
            Self::Minute => "min",
            Self::CubicFoot => "ft\u{b3}",
            Self::CubicMetre => "m\u{b3}",
            Self::PoundFoot => "lbf\u{b7}ft",
            Self::NewtonMetre => "N\u{b7}m",
            Self::Plain => "",
        }
    }

    /// SI units in one of it (for a temperature: of its difference).
    #[must_use]
    pub const fn scale(self) -> f64 {
        match self {
            Self::Inch => INCH_M,
            Self::Thou => INCH_M / 1e3,
            Self::Tenth => INCH_M / 1e4,
            Self::Millimetre => 1e-3,
            Self::Micrometre => 1e-6,
            Self::Celsius
            | Self::Kelvin
            | Self::Second
            | Self::CubicMetre
            | Self::NewtonMetre
            | Self::Plain => 1.0,
            Self::PoundFoot => LBF_N * FOOT_M,
            Self::CubicFoot => FOOT_M * FOOT_M * FOOT_M,
            Self::Fahrenheit => 1.0 / 1.8,
            Self::Psi => PSI_PA,
            Self::Bar => 1e5,
            Self::Megapascal => 1e6,
            Self::PoundForce => LBF_N,
            Self::Kilonewton => 1e3,
            Self::ShortTon => 2000.0 * LBF_N,
            Self::MetricTon => 9806.65,
            Self::Minute => 60.0,
        }
    }

    /// A number of this unit in SI. Dividing by a whole number of units per SI
    /// unit (1000 mm per m) rounds once, as the decimal text itself does.
    #[must_use]
    pub fn to_si(self, value: f64) -> f64 {
        match self {
            Self::Celsius => Temperature::from_c(value).as_k(),
            Self::Fahrenheit => Temperature::from_f(value).as_k(),
            Self::Millimetre => value / 1e3,
            Self::Micrometre => value / 1e6,
            _ => value * self.scale(),
        }
    }

    /// An SI number in this unit.
    #[must_use]
    pub fn from_si(self, si: f64) -> f64 {
        match self {
            Self::Celsius => Temperature::from_k(si).as_c(),
            Self::Fahrenheit => Temperature::from_k(si).as_f(),
            Self::Millimetre => si * 1e3,
            Self::Micrometre => si * 1e6,
            _ => si / self.scale(),
        }
    }

    /// The unit that a typed word names, in any case.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        let lower = word.trim().trim_end_matches('.').to_lowercase();
        Some(match lower.as_str() {
            "in" | "inch" | "inches" | "\"" | "\u{2033}" | "''" => Self::Inch,
            "thou" | "thous" | "mil" | "mils" => Self::Thou,
            "tenth" | "tenths" => Self::Tenth,
            "mm" => Self::Millimetre,
            "um" | "\u{b5}m" | "\u{3bc}m" | "micron" | "microns" => Self::Micrometre,
            "c" | "\u{b0}c" => Self::Celsius,
            "f" | "\u{b0}f" => Self::Fahrenheit,
            "k" => Self::Kelvin,
            "psi" => Self::Psi,
            "bar" => Self::Bar,
            "mpa" => Self::Megapascal,
            "lbf" | "lb" | "lbs" => Self::PoundForce,
            "kn" => Self::Kilonewton,
            "short ton" | "short tons" => Self::ShortTon,
            "t" | "metric ton" | "metric tons" | "tonne" | "tonnes" => Self::MetricTon,
            "s" | "sec" | "seconds" => Self::Second,
            "min" | "minutes" => Self::Minute,
            "ft3" | "ft\u{b3}" | "cu ft" | "cubic feet" => Self::CubicFoot,
            "m3" | "m\u{b3}" | "cu m" | "cubic meters" | "cubic metres" => Self::CubicMetre,
            "lbf ft" | "lbf\u{b7}ft" | "lb ft" | "ft lb" | "ft lbf" | "ft lbs" => Self::PoundFoot,
            "n m" | "nm" | "n\u{b7}m" => Self::NewtonMetre,
            _ => return None,
        })
    }
}

/// A number as it was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// The text, trimmed, otherwise untouched.
    pub text: String,
    /// Its unit: typed behind the number, or the assumed one.
    pub unit: Unit,
    /// Its value in SI units.
    pub si: f64,
}

/// Why a text is not a quantity.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ParseError {
    /// Nothing was typed.
    Empty,
    /// Not a number.
    NotANumber {
        /// The text.
        text: String,
    },
    /// A number, then something that is no unit known here.
    UnknownUnit {
        /// The unknown word.
        word: String,
    },
    /// A unit that measures something else.
    WrongKind {
        /// The unit typed.
        unit: Unit,
        /// A unit that would do.
        wanted: Unit,
    },
    /// Two marks that could each be the decimal mark: `1,234.5`.
    TwoMarks {
        /// The text.
        text: String,
    },
    /// Longer than any number a person types.
    TooLong,
}

impl core::fmt::Display for ParseError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Empty => write!(f, "nothing entered: type a number"),
            Self::NotANumber { text } => {
                write!(
                    f,
                    "\"{text}\" is not a number: type digits, for example 4.2589"
                )
            }
            Self::UnknownUnit { word } => write!(
                f,
                "\"{word}\" is not a unit known here: leave it out or use in, thou, mm, um"
            ),
            Self::WrongKind { unit, wanted } => write!(
                f,
                "{} does not measure this: use {}",
                unit.symbol(),
                wanted.symbol()
            ),
            Self::TwoMarks { text } => write!(
                f,
                "\"{text}\" has two decimal marks: use one, and no mark between thousands"
            ),
            Self::TooLong => write!(f, "too long for a number: at most 40 characters"),
        }
    }
}

/// Reads `text`; a number without a unit is taken in `assumed`.
///
/// # Errors
/// [`ParseError`] when it is empty, no number, ambiguous, or of another kind.
///
/// # Example
/// ```
/// use coldseat_core::quantity::parse::{parse, Unit};
/// let d = parse("4,2589", Unit::Inch).unwrap();
/// assert_eq!(d.text, "4,2589");
/// assert!((d.si - 4.2589 * 0.0254).abs() < 1e-15);
/// assert!((parse("43 thou", Unit::Inch).unwrap().si - 0.043 * 0.0254).abs() < 1e-15);
/// ```
pub fn parse(text: &str, assumed: Unit) -> Result<Typed, ParseError> {
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return Err(ParseError::Empty);
    }
    if trimmed.chars().count() > 40 {
        return Err(ParseError::TooLong);
    }
    let plain: String = trimmed
        .chars()
        .map(|c| match c {
            '\u{2212}' | '\u{2013}' => '-',
            '\u{a0}' | '\u{202f}' => ' ',
            other => other,
        })
        .collect();
    let end = plain
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '+' | '/' | ' ')))
        .unwrap_or(plain.len());
    let (number, word) = plain.split_at(end);
    let unit = if word.trim().is_empty() {
        assumed
    } else if number.trim().is_empty() {
        return Err(ParseError::NotANumber {
            text: trimmed.to_owned(),
        });
    } else {
        Unit::from_word(word).ok_or_else(|| ParseError::UnknownUnit {
            word: word.trim().to_owned(),
        })?
    };
    if unit.kind() != assumed.kind() {
        return Err(ParseError::WrongKind {
            unit,
            wanted: assumed,
        });
    }
    let value = number_from(number.trim(), trimmed)?;
    let si = unit.to_si(value);
    if !si.is_finite() {
        return Err(ParseError::NotANumber {
            text: trimmed.to_owned(),
        });
    }
    Ok(Typed {
        text: trimmed.to_owned(),
        unit,
        si,
    })
}

/// A decimal or a fraction, signed.
fn number_from(number: &str, whole_text: &str) -> Result<f64, ParseError> {
    let bad = || ParseError::NotANumber {
        text: whole_text.to_owned(),
    };
    let (sign, digits) = match number.as_bytes().first() {
        Some(b'-') => (-1.0, number[1..].trim_start()),
        Some(b'+') => (1.0, number[1..].trim_start()),
        _ => (1.0, number),
    };
    if let Some((top, bottom)) = digits.split_once('/') {
        let top = top.trim();
        let (whole, top) = match top.rfind([' ', '-']) {
            Some(at) => (
                unsigned(top[..at].trim(), whole_text)?,
                top[at + 1..].trim(),
            ),
            None => (0.0, top),
        };
        let (top, bottom) = (
            unsigned(top, whole_text)?,
            unsigned(bottom.trim(), whole_text)?,
        );
        if bottom == 0.0 {
            return Err(bad());
        }
        return Ok(sign * (whole + top / bottom));
    }
    Ok(sign * unsigned(digits, whole_text)?)
}

/// Digits with at most one decimal mark, `.` or `,`.
fn unsigned(digits: &str, whole_text: &str) -> Result<f64, ParseError> {
    let bad = || ParseError::NotANumber {
        text: whole_text.to_owned(),
    };
    let marks = digits.chars().filter(|c| matches!(c, '.' | ',')).count();
    if marks > 1 {
        return Err(ParseError::TwoMarks {
            text: whole_text.to_owned(),
        });
    }
    let only_digits = digits
        .chars()
        .all(|c| c.is_ascii_digit() || matches!(c, '.' | ','));
    if !only_digits || !digits.chars().any(|c| c.is_ascii_digit()) {
        return Err(bad());
    }
    digits.replace(',', ".").parse::<f64>().map_err(|_| bad())
}

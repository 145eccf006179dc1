//! Typed text, read.

use crate::quantity::parse::{ParseError, Unit, parse};
use crate::quantity::{INCH_M, LBF_N, PSI_PA};

#[track_caller]
fn reads(text: &str, unit: Unit, si: f64) {
    let typed = parse(text, unit).unwrap();
    assert!(
        (typed.si - si).abs() <= 1e-15 * si.abs().max(1.0),
        "{text}: {} not {si}",
        typed.si
    );
    assert_eq!(typed.text, text.trim());
}

#[test]
fn the_ways_a_length_is_typed() {
    reads("4.2589", Unit::Inch, 4.2589 * INCH_M);
    reads("4,2589", Unit::Inch, 4.2589 * INCH_M);
    reads(".0043", Unit::Inch, 0.0043 * INCH_M);
    reads(" 4 17/64 ", Unit::Inch, (4.0 + 17.0 / 64.0) * INCH_M);
    reads("4-17/64\"", Unit::Inch, (4.0 + 17.0 / 64.0) * INCH_M);
    reads("43 thou", Unit::Inch, 0.043 * INCH_M);
    reads("5 tenths", Unit::Millimetre, 0.0005 * INCH_M);
    reads("108,21 mm", Unit::Inch, 0.10821);
    reads("\u{2212}12 \u{b5}m", Unit::Inch, -12e-6);
    reads("-1/2", Unit::Inch, -0.5 * INCH_M);
}

#[test]
fn the_other_kinds() {
    reads("68 F", Unit::Celsius, 293.15);
    reads("20", Unit::Celsius, 293.15);
    reads("2500 psi", Unit::Bar, 2500.0 * PSI_PA);
    reads("10 short tons", Unit::Kilonewton, 20_000.0 * LBF_N);
    reads("1.5 min", Unit::Second, 90.0);
}

#[test]
fn what_is_refused_and_why() {
    assert_eq!(parse("  ", Unit::Inch), Err(ParseError::Empty));
    assert!(matches!(
        parse("abc", Unit::Inch),
        Err(ParseError::NotANumber { .. })
    ));
    assert!(matches!(
        parse("1,234.5", Unit::Inch),
        Err(ParseError::TwoMarks { .. })
    ));
    assert!(matches!(
        parse("1..2", Unit::Inch),
        Err(ParseError::TwoMarks { .. })
    ));
    assert!(matches!(
        parse("1e5", Unit::Inch),
        Err(ParseError::UnknownUnit { .. })
    ));
    assert!(matches!(
        parse("4 furlongs", Unit::Inch),
        Err(ParseError::UnknownUnit { .. })
    ));
    assert!(matches!(
        parse("4 psi", Unit::Inch),
        Err(ParseError::WrongKind { .. })
    ));
    assert!(matches!(
        parse("1/0", Unit::Inch),
        Err(ParseError::NotANumber { .. })
    ));
    assert!(matches!(
        parse("--4", Unit::Inch),
        Err(ParseError::NotANumber { .. })
    ));
    assert!(matches!(
        parse("NaN", Unit::Inch),
        Err(ParseError::NotANumber { .. })
    ));
    assert_eq!(parse(&"9".repeat(41), Unit::Inch), Err(ParseError::TooLong));
}

/// By hand: 100 lbf ft = 100 x 4.448 221 615 260 5 N x 0.3048 m = 135.581 794 8 N m.
#[test]
fn a_torque_in_either_unit() {
    let inch = parse("100 ft lbs", Unit::PoundFoot).unwrap();
    assert!((inch.si - 135.581_794_8).abs() < 1e-6, "{}", inch.si);
    assert_eq!(
        parse("135 N m", Unit::PoundFoot).unwrap().unit,
        Unit::NewtonMetre
    );
    assert!(parse("100 lbf", Unit::PoundFoot).is_err());
}

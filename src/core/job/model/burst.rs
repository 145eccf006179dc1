//! What a gauge says, as readings of a place: the text that came as keys, taken
//! apart and judged before it stands anywhere.

use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::field_kind::{Measure, UnitSystem};
use crate::job::model::place::Millis;
use crate::job::model::reading::Why;
use crate::quantity::burst::pieces;
use crate::quantity::format::{DIGITS_MOST, from_right};
use crate::quantity::parse::ParseError;

/// How digits without a point are taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Digits {
    /// As they stand: 12 is 12.
    AsTheyStand,
    /// Counted from the last decimal, as the pad does: 12 is 0.0012 in.
    FromRight,
}

/// One of the readings in a burst.
#[derive(Clone, Debug, PartialEq)]
pub enum Said {
    /// A number in the range of its field: its text as it came, its own unit beside
    /// it where it names one.
    Reading(Entry),
    /// No reading of this field: the text, and why.
    Refused(String, Why),
}

/// What a text that came as keys says of a field, in order: one reading, or as many
/// as came in one go. Nothing of it is left out.
#[must_use]
pub fn said(text: &str, field: Field, units: UnitSystem, digits: Digits, at: Millis) -> Vec<Said> {
    let pieces = pieces(text);
    pieces
        .into_iter()
        .map(|piece| one(piece, field, units, digits, at))
        .collect()
}

fn one(text: &str, field: Field, units: UnitSystem, digits: Digits, at: Millis) -> Said {
    let unit = field.unit(units);
    let counts = digits == Digits::FromRight && field.spec().measure == Measure::Length;
    let counted = counts.then(|| from_right(text, unit)).flatten();
    let text = match counted {
        Some(counted) => counted,
        None => text.trim().to_owned(),
    };
    if field.says_none(&text) {
        return Said::Reading(Entry::new(text, unit, at));
    }
    // A bar code: so many digits are no reading in any unit.
    if text.bytes().filter(u8::is_ascii_digit).count() > DIGITS_MOST {
        return Said::Refused(text, Why::NotRead(ParseError::TooLong));
    }
    match field.read(&text, unit) {
        Err(error) => Said::Refused(text, Why::NotRead(error)),
        Ok(typed) if !field.spec().bound.contains(typed.si) => {
            Said::Refused(text, Why::OutOfRange(&field.spec().bound))
        }
        Ok(typed) => Said::Reading(Entry::new(typed.text, typed.unit, at)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::parse::Unit;
    use proptest::prelude::*;

    const DEPTH: Field = Field::CounterboreDepth;
    const HEIGHT: Field = Field::SeatHeight;

    #[track_caller]
    fn reads(field: Field, text: &str, as_typed: &str, unit: Unit) {
        let all = said(text, field, UnitSystem::Inch, Digits::AsTheyStand, 7);
        assert_eq!(
            all,
            [Said::Reading(Entry::new(as_typed, unit, 7))],
            "{text}"
        );
    }

    #[test]
    fn a_reading_is_kept_as_it_came_with_its_own_unit() {
        reads(DEPTH, "  .4375", ".4375", Unit::Inch);
        reads(DEPTH, "+0,4375", "+0,4375", Unit::Inch);
        // In an inch job: 11.11 mm, shown as typed, converted in the core alone.
        reads(DEPTH, "11.11 mm", "11.11 mm", Unit::Millimetre);
        reads(DEPTH, "11,11mm", "11,11mm", Unit::Millimetre);
        reads(DEPTH, "0.4375\"", "0.4375\"", Unit::Inch);
        reads(HEIGHT, "-0.0021", "-0.0021", Unit::Inch);
        reads(HEIGHT, "-  .0021", "-  .0021", Unit::Inch);
        let kept = Entry::new("11.11 mm", Unit::Millimetre, 7);
        assert_eq!(kept.shown_in(Unit::Inch), "11.11 mm");
        let inches = Entry::new("0.4375\"", Unit::Inch, 7);
        assert_eq!(inches.shown_in(Unit::Millimetre), "0.4375\"");
    }

    #[test]
    fn a_bar_code_is_refused() {
        for text in [
            "PART-4471",
            "A0B1",
            "40170725",
            "4006381333931",
            "123456789012345678901234567890",
            "0.12340.1234",
            "..0055",
            "0.4375 psi",
            "",
        ] {
            for digits in [Digits::AsTheyStand, Digits::FromRight] {
                let all = said(text, DEPTH, UnitSystem::Inch, digits, 7);
                assert!(
                    matches!(all.as_slice(), [Said::Refused(kept, _)] if kept.trim() == text || digits == Digits::FromRight),
                    "{text}: {all:?}"
                );
            }
        }
    }

    #[test]
    fn two_readings_in_one_go_are_two() {
        let all = said("0.4375 AB", DEPTH, UnitSystem::Inch, Digits::AsTheyStand, 7);
        assert!(matches!(all.as_slice(), [Said::Refused(..)]));
        let all = said(
            "0.4375 99.5 0.4376",
            DEPTH,
            UnitSystem::Inch,
            Digits::AsTheyStand,
            7,
        );
        assert!(
            matches!(
                all.as_slice(),
                [Said::Reading(_), Said::Refused(..), Said::Reading(_)]
            ),
            "{all:?}"
        );
    }

    #[test]
    fn digits_count_from_the_right_where_the_field_does() {
        let of = |text, digits| said(text, HEIGHT, UnitSystem::Inch, digits, 7);
        let reading = |text: &str| [Said::Reading(Entry::new(text, Unit::Inch, 7))];
        assert_eq!(of("142", Digits::FromRight), reading("0.0142"));
        assert_eq!(of("0142", Digits::FromRight), reading("0.0142"));
        assert_eq!(of("0.0142", Digits::FromRight), reading("0.0142"));
        assert!(matches!(
            of("142", Digits::AsTheyStand).as_slice(),
            [Said::Refused(..)]
        ));
        // A temperature is no length.
        let warm = said(
            "68",
            Field::BlockTemperature,
            UnitSystem::Inch,
            Digits::FromRight,
            7,
        );
        let wanted = Entry::new("68", Unit::Fahrenheit, 7);
        assert_eq!(warm, [Said::Reading(wanted)]);
    }

    proptest! {
        #[test]
        fn what_is_taken_is_a_number_in_its_range_and_nothing_vanishes(
            text in "[-+]?[0-9]{0,14}[.,]?[0-9]{0,6} ?(mm|in|\"|thou|x)?( [0-9.]{1,6})?"
        ) {
            for digits in [Digits::AsTheyStand, Digits::FromRight] {
                let all = said(&text, DEPTH, UnitSystem::Inch, digits, 7);
                prop_assert!(!all.is_empty());
                for said in all {
                    if let Said::Reading(entry) = said {
                        let typed = DEPTH.read(&entry.text, entry.unit);
                        prop_assert!(typed.is_ok_and(|t| DEPTH.spec().bound.contains(t.si)));
                    }
                }
            }
        }
    }
}

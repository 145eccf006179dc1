//! Spoken: what is wanted next, what was read, what it means. Digits as a
//! machinist says them; thousandths of an inch, hundredths of a millimetre.

use super::long::next as advice;
use super::names::{field, place};
use crate::words::{Decimal, decimal, made as w};
use coldseat_core::ask::format::number;
use coldseat_core::ask::{Length, Next, Owner, Place, Signal, StepReport, Unit, UnitSystem};

/// Something that is said.
#[derive(Clone, Debug, PartialEq)]
pub enum Spoken {
    /// What is measured next.
    Wanted(Place),
    /// What was read, as it was typed, in the unit of its field.
    Read(String, Unit),
    /// It is asked about.
    AskedAbout,
    /// It was no reading.
    Refused,
    /// It came and no field waited.
    NoField,
    /// What the step says now.
    Verdict(Box<StepReport>, UnitSystem),
}

/// Its words.
#[must_use]
pub fn spoken(spoken: &Spoken) -> String {
    match spoken {
        Spoken::Wanted(at) => wanted(*at),
        Spoken::Read(text, unit) => read(text, *unit),
        Spoken::AskedAbout => w::SPOKEN_ASKED_ABOUT.get().to_owned(),
        Spoken::Refused => w::SPOKEN_REFUSED.get().to_owned(),
        Spoken::NoField => w::SPOKEN_NO_FIELD.get().to_owned(),
        Spoken::Verdict(report, units) => verdict(report, *units),
    }
}

const DIGITS: [crate::words::Word; 10] = [
    w::DIGITS_OH,
    w::DIGITS_ONE,
    w::DIGITS_TWO,
    w::DIGITS_THREE,
    w::DIGITS_FOUR,
    w::DIGITS_FIVE,
    w::DIGITS_SIX,
    w::DIGITS_SEVEN,
    w::DIGITS_EIGHT,
    w::DIGITS_NINE,
];
const COUNTED: [crate::words::Word; 17] = [
    w::COUNTED_ZERO,
    w::COUNTED_ONE,
    w::COUNTED_TWO,
    w::COUNTED_THREE,
    w::COUNTED_FOUR,
    w::COUNTED_FIVE,
    w::COUNTED_SIX,
    w::COUNTED_SEVEN,
    w::COUNTED_EIGHT,
    w::COUNTED_NINE,
    w::COUNTED_TEN,
    w::COUNTED_ELEVEN,
    w::COUNTED_TWELVE,
    w::COUNTED_THIRTEEN,
    w::COUNTED_FOURTEEN,
    w::COUNTED_FIFTEEN,
    w::COUNTED_SIXTEEN,
];

/// A small whole number in words.
fn counted(number: u8) -> String {
    COUNTED
        .get(usize::from(number))
        .map_or_else(|| number.to_string(), |word| String::from(*word))
}

/// The name of a field without what stands in brackets behind it.
fn short(name: &str) -> String {
    let bare = name.split(" (").next().unwrap_or(name);
    bare.to_lowercase()
}

/// What a person says for the mark before decimals.
fn point() -> &'static str {
    match decimal() {
        Decimal::Point => w::SPOKEN_POINT.get(),
        Decimal::Comma => w::SPOKEN_COMMA.get(),
    }
}

fn wanted(at: Place) -> String {
    let mut parts = Vec::new();
    if let Owner::Cylinder(cylinder) = at.owner {
        parts.push(counted(cylinder));
    }
    parts.push(short(field(at.field)));
    let which = place(at.field, at.index);
    // "6 o'clock", "pull 3": their numbers in words.
    let said: Vec<String> = which
        .split(' ')
        .map(|word| {
            let (digits, rest) = word.split_at(word.trim_end_matches(',').len());
            digits
                .parse()
                .map_or_else(|_| word.to_owned(), |n: u8| counted(n) + rest)
        })
        .collect();
    if !which.is_empty() {
        parts.push(said.join(" "));
    }
    parts.join(", ")
}

/// Digits one by one, behind the point alone where nothing stands before it.
fn read(text: &str, unit: Unit) -> String {
    let own = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '\u{2212}' | '+');
    let number: String = text.chars().filter(|c| own(*c)).collect();
    let word = text.trim_start_matches(|c: char| own(c) || c == ' ').trim();
    let is_inch = unit == Unit::Inch && word.is_empty();
    let (whole, rest) = match number.split_once(['.', ',']) {
        Some((whole, rest)) => (whole, Some(rest)),
        None => (number.as_str(), None),
    };
    let mut parts: Vec<&str> = Vec::new();
    if whole.starts_with(['-', '\u{2212}']) {
        parts.push(w::SPOKEN_MINUS.get());
    }
    let digits = |text: &str| -> Vec<&str> {
        text.bytes()
            .filter(u8::is_ascii_digit)
            .filter_map(|b| DIGITS.get(usize::from(b - b'0')).map(|word| word.get()))
            .collect()
    };
    let whole = whole.trim_start_matches(|c: char| !c.is_ascii_digit());
    let is_nothing = whole.bytes().all(|b| b == b'0');
    match rest {
        Some(rest) => {
            if !is_nothing {
                parts.extend(digits(whole));
                parts.push(point());
            } else if !is_inch {
                parts.push(point());
            }
            parts.extend(digits(rest));
        }
        None => parts.extend(digits(whole)),
    }
    let unit = match Unit::from_word(word) {
        Some(Unit::Millimetre) => w::READ_UNIT_MILLIMETRE.get(),
        Some(Unit::Inch) => w::READ_UNIT_INCH.get(),
        Some(Unit::Thou) => w::READ_UNIT_THOU.get(),
        _ => word,
    };
    if !unit.is_empty() {
        parts.push(unit);
    }
    parts.join(" ")
}

/// A length as it is said at the bench: thousandths, or hundredths of a millimetre.
fn small(by: Length, units: UnitSystem) -> String {
    let text = match units {
        UnitSystem::Inch => number(by.as_m().abs(), Unit::Thou),
        UnitSystem::Metric => number(by.as_m().abs(), Unit::Millimetre),
    };
    let (whole, rest) = text.split_once('.').unwrap_or((text.as_str(), ""));
    let digits = |text: &str| {
        let said: Vec<&str> = text
            .bytes()
            .filter_map(|b| {
                DIGITS
                    .get(usize::from(b.wrapping_sub(b'0')))
                    .map(|word| word.get())
            })
            .collect();
        said.join(" ")
    };
    let before = match whole.parse::<u8>() {
        Ok(few) if few <= 16 => counted(few),
        _ => digits(whole),
    };
    match units {
        UnitSystem::Inch => w::SmallInch {
            rest: &digits(rest),
            before: &before,
            point: &point(),
        }
        .say(),
        UnitSystem::Metric => w::SmallMetric {
            rest: &digits(rest),
            before: &before,
            point: &point(),
        }
        .say(),
    }
}

fn verdict(report: &StepReport, units: UnitSystem) -> String {
    let by = |l: &Length| small(*l, units);
    match &report.next {
        Next::CutDeeper(l) => w::VerdictCutDeeper { by: &by(l) }.say(),
        Next::TooDeep(l) => w::VerdictTooDeep { by: &by(l) }.say(),
        Next::HoneMore(l) => w::VerdictHoneMore { by: &by(l) }.say(),
        Next::FitLoose(l) => w::VerdictFitLoose { by: &by(l) }.say(),
        Next::StoppedHigh(l) | Next::NotSeated(l) => {
            w::VerdictStoppedHighNotSeated { by: &by(l) }.say()
        }
        Next::Tilted(l) => w::VerdictTilted { by: &by(l) }.say(),
        Next::Answer(at) => w::VerdictAnswer { at: &wanted(*at) }.say(),
        Next::AtDepth => w::VERDICT_AT_DEPTH.get().to_owned(),
        Next::Seated => w::VERDICT_SEATED.get().to_owned(),
        // A dash is no word.
        other => {
            let signal = super::labels::signal(report.signal);
            let words = advice(other, units).replace('\u{2013}', ",");
            match report.signal {
                Signal::None => words,
                _ => format!("{signal}. {words}"),
            }
        }
    }
}

/// Its choices.
#[must_use]
pub fn speech(always: bool) -> &'static str {
    if always {
        w::SPEECH_AFTER_EVERY_READING.get()
    } else {
        w::SPEECH_WHEN_SAY_IT.get()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, show_for_test};
    use coldseat_core::ask::Field;

    #[test]
    fn what_is_wanted() {
        show_for_test(Language::English);
        let at = Place::of_cylinder(3, Field::CounterboreDepth, 2);
        assert_eq!(
            spoken(&Spoken::Wanted(at)),
            "three, counterbore depth, six o'clock"
        );
        let at = Place::of_cylinder(12, Field::PullReleased, 1);
        assert!(spoken(&Spoken::Wanted(at)).ends_with("pull two"));
    }

    #[test]
    fn what_was_read() {
        show_for_test(Language::English);
        for (text, unit, said) in [
            ("0.2090", Unit::Inch, "two oh nine oh"),
            (".2090", Unit::Inch, "two oh nine oh"),
            ("4,4412", Unit::Inch, "four point four four one two"),
            ("-0.0021", Unit::Inch, "minus oh oh two one"),
            ("12.70 mm", Unit::Inch, "one two point seven oh millimeters"),
            ("0.043", Unit::Millimetre, "point oh four three"),
            ("68", Unit::Fahrenheit, "six eight"),
        ] {
            assert_eq!(spoken(&Spoken::Read(text.to_owned(), unit)), said, "{text}");
        }
    }

    #[test]
    fn lengths_are_said_in_thousandths() {
        show_for_test(Language::English);
        let thou = Length::from_thou;
        assert_eq!(small(thou(4.3), UnitSystem::Inch), "four point three thou");
        assert_eq!(small(thou(0.6), UnitSystem::Inch), "zero point six thou");
        assert_eq!(small(thou(20.0), UnitSystem::Inch), "two oh point oh thou");
        let mm = Length::from_m(0.11e-3);
        assert_eq!(
            small(mm, UnitSystem::Metric),
            "zero point one one oh millimeters"
        );
    }

    #[test]
    fn the_same_in_spanish() {
        show_for_test(Language::Spanish);
        let at = Place::of_cylinder(3, Field::CounterboreDepth, 2);
        assert_eq!(
            spoken(&Spoken::Wanted(at)),
            "tres, profundidad de la caja, a las seis"
        );
        let read = Spoken::Read("-4.4412".to_owned(), Unit::Inch);
        assert_eq!(spoken(&read), "menos cuatro punto cuatro cuatro uno dos");
        let thou = Length::from_thou;
        assert_eq!(
            small(thou(4.3), UnitSystem::Inch),
            "cuatro punto tres mil\u{e9}simas"
        );
    }
}

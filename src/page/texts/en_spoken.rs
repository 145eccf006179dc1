//! English, spoken: what is wanted next, what was read, what it means. Digits as a
//! machinist says them; thousandths of an inch, hundredths of a millimetre.

use super::en_long::next as advice;
use super::en_names::{field, place};
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
        Spoken::AskedAbout => "asked about".to_owned(),
        Spoken::Refused => "refused".to_owned(),
        Spoken::NoField => "no field waits".to_owned(),
        Spoken::Verdict(report, units) => verdict(report, *units),
    }
}

const DIGITS: [&str; 10] = [
    "oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
];
const COUNTED: [&str; 17] = [
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen",
];

/// A small whole number in words.
fn counted(number: u8) -> String {
    COUNTED
        .get(usize::from(number))
        .map_or_else(|| number.to_string(), |word| (*word).to_owned())
}

/// The name of a field without what stands in brackets behind it.
fn short(name: &str) -> String {
    let bare = name.split(" (").next().unwrap_or(name);
    bare.to_lowercase()
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
        parts.push("minus");
    }
    let digits = |text: &str| -> Vec<&str> {
        text.bytes()
            .filter(u8::is_ascii_digit)
            .filter_map(|b| DIGITS.get(usize::from(b - b'0')).copied())
            .collect()
    };
    let whole = whole.trim_start_matches(|c: char| !c.is_ascii_digit());
    let is_nothing = whole.bytes().all(|b| b == b'0');
    match rest {
        Some(rest) => {
            if !is_nothing {
                parts.extend(digits(whole));
                parts.push("point");
            } else if !is_inch {
                parts.push("point");
            }
            parts.extend(digits(rest));
        }
        None => parts.extend(digits(whole)),
    }
    let unit = match Unit::from_word(word) {
        Some(Unit::Millimetre) => "millimeters",
        Some(Unit::Inch) => "inches",
        Some(Unit::Thou) => "thou",
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
            .filter_map(|b| DIGITS.get(usize::from(b.wrapping_sub(b'0'))).copied())
            .collect();
        said.join(" ")
    };
    let before = match whole.parse::<u8>() {
        Ok(few) if few <= 16 => counted(few),
        _ => digits(whole),
    };
    match units {
        UnitSystem::Inch => format!("{before} point {} thou", digits(rest)),
        UnitSystem::Metric => format!("{before} point {} millimeters", digits(rest)),
    }
}

fn verdict(report: &StepReport, units: UnitSystem) -> String {
    let by = |l: &Length| small(*l, units);
    match &report.next {
        Next::CutDeeper(l) => format!("cut {} more", by(l)),
        Next::TooDeep(l) => format!("stop, {} too deep", by(l)),
        Next::HoneMore(l) => format!("hone {} more", by(l)),
        Next::FitLoose(l) => format!("stop, {} too loose", by(l)),
        Next::StoppedHigh(l) | Next::NotSeated(l) => format!("stop, {} high", by(l)),
        Next::Tilted(l) => format!("look, tilted by {}", by(l)),
        Next::Answer(at) => format!("asked about: {}", wanted(*at)),
        Next::AtDepth => "at depth".to_owned(),
        Next::Seated => "home".to_owned(),
        // A dash is no word.
        other => {
            let signal = super::en::signal(report.signal);
            let words = advice(other, units).replace('\u{2013}', ",");
            match report.signal {
                Signal::None => words,
                _ => format!("{signal}. {words}"),
            }
        }
    }
}

/// Says what is wanted and what the step means.
pub const SAY_IT: &str = "Say it";
/// When the page speaks.
pub const SPEECH: &str = "Speech";
/// Never.
pub const SPEECH_OFF: &str = "off";
/// Its choices.
#[must_use]
pub const fn speech(always: bool) -> &'static str {
    if always {
        "after every reading"
    } else {
        "when \"Say it\" is tapped"
    }
}
/// With whose voice.
pub const SPEECH_WHAT: &str = "With this device's voices. Those that need no network come first.";
/// There is none.
pub const NO_VOICE: &str =
    "This browser has no voice for English: the page does not speak. Tones and words still work.";

#[cfg(test)]
mod tests {
    use super::*;
    use coldseat_core::ask::Field;

    #[test]
    fn what_is_wanted() {
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
}

//! What the keys of the number pad do to the text under the hand.
//!
//! Counted from the right, digits fill up from the last decimal, as a lathe
//! hand says them: 4, 3 gives 0.0043. A decimal point turns what was typed
//! into ordinary digits: 4, point, 2 gives 4.2. Counted as the last digits they
//! stand in the place of those of the reading before: after 4.4412 the keys 1, 5
//! give 4.4415.

use coldseat_core::ask::format::{decimals, fixed, last_digit};
use coldseat_core::ask::{Unit, parse};

/// A key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Key {
    /// A digit.
    Digit(u8),
    /// The decimal point.
    Point,
    /// Plus or minus, proud or low.
    Sign,
    /// Delete one.
    Delete,
    /// Up by the smallest digit shown.
    Up,
    /// Down by it.
    Down,
}

/// How digits are taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counting {
    /// From the right: 43 is 0.0043.
    FromRight,
    /// The last digits of the reading before: 43 is 4.4443.
    Last,
    /// As typed.
    AsTyped,
}

/// What is being typed.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Typing {
    /// Digits since the hand came here; `None`: nothing typed yet, or typed
    /// otherwise.
    pub digits: Option<String>,
    /// Whether anything was typed since the hand came here.
    pub begun: bool,
    /// The reading before, whose last digits are typed; empty: digits count from
    /// the right.
    pub after: String,
}

/// Longest text the pad makes.
const MOST: usize = 12;

/// The text after a key.
#[must_use]
pub fn press(text: &str, key: Key, typing: &mut Typing, counting: Counting, unit: Unit) -> String {
    match key {
        Key::Digit(digit) => {
            let negative = typing.begun && text.starts_with('-');
            if counting == Counting::AsTyped || (typing.begun && typing.digits.is_none()) {
                let kept = if typing.begun { text } else { "" };
                typing.begun = true;
                typing.digits = None;
                return if kept.len() >= MOST {
                    kept.to_owned()
                } else {
                    format!("{kept}{digit}")
                };
            }
            let mut digits = typing.digits.take().unwrap_or_default();
            if digits.len() < MOST {
                digits.push(char::from(b'0' + digit % 10));
            }
            typing.begun = true;
            let shown = shown(&digits, &typing.after, unit);
            typing.digits = Some(digits);
            signed(negative, &shown)
        }
        Key::Point => {
            let negative = typing.begun && text.starts_with('-');
            let whole = match typing.digits.take() {
                Some(digits) => {
                    let trimmed = digits.trim_start_matches('0');
                    if trimmed.is_empty() {
                        "0".into()
                    } else {
                        trimmed.to_owned()
                    }
                }
                None if typing.begun => text.trim_start_matches('-').to_owned(),
                None => "0".to_owned(),
            };
            typing.begun = true;
            if whole.contains(['.', ',']) {
                return text.to_owned();
            }
            signed(negative, &format!("{whole}."))
        }
        Key::Sign => {
            if text.is_empty() {
                // A sign first; the digits after it still count.
                typing.digits = Some(String::new());
            }
            typing.begun = true;
            match text.strip_prefix(['-', '\u{2212}']) {
                Some(rest) => rest.to_owned(),
                None => format!("-{text}"),
            }
        }
        Key::Delete => {
            typing.begun = true;
            if let Some(digits) = typing.digits.as_mut() {
                digits.pop();
                if digits.is_empty() {
                    return String::new();
                }
                return signed(text.starts_with('-'), &shown(digits, &typing.after, unit));
            }
            let mut shorter = text.to_owned();
            shorter.pop();
            if shorter.is_empty() {
                // As if the hand had just come here: digits count again.
                typing.begun = false;
                typing.digits = None;
            }
            shorter
        }
        Key::Up | Key::Down => {
            let Ok(typed) = parse(text, unit) else {
                return text.to_owned();
            };
            typing.begun = true;
            typing.digits = None;
            let digits = decimals(unit);
            let step = last_digit(unit);
            let sign = if key == Key::Up { 1.0 } else { -1.0 };
            fixed(unit.from_si(typed.si) + sign * step, digits)
        }
    }
}

/// The text after a key of a keyboard in a field that counts: what the browser made
/// of it, over what stood there. The same digits mean the same as on the pad; with a
/// point, a unit or a fraction behind them they are what was typed.
#[must_use]
pub fn keyed(typed: &str, stood: &str, typing: &mut Typing, unit: Unit) -> String {
    let digits = typing.digits.take();
    typing.begun = !typed.is_empty();
    let sign = |text: &str| text.starts_with(['-', '\u{2212}']);
    let bare = |text: &str| text.trim_start_matches(['-', '\u{2212}']).to_owned();
    let all_digits = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    let mut count = |digits: String| {
        let text = signed(sign(typed), &shown(&digits, &typing.after, unit));
        typing.digits = Some(digits);
        text
    };
    if let Some(mut digits) = digits {
        match typed.strip_prefix(stood) {
            // A key that changes nothing.
            Some("") => return count(digits),
            Some(more) if all_digits(more) => {
                digits.push_str(more);
                digits.truncate(MOST);
                return count(digits);
            }
            Some(more) => return signed(sign(typed), &format!("{digits}{more}")),
            None if stood.strip_prefix(typed).is_some_and(|cut| cut.len() == 1) => {
                digits.pop();
                return if digits.is_empty() {
                    typing.begun = false;
                    String::new()
                } else {
                    count(digits)
                };
            }
            None => {}
        }
    }
    let now = bare(typed);
    if all_digits(&now) && now.len() <= MOST {
        return count(now);
    }
    typed.to_owned()
}

/// Digits as they are shown: from the right, or over the last ones of a reading.
fn shown(digits: &str, after: &str, unit: Unit) -> String {
    let kept = after.chars().filter(char::is_ascii_digit).count();
    if digits.len() >= kept {
        return placed(digits, decimals(unit));
    }
    let mut left = kept - digits.len();
    let mut typed = digits.chars();
    let over = |c: char| {
        if !c.is_ascii_digit() {
            return c;
        }
        if left > 0 {
            left -= 1;
            return c;
        }
        typed.next().unwrap_or(c)
    };
    after.chars().map(over).collect()
}

/// Digits with the point before the last `decimals` of them.
fn placed(digits: &str, decimals: usize) -> String {
    if decimals == 0 {
        return digits.to_owned();
    }
    let padded = format!("{digits:0>width$}", width = decimals + 1);
    let (whole, rest) = padded.split_at(padded.len() - decimals);
    let whole = whole.trim_start_matches('0');
    let whole = if whole.is_empty() { "0" } else { whole };
    format!("{whole}.{rest}")
}

fn signed(negative: bool, text: &str) -> String {
    if negative {
        format!("-{text}")
    } else {
        text.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn types(before: &str, keys: &[Key], counting: Counting, unit: Unit, after: &str) {
        let mut typing = Typing::default();
        let mut text = before.to_owned();
        for key in keys {
            text = press(&text, *key, &mut typing, counting, unit);
        }
        assert_eq!(text, after);
    }

    use Counting::{AsTyped, FromRight};
    use Key::{Delete, Digit, Down, Point, Sign, Up};

    #[test]
    fn digits_count_from_the_right() {
        types("", &[Digit(4), Digit(3)], FromRight, Unit::Inch, "0.0043");
        types(
            "",
            &[Digit(4), Digit(3)],
            FromRight,
            Unit::Millimetre,
            "0.043",
        );
        let od = [4, 4, 4, 1, 2].map(Digit);
        types("", &od, FromRight, Unit::Inch, "4.4412");
        types(
            "",
            &[Digit(4), Digit(3), Delete],
            FromRight,
            Unit::Inch,
            "0.0004",
        );
        types(
            "",
            &[Digit(4), Delete, Digit(5)],
            FromRight,
            Unit::Inch,
            "0.0005",
        );
        types(
            "",
            &[Digit(3), Digit(0), Digit(0)],
            FromRight,
            Unit::Psi,
            "300",
        );
    }

    #[test]
    fn the_last_digits_stand_in_those_of_the_reading_before() {
        let after = |keys: &[Key]| {
            let mut typing = Typing {
                after: "4.4412".to_owned(),
                ..Typing::default()
            };
            let mut text = String::new();
            for key in keys {
                text = press(&text, *key, &mut typing, Counting::Last, Unit::Inch);
            }
            text
        };
        assert_eq!(after(&[Digit(5)]), "4.4415");
        assert_eq!(after(&[Digit(0), Digit(9)]), "4.4409");
        assert_eq!(after(&[Digit(0), Digit(9), Delete]), "4.4410");
        assert_eq!(after(&[Digit(5), Delete, Digit(7)]), "4.4417");
        // Who types all of it gets what was typed.
        assert_eq!(after(&[4, 3, 7, 4, 1].map(Digit)), "4.3741");
        assert_eq!(after(&[Digit(4), Point, Digit(5)]), "4.5");
    }

    #[test]
    fn a_point_makes_ordinary_digits_of_them() {
        let keys = [Digit(4), Point, Digit(4), Digit(4), Digit(1)];
        types("", &keys, FromRight, Unit::Inch, "4.441");
        types("", &keys, AsTyped, Unit::Inch, "4.441");
        types("", &[Point, Digit(5)], FromRight, Unit::Inch, "0.5");
        types("", &[Digit(1), Point, Point], AsTyped, Unit::Inch, "1.");
    }

    #[test]
    fn the_first_digit_replaces_what_was_there() {
        types("4.4412", &[Digit(7)], FromRight, Unit::Inch, "0.0007");
        types("4.4412", &[Digit(7)], AsTyped, Unit::Inch, "7");
        types("4.4412", &[Delete], AsTyped, Unit::Inch, "4.441");
        let emptied = [Delete, Delete, Digit(4), Digit(3)];
        types("12", &emptied, FromRight, Unit::Inch, "0.0043");
    }

    /// Keys of a keyboard, one after the other, behind what stands in the field.
    #[track_caller]
    fn keyboard(keys: &str, unit: Unit, after: &str) {
        let (mut typing, mut text) = (Typing::default(), String::new());
        for key in keys.chars() {
            let typed = match key {
                '<' => text.get(..text.len() - 1).unwrap_or_default().to_owned(),
                key => format!("{text}{key}"),
            };
            text = keyed(&typed, &text, &mut typing, unit);
        }
        assert_eq!(text, after, "{keys}");
    }

    #[test]
    fn digits_mean_the_same_on_glass_and_on_keys() {
        for digits in ["142", "0142", "43", "0", "44412", "0000043"] {
            let pad: Vec<Key> = digits.bytes().map(|b| Digit(b - b'0')).collect();
            for unit in [Unit::Inch, Unit::Millimetre] {
                let (mut typing, mut text) = (Typing::default(), String::new());
                for key in &pad {
                    text = press(&text, *key, &mut typing, FromRight, unit);
                }
                keyboard(digits, unit, &text);
            }
        }
        keyboard("-12", Unit::Inch, "-0.0012");
        keyboard("143<2", Unit::Inch, "0.0142");
        keyboard("1<", Unit::Inch, "");
    }

    #[test]
    fn what_is_more_than_digits_stands_as_it_was_typed() {
        for text in [
            "4.4412", "4,4412", ".0043", "-0.0021", "17/64", "4 17/64", "43 thou", "12.70 mm",
            "+0.002", "none", "5 tenths", "0012.5",
        ] {
            keyboard(text, Unit::Inch, text);
        }
    }

    #[test]
    fn up_down_and_sign() {
        types("4.4412", &[Up], FromRight, Unit::Inch, "4.4413");
        types("0.0000", &[Down], FromRight, Unit::Inch, "-0.0001");
        types("108.2", &[Down], FromRight, Unit::Millimetre, "108.199");
        types("", &[Digit(2), Sign], FromRight, Unit::Inch, "-0.0002");
        types("", &[Sign, Digit(2)], FromRight, Unit::Inch, "-0.0002");
        types("-0.0002", &[Sign], FromRight, Unit::Inch, "0.0002");
        types("", &[Up], FromRight, Unit::Inch, "");
    }
}

//! How numbers of ours are written: with a point or a comma before their decimals, by
//! the region of the browser or by choice of this device. Both are read, and what was
//! typed stays as it was typed.

use crate::browser;
use std::cell::Cell;
use wasm_bindgen::{JsCast, JsValue};

/// Where this device keeps what it chose.
const CHOSEN: &str = "coldseat/decimal";

thread_local! {
    /// What stands before decimals.
    static DECIMAL: Cell<Decimal> = const { Cell::new(Decimal::Point) };
}

/// What stands before the decimals.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Decimal {
    /// 4.3731
    Point,
    /// 4,3731
    Comma,
}

impl Decimal {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Point, Self::Comma];

    /// A number, as it is then written; it is its key in storage too.
    #[must_use]
    pub const fn sample(self) -> &'static str {
        match self {
            Self::Point => "4.3731",
            Self::Comma => "4,3731",
        }
    }

    /// By that number.
    #[must_use]
    pub fn from_sample(sample: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|mark| mark.sample() == sample)
    }
}

/// Takes what this device chose, else what its browser's region writes.
pub fn start() {
    let kept = browser::local_text(CHOSEN);
    let kept = kept.and_then(|sample| Decimal::from_sample(&sample));
    DECIMAL.set(kept.unwrap_or_else(of_region));
}

/// As the browser's own region writes numbers.
fn of_region() -> Decimal {
    // Asked of the number itself, for no named language: WebKit's own name may be "C",
    // which it then refuses.
    let half: js_sys::Object = JsValue::from(0.5).unchecked_into();
    if String::from(half.to_locale_string()).contains(',') {
        Decimal::Comma
    } else {
        Decimal::Point
    }
}

/// What stands before decimals here.
#[must_use]
pub fn here() -> Decimal {
    DECIMAL.get()
}

/// Writes numbers so from now on, and keeps that for this device.
pub fn choose(decimal: Decimal) {
    browser::set_local_text(CHOSEN, decimal.sample());
    DECIMAL.set(decimal);
    super::show(super::shown());
}

/// The mark before decimals.
#[must_use]
pub fn mark() -> &'static str {
    match DECIMAL.get() {
        Decimal::Point => ".",
        Decimal::Comma => ",",
    }
}

/// A text of ours with this device's mark in its numbers: a point between two digits,
/// where no second one follows as in a version. What was typed is not for this.
#[must_use]
pub fn marked(text: String) -> String {
    if DECIMAL.get() == Decimal::Point || !text.contains('.') {
        return text;
    }
    let letters: Vec<char> = text.chars().collect();
    let is_digit = |at: usize| letters.get(at).is_some_and(char::is_ascii_digit);
    let run = |from: usize, step: isize| {
        let mut at = from;
        while is_digit(at) {
            match at.checked_add_signed(step) {
                Some(next) => at = next,
                None => return None,
            }
        }
        letters.get(at).copied()
    };
    let is_mark = |at: usize| {
        let before = at.checked_sub(1);
        letters.get(at) == Some(&'.')
            && is_digit(at + 1)
            && before.is_some_and(is_digit)
            && run(at + 1, 1) != Some('.')
            && before.and_then(|before| run(before, -1)) != Some('.')
    };
    (0..letters.len())
        .filter_map(|at| {
            if is_mark(at) {
                Some(',')
            } else {
                letters.get(at).copied()
            }
        })
        .collect()
}

/// What the pad makes of counted keys, with the mark; what was typed stays as typed.
#[must_use]
pub fn marked_where_counted(typed: &str, made: String) -> String {
    if made == typed { made } else { marked(made) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decimals_of_ours_take_the_mark_and_versions_do_not() {
        let text = "0.0042 in, 8.0.0, 12.5 to 3., a.b, 6.7";
        assert_eq!(marked(text.to_owned()), text);
        DECIMAL.set(Decimal::Comma);
        assert_eq!(
            marked(text.to_owned()),
            "0,0042 in, 8.0.0, 12,5 to 3., a.b, 6,7"
        );
        // What was typed with a point stays; what the pad made of it does not.
        assert_eq!(marked_where_counted("0.5", "0.5".to_owned()), "0.5");
        assert_eq!(marked_where_counted("43", "0.0043".to_owned()), "0,0043");
        DECIMAL.set(Decimal::Point);
    }
}

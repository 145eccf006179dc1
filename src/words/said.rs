//! A packed message, said: its slots filled, the case of its plural chosen. This is
//! all of the crate that the page's program holds.

use std::fmt::{Display, Write as _};

/// The mark of the first slot; the next ones follow.
pub(crate) const SLOT: u32 = 0xE000;
/// Before the cases of a plural.
pub(crate) const FORMS_START: char = '\u{E100}';
/// Before the words of a case; its place in [`FORMS`] is added.
pub(crate) const FORM: u32 = 0xE101;
/// The cases.
pub(crate) const FORMS: [&str; 3] = ["one", "many", "other"];
/// Behind the cases.
pub(crate) const FORMS_END: char = '\u{E10F}';

/// The cases of a plural that a language has (CLDR 48, cardinal numbers, from
/// memory): Spanish says "un millón *de*", so its millions are a case of their own.
#[must_use]
pub fn plural_cases(language: &str) -> &'static [&'static str] {
    if is_spanish(language) {
        &["one", "many", "other"]
    } else {
        &["one", "other"]
    }
}

fn is_spanish(language: &str) -> bool {
    language.split('-').next() == Some("es")
}

/// The case of a count.
#[must_use]
pub fn plural_case(language: &str, count: usize) -> &'static str {
    match count {
        1 => "one",
        0 => "other",
        _ if is_spanish(language) && count.is_multiple_of(1_000_000) => "many",
        _ => "other",
    }
}

/// Says a packed message: `slots` in the order of their names, and the case of the
/// count that its plural follows.
#[must_use]
pub fn fill(line: &str, slots: &[&dyn Display], case: &str) -> String {
    let wanted = FORMS.iter().position(|form| *form == case);
    let mut said = String::new();
    let mut is_said = true;
    for letter in line.chars() {
        let mark = u32::from(letter);
        let from = |first: u32| mark.checked_sub(first).map(|place| place as usize);
        match (from(SLOT), from(FORM)) {
            _ if letter == FORMS_START => is_said = false,
            _ if letter == FORMS_END => is_said = true,
            (_, Some(form)) if form < FORMS.len() => is_said = Some(form) == wanted,
            _ if !is_said => {}
            (Some(slot), _) if slot < slots.len() => {
                for value in slots.iter().skip(slot).take(1) {
                    let _ = write!(said, "{value}");
                }
            }
            _ => said.push(letter),
        }
    }
    said
}

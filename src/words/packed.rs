//! A language as the page loads it: one line a message, in the order of names.
//!
//! Slots and cases are marked by letters of the private use area (U+E000 on),
//! which no text of ours holds; a line of its own at the head names the digest,
//! so that words of another version are known as such.

use crate::said::{FORM, FORMS, FORMS_END, FORMS_START, SLOT};
use crate::{Language, Message, Piece};
use std::fmt::Write as _;

/// Whether a letter is one of the marks.
pub(crate) fn is_mark(letter: char) -> bool {
    ('\u{E000}'..='\u{F8FF}').contains(&letter)
}

/// The file of a language: its first line is `digest`.
#[must_use]
pub fn pack(language: &Language, digest: &str) -> String {
    let mut out = format!("{digest}\n");
    for message in language.messages.values() {
        write_pieces(message, &message.pieces, &mut out);
        out.push('\n');
    }
    out
}

fn write_pieces(message: &Message, pieces: &[Piece], out: &mut String) {
    let slots = message.slots();
    for piece in pieces {
        match piece {
            Piece::Text(text) => out.push_str(text),
            Piece::Slot(name) => {
                let place = slots.iter().position(|slot| slot == name);
                let place = place.and_then(|place| u32::try_from(place).ok());
                out.extend(place.and_then(|place| char::from_u32(SLOT + place)));
            }
            Piece::Forms(_, forms) => {
                out.push(FORMS_START);
                for (case, inside) in forms {
                    let place = FORMS.iter().position(|form| form == case);
                    let place = place.and_then(|place| u32::try_from(place).ok());
                    out.extend(place.and_then(|place| char::from_u32(FORM + place)));
                    write_pieces(message, inside, out);
                }
                let _ = out.write_char(FORMS_END);
            }
        }
    }
}

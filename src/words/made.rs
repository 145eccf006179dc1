//! What the page's program knows of its words: a name for each, and their slots.

use crate::{Language, Message, pack};
use sha2::{Digest, Sha256};
use std::fmt::Write as _;

/// A digest over every word of every language: program and files of one version
/// have the same.
#[must_use]
pub fn digest(languages: &[Language]) -> String {
    let mut hash = Sha256::new();
    for language in languages {
        hash.update(language.name.as_bytes());
        for id in language.messages.keys() {
            hash.update(id.as_bytes());
        }
        // As it is packed: another form of the file is another version too.
        hash.update(pack(language, "").as_bytes());
    }
    hash.finalize()
        .iter()
        .take(8)
        .fold(String::new(), |mut text, byte| {
            let _ = write!(text, "{byte:02x}");
            text
        })
}

/// Rust for the page: a constant for each message without slots, a struct with a
/// field for each slot for the others. Both are documented by their English.
#[must_use]
pub fn rust(languages: &[Language]) -> String {
    let Some(first) = languages.first() else {
        return String::new();
    };
    let mut out = format!("pub const DIGEST: &str = {:?};\n", digest(languages));
    let _ = writeln!(out, "pub const MESSAGES: usize = {};", first.messages.len());
    for (place, (id, message)) in first.messages.iter().enumerate() {
        for said in message.readings() {
            let _ = writeln!(out, "#[doc = {said:?}]");
        }
        if message.slots().is_empty() {
            let name = id.replace('-', "_").to_uppercase();
            let _ = writeln!(out, "pub const {name}: Word = Word::at({place});");
        } else {
            with_slots(&mut out, place, id, message);
        }
    }
    out
}

fn with_slots(out: &mut String, place: usize, id: &str, message: &Message) {
    let name: String = id
        .split('-')
        .map(|part| {
            let mut letters = part.chars();
            letters
                .next()
                .map(|first| first.to_uppercase().chain(letters).collect::<String>())
                .unwrap_or_default()
        })
        .collect();
    let (slots, count) = (message.slots(), message.count());
    let _ = writeln!(out, "pub struct {name}<'a> {{");
    let mut only_count = true;
    for slot in &slots {
        if Some(*slot) == count {
            let _ = writeln!(out, "    pub {slot}: usize,");
        } else {
            only_count = false;
            let _ = writeln!(out, "    pub {slot}: &'a dyn std::fmt::Display,");
        }
    }
    if only_count {
        // The lifetime has to be used.
        let at = out.rfind("<'a>").unwrap_or(out.len());
        out.replace_range(at..at + 4, "");
    }
    let lifetime = if only_count { "" } else { "<'_>" };
    let given: Vec<String> = slots
        .iter()
        .map(|slot| {
            let by = if Some(*slot) == count { "&" } else { "" };
            format!("{by}self.{slot}")
        })
        .collect();
    let count = count.map_or_else(|| "0".to_owned(), |count| format!("self.{count}"));
    let _ = writeln!(
        out,
        "}}\nimpl {name}{lifetime} {{\n    pub fn say(&self) -> String {{\n        say({place}, &[{}], {count})\n    }}\n}}",
        given.join(", ")
    );
}

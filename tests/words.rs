//! The page's words: every language says every message with every slot and count;
//! each speaks as its shops do, held to the glossary beside its files; and no
//! sentence on a step's screen is long.

use coldseat_tests::root;
use coldseat_words::{Language, Message, all, fill, pack, plural_case, subject};
use std::collections::BTreeMap;
use std::fmt::Display;

/// The most words of one sentence on a step's screen. Spanish says the same with
/// articles and prepositions that English leaves out.
const MOST: [(&str, usize); 2] = [("en-US", 20), ("es-US", 24)];

/// Subjects whose words stand on no step's screen, and why.
const ELSEWHERE: &[(&str, &str)] = &[
    ("folder", "settings of the shop's folder"),
    ("keeping", "storage, files and settings"),
    ("origin", "sheets of where a number is from"),
    ("record", "the printed record"),
    ("share", "links and codes"),
    ("wire", "settings of a gauge's line"),
];

fn languages() -> Vec<Language> {
    match all(&root().join("src/page/languages")) {
        Ok(languages) => languages,
        Err(wrong) => panic!("{}", wrong.join("\n")),
    }
}

/// A row of the glossary.
struct Row {
    say: String,
    means: String,
    from: String,
    not: Vec<String>,
}

fn glossary(language: &str) -> Vec<Row> {
    let path = root()
        .join("src/page/languages")
        .join(language)
        .join("glossary.csv");
    let mut reader = csv::Reader::from_path(path).expect("the glossary");
    let heads = reader.headers().expect("a head").clone();
    let heads: Vec<&str> = heads.iter().collect();
    assert_eq!(heads, ["say", "means here", "from", "do not say"]);
    reader
        .records()
        .map(|line| {
            let line = line.expect("a line");
            let cell = |at: usize| line.get(at).expect("a cell").trim().to_owned();
            Row {
                say: cell(0),
                means: cell(1),
                from: cell(2),
                not: cell(3)
                    .split(';')
                    .map(|phrase| phrase.trim().to_lowercase())
                    .filter(|phrase| !phrase.is_empty())
                    .collect(),
            }
        })
        .collect()
}

/// Whether a phrase stands in a text as whole words, in any case.
fn says(text: &str, phrase: &str) -> bool {
    let text = text.to_lowercase();
    let is_in_word = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
    text.match_indices(phrase).any(|(at, _)| {
        let before = text[..at].chars().next_back();
        let after = text[at + phrase.len()..].chars().next();
        !is_in_word(before) && !is_in_word(after)
    })
}

/// The sentences of a text: each ends at . ! or ? before a space or the end.
fn sentences(text: &str) -> Vec<String> {
    let mut all = vec![String::new()];
    let mut letters = text.chars().peekable();
    while let Some(c) = letters.next() {
        if let Some(last) = all.last_mut() {
            last.push(c);
        }
        let ends = letters.peek().is_none_or(|next| next.is_whitespace());
        if matches!(c, '.' | '!' | '?') && ends {
            all.push(String::new());
        }
    }
    all
}

/// A dash or a sign alone is no word.
fn words(sentence: &str) -> usize {
    sentence
        .split_whitespace()
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .count()
}

/// A message as it is read: one word for each slot.
fn read_out(message: &Message) -> Vec<String> {
    let mut texts = message.readings();
    for text in &mut texts {
        for slot in message.slots() {
            *text = text.replace(&format!("{{{slot}}}"), "0");
        }
    }
    texts
}

/// What is not said and is, with the word for it.
fn unsaid(message: &Message, glossary: &[Row]) -> Vec<String> {
    let mut found = Vec::new();
    for text in read_out(message) {
        for row in glossary {
            for phrase in &row.not {
                if says(&text, phrase) {
                    found.push(format!("\"{phrase}\", say \"{}\": {text}", row.say));
                }
            }
        }
    }
    found
}

/// Sentences that are too long.
fn long(message: &Message, most: usize) -> Vec<String> {
    read_out(message)
        .iter()
        .flat_map(|text| sentences(text))
        .filter(|sentence| words(sentence) > most)
        .map(|sentence| format!("{} words: {}", words(&sentence), sentence.trim()))
        .collect()
}

#[test]
fn no_text_says_what_the_shop_does_not() {
    let mut found = Vec::new();
    for language in languages() {
        let glossary = glossary(&language.name);
        for (id, message) in &language.messages {
            for what in unsaid(message, &glossary) {
                found.push(format!("{}, {id}: {what}", language.name));
            }
        }
    }
    assert!(
        found.is_empty(),
        "not as a shop says it:\n{}",
        found.join("\n")
    );
}

#[test]
fn no_sentence_on_a_steps_screen_is_long() {
    let mut found = Vec::new();
    for language in languages() {
        for (elsewhere, why) in ELSEWHERE {
            assert!(!why.is_empty());
            let is_there = language.messages.values().any(|m| m.subject == *elsewhere);
            assert!(is_there, "no subject {elsewhere}");
        }
        let (_, most) = MOST
            .into_iter()
            .find(|(name, _)| *name == language.name)
            .expect("how long its sentences may be");
        for (id, message) in &language.messages {
            if ELSEWHERE.iter().any(|(name, _)| *name == message.subject) {
                continue;
            }
            for what in long(message, most) {
                found.push(format!("{}, {id}: {what}", language.name));
            }
        }
    }
    assert!(found.is_empty(), "too long:\n{}", found.join("\n"));
}

#[test]
fn every_message_is_said_with_every_slot_and_count() {
    for language in languages() {
        let packed = pack(&language, "digest");
        let mut lines = packed.lines();
        assert_eq!(lines.next(), Some("digest"));
        for (id, message) in &language.messages {
            let at = format!("{}, {id}", language.name);
            let line = lines.next().unwrap_or_else(|| panic!("{at}: no line"));
            let slots = message.slots();
            // Each slot filled with a word of its own, which no text says.
            let values: Vec<String> = (0..slots.len())
                .map(|n| format!("\u{ab}{n}\u{bb}"))
                .collect();
            let given: Vec<&dyn Display> = values.iter().map(|v| v as &dyn Display).collect();
            let mut said = BTreeMap::new();
            for count in [0, 1, 2, 1_000_000] {
                let case = plural_case(&language.name, count);
                let text = fill(line, &given, case);
                let is_ours =
                    |c: char| !('\u{e000}'..='\u{f8ff}').contains(&c) && !"{}".contains(c);
                assert!(
                    !text.trim().is_empty() && text.chars().all(is_ours),
                    "{at}: {text:?}"
                );
                said.insert(case, text);
            }
            let whole: String = said.into_values().collect();
            for (slot, value) in slots.iter().zip(&values) {
                // A plural may leave its number out: "one value".
                let may_miss = message.count() == Some(*slot);
                assert!(
                    may_miss || whole.contains(value.as_str()),
                    "{at}: {slot} is never said"
                );
            }
        }
        assert_eq!(lines.next(), None, "{}", language.name);
    }
}

#[test]
fn the_glossaries_are_in_order() {
    for (language, _) in MOST {
        let glossary = glossary(language);
        assert!(
            (50..=90).contains(&glossary.len()),
            "{language}: {}",
            glossary.len()
        );
        let says: Vec<String> = glossary.iter().map(|row| row.say.to_lowercase()).collect();
        for two in says.windows(2) {
            assert!(two[0] < two[1], "{language}: {} before {}", two[0], two[1]);
        }
        for row in &glossary {
            assert!(
                !row.say.is_empty() && !row.means.is_empty() && !row.from.is_empty(),
                "{language}, {}: something is missing",
                row.say
            );
        }
        // A word that is said of one thing is forbidden for no other.
        for row in &glossary {
            for phrase in &row.not {
                assert!(
                    !says.contains(phrase),
                    "{language}, {phrase}: said and not said"
                );
            }
        }
    }
}

/// A message of its own for a test.
fn one(text: &str) -> Message {
    let mut language = Language {
        name: "en-US".to_owned(),
        messages: BTreeMap::new(),
    };
    subject(&mut language, "a", &format!("a = {text}\n")).expect("a message");
    language.messages.remove("a").expect("a message")
}

#[test]
fn what_is_wrong_is_found() {
    let glossary = glossary("en-US");
    for (text, how_many) in [
        ("Take the mark away", 1),
        ("{ $a }: LINER of { $b }", 1),
        ("recommend", 0),
        (
            "{ $n ->\n        [one] a liner\n       *[other] { $n } sleeves\n    }",
            1,
        ),
    ] {
        assert_eq!(unsaid(&one(text), &glossary).len(), how_many, "{text}");
    }
    let twenty = "{ $a } ".repeat(20);
    for (text, how_many) in [
        (twenty.clone(), 0),
        (format!("{twenty}{{ $b }}"), 1),
        (format!("{twenty}\u{2013}"), 0),
        (format!("{twenty}one. {twenty}two."), 2),
        (format!("Short. {}", twenty.replacen("{ $a }", "0.5", 1)), 0),
    ] {
        assert_eq!(long(&one(&text), 20).len(), how_many, "{text}");
    }
}

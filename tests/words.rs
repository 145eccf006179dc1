//! The page speaks as an American engine shop does: the glossary beside the
//! texts names what is not said, and no sentence on a step's screen is long.

use coldseat_tests::{files, root};
use proc_macro2::{TokenStream, TokenTree};
use std::fs;
use std::path::Path;

mod tokens;
use tokens::past_attribute;

/// The most words of one sentence on a step's screen.
const MOST: usize = 20;

/// Files whose words stand on no step's screen, and why.
const ELSEWHERE: &[(&str, &str)] = &[
    ("en_folder.rs", "settings of the shop's folder"),
    ("en_keeping.rs", "storage, files and settings"),
    ("en_origin.rs", "sheets of where a number is from"),
    ("en_record.rs", "the printed record"),
    ("en_share.rs", "links and codes"),
    ("en_wire.rs", "settings of a gauge's line"),
];

/// A row of the glossary.
struct Row {
    say: String,
    means: String,
    from: String,
    not: Vec<String>,
}

fn glossary() -> Vec<Row> {
    let path = root().join("src/page/texts/glossary.csv");
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

/// What a literal says once its escapes are read.
fn read_out(literal: &str) -> String {
    let mut said = String::new();
    let mut rest = literal.chars().peekable();
    while let Some(c) = rest.next() {
        if c != '\\' {
            said.push(c);
            continue;
        }
        match rest.next() {
            Some('u') => {
                let digits: String = rest
                    .by_ref()
                    .take_while(|c| *c != '}')
                    .filter(char::is_ascii_hexdigit)
                    .collect();
                let code = u32::from_str_radix(&digits, 16).ok();
                said.extend(code.and_then(char::from_u32));
            }
            // A line that goes on in the next one.
            Some('\n') => {
                while rest.peek().is_some_and(|c| c.is_whitespace()) {
                    rest.next();
                }
            }
            Some('n' | 't') => said.push(' '),
            Some(other) => said.push(other),
            None => {}
        }
    }
    said
}

/// The same with one word for each of what `format!` fills in.
fn filled(text: &str) -> String {
    let mut said = String::new();
    let mut depth = 0_usize;
    for c in text.chars() {
        match c {
            '{' => {
                if depth == 0 {
                    said.push('0');
                }
                depth += 1;
            }
            '}' => depth = depth.saturating_sub(1),
            _ if depth == 0 => said.push(c),
            _ => {}
        }
    }
    said
}

/// Every string of a source, its tests and the comments aside.
fn strings(stream: TokenStream, found: &mut Vec<String>) {
    let trees: Vec<TokenTree> = stream.into_iter().collect();
    let mut at = 0;
    while at < trees.len() {
        match &trees[at] {
            // Comments of documentation, and attributes such as cfg.
            TokenTree::Punct(p) if p.as_char() == '#' => at = past_attribute(&trees, at),
            TokenTree::Group(group) => {
                strings(group.stream(), found);
                at += 1;
            }
            TokenTree::Literal(literal) => {
                let shown = literal.to_string();
                let text = shown.strip_prefix('"').and_then(|s| s.strip_suffix('"'));
                if let Some(text) = text {
                    found.push(filled(&read_out(text)));
                }
                at += 1;
            }
            _ => at += 1,
        }
    }
}

fn strings_in(source: &str) -> Vec<String> {
    let mut found = Vec::new();
    strings(source.parse().expect("Rust"), &mut found);
    found
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

/// What is not said and is, with the word for it.
fn unsaid(source: &str, glossary: &[Row]) -> Vec<String> {
    let mut found = Vec::new();
    for text in strings_in(source) {
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
fn long(source: &str) -> Vec<String> {
    strings_in(source)
        .iter()
        .flat_map(|text| sentences(text))
        .filter(|sentence| words(sentence) > MOST)
        .map(|sentence| format!("{} words: {}", words(&sentence), sentence.trim()))
        .collect()
}

fn name(path: &Path) -> String {
    path.file_name()
        .map_or_else(String::new, |name| name.to_string_lossy().into_owned())
}

/// The texts, by the name of their file.
fn texts() -> Vec<(String, String)> {
    let found = files(&root().join("src/page/texts"), ".rs");
    assert!(found.len() > 20, "where are the texts?");
    found
        .into_iter()
        .map(|path| (name(&path), fs::read_to_string(&path).expect("text")))
        .collect()
}

#[test]
fn no_text_says_what_the_shop_does_not() {
    let glossary = glossary();
    let mut found = Vec::new();
    for (file, source) in texts() {
        for what in unsaid(&source, &glossary) {
            found.push(format!("{file}: {what}"));
        }
    }
    assert!(found.is_empty(), "not shop English:\n{}", found.join("\n"));
}

#[test]
fn no_sentence_on_a_steps_screen_is_long() {
    let texts = texts();
    for (elsewhere, why) in ELSEWHERE {
        assert!(!why.is_empty());
        assert!(
            texts.iter().any(|(file, _)| file == elsewhere),
            "no file {elsewhere}"
        );
    }
    let mut found = Vec::new();
    for (file, source) in texts {
        if ELSEWHERE.iter().any(|(elsewhere, _)| *elsewhere == file) {
            continue;
        }
        for what in long(&source) {
            found.push(format!("{file}: {what}"));
        }
    }
    assert!(
        found.is_empty(),
        "more than {MOST} words:\n{}",
        found.join("\n")
    );
}

#[test]
fn the_glossary_is_in_order() {
    let glossary = glossary();
    assert!((50..=90).contains(&glossary.len()), "{}", glossary.len());
    let says: Vec<String> = glossary.iter().map(|row| row.say.to_lowercase()).collect();
    assert!(says.windows(2).all(|two| two[0] < two[1]), "not sorted");
    for row in &glossary {
        assert!(
            !row.say.is_empty() && !row.means.is_empty() && !row.from.is_empty(),
            "{}: something is missing",
            row.say
        );
    }
    // A word that is said of one thing is forbidden for no other.
    for row in &glossary {
        for phrase in &row.not {
            assert!(!says.contains(phrase), "{phrase}: said and not said");
        }
    }
}

#[test]
fn what_is_wrong_is_found() {
    let glossary = glossary();
    for (source, how_many) in [
        ("const A: &str = \"Take the mark away\";", 1),
        ("fn f() { format!(\"{a}: LINER of {b}\") }", 1),
        ("/// Liner.\nconst A: &str = \"sleeve\";", 0),
        ("const A: &str = \"recommend\";", 0),
        (
            "#[cfg(test)] mod tests { const A: &str = \"liner\"; }\nconst B: &str = \"mend\";",
            1,
        ),
    ] {
        assert_eq!(unsaid(source, &glossary).len(), how_many, "{source}");
    }
    let twenty = "{} ".repeat(MOST);
    for (text, how_many) in [
        (twenty.clone(), 0),
        (format!("{twenty}{{a}}"), 1),
        (format!("{twenty}\u{2013}"), 0),
        (format!("{twenty}one. {twenty}two."), 2),
        (format!("Short. {}", twenty.replacen("{}", "0.5", 1)), 0),
    ] {
        let source = format!("const A: &str = \"{text}\";");
        assert_eq!(long(&source).len(), how_many, "{source}");
    }
    assert_eq!(
        strings_in("const A: &str = \"a \\\"b\\\" \\u{b0}F {c:?}\";"),
        ["a \"b\" \u{b0}F 0"]
    );
}

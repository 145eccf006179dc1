//! Every text a person reads stands in the files of the languages; this finds text
//! in any Rust of the page.
//!
//! Rust is read as tokens, by proc-macro2. A string is text where it has two
//! words side by side, or begins like a sentence; inside a view, bare words
//! between tags and quoted words between tags are text too. Names of classes
//! (known from the style sheets) and what the platform itself names are not.

use coldseat_tests::{files, root};
use proc_macro2::{Delimiter, TokenStream, TokenTree};
use std::collections::BTreeSet;
use std::fs;

/// Names of keys, events and features that the platform spells so.
const PLATFORM: &[&str] = &[
    "Enter",
    "Escape",
    "Shift",
    "Control",
    "Alt",
    "Meta",
    "Dead",
    "CapsLock",
    "NumLock",
    "Unidentified",
    "Tab",
    "ArrowUp",
    "ArrowDown",
    "ArrowLeft",
    "ArrowRight",
    "Backspace",
    "Delete",
    "PageUp",
    "PageDown",
    "Home",
    "End",
    "AbortError",
    "BarcodeDetector",
    "Content-Type",
    "Coldseat",
    // A language is named in itself.
    "English",
    "Espa\\u{f1}ol",
];

/// What is said where there are no words yet, or none that can be trusted.
const BEFORE_WORDS: &[&str] = &[
    "the page's words are missing",
    "the page's words are of another version than its program",
];

/// Names of classes in the style sheets.
fn classes() -> BTreeSet<String> {
    let sheets = files(&root().join("style"), ".css");
    let mut names = BTreeSet::new();
    for sheet in sheets {
        let text = fs::read_to_string(sheet).expect("text");
        for part in text.split('.').skip(1) {
            let name: String = part
                .chars()
                .take_while(|c| c.is_ascii_alphanumeric() || *c == '-')
                .collect();
            names.insert(name);
        }
    }
    assert!(names.contains("drawing"), "no class found");
    names
}

/// A literal without what `format!` fills in.
fn without_holes(text: &str) -> String {
    let mut depth = 0_usize;
    text.chars()
        .filter(|c| match c {
            '{' => {
                depth += 1;
                false
            }
            '}' => {
                depth = depth.saturating_sub(1);
                false
            }
            _ => depth == 0,
        })
        .collect()
}

fn is_word(word: &str) -> bool {
    let word = word.trim_matches(|c: char| ".,:;!?'\"()".contains(c));
    word.len() >= 2 && word.chars().all(|c| c.is_alphabetic() || c == '\'')
}

/// Whether a string reads as text.
fn is_text(literal: &str, classes: &BTreeSet<String>) -> bool {
    // A query of the medium begins with its bracket.
    if PLATFORM.contains(&literal) || BEFORE_WORDS.contains(&literal) || literal.starts_with('(') {
        return false;
    }
    let bare = without_holes(literal);
    let words: Vec<&str> = bare.split_whitespace().collect();
    if words.iter().all(|w| classes.contains(*w)) {
        return false;
    }
    let side_by_side = words.windows(2).any(|w| is_word(w[0]) && is_word(w[1]));
    let mut letters = bare.trim_start().chars();
    let sentence = letters.next().is_some_and(char::is_uppercase)
        && letters.next().is_some_and(char::is_lowercase)
        && words.first().is_some_and(|w| is_word(w));
    side_by_side || sentence
}

fn unquoted(literal: &str) -> Option<&str> {
    literal.strip_prefix('"')?.strip_suffix('"')
}

/// Past what begins with a `#` at a place of a source: an attribute or a comment of
/// documentation, with the test or its module where it is `cfg(test)`.
fn past_attribute(trees: &[TokenTree], at: usize) -> usize {
    let after = match trees.get(at + 1) {
        Some(TokenTree::Punct(p)) if p.as_char() == '!' => at + 2,
        _ => at + 1,
    };
    let Some(TokenTree::Group(group)) = trees.get(after) else {
        return at + 1;
    };
    if group.delimiter() != Delimiter::Bracket {
        return at + 1;
    }
    if group.stream().to_string().replace(' ', "") != "cfg(test)" {
        return after + 1;
    }
    let is_body =
        |tree: &TokenTree| matches!(tree, TokenTree::Group(g) if g.delimiter() == Delimiter::Brace);
    let rest = trees.get(after + 1..).unwrap_or_default();
    after + 2 + rest.iter().position(is_body).unwrap_or(rest.len())
}

/// What was found: where the tree stands, and the text.
struct Found<'a> {
    classes: &'a BTreeSet<String>,
    texts: Vec<String>,
}

impl Found<'_> {
    fn look(&mut self, stream: TokenStream, in_view: bool) {
        let trees: Vec<TokenTree> = stream.into_iter().collect();
        let mut at = 0;
        while at < trees.len() {
            match &trees[at] {
                // Comments of documentation, and attributes such as cfg.
                TokenTree::Punct(p) if p.as_char() == '#' => at = past_attribute(&trees, at),
                TokenTree::Ident(name) if name == "view" => {
                    if let (Some(TokenTree::Punct(p)), Some(TokenTree::Group(group))) =
                        (trees.get(at + 1), trees.get(at + 2))
                        && p.as_char() == '!'
                    {
                        self.look(group.stream(), true);
                        at += 3;
                    } else {
                        at += 1;
                    }
                }
                TokenTree::Group(group) => {
                    // A block inside a view is code again.
                    self.look(group.stream(), false);
                    at += 1;
                }
                TokenTree::Literal(literal) => {
                    let shown = literal.to_string();
                    if let Some(text) = unquoted(&shown).filter(|_| !names_a_class(&trees, at)) {
                        let between_tags = in_view && closes_a_tag(&trees, at);
                        let worded = text.split_whitespace().any(is_word);
                        if is_text(text, self.classes) || (between_tags && worded) {
                            self.texts.push(text.to_owned());
                        }
                    }
                    at += 1;
                }
                TokenTree::Ident(name) if in_view && closes_a_tag(&trees, at) => {
                    self.texts.push(name.to_string());
                    at += 1;
                }
                _ => at += 1,
            }
        }
    }
}

/// Whether the token before is the `>` that ends a tag.
fn closes_a_tag(trees: &[TokenTree], at: usize) -> bool {
    let punct = |back: usize| match at.checked_sub(back).and_then(|i| trees.get(i)) {
        Some(TokenTree::Punct(p)) => Some(p.as_char()),
        _ => None,
    };
    punct(1) == Some('>') && !matches!(punct(2), Some('-' | '='))
}

/// Whether it is the value of `class=`.
fn names_a_class(trees: &[TokenTree], at: usize) -> bool {
    let before = |back: usize| {
        at.checked_sub(back)
            .and_then(|i| trees.get(i))
            .map(ToString::to_string)
    };
    before(1).as_deref() == Some("=") && before(2).as_deref() == Some("class")
}

fn texts_in(source: &str, classes: &BTreeSet<String>) -> Vec<String> {
    let stream: TokenStream = source.parse().expect("Rust");
    let mut found = Found {
        classes,
        texts: Vec::new(),
    };
    found.look(stream, false);
    found.texts
}

#[test]
fn no_text_stands_in_the_code() {
    let classes = classes();
    let sources = files(&root().join("src/page"), ".rs");
    assert!(sources.len() > 40);
    let mut found = Vec::new();
    for path in sources {
        // Said by the compiler, to whoever builds.
        if path.file_name().is_some_and(|name| name == "build.rs") {
            continue;
        }
        let source = fs::read_to_string(&path).expect("text");
        for text in texts_in(&source, &classes) {
            found.push(format!("{}: {text:?}", path.display()));
        }
    }
    assert!(
        found.is_empty(),
        "these belong into src/page/languages:\n{}",
        found.join("\n")
    );
}

#[test]
fn text_is_found_wherever_it_hides() {
    let classes = classes();
    for (source, text) in [
        ("fn f() { view! { <p>Cut more</p> } }", "Cut"),
        ("fn f() { view! { <p>\"go\"</p> } }", "go"),
        (
            "fn f() { view! { <p title=\"Look here\"></p> } }",
            "Look here",
        ),
        (
            "fn f() { view! { <p>{format!(\"{n} of {m} cylinders\")}</p> } }",
            "{n} of {m} cylinders",
        ),
        ("const A: &str = \"Done\";", "Done"),
        ("fn f() { note(\"it is home\") }", "it is home"),
    ] {
        assert_eq!(
            texts_in(source, &classes).first().map(String::as_str),
            Some(text),
            "{source}"
        );
    }
    for source in [
        "/// Some words here.\nfn f() { view! { <p class=\"drawing\">{t::DONE}</p> } }",
        "fn f() { if key == \"Enter\" && a > b { view! { <a on:click=move |_| x> {y} </a> } } }",
        "#[cfg(test)] mod tests { fn f() { assert!(a, \"two words\"); } }",
    ] {
        assert_eq!(texts_in(source, &classes), Vec::<String>::new(), "{source}");
    }
}

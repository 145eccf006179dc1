//! Every mistake in the files of a language is named, and what is right is packed and
//! said as it was written.

use crate::{Language, check, digest, fill, pack, plural_case, rust, subject};
use std::collections::BTreeMap;
use std::fmt::Display;

fn empty(name: &str) -> Language {
    Language {
        name: name.to_owned(),
        messages: BTreeMap::new(),
    }
}

/// A language of one file.
fn language(name: &str, text: &str) -> Language {
    let mut language = empty(name);
    assert_eq!(subject(&mut language, "a", text), Ok(()), "{text}");
    language
}

const ENGLISH: &str = "done = Done\ncut = Cut { $more } deeper.\njobs =\n    { $n ->\n        [one] one job\n       *[other] { $n } jobs\n    }\n";
const SPANISH: &str = "done = Hecho\ncut = Corte { $more } m\u{e1}s.\njobs =\n    { $n ->\n        [one] un trabajo\n        [many] { $n } de trabajos\n       *[other] { $n } trabajos\n    }\n";

#[test]
fn languages_that_say_the_same_pass() {
    let both = [language("en-US", ENGLISH), language("es-US", SPANISH)];
    assert_eq!(check(&both), Vec::<String>::new());
}

#[test]
fn what_one_language_lacks_or_has_too_many_is_named() {
    for (from, to, says) in [
        ("done = Hecho\n", "", "done: is missing"),
        ("done =", "done = Hecho\nready =", "ready: not known"),
        (" { $more }", "", "its slots are []"),
        ("{ $more }", "{ $mroe }", "its slots are"),
        (
            "        [many] { $n } de trabajos\n",
            "",
            "a plural has the cases",
        ),
        ("[one]", "[few]", "a plural has the cases"),
        (
            "done = Hecho",
            "done = { $n ->\n        [one] a\n        [many] b\n       *[other] c\n    }",
            "its slots are",
        ),
    ] {
        let spoilt = SPANISH.replacen(from, to, 1);
        assert_ne!(spoilt, SPANISH, "{from}");
        let wrong = check(&[language("en-US", ENGLISH), language("es-US", &spoilt)]);
        assert!(
            wrong.iter().any(|line| line.contains(says)),
            "{says}: {wrong:?}"
        );
    }
    // A plural whose number is a slot in one language only.
    let flat = language("es-US", &SPANISH.replace("{ $n ->", "{ $n }{ $m ->"));
    let wrong = check(&[language("en-US", ENGLISH), flat]);
    assert!(
        wrong.iter().any(|w| w.contains("follows the count")),
        "{wrong:?}"
    );
}

#[test]
fn what_is_not_taken_is_named() {
    for (text, says) in [
        ("-term = x\n", "terms"),
        ("a = x\n    .title = y\n", "attributes"),
        ("a =\n    .title = y\n", "attributes"),
        ("a = { NUMBER($n) }\n", "only a slot"),
        ("a = { other }\n", "only a slot"),
        ("a = x\na = y\n", "stands twice"),
        ("a = {\"\"}\n", "says nothing"),
        ("a = x\u{e000}\n", "a mark of ours"),
        ("a = {\"\\u00A0\"}x\n", "escapes"),
        ("a = { $n\n", "line 1"),
        (
            "a = { $n ->\n        [1] x\n       *[other] y\n    }\n",
            "a case is named",
        ),
    ] {
        let wrong = subject(&mut empty("en-US"), "a", text).expect_err(text);
        assert!(
            wrong.iter().any(|line| line.contains(says)),
            "{text}: {wrong:?}"
        );
    }
}

#[test]
fn what_is_packed_is_said_as_it_was_written() {
    let spanish = language("es-US", SPANISH);
    let packed = pack(&spanish, "d");
    let lines: Vec<&str> = packed.lines().collect();
    // In the order of names: cut, done, jobs.
    let said = |at: usize, slot: &dyn Display, count| {
        fill(lines[at], &[slot], plural_case("es-US", count))
    };
    assert_eq!(lines[0], "d");
    assert_eq!(said(1, &"0.2 mm", 0), "Corte 0.2 mm m\u{e1}s.");
    assert_eq!(lines[2], "Hecho");
    assert_eq!(said(3, &1, 1), "un trabajo");
    assert_eq!(said(3, &2, 2), "2 trabajos");
    assert_eq!(said(3, &1_000_000, 1_000_000), "1000000 de trabajos");
}

#[test]
fn a_word_changed_is_another_digest_and_slots_are_fields() {
    let both = [language("en-US", ENGLISH), language("es-US", SPANISH)];
    let changed = [
        language("en-US", ENGLISH),
        language("es-US", &SPANISH.replace("Hecho", "Listo")),
    ];
    assert_ne!(digest(&both), digest(&changed));
    let made = rust(&both);
    for part in [
        "pub const DONE: Word = Word::at(1);",
        "pub struct Cut<'a> {",
        "pub more: &'a dyn std::fmt::Display,",
        "pub struct Jobs {",
        "pub n: usize,",
    ] {
        assert!(made.contains(part), "{part}: {made}");
    }
}

//! Nothing is made of a reading that cannot be used or of a search that failed:
//! the words that do that are read for in the core, and the few places where
//! they are right stand in `lenient.txt` with their reason.

use coldseat_tests::{files, root};
use std::collections::BTreeMap;
use std::fs;

/// What makes something of nothing.
const WORDS: [&str; 3] = ["unwrap_or", "map_or", ".ok()"];
/// Where a verdict comes from.
const FOLDERS: [&str; 8] = [
    "job",
    "ask",
    "metrology",
    "mechanics",
    "planning",
    "thermal",
    "numerics",
    "materials",
];

/// How often a file makes something of nothing, its tests and comments aside.
fn lenient(text: &str) -> usize {
    let code = text.split("\nmod tests {").next().unwrap_or(text);
    code.lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .filter(|line| WORDS.iter().any(|word| line.contains(word)))
        .count()
}

#[test]
fn nothing_is_made_of_a_reading_or_a_search_that_failed() {
    let list = fs::read_to_string(root().join("tests/lenient.txt")).expect("the list");
    let mut allowed: BTreeMap<String, usize> = BTreeMap::new();
    for line in list.lines().filter(|l| !l.starts_with('#')) {
        let parts: Vec<&str> = line.split(" | ").collect();
        let [path, count, why] = parts[..] else {
            panic!("path, how often and why: {line}");
        };
        assert!(why.len() > 10, "no reason: {line}");
        allowed.insert(path.to_owned(), count.parse().expect("a count"));
    }
    let mut found = Vec::new();
    for folder in FOLDERS {
        found.extend(files(&root().join("src/core").join(folder), ".rs"));
    }
    let mut wrong = Vec::new();
    for path in found {
        let name = path
            .strip_prefix(root())
            .expect("inside")
            .to_string_lossy()
            .replace('\\', "/");
        if name.ends_with("tests.rs") {
            continue;
        }
        let now = lenient(&fs::read_to_string(&path).expect("text"));
        let then = allowed.remove(&name).unwrap_or(0);
        if now != then {
            wrong.push(format!("{name}: {now}, {then} with a reason"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(allowed.is_empty(), "no such file: {allowed:?}");
}

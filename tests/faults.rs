//! Every name that the core gives to a faulty field is about something that the
//! page can say: a new name has to be put into `quantity/about.rs`.

use coldseat_core::quantity::about::About;
use coldseat_core::quantity::report::Fault;
use coldseat_tests::{files, root};
use std::collections::BTreeSet;
use std::fs;

/// Where faults are made that a person may come to see.
const FOLDERS: [&str; 5] = ["thermal", "mechanics", "metrology", "planning", "job"];
/// What a field's name is given to.
const CALLS: [&str; 4] = [".check(", "Fault::new(", "out_of_range(", ".at("];

/// The names in quotes that directly follow a call.
fn names(text: &str, found: &mut BTreeSet<String>) {
    let code = text.split("\nmod tests {").next().unwrap_or(text);
    for call in CALLS {
        for after in code.split(call).skip(1) {
            let after = after.trim_start().trim_start_matches('&');
            let after = after.trim_start_matches("format!(");
            if let Some((name, _)) = after.strip_prefix('"').and_then(|a| a.split_once('"')) {
                found.insert(name.to_owned());
            }
        }
    }
}

#[test]
fn every_fault_is_about_something_that_can_be_said() {
    let core = root().join("src/core");
    let mut paths = Vec::new();
    for folder in FOLDERS {
        paths.extend(files(&core.join(folder), ".rs"));
    }
    let mut found = BTreeSet::new();
    for path in paths {
        names(&fs::read_to_string(path).expect("a file"), &mut found);
    }
    assert!(found.len() > 80, "{} names", found.len());
    let unsaid: Vec<&String> = found
        .iter()
        // A field handed on by whoever asks.
        .filter(|name| !name.starts_with('{'))
        .filter(|name| Fault::new(name.as_str(), "").about() == About::Other)
        .collect();
    assert!(unsaid.is_empty(), "{unsaid:?}");
    // A path and an index are no part of the name.
    let deep = Fault::new("holes[2].thickness_m", "");
    assert_eq!(deep.about(), About::Thickness);
}

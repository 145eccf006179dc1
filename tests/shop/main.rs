//! Plays the cases of `tests/jobs` through the core, as `tests/jobs/README.md`
//! tells them.

mod bench;
mod words;

use bench::Bench;
use std::fs;
use std::path::Path;

/// A case: its name and its lines.
struct Case {
    name: String,
    lines: Vec<String>,
}

fn cases() -> Vec<Case> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs");
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "md") && !path.ends_with("README.md"))
        .collect();
    files.sort();
    let mut cases = Vec::new();
    for file in files {
        let text = fs::read_to_string(&file).unwrap();
        for block in text.split("\n## ").skip(1) {
            let mut lines = block.lines().map(str::trim).filter(|l| !l.is_empty());
            let name = format!(
                "{}: {}",
                file.file_stem().unwrap().display(),
                lines.next().unwrap()
            );
            let lines: Vec<String> = lines.map(str::to_owned).collect();
            cases.push(Case { name, lines });
        }
    }
    cases
}

#[test]
fn the_jobs_say_what_a_machinist_expects() {
    let mut broken = Vec::new();
    let mut said = 0;
    for case in cases() {
        let mut bench: Option<Bench> = None;
        let own = case.lines.iter().filter(|l| l.starts_with("Says:")).count();
        assert!(own > 0, "{} says nothing", case.name);
        said += own;
        for line in &case.lines {
            let (verb, rest) = line
                .split_once(':')
                .unwrap_or_else(|| panic!("{}: {line}", case.name));
            let rest = rest.trim();
            if verb == "From" {
                bench = Some(Bench::from(rest));
                continue;
            }
            let bench = bench
                .as_mut()
                .unwrap_or_else(|| panic!("{}: no From", case.name));
            if let Err(what) = bench.play(verb, rest) {
                broken.push(format!("{}\n    {line}\n    {what}", case.name));
            }
        }
    }
    assert!(broken.is_empty(), "\n{}", broken.join("\n"));
    assert!(said >= 50, "{said}");
}

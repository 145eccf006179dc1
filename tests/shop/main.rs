//! Plays the cases of `tests/jobs` through the core, as `tests/jobs/README.md`
//! tells them.

mod bench;
mod cases;
mod words;

use bench::Bench;
use cases::cases;
use std::path::Path;

#[test]
fn the_jobs_say_what_a_machinist_expects() {
    let mut broken = Vec::new();
    let mut said = 0;
    for case in cases(&Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs")) {
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

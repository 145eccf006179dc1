//! The fuzz targets, built by cargo-fuzz and run by libFuzzer.
//!
//! What a long run finds of new inputs stays in cargo's target folder, where the
//! next one goes on from it; the tree keeps the seeds only. The short run starts
//! from the seeds alone and always draws the same: a check that looks elsewhere
//! each time fails on whoever comes by, not on whoever broke something.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::check::here;
use crate::layout;
use crate::run::{self, Outcome, Trouble, cargo};
use crate::setup;

/// The targets, each a file of `tests/fuzz/`, with the inputs that one check among
/// others tries: some ten seconds each.
const TARGETS: [(&str, u64); 5] = [
    ("link", 250_000),
    ("document", 30_000),
    ("folder", 100_000),
    ("quantity", 2_500_000),
    ("evaluator", 200_000),
];
/// Seconds for each target where none are asked for.
pub const LONG: u64 = 900;
/// Bytes of an input at most: a document of eight cylinders fits.
const INPUT_MOST: usize = 16_384;
/// Seconds within which an input is answered, or it is a finding.
const PATIENCE: u64 = 10;

/// The folder of the built targets.
fn build(tool: &Path) -> Outcome<PathBuf> {
    let target = layout::target_folder().join("fuzz");
    println!("[fuzz] building the targets, a minute or two the first time");
    run::run(
        here(cargo()).args([
            "fetch",
            "--quiet",
            "--manifest-path",
            "tests/fuzz/Cargo.toml",
        ]),
        "check that the crate registry can be reached",
    )?;
    let triple = host()?;
    run::run(
        here(Command::new(tool))
            .args(["build", "--fuzz-dir", "tests/fuzz", "--target", &triple])
            // The core holds no unsafe code; without a sanitizer the compiler of
            // the rest will do and inputs are tried ten times as fast.
            .args(["--sanitizer", "none", "--release", "--debug-assertions"])
            .arg("--target-dir")
            .arg(&target),
        "see the message above; a C++ compiler is needed",
    )?;
    Ok(target.join(triple).join("release"))
}

/// This machine, in the compiler's words.
fn host() -> Outcome<String> {
    run::answer(Command::new("rustc").arg("-vV"))
        .as_deref()
        .and_then(|text| text.lines().find_map(|line| line.strip_prefix("host: ")))
        .map(str::to_owned)
        .ok_or_else(|| Trouble::new("rustc does not say its host", "check `rustc -vV`"))
}

/// How far a run goes.
#[derive(Clone, Copy)]
enum Reach {
    /// So many seconds, from wherever the last one came to, drawn afresh.
    Seconds(u64),
    /// The same inputs every time, as many as the target's entry says.
    Same,
}

/// Runs one target; how many inputs it tried.
fn run_target(programs: &Path, (name, inputs): (&str, u64), reach: Reach) -> Outcome<u64> {
    let (kept, limits) = match reach {
        Reach::Seconds(seconds) => (
            layout::target_folder().join("fuzz-found").join(name),
            vec![format!("-max_total_time={seconds}")],
        ),
        Reach::Same => {
            let kept = layout::target_folder().join("fuzz-short").join(name);
            if kept.exists() {
                fs::remove_dir_all(&kept).map_err(|error| Trouble::with_file(&kept, &error))?;
            }
            (kept, vec![format!("-runs={inputs}"), "-seed=1".to_owned()])
        }
    };
    fs::create_dir_all(&kept).map_err(|error| Trouble::with_file(&kept, &error))?;
    let log = kept.with_extension("log");
    let file = fs::File::create(&log).map_err(|error| Trouble::with_file(&log, &error))?;
    let findings = kept.with_extension("finding-");
    let status = here(Command::new(programs.join(name)))
        .arg(&kept)
        .arg(layout::checkout().join("tests/fuzz/corpus").join(name))
        .args(limits)
        .arg(format!("-timeout={PATIENCE}"))
        .arg(format!("-max_len={INPUT_MOST}"))
        .arg(format!("-artifact_prefix={}", findings.display()))
        .arg("-print_final_stats=1")
        .stdout(std::process::Stdio::null())
        .stderr(file)
        .status()
        .map_err(|error| Trouble::new(format!("{name}: {error}"), "build it again"))?;
    let text = fs::read_to_string(&log).map_err(|error| Trouble::with_file(&log, &error))?;
    if !status.success() {
        let last: Vec<&str> = text.lines().rev().take(25).collect();
        let last: Vec<&str> = last.into_iter().rev().collect();
        return Err(Trouble::new(
            format!("target `{name}` found something:\n{}", last.join("\n")),
            format!(
                "the input lies beside {}; mend it and keep it as a seed in tests/fuzz/corpus/{name}",
                log.display()
            ),
        ));
    }
    let count = executed(&text).ok_or_else(|| {
        Trouble::new(
            format!("target `{name}` does not say how much it tried"),
            format!("see {}", log.display()),
        )
    })?;
    println!("[fuzz] {name}: {count} inputs, no finding");
    Ok(count)
}

/// Inputs that a run tried, from its last words.
fn executed(log: &str) -> Option<u64> {
    let line = log
        .lines()
        .find_map(|line| line.strip_prefix("stat::number_of_executed_units:"))?;
    line.trim().parse().ok().filter(|count| *count > 0)
}

/// Runs every target for a while.
pub fn fuzz(seconds: u64) -> Outcome<()> {
    match setup::cargo_fuzz()? {
        Some(tool) => run_all(&tool, Reach::Seconds(seconds)),
        None => Err(Trouble::new(
            "no C++ compiler, which the fuzzer needs",
            "install one (Debian: g++, macOS: the command line tools)",
        )),
    }
}

/// The short run; where there is no fuzzer the test `hostile` has tried the same
/// with changes of its own.
pub fn check() -> Outcome<()> {
    match setup::cargo_fuzz()? {
        Some(tool) => run_all(&tool, Reach::Same),
        None => {
            println!("[fuzz] no C++ compiler: tests/hostile.rs tried the same bodies");
            Ok(())
        }
    }
}

fn run_all(tool: &Path, reach: Reach) -> Outcome<()> {
    let programs = build(tool)?;
    let mut all = 0;
    for target in TARGETS {
        all += run_target(&programs, target, reach)?;
    }
    println!("[fuzz] {all} inputs in all");
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_run_says_how_much_it_tried() {
        let log = "Done 7 runs\nstat::number_of_executed_units: 415283\nstat::x: 1\n";
        assert_eq!(executed(log), Some(415_283));
        assert_eq!(executed("stat::number_of_executed_units: 0\n"), None);
        assert_eq!(executed(""), None);
    }

    #[test]
    fn every_target_has_its_file_and_its_seeds() {
        let folder = layout::checkout().join("tests/fuzz");
        for (name, _) in TARGETS {
            assert!(folder.join(format!("{name}.rs")).is_file(), "{name}");
            let seeds = fs::read_dir(folder.join("corpus").join(name));
            assert!(seeds.is_ok_and(|seeds| seeds.count() > 3), "{name}");
        }
    }
}

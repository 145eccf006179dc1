//! Every check, in order, with a headline each and one line at the end.
//!
//! The same for a person and for CI. The first check that fails ends the run:
//! what comes after it would mostly fail for the same reason. Those that need a
//! browser run beside the others ([`crate::rows`]).

use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;

use crate::budget;
use crate::deny;
use crate::fuzz;
use crate::layout;
use crate::page;
use crate::rows::{Desk, Passed, Row};
use crate::run::{self, Outcome, Trouble, cargo};
use crate::setup::{Purpose, Toolbox, WASM_TARGET, python, set_up};
use crate::wasm_test::{native_answers, wasm_test};

/// What a check needs to be there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Needs {
    /// The compiler that called us.
    Compiler,
    /// The page's compiler and tools, and a browser.
    Tools,
}

struct Check {
    name: &'static str,
    headline: &'static str,
    needs: Needs,
    run: fn(&Bench) -> Outcome<u64>,
}

const CHECKS: [Check; 13] = [
    Check {
        name: "format",
        headline: "every file is formatted",
        needs: Needs::Compiler,
        run: format,
    },
    Check {
        name: "lint-host",
        headline: "no warning in what runs on this machine",
        needs: Needs::Compiler,
        run: lint_host,
    },
    Check {
        name: "lint-wasm",
        headline: "no warning in what runs in the browser",
        needs: Needs::Tools,
        run: lint_wasm,
    },
    Check {
        name: "crates",
        headline: "advisories, licences and sources of every crate",
        needs: Needs::Tools,
        run: crates,
    },
    Check {
        name: "native",
        headline: "tests on this machine",
        needs: Needs::Compiler,
        run: native,
    },
    Check {
        name: "examples",
        headline: "examples in the documentation",
        needs: Needs::Compiler,
        run: examples,
    },
    Check {
        name: "fuzz",
        headline: "hostile bytes for whatever reads them, ten seconds a target",
        needs: Needs::Compiler,
        run: hostile,
    },
    Check {
        name: "crosscheck",
        headline: "seeded cases against numpy, scipy, CoolProp, ht and scikit-fem",
        needs: Needs::Compiler,
        run: crosscheck,
    },
    Check {
        name: "wasm",
        headline: "the core's numbers, computed in a browser",
        needs: Needs::Tools,
        run: wasm,
    },
    Check {
        name: "build",
        headline: "the release page builds and keeps its budget",
        needs: Needs::Tools,
        run: build,
    },
    Check {
        name: "browser",
        headline: "the finished page in a browser",
        needs: Needs::Tools,
        run: browser,
    },
    Check {
        name: "single",
        headline: "the page as one file, opened from the disk",
        needs: Needs::Tools,
        run: single,
    },
    Check {
        name: "engines",
        headline: "the finished page in Firefox and in WebKit",
        needs: Needs::Tools,
        run: engines,
    },
];

/// Tests by the browser that they want: last, and apart, since a machine may
/// lack one.
const OTHER_ENGINES: [&str; 2] = ["firefox::", "webkit::"];

/// Browsers at a time, one a test: they wait for frames and drivers a good deal,
/// so one more than there are cores; with more of them some starve.
const THREADS: &str = "--test-threads=3";

/// One browser at a time: of two that update their workers side by side WebKitGTK
/// leaves one waiting for longer than a test can.
const ONE_BY_ONE: &str = "--test-threads=1";

/// The package whose tests need a browser; the page's own tests are of its
/// pure logic and run here.
const NOT_NATIVE: [&str; 1] = ["--exclude=coldseat-browser-tests"];

/// The names of the checks, in their order.
pub fn names() -> Vec<&'static str> {
    CHECKS.iter().map(|check| check.name).collect()
}

/// What the checks share.
struct Bench {
    /// This program, noted at the start: the checks may rebuild it.
    own_program: PathBuf,
    tools: Option<Toolbox>,
    /// Of what tests draw by chance so many in a hundred.
    share: u64,
}

/// What the hand tries between two changes: no tool, no browser, and a few in a
/// hundred of what is drawn by chance.
pub const QUICK: (&str, u64) = ("format,lint-host,native", 4);

impl Bench {
    fn tools(&self) -> Outcome<&Toolbox> {
        self.tools.as_ref().ok_or_else(|| {
            Trouble::new("the tools are not set up", "run `cargo xtask setup` first")
        })
    }
}

/// The checks that run beside those before them when all are run: they wait for
/// browsers, which leaves a core to the others.
const BESIDE: [&str; 5] = ["wasm", "build", "browser", "single", "engines"];

/// The first check beside which they run; those before it find what a person
/// mends in a minute.
const FIRST_BESIDE: &str = "native";

/// The checks called `only`, names with commas between them, or all.
fn chosen(only: Option<&str>) -> Outcome<Vec<(usize, &'static Check)>> {
    let all = || CHECKS.iter().enumerate();
    let Some(only) = only else {
        return Ok(all().collect());
    };
    let known = names();
    if let Some(name) = only.split(',').find(|name| !known.contains(name)) {
        return Err(Trouble::new(
            format!("no check is called `{name}`"),
            format!("choose from {}", known.join(", ")),
        ));
    }
    let wanted: Vec<&str> = only.split(',').collect();
    Ok(all().filter(|(_, c)| wanted.contains(&c.name)).collect())
}

/// Runs every check, or those called `only`; as a row of another run where it
/// has a desk with that; of what tests draw by
/// chance `share` in a hundred.
pub fn check(only: Option<&str>, desk: Option<&Desk>, share: u64) -> Outcome<()> {
    let mut chosen = chosen(only)?;
    let own_program = std::env::current_exe().map_err(|error| {
        Trouble::new(
            format!("this program's own path: {error}"),
            "run it again through cargo",
        )
    })?;
    let tools = if chosen.iter().any(|(_, check)| check.needs == Needs::Tools) {
        Some(set_up(Purpose::Tests)?)
    } else {
        None
    };
    page::fetch_crates()?;
    let bench = Bench {
        own_program,
        tools,
        share,
    };
    if only.is_none() {
        chosen.retain(|(_, check)| !BESIDE.contains(&check.name));
    }

    let mut beside: Option<Row> = None;
    let mut passed = Vec::new();
    for (at, check) in chosen {
        if only.is_none() && check.name == FIRST_BESIDE {
            beside = Some(Row::start(&bench.own_program, &BESIDE)?);
        }
        let is_over = desk.is_some_and(Desk::is_stopped);
        if is_over || beside.as_mut().is_some_and(Row::has_failed) {
            break;
        }
        match run_one(&bench, at, check) {
            Ok(one) => passed.push(one),
            Err(trouble) => {
                if let Some(row) = beside {
                    row.stop();
                }
                return Err(trouble);
            }
        }
    }
    if let Some(row) = beside {
        passed.extend(row.end()?);
    }
    if let Some(desk) = desk {
        return desk.tell(&passed);
    }
    let lines: Vec<String> = passed.iter().map(Passed::line).collect();
    println!("\n{}\n", lines.join("\n"));
    match passed.iter().map(|one| one.tests).sum::<u64>() {
        0 => (),
        tests => println!("{tests} passed, 0 failed"),
    }
    Ok(())
}

fn run_one(bench: &Bench, at: usize, check: &Check) -> Outcome<Passed> {
    let Check { name, headline, .. } = check;
    println!("\n== {}/{} {name}: {headline}", at + 1, CHECKS.len());
    let begun = Instant::now();
    let tests = (check.run)(bench).map_err(|trouble| {
        Trouble::new(
            format!("check `{name}`: {}", trouble.what),
            format!("{}; then `cargo xtask test --only {name}`", trouble.remedy),
        )
    })?;
    Ok(Passed {
        name: (*name).to_owned(),
        tests,
        seconds: begun.elapsed().as_secs_f64(),
    })
}

fn format(_: &Bench) -> Outcome<u64> {
    run::run(
        here(cargo()).args(["fmt", "--all", "--check"]),
        "run `cargo fmt --all`",
    )?;
    let fuzz = ["--manifest-path", "tests/fuzz/Cargo.toml"];
    run::run(
        here(cargo()).arg("fmt").args(fuzz).arg("--check"),
        "run `cargo fmt --manifest-path tests/fuzz/Cargo.toml`",
    )?;
    Ok(0)
}

fn hostile(_: &Bench) -> Outcome<u64> {
    fuzz::check()?;
    Ok(0)
}

fn lint_host(_: &Bench) -> Outcome<u64> {
    run::run(
        here(cargo())
            .args([
                "clippy",
                "--quiet",
                "--workspace",
                "--exclude=coldseat-page",
                "--exclude=coldseat-bare",
            ])
            .args(["--all-targets", "--", "-D", "warnings"]),
        "mend what clippy names above",
    )?;
    Ok(0)
}

fn lint_wasm(bench: &Bench) -> Outcome<u64> {
    let tools = bench.tools()?;
    let mut clippy = tools.wasm.clippy();
    tools.equip(&mut clippy);
    run::run(
        here(clippy)
            .args(["--quiet", "-p", "coldseat-page", "-p", "coldseat-core"])
            .args(["-p", "coldseat-bare"])
            // As the page is built: its macros are then compiled only once.
            .arg("--release")
            .args(["--target", WASM_TARGET, "--", "-D", "warnings"]),
        "mend what clippy names above",
    )?;
    Ok(0)
}

fn crates(bench: &Bench) -> Outcome<u64> {
    let judge = bench.tools()?.deny.as_ref();
    let judge = judge
        .ok_or_else(|| Trouble::new("no cargo-deny is set up", "run `cargo xtask setup` first"))?;
    deny::check(judge)?;
    Ok(0)
}

fn native(bench: &Bench) -> Outcome<u64> {
    tests(
        here(cargo())
            .args(["test", "--workspace", "--lib", "--bins", "--tests"])
            .args(NOT_NATIVE)
            .env("COLDSEAT_SHARE", bench.share.to_string()),
    )
}

fn examples(_: &Bench) -> Outcome<u64> {
    tests(
        here(cargo())
            .args(["test", "--workspace", "--doc"])
            .args(NOT_NATIVE),
    )
}

/// The evaluator, built as a person would use it.
pub(crate) fn evaluator() -> Outcome<PathBuf> {
    run::run(
        here(cargo()).args([
            "build",
            "--release",
            "-p",
            "coldseat-core",
            "--bin",
            "evaluate",
        ]),
        "see the message above",
    )?;
    Ok(layout::target_folder().join("release").join("evaluate"))
}

fn crosscheck(_: &Bench) -> Outcome<u64> {
    let interpreter = python()?;
    let program = evaluator()?;
    let script = layout::checkout().join("tests/crosscheck/crosscheck.py");
    let output = run::run_and_keep(
        here(Command::new(interpreter))
            .env("PYTHONDONTWRITEBYTECODE", "1")
            .arg(script)
            .arg(program),
        "see the case that differs above",
    )?;
    let count = output
        .lines()
        .rev()
        .find_map(|line| line.split_once(" passed, ")?.0.parse::<u64>().ok());
    match count {
        None | Some(0) => Err(Trouble::new(
            "the cross-check compared nothing",
            "see its output above",
        )),
        Some(count) => Ok(count),
    }
}

fn wasm(bench: &Bench) -> Outcome<u64> {
    let mut test = wasm_test(bench.tools()?, "wasm")?;
    tests(test.env("COLDSEAT_NATIVE_ANSWERS", native_answers()?))
}

fn build(bench: &Bench) -> Outcome<u64> {
    page::build(bench.tools()?, &layout::dist_folder())?;
    budget::hold(&layout::dist_folder())?;
    Ok(0)
}

fn browser(bench: &Bench) -> Outcome<u64> {
    tests(
        here(cargo())
            .args(["test", "-p", "coldseat-browser-tests", "--tests"])
            .args(["--", THREADS])
            .args(OTHER_ENGINES.map(|name| format!("--skip={name}")))
            .envs(browser_env(bench.tools()?, &bench.own_program)?),
    )
}

/// The file plays a demo through. It is the same program with the same styles: the
/// rules of every screen are asked of the page on a server, once.
fn single(bench: &Bench) -> Outcome<u64> {
    tests(
        here(cargo())
            .args(["test", "-p", "coldseat-browser-tests"])
            .args(["--test", "page", "--", "demos::the_inch"])
            .env("COLDSEAT_FORM", "one-file")
            .envs(browser_env(bench.tools()?, &bench.own_program)?),
    )
}

fn engines(bench: &Bench) -> Outcome<u64> {
    tests(
        here(cargo())
            .args(["test", "-p", "coldseat-browser-tests"])
            .args(["--test", "page", "--", ONE_BY_ONE])
            .args(OTHER_ENGINES)
            .envs(browser_env(bench.tools()?, &bench.own_program)?),
    )
}

/// What the tests and the bench in a browser are told.
pub(crate) fn browser_env(
    tools: &Toolbox,
    own_program: &Path,
) -> Outcome<Vec<(&'static str, PathBuf)>> {
    let browser = tools
        .browser
        .as_ref()
        .ok_or_else(|| Trouble::new("no browser is set up", "run `cargo xtask setup` first"))?;
    let mut env = vec![
        // An error's words say what failed; its stack only where it was told.
        ("RUST_LIB_BACKTRACE", "0".into()),
        ("COLDSEAT_XTASK", own_program.to_owned()),
        ("COLDSEAT_DIST", layout::dist_folder()),
        (
            "COLDSEAT_PICTURES",
            layout::target_folder().join("pictures"),
        ),
        ("COLDSEAT_BROWSER", browser.browser.clone()),
        ("COLDSEAT_AXE", tools.axe.clone().unwrap_or_default()),
        ("COLDSEAT_JSQR", tools.jsqr.clone().unwrap_or_default()),
        ("CHROMEDRIVER", browser.driver.clone()),
    ];
    env.extend(tools.engines.env());
    Ok(env)
}

/// A command that stands in the checkout, wherever the person stands.
pub(crate) fn here(mut command: Command) -> Command {
    command.current_dir(layout::checkout());
    command
}

/// Runs tests and counts those that passed; none at all is a failure.
fn tests(command: &mut Command) -> Outcome<u64> {
    let output = run::run_and_keep(command, "see the failing test above")?;
    match passed(&output) {
        0 => Err(Trouble::new(
            format!("`{}` ran no test", run::spoken(command)),
            "check that the tests are where this check looks for them",
        )),
        count => Ok(count),
    }
}

/// The passed tests in the summaries of a run's output.
fn passed(output: &str) -> u64 {
    output
        .lines()
        .filter_map(|line| line.trim().strip_prefix("test result: ok. "))
        .filter_map(|rest| rest.split_once(" passed"))
        .filter_map(|(count, _)| count.parse::<u64>().ok())
        .sum()
}

#[cfg(test)]
mod tests {
    use super::{check, passed};

    #[test]
    fn summaries_are_added_up() {
        let output = "running 2 tests\n\
                      test result: ok. 2 passed; 0 failed; 1 ignored\n\
                      test result: ok. 40 passed; 0 failed\n\
                      test result: FAILED. 7 passed; 1 failed\n";
        assert_eq!(passed(output), 42);
    }

    #[test]
    fn an_unknown_check_is_named_with_the_known_ones() {
        let trouble =
            check(Some("native,everything"), None, 100).map_err(|trouble| trouble.to_string());
        assert!(
            trouble.is_err_and(|text| text.contains("`everything`") && text.contains("lint-wasm"))
        );
    }
}

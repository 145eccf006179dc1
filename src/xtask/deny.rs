//! Advisories, licences and sources of every crate, the page's and the tests',
//! by cargo-deny as `.cargo/deny.toml` says.
//!
//! Licences and sources stand in the crates themselves and are always checked.
//! Advisories stand in a database of their own, which is fetched where this
//! machine can reach it; which one was asked is said, and so is that none was.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Duration;

use crate::check::here;
use crate::layout;
use crate::run::{self, Outcome, answer, cargo};

/// A network that says neither yes nor no is not waited for any longer.
const PATIENCE: Duration = Duration::from_secs(90);

/// Lock files, by the manifest beside them.
const MANIFESTS: [&str; 2] = ["Cargo.toml", "tests/fuzz/Cargo.toml"];

/// The database of advisories; each with the day of its last entry.
#[derive(Debug, PartialEq, Eq)]
enum Database {
    /// Fetched just now.
    Fetched(String),
    /// Could not be fetched; fetched by an earlier run.
    Earlier(String),
    /// Could not be fetched, now or earlier.
    None,
}

impl Database {
    fn of(is_fetched: bool, day: Option<String>) -> Self {
        match (is_fetched, day) {
            (true, Some(day)) => Self::Fetched(day),
            (false, Some(day)) => Self::Earlier(day),
            (_, None) => Self::None,
        }
    }

    fn words(&self) -> String {
        match self {
            Self::Fetched(day) => {
                format!("advisories: database fetched now, its last entry of {day}")
            }
            Self::Earlier(day) => format!(
                "advisories: database could not be fetched; checked against the one fetched \
                 earlier, its last entry of {day}"
            ),
            Self::None => {
                "advisories: NOT CHECKED, their database could not be had on this machine"
                    .to_owned()
            }
        }
    }

    fn checks(&self) -> &'static [&'static str] {
        match self {
            Self::Fetched(_) | Self::Earlier(_) => &["advisories", "licenses", "sources"],
            Self::None => &["licenses", "sources"],
        }
    }
}

/// Holds every crate against `.cargo/deny.toml`.
pub fn check(judge: &Path) -> Outcome<()> {
    let mut fetch = here(Command::new(judge));
    // Its own words about a network that is not there are an error's.
    fetch.args(["fetch", "db"]).stderr(Stdio::null());
    let is_fetched = run::succeeds_within(&mut fetch, PATIENCE);
    let database = Database::of(is_fetched, day());
    println!("[crates] {}", database.words());
    for manifest in MANIFESTS {
        run::run(
            here(cargo()).args(["fetch", "--quiet", "--locked", "--manifest-path", manifest]),
            "check that the crate registry can be reached",
        )?;
        println!("[crates] {manifest}: {}", database.checks().join(", "));
        run::run(
            here(Command::new(judge))
                .args(["--manifest-path", manifest, "--offline", "--all-features"])
                .args(["--config", ".cargo/deny.toml", "check"])
                // Each manifest has some of the exceptions only.
                .args(["--allow", "license-exception-not-encountered"])
                .args(["--hide-inclusion-graph"])
                .args(database.checks()),
            "take another crate or version, or say in .cargo/deny.toml why it may stay",
        )?;
    }
    Ok(())
}

/// The day of the last entry of the database that lies on this machine.
fn day() -> Option<String> {
    let home = env::var_os("CARGO_HOME").map(PathBuf::from);
    let home = home.or_else(|| env::var_os("HOME").map(|home| Path::new(&home).join(".cargo")))?;
    let folders = fs::read_dir(layout::absolute(home).join("advisory-dbs")).ok()?;
    let days = folders.flatten().filter_map(|folder| {
        let mut git = Command::new("git");
        git.arg("-C").arg(folder.path());
        // A folder that is no checkout of its own is not asked for that round it.
        git.env("GIT_CEILING_DIRECTORIES", folder.path().parent()?);
        answer(git.args(["show", "--no-patch", "--format=%cs", "HEAD"]))
    });
    days.max()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_not_checked_is_said_not_to_be() {
        let day = || Some("2026-11-28".to_owned());
        let none = Database::of(false, None);
        assert!(none.words().contains("NOT CHECKED"));
        assert!(!none.checks().contains(&"advisories"));
        // A fetch that left nothing behind is none.
        assert_eq!(Database::of(true, None), none);
        for (is_fetched, word) in [(true, "fetched now"), (false, "fetched earlier")] {
            let there = Database::of(is_fetched, day());
            assert!(there.words().contains(word), "{}", there.words());
            assert!(there.words().contains("2026-11-28"));
            assert!(there.checks().contains(&"advisories"));
        }
        for database in [none, Database::of(true, day())] {
            assert!(database.checks().contains(&"licenses"));
            assert!(database.checks().contains(&"sources"));
        }
    }
}

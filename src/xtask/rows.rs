//! Two rows of checks side by side: what runs on this machine, and what waits
//! for browsers most of the time. The second is a process of its own whose words
//! are kept in a file and shown after those of the first, whole and in order.

use std::fs::{self, File};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::thread::sleep;
use std::time::Duration;

use crate::layout;
use crate::run::{Outcome, Trouble};

/// How often its words are looked at.
const GLANCE: Duration = Duration::from_millis(100);

/// A check that passed: its name, how many tests and seconds it took.
#[derive(Debug, Clone, PartialEq)]
pub struct Passed {
    /// Its name.
    pub name: String,
    /// Tests that passed; 0 where it does not count any.
    pub tests: u64,
    /// Seconds that it took.
    pub seconds: f64,
}

impl Passed {
    /// As the run's last lines show it.
    pub fn line(&self) -> String {
        let Self {
            name,
            tests,
            seconds,
        } = self;
        match tests {
            0 => format!("{name:>10}  passed in {seconds:.0} s"),
            _ => format!("{name:>10}  {tests} passed in {seconds:.0} s"),
        }
    }

    fn kept(&self) -> String {
        format!("{} {} {}\n", self.name, self.tests, self.seconds)
    }

    fn read(line: &str) -> Option<Self> {
        let mut parts = line.split(' ');
        Some(Self {
            name: parts.next()?.to_owned(),
            tests: parts.next()?.parse().ok()?,
            seconds: parts.next()?.parse().ok()?,
        })
    }
}

/// What the process of a row and the one that began it tell each other.
#[derive(Debug, Clone)]
pub struct Desk(PathBuf);

impl Desk {
    /// In a folder of theirs.
    pub fn at(folder: PathBuf) -> Self {
        Self(folder)
    }

    /// Whether the row is to end with the check under way.
    pub fn is_stopped(&self) -> bool {
        self.0.join("stop").exists()
    }

    /// Tells what passed.
    pub fn tell(&self, passed: &[Passed]) -> Outcome<()> {
        let path = self.0.join("passed");
        let text: String = passed.iter().map(Passed::kept).collect();
        fs::write(&path, text).map_err(|error| Trouble::with_file(&path, &error))
    }

    fn passed(&self) -> Vec<Passed> {
        let text = fs::read_to_string(self.0.join("passed")).unwrap_or_default();
        text.lines().filter_map(Passed::read).collect()
    }
}

/// The row under way.
#[derive(Debug)]
pub struct Row {
    desk: Desk,
    words: PathBuf,
    child: Child,
    checks: usize,
}

impl Row {
    /// Begins the checks called `names`.
    pub fn start(program: &Path, names: &[&str]) -> Outcome<Self> {
        let folder = layout::target_folder().join("row");
        let words = folder.join("words");
        let begun = || -> io::Result<Child> {
            if folder.exists() {
                fs::remove_dir_all(&folder)?;
            }
            fs::create_dir_all(&folder)?;
            let file = File::create(&words)?;
            Command::new(program)
                .args(["test", "--only", &names.join(",")])
                .arg("--row")
                .arg(&folder)
                .stdin(Stdio::null())
                .stdout(file.try_clone()?)
                .stderr(file)
                .spawn()
        };
        let child = begun().map_err(|error| Trouble::with_file(&folder, &error))?;
        println!(
            "\n[test] beside them, shown after them: {}",
            names.join(", ")
        );
        Ok(Self {
            desk: Desk::at(folder),
            words,
            child,
            checks: names.len(),
        })
    }

    /// Whether a check of it has failed.
    pub fn has_failed(&mut self) -> bool {
        matches!(self.child.try_wait(), Ok(Some(status)) if !status.success())
    }

    /// Ends it with the check under way, and waits for that: its browsers and
    /// compilers are ended by nobody else.
    pub fn stop(mut self) {
        println!("\n[test] the checks beside end with the one under way");
        // Without the file it runs on to its end, and nothing is lost.
        let _ = fs::write(self.desk.0.join("stop"), "");
        let _ = self.child.wait();
    }

    /// Shows its words up to its end; what passed.
    pub fn end(mut self) -> Outcome<Vec<Passed>> {
        let trouble = |error: &io::Error| Trouble::with_file(&self.words, error);
        let mut words = File::open(&self.words).map_err(|error| trouble(&error))?;
        let mut piece = Vec::new();
        let status = loop {
            // Asked first: what it says last is then read after it has ended.
            let ended = self.child.try_wait().map_err(|error| trouble(&error))?;
            piece.clear();
            words
                .read_to_end(&mut piece)
                .and_then(|_| io::stdout().write_all(&piece))
                .map_err(|error| trouble(&error))?;
            if let Some(status) = ended {
                break status;
            }
            sleep(GLANCE);
        };
        let passed = self.desk.passed();
        if status.success() && passed.len() == self.checks {
            Ok(passed)
        } else {
            Err(Trouble::new(
                "a check of those beside failed",
                "see what it says above",
            ))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Desk, Passed};

    #[test]
    fn what_passed_comes_back_as_it_was_told() {
        let folder = tempfile::tempdir().map(|folder| folder.keep());
        let desk = Desk::at(folder.unwrap_or_default());
        let passed =
            [("wasm", 3, 12.5), ("build", 0, 40.25)].map(|(name, tests, seconds)| Passed {
                name: name.to_owned(),
                tests,
                seconds,
            });
        assert_eq!(desk.tell(&passed), Ok(()));
        assert_eq!(desk.passed(), passed);
        assert!(!desk.is_stopped());
        assert_eq!(passed[0].line(), "      wasm  3 passed in 12 s");
        assert_eq!(passed[1].line(), "     build  passed in 40 s");
        let _ = std::fs::remove_dir_all(desk.0);
    }
}

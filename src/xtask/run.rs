//! Running other programs, and saying plainly what went wrong with them.

use std::ffi::OsStr;
use std::fmt;
use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

/// What failed and what to do about it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Trouble {
    /// What failed, in one line.
    pub what: String,
    /// What the reader can do now.
    pub remedy: String,
}

impl Trouble {
    /// A trouble of two plain sentences.
    pub fn new(what: impl Into<String>, remedy: impl Into<String>) -> Self {
        Self {
            what: what.into(),
            remedy: remedy.into(),
        }
    }

    /// A trouble with a file or folder.
    pub fn with_file(path: &std::path::Path, error: &std::io::Error) -> Self {
        Self::new(
            format!("{}: {error}", path.display()),
            "check that the folder exists, is writable and has room",
        )
    }
}

impl fmt::Display for Trouble {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}\n  what to do: {}", self.what, self.remedy)
    }
}

impl std::error::Error for Trouble {}

/// The result of a step.
pub type Outcome<T> = Result<T, Trouble>;

/// The cargo that called us, or the one on the path.
///
/// Under rustup the calling cargo is the toolchain's own: the same compiler
/// then builds the page and runs the checks.
pub fn cargo() -> Command {
    Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
}

/// The command line as a person would type it, for messages.
pub fn spoken(command: &Command) -> String {
    let program = std::path::Path::new(command.get_program());
    let name = program.file_stem().unwrap_or(program.as_os_str());
    std::iter::once(name)
        .chain(command.get_args())
        .map(OsStr::to_string_lossy)
        .collect::<Vec<_>>()
        .join(" ")
}

/// Runs a command with its output shown; anything but success is a trouble.
pub fn run(command: &mut Command, remedy: &str) -> Outcome<()> {
    let status = command
        .stdin(Stdio::null())
        .status()
        .map_err(|error| cannot_start(command, &error))?;
    if status.success() {
        Ok(())
    } else {
        Err(Trouble::new(
            format!("`{}` failed ({status})", spoken(command)),
            remedy,
        ))
    }
}

/// The standard output of a command that succeeded, or nothing.
///
/// For questions such as "which version are you": a tool that is missing and
/// a tool that fails are the same answer, and neither is an error.
pub fn answer(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).output().ok()?;
    output
        .status
        .success()
        .then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// Runs a command, shows its standard output line by line and returns it.
pub fn run_and_keep(command: &mut Command, remedy: &str) -> Outcome<String> {
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|error| cannot_start(command, &error))?;
    let mut kept = String::new();
    if let Some(stdout) = child.stdout.take() {
        for line in BufReader::new(stdout).split(b'\n').map_while(Result::ok) {
            let line = String::from_utf8_lossy(&line).into_owned();
            println!("{line}");
            kept.push_str(&line);
            kept.push('\n');
        }
    }
    let status = child
        .wait()
        .map_err(|error| cannot_start(command, &error))?;
    if status.success() {
        Ok(kept)
    } else {
        Err(Trouble::new(
            format!("`{}` failed ({status})", spoken(command)),
            remedy,
        ))
    }
}

/// Runs a command that may hang for want of a network, for at most `limit`.
///
/// Returns whether it succeeded; the caller has another way when it did not.
pub fn succeeds_within(command: &mut Command, limit: Duration) -> bool {
    let Ok(mut child) = command.stdin(Stdio::null()).spawn() else {
        return false;
    };
    let begun = Instant::now();
    loop {
        match child.try_wait() {
            Ok(Some(status)) => return status.success(),
            Ok(None) if begun.elapsed() < limit => thread::sleep(Duration::from_millis(200)),
            _ => {
                // Ours to end; that it has ended already is fine.
                let _ = child.kill();
                let _ = child.wait();
                return false;
            }
        }
    }
}

fn cannot_start(command: &Command, error: &std::io::Error) -> Trouble {
    Trouble::new(
        format!("`{}` could not be started: {error}", spoken(command)),
        "check that the program is installed and on your PATH",
    )
}

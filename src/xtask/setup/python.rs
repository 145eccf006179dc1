//! Python with the libraries that the cross-check compares with, in a folder
//! of our own: the person's Python stays as it is.

use std::path::PathBuf;
use std::process::Command;

use sha2::{Digest, Sha256};

use super::{debian, say, turn};
use crate::layout::{self, on_path};
use crate::run::{self, Outcome, Trouble, answer};

/// The interpreter of the cross-check; installed where it is missing.
pub fn python() -> Outcome<PathBuf> {
    let _turn = turn()?;
    let list = layout::checkout().join("tests/crosscheck/requirements.txt");
    let wanted = std::fs::read(&list).map_err(|error| Trouble::with_file(&list, &error))?;
    // Another list is another folder: an old one is never half changed.
    let digest = Sha256::digest(&wanted);
    let mark: String = digest
        .iter()
        .take(4)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let folder = layout::tools_folder().join(format!("python-{mark}"));
    let inside = if cfg!(windows) {
        "Scripts/python.exe"
    } else {
        "bin/python"
    };
    let interpreter = folder.join(inside);
    let complete = folder.join("complete");
    if complete.exists() && interpreter.exists() {
        say("python: numpy, scipy, CoolProp, ht and scikit-fem are there");
        return Ok(interpreter);
    }
    say("python: installing numpy, scipy, CoolProp, ht and scikit-fem, about a minute");
    make_folder(&folder)?;
    run::run(
        Command::new(&interpreter)
            .args([
                "-m",
                "pip",
                "install",
                "--quiet",
                "--disable-pip-version-check",
                "-r",
            ])
            .arg(&list),
        "check that the Python package index can be reached, and that Python is 3.11 or newer",
    )?;
    std::fs::write(&complete, "").map_err(|error| Trouble::with_file(&complete, &error))?;
    Ok(interpreter)
}

fn make_folder(folder: &std::path::Path) -> Outcome<()> {
    let venv = |program: PathBuf| {
        let mut command = Command::new(program);
        command.args(["-m", "venv", "--clear"]).arg(folder);
        answer(&mut command)
    };
    let found = || ["python3", "python"].iter().find_map(|name| on_path(name));
    if found().and_then(venv).is_some() {
        return Ok(());
    }
    if debian::is_debian() {
        say("python: installing Debian's python3 and python3-venv, half a minute");
        debian::install(&["python3", "python3-venv"])?;
        if found().and_then(venv).is_some() {
            return Ok(());
        }
    }
    Err(Trouble::new(
        "no Python that can make a virtual environment",
        "install Python 3.11 or newer with its venv module",
    ))
}

//! Debian's packages: installed as root or with sudo, else asked for.

use std::io::IsTerminal;
use std::path::Path;
use std::process::Command;

use crate::layout::on_path;
use crate::run::{self, Outcome, Trouble, answer};

/// Whether this system installs its software with apt.
pub(super) fn is_debian() -> bool {
    Path::new("/etc/debian_version").exists() && on_path("apt-get").is_some()
}

/// Whether this process runs as root.
pub(super) fn is_root() -> bool {
    answer(Command::new("id").arg("-u")).as_deref() == Some("0")
}

/// Installs packages, refreshing apt's lists if it does not know them.
pub(super) fn install(packages: &[&str]) -> Outcome<()> {
    let by_hand = format!(
        "install them by hand: apt-get install {}",
        packages.join(" ")
    );
    let first = run::run(apt_get()?.args(["install"]).args(packages), &by_hand);
    if first.is_ok() {
        return first;
    }
    run::run(
        apt_get()?.arg("update"),
        "check that Debian's package server can be reached",
    )?;
    run::run(apt_get()?.args(["install"]).args(packages), &by_hand)
}

/// Whether apt knows a package that can be installed.
pub(super) fn offers(package: &str) -> bool {
    answer(Command::new("apt-cache").args(["policy", package])).is_some_and(|text| {
        text.lines()
            .filter_map(|line| line.trim().strip_prefix("Candidate: "))
            .any(|candidate| candidate != "(none)")
    })
}

/// Refreshes apt's lists.
pub(super) fn refresh() -> Outcome<()> {
    run::run(
        apt_get()?.arg("update"),
        "check that Debian's package server can be reached",
    )
}

fn apt_get() -> Outcome<Command> {
    let quiet = ["-qq", "-y", "-o", "Dpkg::Use-Pty=0"];
    if is_root() {
        let mut command = Command::new("apt-get");
        command.args(quiet).env("DEBIAN_FRONTEND", "noninteractive");
        return Ok(command);
    }
    // Without a terminal sudo could only ask into the void.
    let may_ask = std::io::stdin().is_terminal();
    let mut sudo = Command::new("sudo");
    if on_path("sudo").is_some() && (may_ask || answer(sudo.args(["-n", "true"])).is_some()) {
        let mut command = Command::new("sudo");
        command
            .args(["DEBIAN_FRONTEND=noninteractive", "apt-get"])
            .args(quiet);
        return Ok(command);
    }
    Err(Trouble::new(
        "Debian packages are missing and this user may not install them",
        "run the command as root or with sudo at hand, or ask for the packages named above",
    ))
}

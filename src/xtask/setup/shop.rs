//! The servers of a shop's folder: Debian's packages of Apache, nginx and rclone.

use super::{debian, say};
use crate::run::{Outcome, Trouble};
use crate::shop::Kind;

/// All three, as far as this machine can have them; what is lacking is said, and the
/// tests that want it fail.
pub(super) fn servers() {
    for kind in Kind::ALL {
        if let Err(trouble) = server(kind) {
            say(&format!("a shop's folder by {kind:?}: {trouble}"));
        }
    }
}

/// Apache, for `cargo xtask serve --shop`.
pub fn apache() -> Outcome<()> {
    server(Kind::Apache)
}

fn server(kind: Kind) -> Outcome<()> {
    if !kind.is_there() && debian::is_debian() {
        say(&format!("a shop's folder: installing Debian's {kind:?}"));
        debian::install(kind.packages())?;
    }
    if kind.is_there() {
        say(&format!("a shop's folder by {kind:?}: there"));
        return Ok(());
    }
    Err(Trouble::new(
        format!("no {kind:?} with its modules on this machine"),
        format!("install it; on Debian: {}", kind.packages().join(" ")),
    ))
}

//! English: what is said about keeping jobs.

use crate::keeper::Keeping;

/// How far what was typed last has come.
#[must_use]
pub const fn keeping(keeping: Keeping) -> &'static str {
    match keeping {
        Keeping::Idle => "",
        Keeping::Writing => "saving \u{2026}",
        Keeping::Saved => "saved",
        Keeping::Quick => "stored, not yet sure",
        Keeping::Held => "on the screen only",
    }
}

pub const BROUGHT_BACK: &str =
    "The browser had lost the last changes; the newer copy out of the second store was taken:";
pub const OPENING: &str = "Opening \u{2026}";

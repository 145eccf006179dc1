//! English: what is said about keeping jobs.

use super::{bank, place_title, step_title};
use crate::keeper::Keeping;
use coldseat_core::document::merge::Spot;
use coldseat_core::job::Owner;

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

pub const UNDO_JOB: &str = "Undo";
pub const REDO_JOB: &str = "Redo";
pub const CONFLICTS: &str = "Two values in one place";
pub const CONFLICTS_WHAT: &str = "Typed on two devices that did not know of each other. Both are kept; choose the one that counts.";
pub const CHOOSE: &str = "Take";

/// Whose a reading or a step is.
#[must_use]
pub fn owner(owner: Owner) -> String {
    match owner {
        Owner::Block => super::BLOCK.to_owned(),
        Owner::Bank(number) => format!("{} {}", super::DECK, bank(number)),
        Owner::Cylinder(cylinder) => format!("{} {cylinder}", super::CYLINDER),
    }
}

/// Where in a job a value stands.
#[must_use]
pub fn spot(spot: &Spot) -> String {
    match spot {
        Spot::Reading(place) => format!("{}, {}", owner(place.owner), place_title(*place)),
        Spot::Step(whose, step) => format!("{}, {}", owner(*whose), step_title(*step)),
        Spot::Other(keys) => match keys.last().map(String::as_str) {
            Some("customer") => super::CUSTOMER.to_owned(),
            Some("name") => super::JOB_NAME.to_owned(),
            Some("note") => super::NOTE.to_owned(),
            Some("left_out") => super::LEAVE_OUT.to_owned(),
            _ => keys.join(", "),
        },
    }
}

//! English: sleeves that are left proud and not decked.

use crate::show::length;
use coldseat_core::ask::{Breach, HeldDown, Next, ProudLimit, SleeveEnds, UnitSystem};

/// The step in the place of the deck.
pub const HEIGHTS: &str = "Heights, left proud";
/// What is not done in such a job.
pub const NOT_DECKED: &str = "The sleeves of this job are left proud: its deck is not cut, and what is measured from the deck stays as it is.";
/// On the engine's sheet, in the place of what a cut changes.
pub const FROM_DECK_STAYS: &str =
    "Left proud: the deck is not cut, so nothing that is measured from it changes.";
/// On the record.
pub const LEFT_PROUD_NOT_DECKED: &str = "left proud, not cut.";
/// The limits.
pub const PROUD_GROUP: &str = "Left proud: limits of the heights";
/// Where they come from. The order of magnitude is that of published engine manuals.
pub const PROUD_WHAT: &str = "The engine's own sheet decides; enter what it says. Only to tell a slip from a limit: published engine manuals lie about 0.001 to 0.006 in (0.03 to 0.15 mm) proud, 0.002 in (0.05 mm) apart within one hole and from neighbor to neighbor, 0.004 in (0.10 mm) over all.";
/// Spread of one sleeve's heights.
pub const APART_HERE: &str = "Apart round the clock";
/// Mean of one sleeve's heights.
pub const MEAN_HEIGHT: &str = "Mean";
/// A hole of the drawing without its heights.
pub const NOT_READ_SHORT: &str = "\u{2013}";

/// How the sleeves of a job end.
#[must_use]
pub const fn sleeve_ends(ends: SleeveEnds) -> &'static str {
    match ends {
        SleeveEnds::Decked => "decked flush with the block",
        SleeveEnds::Proud => "left proud, within limits",
    }
}

/// Whether sleeves were held down while they were read.
#[must_use]
pub const fn held_down(held: HeldDown) -> &'static str {
    match held {
        HeldDown::Held => "held down at the torque stated",
        HeldDown::Free => "free",
    }
}

/// A limit that a sleeve breaks, seen from that sleeve.
#[must_use]
pub fn breach_of(breach: &Breach, cylinder: u8, units: UnitSystem) -> String {
    let by = length(breach.by.as_m(), units);
    let other = match breach.other {
        Some(other) if other == cylinder => breach.cylinder,
        Some(other) => other,
        None => cylinder,
    };
    match breach.limit {
        ProudLimit::Low => format!("too low by {by}"),
        ProudLimit::High => format!("too high by {by}"),
        ProudLimit::Hole => format!("{by} too far apart round the clock"),
        ProudLimit::Neighbour => format!("{by} too far from its neighbor, hole {other}"),
        ProudLimit::All => format!("{by} too far from hole {other}"),
    }
}

/// What to do next, of heights that are left proud.
#[must_use]
pub fn next_proud(next: &Next, units: UnitSystem) -> String {
    match next {
        Next::ProudOut(breach) => {
            let what = breach_of(breach, breach.cylinder, units);
            let hole = breach.cylinder;
            match breach.limit {
                ProudLimit::Low => format!("Hole {hole}: {what}. Measure again; then a shim on its ledge, or a sleeve with a thicker flange."),
                ProudLimit::High => format!("Hole {hole}: {what}. Measure again, look for a chip at its ledge; then cut its ledge, or take a thinner shim."),
                ProudLimit::Hole => format!("Hole {hole}: {what}. Measure again, look for a chip at its ledge; then turn the sleeve, or true the ledge."),
                ProudLimit::Neighbour | ProudLimit::All => format!("Hole {hole}: {what}. Measure both again; then shim the lower one, or cut the ledge of the higher."),
            }
        }
        Next::ProudGood => "Every height is within the limits you entered: leave the deck as it is.".to_owned(),
        Next::ReadFree => "Read free, and the sheet states a torque: hold the sleeves down at it, and read the heights again.".to_owned(),
        _ => String::new(),
    }
}

/// A hole for those who cannot see the drawing.
#[must_use]
pub fn height_spoken(cylinder: u8, low: &str, high: &str) -> String {
    format!("hole {cylinder}: {low} to {high}")
}

/// What the drawing shows.
#[must_use]
pub fn heights_label(holes: &str) -> String {
    format!("How proud each sleeve stands. {holes}")
}

/// Under the drawing.
#[must_use]
pub fn heights_caption(low: &str, high: &str) -> String {
    format!(
        "How proud each sleeve stands: a bar a clock (12, 3, 6, 9), mean and hole below; dashed the limits, {low} and {high}, the line at 0 is the deck."
    )
}

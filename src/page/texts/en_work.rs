//! English: phases of the shop, the number to work to.

use super::en_names::{field, step_title};
use crate::parts::keys::Counting;
use coldseat_core::ask::{Field, Missing, Phase, StepId, Work};

/// The name of the page.
pub const NAME: &str = "Coldseat";
/// What it is for, in one sentence.
pub const WHAT_IT_IS: &str =
    "Fit dry sleeves by the numbers, from the first call to the signed record.";

/// Under an empty field for which no usual value stands.
#[must_use]
pub fn by_sheet(most: &str) -> String {
    format!("From the maker's sheet. Above {most} you are asked to check it.")
}

/// The numbers that every step hangs on.
pub const FIRST_NUMBERS: &str = "First numbers";
/// What is asked for first, and what is not.
pub const FIRST_NUMBERS_WHAT: &str =
    "From the sleeve's and the engine's sheets. Each step asks for anything else it needs.";
/// Which holes get sleeves.
pub const HOLES: &str = "Tap the holes that get sleeves";
/// All of them.
pub const HOLES_ALL: &str = "All holes";
/// None of them, to tap a few.
pub const HOLES_NONE: &str = "No hole";
/// A hole that gets a sleeve or does not.
#[must_use]
pub fn hole_name(cylinder: u8) -> String {
    format!("Sleeve in cylinder {cylinder}")
}
/// From the engine to the bench.
pub const TO_THE_BENCH: &str = "Go to the bench";
/// From the engine to the price.
pub const TO_THE_PRICE: &str = "Price the job";

/// The temperature that was read last, and when, to be taken over.
#[must_use]
pub fn as_read_at(text: &str, unit: &str, when: &str) -> String {
    format!("{text} {unit}, as read {when}")
}

/// How the pad takes digits.
#[must_use]
pub const fn pad_count(counting: Counting) -> &'static str {
    match counting {
        Counting::FromRight => "From the right",
        Counting::Last => "Last digits",
        Counting::AsTyped => "As typed",
    }
}

/// What a job in the list needs next.
#[must_use]
pub fn next_in_job(cylinder: u8, step: StepId) -> String {
    format!("Next: cylinder {cylinder}, {}", step_title(step))
}

/// A step that is done and good.
pub const DONE_TICK: &str = "done";

/// Steps of a phase that are done.
#[must_use]
pub fn steps_done(done: usize, of: usize) -> String {
    format!("{done} of {of}")
}

/// A phase of the shop.
#[must_use]
pub const fn phase(phase: Phase) -> &'static str {
    match phase {
        Phase::TakeIn => "Intake",
        Phase::Measure => "Measure",
        Phase::Bore => "Bore",
        Phase::Counterbore => "Cut and hone",
        Phase::Drop => "Chill and drop",
        Phase::Seat => "Pull and seat",
        Phase::Deck => "Deck",
        Phase::Finish => "Finish",
    }
}

/// The word before it.
#[must_use]
pub const fn work(work: Work) -> &'static str {
    match work {
        Work::Bore => "bore to (diameter)",
        Work::Widen => "open it to (diameter)",
        Work::Depth => "cut to a depth of",
        Work::StepDepth => "cut the step to a depth of",
        Work::Chamfer => "chamfer at least",
        Work::Hone => "hone to (diameter)",
        Work::Groove => "groove to a depth of",
        Work::Finish => "finish to (diameter)",
        Work::Gap => "ring gap at least",
        Work::HomeWarm | Work::Home => "once home, it stands proud by",
    }
}

/// Its limits. Near them the gauges may not be able to tell: no word of good.
#[must_use]
pub fn limits_between(low: &str, high: &str) -> String {
    format!("limits {low} to {high}")
}

/// What stands in for a reading that is not there yet.
#[must_use]
pub const fn work_taken(taken: Field) -> &'static str {
    match taken {
        Field::SleeveOd => "By the nominal size: measure the sleeve first.",
        Field::FlangeOdHere => "By the engine's flange: measure this flange first.",
        Field::DeckCut => "By the planned cut.",
        _ => "Sleeve and block at one temperature.",
    }
}

/// The number to work to has to wait.
#[must_use]
pub fn work_waits(missing: &Missing) -> String {
    format!("The size to work to waits for: {}.", field(missing.field))
}

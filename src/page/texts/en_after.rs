//! English: what is measured from the deck, and what the cut makes of it.

use super::{en, en_mend, en_names};
use crate::show::length;
use coldseat_core::ask::{AfterState, BearsLeast, FromDeck, Length, Next, UnitSystem};

/// What is measured from the deck.
#[must_use]
pub const fn deck_size(item: FromDeck) -> &'static str {
    match item {
        FromDeck::WaterBore => "water-hole counterbores, depth",
        FromDeck::SealBore => "seal counterbores, depth",
        FromDeck::BoltChamfer => "bolt-hole chamfers, depth",
        FromDeck::Dowel => "dowels, height above the deck",
        FromDeck::ValveRecess => "valve recesses, depth",
        FromDeck::RingGroove => "ring groove in the deck, depth",
        FromDeck::Piston => "pistons, proud of the deck (minus: below it)",
        FromDeck::BoltHole => "head-bolt holes, depth to the last full thread",
    }
}

/// The same in a line of names.
#[must_use]
pub const fn deck_size_short(item: FromDeck) -> &'static str {
    match item {
        FromDeck::WaterBore => "water-hole counterbores",
        FromDeck::SealBore => "seal counterbores",
        FromDeck::BoltChamfer => "bolt-hole chamfers",
        FromDeck::Dowel => "dowels",
        FromDeck::ValveRecess => "valve recesses",
        FromDeck::RingGroove => "ring groove in the deck",
        FromDeck::Piston => "pistons",
        FromDeck::BoltHole => "head-bolt holes",
    }
}

/// What brings a size back after a cut. Common practice, no source.
const fn remedy(item: FromDeck) -> &'static str {
    match item {
        FromDeck::WaterBore | FromDeck::SealBore | FromDeck::ValveRecess | FromDeck::RingGroove => {
            "cut them deeper"
        }
        FromDeck::BoltChamfer => "chamfer them again",
        FromDeck::Dowel => "drive them down, or shorten them",
        FromDeck::Piston => "use a thicker gasket, or cut the crowns, by the maker's sheet",
        FromDeck::BoltHole => "run the tap deeper, or the bolts will bottom before they clamp",
    }
}

pub const AFTER_CUT: &str = "What the cut does to sizes measured from the deck";
pub const AFTER_CUT_PLANNED: &str = "By the planned cut. Nothing is cut yet.";
pub const AFTER_CUT_DECIDED: &str = "By the cut decided on or made.";
pub const FROM_DECK_GROUP: &str = "Measured from the deck, and how much may be cut";
pub const FROM_DECK_WHAT: &str = "Enter each size before the cut, and its range by the engine's sheet. Leave out what this engine does not have. The deck step shows what the cut does to each.";
pub const FROM_DECK_NONE: &str = "Nothing measured from the deck is entered under Engine. That means water and seal counterbores, dowels, bolt holes and valve recesses. The cut changes all of them.";
pub const DECK_SIZE: &str = "Measured from the deck";
pub const SIZE_BEFORE: &str = "Before";
pub const SIZE_AFTER: &str = "After the cut";
pub const SIZE_RANGE: &str = "Range";
pub const SIZE_STATE: &str = "Result";
pub const SIZE_BLOCK: &str = "off the block, all cuts";
pub const SIZE_FINISH: &str = "deck finish";
pub const SIZE_HOLDS: &str = "in range";
const SIZE_RECUT: &str = "recut, in range";
const SIZE_BROUGHT_BACK: &str = "brought back, in range";
const RECUT_DONE: &str = "Recut, done";
const BACK_DONE: &str = "Brought back, done";
pub const RECUT_WHY: &str = "Left as is, because";
pub const RECUT_WHY_NEEDED: &str = "Say why in a few words.";
/// Words that do not fit their line.
pub const ONE_LINE: &str = "Use one line, and keep it shorter.";
pub const RECUT_LEAVE: &str = "Leave it as is";
pub const RECUT_AGAIN: &str = "Take that back";
pub const SAID_DONE: &str = "checked off as done, not measured";
pub const NOT_MEASURED_AGAIN: &str = "not measured";
pub const RECUTS_OPEN: &str = "Not brought back and no reason given";

/// What is not on this engine.
#[must_use]
pub fn not_on_this_engine(names: &str) -> String {
    format!("Not entered, so taken as not on this engine: {names}.")
}

/// Without a limit on the cuts.
pub const NO_BUDGET: &str = "Not entered: how much may ever be cut off this block.";
/// Without a limit of the finish.
pub const NO_FINISH: &str = "Not entered: the limit on the deck finish.";

/// The target before the cut.
#[must_use]
pub fn bears(most: &str, by: BearsLeast) -> String {
    let what = match by {
        BearsLeast::Size(item) => deck_size_short(item),
        BearsLeast::Block => "the block has no more to give",
    };
    format!("Cut no more than {most}: {what}.")
}

/// No cut at all keeps it.
#[must_use]
pub fn bears_none(by: BearsLeast) -> String {
    match by {
        BearsLeast::Size(item) => format!(
            "Out of range before any cut: {}. Any cut changes it further.",
            deck_size_short(item)
        ),
        BearsLeast::Block => "Nothing more may be cut off this block.".to_owned(),
    }
}

/// Out of its range by the cut, and measured within it since: a depth is recut, what
/// stands above the deck is not.
#[must_use]
pub const fn size_back(item: FromDeck) -> &'static str {
    if item.is_height() {
        SIZE_BROUGHT_BACK
    } else {
        SIZE_RECUT
    }
}

/// The tick that it was brought back.
#[must_use]
pub const fn recut_done(item: FromDeck) -> &'static str {
    if item.is_height() {
        BACK_DONE
    } else {
        RECUT_DONE
    }
}

/// Where a size is to be brought back to.
fn recut_to(item: FromDeck, to: &str) -> String {
    if item.is_height() {
        format!("bring back to {to}")
    } else {
        format!("recut to {to}")
    }
}

/// No cut is both deep enough and shallow enough.
#[must_use]
pub fn bears_less(least: &str) -> String {
    format!("The deck cleans up at {least}. Both cannot be had: fix one of them.")
}

/// What becomes of a size; `to` is where it is brought back to.
#[must_use]
pub fn size_state(item: FromDeck, state: AfterState, by: &str, to: &str) -> String {
    match state {
        AfterState::Holds => SIZE_HOLDS.to_owned(),
        AfterState::Recut => {
            let to = recut_to(item, to);
            format!("{to} (off by {by}): {}", remedy(item))
        }
        AfterState::TooDeep if item.is_height() => format!("too low by {by}"),
        AfterState::TooDeep => format!("too deep by {by}"),
    }
}

/// The same on paper.
#[must_use]
pub fn size_state_short(item: FromDeck, state: AfterState, by: &str, to: &str) -> String {
    match state {
        AfterState::Recut if item.is_height() => format!("back to {to}"),
        AfterState::Recut => recut_to(item, to),
        other => size_state(item, other, by, to),
    }
}

/// Measured again.
#[must_use]
pub fn measured_again(value: &str) -> String {
    format!("measured {value}")
}

/// What is left to cut, or that too much was.
#[must_use]
pub fn budget_state(left: &str, over: bool) -> String {
    if over {
        format!("over by {left}")
    } else {
        format!("{left} left after this cut")
    }
}

/// At least.
#[must_use]
pub fn from_value(value: &str) -> String {
    format!("{value} and deeper")
}

/// Rough or good, by which roughness.
#[must_use]
pub fn finish_state(kind: &str, rough: bool) -> String {
    if rough {
        format!("rougher than the gasket allows ({kind}): cut it finer")
    } else {
        format!("{SIZE_HOLDS} ({kind})")
    }
}

/// What to do next, of a deck's cut and what it changes.
#[must_use]
pub fn next_after_cut(next: &Next, units: UnitSystem) -> String {
    let by = |l: &Length| length(l.as_m(), units);
    match next {
        Next::BlockCutMost(over) => format!(
            "Do not cut this deep. With earlier cuts, it is {} more than the block may lose.",
            by(over)
        ),
        Next::DeckSizePast(item, over) => format!(
            "{}: past the range by {}. No cutting brings it back. Measure again. Repair it, then enter what it measures.",
            capital(deck_size_short(*item)),
            by(over)
        ),
        Next::DeckSizeRecut(item, short) => format!(
            "{}: out of range by {} after this cut. To fix: {}. Then measure it below, check it off, or say why it is left.",
            capital(deck_size_short(*item)),
            by(short),
            remedy(*item)
        ),
        Next::DeckSizeWill(item, short) => format!(
            "{}: out of range by {} after the planned cut. Cut less, or plan to fix it: {}.",
            capital(deck_size_short(*item)),
            by(short),
            remedy(*item)
        ),
        Next::DeckSizeWants(item, field) => format!(
            "{}: enter under Engine: {}.",
            capital(deck_size_short(*item)),
            en_names::field(*field).to_lowercase()
        ),
        Next::DeckRough => {
            "Rougher than the gasket maker allows: it leaks. Take a finer cut, then measure again."
                .to_owned()
        }
        _ => String::new(),
    }
}

/// What a size still needs.
#[must_use]
pub fn size_wants(missing: &coldseat_core::ask::Missing) -> String {
    en_names::order_missing(missing.field)
}

/// A size one of whose numbers cannot be used.
#[must_use]
pub fn size_mend(unusable: &coldseat_core::ask::Unusable, units: UnitSystem) -> String {
    en_mend::mend(unusable, units)
}

/// Words about a deck; of two it is named.
#[must_use]
pub fn of_deck(bank: u8, banks: u8, words: &str) -> String {
    if banks > 1 {
        format!("Deck {}: {words}", en::bank(bank))
    } else {
        capital(words)
    }
}

/// With its first letter large.
#[must_use]
pub fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

/// Over the table of a deck on the record.
#[must_use]
pub fn after_cut_of(bank: u8, banks: u8) -> String {
    if banks > 1 {
        format!(
            "Measured from deck {}, before and after its cut",
            en::bank(bank)
        )
    } else {
        "Measured from the deck, before and after its cut".to_owned()
    }
}

//! What is measured from the deck, and what the cut makes of it.

use super::{labels, mend, names};
use crate::show::length;
use crate::words::made as w;
use coldseat_core::ask::{AfterState, BearsLeast, FromDeck, Length, Next, UnitSystem};

/// What is measured from the deck.
#[must_use]
pub fn deck_size(item: FromDeck) -> &'static str {
    match item {
        FromDeck::WaterBore => w::DECK_SIZE_WATER_BORE.get(),
        FromDeck::SealBore => w::DECK_SIZE_SEAL_BORE.get(),
        FromDeck::BoltChamfer => w::DECK_SIZE_BOLT_CHAMFER.get(),
        FromDeck::Dowel => w::DECK_SIZE_DOWEL.get(),
        FromDeck::ValveRecess => w::DECK_SIZE_VALVE_RECESS.get(),
        FromDeck::RingGroove => w::DECK_SIZE_RING_GROOVE.get(),
        FromDeck::Piston => w::DECK_SIZE_PISTON.get(),
        FromDeck::BoltHole => w::DECK_SIZE_BOLT_HOLE.get(),
    }
}

/// The same in a line of names.
#[must_use]
pub fn deck_size_short(item: FromDeck) -> &'static str {
    match item {
        FromDeck::WaterBore => w::DECK_SIZE_SHORT_WATER_BORE.get(),
        FromDeck::SealBore => w::DECK_SIZE_SHORT_SEAL_BORE.get(),
        FromDeck::BoltChamfer => w::DECK_SIZE_SHORT_BOLT_CHAMFER.get(),
        FromDeck::Dowel => w::DECK_SIZE_SHORT_DOWEL.get(),
        FromDeck::ValveRecess => w::DECK_SIZE_SHORT_VALVE_RECESS.get(),
        FromDeck::RingGroove => w::DECK_SIZE_SHORT_RING_GROOVE.get(),
        FromDeck::Piston => w::DECK_SIZE_SHORT_PISTON.get(),
        FromDeck::BoltHole => w::DECK_SIZE_SHORT_BOLT_HOLE.get(),
    }
}

/// What brings a size back after a cut. Common practice, no source.
fn remedy(item: FromDeck) -> &'static str {
    match item {
        FromDeck::WaterBore | FromDeck::SealBore | FromDeck::ValveRecess | FromDeck::RingGroove => {
            w::REMEDY_WATER_BORE_SEAL_BORE.get()
        }
        FromDeck::BoltChamfer => w::REMEDY_BOLT_CHAMFER.get(),
        FromDeck::Dowel => w::REMEDY_DOWEL.get(),
        FromDeck::Piston => w::REMEDY_PISTON.get(),
        FromDeck::BoltHole => w::REMEDY_BOLT_HOLE.get(),
    }
}

/// What is not on this engine.
#[must_use]
pub fn not_on_this_engine(names: &str) -> String {
    w::NotOnThisEngine { names: &names }.say()
}

/// The target before the cut.
#[must_use]
pub fn bears(most: &str, by: BearsLeast) -> String {
    let what = match by {
        BearsLeast::Size(item) => deck_size_short(item),
        BearsLeast::Block => w::BEARS_WHAT_BLOCK.get(),
    };
    w::Bears {
        most: &most,
        what: &what,
    }
    .say()
}

/// No cut at all keeps it.
#[must_use]
pub fn bears_none(by: BearsLeast) -> String {
    match by {
        BearsLeast::Size(item) => w::BearsNoneSize {
            item: &deck_size_short(item),
        }
        .say(),
        BearsLeast::Block => w::BEARS_NONE_BLOCK.get().to_owned(),
    }
}

/// Out of its range by the cut, and measured within it since: a depth is recut, what
/// stands above the deck is not.
#[must_use]
pub fn size_back(item: FromDeck) -> &'static str {
    if item.is_height() {
        w::SIZE_BROUGHT_BACK.get()
    } else {
        w::SIZE_RECUT.get()
    }
}

/// The tick that it was brought back.
#[must_use]
pub fn recut_done(item: FromDeck) -> &'static str {
    if item.is_height() {
        w::BACK_DONE.get()
    } else {
        w::RECUT_DONE.get()
    }
}

/// Where a size is to be brought back to.
fn recut_to(item: FromDeck, to: &str) -> String {
    if item.is_height() {
        w::RecutToBringBackTo { to: &to }.say()
    } else {
        w::RecutToRecutTo { to: &to }.say()
    }
}

/// No cut is both deep enough and shallow enough.
#[must_use]
pub fn bears_less(least: &str) -> String {
    w::BearsLess { least: &least }.say()
}

/// What becomes of a size; `to` is where it is brought back to.
#[must_use]
pub fn size_state(item: FromDeck, state: AfterState, by: &str, to: &str) -> String {
    match state {
        AfterState::Holds => w::SIZE_HOLDS.get().to_owned(),
        AfterState::Recut => {
            let to = recut_to(item, to);
            w::SizeStateRecut {
                item: &remedy(item),
                to: &to,
                by: &by,
            }
            .say()
        }
        AfterState::TooDeep if item.is_height() => w::SizeStateTooDeepTooLowBy { by: &by }.say(),
        AfterState::TooDeep => w::SizeStateTooDeepTooDeepBy { by: &by }.say(),
    }
}

/// The same on paper.
#[must_use]
pub fn size_state_short(item: FromDeck, state: AfterState, by: &str, to: &str) -> String {
    match state {
        AfterState::Recut if item.is_height() => w::SizeStateShortRecut { to: &to }.say(),
        AfterState::Recut => recut_to(item, to),
        other => size_state(item, other, by, to),
    }
}

/// Measured again.
#[must_use]
pub fn measured_again(value: &str) -> String {
    w::MeasuredAgain { value: &value }.say()
}

/// What is left to cut, or that too much was.
#[must_use]
pub fn budget_state(left: &str, over: bool) -> String {
    if over {
        w::BudgetStateOverBy { left: &left }.say()
    } else {
        w::BudgetStateLeftAfterThis { left: &left }.say()
    }
}

/// At least.
#[must_use]
pub fn from_value(value: &str) -> String {
    w::FromValue { value: &value }.say()
}

/// Rough or good, by which roughness.
#[must_use]
pub fn finish_state(kind: &str, rough: bool) -> String {
    if rough {
        w::FinishState { kind: &kind }.say()
    } else {
        format!("{} ({kind})", w::SIZE_HOLDS)
    }
}

/// What to do next, of a deck's cut and what it changes.
#[must_use]
pub fn next_after_cut(next: &Next, units: UnitSystem) -> String {
    let by = |l: &Length| length(l.as_m(), units);
    match next {
        Next::BlockCutMost(over) => w::NextAfterCutBlockCutMost { over: &by(over) }.say(),
        Next::DeckSizePast(item, over) => w::NextAfterCutDeckSizePast {
            item: &capital(deck_size_short(*item)),
            over: &by(over),
        }
        .say(),
        Next::DeckSizeRecut(item, short) => w::NextAfterCutDeckSizeRecut {
            item: &capital(deck_size_short(*item)),
            short: &by(short),
            item_too: &remedy(*item),
        }
        .say(),
        Next::DeckSizeWill(item, short) => w::NextAfterCutDeckSizeWill {
            item: &capital(deck_size_short(*item)),
            short: &by(short),
            item_too: &remedy(*item),
        }
        .say(),
        Next::DeckSizeWants(item, field) => w::NextAfterCutDeckSizeWants {
            item: &capital(deck_size_short(*item)),
            field: &names::in_sentence(names::field(*field)),
        }
        .say(),
        Next::DeckRough => w::NEXT_AFTER_CUT_DECK_ROUGH.get().to_owned(),
        _ => String::new(),
    }
}

/// What a size still needs.
#[must_use]
pub fn size_wants(missing: &coldseat_core::ask::Missing) -> String {
    names::order_missing(missing.field)
}

/// A size one of whose numbers cannot be used.
#[must_use]
pub fn size_mend(unusable: &coldseat_core::ask::Unusable, units: UnitSystem) -> String {
    mend(unusable, units)
}

/// Words about a deck; of two it is named.
#[must_use]
pub fn of_deck(bank: u8, banks: u8, words: &str) -> String {
    if banks > 1 {
        w::OfDeck {
            bank: &labels::bank(bank),
            words: &words,
        }
        .say()
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
        w::AfterCutOfMeasuredFromDeck {
            bank: &labels::bank(bank),
        }
        .say()
    } else {
        w::AFTER_CUT_OF_MEASURED_FROM_THE.get().to_owned()
    }
}

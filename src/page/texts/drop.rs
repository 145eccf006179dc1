//! What is said of the time that a sleeve has to go home.

use super::part::housing;
use crate::words::made as w;
use coldseat_core::ask::{Cause, ColdUse, HomeVerdict, Part, ShrinkBy};

/// What the time to go home allows.
#[must_use]
pub fn home_words(
    verdict: HomeVerdict,
    go: bool,
    [within, needed]: [&str; 2],
    part: Part,
) -> String {
    let housing = housing(part);
    match verdict {
        HomeVerdict::Go if go => w::HomeWordsGoRoomAndTime {
            within: &within,
            needed: &needed,
        }
        .say(),
        HomeVerdict::Go => w::HomeWordsGoTimeEnoughBy {
            within: &within,
            needed: &needed,
        }
        .say(),
        HomeVerdict::Look => w::HomeWordsLook {
            within: &within,
            needed: &needed,
            housing: &housing,
        }
        .say(),
        HomeVerdict::Stop => w::HomeWordsStop {
            within: &within,
            needed: &needed,
            housing: &housing,
        }
        .say(),
    }
}

/// What the numbers of a drop stand on, where not on the table of its iron.
#[must_use]
pub fn shrinks_by(by: ShrinkBy) -> Option<&'static str> {
    match by {
        ShrinkBy::Table => None,
        ShrinkBy::Shop => Some(w::SHRINKS_BY_SHOP.get()),
        ShrinkBy::Sleeve => Some(w::SHRINKS_BY_SLEEVE.get()),
    }
}

/// Beside a time: the diameter measured cold.
#[must_use]
pub fn cold_use(diameter: &str, taken: ColdUse) -> String {
    let said = match taken {
        ColdUse::Used => w::COLD_USE_SAID_USED.get(),
        ColdUse::Odd => w::COLD_USE_SAID_ODD.get(),
        ColdUse::NotUsed => w::COLD_USE_SAID_NOT_USED.get(),
    };
    w::ColdUse {
        diameter: &diameter,
        said: &said,
    }
    .say()
}

/// Below the time to go home: the middle, the late end, what rules it.
#[must_use]
pub fn home_below(middle: &str, late: &str, moves: Option<(&str, String)>) -> String {
    let rules = moves.map_or_else(String::new, |(cause, by)| {
        w::HomeBelowRules {
            cause: &cause,
            by: &by,
        }
        .say()
    });
    w::HomeBelow {
        middle: &middle,
        late: &late,
        rules: &rules,
    }
    .say()
}

/// What a drop's time hangs on.
#[must_use]
pub fn cause(cause: Cause) -> &'static str {
    match cause {
        Cause::Fit => w::CAUSE_FIT.get(),
        Cause::Contraction => w::CAUSE_CONTRACTION.get(),
        Cause::Lean => w::CAUSE_LEAN.get(),
        Cause::Frost => w::CAUSE_FROST.get(),
        Cause::Carry => w::CAUSE_CARRY.get(),
        Cause::Block => w::CAUSE_BLOCK.get(),
        Cause::Insertion => w::CAUSE_INSERTION.get(),
    }
}

/// What the later end of that time means.
#[must_use]
pub fn at_bore_late(late: &str) -> String {
    w::AtBoreLate { late: &late }.say()
}

/// How soon in a warmer block.
#[must_use]
pub fn warmer(at: &str, within: &str) -> String {
    w::Warmer {
        at: &at,
        within: &within,
    }
    .say()
}

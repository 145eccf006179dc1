//! What a step has beside its one number.

use crate::words::made as w;
use coldseat_core::ask::Bearer;

pub const PAIR_COLUMNS: [crate::words::Word; 3] = [
    w::PAIR_COLUMNS_SLEEVE,
    w::PAIR_COLUMNS_HOLE,
    w::PAIR_COLUMNS_HONE_TAKES_DIAMETER,
];

/// A pass: the bore after it, its cut on diameter and on radius.
#[must_use]
pub fn pass(count: u8, bore: &str, diameter: &str, radius: &str) -> String {
    w::Pass {
        count: &count,
        bore: &bore,
        diameter: &diameter,
        radius: &radius,
    }
    .say()
}

/// The warmest that is looked at.
#[must_use]
pub fn not_below(warmest: &str) -> String {
    w::NotBelow { warmest: &warmest }.say()
}

/// The highest pressure of a pull, and what it is that bears no more.
#[must_use]
pub fn gauge_most(bearer: Bearer) -> String {
    let what = match bearer {
        Bearer::Ram => w::GAUGE_MOST_WHAT_RAM.get(),
        Bearer::Rod => w::GAUGE_MOST_WHAT_ROD.get(),
        Bearer::Ledge => w::GAUGE_MOST_WHAT_LEDGE.get(),
        Bearer::Flange => w::GAUGE_MOST_WHAT_FLANGE.get(),
    };
    w::GaugeMost { what: &what }.say()
}

#[must_use]
pub fn wanted(names: &str) -> String {
    w::WantedStillNeeded { names: &names }.say()
}

#[must_use]
pub fn times(times: &str) -> String {
    w::Times { times: &times }.say()
}

/// A conductance, and that of a joint twice as rough.
#[must_use]
pub fn heat_path(now: &str, rough: &str) -> String {
    w::HeatPathKwMK {
        now: &now,
        rough: &rough,
    }
    .say()
}

#[must_use]
pub fn paired(worst: &str, total: &str) -> String {
    w::Paired {
        worst: &worst,
        total: &total,
    }
    .say()
}

#[must_use]
pub fn as_numbered(most: &str, least: &str, all: &str) -> String {
    w::AsNumbered {
        least: &least,
        most: &most,
        all: &all,
    }
    .say()
}

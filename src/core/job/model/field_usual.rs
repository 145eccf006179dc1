//! What the table of fields is written with: what is usual of a size or an offset,
//! ranges of plain numbers, the words of choices.

use crate::job::model::field_kind::{Places, Plausible};
use crate::quantity::bounds::{Bound, End};

/// A size in millimetres: usual from, usual to, far from its neighbours.
pub(super) const fn size(lo_mm: f64, hi_mm: f64, far_mm: f64) -> Plausible {
    Plausible::Size {
        lo: lo_mm / 1e3,
        hi: hi_mm / 1e3,
        far: far_mm / 1e3,
    }
}

/// An offset: millimetres from its neighbours that ask.
pub(super) const fn offset(far_mm: f64) -> Plausible {
    Plausible::Offset { far: far_mm / 1e3 }
}

pub(super) const FREE: Plausible = Plausible::Free;
/// 5 to 60 C: a cold shop, a block not long out of the wash.
pub(super) const SHOP: Plausible = Plausible::Shop {
    lo: 278.15,
    hi: 333.15,
};
/// A closet to a hall, m3: beyond it the other unit was meant, or a digit slipped.
pub(super) const ROOMS: Plausible = Plausible::Size {
    lo: 15.0,
    hi: 5e4,
    far: 1e12,
};
pub(super) const ONE: Places = Places::One;
pub(super) const CLOCKS: Places = Places::Clocks;
pub(super) const LEVELS: Places = Places::Levels;
/// Pulls at most on one sleeve.
pub const PULLS_MOST: u8 = 12;
/// Surveyed points of one deck at most: two to a row, a row before each of 16
/// bores and one behind the last.
pub const SPOTS_MOST: u8 = 34;
pub(super) const PULLS: Places = Places::List(PULLS_MOST);
/// Sizes of shims at most.
pub const SHIMS_MOST: u8 = 16;
pub(super) const SHIMS: Places = Places::List(SHIMS_MOST);
/// Things counted in a drawer.
pub(super) const COUNTED: Bound = plain(0.0, 1000.0);
/// Numbers of cylinders.
pub(super) const NUMBERED: Bound = plain(1.0, 16.0);
/// Quarter turns.
pub(super) const QUARTERS: Bound = plain(0.0, 3.0);
/// Degrees two parts may be apart.
pub(super) const APART: Bound = plain(0.0, 50.0);
/// Strokes of a hone in one bore.
pub(super) const STROKES: Bound = plain(1.0, 10_000.0);
/// Hours and money.
pub(super) const MONEY: Bound = plain(0.0, 1e7);

/// Turns and strokes a minute.
pub(super) const PER_MINUTE: Bound = plain(1.0, 5000.0);
/// Passes of the bar.
pub(super) const PASSES: Bound = plain(1.0, 20.0);
/// Share of a gauge's variance that is common to a deck: some of it is, and some
/// is each hole's own.
pub(super) const SHARED: Bound = plain(0.02, 0.98);
/// Hours of nitrogen standing.
pub(super) const STANDING: Bound = plain(0.0, 1000.0);
/// Index into [`DROP_OUTCOMES`].
pub(super) const OUTCOMES: Bound = plain(0.0, 2.0);
/// How a sleeve goes in: job.md, step 20.
pub(super) const DROP_OUTCOMES: &[&str] = &["free", "dragged", "stuck"];

/// How a roughness is named: ISO 21920-2.
pub(super) const ROUGHNESS_NAMES: &[&str] = &["Ra", "Rz"];
/// Words: 0 for [`super::field_read::DONE`], 1 for any other.
pub(super) const WORDS: Bound = plain(0.0, 1.0);

/// Index into the words of a choice.
pub(super) const fn index_of(words: &[&str]) -> Bound {
    plain(0.0, words.len() as f64 - 1.0)
}

pub(super) const fn plain(lo: f64, hi: f64) -> Bound {
    Bound {
        lo,
        hi,
        lo_end: End::In,
        hi_end: End::In,
        unit: "",
    }
}

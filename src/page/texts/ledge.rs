//! How a ledge lies toward the bore, its ink, its repair.

use crate::show::length;
use crate::words::made as w;
use coldseat_core::ask::{Inked, LedgeFault, Next, UnitSystem};

/// What the ink says.
#[must_use]
pub fn inked(inked: Inked) -> &'static str {
    match inked {
        Inked::Full => w::INKED_FULL.get(),
        Inked::Broken => w::INKED_BROKEN.get(),
        Inked::NotDone => w::INKED_NOT_DONE.get(),
    }
}

/// What to do next, of a ledge.
#[must_use]
pub fn next_ledge(next: &Next, units: UnitSystem) -> String {
    match next {
        Next::LedgeShape(how, by) => {
            let by = length(by.as_m(), units);
            match how {
                LedgeFault::Cupped => w::NextLedgeShapeCupped { by: &by }.say(),
                LedgeFault::Sloped => w::NextLedgeShapeSloped { by: &by }.say(),
                LedgeFault::Rises => w::NextLedgeShapeRises { by: &by }.say(),
            }
        }
        Next::InkBroken => w::NEXT_LEDGE_INK_BROKEN.get().to_owned(),
        _ => String::new(),
    }
}

/// The least cut.
#[must_use]
pub fn true_it(depth: &str, cut: &str) -> String {
    w::TrueIt {
        depth: &depth,
        cut: &cut,
    }
    .say()
}

/// The shim that makes up for it.
#[must_use]
pub fn then_shim(shim: &str, at_hand: &str) -> String {
    w::ThenShim {
        shim: &shim,
        at_hand: &at_hand,
    }
    .say()
}

/// Of the shims at hand the nearest.
#[must_use]
pub fn nearest_shim(size: &str) -> String {
    w::NearestShim { size: &size }.say()
}

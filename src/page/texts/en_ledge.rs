//! English: how a ledge lies toward the bore, its ink, its repair.

use crate::show::length;
use coldseat_core::ask::{Inked, LedgeFault, Next, UnitSystem};

/// Over what would repair a ledge.
pub const LEDGE_REPAIR: &str = "To repair this ledge";
/// No shim is at hand.
pub const NO_SHIM_AT_HAND: &str = "no shims at hand are listed";

/// What the ink says.
#[must_use]
pub const fn inked(inked: Inked) -> &'static str {
    match inked {
        Inked::Full => "full ring",
        Inked::Broken => "broken ring",
        Inked::NotDone => "not done",
    }
}

/// What to do next, of a ledge.
#[must_use]
pub fn next_ledge(next: &Next, units: UnitSystem) -> String {
    match next {
        Next::LedgeShape(how, by) => {
            let by = length(by.as_m(), units);
            match how {
                LedgeFault::Cupped => format!("CUPPED: the ledge falls by {by} toward the bore all around. The flange bears only at its rim and breaks there: no sleeve on it. Clean it, measure again, true it."),
                LedgeFault::Sloped => format!("SLOPED: the ledge falls by {by} toward the bore on one side. The flange breaks there: no sleeve on it. Clean it, measure again, true it."),
                LedgeFault::Rises => format!("The ledge rises by {by} toward the bore: the flange bears at its root. Look for a burr, measure again, true it."),
            }
        }
        Next::InkBroken => "The bluing is broken: the flange does not bear all around. Clean both and blue again. Then true the ledge.".to_owned(),
        _ => String::new(),
    }
}

/// The least cut.
#[must_use]
pub fn true_it(depth: &str, cut: &str) -> String {
    format!(
        "True it by the least cut: to {depth} all over, {cut} where it is highest. Then measure its depth again, at both radii."
    )
}

/// The shim that makes up for it.
#[must_use]
pub fn then_shim(shim: &str, at_hand: &str) -> String {
    format!("The sleeve then sits {shim} too deep. A shim of {shim} makes up for it ({at_hand}).")
}

/// Of the shims at hand the nearest.
#[must_use]
pub fn nearest_shim(size: &str) -> String {
    format!("nearest at hand: {size}")
}

/// It needs no shim.
pub const NO_SHIM: &str = "It is then no deeper than the sleeve needs: no shim.";

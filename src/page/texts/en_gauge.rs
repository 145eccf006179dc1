//! English: a gauge that types, what is heard.

use super::en_mend::refusal;
use super::en_names::{field, place, step_title};
use super::en_wire::no_reading;
use crate::gauge::{Because, Caught, NotTaken, Refused};
use coldseat_core::ask::{HandOrder, Owner, Place, StepId};

/// The line that says what came and stands nowhere.
pub const GAUGE_LINE: &str = "Gauge";
/// Lets a reading go.
pub const DROP_IT: &str = "Discard it";

/// A place with whose it is.
#[must_use]
pub fn whole_place(at: Place) -> String {
    let which = place(at.field, at.index);
    let owner = match at.owner {
        Owner::Cylinder(cylinder) => format!("cylinder {cylinder}, "),
        Owner::Block | Owner::Bank(_) => String::new(),
    };
    if which.is_empty() {
        format!("{owner}{}", field(at.field))
    } else {
        format!("{owner}{}: {which}", field(at.field))
    }
}

/// A reading that came and stands nowhere yet.
#[must_use]
pub fn caught(caught: &Caught, behind: usize) -> String {
    let text = &caught.text;
    let why = match caught.because {
        Because::NoField => "came in with no field waiting. It is not written down yet.",
        Because::Twice => "came in twice at once. The second is not written down.",
        Because::CutOff => "came in without an end: cut off? It is not written down.",
        Because::Behind => "came in after it. It is not written down yet.",
    };
    let more = match behind {
        0 => String::new(),
        1 => " 1 more is waiting.".to_owned(),
        more => format!(" {more} more are waiting."),
    };
    format!("{text} {why}{more}")
}

/// Puts it into a place.
#[must_use]
pub fn put_it_in(at: Place) -> String {
    format!("Put it in {}", whole_place(at))
}

/// No place of this screen waits.
pub const NO_PLACE: &str = "Tap the field it belongs in.";

/// What came and was refused.
#[must_use]
pub fn refused(refused: &Refused) -> String {
    // A bar code may be long.
    let shown: String = refused.text.chars().take(40).collect();
    match &refused.why {
        NotTaken::OfField(why, of, units) => format!(
            "Refused for {}: \"{shown}\". {}",
            field(*of).to_lowercase(),
            refusal(why, *of, *units)
        ),
        NotTaken::OfWire(why) => format!("Refused: \"{shown}\". {}", no_reading(*why)),
        NotTaken::ReadOnly => {
            format!("Refused: \"{shown}\". This job can be read here, not changed.")
        }
    }
}

/// Whether a gauge is used, and how the hand goes.
pub const HAND: &str = "After a reading, go on to";
/// The orders, and none.
#[must_use]
pub const fn hand(order: Option<HandOrder>) -> &'static str {
    match order {
        None => "the next field, then the answer",
        Some(HandOrder::ByCylinder) => "every place here, then the next cylinder",
        Some(HandOrder::ByPlace) => "this place on the next cylinder",
    }
}
/// What it is good for.
pub const HAND_WHAT: &str = "For a gauge that types its readings (cable or radio adapter, sent with Enter or Tab). With the second or third choice a whole block goes in without touching the screen. Page Down skips a place. Page Up goes back. A reading without an end is not taken.";
/// A gauge in use.
pub const GAUGE_IN_USE: &str = "Gauge that types";
/// The key that skips.
pub const SKIP_KEY: &str = "Key that skips a place";
/// The key that goes back.
pub const BACK_KEY: &str = "Key that goes back a place";
/// Waits for a key.
pub const PRESS_KEY: &str = "Press it now";
/// A key beside Page Down or Page Up.
#[must_use]
pub fn key_taught(usual: &str, key: Option<&str>) -> String {
    match key {
        Some(key) => format!("{usual}, and {key}"),
        None => usual.to_owned(),
    }
}
/// The usual keys.
pub const PAGE_DOWN: &str = "Page Down";
/// The usual keys.
pub const PAGE_UP: &str = "Page Up";
/// Waits for another key.
pub const TEACH: &str = "Set another key";
/// Forgets that other key.
pub const FORGET_KEY: &str = "Forget the key you set";

/// The view for a tablet on the wall.
pub const WALL: &str = "Wall view";
/// Leaves it.
pub const WALL_CLOSE: &str = "Close the wall view";
/// The step and whose it is.
#[must_use]
pub fn wall_where(owner: Owner, step: StepId) -> String {
    let step = step_title(step);
    match owner {
        Owner::Cylinder(cylinder) => format!("{cylinder} \u{b7} {step}"),
        Owner::Block | Owner::Bank(_) => step.to_owned(),
    }
}
/// Where the reading that came last stands.
#[must_use]
pub fn wall_came(at: Place) -> String {
    format!("came in: {}", whole_place(at))
}

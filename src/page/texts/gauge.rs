//! A gauge that types, what is heard.

use super::mend::refusal;
use super::names::{field, place, step_title};
use super::wire::no_reading;
use crate::gauge::{Because, Caught, NotTaken, Refused};
use crate::words::made as w;
use coldseat_core::ask::{HandOrder, Owner, Place, StepId};

/// A place with whose it is.
#[must_use]
pub fn whole_place(at: Place) -> String {
    let which = place(at.field, at.index);
    let owner = match at.owner {
        Owner::Cylinder(cylinder) => w::WholePlaceOwnerCylinder {
            cylinder: &cylinder,
        }
        .say(),
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
        Because::NoField => w::CAUGHT_WHY_NO_FIELD.get(),
        Because::Twice => w::CAUGHT_WHY_TWICE.get(),
        Because::CutOff => w::CAUGHT_WHY_CUT_OFF.get(),
        Because::Behind => w::CAUGHT_WHY_BEHIND.get(),
    };
    let more = match behind {
        0 => String::new(),
        more => w::CaughtMore { more }.say(),
    };
    format!("{text} {why}{more}")
}

/// Puts it into a place.
#[must_use]
pub fn put_it_in(at: Place) -> String {
    w::PutItIn {
        at: &whole_place(at),
    }
    .say()
}

/// What came and was refused.
#[must_use]
pub fn refused(refused: &Refused) -> String {
    // A bar code may be long.
    let shown: String = refused.text.chars().take(40).collect();
    match &refused.why {
        NotTaken::OfField(why, of, units) => w::RefusedOfField {
            of: &super::in_sentence(field(*of)),
            why: &refusal(why, *of, *units),
            shown: &shown,
        }
        .say(),
        NotTaken::OfWire(why) => w::RefusedOfWire {
            why: &no_reading(*why),
            shown: &shown,
        }
        .say(),
        NotTaken::ReadOnly => w::RefusedReadOnly { shown: &shown }.say(),
    }
}

/// The orders, and none.
#[must_use]
pub fn hand(order: Option<HandOrder>) -> &'static str {
    match order {
        None => w::HAND_NONE.get(),
        Some(HandOrder::ByCylinder) => w::HAND_BY_CYLINDER.get(),
        Some(HandOrder::ByPlace) => w::HAND_BY_PLACE.get(),
    }
}
/// A key beside Page Down or Page Up.
#[must_use]
pub fn key_taught(usual: &str, key: Option<&str>) -> String {
    match key {
        Some(key) => w::KeyTaughtSome {
            usual: &usual,
            key: &key,
        }
        .say(),
        None => usual.to_owned(),
    }
}

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
    w::WallCame {
        at: &whole_place(at),
    }
    .say()
}

//! The words of a case: whose, which field, which place.

use coldseat_core::job::field::{FIELDS, Places};
use coldseat_core::job::model::reading::Spot;
use coldseat_core::job::step::{STEPS, StepId};
use coldseat_core::job::verdict::Signal;
use coldseat_core::job::{Field, Owner, Place};

/// `cylinder 3`, `deck A`, `engine`, `block`.
pub fn owner(words: &str) -> Option<Owner> {
    match words.trim() {
        "engine" | "block" => Some(Owner::Block),
        "deck A" => Some(Owner::Bank(0)),
        "deck B" => Some(Owner::Bank(1)),
        other => Some(Owner::Cylinder(
            other.strip_prefix("cylinder ")?.parse().ok()?,
        )),
    }
}

/// `seat height at 3 o'clock`: the field and its places that are meant.
pub fn places(owner: Owner, words: &str) -> Vec<Place> {
    let found = FIELDS
        .iter()
        .map(|spec| (spec.field, spec.id.replace('_', " ")))
        .filter(|(_, name)| words.starts_with(name.as_str()))
        .max_by_key(|(_, name)| name.len());
    let (field, name) = found.unwrap_or_else(|| panic!("no field: {words}"));
    let rest = words[name.len()..].trim();
    let all: Vec<Place> = Place::all(owner, field).collect();
    match rest {
        "" | "everywhere" if rest == "everywhere" || all.len() == 1 => all,
        "" => vec![all[0]],
        _ => vec![all[index(field, rest)]],
    }
}

fn index(field: Field, words: &str) -> usize {
    if let Some(clock) = words
        .strip_prefix("at ")
        .and_then(|w| w.strip_suffix(" o'clock"))
    {
        assert_eq!(field.spec().places, Places::Clocks, "{words}");
        let clocks = ["12", "3", "6", "9"];
        return clocks.iter().position(|c| *c == clock).unwrap();
    }
    let nth: usize = words
        .strip_prefix("place ")
        .and_then(|n| n.parse().ok())
        .unwrap_or_else(|| panic!("which place: {words}"));
    nth - 1
}

/// `cylinder 1, seat height at 3 o'clock`; without an owner: of the cold drop.
pub fn spot(words: &str) -> Vec<Place> {
    match words.split_once(", ") {
        Some((whose, field)) => places(
            owner(whose).unwrap_or_else(|| panic!("whose: {words}")),
            field.trim(),
        ),
        None => places(Owner::Block, words),
    }
}

/// A step by its name, or by the field it is about.
pub fn step(words: &str) -> StepId {
    let named = STEPS
        .iter()
        .find(|s| s.name.replace('-', " ") == words)
        .map(|s| s.id);
    named.unwrap_or_else(|| panic!("no step: {words}"))
}

/// A signal as it is said.
pub const fn signal(signal: Signal) -> &'static str {
    match signal {
        Signal::None => "to do",
        Signal::Marked => "marked",
        Signal::Go => "go",
        Signal::Wait => "wait",
        Signal::Look => "look",
        Signal::Stop => "stop",
    }
}

/// Whether a place is the one that is meant.
pub fn is_spot(spot: Spot, words: &str) -> bool {
    matches!(spot, Spot::Reading(place) if self::spot(words).contains(&place))
}

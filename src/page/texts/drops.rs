//! Cold drops that are kept under a name.

use crate::words::made as w;
use coldseat_core::ask::document::DisputedSpot as Spot;

/// The name of a copy.
#[must_use]
pub fn copy_of(name: &str) -> String {
    w::CopyOf { name: &name }.say()
}

/// What a cold drop is of, by what was typed; nothing where nothing was.
#[must_use]
pub fn drop_about(diameter: &str, fit: &str) -> String {
    let of = |what: &str, typed: &str| (!typed.is_empty()).then(|| format!("{what} {typed}"));
    let parts = [
        of(w::DROP_ABOUT_PARTS_OD.get(), diameter),
        of(w::DROP_ABOUT_PARTS_FIT.get(), fit),
    ];
    parts
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" \u{b7} ")
}

/// Where in a cold drop a value stands.
#[must_use]
pub fn drop_spot(spot: &Spot) -> String {
    match spot {
        Spot::Reading(place) => super::place_title(*place),
        Spot::Step(..) => super::spot(spot),
        Spot::Other(keys) => match keys.last().map(String::as_str) {
            Some("name") => w::DROP_NAME.get().to_owned(),
            Some("units") => w::UNITS.get().to_owned(),
            Some("sleeve_material") => w::SLEEVE_MATERIAL.get().to_owned(),
            Some("block_material") => w::BLOCK_MATERIAL.get().to_owned(),
            _ => keys.join(", "),
        },
    }
}

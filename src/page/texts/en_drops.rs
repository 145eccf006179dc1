//! English: cold drops that are kept under a name.

use coldseat_core::ask::document::DisputedSpot as Spot;

pub const KEPT_DROPS: &str = "Kept cold drops";
pub const NO_KEPT_DROPS: &str = "None yet. Keep these numbers under a name to find them here.";
pub const NO_KEPT_DROP: &str = "This cold drop is not on this device.";
pub const DROP_NAME: &str = "Name";
pub const KEEP_DROP: &str = "Keep these numbers";
pub const COPY_DROP: &str = "Copy";
pub const DROP_INTO_BIN: &str = "Put into the bin";
pub const DROP_WITHOUT_NAME: &str = "Numbers without a name";
pub const DROP_IN_BIN: &str = "This cold drop is in the bin.";
pub const DROP_GONE: &str = "This cold drop was deleted in another tab, or the browser lost it. What you see is on the screen only.";
pub const DROP_READ_ONLY: &str =
    "A later version of this page wrote this cold drop. It can be read here, not changed.";
pub const DROP_REPAIRED: &str = "Part of this cold drop could not be read. Check these numbers:";

/// The name of a copy.
#[must_use]
pub fn copy_of(name: &str) -> String {
    format!("{name} (copy)")
}

/// What a cold drop is of, by what was typed; nothing where nothing was.
#[must_use]
pub fn drop_about(diameter: &str, fit: &str) -> String {
    let of = |what: &str, typed: &str| (!typed.is_empty()).then(|| format!("{what} {typed}"));
    let parts = [of("OD", diameter), of("fit", fit)];
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
            Some("name") => DROP_NAME.to_owned(),
            Some("units") => super::UNITS.to_owned(),
            Some("sleeve_material") => super::SLEEVE_MATERIAL.to_owned(),
            Some("block_material") => super::BLOCK_MATERIAL.to_owned(),
            _ => keys.join(", "),
        },
    }
}

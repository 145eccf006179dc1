//! English of the cold drop without a job: parts, colds, heats and what stands
//! beside the answer.

use coldseat_core::ask::{Cold, Heat, Part};

pub const PART: &str = "Part";
pub const PART_MATERIAL: &str = "Part material";
pub const HOUSING: &str = "Housing";
pub const HOUSING_MATERIAL: &str = "Housing material";
pub const COLD_BY: &str = "Cooled in";
pub const HEAT_BY: &str = "Housing heat";
pub const THE_WAY: &str = "Cold, and the carry to the bore";
pub const PRICES: &str = "Prices";

/// What goes in.
#[must_use]
pub const fn part(part: Part) -> &'static str {
    match part {
        Part::FlangedSleeve => "Flanged sleeve",
        Part::PlainSleeve => "Plain sleeve",
        Part::Bushing => "Bushing",
        Part::SeatRing => "Valve seat",
        Part::BearingRing => "Bearing ring",
        Part::Pin => "Pin or shaft",
    }
}

/// What makes it cold.
#[must_use]
pub const fn cold(cold: Cold) -> &'static str {
    match cold {
        Cold::Nitrogen => "Liquid nitrogen",
        Cold::DryIceAlcohol => "Dry ice + alcohol",
        Cold::DryIcePacked => "Dry ice, packed",
        Cold::Freezer => "Freezer",
        Cold::Outdoors => "Cold air, outdoors",
        Cold::AsItIs => "Nothing",
    }
}

/// What warms the housing.
#[must_use]
pub const fn heat(heat: Heat) -> &'static str {
    match heat {
        Heat::AsItIs => "None",
        Heat::Oven => "Oven",
        Heat::HotPlate => "Hot plate",
        Heat::Water => "Hot water",
    }
}

/// One of the ways side by side.
#[must_use]
pub fn way(by: Cold, warmed: Heat) -> String {
    match (by, warmed) {
        (_, Heat::AsItIs) => cold(by).to_owned(),
        (Cold::AsItIs, _) => format!("{} alone", heat(warmed)),
        _ => format!("{} and {}", cold(by), heat(warmed).to_lowercase()),
    }
}

/// What the housing is called with this part.
#[must_use]
pub const fn housing(part: Part) -> &'static str {
    if part.is_sleeve() { "block" } else { "housing" }
}

/// What the drawing of a part shows.
#[must_use]
pub fn part_label(name: &str, cold: &str, warm: &str, clearance: &str) -> String {
    format!(
        "{name} at {cold} half in its bore at {warm}, cut along the axis: {clearance} clearance on diameter."
    )
}

/// Below that drawing.
#[must_use]
pub fn part_caption() -> String {
    "Cut along the axis, walls in proportion to the diameter. The clearance is drawn far wider than it is.".to_owned()
}

pub const BESIDE: &str = "Time in the cold, fit and temperature";
pub const IN_COLD: &str = "In the cold";
pub const IN_HEAT: &str = "In the heat";
pub const PLATE_TOUCH: &str =
    "how well the plate touches is not known: measure the housing at its bore";
pub const TAKES: &str = "Takes";
pub const FIT_MOST: &str = "Tightest fit with that clearance";
pub const COLD_ENOUGH: &str = "Part temperature for that clearance";
pub const HOT_ENOUGH: &str = "Housing temperature for that clearance";
pub const CLOSES_IN: &str = "Its bore closes in";
pub const BESIDE_WHAT: &str = "By the target clearance at the bore, at the narrow end of the band. Whether there is time to get it home is shown above. Times count the inside and outside faces, not the ends. A whole casting takes longer than the wall entered: measure it.";
pub const SIDE_BY_SIDE: &str = "Side by side: nitrogen, dry ice, freezer, heat";
pub const WAY: &str = "By";
pub const CLEARANCE_AT_BORE: &str = "Clearance at the bore";
pub const HOME_BY: &str = "Home within";
pub const COSTS: &str = "Costs";
pub const MEND_FIRST: &str = "fix first";

/// A time and its ends.
#[must_use]
pub fn time_span(usual: &str, quick: &str, slow: &str) -> String {
    format!("{usual} ({quick} to {slow})")
}

/// Nitrogen that a part takes.
#[must_use]
pub fn litres(amount: &str) -> String {
    format!("{amount} liters of nitrogen, plus the bath fill")
}

/// Dry ice that a part takes.
#[must_use]
pub fn dry_ice(amount: &str) -> String {
    format!("{amount} kg of dry ice, plus what is lost by standing")
}

pub const ENOUGH_AS_IT_IS: &str = "room enough as it is";

/// Not even at the end of the range.
#[must_use]
pub fn never_enough(clearance: &str) -> String {
    format!("never by that alone: {clearance} at the end of the range")
}

/// Which fit still goes.
#[must_use]
pub fn up_to(fit: &str) -> String {
    format!("up to {fit}")
}

/// No fit goes.
#[must_use]
pub fn only_loose(clearance: &str) -> String {
    format!("none: it needs a loose fit of {clearance}")
}

/// How a bore closes.
#[must_use]
pub fn closes(by: &str, before: &str, after: &str) -> String {
    format!("by {by}: {before} becomes {after}")
}

pub const NO_HEAT_LIMIT: &str = "Nobody entered how hot this housing may get. Take it from its maker's sheet. Heat-treated aluminum and hardened parts lose strength long before they look hot.";

/// A housing warmed beyond its limit.
#[must_use]
pub fn too_hot(most: &str) -> String {
    format!("Hotter than its sheet allows ({most}): do not warm it that far.")
}

/// From the last step to the record.
pub const SEE_RECORD: &str = "Look at the record";

pub const FINISHED: &str = "Before the sleeve, and finished";
pub const FINISHED_COLUMNS: [&str; 9] = [
    "Cylinder",
    "Thinnest wall",
    "Counterbore dia.",
    "Groove depth",
    "Finished bore",
    "Out of round",
    "Taper",
    "Ring gaps",
    "Piston proud",
];
/// In the cell of readings one of which cannot be used.
pub const UNUSABLE_HERE: &str = "cannot be used";
pub const BEFORE_BORING: &str = "Pressure test before boring";
pub const AFTER_ALL: &str = "Pressure test after all work";

/// A pressure test as it was read.
#[must_use]
pub fn pressure_test(which: &str, from: &str, to: &str, time: Option<&str>) -> String {
    match time {
        Some(time) => format!("{which}: {from} at the start, {to} after {time}."),
        None => format!("{which}: {from} at the start, {to} at the end."),
    }
}

/// The cylinders that got no sleeve.
#[must_use]
pub fn no_sleeve_in(cylinders: &str) -> String {
    format!("No sleeve in: {cylinders}.")
}

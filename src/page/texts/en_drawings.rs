//! English: what drawings say to those who cannot see them, and the lines
//! below them.

use coldseat_core::ask::Bearer;
use coldseat_core::ask::format::fixed;

pub const LOAD_CAPTION: &str = "Strongest pull. Mark: 80 % of the ram's rating, half the rod's yield, ledge pressure and flange shear as entered.";
pub const CHILL_CAPTION: &str =
    "Time in the bath until it is quiet. Shaded: earliest to latest. Bar: the time in the bath.";
pub const OXYGEN_CAPTION: &str = "Oxygen in this room, 15 to 21 %, mixed through. Near the dewar and at the floor it is far worse. Mark: 19.5 %.";
pub const DECK_MAP_CAPTION: &str = "Deck from above, front to the left. The larger a spot, the farther it is below the highest point. Filled: still low after the planned cut.";
pub const DECK_SURVEY_CAPTION: &str = "Deck from above, front to the left. The larger a spot, the farther it is below the highest point.";
pub const AT_ONCE: &str = "all at once";
pub const WITH_AIR: &str = "with the air entered";

/// A level of readings.
#[must_use]
pub const fn level_name(level: usize) -> &'static str {
    match level {
        0 => "top",
        1 => "middle",
        _ => "bottom",
    }
}

#[must_use]
pub fn round_level(level: usize, across: &str, along: &str) -> String {
    format!("{}: across {across}, along {along}", level_name(level))
}

#[must_use]
pub fn round_label(levels: &str) -> String {
    format!("Shape at each level and down the length. {levels}.")
}

#[must_use]
pub fn round_caption(times: f64, limit: Option<&str>) -> String {
    let limit = limit.map_or(String::new(), |limit| format!("; the limit is {limit}"));
    format!(
        "Out of round drawn \u{d7}{} against the diameter{limit}. Below: solid line across, dashed along. Wider is to the right.",
        round_times(times)
    )
}

/// Parts named in a section.
pub const PART_BLOCK: &str = "block";
/// What the flange sits on.
pub const PART_LEDGE: &str = "ledge";
/// What was fitted.
pub const PART_SLEEVE: &str = "sleeve";
/// What stands proud.
pub const PART_FLANGE: &str = "flange";

#[must_use]
pub fn wall_label(walls: &str) -> String {
    format!("Wall left after boring: {walls}.")
}

#[must_use]
pub fn wall_caption(stop: &str) -> String {
    format!(
        "Wall left around the bore, a smooth line through the four clock positions. The number is the thinnest of the levels. Dashed: {stop}, the limit for a stop."
    )
}

#[must_use]
pub fn plan_wall(cylinder: u8, wall: &str) -> String {
    format!("cylinder {cylinder} thinnest wall {wall}")
}

#[must_use]
pub fn plan_label(pitch: &str, web: &str, walls: &str) -> String {
    format!("Plan of the block. Pitch {pitch}, web between counterbores {web}. {walls}")
}

#[must_use]
pub fn plan_caption(web: &str, times: f64) -> String {
    format!(
        "From above, front to the left. Web {web}. Cross: where the bar stands, drawn \u{d7}{}. Below: thinnest wall left.",
        fixed(times, 0)
    )
}

#[must_use]
pub fn load_words(bearer: Bearer, now: &str, most: &str) -> String {
    let what = match bearer {
        Bearer::Ram => "ram",
        Bearer::Rod => "rod",
        Bearer::Ledge => "ledge",
        Bearer::Flange => "flange shear",
    };
    format!("{what} {now}, at most {most}")
}

#[must_use]
pub fn load_label(loads: &str) -> String {
    format!("Loads of the strongest pull: {loads}.")
}

#[must_use]
pub fn chill_label(quiet: &str, low: &str, high: &str, elapsed: Option<&str>) -> String {
    match elapsed {
        Some(elapsed) => {
            format!("In the bath {elapsed}. Quiet after about {quiet}, between {low} and {high}.")
        }
        None => format!("Quiet after about {quiet}, between {low} and {high}."),
    }
}

#[must_use]
pub fn oxygen_label(sudden: &str, least: &str) -> String {
    format!("Oxygen in the room: all at once {sudden}, with the air entered {least}; limit 19.5 %.")
}

#[must_use]
pub fn spot_words(index: u8, below: &str) -> String {
    let place = super::en_names::place(coldseat_core::ask::Field::LowSpot, index);
    format!("{place} {below}")
}

#[must_use]
pub fn deck_map_label(spots: &str, plane: Option<&str>) -> String {
    match plane {
        Some(plane) => format!("Deck below its highest point: {spots}. Planned cut {plane}."),
        None => format!("Deck below its highest point: {spots}."),
    }
}

pub const SHALLOW: &str = "shallow";
pub const DEEP: &str = "deep";
pub const OWN_CUTS_ONE: &str = "Your counterbores in this job against the depth each was cut for. One says nothing about scatter yet.";

/// Which way an error of depth goes.
const fn way(error_m: f64) -> &'static str {
    if error_m > 0.0 { "deep" } else { "shallow" }
}

#[must_use]
pub fn own_cut_words(cylinder: u8, by: &str, error_m: f64) -> String {
    format!("cylinder {cylinder} {by} {}", way(error_m))
}

#[must_use]
pub fn own_cuts_label(cuts: &str) -> String {
    format!("Counterbores of this job against their target depth: {cuts}.")
}

#[must_use]
pub fn own_cuts_caption(n: usize, mean: &str, mean_m: f64, sd: &str) -> String {
    let few = if n < 10 {
        " Few cuts: the next may be well outside."
    } else {
        ""
    };
    format!(
        "Your {n} counterbores in this job against the depth each was cut for. Dashed: their mean, {mean} {}. Shaded: one standard deviation, {sd}.{few}",
        way(mean_m)
    )
}

/// How many times larger something is drawn: two digits say it.
fn round_times(times: f64) -> String {
    let mut step = 1.0;
    while times / step >= 100.0 {
        step *= 10.0;
    }
    fixed((times / step).round() * step, 0)
}

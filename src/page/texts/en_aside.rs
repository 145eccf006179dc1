//! English: what a step has beside its one number.

use coldseat_core::ask::Bearer;

pub const GRIP: &str = "What the fit holds, cold and running";
pub const FIT_LEFT: &str = "left of the fit once the peaks are smoothed";
pub const CONTACT_PRESSURE: &str = "presses at mid length with";
pub const SLIPS_PUSHED: &str = "slips when pushed with";
pub const SLIPS_PULLED: &str = "slips when pulled with (it thins)";
pub const HEAT_PATH: &str = "heat path through the joint";
pub const NOT_SMOOTHED: &str =
    "Nothing is taken off for smoothing: enter Rz of sleeve and bore under Engine.";
pub const RUNNING_WANTED: &str = "For the running engine, enter the temperatures of sleeve and block under Engine. Judge an aluminum block there, not cold.";
pub const FIT_RUNNING: &str = "left of the fit, running";
pub const PRESSURE_RUNNING: &str = "presses, running, with the gas";
pub const SLEEVE_MARGIN: &str = "sleeve: least strength over hoop stress";
pub const BLOCK_MARGIN: &str = "block: least strength over hoop stress";
pub const LETS_GO: &str = "lets go where sleeve and block are both at";
pub const NO_TENSION: &str = "no tension";
pub const GRIP_SOURCE: &str = "Lam\u{e9}'s rings at mid length, slip with the sleeve's own swelling. Friction 0.10 to 0.16, cast iron oiled and degreased (DIN 7190-1, by a secondary source). Smoothing: DIN 7190:2001, 0.8 of both Rz. In the 2017 edition 0.4, as reported second-hand. Heat path: Yovanovich. Handbook examples lie between 0.8 and 8 times it: use it to compare finishes, not as a number to trust. Rms roughness is a fifth of Rz, from memory. Strengths: least of the grade, see the material. Running: both at one mean temperature each. The makers' sheets win.";
pub const PASSES: &str = "Bar passes";
pub const MICROMETER: &str = "Micrometer over spindle and cutter, pass by pass:";
pub const PASSES_WHAT: &str = "From the smallest reading of the old bore to the sleeve, less the middle of its fit and hone stock. Equal passes, then the last. Micrometer: half of bore and spindle together.";
pub const PAIRS: &str = "Which sleeve in which hole";
pub const PAIR_COLUMNS: [&str; 3] = ["Sleeve", "Hole", "Hone takes (diameter)"];
pub const SPARE: &str = "spare";
/// Numbers of the engine, asked at the step that wants them.
pub const OF_ENGINE: &str = "Engine numbers for this step";

pub const NOTHING_TO_PAIR: &str = "Pairs are chosen once two sleeves are measured and a hole is bored. Choose before those holes are counterbored or honed.";
pub const KEEP_NUMBERS: &str = "As numbered now they need the least honing: keep the numbers.";
pub const NUMBER_SLEEVES: &str = "Number the sleeves this way";
pub const NUMBER_WHAT: &str = "What was measured on each sleeve moves to its new hole. Mark the sleeves again at once. Undo takes it back.";

/// A pass: the bore after it, its cut on diameter and on radius.
#[must_use]
pub fn pass(count: u8, bore: &str, diameter: &str, radius: &str) -> String {
    format!("{count}: to {bore} (diameter), takes {diameter} on diameter, {radius} on radius")
}

/// The warmest that is looked at.
#[must_use]
pub fn not_below(warmest: &str) -> String {
    format!("not below {warmest}")
}

/// The highest pressure of a pull, and what it is that bears no more.
#[must_use]
pub fn gauge_most(bearer: Bearer) -> String {
    let what = match bearer {
        Bearer::Ram => "ram",
        Bearer::Rod => "rod",
        Bearer::Ledge => "ledge",
        Bearer::Flange => "flange",
    };
    format!("pump to at most (limit of the {what})")
}

#[must_use]
pub fn wanted(names: &str) -> String {
    format!("Still needed: {names}.")
}

#[must_use]
pub fn times(times: &str) -> String {
    format!("{times} times")
}

/// A conductance, and that of a joint twice as rough.
#[must_use]
pub fn heat_path(now: &str, rough: &str) -> String {
    format!("{now} kW/m\u{b2}K; twice as rough: {rough}")
}

#[must_use]
pub fn paired(worst: &str, total: &str) -> String {
    format!("Most in one hole {worst}, all together {total}, to the middle of the fit.")
}

#[must_use]
pub fn as_numbered(most: &str, least: &str, all: &str) -> String {
    format!("As numbered now: {least} to {most}, all together {all}.")
}

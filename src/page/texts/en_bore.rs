//! English: the bore of a fitted sleeve down its length.

use coldseat_core::ask::{Dial, Fault, profile_field_of as field_of};

pub const BORE_DOWN: &str = "The bore down its length, before it is honed";
pub const STRAIGHT: &str = "straight";
pub const HEAD_ON: &str = "head on";
pub const ALONG: &str = "along";
pub const ACROSS: &str = "across";
pub const LEDGE: &str = "ledge";
pub const LAME: &str = "Lam\u{e9}";
pub const HONE_TAKES: &str = "hone takes";
pub const TAKES_ALL: &str = "all";
pub const TAKES_BORED: &str = "after bar";
pub const PROFILE_CAPTION: &str = "The fitted bore from the deck down, exaggerated, beside the target straight line. To the right it closes. Thick: as fitted. Line marked \"head on\": with head or torque plate. Thin: along and across the row. Dashed: one number by Lam\u{e9}'s rings. Numbers: what the hone must take there on diameter, all of it, and after the bar has bored it straight.";
pub const PRESSURE_CAPTION: &str = "How the sleeve presses on its bore, from the deck down. Nothing is drawn within a wall's thickness of ledge and foot. The model cannot be trusted there.";
pub const BORE_NUMBERS: &str = "The same in numbers";
pub const BORE_COLUMNS: [&str; 4] = ["Below deck", "Closes", "Hone takes", "After bar"];
pub const TRY_OTHERS: &str = "Try another fit, wall or flange";
pub const ONLY_TRIED: &str =
    "Only a try: the job keeps its own numbers. Dotted: the bore with those.";
pub const BACK_TO_JOB: &str = "Back to the job's numbers";

/// A dimension to try.
#[must_use]
pub const fn dial(dial: Dial) -> &'static str {
    match dial {
        Dial::Fit => "Fit",
        Dial::Wall => "Sleeve wall",
        Dial::Flange => "Flange thickness",
    }
}

#[must_use]
pub fn on_diameter(unit: &str) -> String {
    format!("In {unit}, on diameter. Minus means it opens.")
}

#[must_use]
pub fn pressure_head(unit: &str) -> String {
    format!("pressure, {unit}")
}

#[must_use]
pub fn pressure_label(least: &str, most: &str) -> String {
    format!("Pressure of the sleeve on its bore down the length: {least} to {most}.")
}

#[must_use]
pub fn push_home(least: &str, most: &str, low: &str, high: &str) -> String {
    format!(
        "It takes {least} to {most} to push it home against its fit, at a friction of {low} to {high}."
    )
}

#[must_use]
pub fn head_sinks(down: &str) -> String {
    format!("Head or torque plate presses the flange's top down by {down}.")
}

#[must_use]
pub fn pull_sinks(down: &str) -> String {
    format!("The strongest pull presses it down by {down}. That comes back on release.")
}

#[must_use]
pub fn closes_oval(along: &str, across: &str) -> String {
    format!("In its row it closes oval: {along} along the row, {across} across, at mid length.")
}

#[must_use]
pub fn order_of_sleeves(order: &[u8], neighbours: usize) -> String {
    let list: Vec<String> = order.iter().map(u8::to_string).collect();
    let why = match neighbours {
        0 => "Then none has a fitted neighbor.",
        1 => "Then none has more than one fitted neighbor to make its hole oval.",
        _ => "One goes between two fitted neighbors: measure its hole again before it goes in.",
    };
    format!(
        "Order with the least distortion for those still to go in: {}. {why}",
        list.join(", ")
    )
}

#[must_use]
pub fn profile_label(most: &str, lame: &str, stock: Option<(String, String)>) -> String {
    let closes =
        format!("The fit closes the bore by up to {most}. One number by Lam\u{e9}'s rings {lame}.");
    match stock {
        Some((least, greatest)) => {
            format!("{closes} The hone takes {least} to {greatest} down the length.")
        }
        None => closes,
    }
}

/// A bore that cannot be drawn, with the dimension that is in the way.
#[must_use]
pub fn no_profile(field: &str, fault: &Fault) -> String {
    format!(
        "No picture of the bore down its length. {field}: {}.",
        fault.message
    )
}

pub const FLANGE_STRESS: &str = "Stress at flange and ledge";
pub const STRESS_FILLET: &str = "under the flange, at the fillet's radius";
pub const STRESS_COUNTERBORE: &str = "in the block, as far from the counterbore's corner";
pub const STRESS_LEDGE: &str = "ledge, mean pressure";

/// A stress on two meshes: where they differ, the mesh speaks.
#[must_use]
pub fn two_meshes(half: &str, usual: &str) -> String {
    format!("{half} (coarser mesh {usual})")
}

#[must_use]
pub fn no_stress(fault: &Fault) -> String {
    if fault.field == "at_m" {
        "The fillet under the flange is not measured, or is too large for this flange. Enter it at the ledge's chamfer.".to_owned()
    } else {
        no_profile(super::field(field_of(fault)), fault)
    }
}

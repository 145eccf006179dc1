//! English: the record's two papers.

use super::{en, en_names};
use coldseat_core::ask::{Field, SleeveEnds, SleeveKind};

pub const FOR_THE_CUSTOMER: &str = "what was done";
pub const FOR_THE_FILE: &str = "for the file";
pub const PRINT_CUSTOMER: &str = "Print the customer's page";
pub const PRINT_FILE: &str = "Print the page for the file";
pub const RECORD_WORDS: &str = "Shop, machinist, block: for the record";
pub const GAUGES_CHECKED_GROUP: &str = "When each gauge was last checked";
pub const GAUGES_CHECKED_WHAT: &str =
    "A date, or what your sticker says. It goes on the record beside what the gauge is good for.";
pub const WHAT_WAS_DONE: &str = "What was done";
pub const ALL_STEPS_DONE: &str = "No step on the block was left out.";
pub const LEFT_FIT: &str = "fit";
pub const LEFT_PROUD: &str = "proud";
pub const LEFT_CHANCE: &str = "home";
pub const LEFT_BORE: &str = "bore";
pub const DECK_NOT_MARKED: &str = "Deck (a cut is decided on, but not marked as made)";

/// What the words at each hole of the plan mean.
#[must_use]
pub fn deck_plan_what(kind: SleeveKind, ends: SleeveEnds, finished: bool) -> String {
    let off = match kind {
        SleeveKind::Flanged => "Gap: how far the gauges find it off its ledge",
        SleeveKind::OnStep => "Gap: how far the gauges find it off its step",
        SleeveKind::ByFit => {
            "Off its mark: how far above the height it was to stand at (below with a minus)"
        }
    };
    let cut = match ends {
        SleeveEnds::Decked => ", before any cut of the deck",
        SleeveEnds::Proud => "",
    };
    let bore = if finished {
        " Bore: as finished, diameter."
    } else {
        ""
    };
    format!(
        "Deck from above, front of the engine to the left. Fit: how much larger the sleeve is than the hole it was pressed into. Proud: how far its top stood above the deck after the last pull{cut}. {off}. Home: the chance that it is within its limit.{bore}"
    )
}

/// How far a sleeve stands off, in a word.
#[must_use]
pub const fn left_gap(kind: SleeveKind) -> &'static str {
    match kind {
        SleeveKind::Flanged | SleeveKind::OnStep => "gap",
        SleeveKind::ByFit => "off its mark",
    }
}

/// Columns of the table of holes as they were left.
#[must_use]
pub const fn as_left_columns(kind: SleeveKind, ends: SleeveEnds) -> [&'static str; 12] {
    [
        en::CYLINDER,
        en::STATE,
        en::SLEEVE_OD,
        en::BORE,
        en::FIT,
        match kind {
            SleeveKind::Flanged => en::FLANGE,
            SleeveKind::OnStep | SleeveKind::ByFit => SLEEVE_LENGTH,
        },
        en::DEPTH,
        match ends {
            SleeveEnds::Decked => en::HEIGHT,
            SleeveEnds::Proud => en::HEIGHT_LEFT,
        },
        match kind {
            SleeveKind::Flanged | SleeveKind::OnStep => en::GAP,
            SleeveKind::ByFit => OFF_MARK,
        },
        en::TILT,
        super::en_keeping::HOME_CHANCE,
        en::PULLS,
    ]
}

const SLEEVE_LENGTH: &str = "Sleeve length";
const OFF_MARK: &str = "Off its mark";

/// Over the plan of a deck.
#[must_use]
pub fn deck_plan_caption(bank: u8, banks: u8, unit: &str, is_left: bool) -> String {
    // What is still to be cut is not left so.
    let how = if is_left {
        "as left"
    } else {
        "as measured so far"
    };
    if banks > 1 {
        format!("Deck {} {how} ({unit})", en::bank(bank))
    } else {
        format!("The deck {how} ({unit})")
    }
}

/// Shims under the sleeves, each with its hole.
#[must_use]
pub fn shims_laid(laid: &[(u8, String)]) -> String {
    let each: Vec<String> = laid
        .iter()
        .map(|(cylinder, size)| format!("hole {cylinder}: {size}"))
        .collect();
    format!("Shims under the sleeves: {}.", each.join("; "))
}

/// The limits of sleeves that are left proud.
#[must_use]
pub fn proud_limits([low, high, hole, neighbors, all]: &[String; 5], unit: &str) -> String {
    format!(
        "Left proud: each height {low} to {high}. Apart at most: within one hole {hole}, neighbors' means {neighbors}, all means {all} ({unit})."
    )
}

/// The record in one sentence.
#[must_use]
pub fn record_sentence(home: &[String], open: &[String]) -> String {
    let cylinders = |names: &[String]| match names {
        [one] => format!("cylinder {one}"),
        many => format!("cylinders {}", many.join(", ")),
    };
    match (home, open) {
        ([], []) => "No sleeve was fitted.".to_owned(),
        (home, []) => format!(
            "New sleeves in {}. Measured, and every one is home, within the limits the shop entered.",
            cylinders(home)
        ),
        ([], open) => format!(
            "No sleeve is shown to be home. Still open: {}.",
            cylinders(open)
        ),
        (home, open) => format!(
            "Measured and home, within the limits the shop entered: {}. NOT shown to be home: {}.",
            cylinders(home),
            cylinders(open)
        ),
    }
}

/// Sleeves of which nobody measured how tight they sit.
#[must_use]
pub fn fit_not_measured(names: &[String]) -> String {
    format!(
        "How tight they sit was NOT measured: cylinder {}.",
        names.join(", ")
    )
}

/// Values that two devices set differently.
#[must_use]
pub fn disputes_open(count: usize) -> String {
    match count {
        1 => "One value is in dispute between two devices. See the page for the file.".to_owned(),
        many => {
            format!("{many} values are in dispute between two devices. See the page for the file.")
        }
    }
}

/// A gauge on the record: what it measures, how sure, when it was checked.
#[must_use]
pub fn record_gauge(gauge: Field, sure: &str, checked: Option<&str>) -> String {
    let name = en_names::field(gauge)
        .trim_end_matches(" (gauge)")
        .to_lowercase();
    match checked {
        Some(checked) => format!("{name} {sure} (checked {checked})"),
        None => format!("{name} {sure} (no date of its last check)"),
    }
}

/// The gauges behind the record and how far a gap is known.
#[must_use]
pub fn record_gauges(known: &str, gap: Option<&str>, unit: &str) -> String {
    let gap = gap.map_or_else(String::new, |gap| format!(" A gap is known to {gap}."));
    format!(
        "Gauges (standard uncertainty, k = 1, {unit}): {known}.{gap} Chance: that the mean gap lies within its limit."
    )
}

/// How the deck came out, on the customer's page.
#[must_use]
pub fn deck_finish_line(measured: &str, kind: &str, most: &str, rough: bool) -> String {
    let good = if rough { "ROUGHER THAN" } else { "within" };
    format!("deck finish measured {measured} ({kind}), {good} the {most} that the gasket allows")
}

/// Columns of the floor sheet for the hand.
pub const MEASURED_BORE: &str = "Bore measured";
pub const MEASURED_DEPTH: &str = "Depth measured";
pub const INITIALS: &str = "Initials";

/// The cut of a deck and what it leaves, in one line of the record.
#[must_use]
pub fn deck_cut_plain(cut: &str) -> String {
    format!("{} {cut}", en::CUT)
}

/// The cut of a deck that nobody has made, for the record.
#[must_use]
pub fn deck_not_cut(cut: &str, decided: bool) -> String {
    let how = if decided { "decided on" } else { "planned" };
    format!("not cut yet, or not marked as cut; {cut} {how}")
}

/// A deck that is marked as cut, without a word of how deep.
#[must_use]
pub fn deck_cut_unread(planned: &str) -> String {
    format!("marked as cut; how deep was not entered ({planned} was planned)")
}

/// A deck that is marked as cut although a sleeve is not shown to be home.
#[must_use]
pub fn deck_cut_locked(typed: &str) -> String {
    format!("marked as cut (cut entered: {typed}), but not every sleeve is shown to be home")
}

/// The same, and what it leaves of each flange.
#[must_use]
pub fn deck_cut(cut: &str, left: &str) -> String {
    format!("{} {cut}; left of the flanges, at least {left}", en::CUT)
}

/// A time of a drop among others, shorter than the name of its field.
#[must_use]
pub fn time_kept(field: Field) -> String {
    match field {
        Field::ChillTime => "bath".to_owned(),
        Field::Carry => "carry".to_owned(),
        Field::HomeTimed => "entering to home".to_owned(),
        Field::HoldTime => "held down".to_owned(),
        other => en_names::field(other).to_lowercase(),
    }
}

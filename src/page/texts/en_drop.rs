//! English: what is said of the time that a sleeve has to go home.

use super::en_part::housing;
use coldseat_core::ask::{Cause, ColdUse, HomeVerdict, Part, ShrinkBy};

/// What the time to go home allows.
#[must_use]
pub fn home_words(
    verdict: HomeVerdict,
    go: bool,
    [within, needed]: [&str; 2],
    part: Part,
) -> String {
    let housing = housing(part);
    match verdict {
        HomeVerdict::Go if go => format!(
            "Room and time enough, within the numbers entered. Wipe it. One straight motion, home within {within} s. You need {needed} s."
        ),
        HomeVerdict::Go => format!(
            "Time enough by these numbers: home within {within} s, you need {needed} s. But first settle what is named below."
        ),
        HomeVerdict::Look => format!(
            "Little time to spare: home within {within} s, and you need {needed} s (\"Time you need\"). Keep it straight, wipe it at the bore, or warm the {housing}."
        ),
        HomeVerdict::Stop => format!(
            "Not home in time: cocked and frosted, it may touch after {within} s. You need {needed} s (\"Time you need\"). Do not try it as it is. Warm the {housing}, wipe the part at the bore, and keep it straighter. Or change the time you need, if you are that quick."
        ),
    }
}

/// What the numbers of a drop stand on, where not on the table of its iron.
#[must_use]
pub const fn shrinks_by(by: ShrinkBy) -> Option<&'static str> {
    match by {
        ShrinkBy::Table => None,
        ShrinkBy::Shop => Some("By the shop's own shrink, not by the table of its iron."),
        ShrinkBy::Sleeve => Some("By this sleeve as measured cold, not by the table of its iron."),
    }
}

/// Beside a time: the diameter measured cold.
#[must_use]
pub fn cold_use(diameter: &str, taken: ColdUse) -> String {
    let said = match taken {
        ColdUse::Used => "used for its drop",
        ColdUse::Odd => "used for its drop, though it is not what its iron does",
        ColdUse::NotUsed => "not used: no iron does that",
    };
    format!("measured cold {diameter}, {said}")
}

/// No press fit.
pub const NO_PRESS: &str = "No press fit: it never grips. Nothing holds this part. Do not drop it.";

/// Below the time to go home: the middle, the late end, what rules it.
#[must_use]
pub fn home_below(middle: &str, late: &str, moves: Option<(&str, String)>) -> String {
    let rules = moves.map_or_else(String::new, |(cause, by)| {
        format!("; {cause} matters most ({by} s)")
    });
    format!("half the drops grip by {middle} s, nearly all by {late} s{rules}")
}

/// What a drop's time hangs on.
#[must_use]
pub const fn cause(cause: Cause) -> &'static str {
    match cause {
        Cause::Fit => "how well the fit is measured",
        Cause::Contraction => "how far it shrinks",
        Cause::Lean => "how straight it goes in",
        Cause::Frost => "frost on it",
        Cause::Carry => "how long it is carried",
        Cause::Block => "how much metal around the bore takes part",
        Cause::Insertion => "how quickly it goes home",
    }
}

/// Before the time from the bath to the bore.
pub const AT_BORE_WITHIN: &str = "from bath to bore within";

/// What the later end of that time means.
#[must_use]
pub fn at_bore_late(late: &str) -> String {
    format!("from then on the clearance may be below target; after {late} it is")
}

/// Before how much a part without a flange grows in length once it grips.
pub const GROWS: &str = "grows in length once it grips";

pub const WARMER_BLOCK: &str = "If the block is warmer";
pub const WARMER_WHAT: &str = "Warm it evenly around the bore, no hotter than its maker's sheet allows. Measure its temperature at the bore. Enter that as the block's temperature only with a bore measured at that temperature.";

/// How soon in a warmer block.
#[must_use]
pub fn warmer(at: &str, within: &str) -> String {
    format!("Block at {at}: be home within {within}")
}

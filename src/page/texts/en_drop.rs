//! What is said of the time that a sleeve has to go home.

use coldseat_core::ask::{Cause, HomeVerdict};

/// What the time to go home allows.
#[must_use]
pub fn home_words(verdict: HomeVerdict, within: &str, needed: &str) -> String {
    match verdict {
        HomeVerdict::Go => format!(
            "Room and time enough, within the numbers entered: wipe it, one straight motion, home within {within} s. Taken for needed: {needed} s."
        ),
        HomeVerdict::Look => format!(
            "Little time to spare: home within {within} s where {needed} s are taken for needed. Keep it straight, wipe it at the bore, carry faster, or warm the block."
        ),
        HomeVerdict::Stop => format!(
            "Not home in time: it may touch after {within} s, and {needed} s are taken for needed. Do not try as it is: warm the block, carry faster, or hone more."
        ),
    }
}

/// Below the time to go home: the middle, the late end, what rules it.
#[must_use]
pub fn home_below(middle: &str, late: &str, cause: Option<&str>) -> String {
    let rules = cause.map_or_else(String::new, |c| format!("; {c} matters most"));
    format!("half of the drops grip by {middle} s, nearly all by {late} s{rules}")
}

/// What a drop's time hangs on.
#[must_use]
pub const fn cause(cause: Cause) -> &'static str {
    match cause {
        Cause::Fit => "how well the fit is measured",
        Cause::Contraction => "how far the iron shrinks",
        Cause::Lean => "how straight it goes in",
        Cause::Frost => "frost on the sleeve",
        Cause::Carry => "how long it is carried",
        Cause::Block => "how much of the block takes part",
    }
}

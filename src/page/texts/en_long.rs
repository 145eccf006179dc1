//! English: sentences. What to do next, why a number is asked about, cautions,
//! help, what drawings say to those who cannot see them.

use super::en_mend::{missing_of, where_words};
use super::en_part::housing;
use super::en_steps::{says, says_by};
use super::{en, en_names};
use crate::show::length;
use coldseat_core::ask::document::{Repair, Unreadable};
use coldseat_core::ask::{
    Caution, DropVerdict, Field, Next, Part, Place, Scope, Spot, State, StepId, UnitSystem,
};

/// What to do next.
#[must_use]
pub fn next(next: &Next, units: UnitSystem) -> String {
    let by = |l: &coldseat_core::ask::Length| length(l.as_m(), units);
    match next {
        Next::Measure(missing) if missing.field.spec().scope == Scope::Engine => format!(
            "Needs a number of the engine: {}. Enter it under \"{}\".",
            en_names::field(missing.field),
            en::ENGINE_AND_LIMITS
        ),
        Next::Measure(missing) => format!("Measure: {}.", missing_of(missing)),
        Next::Mend(spot) => format!("Cannot be used: {}. Fix it.", where_words(*spot)),
        Next::Answer(place) => format!(
            "Asked about and not answered: {}. Fix it, or say that it is meant.",
            where_words(Spot::Reading(*place))
        ),
        Next::First(step) => format!(
            "First: {}. It is neither done nor marked.",
            en_names::step_title(*step)
        ),
        Next::ProvedWrong(step) => format!(
            "\"{}\" shows otherwise: this verdict no longer holds.",
            en_names::step_title(*step)
        ),
        Next::Assumed(Field::DeckCut) => "Good by the planned cut: enter the cut that was made.".into(),
        Next::Assumed(Field::DeckHere) => "Good with the deck beside each hole taken from the survey. Measure it there to be sure.".into(),
        Next::Assumed(Field::SleeveOd) => "Good with a sleeve of nominal size. Nobody has measured the sleeve yet: measure it.".into(),
        Next::Assumed(Field::Indicator) => "Good with the bar on the old center. Nobody has swept it yet: sweep it.".into(),
        Next::Assumed(Field::FlangeOdHere) => "Good with a flange of nominal size. Measure this one.".into(),
        Next::Assumed(field) => format!(
            "Good with the usual or planned {}. Nobody has measured or entered it yet: do that.",
            en_names::field(*field).to_lowercase()
        ),
        Next::ReleasedByHand => "Released by hand over flanges that are not shown to be home. One that drops later takes the gasket with it.".into(),
        Next::SleeveIn => LEFT_OUT_WHY.into(),
        Next::DeepCut => "More than twice the planned cut: check the number. Pistons stand prouder by as much.".into(),
        Next::LittleFlange => CUT_TOO_DEEP.into(),
        Next::MayStayLow => "The chance of leaving a sleeve low is more than the one accepted. Cut deeper, or measure again.".into(),
        Next::BlockCutMost(_)
        | Next::DeckSizePast(..)
        | Next::DeckSizeRecut(..)
        | Next::DeckSizeWill(..)
        | Next::DeckSizeWants(..)
        | Next::DeckRough => super::en_after::next_after_cut(next, units),
        Next::ProudOut(_)
        | Next::ProudGood
        | Next::PlanOpen(_)
        | Next::ReadAgain(_)
        | Next::OffPlan(..)
        | Next::InLimits(_)
        | Next::ApartFrom(..)
        | Next::ReadFree => super::en_proud::next_proud(next, units),
        Next::StopsAt(cylinder) => format!("Cylinder {cylinder} is on stop: hand nothing over until it is fixed."),
        Next::NotAllDone => "Marked, but steps are open. The record shows what was not done.".into(),
        Next::NoGroove => "This engine has no fire ring: no groove to cut.".into(),
        Next::MarkIt => en::MARK_IT.into(),
        Next::Marked => en::MARKED.into(),
        Next::PassedOver => en::PASSED_OVER.into(),
        Next::Advice(step, signal) => says(*step, *signal).into(),
        Next::AdviceBy(step, signal, by) => says_by(*step, *signal, *by, units),
        Next::Refused => "No answer from these numbers; see why below.".into(),
        Next::SleeveRound => "Round at the top: number it to its hole.".into(),
        Next::SleeveLook => "Out of round at the top: measure again, turn the sleeve a quarter. If it stays, ask the supplier.".into(),
        Next::SleeveStop => "Too far out of round at the top: do not fit it.".into(),
        Next::CutDeeper(to_go) => format!(
            "Cut {} deeper. Take the last {} in small bites, then measure all four clock positions.",
            by(to_go),
            match units {
                UnitSystem::Inch => "0.010 in",
                UnitSystem::Metric => "0.25 mm",
            }
        ),
        Next::LedgeShape(..) | Next::InkBroken => super::en_ledge::next_ledge(next, units),
        Next::LedgeUneven => "The depth is not the same around the hole. Clean the ledge and measure again before you cut or set a sleeve on it.".into(),
        Next::AtDepth => "At depth, as near as the gauge can tell: stop cutting, chamfer and clean.".into(),
        Next::TooDeep(over) => format!("Too deep by {}: do not fit the sleeve. Put a shim under it, or repair what it stands on.", by(over)),
        Next::StepLies(over) => format!("The step is {} deeper than this sleeve needs, and a step is only ever cut deeper. Use a longer sleeve, a shim, or repair the step.", by(over)),
        Next::FitGood => "The fit is in its band: clean, blue the ledge, go on.".into(),
        Next::FitUndecided => "The gauges cannot tell whether the fit is in its band. Set the bore gauge from the micrometer that measured the sleeve, and measure both again.".into(),
        Next::HoneMore(stock) => format!("Too tight: hone {} more off the bore, to the middle of the band.", by(stock)),
        Next::FitLoose(short) => format!("Too loose by {}: measure both again at one temperature. Then use a larger sleeve for this hole.", by(short)),
        Next::BoreForm => "The fit is right, but the bore is out of round or tapered: hone it straight.".into(),
        Next::DropReady => "The numbers are there: see clearance and grip time below.".into(),
        Next::PulledHome => "Above its seat before the pull, as warming makes it. The seat check has shown it home since.".into(),
        Next::PullHome => "Above its seat, and warming alone can explain it. A chip on its ledge would read the same: only the pull tells. Pull it home.".into(),
        Next::AboveCeiling => "Higher than warming can explain: look for a chip, a burr, or a corner that rides on the ledge.".into(),
        Next::HomeWarm => "On its ledge already, as near as the gauges can tell: pull once to prove it, then check the seat.".into(),
        Next::PullAgain => "Not shown to have stopped. It takes at least three pulls, the last two at the highest pressure. Neither of those may move it by more than the gauge can tell. Pull again at the same pressure and read it loaded and released.".into(),
        Next::CheckSeat => "It has quit moving. By the pulls it may be home: only the seat check proves it. Measure the height at all four clock positions.".into(),
        Next::StoppedHigh(gap) => format!("Stopped moving but {} high: not home. Do not deck. Take it out. Look for a chip, a burr or a corner that rides.", by(gap)),
        Next::StoppedUnsure => "Stopped. The gauges cannot tell whether it is home. Measure the four clock positions, the depth and the sleeve again.".into(),
        Next::Seated => "Seated, within the limits you entered or left as usual.".into(),
        Next::SetTooLow(low) => format!("TOO LOW by {}: nothing under it stops it, and no pull brings it up. Do not deck. Draw it out and set it again.", by(low)),
        Next::SetLowAt(low) => format!("TOO LOW by {} at its lowest clock position. Nothing under it stops it, and no pull brings it up. Do not deck. Draw it out and set it again.", by(low)),
        Next::SetHigh(high) => format!("Stands {} too high: pull it down in small steps. Measure after each. Nothing under it will stop it.", by(high)),
        Next::SetUndecided => "The gauge cannot tell whether it stands where it should. Measure the height again.".into(),
        Next::NotSeated(gap) => format!("NOT SEATED: stopped with a gap of {} at its ledge. Do not deck. Take it out. Look for a chip, a burr or a corner that rides.", by(gap)),
        Next::Tilted(tilt) => format!("NOT SEATED: it stands tilted by {}. Do not deck. Take it out. Look for a chip or a burr on the high side.", by(tilt)),
        Next::SeatUndecided => "The gauges cannot tell whether it is home. Measure height, depth and sleeve again. A better depth gauge helps most.".into(),
        Next::BelowLedge => "It reads lower than its ledge: a reading is wrong. Measure height, depth and sleeve again.".into(),
    }
}

#[must_use]
pub fn cylinders(count: usize) -> String {
    match count {
        1 => "1 cylinder".to_owned(),
        _ => format!("{count} cylinders"),
    }
}

#[must_use]
pub fn engine_of_sheet(engine: &str) -> String {
    format!("{engine} (engine sheet)")
}

#[must_use]
pub fn engine_of_job(engine: &str, job: &str) -> String {
    format!("{engine} ({} {job})", en::THIS_ENGINE_FROM)
}

/// How much of a folded group is there.
#[must_use]
pub fn entered(there: usize, all: usize) -> String {
    format!("{there} of {all} entered")
}

/// How a try that failed stands in the record.
#[must_use]
pub fn came_out(date: &str, found: &str, read: &str, verdict: Option<&str>) -> String {
    let read = if read.is_empty() { "nothing" } else { read };
    let verdict = verdict.map_or_else(String::new, |words| format!(" Verdict then: {words}"));
    format!("Came out {date}, found: {found}. Read until then: {read}.{verdict}")
}

/// What was repaired in a document.
#[must_use]
pub fn repair(repair: &Repair) -> String {
    match repair {
        Repair::Checksum => "its checksum does not match: it was changed outside this page".into(),
        Repair::Missing(part) => format!("\"{part}\" was missing"),
        Repair::SetAside(part) => format!("\"{part}\" could not be used; it is kept in the file"),
    }
}

/// Why stored data cannot be read.
#[must_use]
pub const fn unreadable(why: Unreadable) -> &'static str {
    match why {
        Unreadable::Empty => "nothing in it",
        Unreadable::TooLong => "longer than any job",
        Unreadable::Torn => "torn or damaged",
        Unreadable::NotADocument => "not a job",
    }
}

/// Heading of a caution.
#[must_use]
pub const fn caution_title(caution: Caution) -> &'static str {
    match caution {
        Caution::Lifting => "Lifting and wash",
        Caution::PressureTest => "Pressure test",
        Caution::Cutting => "Cutting",
        Caution::Nitrogen => "Liquid nitrogen",
        Caution::ColdIron => "Cold iron",
        Caution::ColdReading => "Measuring it cold",
        Caution::Ram => "Ram and rod",
        Caution::DryIce => "Dry ice",
        Caution::Hot => "Hot parts",
    }
}

/// A caution.
#[must_use]
pub const fn caution(caution: Caution) -> &'static str {
    match caution {
        Caution::Lifting => "Rated slings, block secured; the wash is hot and caustic.",
        Caution::PressureTest => "Low pressure, plates secured, stand aside.",
        Caution::Cutting => "No gloves near rotation; eye protection; sharp edges.",
        Caution::Nitrogen => {
            "Face shield, loose cryogenic gloves, cuffless pants over boots. It asphyxiates without warning: oxygen alarm, doors open, two people, never a pit or small room. Someone down: get out and call, do not rush in. Never seal it. No oil or grease near an open bath. Lower slowly. No bare skin."
        }
        Caution::ColdIron => {
            "Cold iron is brittle: no hammer. Pinch point at the deck. Afterward dry and oil."
        }
        Caution::DryIce => {
            "One kilogram becomes 0.55 m3 (19 cu ft) of carbon dioxide. The US limit for a working day (OSHA) is 5,000 parts per million. At that limit a room of 100 m3 (3,500 cu ft) holds what 0.9 kg gives off. It lies at the floor: doors open, never a pit, a cellar or a closed van. Never in a sealed vessel: it bursts. Alcohol burns, and its vapor with it: no flame, no spark, a small open vessel. Gloves and face shield."
        }
        Caution::Hot => {
            "Dry gloves that stand the heat: water turns to steam. No oil near it: it smokes and burns. Heat evenly. Measure at the bore by contact. The maker's sheet says how hot: heat-treated aluminum and hardened parts lose strength. Nothing closed or filled goes into an oven."
        }
        Caution::ColdReading => {
            "Frozen metal burns skin and sticks to it: gloves on sleeve and micrometer. It frosts over in seconds, and frost reads as diameter: wipe where you measure, read at once. The micrometer cools too: take one quick reading. Then let it come back to shop temperature and check its zero."
        }
        Caution::Ram => {
            "Rated ram and rod, full thread engagement, straight line, nobody in line with the rod. Pump slowly, release before touching. Oil under the skin: hospital now."
        }
    }
}

/// A drop that a job cannot work out yet: what is missing.
#[must_use]
pub fn drop_missing(fields: &[Field]) -> String {
    let mut names: Vec<&str> = fields.iter().map(|f| en_names::field(*f)).collect();
    names.dedup();
    format!(
        "Still needed for clearance and grip time: {}.",
        names.join("; ")
    )
}

/// Title of a reading for the pad and for screen readers.
#[must_use]
pub fn place_title(place: Place) -> String {
    let which = en_names::place(place.field, place.index);
    if which.is_empty() {
        en_names::field(place.field).to_owned()
    } else {
        format!("{}: {which}", en_names::field(place.field))
    }
}

/// The same over the pad, where a long name is cut off at its end: which one
/// first.
#[must_use]
pub fn pad_title(place: Place) -> String {
    let which = en_names::place(place.field, place.index);
    if which.is_empty() {
        en_names::field(place.field).to_owned()
    } else {
        format!("{which}: {}", en_names::field(place.field))
    }
}

pub const STAIRCASE_CAPTION: &str = "Height above the deck, pull by pull: down under load, back after release. Shaded: close enough to be home.";
pub const CLEARANCE_CAPTION: &str =
    "Clearance on diameter against seconds in the bore, until it grips. Shaded: the 95 % band.";
pub const FIT_CAPTION: &str = "Shaded: the band. Bar: what the gauges leave open (95 %). Ticks: loosest and tightest pair of readings.";
pub const ENTERS_WITH: &str = "enters with";

#[must_use]
pub fn section_label(predicted: &str, measured: &str, gap: &str) -> String {
    format!(
        "Section of the sleeve on its ledge. Predicted height {predicted}, measured {measured}, gap {gap}."
    )
}

#[must_use]
pub fn section_label_waiting(predicted: &str) -> String {
    format!("Section of the sleeve on its ledge. Predicted height {predicted}, not measured yet.")
}

#[must_use]
pub fn section_caption(times: Option<u32>) -> String {
    match times {
        Some(times) => {
            format!("Height and gap drawn \u{d7}{times} against the flange. Mean of the clock positions.")
        }
        None => "Height and gap drawn far larger than they are, the sleeve far shorter. Mean of the clock positions.".to_owned(),
    }
}

#[must_use]
pub fn staircase_label(pulls: usize, last: &str, predicted: &str, above: &str) -> String {
    format!(
        "Height after each of {pulls} pulls. Last {last}, predicted when home {predicted}: {above} above it."
    )
}

#[must_use]
pub fn clearance_label(
    entry: &str,
    nominal: Option<String>,
    early: Option<String>,
    late: Option<String>,
) -> String {
    match (nominal, early, late) {
        (Some(nominal), Some(early), Some(late)) => format!(
            "Clearance against time. Enters with {entry}. Grips after {nominal} seconds, with 95 % between {early} and {late}."
        ),
        (Some(nominal), ..) => format!(
            "Clearance against time. Enters with {entry}. Grips after {nominal} seconds. The band is open to one side."
        ),
        _ => format!("Clearance against time. Enters with {entry}. Does not grip within an hour."),
    }
}

#[must_use]
pub fn fit_label(mean: &str, lo: &str, hi: &str) -> String {
    format!("Fit {mean}. Its band is {lo} to {hi}.")
}

#[must_use]
pub fn deck_label(cut: &str, flanges: &str) -> String {
    format!("A deck cut of {cut} takes off the sleeves: {flanges}.")
}

#[must_use]
pub fn deck_caption(clean_up: &str) -> String {
    format!("What the cut takes off each sleeve. Dashed: the clean-up cut, {clean_up}.")
}

/// What the clearance at the bore allows.
#[must_use]
pub fn drop_words(verdict: DropVerdict, part: Part) -> String {
    let housing = housing(part);
    match verdict {
        DropVerdict::Free => "Enough room at the bore, within the numbers entered.".to_owned(),
        DropVerdict::Tight => format!(
            "Less clearance than asked for: chill it through, carry faster, or warm the {housing}."
        ),
        DropVerdict::MayNotEnter => format!(
            "At the narrow end of the band it may not enter. Do not try it as it is. Warm the {housing} or hone more."
        ),
        DropVerdict::DoesNotEnter => {
            format!("It does not enter the bore: do not try. Warm the {housing} or hone more.")
        }
    }
}

pub const MEAN_DIAMETER: &str = "mean diameter";
pub const ROUND_ANYWHERE: &str = "out of round, worst level";
pub const DEPTH_WANTED: &str = "target depth";
pub const CHANCE_LOW: &str = "chance of a low sleeve";

pub const ALL_HOME: &str = "chance that all of them are home";
pub const CUT_TOO_DEEP: &str = "Do not cut: it leaves too little flange.";

/// The chance over all flanges, and of how many.
#[must_use]
pub fn chance_any_low(flanges: usize) -> String {
    match flanges {
        1 => "chance that the cut misses it".to_owned(),
        _ => format!("chance that the cut misses any of {flanges}"),
    }
}
pub const PROUD_FOR_RISK: &str = "least stand-proud for the accepted chance";
pub const CHANCE_INSIDE: &str = "chance that the fit is in its band";
pub const LOOSEST: &str = "loosest pair";
pub const TIGHTEST: &str = "tightest pair";
pub const BORE_ROUND: &str = "bore out of round";
pub const BORE_TAPER: &str = "bore taper";
pub const PREDICTED_HEIGHT: &str = "predicted height when home";
pub const CLIMB_CEILING: &str = "warming explains at most";
pub const LAST_DROP: &str = "last pull moved it";
pub const LAST_RETURN: &str = "sprang back";
pub const STILL: &str = "a move of up to this is too small to count";
pub const CHANCE_SEATED: &str = "chance that it is home";
pub const GAUGES_SHOW: &str = "best chance one sleeve alone could show with these gauges";
pub const BETTER_DEPTH: &str = "with a depth gauge half as unsure";
pub const CHANCE_ASKED: &str = "chance asked for";
pub const OVER_AN_HOUR: &str = "over an hour";
pub const DROP_NUMBERS: &str = "see inside";

/// A chance in per cent.
#[must_use]
pub fn percent(chance: f64) -> String {
    let shown = chance * 100.0;
    if shown > 99.9 {
        "over 99.9 %".into()
    } else if shown > 0.0 && shown < 0.1 {
        "under 0.1 %".into()
    } else {
        format!("{} %", coldseat_core::ask::format::fixed(shown, 1))
    }
}

/// From, to.
#[must_use]
pub fn span(low: &str, high: &str) -> String {
    format!("{low} \u{2026} {high}")
}

/// A band.
#[must_use]
pub fn between(low: &str, high: &str) -> String {
    format!("{}: {low} \u{2026} {high}", en::BAND_95)
}

/// Readings that are still asked about.
#[must_use]
pub fn questioned(places: &str) -> String {
    format!("Still asked about: {places}.")
}

pub const SLIDER: &str = "slider";
pub const CUT_KEPT: &str =
    "The cut entered below is kept. It does not count until the deck is open.";
/// Holes that are left out and were read with a sleeve in them.
#[must_use]
pub fn open_beside(holes: &str) -> String {
    format!(
        "Every other sleeve is home, within the limits entered. Left out: {holes}. {LEFT_OUT_WHY}"
    )
}

const LEFT_OUT_WHY: &str = "A hole that is left out has readings of a sleeve. If that sleeve is still in the block, put the hole back in and do not deck over it. If it came out, write that down at its seat check.";
pub const OPEN_WHY: &str = "Every sleeve is home, within the limits you entered or left as usual.";
pub const CUT_GOOD: &str = "Cleans up the lowest point and every sleeve.";
pub const CUT_TOO_SMALL: &str =
    "Leaves metal that is not cleaned up: cut more, or bring the low sleeve up first.";

/// The states of a job's cylinders, counted.
#[must_use]
pub fn tally(cylinders: &[State], disputed: u64) -> String {
    let count = |wanted: fn(&State) -> bool| cylinders.iter().filter(|s| wanted(s)).count();
    let total = cylinders.len() - count(|s| *s == State::LeftOut);
    let mut text = format!("{} of {total} seated", count(|s| *s == State::Seated));
    let stops = count(|s| *s == State::Stop);
    if stops > 0 {
        text = format!("{text}, {stops} stop");
    }
    let looks = count(|s| *s == State::Look);
    if looks > 0 {
        text = format!("{text}, {looks} look");
    }
    if disputed > 0 {
        text = format!("{text}, {disputed} to choose: two devices differ");
    }
    text
}

/// The state of a cylinder in the record: plainer than the strip's word.
#[must_use]
pub fn record_state(report: &coldseat_core::ask::CylinderReport) -> &'static str {
    match report.step(StepId::Seat).map(|s| &s.next) {
        Some(Next::NotSeated(_) | Next::Tilted(_)) => "NOT SEATED",
        _ => en::state(report.state),
    }
}

/// The limits behind the record.
#[must_use]
pub fn record_limits(fit_low: &str, fit_high: &str, gap: &str, tilt: &str, unit: &str) -> String {
    format!(
        "Limits in {unit}, as entered or left at their usual value: fit {fit_low} to {fit_high}. Gap at most {gap}, tilt at most {tilt}."
    )
}

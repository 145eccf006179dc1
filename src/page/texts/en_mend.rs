//! English: what is missing, what cannot be used and why, what is in dispute.

use super::en_part::{NO_HEAT_LIMIT, too_hot};
use super::{en, en_names};
use crate::show::{number, range};
use coldseat_core::ask::format::fixed;
use coldseat_core::ask::{
    DeckSeats, DropDoubt, FEW, Field, HomeTime, Lack, Measure, Missing, Owner, ParseError,
    PointsTo, Question, Spot, UnitSystem, Unusable, Why,
};

/// Over the lines of a drop that cannot be worked out.
pub const DROP_MEND: &str = "Cannot be calculated: fix what is named below.";
/// The highest gauge pressure, where it is not known.
pub const GAUGE_MOST_OPEN: &str = "Highest gauge pressure: not all checked";
/// Steps that are only marked.
pub const STEPS_ONLY_MARKED: &str = "Marked done by hand, not measured";
/// Values in dispute, on the record.
pub const IN_DISPUTE: &str = "Not judged, because two devices differ:";

/// In a verdict's place while a reading is being typed.
pub const TYPING: &str = "reading";
/// What it waits for.
pub const TYPING_WHAT: &str = "The verdict comes when the reading is complete.";
/// Under a field of which this block has nothing.
pub const NONE_OF_IT: &str = "This block has none.";
/// The button that says so.
pub const HAS_NONE: &str = "This block has none";

/// A usual value in an empty field.
#[must_use]
pub fn usual(value: &str) -> String {
    format!("usual {value}")
}

/// A sleeve of a deck, spoken.
#[must_use]
pub fn deck_seat_words(cylinder: u8, gap: &str, p: f64) -> String {
    format!(
        "cylinder {cylinder}: {gap} off its ledge, chance home {}",
        chance_short(p)
    )
}

/// The sleeves of a deck, for those who cannot see them.
#[must_use]
pub fn deck_seats_label(sleeves: &str) -> String {
    format!("Gap at each ledge, less the gauge error they all share. {sleeves}.")
}

/// Under the same.
#[must_use]
pub fn deck_seats_caption(limit: &str, bias: &str) -> String {
    format!(
        "Gap at each ledge, and the chance that the sleeve is home. Dashed: limit {limit}. Subtracted from every gap: {bias}, the gauge error they share."
    )
}

/// A chance, never rounded up to certain.
#[must_use]
pub fn chance_short(p: f64) -> String {
    if p >= 0.9995 {
        ">0.999".to_owned()
    } else if p < 0.0005 {
        "<0.001".to_owned()
    } else {
        fixed((p * 1000.0).floor() / 1000.0, 3)
    }
}

/// What the numbers of a deck point to.
#[must_use]
pub fn deck_points_to(deck: &DeckSeats) -> String {
    let names = |list: &[u8]| {
        list.iter()
            .map(u8::to_string)
            .collect::<Vec<_>>()
            .join(", ")
    };
    match &deck.judged.points_to {
        _ if deck.cylinders.len() == 1 => "One sleeve alone: one reading can hardly prove it home. Measure the others, or use a better depth gauge.".to_owned(),
        PointsTo::Home => "Every measured sleeve is home.".to_owned(),
        PointsTo::StandsOut(_) => {
            let who = match &deck.stand_out()[..] {
                [one] => format!("Cylinder {one} stands"),
                some => format!("Cylinders {} stand", names(some)),
            };
            format!("{who} out from the others: a chip, a burr or a cocked sleeve.")
        }
        PointsTo::AllAlike => "All alike: zero the depth gauge on a flat, and look at one fillet.".to_owned(),
        PointsTo::Undecided => "The gauges cannot tell: measure height, depth and sleeve again.".to_owned(),
    }
}

/// What the shop's own sleeves offer.
#[must_use]
pub fn home_offer(n: usize, share: f64) -> String {
    format!(
        "Of {n} sleeves that had stopped, and 20 usual ones before them, {} were home.",
        chance_short(share)
    )
}

/// What timed drops say.
#[must_use]
pub fn home_time(found: &HomeTime) -> String {
    let (mean, longest) = (fixed(found.mean.as_s(), 1), fixed(found.longest.as_s(), 1));
    let said = match found.n {
        1 => format!("One sleeve timed from entering to home: {longest} s."),
        n => format!(
            "{n} sleeves timed from entering to home: {mean} s on average, {longest} s the longest."
        ),
    };
    match found.needed {
        Some(needed) => format!(
            "{said} You need {} s: 95 % of your drops take less (95 % sure).",
            fixed(needed.as_s(), 1)
        ),
        None if found.n < FEW => {
            format!("{said} From {FEW} on, the time you need is calculated from them.")
        }
        None => format!("{said} They are too far apart to tell the time you need."),
    }
}

/// The button that takes it.
pub const HOME_TIME_TAKE: &str = "Use for new jobs: time you need";

/// The button that takes it.
pub const HOME_TAKE: &str = "Use for new jobs: share that is home";

/// Each by itself is home, all together not sure enough.
#[must_use]
pub fn together(p: f64) -> String {
    format!(
        "Each sleeve alone is home. That all of them are, the gauges show only to {}. Measure depth and height of the least sure ones again.",
        chance_short(p)
    )
}

fn comma(text: &str) -> String {
    if text.is_empty() {
        String::new()
    } else {
        format!(", {text}")
    }
}

/// What is missing: whose, which, how many.
#[must_use]
pub fn missing_of(missing: &Missing) -> String {
    let whose = owner_words(missing.owner);
    let name = en_names::field(missing.field);
    match missing.places {
        0 | 1 => format!("{whose}{name}"),
        many => format!("{whose}{name} ({many} readings to go)"),
    }
}

fn owner_words(owner: Owner) -> String {
    match owner {
        Owner::Block => String::new(),
        Owner::Bank(bank) => format!("deck {}, ", en::bank(bank)),
        Owner::Cylinder(cylinder) => format!("cylinder {cylinder}, "),
    }
}

/// Where something stands.
#[must_use]
pub fn where_words(spot: Spot) -> String {
    match spot {
        Spot::Reading(place) => format!(
            "{}{}{}",
            owner_words(place.owner),
            en_names::field(place.field),
            comma(&en_names::place(place.field, place.index)),
        ),
        Spot::Engine => "the engine (cylinders, layout, units, materials)".to_owned(),
        Spot::LeftOut => "which holes get a sleeve".to_owned(),
        Spot::Unlock(bank) => format!("the release of deck {}", en::bank(bank)),
        Spot::Step(owner, step) => format!(
            "{}the mark of \"{}\"",
            owner_words(owner),
            en_names::step_title(step)
        ),
    }
}

/// What cannot be used, where, and why.
#[must_use]
pub fn mend(unusable: &Unusable, units: UnitSystem) -> String {
    let why = match unusable.spot {
        Spot::Reading(place) => refusal(&unusable.why, place.field, units),
        _ => DISPUTED.to_owned(),
    };
    format!("{}: {why}", where_words(unusable.spot))
}

/// Something in dispute.
#[must_use]
pub fn disputed(spot: Spot) -> String {
    format!("{}: {DISPUTED}", where_words(spot))
}

/// Why two values stand in one place.
const DISPUTED: &str = "two devices differ. Choose one.";

/// Why something cannot be told.
#[must_use]
pub fn lack(lack: &Lack, units: UnitSystem) -> String {
    match lack {
        Lack::Missing(missing) => format!("Still needed: {}.", missing_of(missing)),
        Lack::Unusable(unusable) => mend(unusable, units),
        Lack::Refused(fault) => super::en_steps::fault(fault),
    }
}

/// A typed text that cannot be used, on the record.
#[must_use]
pub fn cannot_be_used(text: &str) -> String {
    format!("\"{text}\" (cannot be used)")
}

/// What a number does not count.
#[must_use]
pub fn not_counted(names: &str) -> String {
    format!("Not counted, because not entered: {names}.")
}

/// How much of a deck a plan covers.
#[must_use]
pub fn plan_covers(surveyed: (u8, u8), holes: usize, without: usize) -> String {
    let (there, wanted) = surveyed;
    let all = holes + without;
    format!("Covers only {there} of {wanted} deck points and {holes} of {all} sleeves.")
}

/// Why a drop is no go: numbers that are an example's in one line.
#[must_use]
pub fn drop_doubts(doubts: &[DropDoubt], units: UnitSystem) -> Vec<String> {
    let mut examples: Vec<&str> = Vec::new();
    let mut lines = Vec::new();
    for doubt in doubts {
        match *doubt {
            DropDoubt::NeverGrips => {} // the verdict says it
            DropDoubt::Assumed(field) => examples.push(en_names::field(field)),
            DropDoubt::Questioned(place) => lines.push(format!(
                "{}: asked about and not answered.",
                where_words(Spot::Reading(place))
            )),
            DropDoubt::NoHeatLimit => lines.push(NO_HEAT_LIMIT.to_owned()),
            DropDoubt::TooHot(most) => {
                let unit = Measure::Temperature.unit(units);
                lines.push(too_hot(&number(most.as_k(), unit)));
            }
            DropDoubt::ColdSize => lines.push(format!(
                "Measure again: {}. It is not what this iron does.",
                en_names::field(Field::ColdOd)
            )),
            DropDoubt::First(step) => lines.push(format!(
                "First: {}. It is neither done nor marked.",
                en_names::step_title(step)
            )),
        }
    }
    if !examples.is_empty() {
        let examples = examples.join("; ");
        lines.push(format!("Assumed, nobody typed them: {examples}."));
    }
    lines
}

/// A cold drop into which nobody has typed.
pub const DROP_EXAMPLE: &str =
    "An example to look at. Enter your own part, fit, housing and carry. Then it says go or stop.";

/// Why a number cannot be used, with the allowed range in the person's unit.
#[must_use]
pub fn refusal(refusal: &Why, field: Field, units: UnitSystem) -> String {
    let unit = field.unit(units);
    let allowed = range(&field.spec().bound, unit);
    let show = |si: &f64| number(*si, unit);
    match refusal {
        Why::NotRead(_) if field == Field::RecutSaid => {
            super::en_after::RECUT_WHY_NEEDED.to_owned()
        }
        Why::NotRead(_) if field.spec().measure == Measure::Words => {
            super::en_after::ONE_LINE.to_owned()
        }
        Why::NotRead(error) => match error {
            ParseError::Empty => format!("Nothing typed. Allowed: {allowed}."),
            ParseError::NotANumber { .. } => format!("Not a number. Allowed: {allowed}."),
            ParseError::UnknownUnit { word } if word.starts_with(['O', 'o', 'l', 'I']) => {
                format!(
                    "\"{word}\" cannot be read: a letter O or l for 0 or 1? Allowed: {allowed}."
                )
            }
            ParseError::UnknownUnit { word } => {
                format!("\"{word}\" is not a unit known here. Allowed: {allowed}.")
            }
            ParseError::WrongKind { unit, wanted } => {
                format!(
                    "{} does not measure this; use {}. Allowed: {allowed}.",
                    unit.symbol(),
                    wanted.symbol()
                )
            }
            ParseError::TwoMarks { .. } => {
                format!(
                    "Two decimal marks. Use one, and none between thousands. Allowed: {allowed}."
                )
            }
            ParseError::TooLong => format!("Too long for a number. Allowed: {allowed}."),
        },
        Why::OutOfRange(_) => format!("Out of range. Allowed: {allowed}."),
        Why::InnerNotBelowOuter(outer) => {
            format!(
                "The inside must be smaller than the outside, {}.",
                show(outer)
            )
        }
        Why::WallTooThick(outer) => format!(
            "Two walls must leave a hole in a sleeve of {}: less than {}.",
            show(outer),
            show(&(outer / 2.0))
        ),
        Why::LowNotBelowHigh(high) => format!("Must be below the upper limit, {}.", show(high)),
        Why::TorqueAlone => {
            "A torque to read heights at, but no limits for the heights: enter the limits first."
                .to_owned()
        }
        Why::PassNotInCut(most) => format!(
            "One pass must be above 0 and no more than the most that may be cut, {}.",
            show(most)
        ),
        Why::Disputed => DISPUTED.to_owned(),
    }
}

/// Why a number is asked about.
#[must_use]
pub fn question(question: &Question, field: Field, units: UnitSystem) -> String {
    let show = |si: &f64| number(*si, field.unit(units));
    match question {
        Question::TenTimes(likely) => {
            format!("Off by ten times? Perhaps {} is meant.", show(likely))
        }
        Question::OtherUnit(likely) => {
            let units = match field.spec().measure {
                Measure::Temperature => "\u{b0}F for \u{b0}C, or the other way around",
                Measure::Volume => "Cubic feet for cubic meters, or the other way around",
                _ => "Inches for millimeters, or the other way around",
            };
            format!("{units}? It would be {}.", show(likely))
        }
        Question::RadiusOrDiameter(likely) => {
            format!("Radius for diameter? Perhaps {} is meant.", show(likely))
        }
        Question::FarFrom(0.0) => "Unusually far from zero. Right as typed?".into(),
        Question::FarFrom(others) => format!("The others read {}. Right as typed?", show(others)),
        Question::Unusual(lo, hi) => format!(
            "Unusual: mostly {} to {}. Right as typed?",
            show(lo),
            show(hi)
        ),
        Question::SleeveBelowBore(sleeve) => format!(
            "The sleeve ({}) is smaller than this bore: it would fall through. Measure both again.",
            show(sleeve)
        ),
    }
}

/// The value a question suggests.
#[must_use]
pub const fn suggestion(question: &Question) -> Option<f64> {
    match question {
        Question::TenTimes(si) | Question::OtherUnit(si) | Question::RadiusOrDiameter(si) => {
            Some(*si)
        }
        Question::FarFrom(_) | Question::Unusual(..) | Question::SleeveBelowBore(_) => None,
    }
}

//! What is missing, what cannot be used and why, what is in dispute.

use super::part::too_hot;
use super::{labels, names};
use crate::show::{fixed, number, range};
use crate::words::made as w;
use coldseat_core::ask::{
    DeckSeats, DropDoubt, FEW, Field, HomeTime, Lack, Measure, Missing, Owner, ParseError,
    PointsTo, Question, Spot, UnitSystem, Unusable, Why,
};

/// A usual value in an empty field.
#[must_use]
pub fn usual(value: &str) -> String {
    w::Usual { value: &value }.say()
}

/// A sleeve of a deck, spoken.
#[must_use]
pub fn deck_seat_words(cylinder: u8, gap: &str, p: f64) -> String {
    w::DeckSeatWords {
        chance_short: &chance_short(p),
        cylinder: &cylinder,
        gap: &gap,
    }
    .say()
}

/// The sleeves of a deck, for those who cannot see them.
#[must_use]
pub fn deck_seats_label(sleeves: &str) -> String {
    w::DeckSeatsLabel { sleeves: &sleeves }.say()
}

/// Under the same.
#[must_use]
pub fn deck_seats_caption(limit: &str, bias: &str) -> String {
    w::DeckSeatsCaption {
        limit: &limit,
        bias: &bias,
    }
    .say()
}

/// A chance, never rounded up to certain.
#[must_use]
pub fn chance_short(p: f64) -> String {
    if p >= 0.9995 {
        crate::words::marked(">0.999".to_owned())
    } else if p < 0.0005 {
        crate::words::marked("<0.001".to_owned())
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
        _ if deck.cylinders.len() == 1 => w::DECK_POINTS_TO_OTHER.get().to_owned(),
        PointsTo::Home => w::DECK_POINTS_TO_HOME.get().to_owned(),
        PointsTo::StandsOut(_) => {
            let out = deck.stand_out();
            let who = w::DeckPointsToWho {
                count: out.len(),
                names: &names(&out),
            }
            .say();
            w::DeckPointsToStandsOut { who: &who }.say()
        }
        PointsTo::AllAlike => w::DECK_POINTS_TO_ALL_ALIKE.get().to_owned(),
        PointsTo::Undecided => w::DECK_POINTS_TO_UNDECIDED.get().to_owned(),
    }
}

/// What the shop's own sleeves offer.
#[must_use]
pub fn home_offer(n: usize, share: f64) -> String {
    w::HomeOffer {
        share: &chance_short(share),
        n: &n,
    }
    .say()
}

/// What timed drops say.
#[must_use]
pub fn home_time(found: &HomeTime) -> String {
    let (mean, longest) = (fixed(found.mean.as_s(), 1), fixed(found.longest.as_s(), 1));
    let said = w::HomeTimeSaid {
        n: found.n,
        mean: &mean,
        longest: &longest,
    }
    .say();
    match found.needed {
        Some(needed) => w::HomeTimeSome {
            needed: &fixed(needed.as_s(), 1),
            said: &said,
        }
        .say(),
        None if found.n < FEW => w::HomeTimeNoneFromOnThe {
            said: &said,
            few: &FEW,
        }
        .say(),
        None => w::HomeTimeNoneTheyAreToo { said: &said }.say(),
    }
}

/// Each by itself is home, all together not sure enough.
#[must_use]
pub fn together(p: f64) -> String {
    w::Together {
        chance_short: &chance_short(p),
    }
    .say()
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
    let name = names::field(missing.field);
    match missing.places {
        0 | 1 => format!("{whose}{name}"),
        many => w::MissingOfOther {
            whose: &whose,
            name: &name,
            many: &many,
        }
        .say(),
    }
}

fn owner_words(owner: Owner) -> String {
    match owner {
        Owner::Block => String::new(),
        Owner::Bank(bank) => w::OwnerWordsBank {
            bank: &labels::bank(bank),
        }
        .say(),
        Owner::Cylinder(cylinder) => w::OwnerWordsCylinder {
            cylinder: &cylinder,
        }
        .say(),
    }
}

/// Where something stands.
#[must_use]
pub fn where_words(spot: Spot) -> String {
    match spot {
        Spot::Reading(place) => format!(
            "{}{}{}",
            owner_words(place.owner),
            names::field(place.field),
            comma(&names::place(place.field, place.index)),
        ),
        Spot::Engine => w::WHERE_WORDS_ENGINE.get().to_owned(),
        Spot::LeftOut => w::WHERE_WORDS_LEFT_OUT.get().to_owned(),
        Spot::Unlock(bank) => w::WhereWordsUnlock {
            bank: &labels::bank(bank),
        }
        .say(),
        Spot::Step(owner, step) => w::WhereWordsStep {
            owner: &owner_words(owner),
            step: &names::step_title(step),
        }
        .say(),
    }
}

/// What cannot be used, where, and why.
#[must_use]
pub fn mend(unusable: &Unusable, units: UnitSystem) -> String {
    let why = match unusable.spot {
        Spot::Reading(place) => refusal(&unusable.why, place.field, units),
        _ => w::DISPUTED.get().to_owned(),
    };
    format!("{}: {why}", where_words(unusable.spot))
}

/// Something in dispute.
#[must_use]
pub fn disputed(spot: Spot) -> String {
    format!("{}: {}", where_words(spot), w::DISPUTED)
}

/// Why something cannot be told.
#[must_use]
pub fn lack(lack: &Lack, units: UnitSystem) -> String {
    match lack {
        Lack::Missing(missing) => w::LackMissing {
            missing: &missing_of(missing),
        }
        .say(),
        Lack::Unusable(unusable) => mend(unusable, units),
        Lack::Refused(fault) => super::steps::fault(fault),
    }
}

/// A typed text that cannot be used, on the record.
#[must_use]
pub fn cannot_be_used(text: &str) -> String {
    w::CannotBeUsed { text: &text }.say()
}

/// What a number does not count.
#[must_use]
pub fn not_counted(names: &str) -> String {
    w::NotCounted { names: &names }.say()
}

/// How much of a deck a plan covers.
#[must_use]
pub fn plan_covers(surveyed: (u8, u8), holes: usize, without: usize) -> String {
    let (there, wanted) = surveyed;
    let all = holes + without;
    w::PlanCovers {
        there: &there,
        wanted: &wanted,
        holes: &holes,
        all: &all,
    }
    .say()
}

/// Why a drop is no go: numbers that are an example's in one line.
#[must_use]
pub fn drop_doubts(doubts: &[DropDoubt], units: UnitSystem) -> Vec<String> {
    let mut examples: Vec<&str> = Vec::new();
    let mut lines = Vec::new();
    for doubt in doubts {
        match *doubt {
            DropDoubt::NeverGrips => {} // the verdict says it
            DropDoubt::Assumed(field) => examples.push(names::field(field)),
            DropDoubt::Questioned(place) => lines.push(
                w::DropDoubtsQuestioned {
                    place: &where_words(Spot::Reading(place)),
                }
                .say(),
            ),
            DropDoubt::NoHeatLimit => lines.push(w::NO_HEAT_LIMIT.get().to_owned()),
            DropDoubt::TooHot(most) => {
                let unit = Measure::Temperature.unit(units);
                lines.push(too_hot(&number(most.as_k(), unit)));
            }
            DropDoubt::ColdSize => lines.push(
                w::DropDoubtsColdSize {
                    coldod: &names::field(Field::ColdOd),
                }
                .say(),
            ),
            DropDoubt::First(step) => lines.push(
                w::DropDoubtsFirst {
                    step: &names::step_title(step),
                }
                .say(),
            ),
        }
    }
    if !examples.is_empty() {
        let examples = examples.join("; ");
        lines.push(
            w::DropDoubts {
                examples: &examples,
            }
            .say(),
        );
    }
    lines
}

/// Why a number cannot be used, with the allowed range in the person's unit.
#[must_use]
pub fn refusal(refusal: &Why, field: Field, units: UnitSystem) -> String {
    let unit = field.unit(units);
    let allowed = range(&field.spec().bound, unit);
    let show = |si: &f64| number(*si, unit);
    match refusal {
        Why::NotRead(_) if field == Field::RecutSaid => w::RECUT_WHY_NEEDED.get().to_owned(),
        Why::NotRead(_) if field.spec().measure == Measure::Words => w::ONE_LINE.get().to_owned(),
        Why::NotRead(error) => match error {
            ParseError::Empty => w::RefusalNotReadEmpty { allowed: &allowed }.say(),
            ParseError::NotANumber { .. } => {
                w::RefusalNotReadNotAnumber { allowed: &allowed }.say()
            }
            ParseError::UnknownUnit { word } if word.starts_with(['O', 'o', 'l', 'I']) => {
                w::RefusalNotReadUnknownUnitCannotBeRead {
                    word: &word,
                    allowed: &allowed,
                }
                .say()
            }
            ParseError::UnknownUnit { word } => w::RefusalNotReadUnknownUnitIsNotA {
                word: &word,
                allowed: &allowed,
            }
            .say(),
            ParseError::WrongKind { unit, wanted } => w::RefusalNotReadWrongKind {
                unit: &unit.symbol(),
                wanted: &wanted.symbol(),
                allowed: &allowed,
            }
            .say(),
            ParseError::TwoMarks { .. } => w::RefusalNotReadTwoMarks { allowed: &allowed }.say(),
            ParseError::TooLong => w::RefusalNotReadTooLong { allowed: &allowed }.say(),
        },
        Why::OutOfRange(_) => w::RefusalOutOfRange { allowed: &allowed }.say(),
        Why::InnerNotBelowOuter(outer) => w::RefusalInnerNotBelowOuter {
            outer: &show(outer),
        }
        .say(),
        Why::WallTooThick(outer) => w::RefusalWallTooThick {
            outer: &show(outer),
            outer_too: &show(&(outer / 2.0)),
        }
        .say(),
        Why::LowNotBelowHigh(high) => w::RefusalLowNotBelowHigh { high: &show(high) }.say(),
        Why::TorqueAlone => w::REFUSAL_TORQUE_ALONE.get().to_owned(),
        Why::PassNotInCut(most) => w::RefusalPassNotInCut { most: &show(most) }.say(),
        Why::Disputed => w::DISPUTED.get().to_owned(),
    }
}

/// Why a number is asked about.
#[must_use]
pub fn question(question: &Question, field: Field, units: UnitSystem) -> String {
    let show = |si: &f64| number(*si, field.unit(units));
    match question {
        Question::TenTimes(likely) => w::QuestionTenTimes {
            likely: &show(likely),
        }
        .say(),
        Question::OtherUnit(likely) => {
            let units = match field.spec().measure {
                Measure::Temperature => w::QUESTION_OTHER_UNIT_UNITS_TEMPERATURE.get(),
                Measure::Volume => w::QUESTION_OTHER_UNIT_UNITS_VOLUME.get(),
                _ => w::QUESTION_OTHER_UNIT_UNITS_OTHER.get(),
            };
            w::QuestionOtherUnit {
                likely: &show(likely),
                units: &units,
            }
            .say()
        }
        Question::RadiusOrDiameter(likely) => w::QuestionRadiusOrDiameter {
            likely: &show(likely),
        }
        .say(),
        Question::FarFrom(0.0) => w::QUESTION_FAR_FROM_UNUSUALLY_FAR_FROM.get().into(),
        Question::FarFrom(others) => w::QuestionFarFromTheOthersRead {
            others: &show(others),
        }
        .say(),
        Question::Unusual(lo, hi) => w::QuestionUnusual {
            lo: &show(lo),
            hi: &show(hi),
        }
        .say(),
        Question::SleeveBelowBore(sleeve) => w::QuestionSleeveBelowBore {
            sleeve: &show(sleeve),
        }
        .say(),
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

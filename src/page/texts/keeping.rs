//! What is said about keeping jobs.

use super::{bank, place_title, step_title};
use crate::share::import::Outcome;
use crate::show::length;
use crate::storage::{Keeping, Place};
use crate::words::made as w;
use coldseat_core::ask::document::{DisputedSpot as Spot, FileFault, Reminder};
use coldseat_core::ask::{Gasket, HoneOffer, Lesson, Offer, Owner, Series, StepId, UnitSystem};
use coldseat_core::storage::StoreFault;

/// How far what was typed last has come.
#[must_use]
pub fn keeping(keeping: Keeping) -> &'static str {
    match keeping {
        Keeping::Idle => "",
        Keeping::Writing => w::KEEPING_WRITING.get(),
        Keeping::Both => w::KEEPING_BOTH.get(),
        Keeping::Only(Place::Durable, _) => w::KEEPING_ONLY_DURABLE.get(),
        Keeping::Only(Place::Quick, _) => w::KEEPING_ONLY_QUICK.get(),
        Keeping::Held(_) => w::KEEPING_HELD.get(),
        Keeping::Gone => w::KEEPING_GONE.get(),
    }
}

/// What is in one of the two stores only: in which, why, what to do. Nothing
/// where there is nothing to do.
#[must_use]
pub fn kept_in_one(place: Place, why: StoreFault) -> &'static str {
    match (place, why) {
        (_, StoreFault::Newer) => w::KEPT_IN_ONE_NEWER.get(),
        (Place::Durable, StoreFault::Full) => w::KEPT_IN_ONE_DURABLE_FULL.get(),
        (Place::Durable, _) => w::KEPT_IN_ONE_DURABLE.get(),
        (Place::Quick, StoreFault::Full) => w::KEPT_IN_ONE_QUICK_FULL.get(),
        (Place::Quick, StoreFault::Silent) => w::KEPT_IN_ONE_QUICK_SILENT.get(),
        (Place::Quick, StoreFault::Blocked) => w::KEPT_IN_ONE_QUICK_BLOCKED.get(),
    }
}

/// The clock of the device was moved while a timer ran.
#[must_use]
pub fn clock_moved(by: &str) -> String {
    w::ClockMoved { by: &by }.say()
}

/// Whose a reading or a step is.
#[must_use]
pub fn owner(owner: Owner) -> String {
    match owner {
        Owner::Block => w::BLOCK.get().to_owned(),
        Owner::Bank(number) => format!("{} {}", w::DECK.get(), bank(number)),
        Owner::Cylinder(cylinder) => format!("{} {cylinder}", w::CYLINDER.get()),
    }
}

/// Where in a job a value stands.
#[must_use]
pub fn spot(spot: &Spot) -> String {
    match spot {
        Spot::Reading(place) => format!("{}, {}", owner(place.owner), place_title(*place)),
        Spot::Step(whose, step) => format!("{}, {}", owner(*whose), step_title(*step)),
        Spot::Other(keys) => match keys.last().map(String::as_str) {
            Some("customer") => w::CUSTOMER.get().to_owned(),
            Some("name") => w::JOB_NAME.get().to_owned(),
            Some("note") => w::NOTE.get().to_owned(),
            Some("left_out") => w::SPOT_LEFT_OUT.get().to_owned(),
            _ => keys.join(", "),
        },
    }
}

/// Heads of the table of readings; units are added.
pub const CSV_HEADS: [crate::words::Word; 16] = [
    w::CSV_HEADS_JOB_NAME_TEXT,
    w::CSV_HEADS_READING_WHOSE_TEXT,
    w::CSV_HEADS_READING_WHAT_TEXT,
    w::CSV_HEADS_NUMBER_LENGTH,
    w::CSV_HEADS_NUMBER_TEMPERATURE,
    w::CSV_HEADS_NUMBER_PRESSURE,
    w::CSV_HEADS_NUMBER_FORCE,
    w::CSV_HEADS_NUMBER_TIME,
    w::CSV_HEADS_NUMBER_PLAIN,
    w::CSV_HEADS_NUMBER_ROUGHNESS,
    w::CSV_HEADS_NUMBER_VOLUME,
    w::CSV_HEADS_NUMBER_TORQUE,
    w::CSV_HEADS_AS_TYPED_VALUE,
    w::CSV_HEADS_AS_TYPED_UNIT,
    w::CSV_HEADS_AS_TYPED_WHEN,
    w::CSV_HEADS_AS_TYPED_KEPT,
];

/// What a file is that cannot be used.
#[must_use]
pub fn file_fault(fault: &FileFault) -> String {
    match fault {
        FileFault::TooLong => w::FILE_FAULT_TOO_LONG.get().into(),
        FileFault::Unreadable(why) => w::FileFaultUnreadable {
            why: &super::unreadable(*why),
        }
        .say(),
        FileFault::Newer(version) => w::FileFaultNewer { version: &version }.say(),
    }
}

/// What would come of a job in a file.
#[must_use]
pub fn outcome(outcome: &Outcome) -> String {
    match outcome {
        Outcome::New => w::OUTCOME_NEW.get().into(),
        Outcome::Same => w::OUTCOME_SAME.get().into(),
        Outcome::Joins(values, 0) => w::OutcomeJoins0 { values: &values }.say(),
        Outcome::Joins(values, both) => w::OutcomeJoins {
            values: &values,
            both: &both,
        }
        .say(),
        Outcome::Newer(version) => w::OutcomeNewer { version: &version }.say(),
        Outcome::Unreadable(why) => w::OutcomeUnreadable {
            why: &super::unreadable(*why),
        }
        .say(),
    }
}

/// How many jobs were taken.
#[must_use]
pub fn taken(count: usize) -> String {
    w::Taken { count }.say()
}

/// The button under a long list.
#[must_use]
pub fn more_jobs(shown: usize, all: usize) -> String {
    w::MoreJobs {
        shown: &shown,
        all: &all,
    }
    .say()
}

/// A calm word on the last backup.
#[must_use]
pub fn reminder(due: Reminder) -> String {
    let jobs = w::ReminderJobs { jobs: due.jobs }.say();
    match due.days {
        Some(days) => w::ReminderSome {
            days: usize::try_from(days).unwrap_or(usize::MAX),
            jobs: &jobs,
        }
        .say(),
        None => w::ReminderNone { jobs: &jobs }.say(),
    }
}

/// The gasket to buy.
#[must_use]
pub fn gasket(gasket: &Gasket, units: UnitSystem) -> String {
    let show = |l: coldseat_core::ask::Length| length(l.as_m(), units);
    let most = show(gasket.protrusion);
    let Some(least) = gasket.least.map(show) else {
        return w::GasketHeadGasketTo { most: &most }.say();
    };
    let entered = match (gasket.entered.map(show), gasket.suffices()) {
        (Some(entered), Some(true)) => w::GasketEnteredTrue { entered: &entered }.say(),
        (Some(entered), _) => w::GasketEnteredSome { entered: &entered }.say(),
        (None, _) => String::new(),
    };
    let grade = match gasket.grade.map(|grade| grade.map(show)) {
        None => String::new(),
        Some(Some(grade)) => w::GasketGradeOther { grade: &grade }.say(),
        Some(None) => w::GASKET_GRADE_NONE.get().to_owned(),
    };
    w::GasketHeadGasketTo2 {
        grade: &grade,
        least: &least,
        most: &most,
        entered: &entered,
    }
    .say()
}

/// A step that was not done, with the cylinders or decks where not all need it.
#[must_use]
pub fn step_not_done(step: StepId, whose: &[Owner], cylinders: usize, banks: usize) -> String {
    let (mut holes, mut decks) = (Vec::new(), Vec::new());
    for owner in whose {
        match owner {
            Owner::Cylinder(cylinder) => holes.push(cylinder.to_string()),
            Owner::Bank(number) => decks.push(bank(*number).to_owned()),
            Owner::Block => {}
        }
    }
    let title = step_title(step);
    if !holes.is_empty() && holes.len() < cylinders {
        w::StepNotDoneCylinder {
            holes: &holes.join(", "),
            title: &title,
        }
        .say()
    } else if !decks.is_empty() && decks.len() < banks {
        w::StepNotDoneDeck {
            decks: &decks.join(", "),
            title: &title,
        }
        .say()
    } else {
        title.to_owned()
    }
}

/// What jobs show.
#[must_use]
pub fn lesson(lesson: Lesson) -> &'static str {
    match lesson {
        Lesson::Feed => w::LESSON_FEED.get(),
        Lesson::Fit => w::LESSON_FIT.get(),
        Lesson::DropFree => w::LESSON_DROP_FREE.get(),
        Lesson::DropDragged => w::LESSON_DROP_DRAGGED.get(),
        Lesson::DropStuck => w::LESSON_DROP_STUCK.get(),
        Lesson::Settling => w::LESSON_SETTLING.get(),
        Lesson::Hone => w::LESSON_HONE.get(),
    }
}

/// Number, mean, spread and interval of a lesson.
#[must_use]
pub fn lesson_numbers(series: &Series, units: UnitSystem) -> String {
    let n = series.values.len();
    let Some(s) = series.scatter else {
        return match series.values.first() {
            Some(only) => w::LessonNumbersSome {
                only: &length(only.as_m(), units),
            }
            .say(),
            None => String::new(),
        };
    };
    let show = |l: coldseat_core::ask::Length| length(l.as_m(), units);
    w::LessonNumbers {
        mean: &show(s.mean),
        sd: &show(s.sd),
        low: &show(s.low),
        high: &show(s.high),
        n: &n,
    }
    .say()
}

/// A lesson's drawing in words.
#[must_use]
pub fn lesson_label(series: &Series, units: UnitSystem) -> String {
    format!(
        "{}. {}",
        lesson(series.lesson),
        lesson_numbers(series, units)
    )
}

/// From how many jobs.
#[must_use]
pub fn learnt_from(jobs: usize) -> String {
    w::LearntFrom { jobs }.say()
}

/// What the shop's feeds offer.
#[must_use]
pub fn offer(offer: &Offer, units: UnitSystem) -> String {
    let show = |l: coldseat_core::ask::Length| length(l.as_m(), units);
    w::OfferByYourLast {
        n: &offer.n,
        feed_sd: &show(offer.feed_sd),
        least: &show(offer.least),
        target: &show(offer.target),
    }
    .say()
}

/// What the shop's own holes offer for its hone.
#[must_use]
pub fn hone_offer(offer: &HoneOffer, units: UnitSystem) -> String {
    w::HoneOffer {
        n: &offer.n,
        rate: &length(offer.rate.as_m(), units),
    }
    .say()
}

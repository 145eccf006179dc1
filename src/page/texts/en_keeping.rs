//! English: what is said about keeping jobs.

use super::{bank, place_title, step_title};
use crate::share::import::Outcome;
use crate::show::length;
use crate::storage::{Keeping, Place};
use coldseat_core::ask::document::{DisputedSpot as Spot, FileFault, Reminder};
use coldseat_core::ask::{Gasket, HoneOffer, Lesson, Offer, Owner, Series, StepId, UnitSystem};
use coldseat_core::storage::StoreFault;

/// How far what was typed last has come.
#[must_use]
pub const fn keeping(keeping: Keeping) -> &'static str {
    match keeping {
        Keeping::Idle => "",
        Keeping::Writing => "saving \u{2026}",
        Keeping::Both => "saved",
        Keeping::Only(Place::Durable, _) => "saved in one of two stores",
        Keeping::Only(Place::Quick, _) => "stored, not yet sure",
        Keeping::Held(_) => "on the screen only",
        Keeping::Gone => "deleted, on the screen only",
    }
}

/// What is in one of the two stores only: in which, why, what to do. Nothing
/// where there is nothing to do.
#[must_use]
pub const fn kept_in_one(place: Place, why: StoreFault) -> &'static str {
    match (place, why) {
        (_, StoreFault::Newer) => {
            "A later version of this page has written here. What you type now is not written over it. Reload the page."
        }
        (Place::Durable, StoreFault::Full) => {
            "The quick store of this browser is full. What you type is in the second store, on disk. It has no other copy. Empty the bin or save all to a file."
        }
        (Place::Durable, _) => {
            "This browser has no quick store for the page. What you type is in the second store, on disk. It has no other copy. Save all to a file now and then."
        }
        (Place::Quick, StoreFault::Full) => {
            "The second store of this browser is full. What you type is in the quick store. The browser writes it out some seconds later. Leave the page open for a minute, and save the job to a file."
        }
        (Place::Quick, StoreFault::Silent) => {
            "The second store of this browser does not answer. Another page may hold it. What you type is in the quick store. The browser writes it out some seconds later. Close other tabs of this page."
        }
        (Place::Quick, StoreFault::Blocked) => {
            "This browser has no second store for the page. What you type is in the quick store. The browser writes it out some seconds later. Leave the page open for a minute, and save the job to a file."
        }
    }
}

/// The clock of the device was moved while a timer ran.
#[must_use]
pub fn clock_moved(by: &str) -> String {
    format!("The clock of this device moved by {by}. Which time is right?")
}

pub const NOTICES: &str = "Licenses";
pub const NOTICES_WHAT: &str = "This page is built from free works of others. Their licenses are kept with it, on this device.";
pub const SHOW_NOTICES: &str = "Show the licenses";
pub const NO_NOTICES: &str = "The licenses are not on this device, and there is no network.";
pub const NOT_OFFLINE: &str = "The browser could not keep this page on the device. Without a network it may not open. What you type is stored all the same.";
pub const GONE: &str = "This job was deleted in another tab, or the browser lost it. What you see is on the screen only.";
pub const KEEP_ANEW: &str = "Keep it after all";
pub const NOT_DESTROYED: &str =
    "The bin was not emptied. The second store of this browser refused. Nothing was deleted.";
pub const BROUGHT_BACK: &str =
    "The browser lost the last changes. The newer copy from the second store was used:";
pub const OPENING: &str = "Opening \u{2026}";

pub const UNDO_JOB: &str = "Undo";
pub const REDO_JOB: &str = "Redo";
pub const CONFLICTS: &str = "Two values in one place";
pub const CONFLICTS_WHAT: &str = "Typed on two devices that did not know of each other. Both are kept. Choose the one that counts.";
pub const CHOOSE: &str = "Take";

/// Whose a reading or a step is.
#[must_use]
pub fn owner(owner: Owner) -> String {
    match owner {
        Owner::Block => super::BLOCK.to_owned(),
        Owner::Bank(number) => format!("{} {}", super::DECK, bank(number)),
        Owner::Cylinder(cylinder) => format!("{} {cylinder}", super::CYLINDER),
    }
}

/// Where in a job a value stands.
#[must_use]
pub fn spot(spot: &Spot) -> String {
    match spot {
        Spot::Reading(place) => format!("{}, {}", owner(place.owner), place_title(*place)),
        Spot::Step(whose, step) => format!("{}, {}", owner(*whose), step_title(*step)),
        Spot::Other(keys) => match keys.last().map(String::as_str) {
            Some("customer") => super::CUSTOMER.to_owned(),
            Some("name") => super::JOB_NAME.to_owned(),
            Some("note") => super::NOTE.to_owned(),
            Some("left_out") => super::LEAVE_OUT.to_owned(),
            _ => keys.join(", "),
        },
    }
}

pub const FILES: &str = "Backup, files, bin";
pub const BACKUP: &str = "Backup";
pub const BACKUP_WHAT: &str = "One file with every job and cold drop on this device, also those in the bin. Keep it somewhere else.";
pub const LAST_BACKUP: &str = "Last backup";
pub const NO_BACKUP: &str = "No backup was made on this device yet.";
pub const BACKUP_NOW: &str = "Make a backup";
pub const SAVE_ALL: &str = "Save all jobs to a file";
pub const SAVE_CSV: &str = "Readings as a table (CSV)";
pub const IMPORT: &str = "Jobs from a file";
pub const IMPORT_WHAT: &str = "First you see what would change. A job that is already here is joined with its copy, reading by reading. Nothing is written over.";
pub const IMPORT_FILE: &str = "File with one job or many";
pub const PREVIEW: &str = "This would change:";
pub const TAKE_ALL: &str = "Take these changes";
pub const NOT_TAKEN: &str = "Leave all as it is";
pub const PARTLY_REPAIRED: &str = "something in it had to be repaired";
pub const BIN: &str = "Bin";
pub const BIN_WHAT: &str = "Jobs and cold drops stay here until you empty the bin.";
pub const INTO_BIN: &str = "Put this job into the bin";
pub const IN_BIN: &str = "This job is in the bin.";
pub const OUT_OF_BIN: &str = "Take out of the bin";
pub const EMPTY_BIN: &str = "Empty the bin";
pub const EMPTY_BIN_SURE: &str =
    "All that is listed here is then gone for good, with every reading.";
pub const EMPTY_BIN_YES: &str = "Yes, delete them";
pub const EMPTY_BIN_NO: &str = "No, keep them";
pub const SEARCH: &str = "Search: customer, engine, date, state";
pub const NONE_FOUND: &str = "No job has all of these words.";

/// Heads of the table of readings; units are added.
pub const CSV_HEADS: [&str; 16] = [
    "Job: name (text)",
    "Reading: whose (text)",
    "Reading: what (text)",
    "Number: length",
    "Number: temperature",
    "Number: pressure",
    "Number: force",
    "Number: time",
    "Number: plain",
    "Number: roughness",
    "Number: volume",
    "Number: torque",
    "As typed: value (text)",
    "As typed: unit (text)",
    "As typed: when (date and time here)",
    "As typed: kept though it was asked about (x)",
];
pub const CSV_NO_UNIT: &str = "no unit";

/// What a file is that cannot be used.
#[must_use]
pub fn file_fault(fault: &FileFault) -> String {
    match fault {
        FileFault::TooLong => {
            "This file is longer than 32 MB. It is not a file of jobs. Nothing was changed.".into()
        }
        FileFault::Unreadable(why) => format!(
            "No job can be read from this file: {}. Nothing was changed.",
            super::unreadable(*why)
        ),
        FileFault::Newer(version) => format!(
            "This file was written by a later version of this page (format {version}). Take the new version of the page first. Nothing was changed."
        ),
    }
}

/// What would come of a job in a file.
#[must_use]
pub fn outcome(outcome: &Outcome) -> String {
    match outcome {
        Outcome::New => "is not here yet and would be added".into(),
        Outcome::Same => "is here already, nothing would change".into(),
        Outcome::Joins(values, 0) => format!("joined with the one here, {values} values change"),
        Outcome::Joins(values, both) => format!(
            "joined with the one here, {values} values change, {both} places then have two values to choose from"
        ),
        Outcome::Newer(version) => {
            format!("written by a later version of this page (format {version}), cannot be taken")
        }
        Outcome::Unreadable(why) => format!("cannot be taken, {}", super::unreadable(*why)),
    }
}

/// How many jobs were taken.
#[must_use]
pub fn taken(count: usize) -> String {
    match count {
        1 => "One job was taken.".into(),
        count => format!("{count} jobs were taken."),
    }
}

/// The button under a long list.
#[must_use]
pub fn more_jobs(shown: usize, all: usize) -> String {
    format!("{shown} of {all} shown: show more")
}

/// A calm word on the last backup.
#[must_use]
pub fn reminder(due: Reminder) -> String {
    let jobs = match due.jobs {
        1 => "one job".to_owned(),
        jobs => format!("{jobs} jobs"),
    };
    match due.days {
        Some(days) => format!("Last backup {days} days ago, {jobs} changed since."),
        None => format!("No backup yet of {jobs} on this device."),
    }
}

pub const FLOOR_SHEET: &str = "Floor sheet";
pub const FLOOR_WHAT: &str =
    "Sleeve and block at one temperature. Depth from the deck beside the bore.";
pub const HONE_TO: &str = "Hone the bore to";
pub const CUT_TO: &str = "Cut the ledge to a depth of";
pub const STANDS_PROUD: &str = "Sleeve to stand proud";
pub const STEPS_NOT_DONE: &str = "Steps not done";
pub const NEW_DECK_HEIGHT: &str = "height above the main line after this cut";
pub const RECORD_CAUTION: &str =
    "Seated and in the band mean: within the limits named above, by the readings in this record.";
pub const GASKET_UNKNOWN: &str = "Head gasket to buy: not known, no piston was measured.";
pub const QR_LABEL: &str = "Code with the essentials of this record";
pub const QR_CAPTION: &str = "The essentials of this record, for a phone's camera.";
pub const HOME_CHANCE: &str = "Home, chance";
pub const QR_OPENS_LABEL: &str = "Code that opens this record";
pub const QR_OPENS: &str = "Opens this record on a device that has the job.";
pub const QR_HEAD: &str = "COLDSEAT RECORD";

/// The gasket to buy.
#[must_use]
pub fn gasket(gasket: &Gasket, units: UnitSystem) -> String {
    let show = |l: coldseat_core::ask::Length| length(l.as_m(), units);
    let most = show(gasket.protrusion);
    let Some(least) = gasket.least.map(show) else {
        return format!(
            "Head gasket to buy: largest protrusion {most}; the least clearance to the head is not entered."
        );
    };
    let entered = match (gasket.entered.map(show), gasket.suffices()) {
        (Some(entered), Some(true)) => format!("; {entered} as entered is thick enough"),
        (Some(entered), _) => format!("; {entered} AS ENTERED IS TOO THIN"),
        (None, _) => String::new(),
    };
    let grade = match gasket.grade.map(|grade| grade.map(show)) {
        None => String::new(),
        Some(Some(grade)) => format!("the grade of {grade}: "),
        Some(None) => "NONE of the grades entered is thick enough: ".to_owned(),
    };
    format!(
        "Head gasket to buy: {grade}at least {least} compressed (largest protrusion {most}){entered}."
    )
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
        format!("{title} (cylinder {})", holes.join(", "))
    } else if !decks.is_empty() && decks.len() < banks {
        format!("{title} (deck {})", decks.join(", "))
    } else {
        title.to_owned()
    }
}

pub const LEARNT: &str = "What your jobs show";
pub const LEARNT_WHAT: &str =
    "From jobs in which every sleeve is home, finished or not. The latest sixty count.";
pub const NOTHING_LEARNT: &str = "Nothing yet: a job counts when every sleeve in it is home.";
pub const FEW_DATA: &str = "Few values: do not rely on this yet.";
pub const OFFER_FEW: &str =
    "From only a few holes: the spread is hardly known yet. Shown, not recommended.";
pub const OFFER: &str = "For the next job";
pub const OFFER_TAKE: &str = "Use for new jobs";
pub const HONE_TAKE: &str = "Use this rate for new jobs";
pub const OFFER_TAKEN: &str =
    "New engines begin with these numbers. Jobs already started keep their own.";

/// What jobs show.
#[must_use]
pub const fn lesson(lesson: Lesson) -> &'static str {
    match lesson {
        Lesson::Feed => "Counterbore depth against target depth (plus: too deep)",
        Lesson::Fit => "Fit against the middle of its band (plus: too tight)",
        Lesson::DropFree => "Predicted clearance of sleeves that dropped freely",
        Lesson::DropDragged => "Predicted clearance of sleeves that dragged",
        Lesson::DropStuck => "Predicted clearance of sleeves that stuck",
        Lesson::Settling => "Height lost from first pull to last",
        Lesson::Hone => "Taken off by ten strokes of the hone (diameter)",
    }
}

/// Number, mean, spread and interval of a lesson.
#[must_use]
pub fn lesson_numbers(series: &Series, units: UnitSystem) -> String {
    let n = series.values.len();
    let Some(s) = series.scatter else {
        return match series.values.first() {
            Some(only) => format!("One value: {}", length(only.as_m(), units)),
            None => String::new(),
        };
    };
    let show = |l: coldseat_core::ask::Length| length(l.as_m(), units);
    format!(
        "{n} values, mean {}, spread (1 sd) {}; 95 % of the next ones lie between {} and {} (95 % sure)",
        show(s.mean),
        show(s.sd),
        show(s.low),
        show(s.high)
    )
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
    match jobs {
        1 => "From one job.".into(),
        jobs => format!("From {jobs} jobs."),
    }
}

/// What the shop's feeds offer.
#[must_use]
pub fn offer(offer: &Offer, units: UnitSystem) -> String {
    let show = |l: coldseat_core::ask::Length| length(l.as_m(), units);
    format!(
        "By your last {} counterbores the feed spreads by {}. With your clean-up, planned cut and risk, a flange needs at least {} proud. Aim for {}. The maker's sheet wins.",
        offer.n,
        show(offer.feed_sd),
        show(offer.least),
        show(offer.target)
    )
}

/// What the shop's own holes offer for its hone.
#[must_use]
pub fn hone_offer(offer: &HoneOffer, units: UnitSystem) -> String {
    format!(
        "By your last {} holes, ten strokes of the hone take {} off the diameter. The strokes still to go can be calculated from it.",
        offer.n,
        length(offer.rate.as_m(), units)
    )
}

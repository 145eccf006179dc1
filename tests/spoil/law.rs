//! What may become of verdicts when one entry is spoilt.

use coldseat_core::job::assess::{Assessed, Whole, assess_job};
use coldseat_core::job::check::{Checked, Sheet, check};
use coldseat_core::job::deck::{Lock, lock, plan};
use coldseat_core::job::engine::preset_si;
use coldseat_core::job::ledger::Rival;
use coldseat_core::job::loads::gauge_most;
use coldseat_core::job::model::reading::{Spot, Standing};
use coldseat_core::job::model::stand::Stand;
use coldseat_core::job::step::StepId;
use coldseat_core::job::steps::together::DeckMemory;
use coldseat_core::job::verdict::{CylinderReport, Next, Signal, StepReport};
use coldseat_core::job::{Entry, Field, Job, Owner, Place};
use coldseat_core::quantity::report::Level;
use coldseat_tests::share_of;
use std::collections::BTreeMap;

/// What is done to an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Blow {
    /// It is typed over by something that is no number in its range.
    Spoil(&'static str),
    /// It is cleared.
    Empty,
    /// Another device says another thing.
    Dispute,
}

/// A slip of the thumb, a torn reading, a number beyond every range.
const SPOILT: [&str; 3] = ["0.2o90", "-", "-9999999"];

/// How much was tried.
#[derive(Debug, Default)]
pub struct Tally {
    /// Entries spoilt.
    pub tried: usize,
    /// Of them, those that took a `go` away somewhere.
    pub took_a_go: usize,
}

/// A breach.
#[derive(Debug)]
#[allow(dead_code)] // read by whoever the test fails for
pub struct Broken {
    job: String,
    place: Place,
    blow: Blow,
    what: String,
}

/// Everything a job says.
struct Said {
    reports: Vec<CylinderReport>,
    whole: Whole,
    locks: Vec<Lock>,
    most: Vec<Option<f64>>,
    cleans_up: Vec<bool>,
}

fn said(job: &Job, memory: &mut DeckMemory) -> Said {
    let Assessed {
        cylinders: reports,
        whole,
        ..
    } = assess_job(job, memory);
    let banks = 0..job.engine.banks();
    Said {
        locks: banks
            .clone()
            .map(|bank| lock(job, &reports, bank))
            .collect(),
        most: (1..=job.engine.cylinders)
            .map(|cylinder| match gauge_most(job, cylinder) {
                Standing::Known((most, _)) => Some(most.as_pa()),
                _ => None,
            })
            .collect(),
        cleans_up: banks
            .map(|bank| plan(job, bank).is_ok_and(|plan| plan.cleans_up()))
            .collect(),
        reports,
        whole,
    }
}

impl Said {
    /// Each step that is there in both, as it was and as it is: other sleeves have
    /// other steps.
    fn with<'a>(
        &'a self,
        after: &'a Self,
    ) -> impl Iterator<Item = (Owner, &'a StepReport, &'a StepReport)> {
        let now: BTreeMap<(Owner, StepId), &StepReport> = after
            .steps()
            .map(|(owner, step)| ((owner, step.id), step))
            .collect();
        self.steps()
            .filter_map(move |(owner, b)| Some((owner, b, *now.get(&(owner, b.id))?)))
    }

    fn steps(&self) -> impl Iterator<Item = (Owner, &StepReport)> {
        let cylinders = self.reports.iter().flat_map(|report| {
            let owner = Owner::Cylinder(report.cylinder);
            report.steps.iter().map(move |step| (owner, step))
        });
        let whole = self
            .whole
            .iter()
            .flat_map(|(owner, steps)| steps.iter().map(move |step| (*owner, step)));
        cylinders.chain(whole)
    }
}

/// Worse is less. A deck that is locked lets the hand do nothing.
fn rank(step: &StepReport) -> u8 {
    match step.signal {
        _ if step.next == Next::Advice(StepId::Deck, Signal::Wait) => 0,
        Signal::Stop => 0,
        Signal::Look => 1,
        Signal::None | Signal::Wait | Signal::Marked => 2,
        Signal::Go => 3,
    }
}

pub fn struck(job: &Job, place: Place, blow: Blow) -> Job {
    let mut job = job.clone();
    let entry = job.entries.get(place).unwrap().clone();
    match blow {
        Blow::Spoil(text) => {
            job.entries.put(place, Entry::new(text, entry.unit, 9));
        }
        Blow::Empty => {
            job.entries.put(place, Entry::new("", entry.unit, 9));
        }
        Blow::Dispute => {
            let unit = serde_json::to_value(entry.unit).unwrap();
            let other = Rival {
                value: serde_json::json!([format!("{}1", entry.text), unit, 5]),
                at: 0,
                by: None,
            };
            job.ledger.rivals.insert(place.path(), vec![other]);
        }
    }
    job
}

/// Strikes every entry of a job in every way.
pub fn hold(name: &str, job: &Job, tally: &mut Tally, broken: &mut Vec<Broken>) {
    let mut memory = DeckMemory::default();
    let before = said(job, &mut memory);
    let places: Vec<Place> = job.entries.iter().map(|(place, _)| *place).collect();
    // Of a random job every second entry: there are hundreds of them.
    let every = if name.contains("decked") || name.contains("proud") {
        3
    } else {
        usize::from(name.starts_with("random")) + 1
    };
    // For the hand between two changes a third of them.
    let thinned = if share_of(100) == 100 { 1 } else { 3 };
    for (nth, place) in places.into_iter().enumerate().step_by(every * thinned) {
        let spoilt = Blow::Spoil(SPOILT[nth % SPOILT.len()]);
        // Clearing what cannot be used, or is asked about, mends it; a limit
        // that is cleared is as usual again, and usual may be wider. So is a sleeve
        // that was measured cold: the table of its iron stands again, as offered. Sleeves
        // whose kind is cleared are flanged again, those whose ends are are decked, as before
        // anybody chose: others. Without a shim of its own a hole has the engine's again.
        let mends = !matches!(check(&Sheet::of(job), place), Checked::Good(_))
            || preset_si(place.field, job.engine.units).is_some()
            || matches!(
                place.field,
                Field::ColdOd | Field::SleeveKind | Field::SleeveEnds | Field::ShimHere
            );
        for blow in [spoilt, Blow::Empty, Blow::Dispute] {
            if mends && blow == Blow::Empty {
                continue;
            }
            let after = said(&struck(job, place, blow), &mut memory);
            tally.tried += 1;
            let lost = before
                .with(&after)
                .any(|(_, b, a)| b.signal == Signal::Go && a.signal != Signal::Go);
            tally.took_a_go += usize::from(lost);
            let stand = job.stand().ok();
            compare(&before, &after, (place, stand), blow, &mut |what| {
                broken.push(Broken {
                    job: name.to_owned(),
                    place,
                    blow,
                    what,
                });
            });
        }
    }
}

/// Whether a deck may be cut without a word.
const fn is_green(lock: &Lock) -> bool {
    matches!(lock, Lock::Open | Lock::OpenBeside(_))
}

fn compare(
    before: &Said,
    after: &Said,
    (place, stand): (Place, Option<Stand>),
    blow: Blow,
    breach: &mut dyn FnMut(String),
) {
    for (owner, b, a) in before.with(after) {
        // The report sums up what the others say, and a stop that asks to be
        // measured again stops no more.
        let sums_up = a.id == StepId::Report && blow == Blow::Empty && a.signal != Signal::Go;
        // And a warm height that repeats what the seat check says, itself held.
        let repeats = a.next == Next::PulledHome && blow == Blow::Empty;
        if let Some(what) = better(owner, b, a, place, blow).filter(|_| !sums_up && !repeats) {
            breach(format!("{owner:?} {:?}: {what}", b.id));
        }
        // Spoilt or in dispute it is named, where it is a reading of the step.
        let asked = stand.is_none_or(|stand| stand.asks(a.id, place.field));
        let own = owner == place.owner && asked && a.id.spec().fields.contains(&place.field);
        let named = a.unusable.iter().any(|u| u.spot == Spot::Reading(place));
        if own && blow != Blow::Empty && !named {
            breach(format!("{owner:?} {:?} does not name it", a.id));
        }
        // Nobody cuts to a number that comes out of an entry that is spoilt.
        if let Standing::Known(to) = &a.work_to
            && a.work_to != b.work_to
            && !(blow == Blow::Empty && to.taken.is_some())
        {
            breach(format!("{owner:?} {:?} is worked to {to:?}", a.id));
        }
        if blow != Blow::Empty && a.signal == Signal::Go && a.number != b.number {
            breach(format!("{owner:?} {:?}: another number in green", a.id));
        }
    }
    for (b, a) in before.reports.iter().zip(&after.reports) {
        let taken_back = || {
            let seat = b.step(StepId::Seat);
            let other = place.owner != Owner::Cylinder(a.cylinder);
            blow == Blow::Empty && (other || seat.is_some_and(|s| waited(s, place)))
        };
        if a.is_seated() && !b.is_seated() && !taken_back() {
            breach(format!("cylinder {} becomes seated", a.cylinder));
        }
    }
    for (bank, (b, a)) in before.locks.iter().zip(&after.locks).enumerate() {
        if is_green(a) && !is_green(b) {
            breach(format!("deck {bank} opens"));
        }
    }
    for (at, (b, a)) in before.most.iter().zip(&after.most).enumerate() {
        let rises = match (b, a) {
            (Some(b), Some(a)) => *a > b * (1.0 + 1e-9),
            (None, Some(_)) => true,
            (_, None) => false,
        };
        // What is no limit of a pull cannot make one known.
        if rises {
            breach(format!(
                "the highest pull of hole {} rises {b:?} {a:?}",
                at + 1
            ));
        }
    }
    for (bank, (b, a)) in before.cleans_up.iter().zip(&after.cleans_up).enumerate() {
        if *a && !*b {
            breach(format!("the plan of deck {bank} now cleans up"));
        }
    }
}

/// The three readings of a pull.
const PULL: [Field; 3] = [Field::PullGauge, Field::PullLoaded, Field::PullReleased];

/// What the engine's sheet says of one thing together: begun with one, it asks for the
/// rest.
const TOGETHER: [&[Field]; 5] = [
    &PULL,
    &[
        Field::FromDeckBefore,
        Field::FromDeckLeast,
        Field::FromDeckMost,
    ],
    &[Field::BlockCutSoFar, Field::BlockCutMost],
    &[Field::HeldTorque, Field::HeldDown],
    &[
        Field::DeckFinishKind,
        Field::DeckFinishMost,
        Field::DeckFinish,
    ],
];

/// Whether a step waited for the rest of the measurement that an entry belongs
/// to.
fn waited(b: &StepReport, place: Place) -> bool {
    let of_it = |field: Field| {
        let both = |group: &&[Field]| group.contains(&field) && group.contains(&place.field);
        field == place.field || TOGETHER.iter().any(both)
    };
    matches!(b.next, Next::Measure(missing) if of_it(missing.field))
        || b.lacks.iter().any(|missing| of_it(missing.field))
}

fn better(
    owner: Owner,
    b: &StepReport,
    a: &StepReport,
    place: Place,
    blow: Blow,
) -> Option<String> {
    if rank(a) <= rank(b) {
        return None;
    }
    let told = |step: &StepReport| match step.next {
        Next::Mend(spot) => spot == Spot::Reading(place),
        Next::Measure(missing) => missing.field == place.field,
        _ => false,
    };
    // The stop was the entry's own: the step says to mend or to measure it.
    let named = a.unusable.iter().any(|u| u.spot == Spot::Reading(place));
    let own = told(a) || named || a.lacks.iter().any(|m| m.field == place.field);
    if own && rank(a) <= 2 {
        return None;
    }
    // A size that was measured again and is cleared stands as it was worked out,
    // before anybody measured it: it may wait for another, never go.
    if blow == Blow::Empty && place.field == Field::FromDeckAfter && rank(a) <= 2 {
        return None;
    }
    // A tick that was never set: what was read before it stands. The page takes one back by
    // another word, which counts as work; only undo makes it gone.
    let again = matches!(b.next, Next::ReadAgain(_));
    if blow == Blow::Empty && place.field == Field::PlanDone && again {
        return None;
    }
    // What the ink said is taken back: as before anybody inked it.
    if blow == Blow::Empty && place.field == Field::InkCheck && b.next == Next::InkBroken {
        return None;
    }
    // A step that has nothing measured any more has nothing to say.
    if blow == Blow::Empty && !a.begun && rank(a) <= 2 {
        return None;
    }
    // A measurement that waited for its rest is taken back whole.
    if blow == Blow::Empty && waited(b, place) {
        return None;
    }
    let odd = |step: &StepReport| {
        step.id == StepId::Pull
            && step
                .findings
                .iter()
                .any(|f| f.level == Level::Look && f.code.id() == "odd_return")
    };
    // A question that rests on a comparison goes with what it compared with.
    let asked = b.questioned.iter().any(|p| !a.questioned.contains(p));
    if asked && (blow == Blow::Empty || place.owner != owner) {
        return None;
    }
    // What a later step disproved it disproves no more without its reading.
    if blow == Blow::Empty && matches!(b.next, Next::ProvedWrong(_)) {
        return None;
    }
    // Sleeves of a deck are judged together: what another hole told of this one
    // goes with its reading, and the deck is locked by that hole.
    let other = owner != place.owner && matches!(place.owner, Owner::Cylinder(_));
    if blow == Blow::Empty && other && b.id == StepId::Seat {
        return None;
    }
    // What rests on the other holes' readings goes with them.
    if blow == Blow::Empty && odd(b) && !odd(a) {
        return None;
    }
    Some(format!(
        "{:?} {:?} became {:?} {:?}",
        b.signal, b.next, a.signal, a.next
    ))
}

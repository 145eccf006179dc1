//! Copies of a job joined: whatever was typed, marked, chosen and taken back on
//! three devices, and in whatever order the copies meet, nothing is lost and
//! all come to the same.
//!
//! The laws are those of a state-based replicated data type (Shapiro et al.,
//! INRIA RR-7506, 2011, section 2.3.1): a join is commutative, associative and
//! idempotent. What "nothing is lost" means is worked out here on its own, from
//! what each device did.

use coldseat_core::document::edit::{History, Stay};
use coldseat_core::document::merge::{choose, conflicts, merge, merge_since};
use coldseat_core::document::{Body, Document, Restored, restore, write};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::step::{Mark, StepId};
use coldseat_core::job::{Entry, Field, Job, Owner, Place};
use coldseat_core::quantity::parse::Unit;
use proptest::prelude::*;
use std::collections::BTreeSet;

/// What a person does with a copy.
#[derive(Clone, Debug)]
enum Deed {
    Type(u8, u16),
    Clear(u8),
    Mark(u8),
    Customer(u16),
    LeaveOut(u8),
    Undo,
    Redo,
    Choose(usize),
    /// Takes over the copy of another device.
    Meet(usize),
}

fn deed() -> impl Strategy<Value = Deed> {
    prop_oneof![
        6 => (0..4_u8, any::<u16>()).prop_map(|(p, n)| Deed::Type(p, n)),
        1 => (0..4_u8).prop_map(Deed::Clear),
        1 => (1..4_u8).prop_map(Deed::Mark),
        1 => (0..5_u16).prop_map(Deed::Customer),
        1 => (1..6_u8).prop_map(Deed::LeaveOut),
        1 => Just(Deed::Undo),
        1 => Just(Deed::Redo),
        1 => (0..3_usize).prop_map(Deed::Choose),
        1 => (0..3_usize).prop_map(Deed::Meet),
    ]
}

struct Device {
    document: Document,
    history: History,
}

impl Device {
    fn job(&self) -> &Job {
        match &self.document.body {
            Body::Job(job) => job,
            Body::Shop(_) => panic!("a shop"),
        }
    }
    fn job_mut(&mut self) -> &mut Job {
        match &mut self.document.body {
            Body::Job(job) => job,
            Body::Shop(_) => panic!("a shop"),
        }
    }
}

fn place(which: u8) -> Place {
    match which {
        0 => Place::of_cylinder(1, Field::BoreD, 0),
        1 => Place::of_cylinder(3, Field::SeatHeight, 2),
        2 => Place::of_engine(Field::Pitch),
        _ => Place::of_bank(0, Field::LowSpot, 1),
    }
}

fn begun() -> Document {
    let job = Demo::InchFive.job(1_700_000_000_000);
    Document::new(Body::Job(Box::new(job)), 1_700_000_000_000)
}

fn job_of(document: &Document) -> &Job {
    match &document.body {
        Body::Job(job) => job,
        Body::Shop(_) => panic!("a shop"),
    }
}

/// Three devices that begin with one copy and do things by turns.
fn live(deeds: &[(usize, Deed)]) -> Vec<Device> {
    let mut devices: Vec<Device> = (0..3)
        .map(|_| {
            let document = begun();
            let history = History::of(job_of(&document));
            Device { document, history }
        })
        .collect();
    for (turn, (who, deed)) in deeds.iter().enumerate() {
        // Each device has a clock of its own; two may read the same.
        let at = 1_700_000_001_000 + (turn as u64 / 2) * 1000;
        if let Deed::Meet(whom) = deed {
            let other = devices[*whom].document.clone();
            let device = &mut devices[*who];
            device.document = merge(&device.document, &other).expect("two jobs");
            let job = device.job().clone();
            device.history.take_over(&job);
            continue;
        }
        let device = &mut devices[*who];
        let mut history = device.history.clone();
        let job = device.job_mut();
        match deed {
            Deed::Type(which, number) => {
                let text = format!("4.{number:05}");
                job.entries
                    .put(place(*which), Entry::new(text, Unit::Inch, at));
            }
            Deed::Clear(which) => {
                job.entries
                    .put(place(*which), Entry::new("", Unit::Inch, at));
            }
            Deed::Mark(cylinder) => {
                let mark = Some(Mark::Skipped(format!("at {at}")));
                job.set_mark(Owner::Cylinder(*cylinder), StepId::Wall, mark, at);
            }
            Deed::Customer(number) => job.customer = format!("customer {number}"),
            Deed::LeaveOut(cylinder) => job.left_out = vec![*cylinder],
            Deed::Undo => drop(history.undo(job, at)),
            Deed::Redo => drop(history.redo(job, at)),
            Deed::Choose(which) => {
                if let Some(first) = conflicts(job).first() {
                    choose(job, &first.path, *which);
                }
            }
            Deed::Meet(_) => {}
        }
        history.note(job, at, Stay::New);
        device.history = history;
    }
    devices
}

fn joined(a: &Document, b: &Document) -> Document {
    merge(a, b).expect("two jobs")
}

/// Texts that a copy holds at a place, shown or beside.
fn texts(document: &Document, which: u8) -> BTreeSet<String> {
    let job = job_of(document);
    let shown = job.entries.get(place(which)).map(|e| e.text.clone());
    let path = match which {
        0 => "entries/1/bore_d/0",
        1 => "entries/3/seat_height/2",
        2 => "entries/engine/pitch/0",
        _ => "entries/bank1/low_spot/1",
    };
    let beside = job.ledger.rivals.get(path).into_iter().flatten();
    shown
        .into_iter()
        .chain(beside.map(|r| r.value[0].as_str().expect("a text").to_owned()))
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn joining_is_commutative_associative_and_idempotent(
        deeds in prop::collection::vec((0..3_usize, deed()), 0..24)
    ) {
        let devices = live(&deeds);
        let [a, b, c] = [0, 1, 2].map(|i| &devices[i].document);
        let same = |a: &Document, b: &Document| write(a) == write(b);
        prop_assert!(same(&joined(a, b), &joined(b, a)), "not commutative");
        prop_assert!(same(&joined(a, a), a), "not idempotent");
        let left = joined(&joined(a, b), c);
        prop_assert!(same(&left, &joined(a, &joined(b, c))), "not associative");
        for one in [a, b, c] {
            prop_assert!(same(&joined(&left, one), &left), "meeting again changes");
        }
        // And it is a document like any other.
        let read = restore(&write(&left));
        prop_assert!(read == Restored::Valid(left), "does not read");
    }

    /// Two people type into one place without knowing of each other: both
    /// values are there; a value that one of them replaced knowingly is not.
    #[test]
    fn nothing_is_dropped(
        before in prop::collection::vec((0..3_usize, deed()), 0..12),
        mine in prop::collection::vec(deed(), 0..6),
        theirs in prop::collection::vec(deed(), 0..6),
        order in any::<bool>(),
    ) {
        let alone = |deeds: &[Deed], who: usize| -> Vec<(usize, Deed)> {
            deeds
                .iter()
                .filter(|d| !matches!(d, Deed::Meet(_)))
                .map(|d| (who, d.clone()))
                .collect()
        };
        let mut deeds = before;
        let (a, b) = if order { (0, 1) } else { (1, 0) };
        deeds.extend([(a, Deed::Meet(b)), (b, Deed::Meet(a))]);
        let common = live(&deeds)[a].document.clone();
        deeds.extend(alone(&mine, a));
        deeds.extend(alone(&theirs, b));
        let devices = live(&deeds);
        let whole = joined(&devices[a].document, &devices[b].document);
        for which in 0..4 {
            let common = texts(&common, which);
            let found = texts(&whole, which);
            for device in [a, b] {
                let own = texts(&devices[device].document, which);
                // What a device typed anew and still has.
                for text in own.difference(&common) {
                    prop_assert!(found.contains(text), "{text} of {device} is lost");
                }
            }
            // What neither of them touched.
            for text in &common {
                let kept = [a, b].iter().all(|d| texts(&devices[*d].document, which).contains(text));
                if kept {
                    prop_assert!(found.contains(text), "{text} was in both");
                }
            }
        }
    }
}

#[test]
fn two_tabs_take_each_others_changes_without_a_question() {
    let base = job_of(&begun()).clone();
    let (mut mine, mut theirs) = (base.clone(), base.clone());
    let put = |job: &mut Job, which, text: &str, at| {
        job.entries
            .put(place(which), Entry::new(text, Unit::Inch, at));
    };
    put(&mut mine, 0, "4.1", 5);
    put(&mut theirs, 1, "0.002", 6);
    theirs.customer = "the other tab".to_owned();
    let joined = merge_since(&base, &mine, &theirs);
    assert_eq!(
        joined.entries.get(place(0)).map(|e| e.text.as_str()),
        Some("4.1")
    );
    assert_eq!(
        joined.entries.get(place(1)).map(|e| e.text.as_str()),
        Some("0.002")
    );
    assert_eq!(joined.customer, "the other tab");
    assert!(conflicts(&joined).is_empty());
    // Into the same place at the same moment: both stay.
    put(&mut theirs, 0, "4.2", 6);
    let joined = merge_since(&base, &mine, &theirs);
    let both: Vec<String> = conflicts(&joined)[0]
        .values
        .iter()
        .map(|v| v.0.clone())
        .collect();
    assert_eq!(both, ["4.2 in", "4.1 in"]);
}

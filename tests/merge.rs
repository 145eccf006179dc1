//! Copies of a job joined: whatever was typed, marked, chosen and taken back on
//! three devices, and in whatever order the copies meet, nothing is lost and
//! all come to the same.
//!
//! The laws are those of a state-based replicated data type (Shapiro et al.,
//! INRIA RR-7506, 2011, section 2.3.1): a join is commutative, associative and
//! idempotent. What "nothing is lost" means is worked out here on its own, from
//! what each device did.

use coldseat_core::document::edit::{History, Stay};
use coldseat_core::document::merge::{conflicts, merge, merge_papers};
use coldseat_core::document::pen::Pen;
use coldseat_core::document::{Body, Document, Restored, restore, write};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::ledger::Writer;
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
    pen: Pen,
}

impl Device {
    fn job(&self) -> &Job {
        match &self.document.body {
            Body::Job(job) => job,
            Body::Shop(_) | Body::Drop(_) => panic!("no job"),
        }
    }
    fn job_mut(&mut self) -> &mut Job {
        match &mut self.document.body {
            Body::Job(job) => job,
            Body::Shop(_) | Body::Drop(_) => panic!("no job"),
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
        Body::Shop(_) | Body::Drop(_) => panic!("no job"),
    }
}

/// Three devices that begin with one copy and do things by turns.
fn live(deeds: &[(usize, Deed)]) -> Vec<Device> {
    let mut devices: Vec<Device> = (0..3)
        .map(|which| {
            let document = begun();
            Device {
                history: History::of(job_of(&document)),
                document,
                pen: Pen::new(Writer::of(which, 1)),
            }
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
        let mut pen = device.pen.clone();
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
            Deed::Undo => drop(history.undo(job, &mut pen, at)),
            Deed::Redo => drop(history.redo(job, &mut pen, at)),
            Deed::Choose(which) => {
                if let Some(first) = conflicts(job).first() {
                    history.choose(job, &mut pen, at, (&first.path, *which));
                }
            }
            Deed::Meet(_) => {}
        }
        history.note(job, &mut pen, at, Stay::New);
        device.history = history;
        device.pen = pen;
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

/// A copy of the job in a tab of its own, with its history and pen.
struct Tab {
    job: Job,
    history: History,
    pen: Pen,
    now: u64,
}

impl Tab {
    fn open(job: &Job, tab: u32) -> Self {
        Self {
            job: job.clone(),
            history: History::of(job),
            pen: Pen::new(Writer::of(1, tab)),
            now: 1_700_000_001_000 + u64::from(tab),
        }
    }

    fn put(&mut self, which: u8, text: &str, stay: Stay) {
        self.now += 50;
        self.job
            .entries
            .put(place(which), Entry::new(text, Unit::Inch, self.now));
        self.history
            .note(&mut self.job, &mut self.pen, self.now, stay);
    }

    fn undo(&mut self) {
        self.now += 50;
        self.history.undo(&mut self.job, &mut self.pen, self.now);
    }

    fn meet(&mut self, other: &Self) {
        self.job = merge_papers(&self.job, &other.job);
        self.history.take_over(&self.job);
    }

    fn text(&self, which: u8) -> Option<&str> {
        self.job.entries.get(place(which)).map(|e| e.text.as_str())
    }
}

fn two_tabs() -> (Tab, Tab) {
    let job = job_of(&begun()).clone();
    (Tab::open(&job, 1), Tab::open(&job, 2))
}

fn both_meet(a: &mut Tab, b: &mut Tab) {
    a.meet(b);
    b.meet(a);
    assert_eq!(a.job, b.job);
}

#[test]
fn two_tabs_take_each_others_changes_without_a_question() {
    let (mut a, mut b) = two_tabs();
    a.put(0, "4.1", Stay::New);
    b.put(1, "0.002", Stay::New);
    b.job.customer = "the other tab".to_owned();
    b.history.note(&mut b.job, &mut b.pen, b.now, Stay::New);
    both_meet(&mut a, &mut b);
    assert_eq!((a.text(0), a.text(1)), (Some("4.1"), Some("0.002")));
    assert_eq!(a.job.customer, "the other tab");
    assert!(conflicts(&a.job).is_empty());
    // Into the same place in ignorance of each other: both stay.
    a.put(0, "4.11", Stay::New);
    b.put(0, "4.2", Stay::New);
    both_meet(&mut a, &mut b);
    let both: Vec<String> = conflicts(&a.job)[0]
        .values
        .iter()
        .map(|v| v.0.clone())
        .collect();
    assert_eq!(both, ["4.2 in", "4.11 in"]);
    let disputed = a.job.ledger.disputed(&a.job.entries);
    assert_eq!(disputed.len(), 1);
    assert_eq!(disputed[0].place, place(0));
    // Chosen apart from each other, both choices stand.
    for (tab, which) in [(&mut a, 0), (&mut b, 1)] {
        tab.history.choose(
            &mut tab.job,
            &mut tab.pen,
            tab.now,
            ("entries/1/bore_d/0", which),
        );
        assert!(conflicts(&tab.job).is_empty());
    }
    both_meet(&mut a, &mut b);
    assert_eq!(conflicts(&a.job).len(), 1, "one of the choices is lost");
}

/// The third finding: the value of one tab reverted when the other took back
/// what it had typed elsewhere.
#[test]
fn undo_in_one_tab_leaves_what_the_other_typed() {
    let (mut a, mut b) = two_tabs();
    let before = b.text(1).map(str::to_owned);
    a.put(0, "4.3", Stay::New);
    b.put(1, "0.004", Stay::New);
    b.undo();
    both_meet(&mut a, &mut b);
    assert_eq!(a.text(0), Some("4.3"));
    assert_eq!(a.text(1).map(str::to_owned), before);
    b.undo();
    assert_eq!(b.text(0), Some("4.3"));
    assert!(conflicts(&a.job).is_empty());
}

/// The fourth finding: typed, stored, cleared during the same visit while another
/// tab writes; the cleared value came back, and correcting it was a dispute.
#[test]
fn what_was_cleared_stays_cleared_and_correcting_is_no_dispute() {
    for key_by_key in [true, false] {
        let (mut a, mut b) = two_tabs();
        a.put(0, "4.3", Stay::New);
        a.put(0, "4.31", Stay::Same);
        b.meet(&a);
        b.put(1, "0.004", Stay::New);
        if key_by_key {
            for text in ["4.3", "4.", "4"] {
                a.put(0, text, Stay::Same);
            }
        }
        a.put(0, "", Stay::Same);
        both_meet(&mut a, &mut b);
        assert_eq!(a.text(0), None, "it is back");
        a.put(0, "4.32", Stay::New);
        both_meet(&mut a, &mut b);
        assert_eq!(b.text(0), Some("4.32"));
        assert!(conflicts(&a.job).is_empty(), "a dispute about nothing");
    }
}

/// The fifth finding: both typed the same; where one cleared it, the screen was
/// empty and a reload brought it back.
#[test]
fn the_same_typed_twice_is_cleared_once() {
    let (mut a, mut b) = two_tabs();
    a.put(0, "0.3100", Stay::New);
    b.put(0, "0.3100", Stay::New);
    both_meet(&mut a, &mut b);
    assert!(conflicts(&a.job).is_empty());
    a.put(0, "", Stay::New);
    let stored = write(&Document::new(Body::Job(Box::new(a.job.clone())), 5));
    let Restored::Valid(read) = restore(&stored) else {
        panic!("not valid");
    };
    assert_eq!(job_of(&read), &a.job, "the screen is not what is stored");
    assert_eq!(a.text(0), None);
    both_meet(&mut a, &mut b);
    assert_eq!(b.text(0), None);
}

/// What was typed through another's value on the way to a third is no word on
/// the other's.
#[test]
fn typing_through_anothers_value_does_not_settle_the_dispute() {
    let (mut a, mut b) = two_tabs();
    a.put(0, "4.3", Stay::New);
    b.put(0, "4.25", Stay::New);
    both_meet(&mut a, &mut b);
    a.put(0, "4.2", Stay::New);
    a.put(0, "4.25", Stay::Same);
    a.put(0, "4.257", Stay::Same);
    both_meet(&mut a, &mut b);
    let values: Vec<String> = conflicts(&a.job)[0]
        .values
        .iter()
        .map(|v| v.0.clone())
        .collect();
    assert_eq!(values.len(), 2, "{values:?}");
    assert!(values.contains(&"4.257 in".to_owned()), "{values:?}");
}

/// A year's leap of the clock, either way, changes nothing but the dates.
#[test]
fn clocks_apart_by_a_year_lose_nothing() {
    let (mut a, mut b) = two_tabs();
    a.now += 31_536_000_000;
    a.put(0, "4.3", Stay::New);
    a.now -= 31_536_000_000;
    b.meet(&a);
    b.put(0, "4.4", Stay::New);
    a.put(0, "4.35", Stay::New);
    a.put(1, "0.001", Stay::New);
    both_meet(&mut a, &mut b);
    assert_eq!(a.text(1), Some("0.001"));
    assert_eq!(conflicts(&a.job)[0].values.len(), 2);
    // And both write on with their own clocks.
    a.put(1, "0.002", Stay::Same);
    b.meet(&a);
    assert_eq!(b.text(1), Some("0.002"));
    assert!(a.job.entries.get(place(1)).is_some_and(|e| e.at == a.now));
}

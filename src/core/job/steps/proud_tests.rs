//! Heights that are left proud, by hand.

use crate::job::demo::Demo;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::HeldDown;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::job::model::reading::{Spot, Standing};
use crate::job::model::step::{Mark, StepId};
use crate::job::steps::assess::assess_job;
use crate::job::steps::kept_plan::Task;
use crate::job::steps::proud::proud_deck;
use crate::job::steps::together::DeckMemory;
use crate::job::verdict::next::Next;
use crate::job::verdict::proud::ProudLimit;
use crate::job::verdict::report::StepReport;
use crate::job::verdict::signal::Signal;
use crate::quantity::Length;

fn put(job: &mut Job, place: Place, text: &str) {
    let entry = Entry::new(text, job.unit(place.field), 2);
    job.entries.put(place, entry);
}

/// The first demo, its sleeves left proud, four of five; every sleeve reads the
/// heights given, in ten-thousandths of an inch, and nothing else is asked of it
/// here.
fn proud(heights: [[i32; 4]; 4]) -> Job {
    let mut job = Demo::InchFive.job(1);
    for (field, text) in [
        (Field::SleeveEnds, "proud"),
        (Field::ProudLow, "0.0010"),
        (Field::ProudHigh, "0.0060"),
        (Field::SpreadHole, "0.0020"),
        (Field::SpreadNeighbour, "0.0020"),
        (Field::SpreadAll, "0.0035"),
    ] {
        put(&mut job, Place::of_engine(field), text);
    }
    job.left_out = vec![5];
    for (cylinder, four) in (1_u8..).zip(heights) {
        for (index, tenths) in (0_u8..).zip(four) {
            let place = Place::of_cylinder(cylinder, Field::SeatHeight, index);
            let text = format!("{:.4}", f64::from(tenths) / 1e4);
            put(&mut job, place, &text);
        }
    }
    job
}

fn breaches(job: &Job) -> Vec<(ProudLimit, u8, i64)> {
    let deck = proud_deck(job, 0).unwrap();
    let tenths = |l: Length| (l.as_m() / 2.54e-6).round() as i64;
    deck.breaches()
        .map(|b| (b.limit, b.cylinder, tenths(b.by)))
        .collect()
}

/// By hand, in ten-thousandths: every mean is 30, 40, 50 and 45, each sleeve
/// within 10 to 60, neighbours 10, 10 and 5 apart where 20 may be, all 20 where
/// 35 may be: nothing is broken. Then the second sleeve's first clock at 61: one
/// above 60. The third at 10 with 35 elsewhere: 25 apart where 20 may be, 5 over.
/// The last as 5, 15, 15, 15: 5 below 10; mean 12.5, and the third's mean, by then
/// 28.75, is 16.25 from it: within 20. Highest mean 45.25 (61, 40, 40, 40) less
/// 12.5 is 32.75, within 35.
#[test]
fn heights_against_their_limits_by_hand() {
    let good = [[30; 4], [40; 4], [50; 4], [45; 4]];
    let job = proud(good);
    assert_eq!(breaches(&job), []);
    let deck = proud_deck(&job, 0).unwrap();
    let spread = deck.between.known().unwrap().spread;
    assert!((spread.as_thou() - 2.0).abs() < 1e-9);
    let bad = [[30; 4], [61, 40, 40, 40], [10, 35, 35, 35], [5, 15, 15, 15]];
    let told = [
        (ProudLimit::High, 2, 1),
        // 61 less 40.
        (ProudLimit::Hole, 2, 1),
        (ProudLimit::Hole, 3, 5),
        (ProudLimit::Low, 4, 5),
    ];
    assert_eq!(breaches(&proud(bad)), told);
}

/// By hand: means of 15, 36, 50 and 52 ten-thousandths: the first two are 21 apart
/// where 20 may be, all 37 where 35 may be.
#[test]
fn sleeves_against_each_other_by_hand() {
    let job = proud([[15; 4], [36; 4], [50; 4], [52; 4]]);
    let told = [(ProudLimit::Neighbour, 1, 1), (ProudLimit::All, 4, 2)];
    assert_eq!(breaches(&job), told);
    // A sleeve that is not measured is nobody's neighbour, and is asked for.
    let mut job = job;
    put(&mut job, Place::of_cylinder(2, Field::SeatHeight, 3), "");
    assert_eq!(breaches(&job), [(ProudLimit::All, 4, 2)]);
    let deck = proud_deck(&job, 0).unwrap();
    assert!(matches!(deck.holes[1].1, Standing::Missing(m) if m.field == Field::SeatHeight));
}

fn report(job: &Job, owner: Owner, step: StepId) -> StepReport {
    let all = assess_job(job, &mut DeckMemory::default());
    match owner {
        Owner::Cylinder(c) => all.cylinders[usize::from(c) - 1].step(step).cloned(),
        _ => {
            let (_, steps) = all.whole.iter().find(|(o, _)| *o == owner).unwrap();
            steps.iter().find(|s| s.id == step).cloned()
        }
    }
    .unwrap()
}

/// The first demo without its sleeve that is not home, left proud: the others read some
/// 0.0100 in proud, and are home.
fn home() -> Job {
    let mut job = Demo::InchFive.job(1);
    job.left_out = vec![3];
    let read: Vec<Place> = job.entries.iter().map(|(place, _)| *place).collect();
    for place in read {
        if place.owner == Owner::Cylinder(3) {
            put(&mut job, place, "");
        }
    }
    for (field, text) in [
        (Field::SleeveEnds, "proud"),
        (Field::ProudLow, "0.0070"),
        (Field::ProudHigh, "0.0130"),
        (Field::SpreadHole, "0.0030"),
        (Field::SpreadNeighbour, "0.0030"),
        (Field::SpreadAll, "0.0040"),
    ] {
        put(&mut job, Place::of_engine(field), text);
    }
    job
}

#[test]
fn a_job_left_proud_is_not_decked_and_names_each_limit_that_is_missing() {
    let mut job = home();
    let all = assess_job(&job, &mut DeckMemory::default());
    let has = |step| {
        let mut steps = all.whole.iter().flat_map(|(_, steps)| steps);
        steps.any(|s| s.id == step)
    };
    assert!(has(StepId::Heights) && !has(StepId::Deck));
    let deck = report(&job, Owner::Bank(0), StepId::Heights);
    assert_eq!((deck.signal, deck.next), (Signal::Go, Next::ProudGood));
    assert!(deck.is_settled());
    // Where the limit lies below them, each sleeve that is home stops.
    put(&mut job, Place::of_engine(Field::ProudHigh), "0.0080");
    let seat = report(&job, Owner::Cylinder(4), StepId::Seat);
    assert_eq!(seat.signal, Signal::Stop);
    let high = |next| matches!(next, Next::ProudOut(b) if b.limit == ProudLimit::High);
    assert!(high(seat.next), "{:?}", seat.next);
    let deck = report(&job, Owner::Bank(0), StepId::Heights);
    assert!(deck.signal == Signal::Stop && high(deck.next));
    for field in [Field::ProudHigh, Field::SpreadHole, Field::SpreadAll] {
        let mut without = job.clone();
        put(&mut without, Place::of_engine(field), "");
        let deck = report(&without, Owner::Bank(0), StepId::Heights);
        assert_ne!(deck.signal, Signal::Go, "{field:?}");
        let told = deck.lacks.iter().any(|m| m.field == field);
        assert!(told, "{field:?} {deck:?}");
    }
    // It cannot be used: no verdict.
    put(&mut job, Place::of_engine(Field::ProudHigh), "0.00o6");
    let deck = report(&job, Owner::Bank(0), StepId::Heights);
    assert_eq!(deck.signal, Signal::Look);
    assert!(matches!(deck.next, Next::Mend(Spot::Reading(p)) if p.field == Field::ProudHigh));
    // Nor can the choice itself: no step of the deck is good, and the seat is held.
    put(&mut job, Place::of_engine(Field::SleeveEnds), "prowd");
    for (owner, step) in [
        (Owner::Bank(0), StepId::Deck),
        (Owner::Cylinder(4), StepId::Seat),
    ] {
        assert_eq!(report(&job, owner, step).signal, Signal::Look);
    }
}

#[test]
fn a_stated_torque_asks_whether_the_sleeves_were_held() {
    let mut job = proud([[30; 4], [40; 4], [50; 4], [45; 4]]);
    put(&mut job, Place::of_engine(Field::HeldTorque), "90");
    let held = |job: &Job| proud_deck(job, 0).unwrap().held;
    assert!(matches!(held(&job), Standing::Missing(m) if m.field == Field::HeldDown));
    put(&mut job, Place::of_bank(0, Field::HeldDown, 0), "free");
    assert_eq!(held(&job), Standing::Known(HeldDown::Free));
    put(&mut job, Place::of_bank(0, Field::HeldDown, 0), "held");
    assert_eq!(held(&job), Standing::Known(HeldDown::Held));
    // A torque without limits, a range upside down: named where they stand.
    for field in [Field::ProudLow, Field::ProudHigh] {
        put(&mut job, Place::of_engine(field), "");
    }
    let torque = job.reading(Place::of_engine(Field::HeldTorque));
    assert!(torque.number().is_err());
    put(&mut job, Place::of_engine(Field::ProudLow), "0.0060");
    put(&mut job, Place::of_engine(Field::ProudHigh), "0.0010");
    let low = job.reading(Place::of_engine(Field::ProudLow));
    assert!(low.number().is_err());
}

/// By hand: a flange of 0.2190 that is to stand 0.0030 to 0.0050 proud is cut to 0.2140 to
/// 0.2160, the middle 0.2150; with a shim of 0.0015 under it to 0.2155 to 0.2175. At 0.2170
/// it stands 0.0035 proud and is at depth; without the shim 0.0020 proud, 0.0010 too low.
#[test]
fn the_depth_to_cut_to_comes_from_the_limits_by_hand() {
    let mut job = Demo::InchFive.job(1);
    for (field, text) in [
        (Field::SleeveEnds, "proud"),
        (Field::ProudLow, "0.0030"),
        (Field::ProudHigh, "0.0050"),
        (Field::GaugeDepth, "0.0002"),
    ] {
        put(&mut job, Place::of_engine(field), text);
    }
    for index in 0..4 {
        let at = |field| Place::of_cylinder(1, field, index);
        put(&mut job, at(Field::FlangeThickness), "0.2190");
        put(&mut job, at(Field::CounterboreDepth), "0.2170");
    }
    let of = |job: &Job| {
        let step = report(job, Owner::Cylinder(1), StepId::Counterbore);
        let tenths = |m: f64| (m / 2.54e-6).round() as i64;
        let to = step.work_to.known().unwrap();
        let limits = [to.low, Some(to.si), to.high].map(|m| tenths(m.unwrap()));
        (step.signal, step.next, limits)
    };
    let (signal, next, limits) = of(&job);
    assert_eq!((signal, limits), (Signal::Stop, [2140, 2150, 2160]));
    assert!(matches!(next, Next::TooDeep(by) if (by.as_thou() - 1.0).abs() < 1e-6));
    put(
        &mut job,
        Place::of_cylinder(1, Field::ShimHere, 0),
        "0.0015",
    );
    let (signal, next, limits) = of(&job);
    // 0.0005 deeper than the middle, more than the 0.0004 of the gauge's band.
    assert_eq!(signal, Signal::Go);
    assert!(matches!(next, Next::InLimits(off) if (off.as_thou() + 0.5).abs() < 1e-6));
    assert_eq!(limits, [2155, 2165, 2175]);
    for index in 0..4 {
        let at = Place::of_cylinder(1, Field::CounterboreDepth, index);
        put(&mut job, at, "0.2165");
    }
    let (signal, next, _) = of(&job);
    assert_eq!((signal, next), (Signal::Go, Next::AtDepth));
    // Too deep by the lower limit alone, 0.2190 + 0.0015 - 0.2180 = 0.0025, 0.0005 under
    // 0.0030, whatever becomes of the upper one.
    for index in 0..4 {
        let at = Place::of_cylinder(1, Field::CounterboreDepth, index);
        put(&mut job, at, "0.2180");
    }
    for high in ["0.0050", "", "x"] {
        put(&mut job, Place::of_engine(Field::ProudHigh), high);
        let step = report(&job, Owner::Cylinder(1), StepId::Counterbore);
        assert_eq!(step.signal, Signal::Stop, "{high:?}");
        let by = |next| matches!(next, Next::TooDeep(by) if (by.as_thou() - 0.5).abs() < 1e-6);
        assert!(by(step.next), "{high:?} {:?}", step.next);
    }
}

/// By hand: two neighbours of 0.2190 at 0.2145 and 0.2165 will stand 0.0045 and 0.0025
/// proud, each within 0.0020 to 0.0050, and 0.0020 apart where 0.0015 may be: 0.0005 too
/// far. The third, not cut yet, at 0.2100 stands 0.0090 proud and is held against nobody.
#[test]
fn depths_that_keep_their_own_limits_and_not_their_neighbours_want_a_look() {
    let mut job = Demo::InchFive.job(1);
    for (field, text) in [
        (Field::SleeveEnds, "proud"),
        (Field::ProudLow, "0.0020"),
        (Field::ProudHigh, "0.0050"),
        (Field::SpreadNeighbour, "0.0015"),
        (Field::SpreadAll, "0.0030"),
        (Field::GaugeDepth, "0.0002"),
    ] {
        put(&mut job, Place::of_engine(field), text);
    }
    job.left_out = vec![4, 5];
    for (cylinder, depth) in [(1, "0.2145"), (2, "0.2165"), (3, "0.2100")] {
        for index in 0..4 {
            let at = |field| Place::of_cylinder(cylinder, field, index);
            put(&mut job, at(Field::FlangeThickness), "0.2190");
            put(&mut job, at(Field::CounterboreDepth), depth);
        }
    }
    for (own, other) in [(1, 2), (2, 1)] {
        let step = report(&job, Owner::Cylinder(own), StepId::Counterbore);
        assert_eq!(step.signal, Signal::Look);
        let far = matches!(step.next, Next::ApartFrom(hole, by)
            if hole == other && (by.as_thou() - 0.5).abs() < 1e-6);
        assert!(far, "{:?}", step.next);
    }
    put(&mut job, Place::of_engine(Field::SpreadNeighbour), "0.0020");
    let step = report(&job, Owner::Cylinder(1), StepId::Counterbore);
    // 0.0045 is 0.0010 above the middle, 0.0035.
    assert_eq!(step.signal, Signal::Go);
    assert!(matches!(step.next, Next::InLimits(off) if (off.as_thou() - 1.0).abs() < 1e-6));
    // A limit that does not read is not a limit that is not there.
    put(&mut job, Place::of_engine(Field::SpreadAll), "x");
    let step = report(&job, Owner::Cylinder(1), StepId::Counterbore);
    assert_eq!(step.signal, Signal::Look);
}

/// By hand, in ten-thousandths: 90 is 30 above 60, and means of 15 and 90 are 75 apart where
/// 20 may be. Each stays a stop whatever is missing or unreadable beside it, and is told
/// first; a limit that is not there breaks nothing.
#[test]
fn a_stop_stays_a_stop_beside_what_is_missing_or_unreadable() {
    let high = proud([[15; 4], [90; 4], [30; 4], [30; 4]]);
    let stops = |job: &Job, at: &str| {
        let deck = report(job, Owner::Bank(0), StepId::Heights);
        assert_eq!(deck.signal, Signal::Stop, "{at} {deck:?}");
        assert!(
            matches!(deck.next, Next::ProudOut(_)),
            "{at} {:?}",
            deck.next
        );
        deck
    };
    stops(&high, "as it is");
    for place in [
        Place::of_engine(Field::ProudLow),
        Place::of_engine(Field::SpreadHole),
        Place::of_engine(Field::SpreadNeighbour),
        Place::of_engine(Field::SpreadAll),
        Place::of_engine(Field::HeldTorque),
        Place::of_cylinder(4, Field::SeatHeight, 0),
        Place::of_cylinder(4, Field::PlanSleeve, 0),
    ] {
        let mut job = high.clone();
        put(&mut job, place, "x");
        let deck = stops(&job, "unreadable");
        assert!(deck.unusable.iter().any(|u| u.spot == Spot::Reading(place)));
        assert!(!deck.is_settled() && !deck.complete);
        let is_optional = [Field::HeldTorque, Field::PlanSleeve].contains(&place.field);
        put(&mut job, place, "");
        let deck = stops(&job, "missing");
        let told = deck.lacks.iter().any(|m| m.field == place.field);
        assert!(told || is_optional, "{place:?} {:?}", deck.lacks);
        let seat = report(&job, Owner::Cylinder(2), StepId::Seat);
        assert_eq!(seat.signal, Signal::Stop, "{place:?}");
    }
    // 15 and 36: 21 apart where 20 may be, and nothing said of all of them.
    let mut near = proud([[15; 4], [36; 4], [50; 4], [48; 4]]);
    put(&mut near, Place::of_engine(Field::SpreadAll), "x");
    let deck = stops(&near, "all unreadable");
    assert!(matches!(deck.next, Next::ProudOut(b) if b.limit == ProudLimit::Neighbour));
}

/// Read free though a torque is stated: read again, and the record is not complete.
#[test]
fn heights_that_were_read_free_wait() {
    let mut job = home();
    put(&mut job, Place::of_engine(Field::HeldTorque), "90");
    for (said, signal) in [("free", Signal::Wait), ("held", Signal::Go)] {
        put(&mut job, Place::of_bank(0, Field::HeldDown, 0), said);
        // Read again since.
        let heights: Vec<(Place, String)> = job
            .entries
            .iter()
            .filter(|(place, _)| place.field == Field::SeatHeight)
            .map(|(place, entry)| (*place, entry.text.clone()))
            .collect();
        for (place, text) in heights {
            put(&mut job, place, &text);
        }
        let deck = report(&job, Owner::Bank(0), StepId::Heights);
        assert_eq!(deck.signal, signal, "{said}");
        assert_eq!(deck.is_settled(), signal == Signal::Go, "{said}");
        let all = assess_job(&job, &mut DeckMemory::default());
        let open = crate::job::advice::handover::not_done(&job, &all.cylinders);
        let is_open = open.iter().any(|(step, _)| *step == StepId::Heights);
        assert_eq!(is_open, signal == Signal::Wait, "{said}");
        let held = proud_deck(&job, 0).unwrap().is_all_held();
        assert_eq!(held, signal == Signal::Go, "{said}");
        job.set_mark(Owner::Bank(0), StepId::Heights, Some(Mark::Done), 7);
        let marked = report(&job, Owner::Bank(0), StepId::Heights);
        assert_eq!(marked.signal, signal, "{said}, no mark goes over it");
    }
    // A limit that is missing, or that does not read: nobody is held against it.
    for text in ["", "x"] {
        put(&mut job, Place::of_engine(Field::SpreadAll), text);
        assert!(!proud_deck(&job, 0).unwrap().is_all_held());
    }
}

/// A pass of 0.0010 in a cut of 0.0040 at most, or of 0.0040, is one; of 0 or of 0.0041 it
/// is none. Where nothing may be cut no pass is asked for.
#[test]
fn a_pass_that_makes_no_cut_is_named_at_its_field() {
    let mut job = Demo::InchFive.job(1);
    let step = Place::of_engine(Field::LedgeCutStep);
    for (most, pass, is_good) in [
        ("0.0040", "0.0010", true),
        ("0.0040", "0.0040", true),
        ("0.0040", "0.0041", false),
        ("0.0040", "0", false),
        ("0", "0", true),
        ("", "0.0010", true),
    ] {
        put(&mut job, Place::of_engine(Field::LedgeCutMost), most);
        put(&mut job, step, pass);
        assert_eq!(
            job.reading(step).number().is_ok(),
            is_good,
            "{pass} of {most}"
        );
    }
}

fn put_at(job: &mut Job, place: Place, text: &str, at: u64) {
    let entry = Entry::new(text, job.unit(place.field), at);
    job.entries.put(place, entry);
}

/// Reads a field of a sleeve once more, as it was.
fn read_again(job: &mut Job, cylinder: u8, field: Field, at: u64) {
    for place in Place::all(Owner::Cylinder(cylinder), field) {
        if let Some(text) = job.entries.get(place).map(|entry| entry.text.clone()) {
            put_at(job, place, &text, at);
        }
    }
}

fn asks(next: Next, cylinder: u8) -> bool {
    let owner = Owner::Cylinder(cylinder);
    matches!(next, Next::ReadAgain(m) if (m.owner, m.field, m.places) == (owner, Field::SeatHeight, 4))
}

/// The heights were read at 1 and the sleeve was changed at 100, by a plan that is given
/// up since: its four clocks and its pulls are asked for again, and count when read at 100.
#[test]
fn heights_read_before_a_task_was_ticked_are_asked_for_again() {
    let mut job = home();
    put_at(&mut job, Task::Sleeve.place(2), "done 0123", 100);
    let deck = report(&job, Owner::Bank(0), StepId::Heights);
    assert!(deck.signal == Signal::Wait && asks(deck.next, 2));
    let seat = report(&job, Owner::Cylinder(2), StepId::Seat);
    assert!(seat.signal == Signal::Wait && asks(seat.next, 2) && !seat.is_settled());
    let seat = report(&job, Owner::Cylinder(1), StepId::Seat);
    assert_eq!(seat.signal, Signal::Go);
    read_again(&mut job, 2, Field::SeatHeight, 100);
    // A sleeve that was out is pulled down anew: home is what comes first.
    let deck = report(&job, Owner::Bank(0), StepId::Heights);
    assert_eq!(
        (deck.signal, deck.next),
        (Signal::Wait, Next::Advice(StepId::Heights, Signal::Wait))
    );
    read_again(&mut job, 2, Field::PullReleased, 100);
    let deck = report(&job, Owner::Bank(0), StepId::Heights);
    assert_eq!((deck.signal, deck.next), (Signal::Go, Next::ProudGood));
}

/// Four sleeves of four clocks are read at 1; that they were held down is said at 99: all
/// sixteen heights are asked for again.
#[test]
fn heights_read_before_the_sleeves_were_held_are_asked_for_again() {
    let mut job = home();
    put(&mut job, Place::of_engine(Field::HeldTorque), "90");
    let held = Place::of_bank(0, Field::HeldDown, 0);
    put_at(&mut job, held, "held", 1);
    let deck = |job: &Job| report(job, Owner::Bank(0), StepId::Heights);
    assert_eq!(deck(&job).signal, Signal::Go);
    put(&mut job, held, "free");
    assert_eq!(deck(&job).next, Next::ReadFree);
    put_at(&mut job, held, "held", 99);
    let asked = deck(&job);
    assert!(asked.signal == Signal::Wait && asks(asked.next, 1));
    let heights = asked.lacks.iter().find(|m| m.field == Field::SeatHeight);
    assert_eq!(heights.unwrap().places, 16);
    for cylinder in [1, 2, 4, 5] {
        assert_eq!(deck(&job).signal, Signal::Wait);
        read_again(&mut job, cylinder, Field::SeatHeight, 99);
    }
    assert_eq!(deck(&job).signal, Signal::Go);
}

/// By hand, in ten-thousandths: planned 10, 37, 37, 36 and measured 30 all round. The
/// means are alike (120 / 4); the first clock is 20 higher, the others 7, 7, 6 lower.
#[test]
fn a_plan_is_compared_clock_by_clock() {
    let mut job = proud([[30; 4], [40; 4], [50; 4], [45; 4]]);
    let plan = [[10, 37, 37, 36], [40; 4], [50; 4], [45; 4]];
    for (cylinder, heights) in (1_u8..).zip(plan) {
        let at = |field, index| Place::of_cylinder(cylinder, field, index);
        put(&mut job, at(Field::PlanSleeve, 0), &cylinder.to_string());
        for field in [Field::PlanTurn, Field::PlanShim, Field::PlanCut] {
            put(&mut job, at(field, 0), "0");
        }
        for (index, tenths) in (0_u8..).zip(heights) {
            let text = format!("{:.4}", f64::from(tenths) / 1e4);
            put(&mut job, at(Field::PlanHeight, index), &text);
        }
    }
    let deck = report(&job, Owner::Bank(0), StepId::Heights);
    assert_eq!(deck.signal, Signal::Look, "{deck:?}");
    assert!(matches!(deck.next, Next::OffPlan(1, off) if (off.as_thou() - 2.0).abs() < 1e-6));
}

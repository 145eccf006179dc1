//! Heights that are left proud, by hand.

use crate::job::demo::Demo;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::HeldDown;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::job::model::reading::{Spot, Standing};
use crate::job::model::step::StepId;
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
    assert_eq!((signal, next), (Signal::Go, Next::AtDepth));
    assert_eq!(limits, [2155, 2165, 2175]);
}

fn put_at(job: &mut Job, place: Place, text: &str, at: u64) {
    let entry = Entry::new(text, job.unit(place.field), at);
    job.entries.put(place, entry);
}

/// Reads the heights of a sleeve once more, as they were.
fn read_again(job: &mut Job, cylinder: u8, at: u64) {
    for place in Place::all(Owner::Cylinder(cylinder), Field::SeatHeight) {
        let text = job.entries.get(place).unwrap().text.clone();
        put_at(job, place, &text, at);
    }
}

fn asks(next: Next, cylinder: u8) -> bool {
    let owner = Owner::Cylinder(cylinder);
    matches!(next, Next::Measure(m) if (m.owner, m.field, m.places) == (owner, Field::SeatHeight, 4))
}

/// The heights were read at 1 and the sleeve was changed at 100, by a plan that is given
/// up since: its four clocks are asked for again, and count when read at 100.
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
    read_again(&mut job, 2, 100);
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
        read_again(&mut job, cylinder, 99);
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

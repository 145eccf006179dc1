//! Sleeves that are left proud and not decked: the heights after the last pull
//! against the limits of the engine's sheet.
//!
//! Each height lies between the lowest and the highest, the heights of one sleeve
//! are no farther apart than one limit, the means of two neighbours (in the order of
//! the deck, holes that get no sleeve passed over) than another, all means of a deck
//! than a third; as `planning::heights` plans them. A height on its limit is within
//! it (1 nm). There is no usual limit: the engine's own sheet decides.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::{HeldDown, SleeveEnds};
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Missing, Spot, Standing};
use crate::job::model::readings::{Readings, largest, lengths, mean, smallest};
use crate::job::model::step::StepId;
use crate::job::steps::deck::Lock;
use crate::job::steps::home::uncertainties;
use crate::job::steps::kept_plan::{KeptHole, Task, kept_plan};
use crate::job::steps::stand_proud::proud_range;
use crate::job::steps::tools::{TINY_M, length_figure};
use crate::job::verdict::figure::Figure;
use crate::job::verdict::next::Next;
use crate::job::verdict::proud::{Breach, ProudBetween, ProudDeck, ProudHole, ProudLimit};
use crate::job::verdict::report::{CylinderReport, StepReport, Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::quantity::Length;

/// A sleeve by itself.
///
/// # Errors
/// A clock of its height or a limit of its own missing, something that cannot be
/// used.
pub fn proud_hole(r: &Readings, cylinder: u8) -> Result<ProudHole, Lack> {
    let [low_m, high_m] = proud_range(r)?;
    let apart_m = r.engine(Field::SpreadHole)?;
    let heights = r.complete(Field::SeatHeight)?;
    let none = || r.missing(Field::SeatHeight, 1); // four clocks: never none
    let lowest_m = smallest(&heights).ok_or_else(none)?;
    let highest_m = largest(&heights).ok_or_else(none)?;
    let breaches = [
        (ProudLimit::Low, low_m - lowest_m),
        (ProudLimit::High, highest_m - high_m),
        (ProudLimit::Hole, highest_m - lowest_m - apart_m),
    ];
    Ok(ProudHole {
        cylinder,
        lowest: Length::from_m(lowest_m),
        highest: Length::from_m(highest_m),
        mean: Length::from_m(mean(&heights).ok_or_else(none)?),
        heights: lengths(&heights),
        breaches: broken(breaches, cylinder, None),
    })
}

/// Of limits those that are exceeded.
fn broken<const N: usize>(
    over: [(ProudLimit, f64); N],
    cylinder: u8,
    other: Option<u8>,
) -> Vec<Breach> {
    let breach = |(limit, by_m): (ProudLimit, f64)| Breach {
        limit,
        cylinder,
        other,
        by: Length::from_m(by_m),
    };
    let is_over = |(_, by_m): &(ProudLimit, f64)| *by_m > TINY_M;
    over.into_iter().filter(is_over).map(breach).collect()
}

/// The sleeves that are measured, against each other: `measured` in the order of the
/// deck, a hole that is not measured yet between two as `None`.
fn between(r: &Readings, measured: &[Option<ProudHole>]) -> Result<ProudBetween, Lack> {
    let neighbour_m = r.engine(Field::SpreadNeighbour)?;
    let all_m = r.engine(Field::SpreadAll)?;
    let mut breaches = Vec::new();
    for pair in measured.windows(2) {
        if let [Some(a), Some(b)] = pair {
            let over_m = (a.mean.as_m() - b.mean.as_m()).abs() - neighbour_m;
            let over = [(ProudLimit::Neighbour, over_m)];
            breaches.extend(broken(over, a.cylinder, Some(b.cylinder)));
        }
    }
    let there = || measured.iter().flatten();
    let by_mean = |a: &&ProudHole, b: &&ProudHole| a.mean.as_m().total_cmp(&b.mean.as_m());
    let (high, low) = there()
        .max_by(by_mean)
        .zip(there().min_by(by_mean))
        .ok_or_else(|| r.missing(Field::SeatHeight, 1))?;
    let spread_m = high.mean.as_m() - low.mean.as_m();
    let over = [(ProudLimit::All, spread_m - all_m)];
    breaches.extend(broken(over, high.cylinder, Some(low.cylinder)));
    Ok(ProudBetween {
        spread: Length::from_m(spread_m),
        breaches,
    })
}

/// Whether the sheet states a torque, and the sleeves were held down at it.
fn held(r: &Readings) -> Standing<HeldDown> {
    match r.engine_if(Field::HeldTorque) {
        Ok(Some(_)) => {}
        Ok(None) => return Standing::NotHere,
        Err(lack) => return Standing::of(Err(lack)),
    }
    let said = r.single(Field::HeldDown).map(|index| {
        if index as usize == HeldDown::Held as usize {
            HeldDown::Held
        } else {
            HeldDown::Free
        }
    });
    Standing::of(said)
}

/// A deck whose sleeves are left proud.
///
/// # Errors
/// Units or the list of holes in dispute.
pub fn proud_deck(job: &Job, bank: u8) -> Result<ProudDeck, Lack> {
    let r = &Readings::new(job, Owner::Bank(bank));
    r.head()?;
    job.dispute(Spot::LeftOut)?;
    let holes: Vec<(u8, Standing<ProudHole>)> = job
        .cylinders_of(bank)
        .map(|cylinder| {
            let hole = proud_hole(&Readings::of_cylinder(job, cylinder), cylinder);
            (cylinder, Standing::of(hole))
        })
        .collect();
    let measured: Vec<Option<ProudHole>> = holes
        .iter()
        .map(|(_, hole)| hole.known().cloned())
        .collect();
    Ok(ProudDeck {
        bank,
        holes,
        between: Standing::of(between(r, &measured)),
        held: held(r),
    })
}

/// The first that is missing, the first that cannot be used.
fn unknown<T>(standing: &Standing<T>) -> Option<Lack> {
    match standing {
        Standing::Known(_) | Standing::NotHere => None,
        Standing::Missing(missing) => Some(Lack::Missing(*missing)),
        Standing::Unusable(unusable) => Some(Lack::Unusable(unusable.clone())),
        Standing::Refused(fault) => Some(Lack::Refused(fault.clone())),
    }
}

/// The step of a deck: every limit kept by every sleeve, each measured, home, and
/// held down where the sheet asks for that.
///
/// # Errors
/// What cannot be used; what is missing, where nothing is measured.
pub fn heights(r: &Readings, lock: &Lock) -> Worked {
    match lock {
        Lock::NoSleeves => return Ok(Verdict::plain(Signal::None, Next::MarkIt)),
        Lock::Disputed(disputed) => return Err(Lack::Unusable(disputed.clone())),
        Lock::Open
        | Lock::OpenBeside(_)
        | Lock::Locked(_)
        | Lock::Together(_)
        | Lock::ByHand(..) => {}
    }
    let deck = proud_deck(r.job, r.bank())?;
    let holes = deck.holes.iter().filter_map(|(_, hole)| unknown(hole));
    let mut missing: Vec<Missing> = Vec::new();
    for lack in holes
        .chain(unknown(&deck.between))
        .chain(unknown(&deck.held))
    {
        match lack {
            Lack::Missing(one) if !missing.contains(&one) => missing.push(one),
            Lack::Missing(_) => {}
            other => return Err(other),
        }
    }
    if let (Some(first), None) = (missing.first(), deck.measured().next()) {
        return Err(Lack::Missing(*first));
    }
    let plan = match kept_plan(r.job, r.bank()) {
        Ok(plan) => plan,
        Err(Lack::Missing(one)) => {
            missing.push(one);
            None
        }
        Err(other) => return Err(other),
    };
    let free = deck.held == Standing::Known(HeldDown::Free);
    let (signal, next) = if let Some(breach) = deck.breaches().next() {
        (Signal::Stop, Next::ProudOut(*breach))
    } else if let Some(first) = missing.first() {
        (Signal::Wait, Next::Measure(*first))
    } else if free {
        (Signal::Look, Next::ReadFree)
    } else if let Some(says) = worked_to(r.job, &plan, &deck)? {
        says
    } else {
        match lock {
            Lock::Open => (Signal::Go, Next::ProudGood),
            Lock::OpenBeside(_) => (Signal::Look, Next::SleeveIn),
            Lock::ByHand(..) => (Signal::Look, Next::ReleasedByHand),
            _ => (Signal::Wait, Next::First(StepId::Seat)),
        }
    };
    if free {
        // To be read once more, held down.
        missing.push(Missing {
            owner: r.owner,
            field: Field::HeldDown,
            places: 1,
        });
    }
    let spread = deck.between.known().map(|between| between.spread.as_m());
    Ok(Verdict {
        number: spread.map(|spread_m| length_figure(Figure::ProudSpread, spread_m, None)),
        lacks: missing,
        ..Verdict::plain(signal, next)
    })
}

/// How the heights of a deck that is worked to a plan compare with it: the mean of a
/// sleeve's differences by clock, against two standard uncertainties of what they
/// hang on.
fn worked_to(
    job: &Job,
    plan: &Option<Vec<KeptHole>>,
    deck: &ProudDeck,
) -> Result<Option<(Signal, Next)>, Lack> {
    for hole in plan.iter().flatten() {
        let is_open = |task: &Task| hole.wants(*task) && !hole.is_done(*task);
        if Task::ALL.iter().any(is_open) {
            return Ok(Some((Signal::Wait, Next::PlanOpen(hole.cylinder))));
        }
    }
    for hole in plan.iter().flatten() {
        let Some(measured) = deck.measured().find(|m| m.cylinder == hole.cylinder) else {
            continue;
        };
        let r = Readings::of_cylinder(job, hole.cylinder);
        let [u_above_m, u_depth_m] = uncertainties(&r)?;
        let u_m = r
            .engine(Field::GaugeHeight)?
            .hypot(u_above_m)
            .hypot(u_depth_m);
        if let Some(off) = off_plan(hole, measured)
            && off.as_m().abs() > 2.0 * u_m + TINY_M
        {
            return Ok(Some((Signal::Look, Next::OffPlan(hole.cylinder, off))));
        }
    }
    Ok(None)
}

/// By how much a sleeve stands higher than its plan, on the mean of its clocks.
#[must_use]
pub fn off_plan(plan: &KeptHole, measured: &ProudHole) -> Option<Length> {
    let pairs = plan.heights.iter().zip(&measured.heights);
    let off: Vec<f64> = pairs.map(|(p, m)| m.as_m() - p.as_m()).collect();
    mean(&off).map(Length::from_m)
}

/// Says at the seat of each sleeve whether it keeps the limits of its own: what is
/// home and stands too high or too low is not good.
pub fn judge_heights(job: &Job, reports: &mut [CylinderReport]) {
    // What cannot be used holds the seat already.
    if job.sleeve_ends() != Ok(SleeveEnds::Proud) {
        return;
    }
    for report in reports {
        let cylinder = report.cylinder;
        let seat = report.steps.iter_mut().find(|s| s.id == StepId::Seat);
        let Some(step) = seat.filter(|_| !job.left_out.contains(&cylinder)) else {
            continue;
        };
        say(
            step,
            proud_hole(&Readings::of_cylinder(job, cylinder), cylinder),
        );
    }
}

fn say(step: &mut StepReport, worked: Result<ProudHole, Lack>) {
    match worked {
        Ok(hole) => {
            if let Some(breach) = hole.breaches.first().filter(|_| step.signal < Signal::Stop) {
                step.signal = Signal::Stop;
                step.next = Next::ProudOut(*breach);
            }
        }
        Err(Lack::Missing(missing)) => {
            if step.begun && !step.lacks.contains(&missing) {
                step.lacks.push(missing);
            }
            if step.signal == Signal::Go {
                step.signal = Signal::Wait;
                step.next = Next::Measure(missing);
            }
        }
        // Named already: the seat hangs on it.
        Err(Lack::Unusable(_) | Lack::Refused(_)) => {}
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::Place;
    use crate::job::steps::assess::assess_job;
    use crate::job::steps::together::DeckMemory;

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

    /// The first demo without its sleeve that is not home: the others read some 0.0100
    /// in proud, and are home.
    #[test]
    fn a_job_left_proud_is_not_decked_and_names_each_limit_that_is_missing() {
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
}

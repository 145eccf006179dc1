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
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Lacks, Missing, Spot, Standing, Unusable, Why};
use crate::job::model::readings::{Readings, largest, lengths, mean, smallest};
use crate::job::model::step::StepId;
use crate::job::steps::deck::Lock;
use crate::job::steps::home::uncertainties;
use crate::job::steps::kept_plan::{KeptHole, kept_plan};
use crate::job::steps::seat::predicted;
use crate::job::steps::since_plan::{DEPTHS, ask_for, older_than_work, read_before};
use crate::job::steps::tools::{TINY_M, length_figure};
use crate::job::verdict::figure::Figure;
use crate::job::verdict::next::Next;
use crate::job::verdict::proud::{Breach, ProudBetween, ProudDeck, ProudHole, ProudLimit};
use crate::job::verdict::report::{CylinderReport, StepReport, Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::quantity::Length;

/// A sleeve by itself: held against each limit of its own that is there.
///
/// # Errors
/// A clock of its height missing, or one that cannot be used.
pub fn proud_hole(r: &Readings, cylinder: u8) -> Result<ProudHole, Lack> {
    let heights = r.complete(Field::SeatHeight)?;
    if let Some(old) = older_than_work(r.job, cylinder, Field::SeatHeight)? {
        return Err(Lack::Missing(old));
    }
    hole_of(r, cylinder, &heights)
}

/// A sleeve that stands as high as given, at its four clocks.
fn hole_of(r: &Readings, cylinder: u8, heights: &[f64]) -> Result<ProudHole, Lack> {
    let none = || r.missing(Field::SeatHeight, 1); // four clocks: never none
    let lowest_m = smallest(heights).ok_or_else(none)?;
    let highest_m = largest(heights).ok_or_else(none)?;
    let low = r.engine(Field::ProudLow);
    // Of two limits that contradict each other nobody knows which is meant.
    let is_against = |one: &Unusable| matches!(one.why, Why::LowNotBelowHigh(_));
    let high = match &low {
        Err(Lack::Unusable(one)) if is_against(one) => Err(Lack::Unusable(one.clone())),
        _ => r.engine(Field::ProudHigh),
    };
    let mut lacks = Lacks::default();
    let over = [
        (ProudLimit::Low, low.map(|low_m| low_m - lowest_m)),
        (ProudLimit::High, high.map(|high_m| highest_m - high_m)),
        (
            ProudLimit::Hole,
            r.engine(Field::SpreadHole)
                .map(|apart_m| highest_m - lowest_m - apart_m),
        ),
    ]
    .into_iter()
    .filter_map(|(limit, by_m)| Some((limit, lacks.take(by_m)?)))
    .collect::<Vec<_>>();
    Ok(ProudHole {
        cylinder,
        lowest: Length::from_m(lowest_m),
        highest: Length::from_m(highest_m),
        mean: Length::from_m(mean(heights).ok_or_else(none)?),
        heights: lengths(heights),
        breaches: broken(over, cylinder, None),
        lacks,
    })
}

/// A sleeve as its thickness, its shim and its ledge will have it stand.
///
/// # Errors
/// A clock of either missing, something that cannot be used.
pub fn proud_predicted(r: &Readings, cylinder: u8) -> Result<ProudHole, Lack> {
    hole_of(r, cylinder, &predicted(r)?)
}

/// Of limits those that are exceeded.
fn broken(
    over: impl IntoIterator<Item = (ProudLimit, f64)>,
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
    let mut lacks = Lacks::default();
    let neighbour = lacks.take(r.engine(Field::SpreadNeighbour));
    let all = lacks.take(r.engine(Field::SpreadAll));
    let mut breaches = Vec::new();
    for pair in measured.windows(2) {
        if let ([Some(a), Some(b)], Some(neighbour_m)) = (pair, neighbour) {
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
    let over = all.map(|all_m| (ProudLimit::All, spread_m - all_m));
    breaches.extend(broken(over, high.cylinder, Some(low.cylinder)));
    Ok(ProudBetween {
        spread: Length::from_m(spread_m),
        breaches,
        lacks,
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
    let mut lacks = deck.lacks();
    for one in read_again(r, &deck)? {
        let _ = lacks.take(Err::<(), _>(Lack::Missing(one)));
    }
    let plan = lacks.take(kept_plan(r.job, r.bank())).flatten();
    let breach = deck.breaches().next();
    // What is broken is told first, and what is missing or to be mended beside it.
    if breach.is_none() {
        if let Some(lack) = lacks.spoiled() {
            return Err(lack);
        }
        if let (Some(first), None) = (lacks.missing.first(), deck.measured().next())
            && ask_for(r.job, *first) == Next::Measure(*first)
        {
            return Err(Lack::Missing(*first));
        }
    }
    let mut missing = lacks.missing;
    let free = deck.held == Standing::Known(HeldDown::Free);
    let (signal, next) = if let Some(breach) = breach {
        (Signal::Stop, Next::ProudOut(*breach))
    } else if let Some(first) = missing.first() {
        (Signal::Wait, ask_for(r.job, *first))
    } else if free {
        (Signal::Wait, Next::ReadFree)
    } else if let Some(says) = worked_to(r.job, &plan, &deck)? {
        says
    } else {
        match lock {
            Lock::Open => (Signal::Go, Next::ProudGood),
            Lock::OpenBeside(_) => (Signal::Look, Next::SleeveIn),
            Lock::ByHand(..) => (Signal::Look, Next::ReleasedByHand),
            _ => (Signal::Wait, Next::Advice(StepId::Heights, Signal::Wait)),
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
    // One sleeve is not apart from itself.
    let between = deck.between.known();
    let spread = between
        .filter(|_| deck.measured().nth(1).is_some())
        .map(|between| between.spread.as_m());
    Ok(Verdict {
        number: spread.map(|spread_m| length_figure(Figure::ProudSpread, spread_m, None)),
        lacks: by_field(&missing),
        ..Verdict::plain(signal, next)
    })
}

/// Each field once, with all its places.
fn by_field(missing: &[Missing]) -> Vec<Missing> {
    let mut once: Vec<Missing> = Vec::new();
    for one in missing {
        match once.iter_mut().find(|m| m.field == one.field) {
            Some(same) => same.places += one.places,
            None => once.push(*one),
        }
    }
    once
}

/// What was read before it counts: depths of a ledge that was cut since, and every height
/// where it was said afterwards that the sleeves are held down.
fn read_again(r: &Readings, deck: &ProudDeck) -> Result<Vec<Missing>, Lack> {
    let said = Place::of_bank(deck.bank, Field::HeldDown, 0);
    let held = deck.held == Standing::Known(HeldDown::Held);
    let since = r.job.entries.get(said).filter(|_| held).map(|e| e.at);
    let mut again = Vec::new();
    for (cylinder, _) in &deck.holes {
        for field in DEPTHS {
            again.extend(older_than_work(r.job, *cylinder, field)?);
        }
        let owner = Owner::Cylinder(*cylinder);
        again.extend(since.and_then(|at| read_before(r.job, owner, Field::SeatHeight, at)));
    }
    Ok(again)
}

/// How the heights of a deck that is worked to a plan compare with it, clock by clock,
/// against two standard uncertainties of what they hang on.
fn worked_to(
    job: &Job,
    plan: &Option<Vec<KeptHole>>,
    deck: &ProudDeck,
) -> Result<Option<(Signal, Next)>, Lack> {
    for hole in plan.iter().flatten() {
        if hole.is_open() {
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

/// By how much a sleeve stands higher than its plan, at the clock that is farthest off.
#[must_use]
pub fn off_plan(plan: &KeptHole, measured: &ProudHole) -> Option<Length> {
    let pairs = plan.heights.iter().zip(&measured.heights);
    pairs
        .map(|(planned, now)| now.as_m() - planned.as_m())
        .max_by(|a, b| a.abs().total_cmp(&b.abs()))
        .map(Length::from_m)
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
            job,
        );
    }
}

fn say(step: &mut StepReport, worked: Result<ProudHole, Lack>, job: &Job) {
    // What cannot be used is named already: the seat hangs on it.
    let (breach, missing) = match worked {
        Ok(hole) => (hole.breaches.first().copied(), hole.lacks.missing),
        Err(Lack::Missing(missing)) => (None, vec![missing]),
        Err(Lack::Unusable(_) | Lack::Refused(_)) => return,
    };
    if step.begun {
        for one in &missing {
            if !step.lacks.contains(one) {
                step.lacks.push(*one);
            }
        }
    }
    if let Some(breach) = breach.filter(|_| step.signal < Signal::Stop) {
        step.signal = Signal::Stop;
        step.next = Next::ProudOut(breach);
    } else if let Some(first) = missing.first().filter(|_| step.signal == Signal::Go) {
        step.signal = Signal::Wait;
        step.next = ask_for(job, *first);
    }
}

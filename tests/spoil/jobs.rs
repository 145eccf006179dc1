//! The jobs that entries are spoilt in.

use coldseat_core::job::demo::{Demo, put};
use coldseat_core::job::engine::Layout;
use coldseat_core::job::field::Scope;
use coldseat_core::job::kept_plan::{KeptHole, Task, kept_plan};
use coldseat_core::job::model::from_deck::FromDeck;
use coldseat_core::job::step::{Mark, STEPS, StepId};
use coldseat_core::job::steps::survey::spots;
use coldseat_core::job::work_to_plan::tick_plan;
use coldseat_core::job::{Entry, Field, Job, Owner, Place};
use fastrand::Rng;

/// A demo whose entries are partly gone: up to a step, or here and there.
pub fn half_filled(demo: Demo, seed: u64) -> Job {
    let mut rng = Rng::with_seed(seed);
    let mut job = demo.job(1);
    let up_to = rng.u8(5..32);
    let holes = !seed.is_multiple_of(3);
    let places: Vec<Place> = job.entries.iter().map(|(place, _)| *place).collect();
    for place in places {
        let late = STEPS
            .iter()
            .any(|s| s.number > up_to && s.fields.contains(&place.field))
            && place.field.spec().scope != Scope::Engine;
        let lost = holes && rng.u8(0..25) == 0;
        if (!holes && late) || lost {
            clear(&mut job, place);
        }
    }
    job
}

/// Gives the holes named sleeves that were measured cold: the mean of their warm
/// readings less a share of the diameter. 0.16 % is what these irons shrink, or
/// near it; a tenth of that, or none, is odd.
pub fn measure_cold(job: &mut Job, holes: impl Iterator<Item = u8>, share: f64) {
    for hole in holes {
        let warm = job
            .entries
            .comparable(Owner::Cylinder(hole), Field::SleeveOd);
        let Some((_, first)) = warm.first() else {
            continue;
        };
        let unit = job.unit(Field::ColdOd);
        let text = format!("{:.4}", unit.from_si(first * (1.0 - share)));
        put(job, Place::of_cylinder(hole, Field::ColdOd, 0), text, 1);
    }
}

/// Gives a job sizes measured from its deck, a block with so much left, a finish, and
/// the cut that is then made: some sizes hold, some leave their range and are measured
/// again, ticked, reasoned or forgotten.
pub fn deck_it(job: &mut Job, seed: u64) {
    let mut rng = Rng::with_seed(0xdec0 + seed);
    let inch = |job: &Job, thou: f64| {
        let unit = job.unit(Field::FromDeckBefore);
        format!("{:.4}", unit.from_si(thou * 25.4e-6))
    };
    for (item, index) in FromDeck::ALL.into_iter().zip(0_u8..) {
        if rng.u8(0..5) == 0 {
            continue;
        }
        let before = 200.0 + f64::from(rng.u8(0..9));
        let ends = [
            before - f64::from(rng.u8(2..9)),
            before + f64::from(rng.u8(2..9)),
        ];
        let sheet = [
            (Field::FromDeckBefore, before),
            (Field::FromDeckLeast, ends[0]),
            (Field::FromDeckMost, ends[1]),
        ];
        for (field, thou) in sheet {
            if rng.u8(0..20) > 0 && (field != Field::FromDeckMost || item.has_most()) {
                let place = Place {
                    index,
                    ..Place::of_engine(field)
                };
                let text = inch(job, thou);
                put(job, place, text, 2);
            }
        }
        for bank in 0..job.engine.banks() {
            let said = ["", "", "done", "left, the customer knows"][usize::from(rng.u8(0..4))];
            put(job, Place::of_bank(bank, Field::RecutSaid, index), said, 3);
            if rng.bool() {
                let now = ends[0] + f64::from(rng.i8(-1..9));
                let text = inch(job, now);
                put(
                    job,
                    Place::of_bank(bank, Field::FromDeckAfter, index),
                    text,
                    3,
                );
            }
        }
    }
    for (field, text) in [
        (Field::BlockCutSoFar, inch(job, f64::from(rng.u8(0..12)))),
        (Field::BlockCutMost, inch(job, 15.0)),
        (
            Field::DeckFinishKind,
            ["Ra", "Rz"][usize::from(rng.bool())].to_owned(),
        ),
        (Field::DeckFinishMost, "1.6".to_owned()),
    ] {
        if rng.u8(0..8) > 0 {
            put(job, Place::of_engine(field), text, 2);
        }
    }
    for bank in 0..job.engine.banks() {
        if rng.u8(0..4) > 0 {
            let text = inch(job, 5.0);
            put(job, Place::of_bank(bank, Field::DeckCut, 0), text, 2);
        }
        if rng.u8(0..3) > 0 {
            let text = ["1.2", "1.6", "2.5"][usize::from(rng.u8(0..3))];
            put(job, Place::of_bank(bank, Field::DeckFinish, 0), text, 3);
        }
        job.set_mark(Owner::Bank(bank), StepId::Deck, Some(Mark::Done), 4);
    }
}

/// Leaves a job's sleeves proud: limits that hold, that one sleeve breaks, or that are
/// there in part; now and then a torque, and whether it was put on.
pub fn leave_proud(job: &mut Job, seed: u64) {
    let mut rng = Rng::with_seed(0x9_0d + seed);
    let unit = job.unit(Field::ProudLow);
    let text = |thou: f64| format!("{:.4}", unit.from_si(thou * 25.4e-6));
    put(job, Place::of_engine(Field::SleeveEnds), "proud", 2);
    // The demos stand some 10 thou proud.
    let high = [13.0, 13.0, 13.0, 10.0][usize::from(rng.u8(0..4))];
    for (field, thou) in [
        (Field::ProudLow, 6.0),
        (Field::ProudHigh, high),
        (Field::SpreadHole, f64::from(rng.u8(1..6))),
        (Field::SpreadNeighbour, 3.0),
        (Field::SpreadAll, f64::from(rng.u8(2..6))),
    ] {
        if rng.u8(0..12) > 0 {
            put(job, Place::of_engine(field), text(thou), 2);
        }
    }
    if rng.bool() {
        put(job, Place::of_engine(Field::HeldTorque), "90", 2);
        for bank in 0..job.engine.banks() {
            let said = ["held", "held", "free", ""][usize::from(rng.u8(0..4))];
            put(job, Place::of_bank(bank, Field::HeldDown, 0), said, 3);
        }
    }
}

/// Reads what few jobs read: ledges at a second radius and their ink (flat, cupped, half
/// read), the time from entering to home.
pub fn read_more(job: &mut Job, seed: u64) {
    let mut rng = Rng::with_seed(0x1ed9e + seed);
    let inside: Vec<u8> = job.cylinders().collect();
    for cylinder in inside {
        let unit = job.unit(Field::LedgeInner);
        let off = f64::from(rng.i8(-2..3)) * 0.4;
        let depths = job
            .entries
            .comparable(Owner::Cylinder(cylinder), Field::CounterboreDepth);
        for (index, depth) in depths {
            if rng.u8(0..30) > 0 {
                let text = format!("{:.4}", unit.from_si(depth + off * 25.4e-6));
                let place = Place::of_cylinder(cylinder, Field::LedgeInner, index);
                put(job, place, text, 2);
            }
        }
        if rng.u8(0..3) == 0 {
            let shim = format!("{:.4}", unit.from_si(5e-6));
            put(
                job,
                Place::of_cylinder(cylinder, Field::ShimHere, 0),
                shim,
                2,
            );
        }
        let timed = Place::of_cylinder(cylinder, Field::HomeTimed, 0);
        put(job, timed, ["3.5", "12"][usize::from(rng.u8(0..2))], 2);
        let ink = ["full", "full", "broken", "not_done"][usize::from(rng.u8(0..4))];
        put(
            job,
            Place::of_cylinder(cylinder, Field::InkCheck, 0),
            ink,
            2,
        );
    }
}

/// Works a deck that is left proud to a plan of what its sleeves read, some of it ticked.
pub fn work_to_plan(job: &mut Job, seed: u64) {
    let mut rng = Rng::with_seed(0x91a2 + seed);
    let holes: Vec<u8> = job.cylinders().collect();
    let mut ticks = Vec::new();
    for cylinder in holes {
        let at = |field, index| Place::of_cylinder(cylinder, field, index);
        let unit = job.unit(Field::PlanHeight);
        let off = f64::from(rng.u8(0..3)) * 0.7;
        for (index, height) in job
            .entries
            .comparable(Owner::Cylinder(cylinder), Field::SeatHeight)
        {
            let text = format!("{:.4}", unit.from_si(height + off * 25.4e-6));
            put(job, at(Field::PlanHeight, index), text, 2);
        }
        put(job, at(Field::PlanSleeve, 0), cylinder.to_string(), 2);
        put(job, at(Field::PlanTurn, 0), rng.u8(0..2).to_string(), 2);
        let cut = ["0", "0.001"][usize::from(rng.bool())];
        put(job, at(Field::PlanCut, 0), cut, 2);
        put(job, at(Field::PlanShim, 0), "0", 2);
        for task in Task::ALL {
            if rng.u8(0..6) > 0 {
                ticks.push((cylinder, task));
            }
        }
    }
    // A tick names its plan, and is set once all of it is kept.
    for (cylinder, task) in ticks {
        let before = kept_plan(job, job.engine.bank_of(cylinder));
        let is_done = |hole: &KeptHole| hole.cylinder == cylinder && hole.is_done(task);
        let is_ticked = before.is_ok_and(|plan| plan.iter().flatten().any(is_done));
        if !is_ticked {
            tick_plan(job, cylinder, task, 2);
        }
    }
}

fn clear(job: &mut Job, place: Place) {
    let unit = job.unit(place.field);
    job.entries.put(place, Entry::new("", unit, 2));
}

/// A job of one to three cylinders about a demo: readings moved by their last
/// digits, some far, some gone, some deck cuts, marks and releases.
pub fn random(seed: u64) -> Job {
    let mut rng = Rng::with_seed(0x5_901 + seed);
    let demo = Demo::ALL[usize::from(rng.bool())];
    let mut job = demo.job(1);
    let cylinders = rng.u8(1..=3);
    job.engine.cylinders = cylinders;
    job.engine.layout = [Layout::InLine, Layout::VOddEven][usize::from(rng.u8(0..4) == 0)];
    let gone: Vec<Place> = job
        .entries
        .iter()
        .map(|(place, _)| *place)
        .filter(|place| match place.owner {
            Owner::Cylinder(cylinder) => cylinder > cylinders,
            // Spots of a survey that this deck has not got, too.
            Owner::Bank(bank) => {
                bank >= job.engine.banks()
                    || (place.field == Field::LowSpot && place.index >= spots(&job, bank))
            }
            Owner::Block => false,
        })
        .collect();
    for place in gone {
        clear(&mut job, place);
    }
    job.steps = job
        .steps
        .iter()
        .filter(|((owner, _), _)| !matches!(owner, Owner::Cylinder(c) if *c > cylinders))
        .map(|(key, record)| (*key, record.clone()))
        .collect();
    if rng.bool() {
        for bank in 0..job.engine.banks() {
            let cut = if rng.bool() { "0.0050" } else { "0.0110" };
            let text = if demo == Demo::InchFive { cut } else { "0.130" };
            put(&mut job, Place::of_bank(bank, Field::DeckCut, 0), text, 2);
        }
    }
    // Drawn apart, so that the jobs are else those of before.
    let mut cold = Rng::with_seed(0xc01d + seed);
    if cold.u8(0..3) == 0 {
        let share = [0.0016, 0.0016, 0.0016, 0.0004, -0.0001][usize::from(cold.u8(0..5))];
        let some = cold.u8(1..=cylinders);
        measure_cold(&mut job, 1..=some, share);
    }
    let wild = rng.u32(2..40);
    let places: Vec<Place> = job.entries.iter().map(|(place, _)| *place).collect();
    for place in places {
        match rng.u32(0..wild * 8) {
            0 => clear(&mut job, place),
            1 | 2 => shift(&mut job, place, &mut rng),
            _ => {}
        }
    }
    if rng.u8(0..6) == 0 {
        job.left_out = vec![rng.u8(1..=cylinders)];
    }
    for spec in STEPS {
        if rng.u8(0..30) == 0 {
            let owner = Owner::Cylinder(rng.u8(1..=cylinders));
            job.set_mark(owner, spec.id, Some(Mark::Done), 3);
        }
    }
    job
}

/// Moves a reading by some of its last digits, seldom by a tenth of itself.
fn shift(job: &mut Job, place: Place, rng: &mut Rng) {
    let Some(entry) = job.entries.get(place) else {
        return;
    };
    let Ok(value) = entry.text.parse::<f64>() else {
        return;
    };
    let decimals = entry.text.split('.').nth(1).map_or(0, str::len);
    let digit = 0.1_f64.powi(decimals as i32);
    let by = if rng.u8(0..6) == 0 {
        0.1 * value
    } else {
        f64::from(rng.i32(-25..=25)) * digit
    };
    let text = format!("{:.decimals$}", value + by);
    put(job, place, text, 2);
}

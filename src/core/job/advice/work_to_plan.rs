//! Working to a plan of heights: taken, ticked task by task, given up.
//!
//! Taking it writes nothing but the plan itself. What a task changes in the job (the shim
//! of a hole, which readings belong to which sleeve, how it is turned) is written when it
//! is ticked, and taken back with the tick.

use crate::job::advice::pairs::move_sleeves;
use crate::job::advice::plan_heights::PlannedHeights;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::field_usual::SHIMS_MOST;
use crate::job::model::job::Job;
use crate::job::model::place::{Millis, Owner, Place};
use crate::job::steps::kept_plan::{
    KeptHole, OF_PLAN, TAKEN_BACK, Task, all_holes, is_same_shim, kept_plan, ring,
};
use crate::job::steps::shims::{ListedShim, listed_shim};
use crate::planning::heights::CLOCKS;
use crate::quantity::Length;
use crate::quantity::format::fixed;

/// A length as it is kept, in the job's unit: to a millionth of an inch, or to ten
/// nanometres.
fn kept(job: &Job, field: Field, length: Length, at: Millis) -> Entry {
    let unit = job.unit(field);
    let text = fixed(unit.from_si(length.as_m()), 6);
    Entry::new(text, unit, at)
}

/// Takes a plan to work to: keeps it hole by hole. Nothing else changes before a task of
/// it is ticked.
pub fn take_heights_plan(job: &mut Job, planned: &PlannedHeights, at: Millis) {
    for hole in &planned.holes {
        let place = |field, index| Place::of_cylinder(hole.cylinder, field, index);
        let plain = |field: Field, n: u8| Entry::new(n.to_string(), job.unit(field), at);
        let listed = hole.shim.and_then(|(index, _)| {
            let listed = Place {
                index: index?,
                ..Place::of_engine(Field::ShimSizes)
            };
            job.entries.get(listed)
        });
        let shim = match listed {
            // As it was typed.
            Some(listed) => Entry::new(listed.text.clone(), listed.unit, at),
            None if hole.shim.is_none() => Entry::new("0", job.unit(Field::PlanShim), at),
            None => kept(job, Field::PlanShim, hole.shim_after(), at),
        };
        let mut entries = vec![
            (
                place(Field::PlanSleeve, 0),
                plain(Field::PlanSleeve, hole.sleeve),
            ),
            (place(Field::PlanTurn, 0), plain(Field::PlanTurn, hole.turn)),
            (place(Field::PlanShim, 0), shim),
            (
                place(Field::PlanCut, 0),
                kept(job, Field::PlanCut, hole.cut, at),
            ),
        ];
        for (index, height) in (0_u8..).zip(&hole.after) {
            let entry = kept(job, Field::PlanHeight, *height, at);
            entries.push((place(Field::PlanHeight, index), entry));
        }
        for (place, entry) in entries {
            job.entries.put(place, entry);
        }
    }
}

/// Ticks a task of the plan that a deck is worked to, or takes the tick back, with what
/// it changes in the job. Sleeves that change places are ticked together.
pub fn tick_plan(job: &mut Job, cylinder: u8, task: Task, at: Millis) {
    let Ok(Some(plan)) = kept_plan(job, job.engine.bank_of(cylinder)) else {
        return; // it says so, and is given up
    };
    let Some(hole) = plan.iter().find(|hole| hole.cylinder == cylinder) else {
        return;
    };
    if !is_at_hand(job, hole, task) {
        return; // the page says so beside the tick
    }
    let done = hole.is_done(task);
    let together = match task {
        Task::Cut | Task::Shim => vec![hole],
        Task::Sleeve => ring(&plan, cylinder),
    };
    for hole in &together {
        // Taken back it is work too: what was read between is of another sleeve's stand.
        let text = if done {
            TAKEN_BACK.to_owned()
        } else {
            hole.tick(task)
        };
        let unit = job.unit(Field::PlanDone);
        job.entries
            .put(task.place(hole.cylinder), Entry::new(text, unit, at));
    }
    match task {
        Task::Cut => {}
        Task::Shim => lay(job, hole, done, at),
        Task::Sleeve => change_places(job, &together, done, at),
    }
}

/// Whether the shim that the next tick of a task lays, or lays back, is left: of a size
/// whose last one lies elsewhere it is taken out there first. A size that is not listed
/// is not counted.
#[must_use]
pub fn is_at_hand(job: &Job, hole: &KeptHole, task: Task) -> bool {
    let into = match (task, hole.is_done(task)) {
        (Task::Shim, false) => hole.shim,
        (Task::Shim, true) => hole.shim_before,
        (Task::Cut | Task::Sleeve, _) => return true,
    };
    listed(job, into).is_none_or(|row| row.left >= 1.0)
}

/// Enters the shim of a hole, or the one before where it is taken back, and counts both in
/// the list of those that are left.
fn lay(job: &mut Job, hole: &KeptHole, back: bool, at: Millis) {
    let here = |field| Place::of_cylinder(hole.cylinder, field, 0);
    let planned = job.entries.get(here(Field::PlanShim)).cloned();
    let entry = match planned.filter(|_| !back) {
        Some(planned) => Entry { at, ..planned },
        None if hole.shim_own => kept(job, Field::ShimHere, hole.shim_before, at),
        None => Entry::new("", job.unit(Field::ShimHere), at),
    };
    job.entries.put(here(Field::ShimHere), entry);
    let (mut out, mut into) = (hole.shim_before, hole.shim);
    if back {
        core::mem::swap(&mut out, &mut into);
    }
    count(job, out, 1.0, at);
    count(job, into, -1.0, at);
}

/// A size in the list of shims; a row that cannot be read is none of them, and its field
/// says so.
fn listed(job: &Job, size: Length) -> Option<ListedShim> {
    let mut rows = (0..SHIMS_MOST).filter_map(|index| listed_shim(job, index).ok().flatten());
    rows.find(|row| is_same_shim(row.size, size))
}

/// Counts a shim in the list of those that are left, where its size stands there.
fn count(job: &mut Job, size: Length, by: f64, at: Millis) {
    if let Some(row) = listed(job, size) {
        let text = fixed(row.left + by, 0);
        let unit = job.unit(Field::ShimsLeft);
        job.entries
            .put(row.place_of_left(), Entry::new(text, unit, at));
    }
}

/// Numbers the sleeves of a ring to their holes with what was read of them, turned as
/// planned; or back.
fn change_places(job: &mut Job, ring: &[&KeptHole], back: bool, at: Millis) {
    let count = CLOCKS as u8;
    let moves = ring.iter().filter(|hole| hole.sleeve != hole.cylinder);
    if back {
        for hole in ring {
            turn(job, hole.cylinder, (count - hole.turn % count) % count, at);
        }
        let moves: Vec<(u8, u8)> = moves.map(|hole| (hole.cylinder, hole.sleeve)).collect();
        move_sleeves(job, &moves, at);
    } else {
        let moves: Vec<(u8, u8)> = moves.map(|hole| (hole.sleeve, hole.cylinder)).collect();
        move_sleeves(job, &moves, at);
        for hole in ring {
            turn(job, hole.cylinder, hole.turn % count, at);
        }
    }
}

/// Turns what was read of a sleeve round the clock: its clock i stands on the hole's
/// i + turn.
fn turn(job: &mut Job, cylinder: u8, quarters: u8, at: Millis) {
    for field in [Field::FlangeThickness, Field::PlainLength] {
        let place = |index: u8| Place::of_cylinder(cylinder, field, index);
        let count = CLOCKS as u8;
        let turned: Vec<Entry> = (0..count)
            .map(
                |index| match job.entries.get(place((index + count - quarters) % count)) {
                    Some(entry) => Entry {
                        at,
                        ..entry.clone()
                    },
                    None => Entry::new("", job.unit(field), at),
                },
            )
            .collect();
        for (index, entry) in (0..count).zip(turned) {
            job.entries.put(place(index), entry);
        }
    }
}

/// Gives up the plan that a deck is worked to, in every hole of it, left out or not. What
/// was ticked stays, and so do its ticks: the moment of each tells which readings are
/// older than the work. What of them cannot be read goes.
pub fn drop_heights_plan(job: &mut Job, bank: u8, at: Millis) {
    let holes: Vec<u8> = all_holes(job, bank).collect();
    for cylinder in holes {
        let owner = Owner::Cylinder(cylinder);
        let unread = |place: &Place| job.reading(*place).number().is_err();
        let ticks = Place::all(owner, Field::PlanDone).filter(unread);
        let plan = OF_PLAN
            .into_iter()
            .flat_map(|field| Place::all(owner, field));
        let places: Vec<Place> = plan.chain(ticks).collect();
        for place in places {
            let unit = job.unit(place.field);
            job.entries.put(place, Entry::new("", unit, at));
        }
    }
}

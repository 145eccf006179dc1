//! A plan of heights that is worked to: kept in the job hole by hole, for readings
//! change while it is carried out and a plan must not.

use crate::job::model::field::Field;
use crate::job::model::field_read::DONE;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Spot};
use crate::job::model::readings::Readings;
use crate::quantity::Length;

/// What is kept of a plan at a hole.
pub const OF_PLAN: [Field; 6] = [
    Field::PlanSleeve,
    Field::PlanTurn,
    Field::PlanShim,
    Field::PlanCut,
    Field::PlanHeight,
    Field::PlanDone,
];

/// What is done at a hole, in the order of the shop.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Task {
    /// Its ledge is cut.
    Cut,
    /// A shim is laid on it.
    Shim,
    /// Another sleeve goes in, or its own turned.
    Sleeve,
}

impl Task {
    /// All, in the order of the shop; the places of [`Field::PlanDone`].
    pub const ALL: [Self; 3] = [Self::Cut, Self::Shim, Self::Sleeve];

    /// Where a tick of it stands.
    #[must_use]
    pub const fn place(self, cylinder: u8) -> Place {
        Place::of_cylinder(cylinder, Field::PlanDone, self as u8)
    }
}

/// A plan at one hole.
#[derive(Clone, Debug, PartialEq)]
pub struct KeptHole {
    /// The hole.
    pub cylinder: u8,
    /// The sleeve it gets, by the number it had before.
    pub sleeve: u8,
    /// Quarter turns clockwise, 0 to 3, seen from above.
    pub turn: u8,
    /// The shim on its ledge; 0: none.
    pub shim: Length,
    /// What is cut off its ledge; 0: nothing.
    pub cut: Length,
    /// The heights that come of it, at the hole's own clocks.
    pub heights: Vec<Length>,
    /// What of it is done, in the order of [`Task::ALL`].
    pub done: [bool; 3],
}

impl KeptHole {
    /// Whether a task is to be done here.
    #[must_use]
    pub fn wants(&self, task: Task) -> bool {
        match task {
            Task::Cut => self.cut.as_m() > 0.0,
            Task::Shim => self.shim.as_m() > 0.0,
            Task::Sleeve => self.sleeve != self.cylinder || self.turn != 0,
        }
    }

    /// Whether it is ticked.
    #[must_use]
    pub const fn is_done(&self, task: Task) -> bool {
        self.done[task as usize]
    }
}

fn hole(job: &Job, cylinder: u8) -> Result<KeptHole, Lack> {
    let r = Readings::of_cylinder(job, cylinder);
    let mut done = [false; 3];
    for (mark, task) in done.iter_mut().zip(Task::ALL) {
        let place = task.place(cylinder);
        let said = job.reading(place).number()?.is_some();
        let entry = job.entries.get(place);
        *mark = said && entry.is_some_and(|e| e.text.trim().eq_ignore_ascii_case(DONE));
    }
    Ok(KeptHole {
        cylinder,
        sleeve: r.single(Field::PlanSleeve)? as u8,
        turn: r.single(Field::PlanTurn)? as u8,
        shim: Length::from_m(r.single(Field::PlanShim)?),
        cut: Length::from_m(r.single(Field::PlanCut)?),
        heights: r
            .complete(Field::PlanHeight)?
            .into_iter()
            .map(Length::from_m)
            .collect(),
        done,
    })
}

/// The plan that a deck is worked to; `None` where there is none.
///
/// # Errors
/// A part of it missing or unusable, the list of holes in dispute.
pub fn kept_plan(job: &Job, bank: u8) -> Result<Option<Vec<KeptHole>>, Lack> {
    job.dispute(Spot::LeftOut)?;
    let is_kept = job.cylinders_of(bank).any(|cylinder| {
        let owner = Owner::Cylinder(cylinder);
        let mut places = OF_PLAN
            .into_iter()
            .flat_map(|field| Place::all(owner, field));
        places.any(|place| job.entries.get(place).is_some())
    });
    if !is_kept {
        return Ok(None);
    }
    job.cylinders_of(bank)
        .map(|cylinder| hole(job, cylinder))
        .collect::<Result<_, _>>()
        .map(Some)
}

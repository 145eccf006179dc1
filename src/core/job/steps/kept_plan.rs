//! A plan of heights that is worked to: kept in the job hole by hole, for readings
//! change while it is carried out and a plan must not.
//!
//! A tick names the task it was set for: of another plan, taken on another device, it
//! says nothing. It stays when a plan is given up, for the moment it was set tells which
//! readings are older than the work.

use crate::job::model::field::Field;
use crate::job::model::field_read::DONE;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Spot};
use crate::job::model::readings::Readings;
use crate::job::steps::home;
use crate::quantity::Length;
use crate::quantity::report::Fault;

/// What is kept of a plan at a hole, its ticks apart.
pub const OF_PLAN: [Field; 5] = [
    Field::PlanSleeve,
    Field::PlanTurn,
    Field::PlanShim,
    Field::PlanCut,
    Field::PlanHeight,
];

/// Shims that differ by no more are one size, told in two units.
const SAME_SHIM_M: f64 = 1e-7;

/// Whether two shims are of one size.
#[must_use]
pub fn is_same_shim(one: Length, other: Length) -> bool {
    (one.as_m() - other.as_m()).abs() <= SAME_SHIM_M
}

/// A tick that was taken back: what was done is undone, and older readings count no more
/// than before.
pub const TAKEN_BACK: &str = "done back";

/// In a tick of a shim: no shim of the hole's own was entered before.
const NO_OWN: &str = "-";

/// What is done at a hole, in the order of the shop.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Task {
    /// Its ledge is cut.
    Cut,
    /// A shim is laid on it, or taken out.
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
    /// The shim that lay there before; 0: none.
    pub shim_before: Length,
    /// Whether that was entered for this hole; else it is the engine's.
    pub shim_own: bool,
    /// What is cut off its ledge; 0: nothing.
    pub cut: Length,
    /// The heights that come of it, at the hole's own clocks.
    pub heights: Vec<Length>,
    /// What of it is done, in the order of [`Task::ALL`].
    pub done: [bool; 3],
    /// What tells it from another plan of this hole.
    name: String,
}

impl KeptHole {
    /// Whether a task is to be done here.
    #[must_use]
    pub fn wants(&self, task: Task) -> bool {
        match task {
            Task::Cut => self.cut.as_m() > 0.0,
            Task::Shim => !is_same_shim(self.shim, self.shim_before),
            Task::Sleeve => self.sleeve != self.cylinder || self.turn != 0,
        }
    }

    /// Whether it is ticked.
    #[must_use]
    pub const fn is_done(&self, task: Task) -> bool {
        self.done[task as usize]
    }

    /// Whether something is still to be done here.
    #[must_use]
    pub fn is_open(&self) -> bool {
        Task::ALL
            .into_iter()
            .any(|task| self.wants(task) && !self.is_done(task))
    }

    /// The text of a tick of a task as it now stands.
    #[must_use]
    pub fn tick(&self, task: Task) -> String {
        let said = format!("{DONE} {}", self.name);
        match task {
            Task::Cut | Task::Sleeve => said,
            Task::Shim if self.shim_own => format!("{said} {}", self.shim_before.as_m()),
            Task::Shim => format!("{said} {NO_OWN}"),
        }
    }

    /// Takes the ticks that are set for this very plan.
    fn take_ticks(&mut self, r: &Readings) -> Result<(), Lack> {
        for task in Task::ALL {
            let place = task.place(self.cylinder);
            r.job.reading(place).number()?;
            let Some(entry) = r.job.entries.get(place) else {
                continue;
            };
            let words: Vec<&str> = entry.text.split_whitespace().collect();
            let before = match (task, words.as_slice()) {
                (Task::Cut | Task::Sleeve, [done, name]) if self.is_named(done, name) => None,
                (Task::Shim, [done, name, before]) if self.is_named(done, name) => {
                    match before.parse::<f64>() {
                        Ok(before_m) if before_m.is_finite() => Some((before_m, true)),
                        _ if *before == NO_OWN => Some((r.engine(Field::Shim)?, false)),
                        _ => continue,
                    }
                }
                _ => continue,
            };
            if let Some((before_m, own)) = before {
                self.shim_before = Length::from_m(before_m);
                self.shim_own = own;
            }
            self.done[task as usize] = true;
        }
        Ok(())
    }

    fn is_named(&self, done: &str, name: &str) -> bool {
        done == DONE && name == self.name
    }
}

/// The job says otherwise than the plan that is kept in it.
fn no_longer_fits() -> Lack {
    Lack::Refused(Fault::new(
        "heights_plan",
        "the plan no longer fits: make a new one",
    ))
}

/// Holes of a bank, those left out too.
pub fn all_holes(job: &Job, bank: u8) -> impl Iterator<Item = u8> + '_ {
    (1..=job.engine.cylinders).filter(move |cylinder| job.engine.bank_of(*cylinder) == bank)
}

/// Whether anything of a plan is kept at a hole.
fn is_kept(job: &Job, cylinder: u8) -> bool {
    OF_PLAN
        .into_iter()
        .flat_map(|field| Place::all(Owner::Cylinder(cylinder), field))
        .any(|place| job.entries.get(place).is_some())
}

/// What tells one plan of a hole from another: a digest (FNV-1a) of its task and of the
/// moment it was taken.
fn name(job: &Job, cylinder: u8, numbers: &[f64]) -> String {
    let place = Place::of_cylinder(cylinder, Field::PlanSleeve, 0);
    let at = job.entries.get(place).map(|entry| entry.at);
    let text = format!("{at:?} {numbers:?}");
    let mixed = text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |mixed, byte| {
        (mixed ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    });
    format!("{mixed:016x}")
}

fn hole(job: &Job, cylinder: u8) -> Result<KeptHole, Lack> {
    let r = Readings::of_cylinder(job, cylinder);
    let one = |field| r.single(field);
    let (sleeve, turn) = (one(Field::PlanSleeve)?, one(Field::PlanTurn)?);
    let (shim_m, cut_m) = (one(Field::PlanShim)?, one(Field::PlanCut)?);
    let heights_m = r.complete(Field::PlanHeight)?;
    let lying = home::shim(&r)?;
    let numbers: Vec<f64> = [sleeve, turn, shim_m, cut_m]
        .into_iter()
        .chain(heights_m.iter().copied())
        .collect();
    let mut kept = KeptHole {
        cylinder,
        sleeve: sleeve as u8,
        turn: turn as u8,
        shim: Length::from_m(shim_m),
        shim_before: lying,
        shim_own: r.own(Field::ShimHere)?.is_some(),
        cut: Length::from_m(cut_m),
        heights: heights_m.into_iter().map(Length::from_m).collect(),
        done: [false; 3],
        name: name(job, cylinder, &numbers),
    };
    kept.take_ticks(&r)?;
    if kept.is_done(Task::Shim) && !is_same_shim(kept.shim, lying) {
        return Err(no_longer_fits());
    }
    Ok(kept)
}

/// The holes whose sleeves change places with that of `cylinder`, itself first.
#[must_use]
pub fn ring(plan: &[KeptHole], cylinder: u8) -> Vec<&KeptHole> {
    let mut ring: Vec<&KeptHole> = Vec::new();
    let mut next = cylinder;
    while let Some(hole) = plan.iter().find(|hole| hole.cylinder == next) {
        if ring.iter().any(|there| there.cylinder == next) {
            break;
        }
        ring.push(hole);
        next = hole.sleeve;
    }
    ring
}

/// The plan that a deck is worked to; `None` where there is none.
///
/// # Errors
/// A part of it missing or unusable, the list of holes in dispute; a plan that does not
/// fit the job: other holes, a sleeve in two of them, another shim than the one ticked,
/// sleeves that change places ticked by halves.
pub fn kept_plan(job: &Job, bank: u8) -> Result<Option<Vec<KeptHole>>, Lack> {
    job.dispute(Spot::LeftOut)?;
    if !all_holes(job, bank).any(|cylinder| is_kept(job, cylinder)) {
        return Ok(None);
    }
    let gets_sleeve = |cylinder| !job.left_out.contains(&cylinder);
    if all_holes(job, bank).any(|hole| is_kept(job, hole) != gets_sleeve(hole)) {
        return Err(no_longer_fits());
    }
    let plan: Vec<KeptHole> = job
        .cylinders_of(bank)
        .map(|cylinder| hole(job, cylinder))
        .collect::<Result<_, _>>()?;
    let mut sleeves: Vec<u8> = plan.iter().map(|hole| hole.sleeve).collect();
    sleeves.sort_unstable();
    let is_half = |hole: &KeptHole| {
        let done = hole.is_done(Task::Sleeve);
        ring(&plan, hole.cylinder)
            .iter()
            .any(|other| other.is_done(Task::Sleeve) != done)
    };
    if !sleeves.into_iter().eq(job.cylinders_of(bank)) || plan.iter().any(is_half) {
        return Err(no_longer_fits());
    }
    Ok(Some(plan))
}

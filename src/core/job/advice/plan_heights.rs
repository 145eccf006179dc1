//! A plan of the heights of a deck whose sleeves are left proud, from the job's own
//! readings: ledge depths and flange thicknesses (of plain sleeves step depths and
//! lengths), clock by clock, the shims at hand, the limits of the engine's sheet.
//!
//! Sleeve and hole change partners only before a sleeve is in. Numbers are taken as
//! they were read: a gauge that errs is told by the heights measured afterwards.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Lacks, Spot};
use crate::job::model::readings::Readings;
use crate::job::steps::home::{self, measured_by};
use crate::job::steps::kept_plan::{Task, is_same_shim};
use crate::job::steps::shims::{ListedShim, listed_shims};
use crate::job::steps::since_plan::{DEPTHS, older_than_work};
use crate::job::steps::stand_proud::proud_range;
use crate::planning::heights::{
    CLOCKS, HeightsInput, HeightsPlan, MOST_HOLES, Shim, heights_plan_of_stock,
};
use crate::quantity::Length;
use crate::quantity::report::Fault;

/// Choices that a plan may look at while a person waits. Five holes and twelve sizes,
/// the hardest that was tried, were refused after 1.2 s on a busy machine, natively.
const WORK: usize = 40_000_000;

/// What a plan is worked out from.
#[derive(Clone, Debug, PartialEq)]
pub struct HeightsNeeds {
    /// Which deck.
    pub bank: u8,
    /// Its holes that get sleeves, front to rear; sleeves are numbered alike.
    pub cylinders: Vec<u8>,
    /// Depth of each hole at its four clocks.
    holes: Vec<[Length; CLOCKS]>,
    /// Thickness of each sleeve at its four clocks.
    sleeves: Vec<[Length; CLOCKS]>,
    /// Shims as they lie now.
    shims_now: Vec<Length>,
    /// Shims at hand, and the place of each in the list of sizes.
    stock: Vec<(u8, Shim)>,
    cut_step: Length,
    cut_most: Length,
    proud: [Length; 2],
    spread_hole: Length,
    spread_neighbour: Length,
    spread_all: Length,
}

/// What a plan does at a hole.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedHole {
    /// The hole.
    pub cylinder: u8,
    /// The sleeve it gets, by its number now.
    pub sleeve: u8,
    /// Quarter turns clockwise, seen from above.
    pub turn: u8,
    /// The shim, by its place in the list of sizes (none: it lies in a hole and is not in
    /// the list), and its size.
    pub shim: Option<(Option<u8>, Length)>,
    /// The shim that lies there now; 0: none.
    pub shim_now: Length,
    /// What is cut off its ledge; 0: nothing.
    pub cut: Length,
    /// Heights as they would be with nothing done, at the hole's clocks.
    pub before: Vec<Length>,
    /// Heights as the plan leaves them.
    pub after: Vec<Length>,
}

impl PlannedHole {
    /// The shim that lies there afterwards; 0: none.
    #[must_use]
    pub fn shim_after(&self) -> Length {
        self.shim.map_or(Length::from_m(0.0), |(_, size)| size)
    }

    /// Whether a task is to be done here.
    #[must_use]
    pub fn wants(&self, task: Task) -> bool {
        match task {
            Task::Cut => self.cut.as_m() > 0.0,
            Task::Shim => !is_same_shim(self.shim_now, self.shim_after()),
            Task::Sleeve => self.sleeve != self.cylinder || self.turn != 0,
        }
    }

    /// Whether all stays as it is: every height afterwards is the height before.
    fn stays(&self) -> bool {
        let mut pairs = self.before.iter().zip(&self.after);
        !Task::ALL.into_iter().any(|task| self.wants(task))
            && pairs.all(|(before, after)| is_same_shim(*before, *after))
    }
}

/// A plan of heights, and how it compares.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedHeights {
    /// Hole by hole, front to rear.
    pub holes: Vec<PlannedHole>,
    /// The plan as it was found.
    pub plan: HeightsPlan,
}

impl PlannedHeights {
    /// Whether there is nothing to do.
    #[must_use]
    pub fn is_nothing(&self) -> bool {
        self.plan.possible && self.holes.iter().all(PlannedHole::stays)
    }

    /// At how many holes a task is to be done.
    #[must_use]
    pub fn count(&self, task: Task) -> usize {
        self.holes.iter().filter(|hole| hole.wants(task)).count()
    }
}

/// Four readings round the clock.
fn four(values: &[f64], from_m: f64) -> Option<[Length; CLOCKS]> {
    let all: Vec<Length> = values.iter().map(|m| Length::from_m(m - from_m)).collect();
    all.try_into().ok()
}

/// Shims that are left, each size with its count.
fn stock(job: &Job) -> Result<Vec<(u8, Shim)>, Lack> {
    let shim = |listed: ListedShim| Shim {
        size: listed.size,
        left: listed.left as usize,
    };
    let all = listed_shims(job)?.into_iter();
    Ok(all.map(|listed| (listed.index, shim(listed))).collect())
}

/// What a plan of a deck is worked out from; `None` of sleeves that stand on nothing
/// that could be cut or shimmed.
///
/// # Errors
/// Everything that is missing or cannot be used, at once.
pub fn heights_needs(job: &Job, bank: u8) -> Result<Option<HeightsNeeds>, Lacks> {
    let mut lacks = Lacks::default();
    let block = Readings::new(job, Owner::Bank(bank));
    let kind = block.sleeve_kind()?;
    let Some([long, deep]) = measured_by(kind) else {
        return Ok(None);
    };
    job.dispute(Spot::LeftOut).map_err(Lack::from)?;
    let cylinders: Vec<u8> = job.cylinders_of(bank).collect();
    let (mut above, mut depths, mut shims_now) = (Vec::new(), Vec::new(), Vec::new());
    for cylinder in &cylinders {
        let r = Readings::of_cylinder(job, *cylinder);
        above.extend(lacks.take(r.complete(long)));
        depths.extend(lacks.take(r.complete(deep)));
        shims_now.extend(lacks.take(home::shim(&r)));
        // A ledge that was cut since is as good as not measured.
        for field in DEPTHS {
            if let Some(Some(old)) = lacks.take(older_than_work(job, *cylinder, field)) {
                lacks.take::<()>(Err(Lack::Missing(old)));
            }
        }
    }
    let range = lacks.take(proud_range(&block));
    let mut limit = |field| lacks.take(block.length(field));
    let spreads = [Field::SpreadHole, Field::SpreadNeighbour, Field::SpreadAll].map(&mut limit);
    let cut_most = limit(Field::LedgeCutMost);
    // No cutting has no pass.
    let cut_step = match cut_most {
        Some(most) if most.as_m() > 0.0 => limit(Field::LedgeCutStep),
        _ => Some(Length::from_m(0.0)),
    };
    let stock = lacks.take(stock(job));
    let ([Some(spread_hole), Some(spread_neighbour), Some(spread_all)], true) =
        (spreads, lacks.is_empty())
    else {
        return Err(lacks);
    };
    let (Some([low, high]), Some(cut_most), Some(cut_step), Some(stock)) =
        (range, cut_most, cut_step, stock)
    else {
        return Err(lacks);
    };
    // Lengths of plain sleeves are taken from one plane, as everywhere.
    let all: Vec<f64> = above.iter().flatten().copied().collect();
    let plane_m = home::plane(kind, &all);
    let rows = |list: &[Vec<f64>]| -> Vec<[Length; CLOCKS]> {
        list.iter()
            .filter_map(|values| four(values, plane_m))
            .collect()
    };
    Ok(Some(HeightsNeeds {
        bank,
        holes: rows(&depths),
        sleeves: rows(&above),
        cylinders,
        shims_now,
        stock,
        cut_step,
        cut_most,
        proud: [Length::from_m(low), Length::from_m(high)],
        spread_hole,
        spread_neighbour,
        spread_all,
    }))
}

impl HeightsNeeds {
    /// Whether the deck has more holes than can be planned.
    #[must_use]
    pub const fn is_too_many(&self) -> bool {
        self.cylinders.len() > MOST_HOLES
    }

    /// Heights with nothing done, hole by hole: each with its own sleeve and its shim.
    fn before(&self) -> Vec<Vec<Length>> {
        let one = |((sleeve, hole), shim): ((&[Length; CLOCKS], &[Length; CLOCKS]), &Length)| {
            let height =
                |(t, d): (&Length, &Length)| Length::from_m(t.as_m() + shim.as_m() - d.as_m());
            sleeve.iter().zip(hole).map(height).collect()
        };
        let pairs = self.sleeves.iter().zip(&self.holes);
        pairs.zip(&self.shims_now).map(one).collect()
    }

    /// Shims of the plan: what is left of each size, and what lies in these holes.
    fn at_hand(&self) -> Vec<(Option<u8>, Shim)> {
        let listed = self.stock.iter().map(|(index, shim)| (Some(*index), *shim));
        let mut all: Vec<(Option<u8>, Shim)> = listed.collect();
        for lying in self.shims_now.iter().filter(|size| size.as_m() > 0.0) {
            match all
                .iter_mut()
                .find(|(_, shim)| is_same_shim(shim.size, *lying))
            {
                Some((_, shim)) => shim.left += 1,
                None => all.push((
                    None,
                    Shim {
                        size: *lying,
                        left: 1,
                    },
                )),
            }
        }
        all.retain(|(_, shim)| shim.left > 0);
        all
    }

    /// Works the plan out: the best, and of two alike the one that changes fewer shims.
    /// A hard one takes a second and more: only where it is looked at.
    ///
    /// # Errors
    /// More holes than can be planned, a pass that makes too many cuts, a search that
    /// would take too long.
    pub fn plan(&self) -> Result<PlannedHeights, Fault> {
        let at_hand = self.at_hand();
        let stock: Vec<Shim> = at_hand.iter().map(|(_, shim)| *shim).collect();
        let sizes: Vec<Length> = stock.iter().map(|shim| shim.size).collect();
        let input = HeightsInput {
            holes: &self.holes,
            sleeves: &self.sleeves,
            shims: &sizes,
            cut_step: self.cut_step,
            cut_most: self.cut_most,
            proud: self.proud,
            spread_hole: self.spread_hole,
            spread_neighbour: self.spread_neighbour,
            spread_all: self.spread_all,
        };
        let lies = |now: &Length| sizes.iter().position(|size| is_same_shim(*size, *now));
        let lying: Vec<Option<usize>> = self.shims_now.iter().map(lies).collect();
        let plan = heights_plan_of_stock(&input, &stock, &lying, WORK)?;
        let placed = plan.plan.iter().zip(&plan.height).zip(self.before());
        let holes = self
            .cylinders
            .iter()
            .zip(placed)
            .zip(&self.shims_now)
            .filter_map(|((cylinder, ((placed, after), before)), shim_now)| {
                let laid = placed.shim.and_then(|at| at_hand.get(at));
                Some(PlannedHole {
                    cylinder: *cylinder,
                    sleeve: *self.cylinders.get(placed.sleeve)?,
                    turn: placed.turn as u8,
                    shim: laid.map(|(index, shim)| (*index, shim.size)),
                    shim_now: *shim_now,
                    cut: placed.cut,
                    before,
                    after: after.to_vec(),
                })
            })
            .collect();
        Ok(PlannedHeights { holes, plan })
    }
}

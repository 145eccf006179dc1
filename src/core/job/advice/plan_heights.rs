//! A plan of the heights of a deck whose sleeves are left proud, from the job's own
//! readings: ledge depths and flange thicknesses (of plain sleeves step depths and
//! lengths), clock by clock, the shims at hand, the limits of the engine's sheet.
//!
//! Sleeve and hole change partners only before a sleeve is in. Numbers are taken as
//! they were read: a gauge that errs is told by the heights measured afterwards.

use crate::job::advice::pairs::move_sleeves;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::field_usual::SHIMS_MOST;
use crate::job::model::job::Job;
use crate::job::model::place::{Millis, Owner, Place};
use crate::job::model::reading::{Lack, Lacks, Missing, Spot};
use crate::job::model::readings::Readings;
use crate::job::steps::home::{self, measured_by};
use crate::job::steps::kept_plan::OF_PLAN;
use crate::job::steps::stand_proud::proud_range;
use crate::planning::heights::{
    CLOCKS, HeightsInput, HeightsPlan, MOST_HOLES, Shim, heights_plan_of_stock,
};
use crate::quantity::Length;
use crate::quantity::format::fixed;
use crate::quantity::report::Fault;

/// Choices that a plan may look at while a person waits: some half a second of a phone
/// that is not slow.
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
    /// The shim, by its place in the list of sizes, and its size.
    pub shim: Option<(u8, Length)>,
    /// What is cut off its ledge; 0: nothing.
    pub cut: Length,
    /// Heights as they would be with nothing done, at the hole's clocks.
    pub before: Vec<Length>,
    /// Heights as the plan leaves them.
    pub after: Vec<Length>,
}

/// A plan of heights, and how it compares.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedHeights {
    /// Hole by hole, front to rear.
    pub holes: Vec<PlannedHole>,
    /// The plan as it was found.
    pub plan: HeightsPlan,
}

/// Four readings round the clock.
fn four(values: &[f64], from_m: f64) -> Option<[Length; CLOCKS]> {
    let all: Vec<Length> = values.iter().map(|m| Length::from_m(m - from_m)).collect();
    all.try_into().ok()
}

/// Shims that are left, each size with its count.
fn stock(job: &Job) -> Result<Vec<(u8, Shim)>, Lack> {
    let mut all = Vec::new();
    for index in 0..SHIMS_MOST {
        let at = |field| {
            let place = Place {
                index,
                ..Place::of_engine(field)
            };
            job.reading(place).number()
        };
        let missing = |field| {
            Lack::Missing(Missing {
                owner: Owner::Block,
                field,
                places: 1,
            })
        };
        match (at(Field::ShimSizes)?, at(Field::ShimsLeft)?) {
            (None, None) => {}
            (None, Some(_)) => return Err(missing(Field::ShimSizes)),
            (Some(_), None) => return Err(missing(Field::ShimsLeft)),
            (Some(size), Some(left)) => all.push((
                index,
                Shim {
                    size: Length::from_m(size),
                    left: left as usize,
                },
            )),
        }
    }
    Ok(all)
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

    /// Works the plan out. It takes up to half a second: only where it is looked at.
    ///
    /// # Errors
    /// More holes than can be planned, a pass that makes too many cuts, a search that
    /// would take too long.
    pub fn plan(&self) -> Result<PlannedHeights, Fault> {
        let at_hand: Vec<&(u8, Shim)> = self
            .stock
            .iter()
            .filter(|(_, shim)| shim.left > 0)
            .collect();
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
        let plan = heights_plan_of_stock(&input, &stock, WORK)?;
        let placed = plan.plan.iter().zip(&plan.height).zip(self.before());
        let holes = self
            .cylinders
            .iter()
            .zip(placed)
            .filter_map(|(cylinder, ((placed, after), before))| {
                Some(PlannedHole {
                    cylinder: *cylinder,
                    sleeve: *self.cylinders.get(placed.sleeve)?,
                    turn: placed.turn as u8,
                    shim: placed
                        .shim
                        .and_then(|at| at_hand.get(at))
                        .map(|(index, shim)| (*index, shim.size)),
                    cut: placed.cut,
                    before,
                    after: after.to_vec(),
                })
            })
            .collect();
        Ok(PlannedHeights { holes, plan })
    }
}

/// A length as it is kept, in the job's unit: to a millionth of an inch, or to ten
/// nanometres.
fn kept(job: &Job, field: Field, length: Length, at: Millis) -> Entry {
    let unit = job.unit(field);
    let text = fixed(unit.from_si(length.as_m()), 6);
    Entry::new(text, unit, at)
}

/// Takes a plan to work to: keeps it hole by hole, numbers the sleeves to their holes
/// with what was read of them, turned as planned, and enters the shims.
pub fn take_heights_plan(job: &mut Job, planned: &PlannedHeights, at: Millis) {
    let moves: Vec<(u8, u8)> = planned
        .holes
        .iter()
        .map(|hole| (hole.sleeve, hole.cylinder))
        .collect();
    move_sleeves(job, &moves, at);
    for hole in &planned.holes {
        let place = |field| Place::of_cylinder(hole.cylinder, field, 0);
        turn(job, hole, at);
        let plain = |field: Field, n: u8| Entry::new(n.to_string(), job.unit(field), at);
        let (sleeve, turned) = (
            plain(Field::PlanSleeve, hole.sleeve),
            plain(Field::PlanTurn, hole.turn),
        );
        let shim = match hole.shim.and_then(|(index, _)| {
            let listed = Place {
                index,
                ..Place::of_engine(Field::ShimSizes)
            };
            job.entries.get(listed)
        }) {
            // As it was typed.
            Some(listed) => Entry::new(listed.text.clone(), listed.unit, at),
            None => Entry::new("0", job.unit(Field::PlanShim), at),
        };
        let cut = kept(job, Field::PlanCut, hole.cut, at);
        let heights: Vec<Entry> = hole
            .after
            .iter()
            .map(|h| kept(job, Field::PlanHeight, *h, at))
            .collect();
        for (field, entry) in [
            (Field::PlanSleeve, sleeve),
            (Field::PlanTurn, turned),
            (Field::PlanShim, shim.clone()),
            (Field::ShimHere, shim),
            (Field::PlanCut, cut),
        ] {
            job.entries.put(place(field), entry);
        }
        for (index, entry) in (0_u8..).zip(heights) {
            let at = Place::of_cylinder(hole.cylinder, Field::PlanHeight, index);
            job.entries.put(at, entry);
        }
        for place in Place::all(Owner::Cylinder(hole.cylinder), Field::PlanDone) {
            let unit = job.unit(Field::PlanDone);
            job.entries.put(place, Entry::new("", unit, at));
        }
    }
}

/// Turns what was read of a sleeve round the clock: its clock i stands on the hole's
/// i + turn.
fn turn(job: &mut Job, hole: &PlannedHole, at: Millis) {
    for field in [Field::FlangeThickness, Field::PlainLength] {
        let place = |index: u8| Place::of_cylinder(hole.cylinder, field, index);
        let count = CLOCKS as u8;
        let turned: Vec<Entry> = (0..count)
            .map(
                |index| match job.entries.get(place((index + count - hole.turn) % count)) {
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

/// Gives up the plan that a deck is worked to; what was done stays.
pub fn drop_heights_plan(job: &mut Job, bank: u8, at: Millis) {
    let holes: Vec<u8> = job.cylinders_of(bank).collect();
    for cylinder in holes {
        for field in OF_PLAN {
            for place in Place::all(Owner::Cylinder(cylinder), field) {
                let unit = job.unit(field);
                job.entries.put(place, Entry::new("", unit, at));
            }
        }
    }
}

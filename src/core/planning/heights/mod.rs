//! Heights of sleeves that stay proud and are not decked: which sleeve in which
//! hole, how turned, with which shim, with how much cut from its ledge.
//!
//! Limits of common makers' practice, as orders of magnitude only: proud 0.001
//! to 0.006 in, within one hole 0.002, neighbours 0.002, over all 0.004, one
//! shim at most, cut at most 0.004 with 0.001 a pass (published engine manuals;
//! the engine's own sheet decides).
//!
//! Exact: branch and bound over the holes in whole picometres (`search`, `window`). The
//! mean of a hole does not change with the turn, so of the turns that keep the
//! hole's own limits the first is the best; of each sleeve in a hole only shim
//! and cut are left to choose.

mod search;
mod stock;
mod window;

use crate::metrology::check_count;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Length, bounds};
use search::{FAR, Limits, Search, Solved};

pub use stock::{Shim, heights_plan_of_stock};

/// Clocks of a hole and of a sleeve.
pub const CLOCKS: usize = 4;
/// Most holes.
pub const MOST_HOLES: usize = 8;
/// Most sleeves.
pub const MOST_SLEEVES: usize = 16;
/// Most sizes of shims.
pub const MOST_SHIMS: usize = 16;
/// Most passes of a cut.
pub const MOST_CUTS: usize = 64;

/// Holes, sleeves, shims and limits.
#[derive(Clone, Copy, Debug)]
pub struct HeightsInput<'a> {
    /// Counterbore depth of each hole at its four clocks.
    pub holes: &'a [[Length; CLOCKS]],
    /// Flange thickness of each sleeve at its four clocks.
    pub sleeves: &'a [[Length; CLOCKS]],
    /// Shims at hand, each as often as wanted.
    pub shims: &'a [Length],
    /// Cuts are multiples of this; 0: none.
    pub cut_step: Length,
    /// Greatest cut.
    pub cut_most: Length,
    /// Each height lies between these.
    pub proud: [Length; 2],
    /// Greatest difference of the heights of one hole.
    pub spread_hole: Length,
    /// Greatest difference of the means of two neighbours.
    pub spread_neighbour: Length,
    /// Greatest difference of all means.
    pub spread_all: Length,
}

/// What is done at one hole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// Which sleeve.
    pub sleeve: usize,
    /// Quarter turns: the sleeve's clock i stands on the hole's i + turn.
    pub turn: usize,
    /// Which shim.
    pub shim: Option<usize>,
    /// Cut from the ledge.
    pub cut: Length,
}

/// A limit of heights.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeightLimit {
    /// How proud each height may stand.
    Proud,
    /// How far the heights of one hole may be apart.
    Hole,
    /// How far the means of two neighbours may be apart.
    Neighbour,
    /// How far all means may be apart.
    All,
}

impl HeightLimit {
    /// Its name and what it is, for a message.
    const fn words(self) -> &'static str {
        match self {
            Self::Proud => "proud_m, how proud each height may stand,",
            Self::Hole => "spread_hole_m, the heights within one hole,",
            Self::Neighbour => "spread_neighbour_m, the means of two neighbours,",
            Self::All => "spread_all_m, the means of all holes,",
        }
    }
}

/// A plan of heights.
#[derive(Clone, Debug, PartialEq)]
pub struct HeightsPlan {
    /// Whether it keeps every limit.
    pub possible: bool,
    /// Hole by hole.
    pub plan: Vec<Placed>,
    /// Heights of each hole at its own clocks.
    pub height: Vec<[Length; CLOCKS]>,
    /// Holes that are cut.
    pub cuts: usize,
    /// Shims used.
    pub shims: usize,
    /// Sleeves not in the hole of their number.
    pub moved: usize,
    /// Sleeves turned.
    pub turned: usize,
    /// Highest less lowest of the means.
    pub spread: Length,
    /// By how much it exceeds a limit at most, and the limit that stands in the way;
    /// nothing where it keeps them all.
    pub exceeds: Option<(HeightLimit, Length)>,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Most work of one search: choices looked at.
const MOST_WORK: usize = 400_000_000;
/// A metre in the whole units of the search.
const UNITS: f64 = 1e12;

/// The best plan of heights: possible, then fewest holes cut, fewest shims,
/// fewest moved, fewest turned, smallest spread of the means, then the first in
/// order (sleeve, turn, shim with none last, cut; hole by hole). Not possible: the
/// plan with the least excess over any limit, and a `stop`.
///
/// # Errors
/// No hole or more than 8, fewer sleeves than holes or more than 16, a list
/// without its four clocks, lengths outside their ranges, more than 64 cuts; a
/// search that would take too long is a fault at `holes`.
///
/// # Example
/// Worked by hand: two holes 0.002 in apart and two sleeves 0.002 in apart stand
/// alike when they are swapped.
/// ```
/// use coldseat_core::planning::heights::{HeightsInput, heights_plan};
/// use coldseat_core::quantity::Length;
/// let thou = Length::from_thou;
/// let plan = heights_plan(&HeightsInput {
///     holes: &[[thou(300.0); 4], [thou(302.0); 4]],
///     sleeves: &[[thou(306.0); 4], [thou(304.0); 4]],
///     shims: &[],
///     cut_step: thou(0.0),
///     cut_most: thou(0.0),
///     proud: [thou(1.0), thou(6.0)],
///     spread_hole: thou(2.0),
///     spread_neighbour: thou(2.0),
///     spread_all: thou(4.0),
/// })?;
/// assert!(plan.possible && plan.moved == 2 && plan.spread.as_thou().abs() < 1e-6);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn heights_plan(input: &HeightsInput) -> Result<HeightsPlan, Fault> {
    let search = input.search()?;
    let (solved, _) = search.best(MOST_WORK, 0, FAR).ok_or_else(too_many)?;
    Ok(input.told(&search, &solved.ok_or_else(too_many)?))
}

/// A search that would take too long.
fn too_many() -> Fault {
    Fault::new(
        "holes",
        "too many ways to look through: give fewer shims, coarser cuts or fewer spare sleeves",
    )
}

impl HeightsInput<'_> {
    /// What is searched, in units.
    fn search(&self) -> Result<Search, Fault> {
        let input = self;
        input.check()?;
        let units = |l: &Length| (l.as_m() * UNITS).round() as i64;
        let rows = |list: &[[Length; CLOCKS]]| -> Vec<[i64; CLOCKS]> {
            list.iter().map(|row| row.each_ref().map(units)).collect()
        };
        let cuts = input.cuts()?;
        let limits = Limits {
            proud: input.proud.each_ref().map(units),
            hole: units(&input.spread_hole),
            neighbour: units(&input.spread_neighbour),
            all: units(&input.spread_all),
        };
        let step = units(&input.cut_step);
        Ok(Search {
            holes: rows(input.holes),
            sleeves: rows(input.sleeves),
            shims: input.shims.iter().map(units).collect(),
            barred: Vec::new(),
            lying: Vec::new(),
            cuts: (0..=cuts).map(|i| i as i64 * step).collect(),
            limits,
        })
    }

    fn told(&self, search: &Search, solved: &Solved) -> HeightsPlan {
        let length = |units: i64| Length::from_m(units as f64 / UNITS);
        let plan: Vec<Placed> = solved
            .plan
            .iter()
            .map(|o| Placed {
                sleeve: o.sleeve,
                turn: o.turn,
                shim: o.shim,
                cut: length(search.cuts[o.cut]),
            })
            .collect();
        let count = |f: &dyn Fn(usize, &Placed) -> bool| {
            plan.iter().enumerate().filter(|(i, p)| f(*i, p)).count()
        };
        let height = solved
            .plan
            .iter()
            .enumerate()
            .map(|(hole, o)| search.heights(hole, o).map(length))
            .collect();
        let mut findings = Vec::new();
        let in_the_way = search
            .in_the_way(&solved.plan)
            .filter(|_| solved.excess > 0);
        if let Some(limit) = in_the_way {
            findings.push(Finding::stop(
                Code::NoPlan,
                format!(
                    "no plan keeps every limit: {} stands in the way, by {} mm at least. Get other \
                     shims or sleeves, or ask whether the ledges may be cut",
                    limit.words(),
                    crate::quantity::format::fixed(solved.excess as f64 / 1e9, 4),
                ),
            ));
        }
        HeightsPlan {
            possible: solved.excess == 0,
            cuts: count(&|_, p| p.cut.as_m() > 0.0),
            shims: count(&|_, p| p.shim.is_some()),
            moved: count(&|i, p| p.sleeve != i),
            turned: count(&|_, p| p.turn != 0),
            spread: Length::from_m(search.spread(&solved.plan) as f64 / UNITS / CLOCKS as f64),
            exceeds: in_the_way.map(|limit| (limit, length(solved.excess))),
            height,
            plan,
            findings,
        }
    }

    /// Number of cuts beyond none.
    fn cuts(&self) -> Result<usize, Fault> {
        let (step, most) = (self.cut_step.as_m(), self.cut_most.as_m());
        if step <= 0.0 {
            return Ok(0);
        }
        let count = ((most + crate::quantity::ties::ALLOWANCE_M) / step).floor();
        if count <= MOST_CUTS as f64 {
            return Ok(count as usize);
        }
        Err(Fault::new(
            "cut_step_m",
            format!("{step} m makes more than {MOST_CUTS} cuts up to {most} m: take a larger step"),
        ))
    }

    fn check(&self) -> Result<(), Fault> {
        let range = |field: &str, count: usize, lo: usize, hi: usize| {
            if (lo..=hi).contains(&count) {
                return Ok(());
            }
            Err(Fault::new(
                field,
                format!("{count} where {lo} to {hi} can be planned: give as many"),
            ))
        };
        range("holes", self.holes.len(), 1, MOST_HOLES)?;
        range(
            "sleeves",
            self.sleeves.len(),
            self.holes.len(),
            MOST_SLEEVES,
        )?;
        range("shims_m", self.shims.len(), 0, MOST_SHIMS)?;
        for (i, hole) in self.holes.iter().enumerate() {
            check_count(&format!("holes[{i}].depth_m"), hole.len(), CLOCKS)?;
            for (j, d) in hole.iter().enumerate() {
                bounds::DEPTH.check(&format!("holes[{i}].depth_m[{j}]"), d.as_m())?;
            }
        }
        for (i, sleeve) in self.sleeves.iter().enumerate() {
            for (j, t) in sleeve.iter().enumerate() {
                bounds::THICKNESS.check(&format!("sleeves[{i}].thickness_m[{j}]"), t.as_m())?;
            }
        }
        for (i, shim) in self.shims.iter().enumerate() {
            bounds::REMOVAL.check(&format!("shims_m[{i}]"), shim.as_m())?;
        }
        bounds::REMOVAL.check("cut_step_m", self.cut_step.as_m())?;
        bounds::REMOVAL.check("cut_most_m", self.cut_most.as_m())?;
        let [lo, hi] = self.proud.map(Length::as_m);
        bounds::HEIGHT.check("proud_m[0]", lo)?;
        bounds::HEIGHT.check("proud_m[1]", hi)?;
        if lo > hi {
            return Err(Fault::new(
                "proud_m",
                format!("the lower limit {lo} m is above the upper limit {hi} m: swap them"),
            ));
        }
        bounds::REMOVAL.check("spread_hole_m", self.spread_hole.as_m())?;
        bounds::REMOVAL.check("spread_neighbour_m", self.spread_neighbour.as_m())?;
        bounds::REMOVAL.check("spread_all_m", self.spread_all.as_m())?;
        Ok(())
    }
}

//! The search, in whole picometres: sums over the four clocks, so that ties are
//! ties.
//!
//! The means of a plan lie in a window as wide as the limit of all means allows. One
//! window after the other is looked through ([`super::window`]), goal by goal: is
//! there a plan, how little can it cost, how little can such a one spread, and which
//! of those is the first.

use super::window::{Memory, Order, Window};
use super::{CLOCKS, HeightLimit};
use crate::numerics::order::in_order;
use crate::quantity::ties::ALLOWANCE_M;

/// What a limit allows in favour of what was typed, in units.
const ALLOWED: i64 = (ALLOWANCE_M * super::UNITS) as i64;
/// Clocks, as a factor of sums.
const SUM: i64 = CLOCKS as i64;
/// What trying the turns of a sleeve in a hole takes, in choices looked at.
const TURNING: usize = 8;
/// More than any plan exceeds its limits by.
pub const FAR: i64 = 1 << 40;
/// More than any plan costs: no plan.
pub const NEVER: i64 = i64::MAX / 4;
/// What any plan may cost.
const ANY: i64 = NEVER - 1;

/// Limits, in units.
#[derive(Clone, Copy, Debug)]
pub struct Limits {
    pub proud: [i64; 2],
    pub hole: i64,
    pub neighbour: i64,
    pub all: i64,
}

/// What may be done at a hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Choice {
    pub sleeve: usize,
    pub turn: usize,
    pub shim: Option<usize>,
    /// Which of the cuts; 0: none.
    pub cut: usize,
    /// Sum of the four heights.
    pub sum: i64,
    /// Cut, shim changed, moved, turned: one digit each.
    pub cost: i64,
}

impl Choice {
    /// Order of plans that are alike otherwise; no shim comes last.
    pub fn order(&self) -> (usize, usize, usize, usize) {
        (
            self.sleeve,
            self.turn,
            self.shim.unwrap_or(usize::MAX),
            self.cut,
        )
    }
}

/// What a plan costs: cuts before shims before moves before turns.
pub fn cost(plan: &[Choice]) -> i64 {
    plan.iter().map(|c| c.cost).sum()
}

/// What sorting so many takes, in choices looked at.
fn sorting(count: usize) -> usize {
    2 * count * count.max(1).ilog2() as usize
}

/// A plan and by how much it exceeds its limits.
pub struct Solved {
    pub plan: Vec<Choice>,
    pub excess: i64,
}

/// Everything the search needs, in units.
pub struct Search {
    pub holes: Vec<[i64; CLOCKS]>,
    pub sleeves: Vec<[i64; CLOCKS]>,
    pub shims: Vec<i64>,
    /// Holes that may not have a shim, by hole and shim.
    pub barred: Vec<(usize, usize)>,
    /// Which shim lies in each hole already: left there it costs nothing, taken out or
    /// changed it does. Holes beyond the list have none.
    pub lying: Vec<Option<usize>>,
    pub cuts: Vec<i64>,
    pub limits: Limits,
}

impl Search {
    /// Heights of a hole at its own clocks.
    pub fn heights(&self, hole: usize, choice: &Choice) -> [i64; CLOCKS] {
        let lift = choice.shim.map_or(0, |s| self.shims[s]) - self.cuts[choice.cut];
        core::array::from_fn(|j| {
            let clock = (j + CLOCKS - choice.turn) % CLOCKS;
            self.sleeves[choice.sleeve][clock] + lift - self.holes[hole][j]
        })
    }

    /// Highest less lowest of the sums of heights.
    pub fn spread(&self, plan: &[Choice]) -> i64 {
        let high = plan.iter().map(|c| c.sum).max().unwrap_or(0);
        high - plan.iter().map(|c| c.sum).min().unwrap_or(0)
    }

    /// How far a hole's own limits are exceeded.
    fn own_excess(&self, heights: &[i64; CLOCKS]) -> [i64; 2] {
        let low = heights.iter().copied().min().unwrap_or(0);
        let high = heights.iter().copied().max().unwrap_or(0);
        let [least, most] = self.limits.proud;
        [
            (least - low).max(high - most) - ALLOWED,
            high - low - self.limits.hole - ALLOWED,
        ]
    }

    /// What may be done at each hole with every limit wider by `excess`, by height; `None`
    /// where that takes too long.
    fn choices(&self, excess: i64, memory: &mut Memory) -> Option<Vec<Vec<Choice>>> {
        let ways = (self.shims.len() + 1) * self.cuts.len() * self.sleeves.len();
        memory.work(self.holes.len() * ways * TURNING)?;
        let of_hole = |hole: usize| {
            let lies = self.lying.get(hole).copied().flatten();
            let mut all = Vec::new();
            let shims = (0..self.shims.len()).map(Some).chain([None]);
            let may_have =
                |shim: &Option<usize>| shim.is_none_or(|shim| !self.barred.contains(&(hole, shim)));
            for shim in shims.filter(may_have) {
                for cut in 0..self.cuts.len() {
                    for sleeve in 0..self.sleeves.len() {
                        let mut choice = Choice {
                            sleeve,
                            turn: 0,
                            shim,
                            cut,
                            sum: 0,
                            cost: 0,
                        };
                        let fits = (0..CLOCKS).find(|turn| {
                            choice.turn = *turn;
                            let own = self.own_excess(&self.heights(hole, &choice));
                            own[0].max(own[1]) <= excess
                        });
                        let Some(turn) = fits else { continue };
                        choice.turn = turn;
                        choice.sum = self.heights(hole, &choice).iter().sum();
                        let digits = [cut != 0, shim != lies, sleeve != hole, turn != 0];
                        choice.cost = digits.iter().fold(0, |c, d| 9 * c + i64::from(*d));
                        all.push(choice);
                    }
                }
            }
            all
        };
        // Of one sleeve at one height only the cheapest is ever wanted, and of those
        // the first.
        let leading = |all: Vec<Choice>| {
            let by = |c: &Choice| (c.sum, c.sleeve, c.cost, c.order());
            let mut kept: Vec<Choice> = Vec::new();
            for choice in in_order(all, |a, b| by(a).cmp(&by(b))) {
                let same = |k: &Choice| (k.sum, k.sleeve) == (choice.sum, choice.sleeve);
                if !kept.last().is_some_and(same) {
                    kept.push(choice);
                }
            }
            kept
        };
        let mut lists = Vec::new();
        for hole in 0..self.holes.len() {
            let all = of_hole(hole);
            memory.work(sorting(all.len()))?;
            lists.push(leading(all));
        }
        Some(lists)
    }

    /// The windows of a width in which plans may lie, each from a height that is
    /// there; `all` of them, or those alone that hold what no other holds.
    fn windows(
        choices: &[Vec<Choice>],
        width: i64,
        all: bool,
        memory: &mut Memory,
    ) -> Option<Vec<[i64; 2]>> {
        let heights: Vec<i64> = choices.iter().flatten().map(|c| c.sum).collect();
        memory.work(sorting(heights.len()))?;
        let mut heights: Vec<i64> = in_order(heights, i64::cmp);
        heights.dedup();
        let mut windows: Vec<[i64; 2]> = Vec::new();
        let mut to = 0;
        for low in &heights {
            let before = to;
            while heights.get(to).is_some_and(|h| *h <= low + width) {
                to += 1;
            }
            if all || to > before {
                windows.push([*low, low + width]);
            }
        }
        Some(windows)
    }

    /// By how much the plan that was found exceeds a limit at most, where there is one
    /// with every limit wider by `excess`; `None` where that takes too long.
    fn possible(&self, excess: i64, memory: &mut Memory) -> Option<Option<i64>> {
        let choices = self.choices(excess, memory)?;
        let [neighbour, all] = self.wider(excess);
        let mut plan = Vec::new();
        for ends in Self::windows(&choices, all, false, memory)? {
            let window = Window::open(&choices, ends, neighbour, ANY, memory)?;
            if let Some(window) = window
                && window.plan(ANY, Order::Cost, &mut plan, memory)?
            {
                return Some(Some(self.excess(&plan).min(excess)));
            }
        }
        Some(None)
    }

    /// By how much a plan exceeds a limit at most.
    fn excess(&self, plan: &[Choice]) -> i64 {
        let own = plan
            .iter()
            .enumerate()
            .flat_map(|(hole, choice)| self.own_excess(&self.heights(hole, choice)));
        let Limits { neighbour, all, .. } = self.limits;
        // Of sums, rounded up.
        let of_means = |apart: i64, limit: i64| {
            let over = apart - SUM * (limit + ALLOWED);
            over.div_euclid(SUM) + i64::from(over.rem_euclid(SUM) != 0)
        };
        let pairs = plan
            .windows(2)
            .map(|pair| of_means((pair[0].sum - pair[1].sum).abs(), neighbour));
        let apart = of_means(self.spread(plan), all);
        own.chain(pairs).fold(apart.max(0), i64::max)
    }

    /// Limits of neighbours and of all means, of sums, wider by `excess`.
    const fn wider(&self, excess: i64) -> [i64; 2] {
        [
            SUM * (self.limits.neighbour + ALLOWED + excess),
            SUM * (self.limits.all + ALLOWED + excess),
        ]
    }

    /// The best plan, and what is left of the work, in choices looked at; `None` where
    /// that is too little. It is known to exceed its limits by `least`, in units, at least;
    /// where it exceeds them by more than `most` it is not wanted.
    pub fn best(&self, work: usize, least: i64, most: i64) -> Option<(Option<Solved>, usize)> {
        let mut memory = Memory::new(self.sleeves.len(), work);
        // Its room is cleared as well.
        memory.work((1 << self.sleeves.len()) / 4)?;
        let solved = self.solve(least, most, &mut memory)?;
        Some((solved, memory.work))
    }

    fn solve(&self, least: i64, most: i64, memory: &mut Memory) -> Option<Option<Solved>> {
        let mut excess = least;
        if self.possible(least, memory)?.is_none() {
            let Some(mut high) = self.possible(most, memory)? else {
                return Some(None);
            };
            // The least excess, to the unit: a plan that is found says itself how good
            // it is.
            let mut low = least;
            while high - low > 1 {
                let middle = low + (high - low) / 2;
                match self.possible(middle, memory)? {
                    Some(found) => high = found,
                    None => low = middle,
                }
            }
            excess = high;
        }
        let choices = self.choices(excess, memory)?;
        let cheapest = self.cheapest(&choices, excess, memory)??;
        let evenest = self.evenest(&choices, excess, cheapest, memory)?;
        let plan = self.first(&choices, excess, &evenest, memory)??;
        Some(Some(Solved { plan, excess }))
    }

    /// A plan of the least cost; `None` where it takes too long, or where there is
    /// none.
    fn cheapest(
        &self,
        choices: &[Vec<Choice>],
        excess: i64,
        memory: &mut Memory,
    ) -> Option<Option<Vec<Choice>>> {
        let [neighbour, all] = self.wider(excess);
        let mut promising = Vec::new();
        for ends in Self::windows(choices, all, false, memory)? {
            if let Some(window) = Window::open(choices, ends, neighbour, ANY, memory)? {
                promising.push((window.least, ends));
            }
        }
        let (mut best, mut least) = (None, ANY + 1);
        let mut plan = Vec::new();
        for (promise, ends) in in_order(promising, Ord::cmp) {
            if promise >= least {
                break;
            }
            let Some(window) = Window::open(choices, ends, neighbour, least - 1, memory)? else {
                continue;
            };
            while window.least < least && window.plan(least - 1, Order::Cost, &mut plan, memory)? {
                least = cost(&plan);
                best = Some(plan.clone());
            }
        }
        Some(best)
    }

    /// A plan that costs no more than one given, of the least spread; `None` where it
    /// takes too long.
    fn evenest(
        &self,
        choices: &[Vec<Choice>],
        excess: i64,
        cheapest: Vec<Choice>,
        memory: &mut Memory,
    ) -> Option<Vec<Choice>> {
        let neighbour = self.wider(excess)[0];
        let budget = cost(&cheapest);
        let (mut spread, mut best) = (self.spread(&cheapest), cheapest);
        let mut plan = Vec::new();
        for [low, _] in Self::windows(choices, 0, true, memory)? {
            while spread > 0 {
                let ends = [low, low + spread - 1];
                let Some(window) = Window::open(choices, ends, neighbour, budget, memory)? else {
                    break;
                };
                if !window.plan(budget, Order::Cost, &mut plan, memory)? {
                    break;
                }
                spread = self.spread(&plan);
                best.clone_from(&plan);
            }
        }
        Some(best)
    }

    /// The first plan in order that costs and spreads no more than one given; `None`
    /// where it takes too long, or where there is none.
    fn first(
        &self,
        choices: &[Vec<Choice>],
        excess: i64,
        evenest: &[Choice],
        memory: &mut Memory,
    ) -> Option<Option<Vec<Choice>>> {
        let neighbour = self.wider(excess)[0];
        let budget = cost(evenest);
        let order = |plan: &[Choice]| plan.iter().map(Choice::order).collect::<Vec<_>>();
        let mut best: Option<Vec<Choice>> = None;
        let mut plan = Vec::new();
        for ends in Self::windows(choices, self.spread(evenest), true, memory)? {
            let Some(window) = Window::open(choices, ends, neighbour, budget, memory)? else {
                continue;
            };
            if window.plan(budget, Order::Plan, &mut plan, memory)?
                && best.as_ref().is_none_or(|b| order(&plan) < order(b))
            {
                best = Some(plan.clone());
            }
        }
        Some(best)
    }

    /// The limit that a plan exceeds the most.
    pub fn in_the_way(&self, plan: &[Choice]) -> Option<HeightLimit> {
        let mut worst = (0, None);
        let mut look = |over: i64, limit| {
            if over > worst.0 {
                worst = (over, Some(limit));
            }
        };
        for (hole, choice) in plan.iter().enumerate() {
            let own = self.own_excess(&self.heights(hole, choice));
            look(SUM * own[0], HeightLimit::Proud);
            look(SUM * own[1], HeightLimit::Hole);
        }
        for pair in plan.windows(2) {
            let apart = (pair[0].sum - pair[1].sum).abs();
            look(
                apart - SUM * (self.limits.neighbour + ALLOWED),
                HeightLimit::Neighbour,
            );
        }
        look(
            self.spread(plan) - SUM * (self.limits.all + ALLOWED),
            HeightLimit::All,
        );
        worst.1
    }
}

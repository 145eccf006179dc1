//! Branch and bound over the holes, in whole picometres: sums over the four
//! clocks, so that ties are ties.

use super::CLOCKS;
use crate::numerics::order::in_order;
use crate::quantity::ties::ALLOWANCE_M;

/// What a limit allows in favour of what was typed, in units.
const ALLOWED: i64 = (ALLOWANCE_M * super::UNITS) as i64;
/// Clocks, as a factor of sums.
const SUM: i64 = CLOCKS as i64;
/// Most steps of one search.
const MOST_STEPS: usize = 4_000_000;

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
    sum: i64,
    /// Cut, shim, moved, turned: one digit each.
    cost: i64,
}

impl Choice {
    /// Order of plans that are alike otherwise; no shim comes last.
    fn order(&self) -> (usize, usize, usize, usize) {
        (
            self.sleeve,
            self.turn,
            self.shim.unwrap_or(usize::MAX),
            self.cut,
        )
    }
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
    pub cuts: Vec<i64>,
    pub limits: Limits,
}

/// What is looked for.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Aim {
    /// Any plan.
    Any,
    /// The least cost, then the least spread.
    Best,
    /// The first in order with just this cost and this spread.
    First(i64, i64),
}

/// A search under way.
struct Walk<'a> {
    choices: &'a [Vec<Choice>],
    neighbour: i64,
    all: i64,
    aim: Aim,
    plan: Vec<Choice>,
    best: Option<(i64, i64, Vec<Choice>)>,
    steps: usize,
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

    /// What may be done at each hole with every limit wider by `excess`.
    fn choices(&self, excess: i64) -> Vec<Vec<Choice>> {
        let of_hole = |hole: usize| {
            let mut all = Vec::new();
            let shims = (0..self.shims.len()).map(Some).chain([None]);
            for shim in shims {
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
                        let digits = [cut != 0, shim.is_some(), sleeve != hole, turn != 0];
                        choice.cost = digits.iter().fold(0, |c, d| 9 * c + i64::from(*d));
                        all.push(choice);
                    }
                }
            }
            all
        };
        (0..self.holes.len()).map(of_hole).collect()
    }

    fn walk(
        &self,
        choices: &[Vec<Choice>],
        excess: i64,
        aim: Aim,
    ) -> Option<Option<(i64, i64, Vec<Choice>)>> {
        let mut walk = Walk {
            choices,
            neighbour: SUM * (self.limits.neighbour + ALLOWED + excess),
            all: SUM * (self.limits.all + ALLOWED + excess),
            aim,
            plan: Vec::new(),
            best: None,
            steps: 0,
        };
        walk.go(0, i64::MIN, i64::MAX, 0);
        (walk.steps <= MOST_STEPS).then_some(walk.best)
    }

    /// The best plan; `None` where the search would take too long.
    pub fn best(&self) -> Option<Solved> {
        let possible = |excess: i64| -> Option<bool> {
            let choices = self.choices(excess);
            Some(self.walk(&choices, excess, Aim::Any)?.is_some())
        };
        let mut excess = 0;
        if !possible(0)? {
            // The least excess, to the unit.
            let (mut low, mut high) = (0, 1_i64 << 40);
            while high - low > 1 {
                let middle = low + (high - low) / 2;
                if possible(middle)? {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            excess = high;
        }
        let by_cost = |a: &Choice, b: &Choice| (a.cost, a.order()).cmp(&(b.cost, b.order()));
        let choices: Vec<Vec<Choice>> = self
            .choices(excess)
            .into_iter()
            .map(|c| in_order(c, by_cost))
            .collect();
        let (cost, spread, _) = self.walk(&choices, excess, Aim::Best)??;
        let choices: Vec<Vec<Choice>> = choices
            .into_iter()
            .map(|c| in_order(c, |a, b| a.order().cmp(&b.order())))
            .collect();
        let (_, _, plan) = self.walk(&choices, excess, Aim::First(cost, spread))??;
        Some(Solved { plan, excess })
    }

    /// The limit that a plan exceeds the most.
    pub fn in_the_way(&self, plan: &[Choice]) -> &'static str {
        let mut worst = (0, "no limit");
        let mut look = |over: i64, name| {
            if over > worst.0 {
                worst = (over, name);
            }
        };
        for (hole, choice) in plan.iter().enumerate() {
            let own = self.own_excess(&self.heights(hole, choice));
            look(SUM * own[0], "proud_m, how proud each height may stand,");
            look(SUM * own[1], "spread_hole_m, the heights within one hole,");
        }
        for pair in plan.windows(2) {
            let apart = (pair[0].sum - pair[1].sum).abs();
            look(
                apart - SUM * (self.limits.neighbour + ALLOWED),
                "spread_neighbour_m, the means of two neighbours,",
            );
        }
        look(
            self.spread(plan) - SUM * (self.limits.all + ALLOWED),
            "spread_all_m, the means of all holes,",
        );
        worst.1
    }
}

impl Walk<'_> {
    fn is_over(&self) -> bool {
        self.steps > MOST_STEPS || (self.aim != Aim::Best && self.best.is_some())
    }

    /// Least cost of the holes from `hole` on, each by itself, with means that go
    /// with those placed; `None` where a hole has none.
    fn least(&self, hole: usize, high: i64, low: i64) -> Option<i64> {
        let mut sum = 0;
        for choices in &self.choices[hole..] {
            let open = |c: &&Choice| {
                (high == i64::MIN || (high - c.sum <= self.all && c.sum - low <= self.all))
                    && self.plan.iter().all(|p| p.sleeve != c.sleeve)
            };
            sum += choices.iter().filter(open).map(|c| c.cost).min()?;
        }
        Some(sum)
    }

    /// Whether a plan of this cost and spread so far can still be what is aimed at.
    fn may_be(&self, cost: i64, spread: i64) -> bool {
        match (self.aim, &self.best) {
            (Aim::Any, _) | (Aim::Best, None) => true,
            (Aim::Best, Some((c, s, _))) => (cost, spread) < (*c, *s),
            (Aim::First(c, s), _) => cost <= c && spread <= s,
        }
    }

    fn go(&mut self, hole: usize, high: i64, low: i64, cost: i64) {
        self.steps += 1;
        if self.is_over() {
            return;
        }
        let spread = if high == i64::MIN { 0 } else { high - low };
        let choices = self.choices;
        let Some(here) = choices.get(hole) else {
            let fits = match self.aim {
                Aim::First(c, s) => (cost, spread) == (c, s),
                Aim::Any | Aim::Best => self.may_be(cost, spread),
            };
            if fits {
                self.best = Some((cost, spread, self.plan.clone()));
            }
            return;
        };
        let Some(rest) = self.least(hole, high, low) else {
            return;
        };
        if !self.may_be(cost + rest, spread) {
            return;
        }
        let before = self.plan.last().map(|p| p.sum);
        for choice in here {
            if self.is_over() {
                return;
            }
            let (top, bottom) = (high.max(choice.sum), low.min(choice.sum));
            let near = before.is_none_or(|b| (b - choice.sum).abs() <= self.neighbour);
            if !near
                || top - bottom > self.all
                || self.plan.iter().any(|p| p.sleeve == choice.sleeve)
                || !self.may_be(cost + choice.cost, top - bottom)
            {
                continue;
            }
            self.plan.push(*choice);
            self.go(hole + 1, top, bottom, cost + choice.cost);
            self.plan.pop();
        }
    }
}

//! The plans whose means all lie in one window of heights.
//!
//! Between two ends that are fixed only two things couple the holes: no sleeve is
//! used twice, and neighbours stand near each other. Each alone is solved exactly,
//! and is a bound of both together: the cheapest sleeves for the holes that are
//! left, neighbours forgotten ([`Window::rest`], by the set of sleeves used), and
//! the cheapest way along the row, sleeves used as often as one likes
//! ([`Window::along`]). Where the larger of the two exceeds what may still be spent
//! there is no plan. What failed once, with these sleeves used and this height
//! before, fails again with as little to spend.

use super::search::{Choice, NEVER};
use crate::numerics::order::in_order;
use pathfinding::prelude::{Matrix, kuhn_munkres_min};

/// More than any plan costs, as often as there are holes and no overflow.
const TOO_DEAR: i64 = 1 << 40;
/// Failures remembered at a time, a power of two.
const REMEMBERED: usize = 1 << 14;

/// What may be done at each hole of a window.
pub struct Window<'a> {
    /// By height.
    holes: Vec<&'a [Choice]>,
    /// Least cost of a choice and of the holes behind it, sleeves free.
    along: Vec<Vec<i64>>,
    /// Least cost of each hole by its sleeve.
    cheapest: Vec<Vec<i64>>,
    neighbour: i64,
    /// No plan costs less.
    pub least: i64,
}

/// What a search keeps from window to window: room, and the work it has done.
pub struct Memory {
    /// Least cost of the holes left, by the sleeves used.
    rest: Vec<(u64, i64)>,
    /// Sleeves used, height before, and what was too little to spend.
    failed: Vec<(u64, u32, i64, i64)>,
    turn: u64,
    /// Work left.
    pub work: usize,
}

impl Memory {
    pub fn new(sleeves: usize, work: usize) -> Self {
        Self {
            rest: vec![(0, 0); 1 << sleeves],
            failed: vec![(0, 0, 0, 0); REMEMBERED],
            turn: 0,
            work,
        }
    }

    /// Takes from the work that is left; `None` where none is.
    pub fn work(&mut self, steps: usize) -> Option<()> {
        self.work = self.work.checked_sub(steps)?;
        Some(())
    }
}

/// The choices of a list by height whose heights lie between two.
fn between(list: &[Choice], low: i64, high: i64) -> &[Choice] {
    let from = list.partition_point(|c| c.sum < low);
    let to = list.partition_point(|c| c.sum <= high);
    &list[from..to.max(from)]
}

/// In which order choices are tried.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Order {
    /// What promises the least cost first: a plan is soon found.
    Cost,
    /// As plans are ordered: the first plan found is the first of all.
    Plan,
}

impl<'a> Window<'a> {
    /// The window between two heights; `None` where a hole has none in it, or no way
    /// along the row costs as little as `budget`.
    pub fn open(
        lists: &'a [Vec<Choice>],
        [low, high]: [i64; 2],
        neighbour: i64,
        budget: i64,
        memory: &mut Memory,
    ) -> Option<Option<Self>> {
        let holes: Vec<&[Choice]> = lists.iter().map(|l| between(l, low, high)).collect();
        memory.work(holes.len())?;
        if holes.iter().any(|hole| hole.is_empty()) {
            return Some(None);
        }
        memory.work(holes.iter().map(|hole| hole.len()).sum())?;
        let mut least = 0;
        for hole in &holes {
            let Some(cost) = hole.iter().map(|c| c.cost).min() else {
                return Some(None);
            };
            least += cost;
        }
        if least > budget {
            return Some(None);
        }
        let mut window = Self {
            along: holes.iter().map(|h| vec![0; h.len()]).collect(),
            cheapest: Vec::new(),
            holes,
            neighbour,
            least: 0,
        };
        window.look_along();
        let along = window.along.first().and_then(|a| a.iter().copied().min());
        let Some(along) = along.filter(|cost| *cost <= budget) else {
            return Some(None);
        };
        let sleeves = memory.rest.len().trailing_zeros() as usize;
        for (hole, along) in window.holes.iter().zip(&window.along) {
            let mut cheapest = vec![NEVER; sleeves];
            for (choice, along) in hole.iter().zip(along) {
                if *along < NEVER {
                    let best = &mut cheapest[choice.sleeve];
                    *best = choice.cost.min(*best);
                }
            }
            window.cheapest.push(cheapest);
        }
        memory.turn += 1;
        memory.work(sleeves * window.holes.len().pow(2))?;
        let rest = window.assigned();
        window.least = rest.max(along);
        Some((rest <= budget).then_some(window))
    }

    /// Least cost with no sleeve used twice, neighbours forgotten: what [`Self::rest`]
    /// says of all holes, found faster by the assignment.
    fn assigned(&self) -> i64 {
        let columns = self.cheapest.first().map_or(0, Vec::len); // a window has holes
        let weights = Matrix::from_fn(self.cheapest.len(), columns, |(hole, sleeve)| {
            self.cheapest[hole][sleeve].min(TOO_DEAR)
        });
        match kuhn_munkres_min(&weights).0 {
            cost if cost < TOO_DEAR => cost,
            _ => NEVER,
        }
    }

    /// Least costs along the row, from its end.
    fn look_along(&mut self) {
        for hole in (0..self.holes.len()).rev() {
            let next = hole + 1;
            let costs: Vec<i64> = match self.holes.get(next) {
                None => self.holes[hole].iter().map(|c| c.cost).collect(),
                Some(behind) => {
                    let costs = &self.along[next];
                    // Heights rise, and with them the ends of what is near.
                    let (mut from, mut to) = (0, 0);
                    // Those near that may yet be the least, rising, from `first` on.
                    let (mut least, mut first): (Vec<usize>, usize) = (Vec::new(), 0);
                    let near = |c: &Choice| {
                        let is_below =
                            |at: usize, high: i64| behind.get(at).is_some_and(|b| b.sum <= high);
                        while is_below(to, c.sum + self.neighbour) {
                            while least.len() > first
                                && least.last().is_some_and(|i| costs[*i] >= costs[to])
                            {
                                least.pop();
                            }
                            least.push(to);
                            to += 1;
                        }
                        while is_below(from, c.sum - self.neighbour - 1) {
                            from += 1;
                        }
                        while least.get(first).is_some_and(|i| *i < from) {
                            first += 1;
                        }
                        match least.get(first) {
                            Some(i) if costs[*i] < NEVER => c.cost + costs[*i],
                            _ => NEVER,
                        }
                    };
                    self.holes[hole].iter().map(near).collect()
                }
            };
            self.along[hole] = costs;
        }
    }

    /// Least cost of the holes from `hole` on with other sleeves than those used,
    /// neighbours forgotten; `None` where the work is used up.
    fn rest(&self, hole: usize, used: u32, memory: &mut Memory) -> Option<i64> {
        let Some(cheapest) = self.cheapest.get(hole) else {
            return Some(0);
        };
        let (turn, known) = memory.rest[used as usize];
        if turn == memory.turn {
            return Some(known);
        }
        memory.work(cheapest.len())?;
        let mut least = NEVER;
        for (sleeve, cost) in cheapest.iter().enumerate() {
            if *cost < least && used & (1 << sleeve) == 0 {
                let behind = self.rest(hole + 1, used | 1 << sleeve, memory)?;
                least = least.min(cost + behind);
            }
        }
        memory.rest[used as usize] = (memory.turn, least);
        Some(least)
    }

    /// A plan that costs at most `budget`, into `plan`; `None` where the work is
    /// used up.
    pub fn plan(
        &self,
        budget: i64,
        order: Order,
        plan: &mut Vec<Choice>,
        memory: &mut Memory,
    ) -> Option<bool> {
        plan.clear();
        self.go(0, budget, order, plan, memory)
    }

    fn go(
        &self,
        used: u32,
        budget: i64,
        order: Order,
        plan: &mut Vec<Choice>,
        memory: &mut Memory,
    ) -> Option<bool> {
        let hole = plan.len();
        let (Some(here), Some(along)) = (self.holes.get(hole), self.along.get(hole)) else {
            return Some(true);
        };
        let before = plan.last().map(|c| c.sum);
        let place = before.map(|sum| {
            let mixed = (sum as u64 ^ u64::from(used) << 40).wrapping_mul(0x9e37_79b9_7f4a_7c15);
            (mixed >> 50) as usize % REMEMBERED
        });
        if let (Some(sum), Some(place)) = (before, place) {
            let (turn, sleeves, height, spent) = memory.failed[place];
            if (turn, sleeves, height) == (memory.turn, used, sum) && budget <= spent {
                return Some(false);
            }
        }
        let near = match before {
            Some(sum) => between(here, sum - self.neighbour, sum + self.neighbour),
            None => here,
        };
        let from = near
            .first()
            .map_or(0, |first| here.partition_point(|c| c.sum < first.sum));
        memory.work(near.len() + 1)?;
        let mut open: Vec<(i64, &Choice)> = Vec::new();
        for (choice, along) in near.iter().zip(&along[from..]) {
            if *along > budget || used & (1 << choice.sleeve) != 0 {
                continue;
            }
            let rest = self.rest(hole + 1, used | 1 << choice.sleeve, memory)?;
            let least = (choice.cost + rest).max(*along);
            if least <= budget {
                open.push((least, choice));
            }
        }
        let open = in_order(open, |a, b| match order {
            Order::Cost => (a.0, a.1.order()).cmp(&(b.0, b.1.order())),
            Order::Plan => a.1.order().cmp(&b.1.order()),
        });
        for (_, choice) in open {
            plan.push(*choice);
            let left = budget - choice.cost;
            if self.go(used | 1 << choice.sleeve, left, order, plan, memory)? {
                return Some(true);
            }
            plan.pop();
        }
        if let (Some(sum), Some(place)) = (before, place) {
            memory.failed[place] = (memory.turn, used, sum, budget);
        }
        Some(false)
    }
}

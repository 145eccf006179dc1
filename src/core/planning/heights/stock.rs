//! The same of shims of which only so many are left.
//!
//! Exact: the best plan of unlimited shims is looked for first. Where it takes more of
//! a size than are left, one of the holes that have it has to do without, so the best
//! plan with each of them barred from it is looked for in turn, the most promising
//! first. Barring can only make a plan worse: the first that keeps the stock is the
//! best of all.

use super::search::{FAR, Search, Solved, cost};
use super::{HeightsInput, HeightsPlan, too_many};
use crate::quantity::Length;
use crate::quantity::report::Fault;

/// A size of shims at hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shim {
    /// Its thickness, m, above 0.
    pub size: Length,
    /// How many are left.
    pub left: usize,
}

/// Plans looked at for one that keeps the stock, at most.
const MOST_PLANS: usize = 400;

/// Excess, cost, spread, and the order of plans that are alike otherwise.
type Rank = (i64, i64, i64, Vec<(usize, usize, usize, usize)>);

/// A plan that is looked at.
struct Tried {
    barred: Vec<(usize, usize)>,
    solved: Solved,
}

impl Tried {
    /// In which order plans are better.
    fn rank(&self, search: &Search) -> Rank {
        let plan = &self.solved.plan;
        let order = plan.iter().map(super::search::Choice::order).collect();
        (self.solved.excess, cost(plan), search.spread(plan), order)
    }

    /// The holes that share a size of which there are not as many.
    fn too_many_of(&self, stock: &[Shim]) -> Option<(usize, Vec<usize>)> {
        stock.iter().enumerate().find_map(|(shim, size)| {
            let plan = self.solved.plan.iter().enumerate();
            let with: Vec<usize> = plan
                .filter(|(_, choice)| choice.shim == Some(shim))
                .map(|(hole, _)| hole)
                .collect();
            (with.len() > size.left).then_some((shim, with))
        })
    }
}

/// The best plan of heights with no more shims of a size than are left, as
/// [`super::heights_plan`] ranks them; `input.shims` are the sizes of `stock`. `work` is how many
/// choices may be looked at, all together: some hundred million a second.
///
/// # Errors
/// As [`super::heights_plan`]; a search that would take more work is a fault at `holes`.
///
/// # Example
/// Worked by hand: two holes are 2 thou too deep, and there is one shim of 2 thou and
/// one of 3. Unlimited both would take 2 thou; so one takes 3, and stands at 2 thou
/// where the other stands at 1.
/// ```
/// use coldseat_core::planning::heights::{HeightsInput, Shim, heights_plan_of_stock};
/// use coldseat_core::quantity::Length;
/// let thou = Length::from_thou;
/// let stock = [2.0, 3.0].map(|size| Shim { size: thou(size), left: 1 });
/// let input = HeightsInput {
///     holes: &[[thou(301.0); 4]; 2],
///     sleeves: &[[thou(300.0); 4]; 2],
///     shims: &stock.map(|shim| shim.size),
///     cut_step: thou(0.0),
///     cut_most: thou(0.0),
///     proud: [thou(1.0), thou(6.0)],
///     spread_hole: thou(2.0),
///     spread_neighbour: thou(2.0),
///     spread_all: thou(4.0),
/// };
/// let plan = heights_plan_of_stock(&input, &stock, 1_000_000)?;
/// assert!(plan.possible && plan.shims == 2);
/// assert!((plan.spread.as_thou() - 1.0).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn heights_plan_of_stock(
    input: &HeightsInput,
    stock: &[Shim],
    work: usize,
) -> Result<HeightsPlan, Fault> {
    let mut search = input.search()?;
    let (solved, mut work) = search.best(work, 0, FAR).ok_or_else(too_many)?;
    let solved = solved.ok_or_else(too_many)?; // there is always a plan to look at
    // No plan that exceeds its limits by more than one that keeps the stock is wanted.
    let mut most = FAR;
    let mut open = vec![Tried {
        barred: Vec::new(),
        solved,
    }];
    let mut seen: Vec<Vec<(usize, usize)>> = vec![Vec::new()];
    loop {
        let best = open
            .iter()
            .enumerate()
            .min_by_key(|(_, tried)| tried.rank(&search))
            .map(|(at, _)| at)
            .ok_or_else(too_many)?; // without shims there is always a plan to look at
        let tried = open.swap_remove(best);
        let Some((shim, holes)) = tried.too_many_of(stock) else {
            return Ok(input.told(&search, &tried.solved));
        };
        for hole in holes {
            let mut barred = tried.barred.clone();
            barred.push((hole, shim));
            barred.sort_unstable();
            if seen.contains(&barred) {
                continue;
            }
            if seen.len() >= MOST_PLANS {
                return Err(too_many());
            }
            seen.push(barred.clone());
            search.barred.clone_from(&barred);
            let least = tried.solved.excess;
            let (solved, left) = search.best(work, least, most).ok_or_else(too_many)?;
            work = left;
            if let Some(solved) = solved {
                let next = Tried { barred, solved };
                if next.too_many_of(stock).is_none() {
                    most = most.min(next.solved.excess);
                }
                open.push(next);
            }
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::planning::heights::{HeightLimit, heights_plan};

    const fn thou(t: f64) -> Length {
        Length::from_thou(t)
    }

    fn input<'a>(
        holes: &'a [[Length; 4]],
        sleeves: &'a [[Length; 4]],
        shims: &'a [Length],
    ) -> HeightsInput<'a> {
        HeightsInput {
            holes,
            sleeves,
            shims,
            cut_step: thou(0.0),
            cut_most: thou(0.0),
            proud: [thou(1.0), thou(6.0)],
            spread_hole: thou(2.0),
            spread_neighbour: thou(2.0),
            spread_all: thou(4.0),
        }
    }

    /// Every way by hand: with one shim of 2 thou left of three holes that each want one,
    /// no plan keeps the limits; with three each hole stands at 1 thou. What stands in the
    /// way is the least height, by 2 thou: -1 where 1 is wanted.
    #[test]
    fn what_is_not_there_is_not_planned() {
        let holes = [[thou(301.0); 4]; 3];
        let sleeves = [[thou(300.0); 4]; 3];
        let sizes = [thou(2.0)];
        let input = input(&holes, &sleeves, &sizes);
        let of = |left| {
            let stock = [Shim {
                size: thou(2.0),
                left,
            }];
            heights_plan_of_stock(&input, &stock, 10_000_000).unwrap()
        };
        assert!(of(3).possible && of(3).shims == 3);
        let short = of(1);
        assert!(!short.possible && short.shims <= 1);
        let (limit, by) = short.exceeds.unwrap();
        assert_eq!(limit, HeightLimit::Proud);
        assert!((by.as_thou() - 2.0).abs() < 1e-3, "{}", by.as_thou());
        // Too little work is said, not worked through.
        let stock = [Shim {
            size: thou(2.0),
            left: 1,
        }];
        assert!(heights_plan_of_stock(&input, &stock, 3).is_err());
    }

    /// All ways of two holes, two sleeves, two sizes by brute force: with stock for all
    /// the plan is the unlimited one; with one of each no size is used twice, and no way
    /// that keeps that is cheaper.
    #[test]
    fn with_enough_of_each_it_is_the_plan_of_unlimited_shims() {
        let mut rng = fastrand::Rng::with_seed(17);
        for _ in 0..60 {
            let mut row = |about: f64| {
                core::array::from_fn::<Length, 4, _>(|_| {
                    thou(about + 0.1 * f64::from(rng.i32(-9..9)))
                })
            };
            let holes = [row(300.0), row(301.5), row(303.0)];
            let sleeves = [row(304.0), row(304.5), row(303.5)];
            let sizes = [1.0, 2.0].map(thou);
            let input = input(&holes, &sleeves, &sizes);
            let of = |left| {
                let stock = sizes.map(|size| Shim { size, left });
                heights_plan_of_stock(&input, &stock, 50_000_000).unwrap()
            };
            let unlimited = heights_plan(&input).unwrap();
            assert_eq!(of(3), unlimited);
            let one = of(1);
            for shim in 0..2 {
                assert!(one.plan.iter().filter(|p| p.shim == Some(shim)).count() <= 1);
            }
            assert!(unlimited.possible || !one.possible);
        }
    }
}

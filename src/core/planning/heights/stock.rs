//! The same of shims of which only so many are left.
//!
//! What lies in a hole already counts: leaving it there is no work, taking it out is.
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
/// [`super::heights_plan`] ranks them, but for one thing: `lying` says which of the sizes
/// lies in each hole already (as deep as the list goes; counted in `left`), and where
/// `heights_plan` counts shims this counts holes whose shim changes. `input.shims` are the
/// sizes of `stock`. `work` is how many choices may be looked at, all together: some
/// hundred million a second.
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
/// let plan = heights_plan_of_stock(&input, &stock, &[], 1_000_000)?;
/// assert!(plan.possible && plan.shims == 2);
/// assert!((plan.spread.as_thou() - 1.0).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn heights_plan_of_stock(
    input: &HeightsInput,
    stock: &[Shim],
    lying: &[Option<usize>],
    work: usize,
) -> Result<HeightsPlan, Fault> {
    let mut search = input.search()?;
    search.lying = lying.to_vec();
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
            heights_plan_of_stock(&input, &stock, &[], 10_000_000).unwrap()
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
        assert!(heights_plan_of_stock(&input, &stock, &[], 3).is_err());
    }

    /// How many changed shims, moves and turns a way takes; `None` where it breaks a limit. Written
    /// anew from the meaning of the limits, sharing nothing with the search.
    fn cost_of(
        input: &HeightsInput,
        sleeves: &[usize; 3],
        [turns, shims]: [usize; 2],
        lying: [usize; 3],
    ) -> Option<([usize; 3], [usize; 2])> {
        let mut means = Vec::new();
        let (mut cost, mut used) = ([0; 3], [0; 2]);
        for (hole, sleeve) in sleeves.iter().enumerate() {
            let turn = turns / 4_usize.pow(hole as u32) % 4;
            let shim = shims / 3_usize.pow(hole as u32) % 3;
            let lift = match shim {
                0 => 0.0,
                n => input.shims[n - 1].as_thou(),
            };
            let mut heights = [0.0; 4];
            for clock in 0..4 {
                let there = (clock + turn) % 4;
                let thickness = input.sleeves[*sleeve][clock].as_thou();
                heights[there] = thickness + lift - input.holes[hole][there].as_thou();
            }
            let high = heights.iter().copied().fold(f64::MIN, f64::max);
            let low = heights.iter().copied().fold(f64::MAX, f64::min);
            let [least, most] = input.proud.map(|l| l.as_thou());
            let hair = 1e-6;
            if low < least - hair || high > most + hair {
                return None;
            }
            if high - low > input.spread_hole.as_thou() + hair {
                return None;
            }
            means.push(heights.iter().sum::<f64>() / 4.0);
            cost[0] += usize::from(shim != lying[hole]);
            cost[1] += usize::from(*sleeve != hole);
            cost[2] += usize::from(turn > 0);
            if shim > 0 {
                used[shim - 1] += 1;
            }
        }
        let apart = |pair: &[f64]| (pair[0] - pair[1]).abs();
        let near = input.spread_neighbour.as_thou() + 1e-6;
        let all = means.iter().copied().fold(f64::MIN, f64::max)
            - means.iter().copied().fold(f64::MAX, f64::min);
        let holds = means.windows(2).all(|pair| apart(pair) <= near)
            && all <= input.spread_all.as_thou() + 1e-6;
        holds.then_some((cost, used))
    }

    /// The least of all ways that keep the limits, with no size used more often than `left`.
    fn cheapest(input: &HeightsInput, left: usize, lying: [usize; 3]) -> Option<[usize; 3]> {
        const ORDERS: [[usize; 3]; 6] = [
            [0, 1, 2],
            [0, 2, 1],
            [1, 0, 2],
            [1, 2, 0],
            [2, 0, 1],
            [2, 1, 0],
        ];
        let ways = ORDERS.iter().flat_map(|order| {
            (0..64).flat_map(move |turns| (0..27).map(move |shims| (order, [turns, shims])))
        });
        ways.filter_map(|(order, numbers)| cost_of(input, order, numbers, lying))
            .filter(|(_, used)| used.iter().all(|n| *n <= left))
            .map(|(cost, _)| cost)
            .min()
    }

    /// All 10,368 ways of three holes, three sleeves and two sizes: with stock for all the
    /// plan is the unlimited one, and as cheap as the cheapest of all ways; with one of each
    /// as cheap as the cheapest that uses no size twice, and there is one where there is; with
    /// two of each and shims that lie already, as cheap as the one that changes fewest.
    #[test]
    fn no_way_that_keeps_the_stock_is_cheaper() {
        let mut rng = fastrand::Rng::with_seed(17);
        let mut possible = 0;
        for _ in 0..40 {
            let mut row = |about: f64| {
                core::array::from_fn::<Length, 4, _>(|_| {
                    thou(about + 0.1 * f64::from(rng.i32(-16..16)))
                })
            };
            let holes = [row(300.0), row(301.5), row(303.0)];
            let sleeves = [row(304.0), row(304.5), row(303.5)];
            let sizes = [1.0, 2.0].map(thou);
            let input = input(&holes, &sleeves, &sizes);
            let unlimited = heights_plan(&input).unwrap();
            for left in [3, 1, 2] {
                let stock = sizes.map(|size| Shim { size, left });
                // None lies anywhere, then one somewhere: 0 none, 1 the first size.
                let lying = [0, 1, 2].map(|_| if left == 2 { rng.usize(0..3) } else { 0 });
                let lies = lying.map(|n: usize| n.checked_sub(1));
                let plan = heights_plan_of_stock(&input, &stock, &lies, 50_000_000).unwrap();
                if left == 3 {
                    assert_eq!(plan, unlimited);
                }
                for shim in 0..2 {
                    let used = plan.plan.iter().filter(|p| p.shim == Some(shim)).count();
                    assert!(used <= left);
                }
                let placed = plan.plan.iter().zip(lies);
                let changed = placed.filter(|(p, lies)| p.shim != *lies).count();
                let found = plan.possible.then_some([changed, plan.moved, plan.turned]);
                assert_eq!(found, cheapest(&input, left, lying));
                possible += usize::from(plan.possible);
            }
        }
        assert!((10..120).contains(&possible), "{possible} of 120");
    }

    /// Eight holes with shims under every other sleeve, all within limits: by the meaning of
    /// the ranks nothing is to be done, and that is found with a tenth of the work that
    /// a page allows.
    #[test]
    fn a_good_deck_is_left_as_it_is() {
        let shim = 2.0;
        let mut holes = [[thou(0.0); 4]; 8];
        let mut sleeves = [[thou(0.0); 4]; 8];
        for hole in 0..8 {
            let lies = if hole % 2 == 0 { shim } else { 0.0 };
            for clock in 0..4 {
                let here = 0.1 * f64::from((hole * 3 + clock * 5) as u32 % 7);
                sleeves[hole][clock] = thou(300.0 + 0.3 * hole as f64);
                holes[hole][clock] = thou(300.0 + 0.3 * hole as f64 + lies - 3.0 - here);
            }
        }
        let sizes = [1.0, shim, 3.0, 4.0, 5.0, 6.0].map(thou);
        let stock = sizes.map(|size| Shim { size, left: 4 });
        let lies = core::array::from_fn::<_, 8, _>(|hole| (hole % 2 == 0).then_some(1));
        let input = input(&holes, &sleeves, &sizes);
        let plan = heights_plan_of_stock(&input, &stock, &lies, 4_000_000).unwrap();
        assert!(plan.possible && plan.moved == 0 && plan.turned == 0 && plan.cuts == 0);
        let shims: Vec<_> = plan.plan.iter().map(|placed| placed.shim).collect();
        assert_eq!(shims, lies);
    }
}

//! Pairing: which sleeve goes in which hole so that the honing is least.
//!
//! In this order: as few pairs as can be whose bore is already too big, the
//! least worst stock, the least stock in all, and then the smallest numbers
//! first. With as many sleeves as bores the total is the same for every
//! pairing; spares make it matter. Least total is not least worst: the two
//! objectives differ.
//!
//! The assignment itself is the Hungarian method of the library `pathfinding`,
//! on whole picometres, so that ties are ties.

use crate::numerics::order::in_order;
use pathfinding::prelude::{Matrix, kuhn_munkres_min};

use crate::metrology::{check_each, check_some};
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Diameter, DiametralInterference, Length};

/// Most sleeves, and most bores.
pub const MOST: usize = 64;

/// A pairing.
#[derive(Clone, Debug, PartialEq)]
pub struct Pairing {
    /// For each sleeve the index of its bore; `None`: a spare.
    pub bore_for_sleeve: Vec<Option<usize>>,
    /// For each sleeve the stock to hone from its bore, on diameter.
    pub stock: Vec<Option<Length>>,
    /// Largest stock.
    pub worst_stock: Length,
    /// All stock together.
    pub total_stock: Length,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// One unit of the integer costs: a picometre. Stock below -1 of them is a
/// bore that is too big.
const UNIT_M: f64 = 1e-12;
/// Cost of a bore that is too big: above any sum of stocks (64 x 4 m).
const TOO_BIG: i128 = 1 << 50;
/// Cost of what is not allowed: above any sum of the former.
const NOT_ALLOWED: i128 = 1 << 58;
/// Room for the order of the indices below one unit of cost.
const ORDER: i128 = 1 << 61;
/// Sleeves ordered in one pass: 65^10 lies below [`ORDER`].
const PASS: usize = 10;

/// Pairs sleeves with bores (as bored) for a target interference.
///
/// # Errors
/// No sleeve or bore, more than 64, diameters or target outside their ranges.
///
/// # Example
/// Two sleeves, two bores, worked by hand: crossing them leaves one bore too
/// big.
/// ```
/// use coldseat_core::planning::pairing::pairing;
/// use coldseat_core::quantity::{Diameter, DiametralInterference};
/// let p = pairing(
///     &[4.2512, 4.2516].map(Diameter::from_inch),
///     &[4.2500, 4.2503].map(Diameter::from_inch),
///     DiametralInterference::from_inch(0.0010),
/// )?;
/// assert_eq!(p.bore_for_sleeve, [Some(0), Some(1)]);
/// assert!((p.worst_stock.as_thou() - 0.3).abs() < 1e-6);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn pairing(
    sleeves: &[Diameter],
    bores: &[Diameter],
    target: DiametralInterference,
) -> Result<Pairing, Fault> {
    check_some("sleeve_d_m", sleeves.len(), MOST)?;
    check_some("bore_d_m", bores.len(), MOST)?;
    check_each(
        &bounds::DIAMETER,
        "sleeve_d_m",
        sleeves.iter().map(|d| d.as_m()),
    )?;
    check_each(
        &bounds::DIAMETER,
        "bore_d_m",
        bores.iter().map(|d| d.as_m()),
    )?;
    let target_m = bounds::INTERFERENCE.check("target_m", target.as_m())?;
    let table = StockTable::new(sleeves, bores, target_m);
    let bore_for_sleeve = table.best();
    let stock: Vec<Option<f64>> = bore_for_sleeve
        .iter()
        .zip(sleeves)
        .map(|(j, s)| j.map(|j| s.as_m() - target_m - bores[j].as_m()))
        .collect();
    let all = || stock.iter().flatten().copied();
    let mut findings = Vec::new();
    if all().any(|s| s < -UNIT_M) {
        findings.push(Finding::stop(
            Code::BoreTooBig,
            "a bore is already too big for the fit in every pairing: choose a larger sleeve for \
             it, or look whether a reading is wrong",
        ));
    }
    Ok(Pairing {
        worst_stock: Length::from_m(all().fold(f64::MIN, f64::max)),
        total_stock: Length::from_m(all().sum()),
        stock: stock.into_iter().map(|s| s.map(Length::from_m)).collect(),
        bore_for_sleeve,
        findings,
    })
}

/// Stocks in whole picometres; columns beyond the bores stand for "spare".
struct StockTable {
    sleeves: Vec<i128>,
    bores: Vec<i128>,
    columns: usize,
}

impl StockTable {
    fn new(sleeves: &[Diameter], bores: &[Diameter], target_m: f64) -> Self {
        // Rounded apart, so that sums over whole pairings tie exactly.
        let units = |m: f64| (m / UNIT_M).round() as i128;
        Self {
            sleeves: sleeves.iter().map(|d| units(d.as_m() - target_m)).collect(),
            bores: bores.iter().map(|d| units(d.as_m())).collect(),
            columns: sleeves.len().max(bores.len()),
        }
    }

    fn stock(&self, i: usize, j: usize) -> Option<i128> {
        self.bores.get(j).map(|b| self.sleeves[i] - b)
    }

    fn assign(&self, cost: impl Fn(usize, usize) -> i128) -> (i128, Vec<usize>) {
        let n = self.sleeves.len();
        kuhn_munkres_min(&Matrix::from_fn(n, self.columns, |(i, j)| cost(i, j)))
    }

    /// Cost of a pair under a ceiling on its stock, without the stock itself.
    fn allowed(&self, i: usize, j: usize, ceiling: i128) -> i128 {
        match self.stock(i, j) {
            Some(s) if s > ceiling => NOT_ALLOWED,
            Some(s) if s < -1 => TOO_BIG,
            _ => 0,
        }
    }

    /// Least ceiling at which as few bores are too big as without one.
    fn ceiling(&self) -> i128 {
        let levels: Vec<i128> = (0..self.sleeves.len())
            .flat_map(|i| (0..self.bores.len()).filter_map(move |j| self.stock(i, j)))
            .collect();
        let mut levels = in_order(levels, i128::cmp);
        levels.dedup();
        let cost = |ceiling| self.assign(|i, j| self.allowed(i, j, ceiling)).0;
        let highest = levels.last().copied().unwrap_or(0);
        let fewest = cost(highest);
        let at = levels.partition_point(|&level| cost(level) > fewest);
        levels.get(at).copied().unwrap_or(highest)
    }

    fn best(&self) -> Vec<Option<usize>> {
        let ceiling = self.ceiling();
        let mut fixed: Vec<usize> = Vec::new();
        let spare = |j: usize| j >= self.bores.len();
        let first = |i: usize, j: usize| -> i128 {
            self.allowed(i, j, ceiling) + self.stock(i, j).unwrap_or(0)
        };
        while fixed.len() < self.sleeves.len() {
            let done = fixed.len();
            let (_, found) = self.assign(|i, j| {
                if i < done && j != fixed[i] {
                    return NOT_ALLOWED * ORDER;
                }
                let place = (done + PASS)
                    .checked_sub(i + 1)
                    .filter(|p| i >= done && *p < PASS);
                let order = place.map_or(0, |p| {
                    let digit = if spare(j) { MOST } else { j } as i128;
                    digit * 65_i128.pow(p as u32)
                });
                first(i, j) * ORDER + order
            });
            fixed = found[..(done + PASS).min(found.len())].to_vec();
        }
        fixed
            .into_iter()
            .map(|j| (!spare(j)).then_some(j))
            .collect()
    }
}

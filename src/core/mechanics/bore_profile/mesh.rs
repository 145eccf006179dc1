//! The mesh: lines in radius and height, graded toward ledge, ends and the
//! edges of a jacket, and which cells belong to sleeve and block.

use super::BoreProfileInput;
use super::element::{NODES, PLACES, line_shapes};
use crate::numerics::order::in_order;

/// How finely a profile is meshed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fineness {
    /// Cells through the sleeve's wall.
    pub wall: usize,
    /// Width of the cells beside joint and flange, over those of the wall.
    pub edge: f64,
    /// Height of the cells at the ledge, over the wall.
    pub first: f64,
    /// Height of the cells at every other end and edge, over the wall.
    pub end: f64,
    /// Growth from one cell to the next.
    pub growth: f64,
    /// Largest cell over the decay length of a ring's end.
    pub largest: f64,
}

/// The usual mesh: the profile within 1 % of its limit.
pub const USUAL: Fineness = Fineness {
    wall: 3,
    edge: 1.0,
    first: 0.15,
    end: 0.15,
    growth: 1.5,
    largest: 0.8,
};

/// The same with narrower cells at the ledge's corners.
pub const FINE: Fineness = drawn_together(0.125);
/// The same with cells half as wide there.
pub const FINER: Fineness = drawn_together(0.0625);

const fn drawn_together(edge: f64) -> Fineness {
    Fineness {
        edge,
        first: 0.25 * edge,
        ..USUAL
    }
}

/// The two bodies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Body {
    /// The sleeve with its flange.
    Sleeve,
    /// The block.
    Block,
}

/// Lines and the places that matter. Heights run up from the block's foot.
#[derive(Clone, Debug)]
pub struct Mesh {
    /// Radii, rising.
    pub r: Vec<f64>,
    /// Heights, rising.
    pub z: Vec<f64>,
    /// Index of the joint's radius.
    pub joint: usize,
    /// Index of the flange's radius; that of the joint without a flange.
    pub flange: usize,
    /// Index of the sleeve's lower end.
    pub foot: usize,
    /// Index of the ledge; the top without a flange.
    pub ledge: usize,
    /// Jacket: index of its wall's radius, of its bottom and of its top.
    pub jacket: Option<[usize; 3]>,
    /// Sets of radii, each with all of the one before it; the last has all.
    levels: Vec<Vec<usize>>,
    /// Which of them divides each row.
    level: Vec<usize>,
}

/// Movements of a cell's nodes on one of its edges from those of its
/// neighbour's, which is wider.
pub type Hung = [[f64; 3]; 3];

/// A cell may be as long as this part of the whole height.
const LONGEST_SHARE: f64 = 24.0;
/// A flange, however wide, has few more cells than this.
const WIDE: f64 = 12.0;
/// Width of the innermost cell over the bore's radius.
const NARROW: f64 = 0.5;
/// Width of a cell over its distance from a corner toward which they shrink.
const SPREADS: f64 = 0.7;
/// Two dimensions closer than this are one, m.
const SAME_M: f64 = 1e-7;

impl Mesh {
    /// The mesh of a checked input.
    #[must_use]
    pub fn new(input: &BoreProfileInput, fine: &Fineness) -> Self {
        let (a, b) = (
            input.sleeve_inner.radius().as_m(),
            input.sleeve_outer.radius().as_m(),
        );
        let c = input.block_outer.radius().as_m();
        let wall = b - a;
        let below = input.below.as_m();
        let ledge = below + input.length.as_m();
        let flange = input
            .flange
            .map(|f| (f.outer.radius().as_m(), f.thickness.as_m()));
        let top = ledge + flange.map_or(0.0, |f| f.1);
        let jacket = input
            .jacket
            .map(|j| (b + j.wall.as_m(), j.bottom.as_m(), top - j.deck.as_m()));
        let mut radii = vec![a, b, c];
        let mut heights = vec![0.0, below, ledge, top];
        radii.extend(flange.map(|f| f.0));
        // The gas' edge is a step of load: it wants a line of its own.
        let edge = top - input.gas_depth.map_or(0.0, |depth| depth.as_m());
        if input.gas.as_pa() > 0.0 && below < edge {
            heights.push(edge);
        }
        if let Some((r, low, high)) = jacket {
            radii.push(r);
            heights.extend([low, high]);
        }
        let radii = sorted(radii);
        let heights = sorted(heights);
        let decay = (b * wall).sqrt();
        let cell = wall / fine.wall as f64;
        let radius = |f: (f64, f64)| f.0;
        let r = across(&radii, b, flange.map(radius), cell, fine.edge >= 1.0);
        let corners: Vec<f64> = [Some(b), flange.map(radius)]
            .into_iter()
            .flatten()
            .collect();
        let (r, levels) = toward(r, &corners, cell, fine.edge);
        let first = |height: f64| {
            let at_ledge = (height - ledge).abs() < 2.0 * SAME_M;
            wall * if at_ledge { fine.first } else { fine.end }
        };
        // Far from every end the profile is straight: long parts get long cells.
        let largest = (fine.largest * decay).max(top / LONGEST_SHARE);
        let mut z = vec![heights[0]];
        for pair in heights.windows(2) {
            let sizes = Sizes {
                first: [first(pair[0]), first(pair[1])],
                growth: fine.growth,
                largest,
            };
            divide(&mut z, pair[1], &sizes);
        }
        // As wide as a row is far from the ledge its cells may be.
        let level = z
            .windows(2)
            .map(|row| {
                let far = (row[0] - ledge).max(ledge - row[1]).max(0.0);
                let halvings = (cell / far.max(1e-3 * cell)).log2().max(0.0);
                (halvings.ceil() as usize + 1).min(levels.len() - 1)
            })
            .collect();
        let find = |lines: &[f64], x: f64| {
            lines
                .iter()
                .position(|l| (l - x).abs() < 2.0 * SAME_M)
                .unwrap_or(0)
        };
        Self {
            joint: find(&r, b),
            flange: flange.map_or_else(|| find(&r, b), |f| find(&r, f.0)),
            foot: find(&z, below),
            ledge: find(&z, ledge),
            jacket: jacket.map(|(rj, low, high)| [find(&r, rj), find(&z, low), find(&z, high)]),
            r,
            z,
            levels,
            level,
        }
    }

    /// Multiplications of a factorization, nearly: of every equation the square
    /// of how far back it reaches, which is as far as there are in a row.
    #[must_use]
    pub fn work(&self) -> f64 {
        (0..self.rows())
            .map(|row| (6.0 * self.lines(row).len() as f64 - 2.0).powi(3))
            .sum()
    }

    /// Radii, by index, between which the cells of a row lie.
    #[must_use]
    pub fn lines(&self, row: usize) -> &[usize] {
        &self.levels[self.level[row]]
    }

    /// The cell of a row that holds a column: its radii, by index.
    #[must_use]
    pub fn span(&self, column: usize, row: usize) -> [usize; 2] {
        let lines = self.lines(row);
        let next = lines
            .partition_point(|l| *l <= column)
            .clamp(1, lines.len() - 1);
        [lines[next - 1], lines[next]]
    }

    /// Nodes of the cell of a row that holds a column, on the grid of half
    /// steps. Where a neighbour above or below is wider, the cell hangs on its
    /// nodes.
    #[must_use]
    pub fn nodes(&self, column: usize, row: usize) -> [(usize, usize); NODES] {
        let own = self.span(column, row);
        let [below, above] = self.beside(row).map(|other| {
            let wider = other.filter(|other| self.level[*other] < self.level[row]);
            wider.map_or(own, |other| self.span(column, other))
        });
        PLACES.map(|(di, dj)| {
            let [from, to] = [below, own, above][dj];
            ([2 * from, from + to, 2 * to][di], 2 * row + dj)
        })
    }

    /// How the cell's own movements at its lower and upper edge hang on those of
    /// its nodes; `None` where they are the same.
    #[must_use]
    pub fn hung(&self, column: usize, row: usize) -> [Option<Hung>; 2] {
        let own = self.span(column, row);
        self.beside(row).map(|other| {
            let other = other.filter(|other| self.level[*other] < self.level[row])?;
            let wide = self.span(column, other);
            (wide != own).then(|| {
                let [[from, to], [low, high]] = [own, wide].map(|s| s.map(|i| self.r[i]));
                [from, 0.5 * (from + to), to]
                    .map(|r| line_shapes(2.0 * (r - low) / (high - low) - 1.0))
            })
        })
    }

    /// The rows below and above.
    fn beside(&self, row: usize) -> [Option<usize>; 2] {
        [
            row.checked_sub(1),
            Some(row + 1).filter(|above| *above < self.rows()),
        ]
    }

    /// Height of a row of half steps.
    #[must_use]
    pub fn half_height(&self, row: usize) -> f64 {
        let (low, high) = (self.z[row / 2], self.z[row.div_ceil(2)]);
        0.5 * (low + high)
    }

    /// Radius of a column of half steps.
    #[must_use]
    pub fn half_radius(&self, column: usize) -> f64 {
        0.5 * (self.r[column / 2] + self.r[column.div_ceil(2)])
    }

    /// Columns of cells.
    #[must_use]
    pub fn columns(&self) -> usize {
        self.r.len() - 1
    }

    /// Rows of cells.
    #[must_use]
    pub fn rows(&self) -> usize {
        self.z.len() - 1
    }

    /// Which body fills a cell.
    #[must_use]
    pub fn body(&self, column: usize, row: usize) -> Option<Body> {
        let in_flange = row >= self.ledge;
        let outside = if in_flange { self.flange } else { self.joint };
        if column < outside {
            return (row >= self.foot).then_some(Body::Sleeve);
        }
        match self.jacket {
            Some([wall, low, high]) if column >= wall && (low..high).contains(&row) => None,
            _ => Some(Body::Block),
        }
    }
}

/// Radii of the widest cells.
fn across(radii: &[f64], b: f64, flange: Option<f64>, cell: f64, is_usual: bool) -> Vec<f64> {
    let [a, c] = [radii[0], radii[radii.len() - 1]];
    let mut r = vec![a];
    for pair in radii.windows(2) {
        let sizes = if pair[1] <= b + SAME_M {
            Sizes {
                // Round a narrow bore everything changes within its radius;
                // where stress is read, the inside's cell is halved.
                first: [
                    cell.min(NARROW * a) * if is_usual { 1.0 } else { 0.5 },
                    cell,
                ],
                growth: 1.5,
                largest: cell,
            }
        } else if flange.is_some_and(|f| pair[1] <= f + SAME_M) {
            // What the ledge bears is found out here.
            Sizes {
                first: [if is_usual { 0.5 * cell } else { cell }; 2],
                growth: 1.5,
                largest: (2.0 * cell).max((pair[1] - pair[0]) / WIDE),
            }
        } else {
            // Away from the joint the block may be coarse.
            Sizes {
                first: [cell.max(0.5 * (pair[1] - pair[0])).min(2.0 * cell), 1e9],
                growth: 2.0,
                largest: 0.5 * c,
            }
        };
        divide(&mut r, pair[1], &sizes);
    }
    r
}

/// Cells halved toward corners until those at them are of `edge` times `cell`:
/// all radii, and the sets of them on the way, by index.
fn toward(mut r: Vec<f64>, corners: &[f64], cell: f64, edge: f64) -> (Vec<f64>, Vec<Vec<usize>>) {
    let mut sets = vec![r.clone()];
    let mut size = cell;
    while size > 1.01 * edge * cell {
        size *= 0.5;
        let far = |from: f64, to: f64| {
            corners
                .iter()
                .map(|at| (from - at).max(at - to).max(0.0))
                .fold(f64::MAX, f64::min)
        };
        let mut halved = vec![r[0]];
        for pair in r.windows(2) {
            if pair[1] - pair[0] > 1.4 * size + SPREADS * far(pair[0], pair[1]) {
                halved.push(0.5 * (pair[0] + pair[1]));
            }
            halved.push(pair[1]);
        }
        r = halved;
        sets.push(r.clone());
    }
    let index = |x: &f64| r.partition_point(|l| l < x);
    let levels = sets.iter().map(|set| set.iter().map(index).collect());
    let levels = levels.collect();
    (r, levels)
}

fn sorted(values: Vec<f64>) -> Vec<f64> {
    let mut values = in_order(values, f64::total_cmp);
    values.dedup_by(|b, a| (*b - *a).abs() < SAME_M);
    values
}

/// Sizes of the cells of one stretch.
struct Sizes {
    /// At either end.
    first: [f64; 2],
    growth: f64,
    largest: f64,
}

/// Divides from the last line to `end`, growing from both ends.
fn divide(lines: &mut Vec<f64>, end: f64, sizes: &Sizes) {
    let begin = lines.last().copied().unwrap_or(0.0);
    let length = end - begin;
    let (mut low, mut high) = (Vec::new(), Vec::new());
    let [mut next_low, mut next_high] = sizes.first.map(|s| s.min(sizes.largest));
    let mut left = length;
    while left > 0.0 {
        let (list, next) = if next_low <= next_high {
            (&mut low, &mut next_low)
        } else {
            (&mut high, &mut next_high)
        };
        // A last sliver is spread over the others by the scaling below.
        if !list.is_empty() && left < 0.5 * *next {
            break;
        }
        list.push(*next);
        left -= *next;
        *next = (*next * sizes.growth).min(sizes.largest);
    }
    let sum: f64 = low.iter().chain(&high).sum();
    let mut at = begin;
    let all: Vec<f64> = low.into_iter().chain(high.into_iter().rev()).collect();
    let count = all.len();
    for (i, size) in all.into_iter().enumerate() {
        at += size * length / sum;
        lines.push(if i + 1 == count { end } else { at });
    }
}

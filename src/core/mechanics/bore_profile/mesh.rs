//! The mesh: lines in radius and height, graded toward ledge, ends and the
//! edges of a jacket, and which cells belong to sleeve and block.

use super::BoreProfileInput;
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
}

/// A cell may be as long as this part of the whole height.
const LONGEST_SHARE: f64 = 24.0;
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
        let mut r = vec![radii[0]];
        for pair in radii.windows(2) {
            if pair[1] <= b + SAME_M {
                divide(
                    &mut r,
                    pair[1],
                    &Sizes {
                        first: [cell, fine.edge * cell],
                        growth: fine.growth,
                        largest: cell,
                    },
                );
            } else if flange.is_some_and(|f| pair[1] <= f.0 + SAME_M) {
                // What the ledge bears is found out here.
                let sizes = Sizes {
                    first: [0.5 * fine.edge * cell; 2],
                    growth: fine.growth,
                    largest: 2.0 * cell,
                };
                divide(&mut r, pair[1], &sizes);
            } else {
                // Away from the joint the block may be coarse.
                let first = fine.edge * cell.max(0.5 * (pair[1] - pair[0])).min(2.0 * cell);
                let sizes = Sizes {
                    first: [first, 1e9],
                    growth: 2.0,
                    largest: 0.5 * c,
                };
                divide(&mut r, pair[1], &sizes);
            }
        }
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
        }
    }

    /// Height of a row of half steps.
    #[must_use]
    pub fn half_height(&self, row: usize) -> f64 {
        let (low, high) = (self.z[row / 2], self.z[row.div_ceil(2)]);
        0.5 * (low + high)
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

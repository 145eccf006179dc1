//! Cells that hang: where the row above or below has wider cells, the nodes of
//! an edge are those of the wider cell, and what the edge itself does follows
//! from them. An edge's movement is quadratic on both sides, so nothing gapes.

use super::element::{Column, Growth, NODES, PLACES, Stiffness};
use super::mesh::{Body, Hung};
use super::solve::Cell;

/// Places of the nodes of the lower and of the upper edge, from the inside out.
const EDGES: [[usize; 3]; 2] = [[0, 4, 1], [3, 6, 2]];
const _: () = {
    let mut n = 0;
    while n < 3 {
        let ([i, j], [k, l]) = (
            [PLACES[EDGES[0][n]].0, PLACES[EDGES[0][n]].1],
            [PLACES[EDGES[1][n]].0, PLACES[EDGES[1][n]].1],
        );
        assert!(i == n && j == 0 && k == n && l == 2);
        n += 1;
    }
};

/// The cell's own movements from those of its nodes.
pub(super) fn own_movements(
    nodes: [[f64; 2]; NODES],
    edges: &[Option<Hung>; 2],
) -> [[f64; 2]; NODES] {
    let mut own = nodes;
    for (edge, hung) in EDGES.iter().zip(edges) {
        let Some(hung) = hung else { continue };
        for (n, shares) in edge.iter().zip(hung) {
            own[*n] = core::array::from_fn(|axis| {
                edge.iter()
                    .zip(shares)
                    .map(|(m, s)| s * nodes[*m][axis])
                    .sum()
            });
        }
    }
    own
}

/// Forces on the cell's nodes from those on its own places.
pub(super) fn hang_load(own: Growth, edges: &[Option<Hung>; 2]) -> Growth {
    let mut load = own;
    for (edge, hung) in EDGES.iter().zip(edges) {
        let Some(hung) = hung else { continue };
        for (m, master) in edge.iter().enumerate() {
            for axis in 0..2 {
                let parts = edge.iter().zip(hung);
                load[2 * master + axis] = parts.map(|(n, s)| s[m] * own[2 * n + axis]).sum();
            }
        }
    }
    load
}

/// Stiffness at the cell's nodes from that at its own places.
pub(super) fn hang(own: Stiffness, edges: &[Option<Hung>; 2]) -> Stiffness {
    if edges.iter().all(Option::is_none) {
        return own;
    }
    let rows = own.map(|row| hang_load(row, edges));
    let turned: Stiffness = core::array::from_fn(|i| core::array::from_fn(|j| rows[j][i]));
    turned.map(|row| hang_load(row, edges))
}

/// Stiffness of the columns that were met.
#[derive(Default)]
pub(super) struct Columns {
    known: Vec<([usize; 2], Body)>,
    pub(super) made: Vec<Column>,
}

impl Columns {
    pub(super) fn find(
        &mut self,
        lines: [usize; 2],
        body: Body,
        make: impl FnOnce() -> Column,
    ) -> usize {
        let same = |known: &([usize; 2], Body)| *known == (lines, body);
        self.known.iter().position(same).unwrap_or_else(|| {
            self.known.push((lines, body));
            self.made.push(make());
            self.made.len() - 1
        })
    }
}

/// Which cells have a node.
pub(super) struct Around {
    start: Vec<usize>,
    cells: Vec<usize>,
}

impl Around {
    pub(super) fn of(cells: &[Cell], nodes: usize) -> Self {
        let mut start = vec![0; nodes + 1];
        for node in cells.iter().flat_map(|c| c.nodes) {
            start[node + 1] += 1;
        }
        for node in 0..nodes {
            start[node + 1] += start[node];
        }
        let mut next = start.clone();
        let mut sorted = vec![0; NODES * cells.len()];
        for (i, cell) in cells.iter().enumerate() {
            for node in cell.nodes {
                sorted[next[node]] = i;
                next[node] += 1;
            }
        }
        Self {
            start,
            cells: sorted,
        }
    }

    pub(super) fn node(&self, node: usize) -> &[usize] {
        &self.cells[self.start[node]..self.start[node + 1]]
    }
}

#[cfg(test)]
mod tests {
    use super::super::element::{UNKNOWNS, line_shapes};
    use super::*;
    use crate::mechanics::rings::Elastic;
    use crate::quantity::Pressure;

    /// Work is the same whether it is counted at the nodes or at the cell's own
    /// places: what hanging must keep, whatever the movements.
    #[test]
    fn hanging_keeps_the_work() {
        let iron = Elastic {
            youngs: Pressure::from_pa(110e9),
            poisson: 0.26,
        };
        let own = Column::new(0.05, 0.001, &iron).stiffness(0.002);
        let shares = |from: f64, to: f64| [from, 0.5 * (from + to), to].map(line_shapes);
        let mut random = fastrand::Rng::with_seed(7);
        for edges in [
            [Some(shares(-1.0, 0.0)), None],
            [None, Some(shares(0.0, 0.5))],
            [Some(shares(0.5, 1.0)), Some(shares(0.0, 1.0))],
        ] {
            let nodes: [[f64; 2]; NODES] =
                core::array::from_fn(|_| core::array::from_fn(|_| random.f64() - 0.5));
            let work = |k: &Stiffness, u: [[f64; 2]; NODES]| -> f64 {
                let u = u.as_flattened();
                (0..UNKNOWNS)
                    .flat_map(|i| (0..UNKNOWNS).map(move |j| (i, j)))
                    .map(|(i, j)| u[i] * k[i][j] * u[j])
                    .sum()
            };
            let at_nodes = work(&hang(own, &edges), nodes);
            let at_places = work(&own, own_movements(nodes, &edges));
            assert!((at_nodes / at_places - 1.0).abs() < 1e-12);
        }
    }
}

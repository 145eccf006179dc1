//! The search for the contact: what pulls is opened, what overlaps is closed.
//!
//! All at once, which is quick; where that runs in a circle, one at a time and
//! always the last of them, which is slow but comes to an end (Murty's rule
//! for linear complementarity problems, put behind block pivoting as Judice
//! and Pires do; from memory).

use super::mesh::Body;
use super::solve::{Assembly, Joint, Nodal, Solution};

/// Rounds without fewer wrong nodes before one is changed at a time.
const PATIENCE: usize = 4;

/// A stuck node that opens and closes this often has lost its hold: it slides.
/// (Held it would pull, let go it would overlap.)
const LOST: usize = 2;

/// A node whose contact was assumed wrongly.
#[derive(Clone, Copy)]
enum Wrong {
    /// On the joint, by row of half steps.
    Joint(usize),
    /// On the ledge, by column of half steps.
    Ledge(usize),
}

/// How the search fares.
pub(super) struct Search {
    fewest: usize,
    patience: usize,
}

impl Search {
    pub(super) const fn new() -> Self {
        Self {
            fewest: usize::MAX,
            patience: PATIENCE,
        }
    }

    /// Those to change now.
    fn choose<'a>(&mut self, wrong: &'a [Wrong]) -> &'a [Wrong] {
        if wrong.len() < self.fewest {
            self.fewest = wrong.len();
            self.patience = PATIENCE;
        } else {
            self.patience = self.patience.saturating_sub(1);
        }
        if self.patience > 0 {
            wrong
        } else {
            &wrong[wrong.len().saturating_sub(1)..]
        }
    }
}

impl Assembly<'_> {
    /// Opens what pulls and closes what overlaps; whether anything was wrong.
    pub(super) fn adjust(
        &mut self,
        search: &mut Search,
        movements: &[[f64; 2]],
        forces: &[[f64; 2]],
    ) -> bool {
        let wrong = self.wrong(movements, forces);
        for node in search.choose(&wrong) {
            match node {
                Wrong::Joint(j) => {
                    self.touching[*j] ^= true;
                    self.closed_again[*j] += usize::from(self.touching[*j]);
                }
                Wrong::Ledge(i) => self.resting[*i] ^= true,
            }
        }
        !wrong.is_empty()
    }

    /// Opens the joint where another solution has it open, by depth below the
    /// ledge.
    pub(super) fn begin_as(&mut self, near: &Solution) {
        let other = &near.mesh;
        for j in self.joint_rows() {
            let below = self.mesh.half_height(2 * self.mesh.ledge) - self.mesh.half_height(j);
            let height = other.half_height(2 * other.ledge) - below;
            let rows = 2 * other.foot..=2 * other.ledge;
            let off = |row: &usize| (other.half_height(*row) - height).abs();
            let nearest = rows.min_by(|a, b| off(a).total_cmp(&off(b)));
            let force = nearest.and_then(|row| near.joint_force.get(row - 2 * other.foot));
            self.touching[j] = force != Some(&0.0);
        }
    }

    /// Whether the joint holds the sleeve along the axis at a row.
    pub(super) fn holds(&self, j: usize) -> bool {
        self.joint == Joint::Stuck && self.touching[j] && self.closed_again[j] < LOST
    }

    fn wrong(&self, movements: &[[f64; 2]], forces: &[[f64; 2]]) -> Vec<Wrong> {
        let joint = 2 * self.mesh.joint;
        let largest = self
            .joint_rows()
            .map(|j| self.pressing(forces, j).abs())
            .fold(0.0, f64::max);
        let scale = largest.max(self.largest_load()).max(1e-9);
        let mut wrong = Vec::new();
        for j in self.joint_rows() {
            let (s, b) = (
                self.grid.at(Body::Sleeve, joint, j),
                self.grid.at(Body::Block, joint, j),
            );
            let so = if self.touching[j] {
                self.pressing(forces, j) < -1e-9 * scale
            } else {
                movements[b][0] - movements[s][0] < self.delta - 1e-12
            };
            if so {
                wrong.push(Wrong::Joint(j));
            }
        }
        if self.floats() {
            return wrong;
        }
        let row = 2 * self.mesh.ledge;
        for i in self.ledge_columns() {
            let (s, b) = (
                self.grid.at(Body::Sleeve, i, row),
                self.grid.at(Body::Block, i, row),
            );
            let so = if self.resting[i] {
                forces[s][1] < -1e-9 * scale
            } else {
                movements[s][1] - movements[b][1] < -1e-13
            };
            if so {
                wrong.push(Wrong::Ledge(i));
            }
        }
        wrong
    }

    /// Largest force at the inside and across the joint that nothing
    /// balances, over the largest force.
    pub(super) fn residual(&self, forces: &[[f64; 2]]) -> f64 {
        let joint = 2 * self.mesh.joint;
        let largest = self
            .joint_rows()
            .map(|j| self.pressing(forces, j).abs())
            .fold(self.largest_load(), f64::max);
        let inner = (0..self.grid.rows)
            .map(|j| (forces[self.grid.at(Body::Sleeve, 0, j)][0] - self.gas[j]).abs())
            .fold(0.0, f64::max);
        let balance: f64 = self
            .joint_rows()
            .map(|j| {
                forces[self.grid.at(Body::Sleeve, joint, j)][0]
                    + forces[self.grid.at(Body::Block, joint, j)][0]
            })
            .fold(0.0, |a, f| a.max(f.abs()));
        inner.max(balance) / largest.max(1e-300)
    }

    /// Sets a free sleeve down on its ledge: where nothing holds it along the
    /// axis, its height is that at which the flange just touches.
    pub(super) fn settled(&self, mut movements: Nodal) -> Nodal {
        if !self.floats() || self.mesh.flange == self.mesh.joint {
            return movements;
        }
        let row = 2 * self.mesh.ledge;
        let open = (2 * self.mesh.joint..=2 * self.mesh.flange)
            .map(|i| {
                movements[self.grid.at(Body::Sleeve, i, row)][1]
                    - movements[self.grid.at(Body::Block, i, row)][1]
            })
            .fold(f64::MAX, f64::min);
        for (node, m) in movements.iter_mut().enumerate() {
            if node % 2 == 0 && self.present[node] {
                m[1] -= open;
            }
        }
        movements
    }
}

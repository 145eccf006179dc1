//! The search for the contact: what pulls is opened, what overlaps is closed.

use super::mesh::Body;
use super::solve::{Assembly, Nodal};

impl Assembly<'_> {
    /// Opens what pulls and closes what overlaps; whether anything changed.
    pub(super) fn adjust(&mut self, movements: &[[f64; 2]], forces: &[[f64; 2]]) -> bool {
        let mut changed = false;
        let joint = 2 * self.mesh.joint;
        let largest = self
            .joint_rows()
            .map(|j| self.pressing(forces, j).abs())
            .fold(0.0, f64::max);
        let scale = largest.max(self.largest_load()).max(1e-9);
        for j in self.joint_rows() {
            let (s, b) = (
                self.grid.at(Body::Sleeve, joint, j),
                self.grid.at(Body::Block, joint, j),
            );
            if self.touching[j] {
                if self.pressing(forces, j) < -1e-9 * scale {
                    self.touching[j] = false;
                    changed = true;
                }
            } else if movements[b][0] - movements[s][0] < self.delta - 1e-12 {
                self.touching[j] = true;
                changed = true;
            }
        }
        if self.floats() {
            return changed;
        }
        let row = 2 * self.mesh.ledge;
        for i in self.ledge_columns() {
            let (s, b) = (
                self.grid.at(Body::Sleeve, i, row),
                self.grid.at(Body::Block, i, row),
            );
            if self.resting[i] {
                if forces[s][1] < -1e-9 * scale {
                    self.resting[i] = false;
                    changed = true;
                }
            } else if movements[s][1] - movements[b][1] < -1e-13 {
                self.resting[i] = true;
                changed = true;
            }
        }
        changed
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

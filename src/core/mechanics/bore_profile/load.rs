//! What loads the parts: the clamp on the flange, the gas on the inside, and
//! the growth of warm metal.
//!
//! The gas presses on the inside only, not on the flange's top: the head's
//! seal stands at the bore's edge. It puts no force along the axis.

use core::f64::consts::PI;

use super::element::{GAUSS, Growth, Sides, free_growth, line_shapes};
use super::mesh::{Body, Mesh};
use super::solve::{Assembly, Slot};
use super::{BoreProfileInput, Heat, crown};
use crate::quantity::Temperature;

impl Heat {
    /// Free strain of a body at a radius: heat flows steadily outward, so the
    /// temperature is straight over the logarithm of the radius. Beyond the
    /// sleeve's outside, in the flange, it stays as it is there.
    pub(super) fn strain(&self, input: &BoreProfileInput, body: Body, r: f64) -> f64 {
        let b = input.sleeve_outer.radius().as_m();
        let (material, [from, to], inner, outer) = match body {
            Body::Sleeve => (
                &self.sleeve_material,
                self.sleeve,
                input.sleeve_inner.radius().as_m(),
                b,
            ),
            Body::Block => (
                &self.block_material,
                self.block,
                b,
                input.block_outer.radius().as_m(),
            ),
        };
        let share = ((r / inner).ln() / (outer / inner).ln()).clamp(0.0, 1.0);
        let t_k = from.as_k() + share * (to.as_k() - from.as_k());
        material.strain(Temperature::from_k(t_k))
    }
}

/// Held growth of a cell; `None` where no temperature is given.
pub(super) fn growth(input: &BoreProfileInput, body: Body, sides: &Sides) -> Option<Growth> {
    let heat = input.heat.as_ref()?;
    let elastic = match body {
        Body::Sleeve => &input.sleeve,
        Body::Block => &input.block,
    };
    Some(free_growth(sides, elastic, |r| heat.strain(input, body, r)))
}

/// Radial force of the gas at each row of half steps of the inside, N. A cell
/// that the gas reaches in part is integrated over that part.
pub(super) fn gas(input: &BoreProfileInput, mesh: &Mesh) -> Vec<f64> {
    let mut force = vec![0.0; 2 * mesh.rows() + 1];
    let pressure = input.gas.as_pa();
    if pressure == 0.0 {
        return force;
    }
    let top = mesh.z[mesh.rows()];
    let lowest = input.gas_depth.map_or(0.0, |depth| top - depth.as_m());
    let around = 2.0 * PI * mesh.r[0] * pressure;
    for row in mesh.foot..mesh.rows() {
        let (low, high) = (mesh.z[row], mesh.z[row + 1]);
        let from = low.max(lowest);
        if from >= high {
            continue;
        }
        for (x, weight) in GAUSS {
            let z = from + 0.5 * (high - from) * (1.0 + x);
            let shapes = line_shapes(2.0 * (z - low) / (high - low) - 1.0);
            for (n, shape) in shapes.into_iter().enumerate() {
                force[2 * row + n] += around * 0.5 * (high - from) * weight * shape;
            }
        }
    }
    force
}

impl Assembly<'_> {
    /// Clamp and gas, into the right-hand side.
    pub(super) fn outer_loads(&self, slots: &[[Slot; 2]], load: &mut [f64]) {
        for (j, force) in self.gas.iter().enumerate() {
            if let Slot::Free(e) = slots[self.grid.at(Body::Sleeve, 0, j)][0] {
                load[e as usize] += force;
            }
        }
        if !self.clamped() {
            return;
        }
        let r = &self.mesh.r[..=self.mesh.flange];
        let area = r[r.len() - 1].powi(2) - r[0].powi(2);
        for (i, share) in crown(self.mesh) {
            let node = self.grid.at(Body::Sleeve, i, self.grid.rows - 1);
            if let Slot::Free(e) = slots[node][1] {
                load[e as usize] -= self.input.clamp.as_n() * 2.0 * share / area;
            }
        }
    }

    /// The largest force that is about: rounding is judged by it.
    pub(super) fn largest_load(&self) -> f64 {
        let gas = self.gas.iter().fold(0.0, |a: f64, f| a.max(*f));
        self.input.clamp.as_n().max(gas).max(self.largest_growth())
    }
}

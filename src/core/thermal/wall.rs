//! A wall of rings: cells by radius, radii fixed at 293.15 K for the heat flow.

use crate::materials::{Lookup, Material};
use crate::quantity::Diameter;

/// A wall in cells.
#[derive(Clone, Debug)]
pub struct Wall {
    /// Its tables.
    pub table: Lookup,
    /// Cross-section of each cell per radian, m2, over the whole.
    pub(super) weight: Vec<f64>,
    /// 1 / (density x cross-section per radian), so that heat per radian,
    /// length and time over specific heat becomes a rate.
    pub(super) inertia: Vec<f64>,
    /// Radii of the inner faces and of the last outer face, m.
    pub(super) face: Vec<f64>,
}

impl Wall {
    /// `cells` cells between two diameters; each is `growth` times as thick
    /// as the one inside it.
    #[must_use]
    pub fn new(
        material: &Material,
        inner: Diameter,
        outer: Diameter,
        cells: usize,
        growth: f64,
    ) -> Self {
        let (a, b) = (inner.radius().as_m(), outer.radius().as_m());
        let total: f64 = (0..cells).map(|i| growth.powi(i as i32)).sum();
        let mut face = vec![a];
        let mut sum = 0.0;
        for i in 0..cells {
            sum += growth.powi(i as i32);
            face.push(a + (b - a) * sum / total);
        }
        let area: Vec<f64> = face
            .windows(2)
            .map(|f| 0.5 * (f[1] * f[1] - f[0] * f[0]))
            .collect();
        let whole: f64 = area.iter().sum();
        let density = material.density_kg_m3();
        Self {
            table: material.lookup(),
            weight: area.iter().map(|a| a / whole).collect(),
            inertia: area.iter().map(|a| 1.0 / (density * a)).collect(),
            face,
        }
    }

    /// Share of each cell in the cross-section.
    #[must_use]
    pub fn weights(&self) -> &[f64] {
        &self.weight
    }

    /// Number of cells.
    #[must_use]
    pub fn cells(&self) -> usize {
        self.weight.len()
    }

    /// Outer radius, m.
    #[must_use]
    pub fn outer(&self) -> f64 {
        self.face[self.face.len() - 1]
    }

    /// Inner radius, m.
    #[must_use]
    pub fn inner(&self) -> f64 {
        self.face[0]
    }

    pub(super) fn half(&self, i: usize) -> f64 {
        0.5 * (self.face[i + 1] - self.face[i])
    }

    /// Mean over the cross-section of a function of temperature.
    pub fn mean(&self, t: &[f64], f: impl Fn(f64) -> f64) -> f64 {
        self.weight.iter().zip(t).map(|(w, &t)| w * f(t)).sum()
    }

    /// Conductance between the cells i and i + 1, per radian and length.
    #[inline]
    pub(super) fn conduction(&self, k: &[f64], i: usize) -> f64 {
        self.face[i + 1] / (self.half(i) / k[i] + self.half(i + 1) / k[i + 1])
    }

    /// Its own conduction, as heat per radian, length and time.
    pub(super) fn conduct(&self, t: &[f64], k: &[f64], heat: &mut [f64]) {
        let n = self.cells();
        let mut before = 0.0;
        for i in 0..n - 1 {
            let q = self.conduction(k, i) * (t[i + 1] - t[i]);
            heat[i] = q - before;
            before = q;
        }
        heat[n - 1] = -before;
    }

    /// Thickness of each cell over its radius: what leads heat round the ring.
    pub(super) fn round(&self) -> Vec<f64> {
        self.face.windows(2).map(|f| (f[1] / f[0]).ln()).collect()
    }

    /// Heat content per radian and length, J/m/rad.
    #[must_use]
    pub fn heat(&self, t: &[f64]) -> f64 {
        self.inertia
            .iter()
            .zip(t)
            .map(|(i, &t)| self.table.enthalpy(t) / i)
            .sum()
    }
}

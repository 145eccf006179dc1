//! The element: eight-node serendipity quadrilateral, axisymmetric, its sides
//! along radius and height, three by three Gauss points.

use core::f64::consts::PI;

use crate::mechanics::rings::Elastic;

/// Nodes of an element.
pub const NODES: usize = 8;
/// Its unknowns: radial and axial movement of every node.
pub const UNKNOWNS: usize = 2 * NODES;
/// Its nodes on the grid of half steps, from its lower inner corner.
pub const PLACES: [(usize, usize); NODES] = [
    (0, 0),
    (2, 0),
    (2, 2),
    (0, 2),
    (1, 0),
    (2, 1),
    (1, 2),
    (0, 1),
];

/// Stiffness of an element.
pub type Stiffness = [[f64; UNKNOWNS]; UNKNOWNS];

/// Forces of an element that is held from growing.
pub type Growth = [f64; UNKNOWNS];

/// Gauss points and weights, exact to degree five.
pub const GAUSS: [(f64, f64); 3] = [
    (-0.774_596_669_241_483_4, 5.0 / 9.0),
    (0.0, 8.0 / 9.0),
    (0.774_596_669_241_483_4, 5.0 / 9.0),
];

/// Sides of an element, m.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sides {
    /// Inner radius.
    pub inner: f64,
    /// Radial size.
    pub width: f64,
    /// Axial size.
    pub height: f64,
}

/// Shape functions and their slopes over the two local coordinates.
#[must_use]
pub fn shapes(x: f64, y: f64) -> [[f64; 3]; NODES] {
    let at = |i: usize| {
        let (px, py) = (PLACES[i].0 as f64 - 1.0, PLACES[i].1 as f64 - 1.0);
        if px != 0.0 && py != 0.0 {
            let (a, b) = (1.0 + px * x, 1.0 + py * y);
            let c = px * x + py * y - 1.0;
            [
                0.25 * a * b * c,
                0.25 * b * px * (c + a),
                0.25 * a * py * (c + b),
            ]
        } else if px == 0.0 {
            let b = 1.0 + py * y;
            [0.5 * (1.0 - x * x) * b, -x * b, 0.5 * (1.0 - x * x) * py]
        } else {
            let a = 1.0 + px * x;
            [0.5 * (1.0 - y * y) * a, 0.5 * (1.0 - y * y) * px, -y * a]
        }
    };
    core::array::from_fn(at)
}

/// Stiffness of all elements of one column and material, by their height: each
/// entry between radial, or between axial, movements has a part that grows with
/// it and one that falls; the others do not change.
pub struct Column {
    grows: Stiffness,
    stays: Stiffness,
    falls: Stiffness,
}

impl Column {
    /// Elements from an inner radius, m, of a width, m.
    #[must_use]
    pub fn new(inner: f64, width: f64, material: &Elastic) -> Self {
        let (e, nu) = (material.youngs.as_pa(), material.poisson);
        let scale = e / ((1.0 + nu) * (1.0 - 2.0 * nu));
        let (straight, cross, shear) = (
            scale * (1.0 - nu),
            scale * nu,
            0.5 * scale * (1.0 - 2.0 * nu),
        );
        let zero = [[0.0; UNKNOWNS]; UNKNOWNS];
        let (mut grows, mut stays, mut falls) = (zero, zero, zero);
        for (x, wx) in GAUSS {
            let r = inner + 0.5 * width * (1.0 + x);
            for (y, wy) in GAUSS {
                let n = shapes(x, y);
                let weight = wx * wy * 0.25 * width * 2.0 * PI * r;
                // Strains of node i: radial (dr, hoop) and axial, of unit height.
                let parts = n.map(|n| [2.0 / width * n[1], 2.0 * n[2], n[0] / r]);
                for (i, [ri, zi, hi]) in parts.into_iter().enumerate() {
                    for (j, [rj, zj, hj]) in parts.into_iter().enumerate() {
                        let hoop = cross * (ri * hj + hi * rj) + straight * hi * hj;
                        grows[2 * i][2 * j] += weight * (straight * ri * rj + hoop);
                        falls[2 * i][2 * j] += weight * shear * zi * zj;
                        stays[2 * i][2 * j + 1] +=
                            weight * (cross * (ri + hi) * zj + shear * zi * rj);
                        stays[2 * i + 1][2 * j] +=
                            weight * (cross * zi * (rj + hj) + shear * ri * zj);
                        falls[2 * i + 1][2 * j + 1] += weight * straight * zi * zj;
                        grows[2 * i + 1][2 * j + 1] += weight * shear * ri * rj;
                    }
                }
            }
        }
        Self {
            grows,
            stays,
            falls,
        }
    }

    /// Stiffness over the full circle of an element of a height, N/m.
    #[must_use]
    pub fn stiffness(&self, height: f64) -> Stiffness {
        core::array::from_fn(|i| {
            core::array::from_fn(|j| {
                height * self.grows[i][j] + self.stays[i][j] + self.falls[i][j] / height
            })
        })
    }
}

/// Forces on the nodes, N, with which an element presses outward that wants to
/// grow by a strain (the same in every direction, by radius) and is held.
#[must_use]
pub fn free_growth(sides: &Sides, material: &Elastic, strain: impl Fn(f64) -> f64) -> Growth {
    let bulk = material.youngs.as_pa() / (1.0 - 2.0 * material.poisson);
    let mut load = [0.0; UNKNOWNS];
    for (x, wx) in GAUSS {
        let r = sides.inner + 0.5 * sides.width * (1.0 + x);
        let stress = bulk * strain(r);
        for (y, wy) in GAUSS {
            let n = shapes(x, y);
            let weight = stress * wx * wy * 0.25 * sides.width * sides.height * 2.0 * PI * r;
            for (i, shape) in n.iter().enumerate() {
                load[2 * i] += weight * (2.0 / sides.width * shape[1] + shape[0] / r);
                load[2 * i + 1] += weight * 2.0 / sides.height * shape[2];
            }
        }
    }
    load
}

/// Quadratic shape functions on a line from -1 to 1: ends and middle.
#[must_use]
pub fn line_shapes(x: f64) -> [f64; 3] {
    [0.5 * x * (x - 1.0), 1.0 - x * x, 0.5 * x * (x + 1.0)]
}

/// Share of each node of a quadratic line in an even load.
pub const EVEN: [f64; 3] = [1.0 / 6.0, 2.0 / 3.0, 1.0 / 6.0];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Pressure;

    fn element() -> (Sides, Stiffness) {
        let sides = Sides {
            inner: 0.05,
            width: 0.003,
            height: 0.005,
        };
        let iron = Elastic {
            youngs: Pressure::from_pa(110e9),
            poisson: 0.26,
        };
        (
            sides,
            Column::new(sides.inner, sides.width, &iron).stiffness(sides.height),
        )
    }

    fn forces(k: &Stiffness, u: &[f64; UNKNOWNS]) -> [f64; UNKNOWNS] {
        core::array::from_fn(|i| (0..UNKNOWNS).map(|j| k[i][j] * u[j]).sum())
    }

    // Shifting a ring along its axis strains nothing: the one rigid movement
    // of an axisymmetric body.
    #[test]
    fn rigid_movement_costs_no_force() {
        let (_, k) = element();
        let u = core::array::from_fn(|i| if i % 2 == 1 { 1.0 } else { 0.0 });
        let scale = k[1][1].abs();
        for f in forces(&k, &u) {
            assert!(f.abs() < 1e-9 * scale);
        }
    }

    // Free growth strains without stress: the stiffness answers an even
    // u = e r, w = e z with exactly the forces of the held growth.
    #[test]
    fn even_growth_leaves_no_force() {
        let (s, k) = element();
        let iron = Elastic {
            youngs: Pressure::from_pa(110e9),
            poisson: 0.26,
        };
        let e = 1.3e-3;
        let u: [f64; UNKNOWNS] = core::array::from_fn(|i| {
            let (px, py) = PLACES[i / 2];
            if i % 2 == 0 {
                e * (s.inner + 0.5 * s.width * px as f64)
            } else {
                e * 0.5 * s.height * py as f64
            }
        });
        let held = free_growth(&s, &iron, |_| e);
        let scale = held.iter().fold(0.0, |a: f64, f| a.max(f.abs()));
        for (f, g) in forces(&k, &u).iter().zip(&held) {
            assert!((f - g).abs() < 1e-11 * scale, "{f} {g}");
        }
    }

    // Patch test: u = c r, w = d z strains evenly; the strain energy is known
    // in closed form (Hooke's law).
    #[test]
    fn even_strain_has_its_exact_energy() {
        let (s, k) = element();
        let (c, d) = (3e-4, -2e-4);
        let u: [f64; UNKNOWNS] = core::array::from_fn(|i| {
            let (px, py) = PLACES[i / 2];
            if i % 2 == 0 {
                c * (s.inner + 0.5 * s.width * px as f64)
            } else {
                d * 0.5 * s.height * py as f64
            }
        });
        let energy: f64 = forces(&k, &u)
            .iter()
            .zip(&u)
            .map(|(f, u)| 0.5 * f * u)
            .sum();
        let (e, nu) = (110e9, 0.26);
        let scale = e / ((1.0 + nu) * (1.0 - 2.0 * nu));
        let sigma_r = scale * ((1.0 - nu) * c + nu * (c + d));
        let sigma_z = scale * ((1.0 - nu) * d + 2.0 * nu * c);
        let outer = s.inner + s.width;
        let volume = PI * (outer * outer - s.inner * s.inner) * s.height;
        let exact = 0.5 * (2.0 * sigma_r * c + sigma_z * d) * volume;
        assert!((energy / exact - 1.0).abs() < 1e-12);
    }
}

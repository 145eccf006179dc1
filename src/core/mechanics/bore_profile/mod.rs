//! The bore before it is honed: how a fitted sleeve is shaped down its length.
//!
//! Axisymmetric linear elasticity by finite elements (eight-node quadratic
//! quadrilaterals), sleeve and block as two bodies. The sleeve's outside
//! presses on the bore; the joint slides freely or is stuck, the two bounds of
//! friction; it may open but not pull. The flange's outside is clear of its
//! counterbore; its underside may lift from the ledge but not sink into it.
//! The block's top is flush with the sleeve's.
//!
//! Assumed: small strains, one ring of block round the bore (no row of bores,
//! see [`super::block_ring`] for that), temperatures that change with the
//! radius only, elastic constants that do not change with temperature, gas on
//! the inside alone. The ledge's inner
//! corner is singular: stress there grows with every finer mesh, so pressure
//! nearer to either end than a wall thickness is not to be trusted.

mod base;
mod cells;
mod check;
mod contact;
mod element;
mod load;
mod mesh;
mod size;
mod solve;
mod stress;

pub use mesh::{Fineness, USUAL};
pub use solve::Joint;
pub use stress::{BoreStress, BoreStressInput, bore_stress};

use core::f64::consts::PI;

use super::rings::Elastic;
use crate::materials::Material;
use crate::numerics::skyline::Skyline;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, DiametralInterference, Force, Length, Pressure, Temperature};
use mesh::{Body, FINE, Mesh};
use solve::Solution;

/// The flange.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flange {
    /// Its outside.
    pub outer: Diameter,
    /// Its thickness.
    pub thickness: Length,
}

/// A water jacket round the parent wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Jacket {
    /// Parent wall.
    pub wall: Length,
    /// Thickness of the deck plate.
    pub deck: Length,
    /// Thickness of the bottom plate.
    pub bottom: Length,
}

/// Temperatures of running, steady, and what the parts are made of.
#[derive(Clone, Debug, PartialEq)]
pub struct Heat {
    /// What the sleeve is made of: its expansion.
    pub sleeve_material: Material,
    /// What the block is made of: its expansion.
    pub block_material: Material,
    /// The sleeve at its inside and at its outside.
    pub sleeve: [Temperature; 2],
    /// The block at the bore and at its outside.
    pub block: [Temperature; 2],
}

/// A sleeve in a block.
#[derive(Clone, Debug, PartialEq)]
pub struct BoreProfileInput {
    /// Inside of the sleeve.
    pub sleeve_inner: Diameter,
    /// Outside of the sleeve.
    pub sleeve_outer: Diameter,
    /// Length under the flange.
    pub length: Length,
    /// The flange; `None`: a straight sleeve.
    pub flange: Option<Flange>,
    /// The sleeve's elasticity.
    pub sleeve: Elastic,
    /// Outside of the block's ring.
    pub block_outer: Diameter,
    /// The block's elasticity.
    pub block: Elastic,
    /// How far the block goes on below the sleeve.
    pub below: Length,
    /// A water jacket; `None`: solid.
    pub jacket: Option<Jacket>,
    /// Interference of the joint.
    pub interference: DiametralInterference,
    /// Whether the joint slides.
    pub joint: Joint,
    /// Clamp load on the flange's top.
    pub clamp: Force,
    /// Gas pressure on the inside.
    pub gas: Pressure,
    /// How far down from the top the gas reaches; `None`: all the way.
    pub gas_depth: Option<Length>,
    /// Temperatures; `None`: everything at 293.15 K.
    pub heat: Option<Heat>,
    /// Depths asked for, below the top of the sleeve.
    pub depths: Vec<Length>,
}

/// A profile.
#[derive(Clone, Debug, PartialEq)]
pub struct BoreProfile {
    /// Change of the inside diameter at each depth from that of the free
    /// sleeve at 293.15 K; negative closes.
    pub inner_change: Vec<Length>,
    /// Contact pressure at each depth; 0 above the ledge.
    pub pressure: Vec<Pressure>,
    /// Force on the ledge, pressing positive, the clamp included.
    pub ledge_force: Force,
    /// All that sleeve and bore press on each other: times the friction, the
    /// force that pushes the sleeve along.
    pub joint_force: Force,
    /// Movement of the flange's top over that of the block's top at the
    /// counterbore's edge, positive proud; `None` without a flange.
    pub height_change: Option<Length>,
    /// Equations solved.
    pub unknowns: usize,
    /// Rounds of the contact search.
    pub rounds: usize,
    /// Largest unbalanced force over the largest contact force.
    pub residual: f64,
}

/// The profile of a bore on the usual mesh.
///
/// # Errors
/// Dimensions outside their ranges or contradicting each other: a fault that
/// names the inner one. A geometry that cannot be meshed, naming the
/// dimension.
///
/// # Example
/// Without a flange the middle closes as Lame's rings say: 0.000970478 in for
/// case C1 of the project's mechanics reference.
/// ```
/// use coldseat_core::mechanics::bore_profile::{BoreProfileInput, Joint, bore_profile};
/// use coldseat_core::mechanics::rings::Elastic;
/// use coldseat_core::quantity::{Diameter, DiametralInterference, Force, Length, Pressure};
/// let profile = bore_profile(&BoreProfileInput {
///     sleeve_inner: Diameter::from_inch(4.0),
///     sleeve_outer: Diameter::from_inch(4.25),
///     length: Length::from_inch(6.0),
///     flange: None,
///     sleeve: Elastic { youngs: Pressure::from_psi(24.4e6), poisson: 0.275 },
///     block_outer: Diameter::from_inch(6.0),
///     block: Elastic { youngs: Pressure::from_psi(16e6), poisson: 0.26 },
///     below: Length::from_m(0.0),
///     jacket: None,
///     interference: DiametralInterference::from_inch(0.00125),
///     joint: Joint::Frictionless,
///     clamp: Force::from_n(0.0),
///     gas: Pressure::from_pa(0.0),
///     gas_depth: None,
///     heat: None,
///     depths: vec![Length::from_inch(3.0)],
/// })?;
/// assert!((profile.inner_change[0].as_inch() / -0.000970478 - 1.0).abs() < 0.005);
/// assert!((profile.pressure[0].as_psi() / 337.988 - 1.0).abs() < 0.005);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn bore_profile(input: &BoreProfileInput) -> Result<BoreProfile, Fault> {
    input.check(&[USUAL, corner(input)])?;
    read(input, &solved(input)?)
}

/// The mesh of a profile at the ledge. Where the joint sticks, ledge and joint
/// share the force of the corner, and how they do changes with the cells there:
/// in a thin jacket wall the usual ones are 4 % off.
const fn corner(input: &BoreProfileInput) -> Fineness {
    match input.joint {
        Joint::Frictionless => USUAL,
        Joint::Stuck => FINE,
    }
}

/// A profile solved: where the joint sticks, on the usual mesh for its contact
/// and then with finer corners.
fn solved(input: &BoreProfileInput) -> Result<Solution, Fault> {
    let usual = solve::solve(input, Mesh::new(input, &USUAL))?;
    match input.joint {
        Joint::Frictionless => Ok(usual),
        Joint::Stuck => solve::solve_near(input, Mesh::new(input, &FINE), Some(&usual)),
    }
}

/// The same on a mesh of one's own: for tests of convergence.
///
/// # Errors
/// As [`bore_profile`].
pub fn bore_profile_meshed(
    input: &BoreProfileInput,
    fine: &Fineness,
) -> Result<BoreProfile, Fault> {
    input.check(&[*fine])?;
    read(input, &solve::solve(input, Mesh::new(input, fine))?)
}

/// The answers of a solved profile.
fn read(input: &BoreProfileInput, solution: &Solution) -> Result<BoreProfile, Fault> {
    let line = JointLine::new(solution)?;
    let mesh = &solution.mesh;
    let top = mesh.z[mesh.rows()];
    let at = |depth: &Length| top - depth.as_m();
    Ok(BoreProfile {
        inner_change: input
            .depths
            .iter()
            .map(|d| Length::from_m(2.0 * inside(solution, at(d))))
            .collect(),
        pressure: input
            .depths
            .iter()
            .map(|d| Pressure::from_pa(line.pressure(at(d))))
            .collect(),
        ledge_force: Force::from_n(solution.ledge_force),
        joint_force: Force::from_n(solution.joint_force.iter().sum()),
        height_change: input
            .flange
            .map(|_| Length::from_m(height_change(solution))),
        unknowns: solution.unknowns,
        rounds: solution.rounds,
        residual: solution.residual,
    })
}

/// Radii and heights, m, of the lines of the usual mesh, heights from the
/// block's foot: for solving the same mesh by another program.
///
/// # Errors
/// As [`bore_profile`].
pub fn mesh_lines(input: &BoreProfileInput) -> Result<[Vec<f64>; 2], Fault> {
    input.check(&[USUAL])?;
    let mesh = Mesh::new(input, &USUAL);
    Ok([mesh.r, mesh.z])
}

/// The profile, and how a fitted sleeve's inside moves at each depth after it
/// was bored straight to `bored`: what was cut off no longer presses, and the
/// thinner wall gives way. Negative closes.
///
/// # Errors
/// As [`bore_profile`]; `bored_d_m` for a diameter outside the sleeve's wall.
///
/// # Example
/// Case C1 bored from 4.000 to 4.040: its pressure falls from 337.988 to 293.29
/// psi (project reference A17a). With Lame's movement at a radius r,
/// -p b2 / (E (b2 - a2)) ((1 - nu) r + (1 + nu) a2 / r), before and after:
/// ```
/// # use coldseat_core::mechanics::bore_profile::{BoreProfileInput, Joint, bored_profile};
/// # use coldseat_core::mechanics::rings::Elastic;
/// # use coldseat_core::quantity::*;
/// # let c1 = BoreProfileInput {
/// #     sleeve_inner: Diameter::from_inch(4.0),
/// #     sleeve_outer: Diameter::from_inch(4.25),
/// #     length: Length::from_inch(6.0),
/// #     flange: None,
/// #     sleeve: Elastic { youngs: Pressure::from_psi(24.4e6), poisson: 0.275 },
/// #     block_outer: Diameter::from_inch(6.0),
/// #     block: Elastic { youngs: Pressure::from_psi(16e6), poisson: 0.26 },
/// #     below: Length::from_m(0.0),
/// #     jacket: None,
/// #     interference: DiametralInterference::from_inch(0.00125),
/// #     joint: Joint::Frictionless,
/// #     clamp: Force::from_n(0.0),
/// #     gas: Pressure::from_pa(0.0),
/// #     gas_depth: None,
/// #     heat: None,
/// #     depths: vec![Length::from_inch(3.0)],
/// # };
/// let moved = |p: f64, a: f64| {
///     let (r, b2) = (2.02, 2.125 * 2.125);
///     -p * b2 / (24.4e6 * (b2 - a * a)) * (0.725 * r + 1.275 * a * a / r)
/// };
/// let want = 2.0 * (moved(293.29, 2.02) - moved(337.988, 2.0));
/// let change = bored_profile(&c1, Diameter::from_inch(4.04))?.1[0];
/// assert!((change.as_inch() / want - 1.0).abs() < 0.005);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn bored_profile(
    input: &BoreProfileInput,
    bored: Diameter,
) -> Result<(BoreProfile, Vec<Length>), Fault> {
    input.check(&[USUAL, corner(input)])?;
    let [from, to] = [input.sleeve_inner, input.sleeve_outer].map(Diameter::as_m);
    let bored_m = bored.as_m();
    if !(from <= bored_m && bored_m < to) {
        return Err(Fault::new(
            "bored_d_m",
            format!("{bored_m} m is not within the sleeve's wall: {from} <= .. < {to} m"),
        ));
    }
    let thin = BoreProfileInput {
        sleeve_inner: bored,
        ..input.clone()
    };
    thin.check(&[corner(&thin)])?;
    let before = solved(input)?;
    let after = solve::solve_near(&thin, Mesh::new(&thin, &corner(&thin)), Some(&before))?;
    let top = before.mesh.z[before.mesh.rows()];
    let radius = bored.radius().as_m();
    let moved = input
        .depths
        .iter()
        .map(|depth| {
            let height = top - depth.as_m();
            let [was, is] = [&before, &after].map(|s| radial(s, radius, height));
            Length::from_m(2.0 * (is - was))
        })
        .collect();
    Ok((read(input, &before)?, moved))
}

/// Cell between two lines that holds a place, and where in it from -1 to 1.
fn place(z: &[f64], from: usize, to: usize, height: f64) -> (usize, f64) {
    let row = z[from..=to]
        .partition_point(|&line| line <= height)
        .clamp(1, to - from)
        - 1
        + from;
    let x = 2.0 * (height - z[row]) / (z[row + 1] - z[row]) - 1.0;
    (row, x.clamp(-1.0, 1.0))
}

/// Radial movement of the sleeve's inside at a height, m.
fn inside(solution: &Solution, height: f64) -> f64 {
    radial(solution, solution.mesh.r[0], height)
}

/// Radial movement of the sleeve at a radius and height within it, m.
fn radial(solution: &Solution, radius: f64, height: f64) -> f64 {
    let mesh = &solution.mesh;
    let (row, y) = place(&mesh.z, mesh.foot, mesh.rows(), height);
    let (column, _) = place(&mesh.r, 0, mesh.joint, radius);
    let ([from, to], movements) = solution.cell(Body::Sleeve, column, row);
    let (low, high) = (mesh.r[from], mesh.r[to]);
    let x = (2.0 * (radius - low) / (high - low) - 1.0).clamp(-1.0, 1.0);
    element::shapes(x, y)
        .into_iter()
        .zip(movements)
        .map(|(shape, movement)| shape[0] * movement[0])
        .sum()
}

/// Share of each column of half steps of the flange's top, or of a straight
/// sleeve's, in an even load: half of its part of the area over pi. Exact for a
/// pressure on a ring, whose radius is linear over a cell.
fn crown(mesh: &Mesh) -> Vec<(usize, f64)> {
    let lines = mesh.lines(mesh.rows() - 1);
    lines
        .windows(2)
        .take_while(|pair| pair[1] <= mesh.flange)
        .flat_map(|pair| {
            let (a, h) = (mesh.r[pair[0]], mesh.r[pair[1]] - mesh.r[pair[0]]);
            [
                (2 * pair[0], a * h / 6.0),
                (pair[0] + pair[1], (a + 0.5 * h) * h * element::EVEN[1]),
                (2 * pair[1], (a + h) * h / 6.0),
            ]
        })
        .collect()
}

/// Mean axial movement of the flange's top less that of the block's edge, m.
fn height_change(solution: &Solution) -> f64 {
    let mesh = &solution.mesh;
    let last = 2 * mesh.rows();
    let (mut sum, mut area) = (0.0, 0.0);
    for (i, share) in crown(mesh) {
        sum += share * solution.movement(Body::Sleeve, i, last)[1];
        area += share;
    }
    sum / area - solution.movement(Body::Block, 2 * mesh.flange, last)[1]
}

/// Contact pressure along the joint: quadratic between the rows, from the
/// contact forces by least squares.
struct JointLine<'a> {
    solution: &'a Solution,
    pressure: Vec<f64>,
}

impl<'a> JointLine<'a> {
    fn new(solution: &'a Solution) -> Result<Self, Fault> {
        let mesh = &solution.mesh;
        let rows = mesh.ledge - mesh.foot;
        let count = 2 * rows + 1;
        // Node k of row n is 2 n + k: each row reaches back to its first.
        let first = (0..count)
            .map(|i| if i == 0 { 0 } else { (i - 1) / 2 * 2 })
            .collect();
        let mut mass = Skyline::new(first);
        let around = 2.0 * PI * mesh.r[mesh.joint];
        // Exact masses of a quadratic line.
        const MASS: [[f64; 3]; 3] = [[4.0, 2.0, -1.0], [2.0, 16.0, 2.0], [-1.0, 2.0, 4.0]];
        for row in 0..rows {
            let h = mesh.z[mesh.foot + row + 1] - mesh.z[mesh.foot + row];
            for (p, line) in MASS.iter().enumerate() {
                for (q, m) in line.iter().enumerate().take(p + 1) {
                    mass.add(2 * row + p, 2 * row + q, around * h / 30.0 * m);
                }
            }
        }
        let factor = mass.factor().map_err(|_| {
            Fault::new(
                "sleeve.length_m",
                "the joint could not be resolved: check the length",
            )
        })?;
        let mut pressure = solution.joint_force.clone();
        factor.solve(&mut pressure);
        Ok(Self { solution, pressure })
    }

    fn pressure(&self, height: f64) -> f64 {
        let mesh = &self.solution.mesh;
        if height > mesh.z[mesh.ledge] {
            return 0.0;
        }
        let (row, x) = place(&mesh.z, mesh.foot, mesh.ledge, height);
        let shapes = element::line_shapes(x);
        let from = 2 * (row - mesh.foot);
        let p: f64 = (0..3).map(|k| shapes[k] * self.pressure[from + k]).sum();
        p.max(0.0)
    }
}

//! Assembly and contact: which nodes touch is found by trying, until no
//! contact pulls and no gap is closed through.

use super::BoreProfileInput;
use super::contact::Search;
use super::element::{Growth, PLACES, Sides, Stiffness, UNKNOWNS, stiffness};
use super::load;
use super::mesh::{Body, Mesh};
use crate::numerics::skyline::Skyline;
use crate::quantity::report::Fault;

/// Whether the joint lets the parts slide.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joint {
    /// They slide freely along the axis.
    Frictionless,
    /// They do not slide at all: the bound of high friction.
    Stuck,
}

/// Most rounds of the search for the contact.
const ROUNDS: usize = 100;
/// Most numbers of the stiffness matrix: 16 MB.
const MOST_STORED: usize = 2_000_000;
/// Most cells of a mesh, whose own matrices are 7 MB then.
const MOST_CELLS: usize = 3500;

/// Radial and axial values at the nodes of both bodies.
pub(super) type Nodal = Vec<[f64; 2]>;

/// Movement of one node of one body.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Slot {
    /// No such node.
    None,
    /// Held in place.
    Held,
    /// Equation, and an offset that its body has over it.
    Free(u32),
}

/// A solved profile: movements on the grid of half steps.
pub struct Solution {
    /// Mesh it was solved on.
    pub mesh: Mesh,
    /// Movements: body, column, row of half steps; radial and axial.
    movements: Nodal,
    /// Contact force of the joint at each row of half steps from the sleeve's
    /// foot to the ledge, N over the circle, pressing positive.
    pub joint_force: Vec<f64>,
    /// Contact force on the ledge, N, pressing positive.
    pub ledge_force: f64,
    /// Equations solved.
    pub unknowns: usize,
    /// Rounds of the contact search.
    pub rounds: usize,
    /// Largest force left over at a free node, over the largest contact force.
    pub residual: f64,
}

pub(super) struct Grid {
    columns: usize,
    pub(super) rows: usize,
}

impl Grid {
    fn of(mesh: &Mesh) -> Self {
        Self {
            columns: 2 * mesh.columns() + 1,
            rows: 2 * mesh.rows() + 1,
        }
    }
    fn len(&self) -> usize {
        2 * self.columns * self.rows
    }
    pub(super) fn at(&self, body: Body, i: usize, j: usize) -> usize {
        (j * self.columns + i) * 2 + usize::from(body == Body::Block)
    }
}

impl Solution {
    /// Movement of a node, radial and axial (up), m.
    #[must_use]
    pub fn movement(&self, body: Body, i: usize, j: usize) -> [f64; 2] {
        self.movements[Grid::of(&self.mesh).at(body, i, j)]
    }
}

struct Cell {
    column: usize,
    row: usize,
    body: Body,
    matrix: usize,
}

pub(super) struct Assembly<'a> {
    pub(super) input: &'a BoreProfileInput,
    pub(super) mesh: &'a Mesh,
    pub(super) grid: Grid,
    cells: Vec<Cell>,
    matrices: Vec<Stiffness>,
    /// Held growth of each matrix' cells; none where all is at the reference.
    growths: Vec<Growth>,
    /// Radial force of the gas on the inside, by row of half steps.
    pub(super) gas: Vec<f64>,
    pub(super) present: Vec<bool>,
    /// Radial interference at the joint, m.
    pub(super) delta: f64,
    pub(super) joint: Joint,
    /// Joint nodes that touch, by row of half steps.
    pub(super) touching: Vec<bool>,
    /// How often each was closed again.
    pub(super) closed_again: Vec<usize>,
    /// Ledge nodes that touch, by column of half steps.
    pub(super) resting: Vec<bool>,
}

/// Solves the profile on a mesh.
///
/// # Errors
/// A fault at `sleeve.length_m` for a mesh too large, at `joint` for a contact
/// that is not found.
pub fn solve(input: &BoreProfileInput, mesh: Mesh) -> Result<Solution, Fault> {
    solve_near(input, mesh, None)
}

/// The same, the search for the contact beginning with that of a sleeve that
/// differs little.
///
/// # Errors
/// As [`solve`].
pub fn solve_near(
    input: &BoreProfileInput,
    mesh: Mesh,
    near: Option<&Solution>,
) -> Result<Solution, Fault> {
    if mesh.columns() * mesh.rows() > MOST_CELLS {
        return Err(too_slender());
    }
    let mut a = Assembly::new(input, &mesh);
    if let Some(near) = near {
        a.begin_as(near);
    }
    let mut rounds = 0;
    let mut search = Search::new();
    loop {
        rounds += 1;
        let (movements, forces) = a.round()?;
        let changed = a.adjust(&mut search, &movements, &forces);
        if changed && rounds < ROUNDS {
            continue;
        }
        if changed {
            return Err(Fault::new(
                "joint",
                "no steady contact was found for this geometry: check flange, clamp and \
                 interference for values far from any sleeve",
            ));
        }
        let residual = a.residual(&forces);
        let joint_force = a.joint_rows().map(|j| a.pressing(&forces, j)).collect();
        let ledge_force = a.ledge_force(&forces);
        let movements = a.settled(movements);
        let unknowns = a.slots().1;
        return Ok(Solution {
            movements,
            joint_force,
            ledge_force,
            unknowns,
            rounds,
            residual,
            mesh,
        });
    }
}

fn too_slender() -> Fault {
    Fault::new(
        "sleeve.length_m",
        "this sleeve is too long for its wall to be meshed: check length and wall",
    )
}

impl<'a> Assembly<'a> {
    fn new(input: &'a BoreProfileInput, mesh: &'a Mesh) -> Self {
        let grid = Grid::of(mesh);
        let mut cells = Vec::new();
        let mut matrices: Vec<Stiffness> = Vec::new();
        let mut growths: Vec<Growth> = Vec::new();
        let mut known: Vec<(Sides, Body)> = Vec::new();
        let mut present = vec![false; grid.len()];
        for row in 0..mesh.rows() {
            for column in 0..mesh.columns() {
                let Some(body) = mesh.body(column, row) else {
                    continue;
                };
                let sides = Sides {
                    inner: mesh.r[column],
                    width: mesh.r[column + 1] - mesh.r[column],
                    height: mesh.z[row + 1] - mesh.z[row],
                };
                // Cells of one column and height share their matrix.
                let same = known.iter().rposition(|(s, b)| {
                    *b == body
                        && s.inner == sides.inner
                        && (s.height / sides.height - 1.0).abs() < 1e-12
                });
                let matrix = same.unwrap_or_else(|| {
                    let elastic = match body {
                        Body::Sleeve => &input.sleeve,
                        Body::Block => &input.block,
                    };
                    matrices.push(stiffness(&sides, elastic));
                    growths.extend(load::growth(input, body, &sides));
                    known.push((sides, body));
                    matrices.len() - 1
                });
                for (di, dj) in PLACES {
                    present[grid.at(body, 2 * column + di, 2 * row + dj)] = true;
                }
                cells.push(Cell {
                    column,
                    row,
                    body,
                    matrix,
                });
            }
        }
        Self {
            input,
            mesh,
            cells,
            matrices,
            growths,
            gas: load::gas(input, mesh),
            present,
            delta: 0.5 * input.interference.as_m(),
            joint: input.joint,
            touching: vec![true; grid.rows],
            closed_again: vec![0; grid.rows],
            resting: vec![true; grid.columns],
            grid,
        }
    }

    /// Rows of half steps of the joint.
    pub(super) fn joint_rows(&self) -> core::ops::RangeInclusive<usize> {
        2 * self.mesh.foot..=2 * self.mesh.ledge
    }

    /// Columns of half steps of the ledge; the joint's corner belongs to the
    /// joint where that holds the sleeve.
    pub(super) fn ledge_columns(&self) -> core::ops::Range<usize> {
        let from = 2 * self.mesh.joint + usize::from(self.joint == Joint::Stuck);
        let flange = self.mesh.flange > self.mesh.joint;
        from..if flange {
            2 * self.mesh.flange + 1
        } else {
            from
        }
    }

    pub(super) fn clamped(&self) -> bool {
        self.input.clamp.as_n() > 0.0
    }

    /// Whether nothing holds the sleeve along its axis: it slides, no clamp
    /// presses it down. Its ledge then carries nothing; it is pinned at one
    /// node and set down on the ledge afterwards.
    pub(super) fn floats(&self) -> bool {
        let held = self.joint_rows().any(|j| self.holds(j));
        !held && !self.clamped()
    }

    /// Numbers the equations: radial and axial slots of every node.
    fn slots(&self) -> (Vec<[Slot; 2]>, usize) {
        let g = &self.grid;
        let mut slots = vec![[Slot::None; 2]; g.len()];
        let mut next = 0_u32;
        let mut new = || {
            next += 1;
            Slot::Free(next - 1)
        };
        let (joint, ledge_row) = (2 * self.mesh.joint, 2 * self.mesh.ledge);
        let floats = self.floats();
        for j in 0..g.rows {
            for i in 0..g.columns {
                let (s, b) = (g.at(Body::Sleeve, i, j), g.at(Body::Block, i, j));
                let at_joint = i == joint && self.joint_rows().contains(&j) && self.touching[j];
                let at_ledge = !floats
                    && j == ledge_row
                    && self.ledge_columns().contains(&i)
                    && self.resting[i];
                if self.present[b] {
                    let foot = j == 0 && (self.clamped() || i + 1 == g.columns);
                    slots[b][1] = if foot { Slot::Held } else { new() };
                }
                if self.present[s] {
                    slots[s][0] = new();
                    let tied = (at_joint && self.holds(j)) || at_ledge;
                    let pinned = floats && i == 0 && j == 2 * self.mesh.foot;
                    slots[s][1] = if tied && self.present[b] {
                        slots[b][1]
                    } else if pinned {
                        Slot::Held
                    } else {
                        new()
                    };
                }
                if self.present[b] {
                    slots[b][0] = if at_joint { slots[s][0] } else { new() };
                }
            }
        }
        (slots, next as usize)
    }

    /// Offset of a block node over the equation that it shares.
    fn offset(&self, body: Body, i: usize, j: usize) -> f64 {
        let tied = body == Body::Block
            && i == 2 * self.mesh.joint
            && self.joint_rows().contains(&j)
            && self.touching[j];
        if tied { self.delta } else { 0.0 }
    }

    fn nodes<'b>(&'b self, cell: &'b Cell) -> impl Iterator<Item = (usize, usize, usize)> + 'b {
        PLACES.iter().map(move |(di, dj)| {
            let (i, j) = (2 * cell.column + di, 2 * cell.row + dj);
            (self.grid.at(cell.body, i, j), i, j)
        })
    }

    /// One solution for the contact as it is assumed now: movements, and the
    /// forces that the bodies' stiffness puts on their nodes.
    fn round(&self) -> Result<(Nodal, Nodal), Fault> {
        let (slots, count) = self.slots();
        let mut first: Vec<usize> = (0..count).collect();
        let equations = |cell: &Cell| -> [Option<usize>; UNKNOWNS] {
            let mut found = [None; UNKNOWNS];
            for (n, (node, _, _)) in self.nodes(cell).enumerate() {
                for (axis, slot) in slots[node].iter().enumerate() {
                    if let Slot::Free(e) = slot {
                        found[2 * n + axis] = Some(*e as usize);
                    }
                }
            }
            found
        };
        for cell in &self.cells {
            let found = equations(cell);
            let least = found.iter().flatten().copied().min().unwrap_or(0);
            for e in found.into_iter().flatten() {
                first[e] = first[e].min(least);
            }
        }
        let stored: usize = first.iter().enumerate().map(|(i, f)| i + 1 - f).sum();
        if stored > MOST_STORED {
            return Err(too_slender());
        }
        let mut matrix = Skyline::new(first);
        let mut load = vec![0.0; count];
        self.outer_loads(&slots, &mut load);
        for cell in &self.cells {
            let found = equations(cell);
            let k = &self.matrices[cell.matrix];
            let mut shift = [0.0; UNKNOWNS];
            for (n, (_, i, j)) in self.nodes(cell).enumerate() {
                shift[2 * n] = self.offset(cell.body, i, j);
            }
            let shifted = shift.iter().any(|s| *s != 0.0);
            for (p, ep) in found.iter().enumerate() {
                let Some(ep) = *ep else { continue };
                load[ep] += self.growth(cell, p);
                for (q, eq) in found.iter().enumerate() {
                    if let Some(eq) = eq.filter(|eq| *eq <= ep) {
                        matrix.add(ep, eq, k[p][q]);
                    }
                }
                if shifted {
                    load[ep] -= (0..UNKNOWNS).map(|q| k[p][q] * shift[q]).sum::<f64>();
                }
            }
        }
        let factor = matrix.factor().map_err(|_| {
            Fault::new(
                "joint",
                "nothing holds the sleeve in this geometry: check the flange",
            )
        })?;
        factor.solve(&mut load);
        let mut movements = vec![[0.0; 2]; self.grid.len()];
        for j in 0..self.grid.rows {
            for i in 0..self.grid.columns {
                for body in [Body::Sleeve, Body::Block] {
                    let node = self.grid.at(body, i, j);
                    for axis in 0..2 {
                        if let Slot::Free(e) = slots[node][axis] {
                            movements[node][axis] = load[e as usize];
                        }
                    }
                    if self.present[node] {
                        movements[node][0] += self.offset(body, i, j);
                    }
                }
            }
        }
        let forces = self.forces(&movements);
        Ok((movements, forces))
    }

    fn growth(&self, cell: &Cell, unknown: usize) -> f64 {
        self.growths.get(cell.matrix).map_or(0.0, |g| g[unknown])
    }

    /// Largest force of a growth that is held: what rounding is measured by.
    pub(super) fn largest_growth(&self) -> f64 {
        let all = self.growths.iter().flatten();
        all.fold(0.0, |a, f| a.max(f.abs()))
    }

    /// Forces that the stressed metal puts on its nodes: what stiffness and
    /// movement give, less what free growth gives without any stress.
    fn forces(&self, movements: &[[f64; 2]]) -> Nodal {
        let mut forces = vec![[0.0; 2]; self.grid.len()];
        for cell in &self.cells {
            let k = &self.matrices[cell.matrix];
            let mut u = [0.0; UNKNOWNS];
            for (n, (node, _, _)) in self.nodes(cell).enumerate() {
                u[2 * n..2 * n + 2].copy_from_slice(&movements[node]);
            }
            for (n, (node, _, _)) in self.nodes(cell).enumerate() {
                for axis in 0..2 {
                    let row = &k[2 * n + axis];
                    forces[node][axis] += row.iter().zip(&u).map(|(k, u)| k * u).sum::<f64>()
                        - self.growth(cell, 2 * n + axis);
                }
            }
        }
        forces
    }

    /// Force with which the joint presses at a row of half steps.
    pub(super) fn pressing(&self, forces: &[[f64; 2]], j: usize) -> f64 {
        if self.touching[j] {
            -forces[self.grid.at(Body::Sleeve, 2 * self.mesh.joint, j)][0]
        } else {
            0.0
        }
    }

    fn ledge_force(&self, forces: &[[f64; 2]]) -> f64 {
        if self.floats() {
            return 0.0;
        }
        let j = 2 * self.mesh.ledge;
        self.ledge_columns()
            .filter(|i| self.resting[*i])
            .map(|i| forces[self.grid.at(Body::Sleeve, i, j)][1])
            .sum()
    }
}

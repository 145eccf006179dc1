//! Assembly and contact: which nodes touch is found by trying, until no
//! contact pulls and no gap is closed through.

use super::BoreProfileInput;
use super::base::Base;
use super::contact::Search;
use super::element::{Column, Growth, PLACES, Sides, Stiffness, UNKNOWNS};
use super::load;
use super::mesh::{Body, Mesh};
use crate::quantity::report::Fault;

/// Whether the joint lets the parts slide.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joint {
    /// They slide freely along the axis.
    Frictionless,
    /// They do not slide at all: the bound of high friction.
    Stuck,
}

/// Most rounds of the search for the contact, and most factorizations.
const ROUNDS: usize = 1000;
const FACTORS: usize = 20;
/// Most numbers of the stiffness matrix: 16 MB.
pub(super) const MOST_STORED: usize = 2_000_000;
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

pub(super) struct Cell {
    column: usize,
    row: usize,
    body: Body,
    pub(super) matrix: usize,
}

pub(super) struct Assembly<'a> {
    pub(super) input: &'a BoreProfileInput,
    pub(super) mesh: &'a Mesh,
    pub(super) grid: Grid,
    pub(super) cells: Vec<Cell>,
    /// Index of the cell of each column and row.
    index: Vec<Option<usize>>,
    pub(super) matrices: Vec<Stiffness>,
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
    let ties = a.ties();
    let mut search = Search::new();
    let mut base: Option<Base> = None;
    let mut factors = 0;
    for rounds in 1..=ROUNDS {
        let known = base
            .as_mut()
            .and_then(|b| b.states(&a, &ties, &a.tied(&ties)));
        let (now, states) = match (base.take(), known) {
            (Some(now), Some(states)) => (now, states),
            _ if factors == FACTORS => break,
            _ => {
                factors += 1;
                let fresh = Base::new(&a, &ties)?;
                let states = fresh.begun();
                (fresh, states)
            }
        };
        if a.adjust(&mut search, &ties, &states) {
            base = Some(now);
            continue;
        }
        // The contact stands; so it must in the whole.
        let (movements, forces, states) = now.whole(&a, &ties);
        if a.adjust(&mut search, &ties, &states) {
            continue;
        }
        let residual = a.residual(&forces);
        let joint_force = a.joint_rows().map(|j| a.pressing(&forces, j)).collect();
        let ledge_force = a.ledge_force(&forces);
        let movements = a.settled(movements);
        return Ok(Solution {
            movements,
            joint_force,
            ledge_force,
            unknowns: now.unknowns(),
            rounds,
            residual,
            mesh,
        });
    }
    Err(Fault::new(
        "joint",
        "no steady contact was found for this geometry: check flange, clamp and interference for \
         values far from any sleeve",
    ))
}

pub(super) fn too_slender() -> Fault {
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
        let mut index = vec![None; mesh.columns() * mesh.rows()];
        let mut present = vec![false; grid.len()];
        // Rows of one height share their cells' matrices.
        let mut heights: Vec<f64> = Vec::new();
        let rows: Vec<usize> = mesh
            .z
            .windows(2)
            .map(|pair| {
                let height = pair[1] - pair[0];
                let same = |h: &f64| (h / height - 1.0).abs() < 1e-12;
                let known = heights.iter().position(same);
                known.unwrap_or_else(|| {
                    heights.push(height);
                    heights.len() - 1
                })
            })
            .collect();
        for column in 0..mesh.columns() {
            let (inner, width) = (mesh.r[column], mesh.r[column + 1] - mesh.r[column]);
            for body in [Body::Sleeve, Body::Block] {
                let elastic = match body {
                    Body::Sleeve => &input.sleeve,
                    Body::Block => &input.block,
                };
                let stiffness = Column::new(inner, width, elastic);
                let mut made = vec![None; heights.len()];
                for (row, class) in rows.iter().enumerate() {
                    if mesh.body(column, row) != Some(body) {
                        continue;
                    }
                    let matrix = made[*class].unwrap_or_else(|| {
                        let height = heights[*class];
                        matrices.push(stiffness.stiffness(height));
                        let sides = Sides {
                            inner,
                            width,
                            height,
                        };
                        growths.extend(load::growth(input, body, &sides));
                        matrices.len() - 1
                    });
                    made[*class] = Some(matrix);
                    for (di, dj) in PLACES {
                        present[grid.at(body, 2 * column + di, 2 * row + dj)] = true;
                    }
                    index[column + mesh.columns() * row] = Some(cells.len());
                    cells.push(Cell {
                        column,
                        row,
                        body,
                        matrix,
                    });
                }
            }
        }
        Self {
            input,
            mesh,
            cells,
            index,
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

    /// Nodes of a cell, with their column and row of half steps.
    pub(super) fn nodes<'b>(
        &'b self,
        cell: &'b Cell,
    ) -> impl Iterator<Item = (usize, usize, usize)> + 'b {
        PLACES.iter().map(move |(di, dj)| {
            let (i, j) = (2 * cell.column + di, 2 * cell.row + dj);
            (self.grid.at(cell.body, i, j), i, j)
        })
    }

    /// Slots of a cell's unknowns.
    pub(super) fn slots_of(&self, slots: &[[Slot; 2]], cell: &Cell) -> [Slot; UNKNOWNS] {
        let mut found = [Slot::None; UNKNOWNS];
        for (n, (node, _, _)) in self.nodes(cell).enumerate() {
            found[2 * n..2 * n + 2].copy_from_slice(&slots[node]);
        }
        found
    }

    /// Cells of its body round a node.
    pub(super) fn around(&self, node: usize) -> impl Iterator<Item = &Cell> {
        let (body, place) = (node % 2, node / 2);
        let (i, j) = (place % self.grid.columns, place / self.grid.columns);
        let beside = |at: usize, count: usize| at.saturating_sub(1) / 2..(at / 2 + 1).min(count);
        let columns = beside(i, self.mesh.columns());
        beside(j, self.mesh.rows())
            .flat_map(move |row| columns.clone().map(move |column| (column, row)))
            .filter_map(move |(column, row)| self.index[column + self.mesh.columns() * row])
            .map(|cell| &self.cells[cell])
            .filter(move |cell| (cell.body == Body::Block) == (body == 1))
    }

    /// Slots, and the first equation that each equation is coupled to.
    pub(super) fn equations(&self) -> (Vec<[Slot; 2]>, Vec<usize>) {
        let (slots, count) = self.slots();
        let mut first: Vec<usize> = (0..count).collect();
        for cell in &self.cells {
            let free = self.slots_of(&slots, cell);
            let free = free.iter().filter_map(|slot| match slot {
                Slot::Free(e) => Some(*e as usize),
                Slot::None | Slot::Held => None,
            });
            let Some(least) = free.clone().min() else {
                continue;
            };
            for e in free {
                first[e] = first[e].min(least);
            }
        }
        (slots, first)
    }

    pub(super) fn growth(&self, cell: &Cell, unknown: usize) -> f64 {
        self.growths.get(cell.matrix).map_or(0.0, |g| g[unknown])
    }

    /// Largest force of a growth that is held: what rounding is measured by.
    pub(super) fn largest_growth(&self) -> f64 {
        let all = self.growths.iter().flatten();
        all.fold(0.0, |a, f| a.max(f.abs()))
    }

    /// Forces that the stressed metal puts on its nodes: what stiffness and
    /// movement give, less what free growth gives without any stress.
    pub(super) fn forces(&self, movements: &[[f64; 2]]) -> Nodal {
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

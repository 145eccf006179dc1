//! Assembly and contact: which nodes touch is found by trying, until no
//! contact pulls and no gap is closed through.

use super::BoreProfileInput;
use super::base::Base;
use super::cells::{Around, Columns, hang, hang_load, own_movements};
use super::contact::{Contact, Search};
use super::element::{Column, Growth, NODES, Sides, Stiffness, UNKNOWNS};
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

/// Most rounds of the search for the contact.
const ROUNDS: usize = 1000;
/// Rounds after which a stuck joint's search has run in a circle.
const LONG_SEARCH: usize = 40;
/// Most multiplications of all its factorizations, and the least number of them
/// that any sleeve may have.
const MOST_WORK: f64 = 2e9;
const LEAST_FACTORS: usize = 6;
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
    /// The contact that stands.
    pub(super) contact: Contact,
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
    /// The cell of a body's row that holds a column: its radii, by index, and
    /// its own movements at its nodes' places.
    #[must_use]
    pub fn cell(&self, body: Body, column: usize, row: usize) -> ([usize; 2], [[f64; 2]; NODES]) {
        let mesh = &self.mesh;
        let nodes = mesh
            .nodes(column, row)
            .map(|(i, j)| self.movement(body, i, j));
        (
            mesh.span(column, row),
            own_movements(nodes, &mesh.hung(column, row)),
        )
    }

    /// Movement of a node, radial and axial (up), m.
    #[must_use]
    pub fn movement(&self, body: Body, i: usize, j: usize) -> [f64; 2] {
        self.movements[Grid::of(&self.mesh).at(body, i, j)]
    }
}

pub(super) struct Cell {
    pub(super) nodes: [usize; NODES],
    pub(super) matrix: usize,
}

pub(super) struct Assembly<'a> {
    pub(super) input: &'a BoreProfileInput,
    pub(super) mesh: &'a Mesh,
    pub(super) grid: Grid,
    pub(super) cells: Vec<Cell>,
    around: Around,
    pub(super) matrices: Vec<Stiffness>,
    /// Held growth of each matrix' cells; none where all is at the reference.
    growths: Vec<Growth>,
    /// Radial force of the gas on the inside, by row of half steps.
    pub(super) gas: Vec<f64>,
    pub(super) present: Vec<bool>,
    /// Radial interference at the joint, m.
    pub(super) delta: f64,
    pub(super) joint: Joint,
    /// As it is assumed now.
    pub(super) contact: Contact,
}

/// Solves the profile on a mesh.
///
/// # Errors
/// A fault at `joint` for a contact that is not found.
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
    let mut a = Assembly::new(input, &mesh);
    if let Some(near) = near {
        a.begin_as(near);
    }
    let ties = a.ties();
    let mut search = Search::new();
    let mut base: Option<Base> = None;
    let mut factors = LEAST_FACTORS.max((MOST_WORK / mesh.work()) as usize);
    for rounds in 1..=ROUNDS {
        if rounds > LONG_SEARCH && a.may_hold_all() {
            a.hold_all();
            search = Search::new();
        } else if rounds % LONG_SEARCH == 0 {
            // One at a time may be as slow from here as all at once is quick.
            search = Search::new();
        }
        let known = base
            .as_mut()
            .and_then(|b| b.states(&a, &ties, &a.tied(&ties)));
        let (now, states) = match (base.take(), known) {
            (Some(now), Some(states)) => (now, states),
            _ if factors == 0 => break,
            _ => {
                factors -= 1;
                let fresh = Base::new(&a, &ties)?;
                let states = fresh.begun();
                (fresh, states)
            }
        };
        if a.adjust(&mut search, &ties, &states) {
            base = Some(now);
            continue;
        }
        if a.let_go() {
            search = Search::new();
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
        let contact = a.contact.clone();
        return Ok(Solution {
            movements,
            joint_force,
            ledge_force,
            contact,
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

impl<'a> Assembly<'a> {
    fn new(input: &'a BoreProfileInput, mesh: &'a Mesh) -> Self {
        let grid = Grid::of(mesh);
        let mut cells = Vec::new();
        let mut matrices: Vec<Stiffness> = Vec::new();
        let mut growths: Vec<Growth> = Vec::new();
        let mut present = vec![false; grid.len()];
        let mut columns = Columns::default();
        // Cells of one width and height share their matrix.
        let mut made: Vec<Vec<(f64, usize)>> = Vec::new();
        for row in 0..mesh.rows() {
            let height = mesh.z[row + 1] - mesh.z[row];
            for pair in mesh.lines(row).windows(2) {
                let column = pair[0];
                let Some(body) = mesh.body(column, row) else {
                    continue;
                };
                let (inner, width) = (mesh.r[pair[0]], mesh.r[pair[1]] - mesh.r[pair[0]]);
                let elastic = match body {
                    Body::Sleeve => &input.sleeve,
                    Body::Block => &input.block,
                };
                let which = columns.find([pair[0], pair[1]], body, || {
                    Column::new(inner, width, elastic)
                });
                made.resize_with(made.len().max(which + 1), Vec::new);
                let edges = mesh.hung(column, row);
                let hangs = edges.iter().any(Option::is_some);
                let same = |(h, _): &&(f64, usize)| (h / height - 1.0).abs() < 1e-12;
                let known = made[which].iter().rev().find(same).filter(|_| !hangs);
                let matrix = known.map(|(_, matrix)| *matrix).unwrap_or_else(|| {
                    let sides = Sides {
                        inner,
                        width,
                        height,
                    };
                    let stiffness = columns.made[which].stiffness(height);
                    matrices.push(hang(stiffness, &edges));
                    growths.extend(load::growth(input, body, &sides).map(|g| hang_load(g, &edges)));
                    if !hangs {
                        made[which].push((height, matrices.len() - 1));
                    }
                    matrices.len() - 1
                });
                let places = mesh.nodes(column, row);
                let nodes = places.map(|(i, j)| grid.at(body, i, j));
                for node in nodes {
                    present[node] = true;
                }
                cells.push(Cell { nodes, matrix });
            }
        }
        let around = Around::of(&cells, grid.len());
        Self {
            input,
            mesh,
            cells,
            around,
            matrices,
            growths,
            gas: load::gas(input, mesh),
            present,
            delta: 0.5 * input.interference.as_m(),
            joint: input.joint,
            contact: Contact {
                touching: vec![true; grid.rows],
                closed_again: vec![0; grid.rows],
                resting: vec![true; grid.columns],
                held: None,
            },
            grid,
        }
    }

    /// The fault of an equation that nothing is left of beside the others: the
    /// part it is of is too thin beside them.
    pub(super) fn loose(&self, slots: &[[Slot; 2]], equation: usize) -> Fault {
        let is = |slot: &Slot| matches!(slot, Slot::Free(e) if *e as usize == equation);
        let own = |pair: &[Slot; 2]| pair.iter().any(is);
        let place = slots.iter().position(own).map(|node| {
            let row = node / 2 / self.grid.columns / 2;
            (node % 2 == 0, row)
        });
        let field = match (place, self.mesh.jacket) {
            (Some((true, row)), _) if row >= self.mesh.ledge => "sleeve.flange_thickness_m",
            (Some((true, _)) | None, _) => "sleeve.inner_d_m",
            (Some((false, row)), Some([_, low, _])) if row < low => "block.jacket.bottom_m",
            (Some((false, row)), Some([_, _, high])) if row >= high => "block.jacket.deck_m",
            (Some((false, _)), Some(_)) => "block.jacket.wall_m",
            (Some((false, _)), None) => "block.outer_d_m",
        };
        Fault::new(
            field,
            "this part is so thin or soft beside the others that its stiffness is lost in the \
             rounding of theirs: make it thicker, or check the elastic constants",
        )
    }

    /// Rows of half steps of the joint.
    pub(super) fn joint_rows(&self) -> core::ops::RangeInclusive<usize> {
        2 * self.mesh.foot..=2 * self.mesh.ledge
    }

    /// Columns of half steps of the ledge; the joint's corner belongs to the
    /// joint where that holds the sleeve.
    pub(super) fn ledge_columns(&self) -> core::ops::Range<usize> {
        let from = self.first_of_ledge(self.mesh);
        let flange = self.mesh.flange > self.mesh.joint;
        from..if flange {
            2 * self.mesh.flange + 1
        } else {
            from
        }
    }

    pub(super) fn first_of_ledge(&self, mesh: &Mesh) -> usize {
        2 * mesh.joint + usize::from(self.joint == Joint::Stuck)
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
                let at_joint =
                    i == joint && self.joint_rows().contains(&j) && self.contact.touching[j];
                let at_ledge = !floats
                    && j == ledge_row
                    && self.ledge_columns().contains(&i)
                    && self.contact.resting[i];
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

    /// Slots of a cell's unknowns.
    pub(super) fn slots_of(&self, slots: &[[Slot; 2]], cell: &Cell) -> [Slot; UNKNOWNS] {
        let mut found = [Slot::None; UNKNOWNS];
        for (n, node) in cell.nodes.iter().enumerate() {
            found[2 * n..2 * n + 2].copy_from_slice(&slots[*node]);
        }
        found
    }

    /// Cells round a node.
    pub(super) fn around(&self, node: usize) -> impl Iterator<Item = &Cell> {
        self.around.node(node).iter().map(|cell| &self.cells[*cell])
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
            for (n, node) in cell.nodes.iter().enumerate() {
                u[2 * n..2 * n + 2].copy_from_slice(&movements[*node]);
            }
            for (n, node) in cell.nodes.iter().enumerate() {
                for axis in 0..2 {
                    let row = &k[2 * n + axis];
                    forces[*node][axis] += row.iter().zip(&u).map(|(k, u)| k * u).sum::<f64>()
                        - self.growth(cell, 2 * n + axis);
                }
            }
        }
        forces
    }

    /// Force with which the joint presses at a row of half steps.
    pub(super) fn pressing(&self, forces: &[[f64; 2]], j: usize) -> f64 {
        if self.contact.touching[j] {
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
            .filter(|i| self.contact.resting[*i])
            .map(|i| forces[self.grid.at(Body::Sleeve, i, j)][1])
            .sum()
    }
}

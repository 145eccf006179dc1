//! One factorization for many contacts: a base, tied as the contact was assumed
//! once, and what each tie that has changed since adds to it.
//!
//! A tie that the base has and that is open now is a gap of unknown width, one
//! that it lacks and that is closed now a force of unknown size. What one metre
//! or one newton does at every other tie is found once, with the base's factor;
//! which widths and sizes leave no force in a gap and no gap under a force is
//! then a small full system. The whole is only worked out for the contact that
//! stands.

use super::contact::{State, Tie};
use super::element::UNKNOWNS;
use super::solve::{Assembly, Nodal, Slot};
use crate::numerics::dense;
use crate::numerics::skyline::{Factor, SIDES, Skyline};
use crate::quantity::report::Fault;

/// More changed ties than this ask for a new base.
const MOST_CHANGED: usize = 96;
/// So do more that change at a time: their columns cost what a factor does.
const MOST_AT_ONCE: usize = 40;

/// What a change of one tie by one does at every tie.
struct Column {
    tie: usize,
    states: Vec<State>,
}

pub(super) struct Base {
    slots: Vec<[Slot; 2]>,
    factor: Factor,
    tied: Vec<bool>,
    floats: bool,
    columns: Vec<Column>,
    /// Movements and forces where nothing has changed.
    start: (Nodal, Nodal),
    states: Vec<State>,
    /// Changes of the ties that were asked for last.
    changes: Vec<(usize, f64)>,
}

impl Base {
    /// The base of the contact as it is assumed now.
    ///
    /// # Errors
    /// A fault at the part whose stiffness is lost beside that of the others.
    pub(super) fn new(a: &Assembly<'_>, ties: &[Tie]) -> Result<Self, Fault> {
        let (slots, first) = a.equations();
        let mut matrix = Skyline::new(first);
        for cell in &a.cells {
            let found = a.slots_of(&slots, cell);
            let k = &a.matrices[cell.matrix];
            for (p, ep) in found.iter().enumerate() {
                let Slot::Free(ep) = ep else { continue };
                for (q, eq) in found.iter().enumerate() {
                    if let Slot::Free(eq) = eq
                        && eq <= ep
                    {
                        matrix.add(*ep as usize, *eq as usize, k[p][q]);
                    }
                }
            }
        }
        let factor = matrix
            .factor()
            .map_err(|loose| a.loose(&slots, loose.row))?;
        let mut base = Self {
            slots,
            factor,
            tied: a.tied(ties),
            floats: a.floats(),
            columns: Vec::new(),
            start: (Vec::new(), Vec::new()),
            states: Vec::new(),
            changes: Vec::new(),
        };
        base.start = base.solve(a, ties);
        base.states = base.read(a, ties, &base.start);
        Ok(base)
    }

    /// Equations of the base.
    pub(super) fn unknowns(&self) -> usize {
        self.factor.len()
    }

    /// State of every tie where `tied` are; `None` where the base is too far
    /// from that.
    pub(super) fn states(
        &mut self,
        a: &Assembly<'_>,
        ties: &[Tie],
        tied: &[bool],
    ) -> Option<Vec<State>> {
        if a.floats() != self.floats {
            return None;
        }
        let changed: Vec<usize> = (0..ties.len())
            .filter(|t| tied[*t] != self.tied[*t])
            .collect();
        let lacking: Vec<usize> = changed
            .iter()
            .copied()
            .filter(|t| self.columns.iter().all(|c| c.tie != *t))
            .collect();
        if lacking.len() > MOST_AT_ONCE || self.columns.len() + lacking.len() > MOST_CHANGED {
            return None;
        }
        for group in lacking.chunks(SIDES) {
            self.respond(a, ties, group);
        }
        // What must vanish at a tie: the force of one that is open, the gap of
        // one that is closed.
        let wanted = |t: usize, state: &State| if tied[t] { state.gap } else { state.force };
        let column = |t: usize| self.columns.iter().find(|c| c.tie == t);
        let columns: Vec<&Column> = changed.iter().filter_map(|t| column(*t)).collect();
        let mut matrix: Vec<Vec<f64>> = changed
            .iter()
            .map(|row| {
                columns
                    .iter()
                    .map(|c| wanted(*row, &c.states[*row]))
                    .collect()
            })
            .collect();
        let mut x: Vec<f64> = changed
            .iter()
            .map(|row| -wanted(*row, &self.states[*row]))
            .collect();
        if dense::solve(&mut matrix, &mut x).is_err() {
            return None;
        }
        let mut states = self.states.clone();
        for (column, x) in columns.iter().zip(&x) {
            for (state, by) in states.iter_mut().zip(&column.states) {
                state.force += x * by.force;
                state.gap += x * by.gap;
            }
        }
        self.changes = changed.into_iter().zip(x).collect();
        Some(states)
    }

    /// Movements and forces of the whole for the ties that were asked for last,
    /// and the states of all ties in it.
    pub(super) fn whole(&self, a: &Assembly<'_>, ties: &[Tie]) -> (Nodal, Nodal, Vec<State>) {
        let (movements, forces) = if self.changes.is_empty() {
            self.start.clone()
        } else {
            self.solve(a, ties)
        };
        let states = self.read(a, ties, &(movements.clone(), forces.clone()));
        (movements, forces, states)
    }

    /// The states as they begin.
    pub(super) fn begun(&self) -> Vec<State> {
        self.states.clone()
    }

    fn read(&self, a: &Assembly<'_>, ties: &[Tie], (u, f): &(Nodal, Nodal)) -> Vec<State> {
        ties.iter().map(|t| a.state(*t, u, f)).collect()
    }

    /// Columns of up to [`SIDES`] ties.
    fn respond(&mut self, a: &Assembly<'_>, ties: &[Tie], group: &[usize]) {
        let mut sides = vec![[0.0; SIDES]; self.factor.len()];
        for (side, t) in group.iter().enumerate() {
            self.unit(a, ties[*t], self.tied[*t], |e, v| sides[e][side] += v);
        }
        self.factor.solve_several(&mut sides);
        for (side, t) in group.iter().enumerate() {
            let shifted = self.tied[*t].then(|| a.follower(ties[*t]));
            let moved = |node: usize, axis: usize| {
                let own = if shifted == Some((node, axis)) {
                    1.0
                } else {
                    0.0
                };
                match self.slots[node][axis] {
                    Slot::Free(e) => own + sides[e as usize][side],
                    Slot::None | Slot::Held => own,
                }
            };
            let states = ties.iter().map(|tie| a.response(*tie, moved)).collect();
            self.columns.push(Column { tie: *t, states });
        }
    }

    /// The right-hand side of one metre of gap at a tie of the base, or of one
    /// newton at one that it lacks.
    fn unit(&self, a: &Assembly<'_>, tie: Tie, is_tied: bool, mut add: impl FnMut(usize, f64)) {
        if is_tied {
            let (node, axis) = a.follower(tie);
            for cell in a.around(node) {
                let k = &a.matrices[cell.matrix];
                for (q, n) in cell.nodes.iter().enumerate() {
                    if *n != node {
                        continue;
                    }
                    for (p, slot) in a.slots_of(&self.slots, cell).iter().enumerate() {
                        if let Slot::Free(e) = slot {
                            add(*e as usize, -k[p][2 * q + axis]);
                        }
                    }
                }
            }
            return;
        }
        // A force that presses: apart across the joint, the sleeve up and the
        // block down along the axis.
        let [s, b] = a.ends(tie);
        let (axis, up) = match tie {
            Tie::Press(_) => (0, -1.0),
            Tie::Hold(_) | Tie::Rest(_) => (1, 1.0),
        };
        for (node, force) in [(s, up), (b, -up)] {
            if let Slot::Free(e) = self.slots[node][axis] {
                add(e as usize, force);
            }
        }
    }

    /// Movements and forces under all loads with the changes.
    fn solve(&self, a: &Assembly<'_>, ties: &[Tie]) -> (Nodal, Nodal) {
        let mut load = vec![0.0; self.factor.len()];
        a.outer_loads(&self.slots, &mut load);
        let mut offsets = vec![[0.0; 2]; a.present.len()];
        for (tie, is_tied) in ties.iter().zip(&self.tied) {
            if *is_tied && matches!(tie, Tie::Press(_)) {
                let (node, axis) = a.follower(*tie);
                offsets[node][axis] = a.delta;
            }
        }
        for (t, x) in &self.changes {
            if self.tied[*t] {
                let (node, axis) = a.follower(ties[*t]);
                offsets[node][axis] += x;
            } else {
                self.unit(a, ties[*t], false, |e, v| load[e] += x * v);
            }
        }
        for cell in &a.cells {
            let k = &a.matrices[cell.matrix];
            let mut shift = [0.0; UNKNOWNS];
            for (n, node) in cell.nodes.iter().enumerate() {
                shift[2 * n..2 * n + 2].copy_from_slice(&offsets[*node]);
            }
            let shifted = shift.iter().any(|s| *s != 0.0);
            for (p, slot) in a.slots_of(&self.slots, cell).iter().enumerate() {
                let Slot::Free(e) = slot else { continue };
                load[*e as usize] += a.growth(cell, p);
                if shifted {
                    load[*e as usize] -= (0..UNKNOWNS).map(|q| k[p][q] * shift[q]).sum::<f64>();
                }
            }
        }
        self.factor.solve(&mut load);
        let mut movements = offsets;
        for (movement, slots) in movements.iter_mut().zip(&self.slots) {
            for (m, slot) in movement.iter_mut().zip(slots) {
                if let Slot::Free(e) = slot {
                    *m += load[*e as usize];
                }
            }
        }
        let forces = a.forces(&movements);
        (movements, forces)
    }
}

impl Assembly<'_> {
    /// The node and the axis of a tie that follow the other's equation.
    fn follower(&self, tie: Tie) -> (usize, usize) {
        let [s, b] = self.ends(tie);
        match tie {
            Tie::Press(_) => (b, 0),
            Tie::Hold(_) | Tie::Rest(_) => (s, 1),
        }
    }

    /// Force and gap of a tie for movements alone, without loads.
    fn response(&self, tie: Tie, moved: impl Fn(usize, usize) -> f64) -> State {
        let [s, b] = self.ends(tie);
        let axis = self.follower(tie).1;
        let mut force = 0.0;
        for cell in self.around(s) {
            let k = &self.matrices[cell.matrix];
            let Some(own) = cell.nodes.iter().position(|n| *n == s) else {
                continue;
            };
            let row = &k[2 * own + axis];
            for (n, k) in cell.nodes.iter().zip(row.as_chunks::<2>().0) {
                force += k[0] * moved(*n, 0) + k[1] * moved(*n, 1);
            }
        }
        let apart = moved(b, axis) - moved(s, axis);
        match tie {
            Tie::Press(_) => State {
                force: -force,
                gap: apart,
            },
            Tie::Hold(_) | Tie::Rest(_) => State { force, gap: -apart },
        }
    }
}

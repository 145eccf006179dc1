//! The search for the contact: what pulls is opened, what overlaps is closed.
//!
//! All at once, which is quick; where that runs in a circle, one at a time and
//! always the last of them, which is slow but comes to an end (Murty's rule
//! for linear complementarity problems, put behind block pivoting as Judice
//! and Pires do; from memory).
//!
//! It does not solve the whole sleeve anew: see [`super::base`].

use super::mesh::{Body, Mesh};
use super::solve::{Assembly, Joint, Nodal, Solution};

/// Rounds without fewer wrong nodes before one is changed at a time.
const PATIENCE: usize = 4;

/// A stuck node that opens and closes this often has lost its hold: it slides.
/// (Held it would pull, let go it would overlap.)
const LOST: usize = 2;

/// What may tie sleeve and block to each other at a node.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Tie {
    /// The joint across, at a row of half steps.
    Press(usize),
    /// The stuck joint along the axis, at a row of half steps.
    Hold(usize),
    /// The ledge, at a column of half steps.
    Rest(usize),
}

/// Force and gap of a tie: a force that presses and a gap that is open are
/// positive. One of them is nothing.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct State {
    pub force: f64,
    pub gap: f64,
}

/// Which nodes touch, and how they came to.
#[derive(Clone, Debug)]
pub(super) struct Contact {
    /// Joint nodes that touch, by row of half steps.
    pub touching: Vec<bool>,
    /// How often each was closed again.
    pub closed_again: Vec<usize>,
    /// Ledge nodes that touch, by column of half steps.
    pub resting: Vec<bool>,
    /// Joint nodes that are held along the axis whether they touch or not; `None`
    /// where those that touch are.
    pub held: Option<Vec<bool>>,
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
    fn choose<'a>(&mut self, wrong: &'a [Tie]) -> &'a [Tie] {
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
    /// Every place that may be tied, the joint from the foot up first.
    pub(super) fn ties(&self) -> Vec<Tie> {
        let mut ties: Vec<Tie> = self.joint_rows().map(Tie::Press).collect();
        if self.joint == Joint::Stuck {
            ties.extend(self.joint_rows().map(Tie::Hold));
        }
        ties.extend(self.ledge_columns().map(Tie::Rest));
        ties
    }

    /// Which of them are tied, as the contact is assumed now.
    pub(super) fn tied(&self, ties: &[Tie]) -> Vec<bool> {
        let floats = self.floats();
        ties.iter()
            .map(|tie| match *tie {
                Tie::Press(j) => self.contact.touching[j],
                Tie::Hold(j) => self.holds(j),
                Tie::Rest(i) => !floats && self.contact.resting[i],
            })
            .collect()
    }

    /// Nodes of a tie, sleeve's and block's.
    pub(super) fn ends(&self, tie: Tie) -> [usize; 2] {
        let (i, j) = match tie {
            Tie::Press(j) | Tie::Hold(j) => (2 * self.mesh.joint, j),
            Tie::Rest(i) => (i, 2 * self.mesh.ledge),
        };
        [Body::Sleeve, Body::Block].map(|body| self.grid.at(body, i, j))
    }

    /// Force and gap of a tie.
    pub(super) fn state(&self, tie: Tie, movements: &[[f64; 2]], forces: &[[f64; 2]]) -> State {
        let [s, b] = self.ends(tie);
        match tie {
            Tie::Press(_) => State {
                force: -forces[s][0],
                gap: movements[b][0] - movements[s][0] - self.delta,
            },
            Tie::Hold(_) | Tie::Rest(_) => State {
                force: forces[s][1],
                gap: movements[s][1] - movements[b][1],
            },
        }
    }

    /// Opens what pulls and closes what overlaps; whether anything was wrong.
    pub(super) fn adjust(&mut self, search: &mut Search, ties: &[Tie], states: &[State]) -> bool {
        let wrong = self.wrong(ties, states);
        for tie in search.choose(&wrong) {
            match *tie {
                Tie::Press(j) => {
                    self.contact.touching[j] ^= true;
                    self.contact.closed_again[j] += usize::from(self.contact.touching[j]);
                }
                Tie::Rest(i) => self.contact.resting[i] ^= true,
                Tie::Hold(_) => {}
            }
        }
        // What a clamp presses on something bears: where joint and ledge were
        // let go at once, the ledge.
        if self.clamped() && !self.ledge_columns().any(|i| self.contact.resting[i]) {
            let held = self.joint_rows().any(|j| self.holds(j));
            for i in self.ledge_columns().filter(|_| !held) {
                self.contact.resting[i] = true;
            }
        }
        !wrong.is_empty()
    }

    /// Begins with the contact of another solution: the joint's by depth below
    /// the ledge, the ledge's by radius.
    pub(super) fn begin_as(&mut self, near: &Solution) {
        let mut held = vec![true; self.contact.touching.len()];
        let (mesh, other) = (self.mesh, &near.mesh);
        let below = |mesh: &Mesh, j| mesh.half_height(2 * mesh.ledge) - mesh.half_height(j);
        for j in self.joint_rows() {
            let depth = below(mesh, j);
            let off = |row: &usize| (below(other, *row) - depth).abs();
            let rows = 2 * other.foot..=2 * other.ledge;
            if let Some(row) = rows.min_by(|a, b| off(a).total_cmp(&off(b))) {
                self.contact.touching[j] = near.contact.touching[row];
                self.contact.closed_again[j] = near.contact.closed_again[row];
                held[j] = near.contact.held.as_ref().is_none_or(|held| held[row]);
            }
        }
        self.contact.held = near.contact.held.as_ref().map(|_| held);
        for i in self.ledge_columns() {
            let radius = mesh.half_radius(i);
            let off = |column: &usize| (other.half_radius(*column) - radius).abs();
            let columns = self.first_of_ledge(other)..=2 * other.flange;
            if let Some(column) = columns.min_by(|a, b| off(a).total_cmp(&off(b))) {
                self.contact.resting[i] = near.contact.resting[column];
            }
        }
    }

    /// Begins anew, the joint held all along until [`Self::let_go`]: for a stuck
    /// joint whose search runs in a circle because a node that opens lets go too.
    /// With what is held settled there is one contact only, and it is found.
    pub(super) fn hold_all(&mut self) {
        let contact = &mut self.contact;
        contact.touching.fill(true);
        contact.resting.fill(true);
        contact.held = Some(vec![true; contact.touching.len()]);
    }

    /// Whether [`Self::hold_all`] would be something new.
    pub(super) fn may_hold_all(&self) -> bool {
        self.joint == Joint::Stuck && self.contact.held.is_none()
    }

    /// Lets go of what is held and does not touch, for good; whether there was
    /// any.
    pub(super) fn let_go(&mut self) -> bool {
        let contact = &mut self.contact;
        let Some(held) = &mut contact.held else {
            return false;
        };
        let rows = 2 * self.mesh.foot..=2 * self.mesh.ledge;
        let mut any = false;
        let both = held.iter_mut().zip(&contact.touching).enumerate();
        for (_, (held, touches)) in both.filter(|(j, _)| rows.contains(j)) {
            any |= *held && !touches;
            *held &= *touches;
        }
        any
    }

    /// Whether the joint holds the sleeve along the axis at a row.
    pub(super) fn holds(&self, j: usize) -> bool {
        if let Some(held) = &self.contact.held {
            return held[j];
        }
        self.joint == Joint::Stuck
            && self.contact.touching[j]
            && self.contact.closed_again[j] < LOST
    }

    /// What is assumed wrongly.
    fn wrong(&self, ties: &[Tie], states: &[State]) -> Vec<Tie> {
        let presses = |tie: &Tie| matches!(tie, Tie::Press(_));
        let largest = ties
            .iter()
            .zip(states)
            .filter(|(tie, _)| presses(tie))
            .map(|(_, state)| state.force.abs())
            .fold(0.0, f64::max);
        let pulls = -1e-9 * largest.max(self.largest_load()).max(1e-9);
        let floats = self.floats();
        let is_wrong = |tie: Tie, state: &State| match tie {
            Tie::Press(j) if self.contact.touching[j] => state.force < pulls,
            Tie::Press(_) => state.gap < -1e-12,
            Tie::Hold(_) => false,
            Tie::Rest(_) if floats => false,
            Tie::Rest(i) if self.contact.resting[i] => state.force < pulls,
            Tie::Rest(_) => state.gap < -1e-13,
        };
        ties.iter()
            .zip(states)
            .filter(|(tie, state)| is_wrong(**tie, state))
            .map(|(tie, _)| *tie)
            .collect()
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

//! The equations of the cold drop as a chain of cells: sleeve wall, gap,
//! block wall. [`super::cold_drop`] drives it through its phases.
//!
//! Finite volumes in radius, radii fixed at 293.15 K for the heat flow.
//! While the gap is open, time is stretched: the independent variable s has
//! dt = (gap + jump) / (gap + jump at entry) ds, so that the heat flow, which
//! grows without bound as the gap closes, is smooth in s.

use crate::numerics::stepper::{Coupling, Jacobian, State, StiffSystem};

use super::air::{self, AirSide, GAP_JUMP_M};
use super::wall::Wall;

/// Largest number of unknowns, quadratures included.
pub const CAPACITY: usize = 48;
/// Gap below which the gap conductance stays as it is, m.
pub(super) const GAP_FLOOR_M: f64 = 1e-7;
/// Conductance of sleeve and bore once they touch, W/m2/K.
pub const JOINT_W_M2K: f64 = 15e3;

/// What surrounds the sleeve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phase {
    /// In the air, on the way.
    Carry,
    /// In the bore, free.
    Gap,
    /// In the bore, gripped.
    Joint,
}

/// What the block does.
#[derive(Clone, Debug)]
pub enum Block {
    /// A ring with an insulated outside: of a block at room temperature the fast end.
    Ring(Wall),
    /// A bore held at a temperature: of such a block the slow end. Where the block is
    /// warm neither is a bound.
    Held {
        /// Temperature of the bore, K.
        bore_k: f64,
        /// e(T) there.
        strain: f64,
    },
}

/// The system of equations.
#[derive(Clone, Debug)]
pub struct DropModel {
    /// The sleeve's wall.
    pub sleeve: Wall,
    /// The block.
    pub block: Block,
    /// Diameter of the bore at 293.15 K, m.
    pub bore_d_m: f64,
    /// Air on the sleeve's faces.
    pub air: AirSide,
    /// Now.
    pub phase: Phase,
    /// Gap and jump at entry, m: scale of the stretched time.
    pub scale_m: f64,
}

/// Place of the time among the quadratures.
pub(super) const TIME: usize = 0;
/// Place of the heat taken from the air.
pub(super) const AIR_HEAT: usize = 1;

/// From heat into every cell to its rate; behind the cells run time and the
/// heat from the air.
pub(super) fn run_on(rates: &mut [f64], inertia: &[f64], stretch: f64, from_air: f64) {
    let (cells, quadratures) = rates.split_at_mut(inertia.len());
    for (rate, inertia) in cells.iter_mut().zip(inertia) {
        *rate *= inertia;
    }
    quadratures[TIME] = stretch;
    quadratures[AIR_HEAT] = from_air * stretch;
}

/// What the tables say at every cell.
struct Cells {
    /// Rate of a cell per heat into it: 1 / (density x cross-section x cp).
    inertia: State<CAPACITY>,
    conductivity: State<CAPACITY>,
    /// Mean clearance on diameter, m.
    clearance: f64,
}

impl Cells {
    /// Reads a wall whose first cell is unknown `from`; its mean e(T).
    fn fill(&mut self, wall: &Wall, y: &State<CAPACITY>, from: usize) -> f64 {
        let mut mean = 0.0;
        for (i, (w, inertia)) in wall.weight.iter().zip(&wall.inertia).enumerate() {
            let [strain, cp, k] = wall.table.all(y[from + i]);
            mean += w * strain;
            self.inertia[from + i] = inertia / cp;
            self.conductivity[from + i] = k;
        }
        mean
    }
}

/// Heat through the joint, per metre of the sleeve's outside, W/m2, times
/// (gap + jump) / scale in the gap phase.
struct Crossing {
    flux: f64,
    /// Its slope over either cell's temperature (block up: positive).
    conductance: f64,
    /// Its slope over (gap + jump), W/m3.
    per_gap: f64,
    /// Temperature of the bore's face, K.
    bore_k: f64,
}

impl DropModel {
    fn block_cells(&self) -> usize {
        match (&self.block, self.phase) {
            (_, Phase::Carry) | (Block::Held { .. }, _) => 0,
            (Block::Ring(wall), _) => wall.cells(),
        }
    }

    /// Time since the phase began, s.
    #[must_use]
    pub fn time(&self, y: &State<CAPACITY>) -> f64 {
        y[self.coupled() + TIME]
    }

    /// dt/ds among the rates.
    #[must_use]
    pub fn stretch_in(&self, rates: &State<CAPACITY>) -> f64 {
        rates[self.coupled() + TIME]
    }

    /// Heat taken from the air, J/m/rad.
    #[must_use]
    pub fn air_heat(&self, y: &State<CAPACITY>) -> f64 {
        y[self.coupled() + AIR_HEAT]
    }

    /// Puts both quadratures to zero.
    pub fn reset_quadratures(&self, y: &mut State<CAPACITY>) {
        let n = self.coupled();
        y[n + TIME] = 0.0;
        y[n + AIR_HEAT] = 0.0;
    }

    /// Temperatures of the block's cells; empty where the bore is held.
    #[must_use]
    pub fn block_part<'a>(&self, y: &'a State<CAPACITY>) -> &'a [f64] {
        let n = self.sleeve.cells();
        &y[n..n + self.block_cells()]
    }

    /// Mean clearance on diameter, m.
    #[must_use]
    pub fn clearance(&self, y: &State<CAPACITY>) -> f64 {
        let sleeve = self.sleeve.mean(y, |t| self.sleeve.table.strain(t));
        let block = match &self.block {
            Block::Ring(wall) => wall.mean(self.block_part(y), |t| wall.table.strain(t)),
            Block::Held { strain, .. } => *strain,
        };
        self.bore_d_m * (1.0 + block) - 2.0 * self.sleeve.outer() * (1.0 + sleeve)
    }

    /// Mean temperatures of sleeve and block, K.
    #[must_use]
    pub fn means(&self, y: &State<CAPACITY>) -> (f64, f64) {
        let sleeve = self.sleeve.mean(y, |t| t);
        let block = match &self.block {
            Block::Ring(wall) => wall.mean(self.block_part(y), |t| t),
            Block::Held { bore_k, .. } => *bore_k,
        };
        (sleeve, block)
    }

    /// Clearance on diameter, m, and temperature of the bore's face, K.
    #[must_use]
    pub fn clearance_and_bore(&self, y: &State<CAPACITY>) -> (f64, f64) {
        let cells = self.read(y);
        if self.phase == Phase::Carry {
            return (cells.clearance, 0.0);
        }
        let open = Self::open_at(cells.clearance);
        (
            cells.clearance,
            self.crossing(y, &cells.conductivity, open).bore_k,
        )
    }

    /// Mean e(T) of the sleeve.
    #[must_use]
    pub fn sleeve_strain(&self, y: &State<CAPACITY>) -> f64 {
        self.sleeve.mean(y, |t| self.sleeve.table.strain(t))
    }

    /// Gap and jump, m, at a clearance on diameter.
    fn open_at(clearance: f64) -> f64 {
        (0.5 * clearance).max(GAP_FLOOR_M) + GAP_JUMP_M
    }

    /// dt/ds at a gap and jump.
    fn stretch_at(&self, open: f64) -> f64 {
        match self.phase {
            Phase::Gap => open / self.scale_m,
            Phase::Carry | Phase::Joint => 1.0,
        }
    }

    fn read(&self, y: &State<CAPACITY>) -> Cells {
        let mut cells = Cells {
            inertia: [0.0; CAPACITY],
            conductivity: [0.0; CAPACITY],
            clearance: 0.0,
        };
        let n = self.sleeve.cells();
        let sleeve = cells.fill(&self.sleeve, y, 0);
        let block = match &self.block {
            Block::Ring(wall) if self.phase != Phase::Carry => cells.fill(wall, y, n),
            Block::Ring(_) => 0.0,
            Block::Held { strain, .. } => *strain,
        };
        cells.clearance =
            self.bore_d_m * (1.0 + block) - 2.0 * self.sleeve.outer() * (1.0 + sleeve);
        cells
    }

    fn crossing(
        &self,
        y: &State<CAPACITY>,
        conductivity: &State<CAPACITY>,
        open_m: f64,
    ) -> Crossing {
        let n = self.sleeve.cells();
        let sleeve_k = y[n - 1];
        let r_sleeve = self.sleeve.half(n - 1) / conductivity[n - 1];
        let (block_k, r_block) = match &self.block {
            Block::Ring(wall) => {
                let around = self.sleeve.outer() / wall.inner();
                (y[n], around * wall.half(0) / conductivity[n])
            }
            Block::Held { bore_k, .. } => (*bore_k, 0.0),
        };
        let (walls, difference) = (r_sleeve + r_block, block_k - sleeve_k);
        if self.phase == Phase::Joint {
            let u = 1.0 / (1.0 / JOINT_W_M2K + walls);
            let flux = u * difference;
            return Crossing {
                flux,
                conductance: u,
                per_gap: 0.0,
                bore_k: block_k - flux * r_block,
            };
        }
        // Heat crosses k / (gap + jump + walls k): one division a try.
        let through = |mean_k: f64| {
            let k = air::conductivity_tabulated_w_mk(mean_k);
            k / (open_m + walls * k)
        };
        let middle = 0.5 * (sleeve_k + block_k);
        // Once more with the faces' own mean temperature.
        let first = through(middle) * difference;
        let conductance = through(middle + 0.5 * first * (r_sleeve - r_block));
        let stretched = conductance * self.stretch_at(open_m);
        Crossing {
            flux: stretched * difference,
            conductance: stretched,
            per_gap: stretched * difference * walls * conductance / open_m,
            bore_k: block_k - conductance * difference * r_block,
        }
    }

    fn rates_of(&self, y: &State<CAPACITY>, cells: &Cells, open: f64, rates: &mut State<CAPACITY>) {
        let n = self.sleeve.cells();
        let all = self.coupled();
        let k = &cells.conductivity;
        let wall = &self.sleeve;
        wall.conduct(&y[..n], &k[..n], &mut rates[..n]);
        let stretch = self.stretch_at(open);
        let mut from_air = wall.inner() * self.air.flux(y[0], wall.half(0) / k[0]).0;
        rates[0] += from_air;
        if self.phase == Phase::Carry {
            let behind = wall.half(n - 1) / k[n - 1];
            let outer = wall.outer() * self.air.flux(y[n - 1], behind).0;
            rates[n - 1] += outer;
            from_air += outer;
        }
        if let (Block::Ring(wall), true) = (&self.block, all > n) {
            wall.conduct(&y[n..all], &k[n..all], &mut rates[n..all]);
        }
        for r in &mut rates[..all] {
            *r *= stretch;
        }
        if self.phase != Phase::Carry {
            let crossing = wall.outer() * self.crossing(y, k, open).flux;
            rates[n - 1] += crossing;
            if all > n {
                rates[n] -= crossing;
            }
        }
        run_on(rates, &cells.inertia[..all], stretch, from_air);
    }

    /// The gap closes as the parts change: every rate depends on every
    /// temperature through (gap + jump).
    fn dyad(
        &self,
        y: &State<CAPACITY>,
        crossing: &Crossing,
        cells: &Cells,
        j: &mut Jacobian<CAPACITY>,
    ) {
        let n = self.sleeve.cells();
        let all = self.coupled();
        let open = Self::open_at(cells.clearance);
        self.rates_of(y, cells, open, &mut j.column);
        // All but the crossing scales with (gap + jump); the crossing has its
        // own slope.
        let flux = self.sleeve.outer() * crossing.flux;
        let own = self.sleeve.outer() * crossing.per_gap - flux / open;
        for c in &mut j.column[..all] {
            *c /= open;
        }
        j.column[n - 1] += own * cells.inertia[n - 1];
        if all > n {
            j.column[n] -= own * cells.inertia[n];
        }
        for (i, w) in self.sleeve.weight.iter().enumerate() {
            let slope = self.sleeve.table.expansion_per_k(y[i]);
            j.row[i] = -self.sleeve.outer() * w * slope;
        }
        if let (Block::Ring(wall), true) = (&self.block, all > n) {
            for (i, w) in wall.weight.iter().enumerate() {
                let slope = wall.table.expansion_per_k(y[n + i]);
                j.row[n + i] = 0.5 * self.bore_d_m * w * slope;
            }
        }
        j.coupling = Coupling::ChainAndDyad;
    }
}

impl StiffSystem<CAPACITY> for DropModel {
    fn coupled(&self) -> usize {
        self.sleeve.cells() + self.block_cells()
    }

    fn quadratures(&self) -> usize {
        2
    }

    fn rates(&self, y: &State<CAPACITY>, rates: &mut State<CAPACITY>) {
        let cells = self.read(y);
        let open = Self::open_at(cells.clearance);
        self.rates_of(y, &cells, open, rates);
    }

    fn jacobian(&self, y: &State<CAPACITY>, j: &mut Jacobian<CAPACITY>) {
        let n = self.sleeve.cells();
        let all = self.coupled();
        let cells = self.read(y);
        let k = &cells.conductivity;
        let open = Self::open_at(cells.clearance);
        let stretch = self.stretch_at(open);
        j.diagonal[..all].fill(0.0);
        j.below[..all].fill(0.0);
        j.above[..all].fill(0.0);
        let mut chain = |i: usize, conductance: f64| {
            j.above[i] += conductance;
            j.below[i + 1] += conductance;
            j.diagonal[i] -= conductance;
            j.diagonal[i + 1] -= conductance;
        };
        for i in 0..n - 1 {
            chain(i, stretch * self.sleeve.conduction(&k[..n], i));
        }
        if let (Block::Ring(wall), true) = (&self.block, all > n) {
            for i in 0..wall.cells() - 1 {
                chain(n + i, stretch * wall.conduction(&k[n..all], i));
            }
        }
        let crossing = (self.phase != Phase::Carry).then(|| self.crossing(y, k, open));
        if let Some(c) = &crossing {
            let u = self.sleeve.outer() * c.conductance;
            if all > n {
                chain(n - 1, u);
            } else {
                j.diagonal[n - 1] -= u;
            }
        }
        let wall = &self.sleeve;
        j.diagonal[0] += stretch * wall.inner() * self.air.flux(y[0], wall.half(0) / k[0]).1;
        if self.phase == Phase::Carry {
            let behind = wall.half(n - 1) / k[n - 1];
            j.diagonal[n - 1] += wall.outer() * self.air.flux(y[n - 1], behind).1;
        }
        for (i, inertia) in cells.inertia[..all].iter().enumerate() {
            j.below[i] *= inertia;
            j.diagonal[i] *= inertia;
            j.above[i] *= inertia;
        }
        j.coupling = Coupling::Chain;
        let moving = self.phase == Phase::Gap && open - GAP_JUMP_M > GAP_FLOOR_M;
        if let Some(c) = crossing.filter(|_| moving) {
            self.dyad(y, &c, &cells, j);
        }
    }
}

//! The equations of a sleeve that leans in its bore, carries frost, or both:
//! sleeve and block in sectors of half a circle, each a chain of cells like
//! that of [`super::drop_model`], with conduction round the ring.
//!
//! The local radial gap at the angle t is g (1 - lean cos t) less the frost, the
//! local coefficient `k_air` / (gap + jump), at most that of the joint; within a
//! sector it is averaged over four places. The lean is kept while the gap
//! shrinks, the mean clearance stays that of free rings. The colder side bends
//! the sleeve: bow = kappa L^2 / 8 with kappa the first harmonic of its strain
//! (side to side) over its mean diameter, simply supported along the bore, an
//! upper bound.

mod moment;

use core::f64::consts::PI;

use super::air::{self, AirSide, GAP_JUMP_M};
use super::drop_model::{AIR_HEAT, Block, GAP_FLOOR_M, JOINT_W_M2K, run_on};
use super::wall::Wall;
use crate::numerics::stepper::{Coupling, Jacobian, State, StiffSystem};

/// Largest number of unknowns, quadratures included.
pub const LEAN_CAPACITY: usize = 128;
/// Places of a sector at which its gap is looked at.
const LOOKS: usize = 4;
/// The sectors' edges are at pi (j / m) to this power.
const GRADING: f64 = 1.5;

/// A sleeve in the bore, in sectors.
#[derive(Clone, Debug)]
pub struct LeanModel {
    sleeve: Wall,
    block: Block,
    bore_d_m: f64,
    air: AirSide,
    frost_m: f64,
    /// Gap and jump at entry, m: scale of the stretched time.
    scale_m: f64,
    /// L^2 / 8 over the mean diameter, times 2: bow by the first harmonic.
    bend_m: f64,
    /// Share of each sector in the ring.
    part: Vec<f64>,
    /// Twice the mean of its cosine times that share: for the first harmonic.
    cosine: Vec<f64>,
    /// Between a sector and the next: 1 / (distance x width), in rad^-2, for
    /// the one and for the other.
    between: Vec<[f64; 2]>,
    /// Share of the mean gap at each place of each sector: 1 - lean cos t.
    share: Vec<[f64; LOOKS]>,
    /// Thickness over radius, cell by cell of the sleeve and then of the block.
    round: Vec<f64>,
}

/// How a sleeve sits while it is dropped.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seating {
    /// 0 concentric to 1 touching along its whole length.
    pub lean: f64,
    /// Frost on its outside, m.
    pub frost_m: f64,
    /// Its length, m.
    pub length_m: f64,
    /// Sectors of half a circle.
    pub sectors: usize,
}

/// What the tables say at every cell.
struct Cells {
    inertia: State<LEAN_CAPACITY>,
    conductivity: State<LEAN_CAPACITY>,
    /// Mean clearance on diameter, m.
    clearance: f64,
    /// First harmonic of the sleeve's strain: its half range.
    harmonic: f64,
}

/// Heat into the sleeve's outside in one sector, W/m2, in stretched time.
struct Crossing {
    flux: f64,
    conductance: f64,
    /// Slope of the flux over (gap + jump), W/m3.
    per_gap: f64,
    bore_k: f64,
}

impl LeanModel {
    /// `entry_m` is the clearance at entry.
    #[must_use]
    pub fn new(
        sleeve: Wall,
        block: Block,
        bore_d_m: f64,
        air: AirSide,
        seating: &Seating,
        entry_m: f64,
    ) -> Self {
        // Narrow where it touches: the film changes fastest there.
        let m = seating.sectors;
        let edges: Vec<f64> = (0..=m)
            .map(|j| PI * (j as f64 / m as f64).powf(GRADING))
            .collect();
        let width: Vec<f64> = edges.windows(2).map(|e| e[1] - e[0]).collect();
        let place = |j: usize, i: usize| edges[j] + (i as f64 + 0.5) / LOOKS as f64 * width[j];
        let mut round = sleeve.round();
        if let Block::Ring(wall) = &block {
            round.extend(wall.round());
        }
        let mean_d = sleeve.inner() + sleeve.outer();
        Self {
            bend_m: 2.0 * seating.length_m * seating.length_m / (8.0 * mean_d),
            cosine: edges
                .windows(2)
                .map(|e| 2.0 / PI * (e[1].sin() - e[0].sin()))
                .collect(),
            between: width
                .windows(2)
                .map(|w| {
                    let apart = 0.5 * (w[0] + w[1]);
                    [1.0 / (apart * w[0]), 1.0 / (apart * w[1])]
                })
                .collect(),
            share: (0..m)
                .map(|j| core::array::from_fn(|i| 1.0 - seating.lean * place(j, i).cos()))
                .collect(),
            frost_m: seating.frost_m,
            scale_m: 0.5 * entry_m + GAP_JUMP_M,
            sleeve,
            block,
            bore_d_m,
            air,
            part: width.iter().map(|w| w / PI).collect(),
            round,
        }
    }

    const fn sectors(&self) -> usize {
        self.cosine.len()
    }

    fn block_cells(&self) -> usize {
        match &self.block {
            Block::Ring(wall) => wall.cells(),
            Block::Held { .. } => 0,
        }
    }

    /// Unknowns of a sector.
    fn each(&self) -> usize {
        self.sleeve.cells() + self.block_cells()
    }

    /// A state from one radial profile of the sleeve and a uniform block.
    #[must_use]
    pub fn start(&self, sleeve: &[f64], block_k: f64) -> State<LEAN_CAPACITY> {
        let mut y = [0.0; LEAN_CAPACITY];
        let n = self.sleeve.cells();
        for sector in y.chunks_exact_mut(self.each()).take(self.sectors()) {
            sector[..n].copy_from_slice(&sleeve[..n]);
            sector[n..].fill(block_k);
        }
        y
    }

    /// The radial profile, mean over the sectors: sleeve, then block.
    #[must_use]
    pub fn profile(&self, y: &State<LEAN_CAPACITY>) -> Vec<f64> {
        let each = self.each();
        let at = |i: usize| {
            let of = |(j, part): (usize, &f64)| part * y[j * each + i];
            self.part.iter().enumerate().map(of).sum()
        };
        (0..each).map(at).collect()
    }

    /// Heat of the parts, J/m/rad.
    #[must_use]
    pub fn heat(&self, y: &State<LEAN_CAPACITY>) -> f64 {
        let (each, n) = (self.each(), self.sleeve.cells());
        let of = |(sector, part): (&[f64], &f64)| {
            let block = match &self.block {
                Block::Ring(wall) => wall.heat(&sector[n..]),
                Block::Held { .. } => 0.0,
            };
            part * (self.sleeve.heat(&sector[..n]) + block)
        };
        y.chunks_exact(each).zip(&self.part).map(of).sum()
    }

    /// Heat taken from the air, J/m/rad.
    #[must_use]
    pub fn air_heat(&self, y: &State<LEAN_CAPACITY>) -> f64 {
        y[self.coupled() + AIR_HEAT]
    }

    fn read(&self, y: &State<LEAN_CAPACITY>) -> Cells {
        let mut cells = Cells {
            inertia: [0.0; LEAN_CAPACITY],
            conductivity: [0.0; LEAN_CAPACITY],
            clearance: 0.0,
            harmonic: 0.0,
        };
        let (each, n) = (self.each(), self.sleeve.cells());
        let (mut sleeve, mut block) = (0.0, 0.0);
        for (j, (cosine, part)) in self.cosine.iter().zip(&self.part).enumerate() {
            let at = j * each;
            let own = cells.fill(&self.sleeve, y, at);
            sleeve += part * own;
            // The touching side, at t = 0, is the warmer and longer one.
            cells.harmonic += own * cosine;
            if let Block::Ring(wall) = &self.block {
                block += part * cells.fill(wall, y, at + n);
            }
        }
        if let Block::Held { strain, .. } = &self.block {
            block = *strain;
        }
        cells.clearance =
            self.bore_d_m * (1.0 + block) - 2.0 * self.sleeve.outer() * (1.0 + sleeve);
        cells
    }

    /// Gap and jump of the mean, m, at a clearance on diameter.
    fn open_at(clearance: f64) -> f64 {
        (0.5 * clearance).max(GAP_FLOOR_M) + GAP_JUMP_M
    }

    /// Conductance from wall to wall of a sector, W/m2/K, and its slope over the
    /// mean gap: each place's own film in series with the two walls.
    fn through(&self, sector: usize, open_m: f64, k: f64, walls: f64) -> (f64, f64) {
        let gap = open_m - GAP_JUMP_M;
        let (mut sum, mut slope) = (0.0, 0.0);
        let closed = k / JOINT_W_M2K;
        for share in &self.share[sector] {
            let open = (gap * share - self.frost_m).max(0.0) + GAP_JUMP_M;
            // No film is thinner than what conducts like the joint.
            let u = k / (open.max(closed) + walls * k);
            sum += u;
            if open > closed {
                slope -= u * u / k * share;
            }
        }
        (sum / LOOKS as f64, slope / LOOKS as f64)
    }

    fn crossing(
        &self,
        sector: usize,
        y: &State<LEAN_CAPACITY>,
        conductivity: &State<LEAN_CAPACITY>,
        open_m: f64,
    ) -> Crossing {
        let (n, at) = (self.sleeve.cells(), sector * self.each());
        let sleeve_k = y[at + n - 1];
        let r_sleeve = self.sleeve.half(n - 1) / conductivity[at + n - 1];
        let (block_k, r_block) = match &self.block {
            Block::Ring(wall) => {
                let around = self.sleeve.outer() / wall.inner();
                (y[at + n], around * wall.half(0) / conductivity[at + n])
            }
            Block::Held { bore_k, .. } => (*bore_k, 0.0),
        };
        let (walls, difference) = (r_sleeve + r_block, block_k - sleeve_k);
        let middle = 0.5 * (sleeve_k + block_k);
        let through = |mean_k: f64| {
            let k = air::conductivity_tabulated_w_mk(mean_k);
            self.through(sector, open_m, k, walls)
        };
        // Once more with the faces' own mean temperature.
        let first = through(middle).0 * difference;
        let (u, slope) = through(middle + 0.5 * first * (r_sleeve - r_block));
        let stretch = open_m / self.scale_m;
        Crossing {
            flux: u * difference * stretch,
            conductance: u * stretch,
            per_gap: difference * (slope * stretch + u / self.scale_m),
            bore_k: block_k - u * difference * r_block,
        }
    }

    /// Heat round the ring into every cell, per radian, length and time; `add`
    /// is given a cell, its neighbour and the conductance to either.
    fn round_the_ring(
        &self,
        k: &State<LEAN_CAPACITY>,
        mut add: impl FnMut(usize, usize, [f64; 2]),
    ) {
        let each = self.each();
        for (j, between) in self.between.iter().enumerate() {
            for (i, round) in self.round.iter().enumerate() {
                let (a, b) = (j * each + i, (j + 1) * each + i);
                let leads = 0.5 * (k[a] + k[b]) * round;
                add(a, b, between.map(|x| x * leads));
            }
        }
    }

    /// Rates from a reading; with `crossings` the heat through the gap too.
    fn rates_of(
        &self,
        y: &State<LEAN_CAPACITY>,
        cells: &Cells,
        crossings: bool,
        rates: &mut State<LEAN_CAPACITY>,
    ) {
        let (each, n, m) = (self.each(), self.sleeve.cells(), self.sectors());
        let all = each * m;
        let open = Self::open_at(cells.clearance);
        let stretch = open / self.scale_m;
        let k = &cells.conductivity;
        let mut from_air = 0.0;
        for (j, part) in self.part.iter().enumerate() {
            let at = j * each;
            let wall = &self.sleeve;
            wall.conduct(&y[at..at + n], &k[at..at + n], &mut rates[at..at + n]);
            let inside = wall.inner() * self.air.flux(y[at], wall.half(0) / k[at]).0;
            rates[at] += inside;
            from_air += inside * part;
            if let Block::Ring(wall) = &self.block {
                let outer = at + n..at + each;
                wall.conduct(&y[outer.clone()], &k[outer.clone()], &mut rates[outer]);
            }
        }
        self.round_the_ring(k, |a, b, conductance| {
            let apart = y[b] - y[a];
            rates[a] += conductance[0] * apart;
            rates[b] -= conductance[1] * apart;
        });
        for r in &mut rates[..all] {
            *r *= stretch;
        }
        if crossings {
            for j in 0..m {
                let q = self.sleeve.outer() * self.crossing(j, y, k, open).flux;
                rates[j * each + n - 1] += q;
                if each > n {
                    rates[j * each + n] -= q;
                }
            }
        }
        run_on(rates, &cells.inertia[..all], stretch, from_air);
    }

    /// The mean gap moves with every temperature, and every rate with it.
    fn dyad(
        &self,
        y: &State<LEAN_CAPACITY>,
        cells: &Cells,
        crossings: &[Crossing],
        j: &mut Jacobian<LEAN_CAPACITY>,
    ) {
        let (each, n, m) = (self.each(), self.sleeve.cells(), self.sectors());
        let open = Self::open_at(cells.clearance);
        self.rates_of(y, cells, false, &mut j.column);
        for c in &mut j.column[..each * m] {
            *c /= open;
        }
        for (sector, crossing) in crossings.iter().enumerate() {
            let (at, share) = (sector * each, self.part[sector]);
            let own = self.sleeve.outer() * crossing.per_gap;
            j.column[at + n - 1] += own * cells.inertia[at + n - 1];
            if each > n {
                j.column[at + n] -= own * cells.inertia[at + n];
            }
            for (i, w) in self.sleeve.weight.iter().enumerate() {
                let slope = self.sleeve.table.expansion_per_k(y[at + i]);
                j.row[at + i] = -self.sleeve.outer() * w * slope * share;
            }
            if let Block::Ring(wall) = &self.block {
                for (i, w) in wall.weight.iter().enumerate() {
                    let slope = wall.table.expansion_per_k(y[at + n + i]);
                    j.row[at + n + i] = 0.5 * self.bore_d_m * w * slope * share;
                }
            }
        }
        j.coupling = Coupling::ChainAndDyad;
    }
}

impl Cells {
    /// Reads a wall whose first cell is unknown `from`; its mean e(T).
    fn fill(&mut self, wall: &Wall, y: &State<LEAN_CAPACITY>, from: usize) -> f64 {
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

impl StiffSystem<LEAN_CAPACITY> for LeanModel {
    fn coupled(&self) -> usize {
        self.each() * self.sectors()
    }

    fn quadratures(&self) -> usize {
        2
    }

    fn rates(&self, y: &State<LEAN_CAPACITY>, rates: &mut State<LEAN_CAPACITY>) {
        self.rates_of(y, &self.read(y), true, rates);
    }

    fn jacobian(&self, y: &State<LEAN_CAPACITY>, j: &mut Jacobian<LEAN_CAPACITY>) {
        let (each, n, m) = (self.each(), self.sleeve.cells(), self.sectors());
        let all = each * m;
        let cells = self.read(y);
        let k = &cells.conductivity;
        let open = Self::open_at(cells.clearance);
        let stretch = open / self.scale_m;
        j.diagonal[..all].fill(0.0);
        j.below[..all].fill(0.0);
        j.above[..all].fill(0.0);
        let crossings: Vec<Crossing> = (0..m).map(|s| self.crossing(s, y, k, open)).collect();
        for (sector, crossing) in crossings.iter().enumerate() {
            let at = sector * each;
            let mut chain = |i: usize, conductance: f64| {
                j.above[i] += conductance;
                j.below[i + 1] += conductance;
                j.diagonal[i] -= conductance;
                j.diagonal[i + 1] -= conductance;
            };
            for i in 0..n - 1 {
                chain(at + i, stretch * self.sleeve.conduction(&k[at..at + n], i));
            }
            if let Block::Ring(wall) = &self.block {
                for i in 0..wall.cells() - 1 {
                    chain(
                        at + n + i,
                        stretch * wall.conduction(&k[at + n..at + each], i),
                    );
                }
            }
            let u = self.sleeve.outer() * crossing.conductance;
            if each > n {
                chain(at + n - 1, u);
            } else {
                j.diagonal[at + n - 1] -= u;
            }
            let wall = &self.sleeve;
            j.diagonal[at] += stretch * wall.inner() * self.air.flux(y[at], wall.half(0) / k[at]).1;
        }
        // Round the ring only what a cell loses itself: slow, and enough.
        self.round_the_ring(k, |a, b, conductance| {
            j.diagonal[a] -= stretch * conductance[0];
            j.diagonal[b] -= stretch * conductance[1];
        });
        for (i, inertia) in cells.inertia[..all].iter().enumerate() {
            j.below[i] *= inertia;
            j.diagonal[i] *= inertia;
            j.above[i] *= inertia;
        }
        j.coupling = Coupling::Chain;
        if open - GAP_JUMP_M > GAP_FLOOR_M {
            self.dyad(y, &cells, &crossings, j);
        }
    }
}

//! Drives [`DropModel`] through carry, gap and joint, keeps what is needed to
//! draw the curve, and finds the moments that matter.

use super::drop_model::{Block, CAPACITY, DropModel, Phase};
use crate::numerics::roots::{self, NoRoot};
use crate::numerics::stepper::{State, Stepper, StiffSystem, next_size};

/// How finely the equations are solved.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Resolution {
    /// Cells through the sleeve's wall.
    pub sleeve_cells: usize,
    /// Cells through the block's wall.
    pub block_cells: usize,
    /// Sectors of half a circle, where the sleeve leans.
    pub sectors: usize,
    /// Tolerance of a time step, K.
    pub tolerance_k: f64,
}

/// One recorded moment: values and their slopes in the run's own variable.
#[derive(Clone, Copy, Debug)]
pub struct Moment {
    /// The stretched time, s.
    pub s: f64,
    /// Time since entry, s, and dt/ds.
    pub t: [f64; 2],
    /// Clearance on diameter, m.
    pub clearance: [f64; 2],
    /// Mean temperature of the sleeve, K.
    pub sleeve: [f64; 2],
    /// Mean temperature of the block, K.
    pub block: [f64; 2],
    /// Temperature of the bore's face, K.
    pub bore: f64,
    /// Bow of the sleeve, m: what its colder side bends it by.
    pub bow: [f64; 2],
}

/// Equations that can be run.
pub trait Flow<const N: usize>: StiffSystem<N> {
    /// What is recorded at a state with these rates; time from the beginning of
    /// the phase.
    fn moment(&self, y: &State<N>, rates: &State<N>) -> Moment;
}

/// A run so far.
pub struct Run<M, const N: usize> {
    /// The equations.
    pub model: M,
    /// The state now.
    pub y: State<N>,
    /// What was recorded, in order.
    pub moments: Vec<Moment>,
    /// Steps taken and steps rejected.
    pub steps: [usize; 2],
    stepper: Stepper<N>,
    tolerance_k: f64,
    began_s: f64,
}

/// How a phase ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// Its condition was met.
    Met,
    /// Time was up.
    TimeUp,
    /// The steps ran out: no answer.
    Stuck,
}

/// From this time on the steps' tolerance falls as time goes on, s.
const LATE_S: f64 = 30.0;
/// Most steps of one phase; a usual drop takes about forty.
const MOST_STEPS: usize = 20_000;

impl Flow<CAPACITY> for DropModel {
    fn moment(&self, y: &State<CAPACITY>, rates: &State<CAPACITY>) -> Moment {
        let n = self.sleeve.cells();
        let sleeve_rates = &rates[..n];
        let mut clearance_rate = 0.0;
        let (mut sleeve_rate, mut block_rate) = (0.0, 0.0);
        for (i, w) in self.sleeve.weights().iter().enumerate() {
            sleeve_rate += w * sleeve_rates[i];
            clearance_rate -= 2.0
                * self.sleeve.outer()
                * w
                * self.sleeve.table.expansion_per_k(y[i])
                * sleeve_rates[i];
        }
        if let Block::Ring(wall) = &self.block {
            for (i, w) in wall.weights().iter().enumerate().take(self.coupled() - n) {
                block_rate += w * rates[n + i];
                clearance_rate +=
                    self.bore_d_m * w * wall.table.expansion_per_k(y[n + i]) * rates[n + i];
            }
        }
        let (sleeve, block) = self.means(y);
        let (clearance, bore) = self.clearance_and_bore(y);
        Moment {
            s: 0.0,
            t: [self.time(y), self.stretch_in(rates)],
            clearance: [clearance, clearance_rate],
            sleeve: [sleeve, sleeve_rate],
            block: [block, block_rate],
            bore,
            bow: [0.0; 2],
        }
    }
}

impl Run<DropModel, CAPACITY> {
    /// A run of `model` from uniform temperatures.
    #[must_use]
    pub fn from_uniform(model: DropModel, sleeve_k: f64, tolerance_k: f64) -> Self {
        let mut y = [0.0; CAPACITY];
        y[..model.sleeve.cells()].fill(sleeve_k);
        Self::new(model, y, tolerance_k)
    }

    /// Goes over to `phase`; `began_s` is the time since entry.
    pub fn enter(&mut self, phase: Phase, began_s: f64, block_k: f64) {
        let (n, from) = (self.model.sleeve.cells(), self.model.phase);
        self.model.phase = phase;
        if let (Block::Ring(wall), Phase::Carry, Phase::Gap | Phase::Joint) =
            (&self.model.block, from, phase)
        {
            let cells = wall.cells();
            self.y[n..n + cells].fill(block_k);
        }
        self.model.reset_quadratures(&mut self.y);
        self.began_s = began_s;
    }

    /// Heat balance: heat gained by the parts less heat from the air, over
    /// the heat gained by the sleeve.
    #[must_use]
    pub fn heat_of_parts(&self) -> f64 {
        let m = &self.model;
        let sleeve = m.sleeve.heat(&self.y[..m.sleeve.cells()]);
        match &m.block {
            Block::Ring(wall) if m.phase != Phase::Carry => {
                sleeve + wall.heat(m.block_part(&self.y))
            }
            _ => sleeve,
        }
    }
}

impl<M: Flow<N>, const N: usize> Run<M, N> {
    /// A run of `model` from the state `y`.
    #[must_use]
    pub fn new(model: M, y: State<N>, tolerance_k: f64) -> Self {
        Self {
            model,
            y,
            moments: Vec::with_capacity(64),
            steps: [0, 0],
            stepper: Stepper::default(),
            tolerance_k,
            began_s: 0.0,
        }
    }

    /// The tolerance of a time step, K.
    #[must_use]
    pub const fn tolerance_k(&self) -> f64 {
        self.tolerance_k
    }

    fn record(&self, y: &State<N>, rates: &State<N>, s: f64) -> Moment {
        let mut moment = self.model.moment(y, rates);
        moment.s = s;
        moment.t[0] += self.began_s;
        moment
    }

    /// Steps on until `reached` (a function that falls through zero) or until
    /// `last_s` seconds since entry; records every step when `record`.
    pub fn until(&mut self, last_s: f64, mut h: f64, reached: impl Fn(&Moment) -> f64) -> End {
        let mut s = self.moments.last().map_or(0.0, |m| m.s);
        let mut rates = [0.0; N];
        self.model.rates(&self.y, &mut rates);
        let mut before = self.record(&self.y, &rates, s);
        self.moments.push(before);
        if reached(&before) <= 0.0 {
            return End::Met;
        }
        for _ in 0..MOST_STEPS {
            let left = last_s - before.t[0];
            if left <= 1e-9 * last_s.max(1.0) {
                return End::TimeUp;
            }
            // Aim at the end of the time with the present stretch.
            let aim = left / before.t[1];
            let mut trial = h.min(aim);
            // A grip that comes late comes slowly: what is left of the clearance
            // then closes by a few kelvin, and a step's error weighs more.
            let tolerance_k = self.tolerance_k * (LATE_S / before.t[0].max(LATE_S)).max(0.005);
            self.stepper.prepare(&self.model, &self.y);
            let step = self.stepper.step(&self.model, &self.y, &rates, trial);
            if step.error > tolerance_k {
                self.steps[1] += 1;
                h = next_size(trial, step.error, tolerance_k).min(0.5 * trial);
                if h < 1e-12 {
                    return End::Stuck;
                }
                continue;
            }
            let mut y = step.y;
            let mut end_rates = [0.0; N];
            self.model.rates(&y, &mut end_rates);
            let mut after = self.record(&y, &end_rates, s + trial);
            let mut met = false;
            if reached(&after) <= 0.0 {
                // Land on the moment: interpolate, step there, and once more
                // with the shorter interval.
                for _ in 0..2 {
                    // Short of it already: the next step comes closer.
                    if reached(&after) > 0.0 {
                        break;
                    }
                    let Ok(at) = crossing(&before, &after, &reached) else {
                        return End::Stuck;
                    };
                    trial = at - s;
                    y = self.stepper.step(&self.model, &self.y, &rates, trial).y;
                    self.model.rates(&y, &mut end_rates);
                    after = self.record(&y, &end_rates, s + trial);
                }
                // Short of it: this was an ordinary step, the next comes closer.
                // A step too short to matter has arrived whatever is left.
                met = reached(&after) <= 1e-5 * reached(&before).abs()
                    || trial <= 1e-7 * after.s.max(1e-3);
            }
            self.steps[0] += 1;
            s = after.s;
            self.y = y;
            rates = end_rates;
            self.moments.push(after);
            if met {
                return End::Met;
            }
            if after.t[0] >= last_s {
                return End::TimeUp;
            }
            let grown = next_size(trial, step.error, tolerance_k);
            h = if trial < h { h.max(grown) } else { grown };
            before = after;
        }
        End::Stuck
    }
}

/// Where between two moments `reached` falls through zero, in s: on the cubic
/// between them.
fn crossing(
    before: &Moment,
    after: &Moment,
    reached: &impl Fn(&Moment) -> f64,
) -> Result<f64, NoRoot> {
    roots::bracketed(
        |s| reached(&between(before, after, s)),
        before.s,
        after.s,
        1e-12 * after.s.max(1.0),
    )
    .map(|root| root.x)
}

/// Weights of a cubic Hermite piece at one place: values, then slopes.
pub struct Hermite {
    values: [f64; 4],
    slopes: [f64; 4],
}

/// The weights at `s` between `from` and `to`, `from` < `to`.
#[must_use]
pub fn hermite(from: f64, to: f64, s: f64) -> Hermite {
    let h = to - from;
    let x = (s - from) / h;
    let (x2, x3) = (x * x, x * x * x);
    Hermite {
        values: [
            2.0 * x3 - 3.0 * x2 + 1.0,
            h * (x3 - 2.0 * x2 + x),
            3.0 * x2 - 2.0 * x3,
            h * (x3 - x2),
        ],
        slopes: [
            (6.0 * x2 - 6.0 * x) / h,
            3.0 * x2 - 4.0 * x + 1.0,
            (6.0 * x - 6.0 * x2) / h,
            3.0 * x2 - 2.0 * x,
        ],
    }
}

impl Hermite {
    /// Value and slope between two ends, each a value and a slope.
    #[must_use]
    pub fn mix(&self, p: [f64; 2], q: [f64; 2]) -> [f64; 2] {
        let with = |w: &[f64; 4]| w[0] * p[0] + w[1] * p[1] + w[2] * q[0] + w[3] * q[1];
        [with(&self.values), with(&self.slopes)]
    }
}

/// Cubic Hermite between two moments.
#[must_use]
pub fn between(a: &Moment, b: &Moment, s: f64) -> Moment {
    if b.s <= a.s {
        return *b;
    }
    let w = hermite(a.s, b.s, s);
    Moment {
        s,
        t: w.mix(a.t, b.t),
        clearance: w.mix(a.clearance, b.clearance),
        sleeve: w.mix(a.sleeve, b.sleeve),
        block: w.mix(a.block, b.block),
        bore: a.bore + (b.bore - a.bore) * (s - a.s) / (b.s - a.s),
        bow: w.mix(a.bow, b.bow),
    }
}

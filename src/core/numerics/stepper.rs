//! A stiff stepper for heat-flow chains: a linearly implicit W-method with an
//! error estimate, for systems whose Jacobian is close to a tridiagonal matrix
//! plus one dyad.
//!
//! Method: ROS34PW2 of Rang and Angermann, BIT 45 (2005) 761: four stages,
//! order 3 with any approximate Jacobian, stiffly accurate, L-stable, embedded
//! order 2. A wrong or missing part of the Jacobian costs stability at most,
//! not order, so slow couplings may be left out of it. The coefficients are
//! checked by their order in the tests.

use std::sync::OnceLock;

/// Values of all unknowns, quadratures included: at most `N` of them.
pub type State<const N: usize> = [f64; N];

/// A system y' = f(y).
pub trait StiffSystem<const N: usize> {
    /// Number of coupled unknowns: the first of the state.
    fn coupled(&self) -> usize;
    /// Number of quadratures behind them: rates that feed back on nothing.
    fn quadratures(&self) -> usize;
    /// The rates at `y`.
    fn rates(&self, y: &State<N>, rates: &mut State<N>);
    /// The Jacobian of the coupled rates at `y`, or something near it.
    fn jacobian(&self, y: &State<N>, jacobian: &mut Jacobian<N>);
}

/// Tridiagonal matrix plus `column` times `row`.
#[derive(Clone, Debug)]
pub struct Jacobian<const N: usize> {
    /// Entry (i, i - 1).
    pub below: State<N>,
    /// Entry (i, i).
    pub diagonal: State<N>,
    /// Entry (i, i + 1).
    pub above: State<N>,
    /// Column of the dyad.
    pub column: State<N>,
    /// Row of the dyad.
    pub row: State<N>,
    /// Whether the dyad is there at all.
    pub coupling: Coupling,
}

/// Whether a Jacobian has its dyad.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Coupling {
    /// Tridiagonal only.
    Chain,
    /// Tridiagonal and dyad.
    ChainAndDyad,
}

impl<const N: usize> Jacobian<N> {
    /// All zero.
    #[must_use]
    pub const fn zero() -> Self {
        Self {
            below: [0.0; N],
            diagonal: [0.0; N],
            above: [0.0; N],
            column: [0.0; N],
            row: [0.0; N],
            coupling: Coupling::Chain,
        }
    }
}

const STAGES: usize = 4;
const GAMMA: f64 = 4.358_665_215_084_59e-1;
const ALPHA: [[f64; 4]; 4] = [
    [0.0; 4],
    [8.717_330_430_169_18e-1, 0.0, 0.0, 0.0],
    [
        8.445_706_001_536_942e-1,
        -1.129_906_423_648_418_5e-1,
        0.0,
        0.0,
    ],
    [0.0, 0.0, 1.0, 0.0],
];
const GAMMAS: [[f64; 4]; 4] = [
    [GAMMA, 0.0, 0.0, 0.0],
    [-8.717_330_430_169_18e-1, GAMMA, 0.0, 0.0],
    [
        -9.033_805_701_304_408e-1,
        5.418_067_238_809_532_6e-2,
        GAMMA,
        0.0,
    ],
    [
        2.421_238_070_609_534_6e-1,
        -1.223_250_583_904_514_7,
        5.452_602_553_351_021e-1,
        GAMMA,
    ],
];
const B: [f64; 4] = [
    2.421_238_070_609_534_6e-1,
    -1.223_250_583_904_514_7,
    1.545_260_255_335_102,
    GAMMA,
];
const B_EMBEDDED: [f64; 4] = [
    3.781_090_314_581_937e-1,
    -9.604_229_221_242_318e-2,
    5e-1,
    2.179_332_607_542_295e-1,
];

/// The coefficients in the form that needs no product with the Jacobian
/// (Hairer and Wanner, Solving ODEs II, IV.7).
struct Tableau {
    a: [[f64; 4]; 4],
    c: [[f64; 4]; 4],
    m: [f64; 4],
    e: [f64; 4],
}

fn tableau() -> &'static Tableau {
    static TABLEAU: OnceLock<Tableau> = OnceLock::new();
    TABLEAU.get_or_init(|| {
        // Forward substitution: row by row of the inverse.
        let mut inverse = [[0.0; STAGES]; STAGES];
        for i in 0..STAGES {
            let known = |col: usize| {
                (col..i)
                    .map(|k| GAMMAS[i][k] * inverse[k][col])
                    .sum::<f64>()
            };
            inverse[i] = core::array::from_fn(|col| {
                let unit = if i == col { 1.0 } else { 0.0 };
                (unit - known(col)) / GAMMA
            });
        }
        let times = |row: &[f64; STAGES]| -> [f64; STAGES] {
            core::array::from_fn(|j| (0..STAGES).map(|k| row[k] * inverse[k][j]).sum())
        };
        let m = times(&B);
        let embedded = times(&B_EMBEDDED);
        Tableau {
            a: ALPHA.map(|row| times(&row)),
            c: core::array::from_fn(|i| {
                core::array::from_fn(|j| if i == j { 0.0 } else { -inverse[i][j] })
            }),
            m,
            e: core::array::from_fn(|j| m[j] - embedded[j]),
        }
    })
}

/// One trial step.
#[derive(Clone, Debug)]
pub struct Step<const N: usize> {
    /// The state at its end.
    pub y: State<N>,
    /// The error estimate of the coupled unknowns, largest absolute value.
    pub error: f64,
}

/// A stepper with its working space.
pub struct Stepper<const N: usize> {
    solver: Solver<N>,
    stages: [State<N>; STAGES],
    work: State<N>,
}

/// The factored matrix of a step.
struct Solver<const N: usize> {
    jacobian: Jacobian<N>,
    lower: State<N>,
    pivot: State<N>,
    dyad: State<N>,
    dyad_scale: f64,
}

impl<const N: usize> Default for Stepper<N> {
    fn default() -> Self {
        Self {
            solver: Solver {
                jacobian: Jacobian::zero(),
                lower: [0.0; N],
                pivot: [0.0; N],
                dyad: [0.0; N],
                dyad_scale: 0.0,
            },
            stages: [[0.0; N]; STAGES],
            work: [0.0; N],
        }
    }
}

impl<const N: usize> Stepper<N> {
    /// Prepares steps from `y`: the Jacobian there. Trials of several step
    /// sizes may follow.
    pub fn prepare(&mut self, system: &impl StiffSystem<N>, y: &State<N>) {
        system.jacobian(y, &mut self.solver.jacobian);
    }

    /// A step of size `h` from `y`, where the rates are `first`.
    pub fn step(
        &mut self,
        system: &impl StiffSystem<N>,
        y: &State<N>,
        first: &State<N>,
        h: f64,
    ) -> Step<N> {
        let t = tableau();
        let n = system.coupled();
        let all = (n + system.quadratures()).min(N);
        self.solver.factor(n, 1.0 / (h * GAMMA));
        for i in 0..STAGES {
            let (before, rest) = self.stages.split_at_mut(i);
            let rates = &mut rest[0];
            if i == 0 {
                rates[..all].copy_from_slice(&first[..all]);
            } else {
                self.work[..all].copy_from_slice(&y[..all]);
                for (a, stage) in t.a[i].iter().zip(before.iter()) {
                    if *a != 0.0 {
                        for (w, u) in self.work[..all].iter_mut().zip(stage) {
                            *w += a * u;
                        }
                    }
                }
                system.rates(&self.work, rates);
                for (c, stage) in t.c[i].iter().zip(before.iter()) {
                    let c = c / h;
                    for (r, u) in rates[..all].iter_mut().zip(stage) {
                        *r += c * u;
                    }
                }
            }
            self.solver.solve(n, rates);
            for r in &mut rates[n..all] {
                *r *= h * GAMMA;
            }
        }
        let mut end = *y;
        let mut error: f64 = 0.0;
        for (k, value) in end[..all].iter_mut().enumerate() {
            let (mut step, mut difference) = (0.0, 0.0);
            for (i, stage) in self.stages.iter().enumerate() {
                step += t.m[i] * stage[k];
                difference += t.e[i] * stage[k];
            }
            *value += step;
            if k < n {
                // A value that is no number must not pass as a small error.
                let size = difference.abs();
                error = if size.is_finite() {
                    error.max(size)
                } else {
                    f64::INFINITY
                };
            }
        }
        Step { y: end, error }
    }
}

impl<const N: usize> Solver<N> {
    /// Factors (shift I - T) and prepares the dyad (Sherman and Morrison).
    fn factor(&mut self, n: usize, shift: f64) {
        let j = &self.jacobian;
        let mut pivot = 1.0;
        for i in 0..n {
            let mut d = shift - j.diagonal[i];
            if i > 0 {
                let l = -j.below[i] * pivot;
                self.lower[i] = l;
                d += l * j.above[i - 1];
            }
            pivot = 1.0 / d;
            self.pivot[i] = pivot;
        }
        if j.coupling == Coupling::ChainAndDyad {
            let mut column = self.dyad;
            column[..n].copy_from_slice(&j.column[..n]);
            self.solve_chain(n, &mut column);
            let row = &self.jacobian.row;
            let product: f64 = (0..n).map(|i| row[i] * column[i]).sum();
            self.dyad = column;
            self.dyad_scale = 1.0 / (1.0 - product);
        }
    }

    fn solve_chain(&self, n: usize, b: &mut State<N>) {
        for i in 1..n {
            b[i] -= self.lower[i] * b[i - 1];
        }
        if n == 0 {
            return;
        }
        b[n - 1] *= self.pivot[n - 1];
        for i in (0..n - 1).rev() {
            b[i] = (b[i] + self.jacobian.above[i] * b[i + 1]) * self.pivot[i];
        }
    }

    fn solve(&self, n: usize, b: &mut State<N>) {
        self.solve_chain(n, b);
        if self.jacobian.coupling == Coupling::ChainAndDyad {
            let row = &self.jacobian.row;
            let product: f64 = (0..n).map(|i| row[i] * b[i]).sum();
            let factor = product * self.dyad_scale;
            for (value, d) in b[..n].iter_mut().zip(&self.dyad) {
                *value += factor * d;
            }
        }
    }
}

/// The next step size after a step of size `h` with this error: aims at nine
/// tenths of the tolerance, changes by at most a factor 5 up and 5 down.
#[must_use]
pub fn next_size(h: f64, error: f64, tolerance: f64) -> f64 {
    let ratio = (tolerance / error.max(1e-300)).cbrt() * 0.9;
    h * ratio.clamp(0.2, 5.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Brusselator-like pair in a chain with a dyad, and a quadrature; the
    /// Jacobian is deliberately incomplete.
    struct Pair;

    impl StiffSystem<4> for Pair {
        fn coupled(&self) -> usize {
            2
        }
        fn quadratures(&self) -> usize {
            1
        }
        fn rates(&self, y: &State<4>, rates: &mut State<4>) {
            rates[0] = -20.0 * (y[0] - y[1]) - y[0] * y[0];
            rates[1] = -y[1] * y[0] + 0.5 * (y[0] - y[1]);
            rates[2] = y[0];
        }
        fn jacobian(&self, _: &State<4>, j: &mut Jacobian<4>) {
            j.diagonal[0] = -20.0;
            j.above[0] = 20.0;
            j.diagonal[1] = -0.5;
            j.below[1] = 0.5;
            j.column[..2].copy_from_slice(&[0.0, -0.3]);
            j.row[..2].copy_from_slice(&[1.0, 1.0]);
            j.coupling = Coupling::ChainAndDyad;
        }
    }

    fn run(steps: usize) -> State<4> {
        let mut y = [0.0; 4];
        y[0] = 1.0;
        y[1] = 0.9;
        let h = 1.0 / steps as f64;
        let mut stepper = Stepper::default();
        for _ in 0..steps {
            let mut f = [0.0; 4];
            Pair.rates(&y, &mut f);
            stepper.prepare(&Pair, &y);
            y = stepper.step(&Pair, &y, &f, h).y;
        }
        y
    }

    // The order of the method is a published property: 3, with an inexact
    // Jacobian too.
    #[test]
    fn third_order_with_an_inexact_jacobian() {
        let (coarse, fine, exact) = (run(128), run(256), run(4096));
        for (k, want) in exact.iter().enumerate().take(3) {
            let order = ((coarse[k] - want) / (fine[k] - want)).abs().log2();
            assert!(order > 2.6, "unknown {k}: order {order}");
        }
    }

    #[test]
    fn no_number_is_never_a_small_error() {
        struct Broken;
        impl StiffSystem<4> for Broken {
            fn coupled(&self) -> usize {
                1
            }
            fn quadratures(&self) -> usize {
                0
            }
            fn rates(&self, _: &State<4>, rates: &mut State<4>) {
                rates[0] = f64::NAN;
            }
            fn jacobian(&self, _: &State<4>, _: &mut Jacobian<4>) {}
        }
        let (y, f) = ([0.0; 4], [f64::NAN; 4]);
        let mut stepper = Stepper::default();
        stepper.prepare(&Broken, &y);
        assert_eq!(stepper.step(&Broken, &y, &f, 0.1).error, f64::INFINITY);
    }
}

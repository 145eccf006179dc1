//! Symmetric positive definite systems with a skyline: every row is stored
//! from its first entry to the diagonal, and Cholesky's factor fills no more.
//! For finite-element meshes numbered along their length.
//!
//! Off the page it runs on the widest registers that the processor has (`pulp`
//! chooses, as the program runs): the same sums in the same order, so the same
//! numbers to the last digit.
//!
//! Checked against a dense factorization of the library `nalgebra` in the
//! tests.

use core::ops::Range;

/// A symmetric matrix, lower half, row by row.
#[derive(Clone, Debug)]
pub struct Skyline {
    first: Vec<usize>,
    start: Vec<usize>,
    values: Vec<f64>,
}

/// The matrix is not positive definite: a body that is not held, or numbers
/// that are none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotDefinite {
    /// The equation at which it shows.
    pub row: usize,
}

impl Skyline {
    /// A zero matrix whose row `i` begins at column `first[i]` (at most `i`).
    #[must_use]
    pub fn new(first: Vec<usize>) -> Self {
        let mut start = Vec::with_capacity(first.len() + 1);
        let mut length = 0;
        for (i, f) in first.iter().enumerate() {
            start.push(length);
            length += i + 1 - f;
        }
        start.push(length);
        Self {
            first,
            start,
            values: vec![0.0; length],
        }
    }

    /// Number of equations.
    #[must_use]
    pub fn len(&self) -> usize {
        self.first.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.first.is_empty()
    }

    /// Numbers stored.
    #[must_use]
    pub fn stored(&self) -> usize {
        self.values.len()
    }

    /// Adds to entry (i, j) with j <= i; an entry outside the skyline is a
    /// mistake of the caller and ignored.
    pub fn add(&mut self, i: usize, j: usize, value: f64) {
        debug_assert!(self.first[i] <= j && j <= i);
        if self.first[i] <= j && j <= i {
            self.values[self.start[i] + j - self.first[i]] += value;
        }
    }

    /// Replaces the matrix by its Cholesky factor.
    ///
    /// # Errors
    /// [`NotDefinite`] where a pivot is not positive.
    pub fn factor(self) -> Result<Factor, NotDefinite> {
        Factoring(self).widely()
    }

    #[inline(always)]
    fn factored(mut self) -> Result<Factor, NotDefinite> {
        let mut panel = Vec::new();
        let mut i = 0;
        while i < self.len() {
            let end = (i + PANEL).min(self.len());
            for from in (i..end).step_by(LANES) {
                self.eliminate(i, from..end.min(from + LANES), &mut panel);
            }
            for row in i..end {
                self.finish(row, i)?;
            }
            i = end;
        }
        Ok(Factor(self))
    }

    /// Some rows from `i` on up to column `i`: divided by the factor's rows above
    /// that. They lie side by side meanwhile, a row that has not begun with
    /// zeros, so that a number above is read once for all of them.
    #[inline(always)]
    fn eliminate(&mut self, i: usize, rows: Range<usize>, panel: &mut Vec<[f64; LANES]>) {
        let begin = self.first[rows.clone()].iter().fold(i, |a, f| a.min(*f));
        panel.clear();
        panel.resize(i - begin, [0.0; LANES]);
        let (above, mine) = self.values.split_at_mut(self.start[rows.start]);
        let own = |row: usize| {
            let first = self.first[row].min(i);
            let from = self.start[row] - self.start[rows.start];
            (row - rows.start, first - begin, from..from + i - first)
        };
        for (lane, first, at) in rows.clone().map(own) {
            for (column, value) in panel[first..].iter_mut().zip(&mine[at]) {
                column[lane] = *value;
            }
        }
        let line = |j: usize| {
            let from = self.first[j].max(begin);
            (
                from - begin,
                &above[self.start[j] + from - self.first[j]..self.start[j + 1]],
            )
        };
        let mut j = begin;
        while j < i {
            let at = j - begin;
            let (from, row) = line(j);
            if j + 1 < i && self.first[j + 1].max(begin) - begin == from {
                let (_, next) = line(j + 1);
                let known = &panel[from..at];
                let [sum, mut sum_next] = products(known, row, next);
                let (pivot, pivot_next) = (row[at - from], next[at + 1 - from]);
                let column = divided(&panel[at], &sum, pivot);
                for (sum, x) in sum_next.iter_mut().zip(&column) {
                    *sum += x * next[at - from];
                }
                panel[at] = column;
                panel[at + 1] = divided(&panel[at + 1], &sum_next, pivot_next);
                j += 2;
            } else {
                let [sum, _] = products(&panel[from..at], row, row);
                panel[at] = divided(&panel[at], &sum, row[at - from]);
                j += 1;
            }
        }
        for (lane, first, at) in rows.clone().map(own) {
            for (column, value) in panel[first..].iter().zip(&mut mine[at]) {
                *value = column[lane];
            }
        }
    }

    /// The end of row `i` from column `from` on, and its pivot.
    #[inline(always)]
    fn finish(&mut self, i: usize, from: usize) -> Result<(), NotDefinite> {
        let (above, row) = self.values.split_at_mut(self.start[i]);
        let first = self.first[i];
        let row = &mut row[..=i - first];
        for j in from.max(first)..i {
            let line = &above[self.start[j]..self.start[j + 1]];
            let begin = first.max(self.first[j]);
            let sum = dot(
                &row[begin - first..j - first],
                &line[begin - self.first[j]..j - self.first[j]],
            );
            row[j - first] = (row[j - first] - sum) * line[j - self.first[j]];
        }
        let last = i - first;
        let pivot = row[last] - dot(&row[..last], &row[..last]);
        // Below this share of the diagonal a pivot is rounding only.
        if pivot.is_nan() || pivot <= 1e-13 * row[last].abs() {
            return Err(NotDefinite { row: i });
        }
        row[last] = pivot.sqrt().recip();
        Ok(())
    }
}

/// Rows whose ends are worked out together, whatever the registers: so the sums are
/// the same everywhere.
const PANEL: usize = 8;

/// Rows that are eliminated side by side; with two above them their sums fit
/// the registers. A browser's numbers stand alone: of eight rows they do not fit,
/// and it takes half as long again (Node 1.5 times on a mesh of a job's size).
const LANES: usize = if cfg!(target_arch = "wasm32") {
    4
} else {
    PANEL
};

/// What is worth the widest registers. Its whole body is compiled once for each
/// width, so all of it must be `inline(always)`.
trait Wide: Sized {
    type Done;

    fn run(self) -> Self::Done;

    /// Runs on the widest registers of this processor.
    #[cfg(not(target_arch = "wasm32"))]
    fn widely(self) -> Self::Done {
        pulp::Arch::new().dispatch(OnAny(self))
    }

    #[cfg(target_arch = "wasm32")]
    fn widely(self) -> Self::Done {
        self.run()
    }
}

#[cfg(not(target_arch = "wasm32"))]
struct OnAny<W>(W);

#[cfg(not(target_arch = "wasm32"))]
impl<W: Wide> pulp::WithSimd for OnAny<W> {
    type Output = W::Done;

    #[inline(always)]
    fn with_simd<S: pulp::Simd>(self, _: S) -> W::Done {
        self.0.run()
    }
}

/// A matrix that is to be factored.
struct Factoring(Skyline);

impl Wide for Factoring {
    type Done = Result<Factor, NotDefinite>;

    #[inline(always)]
    fn run(self) -> Self::Done {
        self.0.factored()
    }
}

/// A factor, and one right-hand side.
struct Solving<'a>(&'a Factor, &'a mut [f64]);

impl Wide for Solving<'_> {
    type Done = ();

    #[inline(always)]
    fn run(self) {
        self.0.solved(self.1);
    }
}

/// A factor, and several.
struct Several<'a>(&'a Factor, &'a mut [[f64; SIDES]]);

impl Wide for Several<'_> {
    type Done = ();

    #[inline(always)]
    fn run(self) {
        self.0.several(self.1);
    }
}

/// Products of the rows of a panel with two rows above.
#[inline(always)]
fn products(panel: &[[f64; LANES]], one: &[f64], two: &[f64]) -> [[f64; LANES]; 2] {
    let mut sums = [[0.0; LANES]; 2];
    for ((column, x), y) in panel.iter().zip(one).zip(two) {
        for lane in 0..LANES {
            sums[0][lane] += column[lane] * x;
        }
        for lane in 0..LANES {
            sums[1][lane] += column[lane] * y;
        }
    }
    sums
}

#[inline(always)]
fn divided(column: &[f64; LANES], sum: &[f64; LANES], pivot: f64) -> [f64; LANES] {
    core::array::from_fn(|lane| (column[lane] - sum[lane]) * pivot)
}

/// A Cholesky factor, its diagonal by reciprocals.
#[derive(Clone, Debug)]
pub struct Factor(Skyline);

impl Factor {
    /// Number of equations.
    #[must_use]
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Solves for one right-hand side, in place.
    pub fn solve(&self, b: &mut [f64]) {
        Solving(self, b).widely();
    }

    #[inline(always)]
    fn solved(&self, b: &mut [f64]) {
        let m = &self.0;
        for i in 0..m.len() {
            let row = &m.values[m.start[i]..m.start[i + 1]];
            let last = i - m.first[i];
            b[i] = (b[i] - dot(&row[..last], &b[m.first[i]..i])) * row[last];
        }
        for i in (0..m.len()).rev() {
            let row = &m.values[m.start[i]..m.start[i + 1]];
            let last = i - m.first[i];
            b[i] *= row[last];
            let x = b[i];
            for (value, r) in b[m.first[i]..i].iter_mut().zip(row) {
                *value -= r * x;
            }
        }
    }

    /// Solves for [`SIDES`] right-hand sides at once, in place: the factor is
    /// read once for all of them.
    pub fn solve_several(&self, b: &mut [[f64; SIDES]]) {
        Several(self, b).widely();
    }

    #[inline(always)]
    fn several(&self, b: &mut [[f64; SIDES]]) {
        let m = &self.0;
        // Above the first number of any side there is nothing to do.
        let begin = b.iter().take_while(|x| **x == [0.0; SIDES]).count();
        for i in begin..m.len() {
            let row = &m.values[m.start[i]..m.start[i + 1]];
            let last = i - m.first[i];
            let from = m.first[i].max(begin).min(i);
            let mut sum = b[i];
            for (r, x) in row[from - m.first[i]..last].iter().zip(&b[from..i]) {
                for side in 0..SIDES {
                    sum[side] -= r * x[side];
                }
            }
            b[i] = sum.map(|s| s * row[last]);
        }
        for i in (0..m.len()).rev() {
            let row = &m.values[m.start[i]..m.start[i + 1]];
            let last = i - m.first[i];
            let x = b[i].map(|v| v * row[last]);
            b[i] = x;
            for (value, r) in b[m.first[i]..i].iter_mut().zip(row) {
                for side in 0..SIDES {
                    value[side] -= r * x[side];
                }
            }
        }
    }
}

/// Right-hand sides that are solved at once.
pub const SIDES: usize = 4;

/// Dot product in eight lanes, so that the compiler may use wide registers.
#[inline(always)]
fn dot(a: &[f64], b: &[f64]) -> f64 {
    let n = a.len().min(b.len());
    let (a, b) = (&a[..n], &b[..n]);
    let mut lanes = [0.0; 8];
    let (ca, cb) = (a.chunks_exact(8), b.chunks_exact(8));
    let mut sum: f64 = ca
        .remainder()
        .iter()
        .zip(cb.remainder())
        .map(|(x, y)| x * y)
        .sum();
    for (x, y) in ca.zip(cb) {
        for k in 0..8 {
            lanes[k] += x[k] * y[k];
        }
    }
    for lane in lanes {
        sum += lane;
    }
    sum
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use nalgebra::{DMatrix, DVector};

    #[test]
    fn agrees_with_a_dense_factorization() {
        for (n, seed) in [(60, 3), (61, 4), (1, 5), (2, 6), (7, 7)] {
            agrees(n, seed);
        }
    }

    fn agrees(n: usize, seed: u64) {
        let mut random = fastrand::Rng::with_seed(seed);
        let first: Vec<usize> = (0..n).map(|i| i - random.usize(0..=i.min(17))).collect();
        let mut sky = Skyline::new(first.clone());
        let mut dense = DMatrix::<f64>::zeros(n, n);
        for i in 0..n {
            for j in first[i]..=i {
                let value = if i == j { 40.0 } else { random.f64() - 0.5 };
                sky.add(i, j, value);
                dense[(i, j)] = value;
                dense[(j, i)] = value;
            }
        }
        let mut b: Vec<f64> = (0..n).map(|_| random.f64()).collect();
        let want = dense
            .cholesky()
            .unwrap()
            .solve(&DVector::from_vec(b.clone()));
        let factor = sky.factor().unwrap();
        // Several sides at once, the second of them alone, others beside it.
        let mut several: Vec<[f64; SIDES]> = b.iter().map(|b| [0.0, *b, 2.0 * b, 1.0]).collect();
        factor.solve_several(&mut several);
        factor.solve(&mut b);
        for ((x, w), s) in b.iter().zip(want.iter()).zip(&several) {
            assert!((x - w).abs() < 1e-14);
            assert!((s[1] - w).abs() < 1e-14 && (s[2] - 2.0 * w).abs() < 1e-14);
            assert_eq!(s[0], 0.0);
        }
    }

    #[test]
    fn a_body_that_is_not_held_is_told() {
        let mut loose = Skyline::new(vec![0, 0]);
        loose.add(0, 0, 1.0);
        loose.add(1, 0, -1.0);
        loose.add(1, 1, 1.0);
        assert_eq!(loose.factor().unwrap_err(), NotDefinite { row: 1 });
    }
}

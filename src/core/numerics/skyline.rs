//! Symmetric positive definite systems with a skyline: every row is stored
//! from its first entry to the diagonal, and Cholesky's factor fills no more.
//! For finite-element meshes numbered along their length.
//!
//! Checked against a dense factorization of the library `nalgebra` in the
//! tests.

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
    pub fn factor(mut self) -> Result<Factor, NotDefinite> {
        let mut i = 0;
        while i < self.len() {
            // Two rows at a time are read against four above them.
            let pair = i + 1 < self.len();
            self.eliminate(i, pair);
            self.finish(i)?;
            if pair {
                self.finish(i + 1)?;
            }
            i += 2;
        }
        Ok(Factor(self))
    }

    /// Row `i`, and the next where `pair`, up to the columns before `i`: divided
    /// by the factor's rows above them.
    fn eliminate(&mut self, i: usize, pair: bool) {
        let (above, mine) = self.values.split_at_mut(self.start[i]);
        let (one, other) = mine.split_at_mut(i + 1 - self.first[i]);
        let [f1, f2] = [
            self.first[i],
            if pair { self.first[i + 1].min(i) } else { i },
        ];
        let line = |j: usize| &above[self.start[j]..self.start[j + 1]];
        let mut j = f1.min(f2);
        while j < i {
            let begun =
                j >= f1.max(f2) && j + ROWS <= i && self.first[j..j + ROWS].iter().all(|f| *f <= j);
            if !begun {
                for (row, from) in [(&mut *one, f1), (&mut *other, f2)] {
                    if j >= from {
                        subtract(row, from, line(j), self.first[j], j);
                    }
                }
                j += 1;
                continue;
            }
            let rows: [&[f64]; ROWS] = core::array::from_fn(|k| line(j + k));
            let firsts: [usize; ROWS] = core::array::from_fn(|k| self.first[j + k]);
            // Where all six have begun; what only some have lies before it.
            let from = firsts.iter().fold(f1.max(f2), |a, f| a.max(*f));
            let parts = core::array::from_fn(|k| &rows[k][from - firsts[k]..j - firsts[k]]);
            let sums = products([&one[from - f1..j - f1], &other[from - f2..j - f2]], parts);
            for (row, begin, sums) in [(&mut *one, f1, &sums[0]), (&mut *other, f2, &sums[1])] {
                for k in 0..ROWS {
                    let early = begin.max(firsts[k]);
                    let mut sum = sums[k];
                    if early < from {
                        sum += dot(
                            &row[early - begin..from - begin],
                            &rows[k][early - firsts[k]..from - firsts[k]],
                        );
                    }
                    let (mine, line) = (&mut row[j - begin..], &rows[k][j - firsts[k]..]);
                    sum += dot(&mine[..k], &line[..k]);
                    mine[k] = (mine[k] - sum) / line[k];
                }
            }
            j += ROWS;
        }
    }

    /// The end of row `i`, whose last rows above may be its pair, and its pivot.
    fn finish(&mut self, i: usize) -> Result<(), NotDefinite> {
        let (above, row) = self.values.split_at_mut(self.start[i]);
        let row = &mut row[..=i - self.first[i]];
        if i % 2 == 1 && self.first[i] < i {
            let other = &above[self.start[i - 1]..];
            subtract(row, self.first[i], other, self.first[i - 1], i - 1);
        }
        let last = i - self.first[i];
        let pivot = row[last] - dot(&row[..last], &row[..last]);
        // Below this share of the diagonal a pivot is rounding only.
        if pivot.is_nan() || pivot <= 1e-13 * row[last].abs() {
            return Err(NotDefinite { row: i });
        }
        row[last] = pivot.sqrt();
        Ok(())
    }
}

/// Entry `j` of a row that begins at column `from`, of the factor's row `j`.
fn subtract(row: &mut [f64], from: usize, line: &[f64], first: usize, j: usize) {
    let begin = from.max(first);
    let sum = dot(
        &row[begin - from..j - from],
        &line[begin - first..j - first],
    );
    row[j - from] = (row[j - from] - sum) / line[j - first];
}

/// Rows above that are read at a time.
const ROWS: usize = 4;

/// Products of two rows with [`ROWS`] others, all equally long.
fn products(two: [&[f64]; 2], rows: [&[f64]; ROWS]) -> [[f64; ROWS]; 2] {
    let mut sums = [[[0.0; 2]; ROWS]; 2];
    let [a, b] = two.map(|r| r.as_chunks::<2>());
    let rows = rows.map(|r| r.as_chunks::<2>());
    let count = a.0.len();
    let rest = [a.1, b.1];
    let (a, b) = (&a.0[..count], &b.0[..count]);
    let [r0, r1, r2, r3] = rows.map(|r| &r.0[..count]);
    for k in 0..count {
        for (row, line) in [r0[k], r1[k], r2[k], r3[k]].iter().enumerate() {
            for lane in 0..2 {
                sums[0][row][lane] += a[k][lane] * line[lane];
                sums[1][row][lane] += b[k][lane] * line[lane];
            }
        }
    }
    core::array::from_fn(|p| {
        core::array::from_fn(|row| {
            let last = rest[p].iter().zip(rows[row].1).map(|(x, y)| x * y);
            sums[p][row][0] + sums[p][row][1] + last.sum::<f64>()
        })
    })
}

/// A Cholesky factor.
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
        let m = &self.0;
        for i in 0..m.len() {
            let row = &m.values[m.start[i]..m.start[i + 1]];
            let last = i - m.first[i];
            b[i] = (b[i] - dot(&row[..last], &b[m.first[i]..i])) / row[last];
        }
        for i in (0..m.len()).rev() {
            let row = &m.values[m.start[i]..m.start[i + 1]];
            let last = i - m.first[i];
            b[i] /= row[last];
            let x = b[i];
            for (value, r) in b[m.first[i]..i].iter_mut().zip(row) {
                *value -= r * x;
            }
        }
    }

    /// Solves for [`SIDES`] right-hand sides at once, in place: the factor is
    /// read once for all of them.
    pub fn solve_several(&self, b: &mut [[f64; SIDES]]) {
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
            b[i] = sum.map(|s| s / row[last]);
        }
        for i in (0..m.len()).rev() {
            let row = &m.values[m.start[i]..m.start[i + 1]];
            let last = i - m.first[i];
            let x = b[i].map(|v| v / row[last]);
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

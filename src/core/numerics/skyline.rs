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
        for i in 0..self.len() {
            let (above, row) = self.values.split_at_mut(self.start[i]);
            let row = &mut row[..=i - self.first[i]];
            let fi = self.first[i];
            for j in fi..i {
                let fj = self.first[j];
                let from = fi.max(fj);
                let other = &above[self.start[j]..self.start[j + 1]];
                let sum = dot(&row[from - fi..j - fi], &other[from - fj..j - fj]);
                row[j - fi] = (row[j - fi] - sum) / other[j - fj];
            }
            let last = i - fi;
            let pivot = row[last] - dot(&row[..last], &row[..last]);
            // Below this share of the diagonal a pivot is rounding only.
            if pivot.is_nan() || pivot <= 1e-13 * row[last].abs() {
                return Err(NotDefinite { row: i });
            }
            row[last] = pivot.sqrt();
        }
        Ok(Factor(self))
    }
}

/// A Cholesky factor.
#[derive(Clone, Debug)]
pub struct Factor(Skyline);

impl Factor {
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
}

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
        let n = 60;
        let mut random = fastrand::Rng::with_seed(3);
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
        sky.factor().unwrap().solve(&mut b);
        for (x, w) in b.iter().zip(want.iter()) {
            assert!((x - w).abs() < 1e-14);
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

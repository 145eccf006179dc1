//! Small full systems of equations: Gauss' elimination, the largest number of
//! a column as its pivot.
//!
//! Checked against the library `nalgebra` in the tests.

/// Below this share of the largest number a pivot is rounding only.
const ROUNDING: f64 = 1e-14;

/// No single solution: two equations say the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Singular {
    /// The column without a pivot.
    pub column: usize,
}

/// Solves a full square system, row by row in `matrix`, in place of `b`.
///
/// # Errors
/// [`Singular`] where a column has no pivot.
pub fn solve(matrix: &mut [Vec<f64>], b: &mut [f64]) -> Result<(), Singular> {
    let n = b.len();
    let largest = matrix
        .iter()
        .flatten()
        .fold(0.0, |a: f64, m| a.max(m.abs()));
    for column in 0..n {
        let size = |row: &usize| matrix[*row][column].abs();
        let pivot = (column..n).max_by(|p, q| size(p).total_cmp(&size(q)));
        let Some(pivot) = pivot.filter(|row| size(row) > ROUNDING * largest) else {
            return Err(Singular { column });
        };
        matrix.swap(column, pivot);
        b.swap(column, pivot);
        let (above, below) = matrix.split_at_mut(column + 1);
        let line = &above[column][column..];
        for (row, below) in below.iter_mut().enumerate() {
            let share = below[column] / line[0];
            for (m, l) in below[column..].iter_mut().zip(line) {
                *m -= share * l;
            }
            b[column + 1 + row] -= share * b[column];
        }
    }
    for row in (0..n).rev() {
        let known: f64 = (row + 1..n).map(|k| matrix[row][k] * b[k]).sum();
        b[row] = (b[row] - known) / matrix[row][row];
    }
    Ok(())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use nalgebra::{DMatrix, DVector};

    #[test]
    fn agrees_with_another_elimination() {
        let n = 20;
        let mut random = fastrand::Rng::with_seed(5);
        let mut rows: Vec<Vec<f64>> = (0..n)
            .map(|_| (0..n).map(|_| random.f64() - 0.5).collect())
            .collect();
        // Nothing on the diagonal: it must look for pivots.
        for (i, row) in rows.iter_mut().enumerate() {
            row[i] = 0.0;
        }
        let mut b: Vec<f64> = (0..n).map(|_| random.f64()).collect();
        let matrix = DMatrix::from_fn(n, n, |i, j| rows[i][j]);
        let want = matrix.lu().solve(&DVector::from_vec(b.clone())).unwrap();
        solve(&mut rows, &mut b).unwrap();
        for (x, w) in b.iter().zip(want.iter()) {
            assert!((x / w - 1.0).abs() < 1e-11, "{x} {w}");
        }
    }

    #[test]
    fn two_equations_that_say_the_same_are_told() {
        let mut rows = vec![vec![1.0, 2.0], vec![2.0, 4.0]];
        let told = solve(&mut rows, &mut [1.0, 2.0]).unwrap_err();
        assert_eq!(told, Singular { column: 1 });
    }
}

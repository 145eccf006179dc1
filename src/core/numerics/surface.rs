//! A response surface: a polynomial through the answers of a costly function,
//! for what takes many more values than can be worked out.
//!
//! Full quadratic in the inputs and the cube of each, by least squares. What
//! the polynomial leaves is kept as residuals and given out in turn, so that
//! the spread of its values is that of the answers.

use super::roots::NoRoot;
use super::skyline::Skyline;

/// A fitted surface.
#[derive(Clone, Debug)]
pub struct Surface {
    coefficients: Vec<f64>,
    residuals: Vec<f64>,
}

/// The terms at `x`.
fn terms(x: &[f64]) -> Vec<f64> {
    let mut all = vec![1.0];
    for (i, a) in x.iter().enumerate() {
        all.extend([*a, a * a * a]);
        all.extend(x[i..].iter().map(|b| a * b));
    }
    all
}

impl Surface {
    /// Fits `answers` at the rows of `inputs`, each of about unit size.
    ///
    /// # Errors
    /// [`NoRoot`] where there are no more answers than terms, or the inputs do
    /// not span them.
    ///
    /// # Example
    /// A function that is of the surface's own kind is met exactly:
    /// ```
    /// use coldseat_core::numerics::{sampling::even_points, surface::Surface};
    /// let rows = even_points(2, 40, 1);
    /// let f = |x: &[f64]| 2.0 - x[0] + 3.0 * x[0] * x[1] - x[1] * x[1] * x[1];
    /// let answers: Vec<f64> = rows.iter().map(|x| f(x)).collect();
    /// let surface = Surface::fit(&rows, &answers)?;
    /// assert!((surface.smooth(&[0.3, 0.9]) - f(&[0.3, 0.9])).abs() < 1e-9);
    /// # Ok::<(), coldseat_core::numerics::roots::NoRoot>(())
    /// ```
    pub fn fit(inputs: &[Vec<f64>], answers: &[f64]) -> Result<Self, NoRoot> {
        let rows: Vec<Vec<f64>> = inputs.iter().map(|x| terms(x)).collect();
        let count = rows.first().map_or(0, Vec::len);
        if count == 0 || answers.len() <= count {
            return Err(NoRoot::StepsRanOut);
        }
        let mut matrix = Skyline::new(vec![0; count]);
        let mut coefficients = vec![0.0; count];
        for (row, answer) in rows.iter().zip(answers) {
            for (i, a) in row.iter().enumerate() {
                coefficients[i] += a * answer;
                for (j, b) in row[..=i].iter().enumerate() {
                    matrix.add(i, j, a * b);
                }
            }
        }
        let factor = matrix.factor().map_err(|_| NoRoot::StepsRanOut)?;
        factor.solve(&mut coefficients);
        let value = |row: &[f64]| {
            row.iter()
                .zip(&coefficients)
                .map(|(a, c)| a * c)
                .sum::<f64>()
        };
        let residuals = rows
            .iter()
            .zip(answers)
            .map(|(r, y)| y - value(r))
            .collect();
        Ok(Self {
            coefficients,
            residuals,
        })
    }

    /// The polynomial at `x`.
    #[must_use]
    pub fn smooth(&self, x: &[f64]) -> f64 {
        // In the order of `terms`, without a list of them.
        let mut coefficients = self.coefficients.iter();
        let mut next = || coefficients.next().copied().unwrap_or(0.0);
        let mut value = next();
        for (i, a) in x.iter().enumerate() {
            let mut slope = next() + next() * a * a;
            for b in &x[i..] {
                slope += next() * b;
            }
            value += slope * a;
        }
        value
    }

    /// What the polynomial leaves at the answer whose turn it is.
    #[must_use]
    pub fn residual(&self, turn: usize) -> f64 {
        self.residuals[turn % self.residuals.len()]
    }
}

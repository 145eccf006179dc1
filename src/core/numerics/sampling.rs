//! Sampling of uncertainty: what a calculation gives when its inputs are only
//! known so well, and which of them matters most.
//!
//! Latin hypercube (McKay, Beckman and Conover, Technometrics 21 (1979) 239):
//! every input's law is cut into as many slices of equal chance as there are
//! samples, each slice is used once. Deterministic for a seed.

use super::normal;
use crate::numerics::order::in_order;

/// How an input's errors are spread.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Law {
    /// Normal; `u` is its standard deviation.
    Normal,
    /// Uniform; `u` is its standard deviation, half-width u sqrt(3).
    Uniform,
}

/// An input known to `u`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Uncertain {
    /// Its value.
    pub value: f64,
    /// Its standard uncertainty.
    pub u: f64,
    /// How its errors are spread.
    pub law: Law,
}

/// What came of one output.
#[derive(Clone, Debug, PartialEq)]
pub struct Spread {
    /// 5 % of the samples lie below.
    pub low: f64,
    /// Half of them.
    pub median: f64,
    /// 95 % of them.
    pub high: f64,
    /// Squared correlation with each input, scaled to sum to 1 (all 0 where
    /// the output does not move).
    pub matters: Vec<f64>,
}

/// Samples of the inputs: `samples` rows.
#[must_use]
pub fn latin_hypercube(inputs: &[Uncertain], samples: usize, seed: u64) -> Vec<Vec<f64>> {
    let mut random = fastrand::Rng::with_seed(seed);
    let mut rows = vec![vec![0.0; inputs.len()]; samples];
    let mut slices: Vec<usize> = (0..samples).collect();
    for (k, input) in inputs.iter().enumerate() {
        // In whole numbers of one width: a browser's are half as wide as the host's.
        for at in 1..slices.len() {
            slices.swap(at, random.u64(..=at as u64) as usize);
        }
        for (row, &slice) in rows.iter_mut().zip(&slices) {
            let p = (slice as f64 + random.f64()) / samples as f64;
            let z = match input.law {
                Law::Normal => normal::quantile(p.clamp(1e-12, 1.0 - 1e-12)),
                Law::Uniform => (2.0 * p - 1.0) * 3.0_f64.sqrt(),
            };
            row[k] = input.value + input.u * z;
        }
    }
    rows
}

/// Points that fill the unit cube of `dimensions` evenly, `count` rows: the
/// additive recurrence of the generalized golden ratio (Roberts 2018), shifted
/// by the seed. Their error falls almost as 1 / count where drawn ones fall as
/// its root.
///
/// # Example
/// The mean of a product of three uniform values is 1/8:
/// ```
/// use coldseat_core::numerics::sampling::even_points;
/// let rows = even_points(3, 1000, 5);
/// let mean = rows.iter().map(|r| r.iter().product::<f64>()).sum::<f64>() / 1000.0;
/// assert!((mean - 0.125).abs() < 2e-3);
/// ```
#[must_use]
pub fn even_points(dimensions: usize, count: usize, seed: u64) -> Vec<Vec<f64>> {
    let mut random = fastrand::Rng::with_seed(seed);
    // The root of x^(d + 1) = x + 1 by fixed-point iteration.
    let mut ratio: f64 = 2.0;
    for _ in 0..64 {
        ratio = (1.0 + ratio).powf(1.0 / (dimensions as f64 + 1.0));
    }
    let steps: Vec<(f64, f64)> = (1..=dimensions)
        .map(|k| (ratio.powi(-(k as i32)), random.f64()))
        .collect();
    (0..count)
        .map(|i| {
            steps
                .iter()
                .map(|(step, shift)| (shift + i as f64 * step).fract())
                .collect()
        })
        .collect()
}

/// The spread of one output over sampled rows of inputs; `None` without any.
///
/// # Example
/// A sum of two normal inputs, one twice as uncertain: its 5 and 95 %
/// points lie 1.645 standard deviations out (normal table) and four fifths
/// of its spread come from the second.
/// ```
/// use coldseat_core::numerics::sampling::{Law, Uncertain, latin_hypercube, spread};
/// let known = |u| Uncertain { value: 0.0, u, law: Law::Normal };
/// let rows = latin_hypercube(&[known(1.0), known(2.0)], 2000, 7);
/// let sums: Vec<f64> = rows.iter().map(|r| r[0] + r[1]).collect();
/// let s = spread(&rows, &sums).unwrap();
/// assert!((s.high - 1.645 * 5.0_f64.sqrt()).abs() < 0.12);
/// assert!((s.matters[1] - 0.8).abs() < 0.03);
/// ```
#[must_use]
pub fn spread(rows: &[Vec<f64>], outputs: &[f64]) -> Option<Spread> {
    let inputs = rows.first()?.len();
    let sorted = in_order(outputs.to_vec(), f64::total_cmp);
    let mut matters: Vec<f64> = (0..inputs)
        .map(|k| squared_correlation(rows.iter().map(|r| r[k]), outputs))
        .collect();
    let sum: f64 = matters.iter().sum();
    if sum > 0.0 {
        for m in &mut matters {
            *m /= sum;
        }
    }
    Some(Spread {
        low: percentile(&sorted, 0.05)?,
        median: percentile(&sorted, 0.5)?,
        high: percentile(&sorted, 0.95)?,
        matters,
    })
}

/// Linear between order statistics.
fn percentile(sorted: &[f64], p: f64) -> Option<f64> {
    let x = p * (sorted.len().checked_sub(1)?) as f64;
    let i = x as usize;
    let (a, b) = (sorted[i], sorted[(i + 1).min(sorted.len() - 1)]);
    Some(a + (b - a) * (x - i as f64))
}

fn squared_correlation(xs: impl Iterator<Item = f64> + Clone, ys: &[f64]) -> f64 {
    let n = ys.len() as f64;
    let mx = xs.clone().sum::<f64>() / n;
    let my = ys.iter().sum::<f64>() / n;
    let (mut xx, mut yy, mut xy) = (0.0, 0.0, 0.0);
    for (x, y) in xs.zip(ys) {
        let (dx, dy) = (x - mx, y - my);
        xx += dx * dx;
        yy += dy * dy;
        xy += dx * dy;
    }
    if xx > 0.0 && yy > 0.0 {
        xy * xy / (xx * yy)
    } else {
        0.0
    }
}

//! Scatter: what a shop's own errors say of the next one.
//!
//! The interval is the exact two-sided tolerance interval of the normal law
//! (95 % of the population, 95 % confidence; Odeh and Owen 1980, Meeker, Hahn
//! and Escobar 2017), not Howe's approximation. Few data give a wide interval.

use super::check_each;
use super::form::{MOST, mean};
use crate::numerics::{normal, roots};
use crate::quantity::Length;
use crate::quantity::bounds;
use crate::quantity::report::Fault;

/// Statistics of errors, achieved less aimed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scatter {
    /// How many.
    pub n: usize,
    /// Their mean.
    pub mean: Length,
    /// Their standard deviation (n - 1).
    pub sd: Length,
    /// Lower end of the tolerance interval.
    pub low: Length,
    /// Upper end of it.
    pub high: Length,
}

/// Share of the population within a tolerance interval.
const CONTENT: f64 = 0.95;
/// Confidence that it is.
const CONFIDENCE: f64 = 0.95;

/// The scatter of two or more errors.
///
/// # Errors
/// Fewer than two, more than 100,000, or an error outside its range.
///
/// # Example
/// ```
/// use coldseat_core::{metrology::scatter::scatter, quantity::Length};
/// let s = scatter(&[1.0, 2.0, 3.0, 4.0, 5.0, 6.0].map(Length::from_um))?;
/// assert!((s.sd.as_um() - 3.5_f64.sqrt()).abs() < 1e-9);
/// let factor = (s.high.as_m() - s.mean.as_m()) / s.sd.as_m();
/// assert!((factor - 4.422).abs() < 1e-3); // n = 6, 95/95: Meeker et al., table J.5b
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn scatter(errors: &[Length]) -> Result<Scatter, Fault> {
    let n = errors.len();
    if !(2..=MOST).contains(&n) {
        return Err(Fault::new(
            "errors_m",
            format!("{n} errors: at least 2 and at most {MOST} are taken"),
        ));
    }
    check_each(&bounds::HEIGHT, "errors_m", errors.iter().map(|l| l.as_m()))?;
    let values: Vec<f64> = errors.iter().map(|l| l.as_m()).collect();
    let (mean, sd) = mean_and_sd(&values);
    let half = tolerance_factor(n, CONTENT, CONFIDENCE) * sd;
    Ok(Scatter {
        n,
        mean: Length::from_m(mean),
        sd: Length::from_m(sd),
        low: Length::from_m(mean - half),
        high: Length::from_m(mean + half),
    })
}

/// Mean and standard deviation (n - 1) in two passes; the second pass also
/// corrects the mean's rounding (Chan, Golub and LeVeque 1983).
///
/// # Example
/// NIST StRD NumAcc3, three of its values: a one-pass formula fails on them.
/// ```
/// let (mean, sd) = coldseat_core::metrology::scatter::mean_and_sd(&[1000000.2, 1000000.1, 1000000.3]);
/// assert!((mean - 1000000.2).abs() < 1e-9 && (sd - 0.1).abs() < 1e-9);
/// ```
#[must_use]
pub fn mean_and_sd(values: &[f64]) -> (f64, f64) {
    let n = values.len();
    let first = mean(values.iter().copied(), n);
    let (mut square, mut rest) = (0.0, 0.0);
    for v in values {
        square += (v - first) * (v - first);
        rest += v - first;
    }
    let variance = (square - rest * rest / n.max(1) as f64) / n.saturating_sub(1).max(1) as f64;
    (first + rest / n.max(1) as f64, variance.max(0.0).sqrt())
}

/// Exact two-sided tolerance factor of the normal law for a sample of `n`:
/// mean -+ factor x sd holds `content` of the population with `confidence`.
///
/// Solves E over the mean's error of P(chi2(n-1) > (n-1) r^2 / k^2), where r
/// holds the content about that error.
///
/// # Example
/// n = 6, 90 % content, 95 % confidence: 3.733 (Meeker et al., table J.5b).
/// ```
/// let k = coldseat_core::metrology::scatter::tolerance_factor(6, 0.90, 0.95);
/// assert!((k - 3.733).abs() < 1e-3);
/// ```
#[must_use]
pub fn tolerance_factor(n: usize, content: f64, confidence: f64) -> f64 {
    let root_n = (n as f64).sqrt();
    let freedom = (n - 1) as f64;
    // Trapezoid over an even, smooth integrand: converges exponentially.
    const STEP: f64 = 1.0 / 16.0;
    let nodes: Vec<(f64, f64)> = (0..=8 * 16)
        .map(|i| {
            let z = f64::from(i) * STEP;
            let weight = if i == 0 { 0.5 } else { 1.0 } * STEP * density(z) * 2.0;
            (weight, half_width(z / root_n, content))
        })
        .collect();
    let held = |k: f64| -> f64 {
        nodes
            .iter()
            .map(|(w, r)| w * puruspe::gammq(0.5 * freedom, 0.5 * freedom * (r / k) * (r / k)))
            .sum::<f64>()
            - confidence
    };
    let start = normal::quantile(0.5 * (1.0 + content));
    let mut high = 2.0 * start;
    while held(high) < 0.0 && high < 1e6 {
        high *= 2.0;
    }
    roots::bracketed(held, 0.5 * start, high, 1e-10).map_or(high, |root| root.x)
}

fn density(z: f64) -> f64 {
    (-0.5 * z * z).exp() / (2.0 * core::f64::consts::PI).sqrt()
}

/// r with Phi(x + r) - Phi(x - r) = content.
fn half_width(x: f64, content: f64) -> f64 {
    let mut r = x + normal::quantile(content);
    for _ in 0..60 {
        let off = normal::cumulative(x + r) - normal::cumulative(x - r) - content;
        let slope = density(x + r) + density(x - r);
        let step = off / slope;
        r -= step;
        if step.abs() < 1e-14 * r {
            break;
        }
    }
    r
}

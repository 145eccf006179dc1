//! Scatter: what a shop's own errors say of the next one.
//!
//! The interval is the exact two-sided tolerance interval of the normal law
//! (95 % of the population, 95 % confidence; Odeh and Owen 1980, Meeker, Hahn
//! and Escobar 2017), not Howe's approximation. Few data give a wide interval.

use super::check_each;
use super::form::{MOST, mean};
use crate::numerics::roots::{Failed, NoRoot};
use crate::numerics::{gamma, normal, roots};
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
pub const CONTENT: f64 = 0.95;
/// Confidence that it is.
pub const CONFIDENCE: f64 = 0.95;

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
    let factor = tolerance_factor(n, CONTENT, CONFIDENCE).map_err(|none| none.at("errors_m"))?;
    let half = factor * sd;
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
/// let k = coldseat_core::metrology::scatter::tolerance_factor(6, 0.90, 0.95)?;
/// assert!((k - 3.733).abs() < 1e-3);
/// # Ok::<(), coldseat_core::numerics::roots::NoRoot>(())
/// ```
///
/// # Errors
/// [`NoRoot`] for fewer than two, for a content or confidence that is no
/// chance, and where the search does not settle.
pub fn tolerance_factor(n: usize, content: f64, confidence: f64) -> Result<f64, NoRoot> {
    let chance = |p: f64| 0.0 < p && p < 1.0;
    if n < 2 || !chance(content) || !chance(confidence) {
        return Err(NoRoot::NotANumber { x: content });
    }
    let root_n = (n as f64).sqrt();
    let freedom = (n - 1) as f64;
    // Trapezoid over an even, smooth integrand: converges exponentially.
    const STEP: f64 = 1.0 / 16.0;
    let nodes: Vec<(f64, f64)> = (0..=8 * 16)
        .map(|i| {
            let z = f64::from(i) * STEP;
            let weight = if i == 0 { 0.5 } else { 1.0 } * STEP * density(z) * 2.0;
            Ok((weight, half_width(z / root_n, content)?))
        })
        .collect::<Result<_, NoRoot>>()?;
    let held = |k: f64| -> Result<f64, NoRoot> {
        let mut sum = -confidence;
        for (w, r) in &nodes {
            sum += w * gamma::upper(0.5 * freedom, 0.5 * freedom * (r / k) * (r / k))?;
        }
        Ok(sum)
    };
    let start = normal::quantile(0.5 * (1.0 + content));
    let mut high = 2.0 * start;
    while held(high)? < 0.0 && high < 1e6 {
        high *= 2.0;
    }
    match roots::attempted(held, 0.5 * start, high, 1e-10) {
        Ok(root) => Ok(root.x),
        Err(Failed::NoRoot(none) | Failed::Function(none)) => Err(none),
    }
}

fn density(z: f64) -> f64 {
    (-0.5 * z * z).exp() / (2.0 * core::f64::consts::PI).sqrt()
}

/// r with Phi(x + r) - Phi(x - r) = content. It lies between the one-sided and
/// the two-sided quantile beyond x.
fn half_width(x: f64, content: f64) -> Result<f64, NoRoot> {
    const ROOM: f64 = 1e-3;
    let off = |r: f64| normal::cumulative(x + r) - normal::cumulative(x - r) - content;
    let low = (x + normal::quantile(content) - ROOM).max(0.0);
    let high = x + normal::quantile(0.5 * (1.0 + content)) + ROOM;
    roots::bracketed(off, low, high, 1e-13).map(|root| root.x)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    // scipy 1.17.1: the same expectation over the mean's error by
    // integrate.quad of stats.chi2.sf, solved by optimize.brentq. A shop that
    // sends 100,000 errors has a factor near 1.96, not twice that.
    #[test]
    fn the_factor_of_many_errors_agrees_with_scipy() {
        for (n, k) in [
            (2, 36.5192146121),
            (6, 4.4221503648),
            (43, 2.4253765274),
            (200, 2.1429443111),
            (201, 2.1424275406),
            (202, 2.1419149502),
            (1_000, 2.0361142779),
            (20_000, 1.9762777814),
            (100_000, 1.9672113814),
        ] {
            let got = tolerance_factor(n, 0.95, 0.95).unwrap();
            assert!((got - k).abs() < 1e-7, "n = {n}: {got}, scipy {k}");
        }
    }

    #[test]
    fn no_factor_where_there_is_none() {
        assert!(tolerance_factor(1, 0.95, 0.95).is_err());
        assert!(tolerance_factor(6, 1.0, 0.95).is_err());
    }
}

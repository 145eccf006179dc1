//! The normal law.

use core::f64::consts::SQRT_2;

/// Two-sided 95 % of the normal law, in standard deviations.
pub const TWO_SIDED: f64 = 1.959_963_985;

/// Chance that a standard normal value is at most `z`.
///
/// # Example
/// JCGM 106 prints 0.92 for z = 1.4 (from memory):
/// ```
/// let p = coldseat_core::numerics::normal::cumulative(1.4);
/// assert!((p - 0.9192).abs() < 5e-5);
/// ```
#[must_use]
pub fn cumulative(z: f64) -> f64 {
    0.5 * libm::erfc(-z / SQRT_2)
}

/// The `z` at which [`cumulative`] is `p`, 0 < p < 1; clamped to -+38.
///
/// A rational start (Hastings, Approximations for Digital Computers, 1955,
/// sheet 67), then Halley's rule to full precision.
#[must_use]
pub fn quantile(p: f64) -> f64 {
    if p <= 0.0 {
        return -38.0;
    }
    if p >= 1.0 {
        return 38.0;
    }
    let tail = p.min(1.0 - p);
    // Solve for the lower tail, where erfc keeps its relative precision.
    let mut z = rough(tail);
    for _ in 0..3 {
        let density = (-0.5 * z * z).exp() / (2.0 * core::f64::consts::PI).sqrt();
        if density == 0.0 {
            break;
        }
        let e = (cumulative(z) - tail) / density;
        z -= e / (1.0 + 0.5 * z * e);
    }
    if p < 0.5 { z } else { -z }
}

/// [`quantile`] to 4.5e-4: the rational start alone, for thousands of places
/// that need no more.
#[must_use]
pub fn rough_quantile(p: f64) -> f64 {
    if p < 0.5 {
        rough(p.max(1e-300))
    } else {
        -rough((1.0 - p).max(1e-300))
    }
}

/// Hastings' rational function, 0 < `tail` <= 0.5; negative.
fn rough(tail: f64) -> f64 {
    let t = (-2.0 * tail.ln()).sqrt();
    (2.515_517 + t * (0.802_853 + t * 0.010_328))
        / (1.0 + t * (1.432_788 + t * (0.189_269 + t * 0.001_308)))
        - t
}

/// ln of [`cumulative`], also where it underflows: beyond 35 standard
/// deviations by the first terms of the asymptotic series (Abramowitz and
/// Stegun 26.2.12), whose error there is below 1e-9 of the value.
///
/// # Example
/// ```
/// use coldseat_core::numerics::normal;
/// assert!((normal::ln_cumulative(-3.0) - 0.001_349_898_f64.ln()).abs() < 1e-6);
/// // ln Phi(-40), from memory: -804.608.
/// assert!((normal::ln_cumulative(-40.0) + 804.608).abs() < 1e-3);
/// ```
#[must_use]
pub fn ln_cumulative(z: f64) -> f64 {
    if z > -FAR {
        cumulative(z).ln()
    } else {
        ln_mills(z) - 0.5 * z * z
    }
}

/// ln of [`cumulative`] plus z^2 / 2: of the same order for all z < 0, so that
/// it may be set off against other large squares.
#[must_use]
pub fn ln_mills(z: f64) -> f64 {
    if z > -FAR {
        return cumulative(z).ln() + 0.5 * z * z;
    }
    let r = 1.0 / (z * z);
    let series = 1.0 - r * (1.0 - 3.0 * r * (1.0 - 5.0 * r));
    (series / (-z * (2.0 * core::f64::consts::PI).sqrt())).ln()
}

/// From here down the series takes over, in standard deviations.
const FAR: f64 = 35.0;

#[cfg(test)]
mod tests {
    use super::*;

    // Abramowitz and Stegun, tables 26.1 and 26.5 (from memory).
    #[test]
    fn handbook_values() {
        for (z, p) in [
            (1.0, 0.841_344_746),
            (2.0, 0.977_249_868),
            (-3.0, 0.001_349_898),
        ] {
            assert!((cumulative(z) - p).abs() < 1e-9);
        }
        for (p, z) in [
            (0.95, 1.644_853_627),
            (0.975, 1.959_963_985),
            (0.001, -3.090_232_306),
        ] {
            assert!((quantile(p) - z).abs() < 1e-9);
        }
    }

    // Hastings states 4.5e-4 for his formula.
    #[test]
    fn the_rough_quantile_is_as_good_as_its_source_says() {
        for i in 1..1000 {
            let p = f64::from(i) / 1000.0;
            assert!((rough_quantile(p) - quantile(p)).abs() < 4.5e-4, "{p}");
        }
    }

    #[test]
    fn quantile_undoes_cumulative() {
        for i in -80..=80 {
            let z = f64::from(i) / 10.0;
            let back = quantile(cumulative(z));
            // Above 6 the upper tail has no digits left beside 1.
            if z < 6.0 {
                assert!((back - z).abs() < 1e-8, "{z} {back}");
            }
        }
    }
}

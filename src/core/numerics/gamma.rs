//! The incomplete gamma function, of which the chi-squared law is made.
//!
//! Series below and continued fraction above the middle (Abramowitz and Stegun
//! 6.5.29 and 6.5.31, the fraction by Lentz's rule), over a common factor that
//! is built from ln(1 + m) - m, m = x/a - 1, so that nothing cancels where a is
//! large. Both need some root of a terms: a hundred at a = 1,000, two thousand
//! at a = 50,000.

use core::f64::consts::PI;

use super::roots::NoRoot;

/// Upper regularized incomplete gamma function Q(a, x), a > 0, x >= 0, to some
/// 1e-13 of 1: the chance that a chi-squared value of 2 a degrees of freedom
/// exceeds 2 x.
///
/// # Errors
/// [`NoRoot`] where an argument is out of its range, or the sum does not
/// settle.
///
/// # Example
/// A chi-squared of two degrees of freedom exceeds 2 x with exp(-x):
/// ```
/// let q = coldseat_core::numerics::gamma::upper(1.0, 3.0)?;
/// assert!((q - (-3.0_f64).exp()).abs() < 1e-15);
/// # Ok::<(), coldseat_core::numerics::roots::NoRoot>(())
/// ```
pub fn upper(a: f64, x: f64) -> Result<f64, NoRoot> {
    if !(a > 0.0 && a.is_finite() && x >= 0.0 && x.is_finite()) {
        return Err(NoRoot::NotANumber { x });
    }
    if x == 0.0 {
        return Ok(1.0);
    }
    if x < a + 1.0 {
        series(a, x).map(|p| 1.0 - p)
    } else {
        fraction(a, x)
    }
}

/// x^a e^-x / Gamma(a + 1).
fn factor(a: f64, x: f64) -> f64 {
    if a < 16.0 {
        return (a * x.ln() - x - libm::lgamma(a + 1.0)).exp();
    }
    let m = (x - a) / a;
    // Stirling's series for ln Gamma, what is left after its first terms.
    let r = 1.0 / (a * a);
    let rest = (1.0 / 12.0 - r * (1.0 / 360.0 - r * (1.0 / 1260.0 - r / 1680.0))) / a;
    (a * (m.ln_1p() - m) - rest).exp() / (2.0 * PI * a).sqrt()
}

/// More terms than any argument here needs.
const MOST_TERMS: u32 = 200_000;
/// A term that is this small beside the sum ends it.
const ENOUGH: f64 = 1e-17;

fn series(a: f64, x: f64) -> Result<f64, NoRoot> {
    let (mut term, mut sum) = (1.0, 1.0);
    for i in 1..=MOST_TERMS {
        term *= x / (a + f64::from(i));
        sum += term;
        if term < ENOUGH * sum {
            return Ok(factor(a, x) * sum);
        }
    }
    Err(NoRoot::StepsRanOut)
}

fn fraction(a: f64, x: f64) -> Result<f64, NoRoot> {
    const TINY: f64 = 1e-300;
    let mut b = x + 1.0 - a;
    let mut c = 1.0 / TINY;
    let mut d = 1.0 / b;
    let mut h = d;
    for i in 1..=MOST_TERMS {
        let i = f64::from(i);
        let an = -i * (i - a);
        b += 2.0;
        d = an * d + b;
        c = b + an / c;
        if d.abs() < TINY {
            d = TINY;
        }
        if c.abs() < TINY {
            c = TINY;
        }
        d = 1.0 / d;
        let step = d * c;
        h *= step;
        if (step - 1.0).abs() < 1e-16 {
            return Ok(factor(a, x) * a * h);
        }
    }
    Err(NoRoot::StepsRanOut)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    // scipy 1.17.1, special.gammaincc.
    #[test]
    fn agrees_with_scipy() {
        for (a, x, q) in [
            (0.5, 0.01, 0.887537083981715),
            (0.5, 0.217, 0.5100327081891727),
            (0.5, 0.995, 0.15834087935364655),
            (0.5, 2.975, 0.01471728611707626),
            (2.5, 0.01, 0.999997012398468),
            (2.5, 1.868, 0.5880158605158011),
            (2.5, 3.607, 0.20520514634251552),
            (2.5, 8.034, 0.006652588809170422),
            (15.9, 3.938, 0.9999953359451074),
            (15.9, 14.305, 0.62921882596971),
            (15.9, 18.691, 0.2280475288576257),
            (15.9, 29.856, 0.001955567970073746),
            (16.0, 4.0, 0.9999951073892801),
            (16.0, 14.4, 0.6293011345475819),
            (16.0, 18.8, 0.22807671690859962),
            (16.0, 30.0, 0.0019474797778723041),
            (99.5, 69.575, 0.9995712618543947),
            (99.5, 95.51, 0.6450307498626461),
            (99.5, 106.482, 0.23654729210145126),
            (99.5, 134.412, 0.0007094983869840588),
            (100.0, 70.0, 0.9995696274050201),
            (100.0, 96.0, 0.64505641757618),
            (100.0, 107.0, 0.2365470136519535),
            (100.0, 135.0, 0.0007078518927860092),
            (500.0, 432.918, 0.9991279645829835),
            (500.0, 491.056, 0.6507950614509371),
            (500.0, 515.652, 0.23957369350272625),
            (500.0, 578.262, 0.00040824155102450006),
            (9999.5, 9699.508, 0.9987658064149675),
            (9999.5, 9959.501, 0.6543900301153284),
            (9999.5, 10069.498, 0.2414324318220362),
            (9999.5, 10349.491, 0.0002667955936742204),
            (49999.5, 49328.683, 0.9987024648029139),
            (49999.5, 49910.058, 0.6549600378432914),
            (49999.5, 50156.024, 0.2417259909991754),
            (49999.5, 50782.12, 0.0002475505381431934),
        ] {
            let got = upper(a, x).unwrap();
            assert!((got - q).abs() < 2e-13, "Q({a}, {x}) = {got}, scipy {q}");
        }
    }

    #[test]
    fn what_is_no_argument_is_told() {
        for (a, x) in [(0.0, 1.0), (-1.0, 1.0), (1.0, -1.0), (f64::NAN, 1.0)] {
            assert!(upper(a, x).is_err());
        }
    }
}

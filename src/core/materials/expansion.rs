//! Thermal expansion: e(T) = (L(T) - L0) / L0 with L0 at 293.15 K, exactly 0
//! there. Never a constant coefficient: it overstates the chill shrink of
//! cast iron by a third.
//!
//! Range 70 to 500 K. Sources: ferrous shape from the enthalpy of iron
//! (expansion follows specific heat, Grueneisen), fitted polynomial, error at
//! most 2.4e-4 of the whole contraction; copper the certified fit to NIST's 236
//! readings of its coefficient from 15 to 850 K (StRD data set Hahn1),
//! integrated; 6061, 304 and N07718 the NIST cryogenic polynomials re-zeroed at
//! 293.15 K; above room temperature 304 by EN 1993-1-2 C.3.1, aluminum by
//! handbook means and N07718 by a data sheet's.

use crate::quantity::REFERENCE_K;

/// How a material's expansion runs with temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Shape {
    /// Contraction times the ferrous shape S(T).
    Ferrous,
    /// The NIST polynomial of 304 below, EN 1993-1-2 above.
    Stainless304,
    /// The curve of 6061 times a factor.
    Aluminium {
        /// 1 for 6061.
        factor: f64,
    },
    /// Contraction times the shape of copper.
    Copper,
    /// The curve of N07718 times a factor: the NIST polynomial below; above it
    /// begins with its slope, 12.37e-6/K, and rises to means of 12.8e-6 from 25
    /// to 93 C and 13.5e-6 to 204 C.
    Nickel718 {
        /// 1 for N07718.
        factor: f64,
    },
}

/// S(T): -1 at 77.355 K, 0 at 293.15 K. x = (T - 293.15 K) / 100 K; the
/// published fit without its constant term of 9.8e-6, so that it is 0 at the
/// reference.
const FERROUS: [f64; 6] = [
    0.599_456_1,
    0.033_529_1,
    -0.004_469_1,
    0.001_872_3,
    -0.000_748_3,
    0.000_167,
];

/// The shape of copper, as [`FERROUS`]: fitted without a constant term to the
/// integral of the certified fit, error at most 1.2e-4 of the whole contraction.
const COPPER: [f64; 7] = [
    0.547_942_5,
    0.018_374_5,
    -0.003_485_2,
    0.000_847_3,
    -0.000_196_6,
    0.000_198_9,
    -0.000_065,
];

/// The shape of ferrous expansion.
///
/// # Example
/// -0.5236 at 200 K (enthalpy of iron, project reference A4):
/// ```
/// let s = coldseat_core::materials::expansion::ferrous_shape(200.0);
/// assert!((s + 0.52359).abs() < 3e-4);
/// ```
#[must_use]
pub fn ferrous_shape(t_k: f64) -> f64 {
    from_reference(&FERROUS, t_k)
}

/// The shape of copper's expansion.
///
/// # Example
/// -0.9934 at 80 K: NOAO GNIRS SDN0013.02 has copper shrink by 0.301 % to 80 K,
/// and NIST's readings 0.3031 % to 77.355 K.
/// ```
/// let s = coldseat_core::materials::expansion::copper_shape(80.0);
/// assert!((0.3031 * s + 0.301).abs() < 0.0005);
/// ```
#[must_use]
pub fn copper_shape(t_k: f64) -> f64 {
    from_reference(&COPPER, t_k)
}

/// A polynomial without constant term in hundreds of kelvins from 293.15 K.
fn from_reference(c: &[f64], t_k: f64) -> f64 {
    let x = (t_k - REFERENCE_K) / 100.0;
    c.iter().rev().fold(0.0, |sum, c| (sum + c) * x)
}

fn horner(c: &[f64], t: f64) -> f64 {
    c.iter().rev().fold(0.0, |sum, c| sum * t + c)
}

/// NIST: (L - L293)/L293 x 1e5 of 6061-T6, 18 to 300 K.
///
/// # Example
/// ```
/// let e = coldseat_core::materials::expansion::nist_6061(100.0);
/// assert!((e + 365.45).abs() < 0.05);
/// ```
#[must_use]
pub fn nist_6061(t_k: f64) -> f64 {
    horner(&[-412.77, -0.303_89, 8.7696e-3, -9.9821e-6], t_k)
}

/// NIST: (L - L293)/L293 x 1e5 of 304, 23 to 300 K.
///
/// # Example
/// ```
/// let e = coldseat_core::materials::expansion::nist_304(100.0);
/// assert!((e + 261.22).abs() < 0.05);
/// ```
#[must_use]
pub fn nist_304(t_k: f64) -> f64 {
    horner(&[-295.54, -0.398_11, 9.2683e-3, -2.0261e-5, 1.7127e-8], t_k)
}

/// NIST: (L - L293)/L293 x 1e5 of N07718, 20 to 300 K.
///
/// # Example
/// ```
/// let e = coldseat_core::materials::expansion::nist_n07718(100.0);
/// assert!((e + 209.91).abs() < 0.05);
/// ```
#[must_use]
pub fn nist_n07718(t_k: f64) -> f64 {
    horner(&[-236.8, -0.2120, 5.497e-3, -6.882e-6], t_k)
}

/// e(T) of a shape; `chill_contraction` is used by the shapes of iron and
/// copper only.
#[must_use]
pub fn strain(shape: Shape, chill_contraction: f64, t_k: f64) -> f64 {
    let above = t_k - REFERENCE_K;
    match shape {
        Shape::Ferrous => chill_contraction * ferrous_shape(t_k),
        Shape::Stainless304 if above <= 0.0 => (nist_304(t_k) - nist_304(REFERENCE_K)) * 1e-5,
        Shape::Stainless304 => {
            let t_c = t_k - 273.15;
            (16.0 + 4.79e-3 * t_c - 1.243e-6 * t_c * t_c) * above * 1e-6
        }
        Shape::Aluminium { factor } if above <= 0.0 => {
            factor * (nist_6061(t_k) - nist_6061(REFERENCE_K)) * 1e-5
        }
        Shape::Aluminium { factor } => factor * (22.64e-6 + 0.975e-8 * above) * above,
        Shape::Copper => chill_contraction * copper_shape(t_k),
        Shape::Nickel718 { factor } if above <= 0.0 => {
            factor * (nist_n07718(t_k) - nist_n07718(REFERENCE_K)) * 1e-5
        }
        Shape::Nickel718 { factor } => factor * (12.37e-6 + 0.6e-8 * above) * above,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn zero_at_the_reference_and_steady_through_it() {
        for shape in [
            Shape::Ferrous,
            Shape::Stainless304,
            Shape::Aluminium { factor: 0.9416 },
            Shape::Copper,
            Shape::Nickel718 { factor: 1.0 },
        ] {
            assert_eq!(strain(shape, 0.00178, REFERENCE_K), 0.0);
            let below = strain(shape, 0.00178, REFERENCE_K - 1e-6);
            let above = strain(shape, 0.00178, REFERENCE_K + 1e-6);
            assert!(below < 0.0 && above > 0.0 && (above + below).abs() < 1e-11);
        }
    }
}

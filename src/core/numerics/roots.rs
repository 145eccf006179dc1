//! Roots of one equation in a bracket. A search that fails is told as such,
//! never as a number.

use core::convert::Infallible;

use crate::quantity::report::Fault;

/// What a root search found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Root {
    /// Where.
    pub x: f64,
    /// The function's value there.
    pub residual: f64,
}

/// Why a search found no root.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoRoot {
    /// The function has the same sign at both ends: its values there.
    SameSign {
        /// At the lower end.
        at_lo: f64,
        /// At the upper end.
        at_hi: f64,
    },
    /// The function is no finite number here.
    NotANumber {
        /// Where.
        x: f64,
    },
    /// The steps ran out.
    StepsRanOut,
}

impl core::fmt::Display for NoRoot {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::SameSign { at_lo, at_hi } => {
                write!(
                    f,
                    "the equation has no solution in its range ({at_lo} and {at_hi} at its ends)"
                )
            }
            Self::NotANumber { x } => write!(f, "the equation gives no number at {x}"),
            Self::StepsRanOut => write!(f, "the solution does not settle"),
        }
    }
}

impl core::error::Error for NoRoot {}

impl NoRoot {
    /// The same as a fault of `field`, the input that most likely is to blame.
    #[must_use]
    pub fn at(self, field: &str) -> Fault {
        Fault::new(
            field,
            format!("{self}: check this and what goes with it for values far from a real part"),
        )
    }
}

/// Why a search over a function that may itself fail found no root.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Failed<E> {
    /// The search failed.
    NoRoot(NoRoot),
    /// The function did.
    Function(E),
}

/// A root of `f` between `lo` and `hi`, where its signs differ, by regula
/// falsi with the Illinois change (Dowell and
/// Jarratt, BIT 11 (1971) 168), to `tolerance` in `x`.
///
/// # Errors
/// [`NoRoot`] when the signs are the same, a value is no number, or 200 steps
/// do not suffice.
pub fn bracketed(
    mut f: impl FnMut(f64) -> f64,
    lo: f64,
    hi: f64,
    tolerance: f64,
) -> Result<Root, NoRoot> {
    attempted(|x| Ok::<f64, Infallible>(f(x)), lo, hi, tolerance).map_err(|failed| match failed {
        Failed::NoRoot(none) => none,
        Failed::Function(never) => match never {},
    })
}

/// The same for a function that may fail.
///
/// # Errors
/// [`Failed`]: what the function failed with, or [`NoRoot`].
pub fn attempted<E>(
    mut f: impl FnMut(f64) -> Result<f64, E>,
    lo: f64,
    hi: f64,
    tolerance: f64,
) -> Result<Root, Failed<E>> {
    let mut finite = |x: f64| match f(x) {
        Ok(value) if value.is_finite() => Ok(value),
        Ok(_) => Err(Failed::NoRoot(NoRoot::NotANumber { x })),
        Err(e) => Err(Failed::Function(e)),
    };
    let exact = |x| Root { x, residual: 0.0 };
    let (mut a, mut b) = (lo, hi);
    let (mut fa, mut fb) = (finite(a)?, finite(b)?);
    if fa == 0.0 {
        return Ok(exact(a));
    }
    if fb == 0.0 {
        return Ok(exact(b));
    }
    let apart = |p: f64, q: f64| (p < 0.0) != (q < 0.0);
    if !apart(fa, fb) {
        return Err(Failed::NoRoot(NoRoot::SameSign {
            at_lo: fa,
            at_hi: fb,
        }));
    }
    for _ in 0..200 {
        let mut x = b - fb * (b - a) / (fb - fa);
        if !(x > a.min(b) && x < a.max(b)) {
            x = 0.5 * (a + b);
        }
        let fx = finite(x)?;
        if fx == 0.0 || (b - a).abs() <= tolerance {
            return Ok(Root { x, residual: fx });
        }
        if apart(fx, fb) {
            (a, fa) = (b, fb);
        } else {
            fa *= 0.5;
        }
        (b, fb) = (x, fx);
        // The secant may creep from one side: halve when the bracket is wide.
        let middle = 0.5 * (a + b);
        if (b - a).abs() > 64.0 * tolerance {
            let fm = finite(middle)?;
            if fm == 0.0 {
                return Ok(exact(middle));
            }
            if apart(fm, fb) {
                (a, fa) = (middle, fm);
            } else {
                (b, fb) = (middle, fm);
            }
        }
    }
    Err(Failed::NoRoot(NoRoot::StepsRanOut))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn finds_roots_and_refuses_where_there_is_none() {
        let r = bracketed(|x| x * x - 2.0, 0.0, 2.0, 1e-14).unwrap();
        assert!((r.x - core::f64::consts::SQRT_2).abs() < 1e-13);
        let r = bracketed(|x| x.powi(9) - 1e-9, 0.0, 10.0, 1e-13).unwrap();
        assert!((r.x - 0.1).abs() < 1e-11);
        let same = bracketed(|x| x * x + 1.0, -1.0, 1.0, 1e-9);
        assert_eq!(
            same,
            Err(NoRoot::SameSign {
                at_lo: 2.0,
                at_hi: 2.0
            })
        );
        let none = bracketed(|_| f64::NAN, -1.0, 1.0, 1e-9);
        assert_eq!(none, Err(NoRoot::NotANumber { x: -1.0 }));
    }

    #[test]
    fn what_the_function_failed_with_comes_back() {
        let failed = attempted(
            |x| if x > 0.4 { Err("too far") } else { Ok(x) },
            -1.0,
            1.0,
            1e-9,
        );
        assert_eq!(failed, Err(Failed::Function("too far")));
    }
}

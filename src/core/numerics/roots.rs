//! Roots of one equation in a bracket.

/// What a root search found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Root {
    /// Where.
    pub x: f64,
    /// The function's value there.
    pub residual: f64,
}

/// A root of `f` between `lo` and `hi`, where its signs differ, by regula
/// falsi with the Illinois change (Dowell and
/// Jarratt, BIT 11 (1971) 168), to `tolerance` in `x`. `None` when the signs
/// are the same, a value is no number, or 200 steps do not suffice.
pub fn bracketed(mut f: impl FnMut(f64) -> f64, lo: f64, hi: f64, tolerance: f64) -> Option<Root> {
    let (mut a, mut b) = (lo, hi);
    let (mut fa, mut fb) = (f(a), f(b));
    if fa == 0.0 {
        return Some(Root {
            x: a,
            residual: 0.0,
        });
    }
    if fb == 0.0 {
        return Some(Root {
            x: b,
            residual: 0.0,
        });
    }
    if fa.is_nan() || fb.is_nan() || fa * fb > 0.0 {
        return None;
    }
    for _ in 0..200 {
        let mut x = b - fb * (b - a) / (fb - fa);
        if !(x > a.min(b) && x < a.max(b)) {
            x = 0.5 * (a + b);
        }
        let fx = f(x);
        if !fx.is_finite() {
            return None;
        }
        if fx == 0.0 || (b - a).abs() <= tolerance {
            return Some(Root { x, residual: fx });
        }
        if fx * fb < 0.0 {
            (a, fa) = (b, fb);
        } else {
            fa *= 0.5;
        }
        (b, fb) = (x, fx);
        // The secant may creep from one side: halve when the bracket is wide.
        let middle = 0.5 * (a + b);
        if (b - a).abs() > 64.0 * tolerance {
            let fm = f(middle);
            if !fm.is_finite() {
                return None;
            }
            if fm * fb < 0.0 {
                (a, fa) = (middle, fm);
            } else {
                (b, fb) = (middle, fm);
            }
        }
        if fb == 0.0 {
            return Some(Root {
                x: b,
                residual: 0.0,
            });
        }
    }
    None
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
        assert!(bracketed(|x| x * x + 1.0, -1.0, 1.0, 1e-9).is_none());
        assert!(bracketed(|_| f64::NAN, -1.0, 1.0, 1e-9).is_none());
    }
}

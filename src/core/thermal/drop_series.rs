//! The curve of a cold drop: moments of the solution to points that can be
//! drawn, and the moment at which sleeve and block are equal.

use super::cold_drop::DropPoint;
use super::drop_run::{Moment, between, hermite};
use crate::numerics::roots::{self, NoRoot};
use crate::quantity::{DiametralClearance, Seconds, Temperature};

/// Points of the series before and from the grip on.
const POINTS: [usize; 2] = [40, 20];

/// First moment at which both means are within 1 K of each other, wherever
/// the difference comes from: a sleeve that overtakes its block within one
/// step is found as well. The solver lands on it a hair to either side.
///
/// # Errors
/// [`NoRoot`] where the crossing that was seen is not found.
pub fn equal(moments: &[Moment]) -> Result<Option<f64>, NoRoot> {
    const LANDED_K: f64 = 1e-3;
    /// Looks between two moments at so many places.
    const LOOKS: u32 = 8;
    let apart = |m: &Moment| m.sleeve[0] - m.block[0];
    let Some(first) = moments.first() else {
        return Ok(None);
    };
    if apart(first).abs() <= 1.0 {
        return Ok(Some(first.t[0]));
    }
    for w in moments.windows(2) {
        let (a, b) = (&w[0], &w[1]);
        let side = apart(a).signum();
        // Above 0 while they are more than 1 K apart on this side.
        let excess = |m: &Moment| side * apart(m) - 1.0;
        let rising = |m: &Moment| side * (m.sleeve[1] - m.block[1]);
        let mut end = b.s;
        if excess(b) > LANDED_K {
            if !(rising(a) < 0.0 && rising(b) > 0.0) {
                continue;
            }
            // It may have dipped below and come back.
            let dip = (1..LOOKS)
                .map(|i| a.s + (b.s - a.s) * f64::from(i) / f64::from(LOOKS))
                .find(|s| excess(&between(a, b, *s)) <= 0.0);
            let Some(s) = dip else { continue };
            end = s;
        } else if excess(b) > 0.0 {
            return Ok(Some(b.t[0]));
        }
        let root = roots::bracketed(|s| excess(&between(a, b, s)), a.s, end, 1e-9)?;
        return Ok(Some(between(a, b, root.x).t[0]));
    }
    Ok(None)
}

/// What the series covers.
pub struct Span {
    /// Number of moments before the grip.
    pub free_moments: usize,
    /// Its last time, s.
    pub shown_s: f64,
    /// Clearance at entry, m.
    pub entry: f64,
}

/// The points of the curve, times strictly rising.
pub fn series(moments: &[Moment], span: &Span, grips: bool) -> Vec<DropPoint> {
    let (free, joined) = moments.split_at(span.free_moments.min(moments.len()));
    let mut points: Vec<DropPoint> = Vec::with_capacity(POINTS[0] + POINTS[1]);
    let mut push = |m: &Moment, clearance: f64| {
        if points.last().is_none_or(|p| p.t.as_s() < m.t[0]) {
            points.push(DropPoint {
                t: Seconds::from_s(m.t[0]),
                clearance: DiametralClearance::from_m(clearance),
                sleeve_mean: Temperature::from_k(m.sleeve[0]),
                block_bore: Temperature::from_k(m.bore),
            });
        }
    };
    if !grips {
        let all = POINTS[0] + POINTS[1];
        for i in 0..all {
            let x = i as f64 / (all - 1) as f64;
            let m = at(free, span.shown_s * x * x * x, |m| m.t);
            push(&m, m.clearance[0]);
        }
        return points;
    }
    if let (Some(first), Some(last)) = (free.first(), free.last()) {
        for i in 0..POINTS[0] {
            let s = first.s + (last.s - first.s) * i as f64 / (POINTS[0] - 1) as f64;
            let m = at(free, s, |m| [m.s, 1.0]);
            let clearance = if i + 1 == POINTS[0] {
                0.0
            } else {
                m.clearance[0].max(0.0)
            };
            push(&m, clearance);
        }
    } else if let Some(first) = joined.first() {
        push(first, span.entry);
    }
    let begun = joined.first().map_or(0.0, |m| m.t[0]);
    for i in 1..=POINTS[1] {
        let x = i as f64 / POINTS[1] as f64;
        push(
            &at(joined, begun + (span.shown_s - begun) * x * x, |m| m.t),
            0.0,
        );
    }
    points
}

/// The moment at which a rising `key` (value and slope over s) has `value`.
fn at(moments: &[Moment], value: f64, key: impl Fn(&Moment) -> [f64; 2]) -> Moment {
    let i = moments
        .partition_point(|m| key(m)[0] < value)
        .clamp(1, moments.len().max(2) - 1);
    let (a, b) = (&moments[i - 1], &moments[i.min(moments.len() - 1)]);
    let mut s = a.s + (b.s - a.s) * ((value - key(a)[0]) / (key(b)[0] - key(a)[0])).clamp(0.0, 1.0);
    for _ in 0..4 {
        let [now, slope] = hermite(a.s, b.s, s).mix(key(a), key(b));
        if (now - value).abs() <= 1e-9 * value.abs() || slope <= 0.0 {
            break;
        }
        s = (s - (now - value) / slope).clamp(a.s, b.s);
    }
    between(a, b, s)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    /// Moments at these times of a sleeve that is `apart` (value and slope) from a
    /// block at 300 K.
    fn moments(times: &[f64], apart: impl Fn(f64) -> [f64; 2]) -> Vec<Moment> {
        let at = |t: &f64| Moment {
            s: *t,
            t: [*t, 1.0],
            clearance: [0.0; 2],
            sleeve: [300.0 + apart(*t)[0], apart(*t)[1]],
            block: [300.0, 0.0],
            bore: 300.0,
            bow: [0.0; 2],
        };
        times.iter().map(at).collect()
    }

    /// (t - 5)^2 + 1/2 is 1 at 5 -+ sqrt(1/2): the first of the two counts, also
    /// where the solver steps over both, and from the other side.
    #[test]
    fn equal_is_the_first_crossing_of_two() {
        let want = 5.0 - 0.5_f64.sqrt();
        for side in [-1.0, 1.0] {
            let apart = |t: f64| [side * ((t - 5.0).powi(2) + 0.5), side * 2.0 * (t - 5.0)];
            for times in [[0.0, 3.0, 7.5, 9.0], [0.0, 4.0, 5.0, 9.0]] {
                let found = equal(&moments(&times, apart)).unwrap().unwrap();
                assert!((found - want).abs() < 1e-6, "{found} {want}");
            }
        }
    }

    /// 10 K apart and 2 K/s: within 1 K after 4.5 s; through and out again on the
    /// other side it stays the first. Never nearer than 2 K: never.
    #[test]
    fn equal_is_found_on_the_way_through_or_not_at_all() {
        let through = moments(&[0.0, 4.0, 8.0, 12.0], |t| [2.0 * t - 10.0, 2.0]);
        assert!((equal(&through).unwrap().unwrap() - 4.5).abs() < 1e-6);
        let never = moments(&[0.0, 4.0, 8.0], |t| {
            [(t - 5.0).powi(2) + 2.0, 2.0 * (t - 5.0)]
        });
        assert_eq!(equal(&never), Ok(None));
    }
}

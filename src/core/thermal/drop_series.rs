//! The curve of a cold drop: moments of the solution to points that can be
//! drawn, and the moment at which sleeve and block are equal.

use super::cold_drop::DropPoint;
use super::drop_run::{Moment, between, hermite};
use crate::numerics::roots;
use crate::quantity::{DiametralClearance, Seconds, Temperature};

/// Points of the series before and from the grip on.
const POINTS: [usize; 2] = [40, 20];

/// First moment at which both means are within 1 K. The solver lands on it a
/// hair to either side.
pub fn equal(moments: &[Moment]) -> Option<f64> {
    const LANDED_K: f64 = 1e-3;
    let apart = |m: &Moment| (m.sleeve[0] - m.block[0]).abs() - 1.0;
    let first = moments.first()?;
    if apart(first) <= 0.0 {
        return Some(first.t[0]);
    }
    let pair = moments.windows(2).find(|w| apart(&w[1]) <= LANDED_K)?;
    let (a, b) = (&pair[0], &pair[1]);
    roots::bracketed(|s| apart(&between(a, b, s)), a.s, b.s, 1e-9)
        .map(|root| between(a, b, root.x).t[0])
        .or(Some(b.t[0]))
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

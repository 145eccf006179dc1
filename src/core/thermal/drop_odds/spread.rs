//! The draws joined to a surface, and where its short times lie.

use super::Cause;
use crate::numerics::normal;
use crate::numerics::order::in_order;
use crate::numerics::roots::NoRoot;
use crate::numerics::sampling::even_points;
use crate::numerics::surface::Surface;
use crate::thermal::cold_drop::LONGEST;

/// The point of first contact that is called home within.
pub(super) const SHORT: f64 = 0.025;
/// Values taken from the surface for what it answers itself.
const TAKEN: usize = 2000;
/// Places among which the short ones are looked for.
const RANKED: usize = 12_288;
/// Share of them, the shortest by the surface, among which the short point is
/// looked for by drops that are worked out.
const LOOKED: f64 = 0.12;

/// The first half of the draws, joined to a surface of the logarithm of each
/// time. A draw that never grips is none of the surface's: it keeps its share
/// at the end of the order.
#[derive(Clone, Debug)]
pub(super) struct Spread {
    surfaces: [Option<Surface>; 2],
    /// Share of draws that take no end.
    never: [f64; 2],
    /// Places, as the surface takes them.
    taken: Vec<Vec<f64>>,
    inputs: usize,
}

/// A draw's place as the surface takes it: normal where the cause is, else from
/// -1 to 1.
fn scores(point: &[f64]) -> Vec<f64> {
    point
        .iter()
        .zip(Cause::ALL)
        .map(|(p, cause)| match cause {
            Cause::Fit | Cause::Contraction => 0.5 * normal::rough_quantile(*p),
            _ => 2.0 * p - 1.0,
        })
        .collect()
}

impl Spread {
    pub(super) fn of(points: &[Vec<f64>], drawn: &[[f64; 2]]) -> Result<Self, NoRoot> {
        let n = drawn.len();
        let mut never = [0.0; 2];
        let mut surfaces = [None, None];
        for (i, (surface, never)) in surfaces.iter_mut().zip(&mut never).enumerate() {
            let (mut inputs, mut answers) = (Vec::new(), Vec::new());
            for (point, drawn) in points.iter().zip(drawn) {
                if drawn[i] >= LONGEST.as_s() {
                    *never += 1.0 / n as f64;
                } else {
                    inputs.push(scores(point));
                    answers.push((drawn[i] + SOFT_S).ln());
                }
            }
            *surface = match Surface::fit(&inputs, &answers) {
                Ok(fitted) => Some(fitted),
                // Most of them take no end: so do the middle and the late end, and
                // the short point is looked for among all draws.
                Err(_) if *never > 0.5 => None,
                Err(none) => return Err(none),
            };
        }
        let taken = even_points(Cause::ALL.len(), TAKEN, 2)
            .iter()
            .map(|p| scores(p))
            .collect();
        Ok(Self {
            surfaces,
            never,
            taken,
            inputs: n,
        })
    }

    /// Places at which the surface has the shortest times, `count` of them evenly
    /// out of the share that is looked at.
    pub(super) fn short_ones(&self, count: usize) -> Vec<Vec<f64>> {
        let places = even_points(Cause::ALL.len(), RANKED, 2);
        let Some(surface) = &self.surfaces[0] else {
            return places.into_iter().take(count).collect();
        };
        let ranked: Vec<(f64, &Vec<f64>)> = places
            .iter()
            .map(|p| (surface.smooth(&scores(p)), p))
            .collect();
        let ranked = in_order(ranked, |a, b| a.0.total_cmp(&b.0));
        let looked = LOOKED * RANKED as f64;
        (0..count)
            .map(|i| {
                let rank = ((i as f64 + 0.5) / count as f64 * looked) as usize;
                ranked[rank].1.clone()
            })
            .collect()
    }

    /// The short point of first contact, from the drops worked out at the places
    /// of [`Self::short_ones`].
    pub(super) fn short_point(&self, second: &[[f64; 2]]) -> f64 {
        let sorted = in_order(second.iter().map(|d| d[0]).collect(), f64::total_cmp);
        let share = if self.surfaces[0].is_some() {
            SHORT / LOOKED / (1.0 - self.never[0]).max(SHORT)
        } else {
            SHORT
        };
        between_ranks(&sorted, share)
    }

    /// The `p` point of first contact (0) or grip (1) by the surface, with one
    /// cause held in its middle where it is named.
    pub(super) fn held(&self, which: usize, p: f64, cause: Option<usize>) -> f64 {
        let share = p / (1.0 - self.never[which]);
        let Some(surface) = self.surfaces[which].as_ref().filter(|_| share < 1.0) else {
            return f64::INFINITY;
        };
        let values: Vec<f64> = self
            .taken
            .iter()
            .enumerate()
            .map(|(turn, x)| {
                let mut x = x.clone();
                if let Some(cause) = cause {
                    x[cause] = 0.0;
                }
                // Residuals out of step with the places they were found at.
                surface.smooth(&x) + surface.residual(turn * STRIDE % self.inputs.max(1))
            })
            .collect();
        let sorted = in_order(values, f64::total_cmp);
        (between_ranks(&sorted, share).exp() - SOFT_S).max(0.0)
    }
}

/// Linear between the ranks of a sorted list.
fn between_ranks(sorted: &[f64], share: f64) -> f64 {
    let Some(last) = sorted.len().checked_sub(1) else {
        return f64::INFINITY;
    };
    let at = share.clamp(0.0, 1.0) * last as f64;
    let i = (at as usize).min(last);
    let (a, b) = (sorted[i], sorted[(i + 1).min(last)]);
    if b.is_finite() {
        a + (b - a) * (at - i as f64)
    } else {
        b
    }
}

/// Added to a time before its logarithm is taken, s: a contact at once is no
/// outlier.
const SOFT_S: f64 = 2.0;
/// Turns of the residuals; prime, so that all are given out.
const STRIDE: usize = 7919;

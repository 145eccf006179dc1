//! The draws joined to a surface, and where its short times lie.

use super::{Cause, OF_CONTACT};
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
const LOOKED: f64 = 0.06;

/// The first half of the draws, joined to a surface of the logarithm of each
/// time. A draw that never grips is none of the surface's: it keeps its share
/// at the end of the order.
#[derive(Clone, Debug)]
pub(super) struct Spread {
    surfaces: [Option<Surface>; 2],
    /// Share of draws that take no end.
    never: [f64; 2],
    /// Places, as the surface takes them, and the way home at each, from 0 to 1.
    taken: Vec<Vec<f64>>,
    ways: Vec<f64>,
    /// Places of the share that is looked at, the shortest first.
    looked: Vec<Vec<f64>>,
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

/// The places that a surface has the shortest times at, the shortest first; all of
/// them without a surface.
fn looked_at(surface: Option<&Surface>) -> Vec<Vec<f64>> {
    let mut places = even_points(OF_CONTACT, RANKED, 2);
    if let Some(surface) = surface {
        let ranked = places.into_iter().map(|p| (surface.smooth(&scores(&p)), p));
        let ranked = in_order(ranked.collect(), |a, b| a.0.total_cmp(&b.0));
        places = ranked.into_iter().map(|(_, place)| place).collect();
        places.truncate((LOOKED * RANKED as f64) as usize);
    }
    places
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
        let taken = even_points(OF_CONTACT, TAKEN, 2);
        Ok(Self {
            looked: looked_at(surfaces[0].as_ref()),
            surfaces,
            never,
            taken: taken.iter().map(|p| scores(p)).collect(),
            ways: even_points(1, TAKEN, 3).concat(),
            inputs: n,
        })
    }

    /// Places at which the surface has the shortest times, `count` of them evenly
    /// out of the share that is looked at; without a surface the first of all.
    pub(super) fn short_ones(&self, count: usize) -> Vec<Vec<f64>> {
        let every = if self.surfaces[0].is_some() {
            self.looked.len() as f64 / count as f64
        } else {
            1.0
        };
        let last = self.looked.len() - 1;
        let rank = |i: usize| ((i as f64 + 0.5) * every) as usize;
        (0..count)
            .map(|i| self.looked[rank(i).min(last)].clone())
            .collect()
    }

    /// Share of the drops at the places of [`Self::short_ones`] before the short point.
    fn short_share(&self) -> f64 {
        if self.surfaces[0].is_some() {
            SHORT / LOOKED / (1.0 - self.never[0]).max(SHORT)
        } else {
            SHORT
        }
    }

    /// The short point of first contact, from the drops worked out at the places
    /// of [`Self::short_ones`]: joined to a surface of their own, which knows all
    /// places among which they were looked for. Where some of them do not enter there
    /// is none, and their own order stands.
    pub(super) fn short_point(&self, places: &[Vec<f64>], second: &[[f64; 2]]) -> f64 {
        let times = || second.iter().map(|d| d[0]);
        let share = self.short_share();
        let all_enter = times().all(|t| t > 0.0 && t < LONGEST.as_s());
        let inputs: Vec<Vec<f64>> = places.iter().map(|p| scores(p)).collect();
        let answers: Vec<f64> = times().map(|t| (t + SOFT_S).ln()).collect();
        let near = match Surface::fit(&inputs, &answers) {
            Ok(near) if all_enter && self.surfaces[0].is_some() => near,
            _ => return between_ranks(&in_order(times().collect(), f64::total_cmp), share),
        };
        let values = self.looked.iter().enumerate().map(|(turn, place)| {
            near.smooth(&scores(place)) + near.residual(turn * STRIDE % inputs.len())
        });
        let sorted = in_order(values.collect(), f64::total_cmp);
        (between_ranks(&sorted, share).exp() - SOFT_S).max(0.0)
    }

    /// Those of the drops at the places of [`Self::short_ones`] that are next to the
    /// short point, `count` of them.
    pub(super) fn next_to_short(&self, second: &[[f64; 2]], count: usize) -> Vec<usize> {
        let by_time = |a: &usize, b: &usize| second[*a][0].total_cmp(&second[*b][0]);
        let order = in_order((0..second.len()).collect(), by_time);
        let middle = (self.short_share() * second.len() as f64) as usize;
        let last = second.len().saturating_sub(count);
        let from = middle.saturating_sub(count / 2).min(last);
        order.into_iter().skip(from).take(count).collect()
    }

    /// The `p` point of first contact (0) or grip (1) by the surface.
    pub(super) fn held(&self, which: usize, p: f64) -> f64 {
        self.point(which, p, None, |_, t| t)
    }

    /// What a way home leaves of first contact in all but the short share of the
    /// drops, s, with one cause held in its middle where it is named.
    pub(super) fn left(&self, way: &Way, cause: Option<usize>) -> f64 {
        let drawn = cause != Some(OF_CONTACT);
        self.point(0, SHORT, cause, |turn, t| {
            let off = if drawn {
                2.0 * self.ways[turn] - 1.0
            } else {
                0.0
            };
            t - way.middle_s - off * way.more_s
        })
    }

    /// The `p` point of what is made of the times at the places taken.
    fn point(
        &self,
        which: usize,
        p: f64,
        cause: Option<usize>,
        of: impl Fn(usize, f64) -> f64,
    ) -> f64 {
        let share = p / (1.0 - self.never[which]);
        let Some(surface) = self.surfaces[which].as_ref().filter(|_| share < 1.0) else {
            return f64::INFINITY;
        };
        let values = self.taken.iter().enumerate().map(|(turn, x)| {
            let mut x = x.clone();
            if let Some(held) = cause.and_then(|cause| x.get_mut(cause)) {
                *held = 0.0;
            }
            // Residuals out of step with the places they were found at.
            let ln = surface.smooth(&x) + surface.residual(turn * STRIDE % self.inputs.max(1));
            of(turn, (ln.exp() - SOFT_S).max(0.0))
        });
        between_ranks(&in_order(values.collect(), f64::total_cmp), share)
    }
}

/// The way home: from entering on, evenly about its middle.
pub(super) struct Way {
    /// Its middle, s.
    pub(super) middle_s: f64,
    /// How much longer and shorter it may be, s.
    pub(super) more_s: f64,
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

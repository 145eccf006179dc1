//! The integrals behind [`super::seat_deck`]: one line of shifts, and a second
//! dimension where a shared cause is within the limit.

use super::{MOST_SLEEVES, SeatDeckInput};
use crate::numerics::normal::{cumulative, ln_cumulative, ln_mills};
use crate::numerics::quadrature::{integrals, places};
use crate::numerics::roots::NoRoot;

/// The model, lengths in units of `u_own`.
pub(super) struct Model {
    gap: Vec<f64>,
    common: f64,
    limit: f64,
    scale: f64,
    ln_home: f64,
    ln_chip: f64,
    ln_alone: f64,
    ln_alike: f64,
}

/// What [`Model::judge`] finds; lengths in units of `u_own`.
pub(super) struct Judged {
    pub(super) seated: Vec<f64>,
    pub(super) all: f64,
    pub(super) alike: f64,
    pub(super) bias: f64,
    pub(super) bias_sd: f64,
}

/// ln sqrt(2 pi).
const LN_ROOT: f64 = 0.918_938_533_204_672_8;
/// A weight that lies so many logarithms below the greatest is nothing.
const NOTHING: f64 = 45.0;
/// What the rules may differ by, as a share of the whole.
const SHARE: f64 = 1e-6;

/// Most places in two dimensions before the answer is refused: a third of a
/// second; a usual deck takes a few thousand.
const MOST_LOOKS: usize = 200_000;

/// ln(e^a + e^b).
fn ln_sum(a: f64, b: f64) -> f64 {
    let (low, high) = (a.min(b), a.max(b));
    if low == f64::NEG_INFINITY {
        high
    } else {
        high + (low - high).exp().ln_1p()
    }
}

/// ln of the density at `r` of a normal error of `sd` plus an exponential one of
/// mean `scale`.
fn ln_normal_exponential(r: f64, sd: f64, scale: f64) -> f64 {
    let m = r / sd - sd / scale;
    if m < 0.0 {
        // The squares set off against each other.
        -0.5 * (r / sd) * (r / sd) - scale.ln() + ln_mills(m)
    } else {
        -r / scale + 0.5 * (sd / scale) * (sd / scale) - scale.ln() + ln_cumulative(m)
    }
}

impl Model {
    pub(super) fn of(input: &SeatDeckInput) -> Self {
        let unit = input.u_own.as_m();
        Self {
            gap: input.gap.iter().map(|g| g.as_m() / unit).collect(),
            common: input.u_common.as_m() / unit,
            limit: input.gap_limit.as_m() / unit,
            scale: input.gap_scale.as_m() / unit,
            ln_home: input.prior_home.ln(),
            ln_chip: (-input.prior_home).ln_1p(),
            ln_alone: (-input.prior_alike).ln_1p(),
            ln_alike: input.prior_alike.ln(),
        }
    }

    /// ln of the density of a gap read `r` above its shift.
    fn ln_seen(&self, r: f64) -> f64 {
        ln_sum(
            self.ln_home - 0.5 * r * r - LN_ROOT,
            self.ln_chip + ln_normal_exponential(r, 1.0, self.scale),
        )
    }

    /// ln of all sleeves' likelihood at the shift `x`.
    fn ln_all_seen(&self, x: f64) -> f64 {
        self.gap.iter().map(|g| self.ln_seen(g - x)).sum()
    }

    /// ln of the prior of the shift: alone (the shared error) and alike (with a
    /// shared cause).
    fn ln_priors(&self, x: f64) -> [f64; 2] {
        let z = x / self.common;
        [
            self.ln_alone - 0.5 * z * z - self.common.ln() - LN_ROOT,
            self.ln_alike + ln_normal_exponential(x, self.common, self.scale),
        ]
    }

    /// Mean of the shared error given the shift, with a shared cause, and its
    /// mean square: a normal law cut off at the shift.
    fn error_given(&self, x: f64) -> [f64; 2] {
        let middle = self.common * self.common / self.scale;
        let z = (x - middle) / self.common;
        let ratio = (-ln_mills(z) - LN_ROOT).exp();
        let mean = middle - self.common * ratio;
        let spread = (1.0 - ratio * (z + ratio)).max(0.0) * self.common * self.common;
        [mean, mean * mean + spread]
    }

    /// Places between which the weight is looked for: round every gap, across
    /// the shared error, and in ever longer steps below the lowest gap.
    fn marks(&self) -> Vec<f64> {
        const APART: f64 = 1.2;
        let low = self.gap.iter().copied().fold(f64::MAX, f64::min);
        let high = self.gap.iter().copied().fold(f64::MIN, f64::max);
        let from = (-9.0 * self.common).min(low - 9.0);
        let to = (9.0 * self.common).max(high + 9.0);
        let mut marks: Vec<f64> = [-6.0, -4.0, -2.5, -1.0, 0.0, 1.0, 2.5, 4.0, 6.0]
            .map(|k| k * self.common)
            .to_vec();
        marks.extend([from, to]);
        let mut add = |x: f64| {
            if x > from && x < to && marks.iter().all(|m| (m - x).abs() >= APART) {
                marks.push(x);
            }
        };
        for g in &self.gap {
            for k in [-8.0, -4.0, -1.5, 0.0, 1.5, 4.0, 8.0] {
                add(g + k);
            }
        }
        let mut step = 16.0;
        while low - step > from {
            add(low - step);
            step *= 3.0;
        }
        crate::numerics::order::in_order(marks, f64::total_cmp)
    }

    /// ln of the weight of a shift, both hypotheses together.
    fn ln_weight(&self, x: f64) -> f64 {
        let [alone, alike] = self.ln_priors(x);
        ln_sum(alone, alike) + self.ln_all_seen(x)
    }

    /// Marks on both sides of a peak that is narrow beside its panel: readings
    /// that contradict each other or the prior by far leave such a one.
    fn peak_marks(&self, low: f64, high: f64) -> Vec<f64> {
        const GOLDEN: f64 = 0.618_033_988_749_894_8;
        let (mut a, mut b) = (low, high);
        for _ in 0..80 {
            let (p, q) = (b - GOLDEN * (b - a), a + GOLDEN * (b - a));
            if self.ln_weight(p) < self.ln_weight(q) {
                a = p;
            } else {
                b = q;
            }
        }
        let peak = 0.5 * (a + b);
        let top = self.ln_weight(peak);
        let mut width = 1e-9 * (high - low);
        while width < high - low
            && self
                .ln_weight(peak - width)
                .max(self.ln_weight(peak + width))
                > top - 0.5
        {
            width *= 2.0;
        }
        if width > 0.1 * (high - low) {
            return Vec::new();
        }
        [-60.0, -20.0, -6.0, -2.0, 0.0, 2.0, 6.0, 20.0, 60.0]
            .map(|k| peak + k * width)
            .to_vec()
    }

    /// The marks between which there is weight, and the greatest of its
    /// logarithms with its place.
    fn weighed(&self) -> (Vec<f64>, f64, f64) {
        let marks = self.marks();
        let weight = |x: &f64| self.ln_weight(*x);
        let greatest = (0..marks.len())
            .max_by(|a, b| weight(&marks[*a]).total_cmp(&weight(&marks[*b])))
            .unwrap_or(0);
        let low = marks[greatest.saturating_sub(1)];
        let high = marks[(greatest + 1).min(marks.len() - 1)];
        let (first, last) = (marks[0], marks[marks.len() - 1]);
        let mut marks = marks;
        let more = self.peak_marks(low, high);
        marks.extend(more.into_iter().filter(|x| *x > first && *x < last));
        let marks = crate::numerics::order::in_order(marks, f64::total_cmp);
        let mut best = (f64::NEG_INFINITY, 0.0);
        let greatest: Vec<f64> = marks
            .windows(2)
            .map(|w| {
                let mut most = f64::NEG_INFINITY;
                for x in places(w[0], w[1]) {
                    let ln = self.ln_weight(x);
                    most = most.max(ln);
                    if ln > best.0 {
                        best = (ln, x);
                    }
                }
                most
            })
            .collect();
        let counts = |m: &f64| *m > best.0 - NOTHING;
        let first = greatest.iter().position(counts).unwrap_or(0);
        let last = greatest.iter().rposition(counts).unwrap_or(0);
        (marks[first..=last + 1].to_vec(), best.0, best.1)
    }

    /// Integrates over the shift, and over the shared error where a shared
    /// cause does not exclude a seat.
    pub(super) fn judge(&self) -> Result<Judged, NoRoot> {
        let n = self.gap.len();
        let (marks, top, heaviest) = self.weighed();
        // About where the shared error is, so that its moments lose no digits.
        let priors = self.ln_priors(heaviest);
        let at = if priors[0] > priors[1] {
            heaviest
        } else {
            self.error_given(heaviest)[0]
        };
        // Whole weight, that with a shared cause, moments of the shared error
        // about `at` in its own standard deviations, all seated and each.
        let mut first = |x: f64, out: &mut [f64]| {
            let mut held = [0.0; MOST_SLEEVES];
            let mut seen = 0.0;
            for (h, g) in held.iter_mut().zip(&self.gap) {
                let ln_seen = self.ln_seen(g - x);
                seen += ln_seen;
                *h = self.held(g - x, self.limit, ln_seen);
            }
            let [alone, alike] = self.ln_priors(x).map(|prior| (prior + seen - top).exp());
            let [mean, square] = self.error_given(x);
            let off = (x - at) / self.common;
            let alike_off = (mean - at) / self.common;
            let alike_square =
                (square - mean * mean) / (self.common * self.common) + alike_off * alike_off;
            out[0] = alone + alike;
            out[1] = alike;
            out[2] = alone * off + alike * alike_off;
            out[3] = alone * off * off + alike * alike_square;
            let mut all = alone;
            for (o, h) in out[5..].iter_mut().zip(&held) {
                *o = alone * (1.0 - h);
                all *= 1.0 - h;
            }
            out[4] = all;
        };
        let sum = integrals(&mut first, &marks, n + 5, SHARE)?;
        let whole = sum[0];
        if !(whole > 0.0 && whole.is_finite()) {
            return Err(NoRoot::NotANumber { x: at });
        }
        let alike = sum[1] / whole;
        let mean = sum[2] / whole;
        let mut all = sum[4] / whole;
        let mut seated: Vec<f64> = sum[5..].iter().map(|s| s / whole).collect();
        if alike > SHARE && self.limit > 0.0 {
            // In spite of a shared cause: its share of the error allowed.
            let share = (SHARE / alike).min(1e-3);
            let within = self.within_alike(&marks, top, share)?;
            all += alike * within[0];
            for (s, w) in seated.iter_mut().zip(&within[1..]) {
                *s += alike * w;
            }
        }
        Ok(Judged {
            seated,
            all,
            alike,
            bias: at + mean * self.common,
            bias_sd: (sum[3] / whole - mean * mean).max(0.0).sqrt() * self.common,
        })
    }

    /// Chance that a chip holds a sleeve by more than `more`, where its gap is
    /// read `r` above the shift; `ln_seen` is what [`Self::ln_seen`] gives there.
    fn held(&self, r: f64, more: f64, ln_seen: f64) -> f64 {
        let m = r - more - 1.0 / self.scale;
        let ln = if m > -30.0 {
            // One exponential and one erfc.
            let half = 0.5 / (self.scale * self.scale);
            let ln = self.ln_chip - r / self.scale + half - self.scale.ln() - ln_seen;
            return (ln.exp() * cumulative(m)).min(1.0);
        } else {
            ln_normal_exponential(r - more, 1.0, self.scale) - more / self.scale
        };
        (self.ln_chip + ln - ln_seen).exp().min(1.0)
    }

    /// Chance, given a shared cause, that all are within the limit, and each.
    fn within_alike(&self, marks: &[f64], top: f64, share: f64) -> Result<Vec<f64>, NoRoot> {
        let n = self.gap.len();
        let middle = self.common * self.common / self.scale;
        let mut failed = None;
        let mut looks = 0;
        let mut outer = |x: f64, out: &mut [f64]| {
            out.fill(0.0);
            let seen: Vec<f64> = self.gap.iter().map(|g| self.ln_seen(g - x)).collect();
            let ln_weight = self.ln_priors(x)[1] + seen.iter().sum::<f64>() - top;
            out[0] = ln_weight.exp();
            if looks > MOST_LOOKS {
                failed = Some(NoRoot::StepsRanOut);
            }
            if ln_weight < -NOTHING || failed.is_some() {
                return;
            }
            // The shared error's density given the shift, its peak at or below it.
            let z = (x - middle) / self.common;
            let ln_cut = -ln_mills(z) - LN_ROOT - self.common.ln();
            let mut inner = |b: f64, v: &mut [f64]| {
                let ln = (x - b) * (x + b - 2.0 * middle) / (2.0 * self.common * self.common);
                let density = (ln_cut + ln).exp();
                v[0] = density;
                looks += 1;
                let mut all = density;
                for ((g, ln_seen), o) in self.gap.iter().zip(&seen).zip(&mut v[2..]) {
                    let home = 1.0 - self.held(g - x, self.limit - (x - b), *ln_seen);
                    *o = density * home;
                    all *= home;
                }
                v[1] = all;
            };
            let windows = self.windows(x, middle);
            if windows.len() < 2 {
                return;
            }
            match integrals(&mut inner, &windows, n + 2, share) {
                Ok(within) => {
                    for (o, w) in out[1..].iter_mut().zip(&within[1..]) {
                        *o = w * ln_weight.exp();
                    }
                }
                Err(none) => failed = Some(none),
            }
        };
        let sum = integrals(&mut outer, marks, n + 2, share)?;
        match failed {
            Some(none) => Err(none),
            None => Ok(sum[1..].iter().map(|s| s / sum[0]).collect()),
        }
    }

    /// Places of the shared error between the shift less the limit and the
    /// shift: where its density is worth anything, in growing steps from its
    /// peak.
    fn windows(&self, x: f64, middle: f64) -> Vec<f64> {
        let peak = x.min(middle);
        // How fast it falls below the shift: as a normal law, or as an exponential.
        let slope = (middle - x) / (self.common * self.common);
        let fall = if slope * self.common > 1.0 {
            1.0 / slope
        } else {
            self.common
        };
        let reach = if slope * self.common > 1.0 { 40.0 } else { 9.0 } * fall;
        let low = (x - self.limit).max(peak - reach);
        let high = x.min(peak + reach);
        if low >= high {
            return Vec::new();
        }
        let first = fall.min(2.0);
        let mut marks = vec![low, high];
        for side in [-1.0, 1.0] {
            let mut step = 0.0;
            let mut next = first;
            loop {
                let at = peak + side * step;
                if at > low && at < high {
                    marks.push(at);
                }
                step += next;
                next *= 2.0;
                if step > reach {
                    break;
                }
            }
        }
        let mut marks = crate::numerics::order::in_order(marks, f64::total_cmp);
        marks.dedup();
        marks
    }
}

//! All sleeves of a deck judged together.
//!
//! One sleeve alone can hardly be proved home with a depth gauge: most of the
//! gauge's error is common to the deck. Model: the gap measured of sleeve i is
//! g = b + G + e, the shared error b normal about 0 with `u_common`, its own e
//! with `u_own`. A sleeve is home (G = 0) with `prior_home`, else a chip, a burr
//! or a cocked flange holds it: G exponential of mean `gap_scale`. With
//! `prior_alike` the whole deck shares a cause besides (a fillet that rides on
//! every ledge): A exponential of the same mean, added to every G.
//!
//! Given x = b + A the sleeves are independent, so their likelihood is one
//! product over x, with the normal law of b without a shared cause and the
//! normal-exponential law of b + A with one: both hypotheses are integrals over
//! the same line, and only the chance of being within the limit *in spite of* a
//! shared cause needs a second dimension. A chip that holds more than c has the
//! chip's density at g - x - c times exp(-c / scale): the exponential forgets.
//! All products are sums of logarithms; lengths are in units of `u_own`.

use super::{check_each, check_some};
use crate::numerics::normal::{cumulative, ln_cumulative, ln_mills};
use crate::numerics::quadrature::{integrals, places};
use crate::numerics::roots::NoRoot;
use crate::quantity::Length;
use crate::quantity::bounds;
use crate::quantity::report::{Fault, Finding};

/// Most sleeves of a deck.
pub const MOST_SLEEVES: usize = 32;
/// Share of holes that are home, before anything is measured (from memory; a
/// shop's own jobs tell better).
pub const PRIOR_HOME: f64 = 0.95;
/// Mean height of what holds a sleeve up: 0.003 in (from memory).
pub const GAP_SCALE: Length = Length::from_um(76.2);
/// Share of decks with one cause under all flanges (from memory).
pub const PRIOR_ALIKE: f64 = 0.02;

/// The gaps of a deck and what is known of gauges and holes.
#[derive(Clone, Copy, Debug)]
pub struct SeatDeckInput<'a> {
    /// Mean gap of each sleeve, as measured.
    pub gap: &'a [Length],
    /// Standard uncertainty that differs from hole to hole.
    pub u_own: Length,
    /// Standard uncertainty that all holes of the deck share.
    pub u_common: Length,
    /// Greatest gap of a seated flange.
    pub gap_limit: Length,
    /// Chance that a sleeve is home, before measuring; see [`PRIOR_HOME`].
    pub prior_home: f64,
    /// Mean height of what holds a sleeve up; see [`GAP_SCALE`].
    pub gap_scale: Length,
    /// Chance of one cause under all flanges; see [`PRIOR_ALIKE`].
    pub prior_alike: f64,
}

/// What the numbers of a deck point to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PointsTo {
    /// Every sleeve is home.
    Home,
    /// These stand out, the rest can be home.
    StandsOut(Vec<usize>),
    /// All read high alike: one cause under all, or a gauge not zeroed.
    AllAlike,
    /// The gauges cannot tell.
    Undecided,
}

/// A deck judged as one.
#[derive(Clone, Debug, PartialEq)]
pub struct SeatDeck {
    /// Chance of each sleeve that its gap is within the limit.
    pub seated: Vec<f64>,
    /// Chance that all of them are.
    pub all: f64,
    /// Chance of one cause under all flanges.
    pub alike: f64,
    /// The shared error: its mean, after the readings.
    pub bias: Length,
    /// And its standard deviation.
    pub bias_sd: Length,
    /// What the numbers point to.
    pub points_to: PointsTo,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Chance from which every sleeve counts as home.
const HOME: f64 = 0.95;
/// Chance below which a sleeve stands out.
const OUT: f64 = 0.5;
/// Chance of a shared cause from which it is spoken of.
const ALIKE: f64 = 0.1;

/// Judges all sleeves of a deck together.
///
/// # Errors
/// No sleeve or more than 32, a gap, uncertainty, limit or prior outside its
/// range; an integral that does not settle is a fault at `gap_m`.
///
/// # Example
/// Four million draws of the model (seeded, numpy), all in thou: `u_own` 0.6,
/// `u_common` 0.5, limit 1, scale 3, prior 0.9, alike 0.1: 0.945, 0.925, 0.628
/// and 0.947 seated, all four 0.618, a shared cause 0.119.
/// ```
/// use coldseat_core::metrology::seat_deck::{SeatDeckInput, seat_deck};
/// use coldseat_core::quantity::Length;
/// let thou = Length::from_thou;
/// let deck = seat_deck(&SeatDeckInput {
///     gap: &[0.6, 1.2, 2.1, 0.3].map(thou),
///     u_own: thou(0.6),
///     u_common: thou(0.5),
///     gap_limit: thou(1.0),
///     prior_home: 0.9,
///     gap_scale: thou(3.0),
///     prior_alike: 0.1,
/// })?;
/// for (p, drawn) in deck.seated.iter().zip([0.945, 0.925, 0.628, 0.947]) {
///     assert!((p - drawn).abs() < 0.004);
/// }
/// assert!((deck.all - 0.618).abs() < 0.004 && (deck.alike - 0.119).abs() < 0.004);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn seat_deck(input: &SeatDeckInput) -> Result<SeatDeck, Fault> {
    input.check()?;
    let judged = Model::of(input).judge().map_err(|none| none.at("gap_m"))?;
    let unit = input.u_own.as_m();
    let chance = |p: f64| p.clamp(0.0, 1.0);
    let seated: Vec<f64> = judged.seated.iter().copied().map(chance).collect();
    let points_to = points_to(&seated, chance(judged.alike));
    Ok(SeatDeck {
        findings: findings(&points_to, seated.len()),
        seated,
        all: chance(judged.all),
        alike: chance(judged.alike),
        bias: Length::from_m(judged.bias * unit),
        bias_sd: Length::from_m(judged.bias_sd * unit),
        points_to,
    })
}

fn points_to(seated: &[f64], alike: f64) -> PointsTo {
    if seated.iter().all(|p| *p >= HOME) {
        return PointsTo::Home;
    }
    let out: Vec<usize> = (0..seated.len()).filter(|i| seated[*i] < OUT).collect();
    if !out.is_empty() && (out.len() < seated.len() || seated.len() == 1) {
        PointsTo::StandsOut(out)
    } else if seated.len() > 1 && (alike >= ALIKE || !out.is_empty()) {
        PointsTo::AllAlike
    } else {
        PointsTo::Undecided
    }
}

fn findings(points_to: &PointsTo, sleeves: usize) -> Vec<Finding> {
    let mut findings = Vec::new();
    match points_to {
        PointsTo::Home | PointsTo::Undecided => {}
        PointsTo::StandsOut(out) => {
            let names: Vec<String> = out.iter().map(|i| (i + 1).to_string()).collect();
            findings.push(Finding::look(
                "stands_out",
                format!(
                    "sleeve {} stands out: pull it again, then lift it and look for a chip or a \
                     burr under its flange",
                    names.join(", ")
                ),
            ));
        }
        PointsTo::AllAlike => findings.push(Finding::look(
            "all_alike",
            "all sleeves read high alike: zero the depth gauge on a flat and look at one fillet, \
             whether the flange rides on it",
        )),
    }
    if sleeves == 1 {
        findings.push(Finding::note(
            "one_reading",
            "one sleeve alone proves little: what the gauge reads wrong cannot be told from a gap. \
             Measure it again with another gauge, or zeroed anew",
        ));
    }
    findings
}

impl SeatDeckInput<'_> {
    fn check(&self) -> Result<(), Fault> {
        check_some("gap_m", self.gap.len(), MOST_SLEEVES)?;
        check_each(
            &bounds::DECK_GAP,
            "gap_m",
            self.gap.iter().map(|l| l.as_m()),
        )?;
        bounds::DECK_GAUGE.check("u_own_m", self.u_own.as_m())?;
        bounds::DECK_GAUGE.check("u_common_m", self.u_common.as_m())?;
        bounds::SMALL.check("gap_limit_m", self.gap_limit.as_m())?;
        bounds::PRIOR_HOME.check("prior_home", self.prior_home)?;
        bounds::GAP_SCALE.check("gap_scale_m", self.gap_scale.as_m())?;
        bounds::PRIOR_ALIKE.check("prior_alike", self.prior_alike)?;
        Ok(())
    }
}

/// The model, lengths in units of `u_own`.
struct Model {
    gap: Vec<f64>,
    common: f64,
    limit: f64,
    scale: f64,
    ln_home: f64,
    ln_chip: f64,
    ln_alone: f64,
    ln_alike: f64,
}

struct Judged {
    seated: Vec<f64>,
    all: f64,
    alike: f64,
    bias: f64,
    bias_sd: f64,
}

/// ln sqrt(2 pi).
const LN_ROOT: f64 = 0.918_938_533_204_672_8;
/// A weight that lies so many logarithms below the greatest is nothing.
const NOTHING: f64 = 45.0;
/// What the rules may differ by, as a share of the whole.
const SHARE: f64 = 1e-7;

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
    fn of(input: &SeatDeckInput) -> Self {
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

    fn judge(&self) -> Result<Judged, NoRoot> {
        let n = self.gap.len();
        let (marks, top, at) = self.weighed();
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
        let mut outer = |x: f64, out: &mut [f64]| {
            out.fill(0.0);
            let seen: Vec<f64> = self.gap.iter().map(|g| self.ln_seen(g - x)).collect();
            let ln_weight = self.ln_priors(x)[1] + seen.iter().sum::<f64>() - top;
            out[0] = ln_weight.exp();
            if ln_weight < -NOTHING {
                return;
            }
            // The shared error's density given the shift, its peak at or below it.
            let z = (x - middle) / self.common;
            let ln_cut = -ln_mills(z) - LN_ROOT - self.common.ln();
            let mut inner = |b: f64, v: &mut [f64]| {
                let ln = (x - b) * (x + b - 2.0 * middle) / (2.0 * self.common * self.common);
                let density = (ln_cut + ln).exp();
                v[0] = density;
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

//! The seat: whether the flange truly sits on its ledge, from thickness,
//! counterbore depth, height and pulls, clock by clock.
//!
//! Stopped moving is not seated: a sleeve that grips while it is still cold
//! can stop high, and a chip under the flange stops it too. Seated is stopped
//! *and* a small gap *and* no tilt, at the confidence asked for.
//!
//! The uncertainty of the gap is common to the clocks (the same three gauges
//! measured them all), so the mean over the clocks is no better than one.

use super::form::mean;
use super::{check_count, check_each, check_some};
use crate::numerics::normal;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;
use crate::quantity::{Length, Pressure};

/// One pull with the ram.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pull {
    /// Greatest reading of the pressure gauge.
    pub gauge: Pressure,
    /// Height while the ram held; `None` where it could not be read.
    pub loaded: Option<Length>,
    /// Height after the release.
    pub relaxed: Length,
}

/// Readings of one hole and the limits it is judged by.
#[derive(Clone, Copy, Debug)]
pub struct SeatInput<'a> {
    /// Flange thickness at each clock.
    pub thickness: &'a [Length],
    /// Counterbore depth at each clock.
    pub depth: &'a [Length],
    /// Height above the deck at each clock, positive proud.
    pub height: &'a [Length],
    /// Shim under the flange.
    pub shim: Length,
    /// Pulls, in order.
    pub pulls: &'a [Pull],
    /// Standard uncertainty of a height.
    pub u_height: Length,
    /// Standard uncertainty of a flange thickness.
    pub u_thickness: Length,
    /// Standard uncertainty of a counterbore depth.
    pub u_depth: Length,
    /// Greatest mean gap of a seated flange.
    pub gap_limit: Length,
    /// Greatest difference of the gaps round the clock.
    pub tilt_limit: Length,
    /// Chance that is asked for, above 0.5.
    pub confidence: f64,
}

/// What is said of the seat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SeatVerdict {
    /// It sits.
    Seated,
    /// It has not stopped moving: pull again.
    PullAgain,
    /// It has stopped moving and does not sit.
    NotSeated,
    /// The readings cannot tell.
    Undecided,
}

impl SeatVerdict {
    /// Its name in the evaluator.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Seated => "seated",
            Self::PullAgain => "pull_again",
            Self::NotSeated => "not_seated",
            Self::Undecided => "undecided",
        }
    }
}

/// The state of a seat.
#[derive(Clone, Debug, PartialEq)]
pub struct Seat {
    /// Height that a seated flange would have, clock by clock.
    pub predicted: Vec<Length>,
    /// Height less predicted, clock by clock.
    pub gap: Vec<Length>,
    /// Mean gap.
    pub gap_mean: Length,
    /// Standard uncertainty of a gap, and of the mean gap.
    pub u_gap: Length,
    /// Largest less smallest gap.
    pub tilt: Length,
    /// Drop from pull to pull, positive down; one fewer than the pulls.
    pub settle: Vec<Length>,
    /// Elastic return of each pull, `None` without a loaded reading.
    pub returned: Vec<Option<Length>>,
    /// A drop that is no larger counts as none: 2 sqrt(2) standard
    /// uncertainties of the height.
    pub still: Length,
    /// Whether it has stopped moving.
    pub stopped: bool,
    /// Chance that the true mean gap is within the limit.
    pub p_seated: f64,
    /// Chance asked for.
    pub confidence: f64,
    /// The most these gauges can show: the chance of a flange read at no gap.
    pub best: f64,
    /// The most they could with a depth gauge half as unsure.
    pub best_with_half_depth: f64,
    /// What is said of it.
    pub verdict: SeatVerdict,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Most clocks.
pub const MOST_CLOCKS: usize = 64;
/// Most pulls.
pub const MOST_PULLS: usize = 100_000;

/// The best chance of being seated that these gauges can show at this gap
/// limit: that of a flange found at exactly zero gap.
///
/// # Example
/// With 0.0007 in a gap limit of 0.001 in cannot be shown to 95 %:
/// ```
/// use coldseat_core::{metrology::seat::best_chance, quantity::Length};
/// let p = best_chance(Length::from_thou(1.0), Length::from_thou(0.7));
/// assert!((0.90..0.95).contains(&p));
/// ```
#[must_use]
pub fn best_chance(gap_limit: Length, u_gap: Length) -> f64 {
    chance(0.0, gap_limit.as_m(), u_gap.as_m())
}

fn chance(gap: f64, limit: f64, u: f64) -> f64 {
    if u > 0.0 {
        normal::cumulative((limit - gap) / u)
    } else if ties::at_most(gap, limit) {
        1.0
    } else {
        0.0
    }
}

/// Judges the seat of one hole.
///
/// predicted = thickness + shim - depth; gap = height - predicted;
/// `u_gap` = root of the sum of squares of the three uncertainties. Stopped: at
/// least three pulls with pressure, the last two settlements within 2 sqrt(2) u
/// of a height, the last two returns within 4 u of each other, the last two
/// pulls at 95 % of the greatest pressure or more. A height that is not the one
/// after the last pull (`height_moved`) and a loaded reading above the released
/// one (`odd_return`) leave it undecided where it would be seated.
///
/// # Errors
/// Lists of different length, readings or limits outside their ranges.
///
/// # Example
/// A flange that stopped moving 0.004 in above its predicted height:
/// ```
/// use coldseat_core::metrology::seat::{Pull, SeatInput, SeatVerdict, seat};
/// use coldseat_core::quantity::{Length, Pressure};
/// let thou = Length::from_thou;
/// let pull = |relaxed| Pull {
///     gauge: Pressure::from_psi(2500.0),
///     loaded: Some(thou(relaxed - 1.0)),
///     relaxed: thou(relaxed),
/// };
/// let answer = seat(&SeatInput {
///     thickness: &[thou(310.0); 4],
///     depth: &[thou(304.0); 4],
///     height: &[thou(10.0); 4],
///     shim: thou(0.0),
///     pulls: &[pull(12.0), pull(10.1), pull(10.0), pull(10.0)],
///     u_height: thou(0.3),
///     u_thickness: thou(0.2),
///     u_depth: thou(0.6),
///     gap_limit: thou(1.0),
///     tilt_limit: thou(1.0),
///     confidence: 0.8,
/// })?;
/// assert!(answer.stopped);
/// assert_eq!(answer.verdict, SeatVerdict::NotSeated);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn seat(input: &SeatInput) -> Result<Seat, Fault> {
    input.check()?;
    let predicted: Vec<f64> = input
        .thickness
        .iter()
        .zip(input.depth)
        .map(|(t, d)| t.as_m() + input.shim.as_m() - d.as_m())
        .collect();
    let gap: Vec<f64> = input
        .height
        .iter()
        .zip(&predicted)
        .map(|(h, p)| h.as_m() - p)
        .collect();
    let gap_mean = mean(gap.iter().copied(), gap.len());
    let (lo, hi) = gap
        .iter()
        .fold((f64::MAX, f64::MIN), |(a, b), &g| (a.min(g), b.max(g)));
    let tilt = hi - lo;
    let u_height = input.u_height.as_m();
    let u_gap = u_height
        .hypot(input.u_thickness.as_m())
        .hypot(input.u_depth.as_m());
    let limit = input.gap_limit.as_m();
    let half_depth = Length::from_m(
        u_height
            .hypot(input.u_thickness.as_m())
            .hypot(0.5 * input.u_depth.as_m()),
    );
    let p_seated = chance(gap_mean, limit, u_gap);
    let mut findings = Vec::new();
    let moving = Movement::of(input.pulls, u_height);
    if moving.unequal {
        findings.push(Finding::look(
            Code::UnequalPulls,
            "the last two pulls were weaker than 95 % of the strongest: they cannot show that it \
             has stopped. Pull twice more at one pressure",
        ));
    }
    let below = !ties::at_least(lo.min(gap_mean), -2.0 * u_gap);
    let tilted = !ties::at_most(tilt, input.tilt_limit.as_m());
    let height = mean(input.height.iter().map(|h| h.as_m()), input.height.len());
    let moved = input
        .pulls
        .last()
        .is_some_and(|last| !ties::at_most((height - last.relaxed.as_m()).abs(), noise(u_height)));
    let verdict = if below {
        findings.push(Finding::stop(
            Code::BelowLedge,
            "the flange reads lower than its ledge allows: a reading is wrong. Measure \
             thickness, depth and height again before going on",
        ));
        SeatVerdict::Undecided
    } else if !moving.stopped {
        SeatVerdict::PullAgain
    } else if p_seated <= 0.05 || tilted {
        SeatVerdict::NotSeated
    } else if ties::at_most(gap_mean, limit)
        && p_seated >= input.confidence
        && !moved
        && !moving.odd
    {
        SeatVerdict::Seated
    } else {
        SeatVerdict::Undecided
    };
    if moved {
        findings.push(Finding::look(
            Code::HeightMoved,
            "the height at the clocks is not the height after the last pull: measure again, \
             zero on the deck",
        ));
    }
    if moving.odd {
        findings.push(Finding::look(
            Code::OddReturn,
            "a height under load reads above the height after the release: no ram lifts a sleeve. \
             Read that pull again, the gauge zeroed on the deck",
        ));
    }
    let lengths = |v: &[f64]| v.iter().map(|&m| Length::from_m(m)).collect();
    Ok(Seat {
        predicted: lengths(&predicted),
        gap: lengths(&gap),
        gap_mean: Length::from_m(gap_mean),
        u_gap: Length::from_m(u_gap),
        tilt: Length::from_m(tilt),
        settle: lengths(&moving.settle),
        returned: moving.returned,
        best: best_chance(input.gap_limit, Length::from_m(u_gap)),
        best_with_half_depth: best_chance(input.gap_limit, half_depth),
        still: Length::from_m(noise(input.u_height.as_m())),
        stopped: moving.stopped,
        p_seated,
        confidence: input.confidence,
        verdict,
        findings,
    })
}

impl Seat {
    /// What is said of it once its deck is judged as one
    /// ([`super::seat_deck`]): the rules of [`seat`] stand, the chance of its own
    /// gauges alone gives way to `p`, its chance among the sleeves of its deck, and
    /// its gap is taken less `bias`, the error that they share.
    #[must_use]
    pub fn verdict_together(
        &self,
        p: f64,
        bias: Length,
        gap_limit: Length,
        tilt_limit: Length,
    ) -> SeatVerdict {
        let found = |code| self.findings.iter().any(|f: &Finding| f.code == code);
        let tilted = !ties::at_most(self.tilt.as_m(), tilt_limit.as_m());
        if found(Code::BelowLedge) {
            SeatVerdict::Undecided
        } else if !self.stopped {
            SeatVerdict::PullAgain
        } else if p <= 0.05 || tilted {
            SeatVerdict::NotSeated
        } else if ties::at_most(self.gap_mean.as_m() - bias.as_m(), gap_limit.as_m())
            && p >= self.confidence
            && !found(Code::HeightMoved)
            && !found(Code::OddReturn)
        {
            SeatVerdict::Seated
        } else {
            SeatVerdict::Undecided
        }
    }
}

/// What two readings of one height may differ by: 2 sqrt(2) u.
fn noise(u_height: f64) -> f64 {
    2.0 * core::f64::consts::SQRT_2 * u_height
}

/// What the pulls say.
struct Movement {
    settle: Vec<f64>,
    returned: Vec<Option<Length>>,
    stopped: bool,
    unequal: bool,
    /// A loaded reading above the released one.
    odd: bool,
}

/// Drop from pull to pull, positive down.
fn settlements<'a>(pulls: impl Iterator<Item = &'a Pull> + Clone) -> Vec<f64> {
    let next = pulls.clone().skip(1);
    pulls
        .zip(next)
        .map(|(a, b)| a.relaxed.as_m() - b.relaxed.as_m())
        .collect()
}

impl Movement {
    fn of(pulls: &[Pull], u_height: f64) -> Self {
        let back = |p: &Pull| p.loaded.map(|l| p.relaxed.as_m() - l.as_m());
        let returned: Vec<Option<f64>> = pulls.iter().map(back).collect();
        // Without pressure it is no pull, whatever was read beside it.
        let real: Vec<&Pull> = pulls.iter().filter(|p| p.gauge.as_pa() > 0.0).collect();
        let greatest = real.iter().map(|p| p.gauge.as_pa()).fold(0.0, f64::max);
        let last = &real[real.len().saturating_sub(2)..];
        let unequal = last
            .iter()
            .any(|p| p.gauge.as_pa() < 0.95 * greatest - 1e-9);
        let still = settlements(real.iter().copied())
            .iter()
            .rev()
            .take(2)
            .all(|s| ties::at_most(s.abs(), noise(u_height)));
        let steady = match last.iter().map(|p| back(p)).collect::<Vec<_>>()[..] {
            [Some(a), Some(b)] => ties::at_most((a - b).abs(), 4.0 * u_height),
            _ => true,
        };
        let odd = |r: &f64| !ties::at_least(*r, -4.0 * u_height);
        Self {
            settle: settlements(pulls.iter()),
            odd: returned.iter().flatten().any(odd),
            returned: returned
                .into_iter()
                .map(|r| r.map(Length::from_m))
                .collect(),
            stopped: real.len() >= 3 && still && steady && !unequal,
            unequal,
        }
    }
}

impl SeatInput<'_> {
    fn check(&self) -> Result<(), Fault> {
        let clocks = self.thickness.len();
        check_some("thickness_m", clocks, MOST_CLOCKS)?;
        check_count("depth_m", self.depth.len(), clocks)?;
        check_count("height_m", self.height.len(), clocks)?;
        let each =
            |bound, field, list: &[Length]| check_each(bound, field, list.iter().map(|l| l.as_m()));
        each(&bounds::THICKNESS, "thickness_m", self.thickness)?;
        each(&bounds::DEPTH, "depth_m", self.depth)?;
        each(&bounds::HEIGHT, "height_m", self.height)?;
        bounds::REMOVAL.check("shim_m", self.shim.as_m())?;
        if self.pulls.len() > MOST_PULLS {
            check_some("pulls", self.pulls.len(), MOST_PULLS)?;
        }
        for (i, pull) in self.pulls.iter().enumerate() {
            let name = |field: &str| format!("pulls[{i}].{field}");
            bounds::GAUGE.check(&name("gauge_pa"), pull.gauge.as_pa())?;
            if let Some(loaded) = pull.loaded {
                bounds::HEIGHT.check(&name("loaded_m"), loaded.as_m())?;
            }
            bounds::HEIGHT.check(&name("relaxed_m"), pull.relaxed.as_m())?;
        }
        bounds::SMALL.check("u_height_m", self.u_height.as_m())?;
        bounds::SMALL.check("u_thickness_m", self.u_thickness.as_m())?;
        bounds::SMALL.check("u_depth_m", self.u_depth.as_m())?;
        bounds::SMALL.check("gap_limit_m", self.gap_limit.as_m())?;
        bounds::SMALL.check("tilt_limit_m", self.tilt_limit.as_m())?;
        bounds::CONFIDENCE.check("confidence", self.confidence)?;
        Ok(())
    }
}

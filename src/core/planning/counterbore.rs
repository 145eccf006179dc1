//! Counterbore: how deep, how much still to go, and how proud the flange must
//! stand so that the deck cut cleans it up.
//!
//! Too shallow is recoverable, too deep is not. Practice aims at 0.005 to
//! 0.010 in proud, usually 0.010 (common practice, no source).

use crate::metrology::{check_count, check_each, check_some, seat::MOST_CLOCKS};
use crate::numerics::normal;
use crate::quantity::Length;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;

/// Readings and intentions of one hole.
#[derive(Clone, Copy, Debug)]
pub struct CounterboreInput<'a> {
    /// Flange thickness at each clock.
    pub thickness: &'a [Length],
    /// How proud the flange is to stand.
    pub target_proud: Length,
    /// Depth now, at each clock.
    pub depth_now: &'a [Length],
    /// Height of the deck beside the hole, 0 or below.
    pub deck: Length,
    /// Standard deviation of the hand feed.
    pub feed_sd: Length,
    /// Standard uncertainty of the depth gauge.
    pub gauge_sd: Length,
    /// What the deck is to lose.
    pub removal: Length,
    /// Least cut that cleans a flange up.
    pub clean_up: Length,
    /// Chance accepted of a flange that is not cleaned up.
    pub risk: f64,
}

/// The depth wanted and what it risks.
#[derive(Clone, Debug, PartialEq)]
pub struct Counterbore {
    /// Depth wanted: least thickness less stand-proud.
    pub depth: Length,
    /// Still to go at the deepest clock; negative is too deep.
    pub to_go: Length,
    /// Chance that the deck cut leaves the flange less than the clean-up.
    pub p_low: f64,
    /// Smallest stand-proud that keeps that chance at the risk accepted.
    pub target_for_risk: Length,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Plans the depth of a counterbore.
///
/// sd = root of feed and gauge squared; p low = Phi((clean-up - removal -
/// deck - target) / sd).
///
/// # Errors
/// Lists of different length, readings or limits outside their ranges.
///
/// # Example
/// A target one standard deviation above what the cut needs is low in
/// 15.866 % of the cases (normal table):
/// ```
/// use coldseat_core::planning::counterbore::{CounterboreInput, counterbore};
/// use coldseat_core::quantity::Length;
/// let thou = Length::from_thou;
/// let plan = counterbore(&CounterboreInput {
///     thickness: &[thou(310.0), thou(310.2), thou(310.1), thou(310.0)],
///     target_proud: thou(6.0),
///     depth_now: &[thou(299.7); 4],
///     deck: thou(0.0),
///     feed_sd: thou(0.8),
///     gauge_sd: thou(0.6),
///     removal: thou(0.0),
///     clean_up: thou(5.0),
///     risk: 0.02,
/// })?;
/// assert!((plan.to_go.as_thou() - 4.3).abs() < 1e-9);
/// assert!((plan.p_low - 0.158655).abs() < 1e-6);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn counterbore(input: &CounterboreInput) -> Result<Counterbore, Fault> {
    input.check()?;
    let least = input
        .thickness
        .iter()
        .map(|l| l.as_m())
        .fold(f64::MAX, f64::min);
    let deepest = input
        .depth_now
        .iter()
        .map(|l| l.as_m())
        .fold(f64::MIN, f64::max);
    let target = input.target_proud.as_m();
    let depth = least - target;
    let to_go = depth - deepest;
    let sd = input.feed_sd.as_m().hypot(input.gauge_sd.as_m());
    let needed = input.clean_up.as_m() - input.removal.as_m() - input.deck.as_m();
    let p_low = if sd > 0.0 {
        normal::cumulative((needed - target) / sd)
    } else if ties::at_least(target, needed) {
        0.0
    } else {
        1.0
    };
    let mut findings = Vec::new();
    if !ties::at_least(to_go, 0.0) {
        findings.push(Finding::stop(
            Code::TooDeep,
            "the counterbore is deeper than planned: do not cut. Shim the flange, choose a \
             thicker one, or plan a lower stand-proud with a deeper deck cut",
        ));
    }
    findings.extend(uneven_ledge(input.depth_now));
    Ok(Counterbore {
        depth: Length::from_m(depth),
        to_go: Length::from_m(to_go),
        p_low,
        target_for_risk: Length::from_m(needed - sd * normal::quantile(input.risk)),
        findings,
    })
}

/// What is found of a ledge whose depth varies round the clock by more than
/// [`LEDGE_FLAT_M`]; nothing of one reading or none.
#[must_use]
pub fn uneven_ledge(depth: &[Length]) -> Option<Finding> {
    let (lo, hi) = depth.iter().fold((f64::MAX, f64::MIN), |(a, b), l| {
        (a.min(l.as_m()), b.max(l.as_m()))
    });
    (!ties::at_most(hi - lo, LEDGE_FLAT_M)).then(|| {
        Finding::look(
            Code::LedgeNotFlat,
            "the depth varies by more than 0.025 mm (0.001 in) round the clock: clean the ledge, \
             measure again, and true it before the flange sits on it",
        )
    })
}

/// How far a flange stands above what the cut needs on the mean, and its own
/// scatter (standard deviation).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spare {
    /// Positive: to spare; negative: low.
    pub mean: Length,
    /// Scatter of this flange alone.
    pub own_sd: Length,
}

/// Chance that at least one of the flanges is cut by less than the clean-up,
/// where the error of the deck cut is common to all of them: `deck_sd`, its
/// standard deviation.
///
/// Integrates over the common error by Simpson's rule.
///
/// # Example
/// Six flanges 0.0010 in to spare, each scattering by 0.0003 twice, the deck
/// by 0.0003: 0.12775 by conditioning; taken as independent it would be
/// 0.15221.
/// ```
/// use coldseat_core::planning::counterbore::{Spare, any_low};
/// use coldseat_core::quantity::Length;
/// let inch = Length::from_inch;
/// let one = Spare { mean: inch(0.0010), own_sd: inch(0.0003 * 2.0_f64.sqrt()) };
/// let p = any_low(&[one; 6], inch(0.0003));
/// assert!((p - 0.12775).abs() < 1e-5);
/// ```
#[must_use]
pub fn any_low(flanges: &[Spare], deck_sd: Length) -> f64 {
    let deck = deck_sd.as_m();
    let sharp = |flange: &&Spare| flange.own_sd.as_m() <= 0.02 * deck;
    // Of flanges without a scatter worth speaking of the lowest decides.
    let lowest = flanges
        .iter()
        .filter(sharp)
        .map(|f| f.mean.as_m())
        .fold(f64::INFINITY, f64::min);
    let slopes: Vec<(f64, f64)> = flanges
        .iter()
        .filter(|f| !sharp(f))
        .map(|f| (f.mean.as_m(), f.own_sd.as_m()))
        .collect();
    let some_low = |shift: f64| -> f64 {
        let high = |(mean, own): &(f64, f64)| normal::cumulative((mean + shift) / own);
        1.0 - slopes.iter().map(high).product::<f64>()
    };
    if deck <= 0.0 {
        return if ties::at_least(lowest, 0.0) {
            some_low(0.0)
        } else {
            1.0
        };
    }
    // Below this error, in standard deviations, that flange is low for certain.
    let edge = (-lowest / deck).clamp(-FAR, FAR);
    // No coarser than half the narrowest slope.
    let finest = slopes
        .iter()
        .map(|(_, own)| 0.5 * own / deck)
        .fold(0.0625, f64::min);
    let steps = 2 * (0.5 * (FAR - edge) / finest).ceil() as i32;
    if steps == 0 {
        return 1.0;
    }
    let step = (FAR - edge) / f64::from(steps);
    let at = |i: i32| {
        let z = edge + f64::from(i) * step;
        let weight = match i {
            0 => 1.0,
            _ if i == steps => 1.0,
            _ if i % 2 == 1 => 4.0,
            _ => 2.0,
        };
        weight * (-0.5 * z * z).exp() * some_low(z * deck)
    };
    let sum: f64 = (0..=steps).map(at).sum();
    let above = sum * step / 3.0 / (2.0 * core::f64::consts::PI).sqrt();
    (normal::cumulative(edge) + above).clamp(0.0, 1.0)
}

/// Beyond so many standard deviations there is nothing.
const FAR: f64 = 8.0;

/// Variation of a ledge from which a look is wanted: 0.001 in (US Army
/// technical manuals listed in the job's sources), with room for rounding.
const LEDGE_FLAT_M: f64 = 25.5e-6;

impl CounterboreInput<'_> {
    fn check(&self) -> Result<(), Fault> {
        let clocks = self.thickness.len();
        check_some("thickness_m", clocks, MOST_CLOCKS)?;
        check_count("depth_now_m", self.depth_now.len(), clocks)?;
        check_each(
            &bounds::THICKNESS,
            "thickness_m",
            self.thickness.iter().map(|l| l.as_m()),
        )?;
        bounds::HEIGHT.check("target_proud_m", self.target_proud.as_m())?;
        check_each(
            &bounds::DEPTH,
            "depth_now_m",
            self.depth_now.iter().map(|l| l.as_m()),
        )?;
        bounds::LOW_SPOT.check("deck_m", self.deck.as_m())?;
        bounds::SMALL.check("feed_sd_m", self.feed_sd.as_m())?;
        bounds::SMALL.check("gauge_sd_m", self.gauge_sd.as_m())?;
        bounds::REMOVAL.check("removal_m", self.removal.as_m())?;
        bounds::SMALL.check("clean_up_m", self.clean_up.as_m())?;
        bounds::RISK.check("risk", self.risk)?;
        Ok(())
    }
}

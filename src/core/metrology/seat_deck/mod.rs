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

mod model;

use super::{check_each, check_some};
use crate::quantity::Length;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use model::Model;

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
                Code::StandsOut,
                format!(
                    "sleeve {} stands out: pull it again, then lift it and look for a chip or a \
                     burr under its flange",
                    names.join(", ")
                ),
            ));
        }
        PointsTo::AllAlike => findings.push(Finding::look(
            Code::AllAlike,
            "all sleeves read high alike: zero the depth gauge on a flat and look at one fillet, \
             whether the flange rides on it",
        )),
    }
    if sleeves == 1 {
        findings.push(Finding::note(
            Code::OneReading,
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

//! Decking: how much must come off so that the deck and every flange come out
//! of one cut, and what each flange loses.

use crate::metrology::{check_each, check_some, form::MOST};
use crate::quantity::Length;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;

/// One hole on the deck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeckHole {
    /// Height of the deck beside the hole, highest point of the deck 0: 0 or
    /// below.
    pub deck: Length,
    /// Height of the flange above the deck beside it, positive proud.
    pub height: Length,
    /// Flange thickness.
    pub thickness: Length,
}

/// The deck as surveyed and what is planned.
#[derive(Clone, Copy, Debug)]
pub struct DeckInput<'a> {
    /// Surveyed points, highest 0.
    pub low: &'a [Length],
    /// The holes.
    pub holes: &'a [DeckHole],
    /// Least cut that cleans up.
    pub clean_up: Length,
    /// Planned removal from the highest point; `None`: the least.
    pub planned: Option<Length>,
}

/// A deck cut.
#[derive(Clone, Debug, PartialEq)]
pub struct DeckPlan {
    /// Least removal that cleans up deck and flanges.
    pub removal_least: Length,
    /// Removal of this plan.
    pub removal: Length,
    /// What each flange loses; negative: the cutter misses it.
    pub flange_cut: Vec<Length>,
    /// What is left of each flange.
    pub flange_left: Vec<Length>,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Plans a deck cut.
///
/// least = clean-up + the larger of the deepest low spot and, over the holes,
/// how low a flange lies. Nothing left of a flange is a `stop`, `no_flange`.
///
/// # Errors
/// No surveyed points, readings outside their ranges.
///
/// # Example
/// Worked by hand: a deck 0.003 in low at one spot, 0.002 in to clean up.
/// ```
/// use coldseat_core::planning::deck::{DeckHole, DeckInput, deck};
/// use coldseat_core::quantity::Length;
/// let thou = Length::from_thou;
/// let plan = deck(&DeckInput {
///     low: &[thou(0.0), thou(-3.0)],
///     holes: &[DeckHole { deck: thou(-1.0), height: thou(6.0), thickness: thou(310.0) }],
///     clean_up: thou(2.0),
///     planned: None,
/// })?;
/// assert!((plan.removal_least.as_thou() - 5.0).abs() < 1e-9);
/// assert!((plan.flange_cut[0].as_thou() - 10.0).abs() < 1e-9);
/// assert!((plan.flange_left[0].as_thou() - 300.0).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn deck(input: &DeckInput) -> Result<DeckPlan, Fault> {
    input.check()?;
    let spot = input.low.iter().map(|l| -l.as_m()).fold(f64::MIN, f64::max);
    let flange = input
        .holes
        .iter()
        .map(|h| -(h.deck.as_m() + h.height.as_m()))
        .fold(f64::MIN, f64::max);
    let least = input.clean_up.as_m() + spot.max(flange);
    let removal = input.planned.map_or(least, Length::as_m);
    let mut findings = Vec::new();
    if !ties::at_least(removal, least) {
        findings.push(Finding::stop(
            Code::TooLittle,
            "the planned cut leaves a low spot or a flange uncut: plan at least the least \
             removal, or find out why it lies low",
        ));
    }
    let cut = |h: &DeckHole| h.deck.as_m() + h.height.as_m() + removal;
    let left = |h: &DeckHole| h.thickness.as_m() - cut(h).max(0.0);
    if let Some(hole) = input.holes.iter().position(|h| ties::nothing_left(left(h))) {
        findings.push(Finding::stop(
            Code::NoFlange,
            format!(
                "nothing is left of the flange in hole {} after this cut: do not cut. Set the \
                 sleeve deeper, cut less, or choose a thicker flange",
                hole + 1
            ),
        ));
    }
    Ok(DeckPlan {
        removal_least: Length::from_m(least),
        removal: Length::from_m(removal),
        flange_cut: input.holes.iter().map(|h| Length::from_m(cut(h))).collect(),
        flange_left: input
            .holes
            .iter()
            .map(|h| Length::from_m(left(h)))
            .collect(),
        findings,
    })
}

impl DeckInput<'_> {
    fn check(&self) -> Result<(), Fault> {
        check_some("low_m", self.low.len(), MOST)?;
        check_each(
            &bounds::LOW_SPOT,
            "low_m",
            self.low.iter().map(|l| l.as_m()),
        )?;
        if self.holes.len() > MOST {
            check_some("holes", self.holes.len(), MOST)?;
        }
        for (i, hole) in self.holes.iter().enumerate() {
            let name = |field: &str| format!("holes[{i}].{field}");
            bounds::LOW_SPOT.check(&name("deck_m"), hole.deck.as_m())?;
            bounds::HEIGHT.check(&name("height_m"), hole.height.as_m())?;
            bounds::THICKNESS.check(&name("thickness_m"), hole.thickness.as_m())?;
        }
        bounds::SMALL.check("clean_up_m", self.clean_up.as_m())?;
        if let Some(planned) = self.planned {
            bounds::REMOVAL.check("planned_m", planned.as_m())?;
        }
        Ok(())
    }
}

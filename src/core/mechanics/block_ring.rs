//! The ring that stands for a block round one bore, and where a block is no
//! ring: bores in a row close in oval, and fitting one moves its neighbours.
//!
//! Rules fitted to plane-stress finite elements of a row of bores (project
//! reference mechanics.md D; own results, not published), valid for pitch /
//! bore 1.15 to 1.45 and half-width / radius 1.2 to 2.5. Pressure within
//! 2.5 % where all bores are fitted, 3.3 % where one is.

use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Diameter, Length};

/// What surrounds the bore.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Surround {
    /// A row of bores in solid iron.
    Row {
        /// Distance of the centres.
        pitch: Length,
        /// From the row's centre line to the side of the block.
        half_width: Length,
        /// Which bores carry a sleeve.
        fitted: Fitted,
    },
    /// A parent wall with water round it.
    Jacket {
        /// Thickness of the parent wall.
        wall: Length,
    },
}

/// Which bores of a row carry a sleeve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fitted {
    /// All of them; the row is free to lengthen.
    All,
    /// This one; the neighbours are bare, or the row is held.
    One,
}

/// Flange and wall of the sleeve, for the weakening toward the deck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlangeEnd {
    /// Thickness of the flange.
    pub thickness: Length,
    /// How far it stands out beyond the sleeve, on radius.
    pub width: Length,
    /// Wall of the sleeve.
    pub wall: Length,
}

/// A block as a ring.
#[derive(Clone, Debug, PartialEq)]
pub struct BlockRing {
    /// Outside diameter of the equivalent ring.
    pub outer: Diameter,
    /// Difference of the bore's growth along and across the row over its mean
    /// growth: across grows more. 0 in a jacket.
    pub oval_growth: f64,
    /// Mean growth of a neighbouring bore over this bore's own growth.
    pub neighbour_growth: f64,
    /// Ovality of a neighbouring bore over this bore's own growth.
    pub neighbour_oval: f64,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// The equivalent ring round a bore.
///
/// # Errors
/// Lengths outside their ranges; a pitch not above the bore, a half-width not
/// above its radius.
///
/// # Example
/// Finite elements give c/b = 1.508 for s = 1.275, W = 1.6, all fitted; the
/// rule is within 2.7 %.
/// ```
/// use coldseat_core::mechanics::block_ring::{Fitted, Surround, block_ring};
/// use coldseat_core::quantity::{Diameter, Length};
/// let ring = block_ring(
///     Diameter::from_inch(4.0),
///     Surround::Row {
///         pitch: Length::from_inch(5.1),
///         half_width: Length::from_inch(3.2),
///         fitted: Fitted::All,
///     },
/// )?;
/// assert!((ring.outer.as_inch() / 4.0 / 1.508 - 1.0).abs() < 0.027);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn block_ring(bore: Diameter, surround: Surround) -> Result<BlockRing, Fault> {
    let d = bounds::DIAMETER.check("bore_d_m", bore.as_m())?;
    match surround {
        Surround::Jacket { wall } => {
            let wall = bounds::THICKNESS.check("wall_m", wall.as_m())?;
            Ok(BlockRing {
                outer: Diameter::from_m(d + 2.0 * wall),
                oval_growth: 0.0,
                neighbour_growth: 0.0,
                neighbour_oval: 0.0,
                findings: vec![Finding::note(
                    Code::TighterBelowTheDeck,
                    "in a jacketed block the sleeve closes 11 to 20 % more half an inch below \
                     the ledge than at mid length, where the deck plate is stiffer",
                )],
            })
        }
        Surround::Row {
            pitch,
            half_width,
            fitted,
        } => {
            let pitch = bounds::LENGTH.check("pitch_m", pitch.as_m())?;
            let half = bounds::LENGTH.check("half_width_m", half_width.as_m())?;
            let (s, w) = (pitch / d, half / (0.5 * d));
            let beside = |field: &str, value: f64, least: f64| {
                Err(Fault::new(
                    field,
                    format!(
                        "{value} m leaves no metal beside the bore: more than {least} m is needed"
                    ),
                ))
            };
            if s <= 1.0 {
                return beside("pitch_m", pitch, d);
            }
            if w <= 1.0 {
                return beside("half_width_m", half, 0.5 * d);
            }
            let (factor, share) = match fitted {
                Fitted::All => (1.21, 0.375),
                Fitted::One => (1.63, 0.40),
            };
            let c = 1.0 + factor / (share / (s - 1.0) + (1.0 - share) / (w - 1.0));
            let mut findings = vec![Finding::note(
                Code::NeighboursMove,
                "fitting one sleeve makes the neighbouring bores oval: measure all bores before \
                 the first sleeve goes in, and the neighbours again after",
            )];
            if !((1.15..=1.45).contains(&s) && (1.2..=2.5).contains(&w)) {
                findings.push(Finding::look(
                    Code::OutsideTheRule,
                    "pitch or half-width lies outside what the rule was fitted to (pitch 1.15 to \
                     1.45 bores, half-width 1.2 to 2.5 radii): take its numbers as a guess",
                ));
            }
            Ok(BlockRing {
                outer: Diameter::from_m(d * c),
                oval_growth: oval_growth(s, w),
                neighbour_growth: 0.075,
                neighbour_oval: (0.65 - 2.2 * (s - 1.2)).clamp(0.0, 1.0),
                findings,
            })
        }
    }
}

/// Share of the bore's growth that is oval: read off twelve finite-element
/// cases by taking the oval close-in over the block's growth.
fn oval_growth(s: f64, w: f64) -> f64 {
    let beside = (w - 1.6).clamp(-0.4, 0.4);
    (0.92 - 1.33 * (s - 1.2) + 0.375 * beside * beside).clamp(0.0, 1.0)
}

/// Close-in along and across the row, over the mean close-in.
///
/// The block's growth carries the oval and a thin sleeve follows it: along the
/// row the bore grows less, so the sleeve closes more. Within 4 % of the mean
/// close-in of the finite elements.
///
/// # Example
/// Gray iron, s = 1.275, W = 1.6: finite elements give 1.113 and 0.895.
/// ```
/// use coldseat_core::mechanics::block_ring::oval_close_in;
/// // Growth of the block over the close-in: 0.213 / 0.799 there.
/// let [along, across] = oval_close_in(0.829, 0.213 / 0.799);
/// assert!((along - 1.113).abs() < 0.04 && (across - 0.895).abs() < 0.04);
/// ```
#[must_use]
pub fn oval_close_in(oval_growth: f64, growth_over_close_in: f64) -> [f64; 2] {
    let half = 0.5 * oval_growth * growth_over_close_in;
    [1.0 + half, 1.0 - half]
}

/// In which order the sleeves of a row go in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Installation {
    /// Holes from one end, counted from 0, those without a sleeve.
    pub order: Vec<usize>,
    /// How many fitted neighbours the worst of them finds when its sleeve goes
    /// in: each has made its bore oval by `neighbour_oval` of its own growth.
    pub neighbours: usize,
}

/// The order that leaves the least distortion, the bores being honed before
/// the first sleeve goes in. Each pair of neighbours makes one hole oval before
/// its sleeve comes, whatever the order; what the order decides is whether one
/// hole has to bear it from both sides. So: never leave a hole between two
/// fitted ones where that can be helped; go on from what is fitted, or from one
/// end.
///
/// # Example
/// Five bare holes go in from one end; every second one first would leave two
/// holes with both neighbours fitted.
/// ```
/// use coldseat_core::mechanics::block_ring::installation;
/// let plan = installation(&[false; 5]);
/// assert_eq!((plan.order, plan.neighbours), (vec![0, 1, 2, 3, 4], 1));
/// let plan = installation(&[false, false, true, false]);
/// assert_eq!((plan.order, plan.neighbours), (vec![1, 0, 3], 1));
/// ```
#[must_use]
pub fn installation(fitted: &[bool]) -> Installation {
    let mut order = Vec::new();
    let mut from = 0;
    for run in fitted.chunk_by(|a, b| a == b) {
        let to = from + run.len();
        if !run[0] {
            // Away from what is fitted: downward where that is only above.
            if from == 0 && to < fitted.len() {
                order.extend((from..to).rev());
            } else {
                order.extend(from..to);
            }
        }
        from = to;
    }
    let mut there = fitted.to_vec();
    let mut neighbours = 0;
    for &hole in &order {
        let beside = [hole.checked_sub(1), Some(hole + 1)];
        let found = beside
            .into_iter()
            .flatten()
            .filter(|h| there.get(*h) == Some(&true));
        neighbours = neighbours.max(found.count());
        there[hole] = true;
    }
    Installation { order, neighbours }
}

/// Close-in at the deck over that at mid length: the flange holds the sleeve
/// open. Fitted to 54 finite-element cases, largest error 0.06; not below 0.
///
/// # Errors
/// Lengths outside their ranges.
///
/// # Example
/// Flange 0.200 thick, 0.100 wide, wall 0.125, radius 2.125 in: 0.672 by
/// finite elements.
/// ```
/// use coldseat_core::mechanics::block_ring::{FlangeEnd, close_in_at_deck};
/// use coldseat_core::quantity::{Diameter, Length};
/// let end = FlangeEnd {
///     thickness: Length::from_inch(0.200),
///     width: Length::from_inch(0.100),
///     wall: Length::from_inch(0.125),
/// };
/// let share = close_in_at_deck(Diameter::from_inch(4.25), &end)?;
/// assert!((share - 0.672).abs() < 0.06);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn close_in_at_deck(joint: Diameter, end: &FlangeEnd) -> Result<f64, Fault> {
    let r = 0.5 * bounds::DIAMETER.check("sleeve.outer_d_m", joint.as_m())?;
    let tf = bounds::THICKNESS.check("flange_thickness_m", end.thickness.as_m())?;
    let w = bounds::THICKNESS.check("flange_width_m", end.width.as_m())?;
    let t = bounds::THICKNESS.check("wall_m", end.wall.as_m())?;
    let weakening = 5.13 * (tf / r).powf(1.53) * (t / r).powf(-0.62) * (w / r).powf(0.29);
    Ok((1.0 - weakening).max(0.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Fewest neighbours the worst hole can be made to find, by trying every
    /// order.
    fn fewest(there: &mut [bool]) -> usize {
        let mut best = usize::MAX;
        for hole in 0..there.len() {
            if there[hole] {
                continue;
            }
            let found = usize::from(hole > 0 && there[hole - 1])
                + usize::from(hole + 1 < there.len() && there[hole + 1]);
            there[hole] = true;
            best = best.min(found.max(fewest(there)));
            there[hole] = false;
        }
        if best == usize::MAX { 0 } else { best }
    }

    #[test]
    fn no_order_is_better() {
        for holes in 1..=6_usize {
            for pattern in 0..1_usize << holes {
                let mut there: Vec<bool> = (0..holes).map(|h| pattern >> h & 1 == 1).collect();
                let plan = installation(&there);
                assert_eq!(plan.neighbours, fewest(&mut there), "{there:?}");
                assert_eq!(plan.order.len(), there.iter().filter(|f| !**f).count());
            }
        }
    }
}

//! The ledge of a counterbore, from its depth at two radii: near the bore's edge and at
//! its outer corner, clock by clock.
//!
//! fall = depth near the bore - depth at the corner, positive where the ledge falls
//! toward the bore: there the flange bears at its rim alone, and breaks at its root. A
//! ledge never slopes down inward (common practice); that its depth may vary by
//! 0.001 in stands in the US Army technical manuals listed in the job's sources, and is
//! the usual limit. Trued by the least cut it is as deep all over as it is at its deepest
//! point now, and the sleeve sinks by what is then too much.

use crate::quantity::{Length, ties};

/// How a ledge lies.
#[derive(Clone, Debug, PartialEq)]
pub struct LedgeFalls {
    /// Fall toward the bore at each clock, m; negative where it rises.
    pub fall: Vec<Length>,
    /// The greatest of them.
    pub most: Length,
    /// The least of them.
    pub least: Length,
}

/// The fall of a ledge at each clock; `None` of no clock.
///
/// # Example
/// By hand: 0.2100 in at the corner and 0.2112 near the bore falls by 0.0012.
/// ```
/// use coldseat_core::planning::ledge::ledge_falls;
/// use coldseat_core::quantity::Length;
/// let thou = Length::from_thou;
/// let falls = ledge_falls(&[thou(210.0); 4], &[thou(211.2); 4]).unwrap();
/// assert!((falls.most.as_thou() - 1.2).abs() < 1e-9);
/// ```
#[must_use]
pub fn ledge_falls(corner: &[Length], edge: &[Length]) -> Option<LedgeFalls> {
    let fall: Vec<Length> = corner
        .iter()
        .zip(edge)
        .map(|(corner, edge)| Length::from_m(edge.as_m() - corner.as_m()))
        .collect();
    let by = |a: &&Length, b: &&Length| a.as_m().total_cmp(&b.as_m());
    let most = *fall.iter().max_by(by)?;
    let least = *fall.iter().min_by(by)?;
    Some(LedgeFalls { fall, most, least })
}

/// A ledge that is trued.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trued {
    /// The depth it has then all over.
    pub depth: Length,
    /// What is cut off it where it is highest.
    pub cut: Length,
    /// The shim that makes up for what is then too deep; 0: none.
    pub shim: Length,
}

/// The least cut that trues a ledge of these depths, and the shim that makes up for it
/// where `wanted` is the depth that the sleeve asks for; `None` of no depth.
///
/// # Example
/// By hand: from 0.2100 to 0.2112 in, wanted 0.2095: cut to 0.2112, by 0.0012 where it
/// is highest, and 0.0017 too deep.
/// ```
/// use coldseat_core::planning::ledge::trued;
/// use coldseat_core::quantity::Length;
/// let thou = Length::from_thou;
/// let ledge = trued(&[thou(210.0), thou(211.2)], thou(209.5)).unwrap();
/// assert!((ledge.depth.as_thou() - 211.2).abs() < 1e-9);
/// assert!((ledge.cut.as_thou() - 1.2).abs() < 1e-9);
/// assert!((ledge.shim.as_thou() - 1.7).abs() < 1e-9);
/// ```
#[must_use]
pub fn trued(depths: &[Length], wanted: Length) -> Option<Trued> {
    let all = || depths.iter().map(|depth| depth.as_m());
    let (deepest, highest) = all().reduce(f64::max).zip(all().reduce(f64::min))?;
    let over = deepest - wanted.as_m();
    let shim = if ties::at_most(over, 0.0) { 0.0 } else { over };
    Some(Trued {
        depth: Length::from_m(deepest),
        cut: Length::from_m(deepest - highest),
        shim: Length::from_m(shim),
    })
}

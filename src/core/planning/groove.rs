//! Fire-ring groove: cut from the finished top of the flange.

use crate::quantity::Length;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;

/// A groove.
#[derive(Clone, Debug, PartialEq)]
pub struct Groove {
    /// Depth from the finished top.
    pub depth: Length,
    /// Metal left of the flange under it.
    pub floor: Length,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// The groove in which a ring of `ring_height` stands proud by `stand_proud`.
///
/// # Errors
/// Lengths outside their ranges; a stand-proud not below the ring height.
///
/// # Example
/// ```
/// use coldseat_core::{planning::groove::groove, quantity::Length};
/// let thou = Length::from_thou;
/// let g = groove(thou(120.0), thou(8.0), thou(300.0))?;
/// assert!((g.depth.as_thou() - 112.0).abs() < 1e-9);
/// assert!((g.floor.as_thou() - 188.0).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn groove(
    ring_height: Length,
    stand_proud: Length,
    flange_left: Length,
) -> Result<Groove, Fault> {
    let ring = bounds::REMOVAL.check("ring_height_m", ring_height.as_m())?;
    let proud = bounds::HEIGHT.check("stand_proud_m", stand_proud.as_m())?;
    let left = bounds::THICKNESS.check("flange_left_m", flange_left.as_m())?;
    if proud >= ring {
        return Err(Fault::new(
            "stand_proud_m",
            format!(
                "{proud} m is not below the ring height {ring} m: the ring would need no groove"
            ),
        ));
    }
    let depth = ring - proud;
    let floor = left - depth;
    let mut findings = Vec::new();
    if ties::nothing_left(floor) {
        findings.push(Finding::stop(
            Code::NoFloor,
            "the groove would cut through the flange: do not cut. Choose another ring or a \
             thicker flange",
        ));
    }
    Ok(Groove {
        depth: Length::from_m(depth),
        floor: Length::from_m(floor),
        findings,
    })
}

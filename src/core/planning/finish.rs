//! Finishing the bore: cross-hatch and ring gap.

use core::f64::consts::PI;

use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length};

/// What of the cross-hatch is given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hatch {
    /// Full cycles a second, two strokes each.
    Cycles(f64),
    /// Included angle between the two sets of scratches, across the bore.
    Included(f64),
}

/// A cross-hatch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossHatch {
    /// Full cycles a second.
    pub cycles_per_s: f64,
    /// Included angle, rad.
    pub included_rad: f64,
    /// Angle of a scratch to the horizontal, rad: half the included angle.
    pub to_horizontal_rad: f64,
}

/// The cross-hatch of a hone: included angle = 2 atan(2 stroke cycles / (pi D
/// n)), from the mean stroking speed; a crank drive is 1.57 times as fast at
/// mid stroke.
///
/// # Errors
/// Values outside their ranges.
///
/// # Example
/// Derived: 4.25 in bore, 150 rpm, 4 in stroke, 60 cycles a minute: 26.96 deg.
/// ```
/// use coldseat_core::planning::finish::{Hatch, cross_hatch};
/// use coldseat_core::quantity::{Diameter, Length};
/// let bore = Diameter::from_inch(4.25);
/// let c = cross_hatch(bore, Length::from_inch(4.0), 2.5, Hatch::Cycles(1.0))?;
/// assert!((c.included_rad.to_degrees() - 26.96).abs() < 0.005);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn cross_hatch(
    bore: Diameter,
    stroke: Length,
    rev_per_s: f64,
    hatch: Hatch,
) -> Result<CrossHatch, Fault> {
    let d = bounds::DIAMETER.check("bore_d_m", bore.as_m())?;
    let stroke = bounds::LENGTH.check("stroke_m", stroke.as_m())?;
    let n = bounds::RATE.check("rev_per_s", rev_per_s)?;
    let round = PI * d * n;
    let (cycles, included) = match hatch {
        Hatch::Cycles(f) => {
            let f = bounds::RATE.check("cycles_per_s", f)?;
            (f, 2.0 * (2.0 * stroke * f / round).atan())
        }
        Hatch::Included(angle) => {
            let angle = bounds::INCLUDED_ANGLE.check("included_rad", angle)?;
            ((0.5 * angle).tan() * round / (2.0 * stroke), angle)
        }
    };
    Ok(CrossHatch {
        cycles_per_s: cycles,
        included_rad: included,
        to_horizontal_rad: included / 2.0,
    })
}

/// A ring's gap after its bore has changed: + pi per unit of diameter.
///
/// # Errors
/// Values outside their ranges. A negative answer is a ring that butts.
///
/// # Example
/// ```
/// use coldseat_core::{planning::finish::ring_gap, quantity::Length};
/// let gap = ring_gap(Length::from_thou(18.0), Length::from_thou(2.0))?;
/// assert!((gap.as_thou() - 24.283).abs() < 1e-3);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn ring_gap(gap: Length, bore_change: Length) -> Result<Length, Fault> {
    let gap = bounds::RING_GAP.check("gap_m", gap.as_m())?;
    let change = bounds::HEIGHT.check("bore_change_m", bore_change.as_m())?;
    Ok(Length::from_m(gap + PI * change))
}

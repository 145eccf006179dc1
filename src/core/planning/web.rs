//! Walls and webs: what metal is left round a bore and between two.
//!
//! Wall and web limits of the trade (0.125 and 0.150 in calm, 0.080 in stop)
//! are from memory and editable; they are judged on the page.

use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;
use crate::quantity::{Diameter, Length};

/// A wall found by ultrasonic gauge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallInput {
    /// Wall now.
    pub measured: Length,
    /// Diameter now.
    pub old: Diameter,
    /// Diameter to be bored.
    pub new: Diameter,
    /// Shift of the centre, positive toward this wall.
    pub offset: Length,
}

/// What boring leaves of a wall.
///
/// # Errors
/// Lengths outside their ranges.
///
/// # Example
/// Boring 0.250 in on diameter takes 0.125 in from a wall, and an offset the
/// rest (worked by hand):
/// ```
/// use coldseat_core::planning::web::{WallInput, wall};
/// use coldseat_core::quantity::{Diameter, Length};
/// let (left, _) = wall(&WallInput {
///     measured: Length::from_inch(0.300),
///     old: Diameter::from_inch(4.000),
///     new: Diameter::from_inch(4.250),
///     offset: Length::from_inch(0.010),
/// })?;
/// assert!((left.as_inch() - 0.165).abs() < 1e-12);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn wall(input: &WallInput) -> Result<(Length, Vec<Finding>), Fault> {
    let measured = bounds::MEASURED_WALL.check("measured_m", input.measured.as_m())?;
    let old = bounds::DIAMETER.check("old_d_m", input.old.as_m())?;
    let new = bounds::DIAMETER.check("new_d_m", input.new.as_m())?;
    let offset = bounds::HEIGHT.check("offset_m", input.offset.as_m())?;
    let left = measured - 0.5 * (new - old) - offset;
    let mut findings = Vec::new();
    if ties::nothing_left(left) {
        findings.push(Finding::stop(
            Code::NoWall,
            "the bar would break through this wall: do not bore. Move the centre or choose a \
             smaller sleeve",
        ));
    }
    Ok((Length::from_m(left), findings))
}

/// Two neighbouring bores or counterbores.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WebInput {
    /// Distance of the centres.
    pub pitch: Length,
    /// Diameter of each.
    pub d: Diameter,
    /// Shift of one, positive toward the other.
    pub offset_a: Length,
    /// Shift of the other, positive toward the one.
    pub offset_b: Length,
}

/// What is left between two.
#[derive(Clone, Debug, PartialEq)]
pub struct Web {
    /// Metal left; negative where they overlap.
    pub left: Length,
    /// Depth of the flat on each flange, where they overlap.
    pub flat: Length,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// The web between two bores.
///
/// # Errors
/// Lengths outside their ranges.
///
/// # Example
/// ```
/// use coldseat_core::planning::web::{WebInput, web};
/// use coldseat_core::quantity::{Diameter, Length};
/// let w = web(&WebInput {
///     pitch: Length::from_inch(4.700),
///     d: Diameter::from_inch(4.740),
///     offset_a: Length::from_inch(0.0),
///     offset_b: Length::from_inch(0.0),
/// })?;
/// assert!((w.left.as_inch() + 0.040).abs() < 1e-12);
/// assert!((w.flat.as_inch() - 0.020).abs() < 1e-12);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn web(input: &WebInput) -> Result<Web, Fault> {
    let pitch = bounds::LENGTH.check("pitch_m", input.pitch.as_m())?;
    let d = bounds::DIAMETER.check("d_m", input.d.as_m())?;
    let a = bounds::HEIGHT.check("offset_a_m", input.offset_a.as_m())?;
    let b = bounds::HEIGHT.check("offset_b_m", input.offset_b.as_m())?;
    let left = pitch - d - a - b;
    let flat = (-left).max(0.0) / 2.0;
    let mut findings = Vec::new();
    if !ties::at_least(left, 0.0) {
        findings.push(Finding::look(
            Code::FlatsNeeded,
            "the flanges overlap the pitch: each needs a flat of the depth shown, and the \
             counterbores run into each other",
        ));
    }
    Ok(Web {
        left: Length::from_m(left),
        flat: Length::from_m(flat),
        findings,
    })
}

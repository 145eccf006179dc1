//! The band of a cold drop: what the material's contraction and the gauges
//! leave open. A grip time is never shown without it.

use super::cold_drop::{ColdDrop, ColdDropAnswer, cold_drop};
use crate::quantity::report::Fault;
use crate::quantity::{DiametralInterference, Length};

/// A drop with the two ends of its 95 % band.
#[derive(Clone, Debug, PartialEq)]
pub struct DropBand {
    /// As entered.
    pub nominal: ColdDropAnswer,
    /// Least clearance, earliest grip.
    pub early: ColdDropAnswer,
    /// Most clearance, latest grip.
    pub late: ColdDropAnswer,
}

/// The drop, and the drop with the sleeve's chill shrink smaller and larger by
/// what 95 % of the cases stay within: the contraction's own band and twice
/// `u_fit`, the standard uncertainty of the fit, taken as independent.
///
/// Both act through the clearance alone, so both are put into the sleeve's
/// contraction. The conductance of the gap (air 2.5 %, a sleeve off centre)
/// is not in the band: an off-centre sleeve grips earlier.
///
/// # Errors
/// As [`cold_drop`].
pub fn cold_drop_band(drop: &ColdDrop, u_fit: Length) -> Result<DropBand, Fault> {
    let nominal = cold_drop(drop)?;
    let shrink = drop.sleeve_material.strain(drop.bath).abs() * drop.sleeve_outer.as_m();
    let material = drop.sleeve_material.expansion_band() * shrink;
    let gauges = DiametralInterference::from_m(2.0 * u_fit.as_m()).as_m();
    let share = if shrink > 0.0 {
        material.hypot(gauges) / shrink
    } else {
        0.0
    };
    let scaled = |factor: f64| {
        let mut other = drop.clone();
        other.sleeve_material = drop.sleeve_material.with_expansion_scale(factor);
        cold_drop(&other)
    };
    Ok(DropBand {
        nominal,
        early: scaled((1.0 - share).max(0.0))?,
        late: scaled(1.0 + share)?,
    })
}

//! How proud a sleeve is to stand: of what is decked afterwards by the target, of
//! what is left proud by the limits of the engine's sheet.

use crate::job::model::field::Field;
use crate::job::model::part::SleeveEnds;
use crate::job::model::reading::Lack;
use crate::job::model::readings::Readings;

/// Lowest and highest height.
///
/// # Errors
/// One of them missing or unusable.
pub fn proud_range(r: &Readings) -> Result<[f64; 2], Lack> {
    Ok([r.engine(Field::ProudLow)?, r.engine(Field::ProudHigh)?])
}

/// The stand-proud that a sleeve is cut for: what the deck's cut is to find, or, of
/// sleeves that are left proud, the middle of their limits.
///
/// # Errors
/// It, or one of the limits, missing or unusable.
pub fn target_proud(r: &Readings) -> Result<f64, Lack> {
    match r.sleeve_ends()? {
        SleeveEnds::Decked => r.engine(Field::TargetProud),
        SleeveEnds::Proud => {
            let [low_m, high_m] = proud_range(r)?;
            Ok(0.5 * (low_m + high_m))
        }
    }
}

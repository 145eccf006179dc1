//! The number that a step works to.

use crate::job::model::field::Field;
use crate::quantity::format::{decimals, fixed, number};
use crate::quantity::parse::Unit;

/// Of the last digit shown, what counts as nothing.
const HAIR: f64 = 1e-3;

/// What is worked to a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Work {
    /// The bar, on diameter; the hone takes the rest.
    Bore,
    /// Diameter of the counterbore.
    Widen,
    /// Depth of the counterbore.
    Depth,
    /// Depth of the step that a plain sleeve stands on.
    StepDepth,
    /// Chamfer at the ledge's edge.
    Chamfer,
    /// The hone, on diameter.
    Hone,
    /// Depth of the groove from the finished top.
    Groove,
    /// The finished bore of the sleeve, on diameter.
    Finish,
    /// The ring's gap in its finished bore.
    Gap,
    /// The sleeve's height once it is home, warm and not yet pulled.
    HomeWarm,
    /// The sleeve's height once it is home, after the last pull.
    Home,
}

/// The number to work to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WorkTo {
    /// What is worked.
    pub work: Work,
    /// The number itself, m; at a limit on one side alone the limit.
    pub si: f64,
    /// Its lower limit, m.
    pub low: Option<f64>,
    /// Its upper limit, m.
    pub high: Option<f64>,
    /// What stands in for a reading that is not there yet: this one is the
    /// engine's number, or both temperatures are taken as one.
    pub taken: Option<Field>,
}

impl WorkTo {
    /// From and to as they are shown: rounded into the range, so that a number
    /// read off it is inside.
    #[must_use]
    pub fn range(&self, unit: Unit) -> [Option<String>; 2] {
        let places = decimals(unit);
        let scale = 10_f64.powi(places as i32);
        let digits = |si: f64| unit.from_si(si) * scale;
        // A decimal that was typed is a hair off in binary.
        let low = self.low.map(|si| (digits(si) - HAIR).ceil());
        let high = self.high.map(|si| (digits(si) + HAIR).floor());
        match low.zip(high) {
            // Narrower than a digit: nothing shown is inside.
            Some((low, high)) if low > high => {
                [self.low, self.high].map(|limit| limit.map(|si| number(si, unit)))
            }
            _ => [low, high].map(|limit| limit.map(|whole| fixed(whole / scale, places))),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked by hand: 4.37312 to 4.37408 in shown with four digits is 4.3732 to
    /// 4.3740, not 4.3731 to 4.3741; what was typed with four digits stays.
    #[test]
    fn a_number_read_off_is_inside() {
        let inch = |low: f64, high: f64| {
            let work = WorkTo {
                work: Work::Hone,
                si: 0.0254 * 0.5 * (low + high),
                low: Some(0.0254 * low),
                high: Some(0.0254 * high),
                taken: None,
            };
            work.range(Unit::Inch)
                .map(|limit| limit.unwrap_or_default())
        };
        assert_eq!(inch(4.373_12, 4.374_08), ["4.3732", "4.3740"]);
        assert_eq!(inch(4.3731, 4.3741), ["4.3731", "4.3741"]);
        assert_eq!(inch(4.373_12, 4.373_18), ["4.3731", "4.3732"]);
    }
}

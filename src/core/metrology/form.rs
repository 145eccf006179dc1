//! Form: mean, out-of-round and taper of a bore or a sleeve measured at
//! several levels and round the clock.
//!
//! Assumed: two-point diameters. A three-lobe or five-lobe bore looks round to
//! a two-point gauge however out of round it is (ISO 12181, ISO 4291).

use super::{check_each, check_some};
use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length};

/// Readings at one level.
#[derive(Clone, Debug, PartialEq)]
pub struct Level {
    /// How far down, from the top.
    pub z: Length,
    /// Diameters round the clock, at least one.
    pub readings: Vec<Diameter>,
}

/// Form of one level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LevelForm {
    /// Mean of its readings.
    pub mean: Diameter,
    /// Largest less smallest reading.
    pub out_of_round: Length,
}

/// Form over all levels.
#[derive(Clone, Debug, PartialEq)]
pub struct Form {
    /// Mean of the levels' means.
    pub mean: Diameter,
    /// Largest out-of-round of any level.
    pub out_of_round: Length,
    /// First level's mean less the last level's; positive: wider at the first.
    pub taper: Length,
    /// Level by level, in the order given.
    pub per_level: Vec<LevelForm>,
}

/// Most readings or levels taken at once.
pub const MOST: usize = 100_000;

/// The form of `levels`, in the order given.
///
/// # Errors
/// No levels, a level without readings, a diameter outside 0 to 2 m, a depth
/// outside its range.
///
/// # Example
/// Worked by hand: 4.2502 and 4.2498 over 4.2490 and 4.2490 in.
/// ```
/// use coldseat_core::metrology::form::{form, Level};
/// use coldseat_core::quantity::{Diameter, Length};
/// let level = |z: f64, d: [f64; 2]| Level {
///     z: Length::from_inch(z),
///     readings: d.map(Diameter::from_inch).to_vec(),
/// };
/// let f = form(&[level(0.5, [4.2502, 4.2498]), level(6.0, [4.2490, 4.2490])])?;
/// assert!((f.mean.as_inch() - 4.2495).abs() < 1e-12);
/// assert!((f.out_of_round.as_thou() - 0.4).abs() < 1e-9);
/// assert!((f.taper.as_thou() - 1.0).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn form(levels: &[Level]) -> Result<Form, Fault> {
    check_some("levels", levels.len(), MOST)?;
    let mut per_level = Vec::with_capacity(levels.len());
    for (i, level) in levels.iter().enumerate() {
        let name = format!("levels[{i}].d_m");
        bounds::LEVEL.check(&format!("levels[{i}].z_m"), level.z.as_m())?;
        check_some(&name, level.readings.len(), MOST)?;
        let values = || level.readings.iter().map(|d| d.as_m());
        check_each(&bounds::DIAMETER, &name, values())?;
        let (lo, hi) = values().fold((f64::MAX, f64::MIN), |(a, b), d| (a.min(d), b.max(d)));
        per_level.push(LevelForm {
            mean: Diameter::from_m(mean(values(), level.readings.len())),
            out_of_round: Length::from_m(hi - lo),
        });
    }
    let means = per_level.iter().map(|l| l.mean.as_m());
    let first = per_level.first().map_or(0.0, |l| l.mean.as_m());
    let last = per_level.last().map_or(0.0, |l| l.mean.as_m());
    Ok(Form {
        mean: Diameter::from_m(mean(means, per_level.len())),
        out_of_round: Length::from_m(
            per_level
                .iter()
                .map(|l| l.out_of_round.as_m())
                .fold(0.0, f64::max),
        ),
        taper: Length::from_m(first - last),
        per_level,
    })
}

/// Mean of `count` values; 0 of none.
pub(crate) fn mean(values: impl Iterator<Item = f64>, count: usize) -> f64 {
    values.sum::<f64>() / count.max(1) as f64
}

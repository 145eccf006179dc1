//! How sure a diameter is that a micrometer reads off a part fresh out of liquid
//! nitrogen. Estimated, [E]: no measurement of it could be found, so every part is
//! derived here, wide on purpose.
//!
//! - The part warms before it is read: ten seconds of air give a wall of 0.110 in
//!   up to 20 K. From physics.md (carry): h = 9 W/m2K on both faces, 216 K apart,
//!   over 7200 kg/m3 x 2.8 mm x 160 J/kgK make 1.2 K/s at first; its own worked
//!   carry warms 0.160 in by 14 K in 11.8 s. Evenly spread from none to that.
//! - Frost: up to 15 um a side unless it is wiped (physics.md); wiped and read at
//!   once, up to 3 um a side, evenly spread.
//! - The micrometer is warm: where it touches, some 1 kW/m2K over the anvil's face
//!   (a line on a round part, 28 um of air beside it on the mean) for 3 s take
//!   0.65 MJ/m2. Q alpha/(rho c) makes that 2 um a side, by which the wall grows
//!   under the anvils (4e-6/K, 1.2 MJ/m3K) and as much by which spindle and anvil
//!   shrink (11e-6/K, 3.6 MJ/m3K): they cancel, each known to a factor of two:
//!   5 um either way, evenly spread.
//! - The gauge itself, as entered.
//!
//! Warming and frost only ever make the part read larger, which errs to the safe
//! side: less shrink, less clearance. No reading is corrected for it; the mean of
//! both is counted as uncertainty (GUM, F.2.4.5).

use crate::materials::Material;
use crate::quantity::{Diameter, Length, Temperature};

/// Most warming of the part until it is read, K.
const WARMED_K: f64 = 20.0;
/// Most frost between part and anvils, both sides together, m.
const FROST_M: f64 = 6e-6;
/// What the micrometer's own warmth may make of it, either way, m.
const ANVILS_M: f64 = 5e-6;
/// Variance of an even spread over its whole width squared.
const EVEN: f64 = 1.0 / 12.0;

/// Standard uncertainty of a diameter read in a bath's cold: of a part of
/// `material`, `outer` across, at `bath`, by a micrometer of `u_gauge`.
///
/// # Example
/// 100 mm of a material of 5e-6/K grow by 10 um in 20 K. Means 5 and 3 um;
/// variances 100/12, 36/12 and 100/12 um2, a gauge of 1 um: sqrt(64 + 8.33 + 3 +
/// 8.33 + 1) = 9.20 um.
/// ```
/// use coldseat_core::materials::{ConstantProperties, Material};
/// use coldseat_core::quantity::{Diameter, Length, Temperature};
/// use coldseat_core::thermal::cold_reading::u_cold_reading;
/// let even = Material::constant(ConstantProperties {
///     expansion_per_k: Some(5e-6),
///     ..ConstantProperties::default()
/// });
/// let bath = Temperature::from_k(77.355);
/// let u = u_cold_reading(&even, Diameter::from_mm(100.0), bath, Length::from_um(1.0));
/// assert!((u.as_um() - 9.20).abs() < 0.01);
/// ```
#[must_use]
pub fn u_cold_reading(
    material: &Material,
    outer: Diameter,
    bath: Temperature,
    u_gauge: Length,
) -> Length {
    let warmer = Temperature::from_k(bath.as_k() + WARMED_K);
    let growth_m = outer.as_m() * (material.strain(warmer) - material.strain(bath)).abs();
    let mean_m = 0.5 * (growth_m + FROST_M);
    let spread_m2 = EVEN * (growth_m.powi(2) + FROST_M.powi(2) + (2.0 * ANVILS_M).powi(2));
    Length::from_m((mean_m.powi(2) + spread_m2 + u_gauge.as_m().powi(2)).sqrt())
}

//! Contraction: what a length does between two temperatures.

use crate::materials::Material;
use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Length, Temperature};

/// A length's change between two temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contraction {
    /// Change over the length at the first temperature; negative shrinks.
    pub strain: f64,
    /// Change of the length.
    pub change: Length,
    /// Lower end of the strain's 95 % band.
    pub strain_low: f64,
    /// Upper end of it.
    pub strain_high: f64,
}

/// The contraction of `length`, which it has at `from`, on going to `to`.
///
/// strain = (1 + e(to)) / (1 + e(from)) - 1, e relative to 293.15 K; the band
/// scales e by the material's own.
///
/// # Errors
/// A temperature outside 70 to 500 K, a length outside 0 to 5 m.
///
/// # Example
/// Carbon steel 1075 shrinks by 0.187 % from 293 to 80 K (NOAO GNIRS
/// SDN0013.02 rev C):
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Length, Temperature};
/// use coldseat_core::thermal::contraction::contraction;
/// let steel = Material::catalogue(MaterialId::CarbonSteel);
/// let (from, to) = (Temperature::from_k(293.0), Temperature::from_k(80.0));
/// let c = contraction(&steel, Length::from_mm(100.0), from, to)?;
/// assert!((c.strain + 0.00187).abs() < 3e-5);
/// assert!((c.change.as_mm() + 0.187).abs() < 3e-3);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn contraction(
    material: &Material,
    length: Length,
    from: Temperature,
    to: Temperature,
) -> Result<Contraction, Fault> {
    bounds::LENGTH.check("length_m", length.as_m())?;
    bounds::TEMPERATURE.check("from_k", from.as_k())?;
    bounds::TEMPERATURE.check("to_k", to.as_k())?;
    let scaled = |factor: f64| {
        let m = material.with_expansion_scale(factor);
        (1.0 + m.strain(to)) / (1.0 + m.strain(from)) - 1.0
    };
    let strain = scaled(1.0);
    let [less, more] = material.expansion_band();
    let (a, b) = (scaled(1.0 - less), scaled(1.0 + more));
    Ok(Contraction {
        strain,
        change: Length::from_m(strain * length.as_m()),
        strain_low: a.min(b),
        strain_high: a.max(b),
    })
}

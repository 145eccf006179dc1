//! What decking does to the engine: compression ratio and protrusion.

use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Volume};

/// An engine and what is done to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EngineInput {
    /// Bore.
    pub bore: Diameter,
    /// Stroke.
    pub stroke: Length,
    /// Compression ratio before.
    pub compression_ratio: f64,
    /// What the deck loses.
    pub removal: Length,
    /// Change of the compressed gasket's thickness, positive thicker.
    pub gasket_change: Length,
    /// Largest piston protrusion before, positive above the deck.
    pub protrusion: Length,
}

/// The engine afterwards.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EngineEffect {
    /// Compression ratio.
    pub compression_ratio: f64,
    /// Largest protrusion.
    pub protrusion: Length,
    /// Swept volume of one cylinder.
    pub swept: Volume,
    /// Clearance volume of one cylinder.
    pub clearance: Volume,
}

/// The effect of a deck cut; the gasket's opening is taken at the bore.
///
/// # Errors
/// Values outside their ranges; at `removal_m` where the clearance volume
/// would be gone.
///
/// # Example
/// Rajput's example: 250 x 375 mm with 0.00263 m3 of clearance has ratio 8.
/// ```
/// use coldseat_core::planning::engine::{EngineInput, engine_effect};
/// use coldseat_core::quantity::{Diameter, Length};
/// let e = engine_effect(&EngineInput {
///     bore: Diameter::from_mm(250.0),
///     stroke: Length::from_mm(375.0),
///     compression_ratio: 8.0,
///     removal: Length::from_mm(0.0),
///     gasket_change: Length::from_mm(0.0),
///     protrusion: Length::from_mm(0.0),
/// })?;
/// assert!((e.clearance.as_m3() - 0.00263).abs() < 1e-6);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn engine_effect(input: &EngineInput) -> Result<EngineEffect, Fault> {
    let bore = bounds::DIAMETER.check("bore_d_m", input.bore.as_m())?;
    let stroke = bounds::LENGTH.check("stroke_m", input.stroke.as_m())?;
    let ratio = bounds::COMPRESSION_RATIO.check("compression_ratio", input.compression_ratio)?;
    let removal = bounds::REMOVAL.check("removal_m", input.removal.as_m())?;
    let gasket = bounds::HEIGHT.check("gasket_change_m", input.gasket_change.as_m())?;
    let protrusion = bounds::HEIGHT.check("protrusion_m", input.protrusion.as_m())?;
    let area = core::f64::consts::PI / 4.0 * bore * bore;
    let swept = area * stroke;
    let clearance = swept / (ratio - 1.0) + area * (gasket - removal);
    if clearance <= 0.0 {
        return Err(Fault::new(
            "removal_m",
            format!(
                "{removal} m takes the whole clearance volume: at most {} m can come off",
                swept / (ratio - 1.0) / area + gasket
            ),
        ));
    }
    Ok(EngineEffect {
        compression_ratio: (swept + clearance) / clearance,
        protrusion: Length::from_m(protrusion + removal),
        swept: Volume::from_m3(swept),
        clearance: Volume::from_m3(clearance),
    })
}

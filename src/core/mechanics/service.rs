//! The fit in service: running temperatures and gas pressure on the rings.
//!
//! Superposition of linear rings (plane stress). Each length follows its own
//! material's expansion from 293.15 K. Gas pressure acts on the sleeve's
//! inside; where the fit is loose it first takes up the clearance.

use super::rings::{Elastic, PressFit, Rings};
use crate::materials::Material;
use crate::numerics::roots;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{DiametralInterference, Pressure, Temperature};

/// A fit in service.
#[derive(Clone, Debug, PartialEq)]
pub struct ServiceInput {
    /// The fit as it is at 293.15 K.
    pub fit: PressFit,
    /// What the sleeve is made of.
    pub sleeve_material: Material,
    /// What the block is made of.
    pub block_material: Material,
    /// Mean temperature of the sleeve in service.
    pub sleeve: Temperature,
    /// Mean temperature of the block in service.
    pub block: Temperature,
    /// Gas pressure inside.
    pub gas: Pressure,
    /// Tensile strength of the sleeve.
    pub sleeve_strength: Pressure,
    /// Tensile strength of the block.
    pub block_strength: Pressure,
}

/// A fit in service.
#[derive(Clone, Debug, PartialEq)]
pub struct Service {
    /// Interference at the running temperatures, smoothing taken off.
    pub interference: DiametralInterference,
    /// Contact pressure from the fit alone; 0 where it is loose.
    pub fit_pressure: Pressure,
    /// Contact pressure with the gas.
    pub pressure: Pressure,
    /// Hoop stress at the sleeve's inside, with the gas.
    pub sleeve_hoop_inner: Pressure,
    /// Hoop stress at the bore, with the gas.
    pub block_hoop_inner: Pressure,
    /// Strength of the sleeve over its largest hoop tension; `None` where
    /// there is none.
    pub sleeve_margin: Option<f64>,
    /// Strength of the block over its largest hoop tension.
    pub block_margin: Option<f64>,
    /// Common temperature at which nothing is left of the fit; `None` where
    /// that is not below 500 K.
    pub lets_go: Option<Temperature>,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// The fit at running temperatures with gas pressure.
///
/// # Errors
/// As [`super::rings::press_fit`]; temperatures, pressure or strengths outside
/// their ranges.
///
/// # Example
/// 2000 psi of gas add 1461.4 psi to the joint of case C1 (superposition of
/// Lame rings, project reference A18):
/// ```
/// use coldseat_core::materials::{ConstantProperties, Material};
/// use coldseat_core::mechanics::rings::{Elastic, PressFit};
/// use coldseat_core::mechanics::service::{ServiceInput, service};
/// use coldseat_core::quantity::*;
/// let still = Material::constant(ConstantProperties {
///     expansion_per_k: Some(1.1e-5),
///     ..ConstantProperties::default()
/// });
/// let with_gas = |psi: f64| {
///     service(&ServiceInput {
///         fit: PressFit {
///             sleeve_inner: Diameter::from_inch(4.0),
///             joint: Diameter::from_inch(4.25),
///             block_outer: Diameter::from_inch(6.0),
///             sleeve: Elastic { youngs: Pressure::from_psi(24.4e6), poisson: 0.275 },
///             block: Elastic { youngs: Pressure::from_psi(16e6), poisson: 0.26 },
///             interference: DiametralInterference::from_inch(0.00125),
///             rz_sleeve: Length::from_um(0.0),
///             rz_bore: Length::from_um(0.0),
///             smoothing: 0.8,
///             length: Length::from_inch(6.0),
///             friction: 0.12,
///         },
///         sleeve_material: still.clone(),
///         block_material: still.clone(),
///         sleeve: Temperature::from_c(20.0),
///         block: Temperature::from_c(20.0),
///         gas: Pressure::from_psi(psi),
///         sleeve_strength: Pressure::from_psi(65e3),
///         block_strength: Pressure::from_psi(30e3),
///     })
/// };
/// let added = with_gas(2000.0)?.pressure.as_psi() - with_gas(0.0)?.pressure.as_psi();
/// assert!((added - 1461.4).abs() < 0.2);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn service(input: &ServiceInput) -> Result<Service, Fault> {
    input.fit.check()?;
    bounds::TEMPERATURE.check("sleeve_k", input.sleeve.as_k())?;
    bounds::TEMPERATURE.check("block_k", input.block.as_k())?;
    let gas = bounds::GAUGE.check("gas_pa", input.gas.as_pa())?;
    let strengths = [
        bounds::PRESSURE.check("sleeve_strength_pa", input.sleeve_strength.as_pa())?,
        bounds::PRESSURE.check("block_strength_pa", input.block_strength.as_pa())?,
    ];
    let rings = Rings::of(&input.fit);
    let interference = input.interference_at(input.sleeve, input.block);
    let (a2, b2, c2) = rings.squares();
    let compliance = rings.compliance();
    let fit_pressure = (0.5 * interference / compliance).max(0.0);
    // The free sleeve's outside grows by this under the gas.
    let growth = 2.0 * a2 * gas * rings.joint() / (input.fit.sleeve.youngs.as_pa() * (b2 - a2));
    let pressure = ((0.5 * interference + growth) / compliance).max(0.0);
    let sleeve_hoop = -2.0 * b2 * pressure / (b2 - a2) + gas * (b2 + a2) / (b2 - a2);
    let block_hoop = pressure * (c2 + b2) / (c2 - b2);
    let margin = |strength: f64, hoop: f64| (hoop > 0.0).then(|| strength / hoop);
    let margins = [
        margin(strengths[0], sleeve_hoop),
        margin(strengths[1], block_hoop),
    ];
    let mut findings = Vec::new();
    if interference <= 0.0 {
        findings.push(Finding::stop(
            Code::LooseInService,
            "at these running temperatures nothing is left of the press fit: plan more \
             interference, or keep the block cooler",
        ));
    }
    if margins.iter().flatten().any(|m| *m < 2.0) {
        findings.push(Finding::look(
            Code::LittleMargin,
            "a hoop stress is more than half of the tensile strength entered: lower the fit or \
             the pressure, and ask the maker",
        ));
    }
    Ok(Service {
        interference: DiametralInterference::from_m(interference),
        fit_pressure: Pressure::from_pa(fit_pressure),
        pressure: Pressure::from_pa(pressure),
        sleeve_hoop_inner: Pressure::from_pa(sleeve_hoop),
        block_hoop_inner: Pressure::from_pa(block_hoop),
        sleeve_margin: margins[0],
        block_margin: margins[1],
        lets_go: input.lets_go()?,
        findings,
    })
}

impl ServiceInput {
    fn interference_at(&self, sleeve: Temperature, block: Temperature) -> f64 {
        let d = self.fit.joint.as_m();
        let bore = d - self.fit.interference.as_m();
        let smoothing = self.fit.smoothing * (self.fit.rz_sleeve.as_m() + self.fit.rz_bore.as_m());
        d * (1.0 + self.sleeve_material.strain(sleeve))
            - bore * (1.0 + self.block_material.strain(block))
            - smoothing
    }

    /// Where nothing is left of the fit, both parts at one temperature; `None`
    /// where nothing is left at room temperature, or something is at the end of
    /// the tables.
    fn lets_go(&self) -> Result<Option<Temperature>, Fault> {
        let left = |t_k: f64| {
            let t = Temperature::from_k(t_k);
            self.interference_at(t, t)
        };
        let room = Temperature::REFERENCE.as_k();
        let last = bounds::TEMPERATURE.hi;
        if left(room) <= 0.0 || left(last) > 0.0 {
            return Ok(None);
        }
        roots::bracketed(left, room, last, 1e-6)
            .map(|root| Some(Temperature::from_k(root.x)))
            .map_err(|none| none.at("fit.interference_m"))
    }
}

/// Elastic constants of a catalogue or constant material.
#[must_use]
pub fn elastic_of(material: &Material) -> Elastic {
    Elastic {
        youngs: Pressure::from_pa(material.youngs_pa()),
        poisson: material.poisson(),
    }
}

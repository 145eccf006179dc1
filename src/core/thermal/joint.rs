//! The thermal joint between sleeve and bore: what a fine hone buys.
//!
//! Contact: Cooper, Mikic and Yovanovich, Int. J. Heat Mass Transfer 12 (1969)
//! 279, in Yovanovich's form. Gap: gas over the plane separation and the
//! temperature jump. Published slope correlations spread the contact part by a
//! factor of 2, and between worked examples of handbooks and this model lie
//! factors of 0.8 to 8: a joint conductance is no better known than that.

use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Conductance, Length, Pressure};

/// A joint.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JointInput {
    /// Conductivity of the sleeve, W/m/K.
    pub k_sleeve_w_mk: f64,
    /// Conductivity of the block, W/m/K.
    pub k_block_w_mk: f64,
    /// Combined rms roughness: root of the sum of squares.
    pub sigma: Length,
    /// Combined mean slope of the asperities; `None`: from the roughness.
    pub slope: Option<f64>,
    /// Contact pressure.
    pub pressure: Pressure,
    /// Hardness of the softer face.
    pub hardness: Pressure,
    /// Conductivity of the gas, W/m/K.
    pub gas_k_w_mk: f64,
    /// Temperature-jump distance of both faces together.
    pub gas_jump: Length,
}

/// Conductances of a joint.
#[derive(Clone, Debug, PartialEq)]
pub struct Joint {
    /// Through the spots that touch.
    pub contact: Conductance,
    /// Through the gas between.
    pub gap: Conductance,
    /// Together.
    pub joint: Conductance,
    /// Distance of the mean planes.
    pub separation: Length,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// The conductance of a joint: `h_c = 1.25 k_s (m/sigma) (P/H)^0.95`,
/// `h_g = k_g / (Y + M)`, `Y = 1.53 sigma (P/H)^-0.097`.
///
/// # Errors
/// Values outside their ranges, a pressure above the hardness.
///
/// # Example
/// k 40 W/m/K, sigma 1 um, 2 MPa on 2.4 GPa: 7424 and 7780 W/m2/K.
/// ```
/// use coldseat_core::quantity::{Length, Pressure};
/// use coldseat_core::thermal::joint::{JointInput, joint};
/// let j = joint(&JointInput {
///     k_sleeve_w_mk: 40.0,
///     k_block_w_mk: 40.0,
///     sigma: Length::from_um(1.0),
///     slope: None,
///     pressure: Pressure::from_pa(2e6),
///     hardness: Pressure::from_pa(2.4e9),
///     gas_k_w_mk: 0.0257,
///     gas_jump: Length::from_um(0.26),
/// })?;
/// assert!((j.contact.as_w_m2k() - 7424.3).abs() < 1.0);
/// assert!((j.gap.as_w_m2k() - 7779.6).abs() < 2.0);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn joint(input: &JointInput) -> Result<Joint, Fault> {
    let k1 = bounds::CONDUCTIVITY.check("k_sleeve_w_mk", input.k_sleeve_w_mk)?;
    let k2 = bounds::CONDUCTIVITY.check("k_block_w_mk", input.k_block_w_mk)?;
    let sigma = bounds::ROUGHNESS.check("sigma_m", input.sigma.as_m())?;
    if let Some(slope) = input.slope {
        bounds::SLOPE.check("slope", slope)?;
    }
    let pressure = bounds::PRESSURE.check("pressure_pa", input.pressure.as_pa())?;
    let hardness = bounds::HARDNESS.check("hardness_pa", input.hardness.as_pa())?;
    let gas = bounds::GAS_CONDUCTIVITY.check("gas_k_w_mk", input.gas_k_w_mk)?;
    let jump = bounds::JUMP.check("gas_jump_m", input.gas_jump.as_m())?;
    if pressure > hardness {
        return Err(Fault::new(
            "pressure_pa",
            format!("{pressure} Pa is above the hardness, {hardness} Pa: the faces would flow"),
        ));
    }
    let slope = input
        .slope
        .unwrap_or_else(|| slope_from_roughness(input.sigma));
    let k = 2.0 * k1 * k2 / (k1 + k2);
    let load = pressure / hardness;
    let contact = 1.25 * k * slope / sigma * load.powf(0.95);
    let separation = 1.53 * sigma * load.powf(-0.097);
    let gap = gas / (separation + jump);
    let mut findings = vec![Finding::note(
        Code::JointSpread,
        "worked examples of handbooks lie between 0.8 and 8 times this conductance: take it for an \
         order of magnitude, and for comparing one finish with another",
    )];
    if input.slope.is_none() {
        findings.push(Finding::note(
            Code::SlopeFromRoughness,
            "the slope was taken from the roughness: published rules spread the contact part by \
             a factor of 2",
        ));
    }
    Ok(Joint {
        contact: Conductance::from_w_m2k(contact),
        gap: Conductance::from_w_m2k(gap),
        joint: Conductance::from_w_m2k(contact + gap),
        separation: Length::from_m(separation),
        findings,
    })
}

/// Mean asperity slope: 0.125 (sigma in um)^0.402.
#[must_use]
pub fn slope_from_roughness(sigma: Length) -> f64 {
    0.125 * sigma.as_um().powf(0.402)
}

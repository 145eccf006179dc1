//! Press fits as Lame rings: plane stress (open ends), two materials.
//!
//! Away from the flange by more than about half an inch the rings agree with
//! axisymmetric finite elements within 0.02 % without a flange; at the deck a
//! flange holds the sleeve open to 0.6 to 0.76 of the close-in computed here.
//! A block is no ring: its equivalent outside diameter comes from
//! [`super::block_ring`].

use core::f64::consts::PI;

use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;
use crate::quantity::{Diameter, DiametralInterference, Force, Length, Pressure};

/// Elastic constants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Elastic {
    /// Young's modulus.
    pub youngs: Pressure,
    /// Poisson's ratio.
    pub poisson: f64,
}

/// A press fit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PressFit {
    /// Inside of the sleeve.
    pub sleeve_inner: Diameter,
    /// Joint: outside of the sleeve.
    pub joint: Diameter,
    /// Outside of the block's equivalent ring.
    pub block_outer: Diameter,
    /// The sleeve.
    pub sleeve: Elastic,
    /// The block.
    pub block: Elastic,
    /// Interference as measured.
    pub interference: DiametralInterference,
    /// Rz of the sleeve's outside.
    pub rz_sleeve: Length,
    /// Rz of the bore.
    pub rz_bore: Length,
    /// Smoothing factor on the sum of both Rz: 0.8 in DIN 7190:2001, 0.4 in
    /// the 2017 edition as reported second-hand.
    pub smoothing: f64,
    /// Length of contact.
    pub length: Length,
    /// Coefficient of friction.
    pub friction: f64,
}

/// Stresses and movements of a press fit; tension and opening positive.
#[derive(Clone, Debug, PartialEq)]
pub struct PressFitAnswer {
    /// Interference left after smoothing.
    pub effective_interference: DiametralInterference,
    /// Contact pressure.
    pub pressure: Pressure,
    /// Hoop stress at the sleeve's inside.
    pub sleeve_hoop_inner: Pressure,
    /// Hoop stress at the sleeve's outside.
    pub sleeve_hoop_outer: Pressure,
    /// Hoop stress at the bore.
    pub block_hoop_inner: Pressure,
    /// Hoop stress at the outside of the ring.
    pub block_hoop_outer: Pressure,
    /// Change of the sleeve's inside diameter; negative closes.
    pub sleeve_inner_change: Length,
    /// Change of the ring's outside diameter.
    pub block_outer_change: Length,
    /// Axial force at which the whole joint slips.
    pub slip_force: Force,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Pressure and movements of a press fit.
///
/// # Errors
/// Values outside their ranges, an inside that is not inside.
///
/// # Example
/// Ugural and Fenster, Advanced Strength and Applied Elasticity, example 8.3:
/// radii 150, 200, 250 mm, 0.1 mm on radius, 200 GPa: 12.3 MPa.
/// ```
/// use coldseat_core::mechanics::rings::{Elastic, PressFit, press_fit};
/// use coldseat_core::quantity::{Diameter, DiametralInterference, Length, Pressure};
/// let steel = Elastic { youngs: Pressure::from_pa(200e9), poisson: 0.3 };
/// let answer = press_fit(&PressFit {
///     sleeve_inner: Diameter::from_mm(300.0),
///     joint: Diameter::from_mm(400.0),
///     block_outer: Diameter::from_mm(500.0),
///     sleeve: steel,
///     block: steel,
///     interference: DiametralInterference::from_mm(0.2),
///     rz_sleeve: Length::from_um(0.0),
///     rz_bore: Length::from_um(0.0),
///     smoothing: 0.8,
///     length: Length::from_mm(100.0),
///     friction: 0.12,
/// })?;
/// assert!((answer.pressure.as_pa() / 1e6 - 12.3).abs() < 0.05);
/// assert!((answer.block_hoop_inner.as_pa() / 1e6 - 56.03).abs() < 0.05);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn press_fit(fit: &PressFit) -> Result<PressFitAnswer, Fault> {
    fit.check()?;
    let effective =
        fit.interference.as_m() - fit.smoothing * (fit.rz_sleeve.as_m() + fit.rz_bore.as_m());
    let rings = Rings::of(fit);
    let mut findings = Vec::new();
    let pressure = if !ties::nothing_left(effective) {
        0.5 * effective / rings.compliance()
    } else {
        findings.push(Finding::stop(
            Code::Loose,
            "nothing is left of the press fit once the peaks are smoothed: the sleeve would be \
             loose. Hone less, or choose a larger sleeve",
        ));
        0.0
    };
    let (a2, b2, c2) = rings.squares();
    let (wall, ring) = (b2 - a2, c2 - b2);
    Ok(PressFitAnswer {
        effective_interference: DiametralInterference::from_m(effective),
        pressure: Pressure::from_pa(pressure),
        sleeve_hoop_inner: Pressure::from_pa(-2.0 * b2 * pressure / wall),
        sleeve_hoop_outer: Pressure::from_pa(-(b2 + a2) * pressure / wall),
        block_hoop_inner: Pressure::from_pa((c2 + b2) * pressure / ring),
        block_hoop_outer: Pressure::from_pa(2.0 * b2 * pressure / ring),
        sleeve_inner_change: Length::from_m(
            -4.0 * rings.a * b2 * pressure / (fit.sleeve.youngs.as_pa() * wall),
        ),
        block_outer_change: Length::from_m(
            4.0 * rings.c * b2 * pressure / (fit.block.youngs.as_pa() * ring),
        ),
        slip_force: Force::from_n(fit.friction * pressure * PI * 2.0 * rings.b * fit.length.as_m()),
        findings,
    })
}

/// Axial forces that account for the sleeve's own swelling and thinning.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SlipForces {
    /// Pushed from behind: the sleeve swells and grips harder.
    pub push: Force,
    /// Pulled from the leading end: it thins and grips less.
    pub pull: Force,
}

/// The slip forces with the Poisson effect, 2 to 8 % about the plain one:
/// F = (delta E A / (nu b)) (exp(k) - 1), k = 2 pi b^2 mu K nu L / (E A),
/// K = pressure per radial interference (derived; checked against its
/// differential equation).
///
/// # Errors
/// As [`press_fit`].
///
/// # Example
/// Case C1 of the project reference: 3377 lbf pushed, 3127 lbf pulled.
/// ```
/// use coldseat_core::mechanics::rings::{Elastic, PressFit, slip_forces};
/// use coldseat_core::quantity::{Diameter, DiametralInterference, Length, Pressure};
/// let f = slip_forces(&PressFit {
///     sleeve_inner: Diameter::from_inch(4.0),
///     joint: Diameter::from_inch(4.25),
///     block_outer: Diameter::from_inch(6.0),
///     sleeve: Elastic { youngs: Pressure::from_psi(24.4e6), poisson: 0.275 },
///     block: Elastic { youngs: Pressure::from_psi(16e6), poisson: 0.26 },
///     interference: DiametralInterference::from_inch(0.00125),
///     rz_sleeve: Length::from_um(0.0),
///     rz_bore: Length::from_um(0.0),
///     smoothing: 0.8,
///     length: Length::from_inch(6.0),
///     friction: 0.12,
/// })?;
/// assert!((f.push.as_lbf() - 3377.3).abs() < 1.0 && (f.pull.as_lbf() - 3127.4).abs() < 1.0);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn slip_forces(fit: &PressFit) -> Result<SlipForces, Fault> {
    let answer = press_fit(fit)?;
    let rings = Rings::of(fit);
    let delta = 0.5 * answer.effective_interference.as_m();
    let plain = answer.slip_force.as_n();
    let area = PI * (rings.b * rings.b - rings.a * rings.a);
    let (e, nu) = (fit.sleeve.youngs.as_pa(), fit.sleeve.poisson);
    if delta <= 0.0 || nu <= 0.0 {
        return Ok(SlipForces {
            push: answer.slip_force,
            pull: answer.slip_force,
        });
    }
    let scale = delta * e * area / (nu * rings.b);
    let k = plain / scale;
    Ok(SlipForces {
        push: Force::from_n(scale * k.exp_m1()),
        pull: Force::from_n(-scale * (-k).exp_m1()),
    })
}

/// Radii and stiffness.
pub(super) struct Rings {
    a: f64,
    b: f64,
    c: f64,
    sleeve: (f64, f64),
    block: (f64, f64),
}

impl Rings {
    pub(super) fn of(fit: &PressFit) -> Self {
        Self {
            a: fit.sleeve_inner.radius().as_m(),
            b: fit.joint.radius().as_m(),
            c: fit.block_outer.radius().as_m(),
            sleeve: (fit.sleeve.youngs.as_pa(), fit.sleeve.poisson),
            block: (fit.block.youngs.as_pa(), fit.block.poisson),
        }
    }

    /// Squares of the three radii, m2.
    pub(super) fn squares(&self) -> (f64, f64, f64) {
        (self.a * self.a, self.b * self.b, self.c * self.c)
    }

    /// Radius of the joint, m.
    pub(super) fn joint(&self) -> f64 {
        self.b
    }

    /// Radial interference per pressure, m/Pa.
    pub(super) fn compliance(&self) -> f64 {
        let (a2, b2, c2) = self.squares();
        self.b
            * (((b2 + a2) / (b2 - a2) - self.sleeve.1) / self.sleeve.0
                + ((c2 + b2) / (c2 - b2) + self.block.1) / self.block.0)
    }
}

impl PressFit {
    /// That every value is within its range.
    ///
    /// # Errors
    /// A fault at the first that is not.
    pub fn check(&self) -> Result<(), Fault> {
        bounds::DIAMETER.check("sleeve.inner_d_m", self.sleeve_inner.as_m())?;
        bounds::DIAMETER.check("sleeve.outer_d_m", self.joint.as_m())?;
        bounds::DIAMETER.check("block.outer_d_m", self.block_outer.as_m())?;
        bounds::YOUNGS.check("sleeve.youngs_pa", self.sleeve.youngs.as_pa())?;
        bounds::POISSON.check("sleeve.poisson", self.sleeve.poisson)?;
        bounds::YOUNGS.check("block.youngs_pa", self.block.youngs.as_pa())?;
        bounds::POISSON.check("block.poisson", self.block.poisson)?;
        bounds::INTERFERENCE.check("interference_m", self.interference.as_m())?;
        bounds::SMALL.check("rz_sleeve_m", self.rz_sleeve.as_m())?;
        bounds::SMALL.check("rz_bore_m", self.rz_bore.as_m())?;
        bounds::SMOOTHING.check("smoothing", self.smoothing)?;
        bounds::LENGTH.check("length_m", self.length.as_m())?;
        bounds::FRICTION.check("friction", self.friction)?;
        self.sleeve_inner
            .check_inside("sleeve.inner_d_m", self.joint)?;
        self.joint
            .check_inside("sleeve.outer_d_m", self.block_outer)
    }
}

//! Finishing the bore: close-in and stock, cross-hatch, ring gap.

use core::f64::consts::PI;

use crate::mechanics::rings::{PressFit, press_fit};
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;
use crate::quantity::{Diameter, Length};

/// What of the cross-hatch is given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hatch {
    /// Full cycles a second, two strokes each.
    Cycles(f64),
    /// Included angle between the two sets of scratches, across the bore.
    Included(f64),
}

/// A cross-hatch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossHatch {
    /// Full cycles a second.
    pub cycles_per_s: f64,
    /// Included angle, rad.
    pub included_rad: f64,
    /// Angle of a scratch to the horizontal, rad: half the included angle.
    pub to_horizontal_rad: f64,
}

/// The cross-hatch of a hone: included angle = 2 atan(2 stroke cycles / (pi D
/// n)), from the mean stroking speed; a crank drive is 1.57 times as fast at
/// mid stroke.
///
/// # Errors
/// Values outside their ranges.
///
/// # Example
/// Derived: 4.25 in bore, 150 rpm, 4 in stroke, 60 cycles a minute: 26.96 deg.
/// ```
/// use coldseat_core::planning::finish::{Hatch, cross_hatch};
/// use coldseat_core::quantity::{Diameter, Length};
/// let bore = Diameter::from_inch(4.25);
/// let c = cross_hatch(bore, Length::from_inch(4.0), 2.5, Hatch::Cycles(1.0))?;
/// assert!((c.included_rad.to_degrees() - 26.96).abs() < 0.005);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn cross_hatch(
    bore: Diameter,
    stroke: Length,
    rev_per_s: f64,
    hatch: Hatch,
) -> Result<CrossHatch, Fault> {
    let d = bounds::DIAMETER.check("bore_d_m", bore.as_m())?;
    let stroke = bounds::LENGTH.check("stroke_m", stroke.as_m())?;
    let n = bounds::RATE.check("rev_per_s", rev_per_s)?;
    let round = PI * d * n;
    let (cycles, included) = match hatch {
        Hatch::Cycles(f) => {
            let f = bounds::RATE.check("cycles_per_s", f)?;
            (f, 2.0 * (2.0 * stroke * f / round).atan())
        }
        Hatch::Included(angle) => {
            let angle = bounds::INCLUDED_ANGLE.check("included_rad", angle)?;
            ((0.5 * angle).tan() * round / (2.0 * stroke), angle)
        }
    };
    Ok(CrossHatch {
        cycles_per_s: cycles,
        included_rad: included,
        to_horizontal_rad: included / 2.0,
    })
}

/// A ring's gap after its bore has changed: + pi per unit of diameter.
///
/// # Errors
/// Values outside their ranges. A gap of 0 or less is a ring that butts: a
/// `stop`, `butts`.
///
/// # Example
/// ```
/// use coldseat_core::{planning::finish::ring_gap, quantity::Length};
/// let (gap, _) = ring_gap(Length::from_thou(18.0), Length::from_thou(2.0))?;
/// assert!((gap.as_thou() - 24.283).abs() < 1e-3);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn ring_gap(gap: Length, bore_change: Length) -> Result<(Length, Vec<Finding>), Fault> {
    let gap = bounds::RING_GAP.check("gap_m", gap.as_m())?;
    let change = bounds::HEIGHT.check("bore_change_m", bore_change.as_m())?;
    let after = gap + PI * change;
    let mut findings = Vec::new();
    if ties::nothing_left(after) {
        findings.push(Finding::stop(
            Code::Butts,
            "the ring's ends would meet: do not run it. File the ring to its gap, or choose one of \
             the bore's size",
        ));
    }
    Ok((Length::from_m(after), findings))
}

/// A fitted sleeve that is to be finished.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FinishInput {
    /// The fit; its inside is the sleeve's before it goes in.
    pub fit: PressFit,
    /// Diameter wanted after the torque-plate hone.
    pub finished: Diameter,
    /// Left for the torque-plate hone, on diameter.
    pub hone: Length,
    /// Diameter of the piston where it is measured, if it is known.
    pub piston: Option<Diameter>,
}

/// A finished bore.
#[derive(Clone, Debug, PartialEq)]
pub struct Finish {
    /// How much the fit closes the inside, on diameter; positive closes.
    pub close_in: Length,
    /// Inside once fitted, at mid length.
    pub fitted: Diameter,
    /// Diameter to bore the fitted sleeve to.
    pub bore_to: Diameter,
    /// Stock from the fitted inside to the finished one, on diameter.
    pub stock: Length,
    /// Finished bore less piston, where that is known.
    pub piston_clearance: Option<Length>,
    /// Share of the contact pressure left once the wall is thinner.
    pub grip_left: f64,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Finishing a fitted sleeve: what the fit closes, what is left to take.
///
/// # Errors
/// As [`press_fit`]; diameters outside their ranges; a finished bore that is
/// not inside the sleeve.
///
/// # Example
/// Boring the wall of case C1 from 0.125 to 0.105 in leaves 0.86776 of its
/// grip; the fit closes it by 0.00097 in first (project reference A10, A17):
/// ```
/// use coldseat_core::mechanics::rings::{Elastic, PressFit};
/// use coldseat_core::planning::finish::{FinishInput, finish};
/// use coldseat_core::quantity::*;
/// let done = finish(&FinishInput {
///     fit: PressFit {
///         sleeve_inner: Diameter::from_inch(4.0),
///         joint: Diameter::from_inch(4.25),
///         block_outer: Diameter::from_inch(6.0),
///         sleeve: Elastic { youngs: Pressure::from_psi(24.4e6), poisson: 0.275 },
///         block: Elastic { youngs: Pressure::from_psi(16e6), poisson: 0.26 },
///         interference: DiametralInterference::from_inch(0.00125),
///         rz_sleeve: Length::from_um(0.0),
///         rz_bore: Length::from_um(0.0),
///         smoothing: 0.8,
///         length: Length::from_inch(6.0),
///         friction: 0.12,
///     },
///     finished: Diameter::from_inch(4.040),
///     hone: Length::from_inch(0.003),
///     piston: Some(Diameter::from_inch(4.035)),
/// })?;
/// assert!((done.close_in.as_inch() - 0.000970).abs() < 1e-6);
/// assert!((done.stock.as_inch() - 0.04097).abs() < 1e-5);
/// assert!((done.grip_left - 0.86776).abs() < 1e-4);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn finish(input: &FinishInput) -> Result<Finish, Fault> {
    let before = press_fit(&input.fit)?;
    let finished = bounds::DIAMETER.check("finished_d_m", input.finished.as_m())?;
    let hone = bounds::SMALL.check("hone_m", input.hone.as_m())?;
    if let Some(piston) = input.piston {
        bounds::DIAMETER.check("piston_d_m", piston.as_m())?;
    }
    input
        .finished
        .check_inside("finished_d_m", input.fit.joint)?;
    let close_in = -before.sleeve_inner_change.as_m();
    let fitted = input.fit.sleeve_inner.as_m() - close_in;
    let stock = finished - fitted;
    let mut findings = before.findings;
    if !ties::at_least(stock, hone) {
        findings.push(Finding::stop(
            Code::NoStock,
            "the fitted sleeve leaves less than the hone needs: choose a sleeve with a smaller \
             inside",
        ));
    }
    if input
        .piston
        .is_some_and(|piston| ties::at_most(finished, piston.as_m()))
    {
        findings.push(Finding::stop(
            Code::NoPistonClearance,
            "the finished bore is no larger than the piston: check for a radius among diameters, \
             and the piston's size",
        ));
    }
    // The same stress-free interference on a thinner wall.
    let grip_left = if before.pressure.as_pa() > 0.0 && input.finished > input.fit.sleeve_inner {
        let thinner = PressFit {
            sleeve_inner: input.finished,
            ..input.fit
        };
        press_fit(&thinner)?.pressure.as_pa() / before.pressure.as_pa()
    } else {
        1.0
    };
    Ok(Finish {
        close_in: Length::from_m(close_in),
        fitted: Diameter::from_m(fitted),
        bore_to: Diameter::from_m(finished - hone),
        stock: Length::from_m(stock),
        piston_clearance: input
            .piston
            .map(|piston| Length::from_m(finished - piston.as_m())),
        grip_left,
        findings,
    })
}

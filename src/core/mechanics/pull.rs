//! The pull: what ram, rod, ledge and flange carry.
//!
//! Tensile-stress area of the rod: inch threads ASME B1.1, metric threads
//! ISO 898-1. The ledge pressure ignores friction in the bore: an upper bound.
//! A hollow ram works on its annulus, not on its bore.

use core::f64::consts::PI;

use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Area, Diameter, Force, Length, Pressure};

/// Thread series of the rod.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Thread {
    /// Unified inch.
    Inch,
    /// ISO metric.
    Metric,
}

/// The ram.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ram {
    /// Its effective area.
    Area(Area),
    /// Outside and inside of its piston; inside 0 for a solid one.
    Annulus {
        /// Outside.
        outer: Diameter,
        /// Inside.
        inner: Diameter,
    },
}

/// A pull.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PullInput {
    /// Gauge reading.
    pub gauge: Pressure,
    /// The ram.
    pub ram: Ram,
    /// Major diameter of the rod's thread.
    pub rod_major: Diameter,
    /// Pitch of the thread.
    pub rod_pitch: Length,
    /// Its series.
    pub rod_thread: Thread,
    /// Stretched length of the rod.
    pub rod_length: Length,
    /// Young's modulus of the rod.
    pub rod_youngs: Pressure,
    /// Outside of the ledge.
    pub ledge_outer: Diameter,
    /// Inside of the ledge.
    pub ledge_inner: Diameter,
    /// Thickness of the flange.
    pub flange_thickness: Length,
    /// Diameter at which the flange would shear.
    pub flange_root: Diameter,
}

/// What the parts carry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PullAnswer {
    /// Force of the ram.
    pub force: Force,
    /// Tensile-stress area of the rod.
    pub rod_area: Area,
    /// Stress on it.
    pub rod_stress: Pressure,
    /// Stretch of the rod.
    pub rod_stretch: Length,
    /// Area of the ledge.
    pub ledge_area: Area,
    /// Pressure on the ledge.
    pub ledge_pressure: Pressure,
    /// Shear stress at the flange's root.
    pub flange_shear: Pressure,
}

/// Tensile-stress area: 0.7854 (D - 0.9743/n)^2 for inch threads of n to the
/// inch, pi/4 (D - 0.9382 P)^2 for metric ones.
///
/// # Example
/// 1-8 UNC has 0.6057 in2 (ASME PCC-1, appendix H), M24x3 has 352.5 mm2
/// (ISO 898-1).
/// ```
/// use coldseat_core::mechanics::pull::{Thread, tensile_area};
/// use coldseat_core::quantity::{Diameter, Length};
/// let a = tensile_area(Diameter::from_inch(1.0), Length::from_inch(0.125), Thread::Inch);
/// assert!((a.as_m2() / 0.0254_f64.powi(2) - 0.6057).abs() < 1e-4);
/// let a = tensile_area(Diameter::from_mm(24.0), Length::from_mm(3.0), Thread::Metric);
/// assert!((a.as_m2() * 1e6 - 352.5).abs() < 0.1);
/// ```
#[must_use]
// 0.7854 as the standard prints it.
#[allow(clippy::approx_constant)]
pub fn tensile_area(major: Diameter, pitch: Length, thread: Thread) -> Area {
    let (factor, share) = match thread {
        Thread::Inch => (0.7854, 0.9743),
        Thread::Metric => (PI / 4.0, 0.9382),
    };
    let d = (major.as_m() - share * pitch.as_m()).max(0.0);
    Area::from_m2(factor * d * d)
}

/// Forces and stresses of a pull.
///
/// # Errors
/// Values outside their ranges, an inside that is not inside, a pitch that
/// leaves no core.
///
/// # Example
/// A hollow ram 3.00 over 1.25 in at 2500 psi pulls 14 604 lbf (derived).
/// ```
/// use coldseat_core::mechanics::pull::{PullInput, Ram, Thread, pull};
/// use coldseat_core::quantity::{Diameter, Length, Pressure};
/// let inch = Diameter::from_inch;
/// let p = pull(&PullInput {
///     gauge: Pressure::from_psi(2500.0),
///     ram: Ram::Annulus { outer: inch(3.0), inner: inch(1.25) },
///     rod_major: inch(1.0),
///     rod_pitch: Length::from_inch(0.125),
///     rod_thread: Thread::Inch,
///     rod_length: Length::from_inch(24.0),
///     rod_youngs: Pressure::from_psi(29e6),
///     ledge_outer: inch(4.450),
///     ledge_inner: inch(4.270),
///     flange_thickness: Length::from_inch(0.200),
///     flange_root: inch(4.250),
/// })?;
/// assert!((p.force.as_lbf() - 14604.0).abs() < 1.0);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn pull(input: &PullInput) -> Result<PullAnswer, Fault> {
    let force = ram_force(input.gauge, input.ram)?;
    let length = bounds::LENGTH.check("rod.length_m", input.rod_length.as_m())?;
    let youngs = bounds::YOUNGS.check("rod.youngs_pa", input.rod_youngs.as_pa())?;
    let rod_stress = rod_stress(force, input.rod_major, input.rod_pitch, input.rod_thread)?;
    let ledge_area = ledge_area(input.ledge_outer, input.ledge_inner)?;
    let rod_area = tensile_area(input.rod_major, input.rod_pitch, input.rod_thread);
    Ok(PullAnswer {
        force,
        rod_area,
        rod_stress,
        rod_stretch: Length::from_m(force.as_n() * length / (rod_area.as_m2() * youngs)),
        ledge_area,
        ledge_pressure: Pressure::from_pa(force.as_n() / ledge_area.as_m2()),
        flange_shear: flange_shear(force, input.flange_root, input.flange_thickness)?,
    })
}

/// Stress of a force on the tensile-stress area of a rod's thread.
///
/// # Errors
/// Values outside their ranges, a pitch that leaves no core.
pub fn rod_stress(
    force: Force,
    major: Diameter,
    pitch: Length,
    thread: Thread,
) -> Result<Pressure, Fault> {
    bounds::DIAMETER.check("rod.major_d_m", major.as_m())?;
    bounds::LENGTH.check("rod.pitch_m", pitch.as_m())?;
    let area = tensile_area(major, pitch, thread).as_m2();
    if area <= 0.0 {
        return Err(Fault::new(
            "rod.pitch_m",
            format!(
                "a pitch of {} m leaves no core in a thread of {} m: check both, and the series",
                pitch.as_m(),
                major.as_m()
            ),
        ));
    }
    Ok(Pressure::from_pa(force.as_n() / area))
}

/// Area of the ledge, from the chamfer out to the flange.
///
/// # Errors
/// Values outside their ranges, an inside that is not inside.
pub fn ledge_area(outer: Diameter, inner: Diameter) -> Result<Area, Fault> {
    let outer_m = bounds::DIAMETER.check("ledge_outer_d_m", outer.as_m())?;
    let inner_m = bounds::DIAMETER.check("ledge_inner_d_m", inner.as_m())?;
    inner.check_inside("ledge_inner_d_m", outer)?;
    Ok(Area::from_m2(
        PI / 4.0 * (outer_m * outer_m - inner_m * inner_m),
    ))
}

/// Shear of a force round the root of a flange.
///
/// # Errors
/// Values outside their ranges.
pub fn flange_shear(force: Force, root: Diameter, thickness: Length) -> Result<Pressure, Fault> {
    let thick_m = bounds::THICKNESS.check("flange_thickness_m", thickness.as_m())?;
    let root_m = bounds::DIAMETER.check("flange_root_d_m", root.as_m())?;
    Ok(Pressure::from_pa(force.as_n() / (PI * root_m * thick_m)))
}

/// Force of a ram at a gauge reading.
///
/// # Errors
/// As [`pull`], for the gauge and the ram.
pub fn ram_force(gauge: Pressure, ram: Ram) -> Result<Force, Fault> {
    let gauge = bounds::GAUGE.check("gauge_pa", gauge.as_pa())?;
    Ok(Force::from_n(gauge * ram_area(&ram)?))
}

fn ram_area(ram: &Ram) -> Result<f64, Fault> {
    match ram {
        Ram::Area(area) => bounds::RAM_AREA.check("ram_area_m2", area.as_m2()),
        Ram::Annulus { outer, inner } => {
            let o = bounds::DIAMETER.check("ram_outer_d_m", outer.as_m())?;
            let i = inner.as_m();
            if i != 0.0 {
                bounds::DIAMETER.check("ram_inner_d_m", i)?;
                inner.check_inside("ram_inner_d_m", *outer)?;
            }
            Ok(PI / 4.0 * (o * o - i * i))
        }
    }
}

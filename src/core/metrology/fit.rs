//! Fit: sleeve against bore, both brought to 20 C (ISO 1), with what the
//! gauges leave open.
//!
//! Practice holds a band of 0.0010 to 0.0015 in (common practice, no source).
//! Sleeve and block 10 F apart are a quarter of that band.

use super::form::{MOST, mean};
use super::{check_each, check_some};
use crate::materials::Material;
use crate::numerics::normal;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::ties;
use crate::quantity::{Diameter, DiametralInterference, Length, Temperature};

/// The band that the fit is to lie in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FitBand {
    /// Least interference.
    pub lo: DiametralInterference,
    /// Greatest interference.
    pub hi: DiametralInterference,
}

/// Readings and how they were taken.
#[derive(Clone, Copy, Debug)]
pub struct FitInput<'a> {
    /// Outside diameters of the sleeve.
    pub sleeve_d: &'a [Diameter],
    /// Diameters of the bore.
    pub bore_d: &'a [Diameter],
    /// Temperature of the sleeve while it was measured.
    pub sleeve_temperature: Temperature,
    /// Temperature of the block while it was measured.
    pub bore_temperature: Temperature,
    /// What the sleeve is made of.
    pub sleeve_material: &'a Material,
    /// What the block is made of.
    pub bore_material: &'a Material,
    /// Standard uncertainty of a sleeve diameter.
    pub u_sleeve: Length,
    /// Standard uncertainty of a bore diameter.
    pub u_bore: Length,
    /// The band wanted.
    pub band: FitBand,
}

/// What is said of the fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FitVerdict {
    /// Inside the band with at least 95 % chance.
    Inside,
    /// Outside it with at least 95 % chance.
    Outside,
    /// The gauges cannot tell.
    Undecided,
}

impl FitVerdict {
    /// Its name in the evaluator.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Inside => "inside",
            Self::Outside => "outside",
            Self::Undecided => "undecided",
        }
    }
}

/// The fit at 20 C.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    /// Mean sleeve less mean bore.
    pub interference_mean: DiametralInterference,
    /// Smallest sleeve reading less largest bore reading.
    pub interference_min: DiametralInterference,
    /// Largest sleeve reading less smallest bore reading.
    pub interference_max: DiametralInterference,
    /// Standard uncertainty of the mean.
    pub u_interference: Length,
    /// Chance that the true mean lies inside the band.
    pub p_inside: f64,
    /// What is said of it.
    pub verdict: FitVerdict,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Chance from which a fit is called inside.
const SURE: f64 = 0.95;

/// A diameter brought to 20 C: d / (1 + e(T)).
///
/// # Example
/// 107.95 mm of 11.2e-6 per K measured at 30 C are 12.09 um less at 20 C:
/// ```
/// use coldseat_core::materials::{ConstantProperties, Material};
/// use coldseat_core::metrology::fit::at_reference;
/// use coldseat_core::quantity::{Diameter, Temperature};
/// let m = Material::constant(ConstantProperties {
///     expansion_per_k: Some(11.2e-6),
///     ..ConstantProperties::default()
/// });
/// let d = Diameter::from_mm(107.95);
/// let cold = at_reference(d, Temperature::from_c(30.0), &m);
/// assert!((d.as_um() - cold.as_um() - 12.09).abs() < 0.01);
/// ```
#[must_use]
pub fn at_reference(d: Diameter, t: Temperature, material: &Material) -> Diameter {
    Diameter::from_m(d.as_m() / (1.0 + material.strain(t)))
}

/// The fit of a sleeve in a bore.
///
/// # Errors
/// No readings, a diameter, temperature, uncertainty or band outside its
/// range, a band whose lower limit is not below its upper.
///
/// # Example
/// A block 10 F warm hides about 0.00026 in on 4.25 in of gray iron (derived
/// from 5.8e-6 per F, room-temperature charts):
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::metrology::fit::{fit, FitBand, FitInput};
/// use coldseat_core::quantity::{Diameter, DiametralInterference, Length, Temperature};
/// let iron = Material::catalogue(MaterialId::GrayIron);
/// let input = FitInput {
///     sleeve_d: &[Diameter::from_inch(4.25125)],
///     bore_d: &[Diameter::from_inch(4.2500)],
///     sleeve_temperature: Temperature::from_f(68.0),
///     bore_temperature: Temperature::from_f(78.0),
///     sleeve_material: &iron,
///     bore_material: &iron,
///     u_sleeve: Length::from_inch(0.00005),
///     u_bore: Length::from_inch(0.00007),
///     band: FitBand {
///         lo: DiametralInterference::from_inch(0.0010),
///         hi: DiametralInterference::from_inch(0.0015),
///     },
/// };
/// let f = fit(&input)?;
/// assert!((f.interference_mean.as_inch() - (0.00125 + 0.00026)).abs() < 2e-5);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn fit(input: &FitInput) -> Result<Fit, Fault> {
    input.check()?;
    let reduced = |ds: &[Diameter], t: Temperature, m: &Material| -> [f64; 3] {
        let scale = 1.0 / (1.0 + m.strain(t));
        let values = || ds.iter().map(|d| d.as_m() * scale);
        let (lo, hi) = values().fold((f64::MAX, f64::MIN), |(a, b), d| (a.min(d), b.max(d)));
        [mean(values(), ds.len()), lo, hi]
    };
    let sleeve = reduced(
        input.sleeve_d,
        input.sleeve_temperature,
        input.sleeve_material,
    );
    let bore = reduced(input.bore_d, input.bore_temperature, input.bore_material);
    let interference = sleeve[0] - bore[0];
    let u = input.u_sleeve.as_m().hypot(input.u_bore.as_m());
    let (lo, hi) = (input.band.lo.as_m(), input.band.hi.as_m());
    let inside = ties::at_least(interference, lo) && ties::at_most(interference, hi);
    let p_inside = if u > 0.0 {
        normal::cumulative((hi - interference) / u) - normal::cumulative((lo - interference) / u)
    } else if inside {
        1.0
    } else {
        0.0
    };
    let verdict = if p_inside >= SURE {
        FitVerdict::Inside
    } else if p_inside <= 1.0 - SURE && !inside {
        FitVerdict::Outside
    } else {
        FitVerdict::Undecided
    };
    let difference = input.sleeve_temperature - input.bore_temperature;
    let mut findings = Vec::new();
    if difference.as_k().abs() > APART_K {
        findings.push(Finding::look(
            Code::TemperaturesApart,
            "sleeve and block were measured more than 3 \u{b0}C (5 \u{b0}F) apart: let both rest \
             side by side and measure again",
        ));
    }
    if ties::at_least(2.0 * GUARD * u, hi - lo) {
        findings.push(Finding::look(
            Code::GaugesEatTheBand,
            "with these gauges no reading can prove the fit inside its band: use better gauges, \
             or set the bore gauge from the micrometer that measured the sleeve",
        ));
    }
    Ok(Fit {
        interference_mean: DiametralInterference::from_m(interference),
        interference_min: DiametralInterference::from_m(sleeve[1] - bore[2]),
        interference_max: DiametralInterference::from_m(sleeve[2] - bore[1]),
        u_interference: Length::from_m(u),
        p_inside,
        verdict,
        findings,
    })
}

/// Temperatures apart from which a look is wanted (common practice, no
/// source: 5 F).
const APART_K: f64 = 3.0;
/// Guard band of ISO 14253-1:2017 at 95 %, in standard uncertainties.
pub const GUARD: f64 = 1.65;

impl FitInput<'_> {
    fn check(&self) -> Result<(), Fault> {
        check_some("sleeve_d_m", self.sleeve_d.len(), MOST)?;
        check_some("bore_d_m", self.bore_d.len(), MOST)?;
        check_each(
            &bounds::DIAMETER,
            "sleeve_d_m",
            self.sleeve_d.iter().map(|d| d.as_m()),
        )?;
        check_each(
            &bounds::DIAMETER,
            "bore_d_m",
            self.bore_d.iter().map(|d| d.as_m()),
        )?;
        bounds::TEMPERATURE.check("sleeve_k", self.sleeve_temperature.as_k())?;
        bounds::TEMPERATURE.check("bore_k", self.bore_temperature.as_k())?;
        bounds::SMALL.check("u_sleeve_m", self.u_sleeve.as_m())?;
        bounds::SMALL.check("u_bore_m", self.u_bore.as_m())?;
        let (lo, hi) = (self.band.lo.as_m(), self.band.hi.as_m());
        bounds::INTERFERENCE.check("band_m[0]", lo)?;
        bounds::INTERFERENCE.check("band_m[1]", hi)?;
        if lo < hi {
            return Ok(());
        }
        Err(Fault::new(
            "band_m",
            format!(
                "the lower limit {lo} m is not below the upper limit {hi} m: swap or widen them"
            ),
        ))
    }
}

//! The chill: how long until the bath is quiet, and the nitrogen it costs.
//!
//! The wall is lumped (its core lags its face by a few kelvin at most); heat
//! leaves through the inner and the outer cylinder. Boiling curve: nucleate to
//! 10 K of superheat, a straight line in logarithms to the least-film point at
//! 30 K, film above (after the quench curve of the project's thermal
//! reference; bands there). Ninety-two parts in a hundred of the heat leave in
//! film boiling, so the film coefficient rules the time.

use core::f64::consts::PI;

use crate::materials::Material;
use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Seconds, Temperature};

/// Boiling point of nitrogen at 1 atm, K (CoolProp 8.0.0).
pub const NITROGEN_K: f64 = 77.355;
/// Latent heat, J/kg (CoolProp 8.0.0).
pub const LATENT_J_KG: f64 = 199.18e3;
/// Heat of the vapour from the boiling point to 293.15 K, J/kg (CoolProp).
pub const VAPOUR_J_KG: f64 = 226.90e3;
/// Density of the liquid, kg/m3 (CoolProp 8.0.0).
pub const LIQUID_KG_M3: f64 = 806.1;
/// Superheat at which the bath counts as quiet, K.
pub const QUIET_K: f64 = 2.0;

/// A sleeve to be chilled; dimensions at 293.15 K.
#[derive(Clone, Debug, PartialEq)]
pub struct ChillInput {
    /// What it is made of.
    pub material: Material,
    /// Inside diameter.
    pub inner: Diameter,
    /// Outside diameter.
    pub outer: Diameter,
    /// Length.
    pub length: Length,
    /// Temperature before.
    pub start: Temperature,
}

/// A chill.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chill {
    /// Until the wall is within 2 K of the bath.
    pub quiet: Seconds,
    /// Lower end of its band: film 30 % better, least-film point at 45 K.
    pub quiet_low: Seconds,
    /// Upper end: film 30 % worse, least-film point at 20 K.
    pub quiet_high: Seconds,
    /// Mass of the sleeve, kg.
    pub mass_kg: f64,
    /// Heat given up down to the bath's temperature, J.
    pub heat_j: f64,
    /// Nitrogen boiled off by latent heat alone, kg.
    pub nitrogen_kg: f64,
    /// The same in litres of liquid.
    pub nitrogen_l: f64,
    /// Litres where half of the vapour's cold is used too.
    pub nitrogen_practical_l: f64,
}

/// A boiling curve of liquid nitrogen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoilingCurve {
    /// Factor on the film coefficient.
    pub film: f64,
    /// Superheat of the least film boiling, K.
    pub least_film_k: f64,
}

impl BoilingCurve {
    /// The nominal curve.
    pub const NOMINAL: Self = Self {
        film: 1.0,
        least_film_k: 30.0,
    };
    /// The fast end of the band.
    pub const FAST: Self = Self {
        film: 1.3,
        least_film_k: 45.0,
    };
    /// The slow end of the band.
    pub const SLOW: Self = Self {
        film: 0.7,
        least_film_k: 20.0,
    };

    /// Heat flux at a superheat, W/m2.
    ///
    /// # Example
    /// 15.46 kW/m2 at 100 K, 160 kW/m2 at 10 K:
    /// ```
    /// use coldseat_core::thermal::chill::BoilingCurve;
    /// assert!((BoilingCurve::NOMINAL.flux_w_m2(100.0) / 15460.0 - 1.0).abs() < 1e-3);
    /// assert!((BoilingCurve::NOMINAL.flux_w_m2(10.0) / 160e3 - 1.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn flux_w_m2(&self, superheat_k: f64) -> f64 {
        // The fourth root, by two square roots.
        let film = |dt: f64| self.film * 130.0 * (200.0 / dt).sqrt().sqrt() * dt;
        let nucleate = |dt: f64| 160e3 * (dt / NUCLEATE_END_K).powi(3);
        if superheat_k <= NUCLEATE_END_K {
            return nucleate(superheat_k).max(250.0 * superheat_k);
        }
        if superheat_k >= self.least_film_k {
            return film(superheat_k);
        }
        let (q1, q2) = (nucleate(NUCLEATE_END_K), film(self.least_film_k));
        let share = (superheat_k / NUCLEATE_END_K).ln() / (self.least_film_k / NUCLEATE_END_K).ln();
        q1 * (q2 / q1).powf(share)
    }
}

/// Superheat at which nucleate boiling ends, K.
const NUCLEATE_END_K: f64 = 10.0;
/// Panels of each piece of the quadrature.
const PANELS: usize = 24;

/// The chill of a sleeve in liquid nitrogen.
///
/// # Errors
/// Dimensions or start outside their ranges, an inside that is not inside.
///
/// # Example
/// A 4.4 in sleeve, wall 0.16, length 8.66 in, takes 67 s (one-dimensional
/// finite volumes: 67.6 s) and boils off 1.02 l:
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Diameter, Length, Temperature};
/// use coldseat_core::thermal::chill::{ChillInput, chill};
/// let c = chill(&ChillInput {
///     material: Material::catalogue(MaterialId::GrayIron),
///     inner: Diameter::from_inch(4.08),
///     outer: Diameter::from_inch(4.40),
///     length: Length::from_inch(8.66),
///     start: Temperature::from_k(293.15),
/// })?;
/// assert!((c.quiet.as_s() - 67.0).abs() < 1.5);
/// assert!((c.nitrogen_l - 1.02).abs() < 0.02);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn chill(input: &ChillInput) -> Result<Chill, Fault> {
    let inner = bounds::DIAMETER.check("inner_d_m", input.inner.as_m())?;
    let outer = bounds::DIAMETER.check("outer_d_m", input.outer.as_m())?;
    let length = bounds::LENGTH.check("length_m", input.length.as_m())?;
    bounds::CHILL_START.check("start_k", input.start.as_k())?;
    input.inner.check_inside("inner_d_m", input.outer)?;
    let mass = input.material.density_kg_m3() * PI / 4.0 * (outer * outer - inner * inner) * length;
    let face = PI * (inner + outer) * length;
    let heat = mass
        * input
            .material
            .heat_j_kg(input.start, Temperature::from_k(NITROGEN_K));
    let quiet = |curve: BoilingCurve| Seconds::from_s(mass / face * time_per_load(input, &curve));
    let kg = heat / LATENT_J_KG;
    let practical = heat / (LATENT_J_KG + 0.5 * VAPOUR_J_KG);
    Ok(Chill {
        quiet: quiet(BoilingCurve::NOMINAL),
        quiet_low: quiet(BoilingCurve::FAST),
        quiet_high: quiet(BoilingCurve::SLOW),
        mass_kg: mass,
        heat_j: heat,
        nitrogen_kg: kg,
        nitrogen_l: kg / LIQUID_KG_M3 * 1e3,
        nitrogen_practical_l: practical / LIQUID_KG_M3 * 1e3,
    })
}

/// Integral of cp / q over the temperature, from the start to quiet:
/// Simpson's rule in the logarithm of the superheat, piece by piece.
fn time_per_load(input: &ChillInput, curve: &BoilingCurve) -> f64 {
    let table = input.material.lookup();
    let start = input.start.as_k() - NITROGEN_K;
    let integrand = |x: f64| {
        let dt = x.exp();
        table.specific_heat(NITROGEN_K + dt) / curve.flux_w_m2(dt) * dt
    };
    let mut sum = 0.0;
    let mut low = QUIET_K;
    for end in [NUCLEATE_END_K, curve.least_film_k, start] {
        let high = end.min(start);
        if high > low {
            sum += simpson(integrand, low.ln(), high.ln());
            low = high;
        }
    }
    sum
}

fn simpson(f: impl Fn(f64) -> f64, a: f64, b: f64) -> f64 {
    let h = (b - a) / (2 * PANELS) as f64;
    let inner: f64 = (1..2 * PANELS)
        .map(|i| f(a + i as f64 * h) * if i % 2 == 1 { 4.0 } else { 2.0 })
        .sum();
    h / 3.0 * (f(a) + inner + f(b))
}

//! Materials: [`catalogue`] says which there are, [`entries`] holds their
//! numbers with their sources, [`expansion`] the shape of e(T); this module answers for a material,
//! catalogued or given by constants, at a temperature.
//!
//! Range 70 to 500 K; outside it the end value is held, callers check the
//! range first ([`crate::quantity::bounds::TEMPERATURE`]).

pub mod catalogue;
pub mod entries;
pub mod expansion;
pub mod property;

use std::sync::{Arc, OnceLock};

use crate::numerics::interpolation::Monotone;
use crate::numerics::normal::TWO_SIDED;
use crate::quantity::{REFERENCE_K, Temperature};
use catalogue::{Below, Entry};
pub use catalogue::{Family, MaterialId};

/// Constant properties given instead of a catalogue material. What a
/// calculation does not need may be missing.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct ConstantProperties {
    /// kg/m3.
    pub density_kg_m3: Option<f64>,
    /// J/kg/K.
    pub specific_heat_j_kgk: Option<f64>,
    /// W/m/K.
    pub conductivity_w_mk: Option<f64>,
    /// 1/K, about 293.15 K.
    pub expansion_per_k: Option<f64>,
    /// Pa.
    pub youngs_pa: Option<f64>,
    /// Poisson's ratio.
    pub poisson: Option<f64>,
}

/// Stands for a constant that was left open because the calculation asked for
/// does not use it; callers demand those that it uses.
const LEFT_OPEN: f64 = 1.0;

/// A material that a calculation works with.
#[derive(Clone, Debug, PartialEq)]
pub struct Material {
    source: Source,
    expansion_scale: f64,
    /// The band of what was measured; `None`: the catalogue's.
    measured_band: Option<[f64; 2]>,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Source {
    Catalogue(MaterialId),
    Constant(ConstantProperties),
}

impl Material {
    /// A material of the catalogue.
    #[must_use]
    pub const fn catalogue(id: MaterialId) -> Self {
        Self {
            source: Source::Catalogue(id),
            expansion_scale: 1.0,
            measured_band: None,
        }
    }

    /// A material of constant properties.
    #[must_use]
    pub const fn constant(properties: ConstantProperties) -> Self {
        Self {
            source: Source::Constant(properties),
            expansion_scale: 1.0,
            measured_band: None,
        }
    }

    /// The same material with its expansion multiplied by `factor`: for the
    /// ends of its band, or where a shop has measured a cold diameter.
    #[must_use]
    pub fn with_expansion_scale(&self, factor: f64) -> Self {
        Self {
            expansion_scale: self.expansion_scale * factor,
            ..self.clone()
        }
    }

    /// The same material with its expansion as it was measured: e(T) of the
    /// catalogue times `factor`, known to a standard uncertainty of
    /// `u_share` of it, which takes the place of the catalogue's band.
    ///
    /// # Example
    /// Two per cent of standard uncertainty are 3.9 % on either side (normal
    /// law, 95 %: 1.96), and the skew of the catalogue's band is gone:
    /// ```
    /// use coldseat_core::materials::{Material, MaterialId};
    /// let iron = Material::catalogue(MaterialId::GrayIron).with_measured_expansion(0.95, 0.02);
    /// let [less, more] = iron.expansion_band();
    /// assert!((less - 0.0392).abs() < 1e-6 && (more - less).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn with_measured_expansion(&self, factor: f64, u_share: f64) -> Self {
        Self {
            measured_band: Some([TWO_SIDED * u_share; 2]),
            ..self.with_expansion_scale(factor)
        }
    }

    /// Its catalogue id, if it has one.
    #[must_use]
    pub const fn id(&self) -> Option<MaterialId> {
        match self.source {
            Source::Catalogue(id) => Some(id),
            Source::Constant(_) => None,
        }
    }

    /// e(T): length at `t` over length at 293.15 K, less 1.
    ///
    /// # Example
    /// A gray-iron sleeve shrinks by 0.178 % from room temperature to liquid
    /// nitrogen (estimate from EN 1561 annexes and charts):
    /// ```
    /// use coldseat_core::{materials::{Material, MaterialId}, quantity::Temperature};
    /// let iron = Material::catalogue(MaterialId::GrayIron);
    /// let e = iron.strain(Temperature::from_k(77.355));
    /// assert!((e + 0.00178).abs() < 1e-6);
    /// ```
    #[must_use]
    pub fn strain(&self, t: Temperature) -> f64 {
        let t_k = t.as_k();
        self.expansion_scale
            * match self.source {
                Source::Catalogue(id) => {
                    let entry = id.entry();
                    expansion::strain(entry.shape, entry.chill_contraction.value, t_k)
                }
                Source::Constant(c) => c.expansion_per_k.unwrap_or(0.0) * (t_k - REFERENCE_K),
            }
    }

    /// Half-widths of the 95 % band of e(T) as fractions of e(T), toward less
    /// and toward more of it: of what was measured where it was; else skewed for
    /// gray and pearlitic ductile iron, and 0 for constant properties.
    #[must_use]
    pub fn expansion_band(&self) -> [f64; 2] {
        if let Some(band) = self.measured_band {
            return band;
        }
        match self.source {
            Source::Catalogue(id) => {
                let c = id.entry().chill_contraction;
                [c.band_low / c.value, c.band / c.value]
            }
            Source::Constant(_) => [0.0; 2],
        }
    }

    /// Density at 293.15 K, kg/m3.
    #[must_use]
    pub fn density_kg_m3(&self) -> f64 {
        match self.source {
            Source::Catalogue(id) => id.entry().density.value,
            Source::Constant(c) => c.density_kg_m3.unwrap_or(LEFT_OPEN),
        }
    }

    /// Specific heat capacity, J/kg/K.
    #[must_use]
    pub fn specific_heat_j_kgk(&self, t: Temperature) -> f64 {
        self.lookup().specific_heat(t.as_k())
    }

    /// Thermal conductivity, W/m/K.
    #[must_use]
    pub fn conductivity_w_mk(&self, t: Temperature) -> f64 {
        self.lookup().conductivity(t.as_k())
    }

    /// Heat given up in cooling from `from` to `to`, J/kg.
    #[must_use]
    pub fn heat_j_kg(&self, from: Temperature, to: Temperature) -> f64 {
        let table = self.lookup();
        table.enthalpy(from.as_k()) - table.enthalpy(to.as_k())
    }

    /// Young's modulus, Pa.
    #[must_use]
    pub fn youngs_pa(&self) -> f64 {
        match self.source {
            Source::Catalogue(id) => id.entry().youngs.value,
            Source::Constant(c) => c.youngs_pa.unwrap_or(LEFT_OPEN),
        }
    }

    /// Poisson's ratio.
    #[must_use]
    pub fn poisson(&self) -> f64 {
        match self.source {
            Source::Catalogue(id) => id.entry().poisson.value,
            Source::Constant(c) => c.poisson.unwrap_or(LEFT_OPEN),
        }
    }

    /// The tables that the solvers read.
    #[must_use]
    pub fn lookup(&self) -> Lookup {
        let base = match self.source {
            Source::Catalogue(id) => catalogue_tables(id),
            Source::Constant(c) => Arc::new(Tables::build(|t_k| Node {
                strain: c.expansion_per_k.unwrap_or(0.0) * (t_k - REFERENCE_K),
                specific_heat: c.specific_heat_j_kgk.unwrap_or(LEFT_OPEN),
                conductivity: c.conductivity_w_mk.unwrap_or(LEFT_OPEN),
                enthalpy: 0.0,
            })),
        };
        Lookup {
            tables: base,
            expansion_scale: self.expansion_scale,
        }
    }
}

fn catalogue_tables(id: MaterialId) -> Arc<Tables> {
    static CACHE: [OnceLock<Arc<Tables>>; MaterialId::ALL.len()] =
        [const { OnceLock::new() }; MaterialId::ALL.len()];
    Arc::clone(CACHE[id.index()].get_or_init(|| Arc::new(entry_tables(id.entry()))))
}

fn entry_tables(entry: &Entry) -> Tables {
    let cp = Monotone::new(entry.specific_heat.nodes);
    let k = Monotone::new(entry.conductivity.nodes);
    let (first_k, first_cp) = cp.first();
    let factor = entry.specific_heat.factor;
    Tables::build(|t_k| Node {
        strain: expansion::strain(entry.shape, entry.chill_contraction.value, t_k),
        specific_heat: if t_k < first_k {
            match entry.specific_heat_below {
                Below::GoesOnStraight => factor * (first_cp + cp.first_slope() * (t_k - first_k)),
                Below::NistLogPolynomial(c) => {
                    let x = t_k.log10();
                    10_f64.powf(c.iter().rev().fold(0.0, |sum, c| sum * x + c))
                }
            }
        } else {
            factor * cp.at(t_k)
        },
        conductivity: entry.conductivity.factor * k.at(t_k),
        enthalpy: 0.0,
    })
}

/// First temperature of the tables; one node a kelvin from here.
const FIRST_K: f64 = 70.0;
/// Number of nodes: 70 to 500 K.
const NODES: usize = 431;

#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Node {
    strain: f64,
    specific_heat: f64,
    conductivity: f64,
    enthalpy: f64,
}

#[derive(Debug, PartialEq)]
struct Tables {
    nodes: Vec<Node>,
}

impl Tables {
    fn build(at: impl Fn(f64) -> Node) -> Self {
        let mut nodes: Vec<Node> = (0..NODES).map(|i| at(FIRST_K + i as f64)).collect();
        let mut sum = 0.0;
        for i in 1..NODES {
            sum += 0.5 * (nodes[i - 1].specific_heat + nodes[i].specific_heat);
            nodes[i].enthalpy = sum;
        }
        Self { nodes }
    }
}

/// Tables at every kelvin, straight between: within 1e-4 of the contraction
/// and 3e-5 of cp and k of the functions they were made from, and read in a
/// few nanoseconds.
#[derive(Clone, Debug)]
pub struct Lookup {
    tables: Arc<Tables>,
    expansion_scale: f64,
}

impl Lookup {
    #[inline]
    fn place(&self, t_k: f64) -> (&Node, &Node, f64) {
        let x = (t_k - FIRST_K).clamp(0.0, (NODES - 1) as f64);
        let i = (x as usize).min(NODES - 2);
        let n = &self.tables.nodes;
        (&n[i], &n[i + 1], x - i as f64)
    }

    /// e(T).
    #[inline]
    #[must_use]
    pub fn strain(&self, t_k: f64) -> f64 {
        let (a, b, x) = self.place(t_k);
        self.expansion_scale * (a.strain + (b.strain - a.strain) * x)
    }

    /// de/dT, 1/K.
    #[inline]
    #[must_use]
    pub fn expansion_per_k(&self, t_k: f64) -> f64 {
        let (a, b, _) = self.place(t_k);
        self.expansion_scale * (b.strain - a.strain)
    }

    /// Specific heat capacity, J/kg/K.
    #[inline]
    #[must_use]
    pub fn specific_heat(&self, t_k: f64) -> f64 {
        let (a, b, x) = self.place(t_k);
        a.specific_heat + (b.specific_heat - a.specific_heat) * x
    }

    /// Thermal conductivity, W/m/K.
    #[inline]
    #[must_use]
    pub fn conductivity(&self, t_k: f64) -> f64 {
        let (a, b, x) = self.place(t_k);
        a.conductivity + (b.conductivity - a.conductivity) * x
    }

    /// e(T), specific heat and conductivity, read together.
    #[inline]
    #[must_use]
    pub fn all(&self, t_k: f64) -> [f64; 3] {
        let (a, b, x) = self.place(t_k);
        [
            self.expansion_scale * (a.strain + (b.strain - a.strain) * x),
            a.specific_heat + (b.specific_heat - a.specific_heat) * x,
            a.conductivity + (b.conductivity - a.conductivity) * x,
        ]
    }

    /// Heat content above 70 K, J/kg.
    #[must_use]
    pub fn enthalpy(&self, t_k: f64) -> f64 {
        let (a, b, x) = self.place(t_k);
        a.enthalpy + x * (a.specific_heat + 0.5 * x * (b.specific_heat - a.specific_heat))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_tables_follow_the_functions() {
        for id in MaterialId::ALL {
            let m = Material::catalogue(id);
            let table = m.lookup();
            for i in 0..860 {
                let t_k = 70.25 + f64::from(i) * 0.5;
                let exact = m.strain(Temperature::from_k(t_k));
                // 304 has a kink at 293.15 K, between two nodes.
                assert!(
                    (table.strain(t_k) - exact).abs() < 1.2e-7,
                    "{} {t_k}",
                    id.id()
                );
            }
            // The slope of the enthalpy is the specific heat.
            let slope = (table.enthalpy(200.6) - table.enthalpy(200.4)) / 0.2;
            assert!((slope / table.specific_heat(200.5) - 1.0).abs() < 1e-6);
        }
    }

    #[test]
    fn every_entry_holds_together() {
        let mut listed = 0;
        for id in Family::ALL.into_iter().flat_map(Family::materials) {
            listed += 1;
            let (m, entry) = (Material::catalogue(id), id.entry());
            let e = |t_k| m.strain(Temperature::from_k(t_k));
            // Zero at the reference, rising throughout, as far as it says to 77 K.
            assert_eq!(e(REFERENCE_K), 0.0, "{}", id.id());
            for i in 0..430 {
                let t_k = 70.0 + f64::from(i);
                assert!(e(t_k + 1.0) > e(t_k), "{} {t_k}", id.id());
            }
            let chill = entry.chill_contraction;
            assert!(
                (e(77.355) / -chill.value - 1.0).abs() < 3e-3,
                "{} {}",
                id.id(),
                e(77.355)
            );
            // No constant coefficient: a kelvin counts for less in the cold.
            let slope = |t_k| (e(t_k + 1.0) - e(t_k - 1.0)) / 2.0;
            assert!(slope(78.0) < 0.62 * slope(292.0), "{}", id.id());
            for p in [
                chill,
                entry.density,
                entry.youngs,
                entry.poisson,
                entry.tensile,
            ] {
                assert!(p.value > 0.0 && p.band >= 0.0 && p.source.len() > 2);
            }
            for table in [&entry.specific_heat, &entry.conductivity] {
                assert!(table.nodes.windows(2).all(|w| w[0].0 < w[1].0));
                assert!(table.band_fraction > 0.0 && table.source.len() > 10);
                assert!(table.nodes[table.nodes.len() - 1].0 >= 500.0);
            }
        }
        assert_eq!(listed, MaterialId::ALL.len());
    }

    #[test]
    fn ids_are_told_apart_and_come_back() {
        for id in MaterialId::ALL {
            assert_eq!(MaterialId::from_id(id.id()), Some(id));
        }
        assert_eq!(MaterialId::from_id("lead"), None);
    }
}

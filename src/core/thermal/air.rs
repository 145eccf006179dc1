//! Air: conductivity, and the heat that a cold vertical face takes from it.
//!
//! k(T): US Standard Atmosphere 1976, eq. 53; 2.5 % under CoolProp at 185 K.
//! Viscosity: Sutherland's law, same source. Free convection: Churchill and
//! Chu for all Rayleigh numbers on a vertical plate (Int. J. Heat Mass
//! Transfer 18 (1975) 1323). 6 % are added for frost, emissivity 0.8.

use std::sync::OnceLock;

use crate::quantity::{Conductance, Length, Temperature};

/// Temperature-jump distance of air in a narrow gap (accommodation 0.9 and
/// 0.7 span 0.14 to 0.21 um), m.
pub const GAP_JUMP_M: f64 = 0.18e-6;

const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;
const EMISSIVITY: f64 = 0.8;
const FROST: f64 = 1.06;

/// Thermal conductivity of air, W/m/K.
///
/// # Example
/// CoolProp gives 0.01725 W/m/K at 185 K; this law is 2.5 % under it:
/// ```
/// use coldseat_core::{thermal::air, quantity::Temperature};
/// let k = air::conductivity_w_mk(Temperature::from_k(185.0));
/// assert!((k / 0.01725 - 0.975).abs() < 0.005);
/// ```
#[must_use]
pub fn conductivity_w_mk(t: Temperature) -> f64 {
    let t_k = t.as_k();
    let ten_to = (-12.0 * core::f64::consts::LN_10 / t_k).exp();
    2.646_38e-3 * t_k * t_k.sqrt() / (t_k + 245.4 * ten_to)
}

/// The same from a table at every kelvin from 70 to 500 K, straight between,
/// within 2e-6 of it: for solvers that ask a thousand times.
#[inline]
#[must_use]
pub fn conductivity_tabulated_w_mk(t_k: f64) -> f64 {
    const FIRST_K: f64 = 70.0;
    const NODES: usize = 431;
    static TABLE: OnceLock<[f64; NODES]> = OnceLock::new();
    let table = TABLE.get_or_init(|| {
        core::array::from_fn(|i| conductivity_w_mk(Temperature::from_k(FIRST_K + i as f64)))
    });
    let x = (t_k - FIRST_K).clamp(0.0, (NODES - 1) as f64);
    let i = (x as usize).min(NODES - 2);
    table[i] + (table[i + 1] - table[i]) * (x - i as f64)
}

/// Mean Nusselt number of free convection on a vertical plate, all Rayleigh
/// numbers.
///
/// # Example
/// The docstring of the library `ht` prints 147.16 for Pr 0.69, Gr 2.63e9:
/// ```
/// let nu = coldseat_core::thermal::air::nusselt_vertical(0.69 * 2.63e9, 0.69);
/// assert!((nu - 147.16185223770603).abs() < 1e-6);
/// ```
#[must_use]
pub fn nusselt_vertical(rayleigh: f64, prandtl: f64) -> f64 {
    let shield = (1.0 + (0.492 / prandtl).powf(9.0 / 16.0)).powf(8.0 / 27.0);
    let root = 0.825 + 0.387 * rayleigh.powf(1.0 / 6.0) / shield;
    root * root
}

/// Heat-transfer coefficient of a vertical face of height `height` at
/// `surface` to still air and walls at `room`: convection with frost, and
/// radiation.
///
/// # Example
/// 12.17 W/m2/K of convection at 77 K on 0.22 m (the libraries `ht` and
/// CoolProp), 6 % of frost and 1.54 of radiation at emissivity 0.8:
/// ```
/// use coldseat_core::quantity::{Length, Temperature};
/// use coldseat_core::thermal::air::face_coefficient;
/// let cold = Temperature::from_k(77.355);
/// let h = face_coefficient(cold, Temperature::from_c(20.0), Length::from_m(0.22));
/// assert!((h.as_w_m2k() - (1.06 * 12.172 + 1.54)).abs() < 0.4);
/// ```
#[must_use]
pub fn face_coefficient(surface: Temperature, room: Temperature, height: Length) -> Conductance {
    let (s, r, l) = (surface.as_k(), room.as_k(), height.as_m());
    let film = 0.5 * (s + r);
    let density = 101_325.0 * 0.028_964_7 / (8.314_463 * film);
    let viscosity = 1.458e-6 * film * film.sqrt() / (film + 110.4);
    let k = conductivity_w_mk(Temperature::from_k(film));
    let prandtl = viscosity * 1005.0 / k;
    let kinematic = viscosity / density;
    let grashof = 9.806_65 * (s - r).abs() / film * l * l * l / (kinematic * kinematic);
    let convection = nusselt_vertical(grashof * prandtl, prandtl) * k / l;
    let radiation = EMISSIVITY * STEFAN_BOLTZMANN * (s * s + r * r) * (s + r);
    Conductance::from_w_m2k(FROST * convection + radiation)
}

/// Heat flux into a face by its temperature, ready for a solver.
#[derive(Clone, Debug)]
// One of it a solver: the size does not matter, a pointer would be read often.
#[allow(clippy::large_enum_variant)]
pub enum AirSide {
    /// One coefficient at all temperatures.
    Fixed {
        /// W/m2/K.
        coefficient: f64,
        /// K.
        room: f64,
    },
    /// Coefficient tabulated over the root of the temperature difference.
    Tabulated {
        /// K.
        room: f64,
        /// A face colder than the room, and one warmer.
        sides: [FaceTable; 2],
    },
}

/// Nodes of a [`FaceTable`].
const FACE_NODES: usize = 24;

/// The coefficient of a face on one side of the room's temperature, at even
/// steps of the root of the difference: dense where the difference is small,
/// where a late grip is decided.
#[derive(Clone, Debug)]
pub struct FaceTable {
    /// Nodes per root kelvin.
    per_root: f64,
    /// W/m2/K.
    coefficient: [f64; FACE_NODES],
}

impl FaceTable {
    /// Between the room and `farthest`; with no span, the value at the room.
    fn new(room: Temperature, farthest: Temperature, height: Length) -> Self {
        let span = farthest.as_k() - room.as_k();
        let per_root = (FACE_NODES - 1) as f64 / span.abs().max(1e-6).sqrt();
        if span == 0.0 {
            // No side at all: one value is enough.
            let at_room = face_coefficient(room, room, height).as_w_m2k();
            return Self {
                per_root,
                coefficient: [at_room; FACE_NODES],
            };
        }
        let coefficient = core::array::from_fn(|i| {
            let root = i as f64 / per_root;
            let surface = room.as_k() + root * root * span.signum();
            face_coefficient(Temperature::from_k(surface), room, height).as_w_m2k()
        });
        Self {
            per_root,
            coefficient,
        }
    }

    #[inline]
    fn at(&self, difference_k: f64) -> f64 {
        let x = (difference_k.sqrt() * self.per_root).min((FACE_NODES - 1) as f64);
        let i = (x as usize).min(FACE_NODES - 2);
        let h = &self.coefficient;
        h[i] + (h[i + 1] - h[i]) * (x - i as f64)
    }
}

impl AirSide {
    /// Still air against a face of `height`, between `coldest` and `hottest`.
    #[must_use]
    pub fn still(
        room: Temperature,
        height: Length,
        coldest: Temperature,
        hottest: Temperature,
    ) -> Self {
        Self::Tabulated {
            room: room.as_k(),
            sides: [coldest, hottest].map(|end| FaceTable::new(room, end, height)),
        }
    }

    /// Flux into the face, W/m2, and about its slope over the temperature of
    /// the cell behind it, through `resistance_m2k_w` between the two.
    #[inline]
    #[must_use]
    pub fn flux(&self, cell_k: f64, resistance_m2k_w: f64) -> (f64, f64) {
        let (room, coefficient) = match self {
            Self::Fixed { coefficient, room } => (*room, *coefficient),
            Self::Tabulated { room, sides } => {
                let difference = room - cell_k;
                let side = &sides[usize::from(difference < 0.0)];
                (*room, side.at(difference.abs()))
            }
        };
        let u = coefficient / (1.0 + coefficient * resistance_m2k_w);
        (u * (room - cell_k), -u)
    }
}

//! The entries of the catalogue: every number with its source. To change a
//! material, change its entry here; nothing else knows a number.
//!
//! Values and bands after the project's thermal and mechanics references and,
//! from the bronzes on, after the pages that `tests/sources/alloys` names; the
//! flag says what was read and what was not.

mod bronze;
mod iron;
mod light;
mod seat;
mod steel;

pub use bronze::{ALUMINUM_BRONZE, FREE_CUTTING_BRASS, LEADED_TIN_BRONZE, PHOSPHOR_BRONZE};
pub use iron::{COMPACTED, DUCTILE_FERRITIC, DUCTILE_PEARLITIC, GRAY_IRON, SINTERED_STEEL};
pub use light::{ALUMINIUM_6061, ALUMINIUM_A356, ALUMINUM_319, ALUMINUM_A380, MAGNESIUM_AZ91};
pub use seat::{COBALT_SEAT, NICKEL_SEAT};
pub use steel::{BEARING_STEEL, CARBON_STEEL, STAINLESS_304, TOOL_STEEL};

use super::property::{Flag, Property, TableProperty};

const fn p(
    value: f64,
    band: f64,
    unit: &'static str,
    flag: Flag,
    source: &'static str,
) -> Property {
    Property {
        value,
        band,
        band_low: band,
        unit,
        flag,
        source,
    }
}

/// Specific heat of iron: Debye, electronic and magnetic model fitted to
/// Chase 1998 and SGTE.
const FE_CP: &[(f64, f64)] = &[
    (70.0, 117.8),
    (77.36, 142.5),
    (100.0, 213.2),
    (125.0, 275.7),
    (150.0, 322.5),
    (200.0, 384.3),
    (250.0, 422.8),
    (293.15, 447.0),
    (350.0, 472.8),
    (400.0, 493.0),
    (450.0, 512.6),
    (500.0, 532.8),
];

/// A specific heat as a multiple of a table's.
const fn cp_of(
    nodes: &'static [(f64, f64)],
    factor: f64,
    band_fraction: f64,
    source: &'static str,
) -> TableProperty {
    TableProperty {
        nodes,
        factor,
        band_fraction,
        unit: "J/kg/K",
        flag: Flag::Computed,
        source,
    }
}

const fn k_table(nodes: &'static [(f64, f64)], flag: Flag, source: &'static str) -> TableProperty {
    TableProperty {
        nodes,
        factor: 1.0,
        band_fraction: 0.10,
        unit: "W/m/K",
        flag,
        source,
    }
}

/// A conductivity whose cold end is an estimate, with its own band.
const fn estimated_k(
    nodes: &'static [(f64, f64)],
    band_fraction: f64,
    source: &'static str,
) -> TableProperty {
    TableProperty {
        nodes,
        factor: 1.0,
        band_fraction,
        unit: "W/m/K",
        flag: Flag::Estimate,
        source,
    }
}

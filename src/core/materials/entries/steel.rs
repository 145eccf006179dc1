//! Steels.

use super::{FE_CP, cp_of, estimated_k, k_table, p};
use crate::materials::catalogue::{Below, Entry, Family};
use crate::materials::expansion::Shape;
use crate::materials::property::{Flag, TableProperty};

/// NIST cryogenic material properties, 304 stainless, specific heat, 4 to
/// 300 K (read in three open copies).
const STAINLESS_304_CP: [f64; 8] = [
    22.0061, -127.5528, 303.647, -381.0098, 274.0328, -112.9212, 24.7593, -2.239_153,
];

/// Carbon steel.
pub static CARBON_STEEL: Entry = Entry {
    id: "carbon_steel",
    name: "carbon steel",
    family: Family::Steel,
    chill_contraction: p(
        0.001885,
        0.00005,
        "m/m",
        Flag::Computed,
        "1075 steel 0.187 % from 293 to 80 K (NOAO GNIRS SDN0013.02 rev C), carried to 77 K",
    ),
    shape: Shape::Ferrous,
    specific_heat: TableProperty {
        nodes: FE_CP,
        factor: 1.01,
        band_fraction: 0.02,
        unit: "J/kg/K",
        flag: Flag::Computed,
        source: "model of iron fitted to Chase 1998 and SGTE, 1 % added for carbon",
    },
    specific_heat_below: Below::GoesOnStraight,
    conductivity: k_table(
        &[
            (77.0, 45.0),
            (100.0, 48.0),
            (150.0, 52.0),
            (200.0, 54.0),
            (250.0, 54.0),
            (293.0, 53.3),
            (400.0, 49.8),
            (500.0, 46.4),
        ],
        Flag::Read,
        "from room temperature up EN 1993-1-2; cold end estimated",
    ),
    density: p(7850.0, 30.0, "kg/m3", Flag::Read, "EN 1993-1-2"),
    youngs: p(205e9, 5e9, "Pa", Flag::Memory, "plain carbon steel"),
    poisson: p(0.29, 0.01, "", Flag::Memory, "plain carbon steel"),
    tensile: p(
        400e6,
        0.0,
        "Pa",
        Flag::Memory,
        "low-carbon steel, as rolled",
    ),
};

/// Stainless 304.
pub static STAINLESS_304: Entry = Entry {
    id: "stainless_304",
    name: "stainless steel 304",
    family: Family::Steel,
    chill_contraction: p(
        0.002797,
        0.00008,
        "m/m",
        Flag::Read,
        "NIST cryogenic polynomial of 304",
    ),
    shape: Shape::Stainless304,
    specific_heat: TableProperty {
        nodes: &[(293.15, 470.5), (500.0, 470.5 + 0.28 * (500.0 - 293.15))],
        factor: 1.0,
        band_fraction: 0.05,
        unit: "J/kg/K",
        flag: Flag::Read,
        source: "NIST cryogenic polynomial to 293.15 K; 470.5 + 0.28 (T - 293.15) above, estimate",
    },
    specific_heat_below: Below::NistLogPolynomial(&STAINLESS_304_CP),
    conductivity: k_table(
        &[
            (77.0, 7.94),
            (100.0, 9.22),
            (150.0, 11.17),
            (200.0, 12.63),
            (250.0, 13.98),
            (293.15, 15.13),
            (500.0, 15.13 + 0.0127 * (500.0 - 293.15)),
        ],
        Flag::Read,
        "NIST cryogenic polynomial to 293 K; EN 1993-1-2 slope 0.0127 above",
    ),
    density: p(7900.0, 50.0, "kg/m3", Flag::Read, "304"),
    youngs: p(193e9, 5e9, "Pa", Flag::Memory, "304, annealed"),
    poisson: p(0.29, 0.01, "", Flag::Memory, "304"),
    tensile: p(515e6, 0.0, "Pa", Flag::Memory, "304, annealed, least"),
};

/// Bearing steel.
pub static BEARING_STEEL: Entry = Entry {
    id: "bearing_steel_52100",
    name: "bearing steel 52100 (100Cr6), hardened",
    family: Family::Steel,
    chill_contraction: p(
        0.00182,
        0.00009,
        "m/m",
        Flag::Estimate,
        "ferrous shape; mean coefficient 11.9e-6 from 23 to 280 C, annealed (read, 0.177 %), about \
         12e-6 hardened (from memory, 0.187 %); 440C, also hard and martensitic, 0.177 % from 293 to \
         80 K (NOAO GNIRS SDN0013.02 rev C); retained austenite adds",
    ),
    shape: Shape::Ferrous,
    specific_heat: cp_of(
        FE_CP,
        1.01,
        0.03,
        "iron's curve and 1 % for carbon, as carbon steel",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 24.0),
            (100.0, 28.0),
            (150.0, 33.5),
            (200.0, 37.0),
            (250.0, 39.0),
            (293.0, 40.0),
            (400.0, 39.5),
            (500.0, 38.5),
        ],
        0.20,
        "46.6 read for the annealed steel, 33 to 42 hardened from memory; cold end as 4140",
    ),
    density: p(7810.0, 30.0, "kg/m3", Flag::Read, "secondary table"),
    youngs: p(
        206e9,
        5e9,
        "Pa",
        Flag::Read,
        "29.5 Mpsi in a ball maker's sheet, 190 to 210 GPa in a secondary table",
    ),
    poisson: p(
        0.29,
        0.015,
        "",
        Flag::Read,
        "0.27 to 0.30 in a secondary table",
    ),
    tensile: p(
        1800e6,
        0.0,
        "Pa",
        Flag::Estimate,
        "hardened to 60 HRC; 325 ksi (2240 MPa) typical read, a fifth off for a brittle steel",
    ),
};

/// Tool steel.
pub static TOOL_STEEL: Entry = Entry {
    id: "tool_steel_h13",
    name: "tool steel H13 (X40CrMoV5-1), hardened",
    family: Family::Steel,
    chill_contraction: p(
        0.00174,
        0.00010,
        "m/m",
        Flag::Estimate,
        "ferrous shape; mean coefficients read: 10.4e-6 and 11.0e-6 from 20 to 100 C (0.167 and \
         0.177 %), 11.3e-6 and 11.5e-6 to 204 C (0.174 and 0.177 %); 440C 0.177 % from 293 to 80 K \
         (NOAO GNIRS SDN0013.02 rev C)",
    ),
    shape: Shape::Ferrous,
    specific_heat: cp_of(
        FE_CP,
        1.01,
        0.03,
        "iron's curve scaled to 460 J/kg/K, the mean from 0 to 100 C (read)",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 13.5),
            (100.0, 15.5),
            (150.0, 19.0),
            (200.0, 21.5),
            (250.0, 23.5),
            (293.0, 24.5),
            (400.0, 25.5),
            (500.0, 26.0),
        ],
        0.25,
        "17.6 at 21 C, 24.3 and 28.6 at 215 C read; cold end scaled as the NIST nickel steels",
    ),
    density: p(7800.0, 40.0, "kg/m3", Flag::Read, "secondary table"),
    youngs: p(
        210e9,
        6e9,
        "Pa",
        Flag::Read,
        "215 GPa in three secondary tables; most steels of its kind 207",
    ),
    poisson: p(
        0.285,
        0.015,
        "",
        Flag::Read,
        "0.27 to 0.30 in secondary tables",
    ),
    tensile: p(
        1200e6,
        0.0,
        "Pa",
        Flag::Read,
        "1200 to 1590 MPa with its heat treatment, the least of them (secondary)",
    ),
};

//! Aluminum and magnesium.

use super::{cp_of, estimated_k, k_table, p};
use crate::materials::catalogue::{Below, Entry, Family};
use crate::materials::expansion::Shape;
use crate::materials::property::{Flag, TableProperty};

const ALUMINIUM_CP: TableProperty = TableProperty {
    nodes: &[
        (77.0, 340.0),
        (100.0, 481.0),
        (150.0, 684.0),
        (200.0, 797.0),
        (250.0, 859.0),
        (293.0, 897.0),
        (350.0, 930.0),
        (400.0, 949.0),
        (500.0, 997.0),
    ],
    factor: 1.0,
    band_fraction: 0.03,
    unit: "J/kg/K",
    flag: Flag::Memory,
    source: "pure aluminium, CRC Handbook",
};

/// Cast aluminum with silicon and copper.
const SILICON_CP: TableProperty = TableProperty {
    nodes: ALUMINIUM_CP.nodes,
    factor: 0.975,
    band_fraction: 0.05,
    unit: "J/kg/K",
    flag: Flag::Computed,
    source: "pure aluminum, mixed with silicon and copper by Kopp and Neumann's rule (0.96), halfway \
             to the 880 to 963 J/kg/K read for room temperature",
};

/// Specific heat of magnesium: Debye temperature 333.09 K and 4.747 mJ/mol/K2
/// fitted to Cp(298.15 K) = 24.87 and S(298.15 K) = 32.67 J/mol/K (CODATA, from
/// memory).
const MAGNESIUM_CP: &[(f64, f64)] = &[
    (70.0, 422.4),
    (77.355, 485.9),
    (100.0, 643.6),
    (125.0, 761.9),
    (150.0, 841.2),
    (200.0, 936.0),
    (250.0, 989.5),
    (293.15, 1020.2),
    (350.0, 1049.6),
    (400.0, 1069.7),
    (450.0, 1086.6),
    (500.0, 1101.5),
];

/// Cast aluminum A356.
pub static ALUMINIUM_A356: Entry = Entry {
    id: "aluminium_a356",
    name: "cast aluminum A356",
    family: Family::Light,
    chill_contraction: p(
        0.00366,
        0.00008,
        "m/m",
        Flag::Computed,
        "0.366 % from 293 to 80 K (NOAO GNIRS SDN0013.02 rev C); NIST 6061 curve x 0.9416",
    ),
    shape: Shape::Aluminium { factor: 0.9416 },
    specific_heat: ALUMINIUM_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: k_table(
        &[
            (77.0, 82.0),
            (100.0, 96.0),
            (150.0, 118.0),
            (200.0, 133.0),
            (250.0, 144.0),
            (293.0, 151.0),
            (400.0, 158.0),
            (500.0, 160.0),
        ],
        Flag::Estimate,
        "room temperature 150 to 167 read; shape as 6061",
    ),
    density: p(2680.0, 20.0, "kg/m3", Flag::Read, "356"),
    youngs: p(72e9, 2e9, "Pa", Flag::Read, "356, secondary table"),
    poisson: p(0.33, 0.01, "", Flag::Read, "secondary table"),
    tensile: p(
        228e6,
        0.0,
        "Pa",
        Flag::Read,
        "356-T6 permanent mould 33 ksi (secondary table)",
    ),
};

/// Wrought aluminum 6061.
pub static ALUMINIUM_6061: Entry = Entry {
    id: "aluminium_6061",
    name: "wrought aluminum 6061",
    family: Family::Light,
    chill_contraction: p(
        0.00388,
        0.00008,
        "m/m",
        Flag::Read,
        "NIST cryogenic polynomial of 6061-T6",
    ),
    shape: Shape::Aluminium { factor: 1.0 },
    specific_heat: ALUMINIUM_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: k_table(
        &[
            (77.0, 83.8),
            (100.0, 97.7),
            (150.0, 120.4),
            (200.0, 136.0),
            (250.0, 147.2),
            (293.0, 154.4),
            (400.0, 161.0),
            (500.0, 163.0),
        ],
        Flag::Read,
        "NIST cryogenic polynomial to 293 K; 161 at 400 K and 163 at 500 K estimated",
    ),
    density: p(2700.0, 10.0, "kg/m3", Flag::Read, "6061"),
    youngs: p(68.9e9, 1e9, "Pa", Flag::Memory, "6061-T6"),
    poisson: p(0.33, 0.01, "", Flag::Memory, "6061-T6"),
    tensile: p(290e6, 0.0, "Pa", Flag::Memory, "6061-T6, least"),
};

/// Cast aluminum 319.
pub static ALUMINUM_319: Entry = Entry {
    id: "aluminum_319",
    name: "cast aluminum 319",
    family: Family::Light,
    chill_contraction: p(
        0.00361,
        0.00011,
        "m/m",
        Flag::Estimate,
        "NIST 6061 curve x 0.93: by the mean coefficient of 21.4e-6 from 20 to 100 C (read) 0.914, \
         by A356, which has the same coefficient and measures 0.366 % to 80 K, 0.942",
    ),
    shape: Shape::Aluminium { factor: 0.93 },
    specific_heat: SILICON_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 46.0),
            (100.0, 57.0),
            (150.0, 75.0),
            (200.0, 90.0),
            (250.0, 101.0),
            (293.0, 109.0),
            (400.0, 125.0),
            (500.0, 136.0),
        ],
        0.15,
        "109 at room temperature and 27 % IACS read; the rest by Wiedemann and Franz's law",
    ),
    density: p(2790.0, 20.0, "kg/m3", Flag::Read, "319.0, secondary table"),
    youngs: p(72e9, 2e9, "Pa", Flag::Read, "319.0, secondary table"),
    poisson: p(0.33, 0.01, "", Flag::Read, "secondary table"),
    tensile: p(
        159e6,
        0.0,
        "Pa",
        Flag::Read,
        "319.0-F sand cast 23 ksi (a foundry's table after ASTM B26); T6 31 ksi",
    ),
};

/// Die-cast aluminum A380.
pub static ALUMINUM_A380: Entry = Entry {
    id: "aluminum_a380",
    name: "die-cast aluminum A380",
    family: Family::Light,
    chill_contraction: p(
        0.00357,
        0.00013,
        "m/m",
        Flag::Estimate,
        "NIST 6061 curve x 0.92: mean coefficients of 21.8e-6 (NADCA table, read) and 21.1e-6 from \
         20 to 100 C (read) give 0.90 to 0.93, A356 by its cold measurement 0.94",
    ),
    shape: Shape::Aluminium { factor: 0.92 },
    specific_heat: SILICON_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 42.0),
            (100.0, 52.0),
            (150.0, 69.0),
            (200.0, 83.0),
            (250.0, 93.0),
            (293.0, 100.0),
            (400.0, 115.0),
            (500.0, 125.0),
        ],
        0.15,
        "109 at room temperature read, 96 from memory (NADCA); the rest as 319",
    ),
    density: p(
        2720.0,
        40.0,
        "kg/m3",
        Flag::Read,
        "NADCA table 2710; 2760 in another; pores of a die casting take up to 1 %",
    ),
    youngs: p(71e9, 2e9, "Pa", Flag::Read, "NADCA table A-3-2"),
    poisson: p(0.33, 0.01, "", Flag::Read, "secondary table"),
    tensile: p(
        243e6,
        0.0,
        "Pa",
        Flag::Estimate,
        "324 MPa typical of bars cast separately (NADCA table A-3-2); three quarters of it in a \
         casting",
    ),
};

/// Magnesium AZ91.
pub static MAGNESIUM_AZ91: Entry = Entry {
    id: "magnesium_az91",
    name: "cast magnesium AZ91",
    family: Family::Light,
    chill_contraction: p(
        0.00444,
        0.00022,
        "m/m",
        Flag::Estimate,
        "NIST 6061 curve x 1.145: mean coefficient 26.0e-6 from 20 to 100 C (read) over 23.4e-6 is \
         1.11; by Grueneisen's rule with Debye temperatures of 333 and 402 K it shrinks 1.17 times \
         as far; no measurement of it below room temperature was found",
    ),
    shape: Shape::Aluminium { factor: 1.145 },
    specific_heat: cp_of(
        MAGNESIUM_CP,
        1.0,
        0.04,
        "magnesium's curve: aluminum and zinc take 2 % by Kopp and Neumann's rule, data sheets print \
         990 to 1050 J/kg/K for room temperature",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 28.0),
            (100.0, 35.0),
            (150.0, 47.0),
            (200.0, 57.0),
            (250.0, 66.0),
            (293.0, 72.0),
            (400.0, 82.0),
            (500.0, 88.0),
        ],
        0.20,
        "72.7 and 51 at room temperature and 12.2 % IACS read; the rest by Wiedemann and Franz's law",
    ),
    density: p(1810.0, 15.0, "kg/m3", Flag::Read, "AZ91D, secondary tables"),
    youngs: p(45e9, 1.5e9, "Pa", Flag::Read, "AZ91D, secondary tables"),
    poisson: p(0.35, 0.02, "", Flag::Read, "AZ91D, secondary table"),
    tensile: p(
        160e6,
        0.0,
        "Pa",
        Flag::Read,
        "160 to 220 MPa over its tempers, the least of them (secondary; die cast 230 typical)",
    ),
};

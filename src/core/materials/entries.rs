//! The entries of the catalogue: every number with its source. To change a
//! material, change its entry here; nothing else knows a number.
//!
//! Values and bands after the project's thermal and mechanics references; the
//! flag says what was read and what was not.

use super::catalogue::{Below, Entry};
use super::expansion::Shape;
use super::property::{Flag, Property, TableProperty};

/// NIST cryogenic material properties, 304 stainless, specific heat, 4 to
/// 300 K (read in three open copies).
const STAINLESS_304_CP: [f64; 8] = [
    22.0061, -127.5528, 303.647, -381.0098, 274.0328, -112.9212, 24.7593, -2.239_153,
];

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

/// The chill contraction of gray and pearlitic ductile iron: skewed downward,
/// the side that jams a sleeve.
const PEARLITIC_SHRINK: Property = Property {
    value: 0.00178,
    band: 0.00012,
    band_low: 0.00023,
    unit: "m/m",
    flag: Flag::Estimate,
    source: "mean expansions of EN 1561 annexes (from memory, 0.183 %), room-temperature charts \
             (read, 0.165 to 0.17 %) and a published piping table of cast iron from 0 to -200 F \
             (reprinted, secondary), which lies 6 to 12 % lower: measure a cold diameter of your own",
};

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

const CAST_CP: TableProperty = TableProperty {
    nodes: &[
        (70.0, 117.0),
        (77.36, 141.4),
        (100.0, 211.8),
        (125.0, 275.0),
        (150.0, 323.2),
        (200.0, 389.4),
        (250.0, 433.2),
        (293.15, 461.6),
        (350.0, 492.5),
        (400.0, 516.8),
        (450.0, 540.0),
        (500.0, 563.2),
    ],
    factor: 1.0,
    band_fraction: 0.03,
    unit: "J/kg/K",
    flag: Flag::Computed,
    source: "Debye, electronic and magnetic model of iron fitted to Cp(298.15 K) = 25.10 J/mol/K \
             (Chase 1998) and S(298.15 K) = 27.28 (SGTE), with 3.4 % C and 2.4 % Si by \
             Kopp and Neumann's rule",
};

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

const CAST_SHRINK: &str = "mean expansions of EN 1561 annexes (from memory, 0.183 %) and room-temperature \
     charts (read, 0.165 to 0.17 %); no sub-zero measurement of a cast iron was found";

/// Gray iron.
pub static GRAY_IRON: Entry = Entry {
    id: "gray_iron",
    name: "gray iron",
    chill_contraction: PEARLITIC_SHRINK,
    shape: Shape::Ferrous,
    specific_heat: CAST_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: k_table(
        &[
            (77.0, 34.0),
            (100.0, 38.0),
            (150.0, 43.0),
            (200.0, 46.0),
            (250.0, 47.5),
            (293.0, 48.0),
            (400.0, 46.5),
            (500.0, 45.0),
        ],
        Flag::Estimate,
        "room temperature 46 read, 47.5 to 50 EN 1561 from memory; cold end by analogy",
    ),
    density: p(
        7200.0,
        50.0,
        "kg/m3",
        Flag::Memory,
        "7150 to 7250 for gray iron",
    ),
    youngs: p(
        110e9,
        15e9,
        "Pa",
        Flag::Memory,
        "A48 class 30 to 40: 13 to 20 Mpsi, upper half at low stress",
    ),
    poisson: p(0.26, 0.02, "", Flag::Memory, "gray iron"),
    tensile: p(
        207e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM A48 class 30, least tensile strength 30 ksi (secondary table)",
    ),
};

/// Ductile ferritic.
pub static DUCTILE_FERRITIC: Entry = Entry {
    id: "ductile_iron_ferritic",
    name: "ductile iron, ferritic",
    chill_contraction: p(0.00181, 0.00012, "m/m", Flag::Estimate, CAST_SHRINK),
    shape: Shape::Ferrous,
    specific_heat: CAST_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: k_table(
        &[
            (77.0, 22.0),
            (100.0, 25.0),
            (150.0, 30.0),
            (200.0, 33.0),
            (250.0, 35.0),
            (293.0, 36.0),
            (400.0, 36.5),
            (500.0, 36.5),
        ],
        Flag::Estimate,
        "room temperature 36 to 38 read; cold end scaled as the NIST 2.25 and 3.25 % nickel steels",
    ),
    density: p(
        7100.0,
        40.0,
        "kg/m3",
        Flag::Read,
        "EN 1563:1997 table copy; 7020 to 7110 measured (Matsushita 2015)",
    ),
    youngs: p(
        169e9,
        8e9,
        "Pa",
        Flag::Read,
        "EN 1563 secondary table; 23.8 Mpsi for 65-45-12",
    ),
    poisson: p(
        0.275,
        0.01,
        "",
        Flag::Read,
        "secondary tables of ASTM A536 and EN 1563",
    ),
    tensile: p(
        448e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM A536 65-45-12, least tensile strength 65 ksi (secondary table)",
    ),
};

/// Ductile pearlitic.
pub static DUCTILE_PEARLITIC: Entry = Entry {
    id: "ductile_iron_pearlitic",
    name: "ductile iron, pearlitic",
    chill_contraction: PEARLITIC_SHRINK,
    shape: Shape::Ferrous,
    specific_heat: CAST_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: k_table(
        &[
            (77.0, 19.0),
            (100.0, 22.0),
            (150.0, 27.0),
            (200.0, 30.0),
            (250.0, 32.0),
            (293.0, 33.0),
            (400.0, 33.5),
            (500.0, 33.5),
        ],
        Flag::Estimate,
        "room temperature 33.5 read; cold end as ferritic ductile iron",
    ),
    density: p(7200.0, 40.0, "kg/m3", Flag::Read, "EN 1563:1997 table copy"),
    youngs: p(
        174e9,
        8e9,
        "Pa",
        Flag::Read,
        "EN 1563 secondary table; 25.2 Mpsi for 80-55-06",
    ),
    poisson: p(
        0.275,
        0.01,
        "",
        Flag::Read,
        "secondary tables of ASTM A536 and EN 1563",
    ),
    tensile: p(
        552e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM A536 80-55-06, least tensile strength 80 ksi (secondary table)",
    ),
};

/// Compacted.
pub static COMPACTED: Entry = Entry {
    id: "compacted_iron",
    name: "compacted-graphite iron",
    chill_contraction: p(0.00180, 0.00012, "m/m", Flag::Estimate, CAST_SHRINK),
    shape: Shape::Ferrous,
    specific_heat: CAST_CP,
    specific_heat_below: Below::GoesOnStraight,
    conductivity: k_table(
        &[
            (77.0, 27.0),
            (100.0, 30.0),
            (150.0, 35.0),
            (200.0, 38.0),
            (250.0, 40.0),
            (293.0, 41.0),
            (400.0, 40.5),
            (500.0, 40.0),
        ],
        Flag::Estimate,
        "ISO 16112 36 to 47 from memory; cold end by analogy",
    ),
    density: p(
        7100.0,
        40.0,
        "kg/m3",
        Flag::Read,
        "7020 to 7110 measured (Matsushita 2015)",
    ),
    youngs: p(
        145e9,
        7e9,
        "Pa",
        Flag::Memory,
        "ASTM A842 grades: 140 to 150 GPa",
    ),
    poisson: p(0.26, 0.02, "", Flag::Memory, "compacted-graphite iron"),
    tensile: p(
        250e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM A842 grade 250 (Callister, table 13.5)",
    ),
};

/// Carbon steel.
pub static CARBON_STEEL: Entry = Entry {
    id: "carbon_steel",
    name: "carbon steel",
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

/// Aluminium a356.
pub static ALUMINIUM_A356: Entry = Entry {
    id: "aluminium_a356",
    name: "cast aluminium A356",
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

/// Aluminium 6061.
pub static ALUMINIUM_6061: Entry = Entry {
    id: "aluminium_6061",
    name: "wrought aluminium 6061",
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

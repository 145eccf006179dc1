//! Cast and sintered irons.

use super::{FE_CP, cp_of, estimated_k, k_table, p};
use crate::materials::catalogue::{Below, Entry, Family};
use crate::materials::expansion::Shape;
use crate::materials::property::{Flag, Property, TableProperty};

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

const CAST_SHRINK: &str = "mean expansions of EN 1561 annexes (from memory, 0.183 %) and room-temperature \
     charts (read, 0.165 to 0.17 %); no sub-zero measurement of a cast iron was found";

/// Gray iron.
pub static GRAY_IRON: Entry = Entry {
    id: "gray_iron",
    name: "gray iron",
    family: Family::Iron,
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
    family: Family::Iron,
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
    family: Family::Iron,
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
    family: Family::Iron,
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

/// Sintered copper steel.
pub static SINTERED_STEEL: Entry = Entry {
    id: "sintered_fc0208",
    name: "sintered copper steel FC-0208, 6.7 g/cm3",
    family: Family::Iron,
    chill_contraction: p(
        0.00185,
        0.00012,
        "m/m",
        Flag::Estimate,
        "ferrous shape; carbon steel's 0.1885 %, for pores do not change expansion, 2 % less for \
         its carbon; no measurement of a sintered steel below room temperature was found",
    ),
    shape: Shape::Ferrous,
    specific_heat: cp_of(
        FE_CP,
        1.0,
        0.03,
        "iron's curve: 2 % copper and 0.8 % carbon by Kopp and Neumann's rule change it by less \
         than 0.5 %",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 17.0),
            (100.0, 20.0),
            (150.0, 24.0),
            (200.0, 26.5),
            (250.0, 28.0),
            (293.0, 29.0),
            (400.0, 29.0),
            (500.0, 28.5),
        ],
        0.25,
        "45 for such a steel without pores, times the cube of its relative density of 0.85 (a rule \
         from memory); cold end as pearlitic ductile iron",
    ),
    density: p(
        6700.0,
        100.0,
        "kg/m3",
        Flag::Read,
        "the grade's middle density; MPIF 35 has FC-0208 from 5.8 to 7.2 g/cm3 (secondary table)",
    ),
    youngs: p(
        120e9,
        10e9,
        "Pa",
        Flag::Read,
        "sintered steel of 6.7 g/cm3, 17.5 Mpsi (reprint of MPIF 35 values, diffusion-alloyed grade)",
    ),
    poisson: p(0.25, 0.02, "", Flag::Memory, "MPIF 35 at 6.7 g/cm3"),
    tensile: p(
        345e6,
        0.0,
        "Pa",
        Flag::Memory,
        "FC-0208-50: the suffix is the least yield strength, 50 ksi, and it breaks no sooner; 35 to \
         75 ksi tensile over all densities read",
    ),
};

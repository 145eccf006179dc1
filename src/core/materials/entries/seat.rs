//! Alloys of valve seats. Seat makers' own mixtures differ from both: where
//! its coefficient is known, measure a cold diameter.

use super::{FE_CP, cp_of, estimated_k, p};
use crate::materials::catalogue::{Below, Entry, Family};
use crate::materials::expansion::Shape;
use crate::materials::property::Flag;

/// Cobalt-base seat alloy.
pub static COBALT_SEAT: Entry = Entry {
    id: "cobalt_r30006",
    name: "cobalt seat alloy R30006",
    family: Family::Seat,
    chill_contraction: p(
        0.002057,
        0.00017,
        "m/m",
        Flag::Estimate,
        "measured curve of nickel alloy N07718 (NIST; 0.2236 %) x 0.92: mean coefficients of \
         R30006 11.4e-6 from 20 to 100 C and 12.9e-6 to 200 C (from memory) are 0.89 and 0.96 of \
         N07718's; neither a sub-zero measurement nor a public sheet of it was found",
    ),
    shape: Shape::Nickel718 { factor: 0.92 },
    specific_heat: cp_of(
        FE_CP,
        0.93,
        0.05,
        "iron's curve x 0.93: cobalt, chromium, tungsten and carbon by Kopp and Neumann's rule; \
         423 J/kg/K read for room temperature",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 7.8),
            (100.0, 9.0),
            (150.0, 10.9),
            (200.0, 12.4),
            (250.0, 13.7),
            (293.0, 14.8),
            (400.0, 16.2),
            (500.0, 17.4),
        ],
        0.20,
        "14.8 at room temperature read for such alloys; the rest as 304 (NIST), which conducts \
         alike",
    ),
    density: p(
        8440.0,
        60.0,
        "kg/m3",
        Flag::Memory,
        "8.44 to 8.46 g/cm3; 8.5 read for R30016",
    ),
    youngs: p(
        209e9,
        12e9,
        "Pa",
        Flag::Memory,
        "castings; 220 GPa read for R30016",
    ),
    poisson: p(
        0.29,
        0.02,
        "",
        Flag::Estimate,
        "0.28 to 0.29 read for other cobalt-chromium alloys",
    ),
    tensile: p(
        700e6,
        0.0,
        "Pa",
        Flag::Memory,
        "castings, about 100 ksi; brittle, no standard's least value was read",
    ),
};

/// High-nickel seat alloy.
pub static NICKEL_SEAT: Entry = Entry {
    id: "nickel_n07718",
    name: "high-nickel seat alloy N07718",
    family: Family::Seat,
    chill_contraction: p(
        0.002236,
        0.00006,
        "m/m",
        Flag::Read,
        "NIST cryogenic polynomial of N07718, fit error 2 %",
    ),
    shape: Shape::Nickel718 { factor: 1.0 },
    specific_heat: cp_of(
        FE_CP,
        0.973,
        0.05,
        "iron's curve scaled to 435 J/kg/K at 21 C (read)",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 6.4),
            (100.0, 7.1),
            (150.0, 8.1),
            (200.0, 8.9),
            (250.0, 9.7),
            (293.0, 10.5),
            (400.0, 13.0),
            (500.0, 14.8),
        ],
        0.15,
        "NIST cryogenic polynomial to 200 K (read); 11.4 at 21 C, 12.5 at 93 C and 14.4 at 204 C \
         read in an alloy data sheet, 9.7 at 20 C by NIST: halfway at room temperature",
    ),
    density: p(
        8200.0,
        30.0,
        "kg/m3",
        Flag::Read,
        "alloy data sheets, 0.296 to 0.297 lb/in3",
    ),
    youngs: p(
        200e9,
        6e9,
        "Pa",
        Flag::Read,
        "alloy data sheet, 29.0 Mpsi at 70 F",
    ),
    poisson: p(0.29, 0.01, "", Flag::Read, "alloy data sheet, 70 F"),
    tensile: p(
        1240e6,
        0.0,
        "Pa",
        Flag::Memory,
        "solution treated and aged, least about 180 ksi",
    ),
};

//! Bronzes and brass: the shape of copper's contraction, scaled by how much
//! more or less the alloy expands above room temperature.

use super::{cp_of, estimated_k, p};
use crate::materials::catalogue::{Below, Entry, Family};
use crate::materials::expansion::Shape;
use crate::materials::property::Flag;

/// Specific heat of copper: Debye temperature 318.83 K and 2.906 mJ/mol/K2
/// fitted to Cp(298.15 K) = 24.44 and S(298.15 K) = 33.15 J/mol/K (CODATA, from
/// memory); within 1.6 % of the NIST cryogenic polynomial (read) from 70 to 300 K.
const COPPER_CP: &[(f64, f64)] = &[
    (70.0, 169.9),
    (77.355, 194.0),
    (100.0, 252.5),
    (125.0, 295.2),
    (150.0, 323.3),
    (200.0, 356.0),
    (250.0, 373.8),
    (293.15, 383.7),
    (350.0, 392.7),
    (400.0, 398.6),
    (450.0, 403.4),
    (500.0, 407.5),
];

/// Leaded tin bronze.
pub static LEADED_TIN_BRONZE: Entry = Entry {
    id: "bronze_c93200",
    name: "leaded tin bronze C93200 (SAE 660)",
    family: Family::Bronze,
    chill_contraction: p(
        0.00314,
        0.00014,
        "m/m",
        Flag::Estimate,
        "copper's measured curve (NIST, 236 readings; 0.303 %) times the ratio of the mean \
         coefficients above room temperature: 18.0e-6 (read, given for 20 to 100 C in one sheet, \
         to 200 or 300 C in others: 0.307 to 0.321 %); no sub-zero measurement of a cast bronze \
         was found",
    ),
    shape: Shape::Copper,
    specific_heat: cp_of(
        COPPER_CP,
        0.94,
        0.05,
        "copper's curve, mixed with tin, lead and zinc by Kopp and Neumann's rule (0.925), halfway \
         to the 360 to 377 J/kg/K read for room temperature",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 28.0),
            (100.0, 31.0),
            (150.0, 38.0),
            (200.0, 45.0),
            (250.0, 52.0),
            (293.0, 58.2),
            (400.0, 72.0),
            (500.0, 84.0),
        ],
        0.20,
        "58.2 at room temperature and 14.29 microohm cm read; the rest by Wiedemann and Franz's \
         law from that resistivity",
    ),
    density: p(
        8910.0,
        60.0,
        "kg/m3",
        Flag::Read,
        "alloy data sheet; 8800 in another",
    ),
    youngs: p(100e9, 6e9, "Pa", Flag::Read, "alloy data sheet, 14.5 Mpsi"),
    poisson: p(0.35, 0.02, "", Flag::Read, "secondary table"),
    tensile: p(
        241e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM B505 continuous cast, least tensile strength 35 ksi (secondary; 30 ksi centrifugal)",
    ),
};

/// Aluminum bronze.
pub static ALUMINUM_BRONZE: Entry = Entry {
    id: "bronze_c95400",
    name: "aluminum bronze C95400",
    family: Family::Bronze,
    chill_contraction: p(
        0.002763,
        0.000125,
        "m/m",
        Flag::Estimate,
        "copper's measured curve (NIST; 0.303 %) times 16.2e-6 (20 to 300 C, read) over copper's \
         17.77e-6; no sub-zero measurement of it was found",
    ),
    shape: Shape::Copper,
    specific_heat: cp_of(
        COPPER_CP,
        1.13,
        0.05,
        "copper's curve, mixed with aluminum and iron by Kopp and Neumann's rule (1.157), toward \
         the 419 to 440 J/kg/K read for room temperature",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 24.0),
            (100.0, 28.0),
            (150.0, 36.0),
            (200.0, 44.0),
            (250.0, 52.0),
            (293.0, 58.7),
            (400.0, 74.0),
            (500.0, 87.0),
        ],
        0.20,
        "58.7 at room temperature and 13.33 microohm cm read; the rest by Wiedemann and Franz's \
         law from that resistivity",
    ),
    density: p(7450.0, 50.0, "kg/m3", Flag::Read, "alloy data sheet"),
    youngs: p(
        107e9,
        6e9,
        "Pa",
        Flag::Memory,
        "15.5 Mpsi; 110 GPa read in a secondary table",
    ),
    poisson: p(0.34, 0.02, "", Flag::Read, "secondary table"),
    tensile: p(
        586e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM B505-08 continuous cast, least tensile strength 85 ksi (secondary; sand castings 75 \
         ksi from memory)",
    ),
};

/// Phosphor bronze.
pub static PHOSPHOR_BRONZE: Entry = Entry {
    id: "bronze_c51000",
    name: "phosphor bronze C51000",
    family: Family::Bronze,
    chill_contraction: p(
        0.00306,
        0.00011,
        "m/m",
        Flag::Estimate,
        "copper's measured curve (NIST; 0.303 %) times 17.8e-6 (read, given for 20 to 300 C in \
         four sheets, to 200 C in a fifth: 0.304 to 0.310 %) over copper's 17.77e-6; beryllium \
         copper of the same coefficient measures 0.296 % (NIST polynomial)",
    ),
    shape: Shape::Copper,
    specific_heat: cp_of(
        COPPER_CP,
        0.98,
        0.04,
        "copper's curve, mixed with tin by Kopp and Neumann's rule; 377 J/kg/K read for room \
         temperature",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 30.0),
            (100.0, 34.5),
            (150.0, 44.0),
            (200.0, 53.0),
            (250.0, 62.0),
            (293.0, 69.2),
            (400.0, 86.0),
            (500.0, 100.0),
        ],
        0.20,
        "69.2 at room temperature and 11.49 microohm cm read; the rest by Wiedemann and Franz's \
         law from that resistivity",
    ),
    density: p(8860.0, 30.0, "kg/m3", Flag::Read, "alloy data sheet"),
    youngs: p(110e9, 4e9, "Pa", Flag::Read, "alloy data sheet, 16 Mpsi"),
    poisson: p(0.33, 0.02, "", Flag::Read, "alloy data sheet"),
    tensile: p(
        380e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM B139 rod H04 over 1 in, least tensile strength 55 ksi (secondary)",
    ),
};

/// Free-cutting brass.
pub static FREE_CUTTING_BRASS: Entry = Entry {
    id: "brass_c36000",
    name: "free-cutting brass C36000",
    family: Family::Bronze,
    chill_contraction: p(
        0.00356,
        0.00016,
        "m/m",
        Flag::Estimate,
        "copper's measured curve (NIST; 0.303 %) times 20.5e-6 (20 to 300 C, read) over copper's \
         17.77e-6 gives 0.350 %; 65/35 brass 0.353 % (Ekin, from memory); naval brass, 3 % more \
         expansion above room temperature, 0.382 % from 293 to 80 K (NOAO GNIRS SDN0013.02 rev C)",
    ),
    shape: Shape::Copper,
    specific_heat: cp_of(
        COPPER_CP,
        0.985,
        0.04,
        "copper's curve, mixed with zinc and lead by Kopp and Neumann's rule; 377 J/kg/K read for \
         room temperature",
    ),
    specific_heat_below: Below::GoesOnStraight,
    conductivity: estimated_k(
        &[
            (77.0, 40.0),
            (100.0, 48.0),
            (150.0, 66.0),
            (200.0, 85.0),
            (250.0, 102.0),
            (293.0, 116.0),
            (400.0, 137.0),
            (500.0, 152.0),
        ],
        0.15,
        "116 at room temperature read; to 110 K the NIST cryogenic polynomial of C26000; between \
         and above by Wiedemann and Franz's law",
    ),
    density: p(8500.0, 30.0, "kg/m3", Flag::Read, "alloy data sheet"),
    youngs: p(97e9, 5e9, "Pa", Flag::Read, "alloy data sheet, 14 Mpsi"),
    poisson: p(0.34, 0.02, "", Flag::Memory, "brass"),
    tensile: p(
        275e6,
        0.0,
        "Pa",
        Flag::Read,
        "ASTM B16 bar, soft, over 1.5 in, least tensile strength 40 ksi (secondary)",
    ),
};

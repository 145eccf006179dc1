//! The housing and the part as they meet: how warm, how cold, and what the
//! thermometers leave open.

use crate::job::model::part::{Cold, Heat};
use crate::job::steps::drop_case::Warmed;
use crate::numerics::normal::TWO_SIDED;
use crate::quantity::report::Fault;
use crate::quantity::{Seconds, Temperature};
use crate::thermal::cold_drop::ColdDrop;
use crate::thermal::out_of_heat::{OutOfHeat, out_of_heat};

/// Standard uncertainty of a thermometer on a warmed housing or in a freezer, K:
/// from memory.
const THERMOMETER_K: f64 = 3.0;
/// Boiling water.
const BOILS_K: f64 = 373.15;
pub(super) fn not_colder() -> Fault {
    Fault::new(
        "cold_k",
        "the cold is no colder than the shop: enter its temperature as read, or choose that the \
         part goes in as it is",
    )
}

/// The housing as the part enters.
pub(super) fn at_entry(
    drop: &ColdDrop,
    heat: Heat,
    warmed: Option<Warmed>,
    out_s: f64,
) -> Result<Temperature, Fault> {
    let Some(warmed) = warmed else {
        return Ok(drop.room);
    };
    if warmed.to <= drop.room {
        return Err(Fault::new(
            "heat_k",
            "the housing is no warmer than the shop: enter its temperature as read, or choose \
             that it is not warmed",
        ));
    }
    if heat == Heat::Water && warmed.to.as_k() > BOILS_K {
        return Err(Fault::new(
            "heat_k",
            "water warms to 100 C, 212 F: enter its temperature, or choose an oven",
        ));
    }
    out_of_heat(&OutOfHeat {
        material: drop.block_material.clone(),
        bore: drop.block_bore,
        outer: drop.block_outer,
        length: drop.sleeve_length,
        start: warmed.to,
        room: drop.room,
        after: Seconds::from_s(out_s),
    })
}

/// What the thermometer and the housing's own expansion leave open of a warmed
/// bore, as a standard uncertainty of its diameter.
pub(super) fn warmth_m(drop: &ColdDrop) -> f64 {
    if drop.block <= drop.room {
        return 0.0;
    }
    let material = &drop.block_material;
    let grown = material.strain(drop.block) - material.strain(drop.room);
    let [less, more] = material.expansion_band();
    let by_material = grown * less.max(more) / TWO_SIDED;
    drop.block_bore.as_m()
        * by_material.hypot(grown / (drop.block.as_k() - drop.room.as_k()) * THERMOMETER_K)
}

/// What the thermometer leaves open of a cold that is read, as a standard
/// uncertainty of the part's diameter.
pub(super) fn coolness_m(drop: &ColdDrop, cold: Cold) -> f64 {
    if !cold.is_read() || drop.bath >= drop.room {
        return 0.0;
    }
    let material = &drop.sleeve_material;
    let shrunk = material.strain(drop.room) - material.strain(drop.bath);
    drop.sleeve_outer.as_m() * shrunk / (drop.room.as_k() - drop.bath.as_k()) * THERMOMETER_K
}

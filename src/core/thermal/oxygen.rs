//! The air that is left to breathe when nitrogen boils off in a room.
//!
//! Perfectly mixed air is a fiction that flatters: near the dewar, in pits and
//! at floor level the cold gas is far worse. Limit 19.5 % (US OSHA,
//! interpretation letter of 2 April 2007 to 29 CFR 1910.134).

use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{REFERENCE_K, Seconds, Temperature, Volume};

/// Share of oxygen in fresh air.
pub const FRESH: f64 = 0.2095;
/// Share below which air is oxygen-deficient.
pub const LIMIT: f64 = 0.195;
/// Volume of gas at 293.15 K over that of the liquid (CoolProp 8.0.0).
const EXPANSION: f64 = 692.02;

/// A room and the nitrogen in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OxygenInput {
    /// Volume of the room.
    pub room: Volume,
    /// Liquid nitrogen that boils off, litres.
    pub nitrogen_l: f64,
    /// Temperature of the room.
    pub temperature: Temperature,
    /// Air changes, per hour.
    pub air_changes_per_h: f64,
    /// Over which the nitrogen is released.
    pub release: Seconds,
}

/// Shares of oxygen.
#[derive(Clone, Debug, PartialEq)]
pub struct Oxygen {
    /// All at once, the gas pushing air out: the worst mixed case.
    pub sudden: f64,
    /// Slowly, mixing as it goes, no ventilation.
    pub mixed: f64,
    /// Least share with the ventilation given.
    pub least: f64,
    /// Litres that would bring a sudden release to 19.5 %.
    pub litres_for_limit: f64,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// The oxygen left in a room.
///
/// # Errors
/// Values outside their ranges.
///
/// # Example
/// One litre to ten cubic metres is 19.50 % (derived from CoolProp densities).
/// ```
/// use coldseat_core::quantity::{Seconds, Temperature, Volume};
/// use coldseat_core::thermal::oxygen::{OxygenInput, oxygen};
/// let o = oxygen(&OxygenInput {
///     room: Volume::from_m3(50.0),
///     nitrogen_l: 5.0,
///     temperature: Temperature::from_c(20.0),
///     air_changes_per_h: 2.0,
///     release: Seconds::from_s(600.0),
/// })?;
/// assert!((o.sudden - 0.195002).abs() < 5e-5);
/// assert!((o.mixed - 0.195492).abs() < 5e-5);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn oxygen(input: &OxygenInput) -> Result<Oxygen, Fault> {
    let room = bounds::ROOM.check("room_m3", input.room.as_m3())?;
    let litres = bounds::LITRES.check("nitrogen_l", input.nitrogen_l)?;
    let t_k = bounds::ROOM_TEMPERATURE.check("room_k", input.temperature.as_k())?;
    let changes = bounds::AIR_CHANGES.check("air_changes_per_h", input.air_changes_per_h)?;
    let release = bounds::RELEASE.check("release_s", input.release.as_s())?;
    let gas_per_litre = EXPANSION * t_k / REFERENCE_K * 1e-3;
    let gas = litres * gas_per_litre;
    let sudden = (FRESH * (room - gas) / room).max(0.0);
    let mixed = FRESH * (-gas / room).exp();
    let (source, vent) = (gas / release, room * changes / 3600.0);
    let least = if source < vent {
        FRESH * (1.0 - source / vent * -(-vent * release / room).exp_m1())
    } else {
        mixed
    };
    let mut findings = vec![Finding::note(
        Code::WorseAtTheFloor,
        "near the dewar, in pits and at floor level there is far less oxygen than this: oxygen \
         alarm, doors open, two people",
    )];
    if sudden < LIMIT {
        findings.push(Finding::stop(
            Code::OxygenLow,
            "released at once, this much nitrogen takes the room below 19.5 % oxygen: use less, \
             a larger room or the open air",
        ));
    }
    Ok(Oxygen {
        sudden,
        mixed,
        least,
        litres_for_limit: room * (1.0 - LIMIT / FRESH) / gas_per_litre,
        findings,
    })
}

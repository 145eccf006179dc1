//! A warmed housing between its heat and the drop.
//!
//! The ring round the bore is taken as one temperature (its Biot number in still
//! air is of the order 0.01) that both its faces lose to the room: the quick end,
//! a whole casting keeps its heat longer. Air as in the carry
//! ([`super::air::face_coefficient`]). Range: 70 to 500 K, up to an hour.

use super::air::face_coefficient;
use crate::materials::Material;
use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Seconds, Temperature};

/// A ring out of the heat; dimensions at 293.15 K.
#[derive(Clone, Debug, PartialEq)]
pub struct OutOfHeat {
    /// What it is made of.
    pub material: Material,
    /// Its bore.
    pub bore: Diameter,
    /// Its outside.
    pub outer: Diameter,
    /// Length of the bore.
    pub length: Length,
    /// Temperature as it leaves the heat.
    pub start: Temperature,
    /// Temperature of the room.
    pub room: Temperature,
    /// Since then.
    pub after: Seconds,
}

/// Steps over the time: each cools by well under a hundredth of what is left.
const STEPS: u32 = 64;

/// Its temperature after that time.
///
/// # Errors
/// A dimension, temperature or time outside its range, or a bore that is not
/// inside.
///
/// # Example
/// The first seconds go at the rate of Newton's law, 2 h dT / (density cp wall):
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Diameter, Length, Seconds, Temperature};
/// use coldseat_core::thermal::{air::face_coefficient, out_of_heat::{OutOfHeat, out_of_heat}};
/// let iron = Material::catalogue(MaterialId::GrayIron);
/// let (start, room) = (Temperature::from_c(150.0), Temperature::from_c(20.0));
/// let length = Length::from_mm(200.0);
/// let after = out_of_heat(&OutOfHeat {
///     material: iron.clone(),
///     bore: Diameter::from_mm(108.0),
///     outer: Diameter::from_mm(126.0),
///     length, start, room,
///     after: Seconds::from_s(20.0),
/// })?;
/// let h = face_coefficient(start, room, length).as_w_m2k();
/// let rate = 2.0 * h * 130.0 / (iron.density_kg_m3() * iron.specific_heat_j_kgk(start) * 0.009);
/// let lost = start.as_k() - after.as_k();
/// assert!((lost / (20.0 * rate) - 1.0).abs() < 0.02 && (1.0..3.0).contains(&lost));
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn out_of_heat(input: &OutOfHeat) -> Result<Temperature, Fault> {
    bounds::DIAMETER.check("block.bore_d_m", input.bore.as_m())?;
    bounds::DIAMETER.check("block.outer_d_m", input.outer.as_m())?;
    bounds::LENGTH.check("sleeve.length_m", input.length.as_m())?;
    let mut now_k = bounds::TEMPERATURE.check("heat_k", input.start.as_k())?;
    bounds::TEMPERATURE.check("room_k", input.room.as_k())?;
    let after_s = bounds::CARRY.check("heat_out_s", input.after.as_s())?;
    input.bore.check_inside("block.bore_d_m", input.outer)?;
    let wall_m = input.outer.radius().as_m() - input.bore.radius().as_m();
    let heavy = input.material.density_kg_m3() * wall_m;
    let table = input.material.lookup();
    let rate = |t_k: f64| {
        let h = face_coefficient(Temperature::from_k(t_k), input.room, input.length);
        2.0 * h.as_w_m2k() * (input.room.as_k() - t_k) / (heavy * table.specific_heat(t_k))
    };
    let dt = after_s / f64::from(STEPS);
    for _ in 0..STEPS {
        let middle = now_k + 0.5 * dt * rate(now_k);
        now_k += dt * rate(middle);
    }
    Ok(Temperature::from_k(now_k))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::materials::MaterialId;

    #[test]
    fn it_never_passes_the_room_and_no_time_changes_nothing() {
        let mut input = OutOfHeat {
            material: Material::catalogue(MaterialId::AluminiumA356),
            bore: Diameter::from_mm(44.9),
            outer: Diameter::from_mm(48.0),
            length: Length::from_mm(8.0),
            start: Temperature::from_c(150.0),
            room: Temperature::from_c(20.0),
            after: Seconds::from_s(0.0),
        };
        assert_eq!(out_of_heat(&input), Ok(input.start));
        input.after = Seconds::from_s(3600.0);
        let late = out_of_heat(&input).map(|t| t.as_c());
        assert!(late.is_ok_and(|c| (20.0..21.0).contains(&c)));
        input.outer = input.bore;
        assert!(out_of_heat(&input).is_err_and(|f| f.field == "block.bore_d_m"));
    }
}

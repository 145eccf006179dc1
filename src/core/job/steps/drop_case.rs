//! From what was typed to the cold drop: in a job from the sleeve and the bore as
//! measured; without one see [`super::drop_sheet`].
//!
//! Assumed: bath of liquid nitrogen at one atmosphere, the sleeve concentric
//! in its bore, block and shop at one temperature unless the block was
//! measured. The block is a ring: the bore and the wall round it.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::{Cold, Heat, Part};
use crate::job::model::place::Place;
use crate::job::model::reading::Lacks;
use crate::job::model::readings::Readings;
use crate::job::steps::shrink::{BATH, ShrinkBy, shrink_of};
use crate::materials::Material;
use crate::quantity::{Diameter, Length, Seconds, Temperature, ties};
use crate::thermal::cold_drop::ColdDrop;
use crate::thermal::drop_band::DropBand;
use crate::thermal::drop_odds::{FROST_MOST, Unknowns};

/// A drop ready to be worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct DropCase {
    /// The drop.
    pub drop: ColdDrop,
    /// Standard uncertainty of its fit.
    pub u_fit: Length,
    /// What stands in it by a usual value, not by the person's.
    pub assumed: Vec<Field>,
    /// Whether nothing of it is the person's: numbers to look at, no drop.
    pub example: bool,
    /// What of it is asked about and not yet answered.
    pub questioned: Vec<Place>,
    /// What the sleeve's shrink is taken from.
    pub shrink: ShrinkBy,
    /// Whether the sleeve as measured cold wants to be measured again.
    pub cold_is_odd: bool,
    /// Whether the carry was timed.
    pub carry_timed: bool,
    /// Most frost on it as it enters.
    pub frost_most: Length,
    /// What goes in.
    pub part: Part,
    /// What makes it cold.
    pub cold: Cold,
    /// What warms the housing.
    pub heat: Heat,
    /// The warmed housing, where it is warmed.
    pub warmed: Option<Warmed>,
    /// Clearance asked for at the bore, where it is the sheet's own.
    pub least: Option<Length>,
    /// What the shop needs from entering to home.
    pub needed: Seconds,
}

impl DropCase {
    /// What is not known of it, for its band.
    #[must_use]
    pub const fn unknowns(&self) -> Unknowns {
        Unknowns {
            u_fit: self.u_fit,
            carry_timed: self.carry_timed,
            frost_most: self.frost_most,
            insertion: self.needed,
        }
    }
}

/// A housing that was warmed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Warmed {
    /// As it leaves the heat.
    pub to: Temperature,
    /// The most it may be warmed to, by its maker's sheet; `None`: not entered.
    pub most: Option<Temperature>,
}

/// The case of a cylinder, from its sleeve and bore as measured (each brought
/// to 20 C), its own shrink and carry time; `carry` where it has none yet, and told.
///
/// # Errors
/// What is missing or cannot be used, all of it.
pub fn case_of(job: &Job, cylinder: u8, carry: Seconds) -> Result<DropCase, Lacks> {
    let r = Readings::of_cylinder(job, cylinder);
    let mut lacks = Lacks::default();
    let engine = lacks.take(r.head());
    let shrink = lacks.take(shrink_of(&r));
    let own_carry = lacks.take(r.own(Field::Carry));
    let all = [
        lacks.take(r.mean(Field::SleeveOd)),
        lacks.take(r.mean(Field::BoreD)),
        lacks.take(r.single(Field::SleeveTemperature)),
        lacks.take(r.single(Field::BlockTemperature)),
        lacks.take(r.engine(Field::SleeveId)),
        lacks.take(r.engine(Field::SleeveLength)),
        lacks.take(r.engine(Field::BlockWall)),
        lacks.take(r.engine(Field::RoomTemperature)),
        lacks.take(r.engine(Field::GaugeSleeve)),
        lacks.take(r.engine(Field::GaugeBore)),
        lacks.take(r.engine(Field::HomeNeeded)),
    ];
    let (Some(engine), Some(own_carry), Some(shrink)) = (engine, own_carry, shrink) else {
        return Err(lacks);
    };
    let [
        Some(od_m),
        Some(bore_m),
        Some(sleeve_k),
        Some(block_k),
        Some(inner_m),
        Some(length_m),
        Some(block_wall_m),
        Some(room_k),
        Some(u_sleeve_m),
        Some(u_bore_m),
        Some(needed_s),
    ] = all
    else {
        return Err(lacks);
    };
    let sleeve_material = shrink.material;
    let block_material = Material::catalogue(engine.block_material);
    let od20_m = od_m / (1.0 + sleeve_material.strain(Temperature::from_k(sleeve_k)));
    let bore20_m = bore_m / (1.0 + block_material.strain(Temperature::from_k(block_k)));
    let (carry, assumed) = match own_carry {
        Some(carry_s) => (Seconds::from_s(carry_s), Vec::new()),
        None => (carry, vec![Field::Carry]),
    };
    Ok(DropCase {
        drop: ColdDrop {
            sleeve_material,
            sleeve_inner: Diameter::from_m(inner_m),
            sleeve_outer: Diameter::from_m(od20_m),
            sleeve_length: Length::from_m(length_m),
            block_material,
            block_bore: Diameter::from_m(bore20_m),
            block_outer: Diameter::from_m(bore20_m + 2.0 * block_wall_m),
            bath: BATH,
            room: Temperature::from_k(room_k),
            block: Temperature::from_k(block_k),
            carry,
            air: None,
            lean: 0.0,
            frost: Length::default(),
            insertion: Seconds::default(),
        },
        u_fit: Length::from_m(u_sleeve_m.hypot(u_bore_m)),
        shrink: shrink.by,
        cold_is_odd: shrink.is_odd,
        carry_timed: assumed.is_empty(),
        frost_most: FROST_MOST,
        part: Part::FlangedSleeve,
        cold: Cold::Nitrogen,
        heat: Heat::AsItIs,
        warmed: None,
        least: None,
        needed: Seconds::from_s(needed_s),
        example: false,
        assumed,
        questioned: Vec::new(),
    })
}

/// What the clearance at the bore allows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DropVerdict {
    /// Room enough, even at the narrow end of the band.
    Free,
    /// It enters, with less room than asked for.
    Tight,
    /// At the narrow end of the band it may not enter.
    MayNotEnter,
    /// It does not enter.
    DoesNotEnter,
}

/// Judges a drop by the least clearance asked for at the bore.
#[must_use]
pub fn verdict(band: &DropBand, least: Length) -> DropVerdict {
    let nominal_m = band.nominal.clearance_entry.as_m();
    let narrow_m = band
        .early
        .clearance_entry
        .as_m()
        .min(band.late.clearance_entry.as_m());
    if nominal_m <= 0.0 {
        DropVerdict::DoesNotEnter
    } else if narrow_m <= 0.0 {
        DropVerdict::MayNotEnter
    } else if !ties::at_least(nominal_m, least.as_m()) {
        DropVerdict::Tight
    } else {
        DropVerdict::Free
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::demo::Demo;

    #[test]
    fn a_job_drops_with_its_own_readings() {
        let job = Demo::InchFive.job(0);
        let case = case_of(&job, 1, Seconds::from_s(8.0));
        assert!(case.is_ok_and(|c| {
            let fit = c.drop.sleeve_outer.as_thou() - c.drop.block_bore.as_thou();
            (1.0..1.5).contains(&fit) && c.drop.carry == Seconds::from_s(8.0)
        }));
        let (engine, entries) = Demo::InchFive.profile(0);
        let bare = Job::new(engine, entries);
        assert!(case_of(&bare, 1, Seconds::from_s(8.0)).is_err_and(|m| m.misses(Field::BoreD)));
    }
}

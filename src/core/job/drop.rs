//! From what was typed to the cold drop: without a job from a handful of
//! numbers, in a job from the sleeve and the bore as measured.
//!
//! Assumed: bath of liquid nitrogen at one atmosphere, the sleeve concentric
//! in its bore, block and shop at one temperature unless the block was
//! measured. The block is a ring: the bore and the wall round it.

use super::check::{Checked, Sheet, check};
use super::{Entries, Field, Job, Owner, Place, UnitSystem};
use crate::materials::{Material, MaterialId};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Seconds, Temperature};
use crate::thermal::cold_drop::ColdDrop;
use crate::thermal::drop_band::DropBand;
use crate::thermal::drop_odds::{FROST_MOST, Unknowns};

/// Liquid nitrogen boiling at one atmosphere, 77.355 K (reference fluid data).
pub const BATH: Temperature = Temperature::from_k(77.355);

/// What the cold drop without a job is asked with.
#[derive(Clone, Debug, PartialEq)]
pub struct DropSheet {
    /// Its numbers.
    pub entries: Entries,
    /// Units.
    pub units: UnitSystem,
    /// The sleeve.
    pub sleeve_material: MaterialId,
    /// The block.
    pub block_material: MaterialId,
}

/// A drop ready to be worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct DropCase {
    /// The drop.
    pub drop: ColdDrop,
    /// Standard uncertainty of its fit.
    pub u_fit: Length,
    /// Standard uncertainty of the contraction as a share of it, where the shop
    /// has measured its shrink.
    pub u_contraction: Option<f64>,
    /// Whether the carry was timed.
    pub carry_timed: bool,
}

impl DropCase {
    /// What is not known of it, for its band.
    #[must_use]
    pub const fn unknowns(&self) -> Unknowns {
        Unknowns {
            u_fit: self.u_fit,
            u_contraction: self.u_contraction,
            carry_timed: self.carry_timed,
            frost_most: FROST_MOST,
        }
    }
}

/// The fields of a sheet that keep it from being worked out.
pub type Missing = Vec<Field>;

impl DropSheet {
    /// For checking its fields.
    #[must_use]
    pub const fn sheet(&self) -> Sheet<'_> {
        Sheet {
            entries: &self.entries,
            units: self.units,
            cylinders: 0,
        }
    }

    /// The case, from the numbers typed.
    ///
    /// # Errors
    /// The fields that are empty or cannot be used.
    pub fn case(&self) -> Result<DropCase, Missing> {
        let sheet = self.sheet();
        let mut missing = Vec::new();
        let mut usable = |field| match check(&sheet, Place::of_engine(field)) {
            Checked::Good(si) | Checked::Questioned(si, _) => si,
            Checked::Empty | Checked::Refused(_) => {
                missing.push(field);
                f64::NAN
            }
        };
        let od_m = usable(Field::DropOd);
        let wall_m = usable(Field::DropWall);
        let length_m = usable(Field::DropLength);
        let fit_m = usable(Field::DropFit);
        let block_wall_m = usable(Field::DropBlockWall);
        let carry_s = usable(Field::DropCarry);
        let room_k = usable(Field::DropRoom);
        if !missing.is_empty() {
            return Err(missing);
        }
        let bore_m = od_m - fit_m;
        let room = Temperature::from_k(room_k);
        let u = |field| super::engine::preset_si(field, self.units).unwrap_or(0.0);
        Ok(DropCase {
            drop: ColdDrop {
                sleeve_material: Material::catalogue(self.sleeve_material),
                sleeve_inner: Diameter::from_m(od_m - 2.0 * wall_m),
                sleeve_outer: Diameter::from_m(od_m),
                sleeve_length: Length::from_m(length_m),
                block_material: Material::catalogue(self.block_material),
                block_bore: Diameter::from_m(bore_m),
                block_outer: Diameter::from_m(bore_m + 2.0 * block_wall_m),
                bath: BATH,
                room,
                block: room,
                carry: Seconds::from_s(carry_s),
                air: None,
                lean: 0.0,
                frost: Length::default(),
                insertion: Seconds::default(),
            },
            u_fit: Length::from_m(u(Field::GaugeSleeve).hypot(u(Field::GaugeBore))),
            u_contraction: None,
            carry_timed: false,
        })
    }
}

/// The case of a cylinder, from its sleeve and bore as measured (each brought
/// to 20 C) and its own carry time; `carry` where it has none yet.
///
/// # Errors
/// The fields still missing.
pub fn case_of(job: &Job, cylinder: u8, carry: Seconds) -> Result<DropCase, Missing> {
    let owner = Owner::Cylinder(cylinder);
    let mut missing = Vec::new();
    let mut mean = |field| {
        let values = job.entries.values(owner, field);
        if values.is_empty() {
            missing.push(field);
            return f64::NAN;
        }
        values.iter().map(|(_, si)| si).sum::<f64>() / values.len() as f64
    };
    let (od_m, bore_m) = (mean(Field::SleeveOd), mean(Field::BoreD));
    let sleeve_k = mean(Field::SleeveTemperature);
    let block_k = mean(Field::BlockTemperature);
    let mut of_engine = |field| {
        job.engine_si(field).unwrap_or_else(|| {
            missing.push(field);
            f64::NAN
        })
    };
    let inner_m = of_engine(Field::SleeveId);
    let length_m = of_engine(Field::SleeveLength);
    let block_wall_m = of_engine(Field::BlockWall);
    let room_k = of_engine(Field::RoomTemperature);
    let u_sleeve = of_engine(Field::GaugeSleeve);
    let u_bore = of_engine(Field::GaugeBore);
    if !missing.is_empty() {
        return Err(missing);
    }
    let sleeve_material = sleeve_material(job);
    let block_material = Material::catalogue(job.engine.block_material);
    let od20_m = od_m / (1.0 + sleeve_material.strain(Temperature::from_k(sleeve_k)));
    let bore20_m = bore_m / (1.0 + block_material.strain(Temperature::from_k(block_k)));
    let timed = job
        .entries
        .si(Place::of_cylinder(cylinder, Field::Carry, 0));
    let carry = timed.map_or(carry, Seconds::from_s);
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
        u_fit: Length::from_m(u_sleeve.hypot(u_bore)),
        // Two readings of one micrometer, over the shrink between them.
        u_contraction: job
            .engine_si(Field::ChillShrink)
            .filter(|m| *m > 0.0)
            .map(|shrink_m| core::f64::consts::SQRT_2 * u_sleeve / shrink_m),
        carry_timed: timed.is_some(),
    })
}

/// The sleeve's material, its contraction as the shop has measured it where it
/// has: the table's, scaled so that a sleeve of nominal diameter shrinks by as
/// much from shop to bath.
#[must_use]
pub fn sleeve_material(job: &Job) -> Material {
    let table = Material::catalogue(job.engine.sleeve_material);
    let measured = (|| {
        let shrink_m = job.engine_si(Field::ChillShrink).filter(|m| *m > 0.0)?;
        let od_m = job.engine_si(Field::NominalOd)?;
        let room = Temperature::from_k(job.engine_si(Field::RoomTemperature)?);
        let by_table =
            od_m * (table.strain(room) - table.strain(BATH)) / (1.0 + table.strain(room));
        Some(shrink_m / by_table)
    })();
    measured.map_or(table.clone(), |factor| table.with_expansion_scale(factor))
}

/// How high the flange of a sleeve may climb at most while it warms in a bore
/// that grips it at bath temperature.
#[must_use]
pub fn climb_ceiling(job: &Job) -> Option<Length> {
    let length_m = job.engine_si(Field::SleeveLength)?;
    let room = Temperature::from_k(job.engine_si(Field::RoomTemperature)?);
    let material = sleeve_material(job);
    Some(Length::from_m(
        length_m * (material.strain(room) - material.strain(BATH)),
    ))
}

/// The field a fault of the calculation is shown at.
#[must_use]
pub fn field_of(fault: &Fault) -> Field {
    let has = |part: &str| fault.field.contains(part);
    if has("inner") {
        Field::DropWall
    } else if has("length") {
        Field::DropLength
    } else if has("block_outer") || has("block.outer") {
        Field::DropBlockWall
    } else if has("bore") {
        Field::DropFit
    } else if has("carry") {
        Field::DropCarry
    } else if has("room") || has("block_k") || has("bath") {
        Field::DropRoom
    } else {
        Field::DropOd
    }
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
    } else if nominal_m < least.as_m() {
        DropVerdict::Tight
    } else {
        DropVerdict::Free
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::engine::presets;
    use crate::job::field::Scope;
    use crate::job::{Entries, Entry};
    use crate::thermal::drop_band::cold_drop_band;

    fn sheet(units: UnitSystem) -> DropSheet {
        DropSheet {
            entries: presets(Scope::Drop, units, 0),
            units,
            sleeve_material: MaterialId::GrayIron,
            block_material: MaterialId::GrayIron,
        }
    }

    fn case(sheet: &DropSheet) -> DropCase {
        match sheet.case() {
            Ok(case) => case,
            Err(missing) => unreachable!("{missing:?}"),
        }
    }

    #[test]
    fn the_presets_of_both_units_make_a_drop_that_enters_and_grips() {
        for units in [UnitSystem::Inch, UnitSystem::Metric] {
            let case = case(&sheet(units));
            let band = cold_drop_band(&case.drop, case.u_fit);
            let least = Length::from_thou(4.0);
            assert!(band.is_ok_and(|b| b.nominal.grip.is_some()
                && verdict(&b, least) == DropVerdict::Free
                && verdict(&b, Length::from_thou(9.0)) == DropVerdict::Tight));
        }
    }

    #[test]
    fn an_empty_sheet_names_every_field() {
        let mut empty = sheet(UnitSystem::Inch);
        empty.entries = Entries::default();
        assert_eq!(empty.case().map_err(|missing| missing.len()), Err(7));
    }

    #[test]
    fn a_wall_of_nothing_or_of_everything_is_no_sleeve() {
        for wall in ["0", "2.125", "3"] {
            let mut sheet = sheet(UnitSystem::Inch);
            let place = Place::of_engine(Field::DropWall);
            let entry = Entry::new(wall, Field::DropWall.unit(UnitSystem::Inch), 0);
            sheet.entries.put(place, entry);
            assert_eq!(sheet.case(), Err(vec![Field::DropWall]), "{wall}");
        }
    }

    #[test]
    fn a_fit_far_too_tight_does_not_enter() {
        let mut sheet = sheet(UnitSystem::Inch);
        let place = Place::of_engine(Field::DropFit);
        let entry = Entry::new("0.012", Field::DropFit.unit(UnitSystem::Inch), 0);
        sheet.entries.put(place, entry);
        let case = case(&sheet);
        let band = cold_drop_band(&case.drop, case.u_fit);
        assert!(band.is_ok_and(|b| verdict(&b, Length::default()) == DropVerdict::DoesNotEnter));
    }

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
        assert!(case_of(&bare, 1, Seconds::from_s(8.0)).is_err_and(|m| m.contains(&Field::BoreD)));
    }
}

//! From what was typed to the cold drop: without a job from a handful of
//! numbers, in a job from the sleeve and the bore as measured.
//!
//! Assumed: bath of liquid nitrogen at one atmosphere, the sleeve concentric
//! in its bore, block and shop at one temperature unless the block was
//! measured. The block is a ring: the bore and the wall round it.

use crate::job::model::check::{Checked, Sheet, check};
use crate::job::model::engine::preset_si;
use crate::job::model::entries::Entries;
use crate::job::model::field::Field;
use crate::job::model::field_kind::UnitSystem;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Lacks, Missing, Reading};
use crate::job::model::readings::Readings;
use crate::job::steps::shrink::{BATH, ShrinkBy, shrink_of};
use crate::materials::{Material, MaterialId};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Seconds, Temperature};
use crate::thermal::cold_drop::ColdDrop;
use crate::thermal::drop_band::DropBand;
use crate::thermal::drop_odds::{FROST_MOST, Unknowns};

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
            frost_most: FROST_MOST,
        }
    }
}

impl DropSheet {
    /// For checking its fields.
    #[must_use]
    pub const fn sheet(&self) -> Sheet<'_> {
        Sheet {
            entries: &self.entries,
            units: self.units,
            cylinders: 0,
            job: None,
        }
    }

    /// A number as it stands in the case: typed and usable, or, where nothing is
    /// typed, usual.
    #[must_use]
    pub fn si(&self, field: Field) -> Option<f64> {
        match self.entries.reading(Place::of_engine(field)) {
            Reading::Usable(si) => Some(si),
            Reading::Absent | Reading::NotHere => preset_si(field, self.units),
            Reading::Unusable(_) => None,
        }
    }

    /// The case, from the numbers typed; a usual value stands only where nothing
    /// is typed, and is told.
    ///
    /// # Errors
    /// What is missing or cannot be used, all of it.
    pub fn case(&self) -> Result<DropCase, Lacks> {
        let sheet = self.sheet();
        let mut lacks = Lacks::default();
        let mut assumed = Vec::new();
        let mut questioned = Vec::new();
        let mut number = |field| {
            let place = Place::of_engine(field);
            let worked = match check(&sheet, place) {
                Checked::Good(si) => Ok(si),
                Checked::Questioned(si, _) => {
                    questioned.push(place);
                    Ok(si)
                }
                Checked::Empty | Checked::NotHere => match preset_si(field, self.units) {
                    Some(usual) => {
                        // What the shop needs is its wish, nothing measured.
                        if field != Field::DropHome {
                            assumed.push(field);
                        }
                        Ok(usual)
                    }
                    None => Err(Lack::Missing(Missing {
                        owner: Owner::Block,
                        field,
                        places: 1,
                    })),
                },
                Checked::Refused(unusable) => Err(Lack::Unusable(unusable)),
            };
            lacks.take(worked)
        };
        let all = [
            number(Field::DropOd),
            number(Field::DropWall),
            number(Field::DropLength),
            number(Field::DropFit),
            number(Field::DropBlockWall),
            number(Field::DropCarry),
            number(Field::DropRoom),
            number(Field::DropHome),
        ];
        let [
            Some(od_m),
            Some(wall_m),
            Some(length_m),
            Some(fit_m),
            Some(block_wall_m),
            Some(carry_s),
            Some(room_k),
            Some(needed_s),
        ] = all
        else {
            return Err(lacks);
        };
        // All but what the shop needs.
        let example = assumed.len() + 1 == all.len();
        let gauges = [Field::GaugeSleeve, Field::GaugeBore].map(|f| preset_si(f, self.units));
        let [Some(u_sleeve_m), Some(u_bore_m)] = gauges else {
            return Err(lacks);
        };
        let bore_m = od_m - fit_m;
        let room = Temperature::from_k(room_k);
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
            u_fit: Length::from_m(u_sleeve_m.hypot(u_bore_m)),
            shrink: ShrinkBy::Table,
            cold_is_odd: false,
            carry_timed: false,
            needed: Seconds::from_s(needed_s),
            example,
            assumed,
            questioned,
        })
    }
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
        needed: Seconds::from_s(needed_s),
        example: false,
        assumed,
        questioned: Vec::new(),
    })
}

/// The field a fault of the calculation is shown at.
#[must_use]
pub fn field_of(fault: &Fault) -> Field {
    match fault.field.as_str() {
        "sleeve.inner_d_m" => Field::DropWall,
        "sleeve.length_m" => Field::DropLength,
        "block.outer_d_m" | "block" => Field::DropBlockWall,
        "block.bore_d_m" => Field::DropFit,
        "carry_s" => Field::DropCarry,
        "bath_k" | "room_k" | "block_k" => Field::DropRoom,
        _ => Field::DropOd,
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
    use crate::job::model::engine::presets;
    use crate::job::model::entries::Entry;
    use crate::job::model::field_kind::Scope;
    use crate::job::model::reading::Spot;
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
    fn a_usual_value_stands_only_where_nothing_is_typed_and_is_told() {
        let mut empty = sheet(UnitSystem::Inch);
        empty.entries = Entries::default();
        assert_eq!(case(&empty).assumed.len(), 7);
        let place = Place::of_engine(Field::DropCarry);
        let unit = Field::DropCarry.unit(UnitSystem::Inch);
        empty.entries.put(place, Entry::new("4O", unit, 0));
        let lacks = empty.case().map_err(|lacks| lacks.unusable.len());
        assert_eq!(lacks, Err(1), "never the usual 8 s");
        assert!(case(&sheet(UnitSystem::Inch)).assumed.is_empty());
    }

    #[test]
    fn a_wall_of_nothing_or_of_everything_is_no_sleeve() {
        for wall in ["0", "2.125", "3"] {
            let mut sheet = sheet(UnitSystem::Inch);
            let place = Place::of_engine(Field::DropWall);
            let entry = Entry::new(wall, Field::DropWall.unit(UnitSystem::Inch), 0);
            sheet.entries.put(place, entry);
            let named = |lacks: Lacks| {
                lacks
                    .unusable
                    .iter()
                    .all(|u| u.spot == Spot::Reading(place))
            };
            assert!(sheet.case().is_err_and(named), "{wall}");
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
        assert!(case_of(&bare, 1, Seconds::from_s(8.0)).is_err_and(|m| m.misses(Field::BoreD)));
    }
}

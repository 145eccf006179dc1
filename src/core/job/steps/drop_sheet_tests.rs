//! The cold drop without a job, from its texts to its case.

use super::drop_sheet::*;
use crate::job::model::engine::presets;
use crate::job::model::entries::Entries;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::field_kind::Scope;
use crate::job::model::field_kind::UnitSystem;
use crate::job::model::part::Cold;
use crate::job::model::place::Place;
use crate::job::model::reading::Lacks;
use crate::job::model::reading::Spot;
use crate::job::steps::drop_case::DropCase;
use crate::job::steps::drop_case::{DropVerdict, verdict};
use crate::materials::MaterialId;
use crate::quantity::Length;
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

fn with(changes: &[(Field, &str)]) -> DropSheet {
    let mut sheet = sheet(UnitSystem::Inch);
    for (field, text) in changes {
        let entry = Entry::new(*text, field.unit(UnitSystem::Inch), 2);
        sheet.entries.put(Place::of_engine(*field), entry);
    }
    sheet
}

fn refused_at(sheet: &DropSheet) -> Option<Field> {
    match sheet.case() {
        Ok(_) => None,
        Err(lacks) => lacks.refused.map(|fault| field_of(&fault)),
    }
}

#[test]
fn a_pin_is_solid_and_asked_for_no_wall() {
    let sheet = with(&[(Field::DropPart, "pin"), (Field::DropWall, "4O")]);
    assert!(!sheet.part_fields().contains(&Field::DropWall));
    assert!(case(&sheet).drop.sleeve_inner.as_m().abs() < 1e-300);
    let mut blank = DropSheet {
        entries: Entries::default(),
        ..sheet
    };
    blank.entries.put(
        Place::of_engine(Field::DropPart),
        Entry::new("pin", Field::DropPart.unit(UnitSystem::Inch), 2),
    );
    assert_eq!(blank.usual_text(Field::DropOd), "0.2500");
    assert!((case(&blank).drop.sleeve_outer.as_inch() - 0.25).abs() < 1e-12);
}

#[test]
fn each_cold_has_its_temperature_or_asks_for_it() {
    let at = |cold: &str, more: &[(Field, &str)]| {
        let all = [&[(Field::DropCold, cold)], more].concat();
        with(&all).case()
    };
    for (cold, k) in [
        ("nitrogen", 77.355),
        ("dry_ice_packed", 194.7),
        ("none", 293.15),
    ] {
        let case = at(cold, &[]);
        assert!(case.is_ok_and(|c| (c.drop.bath.as_k() - k).abs() < 1e-9 && c.assumed.is_empty()));
    }
    let freezer = at("freezer", &[]);
    assert!(
        freezer.is_ok_and(|c| c.assumed == [Field::DropColdAt]),
        "0 F is nobody's own"
    );
    assert!(at("outdoors", &[]).is_err_and(|l| l.misses(Field::DropColdAt)));
    let read = at("outdoors", &[(Field::DropColdAt, "-4")]);
    assert!(
        read.is_ok_and(|c| c.cold == Cold::Outdoors && (c.drop.bath.as_c() + 20.0).abs() < 1e-9)
    );
}

#[test]
fn a_housing_is_warmer_than_the_shop_and_water_does_not_boil() {
    let at = |heat: &str, to: &str| {
        refused_at(&with(&[(Field::DropHeat, heat), (Field::DropHeatAt, to)]))
    };
    assert_eq!(at("oven", "300"), None);
    assert_eq!(at("oven", "60"), Some(Field::DropHeatAt));
    assert_eq!(at("water", "213"), Some(Field::DropHeatAt));
    assert_eq!(at("water", "200"), None);
    let cold = with(&[(Field::DropCold, "outdoors"), (Field::DropColdAt, "70")]);
    assert_eq!(refused_at(&cold), Some(Field::DropColdAt));
    assert!(
        with(&[(Field::DropHeat, "oven")])
            .case()
            .is_err_and(|l| l.misses(Field::DropHeatAt))
    );
}

/// -4 F of a freezer, left standing when dry ice was chosen: 194.7 K is -109 F.
#[test]
fn a_temperature_read_of_another_cold_is_asked_about() {
    let asked = |cold: &str, at: &str| {
        let sheet = with(&[(Field::DropCold, cold), (Field::DropColdAt, at)]);
        case(&sheet).questioned == [Place::of_engine(Field::DropColdAt)]
    };
    assert!(!asked("freezer", "-4") && asked("dry_ice_packed", "-4"));
    assert!(!asked("dry_ice_packed", "-109") && asked("freezer", "-109"));
    assert!(!asked("outdoors", "-40"));
}

#[test]
fn a_number_that_this_drop_does_not_use_makes_no_example_a_drop() {
    let only = |cold: &str| {
        let mut sheet = with(&[(Field::DropCold, cold), (Field::DropColdAt, "-109")]);
        let numbers = sheet.entries.iter().map(|(place, _)| *place);
        let others: Vec<Place> = numbers
            .filter(|place| ![Field::DropCold, Field::DropColdAt].contains(&place.field))
            .collect();
        for place in others {
            let blank = Entry::new("", place.field.unit(UnitSystem::Inch), 2);
            sheet.entries.put(place, blank);
        }
        case(&sheet).example
    };
    assert!(only("nitrogen") && !only("dry_ice_packed"));
}

#[test]
fn a_word_of_no_part_is_no_sleeve() {
    for field in [Field::DropPart, Field::DropCold, Field::DropHeat] {
        let sheet = with(&[(field, "rod")]);
        let named = Spot::Reading(Place::of_engine(field));
        let at_it = |l: Lacks| l.unusable.len() == 1 && l.unusable[0].spot == named;
        assert!(sheet.case().is_err_and(at_it), "{}", field.spec().id);
    }
}

#[test]
fn what_the_thermometers_leave_open_is_in_the_fit() {
    let gauges = case(&with(&[])).u_fit;
    let warm = case(&with(&[
        (Field::DropHeat, "oven"),
        (Field::DropHeatAt, "302"),
    ]))
    .u_fit;
    // 3 K of 4.25 in of iron: 0.0001 in and more; the material's band besides.
    assert!(
        warm.as_inch() > 1.3e-4 && gauges.as_inch() < 1e-4,
        "{warm:?}"
    );
    assert!(case(&with(&[(Field::DropCold, "dry_ice_packed")])).u_fit == gauges);
    let none = case(&with(&[(Field::DropCold, "none")]));
    assert_eq!(none.frost_most, Length::default());
}

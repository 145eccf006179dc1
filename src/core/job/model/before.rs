//! The reading before: what a next one of its kind differs from in its last
//! digits only.

use crate::job::model::check::{Sheet, nominal};
use crate::job::model::engine::preset_si;
use crate::job::model::field_kind::{Measure, Plausible, Scope};
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::Reading;
use crate::quantity::format::number;

/// The reading whose last digits a hand may type over at a place, as it is shown:
/// what stands there, else the place before it, else the hole before, else the
/// nominal size or the usual one. `None` where nothing usable is, and of heights and offsets, which
/// may be any small number.
#[must_use]
pub fn reading_before(sheet: &Sheet<'_>, place: Place) -> Option<String> {
    let spec = place.field.spec();
    let is_size = matches!(spec.plausible, Plausible::Size { .. });
    if spec.measure != Measure::Length || !is_size {
        return None;
    }
    let usable = |place: Place| match sheet.reading(place) {
        Reading::Usable(si) => Some(si),
        Reading::Absent | Reading::NotHere | Reading::Unusable(_) => None,
    };
    let up_to = |owner: Owner, last: u8| {
        (0..=last).rev().find_map(|index| {
            usable(Place {
                owner,
                index,
                ..place
            })
        })
    };
    let of_holes = || match place.owner {
        Owner::Cylinder(cylinder) => (1..cylinder)
            .rev()
            .find_map(|before| up_to(Owner::Cylinder(before), place.index)),
        Owner::Block | Owner::Bank(_) => None,
    };
    let of_engine = || usable(Place::of_engine(nominal(place.field)?));
    let usual = || preset_si(place.field, sheet.units);
    let si = up_to(place.owner, place.index)
        .or_else(of_holes)
        .or_else(of_engine)
        .or_else(usual)?;
    Some(number(si, place.field.unit(sheet.units)))
}

/// The temperature that was read last in a job, to be taken over by one tap where
/// another is asked for; of the same kind first (a sleeve of a sleeve, a block of a
/// block). `None` where none stands that can be used.
#[must_use]
pub fn temperature_before(job: &Job, place: Place) -> Option<String> {
    if place.field.spec().measure != Measure::Temperature || place.owner == Owner::Block {
        return None;
    }
    let read = |wanted: &dyn Fn(Place) -> bool| {
        job.entries
            .iter()
            .filter(|(at, _)| at.owner != Owner::Block || at.field.spec().scope == Scope::Block)
            .filter(|(at, _)| at.field.spec().measure == Measure::Temperature && **at != place)
            .filter(|(at, _)| wanted(**at))
            .filter_map(|(at, entry)| match job.reading(*at) {
                Reading::Usable(si) => Some((entry.at, si)),
                Reading::Absent | Reading::NotHere | Reading::Unusable(_) => None,
            })
            .max_by_key(|(when, _)| *when)
    };
    let same = read(&|at| at.field == place.field);
    let (_, si) = same.or_else(|| read(&|_| true))?;
    Some(number(si, place.field.unit(job.engine.units)))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::field::Field;
    use crate::quantity::parse::Unit;

    #[test]
    fn the_place_before_then_the_hole_before_then_the_nominal() {
        let mut job = Demo::InchFive.job(0);
        let at = |cylinder: u8, index: u8| Place {
            owner: Owner::Cylinder(cylinder),
            field: Field::SleeveOd,
            index,
        };
        let mut put = |place: Place, text: &str| {
            job.entries.put(place, Entry::new(text, Unit::Inch, 0));
        };
        for cylinder in 1..=5 {
            for index in 0..6 {
                put(at(cylinder, index), "");
            }
        }
        put(Place::of_engine(Field::NominalOd), "4.44");
        put(at(1, 0), "4.4413");
        put(at(1, 1), "4.4o14");
        let job = job;
        let before = |place| reading_before(&Sheet::of(&job), place);
        // What cannot be read is passed by.
        assert_eq!(before(at(1, 2)).unwrap(), "4.4413");
        assert_eq!(before(at(3, 1)).unwrap(), "4.4413");
        let mut bare = job.clone();
        bare.entries.put(at(1, 0), Entry::new("", Unit::Inch, 0));
        let found = reading_before(&Sheet::of(&bare), at(2, 0));
        assert_eq!(found.unwrap(), "4.4400");
        // A height may be any small number.
        let height = Place {
            field: Field::SeatHeight,
            ..at(3, 1)
        };
        assert_eq!(before(height), None);
    }

    #[test]
    fn the_temperature_read_last_of_the_same_kind_is_offered() {
        let mut job = Demo::InchFive.job(0);
        let at = |cylinder: u8, field: Field| Place {
            owner: Owner::Cylinder(cylinder),
            field,
            index: 0,
        };
        let mut put = |place: Place, text: &str, when: u64| {
            job.entries
                .put(place, Entry::new(text, Unit::Fahrenheit, when));
        };
        for cylinder in 1..=5 {
            put(at(cylinder, Field::SleeveTemperature), "", 1);
            put(at(cylinder, Field::BlockTemperature), "", 1);
        }
        put(at(1, Field::SleeveTemperature), "66", 10);
        put(at(2, Field::SleeveTemperature), "67.5", 20);
        put(at(3, Field::SleeveTemperature), "6o", 30);
        put(at(1, Field::BlockTemperature), "71", 40);
        let before = |field| temperature_before(&job, at(4, field)).unwrap();
        assert_eq!(before(Field::SleeveTemperature), "67.5");
        assert_eq!(before(Field::BlockTemperature), "71.0");
        assert_eq!(temperature_before(&job, at(4, Field::SleeveOd)), None);
    }
}

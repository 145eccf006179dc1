//! The reading before: what a next one of its kind differs from in its last
//! digits only, or repeats.
//!
//! Only the nearest one counts. Where that cannot be used, is asked about or is in
//! dispute there is none: an older one is not taken in its stead.

use crate::job::model::check::{Checked, Sheet, check, nominal};
use crate::job::model::engine::preset_si;
use crate::job::model::field::Field;
use crate::job::model::field_kind::{Measure, Plausible};
use crate::job::model::job::Job;
use crate::job::model::place::{Millis, Owner, Place};
use crate::quantity::format::number;

/// The first place that something stands at: its number, where that is good.
fn nearest(sheet: &Sheet<'_>, places: impl Iterator<Item = Place>) -> Option<Option<f64>> {
    places
        .map(|place| check(sheet, place))
        .find_map(|checked| match checked {
            Checked::Empty | Checked::NotHere => None,
            Checked::Good(si) => Some(Some(si)),
            Checked::Questioned(..) | Checked::Refused(_) => Some(None),
        })
}

/// The reading whose last digits a hand may type over at a place, as it is shown:
/// what stands there, else the place before it, else the hole before, else the
/// nominal size or the usual one. `None` where the nearest of them cannot be used,
/// and of heights and offsets, which may be any small number.
#[must_use]
pub fn reading_before(sheet: &Sheet<'_>, place: Place) -> Option<String> {
    let spec = place.field.spec();
    let is_size = matches!(spec.plausible, Plausible::Size { .. });
    if spec.measure != Measure::Length || !is_size {
        return None;
    }
    let up_to = |owner: Owner| {
        (0..=place.index).rev().map(move |index| Place {
            owner,
            index,
            ..place
        })
    };
    let holes = match place.owner {
        Owner::Cylinder(cylinder) => 1..cylinder,
        Owner::Block | Owner::Bank(_) => 0..0,
    };
    let of_holes = holes.rev().flat_map(|hole| up_to(Owner::Cylinder(hole)));
    let of_engine = nominal(place.field).map(Place::of_engine);
    let places = up_to(place.owner).chain(of_holes).chain(of_engine);
    let si = match nearest(sheet, places) {
        Some(found) => found?,
        None => preset_si(place.field, sheet.units)?,
    };
    Some(number(si, place.field.unit(sheet.units)))
}

/// The temperature that was read last of the same body, and when, to be taken over
/// by one tap: a sleeve's of a sleeve, the block's of the block. Where the newest
/// cannot be used there is none, and none for what only a thermometer can tell
/// (whether a sleeve has come to the shop's temperature, whether block and sleeves
/// are even).
#[must_use]
pub fn temperature_before(job: &Job, place: Place) -> Option<(String, Millis)> {
    let same_body: &[Field] = match place.field {
        Field::SleeveTemperature => &[Field::SleeveTemperature, Field::SleevesNow],
        Field::BlockTemperature => &[Field::BlockTemperature, Field::BlockNow],
        _ => return None,
    };
    let (newest, entry) = job
        .entries
        .iter()
        .filter(|(at, entry)| {
            same_body.contains(&at.field) && **at != place && !entry.text.trim().is_empty()
        })
        .max_by_key(|(_, entry)| entry.at)?;
    match check(&Sheet::of(job), *newest) {
        Checked::Good(si) => Some((number(si, place.field.unit(job.engine.units)), entry.at)),
        _ => None,
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::quantity::parse::Unit;

    #[test]
    fn the_place_before_then_the_hole_before_then_the_nominal() {
        let mut job = Demo::InchFive.job(0);
        let at = |cylinder: u8, index: u8| Place {
            owner: Owner::Cylinder(cylinder),
            field: Field::SleeveOd,
            index,
        };
        let put = |job: &mut Job, place: Place, text: &str| {
            job.entries.put(place, Entry::new(text, Unit::Inch, 0));
        };
        for cylinder in 1..=5 {
            for index in 0..6 {
                put(&mut job, at(cylinder, index), "");
            }
        }
        put(&mut job, Place::of_engine(Field::NominalOd), "4.44");
        let before = |job: &Job, place| reading_before(&Sheet::of(job), place);
        assert_eq!(before(&job, at(2, 0)).unwrap(), "4.4400");
        put(&mut job, at(1, 0), "4.4413");
        assert_eq!(before(&job, at(1, 2)).unwrap(), "4.4413");
        assert_eq!(before(&job, at(3, 1)).unwrap(), "4.4413");
        // A height may be any small number.
        let height = Place {
            field: Field::SeatHeight,
            ..at(3, 1)
        };
        assert_eq!(before(&job, height), None);
        // What cannot be read, or is ten times off and asked about, is not passed
        // by for an older one.
        for spoilt in ["4.4o14", "44.414"] {
            put(&mut job, at(1, 1), spoilt);
            assert_eq!(before(&job, at(1, 2)), None, "{spoilt}");
            assert_eq!(before(&job, at(3, 1)), None, "{spoilt}");
        }
    }

    #[test]
    fn the_temperature_read_last_of_the_same_body_is_offered() {
        let mut job = Demo::InchFive.job(0);
        let of = |cylinder: u8, field: Field| Place {
            owner: Owner::Cylinder(cylinder),
            field,
            index: 0,
        };
        let put = |job: &mut Job, place: Place, text: &str, when: u64| {
            job.entries
                .put(place, Entry::new(text, Unit::Fahrenheit, when));
        };
        let whole = Place::of_engine;
        for cylinder in 1..=5 {
            put(&mut job, of(cylinder, Field::SleeveTemperature), "", 1);
            put(&mut job, of(cylinder, Field::BlockTemperature), "", 1);
        }
        for field in [Field::BlockNow, Field::SleevesNow] {
            put(&mut job, whole(field), "", 1);
        }
        // Hot from the wash, and of another body: neither is a sleeve's.
        put(&mut job, whole(Field::BlockOut), "120", 90);
        put(&mut job, of(1, Field::BlockTemperature), "71", 40);
        let before = |job: &Job, field| temperature_before(job, of(4, field));
        assert_eq!(before(&job, Field::SleeveTemperature), None);
        assert_eq!(
            before(&job, Field::BlockTemperature),
            Some(("71.0".to_owned(), 40))
        );
        put(&mut job, of(2, Field::SleeveTemperature), "67.5", 20);
        assert_eq!(
            before(&job, Field::SleeveTemperature),
            Some(("67.5".to_owned(), 20))
        );
        // The newest cannot be read: the older one is not taken in its stead.
        put(&mut job, of(3, Field::SleeveTemperature), "6o", 30);
        assert_eq!(before(&job, Field::SleeveTemperature), None);
        // What only a thermometer can tell is not offered.
        put(&mut job, of(1, Field::SleeveWarm), "68", 50);
        assert_eq!(before(&job, Field::SleeveWarm), None);
        assert_eq!(before(&job, Field::SleeveOd), None);
    }
}

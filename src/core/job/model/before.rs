//! The reading before: what a next one of its kind differs from in its last
//! digits only.

use crate::job::model::check::{Sheet, nominal};
use crate::job::model::engine::preset_si;
use crate::job::model::field_kind::{Measure, Plausible};
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
}

//! The order in which a hand measures: the places of a step one after the other, and
//! what comes after the last of a cylinder.

use crate::job::model::field::Field;
use crate::job::model::field_kind::{Measure, Places};
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::step::{StepSpec, Subject};

/// What a hand does when a reading is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HandOrder {
    /// All places of this cylinder, then the same step of the next cylinder.
    ByCylinder,
    /// This place over all cylinders, then the next place.
    ByPlace,
}

impl HandOrder {
    /// Both.
    pub const ALL: [Self; 2] = [Self::ByCylinder, Self::ByPlace];

    /// Its name in documents: for ever.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::ByCylinder => "by_cylinder",
            Self::ByPlace => "by_place",
        }
    }

    /// From its name in documents.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|order| order.id() == id)
    }
}

/// The places of a step of an owner, in the order in which they stand on the screen:
/// lists row by row, as many rows as are used and one more; what has several places,
/// round the clock, then level by level; then single numbers.
#[must_use]
pub fn places_of(job: &Job, spec: &StepSpec, owner: Owner) -> Vec<Place> {
    let measured = || {
        spec.fields
            .iter()
            .copied()
            .filter(|f| f.spec().measure != Measure::Choice && !f.is_beside())
    };
    let is_list = |f: &Field| matches!(f.spec().places, Places::List(_));
    let lists: Vec<Field> = measured().filter(is_list).collect();
    let of = |field, index| Place {
        owner,
        field,
        index,
    };
    let mut found = Vec::new();
    if let Some(most) = lists.iter().map(|f| f.spec().places.count()).min() {
        let stands = |row: &u8| {
            lists
                .iter()
                .any(|f| job.entries.get(of(*f, *row)).is_some())
        };
        // One more than are used.
        let rows = (0..most)
            .filter(stands)
            .max()
            .into_iter()
            .map(|row| row + 2);
        for row in 0..most.min(rows.chain([1]).max().into_iter().sum()) {
            found.extend(lists.iter().map(|field| of(*field, row)));
        }
    }
    let many = |f: &Field| f.spec().places != Places::One;
    let several = measured().filter(|f| !is_list(f) && many(f));
    found.extend(several.flat_map(|field| Place::all(owner, field)));
    let single = measured().filter(|f| !many(f));
    found.extend(single.flat_map(|field| Place::all(owner, field)));
    found
}

/// All places of a step in the order of the hand: of one owner, or of all cylinders
/// that get a sleeve where the step is a cylinder's.
fn all_places(job: &Job, spec: &StepSpec, owner: Owner, order: HandOrder) -> Vec<Place> {
    if spec.subject != Subject::Cylinder {
        return places_of(job, spec, owner);
    }
    let each: Vec<Vec<Place>> = job
        .cylinders()
        .map(|cylinder| places_of(job, spec, Owner::Cylinder(cylinder)))
        .collect();
    match order {
        HandOrder::ByCylinder => each.concat(),
        HandOrder::ByPlace => {
            // As one cylinder's places lie, whichever has most of them.
            let longest = each.iter().max_by_key(|places| places.len());
            let kinds = longest.into_iter().flatten();
            let of_kind = |like: &Place| {
                let like = (like.field, like.index);
                let same = move |p: &&Place| (p.field, p.index) == like;
                each.iter().flatten().filter(same).copied()
            };
            kinds.flat_map(of_kind).collect()
        }
    }
}

/// The place after one in the order of the hand; `None` after the last, and where the
/// place is none of this step's.
#[must_use]
pub fn place_after(job: &Job, spec: &StepSpec, place: Place, order: HandOrder) -> Option<Place> {
    let all = all_places(job, spec, place.owner, order);
    let at = all.iter().position(|p| *p == place)?;
    all.get(at + 1).copied()
}

/// The next place after one, in the order of the hand, at which nothing stands: a
/// reading that is there is written over by whoever goes to it, never by going on.
#[must_use]
pub fn empty_after(job: &Job, spec: &StepSpec, place: Place, order: HandOrder) -> Option<Place> {
    let all = all_places(job, spec, place.owner, order);
    let at = all.iter().position(|p| *p == place)?;
    let is_empty = |place: &Place| job.entries.get(*place).is_none();
    all.into_iter().skip(at + 1).find(is_empty)
}

/// The place before one in the order of the hand; `None` before the first.
#[must_use]
pub fn place_before(job: &Job, spec: &StepSpec, place: Place, order: HandOrder) -> Option<Place> {
    let all = all_places(job, spec, place.owner, order);
    let at = all.iter().position(|p| *p == place)?;
    all.get(at.checked_sub(1)?).copied()
}

/// The next place of a step at which nothing stands: of this owner, else of the
/// cylinders after it and round again.
#[must_use]
pub fn next_empty(job: &Job, spec: &StepSpec, owner: Owner, order: HandOrder) -> Option<Place> {
    let is_empty = |place: &Place| job.entries.get(*place).is_none();
    let own = places_of(job, spec, owner);
    if let Some(place) = own.into_iter().find(is_empty) {
        return Some(place);
    }
    let all = all_places(job, spec, owner, order);
    let from = all.iter().rposition(|p| p.owner == owner)?;
    let (before, after) = all.split_at(from + 1);
    after.iter().chain(before).copied().find(is_empty)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::step::StepId;
    use crate::quantity::parse::Unit;

    fn job() -> Job {
        let mut job = Demo::ALL[0].job(1);
        job.entries = Default::default();
        job
    }

    fn clock(cylinder: u8, index: u8) -> Place {
        Place::of_cylinder(cylinder, Field::SeatHeight, index)
    }

    #[test]
    fn round_the_clock_then_the_next_cylinder_that_gets_a_sleeve() {
        let mut job = job();
        job.left_out = vec![2];
        let seat = StepId::Seat.spec();
        let after = |place| place_after(&job, seat, place, HandOrder::ByCylinder);
        assert_eq!(after(clock(1, 0)), Some(clock(1, 1)));
        assert_eq!(after(clock(1, 3)), Some(clock(3, 0)));
        let last = job.cylinders().last().unwrap();
        assert_eq!(after(clock(last, 3)), None);
        let before = |place| place_before(&job, seat, place, HandOrder::ByCylinder);
        assert_eq!(before(clock(3, 0)), Some(clock(1, 3)));
        assert_eq!(before(clock(1, 0)), None);
    }

    #[test]
    fn one_place_over_all_cylinders_then_the_next_place() {
        let job = job();
        let seat = StepId::Seat.spec();
        let after = |place| place_after(&job, seat, place, HandOrder::ByPlace);
        assert_eq!(after(clock(1, 0)), Some(clock(2, 0)));
        let last = job.cylinders().last().unwrap();
        assert_eq!(after(clock(last, 0)), Some(clock(1, 1)));
        assert_eq!(after(clock(last, 3)), None);
    }

    #[test]
    fn every_place_comes_once_in_either_order() {
        let job = job();
        for spec in crate::job::step::STEPS {
            if spec.subject != Subject::Cylinder {
                continue;
            }
            for order in HandOrder::ALL {
                let all = all_places(&job, spec, Owner::Cylinder(1), order);
                let mut sorted = all.clone();
                sorted.sort();
                sorted.dedup();
                assert_eq!(sorted.len(), all.len(), "{}", spec.name);
                let mut walked = all.first().copied();
                let mut count = 0;
                while let Some(place) = walked {
                    count += 1;
                    walked = place_after(&job, spec, place, order);
                }
                assert_eq!(count, all.len(), "{}", spec.name);
            }
        }
    }

    #[test]
    fn a_list_grows_with_what_stands_in_it() {
        let mut job = job();
        let pull = StepId::Pull.spec();
        let rows = |job: &Job| {
            places_of(job, pull, Owner::Cylinder(1))
                .iter()
                .filter(|p| p.field == Field::PullReleased)
                .count()
        };
        assert_eq!(rows(&job), 1);
        let third = Place::of_cylinder(1, Field::PullReleased, 2);
        job.entries.put(third, Entry::new("0.002", Unit::Inch, 1));
        assert_eq!(rows(&job), 4);
    }

    #[test]
    fn what_is_empty_comes_next_and_round_again() {
        let mut job = job();
        let seat = StepId::Seat.spec();
        let next = |job: &Job, c| next_empty(job, seat, Owner::Cylinder(c), HandOrder::ByCylinder);
        assert_eq!(next(&job, 3), Some(clock(3, 0)));
        for index in 0..4 {
            job.entries
                .put(clock(3, index), Entry::new("0.002", Unit::Inch, 1));
        }
        assert_eq!(next(&job, 3), Some(clock(4, 0)));
        let last = job.cylinders().last().unwrap();
        for cylinder in 3..=last {
            for index in 0..4 {
                job.entries
                    .put(clock(cylinder, index), Entry::new("0.002", Unit::Inch, 1));
            }
        }
        assert_eq!(next(&job, last), Some(clock(1, 0)));
    }

    #[test]
    fn going_on_passes_over_what_stands() {
        let mut job = job();
        let seat = StepId::Seat.spec();
        let reading = || Entry::new("0.002", Unit::Inch, 1);
        let after = |job: &Job, place| empty_after(job, seat, place, HandOrder::ByCylinder);
        for place in [clock(1, 1), clock(1, 2), clock(2, 0)] {
            job.entries.put(place, reading());
        }
        assert_eq!(after(&job, clock(1, 0)), Some(clock(1, 3)));
        assert_eq!(after(&job, clock(1, 3)), Some(clock(2, 1)));
        // What cannot be read stands too.
        job.entries
            .put(clock(1, 3), Entry::new("4..1", Unit::Inch, 1));
        assert_eq!(after(&job, clock(1, 0)), Some(clock(2, 1)));
        let last = job.cylinders().last().unwrap();
        assert_eq!(after(&job, clock(last, 3)), None);
    }
}

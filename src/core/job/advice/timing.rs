//! How long a timed step is expected to take, with its band: the chill to
//! quiet, the carry that still leaves the clearance asked for, the hold-down
//! until sleeve and iron are even, the rest until the block has cooled.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::job::model::reading::{Lack, Lacks};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::drop::ask_chill;
use crate::job::steps::drop_case::case_of;
use crate::quantity::{Seconds, Temperature, TemperatureDelta};
use crate::thermal::drop_band::{carry_most, cold_drop_band};
use crate::thermal::rest::{RestInput, rest};

/// Carry where none is kept yet: the hold-down hardly depends on it.
const USUAL_CARRY: Seconds = Seconds::from_s(8.0);

/// What an expected time asks of the hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// Not before it is over: told at the late end of the band.
    AtLeast,
    /// Before it is over: told at the early end of the band.
    AtMost,
}

/// An expected time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expected {
    /// Early end of its band.
    pub low: Seconds,
    /// Late end.
    pub high: Seconds,
    /// What it asks.
    pub wanted: Wanted,
}

impl Expected {
    /// The moment at which the hand is called.
    #[must_use]
    pub const fn call(&self) -> Seconds {
        match self.wanted {
            Wanted::AtLeast => self.high,
            Wanted::AtMost => self.low,
        }
    }
}

/// The expected time of a step; `None` where there is none to tell.
///
/// # Errors
/// What it lacks.
pub fn expected(job: &Job, owner: Owner, step: StepId) -> Result<Option<Expected>, Lacks> {
    match (step, owner) {
        (StepId::Chill, _) => chilled(job).map(Some),
        (StepId::Drop, Owner::Cylinder(cylinder)) => carried(job, cylinder),
        (StepId::Hold, Owner::Cylinder(cylinder)) => even(job, cylinder),
        (StepId::Rest, _) => Ok(rested(job)?),
        _ => Ok(None),
    }
}

fn chilled(job: &Job) -> Result<Expected, Lacks> {
    let answer = ask_chill(&Readings::new(job, Owner::Block))?;
    Ok(Expected {
        low: answer.quiet_low,
        high: answer.quiet_high,
        wanted: Wanted::AtLeast,
    })
}

fn carried(job: &Job, cylinder: u8) -> Result<Option<Expected>, Lacks> {
    let case = case_of(job, cylinder, USUAL_CARRY)?;
    let least = Readings::new(job, Owner::Block).length(Field::EntryLeast)?;
    let [low, high] = carry_most(&case.drop, case.u_fit, least)?;
    Ok((high.as_s() > 0.0).then_some(Expected {
        low,
        high,
        wanted: Wanted::AtMost,
    }))
}

/// Sleeve and the ring of block round it within 1 K of each other.
fn even(job: &Job, cylinder: u8) -> Result<Option<Expected>, Lacks> {
    let case = case_of(job, cylinder, USUAL_CARRY)?;
    let band = cold_drop_band(&case.drop, case.u_fit)?;
    let ends = [&band.nominal, &band.early, &band.late].map(|a| a.equal);
    let Some(mut low) = ends[0] else {
        return Ok(None);
    };
    let mut high = low;
    for end in ends.into_iter().flatten() {
        low = if end < low { end } else { low };
        high = if end > high { end } else { high };
    }
    Ok(Some(Expected {
        low,
        high,
        wanted: Wanted::AtLeast,
    }))
}

/// By the block's own cooling from the wash to its last reading. Its band is
/// what one degree of the thermometer at that reading makes of it.
fn rested(job: &Job) -> Result<Option<Expected>, Lack> {
    let r = Readings::new(job, Owner::Block);
    let read = job.entries.get(Place::of_engine(Field::BlockNow));
    let started = job
        .steps
        .get(&(Owner::Block, StepId::Rest))
        .and_then(|record| record.started);
    let timed = read
        .zip(started)
        .and_then(|(read, started)| read.at.checked_sub(started));
    let Some(elapsed_s) = r
        .own(Field::RestTime)?
        .or_else(|| timed.map(|ms| ms as f64 / 1e3))
    else {
        return Ok(None);
    };
    let apart = r.engine(Field::ApartMost)?;
    // Of a temperature the scale of its unit is that of a difference.
    let degree_k = job.unit(Field::RoomTemperature).scale();
    let room_k = r.engine(Field::RoomTemperature)?;
    let (Some(start_k), Some(now_k)) = (r.own(Field::BlockOut)?, r.own(Field::BlockNow)?) else {
        return Ok(None);
    };
    let at = |now_k: f64| {
        rest(&RestInput {
            start: Temperature::from_k(start_k),
            now: Temperature::from_k(now_k),
            elapsed: Seconds::from_s(elapsed_s),
            room: Temperature::from_k(room_k),
            within: TemperatureDelta::from_k(apart * degree_k),
        })
    };
    let toward_room = if start_k > room_k { -1.0 } else { 1.0 };
    let Some(nominal) = at(now_k)? else {
        return Ok(None);
    };
    // A degree more may be warmer than it began: then the reading itself is the end.
    let end = |now_k: f64| match at(now_k) {
        Ok(Some(time)) => time,
        Ok(None) | Err(_) => nominal,
    };
    Ok(Some(Expected {
        low: end(now_k + toward_room),
        high: end(now_k - toward_room),
        wanted: Wanted::AtLeast,
    }))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::thermal::cold_drop::cold_drop;

    fn put(job: &mut Job, field: Field, text: &str) {
        let place = Place {
            owner: Owner::Block,
            field,
            index: 0,
        };
        let unit = job.unit(field);
        job.entries.put(place, Entry::new(text, unit, 0));
    }

    #[test]
    fn every_timed_step_of_the_demos_has_its_time() {
        for demo in Demo::ALL {
            let job = demo.job(0);
            let one = Owner::Cylinder(1);
            for (owner, step, wanted) in [
                (one, StepId::Chill, Wanted::AtLeast),
                (one, StepId::Drop, Wanted::AtMost),
                (one, StepId::Hold, Wanted::AtLeast),
            ] {
                let time = expected(&job, owner, step).unwrap().unwrap();
                assert!(time.wanted == wanted && time.low < time.high, "{step:?}");
                let call = time.call();
                assert!(call == time.low || call == time.high);
            }
        }
    }

    #[test]
    fn a_carry_longer_than_expected_leaves_less_clearance_than_asked_for() {
        let job = Demo::InchFive.job(0);
        let time = expected(&job, Owner::Cylinder(1), StepId::Drop)
            .unwrap()
            .unwrap();
        let mut case = case_of(&job, 1, time.high).unwrap();
        let least_m = job.engine_si(Field::EntryLeast).unwrap().unwrap();
        case.drop.carry = time.high;
        // The late end of the band is the larger shrink: nominally it is past.
        let clearance_m = cold_drop(&case.drop).unwrap().clearance_entry.as_m();
        assert!(clearance_m < least_m);
        case.drop.carry = time.low;
        let clearance_m = cold_drop(&case.drop).unwrap().clearance_entry.as_m();
        assert!(clearance_m > least_m);
    }

    #[test]
    fn a_block_that_halves_its_excess_every_hour_is_near_after_as_many_halves() {
        // 40 K over the room, 20 K after an hour: 2.5 K over it after four.
        let mut job = Demo::MetricEight.job(0);
        for (field, text) in [
            (Field::RoomTemperature, "20"),
            (Field::ApartMost, "2.5"),
            (Field::BlockOut, "60"),
            (Field::BlockNow, "40"),
            (Field::RestTime, "3600"),
        ] {
            put(&mut job, field, text);
        }
        let time = expected(&job, Owner::Block, StepId::Rest).unwrap().unwrap();
        assert!(time.low.as_s() < 14_400.0 && time.high.as_s() > 14_400.0);
        assert!(time.high.as_s() - time.low.as_s() < 0.2 * 14_400.0);
        put(&mut job, Field::BlockNow, "61");
        assert_eq!(expected(&job, Owner::Block, StepId::Rest), Ok(None));
    }
}

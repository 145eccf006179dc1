//! Resting: how long until a block out of the wash is near the room's
//! temperature, from two readings of its own.
//!
//! Newton's law of cooling: the difference to the room falls by the same share
//! in equal times. Assumed: one temperature in the iron (its Biot number in
//! still air is of the order 0.01), a room that stays as it is. The share is
//! not looked up but taken from the block itself, out of the wash and now, so
//! that size, cover and draught are in it.

use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Seconds, Temperature, TemperatureDelta};

/// A block that rests.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RestInput {
    /// Temperature out of the wash.
    pub start: Temperature,
    /// Temperature now.
    pub now: Temperature,
    /// Time between the two readings.
    pub elapsed: Seconds,
    /// Temperature of the room, of the sleeves.
    pub room: Temperature,
    /// How near to the room is near enough.
    pub within: TemperatureDelta,
}

/// Time from the wash until the block is near enough to the room; `None` where
/// the two readings do not tell: it has not come nearer, or has gone past.
///
/// # Errors
/// Values outside their ranges.
///
/// # Example
/// A standard exercise on Newton's law (from memory): 100 C cools to 80 C in
/// 10 minutes in a room of 20 C; it is at 40 C after ln 4 / ln (4/3) times as
/// long, 48.2 minutes.
/// ```
/// use coldseat_core::quantity::{Seconds, Temperature, TemperatureDelta};
/// use coldseat_core::thermal::rest::{RestInput, rest};
/// let time = rest(&RestInput {
///     start: Temperature::from_c(100.0),
///     now: Temperature::from_c(80.0),
///     elapsed: Seconds::from_s(600.0),
///     room: Temperature::from_c(20.0),
///     within: TemperatureDelta::from_k(20.0),
/// })?;
/// assert!(time.is_some_and(|t| (t.as_s() / 60.0 - 48.19).abs() < 0.01));
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn rest(input: &RestInput) -> Result<Option<Seconds>, Fault> {
    let start_k = bounds::TEMPERATURE.check("start_k", input.start.as_k())?;
    let now_k = bounds::TEMPERATURE.check("now_k", input.now.as_k())?;
    let room_k = bounds::ROOM_TEMPERATURE.check("room_k", input.room.as_k())?;
    let elapsed_s = bounds::RELEASE.check("elapsed_s", input.elapsed.as_s())?;
    let within_k = bounds::WITHIN.check("within_k", input.within.as_k())?;
    let (first, second) = (start_k - room_k, now_k - room_k);
    if first.abs() <= within_k {
        return Ok(Some(Seconds::from_s(0.0)));
    }
    let share = second / first;
    if !(share > 0.0 && share < 1.0) {
        return Ok(None);
    }
    Ok(Some(Seconds::from_s(
        elapsed_s * (within_k / first.abs()).ln() / share.ln(),
    )))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn input(start_c: f64, now_c: f64, within_k: f64) -> RestInput {
        RestInput {
            start: Temperature::from_c(start_c),
            now: Temperature::from_c(now_c),
            elapsed: Seconds::from_s(3600.0),
            room: Temperature::from_c(20.0),
            within: TemperatureDelta::from_k(within_k),
        }
    }

    #[test]
    fn a_cold_block_warms_by_the_same_law() {
        // Half-lives: 10, 5, 2.5 K below; 2.5 K after two hours.
        let time = rest(&input(10.0, 15.0, 2.5)).ok().flatten();
        assert!(time.is_some_and(|t| (t.as_s() - 7200.0).abs() < 1e-6));
    }

    #[test]
    fn readings_that_tell_nothing_give_no_time() {
        // Warmer than before; as warm as before; past the room's temperature.
        for now_c in [61.0, 60.0, 19.0] {
            assert_eq!(rest(&input(60.0, now_c, 3.0)), Ok(None), "{now_c}");
        }
        assert!(rest(&input(60.0, 40.0, 0.0)).is_err_and(|f| f.field == "within_k"));
    }

    #[test]
    fn near_from_the_start_takes_no_time() {
        let time = rest(&input(22.0, 21.0, 3.0));
        assert_eq!(time, Ok(Some(Seconds::from_s(0.0))));
    }
}

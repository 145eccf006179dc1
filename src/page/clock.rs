//! The clock of the timers: it counts by a clock that nobody can set, and says
//! where the one on the wall was moved meanwhile.
//!
//! While the page lives, time is the browser's monotonic clock. From one life of
//! the page to the next only the wall clock goes on; it is checked against the
//! last moment that was seen. Where it was moved, a timer has two times, and only
//! the person knows which one holds: a device that slept may have stopped its
//! monotonic clock, one that fetched the time anew has moved the other.

use crate::browser;
use std::cell::RefCell;

/// Both clocks may drift apart by so much between two looks, ms, before one of
/// them was moved.
const DRIFT: i64 = 3000;
/// Moves that are remembered.
const MOVES_MOST: usize = 50;

/// The wall clock was moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Move {
    /// When, in the page's time.
    at: u64,
    /// By how much, ms.
    by: i64,
}

/// Both clocks, and what the page makes of them.
#[derive(Clone, Debug, PartialEq)]
struct Clock {
    /// The page's time and the steady clock at the last look.
    time: u64,
    steady: f64,
    wall: u64,
    moves: Vec<Move>,
}

/// What has passed since a moment, in seconds: by the steady clock, and, where it
/// was moved, by the one on the wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Passed {
    /// The smaller of both.
    pub least_s: f64,
    /// The larger of both; the same where no clock was moved.
    pub most_s: f64,
}

impl Passed {
    /// Whether there are two times.
    #[must_use]
    pub fn is_in_doubt(self) -> bool {
        self.most_s - self.least_s > DRIFT as f64 / 1000.0
    }
}

impl Clock {
    /// Begins with both clocks and what was seen last: the page's time and the
    /// wall clock.
    fn start(wall: u64, steady: f64, last: Option<(u64, u64)>) -> Self {
        let mut clock = Self {
            time: wall,
            steady,
            wall,
            moves: Vec::new(),
        };
        if let Some((time, seen)) = last {
            match wall.checked_sub(seen) {
                Some(gone) => clock.time = time.saturating_add(gone),
                None => {
                    // Set back while the page was away: no time has passed that
                    // anyone could tell.
                    clock.time = time;
                    clock.moves.push(Move {
                        at: time,
                        by: wall as i64 - seen as i64,
                    });
                }
            }
        }
        clock
    }

    /// Looks at both clocks; the page's time.
    fn look(&mut self, wall: u64, steady: f64) -> u64 {
        let gone = (steady - self.steady).max(0.0) as u64;
        self.time = self.time.saturating_add(gone);
        let by = wall as i64 - self.wall as i64 - gone as i64;
        if by.abs() > DRIFT {
            if self.moves.len() >= MOVES_MOST {
                self.moves.remove(0);
            }
            self.moves.push(Move { at: self.time, by });
        }
        (self.steady, self.wall) = (steady, wall);
        self.time
    }

    fn passed(&self, since: u64) -> Passed {
        let steady = self.time.saturating_sub(since) as i64;
        let later = self.moves.iter().filter(|one| one.at >= since);
        let wall = (steady + later.map(|one| one.by).sum::<i64>()).max(0);
        Passed {
            least_s: steady.min(wall) as f64 / 1000.0,
            most_s: steady.max(wall) as f64 / 1000.0,
        }
    }
}

thread_local! {
    static CLOCK: RefCell<Option<Clock>> = const { RefCell::new(None) };
}

/// Where what was seen last is kept.
const KEY: &str = "coldseat/clock";

fn with<T>(does: impl FnOnce(&mut Clock) -> T) -> T {
    let (wall, steady) = (browser::now(), browser::steady_ms());
    CLOCK.with_borrow_mut(|clock| {
        let clock = clock.get_or_insert_with(|| {
            let last = browser::local_text(KEY).and_then(|text| {
                let (time, seen) = text.split_once(' ')?;
                Some((time.parse().ok()?, seen.parse().ok()?))
            });
            Clock::start(wall, steady, last)
        });
        clock.look(wall, steady);
        does(clock)
    })
}

/// The page's time, in milliseconds since 1970 as the wall clock said when the
/// page was first begun.
#[must_use]
pub fn time() -> u64 {
    with(|clock| clock.time)
}

/// What has passed since a moment of the page's time.
#[must_use]
pub fn passed(since: u64) -> Passed {
    with(|clock| clock.passed(since))
}

/// Keeps what is seen for the next life of the page, while a timer runs.
pub fn remember() {
    let seen = with(|clock| format!("{} {}", clock.time, clock.wall));
    browser::set_local_text(KEY, &seen);
}

/// Nothing is to be counted on.
pub fn forget() {
    browser::remove_local_text(KEY);
}

#[cfg(test)]
mod tests {
    use super::*;

    const HOUR: u64 = 3_600_000;

    fn at(clock: &mut Clock, wall: u64, steady: u64) -> u64 {
        clock.look(wall, steady as f64)
    }

    #[test]
    fn an_hour_forward_is_no_time_passed_but_is_offered() {
        let mut clock = Clock::start(10 * HOUR, 0.0, None);
        let since = at(&mut clock, 10 * HOUR + 500, 500);
        at(&mut clock, 11 * HOUR + 7500, 7500);
        let passed = clock.passed(since);
        assert_eq!((passed.least_s, passed.most_s), (7.0, 3607.0));
        assert!(passed.is_in_doubt());
        // A timer begun afterwards has one time.
        let later = clock.time;
        at(&mut clock, 11 * HOUR + 9500, 9500);
        assert!(!clock.passed(later + 1).is_in_doubt());
    }

    #[test]
    fn an_hour_back_does_not_make_nought_of_the_time_in_the_bath() {
        let mut clock = Clock::start(10 * HOUR, 0.0, None);
        let since = at(&mut clock, 10 * HOUR, 0);
        at(&mut clock, 10 * HOUR + 600_000, 600_000);
        at(&mut clock, 9 * HOUR + 610_000, 610_000);
        let passed = clock.passed(since);
        assert_eq!((passed.least_s, passed.most_s), (0.0, 610.0));
    }

    #[test]
    fn small_drift_and_reloads_ask_nothing() {
        let mut clock = Clock::start(10 * HOUR, 0.0, None);
        let since = at(&mut clock, 10 * HOUR, 0);
        for second in 1..600 {
            at(&mut clock, 10 * HOUR + second * 1001, second * 1000);
        }
        assert!(!clock.passed(since).is_in_doubt());
        let seen = Some((clock.time, clock.wall));
        // Half a minute later the page is there again.
        let again = Clock::start(clock.wall + 30_000, 5.0, seen);
        let passed = again.passed(since);
        assert!(!passed.is_in_doubt());
        assert!((passed.least_s - 629.0).abs() < 1.0, "{passed:?}");
    }

    #[test]
    fn set_back_while_the_page_was_away_is_told() {
        let mut clock = Clock::start(10 * HOUR, 0.0, None);
        let since = at(&mut clock, 10 * HOUR, 0);
        at(&mut clock, 10 * HOUR + 60_000, 60_000);
        let mut again = Clock::start(9 * HOUR, 0.0, Some((clock.time, clock.wall)));
        at(&mut again, 9 * HOUR + 10_000, 10_000);
        let passed = again.passed(since);
        assert_eq!((passed.least_s, passed.most_s), (0.0, 70.0));
    }
}

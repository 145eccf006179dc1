//! A plain sleeve that nothing but its fit holds: it is home where it was to stand,
//! within the gap limit above or below, and level within the tilt limit.
//!
//! No pull can prove it, and no pull brings back what went too low. Its readings
//! say of this sleeve all that can be said: no gap can close under it later, so its
//! deck is not judged as one.

use crate::job::model::field::Field;
use crate::job::model::reading::Lack;
use crate::job::model::readings::Readings;
use crate::job::steps::tools::{TINY_M, length_figure};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::{Figure, OneNumber};
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::metrology::seat::{Seat, SeatVerdict};
use crate::numerics::normal;
use crate::quantity::Length;
use crate::quantity::code::Code;

/// Chance below which something is taken as shown not to be.
const UNLIKELY: f64 = 0.05;

/// A seat without what is true of a ledge alone: nothing is misread that lies below
/// the height aimed at, and its chance has two sides.
fn two_sided(r: &Readings, mut seat: Seat) -> Result<Seat, Lack> {
    seat.findings.retain(|f| f.code != Code::BelowLedge);
    let (limit_m, u_m) = (r.engine(Field::GapLimit)?, seat.u_gap.as_m());
    let off_m = seat.gap_mean.as_m();
    let within = |m: f64| {
        if u_m > 0.0 {
            normal::cumulative(m / u_m)
        } else {
            f64::from(m >= -TINY_M)
        }
    };
    let chance = |off_m: f64| (within(limit_m - off_m) + within(limit_m + off_m) - 1.0).max(0.0);
    seat.p_seated = chance(off_m);
    seat.best = chance(0.0);
    // No depth has a part in it.
    seat.best_with_half_depth = seat.best;
    Ok(seat)
}

/// What the last pull says: higher than it was to stand it goes on, lower it stops.
///
/// # Errors
/// What it lacks.
pub fn after_pull(r: &Readings, seat: Seat) -> Worked {
    let seat = two_sided(r, seat)?;
    let (off_m, limit_m) = (seat.gap_mean.as_m(), r.engine(Field::GapLimit)?);
    let (signal, next) = if off_m < -limit_m - TINY_M {
        (Signal::Stop, Next::SetTooLow(Length::from_m(-off_m)))
    } else if off_m > limit_m + TINY_M {
        (Signal::Wait, Next::SetHigh(seat.gap_mean))
    } else {
        (Signal::Go, Next::CheckSeat)
    };
    Ok(Verdict {
        number: Some(number(&seat)),
        findings: seat.findings.clone(),
        answer: Answer::Pulls(seat),
        ..Verdict::plain(signal, next)
    })
}

/// What the four clocks say, at the confidence asked for.
///
/// # Errors
/// What it lacks.
pub fn set(r: &Readings, seat: Seat) -> Worked {
    let mut seat = two_sided(r, seat)?;
    let (off_m, limit_m) = (seat.gap_mean.as_m(), r.engine(Field::GapLimit)?);
    let lowest_m = seat
        .gap
        .iter()
        .map(|gap| gap.as_m())
        .fold(f64::MAX, f64::min);
    let tilted = seat.tilt.as_m() > r.engine(Field::TiltLimit)? + TINY_M;
    let shown = seat.p_seated >= r.engine(Field::Confidence)?;
    let (verdict, signal, next) = if lowest_m < -limit_m - TINY_M {
        let low = Next::SetLowAt(Length::from_m(-lowest_m));
        (SeatVerdict::NotSeated, Signal::Stop, low)
    } else if off_m > limit_m + TINY_M || (off_m > 0.0 && seat.p_seated <= UNLIKELY) {
        (
            SeatVerdict::PullAgain,
            Signal::Wait,
            Next::SetHigh(seat.gap_mean),
        )
    } else if tilted {
        (
            SeatVerdict::NotSeated,
            Signal::Stop,
            Next::Tilted(seat.tilt),
        )
    } else if shown && seat.findings.is_empty() {
        (SeatVerdict::Seated, Signal::Go, Next::Seated)
    } else {
        (SeatVerdict::Undecided, Signal::Look, Next::SetUndecided)
    };
    seat.verdict = verdict;
    Ok(Verdict {
        number: Some(number(&seat)),
        findings: seat.findings.clone(),
        answer: Answer::Seat(seat),
        ..Verdict::plain(signal, next)
    })
}

fn number(seat: &Seat) -> OneNumber {
    let (off_m, u_m) = (seat.gap_mean.as_m(), seat.u_gap.as_m());
    length_figure(Figure::AboveTarget, off_m, Some(u_m))
}

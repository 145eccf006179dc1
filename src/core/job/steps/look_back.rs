//! What the steps of a cylinder say of each other, and its holes of each other:
//! what a later step shows to be wrong, the state of a cylinder, the step to work
//! on, the hole that springs back otherwise than the rest.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Spot};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::seat;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{CylinderReport, StepReport};
use crate::job::verdict::signal::{Signal, State};
use crate::numerics::order::in_order;
use crate::quantity::code::Code;
use crate::quantity::report::Finding;

fn signal_of(steps: &[StepReport], id: StepId) -> Signal {
    let found = steps.iter().find(|s| s.id == id);
    found.map_or(Signal::None, |s| s.signal) // a step of another subject
}

fn demote(steps: &mut [StepReport], id: StepId, next: Next) {
    if let Some(step) = steps
        .iter_mut()
        .find(|s| s.id == id && s.signal == Signal::Go)
    {
        step.signal = Signal::Look;
        step.next = next;
    }
}

/// Takes back what a later step shows to be wrong, and what an earlier one is
/// still needed for.
pub fn look_back(steps: &mut [StepReport]) {
    let stuck = |next: &Next| {
        matches!(
            next,
            Next::StoppedHigh(_) | Next::StoppedUnsure | Next::NotSeated(_) | Next::Tilted(_)
        )
    };
    let proof = [StepId::Pull, StepId::Seat]
        .into_iter()
        .find(|id| steps.iter().any(|s| s.id == *id && stuck(&s.next)));
    if let Some(proof) = proof {
        demote(steps, StepId::WarmHeight, Next::ProvedWrong(proof));
    }
    if signal_of(steps, StepId::Seat) == Signal::Stop {
        demote(steps, StepId::Pull, Next::ProvedWrong(StepId::Seat));
    }
    // High before its pull, and home since.
    let seated = |s: &StepReport| s.id == StepId::Seat && s.next == Next::Seated;
    if signal_of(steps, StepId::Seat) == Signal::Go && steps.iter().any(seated) {
        let warm = steps.iter_mut().find(|s| s.id == StepId::WarmHeight);
        if let Some(warm) = warm.filter(|s| s.signal == Signal::Wait && s.next == Next::PullHome) {
            warm.signal = Signal::Go;
            warm.next = Next::PulledHome;
        }
    }
    // What a later step cannot read it cannot confirm.
    for (earlier, later) in [
        (StepId::WarmHeight, StepId::Pull),
        (StepId::WarmHeight, StepId::Seat),
        (StepId::Pull, StepId::Seat),
    ] {
        // Of its own readings, or of another sleeve of its deck.
        let unread = |s: &StepReport| {
            let held = matches!(s.next, Next::Mend(_) | Next::Refused);
            s.id == later && (held || !s.unusable.is_empty())
        };
        if steps.iter().any(unread) {
            demote(steps, earlier, Next::First(later));
        }
    }
    // A sleeve that went in, and nobody says that it was clean and cold; a hole that
    // was bored, and nobody says that the bar was on its centre.
    for (first, then) in [
        (StepId::Clean, StepId::Drop),
        (StepId::Chill, StepId::Drop),
        (StepId::Centre, StepId::Bore),
    ] {
        let settled = steps.iter().any(|s| s.id == first && s.is_settled());
        if !settled {
            demote(steps, then, Next::First(first));
        }
    }
}

/// The state of a cylinder, from its steps: the same in strip, list and record.
#[must_use]
pub fn state(job: &Job, cylinder: u8, steps: &[StepReport]) -> State {
    if job.dispute(Spot::LeftOut).is_err() || job.dispute(Spot::Engine).is_err() {
        return State::Look;
    }
    if job.left_out.contains(&cylinder) {
        return State::LeftOut;
    }
    if !job.entries.any_of(Owner::Cylinder(cylinder)) {
        return State::NotBegun;
    }
    let of = |id| steps.iter().find(|s| s.id == id);
    // What the pistons want of the gasket is no fault of the hole.
    let own = || steps.iter().filter(|s| s.id != StepId::Protrusion);
    let worst = own().map(|s| s.signal).max();
    let seat = of(StepId::Seat);
    let seated = seat.is_some_and(|s| s.signal == Signal::Go && s.next == Next::Seated);
    if worst == Some(Signal::Stop) {
        State::Stop
    } else if own().any(|s| !s.unusable.is_empty()) {
        State::Look
    } else if seated {
        State::Seated
    } else if worst == Some(Signal::Look) {
        State::Look
    } else if seat.is_some_and(|s| s.signal == Signal::Marked) {
        State::Marked
    } else {
        let done = steps.iter().filter(|s| s.is_settled()).count();
        State::InWork(done as u8, steps.len() as u8)
    }
}

/// The step to work on: the first begun and not settled; else the first not
/// settled after the last that was begun or passed over. Steps that a job does
/// without hold nothing up.
#[must_use]
pub fn current(steps: &[StepReport]) -> StepId {
    let last = steps
        .iter()
        .rposition(|s| s.begun || s.passed_over || s.next == Next::Marked)
        .map_or(0, |at| at + 1); // none begun: from the first
    steps
        .iter()
        .find(|s| s.begun && !s.is_settled())
        .or_else(|| steps.iter().skip(last).find(|s| !s.is_settled()))
        .or(steps.last())
        .map_or(StepId::OldBore, |s| s.id) // a cylinder has steps
}

/// The cylinder to work on: one that wants a look, else one in work or not begun,
/// else the first that gets a sleeve.
#[must_use]
pub fn to_open(reports: &[CylinderReport]) -> Option<u8> {
    let find = |wanted: fn(State) -> bool| {
        let mut of_state = reports.iter().filter(|r| wanted(r.state));
        of_state.next().map(|r| r.cylinder)
    };
    find(|s| matches!(s, State::Stop | State::Look))
        .or_else(|| find(|s| matches!(s, State::InWork(..))))
        .or_else(|| find(|s| s == State::NotBegun))
        .or_else(|| find(|s| s != State::LeftOut))
}

/// A hole that springs back otherwise than the job's others by more than four
/// standard uncertainties of the height: a chip or a burr, perhaps. Where one of
/// them cannot be used nothing is compared, and it is said.
pub fn compare_returns(job: &Job, reports: &mut [CylinderReport]) {
    let returns: Vec<Result<Option<f64>, Lack>> = reports
        .iter()
        .map(|report| seat::last_return(&Readings::of_cylinder(job, report.cylinder)))
        .collect();
    let height_u = job.engine_si(Field::GaugeHeight);
    let known: Vec<Option<f64>> = returns
        .iter()
        .map(|one| match one {
            Ok(back) => *back,
            Err(_) => None, // told below, or half read
        })
        .collect();
    let unusable = returns
        .iter()
        .any(|one| matches!(one, Err(Lack::Unusable(_))));
    for (index, report) in reports.iter_mut().enumerate() {
        let Some(mine_m) = known[index] else {
            continue;
        };
        let Some(step) = report.steps.iter_mut().find(|s| s.id == StepId::Pull) else {
            continue;
        };
        if unusable {
            step.findings.push(Finding::look(
                Code::ReturnsNotCompared,
                "a pull of another hole cannot be read: whether this one springs back like the \
                 others is not known",
            ));
            step.signal = step.signal.max(Signal::Look);
            continue;
        }
        let others: Vec<f64> = known
            .iter()
            .enumerate()
            .filter(|(other, _)| *other != index)
            .filter_map(|(_, back)| *back)
            .collect();
        let others = in_order(others, f64::total_cmp);
        // One other hole cannot tell which of the two is odd.
        let Ok(Some(u_m)) = height_u else {
            continue;
        };
        if others.len() >= 2 && (mine_m - others[others.len() / 2]).abs() > 4.0 * u_m {
            step.findings.push(Finding::look(
                Code::OddReturn,
                "springs back otherwise than the other holes: look for a chip or a burr under \
                 the flange",
            ));
            step.signal = step.signal.max(Signal::Look);
        }
    }
}

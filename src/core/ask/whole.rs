//! A step seen over all cylinders, and a phase over its steps.

use crate::job::model::step::StepId;
use crate::job::verdict::{CylinderReport, Signal, State};

/// A step over all cylinders that get a sleeve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OfAll {
    /// The worst of them; good only when all may go on.
    pub signal: Signal,
    /// Whether all of them pass it over.
    pub passed_over: bool,
    /// So many have it behind them.
    pub done: usize,
    /// Of so many.
    pub of: usize,
}

/// A step over all cylinders.
#[must_use]
pub fn step_of_all(reports: &[CylinderReport], step: StepId) -> OfAll {
    let steps: Vec<_> = reports
        .iter()
        .filter(|r| r.state != State::LeftOut)
        .filter_map(|r| r.step(step))
        .collect();
    let done = steps.iter().filter(|s| s.is_settled()).count();
    let worst = steps.iter().map(|s| s.signal).max();
    OfAll {
        signal: match worst {
            Some(Signal::Go | Signal::Marked) if done < steps.len() => Signal::None,
            Some(worst) => worst,
            None => Signal::None,
        },
        passed_over: !steps.is_empty() && steps.iter().all(|s| s.passed_over),
        done,
        of: steps.len(),
    }
}

/// A step as a list of steps shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Listed {
    /// What it says.
    pub signal: Signal,
    /// Skipped or not for this job.
    pub passed_over: bool,
    /// Whether the hand may go on from it.
    pub done: bool,
}

/// A phase over its steps.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PhaseTally {
    /// A look or a stop in it; nothing else.
    pub signal: Signal,
    /// So many steps are behind the hand.
    pub done: usize,
    /// Of so many.
    pub of: usize,
}

/// A phase over its steps.
#[must_use]
pub fn phase_tally(steps: &[Listed]) -> PhaseTally {
    let worst = steps.iter().map(|s| s.signal).max();
    PhaseTally {
        signal: match worst {
            Some(worst @ (Signal::Look | Signal::Stop)) => worst,
            _ => Signal::None,
        },
        done: steps.iter().filter(|s| s.done).count(),
        of: steps.len(),
    }
}

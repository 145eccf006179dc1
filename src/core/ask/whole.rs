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
    /// A look or a stop in it, or that it is done and partly marked; nothing else.
    pub signal: Signal,
    /// Whether all of it is skipped, or not for this job.
    pub passed_over: bool,
    /// So many steps are behind the hand.
    pub done: usize,
    /// Of so many.
    pub of: usize,
}

/// A phase over its steps: a look or a stop in it first; then, once all of it is
/// behind the hand, whether some of that was marked and not measured.
#[must_use]
pub fn phase_tally(steps: &[Listed]) -> PhaseTally {
    let done = steps.iter().filter(|s| s.done).count();
    let worst = steps.iter().map(|s| s.signal).max();
    let is_marked = |s: &Listed| s.signal == Signal::Marked;
    PhaseTally {
        signal: match worst {
            Some(worst @ (Signal::Look | Signal::Stop)) => worst,
            _ if done == steps.len() && steps.iter().any(is_marked) => Signal::Marked,
            _ => Signal::None,
        },
        passed_over: !steps.is_empty() && steps.iter().all(|s| s.passed_over),
        done,
        of: steps.len(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_phase_tells_what_is_wrong_and_what_was_only_marked() {
        let step = |signal, done| Listed {
            signal,
            passed_over: false,
            done,
        };
        let signal = |steps: &[Listed]| phase_tally(steps).signal;
        let good = step(Signal::Go, true);
        let marked = step(Signal::Marked, true);
        assert_eq!(signal(&[good, good]), Signal::None);
        assert_eq!(signal(&[good, marked]), Signal::Marked);
        let open = step(Signal::Wait, false);
        assert_eq!(signal(&[marked, open]), Signal::None);
        assert_eq!(phase_tally(&[marked, open]).done, 1);
        let stop = step(Signal::Stop, false);
        assert_eq!(signal(&[marked, stop, good]), Signal::Stop);
        let skipped = Listed {
            passed_over: true,
            ..step(Signal::None, true)
        };
        assert!(phase_tally(&[skipped, skipped]).passed_over);
        assert!(!phase_tally(&[skipped, good]).passed_over);
    }
}

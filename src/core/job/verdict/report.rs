//! What a step says, and what a cylinder says.

use crate::job::model::place::Place;
use crate::job::model::reading::{Lack, Missing, Standing, Unusable};
use crate::job::model::step::StepId;
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::OneNumber;
use crate::job::verdict::next::Next;
use crate::job::verdict::signal::{Signal, State};
use crate::job::verdict::work_to::WorkTo;
use crate::quantity::report::{Fault, Finding};

/// What came out of a step's calculation.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// What the hand may do.
    pub signal: Signal,
    /// The one number.
    pub number: Option<OneNumber>,
    /// What to do next.
    pub next: Next,
    /// What the calculation found beside it.
    pub findings: Vec<Finding>,
    /// Its answer.
    pub answer: Answer,
    /// What the number does not count, because it is missing.
    pub lacks: Vec<Missing>,
}

/// A verdict, or what it lacks.
pub type Worked = Result<Verdict, Lack>;

impl Verdict {
    /// A signal and what to do, without a number.
    #[must_use]
    pub const fn plain(signal: Signal, next: Next) -> Self {
        Self {
            signal,
            number: None,
            next,
            findings: Vec::new(),
            answer: Answer::None,
            lacks: Vec::new(),
        }
    }

    /// One piece of advice at each signal.
    #[must_use]
    pub fn advice(step: StepId, signal: Signal, number: OneNumber) -> Self {
        Self {
            number: Some(number),
            ..Self::plain(signal, Next::Advice(step, signal))
        }
    }
}

/// What a step says.
#[derive(Clone, Debug, PartialEq)]
pub struct StepReport {
    /// The step.
    pub id: StepId,
    /// Whether anything was typed.
    pub begun: bool,
    /// Whether everything needed was.
    pub complete: bool,
    /// What the hand may do.
    pub signal: Signal,
    /// The one number.
    pub number: Option<OneNumber>,
    /// The number to work to, before anything is cut.
    pub work_to: Standing<WorkTo>,
    /// What to do next.
    pub next: Next,
    /// What the calculation found beside it.
    pub findings: Vec<Finding>,
    /// Why it refused.
    pub fault: Option<Fault>,
    /// Its answer.
    pub answer: Answer,
    /// Readings it hangs on that are asked about and not yet answered.
    pub questioned: Vec<Place>,
    /// What it hangs on that cannot be used.
    pub unusable: Vec<Unusable>,
    /// What its number does not count, because it is missing.
    pub lacks: Vec<Missing>,
    /// Whether it was skipped or is not for this job.
    pub passed_over: bool,
}

impl StepReport {
    /// Whether the hand may go on to the next step.
    #[must_use]
    pub fn is_settled(&self) -> bool {
        let measured = self.complete
            && self.unusable.is_empty()
            && matches!(self.signal, Signal::Marked | Signal::Go | Signal::Look);
        // A flange that stands high before its pull is what the pull is for.
        let to_pull = self.complete && self.next == Next::PullHome;
        measured || to_pull || (self.passed_over && self.signal < Signal::Stop)
    }
}

/// What a cylinder says.
#[derive(Clone, Debug, PartialEq)]
pub struct CylinderReport {
    /// Which.
    pub cylinder: u8,
    /// Its steps.
    pub steps: Vec<StepReport>,
    /// Its state.
    pub state: State,
    /// The step to work on.
    pub current: StepId,
    /// Chance that all measured sleeves of its deck are home.
    pub all_home: Option<f64>,
}

impl CylinderReport {
    /// The report of a step.
    #[must_use]
    pub fn step(&self, id: StepId) -> Option<&StepReport> {
        self.steps.iter().find(|s| s.id == id)
    }

    /// Whether its flange is home.
    #[must_use]
    pub fn is_seated(&self) -> bool {
        self.step(StepId::Seat)
            .is_some_and(|s| s.signal == Signal::Go && s.next == Next::Seated)
    }
}

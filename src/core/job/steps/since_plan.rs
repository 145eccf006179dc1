//! What a plan of heights that is worked to keeps from being good: holes where something
//! is still to be done, readings older than what was done.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveEnds;
use crate::job::model::place::{Millis, Owner, Place};
use crate::job::model::reading::{Lack, Missing};
use crate::job::model::step::StepId;
use crate::job::steps::kept_plan::{KeptHole, Task, kept_plan};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{CylinderReport, StepReport};
use crate::job::verdict::signal::Signal;

/// How deep the seat lies: read again once the ledge is cut.
pub const DEPTHS: [Field; 3] = [Field::CounterboreDepth, Field::LedgeInner, Field::StepDepth];

/// When the last of some tasks of a hole was ticked, in this plan or one before it.
fn ticked_at(job: &Job, cylinder: u8, tasks: &[Task]) -> Result<Option<Millis>, Lack> {
    let mut last = None;
    for task in tasks {
        let place = task.place(cylinder);
        job.reading(place).number()?;
        last = last.max(job.entries.get(place).map(|entry| entry.at));
    }
    Ok(last)
}

/// Readings of a hole that are older than what was done there: as good as missing.
/// Read at the very moment of the tick counts as read after it.
///
/// # Errors
/// A tick that cannot be used.
pub fn older_than_work(job: &Job, cylinder: u8, field: Field) -> Result<Option<Missing>, Lack> {
    if !job.listed_stand().has_field(field) {
        return Ok(None);
    }
    let tasks: &[Task] = if DEPTHS.contains(&field) {
        &[Task::Cut]
    } else {
        &Task::ALL
    };
    let Some(since) = ticked_at(job, cylinder, tasks)? else {
        return Ok(None);
    };
    let owner = Owner::Cylinder(cylinder);
    Ok(read_before(job, owner, field, since))
}

/// Readings of a field that are older than a moment.
pub fn read_before(job: &Job, owner: Owner, field: Field, since: Millis) -> Option<Missing> {
    let is_old = |place: &Place| job.entries.get(*place).is_some_and(|e| e.at < since);
    let places = Place::all(owner, field).filter(is_old).count() as u8;
    (places > 0).then_some(Missing {
        owner,
        field,
        places,
    })
}

/// How what is missing is asked for: a reading that stands there and does not count was
/// made before the work, and is to be read again.
pub fn ask_for(job: &Job, missing: Missing) -> Next {
    let mut all = Place::all(missing.owner, missing.field);
    if all.all(|place| job.entries.get(place).is_some_and(|e| !e.text.is_empty())) {
        Next::ReadAgain(missing)
    } else {
        Next::Measure(missing)
    }
}

/// What a step of a hole is read from, that work there makes old.
const fn read_of(step: StepId) -> &'static [Field] {
    match step {
        StepId::Counterbore => &[Field::CounterboreDepth, Field::LedgeInner],
        StepId::StepDepth => &[Field::StepDepth],
        StepId::WarmHeight => &[Field::WarmHeight],
        StepId::Pull => &[Field::PullReleased],
        StepId::Seat => &[
            Field::CounterboreDepth,
            Field::LedgeInner,
            Field::StepDepth,
            // A sleeve that was out is pulled again.
            Field::PullReleased,
            Field::SeatHeight,
        ],
        _ => &[],
    }
}

/// Holds the ledge and the seat of each hole while its part of a plan is not done, or
/// not measured since.
pub fn hold_to_plan(job: &Job, reports: &mut [CylinderReport]) {
    // What cannot be used holds the seat already.
    if job.sleeve_ends() != Ok(SleeveEnds::Proud) {
        return;
    }
    for bank in 0..job.engine.banks() {
        let plan = kept_plan(job, bank);
        for report in &mut *reports {
            let cylinder = report.cylinder;
            if job.engine.bank_of(cylinder) != bank || job.left_out.contains(&cylinder) {
                continue;
            }
            for step in &mut report.steps {
                let fields = read_of(step.id);
                if fields.is_empty() {
                    continue;
                }
                hold_open(step, cylinder, &plan);
                for field in fields {
                    hold_old(step, older_than_work(job, cylinder, *field));
                }
            }
        }
    }
}

/// Nothing is good where the plan is not done, and what is still to cut is the plan's.
fn hold_open(step: &mut StepReport, cylinder: u8, plan: &Result<Option<Vec<KeptHole>>, Lack>) {
    match plan {
        Ok(plan) => {
            let mut holes = plan.iter().flatten();
            if holes.any(|hole| hole.cylinder == cylinder && hole.is_open()) {
                hold(step, Signal::Wait, Next::PlanOpen(cylinder));
                if let Next::CutDeeper(_) = step.next {
                    step.next = Next::PlanOpen(cylinder);
                }
            }
        }
        Err(lack) => hold_lack(step, lack),
    }
}

/// What was read before the work is as good as missing: nothing is told of it. But a pull
/// that loaded more than it may did so to this ledge, whatever was done there since.
fn hold_old(step: &mut StepReport, old: Result<Option<Missing>, Lack>) {
    match old {
        Ok(Some(missing)) => {
            let overloaded = Next::Advice(StepId::Pull, Signal::Stop);
            if step.signal != Signal::Marked && step.unusable.is_empty() && step.next != overloaded
            {
                step.signal = Signal::Wait;
                step.next = Next::ReadAgain(missing);
                step.number = None;
                step.answer = Answer::None;
            }
            step.complete = false;
            if !step.lacks.contains(&missing) {
                step.lacks.push(missing);
            }
        }
        Ok(None) => {}
        Err(lack) => hold_lack(step, &lack),
    }
}

fn hold_lack(step: &mut StepReport, lack: &Lack) {
    match lack {
        Lack::Missing(missing) => hold(step, Signal::Wait, Next::Measure(*missing)),
        Lack::Unusable(unusable) => {
            hold(step, Signal::Look, Next::Mend(unusable.spot));
            if step.begun && !step.unusable.contains(unusable) {
                step.unusable.push(unusable.clone());
            }
        }
        Lack::Refused(fault) => {
            if step.signal == Signal::Go {
                step.fault = Some(fault.clone());
            }
            hold(step, Signal::Look, Next::Refused);
        }
    }
}

/// What is good is not; what is worse stays.
fn hold(step: &mut StepReport, signal: Signal, next: Next) {
    if step.signal == Signal::Go {
        step.signal = signal;
        step.next = next;
    }
}

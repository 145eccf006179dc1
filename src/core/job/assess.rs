//! What the numbers of a cylinder say: step by step a signal, one number, and
//! what to do next; over all of them the state shown in the strip.
//!
//! Nothing is stored: the same entries give the same report. Verdicts come
//! from the calculations, asked in [`super::ask`]; this module decides what
//! comes first when readings are missing, refused or questioned.

use super::ask::{Hindrance, Outcome, View};
use super::check::{Checked, Sheet, check};
use super::field::Places;
use super::report::{Answer, CylinderReport, Next, Signal, State, StepReport};
use super::step::{Calculation, StepId, StepSpec, Subject, steps_of};
use super::{Field, Job, Owner, Place};
use crate::quantity::report::Level;

/// All cylinders, 1 first, those left out too.
#[must_use]
pub fn assess(job: &Job) -> Vec<CylinderReport> {
    (1..=job.engine.cylinders)
        .map(|cylinder| assess_cylinder(job, cylinder))
        .collect()
}

/// One cylinder.
#[must_use]
pub fn assess_cylinder(job: &Job, cylinder: u8) -> CylinderReport {
    let steps: Vec<StepReport> = steps_of(Subject::Cylinder)
        .map(|spec| assess_step(job, cylinder, spec))
        .collect();
    let settled = |s: &StepReport| s.complete && matches!(s.signal, Signal::Go | Signal::Look);
    let current = steps
        .iter()
        .find(|s| !settled(s))
        .or(steps.last())
        .map_or(StepId::Sleeve, |s| s.id);
    let seated = steps
        .iter()
        .any(|s| s.id == StepId::Seat && s.next == Next::Seated);
    let worst = steps.iter().map(|s| s.signal).max().unwrap_or(Signal::None);
    let state = if job.left_out.contains(&cylinder) {
        State::LeftOut
    } else if !job.entries.any_of(Owner::Cylinder(cylinder)) {
        State::NotBegun
    } else if worst == Signal::Stop {
        State::Stop
    } else if seated {
        State::Seated
    } else if worst == Signal::Look {
        State::Look
    } else {
        let done = steps.iter().filter(|s| settled(s)).count();
        State::InWork(done as u8, steps.len() as u8)
    };
    CylinderReport {
        cylinder,
        steps,
        state,
        current,
    }
}

fn assess_step(job: &Job, cylinder: u8, spec: &StepSpec) -> StepReport {
    let owner = Owner::Cylinder(cylinder);
    let sheet = Sheet {
        entries: &job.entries,
        units: job.engine.units,
        cylinders: job.engine.cylinders,
    };
    let mut begun = false;
    let mut refused = None;
    let mut questioned = Vec::new();
    for field in spec.fields {
        for index in 0..field.spec().places.count() {
            let place = Place {
                owner,
                field: *field,
                index,
            };
            match check(&sheet, place) {
                Checked::Empty => continue,
                Checked::Good(_) => {}
                Checked::Questioned(..) => questioned.push(place),
                Checked::Refused(_) => refused = refused.or(Some(place)),
            }
            begun = true;
        }
    }
    let missing = spec
        .needed
        .iter()
        .find_map(|field| missing_of(job, cylinder, *field));
    let view = View { job, cylinder };
    let outcome = match spec.calculation {
        Calculation::SleeveForm => view.sleeve_form(),
        Calculation::Counterbore => view.counterbore(),
        Calculation::Fit => view.fit(),
        Calculation::ColdDrop => Ok(Outcome::plain(Signal::Go, Next::DropReady)),
        Calculation::Height => view.heights(),
        Calculation::Pulls => view.pulls(),
        Calculation::Seat => view.seat(),
        Calculation::Deck => Ok(Outcome::plain(Signal::None, Next::Refused)),
    };
    let mut report = StepReport {
        id: spec.id,
        begun,
        complete: missing.is_none() && refused.is_none(),
        signal: Signal::None,
        number: None,
        next: Next::Refused,
        findings: Vec::new(),
        fault: None,
        answer: Answer::None,
        questioned,
    };
    match outcome {
        Ok(outcome) => {
            report.signal = outcome.signal;
            report.number = outcome.number;
            report.next = outcome.next;
            report.findings = outcome.findings;
            report.answer = outcome.answer;
            let heaviest = report.findings.iter().map(|f| f.level).max();
            let floor = match heaviest {
                Some(Level::Stop) => Signal::Stop,
                Some(Level::Look) => Signal::Look,
                _ => Signal::None,
            };
            report.signal = report.signal.max(floor);
        }
        Err(Hindrance::Engine(field)) => {
            report.next = Next::MendEngine(field);
            report.signal = if begun { Signal::Wait } else { Signal::None };
        }
        Err(Hindrance::Missing(field)) => {
            report.next = Next::Measure(field, field.spec().places.count());
        }
        Err(Hindrance::Fault(fault)) => {
            report.signal = Signal::Look;
            report.fault = Some(fault);
        }
    }
    // An answer from half the readings is shown, but it is not a verdict: what
    // is missing comes first, except that a stop stays a stop.
    if let Some((field, count)) = missing
        && report.signal != Signal::Stop
    {
        report.next = Next::Measure(field, count);
        report.signal = if begun { Signal::Wait } else { Signal::None };
    }
    if let Some(place) = refused {
        report.next = Next::Mend(place);
        report.signal = report.signal.max(Signal::Look);
    } else if !report.questioned.is_empty() {
        report.signal = report.signal.max(Signal::Look);
    }
    report
}

/// How many places of a needed field are still to be filled. Of a list one is
/// enough.
fn missing_of(job: &Job, cylinder: u8, field: Field) -> Option<(Field, u8)> {
    let there = job.entries.values(Owner::Cylinder(cylinder), field).len() as u8;
    let wanted = match field.spec().places {
        Places::List(_) => 1,
        places => places.count(),
    };
    (there < wanted).then(|| (field, wanted - there))
}

//! Numbers of the engine that a step waits for, so that they can be asked where the
//! step is and before it is cut, not only on the engine's own sheet.

use crate::job::model::field::Field;
use crate::job::model::field_kind::{Places, Scope};
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Reading, Standing};
use crate::job::model::step::StepId;
use crate::job::steps::drop_case::case_of;
use crate::job::steps::passes::passes;
use crate::job::verdict::answer::Answer;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::StepReport;
use crate::quantity::Seconds;

/// What the limits of a pull hang on: ram, rod, ledge and flange.
pub const PULL_HANGS_ON: [Field; 8] = [
    Field::RamBore,
    Field::RamHole,
    Field::RamRated,
    Field::RodD,
    Field::RodPitch,
    Field::RodYield,
    Field::LedgeMost,
    Field::FlangeMost,
];

/// For what a drop lacks beside its carry: how long that takes is not asked here.
const NO_CARRY: Seconds = Seconds::from_s(0.0);

/// What else a step would use, if it is not entered: before anything lacks it.
const fn would_use(step: StepId) -> &'static [Field] {
    match step {
        StepId::Counterbore | StepId::StepDepth => {
            &[Field::TargetProud, Field::PlannedCut, Field::CleanUp]
        }
        StepId::Heights => &[
            Field::ProudLow,
            Field::ProudHigh,
            Field::SpreadHole,
            Field::SpreadNeighbour,
            Field::SpreadAll,
        ],
        StepId::Pull => &PULL_HANGS_ON,
        StepId::Protrusion => &[Field::Gasket, Field::HeadLeast],
        _ => &[],
    }
}

/// Usual values that rule a step's verdict, and are asked there all the same.
const fn rules(step: StepId) -> &'static [Field] {
    match step {
        StepId::Drop => &[Field::HomeNeeded],
        _ => &[],
    }
}

/// Numbers of the engine to be asked at a step, each once.
#[must_use]
pub fn engine_wants(job: &Job, owner: Owner, report: &StepReport) -> Vec<Field> {
    let mut wants: Vec<Field> = rules(report.id).to_vec();
    let absent = |field: &Field| {
        let place = Place::of_engine(*field);
        matches!(job.reading(place), Reading::Absent)
    };
    let asked = |field: &Field| job.listed_stand().asks(report.id, *field);
    let used = would_use(report.id).iter().copied();
    wants.extend(used.filter(absent).filter(asked));
    if let Next::Measure(missing) = &report.next {
        wants.push(missing.field);
    }
    if let Standing::Missing(missing) = &report.work_to {
        wants.push(missing.field);
    }
    wants.extend(report.lacks.iter().map(|missing| missing.field));
    if let Answer::Order(checks, _) = &report.answer {
        for check in checks {
            if let Standing::Missing(missing) = &check.standing {
                wants.push(missing.field);
            }
        }
    }
    if let (StepId::Bore, Owner::Cylinder(cylinder)) = (report.id, owner)
        && let Err(lacks) = passes(job, cylinder)
    {
        wants.extend(lacks.missing.iter().map(|missing| missing.field));
    }
    if let (StepId::Drop, Owner::Cylinder(cylinder)) = (report.id, owner)
        && let Err(lacks) = case_of(job, cylinder, NO_CARRY)
    {
        wants.extend(lacks.missing.iter().map(|missing| missing.field));
    }
    let mut once = Vec::new();
    for field in wants {
        let spec = field.spec();
        let single = spec.scope == Scope::Engine && spec.places == Places::One;
        if single && !once.contains(&field) {
            once.push(field);
        }
    }
    once
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::steps::assess::assess_cylinder;

    #[test]
    fn what_a_step_lacks_of_its_engine_is_asked_at_the_step() {
        let mut job = Demo::InchFive.job(1);
        let of = |job: &Job, step: StepId| {
            let report = assess_cylinder(job, 1);
            engine_wants(job, Owner::Cylinder(1), report.step(step).unwrap())
        };
        assert_eq!(of(&job, StepId::Counterbore), []);
        assert_eq!(of(&job, StepId::Drop), [Field::HomeNeeded]);
        for field in [
            Field::CleanUp,
            Field::RamRated,
            Field::FitLow,
            Field::BlockWall,
        ] {
            let blank = Entry::new("", job.unit(field), 2);
            job.entries.put(Place::of_engine(field), blank);
        }
        assert_eq!(of(&job, StepId::Counterbore), [Field::CleanUp]);
        assert!(of(&job, StepId::Pull).contains(&Field::RamRated));
        assert!(of(&job, StepId::Bore).contains(&Field::FitLow));
        // What clearance and grip time are wanted for stands where they are told.
        assert!(of(&job, StepId::Drop).contains(&Field::BlockWall));
    }
}

//! A sleeve that came out and goes in again: what was read of the first try
//! goes into the note of its drop, and the steps from cleaning to seat are free
//! for the next. The sleeve's own measures stay.

use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Millis;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::job::model::shop_order::STEPS;
use crate::job::model::step::StepId;
use crate::job::model::step::StepSpec;
use crate::job::model::step::Subject;

/// The steps that are gone through again: from cleaning to the seat.
fn steps() -> impl Iterator<Item = &'static StepSpec> {
    let from = StepId::Clean.spec().number;
    let to = StepId::Seat.spec().number;
    STEPS
        .iter()
        .filter(move |s| s.subject == Subject::Cylinder && (from..=to).contains(&s.number))
}

/// Everything typed for this try, field by field in shop order.
#[must_use]
pub fn this_try(job: &Job, cylinder: u8) -> Vec<(Field, Vec<(u8, String)>)> {
    let owner = Owner::Cylinder(cylinder);
    steps()
        .flat_map(|step| step.fields.iter().copied())
        .filter_map(|field| {
            let typed: Vec<(u8, String)> = (0..field.spec().places.count())
                .filter_map(|index| {
                    let place = Place {
                        owner,
                        field,
                        index,
                    };
                    Some((index, job.entries.get(place)?.text.clone()))
                })
                .collect();
            (!typed.is_empty()).then_some((field, typed))
        })
        .collect()
}

/// Frees the readings, marks and timers from cleaning to seat for the next try.
/// `words` says what they were; they stand before what the note of the drop
/// held.
pub fn start_again(job: &mut Job, cylinder: u8, words: &str, at: Millis) {
    let owner = Owner::Cylinder(cylinder);
    for (field, typed) in this_try(job, cylinder) {
        for (index, _) in typed {
            let place = Place {
                owner,
                field,
                index,
            };
            job.entries.put(place, Entry::new("", job.unit(field), at));
        }
    }
    for step in steps() {
        job.keep_of_step(owner, step.id, |record| {
            record.mark = None;
            record.started = None;
            record.at = at;
        });
    }
    job.keep_of_step(owner, StepId::Drop, |record| {
        record.note = if record.note.trim().is_empty() {
            words.to_owned()
        } else {
            format!("{words} {}", record.note)
        };
    });
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::steps::assess::assess;

    #[test]
    fn the_next_try_begins_with_a_clean_ledge_and_the_first_is_written_down() {
        let mut job = Demo::InchFive.job(1);
        let typed = this_try(&job, 3);
        let pulls = typed.iter().find(|(f, _)| *f == Field::PullReleased);
        assert!(pulls.is_some_and(|(_, values)| values.len() >= 3));
        let sleeve = |job: &Job| job.readings(Owner::Cylinder(3), Field::SleeveOd);
        let (before, others) = (sleeve(&job), this_try(&job, 2));
        start_again(&mut job, 3, "dragged;", 2);
        start_again(&mut job, 3, "free;", 3);
        assert!(this_try(&job, 3).is_empty());
        assert_eq!(sleeve(&job), before);
        assert_eq!(this_try(&job, 2), others);
        let note = job.steps.get(&(Owner::Cylinder(3), StepId::Drop));
        assert!(note.is_some_and(|r| r.note == "free; dragged;"));
        let report = assess(&job).into_iter().find(|r| r.cylinder == 3);
        assert!(report.is_some_and(|r| r.current == StepId::Clean));
    }
}

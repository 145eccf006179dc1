//! The number to work to and the verdict of what was worked agree: who types the
//! number that was shown is told neither to go on cutting nor to stop, who types
//! one beyond its limits is never told to go. Over both demos, flanged and plain, every hole, every
//! step that has such a number, in the units and digits a person sees.

use coldseat_core::job::assess::assess;
use coldseat_core::job::demo::Demo;
use coldseat_core::job::model::part::SleeveKind;
use coldseat_core::job::model::reading::Standing;
use coldseat_core::job::verdict::{Signal, StepReport, Work, WorkTo};
use coldseat_core::job::{Entry, Field, Job, Owner, Place};
use coldseat_core::quantity::format::{last_digit, number};
use coldseat_tests::plain::plain_alone;

const fn field(work: Work) -> Field {
    match work {
        Work::Bore => Field::BoredD,
        Work::Widen => Field::CounterboreD,
        Work::Depth => Field::CounterboreDepth,
        Work::StepDepth => Field::StepDepth,
        Work::Chamfer => Field::ChamferHere,
        Work::Hone => Field::BoreD,
        Work::Groove => Field::GrooveDepth,
        Work::Finish => Field::FinishD,
        Work::Gap => Field::RingGapNow,
        Work::HomeWarm => Field::WarmHeight,
        Work::Home => Field::SeatHeight,
    }
}

/// The step once this text stands in all its places.
fn worked(job: &Job, cylinder: u8, work: Work, text: &str) -> StepReport {
    let mut job = job.clone();
    let owner = Owner::Cylinder(cylinder);
    let field = field(work);
    let unit = field.unit(job.engine.units);
    for place in Place::all(owner, field).take(6) {
        job.entries.put(place, Entry::new(text, unit, 9));
    }
    let reports = assess(&job);
    let steps = &reports[usize::from(cylinder) - 1].steps;
    let of_work = |s: &&StepReport| matches!(s.work_to, Standing::Known(to) if to.work == work);
    steps.iter().find(of_work).expect("the step").clone()
}

fn each(mut look: impl FnMut(&str, &Job, u8, WorkTo)) -> usize {
    let mut seen = 0;
    let jobs = Demo::ALL.into_iter().flat_map(|demo| {
        let plain = [SleeveKind::OnStep, SleeveKind::ByFit].map(|kind| plain_alone(demo, kind));
        core::iter::once(demo.job(1)).chain(plain)
    });
    for job in jobs {
        let demo = &job.name;
        for report in assess(&job) {
            for step in &report.steps {
                if let Standing::Known(to) = step.work_to {
                    let name = format!("{demo:?} {} {:?}", report.cylinder, step.id);
                    look(&name, &job, report.cylinder, to);
                    seen += 1;
                }
            }
        }
    }
    seen
}

#[test]
fn who_works_to_the_number_is_not_told_to_go_on_or_to_stop() {
    let seen = each(|name, job, cylinder, to| {
        let unit = field(to.work).unit(job.engine.units);
        let text = number(to.si, unit);
        let step = worked(job, cylinder, to.work, &text);
        let good = matches!(step.signal, Signal::Go | Signal::Look);
        assert!(good, "{name} at {text}: {:?} {:?}", step.signal, step.next);
        // Neither does the end of the range that is shown stop anybody.
        for end in to.range(unit).into_iter().flatten() {
            let step = worked(job, cylinder, to.work, &end);
            assert!(
                step.signal != Signal::Stop,
                "{name} at its limit {end}: {:?}",
                step.next
            );
        }
    });
    // Five and eight holes, eight steps less what a demo has not got.
    assert!(seen > 80, "{seen}");
}

#[test]
fn who_works_beyond_its_limits_is_never_told_to_go() {
    let seen = each(|name, job, cylinder, to| {
        let unit = field(to.work).unit(job.engine.units);
        // Two digits out: rounded inward, the shown limit may be one inside.
        let beyond = 2.0 * last_digit(unit);
        let limit =
            |si: Option<f64>, by: f64| si.map(|si| number(unit.to_si(unit.from_si(si) + by), unit));
        for text in [limit(to.low, -beyond), limit(to.high, beyond)]
            .into_iter()
            .flatten()
        {
            let step = worked(job, cylinder, to.work, &text);
            assert!(
                step.signal != Signal::Go,
                "{name} at {text}: {:?}",
                step.next
            );
        }
    });
    assert!(seen > 80, "{seen}");
}

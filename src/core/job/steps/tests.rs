//! The steps of a cylinder, asked through its report.

use crate::job::demo::Demo;
use crate::job::model::reading::{Missing, Spot};
use crate::job::step::StepId;
use crate::job::steps::assess::{assess, assess_cylinder};
use crate::job::verdict::{CylinderReport, Next, Signal, State};
use crate::job::{Entry, Field, Owner, Place};

/// The inch demo, cylinder 1, with some readings typed over.
fn with(changes: &[(Field, u8, &str)]) -> CylinderReport {
    let mut job = Demo::InchFive.job(0);
    for (field, index, text) in changes {
        let place = Place::of_cylinder(1, *field, *index);
        let unit = job.unit(*field);
        job.entries.put(place, Entry::new(*text, unit, 0));
    }
    assess_cylinder(&job, 1)
}

/// All places of a field typed over with one text.
fn all(field: Field, text: &'static str) -> Vec<(Field, u8, &'static str)> {
    (0..field.spec().places.count())
        .map(|index| (field, index, text))
        .collect()
}

const fn missing(cylinder: u8, field: Field, places: u8) -> Missing {
    Missing {
        owner: Owner::Cylinder(cylinder),
        field,
        places,
    }
}

#[track_caller]
fn says(report: &CylinderReport, id: StepId, signal: Signal, next: fn(&Next) -> bool) {
    let step = report.step(id);
    assert!(
        step.is_some_and(|s| s.signal == signal && next(&s.next)),
        "{:?}",
        step.map(|s| (s.signal, s.next))
    );
}

#[test]
fn a_cylinder_without_readings_asks_for_the_first() {
    let mut job = Demo::InchFive.job(0);
    let (engine, entries) = Demo::InchFive.profile(0);
    job.engine = engine;
    job.entries = entries;
    job.steps.clear();
    let report = assess_cylinder(&job, 2);
    assert_eq!(report.state, State::NotBegun);
    assert_eq!(report.current, StepId::OldBore);
    for step in &report.steps {
        assert!(!step.begun && !step.complete, "{:?}", step.id);
    }
    says(&report, StepId::Sleeve, Signal::None, |n| {
        *n == Next::Measure(missing(2, Field::SleeveOd, 6))
    });
    assert!(!report.is_seated());
}

#[test]
fn half_the_readings_are_no_verdict() {
    let mut job = Demo::InchFive.job(0);
    let place = Place::of_cylinder(1, Field::SeatHeight, 3);
    job.entries
        .put(place, Entry::new("", job.unit(Field::SeatHeight), 0));
    let report = assess_cylinder(&job, 1);
    says(&report, StepId::Seat, Signal::Wait, |n| {
        *n == Next::Measure(missing(1, Field::SeatHeight, 1))
    });
    assert!(!report.is_seated());
}

#[test]
fn a_text_that_is_no_number_is_to_be_mended_and_the_rest_goes_on() {
    let report = with(&[(Field::SleeveOd, 2, "4.4.4")]);
    says(
        &report,
        StepId::Sleeve,
        Signal::Look,
        |n| matches!(n, Next::Mend(Spot::Reading(place)) if place.index == 2),
    );
    says(&report, StepId::Seat, Signal::Go, |n| *n == Next::Seated);
}

#[test]
fn a_questioned_value_wants_a_look() {
    let report = with(&[(Field::FlangeThickness, 1, "0.2490")]);
    let step = report.step(StepId::Sleeve);
    assert!(step.is_some_and(|s| s.signal == Signal::Look && s.questioned.len() == 1));
}

#[test]
fn fits_too_loose_and_too_tight() {
    let loose = with(&all(Field::BoreD, "4.4420"));
    says(&loose, StepId::Fit, Signal::Stop, |n| {
        matches!(n, Next::FitLoose(_))
    });
    assert_eq!(loose.state, State::Stop);
    let tight = with(&all(Field::BoreD, "4.4380"));
    says(
        &tight,
        StepId::Fit,
        Signal::Wait,
        |n| matches!(n, Next::HoneMore(by) if (by.as_thou() - 2.0).abs() < 0.2),
    );
}

#[test]
fn counterbores_shallow_and_deep() {
    let shallow = with(&all(Field::CounterboreDepth, "0.2047"));
    says(
        &shallow,
        StepId::Counterbore,
        Signal::Wait,
        |n| matches!(n, Next::CutDeeper(by) if (by.as_thou() - 4.3).abs() < 0.01),
    );
    let deep = with(&all(Field::CounterboreDepth, "0.2120"));
    says(
        &deep,
        StepId::Counterbore,
        Signal::Stop,
        |n| matches!(n, Next::TooDeep(by) if (by.as_thou() - 3.0).abs() < 0.01),
    );
}

#[test]
fn an_egg_shaped_sleeve_stops() {
    let look = with(&[
        (Field::SleeveOd, 0, "4.4413"),
        (Field::SleeveOd, 1, "4.4425"),
    ]);
    says(&look, StepId::Sleeve, Signal::Look, |n| {
        *n == Next::SleeveLook
    });
    let stop = with(&[
        (Field::SleeveOd, 0, "4.4413"),
        (Field::SleeveOd, 1, "4.4430"),
    ]);
    says(&stop, StepId::Sleeve, Signal::Stop, |n| {
        *n == Next::SleeveStop
    });
    // Lower down it springs round.
    let low = with(&[
        (Field::SleeveOd, 4, "4.4413"),
        (Field::SleeveOd, 5, "4.4430"),
    ]);
    says(&low, StepId::Sleeve, Signal::Go, |n| {
        *n == Next::SleeveRound
    });
}

#[test]
fn a_flange_below_its_ledge_is_a_wrong_reading() {
    let report = with(&all(Field::SeatHeight, "0.0070"));
    says(&report, StepId::Seat, Signal::Stop, |n| {
        *n == Next::BelowLedge
    });
    assert!(!report.is_seated());
}

#[test]
fn a_cylinder_still_moving_is_pulled_again() {
    let report = with(&[
        (Field::PullReleased, 3, ""),
        (Field::PullLoaded, 3, ""),
        (Field::PullGauge, 3, ""),
        (Field::PullReleased, 2, "0.0145"),
        (Field::PullLoaded, 2, "0.0137"),
    ]);
    says(&report, StepId::Pull, Signal::Wait, |n| {
        *n == Next::PullAgain
    });
    assert_eq!(report.current, StepId::Pull);
}

#[test]
fn a_cylinder_left_out_is_not_waited_for() {
    use crate::job::steps::deck::{Lock, lock};
    let mut job = Demo::InchFive.job(0);
    job.left_out.push(3);
    let reports = assess(&job);
    assert_eq!(reports[2].state, State::LeftOut);
    assert_eq!(lock(&job, &reports, 0), Lock::OpenBeside(vec![3]));
}

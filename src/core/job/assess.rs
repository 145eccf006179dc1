//! What the numbers of a cylinder say: step by step a signal, one number, and
//! what to do next; over all of them the state shown in the strip.
//!
//! Nothing is stored: the same entries give the same report. Verdicts come
//! from the calculations, asked in [`super::ask`]; this module decides what
//! comes first when readings are missing, refused or questioned.

use super::ask::{Hindrance, Outcome, View, length_figure};
use super::check::{Checked, Sheet, check};
use super::deck::{of_bank, plan};
use super::field::{Places, Scope};
use super::report::{Answer, CylinderReport, Figure, Next, Signal, State, StepReport};
use super::step::{Calculation, Mark, StepId, StepSpec, Subject, steps_of};
use super::{Field, Job, Owner, Place};
use crate::numerics::order::in_order;
use crate::quantity::report::{Finding, Level};

/// All cylinders, 1 first, those left out too.
#[must_use]
pub fn assess(job: &Job) -> Vec<CylinderReport> {
    let mut reports: Vec<CylinderReport> = (1..=job.engine.cylinders)
        .map(|cylinder| assess_cylinder(job, cylinder))
        .collect();
    compare_returns(job, &mut reports);
    reports
}

/// The steps of the block, or of one of its decks.
#[must_use]
pub fn assess_owner(job: &Job, owner: Owner) -> Vec<StepReport> {
    let subject = match owner {
        Owner::Block => Subject::Block,
        Owner::Bank(_) => Subject::Bank,
        Owner::Cylinder(_) => Subject::Cylinder,
    };
    steps_of(subject)
        .map(|spec| assess_step(job, owner, spec))
        .collect()
}

/// The last elastic return of a cylinder, where it is known.
fn last_return(report: &CylinderReport) -> Option<f64> {
    match &report.step(StepId::Pull)?.answer {
        Answer::Pulls(seat) => seat.returned.iter().flatten().last().map(|r| r.as_m()),
        _ => None,
    }
}

/// A hole that springs back otherwise than the job's others by more than four
/// standard uncertainties of the height: a chip or a burr, perhaps.
fn compare_returns(job: &Job, reports: &mut [CylinderReport]) {
    let Some(u_m) = job.engine_si(Field::GaugeHeight) else {
        return;
    };
    let returns: Vec<Option<f64>> = reports.iter().map(last_return).collect();
    for (index, report) in reports.iter_mut().enumerate() {
        let Some(mine_m) = returns[index] else {
            continue;
        };
        let others: Vec<f64> = returns
            .iter()
            .enumerate()
            .filter(|(other, _)| *other != index)
            .filter_map(|(_, r)| *r)
            .collect();
        let others = in_order(others, f64::total_cmp);
        // One other hole cannot tell which of the two is odd.
        let odd = others.len() >= 2 && (mine_m - others[others.len() / 2]).abs() > 4.0 * u_m;
        if odd && let Some(step) = report.steps.iter_mut().find(|s| s.id == StepId::Pull) {
            step.findings.push(Finding::look(
                "odd_return",
                "springs back otherwise than the other holes: look for a chip or a burr under \
                 the flange",
            ));
            step.signal = step.signal.max(Signal::Look);
        }
    }
}

/// The step to work on: the first begun and not settled; else the first not
/// settled after the last that was begun or passed over. Steps that a job does
/// without hold nothing up.
fn current(steps: &[StepReport]) -> StepId {
    let last = steps
        .iter()
        .rposition(|s| s.begun || s.passed_over || s.next == Next::Marked)
        .map_or(0, |at| at + 1);
    steps
        .iter()
        .find(|s| s.begun && !s.is_settled())
        .or_else(|| steps.iter().skip(last).find(|s| !s.is_settled()))
        .or(steps.last())
        .map_or(StepId::OldBore, |s| s.id)
}

/// One cylinder.
#[must_use]
pub fn assess_cylinder(job: &Job, cylinder: u8) -> CylinderReport {
    let steps = assess_owner(job, Owner::Cylinder(cylinder));
    let current = current(&steps);
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
        let done = steps.iter().filter(|s| s.is_settled()).count();
        State::InWork(done as u8, steps.len() as u8)
    };
    CylinderReport {
        cylinder,
        steps,
        state,
        current,
    }
}

fn assess_step(job: &Job, owner: Owner, spec: &StepSpec) -> StepReport {
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
            // What a new engine starts with is nobody's reading.
            let is_own = field.spec().scope != Scope::Engine;
            match check(&sheet, place) {
                Checked::Empty => continue,
                Checked::Good(_) => {}
                Checked::Questioned(..) => questioned.push(place),
                Checked::Refused(_) => refused = refused.or(Some(place)),
            }
            begun |= is_own;
        }
    }
    let missing = spec
        .needed
        .iter()
        .find_map(|field| missing_of(job, owner, *field));
    let view = View { job, owner };
    let outcome = match spec.calculation {
        Calculation::None => Ok(Outcome::plain(Signal::None, Next::MarkIt)),
        Calculation::Estimate => view.estimate(),
        Calculation::Apart => view.apart(),
        Calculation::PressureDrop => view.pressure_drop(spec.id),
        Calculation::DatumTilt => view.datum(),
        Calculation::Wear => view.wear(),
        Calculation::WallLeft => view.walls(),
        Calculation::Choose => view.choose(),
        Calculation::Offset => view.centre(),
        Calculation::HoneStock => view.hone_stock(),
        Calculation::CounterboreClearance => view.flange_room(),
        Calculation::Chamfer => view.fillet_room(),
        Calculation::Oxygen => view.oxygen(),
        Calculation::Chill => view.chill(),
        Calculation::Warmed => view.warmed(),
        Calculation::Protrusion => view.protrusion(),
        Calculation::Groove => view.groove(),
        Calculation::Finish => view.finish(),
        Calculation::RingGap => view.ring_gaps(),
        Calculation::SleeveForm => view.sleeve_form(),
        Calculation::Counterbore => view.counterbore(),
        Calculation::Fit => view.fit(),
        Calculation::ColdDrop => Ok(view.dropped()),
        Calculation::Height => view.heights(),
        Calculation::Pulls => view.pulls(),
        Calculation::Seat => view.seat(),
        Calculation::Deck => deck(job, owner),
    };
    let mut report = StepReport {
        id: spec.id,
        begun,
        complete: missing.is_none() && refused.is_none() && !spec.fields.is_empty(),
        signal: Signal::None,
        number: None,
        next: Next::Refused,
        findings: Vec::new(),
        fault: None,
        answer: Answer::None,
        questioned,
        passed_over: false,
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
    apply_mark(job, owner, &mut report);
    report
}

/// The deck: locked until every flange of it is home, then the cut; whether it
/// was cut is a mark.
fn deck(job: &Job, owner: Owner) -> Result<Outcome, Hindrance> {
    let Owner::Bank(bank) = owner else {
        return Ok(Outcome::plain(Signal::None, Next::MarkIt));
    };
    let seat = StepId::Seat.spec();
    let cylinders = of_bank(job, bank);
    let home = cylinders
        .iter()
        .all(|c| assess_step(job, Owner::Cylinder(*c), seat).next == Next::Seated);
    if !home && !job.unlocks.contains_key(&bank) {
        let next = Next::Says(StepId::Deck, Signal::Wait);
        return Ok(Outcome::plain(Signal::Wait, next));
    }
    if cylinders.is_empty() {
        return Ok(Outcome::plain(Signal::None, Next::MarkIt));
    }
    let plan = plan(job, bank)?;
    let (signal, next) = if plan.cleans_up {
        (Signal::None, Next::Says(StepId::Deck, Signal::None))
    } else {
        (Signal::Stop, Next::Says(StepId::Deck, Signal::Stop))
    };
    Ok(Outcome {
        number: Some(length_figure(
            Figure::DeckCut,
            plan.plan.removal.as_m(),
            None,
        )),
        ..Outcome::plain(signal, next)
    })
}

/// A mark set by hand settles a step about which no reading says otherwise.
fn apply_mark(job: &Job, owner: Owner, report: &mut StepReport) {
    // A deck that is open is surveyed, and cut only when a hand says so.
    let to_mark = report.id == StepId::Deck && report.signal == Signal::None;
    let quiet =
        matches!(report.signal, Signal::None | Signal::Wait) && (!report.complete || to_mark);
    match job.mark(owner, report.id) {
        Some(Mark::Done) if quiet => {
            report.signal = Signal::Go;
            report.next = Next::Marked;
            report.complete = true;
        }
        Some(Mark::Skipped(_) | Mark::NotForThisJob) => {
            report.passed_over = true;
            if quiet {
                report.signal = Signal::None;
                report.next = Next::PassedOver;
            }
        }
        _ => {}
    }
}

/// How many places of a needed field are still to be filled. Of a list one is
/// enough.
fn missing_of(job: &Job, owner: Owner, field: Field) -> Option<(Field, u8)> {
    let there = job.entries.values(owner, field).len() as u8;
    let wanted = match field.spec().places {
        Places::List(_) => 1,
        places => places.count(),
    };
    (there < wanted).then(|| (field, wanted - there))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::Entry;
    use crate::job::demo::Demo;

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
            *n == Next::Measure(Field::SleeveOd, 6)
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
            *n == Next::Measure(Field::SeatHeight, 1)
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
            |n| matches!(n, Next::Mend(place) if place.index == 2),
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
            (Field::PullReleased, 2, "0.0145"),
        ]);
        says(&report, StepId::Pull, Signal::Wait, |n| {
            *n == Next::PullAgain
        });
        assert_eq!(report.current, StepId::Pull);
    }

    #[test]
    fn a_cylinder_left_out_is_not_waited_for() {
        use crate::job::deck::{Lock, lock};
        let mut job = Demo::InchFive.job(0);
        job.left_out.push(3);
        let reports = assess(&job);
        assert_eq!(reports[2].state, State::LeftOut);
        assert_eq!(lock(&job, &reports, 0), Lock::Open);
    }
}

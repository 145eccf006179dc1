//! Plans of heights that are worked to, by hand: shims that lie already, what a tick
//! writes and takes back, what makes readings old, plans that no longer fit.

use crate::job::advice::plan_heights::{PlannedHeights, PlannedHole, heights_needs};
use crate::job::advice::plan_heights_tests::{four_holes, put};
use crate::job::advice::work_to_plan::{drop_heights_plan, take_heights_plan, tick_plan};
use crate::job::demo::Demo;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::Lack;
use crate::job::model::step::StepId;
use crate::job::steps::assess::assess_cylinder;
use crate::job::steps::kept_plan::{Task, kept_plan};
use crate::job::verdict::next::Next;
use crate::job::verdict::signal::Signal;
use crate::quantity::Length;

fn put_all(job: &mut Job, cylinder: u8, field: Field, text: &str) {
    for place in Place::all(Owner::Cylinder(cylinder), field) {
        put(job, place, text);
    }
}

fn planned(job: &Job) -> PlannedHeights {
    heights_needs(job, 0).unwrap().unwrap().plan().unwrap()
}

/// The thousandths of the number at a place.
fn thou(job: &Job, place: Place) -> Option<i64> {
    let si = job.reading(place).number().unwrap();
    si.map(|m| (m / 25.4e-6).round() as i64)
}

fn counterbore(job: &Job, cylinder: u8) -> (Signal, Next) {
    let report = assess_cylinder(job, cylinder);
    let step = report.step(StepId::Counterbore).unwrap();
    (step.signal, step.next)
}

/// Inside the limits, whether at the middle or off it.
#[track_caller]
fn goes(job: &Job, cylinder: u8) {
    let (signal, next) = counterbore(job, cylinder);
    let is_inside = matches!(next, Next::AtDepth | Next::InLimits(_));
    assert!(signal == Signal::Go && is_inside, "{signal:?} {next:?}");
}

/// By hand: a flange of 0.3030 in a counterbore of 0.3030 with a shim of 0.0030 under it
/// stands 0.0030 proud, within 0.0020 to 0.0050: all stays, though none is left in the
/// list, and though the size is not in it. In a counterbore of 0.3000 it stands 0.0060
/// proud, above 0.0050: each shim comes out, and it stands at 0.0030.
#[test]
fn shims_that_lie_are_kept_or_taken_out() {
    let mut job = four_holes();
    let here = |cylinder| Place::of_cylinder(cylinder, Field::ShimHere, 0);
    for cylinder in 1..=4 {
        put_all(&mut job, cylinder, Field::FlangeThickness, "0.3030");
        put_all(&mut job, cylinder, Field::CounterboreDepth, "0.3030");
        put(&mut job, here(cylinder), "0.0030");
    }
    assert!(planned(&job).is_nothing(), "a size that is not in the list");
    let (size, left) = (
        Place::of_engine(Field::ShimSizes),
        Place::of_engine(Field::ShimsLeft),
    );
    put(&mut job, size, "0.0030");
    put(&mut job, left, "0");
    let found = planned(&job);
    assert!(found.is_nothing() && found.holes.iter().all(|hole| hole.shim.is_some()));
    for cylinder in 1..=4 {
        put_all(&mut job, cylinder, Field::CounterboreDepth, "0.3000");
    }
    let found = planned(&job);
    assert!(found.plan.possible && !found.is_nothing());
    assert_eq!((found.plan.shims, found.count(Task::Shim)), (0, 4));
    let is_at = |list: &[Length], t: f64| list.iter().all(|h| (h.as_thou() - t).abs() < 1e-6);
    assert!(is_at(&found.holes[0].before, 6.0) && is_at(&found.holes[0].after, 3.0));
    // A tick takes it out and counts it, taken back it lies again.
    take_heights_plan(&mut job, &found, 3);
    assert_eq!((thou(&job, here(2)), thou(&job, left)), (Some(3), Some(0)));
    tick_plan(&mut job, 2, Task::Shim, 4);
    let hole = |job: &Job| kept_plan(job, 0).unwrap().unwrap()[1].clone();
    assert!(hole(&job).is_done(Task::Shim) && hole(&job).wants(Task::Shim));
    assert_eq!(thou(&job, here(2)), Some(0));
    assert_eq!(job.entries.get(left).unwrap().text, "1");
    tick_plan(&mut job, 2, Task::Shim, 5);
    assert!(hole(&job).is_open());
    assert_eq!(thou(&job, here(2)), Some(3));
    assert_eq!(job.entries.get(left).unwrap().text, "0");
}

/// By hand: of the four holes one has lost its fit: flange 0.3030 in 0.3030, and its shim
/// of 0.0030 is the last; it stands at 0.0030. The third hole at 0.0010 wants one of
/// 0.0010, of which one is left. The first keeps its own: two shims, one task.
#[test]
fn a_hole_keeps_its_own_shim_while_another_gets_one() {
    let mut job = four_holes();
    put_all(&mut job, 4, Field::FlangeThickness, "0.3030");
    put_all(&mut job, 1, Field::CounterboreDepth, "0.3030");
    put(
        &mut job,
        Place::of_cylinder(1, Field::ShimHere, 0),
        "0.0030",
    );
    put(&mut job, Place::of_engine(Field::ShimSizes), "0.0010");
    put(&mut job, Place::of_engine(Field::ShimsLeft), "1");
    let found = planned(&job);
    assert!(found.plan.possible && found.plan.shims == 2);
    assert!(!found.holes[0].wants(Task::Shim) && found.holes[2].wants(Task::Shim));
    // Nothing is at depth before it is done: 0.0010 proud where 0.0020 is the least.
    take_heights_plan(&mut job, &found, 3);
    let (signal, next) = counterbore(&job, 3);
    assert!(signal == Signal::Stop && matches!(next, Next::TooDeep(_)));
    tick_plan(&mut job, 3, Task::Shim, 4);
    goes(&job, 3);
    let mut given_up = job.clone();
    drop_heights_plan(&mut given_up, 0, 5);
    assert_eq!(counterbore(&given_up, 3).0, Signal::Go, "what was ticked");
    // Not ticked: given up, nothing of it is left.
    tick_plan(&mut job, 3, Task::Shim, 6);
    drop_heights_plan(&mut job, 0, 7);
    let here = Place::of_cylinder(3, Field::ShimHere, 0);
    assert_eq!(job.entries.get(here), None);
    assert_eq!(counterbore(&job, 3).0, Signal::Stop);
}

/// A plan of the four holes as they are, the first one's ledge cut by so much and its
/// sleeve turned by so many quarters.
fn plan_of(job: &Job, cut_thou: f64, turn: u8) -> PlannedHeights {
    let mut found = planned(job);
    for hole in &mut found.holes {
        let here = hole.cylinder == 1;
        let cut = Length::from_thou(if here { cut_thou } else { 0.0 });
        let after = |h: &Length| Length::from_m(h.as_m() - cut.as_m());
        *hole = PlannedHole {
            sleeve: hole.cylinder,
            turn: if here { turn } else { 0 },
            shim: None,
            cut,
            after: hole.before.iter().map(after).collect(),
            ..hole.clone()
        };
    }
    found
}

fn read_at(job: &mut Job, field: Field, text: &str, at: u64) {
    for place in Place::all(Owner::Cylinder(1), field) {
        let entry = Entry::new(text, job.unit(field), at);
        job.entries.put(place, entry);
    }
}

/// The first hole: flange 0.3030 in 0.3000, at depth. A plan cuts 0.0010 off its ledge: it
/// is not at depth before that is ticked; ticked at 50 its depth, read at 2, is as good as
/// missing, at all four clocks; read at 50 as 0.3010 it counts, and 0.0020 proud is within.
#[test]
fn a_depth_read_before_the_cut_is_wanted_again() {
    let mut job = four_holes();
    goes(&job, 1);
    let plan = plan_of(&job, 1.0, 0);
    take_heights_plan(&mut job, &plan, 40);
    let open = (Signal::Wait, Next::PlanOpen(1));
    assert_eq!(counterbore(&job, 1), open);
    tick_plan(&mut job, 1, Task::Cut, 50);
    let report = assess_cylinder(&job, 1);
    let step = report.step(StepId::Counterbore).unwrap();
    let wanted = matches!(step.next, Next::ReadAgain(m) if m.field == Field::CounterboreDepth && m.places == 4);
    assert!(wanted && step.signal == Signal::Wait && !step.is_settled());
    assert!(!step.lacks.is_empty());
    // Given up it is still wanted, by a new plan too.
    let mut given_up = job.clone();
    drop_heights_plan(&mut given_up, 0, 60);
    assert_eq!(counterbore(&given_up, 1).0, Signal::Wait);
    let lacks = heights_needs(&given_up, 0).unwrap_err();
    assert!(lacks.misses(Field::CounterboreDepth));
    read_at(&mut job, Field::CounterboreDepth, "0.3010", 50);
    goes(&job, 1);
    // A turn alone holds it as well, and makes no depth old.
    let mut job = four_holes();
    let plan = plan_of(&job, 0.0, 2);
    take_heights_plan(&mut job, &plan, 40);
    assert_eq!(counterbore(&job, 1), open);
    tick_plan(&mut job, 1, Task::Sleeve, 50);
    goes(&job, 1);
}

/// A tick that is taken back is work as well: read at 2, ticked at 50, read at 60 as cut,
/// taken back at 70: neither counts, the cut is still to be made, and the ledge is read
/// again at 80. Ticked once more at 90 it is wanted again.
#[test]
fn a_tick_taken_back_makes_readings_old_too() {
    let mut job = four_holes();
    let plan = plan_of(&job, 1.0, 0);
    take_heights_plan(&mut job, &plan, 40);
    let is_open = |job: &Job| kept_plan(job, 0).unwrap().unwrap()[0].is_open();
    let again = |job: &Job| matches!(counterbore(job, 1), (Signal::Wait, Next::ReadAgain(m)) if m.places == 4);
    tick_plan(&mut job, 1, Task::Cut, 50);
    read_at(&mut job, Field::CounterboreDepth, "0.3010", 60);
    goes(&job, 1);
    tick_plan(&mut job, 1, Task::Cut, 70);
    assert!(is_open(&job) && again(&job));
    read_at(&mut job, Field::CounterboreDepth, "0.3000", 80);
    assert_eq!(counterbore(&job, 1), (Signal::Wait, Next::PlanOpen(1)));
    tick_plan(&mut job, 1, Task::Cut, 90);
    assert!(!is_open(&job) && again(&job));
}

/// Pulled home before its shim was changed: the sleeve was out since, and is pulled again.
#[test]
fn pulls_from_before_a_tick_are_wanted_again() {
    let mut job = Demo::InchFive.job(1);
    put(&mut job, Place::of_engine(Field::SleeveEnds), "proud");
    let pull = |job: &Job| {
        let report = assess_cylinder(job, 1);
        let step = report.step(StepId::Pull).unwrap();
        (step.signal, step.next)
    };
    let (before, next) = pull(&job);
    assert!(!matches!(next, Next::ReadAgain(_)), "{before:?} {next:?}");
    let tick = Entry::new(
        "done 0123",
        job.unit(Field::PlanDone),
        1_000_000_000_000_000,
    );
    job.entries.put(Task::Shim.place(1), tick);
    let (signal, next) = pull(&job);
    assert!(signal == Signal::Wait, "{signal:?} {next:?}");
    assert!(matches!(next, Next::ReadAgain(m) if m.field == Field::PullReleased));
    // A pull beyond what rod and ledge bear loaded this ledge: no tick takes that away.
    put(&mut job, Place::of_cylinder(1, Field::PullGauge, 0), "9900");
    let overload = (Signal::Stop, Next::Advice(StepId::Pull, Signal::Stop));
    assert_eq!(pull(&job), overload);
}

/// A tick names its task: of a plan that cuts 0.0010 it says nothing to one that cuts
/// 0.0020, nor to the same one taken again; nor does the bare word.
#[test]
fn a_tick_of_another_plan_is_none() {
    let mut job = four_holes();
    let [one, two] = [1.0, 2.0].map(|cut| plan_of(&job, cut, 0));
    take_heights_plan(&mut job, &one, 40);
    tick_plan(&mut job, 1, Task::Cut, 50);
    let is_open = |job: &Job| kept_plan(job, 0).unwrap().unwrap()[0].is_open();
    assert!(!is_open(&job));
    let mut other = job.clone();
    take_heights_plan(&mut other, &two, 40);
    assert!(is_open(&other));
    take_heights_plan(&mut other, &one, 41);
    assert!(is_open(&other));
    put(&mut job, Task::Cut.place(1), "done");
    assert!(is_open(&job));
}

#[test]
fn a_plan_that_no_longer_fits_is_said_and_given_up_whole() {
    let mut job = four_holes();
    let plan = plan_of(&job, 1.0, 0);
    take_heights_plan(&mut job, &plan, 40);
    let unfit =
        |job: &Job| matches!(kept_plan(job, 0), Err(Lack::Refused(f)) if f.field == "heights_plan");
    assert!(!unfit(&job));
    // One sleeve in two holes, a sleeve of no hole.
    for sleeve in ["2", "5"] {
        let mut wrong = job.clone();
        put(
            &mut wrong,
            Place::of_cylinder(1, Field::PlanSleeve, 0),
            sleeve,
        );
        assert!(unfit(&wrong), "{sleeve}");
        assert_eq!(counterbore(&wrong, 1), (Signal::Look, Next::Refused));
    }
    // Half a sleeve, half a shim: cannot be used.
    for place in [
        Place::of_cylinder(1, Field::PlanSleeve, 0),
        Place::of_engine(Field::ShimsLeft),
    ] {
        let mut half = job.clone();
        put(&mut half, place, "1.5");
        assert!(half.reading(place).number().is_err());
    }
    // Another hole left out, one taken in.
    let mut fewer = job.clone();
    fewer.left_out = vec![4, 5];
    let mut more = job.clone();
    more.left_out = Vec::new();
    assert!(unfit(&fewer) && unfit(&more));
    drop_heights_plan(&mut fewer, 0, 50);
    fewer.left_out = vec![5];
    assert_eq!(kept_plan(&fewer, 0), Ok(None));
    // Another shim than the one ticked: 0.0010 planned, 0.0020 lies.
    let mut plan = plan_of(&job, 0.0, 0);
    put(&mut job, Place::of_engine(Field::ShimSizes), "0.0010");
    plan.holes[0].shim = Some((Some(0), Length::from_thou(1.0)));
    take_heights_plan(&mut job, &plan, 60);
    tick_plan(&mut job, 1, Task::Shim, 70);
    assert!(!unfit(&job));
    put(
        &mut job,
        Place::of_cylinder(1, Field::ShimHere, 0),
        "0.0020",
    );
    assert!(unfit(&job));
}

/// By hand: hole 1 stands 0.0060 proud on its shim of 0.0030, 0.0030 without it; hole 2
/// 0.0010, 0.0040 with that shim, the last of its size. Laid at hole 2 before it is out of
/// hole 1 it would be counted twice.
#[test]
fn the_last_shim_is_taken_out_before_it_is_laid_elsewhere() {
    let mut job = four_holes();
    for (cylinder, depth) in [(1, "0.3000"), (2, "0.3020"), (3, "0.3000"), (4, "0.3000")] {
        put_all(&mut job, cylinder, Field::FlangeThickness, "0.3030");
        put_all(&mut job, cylinder, Field::CounterboreDepth, depth);
    }
    let here = |cylinder| Place::of_cylinder(cylinder, Field::ShimHere, 0);
    let left = Place::of_engine(Field::ShimsLeft);
    put(&mut job, here(1), "0.0030");
    put(&mut job, Place::of_engine(Field::ShimSizes), "0.0030");
    put(&mut job, left, "0");
    let found = planned(&job);
    assert!(found.plan.possible && found.count(Task::Shim) == 2 && found.plan.cuts == 0);
    take_heights_plan(&mut job, &found, 3);
    let is_done = |job: &Job, hole: usize| kept_plan(job, 0).unwrap().unwrap()[hole - 1].done[1];
    tick_plan(&mut job, 2, Task::Shim, 4);
    assert!(!is_done(&job, 2) && thou(&job, here(2)).is_none());
    assert_eq!(job.entries.get(left).unwrap().text, "0");
    tick_plan(&mut job, 1, Task::Shim, 5);
    assert_eq!(job.entries.get(left).unwrap().text, "1");
    tick_plan(&mut job, 2, Task::Shim, 6);
    assert!(is_done(&job, 1) && is_done(&job, 2) && thou(&job, here(2)) == Some(3));
    assert_eq!(job.entries.get(left).unwrap().text, "0");
    // Laid back at hole 1 it would lie twice as well.
    tick_plan(&mut job, 1, Task::Shim, 7);
    assert!(is_done(&job, 1) && thou(&job, here(1)) == Some(0));
}

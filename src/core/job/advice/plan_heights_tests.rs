//! Plans of heights by hand, taken and ticked.

use crate::job::advice::plan_heights::heights_needs;
use crate::job::advice::work_to_plan::{drop_heights_plan, take_heights_plan, tick_plan};
use crate::job::demo::Demo;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::readings::Readings;
use crate::job::steps::kept_plan::{Task, kept_plan};
use crate::job::steps::seat::predicted;
use crate::quantity::Length;

pub fn put(job: &mut Job, place: Place, text: &str) {
    let entry = Entry::new(text, job.unit(place.field), 2);
    job.entries.put(place, entry);
}

/// Four holes, nothing in them yet: depths 0.3000, 0.3000, 0.3020 and 0.3000 in,
/// flanges 0.3030, 0.3030, 0.3030 and 0.3060 in.
pub fn four_holes() -> Job {
    let mut job = Demo::InchFive.job(1);
    job.left_out = vec![5];
    for (field, text) in [
        (Field::SleeveEnds, "proud"),
        (Field::ProudLow, "0.0020"),
        (Field::ProudHigh, "0.0050"),
        (Field::SpreadHole, "0.0020"),
        (Field::SpreadNeighbour, "0.0020"),
        (Field::SpreadAll, "0.0020"),
        (Field::LedgeCutMost, "0"),
    ] {
        put(&mut job, Place::of_engine(field), text);
    }
    let holes = [
        ("0.3000", "0.3030"),
        ("0.3000", "0.3030"),
        ("0.3020", "0.3030"),
        ("0.3000", "0.3060"),
    ];
    for (cylinder, (depth, flange)) in (1_u8..).zip(holes) {
        for (field, text) in [
            (Field::CounterboreDepth, depth),
            (Field::FlangeThickness, flange),
        ] {
            for place in Place::all(Owner::Cylinder(cylinder), field) {
                put(&mut job, place, text);
            }
        }
    }
    job
}

fn thou(list: &[Length]) -> Vec<i64> {
    list.iter()
        .map(|l| (l.as_thou() * 100.0).round() as i64)
        .collect()
}

/// By hand: as they are the sleeves stand 3, 3, 1 and 6 thou proud; the third is too
/// low, the last too high. The thick one in the third hole stands at 4, the third's
/// own in the last hole at 3: all within 2 to 5 and 1 apart, by two moves, no shim.
#[test]
fn a_swap_by_hand_taken_ticked_and_told_by_the_heights_at_home() {
    let mut job = four_holes();
    let needs = heights_needs(&job, 0).unwrap().unwrap();
    let planned = needs.plan().unwrap();
    assert!(planned.plan.possible);
    let sleeves: Vec<u8> = planned.holes.iter().map(|h| h.sleeve).collect();
    assert_eq!(sleeves, [1, 2, 4, 3]);
    assert_eq!(
        (planned.plan.moved, planned.plan.shims, planned.plan.cuts),
        (2, 0, 0)
    );
    assert_eq!(thou(&planned.holes[3].before), [600; 4]);
    assert_eq!(thou(&planned.holes[2].after), [400; 4]);
    assert_eq!(kept_plan(&job, 0), Ok(None));
    take_heights_plan(&mut job, &planned, 3);
    let kept = kept_plan(&job, 0).unwrap().unwrap();
    assert!(kept[2].wants(Task::Sleeve) && !kept[0].wants(Task::Sleeve));
    assert_eq!((kept[2].sleeve, thou(&kept[2].heights)), (4, vec![400; 4]));
    let home = |job: &Job| predicted(&Readings::of_cylinder(job, 3)).unwrap()[0] / 25.4e-6;
    let is_at = |job: &Job, thou: f64| (home(job) - thou).abs() < 1e-6;
    assert!(is_at(&job, 1.0), "nothing has moved yet");
    // Both that change places, with what was read of them; and back.
    tick_plan(&mut job, 3, Task::Sleeve, 4);
    let done = |job: &Job| {
        let plan = kept_plan(job, 0).unwrap().unwrap();
        [2, 3].map(|at: usize| plan[at].is_done(Task::Sleeve))
    };
    assert!(is_at(&job, 4.0) && done(&job) == [true; 2]);
    tick_plan(&mut job, 4, Task::Sleeve, 4);
    assert!(is_at(&job, 1.0) && done(&job) == [false; 2]);
    tick_plan(&mut job, 4, Task::Sleeve, 4);
    // What was ticked stays.
    drop_heights_plan(&mut job, 0, 4);
    assert_eq!(kept_plan(&job, 0), Ok(None));
    assert!(is_at(&job, 4.0));
}

/// By hand, in ten-thousandths: a flange of 3040, 3050, 3060, 3050 at 12, 3, 6 and 9 in
/// a counterbore of 3020, 3010, 3000, 3010 stands at 20, 40, 60, 40. Turned by a
/// quarter at 30, 30, 50, 50, by two at 40 everywhere: 10 apart may be, so two.
#[test]
fn a_turn_moves_the_clocks_by_hand() {
    let mut job = four_holes();
    job.left_out = vec![2, 3, 4, 5];
    put(&mut job, Place::of_engine(Field::SpreadHole), "0.0010");
    let depth = ["0.3020", "0.3010", "0.3000", "0.3010"];
    let flange = ["0.3040", "0.3050", "0.3060", "0.3050"];
    for index in 0..4_u8 {
        let at = |field| Place::of_cylinder(1, field, index);
        put(
            &mut job,
            at(Field::CounterboreDepth),
            depth[usize::from(index)],
        );
        put(
            &mut job,
            at(Field::FlangeThickness),
            flange[usize::from(index)],
        );
    }
    let planned = heights_needs(&job, 0).unwrap().unwrap().plan().unwrap();
    assert_eq!(thou(&planned.holes[0].before), [200, 400, 600, 400]);
    assert_eq!(planned.holes[0].turn, 2);
    assert_eq!(thou(&planned.holes[0].after), [400; 4]);
    take_heights_plan(&mut job, &planned, 3);
    tick_plan(&mut job, 1, Task::Sleeve, 4);
    let home = predicted(&Readings::of_cylinder(&job, 1)).unwrap();
    assert!(
        home.iter().all(|m| (m / 25.4e-6 - 4.0).abs() < 1e-6),
        "{home:?}"
    );
}

/// Each thing that is missing is named, and a shim without its count.
#[test]
fn what_is_missing_is_named_one_by_one() {
    let mut job = four_holes();
    put(&mut job, Place::of_engine(Field::SpreadAll), "");
    put(&mut job, Place::of_engine(Field::LedgeCutMost), "0.0040");
    put(&mut job, Place::of_engine(Field::ShimSizes), "0.0020");
    put(
        &mut job,
        Place::of_cylinder(2, Field::CounterboreDepth, 1),
        "",
    );
    let lacks = heights_needs(&job, 0).unwrap_err();
    for field in [
        Field::SpreadAll,
        Field::LedgeCutStep,
        Field::ShimsLeft,
        Field::CounterboreDepth,
    ] {
        assert!(lacks.misses(field), "{field:?}");
    }
    put(&mut job, Place::of_engine(Field::ShimSizes), "0");
    let lacks = heights_needs(&job, 0).unwrap_err();
    assert!(!lacks.unusable.is_empty(), "a shim of no thickness");
}

/// By hand: the third hole is 1 thou too low for the least of 2 once no sleeve may
/// move over: all four flanges alike, 0.3030. A shim of 1 thou brings it to 2; without
/// a shim left nothing does, and the lowest height is what stands in the way.
#[test]
fn a_shim_by_hand_and_none_left() {
    let mut job = four_holes();
    for place in Place::all(Owner::Cylinder(4), Field::FlangeThickness) {
        put(&mut job, place, "0.3030");
    }
    put(&mut job, Place::of_engine(Field::ShimSizes), "0.0010");
    put(&mut job, Place::of_engine(Field::ShimsLeft), "1");
    let planned = heights_needs(&job, 0).unwrap().unwrap().plan().unwrap();
    assert!(planned.plan.possible && planned.plan.shims == 1);
    assert!(planned.holes[2].shim.is_some());
    assert_eq!(thou(&planned.holes[2].after), [200; 4]);
    put(&mut job, Place::of_engine(Field::ShimsLeft), "0");
    let planned = heights_needs(&job, 0).unwrap().unwrap().plan().unwrap();
    let (limit, by) = planned.plan.exceeds.unwrap();
    assert_eq!(limit, crate::planning::heights::HeightLimit::Proud);
    // A height a nanometre off its limit is on it.
    assert!((by.as_thou() - 1.0).abs() < 1e-3);
}

/// A deck of so many holes, each sleeve and each hole another, with shims of 0.0010 in and
/// up: work enough.
fn hard((holes, sizes): (u8, u8), left: &str, [most, pass]: [&str; 2], deep: f64) -> Job {
    let mut job = four_holes();
    job.engine.cylinders = holes;
    job.left_out = Vec::new();
    for c in 1..=holes {
        let of = |field| Place::all(Owner::Cylinder(c), field).zip(0..);
        for (place, i) in of(Field::FlangeThickness) {
            let inch = 0.3 + 0.00013 * f64::from(c) + 0.00007 * f64::from(i);
            put(&mut job, place, &format!("{inch:.5}"));
        }
        for (place, i) in of(Field::CounterboreDepth) {
            let inch = deep + 0.00017 * f64::from(c) - 0.00003 * f64::from(i);
            put(&mut job, place, &format!("{inch:.5}"));
        }
    }
    for index in 0..sizes {
        let at = |field| Place {
            index,
            ..Place::of_engine(field)
        };
        let size = 0.001 * f64::from(index + 1);
        put(&mut job, at(Field::ShimSizes), &format!("{size:.4}"));
        put(&mut job, at(Field::ShimsLeft), left);
    }
    put(&mut job, Place::of_engine(Field::LedgeCutMost), most);
    put(&mut job, Place::of_engine(Field::LedgeCutStep), pass);
    job
}

/// The work that a plan may take is counted, all of it: what is too much is refused, an
/// ordinary deck is planned.
#[test]
fn what_takes_too_long_is_refused() {
    for (size, left, cut, deep, is_planned) in [
        ((5, 12), "1", ["0.0064", "0.0001"], 0.35, false),
        ((8, 6), "8", ["0.0040", "0.0010"], 0.302, true),
        ((4, 8), "1", ["0.0040", "0.0010"], 0.302, true),
    ] {
        let job = hard(size, left, cut, deep);
        let planned = heights_needs(&job, 0).unwrap().unwrap().plan();
        assert_eq!(planned.is_ok(), is_planned, "{size:?}");
    }
}

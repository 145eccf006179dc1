//! The law of the job: spoil, empty or dispute any one entry, and no verdict
//! becomes better, no deck opens, no limit on a pull rises.
//!
//! Over both demos whole and half filled, and over seeded random jobs. Better is
//! counted by what a verdict lets the hand do: stop, look, wait (or nothing to
//! say), go. Two exceptions are part of the law and not of its breach: the step
//! whose own answer becomes *mend this* or *measure this* of the very entry may
//! leave its stop for that; and a measurement that was begun and waited only for
//! its rest may be taken back whole.

mod drops;
mod jobs;
mod law;

use coldseat_core::ask::{DropAnswer, Unusable, drop_of_cylinder};
use coldseat_core::job::assess::assess_cylinder;
use coldseat_core::job::demo::Demo;
use coldseat_core::job::model::part::SleeveKind;
use coldseat_core::job::model::reading::Spot;
use coldseat_core::job::step::StepId;
use coldseat_core::job::{Entry, Field, Job, Owner, Place};
use coldseat_tests::plain::{plain, plain_alone};
use coldseat_tests::share_of;
use jobs::{deck_it, half_filled, leave_proud, measure_cold, random, read_more, work_to_plan};
use law::{Blow, Broken, Tally, hold, struck};

/// Half-filled copies of each demo.
const HALVES: u64 = 8;
/// Copies of each demo with a deck that is cut.
const DECKED: u64 = 6;
/// Copies of each demo whose sleeves are left proud.
const PROUD: u64 = 6;
/// Random jobs.
const RANDOM: u64 = 560;
/// Spoilings asked for, all together.
const LEAST: usize = 200_000;

fn all_jobs() -> Vec<(String, Job)> {
    let mut jobs = Vec::new();
    for demo in Demo::ALL {
        jobs.push((format!("{demo:?}"), demo.job(1)));
        let mut home = demo.job(1);
        home.left_out = vec![demo.not_home()];
        // And nothing read of a sleeve in it.
        let read: Vec<_> = home.entries.iter().map(|(p, e)| (*p, e.unit)).collect();
        for (place, unit) in read {
            if place.owner == Owner::Cylinder(demo.not_home()) {
                home.entries.put(place, Entry::new("", unit, 2));
            }
        }
        for seed in 0..share_of(DECKED) {
            let mut decked = home.clone();
            deck_it(&mut decked, seed);
            jobs.push((format!("{demo:?} decked {seed}"), decked));
        }
        for seed in 0..share_of(PROUD) {
            let mut proud = home.clone();
            leave_proud(&mut proud, seed);
            if seed % 2 == 1 {
                work_to_plan(&mut proud, seed);
            }
            read_more(&mut proud, seed);
            jobs.push((format!("{demo:?} left proud {seed}"), proud));
        }
        jobs.push((format!("{demo:?} without the one that is high"), home));
        for share in [0.0016, 0.0004, -0.0001] {
            let mut cold = demo.job(1);
            let all = 1..=cold.engine.cylinders;
            measure_cold(&mut cold, all, share);
            jobs.push((format!("{demo:?} measured cold, {share}"), cold));
        }
        for kind in [SleeveKind::OnStep, SleeveKind::ByFit] {
            let name = kind.id();
            jobs.push((format!("{demo:?} {name}"), plain_alone(demo, kind)));
            // The larger of the two adds time and no new way to break.
            if demo == Demo::MetricEight {
                continue;
            }
            jobs.push((format!("{demo:?} once flanged, {name}"), plain(demo, kind)));
            let mut home = plain_alone(demo, kind);
            home.left_out = vec![demo.not_home()];
            jobs.push((format!("{demo:?} {name}, all home"), home));
        }
        for seed in 0..HALVES {
            jobs.push((format!("{demo:?} half {seed}"), half_filled(demo, seed)));
        }
    }
    jobs.extend((0..share_of(RANDOM)).map(|seed| (format!("random {seed}"), random(seed))));
    jobs
}

#[test]
fn no_verdict_becomes_better_by_an_entry_that_is_spoilt_emptied_or_in_dispute() {
    let jobs = all_jobs();
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let results: Vec<(Tally, Vec<Broken>)> = std::thread::scope(|scope| {
        let rows: Vec<_> = (0..threads)
            .map(|row| {
                let jobs = &jobs;
                scope.spawn(move || {
                    let mut tally = Tally::default();
                    let mut broken = Vec::new();
                    for (name, job) in jobs.iter().skip(row).step_by(threads) {
                        hold(name, job, &mut tally, &mut broken);
                        if broken.len() > 20 {
                            break;
                        }
                    }
                    (tally, broken)
                })
            })
            .collect();
        rows.into_iter().map(|row| row.join().unwrap()).collect()
    });
    let broken: Vec<&Broken> = results.iter().flat_map(|(_, broken)| broken).collect();
    let tried: usize = results.iter().map(|(tally, _)| tally.tried).sum();
    let took_a_go: usize = results.iter().map(|(tally, _)| tally.took_a_go).sum();
    let told: Vec<String> = broken.iter().take(40).map(|b| format!("{b:?}")).collect();
    assert!(broken.is_empty(), "{}", told.join("\n"));
    let least = share_of(LEAST as u64) as usize;
    assert!(tried >= least, "{tried} spoilings");
    // The law would hold of a page that never says go.
    assert!(
        took_a_go > tried / 10,
        "{took_a_go} of {tried} took a go away"
    );
    println!("{tried} spoilings, {took_a_go} took a go away");
}

/// What a drop is worked out from, its cold diameter among it: none of it spoilt
/// leaves a clearance or a time to be home within.
#[test]
fn no_drop_is_worked_out_of_a_reading_that_cannot_be_used() {
    let mut tried = 0;
    for demo in Demo::ALL {
        let mut job = demo.job(1);
        measure_cold(&mut job, 1..=1, 0.0016);
        let drop = |job: &Job| drop_of_cylinder(job, &assess_cylinder(job, 1));
        assert!(matches!(drop(&job), DropAnswer::Ready(_)), "{demo:?}");
        let places: Vec<Place> = job.entries.iter().map(|(place, _)| *place).collect();
        for place in places {
            let spec = StepId::Drop.spec();
            let used = [Field::Carry].iter().chain(spec.uses);
            let own = place.owner == Owner::Cylinder(1);
            if !own || !used.into_iter().any(|field| *field == place.field) {
                continue;
            }
            for blow in [Blow::Spoil("4.4o3"), Blow::Dispute] {
                let lacks = match drop(&struck(&job, place, blow)) {
                    DropAnswer::Lacks(lacks) => lacks,
                    DropAnswer::Ready(_) => panic!("{demo:?} {place:?} {blow:?}"),
                };
                let here = |u: &Unusable| u.spot == Spot::Reading(place);
                assert!(lacks.unusable.iter().any(here), "{place:?} {lacks:?}");
                tried += 1;
            }
        }
    }
    assert!(tried >= 60, "{tried}");
}

//! The profile of a job: against Lame, the project reference, and its refusals.

#![allow(clippy::unwrap_used)] // a test stops at the first surprise

use crate::job::advice::profile::*;
use crate::job::advice::profile_needs::needs;
use crate::job::demo::{Demo, put};
use crate::job::model::reading::{Spot, Unusable};
use crate::job::steps::assess::assess_cylinder;
use crate::job::{Entry, Field, Job, Owner, Place};

fn without(job: &mut Job, field: Field) {
    let blank = Entry::new("", job.unit(field), 0);
    job.entries.put(Place::of_engine(field), blank);
}

fn of(job: &Job) -> ProfileNeeds {
    needs(job, &assess_cylinder(job, 1)).unwrap()
}

#[test]
fn the_middle_closes_as_lame_says_and_the_flange_holds_the_top_open() {
    for demo in Demo::ALL {
        let job = demo.job(0);
        let profile = profile(&of(&job)).unwrap();
        let middle = profile.middle().unwrap();
        let ratio = middle.change.as_m() / profile.lame.as_m();
        assert!((ratio - 1.0).abs() < 0.02, "{demo:?} {ratio}");
        // Project reference D: at the deck 0.62 to 0.76 of Lame in solid iron, for
        // flanges about as thick, 0.85 to 1.04 in a jacket.
        let deck = profile.levels[0].change.as_m() / profile.lame.as_m();
        let most = if demo == Demo::InchFive { 0.8 } else { 1.05 };
        assert!((0.3..most).contains(&deck), "{demo:?} {deck}");
        let stock_m = middle.stock.unwrap().as_m();
        assert!(stock_m > 0.0 && stock_m < 1e-3, "{demo:?} {stock_m}");
    }
}

#[test]
fn without_a_fit_there_is_no_profile() {
    let (engine, entries) = Demo::InchFive.profile(0);
    let job = Job::new(engine, entries);
    let missing = needs(&job, &assess_cylinder(&job, 1));
    assert!(missing.is_err_and(|lacks| lacks.misses(Field::BoreD)));
}

#[test]
fn half_a_jacket_asks_for_its_other_end() {
    let mut job = Demo::InchFive.job(0);
    put(&mut job, Place::of_engine(Field::JacketFrom), "0.6", 0);
    let missing = needs(&job, &assess_cylinder(&job, 1));
    assert!(missing.is_err_and(|lacks| lacks.misses(Field::JacketTo)));
}

// Project reference D3: in a jacket half an inch below the ledge closes 11 to
// 20 % more than the middle, and the middle as Lame with the parent wall.
#[test]
fn a_jacket_is_tighter_below_the_deck() {
    let mut job = Demo::InchFive.job(0);
    put(&mut job, Place::of_engine(Field::JacketFrom), "0.6", 0);
    put(&mut job, Place::of_engine(Field::JacketTo), "8.2", 0);
    let profile = profile(&of(&job)).unwrap();
    let middle = profile.middle().unwrap().change.as_m();
    assert!((middle / profile.lame.as_m() - 1.0).abs() < 0.012);
    let down = |l: &&ProfileLevel| l.z.as_inch() > 0.219 + 0.5;
    let tighter = profile.levels.iter().find(down).unwrap().change.as_m() / middle;
    assert!((1.08..1.22).contains(&tighter), "{tighter}");
}

#[test]
fn a_refused_dimension_is_named() {
    for (field, text, named) in [
        (Field::SleeveId, "4.5", Field::SleeveId),
        (Field::JacketFrom, "9", Field::JacketFrom),
        (Field::JacketTo, "8.9", Field::JacketTo),
        (Field::BlockWall, "0.95", Field::BlockWall),
    ] {
        let mut job = Demo::InchFive.job(0);
        put(&mut job, Place::of_engine(Field::JacketFrom), "0.6", 0);
        put(&mut job, Place::of_engine(Field::JacketTo), "8.2", 0);
        put(&mut job, Place::of_engine(field), text, 0);
        match needs(&job, &assess_cylinder(&job, 1)) {
            Ok(needs) => {
                let fault = profile(&needs).unwrap_err();
                assert_eq!(field_of(&fault), named, "{fault:?}");
            }
            // What contradicts another number is named before it is worked with.
            Err(lacks) => assert!(
                matches!(lacks.unusable[..], [Unusable { spot: Spot::Reading(p), .. }] if p.field == named),
                "{lacks:?}"
            ),
        }
    }
}

#[test]
fn a_head_presses_the_top_in_and_the_flange_down() {
    let mut job = Demo::InchFive.job(0);
    put(&mut job, Place::of_engine(Field::HeadClamp), "10000", 0);
    let profile = profile(&of(&job)).unwrap();
    let top = profile.levels[0];
    // Project reference D: 0.00088 in at the deck for a like sleeve.
    let pressed = top.change.as_inch() - top.clamped.unwrap().as_inch();
    assert!((0.0004..0.0018).contains(&pressed), "{pressed}");
    let more = top.stock.unwrap().as_inch();
    without(&mut job, Field::HeadClamp);
    let bare = super::profile::profile(&of(&job)).unwrap();
    let less = bare.levels[0].stock.unwrap().as_inch();
    assert!((more - less - pressed).abs() < 1e-9, "{more} {less}");
    assert!(profile.head_sinks.unwrap().as_m() > 0.0 && bare.head_sinks.is_none());
    // Pulled with 45 000 lbf of ram: the flange gives by some tenths.
    let pulled = bare.pull_sinks.unwrap().as_inch();
    assert!((0.0002..0.005).contains(&pulled), "{pulled}");
}

// After the bar the hone finds its stock everywhere but for what the
// relieved wall moves: a few per cent of the close-in.
#[test]
fn boring_leaves_the_hone_its_stock() {
    for demo in Demo::ALL {
        let mut job = demo.job(0);
        without(&mut job, Field::HeadClamp);
        let hone_m = job.engine_si(Field::FinishLeast).unwrap().unwrap();
        let inner_m = job.engine_si(Field::SleeveId).unwrap().unwrap();
        let unit = job.unit(Field::FinalBore);
        let finished = unit.from_si(inner_m + 0.5e-3 + hone_m);
        let text = crate::quantity::format::fixed(finished, 4);
        put(&mut job, Place::of_engine(Field::FinalBore), text, 0);
        let profile = profile(&of(&job)).unwrap();
        for level in &profile.levels {
            let off = (level.stock_bored.unwrap().as_m() - hone_m).abs();
            assert!(off < 0.1 * profile.lame.as_m().abs(), "{demo:?} {off}");
        }
    }
}

#[test]
fn a_trial_changes_what_it_says_and_the_own_one_nothing() {
    let needs = of(&Demo::MetricEight.job(0));
    let own = needs.trial();
    let same = profile(&needs.with(own)).unwrap();
    let was = profile(&needs).unwrap();
    for (a, b) in same.levels.iter().zip(&was.levels) {
        assert!((a.change.as_m() - b.change.as_m()).abs() < 1e-12);
    }
    let twice = profile(&needs.with(Trial {
        fit: crate::quantity::DiametralInterference::from_m(2.0 * own.fit.as_m()),
        ..own
    }))
    .unwrap();
    // Linear as long as nothing opens: the middle closes twice as much.
    let middle = |p: &Profile| p.middle().unwrap().change.as_m();
    assert!((middle(&twice) / middle(&was) - 2.0).abs() < 1e-3);
}

#[test]
fn sleeves_go_in_from_one_end_or_from_what_is_fitted() {
    let (engine, entries) = Demo::InchFive.profile(0);
    let mut job = Job::new(engine, entries);
    assert_eq!(order_of_sleeves(&job, 2), (vec![1, 2, 3, 4, 5], 1));
    let third = Place {
        owner: Owner::Cylinder(3),
        field: Field::WarmHeight,
        index: 0,
    };
    put(&mut job, third, "0.015", 0);
    assert_eq!(order_of_sleeves(&job, 1), (vec![2, 1, 4, 5], 1));
}

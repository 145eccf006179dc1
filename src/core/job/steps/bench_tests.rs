//! The steps round the bench: every one of them asked with numbers worked by
//! hand, and marks set by hand.

#![allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise

use crate::job::demo::Demo;
use crate::job::model::reading::{Missing, Spot, Standing};
use crate::job::step::{Mark, STEPS, StepId, Subject};
use crate::job::steps::assess::{assess, assess_cylinder, assess_owner};
use crate::job::steps::deck::{Lock, lock};
use crate::job::verdict::order::{OrderCheck, OrderItem};
use crate::job::verdict::{Answer, Detail, Next, Signal, StepReport};
use crate::job::{Entry, Field, Job, Owner, Place};
use crate::quantity::code::Code;

const INCH: f64 = 0.0254;

fn put(job: &mut Job, owner: Owner, field: Field, texts: &[&str]) {
    for (index, text) in texts.iter().enumerate() {
        let place = Place {
            owner,
            field,
            index: index as u8,
        };
        let unit = job.unit(field);
        job.entries.put(place, Entry::new(*text, unit, 0));
    }
}

/// A step of the inch demo with some readings typed over.
fn step(id: StepId, changes: &[(Owner, Field, &[&str])]) -> StepReport {
    let mut job = Demo::InchFive.job(0);
    for (owner, field, texts) in changes {
        put(&mut job, *owner, *field, texts);
    }
    let owner = match id.spec().subject {
        Subject::Block => Owner::Block,
        Subject::Bank => Owner::Bank(0),
        Subject::Cylinder => Owner::Cylinder(1),
    };
    assess_owner(&job, owner)
        .into_iter()
        .find(|s| s.id == id)
        .unwrap()
}

#[track_caller]
fn check(id: StepId, changes: &[(Owner, Field, &[&str])], signal: Signal, si: f64) {
    let report = step(id, changes);
    assert_eq!(report.signal, signal, "{id:?} {:?}", report.next);
    let number = report.number.unwrap().si;
    assert!(
        (number - si).abs() <= 1e-6 * si.abs().max(1e-3),
        "{id:?} {number} {si}"
    );
}

const ONE: Owner = Owner::Cylinder(1);
const BLOCK: Owner = Owner::Block;

#[test]
fn the_block_before_it_is_bored() {
    let rest = [(BLOCK, Field::BlockNow, ["95"].as_slice())];
    check(StepId::Rest, &rest, Signal::Wait, 27.0);
    let leak = [(BLOCK, Field::TestEnd, ["30"].as_slice())];
    check(StepId::Pressure, &leak, Signal::Stop, 25.0);
    check(StepId::Datum, &[], Signal::Go, 0.0006 * INCH);
    let lean = [(
        Owner::Bank(0),
        Field::DeckHeight,
        ["14.5000", "14.5030"].as_slice(),
    )];
    check(StepId::Datum, &lean, Signal::Look, 0.0030 * INCH);
    check(StepId::OldBore, &[], Signal::Go, 0.0052 * INCH);
}

#[test]
fn the_thinnest_wall_decides() {
    // Half of the new bore less the old one there: 3 and 9 o'clock are read across the
    // engine, 4.2556 at the top; 12 along it, 4.2548. And 0.0003 toward 3 o'clock.
    let od = (4.4413 + 4.4414 + 4.4414 + 4.4413 + 4.4413 + 4.4412) / 6.0;
    let taken = |old: f64| 0.5 * (od - 0.00125 - old);
    let across = taken(4.2556);
    let least = f64::min(0.3990 - across + 0.0003, 0.4020 - across - 0.0003);
    check(StepId::Wall, &[], Signal::Go, least * INCH);
    let thin = [(ONE, Field::WallReading, ["0.1600"].as_slice())];
    let left = 0.1600 - taken(4.2548) - 0.0009;
    check(StepId::Wall, &thin, Signal::Stop, left * INCH);
    // The same wall at the bottom, where the bore is not worn: 4.2504 along the engine
    // there takes 0.0022 more off it than the top's 4.2548.
    let mut at_bottom = [
        "0.4180", "0.4020", "0.4210", "0.3990", "0.4260", "0.4110", "0.4300", "0.4080", "0.1600",
        "0.4290", "0.4440", "0.4250",
    ];
    let bottom = [(ONE, Field::WallReading, at_bottom.as_slice())];
    let left = 0.1600 - taken(4.2504) - 0.0009;
    check(StepId::Wall, &bottom, Signal::Stop, left * INCH);
    // And across it, 9 o'clock: 4.2506.
    (at_bottom[8], at_bottom[11]) = ("0.4410", "0.1600");
    let bottom = [(ONE, Field::WallReading, at_bottom.as_slice())];
    let left = 0.1600 - taken(4.2506) + 0.0003;
    check(StepId::Wall, &bottom, Signal::Stop, left * INCH);
    let through = [(ONE, Field::WallReading, ["0.0900"].as_slice())];
    assert!(
        step(StepId::Wall, &through)
            .findings
            .iter()
            .any(|f| f.code == Code::NoWall)
    );
}

#[test]
fn a_sleeve_that_does_not_fit_the_block_is_not_ordered() {
    check(StepId::Choose, &[], Signal::Go, (5.2 - 4.644) * INCH);
    let low = [(BLOCK, Field::StepBelow, ["8.8400"].as_slice())];
    check(StepId::Choose, &low, Signal::Stop, (5.2 - 4.644) * INCH);
    let no_stock = [(BLOCK, Field::FinalBore, ["4.1900"].as_slice())];
    check(
        StepId::Choose,
        &no_stock,
        Signal::Stop,
        (5.2 - 4.644) * INCH,
    );
    let close = [(BLOCK, Field::Pitch, ["4.6000"].as_slice())];
    check(StepId::Choose, &close, Signal::Look, (4.6 - 4.644) * INCH);
}

/// Each line of the order, worked by hand from the demo's numbers.
#[test]
fn every_line_of_an_order_is_checked() {
    let lines = |changes: &[(Owner, Field, &[&str])]| match step(StepId::Choose, changes).answer {
        Answer::Order(checks, _) => checks,
        other => panic!("{other:?}"),
    };
    let of = |checks: &[OrderCheck], item| checks.iter().find(|c| c.item == item).cloned().unwrap();
    let known = |check: &OrderCheck| match &check.standing {
        Standing::Known(one) => (one.value.as_m() / INCH, one.signal),
        other => panic!("{other:?}"),
    };
    let all = lines(&[]);
    for (item, inch) in [
        // Pitch less flange and middle clearance.
        (OrderItem::Web, 5.2 - 4.644),
        // Lower step, less flange under the deck, less length.
        (OrderItem::Bottom, 8.88 - (0.219 - 0.010) - 8.625),
        (OrderItem::Ledge, 0.5 * (4.64 - 4.44)),
        (OrderItem::FinishStock, 4.2 - (4.19 - 0.00125)),
        (OrderItem::GrooveInside, 0.5 * (4.36 - 4.2)),
        (OrderItem::GrooveOutside, 0.5 * (4.64 - 4.48)),
        // Flange less stand-proud, cut and groove.
        (OrderItem::GrooveFloor, 0.219 - 0.010 - 0.005 - 0.054),
    ] {
        let (value, signal) = known(&of(&all, item));
        assert!((value - inch).abs() < 1e-9, "{item:?} {value} {inch}");
        assert_eq!(signal, Signal::Go, "{item:?}");
    }
    let narrow = lines(&[(BLOCK, Field::FlangeOd, &["4.5400"])]);
    assert_eq!(known(&of(&narrow, OrderItem::Ledge)).1, Signal::Stop);
    assert_eq!(
        known(&of(&narrow, OrderItem::GrooveOutside)).1,
        Signal::Stop
    );
    let through = lines(&[(BLOCK, Field::StepBelow, &["none"])]);
    assert_eq!(of(&through, OrderItem::Bottom).standing, Standing::NotHere);
    let missing = |field| {
        Standing::Missing(Missing {
            owner: BLOCK,
            field,
            places: 1,
        })
    };
    // Nobody has said whether it has one.
    let unsaid = lines(&[(BLOCK, Field::StepBelow, &[""])]);
    let bottom = of(&unsaid, OrderItem::Bottom).standing;
    assert_eq!(bottom, missing(Field::StepBelow));
    let no_groove = [(BLOCK, Field::GrooveInner, [""].as_slice())];
    let inside = of(&lines(&no_groove), OrderItem::GrooveInside);
    assert_eq!(inside.standing, missing(Field::GrooveInner));
    check(
        StepId::Choose,
        &no_groove,
        Signal::Wait,
        (5.2 - 4.644) * INCH,
    );
    let no_ring = [(BLOCK, Field::RingHeight, ["none"].as_slice())];
    check(StepId::Choose, &no_ring, Signal::Go, (5.2 - 4.644) * INCH);
    // The thinnest wall of all holes counts, not the one entered.
    let thin = lines(&[(ONE, Field::WallReading, &["0.1600"])]);
    assert_eq!(known(&of(&thin, OrderItem::Wall)).1, Signal::Stop);
}

#[test]
fn bar_and_counterbore() {
    check(
        StepId::Centre,
        &[],
        Signal::Go,
        0.0009_f64.hypot(0.0003) * INCH,
    );
    let wide = [(
        ONE,
        Field::Indicator,
        ["0.0060", "0", "-0.0060", "0"].as_slice(),
    )];
    check(StepId::Centre, &wide, Signal::Look, 0.0060 * INCH);
    let small = [(ONE, Field::BoredD, ["4.4300"].as_slice())];
    assert!(matches!(
        step(StepId::Bore, &small).next,
        Next::AdviceBy(StepId::Bore, Signal::Wait, _)
    ));
    let grips = [(ONE, Field::CounterboreD, ["4.6410"].as_slice())];
    check(StepId::CounterboreD, &grips, Signal::Wait, 0.0008 * INCH);
    check(StepId::Chamfer, &[], Signal::Go, 0.0080 * INCH);
    let rides = [(ONE, Field::ChamferHere, ["0.0320"].as_slice())];
    check(StepId::Chamfer, &rides, Signal::Wait, 0.0020 * INCH);
}

#[test]
fn room_bath_and_warming() {
    let small = [(BLOCK, Field::RoomVolume, ["30"].as_slice())];
    assert_eq!(step(StepId::DryRun, &small).signal, Signal::Stop);
    let chill = step(StepId::Chill, &[]);
    let Answer::Chill(answer) = &chill.answer else {
        unreachable!("{:?}", chill.answer)
    };
    assert!(answer.quiet_low < answer.quiet && answer.quiet < answer.quiet_high);
    let short = [(ONE, Field::ChillTime, ["20"].as_slice())];
    assert_eq!(step(StepId::Chill, &short).signal, Signal::Wait);
    let cold = [(ONE, Field::SleeveWarm, ["45"].as_slice())];
    check(StepId::Hold, &cold, Signal::Wait, 23.0);
}

#[test]
fn a_groove_leaves_of_the_flange_what_the_cut_left_of_it() {
    // T 0.2200, stands 0.0100 proud on the clock where it is thinnest beside it, cut
    // 0.0050: 0.2050 are left; the groove for a ring of 0.0400, 0.0030 proud, takes
    // 0.0370: 0.1680.
    let typed = [
        (ONE, Field::FlangeThickness, ["0.2200"; 4].as_slice()),
        (
            ONE,
            Field::SeatHeight,
            ["0.0100", "0.0098", "0.0096", "0.0098"].as_slice(),
        ),
        (BLOCK, Field::RingHeight, ["0.0400"].as_slice()),
        (BLOCK, Field::RingProud, ["0.0030"].as_slice()),
        (BLOCK, Field::PlannedCut, ["0.0050"].as_slice()),
        (Owner::Bank(0), Field::DeckCut, [""].as_slice()),
        (ONE, Field::GrooveDepth, ["0.0370"; 4].as_slice()),
    ];
    let report = step(StepId::Groove, &typed);
    let Answer::More(list) = &report.answer else {
        panic!("{:?}", report.answer)
    };
    let floor = list.iter().find(|m| m.detail == Detail::FloorLeft).unwrap();
    assert!(
        (floor.si / INCH - 0.1680).abs() < 1e-9,
        "{}",
        floor.si / INCH
    );
}

#[test]
fn pistons_grooves_finish_and_rings() {
    let piston = [(ONE, Field::PistonProud, ["0.0100", "0.0120"].as_slice())];
    check(StepId::Protrusion, &piston, Signal::Go, 0.0330 * INCH);
    let high = [(ONE, Field::PistonProud, ["0.0100", "0.0160"].as_slice())];
    check(StepId::Protrusion, &high, Signal::Stop, 0.0290 * INCH);
    let ring = |depth: &'static [&'static str]| {
        [
            (BLOCK, Field::RingHeight, ["0.0600"].as_slice()),
            (BLOCK, Field::RingProud, ["0.0080"].as_slice()),
            (Owner::Bank(0), Field::DeckCut, ["0.0050"].as_slice()),
            (ONE, Field::GrooveDepth, depth),
        ]
    };
    let good = ring(&["0.0520", "0.0525", "0.0520", "0.0518"]);
    check(StepId::Groove, &good, Signal::Go, 0.0005 * INCH);
    let deep = ring(&["0.0520", "0.0540", "0.0520", "0.0518"]);
    check(StepId::Groove, &deep, Signal::Stop, 0.0020 * INCH);
    let shallow = ring(&["0.0500", "0.0490", "0.0500", "0.0500"]);
    check(StepId::Groove, &shallow, Signal::Wait, -0.0030 * INCH);
    let to_hone = [(ONE, Field::FinishD, ["4.1950"; 6].as_slice())];
    check(StepId::Finish, &to_hone, Signal::Wait, 0.0050 * INCH);
    let past = [(ONE, Field::FinishD, ["4.2010"; 6].as_slice())];
    check(StepId::Finish, &past, Signal::Stop, -0.0010 * INCH);
    let gaps = [(ONE, Field::RingGapNow, ["0.0180", "0.0150"].as_slice())];
    check(StepId::RingGap, &gaps, Signal::Wait, 0.0150 * INCH);
}

/// A further number of a step.
fn further(report: &StepReport, detail: Detail) -> Option<f64> {
    match &report.answer {
        Answer::More(list) | Answer::Form(_, list) => {
            list.iter().find(|m| m.detail == detail).map(|m| m.si)
        }
        _ => None,
    }
}

#[test]
fn the_cut_the_hone_and_the_piston_by_hand() {
    let piston = [(ONE, Field::PistonProud, ["0.0100", "0.0120"].as_slice())];
    // Clearance as a height: 5.5 / 15.2, less the planned 0.0050.
    let clearance = 5.5 / 15.2 - 0.0050;
    let ratio = further(&step(StepId::Protrusion, &piston), Detail::Compression).unwrap();
    assert!((ratio - (5.5 + clearance) / clearance).abs() < 1e-9);
    // Not measured yet: the cross-hatch is there, and what is to come off.
    let before = step(StepId::Finish, &[]);
    let angle = further(&before, Detail::HatchIncluded).unwrap();
    let by_hand = 2.0 * (2.0 * 6.0 * 48.0 / (core::f64::consts::PI * 4.2 * 150.0)).atan();
    assert!((angle - by_hand.to_degrees()).abs() < 1e-9);
    assert_eq!(further(&before, Detail::HatchHorizontal), Some(0.5 * angle));
    let stock = before.number.unwrap().si;
    let bore_to = further(&before, Detail::BoreTo).unwrap();
    assert!(stock > 0.0 && (bore_to - (4.2 - 0.004) * INCH).abs() < 1e-9);
    let wanted = Missing {
        owner: ONE,
        field: Field::FinishD,
        places: 6,
    };
    assert_eq!(before.next, Next::Measure(wanted));
    let done = [(ONE, Field::FinishD, ["4.2000"; 6].as_slice())];
    let finished = step(StepId::Finish, &done);
    let room = further(&finished, Detail::PistonRoom).unwrap();
    assert!((room - 0.0050 * INCH).abs() < 1e-9 && finished.signal == Signal::Go);
    let large = [done[0], (BLOCK, Field::PistonD, ["4.1960"].as_slice())];
    assert_eq!(step(StepId::Finish, &large).signal, Signal::Stop);
}

#[test]
fn how_the_sleeve_went_in() {
    for (word, signal) in [
        ("free", Signal::Go),
        ("Dragged", Signal::Look),
        ("stuck", Signal::Stop),
    ] {
        let said = [word];
        let report = step(StepId::Drop, &[(ONE, Field::DropOutcome, said.as_slice())]);
        assert_eq!(report.next, Next::Advice(StepId::Drop, signal), "{word}");
    }
    let other = step(
        StepId::Drop,
        &[(ONE, Field::DropOutcome, ["sideways"].as_slice())],
    );
    let place = Place::of_cylinder(1, Field::DropOutcome, 0);
    assert_eq!(other.next, Next::Mend(Spot::Reading(place)));
}

#[test]
fn a_mark_settles_what_no_reading_contradicts() {
    let mut job = Demo::InchFive.job(0);
    let of = |job: &Job, id: StepId| assess_cylinder(job, 1).step(id).cloned().unwrap();
    job.set_mark(ONE, StepId::RingGap, Some(Mark::NotForThisJob), 1);
    let passed = of(&job, StepId::RingGap);
    assert!(passed.passed_over && passed.is_settled() && passed.next == Next::PassedOver);
    // For the whole job: cylinder 5 does not have it either.
    let five = assess_cylinder(&job, 5);
    assert!(five.step(StepId::RingGap).is_some_and(|s| s.passed_over));
    job.set_mark(ONE, StepId::RingGap, None, 2);
    assert!(!of(&job, StepId::RingGap).passed_over);
    job.set_mark(ONE, StepId::RingGap, Some(Mark::Done), 3);
    assert_eq!(of(&job, StepId::RingGap).next, Next::Marked);
}

#[test]
fn no_mark_unlocks_the_deck() {
    let mut job = Demo::InchFive.job(0);
    for spec in STEPS {
        for mark in [
            Mark::Done,
            Mark::Skipped("in a hurry".into()),
            Mark::NotForThisJob,
        ] {
            job.set_mark(Owner::Cylinder(3), spec.id, Some(mark), 0);
            assert_eq!(
                lock(&job, &assess(&job), 0),
                Lock::Locked(vec![3]),
                "{}",
                spec.name
            );
        }
    }
}

#[test]
fn a_hole_that_springs_back_otherwise_is_named() {
    let mut job = Demo::InchFive.job(0);
    // The others return 0.0008 in; u is 0.0004.
    put(
        &mut job,
        Owner::Cylinder(2),
        Field::PullLoaded,
        &["0.0120", "0.0080", "0.0075", "0.0075"],
    );
    let odd: Vec<u8> = assess(&job)
        .iter()
        .filter(|r| {
            r.step(StepId::Pull)
                .is_some_and(|s| s.findings.iter().any(|f| f.code == Code::OddReturn))
        })
        .map(|r| r.cylinder)
        .collect();
    assert_eq!(odd, [2]);
}

/// A deck waits for its flanges, then for the cut; a cut that leaves a low spot
/// stops whatever a hand has marked.
#[test]
fn a_deck_is_done_when_it_is_open_and_marked() {
    let deck = |job: &Job| {
        assess_owner(job, Owner::Bank(0))
            .into_iter()
            .find(|s| s.id == StepId::Deck)
            .unwrap()
    };
    let mut job = Demo::InchFive.job(0);
    assert_eq!(deck(&job).signal, Signal::Wait);
    job.set_mark(Owner::Bank(0), StepId::Deck, Some(Mark::Done), 1);
    assert_eq!(deck(&job).signal, Signal::Wait, "the mark is not a seat");
    job.set_mark(Owner::Bank(0), StepId::Deck, None, 1);
    job.left_out = vec![Demo::InchFive.not_home()];
    assert_eq!(deck(&job).next, Next::SleeveIn, "one was read in it");
    let out = Owner::Cylinder(Demo::InchFive.not_home());
    for field in [Field::WarmHeight, Field::PullReleased, Field::SeatHeight] {
        put(&mut job, out, field, &[""; 4]);
    }
    let open = deck(&job);
    assert_eq!(open.signal, Signal::None);
    assert!(!open.is_settled());
    // Planned, as entered with the engine.
    assert!((open.number.unwrap().si / INCH - 0.0050).abs() < 1e-9);
    // The planned cut, marked: nobody has said what was cut.
    job.set_mark(Owner::Bank(0), StepId::Deck, Some(Mark::Done), 1);
    assert_eq!(deck(&job).signal, Signal::Marked);
    assert!(deck(&job).is_settled());
    put(&mut job, Owner::Bank(0), Field::DeckCut, &["0.0050"]);
    assert_eq!(deck(&job).signal, Signal::Go);
    assert!(deck(&job).is_settled());
    // Less than the deepest spot, 0.0010 in, with 0.0020 to clean up.
    put(&mut job, Owner::Bank(0), Field::DeckCut, &["0.0025"]);
    assert_eq!(deck(&job).signal, Signal::Stop);
}

/// Without the gasket itself the grades answer: 0.0460 are wanted over pistons
/// 0.0160 proud with 0.0300 to the head.
#[test]
fn the_grade_to_buy_gives_the_room_to_the_head() {
    let proud = (ONE, Field::PistonProud, ["0.0160", "0.0150"].as_slice());
    let none = (BLOCK, Field::Gasket, [""].as_slice());
    let grades = ["0.0430", "0.0520", "0.0470"];
    let with = |grades| [proud, none, (BLOCK, Field::GasketGrades, grades)];
    check(
        StepId::Protrusion,
        &with(grades.as_slice()),
        Signal::Go,
        (0.0470 - 0.0160) * INCH,
    );
    check(
        StepId::Protrusion,
        &with(&grades[..1]),
        Signal::Stop,
        (0.0430 - 0.0160) * INCH,
    );
}

/// The ledge of the demo bears 45 000 psi: 6000 psi on the gauge are too much,
/// whatever the heights say; and a clock a turn of the micrometer off is asked
/// about before the pull (0.025 in, common practice).
#[test]
fn an_overloaded_pull_stops_and_a_clock_far_off_is_asked_about() {
    let mut job = Demo::InchFive.job(1);
    let mut put = |place: Place, text: &str| {
        let entry = Entry::new(text, job.unit(place.field), 2);
        job.entries.put(place, entry);
    };
    put(Place::of_cylinder(1, Field::PullGauge, 2), "6000");
    put(Place::of_cylinder(2, Field::WarmHeight, 1), "0.0410");
    let pull = assess_cylinder(&job, 1);
    let pull = pull.step(StepId::Pull).unwrap();
    assert_eq!(pull.signal, Signal::Stop);
    assert_eq!(pull.next, Next::Advice(StepId::Pull, Signal::Stop));
    let warm = assess_cylinder(&job, 2);
    let warm = warm.step(StepId::WarmHeight).unwrap();
    assert!(warm.findings.iter().any(|f| f.code == Code::Cocked));
    assert_eq!(warm.signal, Signal::Look);
}

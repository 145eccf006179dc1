//! Stored documents of every shipped version: they must read for ever. The
//! files are never edited; a new version adds files of its own.

#![allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise

use super::merge::{Spot, choose, conflicts};
use super::pen::Pen;
use super::row::Row;
use super::{Body, Document, Restored, restore, write};
use crate::job::assess::assess;
use crate::job::demo::Demo;
use crate::job::ledger::Writer;
use crate::job::verdict::State;
use crate::job::{Entry, Field, Job, Owner, Place, Unlock};
use crate::quantity::parse::Unit;

const JOB_V1: &str = include_str!("../../../tests/golden/job-v1.json");
const CONFLICT_V1: &str = include_str!("../../../tests/golden/job-conflict-v1.json");
const JOB_V2: &str = include_str!("../../../tests/golden/job-v2.json");
const SHOP_V2: &str = include_str!("../../../tests/golden/shop-v2.json");
const DROP_V2: &str = include_str!("../../../tests/golden/drop-v2.json");
const KEPT_DROP_V3: &str = include_str!("../../../tests/golden/kept-drop-v3.json");
const SHOP_V1: &str = include_str!("../../../tests/golden/shop-v1.json");

#[track_caller]
fn valid(text: &str) -> Document {
    match restore(text.trim_end()) {
        Restored::Valid(document) => document,
        other => panic!("{other:?}"),
    }
}

#[track_caller]
fn job(document: Document) -> Job {
    match document.body {
        Body::Job(job) => *job,
        Body::Shop(_) | Body::Drop(_) => panic!("no job"),
    }
}

#[test]
fn a_job_of_version_1_reads_and_comes_back_byte_for_byte() {
    let document = valid(JOB_V1);
    assert_eq!(write(&document), JOB_V1.trim_end());
    assert_eq!(document.created, 1_700_000_000_000);
    assert_eq!(document.changed, 1_700_000_500_000);
    let job = job(document);
    assert_eq!(job.engine.cylinders, 8);
    assert_eq!(job.left_out, [2]);
    assert_eq!(
        job.unlocks.get(&1),
        Some(&Unlock {
            reason: "sleeve 6 comes out tomorrow".into(),
            at: 1_700_000_400_000
        })
    );
    let entry = |cylinder, field, index| {
        let place = Place::of_cylinder(cylinder, field, index);
        job.entries.get(place).cloned().unwrap()
    };
    let comma = entry(1, Field::SleeveOd, 1);
    assert_eq!((comma.text.as_str(), comma.kept), ("132,04", true));
    assert_eq!(entry(1, Field::SleeveOd, 3).text, "not yet");
    assert_eq!(
        entry(1, Field::BoreD, 0),
        Entry::new("5.1970 in", Unit::Millimetre, 1_700_000_000_000)
    );
    // 5.1970 in is what was typed, whatever the unit of the sheet.
    let place = Place::of_cylinder(1, Field::BoreD, 0);
    assert!((job.reading(place).number().unwrap().unwrap() - 5.1970 * 0.0254).abs() < 1e-12);
    assert!(job.unknown.contains_key("helper"));
    let states: Vec<State> = assess(&job).into_iter().map(|r| r.state).collect();
    assert_eq!(states[1], State::LeftOut);
    assert_eq!(
        states[usize::from(Demo::MetricEight.not_home()) - 1],
        State::Stop
    );
}

#[test]
fn a_shop_of_version_1_reads_and_comes_back_byte_for_byte() {
    let document = valid(SHOP_V1);
    assert_eq!(write(&document), SHOP_V1.trim_end());
    let Body::Shop(shop) = document.body else {
        panic!("a job, not a shop")
    };
    let place = Place {
        owner: Owner::Block,
        field: Field::GaugeDepth,
        index: 0,
    };
    assert_eq!(shop.entries.get(place).unwrap().text, "0,010");
    assert_eq!(shop.pad, Some(false));
}

#[test]
fn a_job_of_two_copies_reads_and_comes_back_byte_for_byte() {
    let document = valid(CONFLICT_V1);
    assert_eq!(write(&document), CONFLICT_V1.trim_end());
    let mut job = job(document);
    let place = Place::of_cylinder(3, Field::BoreD, 0);
    let all = conflicts(&job);
    let at: Vec<&str> = all.iter().map(|c| c.path.as_str()).collect();
    assert_eq!(at, ["customer", "entries/3/bore_d/0"]);
    assert_eq!(all[1].spot, Spot::Reading(place));
    assert_eq!(
        all[1].values,
        [
            ("4.2571 in".to_owned(), Some(1_700_000_300_000)),
            ("4.2569 in".to_owned(), Some(1_700_000_200_000)),
        ]
    );
    let mut pen = Pen::new(Writer::of(1, 1));
    choose(
        &mut job,
        "entries/3/bore_d/0",
        1,
        &mut pen,
        1_700_000_400_000,
    );
    assert_eq!(job.entries.get(place).unwrap().text, "4.2569");
    assert_eq!(conflicts(&job).len(), 1);
}

#[test]
fn a_cold_drop_under_a_name_reads_and_comes_back_byte_for_byte() {
    let document = valid(KEPT_DROP_V3);
    assert_eq!(write(&document), KEPT_DROP_V3.trim_end());
    assert_eq!(document.id.as_deref(), Some("0123456789cd"));
    assert_eq!(document.binned, Some(1_800_000_005_000));
    let row = Row::of(&document).unwrap();
    assert_eq!(
        (row.engine.as_str(), row.customer.as_str()),
        ("5.1985 in", "0.0012 in")
    );
    assert_eq!(row.disputed, 1);
    let Body::Drop(drop) = document.body else {
        panic!("no cold drop")
    };
    assert_eq!(drop.name, "Kiln Road six (invented)");
    let disputed = conflicts(&*drop);
    let carry = Place::of_engine(Field::DropCarry);
    assert_eq!(disputed[0].spot, Spot::Reading(carry));
    // Programs before there were any: of a later version, not the one in use.
    assert!(KEPT_DROP_V3.contains("\"version\":3"));
}

#[test]
fn documents_of_version_2_read_and_come_back_byte_for_byte() {
    for text in [JOB_V2, SHOP_V2, DROP_V2] {
        let document = valid(text);
        assert_eq!(write(&document), text.trim_end());
    }
    let document = valid(JOB_V2);
    assert_eq!(document.id.as_deref(), Some("0123456789ab"));
    assert_eq!(document.binned, Some(1_800_000_005_000));
    let job = job(document);
    let (phone, tab) = (Writer::of(0xcafe, 1), Writer::of(0xbeef, 1));
    let disputed = job.ledger.disputed(&job.entries);
    let places: Vec<Place> = disputed.iter().map(|one| one.place).collect();
    let bore = |cylinder| Place::of_cylinder(cylinder, Field::BoreD, 0);
    assert_eq!(places, [bore(2), bore(3)]);
    assert_eq!(job.ledger.by.get("entries/2/bore_d/0"), Some(&tab));
    // In the spans of both: told by itself.
    assert_eq!(job.ledger.by.get("steps/3/wall"), Some(&phone));
    assert_eq!(job.ledger.by.get("note"), phone.again().as_ref());
    // Never changed since version 1: known by its content.
    assert_eq!(job.ledger.by.get("entries/3/bore_d/0"), None);
    assert_eq!(job.customer, "Kiln Road Haulage (invented)");
    let Body::Drop(drop) = valid(DROP_V2).body else {
        panic!("no cold drop")
    };
    let od = Place::of_engine(Field::DropOd);
    assert_eq!(drop.sheet.entries.get(od).unwrap().text, "5.1985");
    assert_eq!(drop.sheet.block_material.id(), "ductile_iron_ferritic");
}

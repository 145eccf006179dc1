//! Links there and back, and everything that happens to a link on its way.

#![allow(clippy::unwrap_used)] // a test stops at the first surprise

use super::*;
use crate::job::demo::Demo;
use crate::job::engine::presets;
use crate::job::field::{FIELDS, Scope};
use crate::quantity::parse::Unit;
use proptest::prelude::*;

fn profile(demo: Demo) -> Shared {
    let (engine, entries) = demo.profile(0);
    Shared::Profile(engine, entries)
}

fn drop_sheet() -> Shared {
    Shared::Drop(DropSheet {
        entries: presets(Scope::Drop, UnitSystem::Metric, 0),
        units: UnitSystem::Metric,
        sleeve_material: MaterialId::GrayIron,
        block_material: MaterialId::AluminiumA356,
    })
}

#[test]
fn every_name_of_today_has_its_frozen_number() {
    for (scope, table) in [(Scope::Engine, tables::ENGINE), (Scope::Drop, tables::DROP)] {
        for spec in FIELDS.iter().filter(|f| f.scope == scope) {
            assert!(table.contains(&spec.id), "{} is in no link", spec.id);
        }
        assert!(table.iter().all(|id| Field::from_id(id).is_some()));
    }
    assert!(
        MaterialId::ALL
            .iter()
            .all(|m| tables::MATERIALS.contains(&m.id()))
    );
    assert!(
        Layout::ALL
            .iter()
            .all(|l| tables::LAYOUTS.contains(&l.id()))
    );
    assert!(tables::FLOOR.iter().all(|id| Field::from_id(id).is_some()));
}

#[test]
fn what_was_typed_comes_back_digit_for_digit() {
    for shared in [
        profile(Demo::InchFive),
        profile(Demo::MetricEight),
        drop_sheet(),
    ] {
        let payload = encode(&shared).unwrap();
        assert!(payload.len() <= 600, "{}", payload.len());
        assert_eq!(decode(&payload, 0).unwrap(), shared);
    }
}

#[test]
fn a_floor_sheet_carries_the_sleeves() {
    let job = Demo::MetricEight.job(0);
    let payload = encode(&Shared::Floor(Box::new(job.clone()))).unwrap();
    let Shared::Floor(back) = decode(&payload, 0).unwrap() else {
        unreachable!("a floor sheet")
    };
    assert_eq!(back.name, job.name);
    for cylinder in 1..=8 {
        let owner = Owner::Cylinder(cylinder);
        for field in [Field::SleeveOd, Field::FlangeThickness] {
            assert_eq!(
                back.entries.comparable(owner, field),
                job.entries.comparable(owner, field)
            );
        }
        assert!(back.entries.comparable(owner, Field::SeatHeight).is_empty());
    }
}

#[test]
fn texts_that_are_no_plain_numbers_survive() {
    let (engine, mut entries) = Demo::InchFive.profile(0);
    for (field, text, unit) in [
        (Field::SleeveLength, "8 5/8", Unit::Inch),
        (Field::BlockWall, "9,5 mm", Unit::Inch),
        (Field::Shim, ".0020", Unit::Inch),
        (Field::RingProud, "-0.0010", Unit::Inch),
    ] {
        entries.put(Place::of_engine(field), Entry::new(text, unit, 0));
    }
    let shared = Shared::Profile(engine.clone(), entries.clone());
    assert_eq!(decode(&encode(&shared).unwrap(), 0).unwrap(), shared);
    // Typed in a job of the other unit: the link says which.
    entries.put(
        Place::of_engine(Field::BlockWall),
        Entry::new("9.5", Unit::Millimetre, 0),
    );
    let payload = encode(&Shared::Profile(engine, entries)).unwrap();
    let Shared::Profile(_, back) = decode(&payload, 0).unwrap() else {
        unreachable!("a profile")
    };
    let wall = back
        .reading(Place::of_engine(Field::BlockWall))
        .number()
        .unwrap()
        .unwrap();
    assert!((wall - 0.0095).abs() < 1e-12);
}

#[test]
fn what_a_messenger_does_to_a_link_is_undone_or_told() {
    let shared = profile(Demo::InchFive);
    let payload = encode(&shared).unwrap();
    let address = format!("https://shop.example/coldseat/{MARK}{payload}");
    for text in [
        address.clone(),
        format!("  {address}\n"),
        format!("See {address}."),
        format!("{address}{address}"),
        address.replace('#', "%23").replace('/', "%2F"),
        format!("<{address}>"),
    ] {
        assert_eq!(decode(&text, 0).as_ref(), Ok(&shared), "{text}");
    }
    for cut in 1..payload.len() {
        let fault = decode(&payload[..cut], 0).unwrap_err();
        assert_eq!(fault, LinkFault::Damaged, "cut at {cut}");
    }
    assert_eq!(decode("", 0), Err(LinkFault::Empty));
    assert_eq!(decode(MARK, 0), Err(LinkFault::Empty));
    assert_eq!(decode("caf\u{e9}!", 0), Err(LinkFault::Foreign));
    assert_eq!(decode(&"A".repeat(65_536), 0), Err(LinkFault::TooLong));
    assert_eq!(decode(&"A".repeat(1 << 20), 0), Err(LinkFault::TooLong));
    assert_eq!(decode("%%%2", 0), Err(LinkFault::Foreign));
}

/// A payload with a good checksum round any content.
fn sealed(content: &[u8]) -> String {
    let mut bytes = content.to_vec();
    bytes.extend_from_slice(&crc32fast::hash(content).to_le_bytes());
    URL_SAFE_NO_PAD.encode(bytes)
}

#[test]
fn a_good_checksum_makes_no_good_link() {
    assert_eq!(decode(&sealed(&[9, 0]), 0), Err(LinkFault::Later(9)));
    assert_eq!(decode(&sealed(&[1, 77]), 0), Err(LinkFault::Damaged));
    assert_eq!(
        decode(&sealed(&[1, 0, 0, 0, 99, 0, 0]), 0),
        Err(LinkFault::Cylinders(99))
    );
    assert_eq!(
        decode(&sealed(&[1, 0, 0, 0, 4, 200, 0]), 0),
        Err(LinkFault::Damaged)
    );
    // Units, layout, 4 cylinders, materials, no name, one byte of bits: the
    // first field, nominal_od, -1.0000 in.
    let mut absurd = vec![1, 0, 0, 0, 4, 0, 0, 0, 1, 1];
    put_number(&mut absurd, "-1.0000", Unit::Inch, Unit::Inch);
    let fault = decode(&sealed(&absurd), 0);
    assert_eq!(fault, Err(LinkFault::OutOfRange(Field::NominalOd)));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_text_makes_it_panic(text in ".{0,400}") {
        let _ = decode(&text, 0);
    }

    #[test]
    fn no_bytes_make_it_panic(
        version in 1_u8..=LINK_VERSION,
        bytes in prop::collection::vec(any::<u8>(), 0..300),
    ) {
        let mut content = vec![version];
        content.extend(bytes);
        let _ = decode(&sealed(&content), 0);
    }

    #[test]
    fn a_changed_character_is_found(at in 0_usize..150, to in "[A-Za-z0-9_-]") {
        let payload = encode(&profile(Demo::InchFive)).unwrap();
        let mut changed = payload.clone();
        changed.replace_range(at..=at, &to);
        prop_assert!(changed == payload || decode(&changed, 0).is_err());
    }
}
#[test]
fn what_is_usual_goes_unsaid_and_what_was_emptied_stays_empty() {
    let (engine, mut entries) = Demo::InchFive.profile(0);
    for (field, text) in [(Field::Confidence, "0.95"), (Field::WebLook, "")] {
        let unit = field.unit(UnitSystem::Inch);
        entries.put(Place::of_engine(field), Entry::new(text, unit, 0));
    }
    let shared = Shared::Profile(engine, entries);
    let payload = encode(&shared).unwrap();
    // With an address of 31 letters before it a code of version 12 at level M
    // holds it: 287 bytes (ISO/IEC 18004, table 7).
    assert!(payload.len() <= 287 - 31, "{}", payload.len());
    assert_eq!(decode(&payload, 0).unwrap(), shared);
}

const LINKS_V1: &str = include_str!("../../../../tests/golden/links-v1.txt");
const LINKS_V2: &str = include_str!("../../../../tests/golden/links-v2.txt");

#[test]
fn links_of_every_version_read_for_ever() {
    for golden in [LINKS_V1, LINKS_V2] {
        let links: Vec<Shared> = golden.lines().map(|l| decode(l, 0).unwrap()).collect();
        golden_links(&links);
    }
    // Version 1 named what version 2 takes as usual: the same engine.
    let first = |golden: &str| decode(golden.lines().next().unwrap(), 0).unwrap();
    assert_eq!(first(LINKS_V1), first(LINKS_V2));
}

fn golden_links(links: &[Shared]) {
    let [
        Shared::Profile(engine, entries),
        Shared::Drop(drop),
        Shared::Floor(job),
    ] = links
    else {
        unreachable!("a profile, a drop, a floor sheet")
    };
    let text = |entries: &Entries, place| entries.get(place).map(|e| e.text.clone());
    assert_eq!((engine.cylinders, engine.layout), (5, Layout::InLine));
    let of_engine = |field| text(entries, Place::of_engine(field));
    assert_eq!(of_engine(Field::NominalOd).as_deref(), Some("4.4400"));
    assert_eq!(of_engine(Field::Shim).as_deref(), Some("0"));
    assert_eq!(drop.block_material, MaterialId::AluminiumA356);
    let carry = text(&drop.entries, Place::of_engine(Field::DropCarry));
    assert_eq!(carry.as_deref(), Some("8"));
    assert_eq!(job.name, "Block 7");
    let sleeve = Place::of_cylinder(3, Field::SleeveOd, 5);
    assert_eq!(text(&job.entries, sleeve).as_deref(), Some("4.4411"));
}

//! What is asked about, and what is not.

use super::check::*;
use super::entries::Entries;
use super::field::Field;
use super::field_kind::UnitSystem;
use super::place::Place;
use super::reading::{Unusable, Why};
use crate::job::model::entries::Entry;
use crate::quantity::parse::Unit;

/// Types `text` into `place` of a sheet with `others` already typed.
fn typed(others: &[(Place, &str)], place: Place, text: &str) -> Checked {
    let mut entries = Entries::default();
    for (at, text) in others.iter().chain([&(place, text)]) {
        entries.put(*at, Entry::new(*text, at.field.unit(UnitSystem::Inch), 0));
    }
    let sheet = Sheet {
        entries: &entries,
        units: UnitSystem::Inch,
        cylinders: 5,
        job: None,
    };
    check(&sheet, place)
}

fn od(index: u8) -> Place {
    Place::of_cylinder(3, Field::SleeveOd, index)
}

const INCH: f64 = 0.0254;

#[test]
fn letters_and_ranges_are_refused() {
    assert!(matches!(
        typed(&[], od(0), "four"),
        Checked::Refused(Unusable {
            why: Why::NotRead(_),
            ..
        })
    ));
    assert!(matches!(
        typed(&[], od(0), "-4.25"),
        Checked::Refused(Unusable {
            why: Why::OutOfRange(_),
            ..
        })
    ));
    assert!(matches!(
        typed(&[], od(0), "0"),
        Checked::Refused(Unusable {
            why: Why::OutOfRange(_),
            ..
        })
    ));
    assert_eq!(typed(&[], od(0), " "), Checked::Empty);
}

#[test]
fn slips_are_questioned_against_the_neighbours() {
    let others = [(od(1), "4.2589"), (od(2), "4.2590")];
    let question = |text: &str| match typed(&others, od(0), text) {
        Checked::Questioned(_, question) => Some(question),
        _ => None,
    };
    assert_eq!(question("4.2588"), None);
    assert!(
        matches!(question("42.589"), Some(Question::TenTimes(v)) if (v - 4.2589 * INCH).abs() < 1e-9)
    );
    assert!(matches!(
        question("2.1295"),
        Some(Question::RadiusOrDiameter(_))
    ));
    assert!(
        matches!(question("4.2839"), Some(Question::FarFrom(v)) if (v - 4.2590 * INCH).abs() < 1e-9)
    );
    assert!(
        matches!(question("4.2589 mm"), Some(Question::OtherUnit(v)) if (v - 4.2589 * INCH).abs() < 1e-9)
    );
    // 42.589 in is within the allowed 2 m; 108.2 in is not.
    assert!(matches!(
        typed(&others, od(0), "108.2"),
        Checked::Refused(Unusable {
            why: Why::OutOfRange(_),
            ..
        })
    ));
}

#[test]
fn another_cylinder_or_the_nominal_serves_where_there_are_no_neighbours() {
    let other = [(Place::of_cylinder(1, Field::SleeveOd, 0), "4.2589")];
    assert!(matches!(
        typed(&other, od(0), "4.2839"),
        Checked::Questioned(_, Question::FarFrom(_))
    ));
    let nominal = [(Place::of_engine(Field::NominalOd), "4.2600")];
    assert!(matches!(
        typed(&nominal, od(0), "42.589"),
        Checked::Questioned(_, Question::TenTimes(_))
    ));
    assert!(matches!(
        typed(&[], od(0), "0.42589"),
        Checked::Questioned(_, Question::TenTimes(_))
    ));
}

#[test]
fn a_kept_value_is_not_questioned_again() {
    let mut entries = Entries::default();
    entries.put(od(0), Entry::new("42.589", Unit::Inch, 0));
    entries.keep(od(0));
    let sheet = Sheet {
        entries: &entries,
        units: UnitSystem::Inch,
        cylinders: 5,
        job: None,
    };
    assert!(matches!(check(&sheet, od(0)), Checked::Good(_)));
}

#[test]
fn contradictions_name_the_inner_one() {
    let at = Place::of_engine;
    assert!(matches!(
        typed(
            &[(at(Field::NominalOd), "4.26")],
            at(Field::SleeveId),
            "4.5"
        ),
        Checked::Refused(Unusable {
            why: Why::InnerNotBelowOuter(_),
            ..
        })
    ));
    assert!(matches!(
        typed(&[(at(Field::DropOd), "4.26")], at(Field::DropWall), "2.13"),
        Checked::Refused(Unusable {
            why: Why::WallTooThick(_),
            ..
        })
    ));
    assert!(matches!(
        typed(&[], at(Field::DropWall), "0"),
        Checked::Refused(Unusable {
            why: Why::OutOfRange(_),
            ..
        })
    ));
    assert!(matches!(
        typed(
            &[(od(0), "4.2589")],
            Place::of_cylinder(3, Field::BoreD, 0),
            "4.2600"
        ),
        Checked::Questioned(_, Question::SleeveBelowBore(_))
    ));
}

#[test]
fn heights_are_compared_with_the_pull_before() {
    let first = [(Place::of_cylinder(3, Field::PullReleased, 0), "0.0140")];
    let second = Place::of_cylinder(3, Field::PullReleased, 1);
    assert!(matches!(typed(&first, second, "0.0110"), Checked::Good(_)));
    assert!(matches!(
        typed(&first, second, "0.140"),
        Checked::Questioned(_, Question::TenTimes(_))
    ));
}

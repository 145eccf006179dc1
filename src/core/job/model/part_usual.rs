//! What is usual of a part that is shrunk in: it stands until somebody types, and is
//! told as nobody's own. Invented round common practice, no source.

use crate::job::model::field::Field;
use crate::job::model::field_kind::{Plausible, UnitSystem};
use crate::job::model::part::{Cold, Part};
use crate::quantity::parse::parse;

/// Usual sizes of a part, in inches and in millimetres.
struct Usual {
    field: Field,
    inch: &'static str,
    metric: &'static str,
}

const fn usual(field: Field, inch: &'static str, metric: &'static str) -> Usual {
    Usual {
        field,
        inch,
        metric,
    }
}

/// A 1.5 in bushing in a forged beam.
const BUSHING: &[Usual] = &[
    usual(Field::DropOd, "1.5000", "38.000"),
    usual(Field::DropWall, "0.1250", "3.000"),
    usual(Field::DropLength, "2.0000", "50.000"),
    usual(Field::DropFit, "0.0020", "0.050"),
    usual(Field::DropBlockWall, "0.7500", "20.000"),
    usual(Field::DropLeast, "0.0010", "0.025"),
];
/// A seat ring of a medium head.
const SEAT_RING: &[Usual] = &[
    usual(Field::DropOd, "1.7500", "45.000"),
    usual(Field::DropWall, "0.1500", "4.000"),
    usual(Field::DropLength, "0.3000", "8.000"),
    usual(Field::DropFit, "0.0040", "0.100"),
    usual(Field::DropBlockWall, "0.4000", "10.000"),
    usual(Field::DropLeast, "0.0010", "0.025"),
    usual(Field::DropCarry, "4", "4"),
    usual(Field::DropHome, "2", "2"),
];
/// The outer ring of a bearing of medium series.
const BEARING_RING: &[Usual] = &[
    usual(Field::DropOd, "3.1496", "80.000"),
    usual(Field::DropWall, "0.3000", "7.500"),
    usual(Field::DropLength, "0.7087", "18.000"),
    usual(Field::DropFit, "0.0010", "0.025"),
    usual(Field::DropBlockWall, "0.6000", "15.000"),
    usual(Field::DropLeast, "0.0010", "0.025"),
];
/// A dowel.
const PIN: &[Usual] = &[
    usual(Field::DropOd, "0.2500", "6.000"),
    usual(Field::DropLength, "1.0000", "25.000"),
    usual(Field::DropFit, "0.0003", "0.008"),
    usual(Field::DropBlockWall, "0.5000", "12.000"),
    usual(Field::DropLeast, "0.0001", "0.002"),
    usual(Field::DropCarry, "3", "3"),
    usual(Field::DropHome, "2", "2"),
];

/// What usually stands in a field of its cold drop, as text; `None`: as for a
/// sleeve.
#[must_use]
pub fn usual_text(part: Part, field: Field, units: UnitSystem) -> Option<&'static str> {
    let table = match part {
        Part::FlangedSleeve | Part::PlainSleeve => return None,
        Part::Bushing => BUSHING,
        Part::SeatRing => SEAT_RING,
        Part::BearingRing => BEARING_RING,
        Part::Pin => PIN,
    };
    let found = table.iter().find(|one| one.field == field)?;
    Some(match units {
        UnitSystem::Inch => found.inch,
        UnitSystem::Metric => found.metric,
    })
}

/// What is plausible of a field of its cold drop: for a sleeve what the
/// field's own entry says, for all else a tenth to ten times what is usual.
#[must_use]
pub fn plausible(part: Part, field: Field) -> Plausible {
    let own = field.spec().plausible;
    let Plausible::Size { far, .. } = own else {
        return own;
    };
    let Some(text) = usual_text(part, field, UnitSystem::Inch) else {
        return own;
    };
    match parse(text, field.unit(UnitSystem::Inch)) {
        Ok(usual) => Plausible::Size {
            lo: 0.1 * usual.si,
            hi: 10.0 * usual.si,
            far,
        },
        Err(_) => own,
    }
}

/// How far the temperature read of a cold may be off its own without a question, K:
/// dry ice is colder under a fan and warmer where it is gone; a freezer has a dial.
const OFF_K: [f64; 2] = [10.0, 25.0];

/// What is plausible of the temperature read of a cold: one read of another cold, left
/// standing when this one was chosen, is asked about.
#[must_use]
pub fn plausible_cold(cold: Cold) -> Plausible {
    let own = match cold {
        Cold::DryIceAlcohol | Cold::DryIcePacked => OFF_K[0],
        Cold::Freezer => OFF_K[1],
        Cold::Nitrogen | Cold::Outdoors | Cold::AsItIs => return Plausible::Free,
    };
    match cold.temperature() {
        Some(t) => Plausible::Shop {
            lo: t.as_k() - own,
            hi: t.as_k() + own,
        },
        None => Plausible::Free,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::model::part::Heat;

    #[test]
    fn names_come_back_and_every_usual_size_reads_within_its_range() {
        for part in Part::ALL {
            assert_eq!(Part::from_id(part.id()), Some(*part));
            for field in [
                Field::DropOd,
                Field::DropWall,
                Field::DropLength,
                Field::DropFit,
                Field::DropBlockWall,
                Field::DropLeast,
                Field::DropCarry,
                Field::DropHome,
            ] {
                for units in [UnitSystem::Inch, UnitSystem::Metric] {
                    let Some(text) = usual_text(*part, field, units) else {
                        continue;
                    };
                    let read = parse(text, field.unit(units)).map(|t| t.si);
                    let in_range = |si: f64| field.spec().bound.contains(si);
                    assert!(
                        read.is_ok_and(in_range),
                        "{} {}",
                        part.id(),
                        field.spec().id
                    );
                }
            }
        }
        assert_eq!(Cold::from_id("nitrogen"), Some(Cold::Nitrogen));
        assert_eq!(Heat::from_id("oven"), Some(Heat::Oven));
        assert_eq!(Part::from_id("rod"), None);
    }
}

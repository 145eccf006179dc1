//! That the table of fields is whole.

use super::field::*;
use crate::quantity::parse::parse;

#[test]
fn the_table_is_in_the_order_of_the_enum_and_its_ids_are_unique() {
    for (index, spec) in FIELDS.iter().enumerate() {
        assert_eq!(spec.field as usize, index, "{}", spec.id);
        assert_eq!(Field::from_id(spec.id), Some(spec.field), "{}", spec.id);
    }
}

#[test]
fn every_preset_reads_and_lies_in_its_range() {
    for spec in FIELDS {
        for (text, system) in [
            (spec.preset.inch, UnitSystem::Inch),
            (spec.preset.metric, UnitSystem::Metric),
        ] {
            if text.is_empty() {
                continue;
            }
            let typed = parse(text, spec.field.unit(system)).map(|t| t.si);
            assert!(
                typed.is_ok_and(|si| spec.bound.contains(si)),
                "{} {text}",
                spec.id
            );
        }
    }
}

//! All readings of a job as a table for a spreadsheet (RFC 4180): one line a
//! reading, a column a kind of measure with its unit in the head, the text as it
//! was typed beside it.
//!
//! A cell with words never begins with a sign that a spreadsheet would take for
//! a formula (`=`, `+`, `-`, `@`, tab, return): it is then led by an
//! apostrophe.

use crate::job::field::Measure;
use crate::job::{Entry, Job, Place};
use crate::quantity::format::fixed;
use crate::quantity::parse::{Unit, parse};

/// The words of a table, which are the page's.
#[derive(Clone, Copy)]
pub struct Words<'a> {
    /// Heads of: job, whose, reading, length, temperature, pressure, force,
    /// time, plain number, roughness, volume, torque, as typed, unit typed, when, kept, each
    /// with its group; behind those of numbers their unit is added.
    pub heads: [&'a str; 16],
    /// What stands in the place of a unit where a number has none.
    pub no_unit: &'a str,
    /// Whose a place is.
    pub owner: &'a dyn Fn(Place) -> String,
    /// What is read there.
    pub reading: &'a dyn Fn(Place) -> String,
    /// A time.
    pub time: &'a dyn Fn(u64) -> String,
}

/// Kinds of measure, in the order of their columns.
const MEASURES: [Measure; 9] = [
    Measure::Length,
    Measure::Temperature,
    Measure::Pressure,
    Measure::Force,
    Measure::Time,
    Measure::Plain,
    Measure::Roughness,
    Measure::Volume,
    Measure::Torque,
];

/// Decimals of a column: finer than any gauge of it.
const fn decimals(unit: Unit) -> usize {
    match unit {
        Unit::Inch => 6,
        Unit::Millimetre => 5,
        _ => 3,
    }
}

/// The table of a job, its head first.
#[must_use]
pub fn csv(job: &Job, words: Words<'_>) -> String {
    let system = job.engine.units;
    let mut table = String::new();
    let heads = words.heads.iter().enumerate().map(|(column, head)| {
        let measure = column.checked_sub(3).and_then(|kind| MEASURES.get(kind));
        let unit = measure.map(|measure| measure.unit(system).symbol());
        match unit {
            None => cell(head),
            Some("") => cell(&format!("{head} ({})", words.no_unit)),
            Some(unit) => cell(&format!("{head} ({unit})")),
        }
    });
    line(&mut table, heads);
    for (place, entry) in job.entries.iter() {
        let measure = place.field.spec().measure;
        let values = MEASURES.map(|kind| {
            if kind == measure {
                value(job, *place, entry)
            } else {
                String::new()
            }
        });
        let before = [
            cell(&job.name),
            cell(&(words.owner)(*place)),
            cell(&(words.reading)(*place)),
        ];
        let after = [
            cell(&entry.text),
            cell(entry.unit.symbol()),
            cell(&(words.time)(entry.at)),
            cell(if entry.kept { "x" } else { "" }),
        ];
        line(&mut table, before.into_iter().chain(values).chain(after));
    }
    table
}

/// The number of a reading in its column's unit; blank where it is none.
fn value(job: &Job, place: Place, entry: &Entry) -> String {
    let unit = job.unit(place.field);
    parse(&entry.text, entry.unit).map_or_else(
        |_| String::new(),
        |typed| {
            let text = fixed(unit.from_si(typed.si), decimals(unit));
            let text = text.trim_end_matches('0');
            text.strip_suffix('.').unwrap_or(text).to_owned()
        },
    )
}

fn line(table: &mut String, cells: impl Iterator<Item = String>) {
    let cells: Vec<String> = cells.collect();
    table.push_str(&cells.join(","));
    table.push_str("\r\n");
}

/// A cell with words.
fn cell(text: &str) -> String {
    // A negative reading is a number and no formula.
    let risky = text.parse::<f64>().is_err()
        && text.starts_with(['=', '+', '-', '@', '\t', '\r', '\u{2212}', '\u{ff1d}']);
    let text = if risky {
        format!("'{text}")
    } else {
        text.to_owned()
    };
    if text.contains([',', ';', '"', '\n', '\r', '\'']) {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text
    }
}

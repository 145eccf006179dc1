//! What the record tells besides: wall, counterbore, groove, finished bore, ring
//! gaps, pistons, and both pressure tests.

use crate::parts::table::{Line, cell, hole, table};
use crate::show::{bare, clock, length_unit, number};
use crate::texts as t;
use coldseat_core::ask::{
    CylinderReport, Field, Job, Length, Owner, UnitSystem, finished, shown_mean,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// What stands in a cell without a value.
const DASH: &str = "\u{2013}";

/// A line a cylinder of which something of it was measured.
pub fn finished_table(
    id: &str,
    job: &Job,
    reports: &[CylinderReport],
    units: UnitSystem,
) -> Option<AnyView> {
    let of = |l: Option<Length>| l.map_or_else(|| DASH.to_owned(), |l| bare(l.as_m(), units));
    let lines: Vec<Line> = reports
        .iter()
        .filter_map(|report| {
            let done = finished(job, report)?;
            let gaps: Vec<String> = done
                .ring_gaps
                .iter()
                .map(|l| bare(l.as_m(), units))
                .collect();
            let gaps = if gaps.is_empty() {
                DASH.to_owned()
            } else {
                gaps.join(", ")
            };
            let numbers = [
                of(done.wall),
                of(done.counterbore),
                of(done.groove),
                of(done.bore),
                of(done.round),
                of(done.taper),
                gaps,
                of(done.piston),
            ];
            Some(Line {
                class: "",
                head: hole(id, report.cylinder),
                cells: numbers.into_iter().map(cell).collect(),
            })
        })
        .collect();
    let heads = t::FINISHED_COLUMNS.map(str::to_owned);
    let caption = format!("{} ({})", t::FINISHED, length_unit(units).symbol());
    (!lines.is_empty()).then(|| table("cards", Some(caption), &heads, lines))
}

/// Both pressure tests, as they were read.
pub fn pressure_tests(job: &Job, units: UnitSystem) -> Option<AnyView> {
    let of = |field: Field| {
        let si = shown_mean(job, Owner::Block, field)?;
        Some(number(si, field.unit(units)))
    };
    let time = shown_mean(job, Owner::Block, Field::TestTime).map(clock);
    let first = of(Field::TestStart)
        .zip(of(Field::TestEnd))
        .map(|(from, to)| t::pressure_test(t::BEFORE_BORING, &from, &to, time.as_deref()));
    let last = of(Field::RetestStart)
        .zip(of(Field::RetestEnd))
        .map(|(from, to)| t::pressure_test(t::AFTER_ALL, &from, &to, None));
    let both: Vec<String> = first.into_iter().chain(last).collect();
    (!both.is_empty()).then(|| view! { <p>{both.join(" ")}</p> }.into_any())
}

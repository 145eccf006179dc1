//! What the record tells besides: wall, counterbore, groove, finished bore, ring
//! gaps, pistons, and both pressure tests.

use crate::parts::record_file::DASH;
use crate::parts::table::{Line, cell, hole, table};
use crate::show::{bare, clock, length_unit, number};
use crate::texts as t;
use coldseat_core::ask::{
    CylinderReport, Field, Job, Length, Owner, Place, Told, UnitSystem, finished, format,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// What was read, a dash where nothing was, and said where it cannot be used.
pub fn told(told: &Told, show: impl Fn(f64) -> String) -> String {
    match told {
        Told::Absent => DASH.to_owned(),
        Told::Read(list) => list
            .iter()
            .map(|si| show(*si))
            .collect::<Vec<_>>()
            .join(", "),
        Told::Unusable => t::UNUSABLE_HERE.get().to_owned(),
    }
}

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
            let read = |of: &Told| told(of, |si| bare(si, units));
            let numbers = [
                read(&done.wall),
                read(&done.counterbore),
                read(&done.groove),
                read(&done.bore),
                of(done.round),
                of(done.taper),
                read(&done.ring_gaps),
                read(&done.piston),
            ];
            Some(Line {
                class: "",
                head: hole(id, report.cylinder),
                cells: numbers.into_iter().map(cell).collect(),
            })
        })
        .collect();
    let heads = t::FINISHED_COLUMNS.map(String::from);
    let caption = format!("{} ({})", t::FINISHED, length_unit(units).symbol());
    (!lines.is_empty()).then(|| table("cards", Some(caption), &heads, lines))
}

/// Both pressure tests, as they were read.
pub fn pressure_tests(job: &Job, units: UnitSystem) -> Option<AnyView> {
    let of = |field: Field| match Told::of(job, Owner::Block, field) {
        Told::Absent => None,
        // A loss of half a psi is not rounded away.
        Told::Read(_) => {
            let place = Place {
                owner: Owner::Block,
                field,
                index: 0,
            };
            let entry = job.entries.get(place)?;
            Some(format::typed(&entry.text, entry.unit))
        }
        unusable => Some(told(&unusable, |si| number(si, field.unit(units)))),
    };
    let time = match Told::of(job, Owner::Block, Field::TestTime) {
        Told::Absent => None,
        read => Some(told(&read, clock)),
    };
    // A test half read is told as half read.
    let test = |which, [from, to]: [Field; 2], time: Option<&str>| {
        let dash = || DASH.to_owned();
        let (from, to) = (of(from), of(to));
        (from.is_some() || to.is_some()).then(|| {
            let [from, to] = [from, to].map(|one| one.unwrap_or_else(dash));
            t::pressure_test(which, &from, &to, time)
        })
    };
    let first = [Field::TestStart, Field::TestEnd];
    let last = [Field::RetestStart, Field::RetestEnd];
    let first = test(t::BEFORE_BORING.get(), first, time.as_deref());
    let last = test(t::AFTER_ALL.get(), last, None);
    let both: Vec<String> = first.into_iter().chain(last).collect();
    (!both.is_empty()).then(|| view! { <p>{both.join(" ")}</p> }.into_any())
}

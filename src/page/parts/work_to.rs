//! The number to work to: large before anything is cut, in a line after it.

use crate::parts::verdict::big;
use crate::show::{bare_number, length, length_unit};
use crate::texts as t;
use coldseat_core::ask::{Standing, StepReport, UnitSystem, WorkTo};
use coldseat_markup::view;
use leptos::prelude::*;

/// Its limits, where it has two.
fn range(to: &WorkTo, units: UnitSystem) -> String {
    match to.range(length_unit(units)) {
        [Some(low), Some(high)] => t::limits_between(&low, &high),
        _ => String::new(),
    }
}

/// Whether the number to work to is the step's number now: nothing is cut yet.
#[must_use]
pub fn is_first(report: &StepReport) -> bool {
    let has_one = matches!(report.work_to, Standing::Known(_));
    has_one && (report.number.is_none() || !report.begun)
}

/// The number to work to, in the place of the step's own.
pub fn work_to_big(report: &StepReport, units: UnitSystem) -> Option<AnyView> {
    let Standing::Known(to) = &report.work_to else {
        return None;
    };
    let unit = length_unit(units);
    let word = t::work(to.work);
    let number = bare_number(to.si, unit);
    let taken = to.taken.map(|field| {
        view! { <p class="quiet">{t::work_taken(field)}</p> }
    });
    Some(
        view! {
            {big(word, number, unit.symbol(), range(to, units))}
            {taken}
        }
        .into_any(),
    )
}

/// The same in one line, under the number of what was cut; or what it waits for.
pub fn work_to_line(report: &StepReport, units: UnitSystem) -> Option<AnyView> {
    let words = match &report.work_to {
        Standing::Known(to) => match range(to, units) {
            range if range.is_empty() => format!("{} {}", t::work(to.work), length(to.si, units)),
            range => format!("{} {}, {range}", t::work(to.work), length(to.si, units)),
        },
        Standing::Missing(missing) => t::work_waits(missing),
        // Told as what is to be mended, or not worked to a number.
        Standing::Unusable(_) | Standing::Refused(_) | Standing::NotHere => return None,
    };
    Some(view! { <p class="work-line">{words}</p> }.into_any())
}

/// The same in the list of steps.
#[must_use]
pub fn work_to_short(report: &StepReport, units: UnitSystem) -> Option<String> {
    match &report.work_to {
        Standing::Known(to) => Some(format!("{} {}", t::work(to.work), length(to.si, units))),
        _ => None,
    }
}

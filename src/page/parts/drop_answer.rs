//! What a cold drop says: numbers, verdict, curve.

use crate::drawings::clearance::clearance;
use crate::parts::aside::wanted;
use crate::parts::findings::findings;
use crate::parts::verdict::{big, verdict};
use crate::show::{bare, length_unit, seconds};
use crate::texts as t;
use coldseat_core::ask::drop::{DropAnswer, DropView};
use coldseat_core::job::Field;
use coldseat_core::job::field::UnitSystem;
use coldseat_core::job::verdict::Signal;
use coldseat_markup::view;
use leptos::prelude::*;

/// Numbers and verdict of a drop.
pub fn drop_head(answer: &DropAnswer, units: UnitSystem) -> AnyView {
    match answer {
        DropAnswer::Lacks(lacks) if lacks.unusable.is_empty() && lacks.refused.is_none() => {
            let fields: Vec<Field> = lacks.missing.iter().map(|m| m.field).collect();
            verdict(Signal::Wait, t::drop_missing(&fields))
        }
        DropAnswer::Lacks(lacks) => view! {
            {verdict(Signal::Look, t::DROP_MEND.to_owned())}
            {wanted(lacks, units)}
        }
        .into_any(),
        DropAnswer::Ready(view) => {
            let doubts: Vec<AnyView> = view
                .doubts
                .iter()
                .map(|doubt| view! { <li>{t::drop_doubt(*doubt)}</li> }.into_any())
                .collect();
            let doubts = (!doubts.is_empty()).then(|| view! { <ul class="doubts">{doubts}</ul> });
            view! {
                <div class="glance">{drop_numbers(view, units)}</div>
                {verdict(view.signal, t::drop_words(view.verdict).to_owned())}
                {doubts}
                {findings(&view.band.nominal.findings, units)}
            }
            .into_any()
        }
    }
}

/// The curve of a drop.
pub fn drop_picture(answer: &DropAnswer, units: UnitSystem) -> Option<AnyView> {
    match answer {
        DropAnswer::Ready(view) if view.band.nominal.clearance_entry.as_m() > 0.0 => {
            Some(clearance(&view.band, units))
        }
        _ => None,
    }
}

fn drop_numbers(view: &DropView, units: UnitSystem) -> AnyView {
    let band = &view.band;
    let unit = length_unit(units).symbol();
    let span = |a: f64, b: f64| t::span(&bare(a.min(b), units), &bare(a.max(b), units));
    let entry = big(
        t::ENTRY_CLEARANCE,
        bare(band.nominal.clearance_entry.as_m(), units),
        unit,
        span(
            band.early.clearance_entry.as_m(),
            band.late.clearance_entry.as_m(),
        ),
    );
    let bath = big(
        t::BATH_CLEARANCE,
        bare(band.nominal.clearance_bath.as_m(), units),
        unit,
        span(
            band.early.clearance_bath.as_m(),
            band.late.clearance_bath.as_m(),
        ),
    );
    let after = |a: &coldseat_core::thermal::cold_drop::ColdDropAnswer| {
        a.grip.as_ref().map(|g| seconds(g.after.as_s()))
    };
    let grip = match after(&band.nominal) {
        Some(nominal) => big(
            t::GRIPS_IN,
            nominal,
            "s",
            t::between(
                &after(&band.early).unwrap_or_else(|| t::OVER_AN_HOUR.to_owned()),
                &after(&band.late).unwrap_or_else(|| t::OVER_AN_HOUR.to_owned()),
            ),
        ),
        None => big(
            t::GRIPS_IN,
            "\u{2013}".to_owned(),
            "",
            t::NEVER_GRIPS.to_owned(),
        ),
    };
    let ceiling = bare(band.nominal.climb_ceiling.as_m(), units);
    let climb = big(
        t::CLIMB,
        band.nominal
            .grip
            .as_ref()
            .map_or("\u{2013}".to_owned(), |g| bare(g.climb.as_m(), units)),
        unit,
        format!("{}, {} {ceiling}", t::EXPECTED, t::AT_MOST),
    );
    view! {
        <div class="bigs">
            {grip} {entry} {bath} {climb}
        </div>
    }
    .into_any()
}

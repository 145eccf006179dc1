//! What a cold drop says: numbers, verdict, curve.

use crate::answers::Home;
use crate::drawings::clearance::clearance;
use crate::drawings::part::part;
use crate::parts::aside::wanted;
use crate::parts::findings::findings;
use crate::parts::verdict::{big, verdict};
use crate::show::{bare, length_unit, seconds};
use crate::texts as t;
use coldseat_core::ask::{
    DropAnswer, DropOdds, DropView, Field, Part, Seconds, Signal, UnitSystem,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// The drop that an answer holds.
#[must_use]
pub fn ready(answer: &DropAnswer) -> Option<Box<DropView>> {
    match answer {
        DropAnswer::Ready(view) => Some(view.clone()),
        DropAnswer::Lacks(_) => None,
    }
}

/// Time first: a drop with room goes only where its time lets it.
fn judged(view: &DropView, home: &Home) -> AnyView {
    if view.case.example {
        return verdict(view.signal, t::DROP_EXAMPLE.get().to_owned());
    }
    let by_clearance = |signal| {
        let holds = view.band.nominal.grip.is_some();
        let words = if holds {
            t::drop_words(view.verdict, view.case.part)
        } else {
            t::NO_PRESS.get().to_owned()
        };
        verdict(signal, words)
    };
    // No time makes that better.
    if view.signal == Signal::Stop {
        return by_clearance(view.signal);
    }
    match home {
        Home::Ready(odds) => {
            let (signal, time) = view.by_time(odds);
            let Some(time) = time else {
                return by_clearance(signal);
            };
            let within = seconds(odds.home_within.as_s());
            let needed = seconds(view.case.needed.as_s());
            verdict(
                signal,
                t::home_words(
                    time,
                    signal == Signal::Go,
                    [&within, &needed],
                    view.case.part,
                ),
            )
        }
        Home::Refused(fault) => verdict(Signal::Look, t::fault(fault)),
        Home::None | Home::Drawing => verdict(Signal::Wait, t::HOME_DRAWING.get().to_owned()),
    }
}

/// The one number: be home within so many seconds of entering.
fn home_number(home: &Home) -> AnyView {
    let by = |time: Option<Seconds>| {
        time.map_or_else(|| t::OVER_AN_HOUR.get().to_owned(), |s| seconds(s.as_s()))
    };
    let below = |odds: &DropOdds| {
        t::home_below(
            &by(odds.grip_middle),
            &by(odds.grip_late),
            odds.moves_most()
                .map(|(cause, by)| (t::cause(cause), seconds(by.as_s()))),
        )
    };
    match home {
        Home::Ready(odds) => big(
            t::HOME_WITHIN.get(),
            seconds(odds.home_within.as_s()),
            "s",
            below(odds),
        ),
        Home::Refused(fault) => big(
            t::HOME_WITHIN.get(),
            "\u{2013}".to_owned(),
            "",
            t::fault(fault),
        ),
        Home::None => big(
            t::HOME_WITHIN.get(),
            "\u{2013}".to_owned(),
            "",
            t::HOME_NONE.get().to_owned(),
        ),
        Home::Drawing => big(
            t::HOME_WITHIN.get(),
            "\u{2026}".to_owned(),
            "",
            t::HOME_DRAWING.get().to_owned(),
        ),
    }
}

/// Numbers and verdict of a drop.
pub fn drop_head(answer: &DropAnswer, home: &Home, units: UnitSystem) -> AnyView {
    match answer {
        DropAnswer::Lacks(lacks) if lacks.unusable.is_empty() && lacks.refused.is_none() => {
            let fields: Vec<Field> = lacks.missing.iter().map(|m| m.field).collect();
            verdict(Signal::Wait, t::drop_missing(&fields))
        }
        DropAnswer::Lacks(lacks) => view! {
            {verdict(Signal::Look, t::DROP_MEND.get().to_owned())}
            {wanted(lacks, units)}
        }
        .into_any(),
        DropAnswer::Ready(view) => {
            let doubts: Vec<AnyView> = t::drop_doubts(&view.doubts, units)
                .into_iter()
                .map(|words| view! { <li>{words}</li> }.into_any())
                .collect();
            let doubts = (!doubts.is_empty() && !view.case.example)
                .then(|| view! { <ul class="doubts">{doubts}</ul> });
            let [glance, rest] = drop_numbers(view, home, units);
            view! {
                <div class="glance">{glance}</div>
                {judged(view, home)}
                {t::shrinks_by(view.case.shrink).map(|words| view! { <p>{words}</p> })}
                {doubts}
                {rest}
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

/// The part half in its bore.
pub fn part_picture(answer: &DropAnswer, units: UnitSystem) -> Option<AnyView> {
    ready(answer).map(|view| part(&view, units))
}

/// What the eye needs, and what stands behind it.
fn drop_numbers(view: &DropView, home: &Home, units: UnitSystem) -> [AnyView; 2] {
    let band = &view.band;
    let unit = length_unit(units).symbol();
    let span = |a: f64, b: f64| t::span(&bare(a.min(b), units), &bare(a.max(b), units));
    let entry = big(
        t::ENTRY_CLEARANCE.get(),
        bare(band.nominal.clearance_entry.as_m(), units),
        unit,
        span(
            band.early.clearance_entry.as_m(),
            band.late.clearance_entry.as_m(),
        ),
    );
    let bath = big(
        t::BATH_CLEARANCE.get(),
        bare(band.nominal.clearance_bath.as_m(), units),
        unit,
        span(
            band.early.clearance_bath.as_m(),
            band.late.clearance_bath.as_m(),
        ),
    );
    let after =
        |a: &coldseat_core::ask::ColdDropAnswer| a.grip.as_ref().map(|g| seconds(g.after.as_s()));
    let grip = match after(&band.nominal) {
        Some(nominal) => big(
            t::GRIPS_IN.get(),
            nominal,
            "s",
            t::between(
                &after(&band.early).unwrap_or_else(|| t::OVER_AN_HOUR.get().to_owned()),
                &after(&band.late).unwrap_or_else(|| t::OVER_AN_HOUR.get().to_owned()),
            ),
        ),
        None => big(
            t::GRIPS_IN.get(),
            "\u{2013}".to_owned(),
            "",
            t::NEVER_GRIPS.get().to_owned(),
        ),
    };
    let ceiling = bare(band.nominal.climb_ceiling.as_m(), units);
    let climb = big(
        if view.case.part == Part::FlangedSleeve {
            t::CLIMB.get()
        } else {
            t::GROWS.get()
        },
        band.nominal
            .grip
            .as_ref()
            .map_or("\u{2013}".to_owned(), |g| bare(g.climb.as_m(), units)),
        unit,
        format!("{}, {} {ceiling}", t::EXPECTED, t::AT_MOST),
    );
    let glance = view! {
        <div class="bigs bigs-two">
            {home_number(home)} {entry}
        </div>
    };
    let rest = view! {
        <div class="bigs bigs-rest">
            {bath} {grip} {climb}
        </div>
    };
    [glance.into_any(), rest.into_any()]
}

//! Heights of sleeves that are left proud: drawn against their limits, and hole by
//! hole in a table.

use crate::drawings::heights::heights;
use crate::parts::table::{Line, cell, table};
use crate::show::{bare, length_unit};
use crate::texts as t;
use coldseat_core::ask::{
    Field, Job, ProudDeck, ProudHole, Signal as Go, Standing, UnitSystem, proud_deck, shown_engine,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// Picture and table of a deck; nothing where its list of holes is in dispute.
pub fn heights_of(job: &Job, bank: u8, units: UnitSystem) -> Option<AnyView> {
    let deck = proud_deck(job, bank).ok()?;
    let limits = shown_engine(job, Field::ProudLow).zip(shown_engine(job, Field::ProudHigh));
    let picture = limits.and_then(|limits| heights(&deck, limits, units));
    Some(
        view! {
            {picture}
            {deck.measured().next().is_some().then(|| holes(&deck, units))}
        }
        .into_any(),
    )
}

/// A sleeve's words in the table.
fn said(deck: &ProudDeck, hole: &ProudHole, units: UnitSystem) -> (&'static str, String) {
    let own = |b: &&coldseat_core::ask::Breach| {
        b.cylinder == hole.cylinder || b.other == Some(hole.cylinder)
    };
    let words: Vec<String> = deck
        .breaches()
        .filter(own)
        .map(|breach| t::breach_of(breach, hole.cylinder, units))
        .collect();
    if !words.is_empty() {
        let stop = t::signal(Go::Stop);
        return ("record-stop", format!("{stop}: {}", words.join("; ")));
    }
    let missing = hole.lacks.missing.iter().map(t::missing_of);
    let mend = hole.lacks.unusable.iter().map(|one| t::mend(one, units));
    let lacks: Vec<String> = mend.chain(missing).collect();
    match (lacks.is_empty(), deck.is_all_held()) {
        (true, true) => ("", t::signal(Go::Go).to_owned()),
        // Of its neighbors, or of how it was read, nobody knows yet.
        (true, false) => ("", t::OWN_LIMITS_KEPT.get().to_owned()),
        (false, _) => ("record-look", lacks.join("; ")),
    }
}

/// Hole by hole.
fn holes(deck: &ProudDeck, units: UnitSystem) -> AnyView {
    let lines: Vec<Line> = deck
        .holes
        .iter()
        .map(|(cylinder, standing)| {
            let (class, cells) = match standing {
                Standing::Known(hole) => {
                    let (class, words) = said(deck, hole, units);
                    let of = |length: coldseat_core::ask::Length| bare(length.as_m(), units);
                    let apart = hole.highest.as_m() - hole.lowest.as_m();
                    let ends = [of(hole.lowest), of(hole.highest)];
                    let span = match &ends {
                        [low, high] if low == high => low.clone(),
                        [low, high] => t::span(low, high),
                    };
                    (class, [span, bare(apart, units), of(hole.mean), words])
                }
                Standing::Missing(missing) if missing.field == Field::SeatHeight => {
                    ("", unknown(t::NOT_ALL_MEASURED.get().to_owned()))
                }
                Standing::Missing(missing) => ("", unknown(t::missing_of(missing))),
                Standing::Unusable(unusable) => ("record-look", unknown(t::mend(unusable, units))),
                Standing::Refused(fault) => ("record-look", unknown(t::fault(fault))),
                Standing::NotHere => ("", unknown(String::new())),
            };
            Line {
                class,
                head: cylinder.into_any(),
                cells: cells.into_iter().map(cell).collect(),
            }
        })
        .collect();
    let unit = length_unit(units).symbol();
    let heads = [
        t::CYLINDER.get().to_owned(),
        format!("{} ({unit})", t::STANDS_PROUD),
        format!("{} ({unit})", t::APART_HERE),
        format!("{} ({unit})", t::MEAN_HEIGHT),
        t::SIZE_STATE.get().to_owned(),
    ];
    table("cards deck-sizes", None, &heads, lines)
}

/// A sleeve without numbers.
fn unknown(words: String) -> [String; 4] {
    let dash = || crate::parts::record_file::DASH.to_owned();
    [dash(), dash(), dash(), words]
}

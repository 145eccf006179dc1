//! The sleeves of a deck side by side: the gap under each flange, the error that
//! all share taken off, against the limit; and the chance that each is home.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{DeckSeats, UnitSystem};
use leptos::prelude::AnyView;

/// Where the bars may stand, from the top.
const TOP: f64 = 24.0;
const FOOT: f64 = 150.0;

/// The drawing; `sure` is the chance asked for.
pub fn deck_seats(deck: &DeckSeats, limit_m: f64, sure: f64, units: UnitSystem) -> AnyView {
    let sleeves: Vec<(u8, f64, f64)> = deck
        .sleeves()
        .map(|(cylinder, gap, p)| (cylinder, gap.as_m(), p))
        .collect();
    let gaps = || sleeves.iter().map(|(_, gap, _)| *gap);
    let most = gaps().fold(1.5 * limit_m, f64::max);
    let least = gaps().fold(-0.5 * limit_m, f64::min);
    let y = |m: f64| TOP + (FOOT - TOP) * (most - m) / (most - least);
    let wide = 346.0 / sleeves.len().max(1) as f64;
    let spoken: Vec<String> = sleeves
        .iter()
        .map(|(cylinder, gap, p)| t::deck_seat_words(*cylinder, &length(*gap, units), *p))
        .collect();
    let mut picture = Picture {
        label: t::deck_seats_label(&spoken.join("; ")),
        width: 360.0,
        height: 202.0,
        marks: Vec::new(),
        caption: t::deck_seats_caption(
            &length(limit_m, units),
            &length(deck.judged.bias.as_m(), units),
        ),
    };
    for (index, (cylinder, gap, p)) in sleeves.iter().enumerate() {
        let left = 7.0 + wide * index as f64 + 0.16 * wide;
        let right = left + 0.68 * wide;
        let middle = 0.5 * (left + right);
        let class = if *p >= sure { "bar" } else { "bar-bad" };
        // A flange on its ledge is a line, not nothing.
        let (high, low) = (y(gap.max(0.0)) - 1.5, y(gap.min(0.0)) + 1.5);
        picture.area(
            class,
            &[(left, low), (right, low), (right, high), (left, high)],
        );
        if wide > 38.0 {
            picture.text("tiny-middle", (middle, high - 5.0), bare(*gap, units));
        }
        picture.text("small-middle", (middle, 176.0), cylinder.to_string());
        picture.text("tiny-middle", (middle, 196.0), t::chance_short(*p));
    }
    picture.line("scribe", (0.0, y(0.0)), (360.0, y(0.0)));
    picture.line("scribe-dashed", (0.0, y(limit_m)), (360.0, y(limit_m)));
    picture.view()
}

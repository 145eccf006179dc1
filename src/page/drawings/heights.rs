//! The deck from the side: how proud each sleeve stands, clock by clock, between the
//! two limits.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{ProudDeck, UnitSystem};
use leptos::prelude::AnyView;

/// Where heights may stand, from the top.
const TOP: f64 = 26.0;
const FOOT: f64 = 156.0;

/// The drawing; nothing before a sleeve is measured.
pub fn heights(
    deck: &ProudDeck,
    (low_m, high_m): (f64, f64),
    units: UnitSystem,
) -> Option<AnyView> {
    let holes = deck.holes.len().max(1) as f64;
    deck.measured().next()?;
    let most = deck
        .measured()
        .map(|h| h.highest.as_m())
        .fold(high_m, f64::max);
    let least = deck
        .measured()
        .map(|h| h.lowest.as_m())
        .fold(low_m.min(0.0), f64::min);
    let y = |m: f64| TOP + (FOOT - TOP) * (most - m) / (most - least).max(1e-9);
    let wide = 346.0 / holes;
    let spoken: Vec<String> = deck
        .measured()
        .map(|h| {
            t::height_spoken(
                h.cylinder,
                &length(h.lowest.as_m(), units),
                &length(h.highest.as_m(), units),
            )
        })
        .collect();
    let mut picture = Picture {
        label: t::heights_label(&spoken.join("; ")),
        width: 360.0,
        height: 202.0,
        marks: Vec::new(),
        caption: t::heights_caption(&length(low_m, units), &length(high_m, units)),
    };
    picture.line("scribe", (0.0, y(0.0)), (360.0, y(0.0)));
    for limit in [low_m, high_m] {
        picture.line("scribe-dashed", (0.0, y(limit)), (360.0, y(limit)));
    }
    for (index, (cylinder, hole)) in deck.holes.iter().enumerate() {
        let left = 7.0 + wide * index as f64 + 0.14 * wide;
        let right = left + 0.72 * wide;
        let middle = 0.5 * (left + right);
        picture.text("small-middle", (middle, 192.0), cylinder.to_string());
        let Some(hole) = hole.known() else {
            picture.text("tiny-middle", (middle, 174.0), t::NOT_READ_SHORT);
            continue;
        };
        // Four clocks side by side, as high as each stands.
        let one = (right - left) / hole.heights.len().max(1) as f64;
        for (clock, height) in hole.heights.iter().enumerate() {
            let from = left + one * clock as f64;
            let m = height.as_m();
            let inside = low_m - 1e-9 <= m && m <= high_m + 1e-9;
            let class = if inside { "bar" } else { "bar-bad" };
            let (top, foot) = (y(m.max(0.0)) - 1.0, y(m.min(0.0)) + 1.0);
            let to = from + 0.84 * one;
            picture.area(class, &[(from, foot), (to, foot), (to, top), (from, top)]);
        }
        if wide > 38.0 {
            picture.text(
                "tiny-middle",
                (middle, 174.0),
                bare(hole.mean.as_m(), units),
            );
        }
    }
    Some(picture.view())
}

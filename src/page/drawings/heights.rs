//! The deck from the side: how proud each sleeve stands, clock by clock, between the
//! two limits.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{Length, ProudDeck, UnitSystem, ties};
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
    let y = |m: f64| TOP + (FOOT - TOP) * (most - m) / (most - least).max(ties::ALLOWANCE_M);
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
            let inside = ties::at_least(m, low_m) && ties::at_most(m, high_m);
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

/// A hole with heights before and after, clock by clock, and what is done there.
pub struct Bars {
    /// Which.
    pub cylinder: u8,
    /// Heights before.
    pub before: Vec<Length>,
    /// Heights after; none where they are not known.
    pub after: Vec<Length>,
    /// What is done, a few short words each.
    pub words: Vec<String>,
}

/// Words under a hole at most.
const WORDS_MOST: usize = 4;

/// The drawing: of each hole left as it is before and right as it is after, between the
/// limits; `before` names what stands left.
pub fn before_and_after(
    bars: &[Bars],
    (low_m, high_m): (f64, f64),
    units: UnitSystem,
    before: &'static str,
) -> AnyView {
    let all = || {
        let each = bars.iter().flat_map(|b| b.before.iter().chain(&b.after));
        each.map(|l| l.as_m())
    };
    let most = all().fold(high_m, f64::max);
    let least = all().fold(low_m.min(0.0), f64::min);
    let y = |m: f64| TOP + (FOOT - TOP) * (most - m) / (most - least).max(ties::ALLOWANCE_M);
    let wide = 346.0 / bars.len().max(1) as f64;
    let mean = |list: &[Length]| {
        let sum: f64 = list.iter().map(|l| l.as_m()).sum();
        sum / list.len().max(1) as f64
    };
    let of = |list: &[Length]| length(mean(list), units);
    let spoken: Vec<String> = bars
        .iter()
        .map(|b| {
            t::hole_before_after(
                b.cylinder,
                &of(&b.before),
                &of(&b.after),
                &b.words.join(", "),
            )
        })
        .collect();
    let rows = bars
        .iter()
        .map(|b| b.words.len())
        .max()
        .map_or(0, |n| n.min(WORDS_MOST));
    let mut picture = Picture {
        label: t::heights_plan_label(&spoken.join("; ")),
        width: 360.0,
        height: 184.0 + 17.0 * rows as f64,
        marks: Vec::new(),
        caption: t::heights_plan_caption(before, &length(low_m, units), &length(high_m, units)),
    };
    picture.line("scribe", (0.0, y(0.0)), (360.0, y(0.0)));
    for limit in [low_m, high_m] {
        picture.line("scribe-dashed", (0.0, y(limit)), (360.0, y(limit)));
    }
    for (index, hole) in bars.iter().enumerate() {
        let left = 7.0 + wide * index as f64 + 0.08 * wide;
        let middle = left + 0.42 * wide;
        picture.text("small-middle", (middle, 174.0), hole.cylinder.to_string());
        for (heights, from, is_after) in [
            (&hole.before, left, false),
            (&hole.after, left + 0.44 * wide, true),
        ] {
            let one = 0.40 * wide / heights.len().max(1) as f64;
            for (clock, height) in heights.iter().enumerate() {
                let m = height.as_m();
                let inside = ties::at_least(m, low_m) && ties::at_most(m, high_m);
                let class = match (is_after, inside) {
                    (true, true) => "bar",
                    (true, false) => "bar-bad",
                    (false, _) => "metal-back",
                };
                let at = from + one * clock as f64;
                let to = at + 0.84 * one;
                let (top, foot) = (y(m.max(0.0)) - 1.0, y(m.min(0.0)) + 1.0);
                picture.area(class, &[(at, foot), (to, foot), (to, top), (at, top)]);
            }
        }
        for (row, words) in hole.words.iter().take(WORDS_MOST).enumerate() {
            let at = (middle, 191.0 + 17.0 * row as f64);
            picture.text("tiny-middle", at, words.clone());
        }
    }
    picture.view()
}

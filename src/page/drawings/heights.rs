//! The deck from the side: how proud each sleeve stands, clock by clock, between the
//! two limits.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{Length, ProudDeck, UnitSystem, mean_of, ties};
use leptos::prelude::AnyView;

/// Where heights may stand, from the top.
const TOP: f64 = 26.0;
const FOOT: f64 = 156.0;

/// Heights to scale between what is lowest and what is highest of them, of the limits and
/// of the deck.
struct Scale {
    most: f64,
    span: f64,
    limits: (f64, f64),
}

impl Scale {
    fn of(limits: (f64, f64), heights: impl Iterator<Item = f64> + Clone) -> Self {
        let most = heights.clone().fold(limits.1, f64::max);
        let least = heights.fold(limits.0.min(0.0), f64::min);
        let span = (most - least).max(ties::ALLOWANCE_M);
        Self { most, span, limits }
    }

    fn y(&self, m: f64) -> f64 {
        TOP + (FOOT - TOP) * (self.most - m) / self.span
    }

    /// The deck, and the limits dashed.
    fn lines(&self, picture: &mut Picture) {
        picture.line("scribe", (0.0, self.y(0.0)), (360.0, self.y(0.0)));
        for limit in [self.limits.0, self.limits.1] {
            picture.line(
                "scribe-dashed",
                (0.0, self.y(limit)),
                (360.0, self.y(limit)),
            );
        }
    }

    /// Four clocks side by side, as high as each stands; `back` are no readings to judge.
    fn bars(&self, picture: &mut Picture, heights: &[Length], (from, to): (f64, f64), back: bool) {
        let one = (to - from) / heights.len().max(1) as f64;
        for (clock, height) in heights.iter().enumerate() {
            let m = height.as_m();
            let inside = ties::at_least(m, self.limits.0) && ties::at_most(m, self.limits.1);
            let class = match (back, inside) {
                (true, _) => "metal-back",
                (false, true) => "bar",
                (false, false) => "bar-bad",
            };
            let left = from + one * clock as f64;
            let right = left + 0.84 * one;
            let (top, foot) = (self.y(m.max(0.0)) - 1.0, self.y(m.min(0.0)) + 1.0);
            let corners = [(left, foot), (right, foot), (right, top), (left, top)];
            picture.area(class, &corners);
        }
    }
}

/// The drawing; nothing before a sleeve is measured.
pub fn heights(deck: &ProudDeck, limits: (f64, f64), units: UnitSystem) -> Option<AnyView> {
    let holes = deck.holes.len().max(1) as f64;
    deck.measured().next()?;
    let ends = deck
        .measured()
        .flat_map(|h| [h.lowest.as_m(), h.highest.as_m()]);
    let ends: Vec<f64> = ends.collect();
    let scale = Scale::of(limits, ends.iter().copied());
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
        caption: t::heights_caption(&length(limits.0, units), &length(limits.1, units)),
    };
    scale.lines(&mut picture);
    for (index, (cylinder, hole)) in deck.holes.iter().enumerate() {
        let left = 7.0 + wide * index as f64 + 0.14 * wide;
        let right = left + 0.72 * wide;
        let middle = 0.5 * (left + right);
        picture.text("small-middle", (middle, 192.0), cylinder.to_string());
        let Some(hole) = hole.known() else {
            picture.text("tiny-middle", (middle, 174.0), t::NOT_READ_SHORT);
            continue;
        };
        scale.bars(&mut picture, &hole.heights, (left, right), false);
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
    limits: (f64, f64),
    units: UnitSystem,
    before: &'static str,
) -> AnyView {
    let each = bars.iter().flat_map(|b| b.before.iter().chain(&b.after));
    let scale = Scale::of(limits, each.map(|l| l.as_m()));
    let wide = 346.0 / bars.len().max(1) as f64;
    let of = |list: &[Length]| {
        mean_of(list).map_or_else(|| t::NOT_READ_SHORT.to_owned(), |m| length(m.as_m(), units))
    };
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
        caption: t::heights_plan_caption(
            before,
            &length(limits.0, units),
            &length(limits.1, units),
        ),
    };
    scale.lines(&mut picture);
    for (index, hole) in bars.iter().enumerate() {
        let left = 7.0 + wide * index as f64 + 0.08 * wide;
        let middle = left + 0.42 * wide;
        picture.text("small-middle", (middle, 174.0), hole.cylinder.to_string());
        let half = 0.40 * wide;
        let right = left + 0.44 * wide;
        scale.bars(&mut picture, &hole.before, (left, left + half), true);
        scale.bars(&mut picture, &hole.after, (right, right + half), false);
        for (row, words) in hole.words.iter().take(WORDS_MOST).enumerate() {
            let at = (middle, 191.0 + 17.0 * row as f64);
            picture.text("tiny-middle", at, words.clone());
        }
    }
    picture.view()
}

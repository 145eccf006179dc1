//! Out of round, level by level, magnified; and the bore or sleeve down its
//! length, across and along.

use super::{Picture, polyline};
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::UnitSystem;
use core::f64::consts::TAU;
use leptos::prelude::AnyView;

/// Radius drawn of a round shape.
const RADIUS: f64 = 34.0;
/// How far the limit, or the most there is, is drawn off it: what is well within
/// its limit looks round.
const SWING: f64 = 6.0;

/// The drawing, from readings at three levels, two axes each, and what they may
/// be out of round, if they are held to a limit.
pub fn round(readings: &[(u8, f64)], limit_m: Option<f64>, units: UnitSystem) -> Option<AnyView> {
    let scale_m = limit_m.unwrap_or(0.0);
    let at = |index: u8| readings.iter().find(|(i, _)| *i == index).map(|(_, v)| *v);
    let levels: Vec<(usize, f64, f64)> = (0..3_u8)
        .filter_map(|level| Some((usize::from(level), at(2 * level)?, at(2 * level + 1)?)))
        .collect();
    let all = || levels.iter().flat_map(|(_, a, b)| [*a, *b]);
    let least = all().reduce(f64::min)?;
    let most = all().reduce(f64::max)?;
    let middle = 0.5 * (least + most);
    let half = levels
        .iter()
        .map(|(_, a, b)| (0.5 * (a - b)).abs())
        .fold((0.5 * scale_m).max(1e-7), f64::max);
    let words: Vec<String> = levels
        .iter()
        .map(|(level, a, b)| t::round_level(*level, &length(*a, units), &length(*b, units)))
        .collect();
    let mut picture = Picture {
        label: t::round_label(&words.join("; ")),
        width: 360.0,
        height: 264.0,
        marks: Vec::new(),
        caption: t::round_caption(
            2.0 * SWING * middle / (2.0 * RADIUS * half),
            limit_m.map(|limit| length(limit, units)).as_deref(),
        ),
    };
    for (level, across, along) in &levels {
        let (x, y) = (62.0 + 118.0 * *level as f64, 58.0);
        let off = SWING * 0.5 * (across - along) / half;
        let circle = |swing: f64| -> Vec<(f64, f64)> {
            (0..=48)
                .map(|i| {
                    let angle = TAU * f64::from(i) / 48.0;
                    let r = RADIUS + swing * (2.0 * angle).cos();
                    (x + r * angle.cos(), y + r * angle.sin())
                })
                .collect()
        };
        picture.path("scribe-dashed", polyline(&circle(0.0)));
        picture.path("scribe-strong", polyline(&circle(off)));
        picture.text("tiny-middle", (x, 118.0), t::level_name(*level));
        picture.text(
            "small-middle",
            (x, y + 5.0),
            bare((across - along).abs(), units),
        );
    }
    // Down the length: each axis a line, wider to the right.
    let span = (most - least).max(scale_m).max(1e-6);
    let from = middle - 0.5 * span;
    let place = |level: usize, d: f64| {
        (
            90.0 + 220.0 * (d - from) / span,
            148.0 + 38.0 * level as f64,
        )
    };
    let axis = |pick: fn(&(usize, f64, f64)) -> f64| -> Vec<(f64, f64)> {
        levels.iter().map(|l| place(l.0, pick(l))).collect()
    };
    for (level, _, _) in &levels {
        let y = 148.0 + 38.0 * *level as f64;
        picture.line("scribe-thin", (86.0, y), (316.0, y));
        picture.text("tiny-end", (80.0, y + 4.0), t::level_name(*level));
    }
    picture.path("scribe-strong", polyline(&axis(|l| l.1)));
    picture.path("scribe-dashed", polyline(&axis(|l| l.2)));
    picture.text("tiny", (90.0, 250.0), bare(from, units));
    picture.text("tiny-end", (310.0, 250.0), bare(from + span, units));
    Some(picture.view())
}

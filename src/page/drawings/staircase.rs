//! Pull after pull: the height released, the dip under load and the return,
//! coming down onto the predicted line or stopping above it.

use super::{Picture, polyline};
use crate::show::{bare, length, length_unit};
use crate::texts as t;
use coldseat_core::ask::{Stair, UnitSystem, format};
use leptos::prelude::AnyView;

/// The drawing.
pub fn staircase(
    stairs: &[Stair],
    predicted_m: f64,
    gap_limit_m: f64,
    units: UnitSystem,
) -> AnyView {
    let heights = stairs
        .iter()
        .flat_map(|s| [Some(s.released.as_m()), s.loaded.map(|l| l.as_m())])
        .flatten()
        .chain([predicted_m, predicted_m + gap_limit_m]);
    let (mut low, mut high) = (predicted_m, predicted_m + gap_limit_m);
    for height in heights {
        low = low.min(height);
        high = high.max(height);
    }
    let span = (high - low).max(1e-5);
    let y = |m: f64| 26.0 + 150.0 * (high - m) / span;
    let wide = 250.0 / stairs.len().max(1) as f64;

    let last = stairs.last().map_or(predicted_m, |s| s.released.as_m());
    let mut picture = Picture {
        label: t::staircase_label(
            stairs.len(),
            &length(last, units),
            &length(predicted_m, units),
            &length(last - predicted_m, units),
        ),
        width: 360.0,
        height: 220.0,
        marks: Vec::new(),
        caption: t::STAIRCASE_CAPTION.get().to_owned(),
    };
    let (limit, home) = (y(predicted_m + gap_limit_m), y(predicted_m));
    picture.area(
        "band",
        &[(0.0, limit), (262.0, limit), (262.0, home), (0.0, home)],
    );
    picture.line("scribe-dashed", (0.0, home), (262.0, home));
    // The scale: an upright of a round length, where the stairs leave room: above
    // them at the right, else below their beginning.
    let rule = format::rule(span / 3.0, length_unit(units));
    let long = y(low) - y(low + rule);
    let (x, top) = if y(last) > 44.0 + long {
        (350.0, 26.0)
    } else {
        (72.0, home - 8.0 - long)
    };
    picture.line("scribe", (x, top), (x, top + long));
    for end in [top, top + long] {
        picture.line("scribe", (x - 5.0, end), (x + 5.0, end));
    }
    let words = (x - 8.0, top + 0.5 * long + 4.0);
    picture.text("tiny-end", words, bare(rule, units));
    let mut points = Vec::new();
    for (index, stair) in stairs.iter().enumerate() {
        let (left, right) = (6.0 + wide * index as f64, 6.0 + wide * (index + 1) as f64);
        let middle = left + 0.28 * wide;
        let released = y(stair.released.as_m());
        if let Some(loaded_m) = stair.loaded.map(|l| l.as_m()) {
            points.push((left, y(loaded_m)));
            points.push((middle, y(loaded_m)));
            picture.text(
                "tiny-middle",
                (middle, y(loaded_m) + 13.0),
                if index == 0 { t::LOADED.get() } else { "" },
            );
        } else {
            points.push((left, released));
        }
        points.push((middle, released));
        points.push((right, released));
        picture.text(
            "tiny-middle",
            (0.5 * (left + right), 214.0),
            (index + 1).to_string(),
        );
    }
    picture.path("scribe-strong", polyline(&points));
    // Labels on the right keep 17 apart.
    let end = y(last);
    let (mut label_last, mut label_home) = (end + 5.0, home + 5.0);
    if (label_home - label_last).abs() < 17.0 {
        let middle = 0.5 * (label_home + label_last);
        let sign = if label_last <= label_home { 1.0 } else { -1.0 };
        (label_last, label_home) = (middle - sign * 8.5, middle + sign * 8.5);
    }
    picture.text("strong", (268.0, label_last), bare(last, units));
    picture.text("small", (268.0, label_home), bare(predicted_m, units));
    picture.text("tiny", (268.0, label_home + 14.0), t::PREDICTED);
    picture.view()
}

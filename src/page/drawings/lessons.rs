//! What finished jobs teach, value by value: a dot each over the tolerance
//! interval, on one scale.

use super::Picture;
use crate::show::length;
use crate::texts as t;
use coldseat_core::ask::{Series, UnitSystem};
use leptos::prelude::AnyView;

const LEFT: f64 = 20.0;
const WIDTH: f64 = 320.0;
const TOP: f64 = 14.0;
/// Dots stand in rows below each other, so that equal ones are seen.
const ROWS: usize = 4;
const ROW: f64 = 8.0;
const HEIGHT: f64 = 70.0;

/// The drawing of one lesson.
pub fn lesson(series: &Series, units: UnitSystem) -> AnyView {
    let values = || series.values.iter().map(|v| v.as_m());
    let (mut low, mut high) = (
        values().fold(f64::MAX, f64::min),
        values().fold(f64::MIN, f64::max),
    );
    // An interval of few values is far wider than they are: cut off at three
    // times their range, it shows as reaching beyond the picture.
    let reach = (high - low).max(10e-6);
    if let Some(scatter) = series.scatter {
        low = low.min(scatter.low.as_m().max(low - reach));
        high = high.max(scatter.high.as_m().min(high + reach));
    }
    let span = (high - low).max(10e-6);
    let x = |m: f64| LEFT + WIDTH * (m.clamp(low, high) - low) / span;
    let bottom = TOP + ROW * ROWS as f64 + 4.0;
    let mut picture = Picture {
        label: t::lesson_label(series, units),
        width: 360.0,
        height: HEIGHT,
        marks: Vec::new(),
        caption: String::new(),
    };
    if let Some(scatter) = series.scatter {
        let (from, to) = (x(scatter.low.as_m()), x(scatter.high.as_m()));
        picture.area(
            "band",
            &[
                (from, TOP - 6.0),
                (to, TOP - 6.0),
                (to, bottom),
                (from, bottom),
            ],
        );
        let mean = x(scatter.mean.as_m());
        picture.line("scribe-dashed", (mean, TOP - 6.0), (mean, bottom));
    }
    picture.line("scribe-thin", (LEFT, bottom), (LEFT + WIDTH, bottom));
    for (index, value) in values().enumerate() {
        let (at, y) = (x(value), TOP + ROW * (index % ROWS) as f64);
        picture.path(
            "blur",
            format!("M{:.1} {y:.1}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0", at - 3.0),
        );
    }
    picture.text("tiny", (LEFT, HEIGHT - 4.0), length(low, units));
    picture.text(
        "tiny-end",
        (LEFT + WIDTH, HEIGHT - 4.0),
        length(high, units),
    );
    picture.view()
}

//! Clearance against time after the sleeve enters its bore, with its 95 %
//! band: until it grips.

use super::{Picture, polyline};
use crate::show::{bare, length, seconds};
use crate::texts as t;
use coldseat_core::ask::{ColdDropAnswer, DropBand, UnitSystem};
use leptos::prelude::AnyView;

const LEFT: f64 = 8.0;
const RIGHT: f64 = 352.0;
const BASE: f64 = 186.0;
const TOP: f64 = 24.0;

/// The points of an answer up to `end_s`.
fn points(answer: &ColdDropAnswer, end_s: f64, high_m: f64) -> Vec<(f64, f64)> {
    let place = |t: f64, clearance: f64| {
        (
            LEFT + (RIGHT - LEFT) * t / end_s,
            BASE - (BASE - TOP) * (clearance / high_m).clamp(0.0, 1.05),
        )
    };
    let mut list = Vec::new();
    let mut before: Option<(f64, f64)> = None;
    for point in &answer.series {
        let (t, clearance) = (point.t.as_s(), point.clearance.as_m());
        if t > end_s {
            if let Some((t0, c0)) = before {
                let part = (end_s - t0) / (t - t0).max(1e-9);
                list.push(place(end_s, c0 + part * (clearance - c0)));
            }
            return list;
        }
        list.push(place(t, clearance));
        before = Some((t, clearance));
    }
    if let Some((_, clearance)) = before {
        list.push(place(end_s, clearance));
    }
    list
}

/// The drawing.
pub fn clearance(band: &DropBand, units: UnitSystem) -> AnyView {
    let grip_s = |a: &ColdDropAnswer| a.grip.as_ref().map(|g| g.after.as_s());
    let nominal_s = grip_s(&band.nominal);
    let longest_s = [&band.nominal, &band.early, &band.late]
        .into_iter()
        .map(|a| grip_s(a).unwrap_or(0.0))
        .fold(0.0, f64::max);
    let end_s = if longest_s > 0.0 {
        (1.12 * longest_s).max(4.0)
    } else {
        600.0
    };
    let entry_m = |a: &ColdDropAnswer| a.clearance_entry.as_m();
    let high_m = entry_m(&band.nominal)
        .max(entry_m(&band.early))
        .max(entry_m(&band.late))
        .max(1e-6);

    let mut picture = Picture {
        label: t::clearance_label(
            &length(entry_m(&band.nominal), units),
            nominal_s.map(seconds),
            grip_s(&band.early).map(seconds),
            grip_s(&band.late).map(seconds),
        ),
        width: 360.0,
        height: 220.0,
        marks: Vec::new(),
        caption: t::CLEARANCE_CAPTION.get().to_owned(),
    };
    let mut outline = points(&band.early, end_s, high_m);
    let mut back = points(&band.late, end_s, high_m);
    back.reverse();
    outline.extend(back);
    picture.area("band", &outline);
    picture.path(
        "scribe-strong",
        polyline(&points(&band.nominal, end_s, high_m)),
    );
    picture.line("scribe", (LEFT, BASE), (RIGHT, BASE));
    picture.line("scribe-thin", (LEFT, TOP - 6.0), (LEFT, BASE));
    picture.text(
        "strong",
        (LEFT + 6.0, TOP - 8.0),
        format!("{} {}", t::ENTERS_WITH, bare(entry_m(&band.nominal), units)),
    );
    let x = |s: f64| LEFT + (RIGHT - LEFT) * (s / end_s).min(1.0);
    for (answer, class) in [(&band.early, "tiny-middle"), (&band.late, "tiny-middle")] {
        if let Some(s) = grip_s(answer).filter(|s| *s > 0.0) {
            picture.line("scribe-thin", (x(s), BASE - 5.0), (x(s), BASE + 5.0));
            // Beside the nominal one only where there is room.
            if nominal_s.is_none_or(|n| (x(n) - x(s)).abs() > 30.0) {
                picture.text(class, (x(s).clamp(20.0, 340.0), BASE + 18.0), seconds(s));
            }
        }
    }
    if let Some(s) = nominal_s.filter(|s| *s > 0.0) {
        picture.line("scribe-strong", (x(s), BASE - 9.0), (x(s), BASE + 9.0));
        picture.text(
            "strong-middle",
            (x(s).clamp(40.0, 320.0), BASE + 30.0),
            format!("{} s", seconds(s)),
        );
    }
    picture.view()
}

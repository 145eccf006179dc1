//! What the planned cut takes off each flange, against what cleans it up.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{BankPlan, UnitSystem};
use leptos::prelude::AnyView;

/// The drawing.
pub fn deck_cuts(plan: &BankPlan, clean_up_m: f64, units: UnitSystem) -> AnyView {
    let cuts: Vec<f64> = plan.plan.flange_cut.iter().map(|c| c.as_m()).collect();
    let most = cuts.iter().copied().fold(clean_up_m, f64::max).max(1e-6);
    let least = cuts.iter().copied().fold(0.0, f64::min);
    let y = |m: f64| 30.0 + 130.0 * (most - m) / (most - least);
    let wide = 346.0 / cuts.len().max(1) as f64;

    let spoken: Vec<String> = plan
        .cylinders
        .iter()
        .zip(&cuts)
        .map(|(cylinder, cut)| format!("{cylinder}: {}", length(*cut, units)))
        .collect();
    let mut picture = Picture {
        label: t::deck_label(&length(plan.plan.removal.as_m(), units), &spoken.join(", ")),
        width: 360.0,
        height: 200.0,
        marks: Vec::new(),
        caption: t::deck_caption(&length(clean_up_m, units)),
    };
    for (index, (cylinder, cut)) in plan.cylinders.iter().zip(&cuts).enumerate() {
        let left = 7.0 + wide * index as f64 + 0.12 * wide;
        let right = left + 0.76 * wide;
        let class = if *cut + 1e-9 < clean_up_m {
            "bar-bad"
        } else {
            "bar"
        };
        picture.area(
            class,
            &[
                (left, y(0.0)),
                (right, y(0.0)),
                (right, y(*cut)),
                (left, y(*cut)),
            ],
        );
        let middle = 0.5 * (left + right);
        if wide > 38.0 {
            picture.text(
                "tiny-middle",
                (middle, y(cut.max(0.0)) - 5.0),
                bare(*cut, units),
            );
        }
        picture.text("small-middle", (middle, 192.0), cylinder.to_string());
    }
    picture.line("scribe", (0.0, y(0.0)), (360.0, y(0.0)));
    picture.line(
        "scribe-dashed",
        (0.0, y(clean_up_m)),
        (360.0, y(clean_up_m)),
    );
    picture.view()
}

//! The flange on its ledge, cut through one side: predicted and measured
//! height, and the gap in between, magnified against the flange's thickness.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{Section, UnitSystem};
use leptos::prelude::AnyView;

/// Thickness of the drawn flange.
const FLANGE: f64 = 78.0;
const LEDGE: f64 = 176.0;

/// The drawing.
pub fn section(section: &Section, units: UnitSystem) -> AnyView {
    let gap_m = section
        .measured
        .map_or(0.0, |m| m.as_m() - section.predicted.as_m());
    let largest_m = section.predicted.as_m().abs().max(gap_m.abs()).max(0.05e-3);
    let per_m = 40.0 / largest_m;
    let flange_per_m = FLANGE / section.thickness.as_m().max(1e-4);
    let magnified = (per_m / flange_per_m).round().max(1.0);
    let gap = (gap_m * per_m).clamp(-30.0, 46.0);
    let home = LEDGE - FLANGE;
    let deck = home + section.predicted.as_m() * per_m;
    let (top, bottom) = (home - gap, LEDGE - gap);

    let predicted = length(section.predicted.as_m(), units);
    let label = match section.measured.map(|m| m.as_m()) {
        Some(measured) => {
            t::section_label(&predicted, &length(measured, units), &length(gap_m, units))
        }
        None => t::section_label_waiting(&predicted),
    };
    let mut picture = Picture {
        label,
        width: 360.0,
        height: 220.0,
        marks: Vec::new(),
        caption: t::section_caption(magnified as u32),
    };
    picture.area(
        "metal",
        &[
            (0.0, deck),
            (96.0, deck),
            (96.0, LEDGE),
            (140.0, LEDGE),
            (140.0, 214.0),
            (0.0, 214.0),
        ],
    );
    picture.area(
        "metal-back",
        &[
            (100.0, top),
            (196.0, top),
            (196.0, 214.0),
            (143.0, 214.0),
            (143.0, bottom),
            (100.0, bottom),
        ],
    );
    if gap > 1.5 {
        picture.area(
            "gap",
            &[
                (97.0, bottom),
                (140.0, bottom),
                (140.0, LEDGE),
                (97.0, LEDGE),
            ],
        );
    }
    picture.line("scribe-thin", (0.0, deck), (350.0, deck));
    picture.text("small", (2.0, deck - 5.0), t::DECK);
    for (words, at) in [
        (t::PART_BLOCK, (8.0, 208.0)),
        (t::PART_LEDGE, (40.0, LEDGE + 14.0)),
        (t::PART_SLEEVE, (152.0, 208.0)),
        (t::PART_FLANGE, (112.0, top + 16.0)),
    ] {
        picture.text("part", at, words);
    }
    picture.line("scribe-dashed", (196.0, home), (350.0, home));
    // The two labels keep clear of each other: the higher one stands above
    // its line, the lower one below.
    let predicted_above = gap < 0.0;
    picture.text(
        "small",
        (
            204.0,
            if predicted_above {
                home - 5.0
            } else {
                home + 15.0
            },
        ),
        format!("{} {}", t::PREDICTED, bare(section.predicted.as_m(), units)),
    );
    if let Some(measured_m) = section.measured.map(|m| m.as_m()) {
        picture.line("scribe", (196.0, top), (350.0, top));
        picture.text(
            "strong-end",
            (
                358.0,
                if predicted_above {
                    top + 16.0
                } else {
                    top - 6.0
                },
            ),
            format!("{} {}", t::MEASURED, bare(measured_m, units)),
        );
        picture.line("scribe-thin", (150.0, LEDGE), (262.0, LEDGE));
        picture.line("scribe-thin", (196.0, bottom), (262.0, bottom));
        picture.text(
            "gap-text",
            (204.0, LEDGE + 18.0),
            format!("{} {}", t::GAP.to_lowercase(), bare(gap_m, units)),
        );
    }
    picture.view()
}

//! The sleeve on its seat, cut through one side: flange on ledge, foot on step, or
//! held by its fit alone; predicted and measured height, and the gap in between,
//! magnified against the flange's thickness.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{Length, Section, SleeveKind, UnitSystem};
use leptos::prelude::AnyView;

/// Thickness of the drawn flange.
const FLANGE: f64 = 78.0;
const LEDGE: f64 = 176.0;
/// Where block and sleeve are broken off.
const FOOT: f64 = 214.0;

/// The drawing.
pub fn section(section: &Section, units: UnitSystem) -> AnyView {
    let gap_m = section
        .measured
        .map_or(0.0, |m| m.as_m() - section.predicted.as_m());
    let largest_m = section.predicted.as_m().abs().max(gap_m.abs()).max(0.05e-3);
    let per_m = 40.0 / largest_m;
    let flange = section.thickness.map(Length::as_m);
    // What is drawn of a plain sleeve is its top alone: no scale of its own.
    let magnified = flange.map(|m| (per_m * m.max(1e-4) / FLANGE).round().max(1.0) as u32);
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
        caption: t::section_caption(magnified),
    };
    // Where the block ends below the seat, and the sleeve's own outline.
    let (edge, sleeve) = match section.kind {
        SleeveKind::Flanged => (
            140.0,
            vec![
                (100.0, top),
                (196.0, top),
                (196.0, FOOT),
                (143.0, FOOT),
                (143.0, bottom),
                (100.0, bottom),
            ],
        ),
        SleeveKind::OnStep => (
            166.0,
            vec![(100.0, top), (196.0, top), (196.0, bottom), (100.0, bottom)],
        ),
        SleeveKind::ByFit => (
            96.0,
            vec![(100.0, top), (196.0, top), (196.0, FOOT), (100.0, FOOT)],
        ),
    };
    picture.area(
        "metal",
        &[
            (0.0, deck),
            (96.0, deck),
            (96.0, LEDGE),
            (edge, LEDGE),
            (edge, FOOT),
            (0.0, FOOT),
        ],
    );
    picture.area("metal-back", &sleeve);
    let has_seat = section.kind != SleeveKind::ByFit;
    if has_seat && gap > 1.5 {
        picture.area(
            "gap",
            &[(97.0, bottom), (edge, bottom), (edge, LEDGE), (97.0, LEDGE)],
        );
    }
    picture.line("scribe-thin", (0.0, deck), (350.0, deck));
    picture.text("small", (2.0, deck - 5.0), t::DECK);
    let sleeve_at = match section.kind {
        SleeveKind::Flanged => (152.0, 208.0),
        SleeveKind::OnStep | SleeveKind::ByFit => (112.0, top + 16.0),
    };
    let parts = [
        (true, t::PART_BLOCK, (8.0, 208.0)),
        (has_seat, t::PART_LEDGE, (40.0, LEDGE + 14.0)),
        (true, t::PART_SLEEVE, sleeve_at),
        (
            section.thickness.is_some(),
            t::PART_FLANGE,
            (112.0, top + 16.0),
        ),
    ];
    for (_, words, at) in parts.into_iter().filter(|(is_there, ..)| *is_there) {
        picture.text("part", at, words);
    }
    picture.line("scribe-dashed", (196.0, home), (350.0, home));
    // The two labels keep clear of each other: the higher one stands above
    // its line, the lower one below.
    let predicted_above = gap < 0.0;
    let predicted_word = if has_seat { t::PREDICTED } else { t::WANTED };
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
        format!("{predicted_word} {}", bare(section.predicted.as_m(), units)),
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
        if has_seat {
            picture.line("scribe-thin", (150.0, LEDGE), (262.0, LEDGE));
            picture.line("scribe-thin", (196.0, bottom), (262.0, bottom));
            picture.text(
                "gap-text",
                (204.0, LEDGE + 18.0),
                format!("{} {}", t::GAP.to_lowercase(), bare(gap_m, units)),
            );
        }
    }
    picture.view()
}

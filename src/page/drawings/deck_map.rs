//! The deck from above with its low spots where they are: a row of two before
//! each bore and one behind the last.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::UnitSystem;
use leptos::prelude::AnyView;

/// Half the height of the band of bores.
const HALF: f64 = 44.0;
/// The line through the bores.
const MIDDLE: f64 = 112.0;

/// Low spots of a bank's deck, by the index of their place, in metres below
/// its highest point; `holes` are its cylinders from the front.
pub fn deck_map(
    spots: &[(u8, f64)],
    holes: &[u8],
    plane_m: Option<f64>,
    units: UnitSystem,
) -> Option<AnyView> {
    let deepest_m = spots.iter().map(|(_, v)| *v).reduce(f64::max)?.max(1e-9);
    let words: Vec<String> = spots
        .iter()
        .map(|(index, v)| t::spot_words(*index, &length(*v, units)))
        .collect();
    let mut picture = Picture {
        label: t::deck_map_label(
            &words.join("; "),
            plane_m.map(|p| length(p, units)).as_deref(),
        ),
        width: 360.0,
        height: 2.0 * MIDDLE,
        marks: Vec::new(),
        caption: if plane_m.is_some() {
            t::DECK_MAP_CAPTION.get().to_owned()
        } else {
            t::DECK_SURVEY_CAPTION.get().to_owned()
        },
    };
    let last_row = spots.iter().map(|(index, _)| index / 2).max().unwrap_or(0);
    let rows = holes.len().max(usize::from(last_row)) as f64 + 1.0;
    let step = 344.0 / rows;
    let x_of = |row: f64| 8.0 + step * (row + 0.5);
    let edge = 352.0;
    picture.area(
        "scribe",
        &[
            (8.0, MIDDLE - HALF - 16.0),
            (edge, MIDDLE - HALF - 16.0),
            (edge, MIDDLE + HALF + 16.0),
            (8.0, MIDDLE + HALF + 16.0),
        ],
    );
    let r = (0.36 * step).min(HALF - 18.0);
    for (index, hole) in holes.iter().enumerate() {
        let x = x_of(index as f64 + 0.5);
        picture.circle("scribe-thin", (x, MIDDLE), r);
        picture.text("tiny-middle", (x, MIDDLE + 5.0), hole.to_string());
    }
    // More numbers than have room side by side stand on two lines.
    let crowded = step < 50.0;
    for (index, below_m) in spots {
        let row = index / 2;
        let up = index % 2 == 0;
        let side = if up { -1.0 } else { 1.0 };
        let at = (x_of(f64::from(row)), MIDDLE + side * HALF);
        let low = plane_m.is_some_and(|plane_m| *below_m > plane_m + 1e-9);
        let class = if low { "bar-bad" } else { "bar" };
        let size = 2.0 + 9.0 * (below_m / deepest_m).clamp(0.0, 1.0);
        picture.circle(class, at, size);
        let line = if crowded && row % 2 == 1 { 14.0 } else { 0.0 };
        let y = if up {
            MIDDLE - HALF - 24.0 - line
        } else {
            MIDDLE + HALF + 32.0 + line
        };
        picture.text("tiny-middle", (at.0, y), bare(*below_m, units));
    }
    Some(picture.view())
}

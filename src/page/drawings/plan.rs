//! The block from above: bores at their pitch, webs between counterbores, how
//! far each bar stood off its centre.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{Plan, UnitSystem};
use leptos::prelude::AnyView;

/// How much more offsets are drawn than lengths.
const TIMES: f64 = 100.0;

/// The drawing.
pub fn plan(block: &Plan, units: UnitSystem) -> Option<AnyView> {
    let most = block.banks.iter().map(Vec::len).max().filter(|n| *n > 0)?;
    let step = 340.0 / most as f64;
    let scale = step / block.pitch.as_m();
    let (big, small) = (
        0.5 * scale * block.counterbore.as_m(),
        0.5 * scale * block.bore.as_m(),
    );
    let row = 2.0 * big.min(60.0) + 58.0;
    let walls: Vec<String> = block
        .banks
        .iter()
        .flatten()
        .filter_map(|h| Some(t::plan_wall(h.cylinder, &length(h.wall?.as_m(), units))))
        .collect();
    let mut picture = Picture {
        label: t::plan_label(
            &length(block.pitch.as_m(), units),
            &length(block.web.as_m(), units),
            &walls.join("; "),
        ),
        width: 360.0,
        height: row * block.banks.len() as f64 + 8.0,
        marks: Vec::new(),
        caption: t::plan_caption(&length(block.web.as_m(), units), TIMES),
    };
    for (bank, holes) in block.banks.iter().enumerate() {
        let y = row * bank as f64 + 30.0 + big;
        for (index, hole) in holes.iter().enumerate() {
            let x = 10.0 + step * (index as f64 + 0.5);
            for (r, class) in [(big, "scribe"), (small, "scribe-strong")] {
                picture.circle(class, (x, y), r);
            }
            picture.text(
                "small-middle",
                (x, y - big - 8.0),
                hole.cylinder.to_string(),
            );
            if let Some((up, right)) = hole.off {
                let (up_m, right_m) = (up.as_m(), right.as_m());
                // The front of the engine is to the left; 12 o'clock is there.
                let to = (x - scale * TIMES * up_m, y - scale * TIMES * right_m);
                picture.line("scribe-thin", (x, y), to);
                picture.line("scribe-strong", (to.0 - 3.0, to.1), (to.0 + 3.0, to.1));
                picture.line("scribe-strong", (to.0, to.1 - 3.0), (to.0, to.1 + 3.0));
            }
            if let Some(wall_m) = hole.wall.map(|w| w.as_m()) {
                picture.text("tiny-middle", (x, y + big + 16.0), bare(wall_m, units));
            }
        }
    }
    Some(picture.view())
}

//! The part half in its bore, cut along the axis: its shape by its kind, wall and
//! housing in proportion to its diameter, the clearance exaggerated.

use super::Picture;
use crate::show::{length, number};
use crate::texts as t;
use coldseat_core::ask::{DropView, Measure, Part, UnitSystem};
use leptos::prelude::AnyView;

const AXIS: f64 = 180.0;
/// Radius of the bore as drawn.
const BORE: f64 = 92.0;
/// Clearance as drawn, on each side.
const GAP: f64 = 7.0;
/// Top of the housing, and its foot.
const TOP: f64 = 92.0;
const FOOT: f64 = 190.0;

/// Points of one side, mirrored about the axis: right, then left.
fn sides(points: &[(f64, f64)]) -> [Vec<(f64, f64)>; 2] {
    [1.0, -1.0].map(|side| {
        points
            .iter()
            .map(|(out, y)| (AXIS + side * out, *y))
            .collect()
    })
}

/// The outline of one side of a part, from the axis outward.
fn outline(part: Part, wall: f64) -> Vec<(f64, f64)> {
    let (out, inside) = (BORE - GAP, BORE - GAP - wall);
    let (top, foot) = (30.0, 140.0);
    match part {
        Part::FlangedSleeve => vec![
            (inside, top),
            (out + 16.0, top),
            (out + 16.0, top + 14.0),
            (out, top + 14.0),
            (out, foot),
            (inside, foot),
        ],
        Part::PlainSleeve | Part::Bushing => vec![
            (inside, top),
            (out, top),
            (out, foot - 4.0),
            (out - 4.0, foot),
            (inside, foot),
        ],
        // The face that the valve meets.
        Part::SeatRing => vec![
            (inside + 0.5 * wall, top + 40.0),
            (out, top + 40.0),
            (out, foot - 24.0),
            (inside, foot - 24.0),
            (inside, top + 40.0 + 0.5 * wall),
        ],
        // A track in the middle of the inside.
        Part::BearingRing => vec![
            (inside, top + 30.0),
            (out, top + 30.0),
            (out, foot - 10.0),
            (inside, foot - 10.0),
            (inside, foot - 28.0),
            (inside + 0.35 * wall, foot - 40.0),
            (inside, foot - 52.0),
        ],
        Part::Pin => vec![
            (0.0, top),
            (out, top),
            (out, foot - 6.0),
            (out - 6.0, foot),
            (0.0, foot),
        ],
    }
}

/// The drawing.
pub fn part(view: &DropView, units: UnitSystem) -> AnyView {
    let case = &view.case;
    let drop = &case.drop;
    let outer_m = drop.sleeve_outer.as_m();
    let per_m = 2.0 * BORE / outer_m;
    let wall_m = 0.5 * (outer_m - drop.sleeve_inner.as_m());
    let wall = (wall_m * per_m).clamp(7.0, BORE - GAP);
    let ring_m = 0.5 * (drop.block_outer.as_m() - drop.block_bore.as_m());
    let ring = (ring_m * per_m).clamp(10.0, AXIS - BORE - 2.0);
    let clearance_m = view.band.nominal.clearance_entry.as_m();
    let clearance = length(clearance_m, units);
    let degrees =
        |t: coldseat_core::ask::Temperature| number(t.as_k(), Measure::Temperature.unit(units));
    let (cold, warm) = (degrees(drop.bath), degrees(drop.block));
    let mut picture = Picture {
        label: t::part_label(t::part(case.part), &cold, &warm, &clearance),
        width: 360.0,
        height: 216.0,
        marks: Vec::new(),
        caption: t::part_caption(),
    };
    for side in sides(&[
        (BORE, TOP),
        (BORE + ring, TOP),
        (BORE + ring, FOOT),
        (BORE, FOOT),
    ]) {
        picture.area("metal", &side);
    }
    for side in sides(&outline(case.part, wall)) {
        picture.area("metal-back", &side);
    }
    picture.line("scribe-dashed", (AXIS, 16.0), (AXIS, 206.0));
    picture.text(
        "small",
        (4.0, 24.0),
        format!("{} {cold}", t::part(case.part)),
    );
    picture.text("small", (4.0, 210.0), format!("{} {warm}", t::HOUSING));
    picture.text("strong-end", (356.0, 24.0), clearance);
    picture.text("tiny-end", (356.0, 40.0), t::CLEARANCE_AT_BORE);
    picture.view()
}

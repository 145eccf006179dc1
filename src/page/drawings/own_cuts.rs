//! The counterbores of this job against the depth each was cut for.

use super::Picture;
use crate::show::length;
use crate::texts as t;
use coldseat_core::ask::{OwnCuts, UnitSystem};
use leptos::prelude::AnyView;

const MIDDLE: f64 = 190.0;
const HALF: f64 = 140.0;
const ROW: f64 = 22.0;
const TOP: f64 = 40.0;

/// The drawing; `None` before anything is cut.
pub fn own_cuts(cuts: &OwnCuts, units: UnitSystem) -> Option<AnyView> {
    let errors = || cuts.cuts.iter().map(|(_, e)| e.as_m());
    let mut most_m = errors().map(f64::abs).reduce(f64::max)?;
    let spread = cuts.scatter.map(|s| {
        let (mean_m, sd_m) = (s.mean.as_m(), s.sd.as_m());
        most_m = most_m.max((mean_m.abs() + sd_m).abs());
        (mean_m, sd_m)
    });
    // A tenth of a thou still shows as one.
    most_m = most_m.max(25e-6);
    let x = |m: f64| MIDDLE + HALF * m / most_m;
    let bottom = TOP + ROW * cuts.cuts.len() as f64;
    let words: Vec<String> = cuts
        .cuts
        .iter()
        .map(|(cylinder, e)| t::own_cut_words(*cylinder, &length(e.as_m().abs(), units), e.as_m()))
        .collect();
    let caption = match &cuts.scatter {
        Some(s) => t::own_cuts_caption(
            s.n,
            &length(s.mean.as_m().abs(), units),
            s.mean.as_m(),
            &length(s.sd.as_m(), units),
        ),
        None => t::OWN_CUTS_ONE.get().to_owned(),
    };
    let mut picture = Picture {
        label: t::own_cuts_label(&words.join("; ")),
        width: 360.0,
        height: bottom + 8.0,
        marks: Vec::new(),
        caption,
    };
    if let Some((mean_m, sd_m)) = spread {
        let (low, high) = (x(mean_m - sd_m), x(mean_m + sd_m));
        picture.area(
            "band",
            &[
                (low, TOP - 8.0),
                (high, TOP - 8.0),
                (high, bottom),
                (low, bottom),
            ],
        );
        picture.line("scribe-dashed", (x(mean_m), TOP - 8.0), (x(mean_m), bottom));
    }
    picture.line("scribe-strong", (x(0.0), TOP - 12.0), (x(0.0), bottom));
    picture.text("tiny-middle", (x(0.0), TOP - 18.0), t::DEPTH_WANTED);
    picture.text("tiny", (8.0, TOP - 18.0), t::SHALLOW);
    picture.text("tiny-end", (352.0, TOP - 18.0), t::DEEP);
    for (row, (cylinder, error)) in cuts.cuts.iter().enumerate() {
        let y = TOP + ROW * (row as f64 + 0.5);
        let at = x(error.as_m());
        picture.text("tiny", (8.0, y + 5.0), cylinder.to_string());
        picture.line("scribe-thin", (x(0.0), y), (at, y));
        picture.circle("blur", (at, y), 5.0);
    }
    Some(picture.view())
}

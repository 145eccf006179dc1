//! The bore of a fitted sleeve down its length, exaggerated: what the fit
//! closes, what the hone must take at each level, Lame's number beside it.

use super::{Picture, polyline};
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::job::field::UnitSystem;
use coldseat_core::job::profile::Profile;
use leptos::prelude::AnyView;

const TOP: f64 = 34.0;
const DOWN: f64 = 200.0;

/// The drawing.
pub fn bore_profile(profile: &Profile, units: UnitSystem) -> Option<AnyView> {
    let last = profile.levels.last()?;
    let most = profile
        .levels
        .iter()
        .map(|l| l.change.as_m().abs())
        .fold(profile.lame.as_m().abs(), f64::max)
        .max(1e-7);
    let x = |change_m: f64| 90.0 + 110.0 * (-change_m / most).clamp(-0.3, 1.2);
    let y = |z_m: f64| TOP + DOWN * z_m / last.z.as_m().max(1e-9);
    let stocks: Vec<(f64, f64)> = profile
        .levels
        .iter()
        .filter_map(|l| Some((l.z.as_m(), l.stock?.as_m())))
        .collect();
    let least = stocks.iter().map(|(_, s)| *s).reduce(f64::min);
    let greatest = stocks.iter().map(|(_, s)| *s).reduce(f64::max);
    let mut picture = Picture {
        label: t::profile_label(
            &length(most, units),
            &length(profile.lame.as_m().abs(), units),
            least
                .zip(greatest)
                .map(|(a, b)| (length(a, units), length(b, units))),
        ),
        width: 360.0,
        height: 268.0,
        marks: Vec::new(),
        caption: t::PROFILE_CAPTION.to_owned(),
    };
    picture.line("scribe", (x(0.0), TOP), (x(0.0), TOP + DOWN));
    let ledge = y(profile.ledge.as_m());
    picture.line("scribe-thin", (60.0, ledge), (350.0, ledge));
    picture.text("tiny-end", (84.0, ledge - 4.0), t::LEDGE);
    let lame = x(profile.lame.as_m());
    picture.line("scribe-dashed", (lame, TOP), (lame, TOP + DOWN));
    picture.text(
        "tiny-middle",
        (lame.min(250.0), TOP + DOWN + 18.0),
        format!("{} {}", t::LAME, bare(profile.lame.as_m().abs(), units)),
    );
    let points: Vec<(f64, f64)> = profile
        .levels
        .iter()
        .map(|l| (x(l.change.as_m()), y(l.z.as_m())))
        .collect();
    picture.path("scribe-strong", polyline(&points));
    picture.text("tiny-end", (350.0, 20.0), t::HONE_TAKES);
    for (z_m, stock_m) in stocks.iter().step_by(4) {
        picture.text("tiny-end", (350.0, y(*z_m) + 4.0), bare(*stock_m, units));
    }
    Some(picture.view())
}

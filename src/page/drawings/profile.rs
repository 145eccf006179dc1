//! The bore of a fitted sleeve down its length, exaggerated, beside the straight
//! line wanted: what the fit closes, what the hone must take at each level,
//! Lame's number; and the pressure on the bore.

use super::{Picture, polyline};
use crate::show::{bare, bare_number, length, number};
use crate::texts as t;
use coldseat_core::ask::{Length, Measure, Profile, ProfileLevel, UnitSystem};
use leptos::prelude::AnyView;

const TOP: f64 = 44.0;
const DOWN: f64 = 200.0;
/// A line of the drawing: what it takes from a level.
type Of = fn(&ProfileLevel) -> Option<Length>;

/// Levels that carry numbers.
pub fn told(profile: &Profile) -> impl Iterator<Item = &ProfileLevel> {
    profile.levels.iter().filter(|l| l.is_told)
}

/// Height of a depth in the drawing.
fn down(profile: &Profile) -> impl Fn(Length) -> f64 + use<> {
    let last_m = profile.levels.last().map_or(1.0, |l| l.z.as_m().max(1e-9));
    move |z| TOP + DOWN * z.as_m() / last_m
}

/// Straight line, shape, stock; dotted beside it another profile in the same
/// scale.
pub fn bore_profile(profile: &Profile, beside: Option<&Profile>, units: UnitSystem) -> AnyView {
    let lame_m = profile.lame.as_m();
    let levels = || {
        profile
            .levels
            .iter()
            .chain(beside.iter().flat_map(|b| &b.levels))
    };
    let most = levels()
        .flat_map(|l| {
            let [along, across] = l.oval.unwrap_or([l.change; 2]);
            [l.change, l.clamped.unwrap_or(l.change), along, across]
        })
        .map(|change| change.as_m().abs())
        .fold(lame_m.abs(), f64::max)
        .max(1e-7);
    let closes = profile
        .levels
        .iter()
        .map(|l| l.change.as_m().abs())
        .fold(0.0, f64::max);
    let x = |change: Length| 84.0 + 122.0 * (-change.as_m() / most).clamp(-0.2, 1.0);
    let y = down(profile);
    let line = |of: Of| {
        let points: Vec<(f64, f64)> = profile
            .levels
            .iter()
            .filter_map(|l| Some((x(of(l)?), y(l.z))))
            .collect();
        (!points.is_empty()).then_some(points)
    };
    let stocks = || profile.levels.iter().filter_map(|l| Some(l.stock?.as_m()));
    let (least, greatest) = (stocks().reduce(f64::min), stocks().reduce(f64::max));
    let mut picture = Picture {
        label: t::profile_label(
            &length(closes, units),
            &length(lame_m.abs(), units),
            least
                .zip(greatest)
                .map(|(a, b)| (length(a, units), length(b, units))),
        ),
        width: 360.0,
        height: TOP + DOWN + 42.0,
        marks: Vec::new(),
        caption: t::PROFILE_CAPTION.get().to_owned(),
    };
    let foot = TOP + DOWN;
    let straight = x(Length::from_m(0.0));
    picture.line("scribe", (straight, TOP), (straight, foot));
    picture.text("tiny-end", (straight + 6.0, foot + 16.0), t::STRAIGHT);
    let ledge = y(profile.ledge);
    if profile.ledge.as_m() > 0.0 {
        picture.line("scribe-thin", (48.0, ledge), (232.0, ledge));
        picture.text("tiny", (1.0, ledge + 4.0), t::LEDGE);
    }
    let lame = x(profile.lame);
    picture.line("scribe-dashed", (lame, TOP), (lame, foot));
    picture.text(
        "tiny-middle",
        (lame.max(150.0), foot + 16.0),
        format!("{} {}", t::LAME, bare(lame_m.abs(), units)),
    );
    for (of, class, word) in [
        ((|l| l.oval.map(|o| o[0])) as Of, "tiny", t::ALONG),
        (|l| l.oval.map(|o| o[1]), "tiny-end", t::ACROSS),
    ] {
        if let Some(points) = line(of) {
            let end = points[points.len() / 2].0;
            picture.path("scribe-thin", polyline(&points));
            picture.text(class, (end, foot + 34.0), word);
        }
    }
    if let Some(beside) = beside {
        let y = down(beside);
        let points: Vec<(f64, f64)> = beside
            .levels
            .iter()
            .map(|l| (x(l.change), y(l.z)))
            .collect();
        picture.path("scribe-dotted", polyline(&points));
    }
    if let Some(points) = line(|l| l.clamped) {
        picture.text("tiny-middle", (points[0].0, TOP - 6.0), t::HEAD_ON);
        picture.path("scribe", polyline(&points));
    }
    if let Some(points) = line(|l| Some(l.change)) {
        picture.path("scribe-strong", polyline(&points));
    }
    let columns: [(f64, &str, Of); 2] = [
        (290.0, t::TAKES_ALL.get(), |l| l.stock),
        (354.0, t::TAKES_BORED.get(), |l| l.stock_bored),
    ];
    for (right, head, of) in columns {
        let mut any = false;
        for level in told(profile) {
            if let Some(stock) = of(level) {
                any = true;
                let at = (right, y(level.z) + 4.0);
                picture.text("tiny-end", at, bare(stock.as_m(), units));
            }
        }
        if any {
            picture.text("tiny-end", (right, TOP - 10.0), head);
        }
    }
    if least.is_some() {
        picture.text("tiny-end", (354.0, 14.0), t::HONE_TAKES);
    }
    picture.view()
}

/// Pressure on the bore down its length.
pub fn pressure_down(
    profile: &Profile,
    beside: Option<&Profile>,
    units: UnitSystem,
) -> Option<AnyView> {
    let unit = Measure::Pressure.unit(units);
    let trusted = |profile: &Profile| -> Vec<ProfileLevel> {
        let levels = profile.levels.iter().filter(|l| !l.near_end);
        levels.copied().collect()
    };
    let levels = trusted(profile);
    let others = beside.map(trusted).unwrap_or_default();
    let largest = |levels: &[ProfileLevel]| {
        let pressures = levels.iter().map(|l| l.pressure.as_pa());
        pressures.fold(0.0, f64::max)
    };
    let own = largest(&levels);
    let most = own.max(largest(&others));
    if most <= 0.0 {
        return None;
    }
    let least = levels.iter().map(|l| l.pressure.as_pa()).reduce(f64::min)?;
    let y = down(profile);
    let x = |level: &ProfileLevel| 60.0 + 190.0 * level.pressure.as_pa() / most;
    let mut picture = Picture {
        label: t::pressure_label(&number(least, unit), &number(own, unit)),
        width: 360.0,
        height: TOP + DOWN + 14.0,
        marks: Vec::new(),
        caption: t::PRESSURE_CAPTION.get().to_owned(),
    };
    picture.line("scribe", (60.0, TOP), (60.0, TOP + DOWN));
    let ledge = y(profile.ledge);
    if profile.ledge.as_m() > 0.0 {
        picture.line("scribe-thin", (48.0, ledge), (270.0, ledge));
        picture.text("tiny", (1.0, ledge + 4.0), t::LEDGE);
    }
    if let Some(beside) = beside {
        let y = down(beside);
        let points: Vec<(f64, f64)> = others.iter().map(|l| (x(l), y(l.z))).collect();
        picture.path("scribe-dotted", polyline(&points));
    }
    let points: Vec<(f64, f64)> = levels.iter().map(|l| (x(l), y(l.z))).collect();
    picture.path("scribe-strong", polyline(&points));
    picture.text("tiny-end", (354.0, 20.0), t::pressure_head(unit.symbol()));
    for level in levels.iter().filter(|l| l.is_told) {
        let words = bare_number(level.pressure.as_pa(), unit);
        picture.text("tiny-end", (354.0, y(level.z) + 4.0), words);
    }
    Some(picture.view())
}

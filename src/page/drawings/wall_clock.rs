//! The wall left round the clock, by ultrasonic readings, against the wall
//! that stops.

use super::{Picture, polyline};
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{Length, UnitSystem};
use core::f64::consts::TAU;
use leptos::prelude::AnyView;

const X: f64 = 180.0;
const Y: f64 = 130.0;
const BORE: f64 = 48.0;

fn circle(r: f64) -> Vec<(f64, f64)> {
    round(|_| r)
}

/// Points round the bore, 3 o'clock to the right.
fn round(r: impl Fn(f64) -> f64) -> Vec<(f64, f64)> {
    (0..=72)
        .map(|i| {
            let angle = TAU * f64::from(i) / 72.0;
            let r = r(angle);
            (X + r * angle.cos(), Y + r * angle.sin())
        })
        .collect()
}

/// The outside of the wall through its four readings: the smoothest curve that
/// meets them.
fn outside([twelve, three, six, nine]: [f64; 4], scale: f64) -> Vec<(f64, f64)> {
    let mean = 0.25 * (twelve + three + six + nine);
    let (right, up) = (0.5 * (three - nine), 0.5 * (twelve - six));
    let oval = 0.25 * (three + nine - twelve - six);
    round(|angle| {
        // Down is positive on the screen, so up is minus the sine.
        let wall = mean + right * angle.cos() - up * angle.sin() + oval * (2.0 * angle).cos();
        BORE + scale * wall.max(0.0)
    })
}

/// The drawing: walls by place of their reading, and the limit.
pub fn wall_clock(walls: &[(u8, Length)], stop_m: f64, units: UnitSystem) -> Option<AnyView> {
    let most = walls.iter().map(|(_, w)| w.as_m()).fold(stop_m, f64::max);
    if walls.is_empty() || most <= 0.0 {
        return None;
    }
    let scale = 52.0 / most;
    let point = |clock: u8, wall_m: f64| {
        let angle = TAU * (f64::from(clock % 4) - 1.0) / 4.0;
        let r = BORE + (scale * wall_m).max(0.0);
        (X + r * angle.cos(), Y + r * angle.sin())
    };
    let ring = |r: f64| polyline(&circle(r));
    let least_at = |clock: u8| {
        walls
            .iter()
            .filter(|(index, _)| index % 4 == clock)
            .map(|(_, w)| w.as_m())
            .reduce(f64::min)
    };
    let words: Vec<String> = walls
        .iter()
        .map(|(index, w)| {
            format!(
                "{} {}",
                t::place(coldseat_core::ask::Field::WallReading, *index),
                length(w.as_m(), units)
            )
        })
        .collect();
    let mut picture = Picture {
        label: t::wall_label(&words.join("; ")),
        width: 360.0,
        height: 264.0,
        marks: Vec::new(),
        caption: t::wall_caption(&length(stop_m, units)),
    };
    for level in 0..3_u8 {
        let at = |clock: u8| {
            let of = walls.iter().find(|(index, _)| *index == 4 * level + clock);
            of.map(|(_, wall)| wall.as_m())
        };
        let (Some(twelve), Some(three), Some(six), Some(nine)) = (at(0), at(1), at(2), at(3))
        else {
            continue;
        };
        let walls_m = [twelve, three, six, nine];
        // The ring of metal, its inside the bore: once, at the first level.
        if level == 0 {
            let mut ring = outside(walls_m, scale);
            ring.extend(circle(BORE).into_iter().rev());
            picture.area("metal", &ring);
        }
        let class = if level == 0 {
            "scribe-strong"
        } else {
            "scribe"
        };
        picture.path(class, polyline(&outside(walls_m, scale)));
    }
    picture.path("scribe", ring(BORE));
    picture.path("scribe-dashed", ring(BORE + scale * stop_m));
    for clock in 0..4 {
        let Some(wall_m) = least_at(clock) else {
            continue;
        };
        let class = if wall_m < stop_m {
            "gap-text"
        } else {
            "small-middle"
        };
        let (x, y) = match clock {
            0 => (X, 18.0),
            1 => (X + 136.0, Y + 5.0),
            2 => (X, 258.0),
            _ => (X - 136.0, Y + 5.0),
        };
        picture.line("scribe-thin", point(clock, 0.0), point(clock, wall_m));
        picture.text(class, (x, y), bare(wall_m, units));
    }
    Some(picture.view())
}

//! What drawings say to those who cannot see them, and the lines
//! below them.

use crate::show::fixed;
use crate::words::made as w;
use coldseat_core::ask::Bearer;

/// A level of readings.
#[must_use]
pub fn level_name(level: usize) -> &'static str {
    match level {
        0 => w::LEVEL_NAME_0.get(),
        1 => w::LEVEL_NAME_1.get(),
        _ => w::LEVEL_NAME_OTHER.get(),
    }
}

#[must_use]
pub fn round_level(level: usize, across: &str, along: &str) -> String {
    w::RoundLevel {
        level: &level_name(level),
        across: &across,
        along: &along,
    }
    .say()
}

#[must_use]
pub fn round_label(levels: &str) -> String {
    w::RoundLabel { levels: &levels }.say()
}

#[must_use]
pub fn round_caption(times: f64, limit: Option<&str>) -> String {
    let limit = limit.map_or(String::new(), |limit| {
        w::RoundCaptionLimit { limit: &limit }.say()
    });
    w::RoundCaption {
        times: &round_times(times),
        limit: &limit,
    }
    .say()
}

#[must_use]
pub fn wall_label(walls: &str) -> String {
    w::WallLabel { walls: &walls }.say()
}

#[must_use]
pub fn wall_caption(stop: &str) -> String {
    w::WallCaption { stop: &stop }.say()
}

#[must_use]
pub fn plan_wall(cylinder: u8, wall: &str) -> String {
    w::PlanWall {
        cylinder: &cylinder,
        wall: &wall,
    }
    .say()
}

#[must_use]
pub fn plan_label(pitch: &str, web: &str, walls: &str) -> String {
    w::PlanLabel {
        pitch: &pitch,
        web: &web,
        walls: &walls,
    }
    .say()
}

#[must_use]
pub fn plan_caption(web: &str, times: f64) -> String {
    w::PlanCaption {
        times: &fixed(times, 0),
        web: &web,
    }
    .say()
}

#[must_use]
pub fn load_words(bearer: Bearer, now: &str, most: &str) -> String {
    let what = match bearer {
        Bearer::Ram => w::LOAD_WORDS_WHAT_RAM.get(),
        Bearer::Rod => w::LOAD_WORDS_WHAT_ROD.get(),
        Bearer::Ledge => w::LOAD_WORDS_WHAT_LEDGE.get(),
        Bearer::Flange => w::LOAD_WORDS_WHAT_FLANGE.get(),
    };
    w::LoadWords {
        what: &what,
        now: &now,
        most: &most,
    }
    .say()
}

#[must_use]
pub fn load_label(loads: &str) -> String {
    w::LoadLabel { loads: &loads }.say()
}

#[must_use]
pub fn chill_label(quiet: &str, low: &str, high: &str, elapsed: Option<&str>) -> String {
    match elapsed {
        Some(elapsed) => w::ChillLabelSome {
            elapsed: &elapsed,
            quiet: &quiet,
            low: &low,
            high: &high,
        }
        .say(),
        None => w::ChillLabelNone {
            quiet: &quiet,
            low: &low,
            high: &high,
        }
        .say(),
    }
}

#[must_use]
pub fn oxygen_label(sudden: &str, least: &str) -> String {
    w::OxygenLabel {
        sudden: &sudden,
        least: &least,
    }
    .say()
}

#[must_use]
pub fn spot_words(index: u8, below: &str) -> String {
    let place = super::names::place(coldseat_core::ask::Field::LowSpot, index);
    format!("{place} {below}")
}

#[must_use]
pub fn deck_map_label(spots: &str, plane: Option<&str>) -> String {
    match plane {
        Some(plane) => w::DeckMapLabelSome {
            spots: &spots,
            plane: &plane,
        }
        .say(),
        None => w::DeckMapLabelNone { spots: &spots }.say(),
    }
}

/// Which way an error of depth goes.
fn way(error_m: f64) -> &'static str {
    if error_m > 0.0 {
        w::WAY_DEEP.get()
    } else {
        w::WAY_SHALLOW.get()
    }
}

#[must_use]
pub fn own_cut_words(cylinder: u8, by: &str, error_m: f64) -> String {
    w::OwnCutWords {
        error_m: &way(error_m),
        cylinder: &cylinder,
        by: &by,
    }
    .say()
}

#[must_use]
pub fn own_cuts_label(cuts: &str) -> String {
    w::OwnCutsLabel { cuts: &cuts }.say()
}

#[must_use]
pub fn own_cuts_caption(n: usize, mean: &str, mean_m: f64, sd: &str) -> String {
    let few = if n < 10 {
        w::OWN_CUTS_CAPTION_FEW.get()
    } else {
        ""
    };
    w::OwnCutsCaption {
        mean_m: &way(mean_m),
        n: &n,
        mean: &mean,
        sd: &sd,
        few: &few,
    }
    .say()
}

/// How many times larger something is drawn: two digits say it.
fn round_times(times: f64) -> String {
    let mut step = 1.0;
    while times / step >= 100.0 {
        step *= 10.0;
    }
    fixed((times / step).round() * step, 0)
}

//! Bars against a limit: loads of a pull, the chill against its quiet time,
//! the oxygen of the room.

use super::Picture;
use crate::show::{clock, number};
use crate::texts as t;
use coldseat_core::ask::{
    Bearer, Chill, FRESH, LIMIT, Load, LoadCheck, Measure, Oxygen, UnitSystem,
};
use leptos::prelude::AnyView;

fn picture(label: String, height: f64, caption: String) -> Picture {
    Picture {
        label,
        width: 360.0,
        height,
        marks: Vec::new(),
        caption,
    }
}

fn bar(picture: &mut Picture, class: &'static str, from: (f64, f64), to: (f64, f64)) {
    picture.area(class, &[from, (to.0, from.1), to, (from.0, to.1)]);
}

/// Loads on ram, rod and ledge, each against what it may bear.
pub fn load_bars(checks: &[LoadCheck], units: UnitSystem) -> Option<AnyView> {
    let loads: Vec<(Bearer, Load)> = checks
        .iter()
        .filter_map(|check| Some((check.bearer, *check.standing.known()?)))
        .collect();
    if loads.is_empty() {
        return None;
    }
    let unit = Measure::Pressure.unit(units);
    let show = |si: f64| number(si, unit);
    let line = |bearer: Bearer, load: &Load| {
        t::load_words(bearer, &show(load.now.as_pa()), &show(load.most.as_pa()))
    };
    let words: Vec<String> = loads
        .iter()
        .map(|(bearer, load)| line(*bearer, load))
        .collect();
    let mut picture = picture(
        t::load_label(&words.join("; ")),
        44.0 * loads.len() as f64 + 8.0,
        t::LOAD_CAPTION.get().to_owned(),
    );
    for (index, (bearer, load)) in loads.iter().enumerate() {
        let y = 44.0 * index as f64 + 22.0;
        let share = load.now.as_pa() / load.most.as_pa();
        let x = 8.0 + 250.0 * share.clamp(0.0, 1.35);
        picture.text("tiny", (8.0, y - 6.0), line(*bearer, load));
        let class = if share > 1.0 { "bar-bad" } else { "bar" };
        bar(&mut picture, class, (8.0, y), (x, y + 14.0));
        picture.line("scribe-strong", (258.0, y - 1.0), (258.0, y + 17.0));
    }
    Some(picture.view())
}

/// The chill: its quiet time with the band, and the time in the bath.
pub fn chill_bar(chill: &Chill, elapsed_s: Option<f64>) -> AnyView {
    let end_s = (1.25 * chill.quiet_high.as_s()).max(1.02 * elapsed_s.unwrap_or(0.0));
    let x = |s: f64| 8.0 + 344.0 * s / end_s;
    let mut picture = picture(
        t::chill_label(
            &clock(chill.quiet.as_s()),
            &clock(chill.quiet_low.as_s()),
            &clock(chill.quiet_high.as_s()),
            elapsed_s.map(clock).as_deref(),
        ),
        104.0,
        t::CHILL_CAPTION.get().to_owned(),
    );
    let (low, high) = (x(chill.quiet_low.as_s()), x(chill.quiet_high.as_s()));
    bar(&mut picture, "band", (low, 30.0), (high, 74.0));
    picture.line("scribe", (8.0, 74.0), (352.0, 74.0));
    picture.line(
        "scribe-strong",
        (x(chill.quiet.as_s()), 26.0),
        (x(chill.quiet.as_s()), 74.0),
    );
    picture.text("tiny-middle", (low, 92.0), clock(chill.quiet_low.as_s()));
    picture.text("tiny-middle", (high, 92.0), clock(chill.quiet_high.as_s()));
    picture.text(
        "small-middle",
        (x(chill.quiet.as_s()), 20.0),
        clock(chill.quiet.as_s()),
    );
    if let Some(s) = elapsed_s {
        bar(&mut picture, "bar", (8.0, 44.0), (x(s), 60.0));
    }
    picture.view()
}

/// Oxygen in this room, between 15 and 21 %.
pub fn oxygen_bar(oxygen: &Oxygen) -> AnyView {
    let x = |share: f64| 8.0 + 344.0 * ((share - 0.15) / (FRESH - 0.15)).clamp(0.0, 1.0);
    let mut picture = picture(
        t::oxygen_label(&t::percent(oxygen.sudden), &t::percent(oxygen.least)),
        128.0,
        t::OXYGEN_CAPTION.get().to_owned(),
    );
    let rows = [
        (t::AT_ONCE, oxygen.sudden, 22.0),
        (t::WITH_AIR, oxygen.least, 66.0),
    ];
    for (word, share, y) in rows {
        let class = if share < LIMIT { "bar-bad" } else { "bar" };
        picture.text(
            "tiny",
            (8.0, y - 6.0),
            format!("{word}: {}", t::percent(share)),
        );
        bar(&mut picture, class, (8.0, y), (x(share), y + 16.0));
    }
    picture.line("scribe-strong", (x(LIMIT), 10.0), (x(LIMIT), 96.0));
    picture.text("tiny-middle", (x(LIMIT), 114.0), t::percent(LIMIT));
    picture.view()
}

//! The one number of a step and its verdict, by word and shape first.

use crate::show;
use crate::texts as t;
use coldseat_core::ask::{Figure, OneNumber, Signal, UnitSystem};
use coldseat_markup::view;
use leptos::prelude::*;

/// The shape of a signal: an arrow goes on, two bars wait, a notched ring
/// looks, a barred disc stops.
pub fn shape(signal: Signal) -> AnyView {
    let path = match signal {
        Signal::None => "M4 12h16",
        Signal::Marked => "M4 4h16v16h-16zM8 12l3 3l5 -6",
        Signal::Go => "M5 4l14 8l-14 8z",
        Signal::Wait => "M8 4v16M16 4v16",
        Signal::Look => "M12 3a9 9 0 1 0 6.4 2.6L12 12z",
        Signal::Stop => "M8 3h8l5 5v8l-5 5H8l-5-5V8zM6 12h12",
    };
    view! {
        <svg class="shape" viewBox="0 0 24 24" aria-hidden="true">
            <path d=path></path>
        </svg>
    }
    .into_any()
}

/// The class that colours a signal.
#[must_use]
pub const fn class(signal: Signal) -> &'static str {
    match signal {
        Signal::None => "verdict verdict-none",
        Signal::Marked => "verdict verdict-marked",
        Signal::Go => "verdict verdict-go",
        Signal::Wait => "verdict verdict-wait",
        Signal::Look => "verdict verdict-look",
        Signal::Stop => "verdict verdict-stop",
    }
}

/// Signal, its word, and what to do.
pub fn verdict(signal: Signal, words: String) -> AnyView {
    view! {
        <div class=class(signal) role="status">
            {shape(signal)} <strong class="verdict-word">{t::signal(signal)}</strong>
            <p>{words}</p>
        </div>
    }
    .into_any()
}

/// In a verdict's place while a reading is being typed: no colour, no voice.
pub fn verdict_waits() -> AnyView {
    view! {
        <div class=class(Signal::None)>
            {shape(Signal::None)} <strong class="verdict-word">{t::TYPING}</strong>
            <p>{t::TYPING_WHAT}</p>
        </div>
    }
    .into_any()
}

/// A big number: the word before it, the number, its unit, its band below.
///
/// The answer's first one is the glance: it stays in sight over the pad.
pub fn big(word: &str, value: String, unit: &str, below: String) -> AnyView {
    view! {
        <div class="big">
            <span class="big-word">{word.to_owned()}</span>
            <span class="big-line">
                <span class="big-value">{value}</span>
                <span class="big-unit">{format!(" {unit}")}</span>
            </span>
            <span class="big-band">{below}</span>
        </div>
    }
    .into_any()
}

/// The one number of a step.
pub fn one_number(number: &OneNumber, units: UnitSystem) -> AnyView {
    let unit = number.measure.unit(units);
    let bare = |si: f64| show::bare_number(si, unit);
    let band = match number.band() {
        Some([low, high]) => t::between(&bare(low), &bare(high)),
        None => String::new(),
    };
    let (shown, symbol) = match number.figure {
        // A time to wait reads as on a clock.
        Figure::Quiet => (show::clock(number.si), t::MINUTES.get()),
        figure => (
            bare(number.size()),
            t::figure_unit(figure, units).unwrap_or(unit.symbol()),
        ),
    };
    big(
        t::figure(number.figure, number.sense(units)),
        shown,
        symbol,
        band,
    )
}

//! The wall view: this step and hole, the place that waits, the reading that came
//! last and the verdict, in digits for a tablet that hangs four metres away. The field
//! that waits keeps the focus under it, so that a gauge goes on typing.

use crate::feedback;
use crate::live::live;
use crate::parts::caught::gauge_line;
use crate::show;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Measure, Place, Signal};
use coldseat_markup::view;
use leptos::prelude::*;

/// The button that opens it, on the screen of a step.
pub fn wall_button(state: State) -> AnyView {
    live(move || {
        state.gauge.step.get().map(|_| {
            view! {
                <button type="button" class="button-small" on:click=move |_| state.open_wall()>
                    {t::WALL}
                </button>
            }
            .into_any()
        })
    })
}

/// The view, where it is open and a step is.
pub fn wall(state: State) -> AnyView {
    live(move || {
        let open = state.gauge.wall.get();
        state
            .gauge
            .step
            .get()
            .filter(|_| open)
            .map(|_| shown(state))
    })
}

fn shown(state: State) -> AnyView {
    let place = move || state.waiting_place();
    let step = move || {
        let (owner, step) = state.gauge.step.get()?;
        Some(t::wall_where(owner, step))
    };
    let waits = move || place().map(|at| t::place_title(at.1));
    // What stands where the hand is, else what came last.
    let number = move || {
        let here = place().map(|at| state.session.text(at.0, at.1));
        let here = here.filter(|text| !text.is_empty());
        // Of this step: what came to another says nothing here.
        let of_step = |place: &Place| {
            let step = state.gauge.step.get().map(|(_, step)| step.spec());
            step.is_some_and(|spec| spec.fields.contains(&place.field))
        };
        let last = state.gauge.last.get().filter(|(place, _)| of_step(place));
        let (words, text) = match (here, last) {
            (Some(text), _) => (String::new(), text),
            (None, Some((place, text))) => (t::wall_came(place), text),
            (None, None) => (String::new(), "\u{2013}".to_owned()),
        };
        view! {
            <p class="wall-number">{text}</p>
            <p class="wall-came">{words}</p>
        }
        .into_any()
    };
    let verdict = move || {
        // Before what is worked out from them (live.rs).
        state.session.reports.with(|_| ());
        let (owner, step) = state.gauge.step.get()?;
        let report = state.session.step_report(owner, step)?;
        let units = state.session.units(Target::Job);
        let number = report.number.as_ref().map(|one| {
            let size = match one.measure {
                Measure::Length => show::length(one.size(), units),
                measure => show::number(one.size(), measure.unit(units)),
            };
            format!("{} {size}", t::figure(one.figure, one.sense(units)))
        });
        // Numbers follow every key; the word waits for the reading.
        let signal = if state.session.half_typed.get() {
            Signal::None
        } else {
            report.signal
        };
        let class = match signal {
            Signal::Go => "wall-verdict verdict-go",
            Signal::Look => "wall-verdict verdict-look",
            Signal::Wait => "wall-verdict verdict-wait",
            Signal::Stop => "wall-verdict verdict-stop",
            Signal::None | Signal::Marked => "wall-verdict",
        };
        Some(
            view! {
                <p class=class>
                    <strong>{t::signal(signal)}</strong>
                    " "
                    {number}
                </p>
            }
            .into_any(),
        )
    };
    view! {
        <section class="wall" aria-label=t::WALL.get()>
            <div class="wall-head">
                <p class="wall-where">{live(step)}</p>
                <button type="button" on:click=move |_| state.gauge.wall.set(false)>
                    {t::WALL_CLOSE}
                </button>
            </div>
            <p class="wall-waits">{live(waits)}</p>
            {live(number)}
            {live(verdict)}
            {gauge_line(state)}
        </section>
    }
    .into_any()
}

/// The screen stays on while the view is open.
pub fn stays_on(state: State) {
    if state.gauge.wall.get_untracked() {
        feedback::stay_awake();
    }
}

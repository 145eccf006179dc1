//! The line that says what a gauge sent and where it stands not: what is offered to
//! a place, what was refused. It stays until the person has said what becomes of it.

use crate::gauge::Caught;
use crate::live::live;
use crate::state::State;
use crate::texts as t;
use coldseat_markup::view;
use leptos::prelude::*;

/// The line, where anything waits.
pub fn gauge_line(state: State) -> AnyView {
    live(move || {
        let all = state.gauge.caught.get();
        match all.first() {
            Some(first) => Some(offered(state, first, all.len() - 1)),
            None if state.gauge.no_voice.get() && !state.gauge.no_voice_read.get() => {
                Some(no_voice(state))
            }
            None => state.gauge.refused.get().map(|refused| {
                let words = t::refused(&refused);
                let drop = move || state.gauge.refused.set(None);
                told(
                    state,
                    "gauge-line gauge-bad",
                    "alert",
                    words,
                    t::DROP_IT.get(),
                    drop,
                )
            }),
        }
    })
}

/// There is no voice: said once.
fn no_voice(state: State) -> AnyView {
    let read = move || state.gauge.no_voice_read.set(true);
    let words = t::NO_VOICE.get().to_owned();
    told(
        state,
        "gauge-line",
        "status",
        words,
        t::UNDERSTOOD.get(),
        read,
    )
}

/// A line that says one thing and has one way on; the hand stays where it was.
fn told(
    state: State,
    class: &'static str,
    role: &'static str,
    words: String,
    button: &'static str,
    act: impl Fn() + 'static,
) -> AnyView {
    view! {
        <section class=class aria-label=t::GAUGE_LINE.get()>
            <p role=role>{words}</p>
            <div class="row">
                <button
                    type="button"
                    on:click=move |_| {
                        act();
                        state.hand_stays();
                    }
                >
                    {button}
                </button>
            </div>
        </section>
    }
    .into_any()
}

fn offered(state: State, caught: &Caught, behind: usize) -> AnyView {
    // Where it began is where it belongs, if a field had the hand then.
    let at = caught.began.or_else(|| state.waiting_place());
    let put = at.map(|at| {
        view! {
            <button type="button" class="button-first" on:click=move |_| state.put_caught(at)>
                {t::put_it_in(at.1)}
            </button>
        }
        .into_any()
    });
    let none = at.is_none().then_some(t::NO_PLACE);
    view! {
        <section class="gauge-line" aria-label=t::GAUGE_LINE.get()>
            <p role="alert">{t::caught(caught, behind)} " " {none}</p>
            <div class="row">
                {put}
                <button
                    type="button"
                    on:click=move |_| {
                        state.take_caught();
                        state.hand_stays();
                    }
                >
                    {t::DROP_IT}
                </button>
            </div>
        </section>
    }
    .into_any()
}

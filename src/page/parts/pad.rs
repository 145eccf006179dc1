//! The big number pad. It types into the reading under the hand and leaves the
//! focus there, so that keyboard, gauge and pad can be used in turns.

use crate::browser;
use crate::live::live;
use crate::parts::caught::gauge_line;
use crate::parts::keys::{Counting, Key, Typing, press};
use crate::parts::reading::input_id;
use crate::show::{fixed, signed};
use crate::state::{State, Target};
use crate::texts as t;
use crate::words;
use coldseat_core::ask::format::{decimals, last_digit};
use coldseat_core::ask::{Measure, Place, parse};
use coldseat_markup::view;
use leptos::prelude::*;

/// The pad, where a reading is under the hand.
#[component]
pub fn Pad() -> impl IntoView {
    let state = State::here();
    live(move || {
        state
            .ui
            .active
            .get()
            .filter(|_| state.ui.pad_on.get())
            .map_or_else(
                || gauge_line(state),
                |(target, place)| keys_for(state, target, place).into_any(),
            )
    })
}

fn keys_for(state: State, target: Target, place: Place) -> impl IntoView {
    let unit = place.field.unit(untrack(|| state.session.units(target)));
    let is_length = place.field.spec().measure == Measure::Length;
    // What its last digits may be typed over.
    let before = StoredValue::new(untrack(|| state.session.reading_before(target, place)));
    let counting = move || state.counts(target, place);
    let fresh = move || Typing {
        after: match untrack(counting) {
            Counting::Last => before.get_value().unwrap_or_default(),
            Counting::FromRight | Counting::AsTyped => String::new(),
        },
        ..Typing::default()
    };
    let typing = state.ui.typing;
    typing.set(fresh());
    let tap = move |key: Key| {
        let text = untrack(|| state.session.text(target, place));
        let counting = untrack(counting);
        let mut now = typing.get_untracked();
        let typed = press(&text, key, &mut now, counting, unit);
        let typed = match key {
            // No digit stands behind it yet.
            Key::Point if !text.contains('.') => typed.replace('.', words::mark()),
            // Behind a point that was typed on the keys.
            _ if text.contains('.') && (typed.starts_with(&text) || text.starts_with(&typed)) => {
                typed
            }
            _ => words::marked(typed),
        };
        typing.set(now);
        state.type_text(target, place, &typed);
    };
    let hold = |event: web_sys::PointerEvent| event.prevent_default();
    let key = move |key: Key, class: &'static str, face: String, name: String| {
        view! {
            <button
                type="button"
                class=class
                aria-label=name
                on:pointerdown=hold
                on:click=move |_| tap(key)
            >
                {face}
            </button>
        }
        .into_any()
    };
    let digit = move |d: u8| key(Key::Digit(d), "key", d.to_string(), d.to_string());
    let step = fixed(last_digit(unit), decimals(unit));
    let was = state.ui.was.get_untracked();
    let stood = was.clone().and_then(|text| parse(&text, unit).ok());
    let change = move || {
        let now = parse(&state.session.text(target, place), unit).ok()?;
        let stood = stood.as_ref()?;
        let difference = signed(now.si - stood.si, unit);
        Some(format!("{} {difference}", t::PAD_CHANGE))
    };
    let proud = place.field.stands_proud();
    let sign_face = move || {
        if !proud {
            return "+/\u{2212}";
        }
        if state
            .session
            .text(target, place)
            .starts_with(['-', '\u{2212}'])
        {
            t::LOW.get()
        } else {
            t::PROUD.get()
        }
    };
    let sign_key = place.field.is_signed().then(|| {
        view! {
            <button
                type="button"
                class="key key-word"
                aria-label=if proud { format!("{} / {}", t::PROUD, t::LOW) } else { t::PAD_SIGN.get().to_owned() }
                on:pointerdown=hold
                on:click=move |_| tap(Key::Sign)
            >
                {live(sign_face)}
            </button>
        }
    });
    // From the right, the last digits where a reading stands before, as typed.
    let turn = move |_| {
        let next = match untrack(counting) {
            Counting::FromRight if before.with_value(Option::is_some) => Counting::Last,
            Counting::FromRight | Counting::Last => Counting::AsTyped,
            Counting::AsTyped => Counting::FromRight,
        };
        state.ui.counting.set(next);
        typing.set(fresh());
    };
    let sample = move || {
        let counting = counting();
        let mut typing = untrack(fresh);
        let mut text = String::new();
        for d in [4, 3] {
            text = press(&text, Key::Digit(d), &mut typing, counting, unit);
        }
        format!("43 = {}", words::marked(text))
    };
    let count_key = is_length.then(|| {
        view! {
            <button
                type="button"
                class="pad-tool pad-count"
                on:pointerdown=hold
                on:click=turn
            >
                {live(move || t::pad_count(counting()))}
                <span class="pad-sample">{live(sample)}</span>
            </button>
        }
    });
    let say = move || {
        state.gauge.speech.get().map(|_| {
            view! {
                <button
                    type="button"
                    class="pad-tool"
                    on:pointerdown=hold
                    on:click=move |_| state.say_it()
                >
                    {t::SAY_IT}
                </button>
            }
            .into_any()
        })
    };
    view! {
        <section class="pad" aria-label=t::PAD.get()>
            {gauge_line(state)}
            <div class="pad-head">
                <p class="pad-title">{t::pad_title(place)}</p>
                <p class="pad-value">
                    {move || {
                        let text = state.session.text(target, place);
                        if text.is_empty() { "\u{2013}".to_owned() } else { text }
                    }}
                    <span class="pad-unit">{format!(" {}", unit.symbol())}</span>
                </p>
                <p class="pad-was">
                    {was.map(|text| format!("{} {text} ", t::PAD_WAS))} {change} " "
                    <span class="pad-kept">{live(move || t::keeping(state.storage.keeping.get()))}</span>
                </p>
            </div>
            <div class="pad-tools">
                {count_key} {live(say)}
                <button
                    type="button"
                    class="pad-tool"
                    on:pointerdown=hold
                    on:click=move |_| {
                        typing.set(fresh());
                        if let Some(place) = state.session.undo(target) {
                            browser::focus(&input_id(place));
                        }
                    }
                >
                    {t::PAD_UNDO}
                </button>
                <button type="button" class="pad-tool" on:click=move |_| state.close_pad()>
                    {t::PAD_DONE}
                </button>
            </div>
            <div class="pad-keys">
                {digit(7)} {digit(8)} {digit(9)}
                {key(Key::Delete, "key key-word", t::PAD_DELETE.get().to_owned(), t::PAD_DELETE.get().to_owned())}
                {digit(4)} {digit(5)} {digit(6)}
                {key(Key::Up, "key key-step", format!("+{step}"), format!("{} {step}", t::PAD_PLUS))}
                {digit(1)} {digit(2)} {digit(3)}
                {key(
                    Key::Down,
                    "key key-step",
                    format!("\u{2212}{step}"),
                    format!("{} {step}", t::PAD_MINUS),
                )} {sign_key} {digit(0)}
                {key(Key::Point, "key", words::mark().to_owned(), t::pad_point().to_owned())}
                <button
                    type="button"
                    class=if place.field.is_signed() {
                        "key key-word key-next"
                    } else {
                        "key key-word key-next key-wide"
                    }
                    on:pointerdown=hold
                    on:click=move |_| {
                        state.goes_on(target, place);
                    }
                >
                    {t::PAD_NEXT}
                </button>
            </div>
        </section>
    }.into_any()
}

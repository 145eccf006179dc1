//! What is set of a gauge that types: the order of the hand, the keys of a
//! foot-switch.

use crate::live::live;
use crate::parts::choice::Choice;
use crate::state::State;
use crate::texts as t;
use crate::words::Word;
use coldseat_core::ask::HandOrder;
use coldseat_core::ask::document::{Shop, Speech};
use coldseat_markup::view;
use leptos::prelude::*;

/// The settings.
pub fn gauge_settings(state: State) -> AnyView {
    let id = |order: Option<HandOrder>| order.map_or("", HandOrder::id).to_owned();
    let orders = [None].into_iter().chain(HandOrder::ALL.map(Some));
    let options = orders
        .map(|order| (id(order), t::hand(order).to_owned()))
        .collect();
    let set = Callback::new(move |id: String| {
        let order = HandOrder::from_id(&id);
        state.gauge.hand.set(order);
        state.session.edit_shop(|shop| shop.hand = order);
    });
    view! {
        <section aria-labelledby="gauge-heading">
            <h2 id="gauge-heading">{t::GAUGE_IN_USE}</h2>
            <div class="form">
                <Choice
                    id="shop-hand"
                    label=t::HAND.get()
                    options=options
                    value=Signal::derive(move || id(state.gauge.hand.get()))
                    change=set
                />
                <p class="quiet">{t::HAND_WHAT}</p>
                {speech(state)}
                {key_taught(state, &SKIP)}
                {key_taught(state, &BACK)}
            </div>
        </section>
    }
    .into_any()
}

/// Whether the page speaks.
fn speech(state: State) -> AnyView {
    let id = |speech: Option<Speech>| speech.map_or("", Speech::id).to_owned();
    let off = (String::new(), t::SPEECH_OFF.get().to_owned());
    let on = Speech::ALL.map(|speech| {
        let words = t::speech(speech == Speech::Always);
        (speech.id().to_owned(), words.to_owned())
    });
    let set = Callback::new(move |id: String| {
        let speech = Speech::from_id(&id);
        state.gauge.set_speech(speech);
        state.session.edit_shop(|shop| shop.speech = speech);
    });
    view! {
        <Choice
            id="shop-speech"
            label=t::SPEECH.get()
            options=[off].into_iter().chain(on).collect()
            value=Signal::derive(move || id(state.gauge.speech.get()))
            change=set
        />
        <p class="quiet">{t::SPEECH_WHAT}</p>
    }
    .into_any()
}

/// A key of the foot-switch.
struct Taught {
    name: Word,
    usual: Word,
    of: fn(&Shop) -> &Option<String>,
    set: fn(&mut Shop, Option<String>),
}

const SKIP: Taught = Taught {
    name: t::SKIP_KEY,
    usual: t::PAGE_DOWN,
    of: |shop| &shop.skip_key,
    set: |shop, key| shop.skip_key = key,
};
const BACK: Taught = Taught {
    name: t::BACK_KEY,
    usual: t::PAGE_UP,
    of: |shop| &shop.back_key,
    set: |shop, key| shop.back_key = key,
};

/// Keys that cannot be taught: they move the focus, end a reading, leave a field.
const NOT_TAUGHT: [&str; 8] = [
    "Tab", "Enter", "Escape", "Shift", "Control", "Alt", "Meta", "Dead",
];

fn key_taught(state: State, taught: &'static Taught) -> AnyView {
    let waits = RwSignal::new(false);
    let now = move || {
        let key = state.session.shop.with(|shop| (taught.of)(shop).clone());
        t::key_taught(taught.usual.get(), key.as_deref())
    };
    let words = move || {
        if waits.get() { t::PRESS_KEY } else { t::TEACH }
    };
    let hears = move |event: web_sys::KeyboardEvent| {
        let key = event.key();
        if waits.get_untracked() && !NOT_TAUGHT.contains(&key.as_str()) {
            event.prevent_default();
            waits.set(false);
            // A key of a reading would cut it short.
            let of_number = key.len() == 1 && !key.chars().all(char::is_alphabetic);
            if !of_number {
                state
                    .session
                    .edit_shop(|shop| (taught.set)(shop, Some(key)));
            }
        }
    };
    let forget = move || {
        let is_taught = state.session.shop.with(|shop| (taught.of)(shop).is_some());
        is_taught.then(|| {
            view! {
                <button
                    type="button"
                    aria-label=format!("{}: {}", taught.name, t::FORGET_KEY)
                    on:click=move |_| state.session.edit_shop(|shop| (taught.set)(shop, None))
                >
                    {t::FORGET_KEY}
                </button>
            }
            .into_any()
        })
    };
    view! {
        <div class="field">
            <p>
                {taught.name} ": " <strong>{live(now)}</strong>
            </p>
            <div class="row">
                <button
                    type="button"
                    aria-label=format!("{}: {}", taught.name, t::TEACH)
                    on:click=move |_| waits.set(true)
                    on:blur=move |_| waits.set(false)
                    on:keydown=hears
                >
                    {live(words)}
                </button>
                {live(forget)}
            </div>
        </div>
    }
    .into_any()
}

//! A choice out of a list, as a plain select: the system's own wheel is the
//! quickest on a phone.

use crate::live::{live, words};
use crate::state::State;
use crate::texts as t;
use crate::tongue::Tongue;
use crate::words::{Language, Word};
use coldseat_core::ask::{CYLINDERS_MOST, Family, Layout};
use coldseat_markup::view;
use leptos::prelude::*;

/// One of several.
#[component]
pub fn Choice(
    /// Id of the control.
    id: &'static str,
    /// Its label.
    label: &'static str,
    /// Values and their words.
    options: Vec<(String, String)>,
    /// The value chosen.
    value: Signal<String>,
    /// Called with a new value.
    change: Callback<String>,
    /// Whether it may only be read.
    #[prop(optional, into)]
    locked: Signal<bool>,
) -> impl IntoView {
    let items = options
        .into_iter()
        .map(|(key, words)| option(key, words, value))
        .collect();
    select(id, label, items, change, locked)
}

/// One of the materials, grouped by their families.
#[component]
pub fn MaterialChoice(
    /// Id of the control.
    id: &'static str,
    /// Its label.
    label: &'static str,
    /// The id of the material chosen.
    value: Signal<String>,
    /// Called with a new one.
    change: Callback<String>,
    /// Whether it may only be read.
    #[prop(optional, into)]
    locked: Signal<bool>,
) -> impl IntoView {
    let groups = Family::ALL
        .into_iter()
        .map(|family| {
            let items: Vec<AnyView> = family
                .materials()
                .map(|m| option(m.id().to_owned(), t::material_name(m).to_owned(), value))
                .collect();
            view! { <optgroup label=t::family(family)>{items}</optgroup> }.into_any()
        })
        .collect();
    select(id, label, groups, change, locked)
}

fn option(key: String, words: String, value: Signal<String>) -> AnyView {
    let own = key.clone();
    view! {
        <option value=key prop:selected=move || value.get() == own>
            {words}
        </option>
    }
    .into_any()
}

fn select(
    id: &'static str,
    label: &'static str,
    items: Vec<AnyView>,
    change: Callback<String>,
    locked: Signal<bool>,
) -> AnyView {
    view! {
        <div class="choice">
            <label for=id>{label}</label>
            <select
                id=id
                disabled=move || locked.get()
                on:change=move |event| change.run(event_target_value(&event))
            >
                {items}
            </select>
        </div>
    }
    .into_any()
}

/// A line of free text.
#[component]
pub fn Line(
    /// Id of the control.
    id: &'static str,
    /// Its label.
    label: &'static str,
    /// The text.
    value: Signal<String>,
    /// Called with a new text.
    change: Callback<String>,
    /// Whether it may only be read.
    #[prop(optional, into)]
    locked: Signal<bool>,
    /// Characters at most.
    #[prop(default = 200)]
    most: u32,
) -> impl IntoView {
    view! {
        <div class="choice">
            <label for=id>{label}</label>
            <input
                id=id
                type="text"
                autocomplete="off"
                maxlength=most.to_string()
                readonly=move || locked.get()
                prop:value=words(move || value.get())
                on:input=move |event| change.run(event_target_value(&event))
            />
        </div>
    }
    .into_any()
}

/// Counts of cylinders, as options.
#[must_use]
pub fn counts() -> Vec<(String, String)> {
    (1..=CYLINDERS_MOST)
        .map(|n| (n.to_string(), n.to_string()))
        .collect()
}

/// A choice of the language, and below it that its words are not here.
pub fn language_choice(
    state: State,
    id: &'static str,
    label: Word,
    speak: fn(Tongue, Language),
) -> AnyView {
    let options = Language::ALL
        .map(|language| (language.tag().to_owned(), language.own_name().to_owned()))
        .to_vec();
    let change = Callback::new(move |tag: String| {
        if let Some(language) = Language::from_tag(&tag) {
            state.close_pad();
            speak(state.tongue, language);
        }
    });
    let missing = move || {
        let is_missing = state.tongue.missing.get();
        is_missing.then(|| view! { <p class="fault" role="alert">{t::NO_LANGUAGE}</p> }.into_any())
    };
    view! {
        <Choice
            id=id
            label=label.get()
            options=options
            value=Signal::derive(move || state.tongue.shown.get().tag().to_owned())
            change=change
        />
        {live(missing)}
    }
    .into_any()
}

/// How cylinders stand, as options.
#[must_use]
pub fn layouts() -> Vec<(String, String)> {
    Layout::ALL
        .map(|l| (l.id().to_owned(), t::layout(l).to_owned()))
        .to_vec()
}

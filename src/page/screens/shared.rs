//! What a link brought: shown before anything is stored.

use crate::parts::answer::pairs;
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::document::Shared;
use coldseat_core::ask::format::typed;
use coldseat_core::ask::{Engine, Entries, Field, Owner};
use coldseat_markup::view;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn SharedScreen() -> impl IntoView {
    let state = State::here();
    let body = match state.ui.shared.get_untracked() {
        None => view! { <p>{t::LINK_TAKEN}</p> }.into_any(),
        Some(Err(fault)) => view! {
            <p class="fault">{t::link_fault(&fault)}</p>
            <p>{t::LINK_ASK_AGAIN}</p>
        }
        .into_any(),
        Some(Ok(shared)) => {
            let take = match &shared {
                Shared::Profile(..) => t::TAKE_PROFILE,
                Shared::Drop(_) => t::TAKE_DROP,
                Shared::Floor(_) => t::TAKE_FLOOR,
            };
            let as_sheet = matches!(shared, Shared::Profile(..)).then(|| {
                view! {
                    <button type="button" on:click=move |_| state.take_shared(true)>
                        {t::KEEP_AS_SHEET}
                    </button>
                }
            });
            view! {
                <p>{t::LINK_PREVIEW}</p>
                <div class="row">
                    <button
                        type="button"
                        class="button-first"
                        on:click=move |_| state.take_shared(false)
                    >
                        {take}
                    </button>
                    {as_sheet}
                    <a class="button" href="#/">
                        {t::NOT_NOW}
                    </a>
                </div>
                {contents(&shared)}
            }
            .into_any()
        }
    };
    view! {
        <h1 id="screen-heading" tabindex="-1">
            {t::BY_LINK}
        </h1>
        {body}
    }
    .into_any()
}

fn contents(shared: &Shared) -> AnyView {
    match shared {
        Shared::Profile(engine, entries) => view! {
            {engine_lines(engine)} {numbers(entries, Owner::Block)}
        }
        .into_any(),
        Shared::Drop(sheet) => view! {
            {pairs(vec![
                line(t::SLEEVE_MATERIAL.get(), t::material_name(sheet.sleeve_material)),
                line(t::BLOCK_MATERIAL.get(), t::material_name(sheet.block_material)),
            ])}
            {numbers(&sheet.entries, Owner::Block)}
        }
        .into_any(),
        Shared::Floor(job) => {
            let sleeves: Vec<AnyView> = job
                .cylinders()
                .map(|cylinder| {
                    let owner = Owner::Cylinder(cylinder);
                    view! {
                        <h3>{format!("{} {cylinder}", t::CYLINDER)}</h3>
                        {numbers(&job.entries, owner)}
                    }
                    .into_any()
                })
                .collect();
            view! {
                <h2>{job.name.clone()}</h2>
                {engine_lines(&job.engine)}
                {sleeves}
                <h3>{t::ENGINE}</h3>
                {numbers(&job.entries, Owner::Block)}
            }
            .into_any()
        }
    }
}

fn engine_lines(engine: &Engine) -> AnyView {
    pairs(vec![
        line(t::ENGINE_NAME.get(), &engine.name),
        line(t::CYLINDERS.get(), &engine.cylinders.to_string()),
        line(t::LAYOUT.get(), t::layout(engine.layout)),
        line(
            t::SLEEVE_MATERIAL.get(),
            t::material_name(engine.sleeve_material),
        ),
        line(
            t::BLOCK_MATERIAL.get(),
            t::material_name(engine.block_material),
        ),
    ])
}

fn line(name: &str, value: &str) -> (String, String) {
    (name.to_owned(), value.to_owned())
}

/// Numbers of an owner as they were typed; a field with several places in one
/// line.
fn numbers(entries: &Entries, owner: Owner) -> AnyView {
    let mut lines: Vec<(Field, String)> = Vec::new();
    for (place, entry) in entries.iter().filter(|(place, _)| place.owner == owner) {
        let typed = match place
            .field
            .choices()
            .iter()
            .position(|id| *id == entry.text)
        {
            Some(at) => t::choice(place.field, u8::try_from(at).unwrap_or_default()).to_owned(),
            None => typed(&entry.text, entry.unit),
        };
        match lines.last_mut().filter(|(field, _)| *field == place.field) {
            Some((_, text)) => {
                text.push_str("; ");
                text.push_str(&typed);
            }
            None => lines.push((place.field, typed)),
        }
    }
    let lines = lines.iter();
    pairs(
        lines
            .map(|(field, text)| line(t::field(*field), text))
            .collect(),
    )
}

//! Numbers of the engine that something waits for, asked for where they are wanted.

use crate::memo::Memo;
use crate::parts::reading::{Label, Reading};
use crate::state::Target;
use coldseat_core::ask::{Field, Place};
use coldseat_markup::view;
use leptos::prelude::*;

/// What is wanted now and what was wanted before: a field never vanishes under the hand.
pub fn wanted_so_far(now: impl Fn() -> Vec<Field> + Send + Sync + 'static) -> Memo<Vec<Field>> {
    Memo::new(move |before: Option<&Vec<Field>>| {
        let mut wants = before.cloned().unwrap_or_default();
        for field in now() {
            if !wants.contains(&field) {
                wants.push(field);
            }
        }
        wants
    })
}

/// Their fields, side by side; nothing where none is wanted.
pub fn engine_fields(wants: &[Field]) -> Option<AnyView> {
    let fields: Vec<AnyView> = wants
        .iter()
        .map(|field| {
            let place = Place::of_engine(*field);
            view! { <Reading target=Target::Job place=place label=Label::Full /> }.into_any()
        })
        .collect();
    (!fields.is_empty())
        .then(|| view! { <div class="readings readings-two">{fields}</div> }.into_any())
}

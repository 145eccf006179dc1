//! What is measured from the deck, on the engine's sheet: each size before the cut
//! with its range, how much the block may lose, how rough its deck may be.

use crate::live::live;
use crate::parts::reading::{Label, Reading};
use crate::parts::step::one_of;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Field, FromDeck, Owner, Place};
use coldseat_markup::view;
use leptos::prelude::*;

/// A size and its range.
const OF_SIZE: [Field; 3] = [
    Field::FromDeckBefore,
    Field::FromDeckLeast,
    Field::FromDeckMost,
];

/// What is there once.
const ONCE: [Field; 4] = [
    Field::BlockCutSoFar,
    Field::BlockCutMost,
    Field::DeckFinishMost,
    Field::DeckFinishKind,
];

/// A place of a size on the engine's sheet.
const fn of_size(field: Field, index: u8) -> Place {
    Place {
        index,
        ..Place::of_engine(field)
    }
}

/// The group.
pub fn from_deck(state: State) -> AnyView {
    let reading = |place: Place, label: Label| {
        view! { <Reading target=Target::Job place=place label=label /> }.into_any()
    };
    let sizes: Vec<AnyView> = FromDeck::ALL
        .into_iter()
        .zip(0_u8..)
        .map(|(item, index)| {
            let fields: Vec<AnyView> = OF_SIZE
                .into_iter()
                .filter(|field| *field != Field::FromDeckMost || item.has_most())
                .map(|field| reading(of_size(field, index), Label::FieldOnly))
                .collect();
            view! {
                <fieldset class="group">
                    <legend>{t::capital(t::deck_size(item))}</legend>
                    <div class="readings readings-two">{fields}</div>
                </fieldset>
            }
            .into_any()
        })
        .collect();
    let [so_far, most, finish, kind] = ONCE;
    let entered = move || {
        let (mut there, mut all) = (0, ONCE.len());
        state.session.open.with(|open| {
            let is_there = |place| {
                open.as_ref()
                    .is_some_and(|open| open.job.entries.get(place).is_some())
            };
            there += ONCE
                .into_iter()
                .filter(|field| is_there(Place::of_engine(*field)))
                .count();
            for (item, index) in FromDeck::ALL.into_iter().zip(0_u8..) {
                for field in OF_SIZE {
                    if field != Field::FromDeckMost || item.has_most() {
                        all += 1;
                        there += usize::from(is_there(of_size(field, index)));
                    }
                }
            }
        });
        t::entered(there, all)
    };
    view! {
        <details class="help group-fold">
            <summary>{t::FROM_DECK_GROUP} <span class="fold-count">{live(entered)}</span></summary>
            <p class="quiet">{t::FROM_DECK_WHAT}</p>
            {sizes}
            <div class="readings readings-two">
                {[so_far, most, finish]
                    .map(|field| reading(Place::of_engine(field), Label::Full))
                    .into_iter()
                    .collect_view()}
            </div>
            {one_of(kind, Owner::Block)}
        </details>
    }
    .into_any()
}

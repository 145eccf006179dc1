//! The shims at hand: a size and how many are left of it, row by row, as many rows as
//! are used and one more. In the shop's settings, and in a job its own copy.

use crate::browser;
use crate::memo::Memo;
use crate::parts::reading::{Label, Reading};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Entry, Field, Owner, Place, SHIMS_MOST};
use coldseat_markup::view;
use leptos::prelude::*;

/// What a row has.
const ROW: [Field; 2] = [Field::ShimSizes, Field::ShimsLeft];

/// A place of a row.
const fn at(field: Field, index: u8) -> Place {
    Place {
        index,
        ..Place::of_engine(field)
    }
}

/// The list, behind a line of its own.
pub fn shims(state: State, target: Target) -> AnyView {
    let used = Memo::new(move |before: Option<&u8>| {
        let there = |index: &u8| {
            ROW.iter().any(|field| {
                !state
                    .session
                    .text(target, at(*field, *index))
                    .trim()
                    .is_empty()
            })
        };
        let used = (0..SHIMS_MOST).rev().find(there);
        let rows = used.map_or(0, |index| index + 1);
        // Rows never vanish under the hand.
        rows.max(before.copied().unwrap_or(0))
    });
    let visible = move || (0..SHIMS_MOST.min(used.get() + 1)).collect::<Vec<u8>>();
    let row = move |index: u8| {
        let readings: Vec<AnyView> = ROW
            .into_iter()
            .map(|field| {
                view! { <Reading target=target place=at(field, index) label=Label::Full /> }
                    .into_any()
            })
            .collect();
        view! { <div class="readings readings-two">{readings}</div> }.into_any()
    };
    view! {
        <details class="help group-fold">
            <summary>{t::SHIMS_AT_HAND}</summary>
            <p class="quiet">{t::SHIMS_WHAT}</p>
            <For each=visible key=|index| *index children=row />
            {(target == Target::Job).then(|| from_shop(state))}
        </details>
    }
    .into_any()
}

/// Takes the shop's list over into the job.
fn from_shop(state: State) -> AnyView {
    let take = move |_| {
        let places = || {
            ROW.into_iter()
                .flat_map(|field| Place::all(Owner::Block, field))
        };
        let listed: Vec<(Place, Option<Entry>)> = state.session.shop.with_untracked(|shop| {
            places()
                .map(|place| (place, shop.entries.get(place).cloned()))
                .collect()
        });
        state.session.edit(|job| {
            for (place, entry) in &listed {
                // Rows that the shop has not got go.
                let none = || Entry::new("", job.unit(place.field), browser::now());
                let entry = entry.clone().unwrap_or_else(none);
                job.entries.put(*place, entry);
            }
        });
    };
    view! {
        <button
            type="button"
            disabled=move || state.session.is_read_only(Target::Job)
            on:click=take
        >
            {t::SHIMS_FROM_SHOP}
        </button>
    }
    .into_any()
}

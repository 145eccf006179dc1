//! Lines of the person's own words that stand among the readings of a job: names,
//! a number of a block, when a gauge was checked.

use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::reading::{Label, Reading, input_id};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Checked, Field, GAUGES_CHECKED, Measure, Place};
use coldseat_markup::view;
use leptos::prelude::*;

/// What the record names of the block as a whole.
const FOR_RECORD: [Field; 4] = [
    Field::ShopName,
    Field::Machinist,
    Field::BlockSerial,
    Field::EngineHours,
];

/// Of that, what a shop keeps from job to job.
pub const OF_SHOP: [Field; 2] = [Field::ShopName, Field::Machinist];

/// A line.
fn line(state: State, target: Target, place: Place) -> AnyView {
    let id = input_id(place);
    let note_id = format!("{id}-note");
    let text = Memo::new(move |_| state.session.text(target, place));
    let checked = Memo::new(move |_| state.session.checked(target, place));
    let label = match t::place(place.field, place.index).as_str() {
        "" => t::field(place.field).to_owned(),
        which => format!("{}: {which}", t::field(place.field)),
    };
    let note = move || match checked.get() {
        Checked::Refused(refused) => {
            let units = state.session.units(target);
            let words = t::refusal(&refused.why, place.field, units);
            Some(view! { <p class="fault">{words}</p> }.into_any())
        }
        _ => None,
    };
    view! {
        <div class="choice">
            <label for=id.clone()>{label}</label>
            <input
                id=id
                type="text"
                autocomplete="off"
                maxlength="60"
                aria-describedby=note_id.clone()
                readonly=move || state.session.is_read_only(target)
                prop:value=words(move || text.get())
                on:input=move |event| {
                    state.type_text(target, place, &event_target_value(&event));
                }
                on:change=move |_| state.session.reading_done()
            />
            <div id=note_id aria-live="polite">
                {live(note)}
            </div>
        </div>
    }
    .into_any()
}

/// Lines and numbers, under each other.
pub fn lines(state: State, target: Target, fields: &[Field]) -> AnyView {
    let items: Vec<AnyView> = fields
        .iter()
        .map(|field| {
            let place = Place::of_engine(*field);
            if field.spec().measure == Measure::Words {
                line(state, target, place)
            } else {
                view! { <Reading target=target place=place label=Label::Full /> }.into_any()
            }
        })
        .collect();
    view! { <div class="form">{items}</div> }.into_any()
}

/// What the record names of the block as a whole.
pub fn record_words(state: State) -> AnyView {
    let begun = untrack(|| {
        FOR_RECORD.iter().any(|field| {
            !state
                .session
                .text(Target::Job, Place::of_engine(*field))
                .is_empty()
        })
    });
    view! {
        <details class="help screen-only" open=!begun>
            <summary>{t::RECORD_WORDS}</summary>
            {lines(state, Target::Job, &FOR_RECORD)}
        </details>
    }
    .into_any()
}

/// When each gauge was last checked.
pub fn gauges_checked(state: State, target: Target) -> AnyView {
    let items: Vec<AnyView> = (0..GAUGES_CHECKED.len() as u8)
        .map(|index| {
            let place = Place {
                index,
                ..Place::of_engine(Field::GaugeChecked)
            };
            line(state, target, place)
        })
        .collect();
    view! {
        <details class="help group-fold">
            <summary>{t::GAUGES_CHECKED_GROUP}</summary>
            <p class="quiet">{t::GAUGES_CHECKED_WHAT}</p>
            <div class="form">{items}</div>
        </details>
    }
    .into_any()
}

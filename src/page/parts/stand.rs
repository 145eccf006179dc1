//! The choice of how a job's sleeves stand and how they end, on the engine's screen;
//! and the limits of those that are left proud.

use crate::live::live;
use crate::memo::Memo;
use crate::parts::choice::Choice;
use crate::parts::reading::{Label, Reading};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Field, Place, SleeveEnds, SleeveKind};
use coldseat_markup::view;
use leptos::prelude::*;

/// Limits of sleeves that are left proud, the torque they are read at, what may be cut.
const PROUD: [Field; 8] = [
    Field::ProudLow,
    Field::ProudHigh,
    Field::SpreadHole,
    Field::SpreadNeighbour,
    Field::SpreadAll,
    Field::HeldTorque,
    Field::LedgeCutMost,
    Field::LedgeCutStep,
];

/// One of a few words of the engine; what a person did not type stands as what it
/// counts as.
fn choice(
    state: State,
    id: &'static str,
    field: Field,
    usual: &'static str,
    locked: Signal<bool>,
) -> AnyView {
    let place = Place::of_engine(field);
    let words = field.choices().iter().zip(0_u8..);
    let options =
        words.map(|(word, index)| ((*word).to_owned(), t::choice(field, index).to_owned()));
    let value = Signal::derive(move || {
        let typed = state.session.text(Target::Job, place);
        match typed.trim() {
            "" => usual.to_owned(),
            typed => typed.to_lowercase(),
        }
    });
    view! {
        <Choice
            id=id
            locked=locked
            label=t::field(field)
            options=options.collect()
            value=value
            change=Callback::new(move |id: String| state.type_text(Target::Job, place, &id))
        />
    }
    .into_any()
}

/// How the sleeves stand and end: it decides which steps and numbers the job has.
pub fn stands(state: State, locked: Signal<bool>) -> AnyView {
    let flanged = SleeveKind::Flanged.id();
    let decked = SleeveEnds::Decked.id();
    // What was read before the choice is judged by what stands here now.
    let judged = move || {
        let kind = state.session.stand().kind;
        let is_read = state.session.open.with(|open| {
            open.as_ref().is_some_and(|open| {
                let seats = [Field::WarmHeight, Field::PullReleased, Field::SeatHeight];
                let mut entries = open.job.entries.iter();
                entries.any(|(place, _)| seats.contains(&place.field))
            })
        });
        is_read.then(|| view! { <p class="quiet">{t::judged_as(kind)}</p> }.into_any())
    };
    let ends = Memo::new(move |_| state.session.stand().ends);
    let limits = move || (ends.get() == SleeveEnds::Proud).then(limits);
    view! {
        <div class="form">
            {choice(state, "job-sleeve-kind", Field::SleeveKind, flanged, locked)}
            {live(judged)}
            {choice(state, "job-sleeve-ends", Field::SleeveEnds, decked, locked)}
        </div>
        {live(limits)}
    }
    .into_any()
}

/// The limits of what is left proud.
fn limits() -> AnyView {
    let items: Vec<AnyView> = PROUD
        .into_iter()
        .map(|field| {
            let place = Place::of_engine(field);
            view! { <Reading target=Target::Job place=place label=Label::Full /> }.into_any()
        })
        .collect();
    view! {
        <fieldset class="group">
            <legend>{t::PROUD_GROUP}</legend>
            <p class="quiet">{t::PROUD_WHAT}</p>
            <div class="readings readings-two">{items}</div>
        </fieldset>
    }
    .into_any()
}

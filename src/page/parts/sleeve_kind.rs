//! The choice of how a job's sleeves stand, on the engine's screen.

use crate::live::live;
use crate::parts::choice::Choice;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Field, Place, SleeveKind};
use coldseat_markup::view;
use leptos::prelude::*;

/// How the sleeves stand: it decides which steps and numbers the job has.
pub fn stands(state: State, locked: Signal<bool>) -> AnyView {
    let place = Place::of_engine(Field::SleeveKind);
    let options = SleeveKind::ALL.iter().map(|kind| {
        let words = t::sleeve_kind(*kind);
        (kind.id().to_owned(), words.to_owned())
    });
    // What a person did not type stands as what it counts as.
    let value = Signal::derive(move || {
        let typed = state.text(Target::Job, place);
        match typed.trim() {
            "" => SleeveKind::Flanged.id().to_owned(),
            typed => typed.to_lowercase(),
        }
    });
    // What was read before the choice is judged by what stands here now.
    let judged = move || {
        let kind = state.sleeve_kind();
        let is_read = state.open.with(|open| {
            open.as_ref().is_some_and(|open| {
                let seats = [Field::WarmHeight, Field::PullReleased, Field::SeatHeight];
                let mut entries = open.job.entries.iter();
                entries.any(|(place, _)| seats.contains(&place.field))
            })
        });
        is_read.then(|| view! { <p class="quiet">{t::judged_as(kind)}</p> }.into_any())
    };
    view! {
        <div class="form">
            <Choice
                id="job-sleeve-kind"
                locked=locked
                label=t::field(Field::SleeveKind)
                options=options.collect()
                value=value
                change=Callback::new(move |id: String| state.type_text(Target::Job, place, &id))
            />
            {live(judged)}
        </div>
    }
    .into_any()
}

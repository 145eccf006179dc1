//! The holes of an engine, to tap those that get sleeves.

use crate::library::OpenJob;
use crate::live::{live, words};
use crate::parts::strip::bore;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::State as Condition;
use coldseat_markup::view;
use leptos::prelude::*;

/// The holes from above: a tap takes one in or leaves it out.
pub fn holes(state: State) -> AnyView {
    let cylinders = state
        .session
        .open
        .with_untracked(|o| o.as_ref().map_or(0, |o| o.job.engine.cylinders));
    let left_out = move |cylinder: u8| {
        let left_out = |o: &OpenJob| o.job.left_out.contains(&cylinder);
        state
            .session
            .open
            .with(|o| o.as_ref().is_some_and(left_out))
    };
    let set_all = move |out: bool| {
        state.session.edit(|job| {
            let all = 1..=job.engine.cylinders;
            job.left_out = if out { all.collect() } else { Vec::new() };
        });
    };
    let locked = move || state.session.is_read_only(Target::Job);
    let rings: Vec<AnyView> = (1..=cylinders)
        .map(|cylinder| {
            let ring = move || {
                let condition = if left_out(cylinder) {
                    Condition::LeftOut
                } else {
                    Condition::NotBegun
                };
                bore(condition)
            };
            view! {
                <button
                    type="button"
                    class="hole-tap"
                    aria-label=t::hole_name(cylinder)
                    aria-pressed=words(move || (!left_out(cylinder)).to_string())
                    disabled=locked
                    on:click=move |_| state.session.edit(|job| job.take_in_or_leave_out(cylinder))
                >
                    <span class="ring-number">{cylinder}</span>
                    {live(ring)}
                </button>
            }
            .into_any()
        })
        .collect();
    view! {
        <fieldset class="group holes">
            <legend>{t::HOLES}</legend>
            <div class="row">{rings}</div>
            <div class="row">
                <button type="button" class="button-small" disabled=locked on:click=move |_| set_all(false)>
                    {t::HOLES_ALL}
                </button>
                <button type="button" class="button-small" disabled=locked on:click=move |_| set_all(true)>
                    {t::HOLES_NONE}
                </button>
            </div>
        </fieldset>
    }
    .into_any()
}

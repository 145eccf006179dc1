//! The sleeve came out again: what was read is written into the record, the
//! steps from cleaning to seat are free for the next try.

use crate::browser;
use crate::parts::reason::Reason;
use crate::screens::{Route, View};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    Job, Owner, STEPS, Signal as Go, StepId, StepSpec, start_again, this_try,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// Whether a sleeve can have come out at this step.
const fn fits(step: StepId) -> bool {
    matches!(
        step,
        StepId::Drop | StepId::Hold | StepId::WarmHeight | StepId::Pull | StepId::Seat
    )
}

/// What the try had come to: the verdict of the last step that has a bad one.
fn verdict(state: State, owner: Owner) -> Option<String> {
    let units = state.session.units(Target::Job);
    STEPS
        .iter()
        .rev()
        .filter(|spec| fits(spec.id))
        .filter_map(|spec| state.session.step_report(owner, spec.id))
        .find(|report| report.begun && matches!(report.signal, Go::Look | Go::Stop))
        .map(|report| t::next(&report.next, units))
}

/// What was read, in one line for the record.
fn account(job: &Job, cylinder: u8, found: &str, verdict: Option<&str>) -> String {
    let read: Vec<String> = this_try(job, cylinder)
        .into_iter()
        .map(|(field, typed)| {
            let values: Vec<String> = typed
                .into_iter()
                .map(|(_, text)| {
                    let at = field.choices().iter().position(|id| *id == text);
                    at.and_then(|at| u8::try_from(at).ok())
                        .map_or(text, |at| t::choice(field, at).to_owned())
                })
                .collect();
            format!("{} {}", t::in_sentence(t::field(field)), values.join(", "))
        })
        .collect();
    t::came_out(
        &browser::date(browser::now()),
        found,
        &read.join("; "),
        verdict,
    )
}

/// The part, where it can be needed.
pub fn came_out(state: State, spec: &'static StepSpec, owner: Owner) -> Option<AnyView> {
    let Owner::Cylinder(cylinder) = owner else {
        return None;
    };
    if !fits(spec.id) {
        return None;
    }
    let found = Reason::new(String::new());
    let begin = move |_| {
        let Some(text) = found.given() else {
            return;
        };
        let verdict = untrack(|| verdict(state, owner));
        state.session.edit(|job| {
            let words = account(job, cylinder, &text, verdict.as_deref());
            start_again(job, cylinder, &words, browser::now());
        });
        if let Route::Job { id, .. } = state.ui.route.get_untracked() {
            let view = View::Cylinder(Some(cylinder), Some(StepId::Clean));
            browser::go(&Route::Job { id, view }.address());
        }
    };
    let locked = move || state.session.is_read_only(Target::Job);
    let id = format!("came-out-{}", spec.name);
    Some(
        view! {
            <details class="help marks">
                <summary>{t::CAME_OUT}</summary>
                <p>{t::CAME_OUT_WHAT}</p>
                {found.line(state, id, t::CAME_OUT_FOUND.get(), t::CAME_OUT_NEEDS.get())}
                <button type="button" disabled=locked on:click=begin>
                    {t::NEXT_TRY}
                </button>
            </details>
        }
        .into_any(),
    )
}

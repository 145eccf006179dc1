//! The steps of the whole job: enquiry, tests, choice of the sleeve, deck
//! heights, room air, report.

use crate::live::{Shown, live};
use crate::memo::Memo;
use crate::parts::bar::job_bar;
use crate::parts::step::StepView;
use crate::screens::steps::{place_of, step_list};
use crate::screens::{Route, View};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{Owner, StepId, Subject, steps_with};
use coldseat_markup::view;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn WholeScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    let step = Memo::new(move |_| {
        let asked = match state.ui.route.get() {
            Route::Job {
                view: View::Whole(step),
                ..
            } => step.filter(|s| {
                s.spec().subject != Subject::Cylinder
                    && !matches!(s, StepId::Deck | StepId::Heights)
            }),
            _ => None,
        };
        asked.unwrap_or_else(|| untrack(|| state.session.block_step()))
    });
    Effect::new(move |before: Option<StepId>| {
        let now = step.get();
        if before.is_some_and(|b| b != now) {
            request_animation_frame(crate::browser::focus_step);
        }
        now
    });
    let stand = Memo::new(move |_| state.session.stand());
    let key = StoredValue::new(id.clone());
    let body = move || {
        let spec = step.get().spec();
        let owners: Vec<Owner> = if spec.subject == Subject::Bank {
            let banks = state
                .session
                .open
                .with_untracked(|o| o.as_ref().map_or(1, |o| o.job.engine.banks()));
            (0..banks).map(Owner::Bank).collect()
        } else {
            vec![Owner::Block]
        };
        let record = (spec.id == StepId::Report).then(|| {
            let address = Route::Job {
                id: key.get_value(),
                view: View::Record,
            }
            .address();
            view! {
                <a class="button button-first" href=address>
                    {t::SEE_RECORD}
                </a>
            }
        });
        let next = steps_with(stand.get())
            .find(|s| s.number > spec.number)
            .map(|next| {
                let (view, _) = place_of(state, None, next);
                let address = Route::Job {
                    id: key.get_value(),
                    view,
                }
                .address();
                view! {
                    <a class="button" data-onward="" href=address>
                        {format!("{}: {}", t::NEXT_STEP, t::step_title(next.id))}
                    </a>
                }
            });
        let several = owners.len() > 1;
        let mut next = Some(record.or(next).shown());
        let last = owners.len() - 1;
        let parts: Vec<AnyView> = owners
            .into_iter()
            .enumerate()
            .map(|(index, owner)| {
                let title = match owner {
                    Owner::Bank(bank) if several => Some(view! {
                        <h3>{format!("{} {}", t::DECK, t::bank(bank))}</h3>
                    }),
                    _ => None,
                };
                let onward = if index == last { next.take() } else { None };
                view! {
                    {title}
                    <StepView
                        spec=spec
                        owner=owner
                        onward=onward.unwrap_or_else(|| ().into_any())
                    />
                }
                .into_any()
            })
            .collect();
        view! {
            {parts}
        }
        .into_any()
    };
    let steps = move || step_list(state, &key.get_value(), None, step.get(), stand.get());
    let shown = Signal::derive(|| None::<u8>);
    let kept = Signal::derive(|| None::<StepId>);
    let heading = view! {
        <h2 id="step-heading" tabindex="-1">
            {live(move || t::step_title(step.get()))}
        </h2>
    }
    .into_any();
    view! {
        {job_bar(state, &id, heading, shown, kept)}
        <div class="work">
            <section class="work-step" aria-labelledby="step-heading">
                {live(body)}
            </section>
            <nav class="steps" aria-label=t::STEPS_OF_JOB.get()>
                {live(steps)}
            </nav>
        </div>
    }
    .into_any()
}

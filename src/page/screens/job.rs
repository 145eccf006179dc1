//! A job: the strip of cylinders, the steps of one of them, one step open.

use crate::browser;
use crate::live::live;
use crate::memo::Memo;
use crate::parts::bar::job_bar;
use crate::parts::step::StepView;
use crate::screens::steps::{place_of, step_list};
use crate::screens::{Route, View};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{Owner, Stand, StepId, StepSpec, Subject, steps_with, to_open};
use coldseat_markup::view;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn JobScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    // Without a cylinder in the address: the first that is not finished.
    let cylinder = Memo::new(move |_| {
        let asked = match state.ui.route.get() {
            Route::Job {
                view: View::Cylinder(Some(c), _),
                ..
            } => Some(c),
            _ => None,
        };
        let count = state
            .session
            .open
            .with(|o| o.as_ref().map_or(1, |o| o.job.engine.cylinders));
        match asked {
            Some(c) if (1..=count).contains(&c) => c,
            _ => state
                .session
                .reports
                .with_untracked(|reports| to_open(reports).unwrap_or(1)),
        }
    });
    let stand = Memo::new(move |_| state.session.stand());
    let step_asked = Memo::new(move |_| match state.ui.route.get() {
        Route::Job {
            view: View::Cylinder(_, step),
            ..
        } => step.filter(|s| s.spec().subject == Subject::Cylinder && stand.get().has_step(*s)),
        _ => None,
    });
    // The open step does not move away by itself while readings come in.
    let step = Memo::new(move |_| {
        let cylinder = cylinder.get();
        step_asked.get().unwrap_or_else(|| {
            state.session.reports.with_untracked(|reports| {
                reports
                    .iter()
                    .find(|r| r.cylinder == cylinder)
                    .map_or(StepId::Sleeve, |r| r.current)
            })
        })
    });
    // Another step: its heading comes into view and takes the focus; after
    // "next" the first reading does, so that typing goes on.
    Effect::new(move |before: Option<(u8, StepId)>| {
        let now = (cylinder.get(), step.get());
        if before.is_some_and(|b| b != now) {
            let goes_on = state.ui.going_on.get_untracked();
            state.ui.going_on.set(false);
            // Where a clock runs the hands are not free for readings.
            if state.hand_goes_to(&state.ui.route.get_untracked()) {
                request_animation_frame(move || {
                    state.hand_arrives();
                });
            } else if goes_on && now.1.spec().timed.is_none() {
                request_animation_frame(browser::focus_first_reading);
            } else {
                request_animation_frame(browser::focus_step);
            }
        }
        now
    });
    let shown = Signal::derive(move || Some(cylinder.get()));
    let kept_step = Signal::derive(move || step_asked.get());
    let key = StoredValue::new(id.clone());
    // The open step stands first: number and verdict without a scroll. The
    // list of steps follows, or stands beside it where there is room.
    let body = move || {
        let stand = stand.get();
        open_step(
            state,
            &key.get_value(),
            cylinder.get(),
            step.get().spec(),
            stand,
        )
    };
    let steps = move || {
        let cylinder = cylinder.get();
        let open = step.get();
        step_list(state, &key.get_value(), Some(cylinder), open, stand.get())
    };
    let leave_out = move || {
        let cylinder = cylinder.get();
        let left_out = state.session.open.with(|o| {
            o.as_ref()
                .is_some_and(|o| o.job.left_out.contains(&cylinder))
        });
        let words = if left_out { t::TAKE_IN } else { t::LEAVE_OUT };
        view! {
            <button
                type="button"
                class="button-small"
                on:click=move |_| {
                    state.session.edit(|job| job.take_in_or_leave_out(cylinder));
                }
            >
                {words}
            </button>
        }
        .into_any()
    };
    // On a phone the strip below says that it is a cylinder.
    let title = move || {
        // Before the step, which is worked out from it (live.rs).
        let cylinder = cylinder.get();
        let title = t::step_title(step.get().spec().id);
        format!("{cylinder} \u{b7} {title}")
    };
    let heading = view! {
        <h2 id="step-heading" tabindex="-1">
            <span class="wide-word">{format!("{} ", t::CYLINDER)}</span>
            {live(title)}
        </h2>
    }
    .into_any();
    view! {
        {job_bar(state, &id, heading, shown, kept_step)}
        <div class="work">
            <section class="work-step" aria-labelledby="step-heading">
                {live(body)}
            </section>
            <nav class="steps" aria-label=t::STEPS.get()>
                {live(steps)} {live(leave_out)}
            </nav>
        </div>
    }
    .into_any()
}

/// The open step of a cylinder.
fn open_step(
    state: State,
    id: &str,
    cylinder: u8,
    spec: &'static StepSpec,
    stand: Stand,
) -> AnyView {
    let here = |cylinder: u8, step: StepId| {
        Route::Job {
            id: id.to_owned(),
            view: View::Cylinder(Some(cylinder), Some(step)),
        }
        .address()
    };
    // The next of this cylinder, unless the whole job or the deck is to be
    // done first.
    let next_step = steps_with(stand)
        .filter(|s| s.number > spec.number)
        .find(|s| {
            let (_, owner) = place_of(state, Some(cylinder), s);
            s.subject == Subject::Cylinder
                || untrack(|| state.session.step_report(owner, s.id))
                    .is_none_or(|r| !r.is_settled())
        })
        .map(|s| {
            let (view, _) = place_of(state, Some(cylinder), s);
            let address = Route::Job {
                id: id.to_owned(),
                view,
            }
            .address();
            (address, t::NEXT_STEP)
        });
    let next_cylinder = state.session.open.with_untracked(|open| {
        // On from here and round again to the first that still wants this step:
        // whoever begins at the rear is led as well.
        let job = &open.as_ref()?.job;
        let wants = |c: &u8| {
            untrack(|| state.session.step_report(Owner::Cylinder(*c), spec.id))
                .is_none_or(|r| !r.is_settled())
        };
        let after = || job.cylinders().filter(|c| *c > cylinder);
        after()
            .chain(job.cylinders().filter(|c| *c < cylinder))
            .find(wants)
            .or_else(|| after().next())
            .map(|c| (here(c, spec.id), t::NEXT_CYLINDER))
    });
    let buttons: Vec<AnyView> = [next_cylinder, next_step]
        .into_iter()
        .flatten()
        .map(|(address, words)| {
            view! {
                <a class="button" data-onward="" href=address on:click=move |_| state.ui.going_on.set(true)>
                    {words}
                </a>
            }
            .into_any()
        })
        .collect();
    view! {
        <StepView spec=spec owner=Owner::Cylinder(cylinder) onward=buttons.into_any() />
    }
    .into_any()
}

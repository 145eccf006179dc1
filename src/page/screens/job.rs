//! A job: the strip of cylinders, the steps of one of them, one step open.

use crate::browser;
use crate::live::{live, maybe};
use crate::memo::Memo;
use crate::parts::step::StepView;
use crate::parts::strip::Strip;
use crate::parts::timer::RunningTimers;
use crate::route::{Route, View};
use crate::screens::steps::{place_of, step_list};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{Owner, STEPS, StepId, StepSpec, Subject};
use coldseat_markup::view;
use leptos::prelude::*;

/// Head of every screen of a job: its name and its other screens.
pub fn job_head(state: State, id: &str) -> AnyView {
    let link = |view: View, words: String| {
        let route = Route::Job {
            id: id.to_owned(),
            view,
        };
        let address = route.address();
        let current = move || {
            state.route.with(|now| match (now, &route) {
                (Route::Job { view: a, .. }, Route::Job { view: b, .. }) => {
                    (core::mem::discriminant(a) == core::mem::discriminant(b)
                        && !matches!(a, View::Deck(_))
                        || a == b)
                        .then_some("page")
                }
                _ => None,
            })
        };
        view! {
            <a href=address aria-current=maybe(current)>
                {words}
            </a>
        }
        .into_any()
    };
    let (name, banks) = state.open.with_untracked(|open| {
        open.as_ref().map_or((String::new(), 1), |o| {
            (o.job.name.clone(), o.job.engine.banks())
        })
    });
    let name = if name.trim().is_empty() {
        t::UNNAMED.to_owned()
    } else {
        name
    };
    let decks: Vec<AnyView> = (0..banks)
        .map(|bank| {
            let words = if banks == 1 {
                t::DECK.to_owned()
            } else {
                format!("{} {}", t::DECK, t::bank(bank))
            };
            link(View::Deck(bank), words)
        })
        .collect();
    view! {
        <div class="job-top">
            <h1 id="screen-heading" class="job-title" tabindex="-1">
                {name}
            </h1>
            {take_back(state)}
        </div>
        <RunningTimers id=id.to_owned() />
        <nav class="job-nav" aria-label=t::WORKING>
            {link(View::Cylinder(None, None), t::CYLINDERS.to_owned())}
            {link(View::Whole(None), t::WHOLE_JOB.to_owned())}
            {decks}
            {link(View::Record, t::RECORD.to_owned())}
            {link(View::Engine, t::ENGINE_AND_LIMITS.to_owned())}
        </nav>
    }
    .into_any()
}

/// Undo and redo over the whole job.
pub fn take_back(state: State) -> AnyView {
    let off = |can: RwSignal<bool>| maybe(move || (!can.get()).then_some("true"));
    view! {
        <p class="take-back">
            <button
                type="button"
                class="button-small"
                aria-disabled=off(state.desk.can_undo)
                on:click=move |_| {
                    state.undo_job();
                }
            >
                {t::UNDO_JOB}
            </button>
            <button
                type="button"
                class="button-small"
                aria-disabled=off(state.desk.can_redo)
                on:click=move |_| {
                    state.redo_job();
                }
            >
                {t::REDO_JOB}
            </button>
        </p>
    }
    .into_any()
}

/// The screen.
#[component]
pub fn JobScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    // Without a cylinder in the address: the first that is not finished.
    let cylinder = Memo::new(move |_| {
        let asked = match state.route.get() {
            Route::Job {
                view: View::Cylinder(Some(c), _),
                ..
            } => Some(c),
            _ => None,
        };
        let count = state
            .open
            .with(|o| o.as_ref().map_or(1, |o| o.job.engine.cylinders));
        match asked {
            Some(c) if (1..=count).contains(&c) => c,
            _ => state.reports.with_untracked(|reports| {
                use coldseat_core::ask::State as Condition;
                let find = |wanted: fn(&Condition) -> bool| {
                    reports
                        .iter()
                        .find(|r| wanted(&r.state))
                        .map(|r| r.cylinder)
                };
                find(|s| matches!(s, Condition::Stop | Condition::Look))
                    .or_else(|| find(|s| matches!(s, Condition::InWork(..) | Condition::NotBegun)))
                    .unwrap_or(1)
            }),
        }
    });
    let step_asked = Memo::new(move |_| match state.route.get() {
        Route::Job {
            view: View::Cylinder(_, step),
            ..
        } => step.filter(|s| s.spec().subject == Subject::Cylinder),
        _ => None,
    });
    // The open step does not move away by itself while readings come in.
    let step = Memo::new(move |_| {
        let cylinder = cylinder.get();
        step_asked.get().unwrap_or_else(|| {
            state.reports.with_untracked(|reports| {
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
            if state.going_on.get_untracked() {
                state.going_on.set(false);
                request_animation_frame(browser::focus_first_reading);
            } else {
                request_animation_frame(|| browser::focus("step-heading"));
            }
        }
        now
    });
    let shown = Signal::derive(move || Some(cylinder.get()));
    let kept_step = Signal::derive(move || step_asked.get());
    let key = StoredValue::new(id.clone());
    // The open step stands first: number and verdict without a scroll. The
    // list of steps follows, or stands beside it where there is room.
    let body = move || open_step(state, &key.get_value(), cylinder.get(), step.get().spec());
    let steps = move || {
        let cylinder = cylinder.get();
        let open = step.get();
        step_list(state, &key.get_value(), Some(cylinder), open)
    };
    let leave_out = move || {
        let cylinder = cylinder.get();
        let left_out = state.open.with(|o| {
            o.as_ref()
                .is_some_and(|o| o.job.left_out.contains(&cylinder))
        });
        let words = if left_out { t::TAKE_IN } else { t::LEAVE_OUT };
        view! {
            <button
                type="button"
                class="button-small"
                on:click=move |_| {
                    state
                        .edit(|job| {
                            if left_out {
                                job.left_out.retain(|c| *c != cylinder);
                            } else {
                                let at = job.left_out.partition_point(|c| *c < cylinder);
                                job.left_out.insert(at, cylinder);
                            }
                        });
                }
            >
                {words}
            </button>
        }
        .into_any()
    };
    view! {
        {job_head(state, &id)}
        <Strip id=id.clone() shown=shown step=kept_step />
        <div class="work">
            <section class="work-step" aria-labelledby="step-heading">
                {live(body)}
            </section>
            <nav class="steps" aria-label=t::STEPS>
                {live(steps)} {live(leave_out)}
            </nav>
        </div>
    }
    .into_any()
}

/// The open step of a cylinder.
fn open_step(state: State, id: &str, cylinder: u8, spec: &'static StepSpec) -> AnyView {
    let here = |cylinder: u8, step: StepId| {
        Route::Job {
            id: id.to_owned(),
            view: View::Cylinder(Some(cylinder), Some(step)),
        }
        .address()
    };
    // The next of this cylinder, unless the whole job or the deck is to be
    // done first.
    let next_step = STEPS
        .iter()
        .filter(|s| s.number > spec.number)
        .find(|s| {
            let (_, owner) = place_of(state, Some(cylinder), s);
            s.subject == Subject::Cylinder
                || untrack(|| state.step_report(owner, s.id)).is_none_or(|r| !r.is_settled())
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
    let next_cylinder = state.open.with_untracked(|open| {
        // On from here and round again to the first that still wants this step:
        // whoever begins at the rear is led as well.
        let job = &open.as_ref()?.job;
        let wants = |c: &u8| {
            untrack(|| state.step_report(Owner::Cylinder(*c), spec.id))
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
                <a class="button" data-onward="" href=address on:click=move |_| state.going_on.set(true)>
                    {words}
                </a>
            }
            .into_any()
        })
        .collect();
    let title = format!(
        "{} {cylinder} \u{b7} {}",
        t::CYLINDER,
        t::step_title(spec.id)
    );
    view! {
        <h2 id="step-heading" tabindex="-1">
            {title}
        </h2>
        <StepView spec=spec owner=Owner::Cylinder(cylinder) onward=buttons.into_any() />
    }
    .into_any()
}

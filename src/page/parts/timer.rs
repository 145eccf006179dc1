//! Timers of the job: one tap starts, one keeps the time as a reading. Only the
//! start is stored, so a timer runs on while the page is closed.

use crate::browser;
use crate::feedback;
use crate::live::{live, words};
use crate::memo::Memo;
use crate::route::{Route, View};
use crate::show;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::job::step::{StepId, StepSpec};
use coldseat_core::job::timing::{Expected, Wanted, expected};
use coldseat_core::job::{Field, Owner, Place};
use coldseat_core::quantity::Seconds;
use coldseat_markup::view;
use leptos::prelude::*;
use std::time::Duration;

/// Between two looks at the clock.
const TICK: Duration = Duration::from_millis(250);
/// The screen is asked to stay on this often while a timer runs, ms.
const AWAKE_MS: u64 = 20_000;

/// Timers of the open job that run: whose, which step, since when.
fn running(state: State) -> Vec<(Owner, StepId, u64)> {
    state.open.with(|open| {
        open.as_ref().map_or(Vec::new(), |open| {
            open.job
                .steps
                .iter()
                .filter_map(|((owner, step), record)| Some((*owner, *step, record.started?)))
                .collect()
        })
    })
}

/// How long a step is expected to take; `None` where nothing says so.
fn expected_of(state: State, owner: Owner, step: StepId) -> Option<Expected> {
    state.open.with(|o| {
        o.as_ref()
            .and_then(|o| expected(&o.job, owner, step).ok().flatten())
    })
}

/// What is left of an expected time.
fn left(expected: &Expected, elapsed_s: f64) -> String {
    let of = |end: Seconds| show::clock((end.as_s() - elapsed_s).max(0.0));
    let (low, high) = (of(expected.low), of(expected.high));
    match expected.wanted {
        _ if elapsed_s >= expected.call().as_s() => t::TIMER_OVER.to_owned(),
        Wanted::AtLeast => t::timer_left(&low, &high),
        Wanted::AtMost => t::timer_at_most(&low),
    }
}

/// Keeps the clock of the page while a timer runs; beeps when a time is up.
pub fn tick(state: State) {
    // Worked out anew when the job changes, not at every tick.
    let times = Memo::new(move |_| {
        let of = |(owner, step, _): &(Owner, StepId, u64)| expected_of(state, *owner, *step);
        running(state)
            .into_iter()
            .map(|timer| (timer, of(&timer)))
            .collect::<Vec<_>>()
    });
    let told = StoredValue::new(Vec::<(Owner, StepId, u64)>::new());
    let awake_at = StoredValue::new(0_u64);
    let look = move || {
        let runs = times.get_untracked();
        if runs.is_empty() {
            return;
        }
        let now = browser::now();
        state.now.set(now);
        if now >= awake_at.get_value() + AWAKE_MS {
            awake_at.set_value(now);
            feedback::stay_awake();
        }
        for (timer, time) in runs {
            let (_, _, since) = timer;
            let up = time.is_some_and(|time| seconds_since(now, since) >= time.call().as_s());
            if up && !told.with_value(|t| t.contains(&timer)) {
                told.update_value(|t| t.push(timer));
                if state.feedback.get_untracked() {
                    feedback::time_is_up();
                }
            }
        }
    };
    // A page that cannot set an interval shows a clock that stands; what is
    // kept is worked out from the start all the same.
    let _ = set_interval_with_handle(look, TICK);
}

/// Seconds from a start to now.
#[must_use]
pub fn seconds_since(now: u64, since: u64) -> f64 {
    now.saturating_sub(since) as f64 / 1000.0
}

/// The timer of a step.
#[component]
pub fn Timer(
    /// The step.
    spec: &'static StepSpec,
    /// Whose it is.
    owner: Owner,
    /// The field that keeps the time.
    field: Field,
) -> impl IntoView {
    let state = State::here();
    let since = Memo::new(move |_| {
        state.open.with(|open| {
            open.as_ref()
                .and_then(|o| o.job.steps.get(&(owner, spec.id)))
                .and_then(|r| r.started)
        })
    });
    let time = Memo::new(move |_| expected_of(state, owner, spec.id));
    let record = move |started: Option<u64>| {
        state.edit(|job| job.keep_of_step(owner, spec.id, |r| r.started = started));
    };
    let start = move |_| {
        let now = browser::now();
        state.now.set(now);
        record(Some(now));
        feedback::stay_awake();
    };
    let stop = move |_| {
        if let Some(since) = since.get_untracked() {
            let place = Place {
                owner,
                field,
                index: 0,
            };
            let kept = show::whole_seconds(seconds_since(browser::now(), since));
            state.type_text(Target::Job, place, &kept);
            record(None);
        }
    };
    let face = move || {
        let Some(since) = since.get() else {
            return view! {
                <button type="button" class="button-first timer-start" on:click=start>
                    {format!("{}: {}", t::TIMER_START, t::field(field).to_lowercase())}
                </button>
            }
            .into_any();
        };
        let elapsed = move || show::clock(seconds_since(state.now.get(), since));
        let count_down = move || {
            let time = time.get();
            let elapsed_s = seconds_since(state.now.get(), since);
            time.map_or(String::new(), |time| left(&time, elapsed_s))
        };
        view! {
            <p class="timer-face" role="timer" aria-label=t::field(field)>
                {live(elapsed)}
            </p>
            <p class="timer-left">{live(count_down)}</p>
            <div class="row">
                <button type="button" class="button-first" on:click=stop>
                    {t::TIMER_STOP}
                </button>
                <button type="button" on:click=move |_| record(None)>
                    {t::TIMER_DROP}
                </button>
            </div>
        }
        .into_any()
    };
    let band = move || {
        time.get().map(|time| {
            let (low, high) = (show::clock(time.low.as_s()), show::clock(time.high.as_s()));
            let words = t::timer_expected(spec.id, &low, &high);
            view! { <p class="quiet">{words}</p> }.into_any()
        })
    };
    view! { <div class="timer">{live(face)} {live(band)}</div> }.into_any()
}

/// All timers of the job that run, on every screen of it.
#[component]
pub fn RunningTimers(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    let list = Memo::new(move |_| running(state));
    live(move || {
        let items: Vec<AnyView> = list
            .get()
            .into_iter()
            .map(|(owner, step, since)| {
                let (view, whose) = match owner {
                    Owner::Cylinder(c) => (
                        View::Cylinder(Some(c), Some(step)),
                        format!("{} {c}, ", t::CYLINDER),
                    ),
                    _ => (View::Whole(Some(step)), String::new()),
                };
                let address = Route::Job {
                    id: id.clone(),
                    view,
                }
                .address();
                let call = untrack(|| expected_of(state, owner, step)).map(|time| time.call());
                let over = move || {
                    call.is_some_and(|call| seconds_since(state.now.get(), since) >= call.as_s())
                };
                let class = move || if over() { "running running-over" } else { "running" };
                view! {
                    <a class=words(class) href=address>
                        {format!("{whose}{} ", t::step_title(step))}
                        <strong>{live(move || show::clock(seconds_since(state.now.get(), since)))}</strong>
                        {live(move || if over() { t::TIMER_OVER } else { t::TIMER_RUNS })}
                    </a>
                }
                .into_any()
            })
            .collect();
        (!items.is_empty()).then(|| {
            view! { <div class="timers" role="group" aria-label=t::TIMERS>{items}</div> }.into_any()
        })
    })
}

//! Timers of the job: one tap starts, one keeps the time as a reading. Only the
//! start is stored, so a timer runs on while the page is closed. They count by
//! [`crate::clock`]; where the clock of the device was moved, both times are
//! offered.

use crate::clock::{self, Passed};
use crate::feedback;
use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::verdict::big;
use crate::screens::{Route, View};
use crate::show;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    Expected, Field, Owner, Place, Seconds, StepId, StepSpec, Wanted, expected,
};
use coldseat_markup::view;
use leptos::prelude::*;
use std::time::Duration;

/// What is seen of the clock is kept this often, ms.
const SEEN_MS: u64 = 2000;
/// Between two looks at the clock.
const TICK: Duration = Duration::from_millis(250);
/// The screen is asked to stay on this often while a timer runs, ms.
const AWAKE_MS: u64 = 20_000;

/// Timers of the open job that run: whose, which step, since when.
fn running(state: State) -> Vec<(Owner, StepId, u64)> {
    state.session.open.with(|open| {
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
    state.session.open.with(|o| {
        o.as_ref()
            .and_then(|o| expected(&o.job, owner, step).ok().flatten())
    })
}

/// Whether a time is up: by either clock where it must not be longer, by both
/// where it must not be shorter.
fn is_up(expected: &Expected, passed: Passed) -> bool {
    let counts_s = match expected.wanted {
        Wanted::AtLeast => passed.least_s,
        Wanted::AtMost => passed.most_s,
    };
    counts_s >= expected.call().as_s()
}

/// What is left of an expected time.
fn left(expected: &Expected, passed: Passed) -> String {
    let elapsed_s = match expected.wanted {
        Wanted::AtLeast => passed.least_s,
        Wanted::AtMost => passed.most_s,
    };
    let of = |end: Seconds| show::clock((end.as_s() - elapsed_s).max(0.0));
    let (low, high) = (of(expected.low), of(expected.high));
    match expected.wanted {
        _ if elapsed_s >= expected.call().as_s() => t::TIMER_OVER.get().to_owned(),
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
    let seen_at = StoredValue::new(0_u64);
    let remembers = StoredValue::new(true);
    let look = move || {
        let runs = times.get_untracked();
        if runs.is_empty() {
            if remembers.get_value() && state.session.open.with_untracked(Option::is_some) {
                remembers.set_value(false);
                clock::forget();
            }
            return;
        }
        let now = clock::time();
        state.ui.now.set(now);
        remembers.set_value(true);
        if now >= seen_at.get_value() + SEEN_MS {
            seen_at.set_value(now);
            clock::remember();
        }
        if now >= awake_at.get_value() + AWAKE_MS {
            awake_at.set_value(now);
            feedback::stay_awake();
        }
        for (timer, time) in runs {
            let (_, _, since) = timer;
            let up = time.is_some_and(|time| is_up(&time, clock::passed(since)));
            if up && !told.with_value(|t| t.contains(&timer)) {
                told.update_value(|t| t.push(timer));
                if state.ui.feedback.get_untracked() {
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
        state.session.open.with(|open| {
            open.as_ref()
                .and_then(|o| o.job.steps.get(&(owner, spec.id)))
                .and_then(|r| r.started)
        })
    });
    let time = Memo::new(move |_| expected_of(state, owner, spec.id));
    let record = move |started: Option<u64>| {
        state
            .session
            .edit(|job| job.keep_of_step(owner, spec.id, |r| r.started = started));
    };
    let start = move |_| {
        let now = clock::time();
        state.ui.now.set(now);
        record(Some(now));
        clock::remember();
        feedback::stay_awake();
    };
    // At the bore: from here to home is timed too, as long as this step is open.
    let entered = RwSignal::new(None::<u64>);
    let keep = move |of: fn(Passed) -> f64| {
        if let Some(since) = since.get_untracked() {
            if spec.id == StepId::Drop {
                entered.set(Some(clock::time()));
            }
            let place = Place {
                owner,
                field,
                index: 0,
            };
            let kept = show::whole_seconds(of(clock::passed(since)));
            state.type_text(Target::Job, place, &kept);
            record(None);
        }
    };
    let home = move |_| {
        if let Some(entered_at) = entered.get_untracked() {
            // Where a clock was moved the larger: too long is named, too short is believed.
            let place = Place {
                owner,
                field: Field::HomeTimed,
                index: 0,
            };
            let kept = show::tenth_seconds(clock::passed(entered_at).most_s);
            state.type_text(Target::Job, place, &kept);
            entered.set(None);
        }
    };
    let face = move || {
        let Some(since) = since.get() else {
            if entered.get().is_some() {
                return view! {
                    <button type="button" class="button-first timer-stop" on:click=home>
                        {t::TIMER_HOME}
                    </button>
                    <button type="button" on:click=move |_| entered.set(None)>
                        {t::TIMER_DROP}
                    </button>
                }
                .into_any();
            }
            return view! {
                <button type="button" class="button-first timer-start" on:click=start>
                    {format!("{}: {}", t::TIMER_START, t::in_sentence(t::field(field)))}
                </button>
            }
            .into_any();
        };
        let elapsed = move || show::clock(seconds_since(state.ui.now.get(), since));
        let count_down = move || {
            let time = time.get();
            state.ui.now.get();
            time.map_or(String::new(), |time| left(&time, clock::passed(since)))
        };
        let in_doubt = Memo::new(move |_| {
            state.ui.now.get();
            clock::passed(since).is_in_doubt()
        });
        let stops = move || {
            if !in_doubt.get() {
                return view! {
                    <button type="button" class="button-first timer-stop" on:click=move |_| keep(|p| p.least_s)>
                        {t::TIMER_STOP}
                    </button>
                }
                .into_any();
            }
            let time = move |of: fn(Passed) -> f64| {
                state.ui.now.get();
                format!(
                    "{}: {}",
                    t::TIMER_STOP,
                    show::clock(of(clock::passed(since)))
                )
            };
            let by = clock::passed(since);
            let moved = show::clock(by.most_s - by.least_s);
            view! {
                <p role="alert">{t::clock_moved(&moved)}</p>
                <button type="button" class="button-first" on:click=move |_| keep(|p| p.least_s)>
                    {live(move || time(|p| p.least_s))}
                </button>
                <button type="button" class="button-first" on:click=move |_| keep(|p| p.most_s)>
                    {live(move || time(|p| p.most_s))}
                </button>
            }
            .into_any()
        };
        view! {
            <p class="timer-face" role="timer" aria-label=t::field(field)>
                {live(elapsed)}
            </p>
            <p class="timer-left">{live(count_down)}</p>
            <div class="row">
                {live(stops)}
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
            if spec.id == StepId::Drop && since.get().is_none() {
                // Two times: this one from the bath to the bore, the large one
                // above from the bore on.
                let late = t::at_bore_late(&high);
                return big(t::AT_BORE_WITHIN.get(), low, t::MINUTES.get(), late);
            }
            let words = t::timer_expected(spec.id, &low, &high);
            view! { <p class="quiet">{words}</p> }.into_any()
        })
    };
    let class = move || {
        if since.get().is_some() {
            "timer timer-runs"
        } else {
            "timer"
        }
    };
    view! { <div class=words(class)>{live(face)} {live(band)}</div> }.into_any()
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
                let time = untrack(|| expected_of(state, owner, step));
                let over = move || {
                    state.ui.now.get();
                    time.is_some_and(|time| is_up(&time, clock::passed(since)))
                };
                let class = move || if over() { "running running-over" } else { "running" };
                view! {
                    <a class=words(class) href=address>
                        {format!("{whose}{} ", t::step_title(step))}
                        <strong>{live(move || show::clock(seconds_since(state.ui.now.get(), since)))}</strong>
                        {live(move || if over() { t::TIMER_OVER } else { t::TIMER_RUNS })}
                    </a>
                }
                .into_any()
            })
            .collect();
        (!items.is_empty()).then(|| {
            view! { <div class="timers" role="group" aria-label=t::TIMERS.get()>{items}</div> }
                .into_any()
        })
    })
}

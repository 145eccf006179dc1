//! What the shop's finished jobs teach, and what they offer for the next one.

use crate::browser;
use crate::drawings::lessons::lesson;
use crate::live::live;
use crate::memo::Memo;
use crate::state::State;
use crate::texts as t;
use crate::words::Word;
use coldseat_core::ask::{
    Engine, Entries, Entry, FEW, Job, Layout, Length, Lesson, MaterialId, Place, Seconds, Series,
    State as Condition, UnitSystem, assess, home_offer, home_time, home_times, homes, hone_offer,
    learnt, lessons, offer, profile_of,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// What is learnt.
#[derive(Clone, Default)]
struct Learnt {
    /// From so many jobs.
    jobs: usize,
    series: Vec<Series>,
    /// Sleeves at home and not.
    homes: (usize, usize),
    /// Timed from entering to home.
    home_times: Vec<Seconds>,
    /// The newest job's engine.
    newest: Entries,
}

/// Finished jobs that are looked into: the latest, so that a shop's old habits
/// are forgotten and a phone is not kept busy.
const JOBS_MOST: usize = 60;

/// The screen.
#[component]
pub fn LearntScreen() -> impl IntoView {
    let state = State::here();
    let found = RwSignal::new(None::<Learnt>);
    gather(state, found);
    let units = Memo::new(move |_| state.session.shop.with(|s| s.units));
    let shown = move || match found.get() {
        None => view! { <p role="status">{t::OPENING}</p> }.into_any(),
        Some(learnt) if learnt.jobs == 0 => view! { <p>{t::NOTHING_LEARNT}</p> }.into_any(),
        Some(learnt) => {
            let limits = limits_of(state, units.get(), learnt.newest.clone());
            lessons_view(state, &learnt, &limits)
        }
    };
    view! {
        <h1 id="screen-heading" tabindex="-1">
            {t::LEARNT}
        </h1>
        <p class="quiet">{t::LEARNT_WHAT}</p>
        {live(shown)}
    }
    .into_any()
}

/// Looks into finished jobs, one after the other, giving way to the hand.
fn gather(state: State, found: RwSignal<Option<Learnt>>) {
    let finished: Vec<String> = state.library.jobs.with_untracked(|jobs| {
        // One that is not home teaches that some are not.
        let home = |state: &Condition| {
            matches!(
                state,
                Condition::Seated | Condition::Stop | Condition::LeftOut
            )
        };
        jobs.iter()
            .filter(|job| {
                let cylinders = &job.row.cylinders;
                job.row.binned.is_none()
                    && cylinders.contains(&Condition::Seated)
                    && cylinders.iter().all(home)
            })
            .take(JOBS_MOST)
            .map(|job| job.id.clone())
            .collect()
    });
    wasm_bindgen_futures::spawn_local(async move {
        let mut all: Vec<(Lesson, Length)> = Vec::new();
        let mut so_far = Learnt::default();
        let mut newest = None;
        for id in finished {
            browser::breathe().await;
            if let Some(open) = state.session.stored(&id).await {
                let reports = assess(&open.job);
                all.extend(lessons(&open.job, &reports));
                let (home, not) = homes(&reports);
                so_far.homes = (so_far.homes.0 + home, so_far.homes.1 + not);
                so_far.home_times.extend(home_times(&open.job, &reports));
                so_far.jobs += 1;
                newest.get_or_insert_with(|| profile_of(&open.job.entries));
            }
        }
        // Whoever has gone elsewhere meanwhile is not waiting any more.
        let _ = found.try_set(Some(Learnt {
            series: learnt(&all),
            newest: newest.unwrap_or_default(),
            ..so_far
        }));
    });
}

/// A job that has the shop's limits and gauges, where it has none those of its
/// newest finished job, and no readings.
fn limits_of(state: State, units: UnitSystem, newest: Entries) -> Job {
    let engine = Engine {
        name: String::new(),
        cylinders: 1,
        layout: Layout::InLine,
        units,
        sleeve_material: MaterialId::GrayIron,
        block_material: MaterialId::GrayIron,
    };
    let mut entries = newest;
    for (place, entry) in state.session.new_numbers(units).iter() {
        entries.put(*place, entry.clone());
    }
    Job::new(engine, entries)
}

fn lessons_view(state: State, learnt: &Learnt, limits: &Job) -> AnyView {
    let series = &learnt.series;
    let units = limits.engine.units;
    let items: Vec<AnyView> = series
        .iter()
        .map(|one| {
            let few = one.is_few().then(|| view! { <p>{t::FEW_DATA}</p> });
            view! {
                <section class="lesson">
                    <h2>{t::lesson(one.lesson)}</h2>
                    <p>{t::lesson_numbers(one, units)}</p>
                    {few}
                    {lesson(one, units)}
                </section>
            }
            .into_any()
        })
        .collect();
    let now = browser::now();
    let feed = offer(series, limits).map(|found| {
        let entries = found.entries(limits, now).to_vec();
        (
            found.is_few(),
            t::offer(&found, units),
            t::OFFER_TAKE,
            entries,
        )
    });
    let hone = hone_offer(series).map(|found| {
        let entries = vec![found.entry(limits, now)];
        let words = t::hone_offer(&found, units);
        (found.n < FEW, words, t::HONE_TAKE, entries)
    });
    let prior = home_offer(learnt.homes).map(|found| {
        let entries = vec![found.entry(limits, now)];
        let words = t::home_offer(found.n, found.share);
        (found.is_few(), words, t::HOME_TAKE, entries)
    });
    let timed = home_time(&learnt.home_times);
    let needed = timed.and_then(|found| {
        let entries = vec![found.entry(limits, now)?];
        Some((false, t::home_time(&found), t::HOME_TIME_TAKE, entries))
    });
    let only_timed = timed
        .filter(|found| found.needed.is_none())
        .map(|found| view! { <p>{t::home_time(&found)}</p> });
    let offers: Vec<AnyView> = [feed, hone, prior, needed]
        .into_iter()
        .flatten()
        .map(|(few, words, take, entries)| offered(state, few, words, take, entries))
        .collect();
    let offers = (!offers.is_empty()).then(|| {
        view! {
            <section class="files" aria-labelledby="offer-heading">
                <h2 id="offer-heading">{t::OFFER}</h2>
                {offers}
            </section>
        }
    });
    view! {
        <p>{t::learnt_from(learnt.jobs)}</p>
        {offers}
        {only_timed}
        {items}
    }
    .into_any()
}

/// One offer with its button.
fn offered(
    state: State,
    few: bool,
    words: String,
    button: Word,
    entries: Vec<(Place, Entry)>,
) -> AnyView {
    let taken = RwSignal::new(false);
    let take = move |_| {
        let entries = entries.clone();
        state.session.edit_shop(|shop| {
            for (place, entry) in entries {
                shop.entries.put(place, entry);
            }
        });
        taken.set(true);
    };
    let after = move || {
        taken
            .get()
            .then(|| view! { <p role="status">{t::OFFER_TAKEN}</p> }.into_any())
    };
    let few = few.then(|| view! { <p class="fault">{t::OFFER_FEW}</p> });
    view! {
        {few}
        <p>{words}</p>
        <button type="button" on:click=take>
            {button}
        </button>
        {live(after)}
    }
    .into_any()
}

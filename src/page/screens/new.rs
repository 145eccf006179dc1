//! A new job: from an engine that is known here, or from own numbers.

use crate::browser;
use crate::library::Listed;
use crate::live::live;
use crate::parts::camera::camera;
use crate::parts::choice::{Choice, Line, counts, layouts};
use crate::screens::Route;
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{Demo, Engine, Entries, Job, Layout, MaterialId, UnitSystem, profile_of};
use coldseat_markup::view;
use leptos::prelude::*;

/// Own numbers.
const OWN: &str = "own";

/// Jobs offered as sources at most, the latest; sheets are all offered.
const SOURCES_MOST: usize = 30;

/// What a new engine starts with.
#[must_use]
pub fn first_engine(state: State) -> Engine {
    Engine {
        name: String::new(),
        cylinders: 6,
        layout: Layout::InLine,
        units: state.session.shop.with_untracked(|s| s.units),
        sleeve_material: MaterialId::GrayIron,
        block_material: MaterialId::GrayIron,
    }
}

/// The engine a source names; one that only the second store has is fetched.
async fn source(state: State, value: &str) -> Option<(Engine, Entries)> {
    if let Some(index) = value.strip_prefix("demo") {
        let demo = Demo::ALL.get(index.parse::<usize>().ok()?)?;
        return Some(demo.profile(browser::now()));
    }
    let stored = state.session.stored(value.strip_prefix("job-")?).await?;
    let numbers = profile_of(&stored.job.entries);
    Some((stored.job.engine, numbers))
}

/// Where engines come from: own numbers, the sheets, the demos, the latest jobs.
fn sources(state: State) -> Vec<(String, String)> {
    let mut all = vec![(OWN.to_owned(), t::OWN_NUMBERS.get().to_owned())];
    let key = |job: &Listed| format!("job-{}", job.id);
    state.library.jobs.with_untracked(|jobs| {
        let here = || jobs.iter().filter(|job| job.row.binned.is_none());
        all.extend(
            here()
                .filter(|job| job.row.sheet)
                .map(|job| (key(job), t::engine_of_sheet(&job.row.engine))),
        );
        let demos = Demo::ALL.into_iter().enumerate();
        all.extend(demos.map(|(index, demo)| (format!("demo{index}"), demo.profile(0).0.name)));
        all.extend(
            here()
                .filter(|job| !job.row.sheet)
                .take(SOURCES_MOST)
                .map(|job| (key(job), t::engine_of_job(&job.row.engine, &job.row.name))),
        );
    });
    all
}

/// The screen.
#[component]
pub fn NewScreen() -> impl IntoView {
    let state = State::here();
    let from = RwSignal::new(OWN.to_owned());
    let name = RwSignal::new(String::new());
    let customer = RwSignal::new(String::new());
    let engine = RwSignal::new(first_engine(state));
    let begin = move |_| {
        let (name, customer) = (name.get_untracked(), customer.get_untracked());
        let (from, own) = (from.get_untracked(), engine.get_untracked());
        wasm_bindgen_futures::spawn_local(async move {
            let mut job = match source(state, &from).await {
                Some((engine, entries)) => Job::new(engine, entries),
                None => {
                    let entries = state.session.new_numbers(own.units);
                    Job::new(own, entries)
                }
            };
            job.name = name.trim().to_owned();
            job.customer = customer.trim().to_owned();
            if job.name.is_empty() {
                job.name = job.engine.name.clone();
            }
            state.begin(job, None);
        });
    };
    let link = RwSignal::new(String::new());
    let look = move |_| {
        state.look_at_link(&link.get_untracked());
        browser::go(&Route::Shared.address());
    };
    let own = move || (from.get() == OWN).then(|| engine_form(engine));
    view! {
        <h1 id="screen-heading" tabindex="-1">
            {t::NEW_JOB}
        </h1>
        <div class="form">
            <Line
                id="new-name"
                label=t::JOB_NAME.get()
                value=name.into()
                change=Callback::new(move |text| name.set(text))
            />
            <Line
                id="new-customer"
                label=t::CUSTOMER.get()
                value=customer.into()
                change=Callback::new(move |text| customer.set(text))
            />
            <Choice
                id="new-from"
                label=t::FROM_ENGINE.get()
                options=sources(state)
                value=from.into()
                change=Callback::new(move |value| from.set(value))
            />
            {live(own)}
            <p class="quiet">{t::NUMBERS_LATER}</p>
            <button type="button" class="button-first" on:click=begin>
                {t::BEGIN_JOB}
            </button>
            <Line
                id="new-link"
                label=t::PASTE_LINK.get()
                value=link.into()
                change=Callback::new(move |text| link.set(text))
                most=20_000
            />
            <button type="button" on:click=look>
                {t::LOOK_AT_LINK}
            </button>
            {camera(state)}
        </div>
    }
    .into_any()
}

/// What an engine is, its numbers and materials apart: those stand on its own
/// screen.
pub fn engine_form(engine: RwSignal<Engine>) -> AnyView {
    let read = move |look: fn(&Engine) -> String| Signal::derive(move || engine.with(look));
    let units = [UnitSystem::Inch, UnitSystem::Metric]
        .map(|u| (u.id().to_owned(), t::units(u).to_owned()))
        .to_vec();
    view! {
        <Line
            id="new-engine"
            label=t::ENGINE_NAME.get()
            value=read(|e| e.name.clone())
            change=Callback::new(move |text| engine.update(|e| e.name = text))
        />
        <Choice
            id="new-cylinders"
            label=t::CYLINDERS.get()
            options=counts()
            value=read(|e| e.cylinders.to_string())
            change=Callback::new(move |n: String| {
                engine.update(|e| e.cylinders = n.parse().unwrap_or(e.cylinders));
            })
        />
        <Choice
            id="new-layout"
            label=t::LAYOUT.get()
            options=layouts()
            value=read(|e| e.layout.id().to_owned())
            change=Callback::new(move |id: String| {
                engine.update(|e| e.layout = Layout::from_id(&id).unwrap_or(e.layout));
            })
        />
        <Choice
            id="new-units"
            label=t::UNITS.get()
            options=units
            value=read(|e| e.units.id().to_owned())
            change=Callback::new(move |id: String| {
                engine.update(|e| e.units = UnitSystem::from_id(&id).unwrap_or(e.units));
            })
        />
    }
    .into_any()
}

//! The frame: head, notices, the screen the address names, the number pad.

use crate::browser;
use crate::drawings::Hatching;
use crate::folder::Shop;
use crate::live::{live, maybe, words};
use crate::memo::Memo;
use crate::offline;
use crate::parts::folder::kept_line;
use crate::parts::notice::Notices;
use crate::parts::pad::Pad;
use crate::parts::wall::{stays_on, wall};
use crate::route::{DROP_IN_USE, Route, View};
use crate::screens::deck::DeckScreen;
use crate::screens::drop::DropScreen;
use crate::screens::engine::EngineScreen;
use crate::screens::engines::EnginesScreen;
use crate::screens::files::FilesScreen;
use crate::screens::floor::FloorScreen;
use crate::screens::job::JobScreen;
use crate::screens::jobs::JobsScreen;
use crate::screens::learnt::LearntScreen;
use crate::screens::new::NewScreen;
use crate::screens::record::RecordScreen;
use crate::screens::settings::SettingsScreen;
use crate::screens::shared::SharedScreen;
use crate::screens::whole::WholeScreen;
use crate::state::State;
use crate::texts as t;
use coldseat_markup::view;
use leptos::prelude::*;

/// Which screen; a change of cylinder or step stays on one.
#[derive(Clone, PartialEq, Eq)]
enum Screen {
    Jobs,
    Drop(Option<String>),
    New,
    Engines,
    Files,
    Learnt,
    Settings,
    Shared(u64),
    NoDrop,
    NoJob,
    Cylinder(String),
    Whole(String),
    Deck(String, u8),
    Record(String),
    Floor(String),
    Engine(String),
}

impl Screen {
    /// Whether it has a job's bar.
    const fn is_of_job(&self) -> bool {
        matches!(
            self,
            Self::Cylinder(_)
                | Self::Whole(_)
                | Self::Deck(..)
                | Self::Record(_)
                | Self::Floor(_)
                | Self::Engine(_)
        )
    }
}

/// Everything.
#[component]
pub fn App() -> impl IntoView {
    let state = State::start();
    provide_context(state);
    provide_context(Shop::start(state));
    let listener = window_event_listener(leptos::ev::hashchange, move |_| state.arrive());
    on_cleanup(move || listener.remove());
    // Whoever closes the page or turns to another program has it written first.
    let hidden = window_event_listener(leptos::ev::pagehide, move |_| state.flush());
    let turned = window_event_listener(leptos::ev::visibilitychange, move |_| {
        if document().hidden() {
            state.flush();
        } else {
            state.comes_back();
            stays_on(state);
        }
    });
    let other_tab = window_event_listener(leptos::ev::storage, move |event| {
        state.heard(event.key());
    });
    on_cleanup(move || {
        other_tab.remove();
        hidden.remove();
        turned.remove();
    });
    offline::register(state);
    crate::parts::timer::tick(state);
    crate::gauge::listen(state);

    let screen = Memo::new(move |_| match state.route.get() {
        Route::Jobs => Screen::Jobs,
        Route::Drop(id) => {
            let there = state
                .drop_open
                .with(|o| o.id == id.as_deref().unwrap_or_default());
            if there {
                Screen::Drop(id)
            } else {
                Screen::NoDrop
            }
        }
        Route::New => Screen::New,
        Route::Engines => Screen::Engines,
        Route::Files => Screen::Files,
        Route::Learnt => Screen::Learnt,
        Route::Settings => Screen::Settings,
        // Another link is another screen, with the same address.
        Route::Shared => Screen::Shared(state.links.get()),
        Route::Job { id, view } => {
            // Only whether there is a job of this key, not what is in it.
            let (there, sheet) = state.open.with(|o| {
                o.as_ref()
                    .filter(|o| o.id == id)
                    .map_or((false, false), |o| (true, o.job.sheet))
            });
            match view {
                _ if !there => Screen::NoJob,
                // An engine sheet has no other screen.
                _ if sheet => Screen::Engine(id),
                View::Cylinder(..) => Screen::Cylinder(id),
                View::Whole(_) => Screen::Whole(id),
                View::Deck(bank) => Screen::Deck(id, bank),
                View::Record => Screen::Record(id),
                View::Floor => Screen::Floor(id),
                View::Engine => Screen::Engine(id),
            }
        }
    });
    // The heading takes the focus when the screen changes, so that a screen
    // reader says where it is; not at the start.
    Effect::new(move |before: Option<Screen>| {
        let now = screen.get();
        if before.is_some_and(|b| b != now) {
            browser::focus_heading();
        }
        now
    });
    let show = move || match screen.get() {
        Screen::Jobs => view! { <JobsScreen /> }.into_any(),
        Screen::Drop(_) => view! { <DropScreen /> }.into_any(),
        Screen::New => view! { <NewScreen /> }.into_any(),
        Screen::Engines => view! { <EnginesScreen /> }.into_any(),
        Screen::Files => view! { <FilesScreen /> }.into_any(),
        Screen::Learnt => view! { <LearntScreen /> }.into_any(),
        Screen::Settings => view! { <SettingsScreen /> }.into_any(),
        Screen::Shared(_) => view! { <SharedScreen /> }.into_any(),
        Screen::Cylinder(id) => view! { <JobScreen id=id /> }.into_any(),
        Screen::Whole(id) => view! { <WholeScreen id=id /> }.into_any(),
        Screen::Deck(id, bank) => view! { <DeckScreen id=id bank=bank /> }.into_any(),
        Screen::Record(id) => view! { <RecordScreen id=id /> }.into_any(),
        Screen::Floor(id) => view! { <FloorScreen id=id /> }.into_any(),
        Screen::Engine(id) => view! { <EngineScreen id=id /> }.into_any(),
        // What only the second store has is on its way.
        Screen::NoJob | Screen::NoDrop if state.looking.get() => view! {
            <h1 id="screen-heading" tabindex="-1">
                {t::OPENING}
            </h1>
        }
        .into_any(),
        Screen::NoDrop => view! {
            <h1 id="screen-heading" tabindex="-1">
                {t::NO_KEPT_DROP}
            </h1>
            <p>
                <a class="button" href=DROP_IN_USE>
                    {t::COLD_DROP}
                </a>
            </p>
        }
        .into_any(),
        Screen::NoJob => view! {
            <h1 id="screen-heading" tabindex="-1">
                {t::NO_JOB}
            </h1>
            <p>
                <a class="button" href="#/">
                    {t::BACK_TO_JOBS}
                </a>
            </p>
        }
        .into_any(),
    };
    let in_job = Memo::new(move |_| {
        let screen = screen.get();
        screen.is_of_job()
    });
    let class = move || {
        let pad = state.active.with(Option::is_some) && state.pad_on.get();
        let mut class = "frame".to_owned();
        for (on, name) in [
            (pad, " frame-pad"),
            (in_job.get(), " in-job"),
            (state.menu.get(), " frame-menu"),
            (state.gauge.hand.get().is_some(), " frame-hand"),
        ] {
            if on {
                class.push_str(name);
            }
        }
        class
    };
    // A job's own bar says it beside its name.
    let keeping = move || {
        (!in_job.get())
            .then(|| view! { <p class="keeping">{live(move || kept_line(state))}</p> }.into_any())
    };
    let here = move |route: Route| (state.route.get() == route).then_some("page");
    view! {
        <div class=words(class)>
            <Hatching />
            <header class="head">
                <nav aria-label=t::MAIN_MENU>
                    <a href="#/" aria-current=maybe(move || here(Route::Jobs))>
                        {t::JOBS}
                    </a>
                    <a href="#/drop" aria-current=maybe(move || {
                        matches!(state.route.get(), Route::Drop(_)).then_some("page")
                    })>
                        {t::COLD_DROP}
                    </a>
                    <a href="#/settings" aria-current=maybe(move || here(Route::Settings))>
                        {t::SETTINGS}
                    </a>
                </nav>
                {live(keeping)}
            </header>
            <Notices />
            <main id="main">{live(show)}</main>
            <Pad />
            {wall(state)}
        </div>
    }
    .into_any()
}

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
use crate::screens::{Route, Screen, draw, screen_at};
use crate::state::State;
use crate::texts as t;
use coldseat_markup::view;
use leptos::prelude::*;

/// Everything.
#[component]
pub fn App() -> impl IntoView {
    let state = State::start();
    provide_context(state);
    provide_context(Shop::start(state));
    let listener = window_event_listener(leptos::ev::hashchange, move |_| state.arrive());
    on_cleanup(move || listener.remove());
    // Whoever closes the page or turns to another program has it written first.
    let hidden = window_event_listener(leptos::ev::pagehide, move |_| state.session.flush());
    let turned = window_event_listener(leptos::ev::visibilitychange, move |_| {
        if document().hidden() {
            state.session.flush();
        } else {
            state.session.comes_back();
            stays_on(state);
        }
    });
    let other_tab = window_event_listener(leptos::ev::storage, move |event| {
        state.session.heard(event.key());
    });
    on_cleanup(move || {
        other_tab.remove();
        hidden.remove();
        turned.remove();
    });
    offline::register(state);
    crate::parts::timer::tick(state);
    crate::gauge::listen(state);

    // Words are said when they are drawn: another language draws the frame anew, and
    // what was typed stands where it stood, for none of it is kept in the frame.
    live(move || {
        state.tongue.shown.get();
        // Another language asks for another voice.
        state.gauge.no_voice.set(false);
        state.gauge.no_voice_read.set(false);
        state.tongue.decimal.get();
        frame(state)
    })
}

/// Head, screen and pad.
fn frame(state: State) -> AnyView {
    let screen = Memo::new(move |_| screen_at(state));
    // The heading takes the focus when the screen changes, so that a screen
    // reader says where it is; not at the start.
    Effect::new(move |before: Option<Screen>| {
        let now = screen.get();
        if before.is_some_and(|b| b != now) {
            browser::focus_heading();
            // A language for one record ends with it.
            if !now.is_for_a_reader() {
                state.tongue.speak_at_home();
            }
        }
        now
    });
    let show = move || draw(state, screen.get());
    let in_job = Memo::new(move |_| {
        let screen = screen.get();
        screen.is_of_job()
    });
    let class = move || {
        let pad = state.ui.active.with(Option::is_some) && state.ui.pad_on.get();
        let mut class = "frame".to_owned();
        for (on, name) in [
            (pad, " frame-pad"),
            (in_job.get(), " in-job"),
            (state.ui.menu.get(), " frame-menu"),
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
    let here = move |route: Route| (state.ui.route.get() == route).then_some("page");
    view! {
        <div class=words(class)>
            <Hatching />
            <header class="head">
                <nav aria-label=t::MAIN_MENU.get()>
                    <a href="#/" aria-current=maybe(move || here(Route::Jobs))>
                        {t::JOBS}
                    </a>
                    <a href="#/drop" aria-current=maybe(move || {
                        matches!(state.ui.route.get(), Route::Drop(_)).then_some("page")
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

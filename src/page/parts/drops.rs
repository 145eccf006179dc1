//! Cold drops under a name, on the screen of the cold drop: keep the numbers at
//! hand, open others, rename, copy, bin.

use crate::browser;
use crate::library::Listed;
use crate::live::live;
use crate::memo::Memo;
use crate::parts::choice::Line;
use crate::parts::fold::fold;
use crate::parts::listed::listed;
use crate::screens::{DROP_IN_USE, Route};
use crate::session::NAME_MOST;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_markup::view;
use leptos::prelude::*;

/// Drawn at once; more at a tap.
const SHOWN: usize = 8;

/// Keeping, and what is kept, behind a line of its own.
pub fn kept_drops(state: State) -> AnyView {
    fold(t::KEPT_DROPS.get(), move || kept(state))
}

fn kept(state: State) -> AnyView {
    let open = Memo::new(move |_| state.session.drop_open.with(|open| open.id.clone()));
    let acts = move || {
        if open.get().is_empty() {
            keep(state)
        } else {
            change(state)
        }
    };
    let shown = RwSignal::new(SHOWN);
    let list = move || {
        let open = open.get();
        let kept: Vec<Listed> = state.library.drops.with(|drops| {
            let here = drops.iter().filter(|drop| drop.row.binned.is_none());
            here.filter(|drop| drop.id != open).cloned().collect()
        });
        let count = kept.len();
        let mut items: Vec<AnyView> = Vec::new();
        if !open.is_empty() {
            items.push(line(
                DROP_IN_USE.to_owned(),
                t::DROP_WITHOUT_NAME.get().to_owned(),
                None,
            ));
        }
        items.extend(kept.into_iter().take(shown.get()).map(|drop| {
            let address = Route::Drop(Some(drop.id)).address();
            let about = t::drop_about(&drop.row.engine, &drop.row.customer);
            let newer = drop.newer.then(|| t::NEWER.get());
            let changed = format!("{} {}", t::CHANGED, browser::date(drop.row.changed));
            line(address, drop.row.name, Some((about, changed, newer)))
        }));
        if items.is_empty() {
            return view! { <p class="quiet">{t::NO_KEPT_DROPS}</p> }.into_any();
        }
        listed(items, count, shown, SHOWN)
    };
    view! { {live(acts)} {live(list)} }.into_any()
}

fn line(
    address: String,
    name: String,
    more: Option<(String, String, Option<&'static str>)>,
) -> AnyView {
    let name = if name.trim().is_empty() {
        t::UNNAMED.get().to_owned()
    } else {
        name
    };
    let more = more.map(|(about, changed, newer)| {
        view! {
            <span class="job-about">{about}</span>
            <span class="job-date">{changed}</span>
            {newer.map(|words| view! { <span class="job-newer">{words}</span> })}
        }
    });
    view! {
        <li>
            <a class="job" href=address>
                <strong class="job-name">{name}</strong>
                {more}
            </a>
        </li>
    }
    .into_any()
}

fn name_line(
    state: State,
    name: Signal<String>,
    change: impl Fn(String) + Send + Sync + 'static,
) -> AnyView {
    view! {
        <Line
            id="drop-name"
            label=t::DROP_NAME.get()
            value=name
            change=Callback::new(change)
            locked=Signal::derive(move || state.session.is_read_only(Target::Drop))
            most=NAME_MOST as u32
        />
    }
    .into_any()
}

/// The numbers at hand have no name yet.
fn keep(state: State) -> AnyView {
    let name = RwSignal::new(String::new());
    view! {
        {name_line(state, Signal::derive(move || name.get()), move |text| name.set(text))}
        <button type="button" on:click=move |_| state.keep_drop(&name.get_untracked())>
            {t::KEEP_DROP}
        </button>
    }
    .into_any()
}

/// They have one: another, a copy, the bin.
fn change(state: State) -> AnyView {
    let name = Memo::new(move |_| state.session.drop_open.with(|open| open.job.name.clone()));
    let bin = move |_| {
        state.session.bin(Target::Drop, true);
        browser::go(DROP_IN_USE);
    };
    view! {
        {name_line(state, Signal::derive(move || name.get()), move |text| state.session.name_drop(text))}
        <p class="row">
            <button type="button" on:click=move |_| state.copy_drop()>
                {t::COPY_DROP}
            </button>
            <button type="button" on:click=bin>
                {t::DROP_INTO_BIN}
            </button>
        </p>
    }
    .into_any()
}

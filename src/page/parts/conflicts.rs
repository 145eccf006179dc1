//! Values that two people typed into one place without knowing of each other:
//! both are shown until one is chosen.

use crate::browser;
use crate::live::live;
use crate::memo::Memo;
use crate::route::Route;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::document::{Conflict, conflicts};
use coldseat_markup::view;
use leptos::prelude::*;

/// The open job's, as a standing notice.
pub fn conflict_notice(state: State) -> AnyView {
    let all = Memo::new(move |_| {
        let shown = matches!(state.route.get(), Route::Job { .. });
        state.open.with(|open| match open {
            Some(open) if shown => conflicts(&open.job),
            _ => Vec::new(),
        })
    });
    live(move || {
        let all = all.get();
        (!all.is_empty()).then(|| {
            let items: Vec<AnyView> = all.iter().map(|one| line(state, one)).collect();
            view! {
                <section class="notice notice-bad" aria-labelledby="conflicts-heading">
                    <h2 id="conflicts-heading">{t::CONFLICTS}</h2>
                    <p>{t::CONFLICTS_WHAT}</p>
                    <ul class="conflicts">{items}</ul>
                </section>
            }
            .into_any()
        })
    })
}

fn line(state: State, conflict: &Conflict) -> AnyView {
    let title = t::spot(&conflict.spot);
    let choices: Vec<AnyView> = conflict
        .values
        .iter()
        .enumerate()
        .map(|(which, (words, at))| {
            let words = match at {
                Some(at) => format!("{words} ({})", browser::date(*at)),
                None => words.clone(),
            };
            let path = conflict.path.clone();
            let label = format!("{}: {words}, {title}", t::CHOOSE);
            view! {
                <button
                    type="button"
                    aria-label=label
                    on:click=move |_| state.choose(Target::Job, &path, which)
                >
                    {words.clone()}
                </button>
            }
            .into_any()
        })
        .collect();
    view! {
        <li>
            <span>{title.clone()}</span>
            {choices}
        </li>
    }
    .into_any()
}

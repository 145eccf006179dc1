//! Values that two people typed into one place without knowing of each other:
//! both are shown until one is chosen.

use crate::browser;
use crate::library::OpenJob;
use crate::live::live;
use crate::memo::Memo;
use crate::screens::Route;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::document::{Conflict, conflicts};
use coldseat_markup::view;
use leptos::prelude::*;

/// The open job's, or the cold drop's, as a standing notice.
pub fn conflict_notice(state: State) -> AnyView {
    let all = Memo::new(move |_| match state.ui.route.get() {
        Route::Job { .. } => {
            let of = |open: &OpenJob| conflicts(&open.job);
            let all = state
                .session
                .open
                .with(|open| open.as_ref().map_or(Vec::new(), of));
            (Target::Job, all)
        }
        Route::Drop(_) => {
            let all = state.session.drop_open.with(|open| conflicts(&open.job));
            (Target::Drop, all)
        }
        _ => (Target::Job, Vec::new()),
    });
    live(move || {
        let (target, all) = all.get();
        (!all.is_empty()).then(|| {
            let items: Vec<AnyView> = all.iter().map(|one| line(state, target, one)).collect();
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

fn line(state: State, target: Target, conflict: &Conflict) -> AnyView {
    let title = match target {
        Target::Drop => t::drop_spot(&conflict.spot),
        Target::Job | Target::Shop => t::spot(&conflict.spot),
    };
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
                    on:click=move |_| state.session.choose(target, &path, which)
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

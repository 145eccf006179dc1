//! A list of documents of which some are drawn, more at a tap.

use crate::texts as t;
use coldseat_markup::view;
use leptos::prelude::*;

/// The lines, and the button that draws `more` further ones of `count`.
pub fn listed(lines: Vec<AnyView>, count: usize, shown: RwSignal<usize>, more: usize) -> AnyView {
    let further = (count > shown.get()).then(|| {
        let words = t::more_jobs(shown.get(), count);
        view! {
            <button type="button" on:click=move |_| shown.update(|n| *n += more)>
                {words}
            </button>
        }
    });
    view! {
        <ul class="jobs">{lines}</ul>
        {further}
    }
    .into_any()
}

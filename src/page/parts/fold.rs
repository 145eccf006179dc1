//! A part behind a line of its own, worked out only while it is open.

use crate::live::live;
use coldseat_markup::view;
use leptos::prelude::*;

/// The part; `body` is asked while it is open, and again when what it reads
/// changes.
pub fn fold(summary: &'static str, body: impl Fn() -> AnyView + Send + Sync + 'static) -> AnyView {
    let open = RwSignal::new(false);
    let shown = move || open.get().then(&body);
    view! {
        <details class="help" on:toggle=move |_| open.update(|open| *open = !*open)>
            <summary>{summary}</summary>
            {live(shown)}
        </details>
    }
    .into_any()
}

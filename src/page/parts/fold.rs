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
        <details class="help" prop:open=move || open.get()
            on:toggle=move |event| open.set(is_open(&event))>
            <summary>{summary}</summary>
            {live(shown)}
        </details>
    }
    .into_any()
}

/// Whether a part that was opened or shut stands open: asked of itself, as a part
/// that is drawn anew in its place may have been left open by the one before.
pub fn is_open(event: &web_sys::Event) -> bool {
    event
        .target()
        .and_then(|part| js_sys::Reflect::get(&part, &"open".into()).ok())
        .is_some_and(|open| open.is_truthy())
}

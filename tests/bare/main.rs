//! One input and its text: the baseline that `cargo xtask bench` weighs beside
//! the page.

use leptos::prelude::*;

#[component]
fn Bare() -> impl IntoView {
    let text = RwSignal::new(String::new());
    view! {
        <input
            aria-label="text"
            prop:value=move || text.get()
            on:input=move |event| text.set(event_target_value(&event))
        />
        <p>{move || text.get()}</p>
    }
}

fn main() {
    mount_to_body(Bare);
}

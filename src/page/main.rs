//! The page: mounts only.
use leptos::prelude::*;
fn main() {
    mount_to_body(|| view! { <p>"Coldseat"</p> });
}

//! The page: mounts only.

mod answers;
mod app;
mod browser;
mod caret;
mod clock;
mod drawings;
mod feedback;
mod folder;
mod gauge;
mod heard;
mod library;
mod live;
mod memo;
mod offline;
mod parts;
mod screens;
mod session;
mod share;
mod show;
mod state;
mod storage;
mod tag;
mod texts;
mod tongue;
mod ui;
mod words;

fn main() {
    match words::start() {
        Ok(()) => leptos::mount::mount_to_body(app::App),
        // boot.js says so on the screen.
        Err(why) => wasm_bindgen::throw_str(why),
    }
}

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
mod ui;

fn main() {
    leptos::mount::mount_to_body(app::App);
}

//! The page: mounts only.

mod answers;
mod app;
mod browser;
mod caret;
mod clock;
mod desk;
mod drawings;
mod drops;
mod feedback;
mod folder;
mod gauge;
mod heard;
mod keeper;
mod library;
mod live;
mod memo;
mod offline;
mod parts;
mod route;
mod screens;
mod share;
mod show;
mod state;
mod storage;
mod tag;
mod texts;

fn main() {
    leptos::mount::mount_to_body(app::App);
}

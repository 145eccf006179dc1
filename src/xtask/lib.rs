//! What people and CI both call to set up, build, serve and check Coldseat.
//!
//! The commands live in the binary; what the browser tests share with them
//! (the folders, the static server, the writing of the offline worker) lives
//! in this library, so that a test sees the very bytes and headers that a
//! person gets.
//!
//! Nothing here is part of the page: no code of this crate reaches a phone.

pub mod bare;
pub mod bench;
pub mod budget;
pub mod check;
pub mod deny;
pub mod fuzz;
pub mod layout;
pub mod lighthouse;
pub mod notices;
pub mod one_file;
pub mod page;
pub mod precache;
pub mod rows;
pub mod run;
pub mod server;
pub mod setup;
pub mod shop;
pub mod simulate;
pub mod styles;
pub mod wasm_test;
pub mod words;

//! The invented jobs.

mod bench;
mod invented;
mod kind;

pub use kind::{Demo, put};

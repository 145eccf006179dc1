//! The tests of the finished page: one program, so that the harness keeps the
//! cores busy from the first to the last.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test says enough by failing"
)]

mod asides;
mod bore;
mod cases;
mod deck;
mod demos;
mod desk;
mod drops;
mod engines;
mod everyone;
mod files;
mod first_visit;
mod folder;
mod forced;
mod gauge;
mod hand;
mod heard;
mod installed;
mod job;
mod languages;
mod late;
mod learnt;
mod links;
mod many;
mod plain;
mod proud;
mod record;
mod saved;
mod scan;
mod sheets;
mod shell;
mod single;
mod storage;
mod taps;
mod updates;
mod ways;
mod wire;

#[path = "../shop/bench.rs"]
mod shop_bench;
#[path = "../shop/cases.rs"]
mod shop_cases;
#[path = "../shop/words.rs"]
mod words;

//! What a job is made of: the engine, the fields and their bounds, what was
//! typed and what it reads as, the steps as data. Nothing here judges.

pub mod before;
pub mod burst;
pub mod check;
#[cfg(test)]
mod check_tests;
pub mod engine;
pub mod entries;
pub mod field;
pub mod field_kind;
pub mod field_read;
#[cfg(test)]
mod field_tests;
pub mod field_usual;
pub mod from_deck;
pub mod hand;
pub mod hangs_on;
pub mod job;
pub mod ledger;
pub mod lookup;
pub mod part;
pub mod part_usual;
pub mod place;
pub mod reading;
pub mod readings;
pub mod shop_order;
pub mod stand;
pub mod step;

//! Parts that several screens use.

pub mod choice;
pub mod findings;
pub mod keys;
pub mod notice;
pub mod pad;
pub mod reading;
pub mod step;
pub mod strip;
pub mod verdict;

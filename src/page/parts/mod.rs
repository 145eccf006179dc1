//! Parts that several screens use.

pub mod again;
pub mod answer;
pub mod aside;
pub mod bore;
pub mod camera;
pub mod choice;
pub mod conflicts;
pub mod drop_answer;
pub mod drops;
pub mod findings;
pub mod fold;
pub mod keys;
pub mod marks;
pub mod notice;
pub mod order;
pub mod origin;
pub mod pad;
pub mod picture;
pub mod reading;
pub mod reason;
pub mod share;
pub mod step;
pub mod strip;
pub mod table;
pub mod timer;
pub mod verdict;

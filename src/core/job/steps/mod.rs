//! The steps of the shop, one file a phase: each a free function from readings
//! to a verdict. What two phases share (deck survey, loads, case of a drop) has
//! a file of its own. `assess` asks them all.

pub mod after_cut;
#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise
mod after_cut_tests;
pub mod all_low;
pub mod assess;
#[cfg(test)]
mod bench_tests;
pub mod bore;
pub mod by_fit;
pub mod counterbore;
pub mod deck;
pub mod drop;
pub mod drop_case;
pub mod drop_sheet;
#[cfg(test)]
mod drop_sheet_tests;
mod drop_warmth;
pub mod enquiry;
pub mod finish;
pub mod fit;
pub mod home;
pub mod kept_plan;
pub mod ledge;
pub mod loads;
pub mod look_back;
pub mod measure;
pub mod order;
pub mod passes;
pub mod proud;
#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod proud_tests;
pub mod seat;
pub mod shims;
pub mod shrink;
pub mod since_plan;
pub mod stand_proud;
pub mod survey;
#[cfg(test)]
mod tests;
pub mod together;
pub mod tools;
pub mod work_to;

//! What is offered beside a verdict: what a shop's jobs teach, which sleeve in
//! which hole, how long things take, what is handed over, where a number comes
//! from, what a fit holds.

pub mod again;
pub mod drop_ways;
pub mod flange_stress;
pub mod grip;
pub mod handover;
pub mod learnt;
pub mod learnt_home;
pub mod origin;
pub mod own_cuts;
pub mod pairs;
pub mod plan_heights;
#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod plan_heights_tests;
pub mod profile;
pub mod profile_needs;
#[cfg(test)]
mod profile_tests;
pub mod timing;
pub mod wants;
pub mod work_to_plan;
#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod work_to_plan_tests;

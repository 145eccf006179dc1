//! A job: one block, its engine profile, its cylinders and every number typed
//! for them.
//!
//! Every number is an *entry*: the text as typed, its unit, when it was typed.
//! An entry lives at a [`Place`] (whose it is, which [`Field`], which of the
//! field's places). What the numbers mean is worked out from the entries each
//! time ([`assess`]), never stored: a stored verdict can go stale.
//!
//! ```text
//! model <- verdict <- steps <- advice, demo
//! ```
//!
//! - [`model`]: engine, fields and their bounds, entries and what they read as
//!   (nothing, a number, or something unusable), the steps as data;
//! - [`verdict`]: signal, what to do next, numbers: the types that screens read;
//! - [`steps`]: a free function a step, from readings to a verdict;
//! - [`advice`]: what is offered beside a verdict;
//! - [`demo`]: the invented jobs.
//!
//! No file of it uses another that uses it back (`tests/layers.rs`). There is no
//! clock here: times are milliseconds since 1970, passed in.

pub mod advice;
pub mod demo;
pub mod model;
pub mod steps;
pub mod verdict;

pub use advice::{
    again, drop_ways, flange_stress, grip, handover, learnt, learnt_home, origin, own_cuts, pairs,
    plan_heights, profile, profile_needs, timing, wants, work_to_plan,
};
pub use model::entries::{Entries, Entry};
pub use model::field::Field;
pub use model::field_kind::UnitSystem;
pub use model::job::{Job, Unlock};
pub use model::place::{Millis, Owner, Place};
pub use model::{before, burst, check, engine, field, hand, ledger, part};
pub use steps::{
    after_cut, all_low, assess, deck, kept_plan, ledge, loads, look_back, order, passes, proud,
};

/// The cold drop: of a cylinder, and without a job.
pub mod drop {
    pub use super::steps::drop_case::*;
    pub use super::steps::drop_sheet::{DropSheet, field_of};
}

/// The steps as data.
pub mod step {
    pub use super::model::lookup::steps_of;
    pub use super::model::shop_order::STEPS;
    pub use super::model::step::{
        Calculation, Caution, Drawing, Mark, Phase, StepId, StepRecord, StepSpec, Subject,
    };
}

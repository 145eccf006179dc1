//! One file per screen.

pub mod deck;
pub mod drop;
pub mod engine;
pub mod engines;
pub mod files;
pub mod floor;
pub mod job;
pub mod jobs;
pub mod learnt;
pub mod new;
pub mod record;
pub mod settings;
pub mod shared;
pub mod steps;
pub mod whole;

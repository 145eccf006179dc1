//! Heat and cold: contraction, the chill, the cold drop, the joint, the air
//! that is left to breathe.

pub mod air;
pub mod chill;
pub mod cold_drop;
pub mod cold_reading;
pub mod contraction;
pub mod drop_band;
mod drop_input;
pub mod drop_inverse;
mod drop_lean;
pub mod drop_model;
pub mod drop_odds;
mod drop_run;
mod drop_series;
pub mod joint;
mod lean_model;
pub mod out_of_heat;
pub mod oxygen;
pub mod rest;
pub mod soak;
pub mod wall;

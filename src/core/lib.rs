//! The computations of fitting flanged dry sleeves.

pub mod document;
#[cfg(feature = "evaluator")]
pub mod evaluator;
pub mod job;
pub mod materials;
pub mod mechanics;
pub mod metrology;
pub mod numerics;
pub mod planning;
pub mod quantity;
pub mod thermal;

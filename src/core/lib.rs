//! The computations of fitting flanged dry sleeves.

pub mod quantity;

//! The computations of fitting flanged dry sleeves.

pub mod materials;
pub mod numerics;
pub mod quantity;
pub mod thermal;

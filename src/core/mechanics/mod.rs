//! Forces: press fits as rings, and the hardware that pulls a sleeve down.

pub mod pull;
pub mod rings;

//! Forces: press fits as rings, and the hardware that pulls a sleeve down.

pub mod block_ring;
pub mod bore_profile;
pub mod pull;
pub mod rings;
pub mod service;

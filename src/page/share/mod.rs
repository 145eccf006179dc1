//! What leaves this device and comes to it, at the person's word only.

pub mod file;
pub mod import;
pub mod link;
pub mod qr;

//! What a front end asks of the core, worked out: it only words and draws it.
//!
//! Bands, means, defaults and verdicts come from here and not from the page.
//! What cannot be used is never drawn as if it were there; its step says what
//! to mend.

pub mod drop;
pub mod picture;
pub mod record;
pub mod whole;

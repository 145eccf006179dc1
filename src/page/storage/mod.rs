//! The two stores of the browser, as [`coldseat_core::storage`] wants them:
//! [`local`] is its local storage, [`durable`] the second store, which tells when a
//! write lies on the medium.

pub mod durable;
pub mod local;

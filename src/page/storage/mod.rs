//! The two stores of the browser, as [`coldseat_core::storage`] wants them:
//! [`local`] is its local storage, [`durable`] the second store, which tells when a
//! write lies on the medium; [`dav`] is the shop's folder beside the page.

pub mod dav;
pub mod durable;
pub mod local;

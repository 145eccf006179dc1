//! The two stores of the browser, as [`coldseat_core::storage`] wants them:
//! [`local`] is its local storage, [`durable`] the second store, which tells when a
//! write lies on the medium. `keeping` runs what keeps documents over both; [`dav`] is
//! the shop's folder beside the page.

pub mod dav;
pub mod durable;
mod keeping;
pub mod local;

pub use keeping::{Event, Keeping, Place, StorageState, Store, with};

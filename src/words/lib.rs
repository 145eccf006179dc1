//! The page's words as data: one folder a language, one Fluent file a subject.
//!
//! Fluent (projectfluent.org, syntax 1.0) is the form; of it messages with
//! slots (`{ $gap }`), quoted blanks (`{" "}`) and one choice of a plural a
//! message are taken, and all else is refused by name. What is read here at build
//! time is checked ([`check`]), written as Rust for the page ([`rust`]) and packed
//! into one file a language ([`pack`]), which the page loads beside its program.
//!
//! A build fails where a message, a slot or a case of a plural is missing in a
//! language, or is there without the others knowing it.
//!
//! The page's program holds [`fill`] alone: without the feature `read` there is
//! nothing else.

mod said;
pub use said::{fill, plural_case, plural_cases};

#[cfg(feature = "read")]
mod made;
#[cfg(feature = "read")]
mod message;
#[cfg(feature = "read")]
mod packed;
#[cfg(feature = "read")]
mod read;
#[cfg(feature = "read")]
pub use made::{digest, rust};
#[cfg(feature = "read")]
pub use message::{Language, Message, Piece};
#[cfg(feature = "read")]
pub use packed::pack;
#[cfg(feature = "read")]
pub use read::{LANGUAGES, all, check, folder, subject};
#[cfg(all(test, feature = "read"))]
#[allow(clippy::expect_used, reason = "a test says enough by failing")]
mod tests;

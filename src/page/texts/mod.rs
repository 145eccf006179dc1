//! Every text a person reads. One file per language; a second language is a
//! second file with the same names.

mod en;
mod en_long;
pub use en::*;
pub use en_long::*;

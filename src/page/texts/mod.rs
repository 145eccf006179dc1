//! Every text a person reads. One file per language; a second language is a
//! second file with the same names.

mod en;
mod en_after;
mod en_aside;
mod en_bore;
mod en_drawings;
mod en_drop;
mod en_drops;
mod en_keeping;
mod en_long;
mod en_mend;
mod en_names;
mod en_origin;
mod en_part;
mod en_record;
mod en_share;
mod en_steps;
mod en_work;
pub use en::*;
pub use en_after::*;
pub use en_aside::*;
pub use en_bore::*;
pub use en_drawings::*;
pub use en_drop::*;
pub use en_drops::*;
pub use en_keeping::*;
pub use en_long::*;
pub use en_mend::*;
pub use en_names::*;
pub use en_origin::*;
pub use en_part::*;
pub use en_record::*;
pub use en_share::*;
pub use en_steps::*;
pub use en_work::*;

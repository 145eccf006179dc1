//! English: the bore of a fitted sleeve down its length.

use coldseat_core::quantity::report::Fault;

/// A bore that cannot be drawn, with the dimension that is in the way.
#[must_use]
pub fn no_profile(field: &str, fault: &Fault) -> String {
    format!(
        "No picture of the bore down its length. {field}: {}.",
        fault.message
    )
}

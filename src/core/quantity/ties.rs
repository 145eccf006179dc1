//! Ties: a length against a limit.
//!
//! What a person types are decimals; sums and differences of them are not exact
//! in binary, so a depth that is on size to the last digit typed comes out some
//! 1e-17 m to one side. Every comparison of a length with a limit therefore
//! allows a nanometre in favour of what was typed: the value that stands on its
//! limit is within it. A thousandth of what any gauge of the trade resolves.

/// Allowed in a comparison, m.
pub const ALLOWANCE_M: f64 = 1e-9;

/// Whether a length is at most its limit, both in metres.
///
/// # Example
/// 0.3117 in of flange less 0.0100 in proud is 0.3017 in of counterbore, on size:
/// ```
/// use coldseat_core::quantity::{Length, ties};
/// let inch = |x| Length::from_inch(x).as_m();
/// let wanted = inch(0.3117) - inch(0.0100);
/// assert!(inch(0.3017) > wanted);
/// assert!(ties::at_most(inch(0.3017), wanted));
/// assert!(!ties::at_most(inch(0.30171), wanted));
/// ```
#[must_use]
pub fn at_most(value_m: f64, limit_m: f64) -> bool {
    value_m <= limit_m + ALLOWANCE_M
}

/// Whether a length is at least its limit, both in metres.
#[must_use]
pub fn at_least(value_m: f64, limit_m: f64) -> bool {
    value_m >= limit_m - ALLOWANCE_M
}

/// Whether nothing is left of a length: what is exactly 0 by the digits typed
/// counts as nothing.
#[must_use]
pub fn nothing_left(left_m: f64) -> bool {
    at_most(left_m, 0.0)
}

//! Measuring: what the readings say, and what they cannot say.

pub mod fit;
pub mod form;
pub mod scatter;
pub mod seat;
pub mod seat_deck;

use crate::quantity::bounds::Bound;
use crate::quantity::report::Fault;

/// Checks every value of a list, naming the first that is outside.
///
/// # Errors
/// A fault at `field[i]`.
pub(crate) fn check_each(
    bound: &Bound,
    field: &str,
    values: impl IntoIterator<Item = f64>,
) -> Result<(), Fault> {
    for (i, value) in values.into_iter().enumerate() {
        if !bound.contains(value) {
            return Err(Fault::out_of_range(format!("{field}[{i}]"), value, bound));
        }
    }
    Ok(())
}

/// Checks that a list has the length that it must have.
///
/// # Errors
/// A fault at `field`.
pub(crate) fn check_count(field: &str, count: usize, wanted: usize) -> Result<(), Fault> {
    if count == wanted {
        return Ok(());
    }
    Err(Fault::new(
        field,
        format!("{count} readings where {wanted} are wanted: one at each clock position"),
    ))
}

/// Checks that a list is neither empty nor longer than `most`.
///
/// # Errors
/// A fault at `field`.
pub(crate) fn check_some(field: &str, count: usize, most: usize) -> Result<(), Fault> {
    if 1 <= count && count <= most {
        return Ok(());
    }
    Err(Fault::new(
        field,
        format!("{count} readings: at least 1 and at most {most} are taken"),
    ))
}

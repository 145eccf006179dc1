//! The list of shims: sizes, and how many are left of each.

use crate::job::model::field::Field;
use crate::job::model::field_usual::SHIMS_MOST;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Missing};
use crate::quantity::Length;

/// A size of the list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ListedShim {
    /// Its row.
    pub index: u8,
    /// Its thickness.
    pub size: Length,
    /// How many are left: a whole number.
    pub left: f64,
}

impl ListedShim {
    /// Where it stands how many are left.
    #[must_use]
    pub const fn place_of_left(&self) -> Place {
        in_list(Field::ShimsLeft, self.index)
    }
}

const fn in_list(field: Field, index: u8) -> Place {
    Place {
        index,
        ..Place::of_engine(field)
    }
}

/// A row of the list; `None` where nothing stands in it.
///
/// # Errors
/// A size without its count or a count without its size, one that cannot be used.
pub fn listed_shim(job: &Job, index: u8) -> Result<Option<ListedShim>, Lack> {
    let read = |field| job.reading(in_list(field, index)).number();
    let missing = |field| {
        Lack::Missing(Missing {
            owner: Owner::Block,
            field,
            places: 1,
        })
    };
    match (read(Field::ShimSizes)?, read(Field::ShimsLeft)?) {
        (None, None) => Ok(None),
        (None, Some(_)) => Err(missing(Field::ShimSizes)),
        (Some(_), None) => Err(missing(Field::ShimsLeft)),
        (Some(size), Some(left)) => Ok(Some(ListedShim {
            index,
            size: Length::from_m(size),
            left,
        })),
    }
}

/// All of the list.
///
/// # Errors
/// As [`listed_shim`].
pub fn listed_shims(job: &Job) -> Result<Vec<ListedShim>, Lack> {
    let rows = (0..SHIMS_MOST).map(|index| listed_shim(job, index));
    rows.filter_map(Result::transpose).collect()
}

//! Which invented job, and how its readings are put.

use crate::job::model::entries::Entry;
use crate::job::model::job::Job;
use crate::job::model::place::{Millis, Place};

/// A demo.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Demo {
    /// In-line five, inches; cylinder 3 is not home.
    InchFive,
    /// V-eight, millimetres; cylinder 6 is not home.
    MetricEight,
}

impl Demo {
    /// Both.
    pub const ALL: [Self; 2] = [Self::InchFive, Self::MetricEight];

    /// The cylinder that stopped moving but is not home.
    #[must_use]
    pub const fn not_home(self) -> u8 {
        match self {
            Self::InchFive => 3,
            Self::MetricEight => 6,
        }
    }
}

/// Types a text into a place of a job.
pub fn put(job: &mut Job, place: Place, text: impl Into<String>, at: Millis) {
    let unit = job.unit(place.field);
    job.entries.put(place, Entry::new(text, unit, at));
}

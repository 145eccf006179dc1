//! The survey of a deck: its low spots, and how low it lies beside a hole.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::Lack;
use crate::job::model::readings::mean;

/// Rows across a deck that are surveyed: one before each bore, one behind the
/// last, left and right of each.
#[must_use]
pub fn spots(job: &Job, bank: u8) -> u8 {
    let bores = (1..=job.engine.cylinders).filter(|c| job.engine.bank_of(*c) == bank);
    (2 * (bores.count() + 1)).min(usize::from(Field::LowSpot.spec().places.count())) as u8
}

/// The deck beside a hole, the deck's highest point 0 and below it negative: as
/// measured there, else the mean of the surveyed points round it, of the rows
/// before and behind the hole; `None` where neither is there. The mean is ours,
/// no source: a deck is low over more than one bore.
///
/// # Errors
/// A reading beside the hole or round it that cannot be used.
pub fn deck_beside(job: &Job, bank: u8, cylinder: u8) -> Result<Option<f64>, Lack> {
    let here = Place::of_cylinder(cylinder, Field::DeckHere, 0);
    if let Some(below) = job.reading(here).number()? {
        return Ok(Some(-below));
    }
    // Two points a row, left and right; a row before each bore and one behind.
    let row = (1..cylinder)
        .filter(|c| job.engine.bank_of(*c) == bank)
        .count();
    let round: Vec<f64> = job
        .readings(Owner::Bank(bank), Field::LowSpot)?
        .into_iter()
        .filter(|(index, _)| (2 * row..2 * row + 4).contains(&usize::from(*index)))
        .map(|(_, below)| below)
        .collect();
    Ok(mean(&round).map(|below| -below))
}

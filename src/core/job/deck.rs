//! The deck: locked until every flange of the bank is home, then how much to
//! cut and what each flange loses.
//!
//! An unseated flange that is decked flush drops later by a thou or two and
//! takes the head gasket with it: hence the lock. It can be released by hand;
//! the reason is kept in the record.

use super::check::{Checked, Sheet, check};
use super::report::CylinderReport;
use super::{Field, Job, Owner, Place, Unlock};
use crate::planning::deck::{DeckHole, DeckInput, DeckPlan, deck};
use crate::quantity::Length;
use crate::quantity::report::Fault;

/// Whether a bank may be decked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Lock {
    /// Every flange is home.
    Open,
    /// These are not.
    Locked(Vec<u8>),
    /// Released by hand although these are not home.
    ByHand(Vec<u8>, Unlock),
    /// No cylinder of the bank gets a sleeve.
    NoSleeves,
}

impl Lock {
    /// Whether the cut may be made.
    #[must_use]
    pub const fn is_open(&self) -> bool {
        matches!(self, Self::Open | Self::ByHand(..))
    }
}

/// The cylinders of a bank that get a sleeve.
#[must_use]
pub fn of_bank(job: &Job, bank: u8) -> Vec<u8> {
    job.cylinders()
        .filter(|c| job.engine.bank_of(*c) == bank)
        .collect()
}

/// The lock of a bank.
#[must_use]
pub fn lock(job: &Job, reports: &[CylinderReport], bank: u8) -> Lock {
    let cylinders = of_bank(job, bank);
    if cylinders.is_empty() {
        return Lock::NoSleeves;
    }
    let waiting: Vec<u8> = cylinders
        .into_iter()
        .filter(|c| !reports.iter().any(|r| r.cylinder == *c && r.is_seated()))
        .collect();
    match job.unlocks.get(&bank) {
        _ if waiting.is_empty() => Lock::Open,
        Some(unlock) => Lock::ByHand(waiting, unlock.clone()),
        None => Lock::Locked(waiting),
    }
}

/// A planned cut, hole by hole.
#[derive(Clone, Debug, PartialEq)]
pub struct BankPlan {
    /// Cylinders in the order of the plan's flanges.
    pub cylinders: Vec<u8>,
    /// Cylinders without heights or thickness: not in the plan.
    pub without: Vec<u8>,
    /// The plan.
    pub plan: DeckPlan,
}

/// The cut of a bank: from the surveyed low spots and from each flange's
/// height after the last pull (its lowest clock: that is where it would stay
/// uncut).
///
/// # Errors
/// A [`Fault`] where nothing is surveyed or a number cannot be used.
pub fn plan(job: &Job, bank: u8) -> Result<BankPlan, Fault> {
    let low: Vec<Length> = job
        .entries
        .values(Owner::Bank(bank), Field::LowSpot)
        .into_iter()
        .map(|(_, below)| Length::from_m(-below))
        .collect();
    if low.is_empty() {
        return Err(Fault::new(
            "low_spot",
            "no point of the deck is surveyed: enter the low spots, the highest point is 0",
        ));
    }
    let mut cylinders = Vec::new();
    let mut without = Vec::new();
    let mut holes = Vec::new();
    for cylinder in of_bank(job, bank) {
        let least = |field| {
            job.entries
                .values(Owner::Cylinder(cylinder), field)
                .into_iter()
                .map(|(_, si)| si)
                .min_by(f64::total_cmp)
        };
        match (least(Field::SeatHeight), least(Field::FlangeThickness)) {
            (Some(height), Some(thickness)) => {
                cylinders.push(cylinder);
                holes.push(DeckHole {
                    deck: Length::from_m(-least(Field::DeckHere).unwrap_or(0.0)),
                    height: Length::from_m(height),
                    thickness: Length::from_m(thickness),
                });
            }
            _ => without.push(cylinder),
        }
    }
    let sheet = Sheet {
        entries: &job.entries,
        units: job.engine.units,
        cylinders: job.engine.cylinders,
    };
    let planned = match check(&sheet, Place::of_bank(bank, Field::DeckCut, 0)) {
        Checked::Good(si) | Checked::Questioned(si, _) => Some(Length::from_m(si)),
        Checked::Empty | Checked::Refused(_) => {
            job.engine_si(Field::PlannedCut).map(Length::from_m)
        }
    };
    let clean_up = Length::from_m(job.engine_si(Field::CleanUp).ok_or_else(|| {
        Fault::new(
            "clean_up",
            "the clean-up cut is missing: enter it with the limits",
        )
    })?);
    let plan = deck(&DeckInput {
        low: &low,
        holes: &holes,
        clean_up,
        planned,
    })?;
    Ok(BankPlan {
        cylinders,
        without,
        plan,
    })
}

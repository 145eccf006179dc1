//! What is handed over with the block, and what is taped to it beforehand: the
//! gasket that the pistons ask for, the deck's new height, the steps that were
//! not done; and cylinder by cylinder what to hone and cut to.
//!
//! - Gasket: compressed thickness >= largest protrusion + least clearance to the
//!   head (both as entered; common practice, no source beyond the engine
//!   maker's sheet). Of the grades entered the thinnest that is thick enough: a
//!   thicker one costs compression.
//! - Deck height: as measured at both ends before the cut, less the cut.
//! - Bore to hone to: mean diameter of its sleeve less the fit's band, both at
//!   one temperature.
//! - Depth to cut to: least flange thickness less the stand-proud wanted.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::reading::Lack;
use crate::job::model::readings::{Readings, smallest};
use crate::job::model::shop_order::STEPS;
use crate::job::model::step::StepId;
use crate::job::steps::assess::assess_whole;
use crate::job::steps::deck::{lock, plan};
use crate::job::verdict::report::{CylinderReport, StepReport};
use crate::job::verdict::signal::{Signal, State};
use crate::quantity::Length;

pub use crate::job::steps::finish::{Gasket, gasket};

/// A deck's heights above the main line after its cut, at both ends; empty
/// where they were not measured, where it is not free to be cut, or where the
/// cut cannot be planned: its step says why.
#[must_use]
pub fn deck_heights(job: &Job, reports: &[CylinderReport], bank: u8) -> Vec<Length> {
    let heights = Readings::new(job, Owner::Bank(bank)).complete(Field::DeckHeight);
    match (plan(job, bank), heights) {
        (Ok(cut), Ok(heights)) if lock(job, reports, bank).is_open() => heights
            .into_iter()
            .map(|si| Length::from_m(si - cut.plan.removal.as_m()))
            .collect(),
        _ => Vec::new(),
    }
}

/// Steps not done, with those they are not done for; the report itself aside.
#[must_use]
pub fn not_done(job: &Job, reports: &[CylinderReport]) -> Vec<(StepId, Vec<Owner>)> {
    not_where(job, reports, StepReport::is_settled)
}

/// Steps that are marked done and not measured, with those they are marked for.
#[must_use]
pub fn only_marked(job: &Job, reports: &[CylinderReport]) -> Vec<(StepId, Vec<Owner>)> {
    not_where(job, reports, |step| {
        step.signal != Signal::Marked || step.id.spec().fields.is_empty()
    })
}

fn not_where(
    job: &Job,
    reports: &[CylinderReport],
    holds: impl Fn(&StepReport) -> bool,
) -> Vec<(StepId, Vec<Owner>)> {
    let mut all = assess_whole(job, reports);
    all.extend(
        reports
            .iter()
            .filter(|r| r.state != State::LeftOut)
            .map(|r| (Owner::Cylinder(r.cylinder), r.steps.clone())),
    );
    STEPS
        .iter()
        .filter(|spec| spec.id != StepId::Report)
        .filter_map(|spec| {
            let of: Vec<Owner> = all
                .iter()
                .filter(|(_, steps)| steps.iter().any(|s| s.id == spec.id && !holds(s)))
                .map(|(owner, _)| *owner)
                .collect();
            (!of.is_empty()).then_some((spec.id, of))
        })
        .collect()
}

/// What to make of one cylinder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Targets {
    /// Which.
    pub cylinder: u8,
    /// Bore to hone to, smallest and largest.
    pub bore: Option<(Length, Length)>,
    /// Depth of the counterbore.
    pub depth: Option<Length>,
    /// How far the flange shall stand proud.
    pub proud: Option<Length>,
}

/// The targets of every cylinder that gets a sleeve; what cannot be told yet is
/// left open, and its step says what it waits for.
#[must_use]
pub fn targets(job: &Job) -> Vec<Targets> {
    job.cylinders()
        .map(|cylinder| {
            let r = Readings::of_cylinder(job, cylinder);
            let worked = |lengths: Result<(f64, f64), Lack>| match lengths {
                Ok((low, high)) => Some((Length::from_m(low), Length::from_m(high))),
                Err(_) => None, // told by its step
            };
            let bore = || {
                let mean = r.mean(Field::SleeveOd)?;
                let (low, high) = (r.engine(Field::FitLow)?, r.engine(Field::FitHigh)?);
                Ok((mean - high, mean - low))
            };
            let depth = || {
                let thickness = r.complete(Field::FlangeThickness)?;
                let least =
                    smallest(&thickness).ok_or_else(|| r.missing(Field::FlangeThickness, 1))?;
                let proud = r.engine(Field::TargetProud)?;
                Ok((least - proud, proud))
            };
            let depth = worked(depth());
            Targets {
                cylinder,
                bore: worked(bore()),
                depth: depth.map(|(depth, _)| depth),
                proud: r.length(Field::TargetProud).ok(),
            }
        })
        .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::Place;
    use crate::job::steps::assess::assess;
    use crate::quantity::parse::Unit;

    fn inch(length: Length) -> f64 {
        length.as_m() / 0.0254
    }

    /// Worked by hand from the readings typed here and the demo's limits: fit
    /// 0.0010 to 0.0015 in, stand-proud 0.0100 in, gasket 0.0450 in, clearance
    /// 0.0300 in at least.
    #[test]
    fn by_hand() {
        let mut job = Demo::InchFive.job(0);
        let mut put = |owner, field, texts: &[&str]| {
            for (index, text) in texts.iter().enumerate() {
                let place = Place {
                    owner,
                    field,
                    index: index as u8,
                };
                job.entries.put(place, Entry::new(*text, Unit::Inch, 0));
            }
        };
        let two = Owner::Cylinder(2);
        put(
            two,
            Field::SleeveOd,
            &["4.4412", "4.4414", "4.4412", "4.4414", "4.4412", "4.4414"],
        );
        put(
            two,
            Field::FlangeThickness,
            &["0.2191", "0.2190", "0.2192", "0.2191"],
        );
        put(two, Field::PistonProud, &["0.0120", "0.0110"]);
        put(
            Owner::Cylinder(4),
            Field::PistonProud,
            &["0.0160", "0.0155"],
        );
        let found = targets(&job);
        let target = found.iter().find(|t| t.cylinder == 2).unwrap();
        let (low, high) = target.bore.unwrap();
        // 4.4413 less 0.0015 and 0.0010.
        assert!((inch(low) - 4.4398).abs() < 1e-9);
        assert!((inch(high) - 4.4403).abs() < 1e-9);
        // 0.2190 less 0.0100.
        assert!((inch(target.depth.unwrap()) - 0.2090).abs() < 1e-9);
        let gasket = gasket(&job).unwrap().unwrap();
        // 0.0160 and 0.0300: 0.0460, more than the 0.0450 entered.
        assert!((inch(gasket.least.unwrap()) - 0.0460).abs() < 1e-9);
        assert_eq!(gasket.suffices(), Some(false));
        assert_eq!(gasket.grade, None);
        // Of 0.0430, 0.0520 and 0.0470 the last is the thinnest that will do.
        let mut with = |texts: &[&str]| {
            for (index, text) in texts.iter().enumerate() {
                let place = Place {
                    index: index as u8,
                    ..Place::of_engine(Field::GasketGrades)
                };
                let entry = Entry::new(*text, job.unit(place.field), 0);
                job.entries.put(place, entry);
            }
            super::gasket(&job).unwrap().unwrap().grade.unwrap()
        };
        assert_eq!(with(&["0.0430"]), None);
        let grade = with(&["0.0430", "0.0520", "0.0470"]).unwrap();
        assert!((inch(grade) - 0.0470).abs() < 1e-9);
    }

    /// A bank with a sleeve that is not home has no new height; by hand: the
    /// demo's deck is measured 14.5000 and 14.5006 in.
    #[test]
    fn a_locked_deck_has_no_new_height_and_what_is_open_is_named() {
        let job = Demo::InchFive.job(0);
        let reports = assess(&job);
        assert!(deck_heights(&job, &reports, 0).is_empty());
        let open = not_done(&job, &reports);
        let seat = open.iter().find(|(step, _)| *step == StepId::Seat).unwrap();
        assert_eq!(seat.1, [Owner::Cylinder(Demo::InchFive.not_home())]);
        let mut released = job.clone();
        released.unlocks.insert(
            0,
            crate::job::Unlock {
                reason: "shown".to_owned(),
                at: 0,
            },
        );
        let removal = plan(&released, 0).unwrap().plan.removal;
        let heights = deck_heights(&released, &reports, 0);
        assert_eq!(heights.len(), 2);
        assert!((inch(heights[0]) - (14.5 - inch(removal))).abs() < 1e-9);
        assert!((inch(heights[1]) - (14.5006 - inch(removal))).abs() < 1e-9);
    }
}

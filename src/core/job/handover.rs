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

use super::assess::assess_owner;
use super::deck::{Lock, lock, plan};
use super::report::{Answer, CylinderReport};
use super::step::{STEPS, StepId, Subject};
use super::{Field, Job, Owner};
use crate::quantity::Length;

/// The gasket that the pistons ask for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gasket {
    /// Largest protrusion measured.
    pub protrusion: Length,
    /// Least compressed thickness, where the least clearance is entered.
    pub least: Option<Length>,
    /// The gasket that is entered.
    pub entered: Option<Length>,
    /// The thinnest grade entered that is thick enough; the outer `None` where
    /// no grade is entered or the least is not known.
    pub grade: Option<Option<Length>>,
}

/// The gasket to buy; `None` before a piston is measured.
#[must_use]
pub fn gasket(job: &Job) -> Option<Gasket> {
    let most = job
        .cylinders()
        .flat_map(|c| job.entries.values(Owner::Cylinder(c), Field::PistonProud))
        .map(|(_, si)| si)
        .max_by(f64::total_cmp)?;
    let engine = |field| job.engine_si(field).map(Length::from_m);
    let least = engine(Field::HeadLeast).map(|least| Length::from_m(most + least.as_m()));
    let grades = job.entries.values(Owner::Block, Field::GasketGrades);
    let grade = least.filter(|_| !grades.is_empty()).map(|least| {
        grades
            .iter()
            .map(|(_, si)| *si)
            .filter(|si| *si >= least.as_m() - 1e-9)
            .min_by(f64::total_cmp)
            .map(Length::from_m)
    });
    Some(Gasket {
        protrusion: Length::from_m(most),
        least,
        entered: engine(Field::Gasket),
        grade,
    })
}

impl Gasket {
    /// Whether the gasket that is entered is thick enough; `None` where it or
    /// the clearance is not entered.
    #[must_use]
    pub fn suffices(&self) -> Option<bool> {
        let (least, entered) = (self.least?, self.entered?);
        Some(entered.as_m() >= least.as_m() - 1e-9)
    }
}

/// A deck's heights above the main line after its cut, at both ends; empty
/// where they were not measured, where it is not free to be cut, or where the
/// cut cannot be planned.
#[must_use]
pub fn deck_heights(job: &Job, reports: &[CylinderReport], bank: u8) -> Vec<Length> {
    let open = matches!(lock(job, reports, bank), Lock::Open | Lock::ByHand(..));
    let Some(cut) = plan(job, bank).ok().filter(|_| open) else {
        return Vec::new();
    };
    job.entries
        .values(Owner::Bank(bank), Field::DeckHeight)
        .into_iter()
        .map(|(_, si)| Length::from_m(si - cut.plan.removal.as_m()))
        .collect()
}

/// Steps not done, with those they are not done for; the report itself aside.
#[must_use]
pub fn not_done(job: &Job, reports: &[CylinderReport]) -> Vec<(StepId, Vec<Owner>)> {
    let block = assess_owner(job, Owner::Block);
    let banks: Vec<_> = (0..job.engine.banks())
        .map(|bank| (Owner::Bank(bank), assess_owner(job, Owner::Bank(bank))))
        .collect();
    STEPS
        .iter()
        .filter(|spec| spec.id != StepId::Report)
        .filter_map(|spec| {
            let settled = |steps: &[super::report::StepReport]| {
                steps
                    .iter()
                    .find(|s| s.id == spec.id)
                    .is_none_or(|s| s.is_settled())
            };
            let missing: Vec<Owner> = match spec.subject {
                Subject::Block => Some(Owner::Block)
                    .filter(|_| !settled(&block))
                    .into_iter()
                    .collect(),
                Subject::Bank => banks
                    .iter()
                    .filter(|(_, steps)| !settled(steps))
                    .map(|(owner, _)| *owner)
                    .collect(),
                Subject::Cylinder => job
                    .cylinders()
                    .filter(|c| {
                        reports
                            .iter()
                            .find(|r| r.cylinder == *c)
                            .is_some_and(|r| !settled(&r.steps))
                    })
                    .map(Owner::Cylinder)
                    .collect(),
            };
            (!missing.is_empty()).then_some((spec.id, missing))
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

/// The targets of every cylinder that gets a sleeve.
#[must_use]
pub fn targets(job: &Job, reports: &[CylinderReport]) -> Vec<Targets> {
    let engine = |field| job.engine_si(field);
    job.cylinders()
        .map(|cylinder| {
            let sleeve = job
                .entries
                .values(Owner::Cylinder(cylinder), Field::SleeveOd);
            let mean = (!sleeve.is_empty())
                .then(|| sleeve.iter().map(|(_, si)| si).sum::<f64>() / sleeve.len() as f64);
            let band = engine(Field::FitLow).zip(engine(Field::FitHigh));
            let bore = mean.zip(band).map(|(mean, (low, high))| {
                (Length::from_m(mean - high), Length::from_m(mean - low))
            });
            let depth = reports
                .iter()
                .find(|r| r.cylinder == cylinder)
                .and_then(|r| r.step(StepId::Counterbore))
                .and_then(|s| match &s.answer {
                    Answer::Counterbore(cut) => Some(cut.depth),
                    _ => None,
                });
            let least = job
                .entries
                .values(Owner::Cylinder(cylinder), Field::FlangeThickness)
                .into_iter()
                .map(|(_, si)| si)
                .min_by(f64::total_cmp);
            let proud = engine(Field::TargetProud);
            // Before the first depth is measured the step has no answer yet.
            let planned = least
                .zip(proud)
                .map(|(least, proud)| Length::from_m(least - proud));
            Targets {
                cylinder,
                bore,
                depth: depth.or(planned),
                proud: proud.map(Length::from_m),
            }
        })
        .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::assess::assess;
    use crate::job::demo::Demo;
    use crate::job::{Entry, Place};
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
        let reports = assess(&job);
        let found = targets(&job, &reports);
        let target = found.iter().find(|t| t.cylinder == 2).unwrap();
        let (low, high) = target.bore.unwrap();
        // 4.4413 less 0.0015 and 0.0010.
        assert!((inch(low) - 4.4398).abs() < 1e-9);
        assert!((inch(high) - 4.4403).abs() < 1e-9);
        // 0.2190 less 0.0100.
        assert!((inch(target.depth.unwrap()) - 0.2090).abs() < 1e-9);
        let gasket = gasket(&job).unwrap();
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
            super::gasket(&job).unwrap().grade.unwrap()
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

//! What is handed over with the block, and what is taped to it beforehand: the
//! gasket that the pistons ask for, the deck's new height, the steps that were
//! not done; and cylinder by cylinder what to hone and cut to.
//!
//! - Gasket: compressed thickness >= largest protrusion + least clearance to the
//!   head (both as entered; common practice, no source beyond the engine
//!   maker's sheet). Of the grades entered the thinnest that is thick enough: a
//!   thicker one costs compression.
//! - Deck height: as measured at both ends before the cut, less the cut.
//! - Bore to hone to: mean diameter of its sleeve less the fit's band.
//! - Depth to cut to: least flange thickness less the stand-proud wanted.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::Standing;
use crate::job::model::readings::Readings;
use crate::job::model::shop_order::STEPS;
use crate::job::model::step::{Mark, StepId};
use crate::job::steps::assess::assess_whole;
use crate::job::steps::deck::{lock, plan};
use crate::job::steps::stand_proud::target_proud;
use crate::job::steps::work_to::work_to;
use crate::job::verdict::report::{CylinderReport, StepReport};
use crate::job::verdict::signal::{Signal, State};
use crate::job::verdict::work_to::WorkTo;
use crate::quantity::Length;

pub use crate::job::steps::finish::{Gasket, gasket};

/// Whether somebody has said that a deck is cut: a cut that is decided on is none yet.
/// One whose sleeves are left proud is never.
#[must_use]
pub fn is_cut(job: &Job, bank: u8) -> bool {
    job.sleeve_ends() != Ok(SleeveEnds::Proud)
        && job.mark(Owner::Bank(bank), StepId::Deck) == Some(&Mark::Done)
}

/// Whether a deck is cut, or free to be cut and with a cut decided on: what the cut
/// changes is asked about.
#[must_use]
pub fn is_cut_decided(job: &Job, reports: &[CylinderReport], bank: u8) -> bool {
    if job.sleeve_ends() == Ok(SleeveEnds::Proud) {
        return false;
    }
    let typed = job.entries.get(Place::of_bank(bank, Field::DeckCut, 0));
    is_cut(job, bank) || (typed.is_some() && lock(job, reports, bank).is_open())
}

/// A deck's heights above the main line after its cut, at both ends; empty
/// where they were not measured, where it is not cut or nobody says how deep, or where
/// the cut cannot be worked out: its step says why.
#[must_use]
pub fn deck_heights(job: &Job, bank: u8) -> Vec<Length> {
    let heights = Readings::new(job, Owner::Bank(bank)).complete(Field::DeckHeight);
    match (plan(job, bank), heights) {
        (Ok(cut), Ok(heights)) if is_cut(job, bank) && cut.cut_decided => heights
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
#[derive(Clone, Debug, PartialEq)]
pub struct Targets {
    /// Which.
    pub cylinder: u8,
    /// Bore to hone to.
    pub bore: Standing<WorkTo>,
    /// Depth of the counterbore.
    pub depth: Standing<WorkTo>,
    /// How far the flange shall stand proud.
    pub proud: Option<Length>,
}

/// The targets of every cylinder that gets a sleeve.
#[must_use]
pub fn targets(job: &Job) -> Vec<Targets> {
    job.cylinders()
        .map(|cylinder| {
            let r = Readings::of_cylinder(job, cylinder);
            Targets {
                cylinder,
                bore: work_to(&r, StepId::Fit.spec()),
                depth: match job.listed_kind() {
                    SleeveKind::OnStep => work_to(&r, StepId::StepDepth.spec()),
                    SleeveKind::Flanged | SleeveKind::ByFit => {
                        work_to(&r, StepId::Counterbore.spec())
                    }
                },
                proud: target_proud(&r).ok().map(Length::from_m),
            }
        })
        .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise
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
        let at = |field, text: &str| {
            let place = Place {
                owner: two,
                field,
                index: 0,
            };
            (place, Entry::new(text, Unit::Fahrenheit, 0))
        };
        for (place, entry) in [
            at(Field::SleeveTemperature, "68"),
            at(Field::BlockTemperature, "68"),
        ] {
            job.entries.put(place, entry);
        }
        let found = targets(&job);
        let target = found.iter().find(|t| t.cylinder == 2).unwrap();
        let Standing::Known(bore) = &target.bore else {
            panic!("{:?}", target.bore)
        };
        let Standing::Known(depth) = &target.depth else {
            panic!("{:?}", target.depth)
        };
        let inch_m = |si: f64| si / 0.0254;
        // 4.4413 less 0.0015 and 0.0010, both at 68 F.
        assert!((inch_m(bore.low.unwrap()) - 4.4398).abs() < 1e-9);
        assert!((inch_m(bore.high.unwrap()) - 4.4403).abs() < 1e-9);
        assert_eq!(bore.taken, None);
        // 0.2190 less 0.0100.
        assert!((inch_m(depth.si) - 0.2090).abs() < 1e-9);
        // 20 F warmer a gray iron bore of 4.44 in reads 0.00049 to 0.00059 in
        // larger, by 10 to 12e-6 per K (handbook range, from memory).
        let mut warm = job.clone();
        let (place, entry) = at(Field::BlockTemperature, "88");
        warm.entries.put(place, entry);
        let found = targets(&warm);
        let target = found.iter().find(|t| t.cylinder == 2).unwrap();
        let Standing::Known(warm) = &target.bore else {
            panic!("{:?}", target.bore)
        };
        let more = inch_m(warm.si - bore.si);
        assert!((0.000_49..=0.000_59).contains(&more), "{more}");
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

    /// By hand: the hole that is left out has the highest piston of its deck, 0.0200
    /// and 0.0300 over it: 0.0500.
    #[test]
    fn the_piston_of_a_hole_without_a_sleeve_counts_where_its_deck_is_cut() {
        let mut job = Demo::InchFive.job(0);
        let place = Place {
            owner: Owner::Cylinder(4),
            field: Field::PistonProud,
            index: 0,
        };
        job.entries.put(place, Entry::new("0.0200", Unit::Inch, 0));
        job.left_out = vec![4];
        let least = |job: &Job| gasket(job).unwrap().and_then(|g| g.least);
        assert!((inch(least(&job).unwrap()) - 0.0500).abs() < 1e-9);
        // With no sleeve in it the deck is not cut.
        job.left_out = vec![1, 2, 3, 4, 5];
        assert_eq!(least(&job), None);
    }

    /// A bank with a sleeve that is not home has no new height; by hand: the
    /// demo's deck is measured 14.5000 and 14.5006 in.
    #[test]
    fn a_locked_deck_has_no_new_height_and_what_is_open_is_named() {
        let job = Demo::InchFive.job(0);
        let reports = assess(&job);
        assert!(deck_heights(&job, 0).is_empty());
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
        // Planned is not cut.
        assert!(deck_heights(&released, 0).is_empty());
        released.set_mark(Owner::Bank(0), StepId::Deck, Some(Mark::Done), 1);
        assert!(is_cut(&released, 0));
        assert!(
            deck_heights(&released, 0).is_empty(),
            "cut, and nobody says how deep"
        );
        let unit = released.unit(Field::DeckCut);
        let cut = Entry::new("0.0060", unit, 2);
        released
            .entries
            .put(Place::of_bank(0, Field::DeckCut, 0), cut);
        let removal = plan(&released, 0).unwrap().plan.removal;
        let heights = deck_heights(&released, 0);
        assert_eq!(heights.len(), 2);
        assert!((inch(heights[0]) - (14.5 - inch(removal))).abs() < 1e-9);
        assert!((inch(heights[1]) - (14.5006 - inch(removal))).abs() < 1e-9);
    }
}

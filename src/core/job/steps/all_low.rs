//! The chance that any flange of the job is left low by the deck cut, while it
//! is planned at the counterbores and once the heights are measured.
//!
//! Each flange scatters by itself, the error of a deck cut is common to all of
//! its bank; banks are cut apart from each other. One flange in a hundred is
//! one engine in thirteen of eight.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveEnds;
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Missing, Spot};
use crate::job::model::readings::Readings;
use crate::job::steps::survey::{deck_beside, spots};
use crate::planning::counterbore::{Spare, any_low};
use crate::quantity::Length;

/// A chance over several flanges.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AllLow {
    /// How many flanges.
    pub flanges: usize,
    /// Chance that at least one loses less than the clean-up cut.
    pub chance: f64,
}

/// All flanges of the job as planned: each aimed at the stand-proud wanted, with
/// the scatter of hand feed and depth gauge, the planned cut taken off its deck;
/// `None` of none, and of sleeves that are left proud.
///
/// # Errors
/// A limit or the deck beside a hole missing, something that cannot be used.
pub fn planned(job: &Job) -> Result<Option<AllLow>, Lack> {
    let r = Readings::new(job, Owner::Block);
    r.head()?;
    job.dispute(Spot::LeftOut)?;
    if r.sleeve_ends()? == SleeveEnds::Proud {
        return Ok(None);
    }
    let m = |field| r.engine(field);
    let spare_m = m(Field::TargetProud)? + m(Field::PlannedCut)? - m(Field::CleanUp)?;
    let own_sd = Length::from_m(m(Field::FeedSd)?.hypot(m(Field::GaugeDepth)?));
    let deck_sd = Length::from_m(m(Field::DeckSd)?);
    let mut flanges = 0;
    let mut none_low = 1.0;
    for bank in 0..job.engine.banks() {
        let mut all = Vec::new();
        for cylinder in job.cylinders_of(bank) {
            let beside_m = deck_beside(job, bank, cylinder)?.ok_or(Missing {
                owner: Owner::Bank(bank),
                field: Field::LowSpot,
                places: spots(job, bank),
            })?;
            all.push(Spare {
                mean: Length::from_m(spare_m + beside_m),
                own_sd,
            });
        }
        flanges += all.len();
        none_low *= 1.0 - any_low(&all, deck_sd);
    }
    Ok((flanges > 0).then_some(AllLow {
        flanges,
        chance: 1.0 - none_low,
    }))
}

/// Flanges as they stand, `cuts` being what each loses where it stands lowest;
/// `None` of none. The height gauge enters twice: flange above its deck, and
/// that deck below the highest point.
///
/// # Errors
/// A limit missing or unusable.
pub fn measured(job: &Job, cuts: &[Length]) -> Result<Option<AllLow>, Lack> {
    let r = Readings::new(job, Owner::Block);
    let clean_up_m = r.engine(Field::CleanUp)?;
    let own_sd = Length::from_m(r.engine(Field::GaugeHeight)? * core::f64::consts::SQRT_2);
    let deck_sd = r.length(Field::DeckSd)?;
    let all: Vec<Spare> = cuts
        .iter()
        .map(|cut| Spare {
            mean: Length::from_m(cut.as_m() - clean_up_m),
            own_sd,
        })
        .collect();
    Ok((!all.is_empty()).then(|| AllLow {
        flanges: all.len(),
        chance: any_low(&all, deck_sd),
    }))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::Place;

    fn set(job: &mut Job, field: Field, text: &str) {
        let entry = Entry::new(text, job.unit(field), 1);
        job.entries.put(Place::of_engine(field), entry);
    }

    /// Five flanges on a flat deck, each with 0.001 in to spare and a scatter of
    /// 0.0005 in, the deck exact: 1 - Phi(2)^5 = 0.10869, Phi(2) = 0.977250
    /// (normal table).
    fn two_sigma() -> Job {
        let mut job = Demo::InchFive.job(1);
        for cylinder in 1..=5 {
            let place = Place::of_cylinder(cylinder, Field::DeckHere, 0);
            job.entries
                .put(place, Entry::new("0", job.unit(Field::DeckHere), 1));
        }
        for (field, text) in [
            (Field::TargetProud, "0.0030"),
            (Field::PlannedCut, "0"),
            (Field::CleanUp, "0.0020"),
            (Field::FeedSd, "0.0004"),
            (Field::GaugeDepth, "0.0003"),
            (Field::DeckSd, "0"),
        ] {
            set(&mut job, field, text);
        }
        job
    }

    #[test]
    fn five_flanges_by_the_normal_table() {
        let mut job = two_sigma();
        let all = planned(&job).unwrap().unwrap();
        assert_eq!(all.flanges, 5);
        assert!((all.chance - 0.108_69).abs() < 2e-5, "{}", all.chance);
        // What all share makes them low together: fewer jobs, not more.
        set(&mut job, Field::FeedSd, "0");
        set(&mut job, Field::GaugeDepth, "0");
        set(&mut job, Field::DeckSd, "0.0005");
        let all = planned(&job).unwrap().unwrap();
        assert!((all.chance - 0.022_75).abs() < 2e-5, "{}", all.chance);
        job.left_out = vec![1, 2, 3, 4, 5];
        assert_eq!(planned(&job), Ok(None));
    }

    /// Two banks share no cut: by hand 1 - (1 - p)^2 with p = 0.022 750.
    #[test]
    fn two_banks_are_cut_apart() {
        let mut job = Demo::MetricEight.job(1);
        for cylinder in 1..=8 {
            let place = Place::of_cylinder(cylinder, Field::DeckHere, 0);
            job.entries
                .put(place, Entry::new("0", job.unit(Field::DeckHere), 1));
        }
        for (field, text) in [
            (Field::TargetProud, "0.070"),
            (Field::PlannedCut, "0"),
            (Field::CleanUp, "0.050"),
            (Field::FeedSd, "0"),
            (Field::GaugeDepth, "0"),
            (Field::DeckSd, "0.010"),
        ] {
            set(&mut job, field, text);
        }
        let all = planned(&job).unwrap().unwrap();
        let by_hand = 1.0 - (1.0_f64 - 0.022_75).powi(2);
        assert_eq!(all.flanges, 8);
        assert!((all.chance - by_hand).abs() < 2e-5, "{}", all.chance);
    }

    /// Heights: 0.0004 in of gauge, twice: 0.000566. One flange loses 0.0020 +
    /// 0.000566 in with 0.0020 to clean up: low in Phi(-1) = 0.158 66.
    #[test]
    fn measured_flanges_by_the_normal_table() {
        let mut job = two_sigma();
        set(&mut job, Field::GaugeHeight, "0.0004");
        let cut = Length::from_inch(0.0020 + 0.0004 * 2.0_f64.sqrt());
        let all = measured(&job, &[cut]).unwrap().unwrap();
        assert!((all.chance - 0.158_66).abs() < 2e-5, "{}", all.chance);
        assert_eq!(measured(&job, &[]), Ok(None));
        assert!(job.entries.any_of(Owner::Cylinder(1)));
    }
}

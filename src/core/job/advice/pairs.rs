//! Which sleeve in which hole: of the sleeves measured and the holes bored but
//! neither counterbored nor honed, so that the least honing brings every fit
//! into its band; and the sleeves numbered accordingly.
//!
//! Sleeve: mean of its diameters as measured, bore: as the bar left it, both at
//! one temperature. A counterbore is cut for one flange: its hole keeps its
//! sleeve.

use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Millis;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::job::model::reading::{Lack, Spot};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::planning::pairing::pairing;
use crate::quantity::report::Finding;
use crate::quantity::{Diameter, DiametralInterference, Length};

/// What belongs to a sleeve and goes with it to another hole.
const OF_SLEEVE: [Field; 5] = [
    Field::SleeveOd,
    Field::FlangeThickness,
    Field::FlangeOdHere,
    Field::Fillet,
    Field::PlainLength,
];

/// A pairing of the job's sleeves and holes.
#[derive(Clone, Debug, PartialEq)]
pub struct Pairs {
    /// Number of each sleeve, its hole and the stock to hone there, on diameter;
    /// no hole: a spare.
    pub sleeves: Vec<(u8, Option<(u8, Length)>)>,
    /// Largest stock.
    pub worst: Length,
    /// All stock together.
    pub total: Length,
    /// The same as the sleeves are numbered now: largest, least, and all.
    pub now: Option<[Length; 3]>,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

impl Pairs {
    /// Whether every sleeve keeps its hole.
    #[must_use]
    pub fn is_as_numbered(&self) -> bool {
        self.sleeves
            .iter()
            .all(|(sleeve, hole)| hole.is_none_or(|(hole, _)| hole == *sleeve))
    }
}

/// The mean of what is measured of a field; `None` where nothing is.
fn mean(job: &Job, cylinder: u8, field: Field) -> Result<Option<f64>, Lack> {
    let r = Readings::of_cylinder(job, cylinder);
    if r.list(field)?.is_empty() {
        return Ok(None);
    }
    r.mean(field).map(Some)
}

/// Whether a hole's sleeve can still be another one: nothing is typed of what
/// was cut for it.
fn is_free(job: &Job, cylinder: u8) -> bool {
    let owner = Owner::Cylinder(cylinder);
    [Field::CounterboreDepth, Field::StepDepth, Field::BoreD]
        .into_iter()
        .flat_map(|field| Place::all(owner, field))
        .all(|place| job.entries.get(place).is_none())
}

/// The pairing; `None` with fewer than two sleeves or no bore to choose among.
///
/// # Errors
/// A sleeve or bore half measured, something that cannot be used.
pub fn pairs(job: &Job) -> Result<Option<Pairs>, Lack> {
    job.dispute(Spot::LeftOut)?;
    let of = |field| -> Result<Vec<(u8, f64)>, Lack> {
        let mut all = Vec::new();
        for cylinder in job.cylinders().filter(|c| is_free(job, *c)) {
            all.extend(mean(job, cylinder, field)?.map(|m| (cylinder, m)));
        }
        Ok(all)
    };
    let (sleeves, bores) = (of(Field::SleeveOd)?, of(Field::BoredD)?);
    if sleeves.len() < 2 || bores.is_empty() {
        return Ok(None);
    }
    let block = Readings::new(job, Owner::Block);
    let (low, high) = (block.engine(Field::FitLow)?, block.engine(Field::FitHigh)?);
    let target_m = 0.5 * (low + high);
    let d = |list: &[(u8, f64)]| -> Vec<Diameter> {
        list.iter().map(|(_, m)| Diameter::from_m(*m)).collect()
    };
    let answer = pairing(
        &d(&sleeves),
        &d(&bores),
        DiametralInterference::from_m(target_m),
    )?;
    let stocks: Vec<f64> = bores
        .iter()
        .filter_map(|(hole, bore)| {
            let (_, sleeve) = sleeves.iter().find(|(number, _)| number == hole)?;
            Some(sleeve - target_m - bore)
        })
        .collect();
    let now = (stocks.len() == bores.len()).then(|| {
        [
            stocks.iter().copied().fold(f64::MIN, f64::max),
            stocks.iter().copied().fold(f64::MAX, f64::min),
            stocks.iter().sum(),
        ]
        .map(Length::from_m)
    });
    Ok(Some(Pairs {
        sleeves: sleeves
            .iter()
            .zip(answer.bore_for_sleeve.iter().zip(&answer.stock))
            .map(|((sleeve, _), (bore, stock))| {
                let hole = bore.and_then(|at| bores.get(at)).map(|(hole, _)| *hole);
                (*sleeve, hole.zip(*stock))
            })
            .collect(),
        worst: answer.worst_stock,
        total: answer.total_stock,
        now,
        findings: answer.findings,
    }))
}

/// Numbers the sleeves as paired: what was measured on each, with mark and note
/// of its receipt, goes to its hole; spares get the numbers left over.
pub fn number_sleeves(job: &mut Job, pairs: &Pairs, at: Millis) {
    let taken: Vec<u8> = pairs
        .sleeves
        .iter()
        .filter_map(|(_, hole)| hole.map(|(hole, _)| hole))
        .collect();
    let mut left_over = pairs
        .sleeves
        .iter()
        .map(|(sleeve, _)| *sleeve)
        .filter(|sleeve| !taken.contains(sleeve));
    let moves: Vec<(u8, u8)> = pairs
        .sleeves
        .iter()
        .filter_map(|(sleeve, hole)| {
            let to = hole.map(|(hole, _)| hole).or_else(|| left_over.next())?;
            Some((*sleeve, to))
        })
        .collect();
    move_sleeves(job, &moves, at);
}

/// Gives sleeves other holes, each as from and to: what was measured on each, with mark
/// and note of its receipt, goes along.
pub fn move_sleeves(job: &mut Job, moves: &[(u8, u8)], at: Millis) {
    let before = job.clone();
    let places = || {
        OF_SLEEVE
            .iter()
            .flat_map(|field| (0..field.spec().places.count()).map(|index| (*field, index)))
    };
    for (from, to) in moves {
        for (field, index) in places() {
            let text = before
                .entries
                .get(Place::of_cylinder(*from, field, index))
                .map_or_else(
                    || Entry::new("", job.unit(field), at),
                    |entry| Entry {
                        at,
                        ..entry.clone()
                    },
                );
            job.entries.put(Place::of_cylinder(*to, field, index), text);
        }
        let record = before
            .steps
            .get(&(Owner::Cylinder(*from), StepId::Sleeve))
            .cloned()
            .unwrap_or_default();
        job.keep_of_step(Owner::Cylinder(*to), StepId::Sleeve, |kept| {
            *kept = record;
            kept.at = at;
        });
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;

    /// Five sleeves, holes 1 to 3 bored; all else of the demo as it comes, holes
    /// 4 and 5 counterbored and so kept.
    fn job() -> Job {
        let mut job = Demo::InchFive.job(1);
        let unit = job.unit(Field::BoreD);
        let mut put = |cylinder, field: Field, text: &str| {
            for index in 0..field.spec().places.count() {
                job.entries.put(
                    Place::of_cylinder(cylinder, field, index),
                    Entry::new(text, unit, 2),
                );
            }
        };
        for cylinder in 1..=3 {
            put(cylinder, Field::CounterboreDepth, "");
            put(cylinder, Field::BoreD, "");
        }
        for (cylinder, sleeve, bore) in [
            (1, "4.4416", "4.4390"),
            (2, "4.4410", "4.4396"),
            (3, "4.4413", "4.4393"),
        ] {
            put(cylinder, Field::SleeveOd, sleeve);
            put(cylinder, Field::BoredD, bore);
        }
        job
    }

    /// By hand, fit 0.00125 in: as numbered the stocks are 1.35, 0.15 and 0.75
    /// thou; the widest sleeve in the widest bore leaves 0.75 in each.
    #[test]
    fn the_widest_sleeve_goes_into_the_widest_bore() {
        let mut job = job();
        let found = pairs(&job).unwrap().unwrap();
        let holes: Vec<(u8, u8)> = found
            .sleeves
            .iter()
            .map(|(sleeve, hole)| (*sleeve, hole.unwrap().0))
            .collect();
        assert_eq!(holes, [(1, 2), (2, 1), (3, 3)]);
        assert!((found.worst.as_thou() - 0.75).abs() < 1e-6);
        let [worst, least, _] = found.now.unwrap();
        assert!((worst.as_thou() - 1.35).abs() < 1e-6 && (least.as_thou() - 0.15).abs() < 1e-6);
        assert!(!found.is_as_numbered());
        let flange = |job: &Job, c| mean(job, c, Field::FlangeThickness);
        let (one, two) = (flange(&job, 1), flange(&job, 2));
        number_sleeves(&mut job, &found, 3);
        assert_eq!((flange(&job, 1), flange(&job, 2)), (two, one));
        assert!((mean(&job, 2, Field::SleeveOd).unwrap().unwrap() / 0.0254 - 4.4416).abs() < 1e-9);
        let again = pairs(&job).unwrap().unwrap();
        assert!(again.is_as_numbered());
        // Nothing to choose: one sleeve, or every hole counterbored.
        assert_eq!(pairs(&Demo::InchFive.job(1)).unwrap(), None);
    }

    #[test]
    fn a_spare_gets_the_number_left_over() {
        let mut job = job();
        let place = Place::of_cylinder(1, Field::BoredD, 0);
        let unit = job.unit(Field::BoredD);
        job.entries.put(place, Entry::new("", unit, 2));
        let found = pairs(&job).unwrap().unwrap();
        let spares = found.sleeves.iter().filter(|(_, hole)| hole.is_none());
        assert_eq!(spares.count(), 1);
        let all = |job: &Job| -> Vec<i64> {
            let mut all: Vec<i64> = (1..=3)
                .map(|c| (mean(job, c, Field::SleeveOd).unwrap().unwrap() * 1e9).round() as i64)
                .collect();
            all.sort_unstable();
            all
        };
        let before = all(&job);
        number_sleeves(&mut job, &found, 3);
        assert_eq!(all(&job), before, "no sleeve is lost");
    }
}

//! What the record tells of a cylinder and of the gauges: as left, or nothing.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::readings::{Readings, mean, smallest};
use crate::job::model::step::StepId;
use crate::job::steps::assess::assess_whole;
use crate::job::steps::home::measured_by;
use crate::job::steps::shrink::cold_size;
use crate::job::verdict::{Answer, CylinderReport, Next};
use crate::quantity::Length;

/// A cylinder as it was left.
#[derive(Clone, Debug, PartialEq)]
pub struct AsLeft {
    /// Sleeve, mean diameter.
    pub sleeve: Told,
    /// Honed bore, mean diameter.
    pub bore: Told,
    /// Interference.
    pub fit: Option<Length>,
    /// Flange thickness, of a plain sleeve its length, mean.
    pub flange: Told,
    /// Depth of the ledge, mean.
    pub depth: Told,
    /// Height after the last pull, mean.
    pub height: Told,
    /// Gap at the ledge, mean; of a sleeve that its fit holds, how far above its mark.
    pub gap: Option<Length>,
    /// Tilt.
    pub tilt: Option<Length>,
    /// Chance that it is home.
    pub p_seated: Option<f64>,
    /// Heights after the pulls, in order.
    pub pulls: Told,
}

/// A cylinder as it was left.
#[must_use]
pub fn as_left(job: &Job, report: &CylinderReport) -> AsLeft {
    let owner = Owner::Cylinder(report.cylinder);
    let of = |field| Told::of(job, owner, field).one(mean);
    // A sleeve that its fit holds has neither.
    let [flange, depth] = match measured_by(job.listed_kind()) {
        Some(both) => both.map(of),
        None => [Told::Absent, Told::Absent],
    };
    let mut left = AsLeft {
        sleeve: of(Field::SleeveOd),
        bore: of(Field::BoreD),
        fit: None,
        flange,
        depth,
        height: of(Field::SeatHeight),
        gap: None,
        tilt: None,
        p_seated: None,
        pulls: Told::of(job, owner, Field::PullReleased),
    };
    if let Some(Answer::Fit(fit, _)) = report.step(StepId::Fit).map(|s| &s.answer) {
        left.fit = Some(Length::from_m(fit.interference_mean.as_m()));
    }
    if let Some(Answer::Seat(seat)) = report.step(StepId::Seat).map(|s| &s.answer) {
        left.gap = Some(seat.gap_mean);
        left.tilt = Some(seat.tilt);
        left.p_seated = Some(seat.p_seated);
    }
    left
}

/// Readings of one kind, as a record tells them: none, all of them, or that one of
/// them cannot be used and so nothing is said of the others.
#[derive(Clone, Debug, PartialEq)]
pub enum Told {
    /// Nothing was read.
    Absent,
    /// What was read, SI, in order.
    Read(Vec<f64>),
    /// One of them cannot be used.
    Unusable,
}

impl Told {
    /// The readings of a field.
    #[must_use]
    pub fn of(job: &Job, owner: Owner, field: Field) -> Self {
        match job.readings(owner, field) {
            Ok(list) if list.is_empty() => Self::Absent,
            Ok(list) => Self::Read(list.into_iter().map(|(_, si)| si).collect()),
            Err(_) => Self::Unusable, // told as that
        }
    }

    /// The same as one number: a mean, a least.
    #[must_use]
    fn one(self, of: impl FnOnce(&[f64]) -> Option<f64>) -> Self {
        match self {
            Self::Read(list) => Self::Read(of(&list).into_iter().collect()),
            other => other,
        }
    }
}

/// What is said of the heights of a deck whose sleeves are left proud; nothing of one
/// that is decked.
#[must_use]
pub fn left_proud(job: &Job, reports: &[CylinderReport], bank: u8) -> Option<Next> {
    let owner = Owner::Bank(bank);
    let whole = assess_whole(job, reports);
    let (_, steps) = whole.iter().find(|(of, _)| *of == owner)?;
    let step = steps.iter().find(|step| step.id == StepId::Heights)?;
    Some(step.next)
}

/// What was measured of a cylinder before its sleeve and after the deck's cut, and
/// stands in no other table of the record.
#[derive(Clone, Debug, PartialEq)]
pub struct Finished {
    /// Thinnest wall read before boring.
    pub wall: Told,
    /// Counterbore, diameter.
    pub counterbore: Told,
    /// Groove depth, mean.
    pub groove: Told,
    /// Finished bore, mean diameter.
    pub bore: Told,
    /// Out of round of it, worst level.
    pub round: Option<Length>,
    /// Taper of it.
    pub taper: Option<Length>,
    /// Ring gaps, as they were read.
    pub ring_gaps: Told,
    /// How far its piston stands proud, mean.
    pub piston: Told,
}

/// What was measured of a cylinder besides; nothing before anything of it was
/// finished.
#[must_use]
pub fn finished(job: &Job, report: &CylinderReport) -> Option<Finished> {
    let owner = Owner::Cylinder(report.cylinder);
    let all = |field| Told::of(job, owner, field);
    let middle = |field| all(field).one(mean);
    let mut done = Finished {
        wall: all(Field::WallReading).one(smallest),
        counterbore: middle(Field::CounterboreD),
        groove: middle(Field::GrooveDepth),
        bore: middle(Field::FinishD),
        round: None,
        taper: None,
        ring_gaps: all(Field::RingGapNow),
        piston: middle(Field::PistonProud),
    };
    if let Some(Answer::Form(form, _)) = report.step(StepId::Finish).map(|s| &s.answer) {
        done.round = Some(form.out_of_round);
        done.taper = Some(form.taper);
    }
    let is_begun = [&done.groove, &done.bore, &done.piston, &done.ring_gaps]
        .iter()
        .any(|told| **told != Told::Absent);
    is_begun.then_some(done)
}

/// A sleeve's diameter as measured cold, and how its drop takes it; nothing where
/// none is typed or it cannot be compared.
#[must_use]
pub fn measured_cold(job: &Job, cylinder: u8) -> Option<(Length, ColdUse)> {
    // What cannot be used is named by its step, and at the head of the record.
    let Ok(Some(size)) = cold_size(&Readings::of_cylinder(job, cylinder)) else {
        return None;
    };
    let taken = match (size.is_possible(), size.is_odd()) {
        (false, _) => ColdUse::NotUsed,
        (true, true) => ColdUse::Odd,
        (true, false) => ColdUse::Used,
    };
    Some((Length::from_m(size.cold.as_m()), taken))
}

/// How a drop takes a diameter measured cold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdUse {
    /// In place of the table.
    Used,
    /// In place of the table, and to be measured again.
    Odd,
    /// No metal shrinks so: not at all.
    NotUsed,
}

/// How sure the gaps are: the standard uncertainty of one.
#[must_use]
pub fn gap_uncertainty(reports: &[CylinderReport]) -> Option<Length> {
    reports
        .iter()
        .find_map(|report| match &report.step(StepId::Seat)?.answer {
            Answer::Seat(seat) => Some(seat.u_gap),
            _ => None,
        })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::Place;
    use crate::job::steps::assess::assess_cylinder;

    fn put(job: &mut Job, field: Field, index: u8, text: &str) {
        let entry = Entry::new(text, job.unit(field), 2);
        job.entries.put(Place::of_cylinder(1, field, index), entry);
    }

    /// One clock, one level, one pull that cannot be used: no mean of the others, no
    /// count of the others, no dash as if nothing had been read.
    #[test]
    fn as_left_tells_what_cannot_be_used() {
        let mut job = Demo::InchFive.job(1);
        let left = |job: &Job| as_left(job, &assess_cylinder(job, 1));
        assert!(matches!(left(&job).pulls, Told::Read(all) if all.len() == 4));
        put(&mut job, Field::PullReleased, 2, "0.01o3");
        put(&mut job, Field::CounterboreDepth, 1, "0.2o90");
        put(&mut job, Field::SleeveOd, 3, "-");
        let left = left(&job);
        let told = [left.pulls, left.depth, left.sleeve];
        assert_eq!(told, [Told::Unusable, Told::Unusable, Told::Unusable]);
        assert!(matches!(left.flange, Told::Read(_)));
    }

    #[test]
    fn a_reading_that_cannot_be_used_is_told_and_takes_nothing_better_in_its_place() {
        let mut job = Demo::InchFive.job(1);
        let told = |job: &Job| finished(job, &assess_cylinder(job, 1));
        assert_eq!(told(&job), None, "nothing of it is finished");
        for (index, text) in ["0.0180", "0.0200"].iter().enumerate() {
            put(&mut job, Field::RingGapNow, index as u8, text);
        }
        let done = told(&job).unwrap();
        let inch = |si: f64| si * 0.0254;
        assert!(matches!(done.ring_gaps, Told::Read(gaps)
            if (gaps[0] - inch(0.018)).abs() < 1e-12 && (gaps[1] - inch(0.020)).abs() < 1e-12));
        assert_eq!(done.bore, Told::Absent);
        put(&mut job, Field::RingGapNow, 1, "0.o200");
        // The thinnest wall might be the one that cannot be read.
        put(&mut job, Field::WallReading, 0, "0.3o");
        let done = told(&job).unwrap();
        assert_eq!(
            (done.ring_gaps, done.wall),
            (Told::Unusable, Told::Unusable)
        );
    }
}

//! What the record tells of a cylinder and of the gauges: as left, or nothing.

use crate::ask::picture::shown_mean;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::shrink::cold_size;
use crate::job::verdict::{Answer, CylinderReport};
use crate::quantity::Length;

/// A cylinder as it was left.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct AsLeft {
    /// Sleeve, mean diameter.
    pub sleeve: Option<Length>,
    /// Honed bore, mean diameter.
    pub bore: Option<Length>,
    /// Interference.
    pub fit: Option<Length>,
    /// Flange thickness, mean.
    pub flange: Option<Length>,
    /// Counterbore depth, mean.
    pub depth: Option<Length>,
    /// Height after the last pull, mean.
    pub height: Option<Length>,
    /// Gap under the flange, mean.
    pub gap: Option<Length>,
    /// Tilt.
    pub tilt: Option<Length>,
    /// Chance that it is home.
    pub p_seated: Option<f64>,
    /// Pulls.
    pub pulls: usize,
}

/// A cylinder as it was left.
#[must_use]
pub fn as_left(job: &Job, report: &CylinderReport) -> AsLeft {
    let owner = Owner::Cylinder(report.cylinder);
    let of = |field| shown_mean(job, owner, field).map(Length::from_m);
    let mut left = AsLeft {
        sleeve: of(Field::SleeveOd),
        bore: of(Field::BoreD),
        flange: of(Field::FlangeThickness),
        depth: of(Field::CounterboreDepth),
        height: of(Field::SeatHeight),
        pulls: job.entries.comparable(owner, Field::PullReleased).len(),
        ..AsLeft::default()
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

/// What was measured of a cylinder before its sleeve and after the deck's cut, and
/// stands in no other table of the record.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Finished {
    /// Thinnest wall read before boring.
    pub wall: Option<Length>,
    /// Counterbore, diameter.
    pub counterbore: Option<Length>,
    /// Groove depth, mean.
    pub groove: Option<Length>,
    /// Finished bore, mean diameter.
    pub bore: Option<Length>,
    /// Out of round of it, worst level.
    pub round: Option<Length>,
    /// Taper of it.
    pub taper: Option<Length>,
    /// Ring gaps, as they were read.
    pub ring_gaps: Vec<Length>,
    /// How far its piston stands proud, mean.
    pub piston: Option<Length>,
}

/// What was measured of a cylinder besides; nothing before anything of it was
/// finished.
#[must_use]
pub fn finished(job: &Job, report: &CylinderReport) -> Option<Finished> {
    let owner = Owner::Cylinder(report.cylinder);
    let of = |field| shown_mean(job, owner, field).map(Length::from_m);
    let walls = job.entries.comparable(owner, Field::WallReading);
    let gaps = job.entries.comparable(owner, Field::RingGapNow);
    let mut done = Finished {
        wall: walls
            .into_iter()
            .map(|(_, si)| si)
            .min_by(f64::total_cmp)
            .map(Length::from_m),
        counterbore: of(Field::CounterboreD),
        groove: of(Field::GrooveDepth),
        bore: of(Field::FinishD),
        ring_gaps: gaps.into_iter().map(|(_, si)| Length::from_m(si)).collect(),
        piston: of(Field::PistonProud),
        ..Finished::default()
    };
    if let Some(Answer::Form(form, _)) = report.step(StepId::Finish).map(|s| &s.answer) {
        done.round = Some(form.out_of_round);
        done.taper = Some(form.taper);
    }
    let is_begun = done.groove.is_some()
        || done.bore.is_some()
        || done.piston.is_some()
        || !done.ring_gaps.is_empty();
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

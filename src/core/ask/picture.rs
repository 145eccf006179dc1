//! What drawings show: numbers that are there and usable, nothing in the place
//! of those that are not.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveKind;
use crate::job::model::place::Owner;
use crate::job::model::readings::{Readings, mean};
use crate::job::model::step::StepId;
use crate::job::steps::home::home;
use crate::job::steps::measure::thinnest;
use crate::job::verdict::{Answer, CylinderReport, Detail, StepReport};
use crate::quantity::Length;

/// The sleeve on its seat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// How the sleeve stands.
    pub kind: SleeveKind,
    /// Flange thickness, mean of the clocks; of a plain sleeve none.
    pub thickness: Option<Length>,
    /// Height of a flange that is home.
    pub predicted: Length,
    /// Height measured; `None`: not yet.
    pub measured: Option<Length>,
}

/// A pull, as a step of the staircase.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stair {
    /// Height under load.
    pub loaded: Option<Length>,
    /// Height released.
    pub released: Length,
}

/// A hole of the plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hole {
    /// Which cylinder.
    pub cylinder: u8,
    /// How far the bar stands off, toward 12 (the front) and 3 o'clock.
    pub off: Option<(Length, Length)>,
    /// Thinnest wall left.
    pub wall: Option<Length>,
}

/// The block from above.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Distance of the centres.
    pub pitch: Length,
    /// Counterbore.
    pub counterbore: Length,
    /// Bore.
    pub bore: Length,
    /// Web left between two counterbores.
    pub web: Length,
    /// Rows of holes, bank by bank.
    pub banks: Vec<Vec<Hole>>,
}

/// The mean of lengths; `None` of none.
#[must_use]
pub fn mean_length(list: &[Length]) -> Option<Length> {
    let all: Vec<f64> = list.iter().map(|l| l.as_m()).collect();
    mean(&all).map(Length::from_m)
}

/// The readings of a field for a drawing.
#[must_use]
pub fn shown(job: &Job, owner: Owner, field: Field) -> Vec<(u8, f64)> {
    job.entries.comparable(owner, field)
}

/// A number of the engine for a drawing.
#[must_use]
pub fn shown_engine(job: &Job, field: Field) -> Option<f64> {
    job.engine_si(field).ok().flatten()
}

/// The flange on its ledge, as far as it is measured.
#[must_use]
pub fn section(job: &Job, owner: Owner, answer: &Answer) -> Option<Section> {
    let r = Readings::new(job, owner);
    let home = home(&r).ok()?;
    let thickness = match home.kind {
        SleeveKind::Flanged => Some(Length::from_m(mean(&home.above)?)),
        SleeveKind::OnStep | SleeveKind::ByFit => None,
    };
    let (predicted, measured) = match answer {
        Answer::Heights(h) => (mean_length(&h.predicted)?, mean_length(&h.height)),
        Answer::Seat(seat) => {
            let predicted = mean_length(&seat.predicted)?;
            let height = Length::from_m(predicted.as_m() + seat.gap_mean.as_m());
            (predicted, Some(height))
        }
        _ => (Length::from_m(mean(&home.heights())?), None),
    };
    Some(Section {
        kind: home.kind,
        thickness,
        predicted,
        measured,
    })
}

/// The pulls of a cylinder, as stairs.
#[must_use]
pub fn stairs(job: &Job, owner: Owner) -> Vec<Stair> {
    let loaded = shown(job, owner, Field::PullLoaded);
    shown(job, owner, Field::PullReleased)
        .into_iter()
        .map(|(index, released)| Stair {
            loaded: loaded
                .iter()
                .find(|(i, _)| *i == index)
                .map(|(_, si)| Length::from_m(*si)),
            released: Length::from_m(released),
        })
        .collect()
}

/// Cylinders of a bank, from the front, those left out too.
#[must_use]
pub fn holes_of(job: &Job, bank: u8) -> Vec<u8> {
    (1..=job.engine.cylinders)
        .filter(|c| job.engine.bank_of(*c) == bank)
        .collect()
}

/// The block from above, as far as its numbers are there.
#[must_use]
pub fn block_plan(job: &Job, choose: &StepReport, reports: &[CylinderReport]) -> Option<Plan> {
    let web_m = choose.number.as_ref()?.si;
    let pitch_m = shown_engine(job, Field::Pitch)?;
    let answer = |cylinder: u8, step: StepId| {
        let report = reports.iter().find(|r| r.cylinder == cylinder)?;
        Some(&report.step(step)?.answer)
    };
    let hole = |cylinder: u8| Hole {
        cylinder,
        off: match answer(cylinder, StepId::Centre) {
            Some(Answer::More(list)) => {
                let of = |detail: Detail| {
                    list.iter()
                        .find(|m| m.detail == detail)
                        .map(|m| Length::from_m(m.si))
                };
                of(Detail::OffsetUp).zip(of(Detail::OffsetRight))
            }
            _ => None,
        },
        wall: match answer(cylinder, StepId::Wall) {
            Some(Answer::Walls(walls)) => thinnest(walls).map(Length::from_m),
            _ => None,
        },
    };
    Some(Plan {
        pitch: Length::from_m(pitch_m),
        counterbore: Length::from_m(pitch_m - web_m),
        bore: Length::from_m(shown_engine(job, Field::NominalOd)?),
        web: Length::from_m(web_m),
        banks: (0..job.engine.banks())
            .map(|bank| holes_of(job, bank).into_iter().map(hole).collect())
            .collect(),
    })
}

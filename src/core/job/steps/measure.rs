//! Measuring: the old bore, the wall left after boring, the sleeve received.

use crate::job::model::field::Field;
use crate::job::model::reading::Lack;
use crate::job::model::readings::{Readings, largest, smallest};
use crate::job::model::step::StepId;
use crate::job::steps::bore::{bar_offset, bore_wanted};
use crate::job::steps::tools::{TINY_M, grade, length_figure, more};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::{Detail, Figure};
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::metrology::form::form;
use crate::planning::web::{WallInput, wall};
use crate::quantity::report::Finding;
use crate::quantity::{Diameter, Length};

/// The old bore: the bar is centred on what is not worn, near the bottom.
///
/// # Errors
/// What it lacks.
pub fn old_bore(r: &Readings) -> Worked {
    let answer = form(&r.levels(Field::OldBore)?)?;
    let all = r.some(Field::OldBore)?;
    let none = || r.missing(Field::OldBore, 1);
    let most = largest(&all).ok_or_else(none)?;
    let least = smallest(&all).ok_or_else(none)?;
    let further = vec![
        more(Detail::Largest, most),
        more(Detail::Smallest, least),
        more(Detail::Round, answer.out_of_round.as_m()),
        more(Detail::Taper, answer.taper.as_m()),
    ];
    let number = length_figure(Figure::Wear, most - least, None);
    Ok(Verdict {
        answer: Answer::Form(answer, further),
        ..Verdict::advice(StepId::OldBore, Signal::Go, number)
    })
}

/// Walls left at every point measured, by their place, and what was found.
pub type Walls = (Vec<(u8, Length)>, Vec<Finding>);

/// The old bore at the place of a wall reading: at its level, and across the way that
/// the wall was read. Worn bores taper by more than a wall can spare: a mean of all
/// levels takes too little off where the bore is not worn.
fn old_bore_at(old: &[f64], wall_index: u8) -> Option<f64> {
    let (level, clock) = (usize::from(wall_index / 4), wall_index % 4);
    // Across the engine first, then along; 12 o'clock is toward its front.
    let along = usize::from(clock % 2 == 0);
    old.get(2 * level + along).copied()
}

/// Walls left by a bore, the bar off by so much toward 12 and 3 o'clock.
fn walls_left(r: &Readings, new_m: f64, (up_m, right_m): (f64, f64)) -> Result<Walls, Lack> {
    let readings = r.list(Field::WallReading)?;
    if readings.is_empty() {
        let count = Field::WallReading.spec().places.count();
        return Err(r.missing(Field::WallReading, count));
    }
    let old = r.complete(Field::OldBore)?;
    let mut findings = Vec::new();
    let mut left = Vec::new();
    for (index, measured_m) in readings {
        let toward_m = [up_m, right_m, -up_m, -right_m][usize::from(index) % 4];
        let old_m = old_bore_at(&old, index).ok_or_else(|| r.missing(Field::OldBore, 1))?;
        let (wall_left, found) = wall(&WallInput {
            measured: Length::from_m(measured_m),
            old: Diameter::from_m(old_m),
            new: Diameter::from_m(new_m),
            offset: Length::from_m(toward_m),
        })?;
        for finding in found {
            if !findings.contains(&finding) {
                findings.push(finding);
            }
        }
        left.push((index, wall_left));
    }
    Ok((left, findings))
}

/// The walls that a sleeve of nominal size would leave, bored on the old centre:
/// what is asked before sleeves are ordered.
///
/// # Errors
/// No wall or no whole old bore measured, something that cannot be used.
pub fn walls_before_boring(r: &Readings) -> Result<Vec<(u8, Length)>, Lack> {
    let fit_m = 0.5 * (r.engine(Field::FitLow)? + r.engine(Field::FitHigh)?);
    let new_m = r.engine(Field::NominalOd)? - fit_m;
    Ok(walls_left(r, new_m, (0.0, 0.0))?.0)
}

/// The thinnest of walls.
#[must_use]
pub fn thinnest(walls: &[(u8, Length)]) -> Option<f64> {
    walls.iter().map(|(_, wall)| wall.as_m()).reduce(f64::min)
}

/// The wall left at every point measured. Before sleeve and bar are measured it
/// is reckoned with the nominal sleeve on the old centre, and is a look at best.
///
/// # Errors
/// What it lacks.
pub fn walls(r: &Readings) -> Worked {
    let swept = bar_offset(r)?;
    let received = !r.list(Field::SleeveOd)?.is_empty();
    let new_m = bore_wanted(r)?;
    let (left, findings) = walls_left(r, new_m, swept.unwrap_or((0.0, 0.0)))?; // not swept: a look
    let least_m = thinnest(&left).ok_or_else(|| r.missing(Field::WallReading, 1))?;
    let graded = grade(
        least_m,
        r.engine(Field::WallCalm)?,
        r.engine(Field::WallLook)?,
    );
    let assumed = match (received, swept) {
        (false, _) => Some(Field::SleeveOd),
        (true, None) => Some(Field::Indicator),
        (true, Some(_)) => None,
    };
    let (signal, next) = match (graded, assumed) {
        (Signal::Go, Some(field)) => (Signal::Look, Next::Assumed(field)),
        (signal, _) => (signal, Next::Advice(StepId::Wall, signal)),
    };
    Ok(Verdict {
        number: Some(length_figure(Figure::WallLeft, least_m, None)),
        findings,
        answer: Answer::Walls(left),
        ..Verdict::plain(signal, next)
    })
}

/// Roundness of the sleeve as received.
///
/// # Errors
/// What it lacks: without readings under the flange there is no verdict.
pub fn sleeve_form(r: &Readings) -> Worked {
    let levels = r.levels(Field::SleeveOd)?;
    let answer = form(&levels)?;
    // Lower down a sleeve springs round: only the level under the flange is
    // judged, and one reading is no roundness.
    let top = levels
        .first()
        .filter(|level| level.z.as_m() == 0.0 && level.readings.len() > 1)
        .and(answer.per_level.first())
        .map(|level| level.out_of_round.as_m());
    let Some(top) = top else {
        return Err(r.missing(Field::SleeveOd, 2));
    };
    let (look, stop) = (r.engine(Field::RoundLook)?, r.engine(Field::RoundStop)?);
    let (signal, next) = if top > stop + TINY_M {
        (Signal::Stop, Next::SleeveStop)
    } else if top > look + TINY_M {
        (Signal::Look, Next::SleeveLook)
    } else {
        (Signal::Go, Next::SleeveRound)
    };
    Ok(Verdict {
        number: Some(length_figure(Figure::OutOfRound, top, None)),
        answer: Answer::SleeveForm(answer),
        ..Verdict::plain(signal, next)
    })
}

//! Round the drop: the room's oxygen, the chill, the drop itself, the hold-down.

use crate::job::model::field::Field;
use crate::job::model::field_kind::Measure;
use crate::job::model::reading::{Lack, Missing};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::shrink::{ColdSize, cold_size};
use crate::job::steps::tools::{degrees, figure};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::Figure;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::materials::Material;
use crate::quantity::report::Finding;
use crate::quantity::{Diameter, Seconds, Temperature, Volume};
use crate::thermal::chill::{Chill, ChillInput, chill as chill_of};
use crate::thermal::oxygen::{LIMIT, OxygenInput, oxygen as oxygen_of};

/// Air changes an hour where none is entered: a closed room, the worst case.
const CLOSED_ROOM: f64 = 0.0;
/// Release where none is entered, s: at once, before any air is changed: the
/// worst case of mixing.
const AT_ONCE_S: f64 = 1.0;

/// Index of "dragged" among the outcomes of a drop.
const DRAGGED: u8 = 1;
/// Index of "stuck".
const STUCK: u8 = 2;

/// The oxygen left in the room: what is not entered counts as its worst.
///
/// # Errors
/// What it lacks.
pub fn oxygen(r: &Readings) -> Worked {
    let answer = oxygen_of(&OxygenInput {
        room: Volume::from_m3(r.single(Field::RoomVolume)?),
        nitrogen_l: r.single(Field::RoomLitres)?,
        temperature: Temperature::from_k(r.engine(Field::RoomTemperature)?),
        air_changes_per_h: r.own(Field::AirChanges)?.unwrap_or(CLOSED_ROOM), // absent: the worst
        release: Seconds::from_s(r.own(Field::Release)?.unwrap_or(AT_ONCE_S)), // absent: the worst
    })?;
    let signal = if answer.least < LIMIT {
        Signal::Stop
    } else if answer.sudden < LIMIT {
        Signal::Look
    } else {
        Signal::Go
    };
    let number = figure(Figure::OxygenLeft, 100.0 * answer.least, Measure::Plain);
    Ok(Verdict {
        findings: answer.findings.clone(),
        answer: Answer::Oxygen(answer),
        ..Verdict::advice(StepId::DryRun, signal, number)
    })
}

/// The chill of a sleeve of this engine, from the shop's temperature.
///
/// # Errors
/// What it lacks.
pub fn ask_chill(r: &Readings) -> Result<Chill, Lack> {
    Ok(chill_of(&ChillInput {
        material: Material::catalogue(r.head()?.sleeve_material),
        inner: Diameter::from_m(r.engine(Field::SleeveId)?),
        outer: Diameter::from_m(r.engine(Field::NominalOd)?),
        length: r.length(Field::SleeveLength)?,
        start: Temperature::from_k(r.engine(Field::RoomTemperature)?),
    })?)
}

/// What is found of a sleeve measured cold; nothing where it was not.
fn found(cold: Option<ColdSize>) -> Vec<Finding> {
    cold.iter().flat_map(ColdSize::findings).collect()
}

/// Whether it was in the bath long enough, by the slow end of the band; and whether
/// what was measured cold can be.
///
/// # Errors
/// What it lacks.
pub fn chill(r: &Readings) -> Worked {
    let answer = ask_chill(r)?;
    let cold = cold_size(r)?;
    let number = figure(Figure::Quiet, answer.quiet.as_s(), Measure::Time);
    let signal = match r.own(Field::ChillTime)? {
        None => Signal::None,
        Some(s) if s < answer.quiet_low.as_s() => Signal::Wait,
        Some(s) if s < answer.quiet_high.as_s() => Signal::Look,
        Some(_) => Signal::Go,
    };
    Ok(Verdict {
        answer: Answer::Chill(answer),
        findings: found(cold),
        ..Verdict::advice(StepId::Chill, signal, number)
    })
}

/// How the sleeve went in, once that is said; its numbers are asked for apart
/// ([`crate::job::steps::drop_case`]), as they take the longest.
///
/// # Errors
/// An outcome, a carry or a time to home that cannot be used.
pub fn dropped(r: &Readings) -> Worked {
    let step = StepId::Drop;
    r.own(Field::Carry)?;
    r.own(Field::HomeTimed)?;
    let findings = found(cold_size(r)?);
    let signal = match r.own(Field::DropOutcome)?.map(|index| index as u8) {
        Some(DRAGGED) => Signal::Look,
        Some(STUCK) => Signal::Stop,
        Some(_) => Signal::Go,
        None => {
            return Ok(Verdict {
                lacks: vec![Missing {
                    owner: r.owner,
                    field: Field::DropOutcome,
                    places: 1,
                }],
                findings,
                ..Verdict::plain(Signal::None, Next::DropReady)
            });
        }
    };
    Ok(Verdict {
        findings,
        ..Verdict::plain(signal, Next::Advice(step, signal))
    })
}

/// How far the fitted sleeve is from the shop's temperature.
///
/// # Errors
/// What it lacks.
pub fn warmed(r: &Readings) -> Worked {
    let units = r.head()?.units;
    let apart = degrees(
        units,
        (r.single(Field::SleeveWarm)? - r.engine(Field::RoomTemperature)?).abs(),
    );
    let signal = if apart <= r.engine(Field::ApartMost)? + 1e-6 {
        Signal::Go
    } else {
        Signal::Wait
    };
    let number = figure(Figure::WarmApart, apart, Measure::Plain);
    Ok(Verdict::advice(StepId::Hold, signal, number))
}

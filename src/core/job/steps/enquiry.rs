//! Before the block is touched: price, rest, pressure test, deck datum.

use crate::job::model::field::Field;
use crate::job::model::field_kind::Measure;
use crate::job::model::part::SleeveEnds;
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Missing, Spot};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::drop::ask_chill;
use crate::job::steps::survey::spots;
use crate::job::steps::tools::{TINY_M, degrees, figure, length_figure, plain};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::{Detail, Figure};
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::planning::estimate::{EstimateInput, estimate};
use crate::quantity::Seconds;

/// Spare on all nitrogen, as a share (common practice, no source).
const NITROGEN_SPARE: f64 = 0.25;

/// Time, nitrogen and price. The sleeves' own nitrogen has half of the vapour's
/// cold used; bath fill and what stands away come apart. What is not entered is
/// not counted, and the price says so: it goes only where nothing is lacking
/// that every job has.
///
/// # Errors
/// Hours or their price missing, something that cannot be used.
pub fn enquiry(r: &Readings) -> Worked {
    r.job.dispute(Spot::LeftOut)?;
    let hours = |field| r.single(field).map(|hours| Seconds::from_s(hours * 3600.0));
    let mut lacks: Vec<Missing> = Vec::new();
    let mut counted = |field| -> Result<f64, Lack> {
        Ok(match r.own(field)? {
            Some(value) => value,
            None => {
                lacks.push(Missing {
                    owner: Owner::Block,
                    field,
                    places: 1,
                });
                0.0
            }
        })
    };
    let sleeve_price = counted(Field::SleevePrice)?;
    let litre_price = counted(Field::LitrePrice)?;
    let wanted = lacks.len();
    let mut lacks_more: Vec<Missing> = Vec::new();
    let mut counted_if = |field| -> Result<f64, Lack> {
        Ok(match r.own(field)? {
            Some(value) => value,
            None => {
                lacks_more.push(Missing {
                    owner: Owner::Block,
                    field,
                    places: 1,
                });
                0.0
            }
        })
    };
    let bath_fill_l = counted_if(Field::BathFill)?;
    let loss_l_per_h = counted_if(Field::StandingLoss)?;
    let standing = Seconds::from_s(3600.0 * counted_if(Field::StandingHours)?);
    let other_price = counted_if(Field::OtherPrice)?;
    let (per_sleeve_l, no_chill) = match ask_chill(r) {
        Ok(chill) => (chill.nitrogen_practical_l, None),
        Err(Lack::Missing(missing)) => (0.0, Some(missing)),
        Err(other) => return Err(other),
    };
    let answer = estimate(&EstimateInput {
        holes: r.job.cylinders().count(),
        per_job: hours(Field::HoursJob)?,
        per_hole: hours(Field::HoursHole)?,
        hour_price: r.single(Field::HourPrice)?,
        spare_sleeves: 0,
        sleeve_price,
        nitrogen_per_sleeve_l: per_sleeve_l,
        bath_fill_l,
        loss_l_per_h,
        standing,
        nitrogen_spare: NITROGEN_SPARE,
        litre_price,
        other_price,
    })?;
    let first = no_chill.or_else(|| lacks.first().copied());
    let (signal, next) = match first {
        Some(missing) => (Signal::Wait, Next::Measure(missing)),
        None => (Signal::Go, Next::Advice(StepId::Enquiry, Signal::Go)),
    };
    lacks.truncate(wanted);
    lacks.extend(no_chill);
    lacks.extend(lacks_more);
    Ok(Verdict {
        number: Some(figure(Figure::Price, answer.price, Measure::Plain)),
        answer: Answer::More(vec![
            plain(Detail::Hours, answer.work.as_s() / 3600.0),
            plain(Detail::Sleeves, answer.sleeves as f64),
            plain(
                Detail::SleevesNitrogen,
                per_sleeve_l * answer.sleeves as f64,
            ),
            plain(Detail::BathFill, bath_fill_l),
            plain(Detail::StoodAway, loss_l_per_h * standing.as_s() / 3600.0),
            plain(Detail::Nitrogen, answer.nitrogen_l),
        ]),
        lacks,
        ..Verdict::plain(signal, next)
    })
}

/// How far block and sleeves are apart.
///
/// # Errors
/// What it lacks.
pub fn rest(r: &Readings) -> Worked {
    let units = r.head()?.units;
    let apart = degrees(
        units,
        (r.single(Field::BlockNow)? - r.single(Field::SleevesNow)?).abs(),
    );
    let signal = if apart <= r.engine(Field::ApartMost)? + 1e-6 {
        Signal::Go
    } else {
        Signal::Wait
    };
    let number = figure(Figure::Apart, apart, Measure::Plain);
    Ok(Verdict::advice(StepId::Rest, signal, number))
}

/// What the pressure lost.
///
/// # Errors
/// What it lacks.
pub fn pressure_drop(r: &Readings, step: StepId) -> Worked {
    let [start, end] = match step {
        StepId::WashAgain => [Field::RetestStart, Field::RetestEnd],
        _ => [Field::TestStart, Field::TestEnd],
    };
    let start_pa = r.single(start)?;
    let lost = (start_pa - r.single(end)?) / start_pa;
    let number = figure(Figure::PressureLost, 100.0 * lost, Measure::Plain);
    if lost > r.engine(Field::TestLoss)? {
        return Ok(Verdict::advice(step, Signal::Stop, number));
    }
    // Nothing leaks in no time.
    let is_timed = step == StepId::WashAgain || r.own(Field::TestTime)?.is_some();
    Ok(match is_timed {
        true => Verdict::advice(step, Signal::Go, number),
        false => {
            let missing = Missing {
                owner: r.owner,
                field: Field::TestTime,
                places: 1,
            };
            Verdict {
                number: Some(number),
                ..Verdict::plain(Signal::Look, Next::Measure(missing))
            }
        }
    })
}

/// How much the deck leans, end to end.
///
/// # Errors
/// What it lacks.
pub fn datum(r: &Readings) -> Worked {
    let ends = r.complete(Field::DeckHeight)?;
    let [front, rear] = ends[..] else {
        return Err(r.missing(Field::DeckHeight, 1));
    };
    let lean_m = (front - rear).abs();
    let signal = if lean_m <= r.engine(Field::DatumTilt)? + TINY_M {
        Signal::Go
    } else {
        Signal::Look
    };
    let number = length_figure(Figure::DatumLean, lean_m, None);
    let verdict = Verdict::advice(StepId::Datum, signal, number);
    // A deck that is cut is surveyed first, every spot of it.
    let wanted = match r.sleeve_ends()? {
        SleeveEnds::Decked => spots(r.job, r.bank()),
        SleeveEnds::Proud => 0,
    };
    let there = r.list(Field::LowSpot)?;
    let there = there.iter().filter(|(index, _)| *index < wanted).count() as u8;
    if signal == Signal::Go && there < wanted {
        let missing = Missing {
            owner: r.owner,
            field: Field::LowSpot,
            places: wanted - there,
        };
        return Ok(Verdict {
            signal: Signal::Wait,
            next: Next::Measure(missing),
            lacks: vec![missing],
            ..verdict
        });
    }
    Ok(verdict)
}

//! The bar: centred, and the bore it leaves for the hone.

use crate::job::model::field::Field;
use crate::job::model::reading::Lack;
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::passes::strokes;
use crate::job::steps::tools::{TINY_M, length_figure, more, plain};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::{Detail, Figure};
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::quantity::Length;
use crate::quantity::code::Code;
use crate::quantity::report::Finding;

/// How far the bar is off, toward 12 and toward 3 o'clock: half the indicator's
/// difference; a larger reading is a nearer wall. `None` where nothing is swept.
///
/// # Errors
/// A sweep that is not whole, or cannot be used.
pub fn bar_offset(r: &Readings) -> Result<Option<(f64, f64)>, Lack> {
    if r.list(Field::Indicator)?.is_empty() {
        return Ok(None);
    }
    let [twelve, three, six, nine] = r.complete(Field::Indicator)?[..] else {
        return Err(r.missing(Field::Indicator, 1));
    };
    Ok(Some((0.5 * (twelve - six), 0.5 * (three - nine))))
}

/// How far the bar is off the old centre. Two opposite pairs of a round hole have
/// one mean; where they differ by more than the offset may, it is oval where it was
/// swept, or one was misread.
///
/// # Errors
/// What it lacks.
pub fn centre(r: &Readings) -> Worked {
    let offset = bar_offset(r)?;
    let (up_m, right_m) = offset.ok_or_else(|| r.missing(Field::Indicator, 4))?;
    let off_m = up_m.hypot(right_m);
    let most_m = r.engine(Field::OffsetLook)?;
    let [twelve, three, six, nine] = r.complete(Field::Indicator)?[..] else {
        return Err(r.missing(Field::Indicator, 1));
    };
    let pairs_m = (0.5 * (twelve + six - three - nine)).abs();
    let findings = (pairs_m > 0.5 * most_m + TINY_M).then(|| {
        Finding::look(
            Code::SweptOval,
            "12 and 6 o'clock together read otherwise than 3 and 9: the hole is oval where it was \
             swept, or one was misread",
        )
    });
    let signal = if off_m <= most_m + TINY_M {
        Signal::Go
    } else {
        Signal::Look
    };
    let number = length_figure(Figure::Offset, off_m, None);
    Ok(Verdict {
        answer: Answer::More(vec![
            more(Detail::OffsetUp, up_m),
            more(Detail::OffsetRight, right_m),
        ]),
        findings: findings.into_iter().collect(),
        ..Verdict::advice(StepId::Centre, signal, number)
    })
}

/// The sleeve's diameter: the mean as measured; before it is, the nominal one.
///
/// # Errors
/// Missing or unusable.
pub fn sleeve_d(r: &Readings) -> Result<f64, Lack> {
    if r.list(Field::SleeveOd)?.is_empty() {
        r.engine(Field::NominalOd)
    } else {
        r.mean(Field::SleeveOd)
    }
}

/// Bore wanted after the hone: the sleeve less the middle of the fit.
///
/// # Errors
/// Missing or unusable.
pub fn bore_wanted(r: &Readings) -> Result<f64, Lack> {
    Ok(sleeve_d(r)? - 0.5 * (r.engine(Field::FitLow)? + r.engine(Field::FitHigh)?))
}

/// What the bar left for the hone.
///
/// # Errors
/// What it lacks.
pub fn hone_stock(r: &Readings) -> Worked {
    let wanted_m = bore_wanted(r)?;
    let leave_m = r.engine(Field::HoneLeave)?;
    let to_bore_m = wanted_m - leave_m;
    let bored_m = r.single(Field::BoredD)?;
    let stock_m = wanted_m - bored_m;
    // Past the loosest bore nothing holds this sleeve.
    let past_m = bored_m - (sleeve_d(r)? - r.engine(Field::FitLow)?);
    let (signal, next) = if past_m > TINY_M {
        let by = Length::from_m(past_m);
        (Signal::Stop, Next::AdviceBy(StepId::Bore, Signal::Stop, by))
    } else if stock_m < 0.5 * leave_m - TINY_M {
        (Signal::Look, Next::Advice(StepId::Bore, Signal::Look))
    } else if stock_m > 2.0 * leave_m + TINY_M {
        let by = Length::from_m(to_bore_m - bored_m);
        (Signal::Wait, Next::AdviceBy(StepId::Bore, Signal::Wait, by))
    } else {
        match r.list(Field::SleeveOd)?.is_empty() {
            true => (Signal::Look, Next::Assumed(Field::SleeveOd)),
            false => (Signal::Go, Next::Advice(StepId::Bore, Signal::Go)),
        }
    };
    let mut further = vec![more(Detail::BoreWanted, to_bore_m)];
    if let Some(spindle_m) = r.engine_if(Field::Spindle)? {
        further.push(more(Detail::CutterSetting, 0.5 * (to_bore_m + spindle_m)));
    }
    let needed = strokes(r.job, Length::from_m(stock_m))?;
    further.extend(needed.map(|n| plain(Detail::Strokes, n)));
    Ok(Verdict {
        number: Some(length_figure(Figure::HoneStock, stock_m, None)),
        answer: Answer::More(further),
        ..Verdict::plain(signal, next)
    })
}

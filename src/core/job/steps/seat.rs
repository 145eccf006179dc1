//! Whether the sleeve is on its seat: the warm height, the pulls, the seat check.
//!
//! A gap is worked out clock by clock: flange thickness and counterbore depth
//! must be there at all four, or a tilt could hide in the one that is not.

use crate::job::model::field::{Field, PULLS_MOST};
use crate::job::model::part::SleeveKind;
use crate::job::model::place::Place;
use crate::job::model::reading::{Lack, Standing};
use crate::job::model::readings::{Readings, lengths, mean};
use crate::job::model::step::StepId;
use crate::job::steps::by_fit;
use crate::job::steps::home::{self, Home};
use crate::job::steps::loads::{is_overloaded, load_checks};
use crate::job::steps::shrink::climb_ceiling;
use crate::job::steps::tools::{TINY_M, length_figure};
use crate::job::verdict::answer::{Answer, Heights};
use crate::job::verdict::figure::Figure;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::metrology::seat::{Pull, Seat, SeatInput, SeatVerdict, seat as seat_of};
use crate::quantity::code::Code;
use crate::quantity::report::Finding;
use crate::quantity::ties;
use crate::quantity::{Length, Pressure};

/// Heights round the clock that differ by more are read wrong or the sleeve is
/// cocked: 0.010 in (from memory, no source).
const COCKED_M: f64 = 254e-6;

/// Standard uncertainty of a gap.
fn u_gap_m(r: &Readings) -> Result<f64, Lack> {
    let [u_above, u_depth] = home::uncertainties(r)?;
    Ok(r.engine(Field::GaugeHeight)?.hypot(u_above).hypot(u_depth))
}

/// Height that a seated flange would have, clock by clock.
///
/// # Errors
/// A clock of thickness or depth missing, something that cannot be used.
pub fn predicted(r: &Readings) -> Result<Vec<f64>, Lack> {
    Ok(home::home(r)?.heights())
}

/// The height before the pull, against the predicted one.
///
/// # Errors
/// What it lacks.
pub fn warm_height(r: &Readings) -> Worked {
    let predicted = predicted(r)?;
    let heights = r.list(Field::WarmHeight)?;
    let mut at = Vec::new();
    for (clock, height) in &heights {
        if let Some(predicted) = predicted.get(usize::from(*clock)) {
            at.push((*height, *predicted));
        }
    }
    let gaps: Vec<f64> = at.iter().map(|(h, p)| h - p).collect();
    let above_m = mean(&gaps).ok_or_else(|| r.missing(Field::WarmHeight, 4))?;
    let ceiling = climb_ceiling(r)?;
    let u_gap_m = u_gap_m(r)?;
    let gap_limit_m = r.engine(Field::GapLimit)?;
    let tilt_limit_m = r.engine(Field::TiltLimit)?;
    let highest = gaps.iter().copied().fold(f64::MIN, f64::max);
    let lowest = gaps.iter().copied().fold(f64::MAX, f64::min);
    let apart_m = highest - lowest;
    let by_fit = r.sleeve_kind()? == SleeveKind::ByFit;
    let (signal, next) = if by_fit && lowest < -gap_limit_m - TINY_M {
        (Signal::Stop, Next::SetLowAt(Length::from_m(-lowest)))
    } else if by_fit && above_m > gap_limit_m + TINY_M {
        (Signal::Wait, Next::SetHigh(Length::from_m(above_m)))
    } else if lowest < -2.0 * u_gap_m - TINY_M {
        (Signal::Look, Next::BelowLedge)
    } else if above_m <= gap_limit_m + TINY_M && apart_m <= tilt_limit_m + TINY_M {
        (Signal::Go, Next::HomeWarm)
    } else if !by_fit && above_m > ceiling.as_m() + 2.0 * u_gap_m {
        (Signal::Look, Next::AboveCeiling)
    } else {
        // Off its seat: nothing is wrong, and nothing is home.
        (Signal::Wait, Next::PullHome)
    };
    let findings = if apart_m > COCKED_M {
        vec![Finding::look(
            Code::Cocked,
            "one clock stands far from the others: a reading is wrong by a turn of the \
             micrometer, or the sleeve is cocked. Measure again before pulling",
        )]
    } else {
        Vec::new()
    };
    Ok(Verdict {
        number: Some(length_figure(
            if by_fit {
                Figure::AboveTarget
            } else {
                Figure::AbovePredicted
            },
            above_m,
            Some(u_gap_m),
        )),
        findings,
        answer: Answer::Heights(Heights {
            predicted: at.iter().map(|(_, p)| Length::from_m(*p)).collect(),
            height: at.iter().map(|(h, _)| Length::from_m(*h)).collect(),
            above: Length::from_m(above_m),
            ceiling,
        }),
        ..Verdict::plain(signal, next)
    })
}

/// The pulls, in order. A pull is a gauge pressure and a released height; where
/// heights under load are read, the last two pulls must have theirs.
///
/// # Errors
/// A pull that is half read, a reading that cannot be used.
pub fn pulls_of(r: &Readings) -> Result<Vec<Pull>, Lack> {
    let at = |field, index| {
        r.job
            .reading(Place {
                owner: r.owner,
                field,
                index,
            })
            .number()
    };
    let mut pulls = Vec::new();
    for index in 0..PULLS_MOST {
        let gauge = at(Field::PullGauge, index)?;
        let loaded = at(Field::PullLoaded, index)?;
        let relaxed = at(Field::PullReleased, index)?;
        match (gauge, relaxed, loaded) {
            (None, None, None) => {}
            (Some(gauge_pa), Some(relaxed_m), loaded) => pulls.push(Pull {
                gauge: Pressure::from_pa(gauge_pa),
                loaded: loaded.map(Length::from_m),
                relaxed: Length::from_m(relaxed_m),
            }),
            (None, ..) => return Err(r.missing(Field::PullGauge, 1)),
            (Some(_), None, _) => return Err(r.missing(Field::PullReleased, 1)),
        }
    }
    let is_loaded = |pull: &Pull| pull.loaded.is_some();
    if pulls.iter().any(is_loaded) && !pulls.iter().rev().take(2).all(is_loaded) {
        return Err(r.missing(Field::PullLoaded, 1));
    }
    Ok(pulls)
}

/// The last elastic return of a hole, where heights under load were read.
///
/// # Errors
/// As [`pulls_of`].
pub fn last_return(r: &Readings) -> Result<Option<f64>, Lack> {
    let pulls = pulls_of(r)?;
    Ok(pulls.last().and_then(|pull| {
        let loaded = pull.loaded?;
        Some(pull.relaxed.as_m() - loaded.as_m())
    }))
}

fn ask_seat(
    r: &Readings,
    home: &Home,
    [above, depth, height]: [&[Length]; 3],
    pulls: &[Pull],
) -> Result<Seat, Lack> {
    let [u_above, u_depth] = home::uncertainties(r)?.map(Length::from_m);
    Ok(seat_of(&SeatInput {
        thickness: above,
        depth,
        height,
        shim: home.shim,
        pulls,
        u_height: r.length(Field::GaugeHeight)?,
        u_thickness: u_above,
        u_depth,
        gap_limit: r.length(Field::GapLimit)?,
        tilt_limit: r.length(Field::TiltLimit)?,
        confidence: r.engine(Field::Confidence)?,
    })?)
}

/// Whether a seat's readings say that one of them is wrong.
fn is_below(seat: &Seat) -> bool {
    seat.findings.iter().any(|f| f.code == Code::BelowLedge)
}

/// Whether a reading stands in the way of calling it home.
fn is_odd(seat: &Seat) -> bool {
    let odd = |f: &Finding| matches!(f.code, Code::HeightMoved | Code::OddReturn);
    seat.findings.iter().any(odd)
}

/// The seat as the pulls alone show it: one height, the last released one,
/// against the mean predicted height. The tilt needs the four clocks. A pull
/// beyond what ram, rod, ledge or flange may bear stops, whatever its heights
/// say; a bearer that is not checked is no `go`.
///
/// # Errors
/// What it lacks.
pub fn pulls(r: &Readings) -> Worked {
    let checks = load_checks(r)?;
    let judged = judged_pulls(r);
    if is_overloaded(&checks) {
        let next = Next::Advice(StepId::Pull, Signal::Stop);
        let verdict = match judged {
            Ok(verdict) => verdict,
            Err(Lack::Missing(missing)) => Verdict {
                lacks: vec![missing],
                ..Verdict::plain(Signal::Stop, next)
            },
            Err(Lack::Refused(_)) => Verdict::plain(Signal::Stop, next),
            Err(unusable) => return Err(unusable),
        };
        return Ok(Verdict {
            signal: Signal::Stop,
            next,
            ..verdict
        });
    }
    for check in &checks {
        if let Standing::Unusable(unusable) = &check.standing {
            return Err(Lack::Unusable(unusable.clone()));
        }
    }
    let mut verdict = match judged {
        Ok(verdict) => verdict,
        // A pull half read comes first; what the loads lack is told as well.
        Err(Lack::Missing(missing)) if !checks.is_empty() => Verdict {
            lacks: vec![missing],
            ..Verdict::plain(Signal::Wait, Next::Measure(missing))
        },
        Err(lack) => return Err(lack),
    };
    for check in &checks {
        if let Standing::Missing(missing) = check.standing
            && !verdict.lacks.contains(&missing)
        {
            verdict.lacks.push(missing);
        }
    }
    let all_known = checks
        .iter()
        .all(|check| matches!(check.standing, Standing::Known(_) | Standing::NotHere));
    if !all_known {
        verdict.findings.push(Finding::look(
            Code::LoadNotChecked,
            "ram, rod, ledge and flange are not all checked: enter what is missing, or keep to \
             your makers' limits",
        ));
    }
    Ok(verdict)
}

fn judged_pulls(r: &Readings) -> Worked {
    let pulls = pulls_of(r)?;
    let last = pulls
        .last()
        .ok_or_else(|| r.missing(Field::PullReleased, 1))?
        .relaxed;
    let home = home::home(r)?;
    let of = |list: &[f64]| mean(list).map(Length::from_m);
    let (Some(above), Some(depth)) = (of(&home.above), of(&home.depth)) else {
        return Err(r.missing(Field::SeatHeight, 1)); // four clocks: never none
    };
    let answer = ask_seat(r, &home, [&[above], &[depth], &[last]], &pulls)?;
    if home.kind == SleeveKind::ByFit {
        return by_fit::after_pull(r, answer);
    }
    let (signal, next) = match answer.verdict {
        _ if is_below(&answer) => (Signal::Look, Next::BelowLedge),
        SeatVerdict::PullAgain => (Signal::Wait, Next::PullAgain),
        SeatVerdict::NotSeated => (Signal::Stop, Next::StoppedHigh(answer.gap_mean)),
        // It has stopped within its limit; whether it is home its clocks tell,
        // judged with the other sleeves of its deck.
        SeatVerdict::Seated | SeatVerdict::Undecided
            if ties::at_most(answer.gap_mean.as_m(), r.engine(Field::GapLimit)?)
                && !is_odd(&answer) =>
        {
            (Signal::Go, Next::CheckSeat)
        }
        SeatVerdict::Seated | SeatVerdict::Undecided => (Signal::Look, Next::StoppedUnsure),
    };
    Ok(Verdict {
        number: Some(length_figure(
            Figure::GapAfterPull,
            answer.gap_mean.as_m(),
            Some(answer.u_gap.as_m()),
        )),
        findings: answer.findings.clone(),
        answer: Answer::Pulls(answer),
        ..Verdict::plain(signal, next)
    })
}

/// Whether the flange is on its ledge: worked out here, said with its deck.
///
/// # Errors
/// What it lacks.
pub fn seat(r: &Readings) -> Worked {
    let home = home::home(r)?;
    let [above, depth] = [&home.above, &home.depth].map(|list| lengths(list));
    let height = lengths(&r.complete(Field::SeatHeight)?);
    let pulls = pulls_of(r)?;
    let answer = ask_seat(r, &home, [&above, &depth, &height], &pulls)?;
    if home.kind == SleeveKind::ByFit {
        return by_fit::set(r, answer);
    }
    let (signal, next) = match answer.verdict {
        _ if is_below(&answer) => (Signal::Look, Next::BelowLedge),
        SeatVerdict::PullAgain => (Signal::Wait, Next::PullAgain),
        // Whether it is home is said with its deck (`together`).
        SeatVerdict::Seated | SeatVerdict::NotSeated | SeatVerdict::Undecided => {
            (Signal::Look, Next::SeatUndecided)
        }
    };
    Ok(Verdict {
        number: Some(length_figure(
            Figure::Gap,
            answer.gap_mean.as_m(),
            Some(answer.u_gap.as_m()),
        )),
        findings: answer.findings.clone(),
        answer: Answer::Seat(answer),
        ..Verdict::plain(signal, next)
    })
}

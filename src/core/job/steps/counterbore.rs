//! The counterbore: room round the flange, depth, chamfer.

use crate::job::model::field::Field;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Lacks};
use crate::job::model::readings::{Readings, largest, smallest};
use crate::job::model::step::StepId;
use crate::job::steps::home::{depth_gauge, measured_by, plane, shim};
use crate::job::steps::proud::proud_predicted;
use crate::job::steps::stand_proud::target_proud;
use crate::job::steps::survey::deck_beside;
use crate::job::steps::tools::{TINY_M, length_figure};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::Figure;
use crate::job::verdict::next::Next;
use crate::job::verdict::proud::{Breach, ProudLimit};
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::planning::counterbore::{CounterboreInput, counterbore, uneven_ledge};
use crate::quantity::Length;
use crate::quantity::code::Code;
use crate::quantity::report::Finding;

/// Room round the flange.
///
/// # Errors
/// What it lacks.
pub fn flange_room(r: &Readings) -> Worked {
    let measured = r.own(Field::FlangeOdHere)?;
    let flange_m = match measured {
        Some(flange) => flange,
        None => r.engine(Field::FlangeOd)?,
    };
    let room_m = r.single(Field::CounterboreD)? - flange_m;
    let (least_m, most_m) = (r.engine(Field::ClearLow)?, r.engine(Field::ClearHigh)?);
    let step = StepId::CounterboreD;
    let (signal, next) = if room_m < least_m - TINY_M {
        let by = Length::from_m(0.5 * (least_m + most_m) - room_m);
        (Signal::Wait, Next::AdviceBy(step, Signal::Wait, by))
    } else if room_m > most_m + TINY_M {
        (Signal::Look, Next::Advice(step, Signal::Look))
    } else if measured.is_none() {
        (Signal::Look, Next::Assumed(Field::FlangeOdHere))
    } else {
        (Signal::Go, Next::Advice(step, Signal::Go))
    };
    Ok(Verdict {
        number: Some(length_figure(Figure::FlangeRoom, room_m, None)),
        ..Verdict::plain(signal, next)
    })
}

/// How deep the step of the block lies as it came, where the engine says so.
fn step_before(r: &Readings) -> Result<Option<f64>, Lack> {
    match r.engine_or_none(Field::StepBelow) {
        Err(Lack::Missing(_)) => Ok(None),
        other => other,
    }
}

/// Depth still to cut, of a counterbore or of the step under a plain sleeve. The
/// least thickness (or length) decides, so every clock of it must be there; of the
/// depth the deepest does, and a missing clock can hide it.
///
/// # Errors
/// What it lacks.
pub fn depth(r: &Readings) -> Worked {
    let kind = r.sleeve_kind()?;
    let (Some([long, deep]), Some(gauge)) = (measured_by(kind), depth_gauge(kind)) else {
        // Held by its fit: nothing is cut to a depth.
        return Ok(Verdict::plain(Signal::None, Next::MarkIt));
    };
    if r.sleeve_ends()? == SleeveEnds::Proud {
        return proud_depth(r, [long, deep], gauge);
    }
    let above = r.complete(long)?;
    let plane_m = plane(kind, &above);
    let from_plane = |list: &[f64]| -> Vec<Length> {
        let of = |m: &f64| Length::from_m(m - plane_m);
        list.iter().map(of).collect()
    };
    // What lies under the sleeve lifts it, and the ledge is cut deeper by as much.
    let shim_m = shim(r)?.as_m();
    let lifted: Vec<f64> = above.iter().map(|m| m + shim_m).collect();
    let thickness = from_plane(&lifted);
    let gauge_sd = r.length(gauge)?;
    let read = r.some(deep);
    if let (SleeveKind::OnStep, Err(Lack::Missing(_)), Some(least_m)) =
        (kind, &read, smallest(&lifted))
    {
        // Nothing is cut yet: a step that lies too deep already is told before it is.
        let wanted_m = least_m - r.engine(Field::TargetProud)?;
        let over_m = step_before(r)?.map(|step_m| step_m - wanted_m);
        if let Some(over_m) = over_m.filter(|over_m| *over_m > 2.0 * gauge_sd.as_m() + TINY_M) {
            let next = Next::StepLies(Length::from_m(over_m));
            return Ok(Verdict::plain(Signal::Stop, next));
        }
    }
    let depth_now = from_plane(&read?);
    let surveyed = match r.owner {
        Owner::Cylinder(cylinder) => deck_beside(r.job, r.bank(), cylinder),
        Owner::Block | Owner::Bank(_) => Ok(None),
    };
    // The deck enters the chance of a low flange, not the depth: too deep is too
    // deep whatever it is.
    let (beside, no_deck) = match surveyed {
        Ok(beside) => (beside, None),
        Err(lack) => (None, Some(lack)),
    };
    // What is cut off the deck enters the chance as well, not the depth: without it
    // too deep is told, and what is still to cut.
    let cut = r
        .length(Field::PlannedCut)
        .and_then(|cut| Ok((cut, r.length(Field::CleanUp)?)));
    let ((removal, clean_up), no_cut) = match cut {
        Ok(both) => (both, None),
        Err(Lack::Missing(missing)) => (Default::default(), Some(missing)),
        Err(other) => return Err(other),
    };
    let mut answer = counterbore(&CounterboreInput {
        thickness: &thickness,
        target_proud: r.length(Field::TargetProud)?,
        depth_now: &depth_now,
        deck: Length::from_m(beside.unwrap_or(0.0)), // not surveyed: said below
        feed_sd: r.length(Field::FeedSd)?,
        gauge_sd,
        removal,
        clean_up,
        risk: r.engine(Field::Risk)?,
    })?;
    answer.depth = Length::from_m(answer.depth.as_m() + plane_m);
    if beside.is_none() {
        answer.findings.push(Finding::note(
            Code::DeckNotSurveyed,
            "the deck beside this hole is not measured: it is taken as its highest point, and \
             the chance of a low flange is at least the one shown",
        ));
    }
    let to_go_m = answer.to_go.as_m();
    // Nearer than the gauge can tell is at depth.
    let near_m = 2.0 * gauge_sd.as_m();
    let (signal, next) = if to_go_m > near_m + TINY_M {
        (Signal::Wait, Next::CutDeeper(answer.to_go))
    } else if to_go_m < -near_m - TINY_M {
        (Signal::Stop, Next::TooDeep(Length::from_m(-to_go_m)))
    } else {
        (Signal::Go, Next::AtDepth)
    };
    if let Some(lack) = no_deck
        && signal != Signal::Stop
    {
        return Err(lack);
    }
    if let Some(missing) = no_cut {
        // No chance of a low flange is told of a cut that nobody entered.
        if signal == Signal::Go {
            return Err(Lack::Missing(missing));
        }
        let number = length_figure(Figure::StillToCut, to_go_m, Some(gauge_sd.as_m()));
        return Ok(Verdict {
            number: Some(number),
            lacks: vec![missing],
            ..Verdict::plain(signal, next)
        });
    }
    let mut findings = answer.findings.clone();
    // At depth on the mean, and not on every clock: measured again before the
    // cutter is put away.
    let uneven = findings.iter().any(|f| f.code == Code::LedgeNotFlat);
    let (signal, next) = match signal {
        Signal::Go if uneven => (Signal::Look, Next::LedgeUneven),
        signal => (signal, next),
    };
    if signal != Signal::Stop {
        // Within the gauge's own noise "too deep" would cry wolf.
        findings.retain(|f| f.code != Code::TooDeep);
    }
    Ok(Verdict {
        number: Some(length_figure(
            Figure::StillToCut,
            to_go_m,
            Some(gauge_sd.as_m()),
        )),
        findings,
        answer: Answer::Counterbore(answer),
        ..Verdict::plain(signal, next)
    })
}

/// Depth still to cut where nothing is decked afterwards: every height that the sleeve
/// will have must lie within the limits, shim and all. Cut for is the middle of them.
fn proud_depth(r: &Readings, [long, deep]: [Field; 2], gauge: Field) -> Worked {
    let above = r.complete(long)?;
    let depth = r.list(deep)?;
    let none = || r.missing(deep, deep.spec().places.count());
    let deepest_m = largest(&depth.iter().map(|(_, m)| *m).collect::<Vec<_>>()).ok_or_else(none)?;
    let least_m = smallest(&above).ok_or_else(none)?;
    let shim_m = shim(r)?.as_m();
    let mut heights = Vec::new();
    for (clock, depth_m) in &depth {
        if let Some(above_m) = above.get(usize::from(*clock)) {
            heights.push(above_m + shim_m - depth_m);
        }
    }
    let lowest_m = smallest(&heights).ok_or_else(none)?;
    let highest_m = largest(&heights).ok_or_else(none)?;
    let depths: Vec<Length> = depth.iter().map(|(_, m)| Length::from_m(*m)).collect();
    let uneven = uneven_ledge(&depths);
    // Too deep is told by the lower limit alone, whatever else is missing.
    let low_m = r.engine(Field::ProudLow)?;
    let too_deep = (lowest_m < low_m - TINY_M).then(|| Length::from_m(low_m - lowest_m));
    let (target_m, u_m) = match (target_proud(r), r.engine(gauge), too_deep) {
        (Ok(target_m), Ok(u_m), _) => (target_m, u_m),
        (target, u, Some(by)) => {
            let mut lacks = Lacks::default();
            lacks.take(target);
            lacks.take(u);
            return Ok(Verdict {
                findings: uneven.into_iter().collect(),
                lacks: lacks.missing,
                ..Verdict::plain(Signal::Stop, Next::TooDeep(by))
            });
        }
        (Err(lack), _, None) | (_, Err(lack), None) => return Err(lack),
    };
    let high_m = r.engine(Field::ProudHigh)?;
    let to_go_m = least_m + shim_m - target_m - deepest_m;
    let (signal, next) = if let Some(by) = too_deep {
        (Signal::Stop, Next::TooDeep(by))
    } else if highest_m > high_m + TINY_M && to_go_m > TINY_M {
        (Signal::Wait, Next::CutDeeper(Length::from_m(to_go_m)))
    } else if highest_m > high_m + TINY_M || uneven.is_some() {
        (Signal::Look, Next::LedgeUneven)
    } else if let Some((other, by)) = apart_from(r)? {
        (Signal::Look, Next::ApartFrom(other, by))
    } else if to_go_m.abs() > 2.0 * u_m + TINY_M {
        (Signal::Go, Next::InLimits(Length::from_m(to_go_m)))
    } else {
        (Signal::Go, Next::AtDepth)
    };
    Ok(Verdict {
        number: Some(length_figure(Figure::StillToCut, to_go_m, Some(u_m))),
        findings: uneven.into_iter().collect(),
        ..Verdict::plain(signal, next)
    })
}

/// The hole of the deck from which this sleeve will stand too far by their depths, and
/// by how much too far: of those read at all clocks and cut to their limits the one that
/// is worst. Limits that are not there yet are held at the deck's step.
fn apart_from(r: &Readings) -> Result<Option<(u8, Length)>, Lack> {
    let limit = |field| match r.engine(field) {
        Ok(limit_m) => Ok(Some(limit_m)),
        Err(Lack::Missing(_)) => Ok(None),
        Err(other) => Err(other),
    };
    let (neighbour, all) = (limit(Field::SpreadNeighbour)?, limit(Field::SpreadAll)?);
    let Owner::Cylinder(own) = r.owner else {
        return Ok(None);
    };
    let deck: Vec<u8> = r.job.cylinders_of(r.bank()).collect();
    let mean_m = |cylinder: u8| {
        let hole = proud_predicted(&Readings::of_cylinder(r.job, cylinder), cylinder).ok()?;
        let is_own = |b: &Breach| matches!(b.limit, ProudLimit::Low | ProudLimit::High);
        let is_cut = !hole.breaches.iter().any(is_own);
        is_cut.then(|| hole.mean.as_m())
    };
    let (Some(at), Some(own_m)) = (deck.iter().position(|c| *c == own), mean_m(own)) else {
        return Ok(None);
    };
    let over = |(index, other): (usize, &u8)| {
        let apart_m = (mean_m(*other)? - own_m).abs();
        let is_next = index.abs_diff(at) == 1;
        let over_m = |limit: Option<f64>| limit.map(|limit_m| apart_m - limit_m);
        let of_both = [over_m(all), over_m(neighbour).filter(|_| is_next)];
        let worst_m = of_both.into_iter().flatten().max_by(f64::total_cmp)?;
        (worst_m > TINY_M).then_some((*other, worst_m))
    };
    let others = deck.iter().enumerate().filter(|(_, other)| **other != own);
    let worst = others.filter_map(over).max_by(|a, b| a.1.total_cmp(&b.1));
    Ok(worst.map(|(other, by_m)| (other, Length::from_m(by_m))))
}

/// Room between the ledge's chamfer and the fillet.
///
/// # Errors
/// What it lacks.
pub fn fillet_room(r: &Readings) -> Worked {
    let room_m = r.single(Field::ChamferHere)? - r.single(Field::Fillet)?;
    let signal = if room_m < r.engine(Field::FilletSpare)? - TINY_M {
        Signal::Wait
    } else {
        Signal::Go
    };
    let number = length_figure(Figure::FilletRoom, room_m, None);
    Ok(Verdict::advice(StepId::Chamfer, signal, number))
}

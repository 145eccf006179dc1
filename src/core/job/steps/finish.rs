//! After the deck: pistons and gasket, groove, finish, ring gaps.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Missing};
use crate::job::model::readings::{Readings, largest, smallest};
use crate::job::model::step::{Mark, StepId};
use crate::job::steps::fit::ask_fit;
use crate::job::steps::tools::{TINY_M, length_figure, more, plain};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::{Detail, Figure};
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::materials::{Material, MaterialId};
use crate::mechanics::rings::{Elastic, PressFit};
use crate::metrology::form::form;
use crate::planning::engine::{EngineEffect, EngineInput, engine_effect};
use crate::planning::finish::{
    CrossHatch, Finish, FinishInput, Hatch, cross_hatch, finish as finish_of,
};
use crate::planning::groove::{Groove, groove as groove_of};
use crate::quantity::code::Code;
use crate::quantity::report::Finding;
use crate::quantity::{Diameter, Length, Pressure};

/// Elasticity of a material of the catalogue.
#[must_use]
pub fn elastic(id: MaterialId) -> Elastic {
    let material = Material::catalogue(id);
    Elastic {
        youngs: Pressure::from_pa(material.youngs_pa()),
        poisson: material.poisson(),
    }
}

/// The gasket that the pistons ask for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gasket {
    /// Largest protrusion measured.
    pub protrusion: Length,
    /// Least compressed thickness, where the least clearance is entered.
    pub least: Option<Length>,
    /// The gasket that is entered.
    pub entered: Option<Length>,
    /// The thinnest grade entered that is thick enough; the outer `None` where
    /// no grade is entered or the least is not known.
    pub grade: Option<Option<Length>>,
}

/// The gasket to buy; `None` before a piston is measured. The piston of a hole that
/// gets no sleeve counts where its deck is cut for the others.
///
/// # Errors
/// Something that cannot be used.
pub fn gasket(job: &Job) -> Result<Option<Gasket>, Lack> {
    let mut all = Vec::new();
    let is_decked = |cylinder: &u8| job.cylinders_of(job.engine.bank_of(*cylinder)).count() > 0;
    for cylinder in (1..=job.engine.cylinders).filter(is_decked) {
        let own = job.readings(Owner::Cylinder(cylinder), Field::PistonProud)?;
        all.extend(own.into_iter().map(|(_, si)| si));
    }
    let Some(most) = largest(&all) else {
        return Ok(None);
    };
    let r = Readings::new(job, Owner::Block);
    let length =
        |field| -> Result<Option<Length>, Lack> { Ok(r.engine_if(field)?.map(Length::from_m)) };
    let least = length(Field::HeadLeast)?.map(|least| Length::from_m(most + least.as_m()));
    let grades: Vec<f64> = r
        .list(Field::GasketGrades)?
        .into_iter()
        .map(|(_, si)| si)
        .collect();
    let grade = least.filter(|_| !grades.is_empty()).map(|least| {
        let enough: Vec<f64> = grades
            .iter()
            .copied()
            .filter(|si| *si >= least.as_m() - TINY_M)
            .collect();
        smallest(&enough).map(Length::from_m)
    });
    Ok(Some(Gasket {
        protrusion: Length::from_m(most),
        least,
        entered: length(Field::Gasket)?,
        grade,
    }))
}

impl Gasket {
    /// Whether the gasket that is entered is thick enough; `None` where it or
    /// the clearance is not entered.
    #[must_use]
    pub fn suffices(&self) -> Option<bool> {
        let (least, entered) = (self.least?, self.entered?);
        Some(entered.as_m() >= least.as_m() - TINY_M)
    }
}

/// What may be missing: noted, not needed.
fn noted<T>(worked: Result<T, Lack>, lacks: &mut Vec<Missing>) -> Result<Option<T>, Lack> {
    match worked {
        Ok(value) => Ok(Some(value)),
        Err(Lack::Missing(missing)) => {
            if !lacks.contains(&missing) {
                lacks.push(missing);
            }
            Ok(None)
        }
        Err(other) => Err(other),
    }
}

/// The largest protrusion; with gasket and sheet the room to the head, with the
/// engine's stroke and ratio what the deck cut made of the ratio.
///
/// # Errors
/// What it lacks.
pub fn protrusion(r: &Readings) -> Worked {
    let readings = r.some(Field::PistonProud)?;
    let most_m = largest(&readings).ok_or_else(|| r.missing(Field::PistonProud, 1))?;
    let step = StepId::Protrusion;
    let mut lacks = Vec::new();
    // The gasket that is entered, else the grade that the job's pistons ask
    // for, else the thickest there is.
    let grade = match gasket(r.job)?.and_then(|g| g.grade) {
        Some(Some(grade)) => Some(grade.as_m()),
        Some(None) => {
            let block = Readings::new(r.job, Owner::Block);
            let grades: Vec<f64> = block
                .list(Field::GasketGrades)?
                .into_iter()
                .map(|(_, si)| si)
                .collect();
            largest(&grades)
        }
        None => None,
    };
    let chosen = match r.engine_if(Field::Gasket)? {
        Some(gasket_m) => Some(gasket_m),
        None => grade,
    };
    let (signal, number) = match (chosen, r.engine_if(Field::HeadLeast)?) {
        (Some(gasket_m), Some(least_m)) => {
            let room_m = gasket_m - most_m;
            let signal = if room_m < least_m - TINY_M {
                Signal::Stop
            } else {
                Signal::Go
            };
            (signal, length_figure(Figure::HeadRoom, room_m, None))
        }
        _ => (
            Signal::None,
            length_figure(Figure::PistonProud, most_m, None),
        ),
    };
    let mut further = vec![more(Detail::Largest, most_m)];
    further.extend(chosen.map(|gasket_m| more(Detail::GasketTaken, gasket_m)));
    if let Some(effect) = noted(effect(r), &mut lacks)? {
        further.push(plain(Detail::Compression, effect.compression_ratio));
    }
    Ok(Verdict {
        answer: Answer::More(further),
        lacks,
        ..Verdict::advice(step, signal, number)
    })
}

/// What the deck lost: the cut decided on, else the cut planned; and whether
/// somebody said that it was made. Sleeves that are left proud are not decked.
pub(super) fn deck_cut(r: &Readings) -> Result<(f64, bool), Lack> {
    if r.sleeve_ends()? == SleeveEnds::Proud {
        return Ok((0.0, true));
    }
    let bank = r.bank();
    let typed = r
        .job
        .reading(Place::of_bank(bank, Field::DeckCut, 0))
        .number()?;
    let made = r.job.mark(Owner::Bank(bank), StepId::Deck) == Some(&Mark::Done);
    match typed {
        Some(cut) => Ok((cut, true)),
        None => Ok((r.engine(Field::PlannedCut)?, made)),
    }
}

/// What the cut does to the engine.
fn effect(r: &Readings) -> Result<EngineEffect, Lack> {
    Ok(engine_effect(&EngineInput {
        bore: Diameter::from_m(r.engine(Field::FinalBore)?),
        stroke: r.length(Field::Stroke)?,
        compression_ratio: r.engine(Field::Compression)?,
        removal: Length::from_m(deck_cut(r)?.0),
        gasket_change: Length::from_m(0.0),
        protrusion: Length::from_m(0.0),
    })?)
}

/// What stands for the flange of a plain sleeve: more than any groove takes.
const NO_FLANGE_M: f64 = 0.15;

/// The groove that is wanted, by the clock that leaves least of the flange, and
/// whether somebody said that the deck was cut. The cut takes off what stands proud
/// as well; the deck beside this hole counts as its highest point.
///
/// # Errors
/// What it lacks.
pub fn groove_wanted(r: &Readings) -> Result<(Groove, bool), Lack> {
    let (cut_m, cut_known) = deck_cut(r)?;
    let decked = r.sleeve_ends()? == SleeveEnds::Decked;
    let least_m = match r.sleeve_kind()? {
        SleeveKind::Flanged => {
            let thickness = r.complete(Field::FlangeThickness)?;
            let proud = r.complete(Field::SeatHeight)?;
            // A flange that is left proud loses nothing.
            let lost = |h: &f64| if decked { *h } else { 0.0 };
            let below: Vec<f64> = thickness
                .iter()
                .zip(&proud)
                .map(|(t, h)| t - lost(h))
                .collect();
            smallest(&below).ok_or_else(|| r.missing(Field::FlangeThickness, 1))?
        }
        // It has no flange that a groove could cut through.
        SleeveKind::OnStep | SleeveKind::ByFit => NO_FLANGE_M + cut_m,
    };
    let wanted = groove_of(
        r.length(Field::RingHeight)?,
        r.length(Field::RingProud)?,
        Length::from_m(least_m - cut_m),
    )?;
    Ok((wanted, cut_known))
}

/// The groove: the reading farthest off decides, too deep before too shallow.
///
/// # Errors
/// What it lacks: the thinnest clock of the flange decides what is left.
pub fn groove(r: &Readings) -> Worked {
    if r.engine_or_none(Field::RingHeight) == Ok(None) {
        return Ok(match r.list(Field::GrooveDepth)?.is_empty() {
            true => Verdict::plain(Signal::None, Next::NoGroove),
            false => Verdict::plain(Signal::Look, Next::NoGroove),
        });
    }
    let (wanted, cut_known) = groove_wanted(r)?;
    let (wanted_m, near_m) = (wanted.depth.as_m(), r.engine(Field::GrooveNear)?);
    let readings = r.some(Field::GrooveDepth)?;
    let none = || r.missing(Field::GrooveDepth, 1);
    let deepest_m = largest(&readings).ok_or_else(none)? - wanted_m;
    let least_m = smallest(&readings).ok_or_else(none)? - wanted_m;
    let step = StepId::Groove;
    let (signal, next, off_m) = if deepest_m > near_m + TINY_M {
        let by = Length::from_m(deepest_m);
        (
            Signal::Stop,
            Next::AdviceBy(step, Signal::Stop, by),
            deepest_m,
        )
    } else if least_m < -near_m - TINY_M {
        let by = Length::from_m(-least_m);
        (
            Signal::Wait,
            Next::AdviceBy(step, Signal::Wait, by),
            least_m,
        )
    } else if cut_known {
        (Signal::Go, Next::Advice(step, Signal::Go), deepest_m)
    } else {
        (Signal::Look, Next::Assumed(Field::DeckCut), deepest_m)
    };
    let mut further = vec![more(Detail::GrooveWanted, wanted_m)];
    if r.sleeve_kind()? == SleeveKind::Flanged {
        further.push(more(Detail::FloorLeft, wanted.floor.as_m()));
    }
    Ok(Verdict {
        number: Some(length_figure(Figure::GrooveOff, off_m, None)),
        findings: wanted.findings,
        answer: Answer::More(further),
        ..Verdict::plain(signal, next)
    })
}

/// The fitted sleeve as it is to be finished.
fn to_finish(r: &Readings) -> Result<Finish, Lack> {
    let engine = r.head()?;
    let fit = ask_fit(r)?;
    let joint_m = r.engine(Field::NominalOd)?;
    Ok(finish_of(&FinishInput {
        fit: PressFit {
            sleeve_inner: Diameter::from_m(r.engine(Field::SleeveId)?),
            joint: Diameter::from_m(joint_m),
            block_outer: Diameter::from_m(joint_m + 2.0 * r.engine(Field::BlockWall)?),
            sleeve: elastic(engine.sleeve_material),
            block: elastic(engine.block_material),
            interference: fit.interference_mean,
            rz_sleeve: Length::from_m(0.0),
            rz_bore: Length::from_m(0.0),
            smoothing: 0.0,
            length: r.length(Field::SleeveLength)?,
            friction: 0.0,
        },
        finished: Diameter::from_m(r.engine(Field::FinalBore)?),
        hone: r.length(Field::FinishLeast)?,
        piston: r.engine_if(Field::PistonD)?.map(Diameter::from_m),
    })?)
}

/// The cross-hatch that stroke, turns and cycles of the hone make.
fn hatch(r: &Readings, bore_m: f64) -> Result<CrossHatch, Lack> {
    Ok(cross_hatch(
        Diameter::from_m(bore_m),
        r.length(Field::HoneStroke)?,
        r.engine(Field::HoneTurns)? / 60.0,
        Hatch::Cycles(r.engine(Field::HoneCycles)? / 60.0),
    )?)
}

/// What the fit leaves to take; once it is measured, stock and form of the bore,
/// and the piston's room in it. It goes only where that room is checked.
///
/// # Errors
/// What it lacks.
pub fn finish(r: &Readings) -> Worked {
    let step = StepId::Finish;
    let final_m = r.engine(Field::FinalBore)?;
    let mut lacks = Vec::new();
    let mut further = Vec::new();
    let mut findings = Vec::new();
    let planned = noted(to_finish(r), &mut lacks)?;
    if let Some(planned) = &planned {
        further.push(more(Detail::CloseIn, planned.close_in.as_m()));
        further.push(more(Detail::BoreTo, planned.bore_to.as_m()));
        further.push(plain(Detail::GripLeft, 100.0 * planned.grip_left));
        findings.clone_from(&planned.findings);
    }
    let mut hatch_lacks = Vec::new();
    if let Some(hatch) = noted(hatch(r, final_m), &mut hatch_lacks)? {
        let degrees = |rad: f64| rad.to_degrees();
        further.push(plain(Detail::HatchIncluded, degrees(hatch.included_rad)));
        let one = degrees(hatch.to_horizontal_rad);
        further.push(plain(Detail::HatchHorizontal, one));
    }
    let levels = match (r.levels(Field::FinishD), &planned) {
        (Ok(levels), _) => levels,
        (Err(Lack::Missing(missing)), Some(planned)) if missing.field == Field::FinishD => {
            // Not measured yet: what is to come off.
            let stock = length_figure(Figure::FinishStock, planned.stock.as_m(), None);
            return Ok(Verdict {
                number: Some(stock),
                findings,
                answer: Answer::More(further),
                lacks,
                ..Verdict::plain(Signal::None, Next::Measure(missing))
            });
        }
        (Err(other), _) => return Err(other),
    };
    let answer = form(&levels)?;
    let stock_m = final_m - answer.mean.as_m();
    let limit_m = r.engine(Field::BoreForm)?;
    let widest_m = largest(&r.some(Field::FinishD)?).ok_or_else(|| r.missing(Field::FinishD, 1))?;
    let past_m = widest_m - final_m;
    let crooked = answer.out_of_round.as_m() > limit_m + TINY_M
        || answer.taper.as_m().abs() > limit_m + TINY_M;
    let piston = noted(r.engine(Field::PistonD), &mut lacks)?;
    let piston_least = noted(r.engine(Field::PistonLeast), &mut lacks)?;
    if let Some(piston_m) = piston {
        further.push(more(Detail::PistonRoom, answer.mean.as_m() - piston_m));
    }
    let is_tight = piston
        .zip(piston_least)
        .map(|(piston_m, least_m)| answer.mean.as_m() - piston_m < least_m - TINY_M);
    let (signal, next) = if stock_m > limit_m + TINY_M {
        let by = Length::from_m(stock_m);
        (Signal::Wait, Next::AdviceBy(step, Signal::Wait, by))
    } else if past_m > limit_m + TINY_M {
        let by = Length::from_m(past_m);
        (Signal::Stop, Next::AdviceBy(step, Signal::Stop, by))
    } else if crooked {
        (Signal::Look, Next::Advice(step, Signal::Look))
    } else {
        match (is_tight, lacks.first()) {
            (None, Some(missing)) => (Signal::Look, Next::Measure(*missing)),
            _ => (Signal::Go, Next::Advice(step, Signal::Go)),
        }
    };
    if signal == Signal::Go && is_tight == Some(true) {
        findings.push(Finding::stop(
            Code::PistonTight,
            "the piston has less room in its bore than the sheet asks for: measure both again, \
             then hone or stop",
        ));
    }
    further.push(more(Detail::Round, answer.out_of_round.as_m()));
    further.push(more(Detail::Taper, answer.taper.as_m()));
    Ok(Verdict {
        number: Some(length_figure(Figure::FinishStock, stock_m, None)),
        findings,
        answer: Answer::Form(answer, further),
        lacks,
        ..Verdict::plain(signal, next)
    })
}

/// Ring gaps against the sheet: the least and the greatest.
///
/// # Errors
/// What it lacks.
pub fn ring_gaps(r: &Readings) -> Worked {
    let gaps = r.some(Field::RingGapNow)?;
    let none = || r.missing(Field::RingGapNow, 1);
    let least_m = smallest(&gaps).ok_or_else(none)?;
    let most_m = largest(&gaps).ok_or_else(none)?;
    let low_m = r.engine(Field::RingGapLow)?;
    let high_m = r.engine(Field::RingGapHigh)?;
    let signal = if least_m < low_m - TINY_M {
        Signal::Wait
    } else if most_m > high_m + TINY_M {
        Signal::Look
    } else {
        Signal::Go
    };
    Ok(Verdict {
        answer: Answer::More(vec![more(Detail::Largest, most_m)]),
        ..Verdict::advice(
            StepId::RingGap,
            signal,
            length_figure(Figure::LeastGap, least_m, None),
        )
    })
}

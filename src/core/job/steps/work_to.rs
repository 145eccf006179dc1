//! The number to work to, told before the cut: bore, counterbore, depth, chamfer,
//! hone, groove, finish and ring gap; and the height at which a flange is home,
//! before it is measured. It comes from what the step aims at, and
//! never from what was cut.

use crate::job::model::field::Field;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::reading::{Lack, Standing};
use crate::job::model::readings::{Readings, mean, smallest};
use crate::job::model::step::{Calculation, StepSpec};
use crate::job::steps::bore::{bore_wanted, sleeve_d};
use crate::job::steps::finish::groove_wanted;
use crate::job::steps::home::{depth_gauge, measured_by, shim};
use crate::job::steps::seat::predicted;
use crate::job::steps::stand_proud::{proud_range, target_proud};
use crate::job::verdict::work_to::{Work, WorkTo};
use crate::materials::Material;
use crate::quantity::Temperature;

/// The number that a step of a cylinder works to; `NotHere` where a step has none.
#[must_use]
pub fn work_to(r: &Readings, spec: &StepSpec) -> Standing<WorkTo> {
    let worked = match spec.calculation {
        Calculation::HoneStock => bar(r),
        Calculation::CounterboreClearance => widen(r),
        Calculation::Counterbore | Calculation::StepDepth => match depth(r) {
            Ok(Some(to)) => Ok(to),
            // Held by its fit: nothing is cut to a depth.
            Ok(None) => return Standing::NotHere,
            Err(lack) => Err(lack),
        },
        Calculation::Chamfer => chamfer(r),
        Calculation::Fit => hone(r),
        Calculation::Groove => match r.engine_or_none(Field::RingHeight) {
            Ok(None) => return Standing::NotHere,
            _ => groove(r),
        },
        Calculation::Finish => finish(r),
        Calculation::RingGap => gap(r),
        Calculation::Height => home(r, Work::HomeWarm),
        Calculation::Seat => home(r, Work::Home),
        _ => return Standing::NotHere,
    };
    Standing::of(worked)
}

/// Between two limits, the middle.
const fn between(work: Work, low: f64, high: f64) -> WorkTo {
    WorkTo {
        work,
        si: 0.5 * (low + high),
        low: Some(low),
        high: Some(high),
        taken: None,
    }
}

fn taken_nominal(r: &Readings) -> Result<Option<Field>, Lack> {
    let none = r.list(Field::SleeveOd)?.is_empty();
    Ok(none.then_some(Field::SleeveOd))
}

/// The bore off the bar: what the hone takes is left.
fn bar(r: &Readings) -> Result<WorkTo, Lack> {
    let si = bore_wanted(r)? - r.engine(Field::HoneLeave)?;
    Ok(WorkTo {
        work: Work::Bore,
        si,
        low: None,
        high: None,
        taken: taken_nominal(r)?,
    })
}

/// The flange and its room round it.
fn widen(r: &Readings) -> Result<WorkTo, Lack> {
    let measured = r.own(Field::FlangeOdHere)?;
    let flange_m = match measured {
        Some(flange_m) => flange_m,
        None => r.engine(Field::FlangeOd)?,
    };
    let (least_m, most_m) = (r.engine(Field::ClearLow)?, r.engine(Field::ClearHigh)?);
    Ok(WorkTo {
        taken: measured.is_none().then_some(Field::FlangeOdHere),
        ..between(Work::Widen, flange_m + least_m, flange_m + most_m)
    })
}

/// The least thickness of the flange, or length of a plain sleeve, and the shim under
/// it, less its stand-proud.
fn depth(r: &Readings) -> Result<Option<WorkTo>, Lack> {
    let kind = r.sleeve_kind()?;
    let (Some([long, deep]), Some(gauge)) = (measured_by(kind), depth_gauge(kind)) else {
        return Ok(None);
    };
    let above = r.complete(long)?;
    let least_m = smallest(&above).ok_or_else(|| r.missing(long, 1))?;
    let top_m = least_m + shim(r)?.as_m();
    let work = match deep {
        Field::StepDepth => Work::StepDepth,
        _ => Work::Depth,
    };
    // Nothing is decked afterwards: any depth that leaves the sleeve within its limits.
    if r.sleeve_ends()? == SleeveEnds::Proud {
        let [low_m, high_m] = proud_range(r)?;
        return Ok(Some(between(work, top_m - high_m, top_m - low_m)));
    }
    let near_m = 2.0 * r.engine(gauge)?;
    let si = top_m - target_proud(r)?;
    Ok(Some(WorkTo {
        si,
        ..between(work, si - near_m, si + near_m)
    }))
}

/// The fillet and what it is to be clear by.
fn chamfer(r: &Readings) -> Result<WorkTo, Lack> {
    let least_m = r.single(Field::Fillet)? + r.engine(Field::FilletSpare)?;
    Ok(WorkTo {
        work: Work::Chamfer,
        si: least_m,
        low: Some(least_m),
        high: None,
        taken: None,
    })
}

/// The sleeve less its fit, as the bore reads at its own temperature. Until both
/// temperatures are there they are taken as one.
fn hone(r: &Readings) -> Result<WorkTo, Lack> {
    let sleeve_m = sleeve_d(r)?;
    let engine = r.head()?;
    let (fit_low_m, fit_high_m) = (r.engine(Field::FitLow)?, r.engine(Field::FitHigh)?);
    let sleeve_k = r.own(Field::SleeveTemperature)?;
    let block_k = r.own(Field::BlockTemperature)?;
    let stretch =
        |material, k: f64| 1.0 + Material::catalogue(material).strain(Temperature::from_k(k));
    let (sleeve, bore) = match sleeve_k.zip(block_k) {
        Some((sleeve_k, block_k)) => (
            stretch(engine.sleeve_material, sleeve_k),
            stretch(engine.block_material, block_k),
        ),
        None => (1.0, 1.0),
    };
    let reads = |fit_m: f64| (sleeve_m / sleeve - fit_m) * bore;
    let even = sleeve_k.is_none() || block_k.is_none();
    Ok(WorkTo {
        taken: taken_nominal(r)?.or(even.then_some(Field::BlockTemperature)),
        ..between(Work::Hone, reads(fit_high_m), reads(fit_low_m))
    })
}

fn groove(r: &Readings) -> Result<WorkTo, Lack> {
    let (wanted, cut_known) = groove_wanted(r)?;
    let (si, near_m) = (wanted.depth.as_m(), r.engine(Field::GrooveNear)?);
    Ok(WorkTo {
        si,
        taken: (!cut_known).then_some(Field::DeckCut),
        ..between(Work::Groove, si - near_m, si + near_m)
    })
}

fn finish(r: &Readings) -> Result<WorkTo, Lack> {
    let (si, near_m) = (r.engine(Field::FinalBore)?, r.engine(Field::BoreForm)?);
    Ok(WorkTo {
        si,
        ..between(Work::Finish, si - near_m, si + near_m)
    })
}

/// A gap is filed wider, never narrower: the lower limit is worked to.
fn gap(r: &Readings) -> Result<WorkTo, Lack> {
    let (low_m, high_m) = (r.engine(Field::RingGapLow)?, r.engine(Field::RingGapHigh)?);
    Ok(WorkTo {
        si: low_m,
        ..between(Work::Gap, low_m, high_m)
    })
}

/// The height at which the sleeve is home: by its seat, or the height aimed at;
/// no limit beside it: a pull brings it down, and the deck is judged together.
fn home(r: &Readings, work: Work) -> Result<WorkTo, Lack> {
    let predicted = predicted(r)?;
    let none = || r.missing(Field::SeatHeight, 1); // four clocks: never none
    let si = mean(&predicted).ok_or_else(none)?;
    // Nothing but this height says where a sleeve is home that its fit alone holds.
    let near_m = match r.sleeve_kind()? {
        SleeveKind::ByFit => Some(r.engine(Field::GapLimit)?),
        SleeveKind::Flanged | SleeveKind::OnStep => None,
    };
    Ok(WorkTo {
        work,
        si,
        low: near_m.map(|near_m| si - near_m),
        high: near_m.map(|near_m| si + near_m),
        taken: None,
    })
}

#[cfg(test)]
#[allow(clippy::panic)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::{Owner, Place};
    use crate::job::model::step::StepId;
    use crate::quantity::parse::Unit;

    /// By hand, from what is typed here. Bore: 4.4413 less the middle of 0.0010 and
    /// 0.0015, less 0.0012 for the hone. Counterbore: 4.6400 and 0.0020 to 0.0060.
    /// Chamfer: 0.0300 and 0.0050. Groove: 0.0600 less 0.0060, give or take 0.0010.
    /// Finish and ring gap: as the sheet says.
    #[test]
    fn by_hand() {
        let mut job = Demo::InchFive.job(0);
        let mut put = |owner, field: Field, text: &str| {
            for place in Place::all(owner, field) {
                job.entries.put(place, Entry::new(text, Unit::Inch, 0));
            }
        };
        let two = Owner::Cylinder(2);
        for (field, text) in [
            (Field::SleeveOd, "4.4413"),
            (Field::FlangeOdHere, "4.6400"),
            (Field::Fillet, "0.0300"),
        ] {
            put(two, field, text);
        }
        for (field, text) in [
            (Field::FitLow, "0.0010"),
            (Field::FitHigh, "0.0015"),
            (Field::HoneLeave, "0.0012"),
            (Field::ClearLow, "0.0020"),
            (Field::ClearHigh, "0.0060"),
            (Field::FilletSpare, "0.0050"),
            (Field::RingHeight, "0.0600"),
            (Field::RingProud, "0.0060"),
            (Field::GrooveNear, "0.0010"),
            (Field::FinalBore, "4.2000"),
            (Field::BoreForm, "0.0005"),
            (Field::RingGapLow, "0.0160"),
            (Field::RingGapHigh, "0.0240"),
        ] {
            put(Owner::Block, field, text);
        }
        let r = Readings::new(&job, two);
        for (step, si, limits) in [
            (StepId::Bore, 4.438_85, None),
            (StepId::CounterboreD, 4.6440, Some([4.6420, 4.6460])),
            (StepId::Chamfer, 0.0350, None),
            (StepId::Groove, 0.0540, Some([0.0530, 0.0550])),
            (StepId::Finish, 4.2000, Some([4.1995, 4.2005])),
            (StepId::RingGap, 0.0160, Some([0.0160, 0.0240])),
        ] {
            let Standing::Known(to) = work_to(&r, step.spec()) else {
                panic!("{step:?}")
            };
            let near = |m: f64, inch: f64| (m / 0.0254 - inch).abs() < 1e-9;
            assert!(near(to.si, si), "{step:?} {}", to.si / 0.0254);
            if let Some([low, high]) = limits {
                let both = to.low.zip(to.high);
                let holds = both.is_some_and(|(l, h)| near(l, low) && near(h, high));
                assert!(holds, "{step:?} {both:?}");
            }
        }
    }
}

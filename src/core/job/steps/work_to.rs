//! The number to work to, told before the cut: bore, counterbore, depth, chamfer,
//! hone, groove, finish and ring gap. It comes from what the step aims at, and
//! never from what was cut.

use crate::job::model::field::Field;
use crate::job::model::reading::{Lack, Standing};
use crate::job::model::readings::{Readings, smallest};
use crate::job::model::step::{Calculation, StepSpec};
use crate::job::steps::bore::{bore_wanted, sleeve_d};
use crate::job::steps::finish::groove_wanted;
use crate::job::verdict::work_to::{Work, WorkTo};
use crate::materials::Material;
use crate::quantity::Temperature;

/// The number that a step of a cylinder works to; `NotHere` where a step has none.
#[must_use]
pub fn work_to(r: &Readings, spec: &StepSpec) -> Standing<WorkTo> {
    let worked = match spec.calculation {
        Calculation::HoneStock => bar(r),
        Calculation::CounterboreClearance => widen(r),
        Calculation::Counterbore => depth(r),
        Calculation::Chamfer => chamfer(r),
        Calculation::Fit => hone(r),
        Calculation::Groove => groove(r),
        Calculation::Finish => finish(r),
        Calculation::RingGap => gap(r),
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

/// The least thickness of the flange less its stand-proud.
fn depth(r: &Readings) -> Result<WorkTo, Lack> {
    let thickness = r.complete(Field::FlangeThickness)?;
    let least_m = smallest(&thickness).ok_or_else(|| r.missing(Field::FlangeThickness, 1))?;
    let near_m = 2.0 * r.engine(Field::GaugeDepth)?;
    let si = least_m - r.engine(Field::TargetProud)?;
    Ok(WorkTo {
        si,
        ..between(Work::Depth, si - near_m, si + near_m)
    })
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

//! What a cylinder has for the profile of its bore.

use crate::job::advice::profile::{PLATES, ProfileNeeds, depths};
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveKind;
use crate::job::model::reading::{Lack, Lacks};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::finish::elastic;
use crate::job::steps::loads::pull_force;
use crate::job::verdict::answer::Answer;
use crate::job::verdict::report::{CylinderReport, StepReport};
use crate::mechanics::bore_profile::{BoreProfileInput, Flange, Jacket, Joint};
use crate::quantity::bounds;
use crate::quantity::{Diameter, Force, Length, Pressure};

/// The fillet under its flange, where it has one and it is measured.
fn fillet(r: &Readings) -> Result<Option<f64>, Lack> {
    match r.sleeve_kind()? {
        SleeveKind::Flanged => r.own(Field::Fillet),
        SleeveKind::OnStep | SleeveKind::ByFit => Ok(None),
    }
}

/// The flange of this sleeve, as measured or nominal; a plain one has none.
fn flange(r: &Readings) -> Result<Option<Flange>, Lack> {
    if r.sleeve_kind()? != SleeveKind::Flanged {
        return Ok(None);
    }
    let outer_m = match r.own(Field::FlangeOdHere)? {
        Some(measured) => measured,
        None => r.engine(Field::FlangeOd)?,
    };
    Ok(Some(Flange {
        outer: Diameter::from_m(outer_m),
        thickness: r.length(Field::NominalFlange)?,
    }))
}

/// What a cylinder has for its profile.
///
/// # Errors
/// What is missing or cannot be used, all of it.
pub fn needs(job: &Job, report: &CylinderReport) -> Result<ProfileNeeds, Lacks> {
    let r = Readings::of_cylinder(job, report.cylinder);
    let mut lacks = Lacks::default();
    let engine = lacks.take(r.head());
    let flange = lacks.take(flange(&r));
    let numbers = [
        lacks.take(r.engine(Field::SleeveId)),
        lacks.take(r.engine(Field::NominalOd)),
        lacks.take(r.engine(Field::SleeveLength)),
        lacks.take(r.engine(Field::BlockWall)),
    ];
    // One end of the jacket alone is half a jacket: the other is asked for.
    let jacket = match (r.engine_if(Field::JacketFrom), r.engine_if(Field::JacketTo)) {
        (Ok(None), Ok(None)) => Some(None),
        _ => lacks
            .take(r.engine(Field::JacketFrom))
            .zip(lacks.take(r.engine(Field::JacketTo)))
            .map(Some),
    };
    let fit = match report.step(StepId::Fit) {
        Some(StepReport {
            answer: Answer::Fit(fit, _),
            ..
        }) => Some(fit.interference_mean),
        Some(StepReport { unusable, .. }) if !unusable.is_empty() => {
            lacks.unusable.extend(unusable.iter().cloned());
            None
        }
        _ => lacks.take(Err(r.missing(Field::BoreD, 6))),
    };
    let further = [
        lacks.take(r.engine_if(Field::Pitch)),
        lacks.take(r.engine_if(Field::HalfWidth)),
        lacks.take(r.engine_if(Field::FinalBore)),
        lacks.take(r.engine_if(Field::FinishLeast)),
        lacks.take(r.engine_if(Field::HeadClamp)),
        lacks.take(fillet(&r)),
    ];
    // Without ram or pull the picture is without the pull.
    let pull = match pull_force(job, report.cylinder) {
        Ok(force) => Some(force),
        Err(Lack::Missing(_) | Lack::Refused(_)) => Some(None),
        Err(unusable) => lacks.take(Err(unusable)),
    };
    let (Some(engine), Some(jacket), Some(fit), Some(pull), Some(flange)) =
        (engine, jacket, fit, pull, flange)
    else {
        return Err(lacks);
    };
    let (
        [Some(inner_m), Some(outer_m), Some(length_m), Some(wall_m)],
        [
            Some(pitch),
            Some(half_width),
            Some(finished_m),
            Some(hone_m),
            Some(clamp),
            Some(fillet),
        ],
    ) = (numbers, further)
    else {
        return Err(lacks);
    };
    let top_m = match flange {
        Some(flange) => length_m + flange.thickness.as_m(),
        None => length_m,
    };
    let jacket = jacket.map(|(from_m, to_m)| Jacket {
        wall: Length::from_m(wall_m),
        deck: Length::from_m(from_m),
        bottom: Length::from_m(top_m - to_m),
    });
    let block_m = match jacket {
        Some(_) => PLATES * outer_m,
        None => outer_m + 2.0 * wall_m,
    };
    let row = [pitch, half_width].map(|m| m.map(Length::from_m));
    let mut needs = ProfileNeeds {
        input: BoreProfileInput {
            sleeve_inner: Diameter::from_m(inner_m),
            sleeve_outer: Diameter::from_m(outer_m),
            length: Length::from_m(length_m),
            flange,
            sleeve: elastic(engine.sleeve_material),
            block_outer: Diameter::from_m(block_m),
            block: elastic(engine.block_material),
            below: Length::from_m(0.0),
            jacket,
            interference: fit,
            joint: Joint::Frictionless,
            clamp: Force::from_n(0.0),
            gas: Pressure::from_pa(0.0),
            gas_depth: None,
            heat: None,
            depths: Vec::new(),
        },
        finished_m,
        hone_m,
        clamp: clamp.filter(|n| *n > 0.0).map(Force::from_n),
        pull: pull.filter(|f| bounds::CLAMP.contains(f.as_n())),
        fillet: fillet.map(Length::from_m),
        row: match (jacket, row) {
            (None, [Some(pitch), Some(half)]) => Some([pitch, half]),
            _ => None,
        },
    };
    needs.input.depths = depths(&needs.input);
    Ok(needs)
}

//! The bore of a fitted sleeve down its length, and the stock the hone must
//! take there: from the sleeve as delivered, the fit as measured and the wall
//! round the bore. The single number of Lame's rings stands beside it.
//!
//! Assumed: a solid ring of block round the bore, no row of bores, a joint
//! that slides freely, no clamp; see [`crate::mechanics::bore_profile`].

use super::report::{Answer, CylinderReport};
use super::step::StepId;
use super::{Field, Job, Owner, Place};
use crate::materials::{Material, MaterialId};
use crate::mechanics::bore_profile::{BoreProfileInput, Flange, Joint, bore_profile};
use crate::mechanics::rings::{Elastic, PressFit, press_fit};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, DiametralInterference, Force, Length, Pressure};

/// Levels at which the profile is read.
const LEVELS: usize = 25;

/// What the profile hangs on; equal needs, equal profile.
#[derive(Clone, Debug, PartialEq)]
pub struct ProfileNeeds {
    input: BoreProfileInput,
    finished_m: Option<f64>,
}

/// One level of a profile.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ProfileLevel {
    /// Below the top of the sleeve.
    pub z: Length,
    /// Change of the inside diameter; negative closes.
    pub change: Length,
    /// Stock from the fitted inside to the finished bore, on diameter.
    pub stock: Option<Length>,
}

/// A profile.
#[derive(Clone, Debug, PartialEq)]
pub struct Profile {
    /// From the top down.
    pub levels: Vec<ProfileLevel>,
    /// Lame's single number for the change of the inside.
    pub lame: Length,
    /// How far down the ledge lies: the flange's thickness.
    pub ledge: Length,
}

/// Stiffness of a catalogue material.
pub(super) fn elastic(id: MaterialId) -> Elastic {
    let material = Material::catalogue(id);
    Elastic {
        youngs: Pressure::from_pa(material.youngs_pa()),
        poisson: material.poisson(),
    }
}

/// What a cylinder has for its profile.
///
/// # Errors
/// The numbers still missing.
pub fn needs(job: &Job, report: &CylinderReport) -> Result<ProfileNeeds, Vec<Field>> {
    let owner = Owner::Cylinder(report.cylinder);
    let mut missing = Vec::new();
    let mut of_engine = |field| {
        job.engine_si(field).unwrap_or_else(|| {
            missing.push(field);
            f64::NAN
        })
    };
    let inner_m = of_engine(Field::SleeveId);
    let outer_m = of_engine(Field::NominalOd);
    let length_m = of_engine(Field::SleeveLength);
    let thickness_m = of_engine(Field::NominalFlange);
    let wall_m = of_engine(Field::BlockWall);
    let flange_m = match job.entries.si(Place {
        owner,
        field: Field::FlangeOdHere,
        index: 0,
    }) {
        Some(flange) => flange,
        None => of_engine(Field::FlangeOd),
    };
    let fit = match report.step(StepId::Fit).map(|s| &s.answer) {
        Some(Answer::Fit(fit, _)) => fit.interference_mean,
        _ => {
            missing.push(Field::BoreD);
            DiametralInterference::from_m(f64::NAN)
        }
    };
    if !missing.is_empty() {
        return Err(missing);
    }
    let top_m = length_m + thickness_m;
    Ok(ProfileNeeds {
        input: BoreProfileInput {
            sleeve_inner: Diameter::from_m(inner_m),
            sleeve_outer: Diameter::from_m(outer_m),
            length: Length::from_m(length_m),
            flange: Some(Flange {
                outer: Diameter::from_m(flange_m),
                thickness: Length::from_m(thickness_m),
            }),
            sleeve: elastic(job.engine.sleeve_material),
            block_outer: Diameter::from_m(outer_m + 2.0 * wall_m),
            block: elastic(job.engine.block_material),
            below: Length::from_m(0.0),
            jacket: None,
            interference: fit,
            joint: Joint::Frictionless,
            clamp: Force::from_n(0.0),
            gas: Pressure::from_pa(0.0),
            gas_depth: None,
            heat: None,
            depths: (0..LEVELS)
                .map(|i| Length::from_m(top_m * i as f64 / (LEVELS - 1) as f64))
                .collect(),
        },
        finished_m: job.engine_si(Field::FinalBore),
    })
}

/// The profile.
///
/// # Errors
/// What [`bore_profile`] and [`press_fit`] refuse.
pub fn profile(needs: &ProfileNeeds) -> Result<Profile, Fault> {
    let input = &needs.input;
    let shape = bore_profile(input)?;
    let lame = press_fit(&PressFit {
        sleeve_inner: input.sleeve_inner,
        joint: input.sleeve_outer,
        block_outer: input.block_outer,
        sleeve: input.sleeve,
        block: input.block,
        interference: input.interference,
        rz_sleeve: Length::from_m(0.0),
        rz_bore: Length::from_m(0.0),
        smoothing: 0.0,
        length: input.length,
        friction: 0.0,
    })?;
    let levels = input
        .depths
        .iter()
        .zip(&shape.inner_change)
        .map(|(z, change)| ProfileLevel {
            z: *z,
            change: *change,
            stock: needs.finished_m.map(|finished_m| {
                Length::from_m(finished_m - input.sleeve_inner.as_m() - change.as_m())
            }),
        })
        .collect();
    Ok(Profile {
        levels,
        lame: lame.sleeve_inner_change,
        ledge: input.flange.map_or(Length::from_m(0.0), |f| f.thickness),
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::assess::assess_cylinder;
    use crate::job::demo::Demo;

    #[test]
    fn the_middle_closes_as_lame_says_and_the_flange_holds_the_top_open() {
        for demo in Demo::ALL {
            let job = demo.job(0);
            let needs = needs(&job, &assess_cylinder(&job, 1)).unwrap();
            let profile = profile(&needs).unwrap();
            let middle = profile.levels[LEVELS / 2];
            let ratio = middle.change.as_m() / profile.lame.as_m();
            assert!((ratio - 1.0).abs() < 0.02, "{demo:?} {ratio}");
            assert!(profile.levels[0].change.as_m().abs() < 0.6 * profile.lame.as_m().abs());
            let stock_m = middle.stock.unwrap().as_m();
            assert!(stock_m > 0.0 && stock_m < 1e-3, "{demo:?} {stock_m}");
        }
    }

    #[test]
    fn without_a_fit_there_is_no_profile() {
        let (engine, entries) = Demo::InchFive.profile(0);
        let job = Job::new(engine, entries);
        let missing = needs(&job, &assess_cylinder(&job, 1));
        assert_eq!(missing, Err(vec![Field::BoreD]));
    }
}

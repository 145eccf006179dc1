//! The fit: interference of sleeve and honed bore, both brought to 20 C.

use crate::job::model::field::Field;
use crate::job::model::reading::Lack;
use crate::job::model::readings::{Readings, diameters};
use crate::job::steps::tools::{TINY_M, length_figure};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::Figure;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::materials::Material;
use crate::metrology::fit::{Fit, FitBand, FitInput, FitVerdict, fit as fit_of};
use crate::metrology::form::form;
use crate::quantity::{DiametralInterference, Length, Temperature};

/// The interference, as measured. Every place of the sleeve must be there; of
/// the bore what is measured so far.
///
/// # Errors
/// What it lacks.
pub fn ask_fit(r: &Readings) -> Result<Fit, Lack> {
    let engine = r.head()?;
    let bore = diameters(&r.some(Field::BoreD)?);
    let sleeve = diameters(&r.complete(Field::SleeveOd)?);
    let sleeve_temperature = Temperature::from_k(r.single(Field::SleeveTemperature)?);
    let bore_temperature = Temperature::from_k(r.single(Field::BlockTemperature)?);
    let sleeve_material = Material::catalogue(engine.sleeve_material);
    let bore_material = Material::catalogue(engine.block_material);
    let (lo_m, hi_m) = (r.engine(Field::FitLow)?, r.engine(Field::FitHigh)?);
    Ok(fit_of(&FitInput {
        sleeve_d: &sleeve,
        bore_d: &bore,
        sleeve_temperature,
        bore_temperature,
        sleeve_material: &sleeve_material,
        bore_material: &bore_material,
        u_sleeve: r.length(Field::GaugeSleeve)?,
        u_bore: r.length(Field::GaugeBore)?,
        band: FitBand {
            lo: DiametralInterference::from_m(lo_m),
            hi: DiametralInterference::from_m(hi_m),
        },
    })?)
}

/// The fit against its band, and the form of the bore.
///
/// # Errors
/// What it lacks.
pub fn fit(r: &Readings) -> Worked {
    let answer = ask_fit(r)?;
    let (lo_m, hi_m) = (r.engine(Field::FitLow)?, r.engine(Field::FitHigh)?);
    let bore_form = form(&r.levels(Field::BoreD)?)?;
    let form_limit_m = r.engine(Field::BoreForm)?;
    let mean_m = answer.interference_mean.as_m();
    let (signal, next) = match answer.verdict {
        FitVerdict::Outside if mean_m > hi_m => (
            Signal::Wait,
            Next::HoneMore(Length::from_m(mean_m - 0.5 * (lo_m + hi_m))),
        ),
        FitVerdict::Outside => (Signal::Stop, Next::FitLoose(Length::from_m(lo_m - mean_m))),
        FitVerdict::Undecided => (Signal::Look, Next::FitUndecided),
        FitVerdict::Inside
            if bore_form.out_of_round.as_m() > form_limit_m + TINY_M
                || bore_form.taper.as_m().abs() > form_limit_m + TINY_M =>
        {
            (Signal::Look, Next::BoreForm)
        }
        FitVerdict::Inside => (Signal::Go, Next::FitGood),
    };
    Ok(Verdict {
        number: Some(length_figure(
            Figure::Fit,
            mean_m,
            Some(answer.u_interference.as_m()),
        )),
        findings: answer.findings.clone(),
        answer: Answer::Fit(answer, bore_form),
        ..Verdict::plain(signal, next)
    })
}

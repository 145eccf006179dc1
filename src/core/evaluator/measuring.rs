//! form, fit, seat, seat_deck, scatter.

use serde_json::json;

use super::fields::Fields;
use super::output::Output;
use crate::metrology;
use crate::metrology::fit::{FitBand, FitInput};
use crate::metrology::seat::{Pull, SeatInput};
use crate::metrology::seat_deck::{self, SeatDeckInput};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, DiametralInterference, Length, Pressure, Temperature};

fn lengths(f: &Fields, name: &str) -> Result<Vec<Length>, Fault> {
    Ok(f.numbers(name)?.into_iter().map(Length::from_m).collect())
}

fn diameters(f: &Fields, name: &str) -> Result<Vec<Diameter>, Fault> {
    Ok(f.numbers(name)?.into_iter().map(Diameter::from_m).collect())
}

pub fn form(f: &Fields) -> Result<Output, Fault> {
    let mut levels = Vec::new();
    for level in f.objects("levels")? {
        levels.push(metrology::form::Level {
            z: Length::from_m(level.number("z_m")?),
            readings: diameters(&level, "d_m")?,
        });
        level.finish()?;
    }
    f.finish()?;
    let form = metrology::form::form(&levels)?;
    let mut out = Output::default();
    out.number("mean_d_m", form.mean.as_m())
        .number("out_of_round_m", form.out_of_round.as_m())
        .number("taper_m", form.taper.as_m())
        .rows(
            "per_level",
            ["mean_d_m", "out_of_round_m"],
            form.per_level
                .iter()
                .map(|l| [l.mean.as_m(), l.out_of_round.as_m()]),
        );
    Ok(out)
}

pub fn fit(f: &Fields) -> Result<Output, Fault> {
    let sleeve_d = diameters(f, "sleeve_d_m")?;
    let bore_d = diameters(f, "bore_d_m")?;
    let sleeve_material = f.material("sleeve_", &["expansion_per_k"])?;
    let bore_material = f.material("bore_", &["expansion_per_k"])?;
    let band = f.numbers("band_m")?;
    let [lo, hi] = band[..] else {
        return Err(Fault::new(
            "band_m",
            format!("{} limits where 2 are wanted: lower and upper", band.len()),
        ));
    };
    let input = FitInput {
        sleeve_d: &sleeve_d,
        bore_d: &bore_d,
        sleeve_temperature: Temperature::from_k(f.number("sleeve_k")?),
        bore_temperature: Temperature::from_k(f.number("bore_k")?),
        sleeve_material: &sleeve_material,
        bore_material: &bore_material,
        u_sleeve: Length::from_m(f.number("u_sleeve_m")?),
        u_bore: Length::from_m(f.number("u_bore_m")?),
        band: FitBand {
            lo: DiametralInterference::from_m(lo),
            hi: DiametralInterference::from_m(hi),
        },
    };
    f.finish()?;
    let fit = metrology::fit::fit(&input)?;
    let mut out = Output::default();
    out.number("interference_mean_m", fit.interference_mean.as_m())
        .number("interference_min_m", fit.interference_min.as_m())
        .number("interference_max_m", fit.interference_max.as_m())
        .number("u_interference_m", fit.u_interference.as_m())
        .number("p_inside", fit.p_inside)
        .put("verdict", json!(fit.verdict.id()))
        .findings(&fit.findings);
    Ok(out)
}

pub fn seat(f: &Fields) -> Result<Output, Fault> {
    let thickness = lengths(f, "thickness_m")?;
    let depth = lengths(f, "depth_m")?;
    let height = lengths(f, "height_m")?;
    let mut pulls = Vec::new();
    for pull in f.objects("pulls")? {
        pulls.push(Pull {
            gauge: Pressure::from_pa(pull.number("gauge_pa")?),
            loaded: pull.nullable("loaded_m")?.map(Length::from_m),
            relaxed: Length::from_m(pull.number("relaxed_m")?),
        });
        pull.finish()?;
    }
    let length = |name: &str| f.number(name).map(Length::from_m);
    let input = SeatInput {
        thickness: &thickness,
        depth: &depth,
        height: &height,
        shim: Length::from_m(f.number_or("shim_m", 0.0)?),
        pulls: &pulls,
        u_height: length("u_height_m")?,
        u_thickness: length("u_thickness_m")?,
        u_depth: length("u_depth_m")?,
        gap_limit: length("gap_limit_m")?,
        tilt_limit: length("tilt_limit_m")?,
        confidence: f.number_or("confidence", 0.80)?,
    };
    f.finish()?;
    let s = metrology::seat::seat(&input)?;
    let m = |v: &[Length]| v.iter().map(|l| l.as_m()).collect::<Vec<_>>();
    let mut out = Output::default();
    out.numbers("predicted_m", m(&s.predicted))
        .numbers("gap_m", m(&s.gap))
        .number("gap_mean_m", s.gap_mean.as_m())
        .number("u_gap_m", s.u_gap.as_m())
        .number("tilt_m", s.tilt.as_m())
        .numbers("settle_m", m(&s.settle))
        .nullables("return_m", s.returned.iter().map(|r| r.map(Length::as_m)))
        .put("stopped", json!(s.stopped))
        .number("p_seated", s.p_seated)
        .put("verdict", json!(s.verdict.id()))
        .findings(&s.findings);
    Ok(out)
}

pub fn seat_deck(f: &Fields) -> Result<Output, Fault> {
    let gap = lengths(f, "gap_m")?;
    let length = |name: &str| f.number(name).map(Length::from_m);
    let input = SeatDeckInput {
        gap: &gap,
        u_own: length("u_own_m")?,
        u_common: length("u_common_m")?,
        gap_limit: length("gap_limit_m")?,
        prior_home: f.number_or("prior_home", seat_deck::PRIOR_HOME)?,
        gap_scale: Length::from_m(f.number_or("gap_scale_m", seat_deck::GAP_SCALE.as_m())?),
        prior_alike: f.number_or("prior_alike", seat_deck::PRIOR_ALIKE)?,
    };
    f.finish()?;
    let d = seat_deck::seat_deck(&input)?;
    let mut out = Output::default();
    out.numbers("p_seated", d.seated)
        .number("p_all", d.all)
        .number("p_alike", d.alike)
        .number("bias_m", d.bias.as_m())
        .number("bias_sd_m", d.bias_sd.as_m())
        .findings(&d.findings);
    Ok(out)
}

pub fn scatter(f: &Fields) -> Result<Output, Fault> {
    let errors = lengths(f, "errors_m")?;
    f.finish()?;
    let s = metrology::scatter::scatter(&errors)?;
    let mut out = Output::default();
    out.put("n", json!(s.n))
        .number("mean_m", s.mean.as_m())
        .number("sd_m", s.sd.as_m())
        .number("low_m", s.low.as_m())
        .number("high_m", s.high.as_m());
    Ok(out)
}
